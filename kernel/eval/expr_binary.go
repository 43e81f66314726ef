package eval

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"unsafe"
)

// binary compiles an operator with two operands.
func (f *fnc) binary(e *ast.BinaryExpr) *ex {
	ti := f.tiOf(e)
	switch e.Op {
	case token.LAND:
		x, y := as[bool](f.expr(e.X)), as[bool](f.expr(e.Y))
		return &ex{ti: ti, fn: func(fr *frame) bool { return x(fr) && y(fr) }}
	case token.LOR:
		x, y := as[bool](f.expr(e.X)), as[bool](f.expr(e.Y))
		return &ex{ti: ti, fn: func(fr *frame) bool { return x(fr) || y(fr) }}
	case token.EQL, token.NEQ, token.LSS, token.LEQ, token.GTR, token.GEQ:
		return &ex{ti: ti, fn: f.compare(e)}
	case token.SHL, token.SHR:
		x := f.expr(e.X)
		if x.ti != ti {
			x = f.convert(x, ti, e.Pos())
		}
		if v := f.u.info.Types[e.Y].Value; v != nil {
			if n, ok := constant.Uint64Val(constant.ToInt(v)); ok {
				return &ex{ti: ti, fn: f.shift(e.Op, x, f.constEx(e.Y.Pos(), constant.MakeUint64(n), types.Typ[types.Uint64]), e.Y.Pos())}
			}
		}
		return &ex{ti: ti, fn: f.shift(e.Op, x, f.expr(e.Y), e.Y.Pos())}
	}
	return f.arith(e.Op, f.numeric(e.X, ti), f.numeric(e.Y, ti), ti, e.OpPos)
}

// numeric compiles an operand and makes sure that it has the type of the operation (untyped constants may not).
func (f *fnc) numeric(e ast.Expr, ti *TypeRec) *ex {
	x := f.expr(e)
	if x.ti.rep != ti.rep {
		return f.convert(x, ti, e.Pos())
	}
	return x
}

// arith compiles an arithmetic operator on operands of one type.
func (f *fnc) arith(op token.Token, x, y *ex, ti *TypeRec, pos token.Pos) *ex {
	var fn any
	switch op {
	case token.ADD:
		fn = addAny(x, y)
	case token.SUB:
		fn = subAny(x, y)
	case token.MUL:
		fn = mulAny(x, y)
	case token.AND:
		fn = andAny(x, y)
	case token.OR:
		fn = orAny(x, y)
	case token.XOR:
		fn = xorAny(x, y)
	case token.AND_NOT:
		fn = andNotAny(x, y)
	case token.QUO, token.REM:
		fn = divide(op, x, y, f.site(pos))
	}
	if fn == nil {
		refuse(pos, "operator %s on %s", op, ti)
	}
	return &ex{ti: ti, fn: fn}
}

func divide(op token.Token, x, y *ex, at *site) any {
	switch x.ti.rep {
	case repInt:
		return intDiv[int](op, x, y, at)
	case repInt8:
		return intDiv[int8](op, x, y, at)
	case repInt16:
		return intDiv[int16](op, x, y, at)
	case repInt32:
		return intDiv[int32](op, x, y, at)
	case repInt64:
		return intDiv[int64](op, x, y, at)
	case repUint:
		return intDiv[uint](op, x, y, at)
	case repUint8:
		return intDiv[uint8](op, x, y, at)
	case repUint16:
		return intDiv[uint16](op, x, y, at)
	case repUint32:
		return intDiv[uint32](op, x, y, at)
	case repUint64:
		return intDiv[uint64](op, x, y, at)
	case repUintptr:
		return intDiv[uintptr](op, x, y, at)
	case repFloat32:
		return quo[float32](x, y)
	case repFloat64:
		return quo[float64](x, y)
	case repComplex64:
		return quo[complex64](x, y)
	case repComplex128:
		return quo[complex128](x, y)
	}
	return nil
}

func intDiv[T integer](op token.Token, x, y *ex, at *site) func(*frame) T {
	fx, fy := as[T](x), as[T](y)
	if y.cv != nil && *(*T)(y.cv) != 0 {
		c := *(*T)(y.cv)
		if op == token.QUO {
			return func(fr *frame) T { return fx(fr) / c }
		}
		return func(fr *frame) T { return fx(fr) % c }
	}
	if op == token.QUO {
		return func(fr *frame) T {
			a := fx(fr)
			b := fy(fr)
			if b == 0 {
				throw(at, "integer divide by zero")
			}
			return a / b
		}
	}
	return func(fr *frame) T {
		a := fx(fr)
		b := fy(fr)
		if b == 0 {
			throw(at, "integer divide by zero")
		}
		return a % b
	}
}

