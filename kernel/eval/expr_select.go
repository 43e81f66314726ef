package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"unsafe"
)

// picked is a selection with type arguments filled in.
type picked struct {
	kind  types.SelectionKind
	recv  types.Type
	obj   types.Object
	index []int
}

// pick returns what x.name selects, or nil for a name of a package.
func (f *fnc) pick(e *ast.SelectorExpr) *picked {
	s := f.u.info.Selections[e]
	if s == nil {
		return nil
	}
	p := &picked{s.Kind(), s.Recv(), s.Obj(), s.Index()}
	if f.env == nil {
		return p
	}
	if recv := f.subst(s.Recv()); recv != s.Recv() {
		obj, index, _ := types.LookupFieldOrMethod(recv, true, s.Obj().Pkg(), s.Obj().Name())
		if obj == nil {
			refuse(e.Pos(), "selection %s of %s", e.Sel.Name, recv)
		}
		p.recv, p.obj, p.index = recv, obj, index
	}
	return p
}

// selection is pick for fields only.
func (f *fnc) selection(e *ast.SelectorExpr) *picked {
	if p := f.pick(e); p != nil && p.kind == types.FieldVal {
		return p
	}
	return nil
}

// selector compiles x.name.
func (f *fnc) selector(e *ast.SelectorExpr) *ex {
	p := f.pick(e)
	if p == nil {
		switch o := f.u.info.Uses[e.Sel].(type) {
		case *types.Var:
			return f.varEx(o, e.Pos())
		case *types.Func:
			return f.funcValue(f.funcCode(o, f.instArgs(e.Sel), e.Pos()), f.tiOf(e))
		case *types.Const:
			return f.constEx(e.Pos(), o.Val(), f.typ(e))
		}
		refuse(e.Pos(), "name %s", e.Sel.Name)
	}
	switch p.kind {
	case types.FieldVal:
		return f.fieldPath(f.operand(e.X), p.index, e.Sel.Pos())
	case types.MethodVal:
		return f.methodValue(e, p)
	}
	return f.methodExpr(e, p)
}

// fieldPath selects a field through embedded structs and pointers to them.
func (f *fnc) fieldPath(x *ex, index []int, pos token.Pos) *ex {
	for _, i := range index {
		x = f.field(x, i, pos)
	}
	return x
}

// field selects one field of a struct or of a struct pointed to.
func (f *fnc) field(x *ex, i int, pos token.Pos) *ex {
	t := x.ti.T.Underlying()
	if p, ok := t.(*types.Pointer); ok {
		st := f.m.rec(p.Elem())
		ft := f.m.rec(st.T.Underlying().(*types.Struct).Field(i).Type())
		off := st.rt.Field(i).Offset
		q := f.checked(x, pos)
		e := f.atPtr(q, off, ft)
		if x.local {
			e.fn = ft.ops.field(x.off, off, f.site(pos))
		}
		return e
	}
	ft := f.m.rec(t.(*types.Struct).Field(i).Type())
	off := x.ti.rt.Field(i).Offset
	switch {
	case x.local:
		return f.localEx(ft, x.off+off)
	case x.glob != nil:
		p := unsafe.Add(x.glob, off)
		return &ex{ti: ft, glob: p, fn: ft.ops.global(p), addr: func(*frame) unsafe.Pointer { return p }}
	}
	return f.atPtr(f.ref(x), off, ft)
}
