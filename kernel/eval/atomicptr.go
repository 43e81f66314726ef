package eval

import (
	"go/token"
	"go/types"
	"reflect"
	"sync/atomic"
	"unsafe"
)

// atomic.Pointer is the one generic type of a compiled package that has to be the real one: every instance is laid out
// alike and is served by the instance for bytes.
var atomicPointer = reflect.TypeFor[atomic.Pointer[byte]]()

func isAtomicPointer(n *types.Named) bool {
	o := n.Obj()
	return o.Name() == "Pointer" && o.Pkg() != nil && o.Pkg().Path() == "sync/atomic"
}

// atomicMethod makes the code of a method of atomic.Pointer[T].
func (m *Machine) atomicMethod(fn *types.Func, named *types.Named, pos token.Pos) *code {
	sig := fn.Signature()
	c, lay := m.newCode(fn.Name(), types.NewSignatureType(nil, nil, nil, sig.Params(), sig.Results(), false), types.NewPointer(named))
	recv := func(fr *frame) *atomic.Pointer[byte] {
		p := *(**atomic.Pointer[byte])(fr.at(c.recv.off))
		if p == nil {
			nilDeref(fr.g.at)
		}
		return p
	}
	arg := func(fr *frame, i int) *byte { return *(**byte)(fr.at(c.params[i].off)) }
	var body exec
	switch fn.Name() {
	case "Load":
		body = func(fr *frame) ctl {
			*(*unsafe.Pointer)(fr.at(c.results[0].off)) = unsafe.Pointer(recv(fr).Load())
			return doReturn
		}
	case "Store":
		body = func(fr *frame) ctl { recv(fr).Store(arg(fr, 0)); return doReturn }
	case "Swap":
		body = func(fr *frame) ctl {
			*(*unsafe.Pointer)(fr.at(c.results[0].off)) = unsafe.Pointer(recv(fr).Swap(arg(fr, 0)))
			return doReturn
		}
	case "CompareAndSwap":
		body = func(fr *frame) ctl {
			*(*bool)(fr.at(c.results[0].off)) = recv(fr).CompareAndSwap(arg(fr, 0), arg(fr, 1))
			return doReturn
		}
	default:
		refuse(pos, "method atomic.Pointer.%s", fn.Name())
	}
	c.finish(lay, body)
	return c
}
