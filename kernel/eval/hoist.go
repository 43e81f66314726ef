package eval

import (
	"go/ast"
	"go/token"
	"go/types"
)

// roots looks at the expressions of a statement and, where a call could change what is read beside it, compiles the
// calls first, in order, into the frame. Go fixes the order of calls and receives only; this is the order its compiler
// gives to the rest: variables are read after the calls.
func (f *fnc) roots(list ...ast.Expr) []exec {
	var top ast.Expr
	if len(list) == 1 {
		top = list[0]
	}
	return f.rootsOf(list, top)
}

// rootsOf is roots with an expression that is evaluated last in any case and so stays where it is.
func (f *fnc) rootsOf(list []ast.Expr, top ast.Expr) []exec {
	s := &hoistScan{f: f}
	for _, e := range list {
		s.walk(e)
	}
	if s.calls == 0 || s.reads == 0 {
		return nil
	}
	if f.hoist == nil {
		f.hoist = map[ast.Expr]*ex{}
	}
	h := &hoister{f: f}
	for _, e := range list {
		h.walk(e, e == top)
	}
	return h.pre
}

// hoistScan counts the calls of an expression, and what beside them depends on memory that a call may change.
type hoistScan struct {
	f            *fnc
	calls, reads int
}

func (s *hoistScan) walk(e ast.Expr) {
	info := s.f.u.info
	if d, ok := e.(deferredRead); ok {
		_ = d
		s.reads++
		return
	}
	ast.Inspect(e, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.FuncLit:
			return false
		case *ast.CallExpr:
			if isCall(info, n) {
				s.calls++
				// What the call's own arguments read counts only if there are calls among them.
				for _, a := range n.Args {
					in := &hoistScan{f: s.f}
					in.walk(a)
					s.calls += in.calls
					if in.calls > 0 || len(n.Args) > 1 {
						s.reads += in.reads
					}
				}
				if sel, ok := ast.Unparen(n.Fun).(*ast.SelectorExpr); ok {
					in := &hoistScan{f: s.f}
					in.walk(sel.X)
					s.calls += in.calls
				} else if fl, ok := ast.Unparen(n.Fun).(*ast.CallExpr); ok {
					in := &hoistScan{f: s.f}
					in.walk(fl)
					s.calls += in.calls
				}
				if s.calls == 1 {
					return false
				}
				return false
			}
		case *ast.UnaryExpr:
			if n.Op == token.ARROW {
				s.calls++
			}
		case *ast.Ident:
			if v, ok := info.Uses[n].(*types.Var); ok && !v.IsField() {
				if l := s.f.lookupKind(v); l != inFrame {
					s.reads++
				}
			}
		case *ast.IndexExpr, *ast.StarExpr, *ast.SliceExpr, *ast.TypeAssertExpr:
			if tv := info.Types[n.(ast.Expr)]; tv.Value == nil && !tv.IsType() {
				s.reads++
			}
		case *ast.SelectorExpr:
			if sel := info.Selections[n]; sel != nil {
				s.reads++
			}
		}
		return true
	})
}

// lookupKind tells where a variable is without capturing it.
func (f *fnc) lookupKind(v *types.Var) locKind {
	if l, ok := f.vars[v]; ok {
		return l.kind
	}
	return global
}

// isCall says whether a call expression runs a function that could be the cell's.
func isCall(info *types.Info, e *ast.CallExpr) bool {
	tv := info.Types[ast.Unparen(e.Fun)]
	return !tv.IsType() && !tv.IsBuiltin()
}

type hoister struct {
	f   *fnc
	pre []exec
}

// walk compiles the calls below e in order. top says that e is a whole right side, where a call need not be moved
// unless something else is read after it.
func (h *hoister) walk(e ast.Expr, top bool) {
	f := h.f
	info := f.u.info
	if tv, ok := info.Types[e]; ok && tv.Value != nil {
		return
	}
	switch e := e.(type) {
	case deferredRead, *ast.FuncLit, *ast.Ident, *ast.BasicLit:
	case *ast.ParenExpr:
		h.walk(e.X, top)
	case *ast.CallExpr:
		if info.Types[ast.Unparen(e.Fun)].IsType() {
			h.walk(e.Args[0], false)
			return
		}
		if sel, ok := ast.Unparen(e.Fun).(*ast.SelectorExpr); ok {
			h.walk(sel.X, false)
		} else if isCall(info, e) {
			h.walk(e.Fun, false)
		}
		for _, a := range e.Args {
			if tv := info.Types[a]; tv.IsType() {
				continue
			}
			h.walk(a, false)
		}
		if top || h.f.hasNoValue(e) {
			return
		}
		if tup, ok := info.TypeOf(e).(*types.Tuple); ok && tup.Len() != 1 {
			return
		}
		h.move(e)
	case *ast.BinaryExpr:
		if e.Op == token.LAND || e.Op == token.LOR {
			in := &hoistScan{f: f}
			in.walk(e.X)
			in.walk(e.Y)
			if in.calls > 0 && !top {
				h.move(e)
			}
			return
		}
		h.walk(e.X, false)
		h.walk(e.Y, false)
	case *ast.UnaryExpr:
		if lit, ok := ast.Unparen(e.X).(*ast.CompositeLit); ok && e.Op == token.AND {
			h.walk(lit, false)
			return
		}
		h.walk(e.X, false)
		if e.Op == token.ARROW && !top {
			h.move(e)
		}
	case *ast.StarExpr:
		h.walk(e.X, false)
	case *ast.SelectorExpr:
		if info.Selections[e] != nil {
			h.walk(e.X, false)
		}
	case *ast.IndexExpr:
		if info.Types[e.X].IsValue() {
			h.walk(e.X, false)
			if info.Types[e.Index].IsValue() {
				h.walk(e.Index, false)
			}
		}
	case *ast.SliceExpr:
		h.walk(e.X, false)
		for _, x := range []ast.Expr{e.Low, e.High, e.Max} {
			if x != nil {
				h.walk(x, false)
			}
		}
	case *ast.TypeAssertExpr:
		h.walk(e.X, false)
	case *ast.CompositeLit:
		for _, el := range e.Elts {
			if kv, ok := el.(*ast.KeyValueExpr); ok {
				if info.Types[kv.Key].IsValue() {
					h.walk(kv.Key, false)
				}
				el = kv.Value
			}
			h.walk(el, false)
		}
	}
}

// move computes e ahead; its value stands in the frame from then on.
func (h *hoister) move(e ast.Expr) {
	x := h.f.expr(e)
	if x.fn == nil || x.cv != nil {
		return
	}
	k := h.f.keep(x)
	h.pre = append(h.pre, k.run)
	h.f.hoist[e] = k.x
}

// beforeEx is an expression after what was moved ahead of it.
func (f *fnc) beforeEx(pre []exec, x *ex) *ex {
	y := *x
	y.local, y.fresh, y.addr, y.cv = false, nil, nil, nil
	if x.fn != nil {
		y.fn = x.ti.ops.before(pre, x.fn)
	}
	if call := x.call; call != nil {
		y.call = func(fr *frame) *frame {
			for _, p := range pre {
				p(fr)
			}
			return call(fr)
		}
	}
	return &y
}

// hasNoValue says that a call is of a builtin that gives nothing.
func (f *fnc) hasNoValue(e ast.Expr) bool {
	tv := f.u.info.Types[e]
	return tv.IsVoid() || tv.Value != nil
}
