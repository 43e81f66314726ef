package symbols

import (
	"go/token"
	"go/types"
	"strings"
	"testing"

	"swanneck/kernel/symbols/whitelist"
)

// Every package of the whitelist has types, values and documentation that agree.
func TestWhitelist(t *testing.T) {
	l := NewLibrary()
	for _, path := range whitelist.Packages {
		p, err := l.Import(path)
		if err != nil {
			t.Errorf("%s: %v", path, err)
			continue
		}
		values := Values(path)
		if values == nil {
			t.Errorf("%s: no values", path)
			continue
		}
		for name := range values {
			if name[0] != '_' && p.Scope().Lookup(name) == nil {
				t.Errorf("%s.%s has a value and no type", path, name)
			}
		}
		if docs, err := Docs(path); err != nil || docs[""] == "" {
			t.Errorf("%s: no documentation (%v)", path, err)
		}
	}
	if l.Predeclared("Reduce") == nil || l.Predeclared("Result") == nil || l.Predeclared("reduce") != nil {
		t.Error("the prelude is not what it should be")
	}
}

func TestEveryPreludeNameIsDocumented(t *testing.T) {
	for _, path := range whitelist.Prelude {
		docs, err := Docs(path)
		if err != nil {
			t.Fatal(err)
		}
		for name := range Values(path) {
			if name[0] != '_' && strings.TrimSpace(docs[name]) == "" {
				t.Errorf("%s.%s has no documentation", path, name)
			}
		}
	}
}

// A refused import says what there is instead.
func TestInstead(t *testing.T) {
	l := NewLibrary()
	for path, want := range map[string]string{
		"os": "no files", "os/exec": "no files", "net/http": "no network", "unsafe": "Go's types", "reflect": "names",
		"log": "fmt.Println", "gonum.org/v1/plot": "plots", "gonum.org/v1/gonum/blas": "of gonum", "example.org/x": "cells can import",
		"swanneck/mathlib/internal/datafile": "alcoholometry", "runtime": "machine", "crypto/sha256": "cryptography",
	} {
		_, err := l.Import(path)
		if err == nil || !strings.HasPrefix(err.Error(), "not supported in cells: import ") || !strings.Contains(err.Error(), want) {
			t.Errorf("import %q: %v; want … %s", path, err, want)
		}
	}
}

// What a session reads before its first cell: the prelude and the packages that need no import.
func BenchmarkTypeData(b *testing.B) {
	for b.Loop() {
		l := NewLibrary()
		l.PredeclaredNames()
		for _, path := range whitelist.Ready {
			if _, err := l.Import(path); err != nil {
				b.Fatal(err)
			}
		}
	}
}

// Values of a type can be made and handed on only if its package is on the whitelist: whatever the predeclared functions
// take or give must come from there.
func TestPredeclaredTypesAreWhitelisted(t *testing.T) {
	lib := NewLibrary()
	listed := map[string]bool{}
	for _, p := range whitelist.Packages {
		listed[p] = true
	}
	seen := map[types.Type]bool{}
	n := 0
	var walk func(from string, t types.Type)
	walk = func(from string, typ types.Type) {
		if seen[typ] {
			return
		}
		seen[typ] = true
		switch x := types.Unalias(typ).(type) {
		case *types.Named:
			if p := x.Obj().Pkg(); p != nil && strings.HasPrefix(p.Path(), "swanneck/") {
				n++
				if !listed[p.Path()] {
					t.Errorf("%s uses %s.%s, and %s is not on the whitelist", from, p.Name(), x.Obj().Name(), p.Path())
				}
				for m := range x.Methods() {
					if m.Exported() {
						walk(from, m.Type())
					}
				}
			}
			if st, ok := x.Underlying().(*types.Struct); ok {
				for f := range st.Fields() {
					if f.Exported() {
						walk(from, f.Type())
					}
				}
			}
		case *types.Pointer:
			walk(from, x.Elem())
		case *types.Slice:
			walk(from, x.Elem())
		case *types.Array:
			walk(from, x.Elem())
		case *types.Map:
			walk(from, x.Key())
			walk(from, x.Elem())
		case *types.Signature:
			for v := range x.Params().Variables() {
				walk(from, v.Type())
			}
			for v := range x.Results().Variables() {
				walk(from, v.Type())
			}
		}
	}
	for _, name := range lib.PredeclaredNames() {
		walk(name, lib.Predeclared(name).Type())
	}
	if n < 20 {
		t.Errorf("only %d types were looked at", n)
	}
}

// The predeclared packages do not take each other's names.
func TestPreludeNamesAreNamedOnce(t *testing.T) {
	from := map[string]string{}
	for _, path := range whitelist.Prelude {
		p, err := NewLibrary().Import(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range p.Scope().Names() {
			if !token.IsExported(name) || name == "Stop" { // each has its own, which no cell writes
				continue
			}
			if other, twice := from[name]; twice {
				t.Errorf("%s is declared in %s and in %s", name, other, path)
			}
			from[name] = path
		}
	}
}
