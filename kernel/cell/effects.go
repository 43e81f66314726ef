package cell

import (
	"go/ast"
	"go/token"
	"go/types"
	"slices"
	"sort"
	"strings"
)

// Effects is what a cell does to the session: the objects it defines, uses and changes. Changing is judged on the safe
// side: what may change counts as changed.
type Effects struct {
	Defines, Uses, Changes []types.Object // each in the order of position
}

// funcEffects is what calling a function of the session does, beside its results.
type funcEffects struct {
	uses, changes map[types.Object]bool
	calls         map[*types.Func]bool
	params        []bool // by parameter: may what it refers to be changed?
}

// Effects returns what a cell does. Functions that earlier cells declared are followed.
func (c *Checked) Effects() Effects {
	e := effects{session: c.session, own: map[types.Object]bool{}}
	e.body = funcEffects{uses: map[types.Object]bool{}, changes: map[types.Object]bool{}, calls: map[*types.Func]bool{}}
	var defines []types.Object
	for _, ch := range c.Chunks {
		defines = append(defines, ch.declared...)
		for _, v := range ch.Globals {
			defines = append(defines, v)
		}
	}
	for _, o := range defines {
		e.own[o] = true
	}
	for i := range c.Chunks {
		ch := &c.Chunks[i]
		for _, fd := range ch.Funcs {
			if fn, ok := ch.Info.Defs[fd.Name].(*types.Func); ok && fd.Body != nil {
				c.session.funcs[fn] = e.function(ch.Info, fn, fd)
			}
		}
		for _, d := range ch.Decls {
			if g, ok := d.(*ast.GenDecl); ok {
				e.walk(ch.Info, g, &e.body)
			}
		}
		e.walk(ch.Info, ch.Body, &e.body)
		if ch.Last != nil {
			e.walk(ch.Info, ch.Last, &e.body)
		}
	}
	// What the body calls it does; what its functions use it depends on.
	uses, changes := map[types.Object]bool{}, map[types.Object]bool{}
	add := func(f *funcEffects, called bool) {
		for o := range f.uses {
			uses[o] = true
		}
		if called {
			for o := range f.changes {
				changes[o] = true
			}
		}
	}
	add(&e.body, true)
	called := c.session.reach(e.body.calls)
	for fn := range called {
		add(c.session.funcs[fn], true)
	}
	for _, o := range defines {
		if fn, ok := o.(*types.Func); ok && c.session.funcs[fn] != nil {
			for g := range c.session.reach(map[*types.Func]bool{fn: true}) {
				add(c.session.funcs[g], false)
			}
		}
	}
	outside := func(m map[types.Object]bool) []types.Object {
		var out []types.Object
		for o := range m {
			if !e.own[o] && e.global(o) {
				out = append(out, o)
			}
		}
		sortByPos(out)
		return out
	}
	sortByPos(defines)
	return Effects{Defines: defines, Uses: outside(uses), Changes: outside(changes)}
}

// reach returns the functions of the session that may run when some are called.
func (s *Session) reach(from map[*types.Func]bool) map[*types.Func]bool {
	out := map[*types.Func]bool{}
	var visit func(*types.Func)
	visit = func(fn *types.Func) {
		f := s.funcs[fn]
		if f == nil || out[fn] {
			return
		}
		out[fn] = true
		for g := range f.calls {
			visit(g)
		}
	}
	for fn := range from {
		visit(fn)
	}
	return out
}

type effects struct {
	session *Session
	own     map[types.Object]bool
	body    funcEffects
}

// global says whether an object belongs to the session: not to a library and not to a function.
func (e *effects) global(o types.Object) bool {
	if o == nil || o.Pkg() != e.session.pkg {
		return false
	}
	if e.own[o] || e.session.known[o] {
		return true
	}
	return false
}

func (e *effects) function(info *types.Info, fn *types.Func, fd *ast.FuncDecl) *funcEffects {
	f := &funcEffects{uses: map[types.Object]bool{}, changes: map[types.Object]bool{}, calls: map[*types.Func]bool{}}
	e.walk(info, fd.Body, f)
	sig := fn.Signature()
	touched := map[types.Object]bool{}
	for o := range f.changes {
		touched[o] = true
	}
	for i := range sig.Params().Len() {
		f.params = append(f.params, touched[sig.Params().At(i)])
	}
	return f
}

