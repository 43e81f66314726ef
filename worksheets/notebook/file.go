package notebook

import (
	"errors"
	"fmt"
	"io"
	"os"

	"swanneck/worksheets/wholefile"
)

// MaxBytes is the size of the largest file that Read and ReadFile take, 256 MiB.
const MaxBytes = 256 << 20

// ReadFile reads a notebook from a file. Errors name the file, and the line where one is known.
func ReadFile(path string) (*Notebook, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, fileError(path, "cannot be opened", err)
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, fileError(path, "cannot be read", err)
	}
	if info.IsDir() {
		return nil, &FormatError{Func: "ReadFile", File: path, Problem: "is a folder; want a notebook file"}
	}
	data, err := io.ReadAll(io.LimitReader(f, MaxBytes+1))
	if err != nil {
		return nil, fileError(path, "cannot be read", err)
	}
	n, err := Read(data)
	var fe *FormatError
	if errors.As(err, &fe) {
		fe.Func, fe.File = "ReadFile", path
	}
	return n, err
}

// WriteFile writes a notebook to a file, whole or not at all (see wholefile.Write).
func WriteFile(path string, n *Notebook) error {
	data, err := n.Bytes()
	if err != nil {
		return err
	}
	if err := wholefile.Write(path, data); err != nil {
		return fmt.Errorf("notebook.WriteFile: %w", err)
	}
	return nil
}

// fileError makes one line of an operating system's error, with the file that the caller asked for.
func fileError(path, what string, err error) error {
	return fmt.Errorf("notebook.ReadFile: %s %s: %w", path, what, wholefile.Cause(err))
}
