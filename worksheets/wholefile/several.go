package wholefile

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// File is a file to be written.
type File struct {
	Path string
	Data []byte
}

// Clear removes what a process that was killed has left of writing a file: its temporary files. Nobody else may be writing
// that file.
func Clear(path string) error {
	dir, base := filepath.Split(path)
	left, err := filepath.Glob(filepath.Join(dir, "."+literal(base)+".*.part"))
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	for _, name := range left {
		if err := os.Remove(name); err != nil {
			return fmt.Errorf("%s cannot be removed: %w", name, Cause(err))
		}
	}
	return nil
}

// literal is a pattern that matches a name and nothing else.
func literal(name string) string {
	return strings.NewReplacer(`[`, `[[]`, `*`, `[*]`, `?`, `[?]`).Replace(name)
}

// WriteAll writes files that belong together, each as Write does. All are whole on the disk, under temporary names, before
// the first takes its place: a disk that is full leaves what was there.
func WriteAll(files ...File) error {
	staged := make([]*staging, 0, len(files))
	defer func() {
		for _, s := range staged {
			s.drop()
		}
	}()
	for _, f := range files {
		s, err := stage(f.Path, f.Data)
		if err != nil {
			return err
		}
		staged = append(staged, s)
	}
	for _, s := range staged {
		if err := s.place(); err != nil {
			return err
		}
	}
	return nil
}