// walk notes what a piece of code uses, changes and calls. Changes hold local variables too: parameters are read off.
func (e *effects) walk(info *types.Info, n ast.Node, f *funcEffects) {
	change := func(x ast.Expr) {
		if o := root(info, x); o != nil {
			f.changes[o] = true
		}
	}
	ast.Inspect(n, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Ident:
			if o := info.Uses[n]; e.global(o) {
				f.uses[o] = true
				if fn, ok := o.(*types.Func); ok {
					f.calls[fn] = true // a function that is only named may be called by whoever it is given to
				}
			}
		case *ast.AssignStmt:
			for _, x := range n.Lhs {
				if n.Tok != token.DEFINE {
					change(x)
				}
			}
		case *ast.IncDecStmt:
			change(n.X)
		case *ast.RangeStmt:
			if n.Tok == token.ASSIGN {
				for _, x := range []ast.Expr{n.Key, n.Value} {
					if x != nil {
						change(x)
					}
				}
			}
		case *ast.SendStmt:
			change(n.Chan)
		case *ast.UnaryExpr:
			if n.Op == token.AND || n.Op == token.ARROW {
				change(n.X)
			}
		case *ast.CallExpr:
			e.call(info, n, f, change)
		}
		return true
	})
}

// call notes what a call may change: its receiver if that is a pointer, and what its arguments refer to.
func (e *effects) call(info *types.Info, n *ast.CallExpr, f *funcEffects, change func(ast.Expr)) {
	if tv := info.Types[n.Fun]; tv.IsType() {
		return
	}
	fun := ast.Unparen(n.Fun)
	switch x := fun.(type) { // a generic function's arguments
	case *ast.IndexExpr:
		fun = x.X
	case *ast.IndexListExpr:
		fun = x.X
	}
	var callee types.Object
	switch x := fun.(type) {
	case *ast.Ident:
		callee = info.Uses[x]
	case *ast.SelectorExpr:
		callee = info.Uses[x.Sel]
		if s := info.Selections[x]; s != nil {
			fn, ok := s.Obj().(*types.Func)
			if ok && !readsReceiver(fn) {
				change(x.X)
			}
			if ok && fn.Pkg() == e.session.pkg {
				f.calls[fn] = true
			}
		}
	}
	switch o := callee.(type) {
	case *types.Builtin:
		switch o.Name() {
		case "copy", "clear", "delete", "close":
			change(n.Args[0])
		case "append":
			change(n.Args[0]) // its spare room may be written to
		}
		return
	case *types.Func:
		if o.Pkg() != e.session.pkg {
			if readsArguments(o) {
				return
			}
			break
		}
		if g := e.session.funcs[o]; g != nil {
			for i, a := range n.Args {
				if k := min(i, len(g.params)-1); k >= 0 && g.params[k] && refers(info.Types[a].Type, nil) {
					change(a)
				}
			}
			return
		}
	}
	for _, a := range n.Args {
		if refers(info.Types[a].Type, nil) {
			change(a)
		}
	}
}

// root finds the variable that an expression is a part of, or refers into.
func root(info *types.Info, x ast.Expr) types.Object {
	for {
		switch y := ast.Unparen(x).(type) {
		case *ast.Ident:
			if v, ok := info.Uses[y].(*types.Var); ok {
				return v
			}
			return nil
		case *ast.SelectorExpr:
			if info.Selections[y] == nil {
				return nil // a name of a package
			}
			x = y.X
		case *ast.IndexExpr:
			x = y.X
		case *ast.SliceExpr:
			x = y.X
		case *ast.StarExpr:
			x = y.X
		case *ast.UnaryExpr:
			x = y.X
		case *ast.TypeAssertExpr:
			x = y.X
		default:
			return nil
		}
	}
}

// refers says whether a value of a type leads to memory that others see.
func refers(t types.Type, seen []types.Type) bool {
	if t == nil || slices.Contains(seen, t) {
		return false
	}
	switch u := t.Underlying().(type) {
	case *types.Pointer, *types.Slice, *types.Map, *types.Chan, *types.Interface, *types.Signature:
		return true
	case *types.Array:
		return refers(u.Elem(), append(seen, t))
	case *types.Struct:
		for i := range u.NumFields() {
			if refers(u.Field(i).Type(), append(seen, t)) {
				return true
			}
		}
	}
	return false
}

