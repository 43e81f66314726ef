package eval

import (
	"go/types"
	"sync"
	"unsafe"
)

// genericFront makes the code of an instance of a generic function whose package is compiled; nil if it is not known.
func (m *Machine) genericFront(fn *types.Func, targs []types.Type, key string) *code {
	if fn.Pkg() == nil || m.cfg.Packages[fn.Pkg().Path()] == nil || len(targs) != fn.Signature().TypeParams().Len() {
		return nil
	}
	var make func(c *code) exec
	switch fn.Pkg().Path() + "." + fn.Name() {
	case "errors.AsType":
		make = m.asType
	case "sync.OnceValue", "sync.OnceValues":
		make = m.onceValues
	default:
		return nil
	}
	env := m.newEnv(fn, fn.Signature().TypeParams(), targs, key)
	s := fn.Signature()
	sig := env.subst(types.NewSignatureType(nil, nil, nil, s.Params(), s.Results(), s.Variadic())).(*types.Signature)
	c, lay := m.newCode(fn.Name(), sig, nil)
	c.finish(lay, make(c))
	return c
}

// asType is errors.AsType.
func (m *Machine) asType(c *code) exec {
	et := c.results[0].ti
	pt := et.pointerTo()
	test := et.test()
	return func(fr *frame) ctl {
		e := et.alloc()
		target := pt.anyAt(unsafe.Pointer(&e))
		ok := false
		if err := *(*error)(fr.at(c.params[0].off)); err != nil {
			ok = asEach(err, target, func(x any) bool {
				if !test(x) {
					return false
				}
				et.putAny(e, x)
				return true
			})
		}
		et.copyFn()(fr.at(c.results[0].off), e)
		*(*bool)(fr.at(c.results[1].off)) = ok
		return doReturn
	}
}

// onceState is what a function made by sync.OnceValue keeps.
type onceState struct {
	once  sync.Once
	f     unsafe.Pointer
	vals  []unsafe.Pointer
	panic any
}

// onceValues is sync.OnceValue and sync.OnceValues.
func (m *Machine) onceValues(c *code) exec {
	ft, rt := c.params[0].ti, c.results[0].ti
	sig := ft.T.Underlying().(*types.Signature)
	inner, lay := m.newCode("sync."+c.name, sig, nil)
	native := m.nativeFuncCode(sig)
	inner.finish(lay, func(fr *frame) ctl {
		st := (*onceState)(fr.env)
		st.once.Do(func() {
			done := false
			defer func() {
				if !done {
					st.panic = recover()
				}
			}()
			nf := m.enterFunc(st.f, native, fr.g)
			nf.code.run(nf)
			for _, r := range nf.code.results {
				p := r.ti.alloc()
				r.ti.copyFn()(p, nf.at(r.off))
				st.vals = append(st.vals, p)
			}
			nf.release()
			done = true
		})
		if st.vals == nil {
			panic(st.panic)
		}
		for i, r := range inner.results {
			r.ti.copyFn()(fr.at(r.off), st.vals[i])
		}
		return doReturn
	})
	return func(fr *frame) ctl {
		st := &onceState{f: *(*unsafe.Pointer)(fr.at(c.params[0].off))}
		*(*unsafe.Pointer)(fr.at(c.results[0].off)) = m.funcWord(&closure{inner, unsafe.Pointer(st)}, rt.rt)
		return doReturn
	}
}

// enterFunc returns the frame for a call of a function value.
func (m *Machine) enterFunc(p unsafe.Pointer, native *code, g *routine) *frame {
	if p != nil {
		if cl := closureOf(p); cl != nil {
			nf := cl.code.enter(g)
			nf.env = cl.env
			return nf
		}
	}
	nf := native.enter(g)
	*(*unsafe.Pointer)(nf.at(native.recv.off)) = p
	return nf
}
