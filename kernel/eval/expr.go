package eval

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"unsafe"
)

// expr compiles an expression of one value.
func (f *fnc) expr(e ast.Expr) *ex {
	if h, ok := f.hoist[e]; ok {
		return h
	}
	tv := f.u.info.Types[e]
	if tv.Value != nil {
		return f.constEx(e.Pos(), tv.Value, f.typ(e))
	}
	switch e := e.(type) {
	case *ast.ParenExpr:
		return f.expr(e.X)
	case *ast.Ident:
		return f.ident(e)
	case *ast.BasicLit:
		return f.constEx(e.Pos(), constant.MakeFromLiteral(e.Value, e.Kind, 0), f.typ(e))
	case *ast.FuncLit:
		return f.funcLit(e)
	case *ast.CompositeLit:
		return f.composite(e, f.typ(e))
	case *ast.SelectorExpr:
		return f.selector(e)
	case *ast.IndexExpr:
		if fn := f.genericFunc(e); fn != nil {
			return fn
		}
		return f.indexExpr(e)
	case *ast.IndexListExpr:
		if fn := f.genericFunc(e); fn != nil {
			return fn
		}
	case *ast.SliceExpr:
		return f.sliceExpr(e)
	case *ast.StarExpr:
		return f.deref(f.expr(e.X), e.Pos(), f.tiOf(e))
	case *ast.TypeAssertExpr:
		return f.typeAssert(e, false)
	case *ast.CallExpr:
		x := f.callExpr(e)
		return x
	case *ast.UnaryExpr:
		return f.unary(e)
	case *ast.BinaryExpr:
		return f.binary(e)
	}
	refuse(e.Pos(), "expression %T", e)
	return nil
}

// exprTo compiles an expression and converts it as an assignment to t does.
func (f *fnc) exprTo(e ast.Expr, t types.Type) *ex {
	return f.assignTo(f.expr(e), t, e.Pos())
}

// ident compiles a name.
func (f *fnc) ident(e *ast.Ident) *ex {
	obj := f.u.info.Uses[e]
	if obj == nil {
		obj = f.u.info.Defs[e]
	}
	switch o := obj.(type) {
	case *types.Nil:
		return &ex{ti: f.m.rec(types.Typ[types.UntypedNil]), isNil: true}
	case *types.Var:
		return f.varEx(o, e.Pos())
	case *types.Func:
		return f.funcValue(f.funcCode(o, f.instArgs(e), e.Pos()), f.tiOf(e))
	case *types.Const:
		return f.constEx(e.Pos(), o.Val(), f.typ(e))
	}
	refuse(e.Pos(), "name %s", e.Name)
	return nil
}

func (f *fnc) varEx(o *types.Var, pos token.Pos) *ex {
	if o.Pkg() != nil && o.Parent() == o.Pkg().Scope() {
		if x := f.m.compiledVar(f, o, pos); x != nil {
			return x
		}
	}
	return f.lookup(o).read()
}

// constEx makes a constant of a type, which may be an interface or, in a generic body, any instance.
func (f *fnc) constEx(pos token.Pos, v constant.Value, t types.Type) *ex {
	if _, ok := t.Underlying().(*types.Interface); ok {
		dt := types.Typ[types.UntypedNil]
		switch v.Kind() {
		case constant.Bool:
			dt = types.Typ[types.Bool]
		case constant.String:
			dt = types.Typ[types.String]
		case constant.Int:
			dt = types.Typ[types.Int]
		case constant.Float:
			dt = types.Typ[types.Float64]
		case constant.Complex:
			dt = types.Typ[types.Complex128]
		}
		return f.assignTo(f.constEx(pos, v, dt), t, pos)
	}
	ti := f.m.rec(t)
	p := ti.alloc()
	if !setConst(ti, p, v) {
		refuse(pos, "constant %s as %s", v, t)
	}
	return &ex{ti: ti, cv: p, fn: ti.ops.constant(p)}
}

func setConst(ti *TypeRec, p unsafe.Pointer, v constant.Value) bool {
	switch {
	case ti.rep == repBool:
		*(*bool)(p) = constant.BoolVal(v)
	case ti.rep == repString:
		if v.Kind() == constant.String {
			*(*string)(p) = constant.StringVal(v)
			return true
		}
		n, ok := constant.Int64Val(constant.ToInt(v))
		if !ok || n > 0x10ffff || n < 0 {
			n = 0xfffd
		}
		*(*string)(p) = string(rune(n))
	case ti.rep >= repInt && ti.rep <= repInt64:
		n, _ := constant.Int64Val(constant.ToInt(v))
		switch ti.rep {
		case repInt:
			*(*int)(p) = int(n)
		case repInt8:
			*(*int8)(p) = int8(n)
		case repInt16:
			*(*int16)(p) = int16(n)
		case repInt32:
			*(*int32)(p) = int32(n)
		case repInt64:
			*(*int64)(p) = n
		}
	case ti.rep >= repUint && ti.rep <= repUintptr:
		n, _ := constant.Uint64Val(constant.ToInt(v))
		switch ti.rep {
		case repUint:
			*(*uint)(p) = uint(n)
		case repUint8:
			*(*uint8)(p) = uint8(n)
		case repUint16:
			*(*uint16)(p) = uint16(n)
		case repUint32:
			*(*uint32)(p) = uint32(n)
		case repUint64:
			*(*uint64)(p) = n
		case repUintptr:
			*(*uintptr)(p) = uintptr(n)
		}
	case ti.rep == repFloat32:
		x, _ := constant.Float32Val(constant.ToFloat(v))
		*(*float32)(p) = x
	case ti.rep == repFloat64:
		x, _ := constant.Float64Val(constant.ToFloat(v))
		*(*float64)(p) = x
	case ti.rep == repComplex64:
		c := constant.ToComplex(v)
		r, _ := constant.Float32Val(constant.Real(c))
		i, _ := constant.Float32Val(constant.Imag(c))
		*(*complex64)(p) = complex(r, i)
	case ti.rep == repComplex128:
		c := constant.ToComplex(v)
		r, _ := constant.Float64Val(constant.Real(c))
		i, _ := constant.Float64Val(constant.Imag(c))
		*(*complex128)(p) = complex(r, i)
	case ti.rep == repPtr: // unsafe.Pointer(constant)
		return false
	case ti.rep == repSlice:
		s, ok := ti.T.Underlying().(*types.Slice)
		if !ok || v.Kind() != constant.String {
			return false
		}
		if b, ok := s.Elem().Underlying().(*types.Basic); ok && b.Kind() == types.Byte {
			*(*[]byte)(p) = []byte(constant.StringVal(v))
			return true
		}
		return false
	default:
		return false
	}
	return true
}

