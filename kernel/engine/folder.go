package engine

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
)

// maxFile is the largest file that a cell may read, in bytes.
const maxFile = 16 << 20

// FileRead is a file of the worksheet's folder as cells got it.
type FileRead struct {
	Name   string // with slashes, from the folder
	SHA256 [sha256.Size]byte
}

// folderAnswer is what a cell was answered that asked for a file.
type folderAnswer struct {
	data    []byte
	mistake string // why there is none
}

// tables are the endings of files that cells may read: tables and notes, not keys and programs.
var tables = []string{".csv", ".tsv", ".txt"}

// earlierResults is the ending of what a run leaves of its results; other JSON is not read.
const earlierResults = ".results.json"

func readable(name string) bool {
	return slices.Contains(tables, strings.ToLower(path.Ext(name))) || strings.HasSuffix(strings.ToLower(name), earlierResults)
}

// readFolder reads a file of the worksheet's folder for a cell, which itself can open nothing. Links that lead out of the
// folder, hidden files and whatever is not a plain file are refused.
func readFolder(folder, name string) ([]byte, error) {
	name = strings.ReplaceAll(name, `\`, "/")
	switch {
	case folder == "":
		return nil, errors.New("this session has no folder to read from")
	case name == "":
		return nil, errors.New("a file needs a name, as trial.csv")
	case !filepath.IsLocal(filepath.FromSlash(name)):
		return nil, fmt.Errorf("%s: only files in the worksheet's own folder can be read", name)
	case slices.ContainsFunc(strings.Split(path.Clean(name), "/"), func(s string) bool { return strings.HasPrefix(s, ".") }):
		return nil, fmt.Errorf("%s: hidden files are not read", name)
	case !readable(name):
		return nil, fmt.Errorf("%s: a table's name ends in %s, that of earlier results in %s", name, strings.Join(tables, ", "), earlierResults)
	}
	root, err := os.OpenRoot(folder)
	if err != nil {
		return nil, fmt.Errorf("the worksheet's folder cannot be opened: %w", plainCause(err))
	}
	defer root.Close()
	info, err := root.Stat(filepath.FromSlash(name))
	switch {
	case errors.Is(err, os.ErrNotExist):
		return nil, fmt.Errorf("%s is not in the worksheet's folder", name)
	case err != nil:
		return nil, fmt.Errorf("%s: %w", name, plainCause(err))
	case !info.Mode().IsRegular():
		return nil, fmt.Errorf("%s is not a plain file", name)
	case info.Size() > maxFile:
		return nil, fmt.Errorf("%s has %d MiB; at most %d can be read", name, info.Size()>>20, maxFile>>20)
	}
	f, err := root.Open(filepath.FromSlash(name))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, plainCause(err))
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, maxFile+1))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, plainCause(err))
	}
	if len(data) > maxFile {
		return nil, fmt.Errorf("%s grew beyond %d MiB while it was read", name, maxFile>>20)
	}
	return data, nil
}

// plainCause takes the path from an error: the name of a folder outside is no business of a cell.
func plainCause(err error) error {
	var p *os.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}

// FilesRead lists the files that cells of this session have read, with what was in them the last time, by name.
func (e *Engine) FilesRead() []FileRead {
	var out []FileRead
	for name, sum := range e.read {
		out = append(out, FileRead{name, sum})
	}
	slices.SortFunc(out, func(a, b FileRead) int { return strings.Compare(a.Name, b.Name) })
	return out
}

// file answers a cell that asks for a file: in a replay as it was answered before.
func (e *Engine) file(s *session, name string) folderAnswer {
	if s.out == nil {
		if given := s.givenFiles[name]; len(given) > 0 {
			s.givenFiles[name] = given[1:]
			return given[0]
		}
		return folderAnswer{mistake: name + " was not read the first time"}
	}
	data, err := readFolder(e.opts.Folder, name)
	a := folderAnswer{data: data}
	if err != nil {
		a.mistake = err.Error()
	} else {
		if e.read == nil {
			e.read = map[string][sha256.Size]byte{}
		}
		e.read[path.Clean(strings.ReplaceAll(name, `\`, "/"))] = sha256.Sum256(data)
	}
	if s.files == nil {
		s.files = map[string][]folderAnswer{}
	}
	s.files[name] = append(s.files[name], a)
	return a
}
