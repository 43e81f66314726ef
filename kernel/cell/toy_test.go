package cell

import (
	"fmt"
	"go/ast"
	gimporter "go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"sort"
)

// toyLibrary has the standard library, read from source, and three predeclared functions of the trade's kind.
type toyLibrary struct {
	std   types.Importer
	sheet *types.Package
}

const toySheet = `package sheet
type Strength struct{ w float64 }
func ABV(pct float64) Strength { return Strength{pct} }
func Reduce(from, to Strength) float64 { return from.w - to.w }
func Blend(s ...Strength) Strength { return s[0] }
`

var toy = newToyLibrary()

func newToyLibrary() *toyLibrary {
	fset := token.NewFileSet()
	f, err := parser.ParseFile(fset, "sheet.go", toySheet, 0)
	if err != nil {
		panic(err)
	}
	p, err := (&types.Config{}).Check("toy/sheet", fset, []*ast.File{f}, nil)
	if err != nil {
		panic(err)
	}
	return &toyLibrary{gimporter.ForCompiler(token.NewFileSet(), "source", nil), p}
}

func (l *toyLibrary) Import(path string) (*types.Package, error) {
	switch path {
	case "fmt", "strings", "strconv", "errors", "math", "sort", "bytes":
		return l.std.Import(path)
	}
	return nil, fmt.Errorf("not supported in cells: import %q (a cell has no such thing)", path)
}

func (l *toyLibrary) Ready(name string) (string, bool) {
	switch name {
	case "fmt", "strings", "strconv", "errors", "math", "sort":
		return name, true
	}
	return "", false
}

func (l *toyLibrary) Predeclared(name string) types.Object {
	if !token.IsExported(name) {
		return nil
	}
	return l.sheet.Scope().Lookup(name)
}

func (l *toyLibrary) PredeclaredNames() []string {
	var out []string
	for _, n := range l.sheet.Scope().Names() {
		if token.IsExported(n) {
			out = append(out, n)
		}
	}
	sort.Strings(out)
	return out
}
