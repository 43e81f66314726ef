package engine_test

import (
	"context"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

const corpus = "../../testdata/conformance"

// Every program of the corpus, as a cell and as a whole program, prints what `go run` printed.
func TestConformanceOfCells(t *testing.T) {
	files, err := filepath.Glob(corpus + "/*/*.go")
	if err != nil || len(files) < 300 {
		t.Fatalf("%d programs, %v; there must be 300", len(files), err)
	}
	e := start(t, engine.Options{})
	same, refused := 0, 0
	for _, file := range files {
		src, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		want, err := os.ReadFile(strings.TrimSuffix(file, ".go") + ".out")
		if err != nil {
			t.Fatal(err)
		}
		for form, text := range map[string]string{"program": string(src), "cell": asCell(t, file, string(src))} {
			if err := e.Forget(); err != nil {
				t.Fatal(err)
			}
			out := stdout{&strings.Builder{}}
			err := e.Run(context.Background(), "cell", text, out)
			var f *engine.Failure
			switch {
			case err != nil && !errors.As(err, &f):
				t.Fatal(err)
			case f != nil && f.Kind == engine.Refused && strings.Contains(f.Error(), "not supported in cells: "):
				refused++
				t.Logf("%s as a %s: refused: %v", file, form, f)
			case f != nil:
				t.Errorf("%s as a %s: %v", file, form, f)
			case out.String() != string(want):
				t.Errorf("%s as a %s prints\n%s\nwant\n%s", file, form, out.String(), want)
			default:
				same++
			}
		}
	}
	t.Logf("%d the same, %d refused by name, of %d", same, refused, 2*len(files))
	if refused*100 > 3*2*len(files) {
		t.Errorf("%d of %d refused; at most 3 %% may be", refused, 2*len(files))
	}
}

// asCell writes a program as one cell: imports and declarations, then the statements of main.
func asCell(t *testing.T, name, src string) string {
	t.Helper()
	fset := token.NewFileSet()
	f, err := parser.ParseFile(fset, name, src, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	at := func(p token.Pos) int { return fset.Position(p).Offset }
	var decls, body strings.Builder
	for _, d := range f.Decls {
		if fd, ok := d.(*ast.FuncDecl); ok && fd.Recv == nil && fd.Name.Name == "main" {
			fmt.Fprintln(&body, src[at(fd.Body.Lbrace)+1:at(fd.Body.Rbrace)])
			continue
		}
		fmt.Fprintln(&decls, src[at(d.Pos()):at(d.End())])
	}
	return decls.String() + body.String()
}

type stdout struct{ *strings.Builder }

func (s stdout) Stream(name, text string) {
	if name == "stdout" {
		s.WriteString(text)
	}
}
func (s stdout) Display(display.Bundle) {}
func (s stdout) Value(display.Bundle)   {}
