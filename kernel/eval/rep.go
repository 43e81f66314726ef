package eval

import (
	"go/types"
	"unsafe"
)

// rep is how a value is held while it is computed: one Go type per class, so that closures can be specialised.
type rep uint8

const (
	repBool rep = iota
	repInt
	repInt8
	repInt16
	repInt32
	repInt64
	repUint
	repUint8
	repUint16
	repUint32
	repUint64
	repUintptr
	repFloat32
	repFloat64
	repComplex64
	repComplex128
	repString
	repPtr   // pointers, maps, channels, functions, unsafe.Pointer: one word
	repSlice // three words
	repAny   // interfaces held as interface{}
	repIface // compiled interfaces with methods: method table and data
	repMem   // structs and arrays: written to a destination
)

// slice is the layout of every slice value.
type slice struct {
	p        unsafe.Pointer
	len, cap int
}

// iface is the layout of every interface value with methods.
type iface struct {
	tab, data unsafe.Pointer
}

// eface is the layout of every interface{} value.
type eface struct {
	typ, data unsafe.Pointer
}

type (
	// exec runs a statement and says how control goes on.
	exec = func(*frame) ctl
	// ptrFn computes an address.
	ptrFn = func(*frame) unsafe.Pointer
	// intoFn computes a value and writes it to an address.
	intoFn = func(*frame, unsafe.Pointer)
	// argFn computes a value in the caller's frame and writes it into the callee's.
	argFn = func(fr, nf *frame)
)

// repOf gives the class of a type whose storage type is known.
func repOf(t types.Type, native bool) rep {
	switch u := t.Underlying().(type) {
	case *types.Basic:
		switch u.Kind() {
		case types.Bool, types.UntypedBool:
			return repBool
		case types.Int, types.UntypedInt:
			return repInt
		case types.Int8:
			return repInt8
		case types.Int16:
			return repInt16
		case types.Int32, types.UntypedRune:
			return repInt32
		case types.Int64:
			return repInt64
		case types.Uint:
			return repUint
		case types.Uint8:
			return repUint8
		case types.Uint16:
			return repUint16
		case types.Uint32:
			return repUint32
		case types.Uint64:
			return repUint64
		case types.Uintptr:
			return repUintptr
		case types.Float32:
			return repFloat32
		case types.Float64, types.UntypedFloat:
			return repFloat64
		case types.Complex64:
			return repComplex64
		case types.Complex128, types.UntypedComplex:
			return repComplex128
		case types.String, types.UntypedString:
			return repString
		}
		return repPtr
	case *types.Pointer, *types.Map, *types.Chan, *types.Signature:
		return repPtr
	case *types.Slice:
		return repSlice
	case *types.Interface:
		if native {
			return repIface
		}
		return repAny
	}
	return repMem
}

// repOps builds the elementary closures of one class. A value of class T is a func(*frame) T; of repMem an intoFn,
// which has read all it needs before it writes, so that source and destination may overlap.
type repOps interface {
	local(off uintptr) any
	heap(off uintptr) any
	captured(off uintptr) any
	load(p ptrFn) any
	field(off, field uintptr, at *site) any
	indexLocal(ti *TypeRec, s, i uintptr, at *site) any
	global(p unsafe.Pointer) any
	constant(p unsafe.Pointer) any
	into(fn any) intoFn
	arg(off uintptr, fn any) argFn
	storeLocal(off uintptr, fn any) exec
	storeGlobal(p unsafe.Pointer, fn any) exec
	storeVia(p ptrFn, fn any) exec
	discard(fn any) exec
	result(call func(*frame) *frame, off uintptr) any
	toAny(ti *TypeRec, fn any) any
	fromAny(ti *TypeRec, v func(*frame) any, fail func(*frame, any)) any
	before(pre []exec, fn any) any
	index(ti *TypeRec, s func(*frame) slice, i func(*frame) int, at *site) any
	appendTo(ti *TypeRec, s func(*frame) slice, fn any) func(*frame) slice
}

// ops implements repOps for a class held as T.
type ops[T any] struct{}

func (ops[T]) local(off uintptr) any {
	return func(fr *frame) T { return *(*T)(fr.at(off)) }
}

// heap reads a variable whose address stands in the frame.
func (ops[T]) heap(off uintptr) any {
	return func(fr *frame) T { return **(**T)(fr.at(off)) }
}

// captured reads a variable whose address stands in the closure's environment.
func (ops[T]) captured(off uintptr) any {
	return func(fr *frame) T { return **(**T)(unsafe.Add(fr.env, off)) }
}

func (ops[T]) load(p ptrFn) any {
	return func(fr *frame) T { return *(*T)(p(fr)) }
}

// field reads through a pointer that stands in the frame.
func (ops[T]) field(off, field uintptr, at *site) any {
	return func(fr *frame) T {
		p := *(*unsafe.Pointer)(fr.at(off))
		if p == nil {
			nilDeref(at)
		}
		return *(*T)(unsafe.Add(p, field))
	}
}

// indexLocal reads an element of a slice in the frame at an index in the frame.
func (ops[T]) indexLocal(_ *TypeRec, s, i uintptr, at *site) any {
	return func(fr *frame) T {
		x := (*slice)(fr.at(s))
		k := *(*int)(fr.at(i))
		if uint(k) >= uint(x.len) {
			indexPanic(at, k, x.len)
		}
		var t T
		return *(*T)(unsafe.Add(x.p, uintptr(k)*unsafe.Sizeof(t)))
	}
}

