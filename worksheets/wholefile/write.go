// Package wholefile writes files that are there whole or not at all.
package wholefile

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Write writes a file: first whole to a temporary file beside it, which then takes its place, so that a crash leaves
// the old file or the new one. An existing file keeps its permissions, and a link stays a link. An error names the
// file and what the system said, in one line.
func Write(path string, data []byte) error { return WriteAll(File{path, data}) }

// staging is a file that is whole on the disk, under a temporary name.
type staging struct {
	path   string // as the caller says it
	target string // what path leads to
	name   string // the temporary one; empty when it has taken its place
}

func stage(path string, data []byte) (_ *staging, err error) {
	target := path
	mode, exists := fs.FileMode(0o666), false
	if real, err := filepath.EvalSymlinks(path); err == nil {
		target = real
	}
	if info, err := os.Stat(target); err == nil {
		if !info.Mode().IsRegular() {
			return nil, fmt.Errorf("%s is not a regular file; want a file or a free name", path)
		}
		mode, exists = info.Mode().Perm(), true
		// Taking a read-only file's place would work where the folder is writable. That is not what its owner meant.
		w, err := os.OpenFile(target, os.O_WRONLY, 0)
		if err != nil {
			return nil, failed(path, err)
		}
		w.Close()
	}
	tmp, err := createBeside(target, mode)
	if err != nil {
		return nil, failed(path, err)
	}
	defer func() {
		if err != nil {
			tmp.Close()
			os.Remove(tmp.Name())
			err = failed(path, err)
		}
	}()
	if exists {
		if err = tmp.Chmod(mode); err != nil {
			return nil, err
		}
	}
	if _, err = tmp.Write(data); err != nil {
		return nil, err
	}
	if err = tmp.Sync(); err != nil {
		return nil, err
	}
	if err = tmp.Close(); err != nil {
		return nil, err
	}
	return &staging{path, target, tmp.Name()}, nil
}

// place lets the file take its place.
func (s *staging) place() error {
	if err := os.Rename(s.name, s.target); err != nil {
		return failed(s.path, err)
	}
	s.name = ""
	// The new name is on the disk only once the folder is. Not every system can do this; the file is whole either way.
	if dir, err := os.Open(filepath.Dir(s.target)); err == nil {
		_ = dir.Sync()
		dir.Close()
	}
	return nil
}

// drop removes what has not taken its place.
func (s *staging) drop() {
	if s.name != "" {
		os.Remove(s.name)
	}
}

// createBeside makes a new file in the folder of target, under a name that is not taken.
func createBeside(target string, mode fs.FileMode) (*os.File, error) {
	dir, base := filepath.Split(target)
	for i := 0; ; i++ {
		name := fmt.Sprintf("%s.%s.%d-%d.part", dir, base, os.Getpid(), i)
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if errors.Is(err, fs.ErrExist) && i < 1000 {
			continue
		}
		return f, err
	}
}

// failed shortens an operating system's error to one line that names the file the caller asked for.
func failed(path string, err error) error {
	return fmt.Errorf("%s cannot be written: %w", path, Cause(err))
}

// Cause takes the names of files off an operating system's error, where the caller names the file already.
func Cause(err error) error {
	var pe *fs.PathError
	var le *os.LinkError
	switch {
	case errors.As(err, &pe):
		return pe.Err
	case errors.As(err, &le):
		return le.Err
	}
	return err
}