func quo[T floating | ~complex64 | ~complex128](x, y *ex) func(*frame) T {
	fx, fy := as[T](x), as[T](y)
	return func(fr *frame) T { a := fx(fr); return a / fy(fr) }
}

func negate(x *ex) any {
	switch x.ti.rep {
	case repInt:
		return neg[int](x)
	case repInt8:
		return neg[int8](x)
	case repInt16:
		return neg[int16](x)
	case repInt32:
		return neg[int32](x)
	case repInt64:
		return neg[int64](x)
	case repUint:
		return neg[uint](x)
	case repUint8:
		return neg[uint8](x)
	case repUint16:
		return neg[uint16](x)
	case repUint32:
		return neg[uint32](x)
	case repUint64:
		return neg[uint64](x)
	case repUintptr:
		return neg[uintptr](x)
	case repFloat32:
		return neg[float32](x)
	case repFloat64:
		return neg[float64](x)
	case repComplex64:
		return neg[complex64](x)
	}
	return neg[complex128](x)
}

func neg[T arith](x *ex) func(*frame) T {
	fx := as[T](x)
	return func(fr *frame) T { return -fx(fr) }
}

func complement(x *ex) any {
	switch x.ti.rep {
	case repInt:
		return not[int](x)
	case repInt8:
		return not[int8](x)
	case repInt16:
		return not[int16](x)
	case repInt32:
		return not[int32](x)
	case repInt64:
		return not[int64](x)
	case repUint:
		return not[uint](x)
	case repUint8:
		return not[uint8](x)
	case repUint16:
		return not[uint16](x)
	case repUint32:
		return not[uint32](x)
	case repUint64:
		return not[uint64](x)
	}
	return not[uintptr](x)
}

func not[T integer](x *ex) func(*frame) T {
	fx := as[T](x)
	return func(fr *frame) T { return ^fx(fr) }
}

// shift compiles << and >>. The count may have any integer type.
func (f *fnc) shift(op token.Token, x, y *ex, pos token.Pos) any {
	if y.cv != nil && (y.ti.rep == repComplex128 || y.ti.rep == repComplex64) {
		y = f.convert(y, f.m.rec(types.Typ[types.Uint]), pos)
	}
	n := shiftCount(y, f.site(pos))
	switch x.ti.rep {
	case repInt:
		return shiftOp[int](op, x, n)
	case repInt8:
		return shiftOp[int8](op, x, n)
	case repInt16:
		return shiftOp[int16](op, x, n)
	case repInt32:
		return shiftOp[int32](op, x, n)
	case repInt64:
		return shiftOp[int64](op, x, n)
	case repUint:
		return shiftOp[uint](op, x, n)
	case repUint8:
		return shiftOp[uint8](op, x, n)
	case repUint16:
		return shiftOp[uint16](op, x, n)
	case repUint32:
		return shiftOp[uint32](op, x, n)
	case repUint64:
		return shiftOp[uint64](op, x, n)
	case repUintptr:
		return shiftOp[uintptr](op, x, n)
	}
	refuse(pos, "shift of %s", x.ti)
	return nil
}

func shiftOp[T integer](op token.Token, x *ex, n func(*frame) uint64) func(*frame) T {
	fx := as[T](x)
	if op == token.SHL {
		return func(fr *frame) T { a := fx(fr); return a << n(fr) }
	}
	return func(fr *frame) T { a := fx(fr); return a >> n(fr) }
}

func shiftCount(y *ex, at *site) func(*frame) uint64 {
	switch y.ti.rep {
	case repInt:
		return signedCount[int](y, at)
	case repInt8:
		return signedCount[int8](y, at)
	case repInt16:
		return signedCount[int16](y, at)
	case repInt32:
		return signedCount[int32](y, at)
	case repInt64:
		return signedCount[int64](y, at)
	case repUint:
		return count[uint](y)
	case repUint8:
		return count[uint8](y)
	case repUint16:
		return count[uint16](y)
	case repUint32:
		return count[uint32](y)
	case repUint64:
		return count[uint64](y)
	case repUintptr:
		return count[uintptr](y)
	case repFloat64: // an untyped constant such as 1.0
		if y.cv != nil {
			n := uint64(*(*float64)(y.cv))
			return func(*frame) uint64 { return n }
		}
	}
	refuse(at.pos, "shift count of type %s", y.ti)
	return nil
}

func signedCount[T integer](y *ex, at *site) func(*frame) uint64 {
	fy := as[T](y)
	return func(fr *frame) uint64 {
		n := fy(fr)
		if n < 0 {
			throw(at, "negative shift amount")
		}
		return uint64(n)
	}
}