func (ops[T]) global(p unsafe.Pointer) any {
	q := (*T)(p)
	return func(*frame) T { return *q }
}

func (ops[T]) constant(p unsafe.Pointer) any {
	v := *(*T)(p)
	return func(*frame) T { return v }
}

func (ops[T]) into(fn any) intoFn {
	f := fn.(func(*frame) T)
	return func(fr *frame, p unsafe.Pointer) { *(*T)(p) = f(fr) }
}

func (ops[T]) arg(off uintptr, fn any) argFn {
	f := fn.(func(*frame) T)
	return func(fr, nf *frame) { *(*T)(nf.at(off)) = f(fr) }
}

func (ops[T]) storeLocal(off uintptr, fn any) exec {
	f := fn.(func(*frame) T)
	return func(fr *frame) ctl { *(*T)(fr.at(off)) = f(fr); return next }
}

func (ops[T]) storeGlobal(p unsafe.Pointer, fn any) exec {
	f, q := fn.(func(*frame) T), (*T)(p)
	return func(fr *frame) ctl { *q = f(fr); return next }
}

// storeVia computes the address first and then the value.
func (ops[T]) storeVia(p ptrFn, fn any) exec {
	f := fn.(func(*frame) T)
	return func(fr *frame) ctl {
		q := p(fr)
		*(*T)(q) = f(fr)
		return next
	}
}

func (ops[T]) discard(fn any) exec {
	f := fn.(func(*frame) T)
	return func(fr *frame) ctl { f(fr); return next }
}

func (ops[T]) result(call func(*frame) *frame, off uintptr) any {
	return func(fr *frame) T {
		nf := call(fr)
		v := *(*T)(nf.at(off))
		nf.release()
		return v
	}
}

func (ops[T]) toAny(ti *TypeRec, fn any) any {
	f := fn.(func(*frame) T)
	switch {
	case ti.pure && ti.direct:
		return func(fr *frame) any {
			v := f(fr)
			return makeEface(ti.word, *(*unsafe.Pointer)(unsafe.Pointer(&v)))
		}
	case ti.pure:
		return func(fr *frame) any {
			p := new(T)
			*p = f(fr)
			return makeEface(ti.word, unsafe.Pointer(p))
		}
	case ti.direct:
		return func(fr *frame) any {
			v := f(fr)
			return Box{ti, makeEface(ti.word, *(*unsafe.Pointer)(unsafe.Pointer(&v)))}
		}
	}
	return func(fr *frame) any {
		p := new(T)
		*p = f(fr)
		return Box{ti, makeEface(ti.word, unsafe.Pointer(p))}
	}
}

// fromAny reads a value of exactly type ti out of an interface; fail is called when the dynamic type differs and,
// if it returns, the zero value results.
func (ops[T]) fromAny(ti *TypeRec, v func(*frame) any, fail func(*frame, any)) any {
	return func(fr *frame) (r T) {
		x := v(fr)
		w, ok := ti.payload(x)
		if !ok {
			fail(fr, x)
			return r
		}
		if ti.direct {
			return *(*T)(unsafe.Pointer(&w))
		}
		return *(*T)(w)
	}
}

func (ops[T]) before(pre []exec, fn any) any {
	f := fn.(func(*frame) T)
	if len(pre) == 1 {
		p := pre[0]
		return func(fr *frame) T { p(fr); return f(fr) }
	}
	return func(fr *frame) T {
		for _, p := range pre {
			p(fr)
		}
		return f(fr)
	}
}

func (ops[T]) index(_ *TypeRec, s func(*frame) slice, i func(*frame) int, at *site) any {
	return func(fr *frame) T {
		x := s(fr)
		k := i(fr)
		if uint(k) >= uint(x.len) {
			indexPanic(at, k, x.len)
		}
		var t T
		return *(*T)(unsafe.Add(x.p, uintptr(k)*unsafe.Sizeof(t)))
	}
}

func (ops[T]) appendTo(ti *TypeRec, s func(*frame) slice, fn any) func(*frame) slice {
	f := fn.(func(*frame) T)
	return func(fr *frame) slice {
		x := s(fr)
		v := f(fr)
		y := append(unsafe.Slice((*T)(x.p), x.cap)[:x.len], v)
		return slice{unsafe.Pointer(unsafe.SliceData(y)), len(y), cap(y)}
	}
}

var scalarOps = [...]repOps{
	repBool: ops[bool]{}, repInt: ops[int]{}, repInt8: ops[int8]{}, repInt16: ops[int16]{}, repInt32: ops[int32]{},
	repInt64: ops[int64]{}, repUint: ops[uint]{}, repUint8: ops[uint8]{}, repUint16: ops[uint16]{},
	repUint32: ops[uint32]{}, repUint64: ops[uint64]{}, repUintptr: ops[uintptr]{}, repFloat32: ops[float32]{},
	repFloat64: ops[float64]{}, repComplex64: ops[complex64]{}, repComplex128: ops[complex128]{},
	repString: ops[string]{}, repPtr: ops[unsafe.Pointer]{}, repSlice: ops[slice]{}, repAny: ops[any]{},
	repIface: ops[iface]{},
}

// makeEface puts a type word and a data word together.
func makeEface(typ, data unsafe.Pointer) (v any) {
	e := (*eface)(unsafe.Pointer(&v))
	e.data = data
	e.typ = typ
	return v
}
