package eval

import (
	"go/types"
	"reflect"
	"unsafe"
)

// equalAny compares two interface values.
func equalAny(x, y any) bool {
	if x == nil || y == nil {
		return x == nil && y == nil
	}
	if b, ok := x.(unboxer); ok {
		bx := b.unbox()
		by, ok := y.(unboxer)
		if !ok {
			return false
		}
		b2 := by.unbox()
		if bx.T != b2.T {
			return false
		}
		if !bx.T.comp {
			panic(runtimeError("comparing uncomparable type " + bx.T.Name()))
		}
		return bx.T.equal()(bx.ptr(), b2.ptr())
	}
	if _, ok := y.(unboxer); ok {
		return false
	}
	ex, ey := (*eface)(unsafe.Pointer(&x)), (*eface)(unsafe.Pointer(&y))
	if ex.typ != ey.typ {
		return false
	}
	switch reflect.TypeOf(x).Kind() {
	case reflect.Struct, reflect.Array:
		if !reflect.TypeOf(x).Comparable() {
			return x == y // panics with the proper text
		}
		return equalNative(reflect.ValueOf(x), reflect.ValueOf(y))
	}
	return x == y
}

// equalNative compares compiled structs and arrays, in whose interface fields boxes may lie.
func equalNative(x, y reflect.Value) bool {
	switch x.Kind() {
	case reflect.Struct:
		for i := range x.NumField() {
			if x.Type().Field(i).Name == "_" {
				continue
			}
			if !equalNative(x.Field(i), y.Field(i)) {
				return false
			}
		}
		return true
	case reflect.Array:
		for i := range x.Len() {
			if !equalNative(x.Index(i), y.Index(i)) {
				return false
			}
		}
		return true
	case reflect.Interface:
		if x.CanInterface() && y.CanInterface() {
			return equalAny(x.Interface(), y.Interface())
		}
		if x.CanAddr() {
			x = reflect.NewAt(x.Type(), x.Addr().UnsafePointer()).Elem()
		}
	}
	return x.Equal(y)
}

// equal returns the comparison of two values of a comparable type in memory.
func (ti *TypeRec) equal() func(a, b unsafe.Pointer) bool {
	ti.eqOnce.Do(func() { ti.eqFn = ti.makeEqual() })
	return ti.eqFn
}

func eqOf[T comparable](a, b unsafe.Pointer) bool { return *(*T)(a) == *(*T)(b) }

func (ti *TypeRec) makeEqual() func(a, b unsafe.Pointer) bool {
	switch ti.rep {
	case repBool:
		return eqOf[bool]
	case repInt8, repUint8:
		return eqOf[uint8]
	case repInt16, repUint16:
		return eqOf[uint16]
	case repInt32, repUint32:
		return eqOf[uint32]
	case repInt, repInt64, repUint, repUint64, repUintptr:
		return eqOf[uint64]
	case repFloat32:
		return eqOf[float32]
	case repFloat64:
		return eqOf[float64]
	case repComplex64:
		return eqOf[complex64]
	case repComplex128:
		return eqOf[complex128]
	case repString:
		return eqOf[string]
	case repPtr:
		return eqOf[unsafe.Pointer]
	case repSlice:
		return func(_, _ unsafe.Pointer) bool { panic(runtimeError("comparing uncomparable type " + ti.Name())) }
	case repAny, repIface:
		return func(a, b unsafe.Pointer) bool { return equalAny(ti.anyAt(a), ti.anyAt(b)) }
	}
	switch u := ti.T.Underlying().(type) {
	case *types.Array:
		et := ti.m.rec(u.Elem())
		eq, size, n := et.equal(), et.size, int(u.Len())
		return func(a, b unsafe.Pointer) bool {
			for i := range n {
				if !eq(unsafe.Add(a, uintptr(i)*size), unsafe.Add(b, uintptr(i)*size)) {
					return false
				}
			}
			return true
		}
	case *types.Struct:
		if ti.pure && ti.m.isCompiled(ti.T) {
			break
		}
		type field struct {
			off uintptr
			eq  func(a, b unsafe.Pointer) bool
		}
		var fs []field
		for i := range u.NumFields() {
			if v := u.Field(i); v.Name() != "_" {
				fs = append(fs, field{ti.rt.Field(i).Offset, ti.m.rec(v.Type()).equal()})
			}
		}
		return func(a, b unsafe.Pointer) bool {
			for _, f := range fs {
				if !f.eq(unsafe.Add(a, f.off), unsafe.Add(b, f.off)) {
					return false
				}
			}
			return true
		}
	}
	return func(a, b unsafe.Pointer) bool { return equalNative(ti.at(a), ti.at(b)) }
}

// isCompiled says whether a type is a named type of a compiled package.
func (m *Machine) isCompiled(t types.Type) bool {
	n, ok := types.Unalias(t).(*types.Named)
	return ok && m.compiledType(n) != nil
}
