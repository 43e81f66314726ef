// Command gen writes the generated files of package symbols: the values, the type data and the documentation of every
// package on the whitelist. Run it by `go generate ./kernel/symbols`.
package main

import (
	"bytes"
	"fmt"
	"go/token"
	"log"
	"os"
	"path/filepath"
	"strings"

	"golang.org/x/tools/go/packages"

	"swanneck/kernel/symbols/whitelist"
)

func main() {
	log.SetFlags(0)
	log.SetPrefix("gen: ")
	pkgs, err := load(whitelist.Packages)
	if err != nil {
		log.Fatal(err)
	}
	old, err := filepath.Glob("values_*_gen.go")
	if err != nil {
		log.Fatal(err)
	}
	for _, f := range old {
		if err := os.Remove(f); err != nil {
			log.Fatal(err)
		}
	}
	for _, p := range pkgs {
		src, err := values(p.Types)
		if err != nil {
			log.Fatalf("%s: %v", p.PkgPath, err)
		}
		if err := os.WriteFile("values_"+fileName(p.PkgPath)+"_gen.go", src, 0o644); err != nil {
			log.Fatal(err)
		}
	}
	write("typedata_gen.zip", func(b *bytes.Buffer) error { return typeData(b, pkgs) })
	write("docs_gen.zip", func(b *bytes.Buffer) error { return docs(b, pkgs) })
}

func write(name string, fill func(*bytes.Buffer) error) {
	var b bytes.Buffer
	if err := fill(&b); err != nil {
		log.Fatalf("%s: %v", name, err)
	}
	if err := os.WriteFile(name, b.Bytes(), 0o644); err != nil {
		log.Fatal(err)
	}
}

func fileName(path string) string {
	return strings.NewReplacer("/", "_", ".", "_", "-", "_").Replace(path)
}

// load type-checks the packages from source, in the order of paths.
func load(paths []string) ([]*packages.Package, error) {
	got, err := packages.Load(&packages.Config{
		Mode: packages.NeedName | packages.NeedTypes | packages.NeedSyntax | packages.NeedTypesInfo |
			packages.NeedImports | packages.NeedDeps | packages.NeedFiles,
		Fset: token.NewFileSet(),
		Env:  append(os.Environ(), "GOOS=linux", "GOARCH=amd64", "CGO_ENABLED=0"),
	}, paths...)
	if err != nil {
		return nil, err
	}
	by := map[string]*packages.Package{}
	for _, p := range got {
		for _, e := range p.Errors {
			return nil, fmt.Errorf("%s: %v", p.PkgPath, e)
		}
		by[p.PkgPath] = p
	}
	var out []*packages.Package
	for _, path := range paths {
		if by[path] == nil {
			return nil, fmt.Errorf("%s: not found", path)
		}
		out = append(out, by[path])
	}
	return out, nil
}
