package sources_test

import (
	"go/importer"
	"go/token"
	"go/types"
	"testing"

	"swanneck/kernel/sources"
)

// Cells and their readers see the standard library: same names, same signatures down to the parameters' names.
// Source: the standard library of the Go that runs the test.
func TestSignatures(t *testing.T) {
	real := importer.ForCompiler(token.NewFileSet(), "source", nil)
	imp := chain{}
	for _, path := range sources.Paths {
		want, err := real.Import(path)
		if err != nil {
			t.Skipf("the standard library's source of %s is not here: %v", path, err)
		}
		got, err := imp.Import(path)
		if err != nil {
			t.Fatal(err)
		}
		ours, theirs := exported(got), exported(want)
		if len(theirs) == 0 {
			t.Fatalf("%s exports nothing", path)
		}
		for n, w := range theirs {
			if g := ours[n]; g == "" {
				t.Errorf("%s.%s is missing; want %s", path, n, w)
			} else if g != w {
				t.Errorf("%s.%s is\n%s\nwant\n%s", path, n, g, w)
			}
		}
		for n, g := range ours {
			if theirs[n] == "" {
				t.Errorf("%s.%s is not in the standard library: %s", path, n, g)
			}
		}
	}
}

// exported describes what a package exports: signatures, and of types also the underlying type and the methods.
func exported(p *types.Package) map[string]string {
	byPath := func(q *types.Package) string { return q.Path() }
	out := map[string]string{}
	for _, n := range p.Scope().Names() {
		o := p.Scope().Lookup(n)
		if !o.Exported() {
			continue
		}
		s := types.ObjectString(o, byPath)
		if tn, ok := o.(*types.TypeName); ok {
			s += " = " + types.TypeString(tn.Type().Underlying(), byPath)
			ms := types.NewMethodSet(types.NewPointer(tn.Type()))
			for m := range ms.Methods() {
				s += "; " + types.ObjectString(m.Obj(), byPath)
			}
		}
		out[n] = s
	}
	return out
}
