package eval

// Binary operators, specialised for operands that are local variables or constants.

type integer interface {
	~int | ~int8 | ~int16 | ~int32 | ~int64 | ~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64 | ~uintptr
}

type floating interface{ ~float32 | ~float64 }

type arith interface {
	integer | floating | ~complex64 | ~complex128
}

type number interface{ arith | ~string }

type ordered interface{ integer | floating | ~string }

func addOp[T number](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) + *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) + c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v + fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) + *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) + c }
	}
	return func(fr *frame) T { v := fx(fr); return v + fy(fr) }
}

func subOp[T arith](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) - *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) - c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v - fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) - *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) - c }
	}
	return func(fr *frame) T { v := fx(fr); return v - fy(fr) }
}

func mulOp[T arith](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) * *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) * c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v * fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) * *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) * c }
	}
	return func(fr *frame) T { v := fx(fr); return v * fy(fr) }
}

func andOp[T integer](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) & *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) & c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v & fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) & *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) & c }
	}
	return func(fr *frame) T { v := fx(fr); return v & fy(fr) }
}

func orOp[T integer](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) | *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) | c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v | fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) | *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) | c }
	}
	return func(fr *frame) T { v := fx(fr); return v | fy(fr) }
}

func xorOp[T integer](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) ^ *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) ^ c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v ^ fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) ^ *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) ^ c }
	}
	return func(fr *frame) T { v := fx(fr); return v ^ fy(fr) }
}

func andNotOp[T integer](x, y *ex) func(*frame) T {
	a, b := x.off, y.off
	switch {
	case x.local && y.local:
		return func(fr *frame) T { return *(*T)(fr.at(a)) &^ *(*T)(fr.at(b)) }
	case x.local && y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return *(*T)(fr.at(a)) &^ c }
	}
	fx, fy := as[T](x), as[T](y)
	switch {
	case x.local:
		return func(fr *frame) T { v := *(*T)(fr.at(a)); return v &^ fy(fr) }
	case y.local:
		return func(fr *frame) T { return fx(fr) &^ *(*T)(fr.at(b)) }
	case y.cv != nil:
		c := *(*T)(y.cv)
		return func(fr *frame) T { return fx(fr) &^ c }
	}
	return func(fr *frame) T { v := fx(fr); return v &^ fy(fr) }
}

func addAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return addOp[int](x, y)
	case repInt8:
		return addOp[int8](x, y)
	case repInt16:
		return addOp[int16](x, y)
	case repInt32:
		return addOp[int32](x, y)
	case repInt64:
		return addOp[int64](x, y)
	case repUint:
		return addOp[uint](x, y)
	case repUint8:
		return addOp[uint8](x, y)
	case repUint16:
		return addOp[uint16](x, y)
	case repUint32:
		return addOp[uint32](x, y)
	case repUint64:
		return addOp[uint64](x, y)
	case repUintptr:
		return addOp[uintptr](x, y)
	case repFloat32:
		return addOp[float32](x, y)
	case repFloat64:
		return addOp[float64](x, y)
	case repComplex64:
		return addOp[complex64](x, y)
	case repComplex128:
		return addOp[complex128](x, y)
	case repString:
		return addOp[string](x, y)
	}
	return nil
}

func subAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return subOp[int](x, y)
	case repInt8:
		return subOp[int8](x, y)
	case repInt16:
		return subOp[int16](x, y)
	case repInt32:
		return subOp[int32](x, y)
	case repInt64:
		return subOp[int64](x, y)
	case repUint:
		return subOp[uint](x, y)
	case repUint8:
		return subOp[uint8](x, y)
	case repUint16:
		return subOp[uint16](x, y)
	case repUint32:
		return subOp[uint32](x, y)
	case repUint64:
		return subOp[uint64](x, y)
	case repUintptr:
		return subOp[uintptr](x, y)
	case repFloat32:
		return subOp[float32](x, y)
	case repFloat64:
		return subOp[float64](x, y)
	case repComplex64:
		return subOp[complex64](x, y)
	case repComplex128:
		return subOp[complex128](x, y)
	}
	return nil
}

func mulAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return mulOp[int](x, y)
	case repInt8:
		return mulOp[int8](x, y)
	case repInt16:
		return mulOp[int16](x, y)
	case repInt32:
		return mulOp[int32](x, y)
	case repInt64:
		return mulOp[int64](x, y)
	case repUint:
		return mulOp[uint](x, y)
	case repUint8:
		return mulOp[uint8](x, y)
	case repUint16:
		return mulOp[uint16](x, y)
	case repUint32:
		return mulOp[uint32](x, y)
	case repUint64:
		return mulOp[uint64](x, y)
	case repUintptr:
		return mulOp[uintptr](x, y)
	case repFloat32:
		return mulOp[float32](x, y)
	case repFloat64:
		return mulOp[float64](x, y)
	case repComplex64:
		return mulOp[complex64](x, y)
	case repComplex128:
		return mulOp[complex128](x, y)
	}
	return nil
}

func andAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return andOp[int](x, y)
	case repInt8:
		return andOp[int8](x, y)
	case repInt16:
		return andOp[int16](x, y)
	case repInt32:
		return andOp[int32](x, y)
	case repInt64:
		return andOp[int64](x, y)
	case repUint:
		return andOp[uint](x, y)
	case repUint8:
		return andOp[uint8](x, y)
	case repUint16:
		return andOp[uint16](x, y)
	case repUint32:
		return andOp[uint32](x, y)
	case repUint64:
		return andOp[uint64](x, y)
	case repUintptr:
		return andOp[uintptr](x, y)
	}
	return nil
}

func orAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return orOp[int](x, y)
	case repInt8:
		return orOp[int8](x, y)
	case repInt16:
		return orOp[int16](x, y)
	case repInt32:
		return orOp[int32](x, y)
	case repInt64:
		return orOp[int64](x, y)
	case repUint:
		return orOp[uint](x, y)
	case repUint8:
		return orOp[uint8](x, y)
	case repUint16:
		return orOp[uint16](x, y)
	case repUint32:
		return orOp[uint32](x, y)
	case repUint64:
		return orOp[uint64](x, y)
	case repUintptr:
		return orOp[uintptr](x, y)
	}
	return nil
}

func xorAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return xorOp[int](x, y)
	case repInt8:
		return xorOp[int8](x, y)
	case repInt16:
		return xorOp[int16](x, y)
	case repInt32:
		return xorOp[int32](x, y)
	case repInt64:
		return xorOp[int64](x, y)
	case repUint:
		return xorOp[uint](x, y)
	case repUint8:
		return xorOp[uint8](x, y)
	case repUint16:
		return xorOp[uint16](x, y)
	case repUint32:
		return xorOp[uint32](x, y)
	case repUint64:
		return xorOp[uint64](x, y)
	case repUintptr:
		return xorOp[uintptr](x, y)
	}
	return nil
}

func andNotAny(x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return andNotOp[int](x, y)
	case repInt8:
		return andNotOp[int8](x, y)
	case repInt16:
		return andNotOp[int16](x, y)
	case repInt32:
		return andNotOp[int32](x, y)
	case repInt64:
		return andNotOp[int64](x, y)
	case repUint:
		return andNotOp[uint](x, y)
	case repUint8:
		return andNotOp[uint8](x, y)
	case repUint16:
		return andNotOp[uint16](x, y)
	case repUint32:
		return andNotOp[uint32](x, y)
	case repUint64:
		return andNotOp[uint64](x, y)
	case repUintptr:
		return andNotOp[uintptr](x, y)
	}
	return nil
}