// readsArguments says whether a library function leaves what its arguments refer to as it is.
func readsArguments(fn *types.Func) bool {
	if fn.Pkg() == nil {
		return true
	}
	switch fn.Pkg().Path() {
	case "sort", "slices", "maps", "container/heap", "container/list", "container/ring", "io", "encoding/json", "sync", "sync/atomic":
		switch fn.Name() {
		case "SliceIsSorted", "IsSorted", "Search", "SearchInts", "SearchFloat64s", "SearchStrings", "Float64sAreSorted", "IntsAreSorted",
			"StringsAreSorted", "Contains", "ContainsFunc", "Index", "IndexFunc", "Equal", "EqualFunc", "Compare", "CompareFunc", "Max", "Min",
			"MaxFunc", "MinFunc", "Clone", "Sorted", "SortedFunc", "Collect", "Keys", "Values", "All", "BinarySearch", "BinarySearchFunc",
			"Concat", "Repeat", "Marshal", "MarshalIndent", "Valid":
			return true
		}
		return false
	case "fmt":
		return !strings.HasPrefix(fn.Name(), "Fprint") && !strings.HasPrefix(fn.Name(), "Sscan") && !strings.HasPrefix(fn.Name(), "Fscan") && !strings.HasPrefix(fn.Name(), "Append")
	case "gonum.org/v1/gonum/floats":
		switch fn.Name() {
		case "Sum", "Max", "Min", "MaxIdx", "MinIdx", "Dot", "Norm", "Distance", "Equal", "EqualApprox", "Prod", "Count", "HasNaN":
			return true
		}
		return false
	case "gonum.org/v1/gonum/stat":
		return !strings.HasPrefix(fn.Name(), "Sort")
	case "strings", "strconv", "math", "math/bits", "math/cmplx", "errors", "unicode", "unicode/utf8", "unicode/utf16", "time", "regexp",
		"cmp", "gonum.org/v1/gonum/integrate", "swanneck/plots", "swanneck/mathlib/sheet", "swanneck/mathlib/quantity",
		"swanneck/mathlib/alcoholometry", "swanneck/mathlib/mixing", "swanneck/worksheets/cellapi":
		return true
	}
	return false
}

// readsReceiver says whether a method leaves its receiver as it is. Of a library's pointer methods few are known to.
func readsReceiver(fn *types.Func) bool {
	recv := fn.Signature().Recv()
	if recv == nil {
		return true
	}
	p, ok := recv.Type().(*types.Pointer)
	if !ok {
		return !refers(recv.Type(), nil) || fn.Pkg() != nil && fn.Pkg().Path() != "main"
	}
	n, ok := p.Elem().(*types.Named)
	if !ok || n.Obj().Pkg() == nil {
		return false
	}
	switch n.Obj().Pkg().Path() + "." + n.Obj().Name() {
	case "regexp.Regexp", "time.Location":
		return true
	case "strings.Builder", "bytes.Buffer", "swanneck/plots.Chart":
		return slices.Contains([]string{"String", "Len", "Cap", "Bytes", "Available", "AltText", "SVG", "PNG"}, fn.Name())
	}
	return false
}

// Stale returns which cells must run again after cell number edited (from 0) was changed: those that use or change
// what it, or another stale cell, defines or changes. cells is in the order of the worksheet. The numbers are sorted.
func Stale(cells []Effects, edited int) []int {
	dirty := map[types.Object]bool{}
	mark := func(e Effects) {
		for _, o := range e.Defines {
			dirty[o] = true
		}
		for _, o := range e.Changes {
			dirty[o] = true
		}
	}
	if edited < 0 || edited >= len(cells) {
		return nil
	}
	mark(cells[edited])
	var out []int
	for i := edited + 1; i < len(cells); i++ {
		touched := func(objs []types.Object) bool {
			return slices.ContainsFunc(objs, func(o types.Object) bool { return dirty[o] })
		}
		if touched(cells[i].Uses) || touched(cells[i].Changes) {
			out = append(out, i)
			mark(cells[i])
		}
	}
	sort.Ints(out)
	return out
}
