package symbols

import (
	"bytes"
	"fmt"
	"go/token"
	"go/types"
	"maps"
	"slices"
	"strings"

	"golang.org/x/tools/go/gcexportdata"

	"swanneck/kernel/sources"
	"swanneck/kernel/symbols/whitelist"
)

// Library gives the checker the types of the packages on the whitelist, read when they are first needed.
// It is not safe for use by several goroutines.
type Library struct {
	fset     *token.FileSet
	imported map[string]*types.Package
	complete map[string]bool
	sources  map[string]*sources.Checked
}

// NewLibrary returns a library that has read nothing yet.
func NewLibrary() *Library {
	return &Library{fset: token.NewFileSet(), imported: map[string]*types.Package{}, complete: map[string]bool{}, sources: map[string]*sources.Checked{}}
}

// Import returns the types of a package.
func (l *Library) Import(path string) (*types.Package, error) {
	if l.complete[path] {
		return l.imported[path], nil
	}
	if !slices.Contains(whitelist.Packages, path) {
		return nil, fmt.Errorf("not supported in cells: import %q (%s)", path, instead(path))
	}
	// Type data may speak of the types of these: they come first.
	for _, p := range sources.Declaring {
		if err := l.source(p); err != nil {
			return nil, err
		}
	}
	if slices.Contains(sources.Paths, path) {
		err := l.source(path)
		return l.imported[path], err
	}
	data, err := TypeData(path)
	if err != nil {
		return nil, err
	}
	p, err := gcexportdata.Read(bytes.NewReader(data), l.fset, l.imported, path)
	if err != nil {
		return nil, fmt.Errorf("symbols: type data of %q: %w", path, err)
	}
	l.complete[path] = true
	return p, nil
}

// source checks a package that is given as source, once.
func (l *Library) source(path string) error {
	if l.complete[path] {
		return nil
	}
	c, err := sources.Check(path, l)
	if err != nil {
		return err
	}
	l.imported[path], l.complete[path], l.sources[path] = c.Pkg, true, c
	return nil
}

// Sources returns the packages that were given as source so far, by path.
func (l *Library) Sources() map[string]*sources.Checked { return l.sources }

// Ready returns the path of a package whose name stands in every cell without an import.
func (l *Library) Ready(name string) (string, bool) {
	path, ok := whitelist.Ready[name]
	return path, ok
}

// ReadyNames lists the names of the packages that need no import, sorted.
func (l *Library) ReadyNames() []string { return slices.Sorted(maps.Keys(whitelist.Ready)) }

// Docs returns a package's documentation by name.
func (l *Library) Docs(path string) (map[string]string, error) { return Docs(path) }

// Predeclared returns the object of the prelude with a name, or nil.
func (l *Library) Predeclared(name string) types.Object {
	if !token.IsExported(name) {
		return nil
	}
	for _, path := range whitelist.Prelude {
		p, err := l.Import(path)
		if err != nil {
			continue
		}
		if o := p.Scope().Lookup(name); o != nil {
			return o
		}
	}
	return nil
}

// PredeclaredNames lists the names of the prelude, sorted.
func (l *Library) PredeclaredNames() []string {
	var out []string
	for _, path := range whitelist.Prelude {
		p, err := l.Import(path)
		if err != nil {
			continue
		}
		for _, n := range p.Scope().Names() {
			if token.IsExported(n) {
				out = append(out, n)
			}
		}
	}
	slices.Sort(out)
	return out
}

// instead says what a cell has in place of a package it cannot import.
func instead(path string) string {
	for _, r := range []struct{ prefix, say string }{
		{"os", "a cell has no files and no processes; what the worksheet needs goes in as values"},
		{"io/", "a cell has no files"},
		{"net", "a cell has no network"},
		{"syscall", "a cell has no system calls"},
		{"unsafe", "a cell keeps to Go's types"},
		{"reflect", "a cell keeps to the types it names; use an interface or a generic function"},
		{"log", "use fmt.Println, or println for standard error"},
		{"bufio", "use strings.Lines or strings.Fields on a string"},
		{"math/", "math, math/big, math/bits, math/cmplx, math/rand and math/rand/v2 are there"},
		{"runtime", "a cell does not see the machine it runs on"},
		{"crypto", "a cell has no cryptography"},
		{"database", "a cell has no database; give a table as values"},
		{"gonum.org/v1/plot", "use the package plots, which needs no import"},
		{"gonum.org/", "of gonum, floats, integrate, interp, mat, optimize, stat and stat/distuv are there"},
		{"swanneck/mathlib/", "alcoholometry, mixing, quantity and sheet are there; the names of sheet need no import"},
	} {
		if path == strings.TrimSuffix(r.prefix, "/") || strings.HasPrefix(path, strings.TrimSuffix(r.prefix, "/")+"/") || strings.HasPrefix(path, r.prefix) && strings.HasSuffix(r.prefix, "/") {
			return r.say
		}
	}
	return "cells can import " + strings.Join(shortList(), ", ")
}

func shortList() []string {
	var out []string
	for _, p := range whitelist.Packages {
		if !strings.Contains(p, ".") && !strings.HasPrefix(p, "swanneck/") {
			out = append(out, p)
		}
	}
	return out
}
