package eval

import (
	"unsafe"
)

// Box is a value of a type that mentions a type declared in a cell, as it stands in an interface. V holds the value in
// its storage type (see TypeRec). Boxes of one type compare as their values do.
type Box struct {
	T *TypeRec
	V any
}

// unboxer is what Box and the adapters for compiled interfaces share.
type unboxer interface{ unbox() Box }

func (b Box) unbox() Box { return b }

// Unbox returns the box that v is or, for an adapter, carries.
func Unbox(v any) (Box, bool) {
	if u, ok := v.(unboxer); ok {
		return u.unbox(), true
	}
	return Box{}, false
}

var boxWord = func() unsafe.Pointer {
	var v any = Box{}
	return (*eface)(unsafe.Pointer(&v)).typ
}()

// ptr returns the address of the boxed value, which must not be written to.
func (b Box) ptr() unsafe.Pointer {
	if b.T.direct {
		p := new(unsafe.Pointer)
		*p = (*eface)(unsafe.Pointer(&b.V)).data
		return unsafe.Pointer(p)
	}
	return (*eface)(unsafe.Pointer(&b.V)).data
}

// plain takes an adapter off a value that comes from compiled code.
func plain(v any) any {
	if u, ok := v.(unboxer); ok {
		if b, ok := v.(Box); ok {
			return b
		}
		return u.unbox()
	}
	return v
}

// any returns the value of an interface with methods as an interface{}.
func (w iface) any() any {
	if w.tab == nil {
		return nil
	}
	return plain(makeEface(tabType(w.tab), w.data))
}

// tabType returns the dynamic type from a method table. Its place is checked when the program starts.
func tabType(tab unsafe.Pointer) unsafe.Pointer {
	return *(*unsafe.Pointer)(unsafe.Add(tab, ptrSize))
}

type probe struct{ x int }

func (probe) Error() string { return "" }

func init() {
	var e error = probe{7}
	w := *(*iface)(unsafe.Pointer(&e))
	var v any = probe{7}
	if tabType(w.tab) != (*eface)(unsafe.Pointer(&v)).typ {
		panic("eval: the method tables of this Go release have another layout")
	}
}
