package sources_test

import (
	"bytes"
	"errors"
	"go/ast"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/go/gcexportdata"

	"swanneck/kernel/sources"
	"swanneck/kernel/symbols"
)

// chain imports packages of sources from their source, once each.
type chain map[string]*sources.Checked

func (c chain) Import(path string) (*types.Package, error) {
	if k := c[path]; k != nil {
		return k.Pkg, nil
	}
	k, err := sources.Check(path, c)
	if err != nil {
		return nil, err
	}
	c[path] = k
	return k.Pkg, nil
}

func TestCheck(t *testing.T) {
	folders, err := filepath.Glob("_src/*")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, f := range folders {
		names = append(names, filepath.Base(f))
	}
	if !slices.Equal(names, sources.Paths) {
		t.Errorf("Paths = %q; the folders of _src are %q", sources.Paths, names)
	}
	imp := chain{}
	for _, path := range sources.Paths {
		p, err := imp.Import(path)
		if err != nil {
			t.Errorf("Check(%q): %v", path, err)
			continue
		}
		if p.Path() != path || p.Name() != path || !p.Complete() {
			t.Errorf("Check(%q) gives %v, complete %v", path, p, p.Complete())
		}
		k := imp[path]
		if want, err := os.ReadDir("_src/" + path); err != nil || len(k.Files) != len(want) {
			t.Errorf("Check(%q) has %d files, _src has %d, %v", path, len(k.Files), len(want), err)
		}
		for _, f := range k.Files {
			if at := k.Fset.Position(f.Package); !strings.HasPrefix(at.Filename, path+"/") || at.Line < 1 {
				t.Errorf("Check(%q): a file stands at %v", path, at)
			}
			for _, d := range f.Decls {
				if fd, ok := d.(*ast.FuncDecl); ok && k.Info.Defs[fd.Name] == nil {
					t.Errorf("Check(%q): nothing is known of %s", path, fd.Name.Name)
				}
			}
		}
		declares := false
		for _, n := range p.Scope().Names() {
			switch o := p.Scope().Lookup(n).(type) {
			case *types.TypeName:
				declares = declares || o.Exported()
			case *types.Var:
				t.Errorf("%s.%s is a variable: nothing would set it", path, n)
			}
		}
		if got := slices.Contains(sources.Declaring, path); got != declares {
			t.Errorf("Declaring has %q: %v; that it exports a type: %v", path, got, declares)
		}
		for _, i := range p.Imports() {
			if !slices.Contains(sources.Declaring, i.Path()) {
				t.Errorf("%s imports %s; the sources import %q only", path, i.Path(), sources.Declaring)
			}
		}
	}
}

type noImports struct{}

func (noImports) Import(path string) (*types.Package, error) {
	return nil, errors.New("none of " + path)
}

func TestCheckErrors(t *testing.T) {
	for _, c := range []struct{ path, want string }{
		{"os", `sources.Check: no source of package "os"; there is source of cmp, iter, maps, slices`},
		{"", `sources.Check: no source of package ""; there is source of cmp, iter, maps, slices`},
		{"maps", "none of iter"},
	} {
		if k, err := sources.Check(c.path, noImports{}); err == nil || k != nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("Check(%q) = %v, %v; want an error with %s", c.path, k, err, c.want)
		}
	}
	if _, err := sources.Check("cmp", nil); err != nil {
		t.Errorf("Check(cmp) without an importer: %v; it imports nothing", err)
	}
}

// Type data that speaks of iter.Seq and cmp.Ordered means the types that were checked from source.
func TestOneTypeWithTypeData(t *testing.T) {
	imp := chain{}
	known := map[string]*types.Package{}
	for _, path := range sources.Declaring {
		p, err := imp.Import(path)
		if err != nil {
			t.Fatal(err)
		}
		known[path] = p
	}
	data, err := symbols.TypeData("strings")
	if err != nil {
		t.Fatal(err)
	}
	str, err := gcexportdata.Read(bytes.NewReader(data), token.NewFileSet(), known, "strings")
	if err != nil {
		t.Fatal(err)
	}
	if known["iter"] != imp["iter"].Pkg {
		t.Fatal("reading strings has put another iter in the place of ours")
	}
	got := str.Scope().Lookup("Lines").(*types.Func).Signature().Results().At(0).Type()
	want, err := types.Instantiate(nil, known["iter"].Scope().Lookup("Seq").Type(), []types.Type{types.Typ[types.String]}, true)
	if err != nil {
		t.Fatal(err)
	}
	if !types.Identical(got, want) {
		t.Errorf("strings.Lines returns %v, which is not our %v", got, want)
	}
}

func BenchmarkCheck(b *testing.B) {
	for _, path := range sources.Paths {
		b.Run(path, func(b *testing.B) {
			imp := chain{}
			for _, p := range sources.Declaring {
				if _, err := imp.Import(p); err != nil {
					b.Fatal(err)
				}
			}
			for b.Loop() {
				if _, err := sources.Check(path, imp); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
