// Package library is the worksheets that come with the program, built into it.
package library

import (
	"embed"
	"fmt"
	"io/fs"
	"strings"

	"swanneck/worksheets/nearest"
)

//go:embed *.ipynb
var files embed.FS

// Names lists the worksheets, sorted, as they are asked for: "proofing".
func Names() []string {
	list, err := fs.Glob(files, "*.ipynb")
	if err != nil {
		panic(err) // of a pattern that is a constant
	}
	for i, n := range list {
		list[i] = strings.TrimSuffix(n, ".ipynb")
	}
	return list
}

// Worksheet returns a worksheet as its file. An unknown name is answered with the nearest ones.
func Worksheet(name string) ([]byte, error) {
	name = strings.TrimSuffix(name, ".ipynb")
	b, err := files.ReadFile(name + ".ipynb")
	if err != nil {
		return nil, fmt.Errorf("no worksheet is called %q; the nearest: %s", name, strings.Join(nearest.Names(name, Names()), ", "))
	}
	return b, nil
}
