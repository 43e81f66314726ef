package sources

import (
	"embed"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"slices"
	"strings"
)

//go:embed _src/*/*.go
var files embed.FS

// Paths lists the packages given as source, sorted.
var Paths = []string{"cmp", "iter", "maps", "slices"}

// Declaring lists those of Paths that declare types, sorted. They must be checked before type data is read that speaks
// of these types.
var Declaring = []string{"cmp", "iter"}

// Checked is a package of Paths after the checker has been over it.
type Checked struct {
	Pkg   *types.Package
	Files []*ast.File // without comments
	Info  *types.Info
	Fset  *token.FileSet // positions read as slices/sort.go:12
}

// Check parses and checks a package of Paths. What it imports, other packages of Paths, comes from imp. Nothing is kept:
// a second call gives a second package, whose types are not identical with the first's.
func Check(path string, imp types.Importer) (*Checked, error) {
	if !slices.Contains(Paths, path) {
		return nil, fmt.Errorf("sources.Check: no source of package %q; there is source of %s", path, strings.Join(Paths, ", "))
	}
	folder := "_src/" + path
	entries, err := files.ReadDir(folder)
	if err != nil {
		return nil, fmt.Errorf("sources.Check: package %q: %w", path, err)
	}
	c := &Checked{
		Fset: token.NewFileSet(),
		Info: &types.Info{
			Types:      map[ast.Expr]types.TypeAndValue{},
			Instances:  map[*ast.Ident]types.Instance{},
			Defs:       map[*ast.Ident]types.Object{},
			Uses:       map[*ast.Ident]types.Object{},
			Implicits:  map[ast.Node]types.Object{},
			Selections: map[*ast.SelectorExpr]*types.Selection{},
			Scopes:     map[ast.Node]*types.Scope{},
		},
	}
	for _, e := range entries {
		text, err := files.ReadFile(folder + "/" + e.Name())
		if err != nil {
			return nil, fmt.Errorf("sources.Check: package %q: %w", path, err)
		}
		f, err := parser.ParseFile(c.Fset, path+"/"+e.Name(), text, parser.SkipObjectResolution)
		if err != nil {
			return nil, fmt.Errorf("sources.Check: package %q: %w", path, err)
		}
		c.Files = append(c.Files, f)
	}
	conf := types.Config{Importer: imp, GoVersion: "go1.26"}
	if c.Pkg, err = conf.Check(path, c.Fset, c.Files, c.Info); err != nil {
		return nil, fmt.Errorf("sources.Check: package %q: %w", path, err)
	}
	return c, nil
}