// nilOf is the zero value of a type that can be nil.
func (f *fnc) zeroEx(ti *TypeRec) *ex {
	return &ex{ti: ti, cv: ti.zero, fn: ti.ops.constant(ti.zero)}
}

// deref compiles *x.
func (f *fnc) deref(x *ex, pos token.Pos, ti *TypeRec) *ex {
	return f.atPtr(f.checked(x, pos), 0, ti)
}

// checked returns the pointer's value, panicking where it is nil.
func (f *fnc) checked(x *ex, pos token.Pos) ptrFn {
	at := f.site(pos)
	if x.local {
		off := x.off
		return func(fr *frame) unsafe.Pointer {
			p := *(*unsafe.Pointer)(fr.at(off))
			if p == nil {
				nilDeref(at)
			}
			return p
		}
	}
	fn := as[unsafe.Pointer](x)
	return func(fr *frame) unsafe.Pointer {
		p := fn(fr)
		if p == nil {
			nilDeref(at)
		}
		return p
	}
}

// atPtr is the value that lies at an offset from an address.
func (f *fnc) atPtr(p ptrFn, off uintptr, ti *TypeRec) *ex {
	q := p
	if off != 0 {
		q = func(fr *frame) unsafe.Pointer { return unsafe.Add(p(fr), off) }
	}
	return &ex{ti: ti, addr: q, fn: ti.ops.load(q)}
}

// unary compiles an operator with one operand.
func (f *fnc) unary(e *ast.UnaryExpr) *ex {
	switch e.Op {
	case token.AND:
		return f.addressOf(e)
	case token.ARROW:
		return f.receive(e)
	}
	x := f.expr(e.X)
	ti := f.tiOf(e)
	switch e.Op {
	case token.ADD:
		return x
	case token.NOT:
		fn := as[bool](x)
		return &ex{ti: ti, fn: func(fr *frame) bool { return !fn(fr) }}
	case token.SUB:
		return &ex{ti: ti, fn: negate(x)}
	case token.XOR:
		return &ex{ti: ti, fn: complement(x)}
	}
	refuse(e.Pos(), "operator %s", e.Op)
	return nil
}

// addressOf compiles &x.
func (f *fnc) addressOf(e *ast.UnaryExpr) *ex {
	ti := f.tiOf(e)
	x := ast.Unparen(e.X)
	if lit, ok := x.(*ast.CompositeLit); ok {
		return f.addressOfLit(f.composite(lit, f.typ(lit)), ti)
	}
	p := f.addr(x)
	return &ex{ti: ti, fn: (func(*frame) unsafe.Pointer)(p)}
}

func (f *fnc) addressOfLit(v *ex, ti *TypeRec) *ex {
	in, et := v.init(), v.ti
	return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
		p := et.alloc()
		in(fr, p)
		return p
	}}
}

// addr returns the address of an addressable expression.
func (f *fnc) addr(e ast.Expr) ptrFn {
	switch e := e.(type) {
	case *ast.ParenExpr:
		return f.addr(e.X)
	case *ast.Ident:
		o, ok := f.u.info.ObjectOf(e).(*types.Var)
		if !ok {
			break
		}
		return f.varEx(o, e.Pos()).addr
	case *ast.StarExpr:
		return f.checked(f.expr(e.X), e.Pos())
	case *ast.SelectorExpr:
		if sel := f.selection(e); sel != nil {
			x := f.fieldPath(f.operand(e.X), sel.index, e.Sel.Pos())
			if x.addr != nil {
				return x.addr
			}
			break
		}
		if o, ok := f.u.info.Uses[e.Sel].(*types.Var); ok {
			return f.varEx(o, e.Pos()).addr
		}
	case *ast.IndexExpr:
		if x := f.indexExpr(e); x.addr != nil {
			return x.addr
		}
	}
	refuse(e.Pos(), "address of %T", e)
	return nil
}

// operand compiles an operand of a selector or index: in place where it has a place.
func (f *fnc) operand(e ast.Expr) *ex { return f.expr(e) }
