package cell

import (
	"go/ast"
	"go/token"
	"go/types"
	"maps"
	"runtime"
	"slices"
	"sort"
)

// Library is what cells may use beside what they declare.
type Library interface {
	// Import returns the types of a package; an error says that cells cannot have it and what there is instead.
	Import(path string) (*types.Package, error)
	// Ready returns the path of a package whose name stands in every cell without an import.
	Ready(name string) (path string, ok bool)
	// Predeclared returns an object that every cell sees as it sees len, or nil.
	Predeclared(name string) types.Object
	// PredeclaredNames lists the names of these objects, sorted.
	PredeclaredNames() []string
}

// Session holds what the cells of a worksheet have declared so far. It is not safe for use by several goroutines.
type Session struct {
	lib     Library
	pkg     *types.Package
	fset    *token.FileSet
	visible map[string]types.Object
	imports map[string]*types.Package // by path: what lib gave
	known   map[types.Object]bool     // everything that cells ever declared at their top level
	funcs   map[*types.Func]*funcEffects
	dead    map[*types.Func]bool // methods that only a refused cell declared
	plain   map[string]bool      // see unnamed
}

// NewSession returns a session in which nothing has been declared yet.
func NewSession(lib Library) *Session {
	return &Session{
		lib:     lib,
		pkg:     types.NewPackage("main", "main"),
		fset:    token.NewFileSet(),
		visible: map[string]types.Object{},
		imports: map[string]*types.Package{},
		known:   map[types.Object]bool{},
		funcs:   map[*types.Func]*funcEffects{},
		dead:    map[*types.Func]bool{},
	}
}

// Fset holds the positions of all checked cells; the file name of a position is the cell's name.
func (s *Session) Fset() *token.FileSet { return s.fset }

// Pkg is the one package that all cells are checked in.
func (s *Session) Pkg() *types.Package { return s.pkg }

// Names lists what the cells have declared and is still visible, sorted.
func (s *Session) Names() []string { return slices.Sorted(maps.Keys(s.visible)) }

// Lookup returns what a name means to the next cell, or nil.
func (s *Session) Lookup(name string) types.Object {
	if o := s.visible[name]; o != nil {
		return o
	}
	if o := s.lib.Predeclared(name); o != nil {
		return o
	}
	if path, ok := s.lib.Ready(name); ok {
		if p, err := s.importPath(path); err == nil {
			return types.NewPkgName(token.NoPos, s.pkg, name, p)
		}
	}
	return nil
}

func (s *Session) importPath(path string) (*types.Package, error) {
	if p := s.imports[path]; p != nil {
		return p, nil
	}
	p, err := s.lib.Import(path)
	if err == nil {
		s.imports[path] = p
	}
	return p, err
}

// Chunk is a checked part of a cell. The variables that Body declares at its top level belong to the session.
type Chunk struct {
	Funcs    []*ast.FuncDecl // functions and methods
	Methods  []Method        // methods of earlier cells' types that get a new text
	Body     *ast.BlockStmt  // the statements; its last may be Last
	Last     ast.Expr        // the expression to show, or nil; not in Body
	Globals  []*types.Var    // what Body declares at its top level, in order
	Info     *types.Info
	Decls    []ast.Decl     // types, constants, functions and methods, as they stand in the text
	declared []types.Object // types, constants, functions
	late     []Method
}

// Declared returns the types, constants and functions that the chunk declares, in order.
func (ch *Chunk) Declared() []types.Object { return ch.declared }

// Checked is a cell that Go accepts.
type Checked struct {
	Name   string
	Chunks []Chunk

	session *Session
	imports []types.Object
}

// Commit makes visible to later cells what the first chunks of a cell declared, and of the chunk after them what its
// first statements declared. A cell that ran to its end commits with (len(Chunks), 0); a chunk whose package variables
// could not all be set up, with -1 statements, declares nothing.
func (c *Checked) Commit(chunks, statements int) {
	put := func(o types.Object) {
		if o.Name() != "_" && o.Name() != "init" {
			c.session.visible[o.Name()] = o
			c.session.known[o] = true
		}
	}
	for _, o := range c.imports {
		put(o)
	}
	for i, ch := range c.Chunks {
		if i > chunks || i == chunks && statements < 0 {
			for _, m := range ch.late { // methods of a chunk that never ran
				c.session.dead[m.Func] = true
			}
			continue
		}
		for _, o := range ch.declared {
			put(o)
		}
		for _, v := range ch.Globals {
			if i < chunks || v.Pos() < endOf(ch.Body, statements) {
				put(v)
			}
		}
	}
}

// UnreadErrors lists the variables of type error that the cell declares at its top level and nothing in it uses.
func (c *Checked) UnreadErrors() []*types.Var {
	used := map[types.Object]bool{}
	for _, ch := range c.Chunks {
		assigned := map[*ast.Ident]bool{} // a name on the left is no use
		ast.Inspect(ch.Body, func(n ast.Node) bool {
			if a, ok := n.(*ast.AssignStmt); ok {
				for _, x := range a.Lhs {
					if id, ok := x.(*ast.Ident); ok {
						assigned[id] = true
					}
				}
			}
			return true
		})
		for id, o := range ch.Info.Uses {
			if !assigned[id] {
				used[o] = true
			}
		}
	}
	var out []*types.Var
	for _, ch := range c.Chunks {
		for _, v := range ch.Globals {
			if types.Identical(v.Type(), errorType) && !used[v] {
				out = append(out, v)
			}
		}
	}
	return out
}

// endOf returns the end of the nth statement of a body.
func endOf(b *ast.BlockStmt, n int) token.Pos {
	switch {
	case n <= 0 || len(b.List) == 0:
		return token.NoPos
	case n > len(b.List):
		n = len(b.List)
	}
	return b.List[n-1].End()
}

// fill empties the package's scope and puts into it what the names in a file mean, but for those it declares itself.
func (s *Session) fill(file *ast.File, extra map[string]types.Object) {
	words := map[string]bool{}
	ast.Inspect(file, func(n ast.Node) bool {
		if id, ok := n.(*ast.Ident); ok {
			words[id.Name] = true
		}
		return true
	})
	for _, n := range topNames(file) {
		delete(words, n)
	}
	*s.pkg = *types.NewPackage("main", "main")
	scope := s.pkg.Scope()
	for _, name := range slices.Sorted(maps.Keys(words)) {
		o := extra[name]
		if o == nil {
			o = s.Lookup(name)
		}
		if o != nil {
			scope.Insert(o)
		}
	}
}

func newInfo() *types.Info {
	return &types.Info{
		Types:      map[ast.Expr]types.TypeAndValue{},
		Instances:  map[*ast.Ident]types.Instance{},
		Defs:       map[*ast.Ident]types.Object{},
		Uses:       map[*ast.Ident]types.Object{},
		Implicits:  map[ast.Node]types.Object{},
		Selections: map[*ast.SelectorExpr]*types.Selection{},
		Scopes:     map[ast.Node]*types.Scope{},
	}
}

func (s *Session) config(report func(error)) *types.Config {
	return &types.Config{
		GoVersion: "go1.26",
		Importer:  importer{s},
		Error:     report,
		Sizes:     types.SizesFor("gc", runtime.GOARCH),
	}
}

type importer struct{ s *Session }

func (i importer) Import(path string) (*types.Package, error) { return i.s.importPath(path) }

// sortByPos orders objects as they stand in the text.
func sortByPos[T types.Object](objs []T) {
	sort.SliceStable(objs, func(i, j int) bool { return objs[i].Pos() < objs[j].Pos() })
}
