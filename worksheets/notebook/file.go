package notebook

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// MaxBytes is the size of the largest file that Read and ReadFile take, 256 MiB.
const MaxBytes = 256 << 20

// ReadFile reads a notebook from a file. Errors name the file, and the line where one is known.
func ReadFile(path string) (*Notebook, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, fileError("ReadFile", path, "cannot be opened", err)
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, fileError("ReadFile", path, "cannot be read", err)
	}
	if info.IsDir() {
		return nil, &FormatError{Func: "ReadFile", File: path, Problem: "is a folder; want a notebook file"}
	}
	data, err := io.ReadAll(io.LimitReader(f, MaxBytes+1))
	if err != nil {
		return nil, fileError("ReadFile", path, "cannot be read", err)
	}
	n, err := Read(data)
	var fe *FormatError
	if errors.As(err, &fe) {
		fe.Func, fe.File = "ReadFile", path
	}
	return n, err
}

// WriteFile writes a notebook to a file: first whole to a temporary file beside it, which then takes its place, so that
// a crash leaves the old file or the new one. An existing file keeps its permissions, and a link stays a link.
func WriteFile(path string, n *Notebook) (err error) {
	data, err := n.Bytes()
	if err != nil {
		return err
	}
	target := path
	mode, exists := fs.FileMode(0o666), false
	if real, err := filepath.EvalSymlinks(path); err == nil {
		target = real
	}
	if info, err := os.Stat(target); err == nil {
		if !info.Mode().IsRegular() {
			return fmt.Errorf("notebook.WriteFile: %s is not a regular file; want a file or a free name", path)
		}
		mode, exists = info.Mode().Perm(), true
		// Taking a read-only file's place would work where the folder is writable. That is not what its owner meant.
		w, err := os.OpenFile(target, os.O_WRONLY, 0)
		if err != nil {
			return fileError("WriteFile", path, "cannot be written", err)
		}
		w.Close()
	}
	tmp, err := createBeside(target, mode)
	if err != nil {
		return fileError("WriteFile", path, "cannot be written", err)
	}
	defer func() {
		if err != nil {
			tmp.Close()
			os.Remove(tmp.Name())
			err = fileError("WriteFile", path, "cannot be written", err)
		}
	}()
	if exists {
		if err = tmp.Chmod(mode); err != nil {
			return err
		}
	}
	if _, err = tmp.Write(data); err != nil {
		return err
	}
	if err = tmp.Sync(); err != nil {
		return err
	}
	if err = tmp.Close(); err != nil {
		return err
	}
	if err = os.Rename(tmp.Name(), target); err != nil {
		return err
	}
	// The new name is on the disk only once the folder is. Not every system can do this; the file is whole either way.
	if dir, derr := os.Open(filepath.Dir(target)); derr == nil {
		_ = dir.Sync()
		dir.Close()
	}
	return nil
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

// fileError shortens an operating system's error to one line that names the file the caller asked for.
func fileError(fn, path, what string, err error) error {
	var pe *fs.PathError
	var le *os.LinkError
	cause := err
	switch {
	case errors.As(err, &pe):
		cause = pe.Err
	case errors.As(err, &le):
		cause = le.Err
	}
	return fmt.Errorf("notebook.%s: %s %s: %w", fn, path, what, cause)
}
