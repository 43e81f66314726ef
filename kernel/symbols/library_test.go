package symbols

import (
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
		"swanneck/mathlib/still": "alcoholometry", "runtime": "machine", "crypto/sha256": "cryptography",
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
