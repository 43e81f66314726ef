package eval

// Comparisons, specialised as the operators in arith.go are.

func eqOp[T comparable](x, y *ex) func(*frame) bool {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) bool { return *(*T)(fr.at(a)) == *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) bool { return *(*T)(fr.at(a)) == c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) bool { v := *(*T)(fr.at(a)); return v == fy(fr) }
	case y.local:
		return func(fr *frame) bool { return fx(fr) == *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) bool { return fx(fr) == c }
	}
	return func(fr *frame) bool { v := fx(fr); return v == fy(fr) }
}

func lessOp[T ordered](x, y *ex) func(*frame) bool {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) bool { return *(*T)(fr.at(a)) < *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) bool { return *(*T)(fr.at(a)) < c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) bool { v := *(*T)(fr.at(a)); return v < fy(fr) }
	case y.local:
		return func(fr *frame) bool { return fx(fr) < *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) bool { return fx(fr) < c }
	}
	return func(fr *frame) bool { v := fx(fr); return v < fy(fr) }
}

func lessEqOp[T ordered](x, y *ex) func(*frame) bool {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) bool { return *(*T)(fr.at(a)) <= *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) bool { return *(*T)(fr.at(a)) <= c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) bool { v := *(*T)(fr.at(a)); return v <= fy(fr) }
	case y.local:
		return func(fr *frame) bool { return fx(fr) <= *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) bool { return fx(fr) <= c }
	}
	return func(fr *frame) bool { v := fx(fr); return v <= fy(fr) }
}

func eqAny(x, y *ex) any {
	switch x.ti.rep {
	case repBool:
		return eqOp[bool](x, y)
	case repInt:
		return eqOp[int](x, y)
	case repInt8:
		return eqOp[int8](x, y)
	case repInt16:
		return eqOp[int16](x, y)
	case repInt32:
		return eqOp[int32](x, y)
	case repInt64:
		return eqOp[int64](x, y)
	case repUint:
		return eqOp[uint](x, y)
	case repUint8:
		return eqOp[uint8](x, y)
	case repUint16:
		return eqOp[uint16](x, y)
	case repUint32:
		return eqOp[uint32](x, y)
	case repUint64:
		return eqOp[uint64](x, y)
	case repUintptr:
		return eqOp[uintptr](x, y)
	case repFloat32:
		return eqOp[float32](x, y)
	case repFloat64:
		return eqOp[float64](x, y)
	case repComplex64:
		return eqOp[complex64](x, y)
	case repComplex128:
		return eqOp[complex128](x, y)
	case repString:
		return eqOp[string](x, y)
	}
	return nil
}

func lessAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return lessOp[int](x, y)
	case repInt8:
		return lessOp[int8](x, y)
	case repInt16:
		return lessOp[int16](x, y)
	case repInt32:
		return lessOp[int32](x, y)
	case repInt64:
		return lessOp[int64](x, y)
	case repUint:
		return lessOp[uint](x, y)
	case repUint8:
		return lessOp[uint8](x, y)
	case repUint16:
		return lessOp[uint16](x, y)
	case repUint32:
		return lessOp[uint32](x, y)
	case repUint64:
		return lessOp[uint64](x, y)
	case repUintptr:
		return lessOp[uintptr](x, y)
	case repFloat32:
		return lessOp[float32](x, y)
	case repFloat64:
		return lessOp[float64](x, y)
	case repString:
		return lessOp[string](x, y)
	}
	return nil
}

func lessEqAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return lessEqOp[int](x, y)
	case repInt8:
		return lessEqOp[int8](x, y)
	case repInt16:
		return lessEqOp[int16](x, y)
	case repInt32:
		return lessEqOp[int32](x, y)
	case repInt64:
		return lessEqOp[int64](x, y)
	case repUint:
		return lessEqOp[uint](x, y)
	case repUint8:
		return lessEqOp[uint8](x, y)
	case repUint16:
		return lessEqOp[uint16](x, y)
	case repUint32:
		return lessEqOp[uint32](x, y)
	case repUint64:
		return lessEqOp[uint64](x, y)
	case repUintptr:
		return lessEqOp[uintptr](x, y)
	case repFloat32:
		return lessEqOp[float32](x, y)
	case repFloat64:
		return lessEqOp[float64](x, y)
	case repString:
		return lessEqOp[string](x, y)
	}
	return nil
}
