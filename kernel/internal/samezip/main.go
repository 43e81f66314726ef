// Command samezip says whether two zip files hold the same files: compressors may differ, content may not.
package main

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"os"
)

func main() {
	if len(os.Args) != 3 {
		fmt.Fprintln(os.Stderr, "samezip: want two zip files")
		os.Exit(2)
	}
	a, errA := read(os.Args[1])
	b, errB := read(os.Args[2])
	if errA != nil || errB != nil {
		fmt.Fprintln(os.Stderr, "samezip:", errA, errB)
		os.Exit(2)
	}
	differ := false
	for name := range a {
		if !bytes.Equal(a[name], b[name]) {
			fmt.Printf("%s: %s differs\n", os.Args[2], name)
			differ = true
		}
	}
	if differ || len(a) != len(b) {
		fmt.Printf("%s and %s hold different files\n", os.Args[1], os.Args[2])
		os.Exit(1)
	}
}

func read(name string) (map[string][]byte, error) {
	z, err := zip.OpenReader(name)
	if err != nil {
		return nil, err
	}
	defer z.Close()
	out := map[string][]byte{}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			return nil, err
		}
		b, err := io.ReadAll(r)
		if err != nil {
			return nil, err
		}
		if err := r.Close(); err != nil {
			return nil, err
		}
		out[f.Name] = b
	}
	return out, nil
}
