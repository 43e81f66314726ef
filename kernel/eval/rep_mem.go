package eval

import "unsafe"

// memOps implements repOps for structs and arrays of one type.
type memOps struct{ ti *TypeRec }

func (m memOps) local(off uintptr) any {
	cp := m.ti.copyFn()
	return func(fr *frame, p unsafe.Pointer) { cp(p, fr.at(off)) }
}

func (m memOps) heap(off uintptr) any {
	cp := m.ti.copyFn()
	return func(fr *frame, p unsafe.Pointer) { cp(p, *(*unsafe.Pointer)(fr.at(off))) }
}

func (m memOps) captured(off uintptr) any {
	cp := m.ti.copyFn()
	return func(fr *frame, p unsafe.Pointer) { cp(p, *(*unsafe.Pointer)(unsafe.Add(fr.env, off))) }
}

func (m memOps) load(q ptrFn) any {
	cp := m.ti.copyFn()
	return func(fr *frame, p unsafe.Pointer) { cp(p, q(fr)) }
}

func (m memOps) field(off, field uintptr, at *site) any {
	cp := m.ti.copyFn()
	return func(fr *frame, dst unsafe.Pointer) {
		p := *(*unsafe.Pointer)(fr.at(off))
		if p == nil {
			nilDeref(at)
		}
		cp(dst, unsafe.Add(p, field))
	}
}

func (m memOps) indexLocal(ti *TypeRec, s, i uintptr, at *site) any {
	cp, size := ti.copyFn(), ti.size
	return func(fr *frame, dst unsafe.Pointer) {
		x := (*slice)(fr.at(s))
		k := *(*int)(fr.at(i))
		if uint(k) >= uint(x.len) {
			indexPanic(at, k, x.len)
		}
		cp(dst, unsafe.Add(x.p, uintptr(k)*size))
	}
}

func (m memOps) global(q unsafe.Pointer) any {
	cp := m.ti.copyFn()
	return func(_ *frame, p unsafe.Pointer) { cp(p, q) }
}

func (m memOps) constant(q unsafe.Pointer) any { return m.global(q) }

func (m memOps) into(fn any) intoFn { return fn.(intoFn) }

func (m memOps) arg(off uintptr, fn any) argFn {
	f := fn.(intoFn)
	return func(fr, nf *frame) { f(fr, nf.at(off)) }
}

func (m memOps) storeLocal(off uintptr, fn any) exec {
	f := fn.(intoFn)
	return func(fr *frame) ctl { f(fr, fr.at(off)); return next }
}

func (m memOps) storeGlobal(p unsafe.Pointer, fn any) exec {
	f := fn.(intoFn)
	return func(fr *frame) ctl { f(fr, p); return next }
}

func (m memOps) storeVia(p ptrFn, fn any) exec {
	f := fn.(intoFn)
	return func(fr *frame) ctl { f(fr, p(fr)); return next }
}

func (m memOps) discard(fn any) exec {
	f, ti := fn.(intoFn), m.ti
	return func(fr *frame) ctl { f(fr, ti.alloc()); return next }
}

func (m memOps) result(call func(*frame) *frame, off uintptr) any {
	cp := m.ti.copyFn()
	return func(fr *frame, p unsafe.Pointer) {
		nf := call(fr)
		cp(p, nf.at(off))
		nf.release()
	}
}

func (m memOps) toAny(ti *TypeRec, fn any) any {
	f := fn.(intoFn)
	return func(fr *frame) any {
		p := ti.alloc()
		f(fr, p)
		return ti.anyAt(p)
	}
}

func (m memOps) fromAny(ti *TypeRec, v func(*frame) any, fail func(*frame, any)) any {
	cp := ti.copyFn()
	return func(fr *frame, dst unsafe.Pointer) {
		x := v(fr)
		w, ok := ti.payload(x)
		switch {
		case !ok:
			fail(fr, x)
			w = ti.zero
		case ti.direct:
			*(*unsafe.Pointer)(dst) = w
			return
		}
		cp(dst, w)
	}
}

func (m memOps) before(pre []exec, fn any) any {
	f := fn.(intoFn)
	return func(fr *frame, p unsafe.Pointer) {
		for _, x := range pre {
			x(fr)
		}
		f(fr, p)
	}
}

func (m memOps) index(ti *TypeRec, s func(*frame) slice, i func(*frame) int, at *site) any {
	cp, size := ti.copyFn(), ti.size
	return func(fr *frame, p unsafe.Pointer) {
		x := s(fr)
		k := i(fr)
		if uint(k) >= uint(x.len) {
			indexPanic(at, k, x.len)
		}
		cp(p, unsafe.Add(x.p, uintptr(k)*size))
	}
}

func (m memOps) appendTo(ti *TypeRec, s func(*frame) slice, fn any) func(*frame) slice {
	f, size := fn.(intoFn), ti.size
	return func(fr *frame) slice {
		x := ti.grow(s(fr), 1)
		f(fr, unsafe.Add(x.p, uintptr(x.len)*size))
		x.len++
		return x
	}
}
