package eval

// Conversions between numeric classes.

// numConv converts a number to another class; nil if that is no numeric conversion.
func numConv(x *ex, to rep) any {
	switch x.ti.rep {
	case repInt:
		return convFrom(as[int](x), to)
	case repInt8:
		return convFrom(as[int8](x), to)
	case repInt16:
		return convFrom(as[int16](x), to)
	case repInt32:
		return convFrom(as[int32](x), to)
	case repInt64:
		return convFrom(as[int64](x), to)
	case repUint:
		return convFrom(as[uint](x), to)
	case repUint8:
		return convFrom(as[uint8](x), to)
	case repUint16:
		return convFrom(as[uint16](x), to)
	case repUint32:
		return convFrom(as[uint32](x), to)
	case repUint64:
		return convFrom(as[uint64](x), to)
	case repUintptr:
		return convFrom(as[uintptr](x), to)
	case repFloat32:
		return convFrom(as[float32](x), to)
	case repFloat64:
		return convFrom(as[float64](x), to)
	case repComplex64:
		f := as[complex64](x)
		if to == repComplex128 {
			return func(fr *frame) complex128 { return complex128(f(fr)) }
		}
	case repComplex128:
		f := as[complex128](x)
		if to == repComplex64 {
			return func(fr *frame) complex64 { return complex64(f(fr)) }
		}
	}
	return nil
}

func convFrom[S integer | floating](f func(*frame) S, to rep) any {
	switch to {
	case repInt:
		return func(fr *frame) int { return int(f(fr)) }
	case repInt8:
		return func(fr *frame) int8 { return int8(f(fr)) }
	case repInt16:
		return func(fr *frame) int16 { return int16(f(fr)) }
	case repInt32:
		return func(fr *frame) int32 { return int32(f(fr)) }
	case repInt64:
		return func(fr *frame) int64 { return int64(f(fr)) }
	case repUint:
		return func(fr *frame) uint { return uint(f(fr)) }
	case repUint8:
		return func(fr *frame) uint8 { return uint8(f(fr)) }
	case repUint16:
		return func(fr *frame) uint16 { return uint16(f(fr)) }
	case repUint32:
		return func(fr *frame) uint32 { return uint32(f(fr)) }
	case repUint64:
		return func(fr *frame) uint64 { return uint64(f(fr)) }
	case repUintptr:
		return func(fr *frame) uintptr { return uintptr(f(fr)) }
	case repFloat32:
		return func(fr *frame) float32 { return float32(f(fr)) }
	case repFloat64:
		return func(fr *frame) float64 { return float64(f(fr)) }
	}
	return nil
}