func count[T integer](y *ex) func(*frame) uint64 {
	fy := as[T](y)
	return func(fr *frame) uint64 { return uint64(fy(fr)) }
}

// compare compiles a comparison.
func (f *fnc) compare(e *ast.BinaryExpr) func(*frame) bool {
	x, y := f.expr(e.X), f.expr(e.Y)
	return f.compareEx(e.Op, x, y, e.OpPos)
}

func (f *fnc) compareEx(op token.Token, x, y *ex, pos token.Pos) func(*frame) bool {
	switch {
	case x.isNil && y.isNil:
		return func(*frame) bool { return op == token.EQL }
	case x.isNil:
		x = f.zeroEx(y.ti)
	case y.isNil:
		y = f.zeroEx(x.ti)
	}
	xi, yi := types.IsInterface(x.ti.T), types.IsInterface(y.ti.T)
	switch {
	case xi && !yi:
		y = f.assignTo(y, x.ti.T, pos)
	case yi && !xi:
		x = f.assignTo(x, y.ti.T, pos)
	case x.ti.rep != y.ti.rep:
		switch {
		case xi:
			a := f.m.rec(types.Universe.Lookup("any").Type())
			x, y = f.toAny(x, a), f.toAny(y, a)
		case x.cv != nil:
			x = f.convert(x, y.ti, pos)
		default:
			y = f.convert(y, x.ti, pos)
		}
	}
	switch op {
	case token.LSS:
		return lessAny(x, y).(func(*frame) bool)
	case token.LEQ:
		return lessEqualAny(x, y)
	case token.GTR:
		return f.swapped(x, y, token.LSS)
	case token.GEQ:
		return f.swapped(x, y, token.LEQ)
	}
	eq := f.equal(x, y, pos)
	if op == token.EQL {
		return eq
	}
	return func(fr *frame) bool { return !eq(fr) }
}

func lessEqualAny(x, y *ex) func(*frame) bool { return lessEqAny(x, y).(func(*frame) bool) }

// swapped compiles x > y and x >= y, keeping the order of evaluation.
func (f *fnc) swapped(x, y *ex, op token.Token) func(*frame) bool {
	plain := func(e *ex) bool { return e.local || e.cv != nil }
	if !plain(x) && !plain(y) {
		off := f.temp(x.ti)
		keep := x.ti.ops.storeLocal(off, x.fn)
		t := f.localEx(x.ti, off)
		cmp := f.swapped(t, y, op)
		return func(fr *frame) bool { keep(fr); return cmp(fr) }
	}
	if op == token.LSS {
		return lessAny(y, x).(func(*frame) bool)
	}
	return lessEqualAny(y, x)
}

// equal compiles x == y for operands of one class.
func (f *fnc) equal(x, y *ex, pos token.Pos) func(*frame) bool {
	if fn := eqAny(x, y); fn != nil {
		return fn.(func(*frame) bool)
	}
	at := f.site(pos)
	switch x.ti.rep {
	case repPtr:
		if y.cv != nil && *(*unsafe.Pointer)(y.cv) == nil {
			a := as[unsafe.Pointer](x)
			return func(fr *frame) bool { return a(fr) == nil }
		}
		a, b := as[unsafe.Pointer](x), as[unsafe.Pointer](y)
		return func(fr *frame) bool { p := a(fr); return p == b(fr) }
	case repSlice:
		if x.cv != nil {
			x = y
		}
		a := as[slice](x)
		return func(fr *frame) bool { return a(fr).p == nil }
	case repAny:
		a, b := as[any](x), as[any](y)
		if y.cv != nil && *(*any)(y.cv) == nil {
			return func(fr *frame) bool { return a(fr) == nil }
		}
		return func(fr *frame) bool {
			p := a(fr)
			q := b(fr)
			fr.g.at = at
			return equalAny(p, q)
		}
	case repIface:
		a, b := as[iface](x), as[iface](y)
		if y.cv != nil && (*iface)(y.cv).tab == nil {
			return func(fr *frame) bool { return a(fr).tab == nil }
		}
		return func(fr *frame) bool {
			p := a(fr)
			q := b(fr)
			if p.tab == nil || q.tab == nil {
				return p.tab == q.tab
			}
			fr.g.at = at
			return equalAny(p.any(), q.any())
		}
	}
	// Structs and arrays.
	eq := x.ti.equal()
	a, b := f.stable(x), f.ref(y)
	return func(fr *frame) bool {
		p := a(fr)
		q := b(fr)
		fr.g.at = at
		return eq(p, q)
	}
}

// stable returns an address whose value does not change while another operand is evaluated.
func (f *fnc) stable(x *ex) ptrFn { return f.ref(x) }
