package eval

import (
	"go/ast"
	"go/types"
	"reflect"
	"unsafe"
)

// closure is a function value of the cells: code and the addresses of the variables it captures.
type closure struct {
	code *code
	env  unsafe.Pointer
}

// funcLit compiles a function literal.
func (f *fnc) funcLit(e *ast.FuncLit) *ex {
	ti := f.tiOf(e)
	c, env := f.literal(e)
	if env == nil {
		return f.funcValue(c, ti)
	}
	m, rt := f.m, ti.rt
	return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
		return m.funcWord(&closure{c, env(fr)}, rt)
	}}
}

// literal compiles the body of a function literal; env collects the captured variables.
func (f *fnc) literal(e *ast.FuncLit) (*code, func(*frame) unsafe.Pointer) {
	sig := f.u.info.TypeOf(e).(*types.Signature)
	c, lay := f.m.newCode("func literal", f.subst(sig).(*types.Signature), nil)
	n := 0
	in := &fnc{m: f.m, u: f.u, env: f.env, code: c, parent: f, lay: lay, esc: f.esc, vars: map[*types.Var]varLoc{},
		nlabel: &n, hoist: map[ast.Expr]*ex{}}
	in.body(e.Type, sig, nil, e.Body)
	return c, f.captures(in.caps)
}

// captures returns a closure that makes an environment of the addresses of variables.
func (f *fnc) captures(caps []*types.Var) func(*frame) unsafe.Pointer {
	if len(caps) == 0 {
		return func(*frame) unsafe.Pointer { return nil }
	}
	ptrs := make([]ptrFn, len(caps))
	for i, v := range caps {
		l := f.lookup(v)
		if l.kind == inFrame {
			refuse(v.Pos(), "capture of %s", v.Name())
		}
		ptrs[i] = l.addrOf()
	}
	if len(ptrs) == 1 {
		p := ptrs[0]
		return func(fr *frame) unsafe.Pointer {
			env := new(unsafe.Pointer)
			*env = p(fr)
			return unsafe.Pointer(env)
		}
	}
	return func(fr *frame) unsafe.Pointer {
		env := make([]unsafe.Pointer, len(ptrs))
		for i, p := range ptrs {
			env[i] = p(fr)
		}
		return unsafe.Pointer(unsafe.SliceData(env))
	}
}

// funcValue makes a function value of code that captures nothing.
func (f *fnc) funcValue(c *code, ti *TypeRec) *ex {
	p := new(unsafe.Pointer)
	*p = f.m.funcWord(&closure{code: c}, ti.rt)
	return &ex{ti: ti, fn: ti.ops.constant(unsafe.Pointer(p))}
}

// funcWord makes a native function value that runs a closure.
func (m *Machine) funcWord(cl *closure, rt reflect.Type) unsafe.Pointer {
	if mk := quickFuncs[rt]; mk != nil {
		return mk(cl)
	}
	v := reflect.MakeFunc(rt, cl.native)
	p := new(unsafe.Pointer)
	reflect.NewAt(rt, unsafe.Pointer(p)).Elem().Set(v)
	return *p
}

// native runs the closure for compiled code.
func (cl *closure) native(args []reflect.Value) []reflect.Value {
	c := cl.code
	g, whole := c.m.borrow(), false
	defer c.m.giveBack(g, &whole)
	nf := c.enter(g)
	nf.env = cl.env
	for i, p := range c.params {
		p.ti.put(nf.at(p.off), args[i])
		if p.ti.rep == repAny {
			v := (*any)(nf.at(p.off))
			*v = plain(*v)
		}
	}
	c.run(nf)
	var out []reflect.Value
	for _, r := range c.results {
		v := reflect.New(r.ti.rt).Elem()
		v.Set(r.ti.at(nf.at(r.off)))
		out = append(out, v)
	}
	nf.release()
	whole = true
	return out
}

// Function values made by reflect.MakeFunc keep the function they were made of; that is how a call finds the closure
// again without going through reflect. The places are checked when the program starts.
const makeFuncFn = 5 * ptrSize

var stubPC, nativePC uintptr

func init() {
	cl := &closure{}
	fn := cl.native
	nativePC = **(**uintptr)(unsafe.Pointer(&fn))
	v := reflect.MakeFunc(reflect.TypeFor[func()](), fn).Interface().(func())
	p := *(*unsafe.Pointer)(unsafe.Pointer(&v))
	stubPC = *(*uintptr)(p)
	if closureOf(p) != cl {
		panic("eval: the function values of this Go release have another layout")
	}
}

// closureOf returns the closure a function value was made of, or nil for a compiled function.
func closureOf(p unsafe.Pointer) *closure {
	pc := *(*uintptr)(p)
	if pc == stubPC {
		fv := *(*unsafe.Pointer)(unsafe.Add(p, makeFuncFn))
		if *(*uintptr)(fv) != nativePC {
			return nil
		}
		return *(**closure)(unsafe.Add(fv, ptrSize))
	}
	for _, q := range quickPCs {
		if pc == q {
			return *(**closure)(unsafe.Add(p, ptrSize))
		}
	}
	return nil
}

var (
	quickFuncs = map[reflect.Type]func(*closure) unsafe.Pointer{}
	quickPCs   []uintptr
)

// quick registers a way to make function values of one type without reflect. The literal must capture nothing but
// the closure.
func quick[F any](mk func(cl *closure) F) {
	word := func(cl *closure) unsafe.Pointer {
		f := mk(cl)
		return *(*unsafe.Pointer)(unsafe.Pointer(&f))
	}
	cl := &closure{}
	p := word(cl)
	if *(**closure)(unsafe.Add(p, ptrSize)) != cl {
		return
	}
	quickPCs = append(quickPCs, *(*uintptr)(p))
	quickFuncs[reflect.TypeFor[F]()] = word
}

func init() {
	quick(func(cl *closure) func() {
		return func() {
			g, whole := cl.code.m.borrow(), false
			defer cl.code.m.giveBack(g, &whole)
			nf := cl.code.enter(g)
			nf.env = cl.env
			cl.code.run(nf)
			nf.release()
			whole = true
		}
	})
	quick(func(cl *closure) func(i, j int) bool {
		return func(i, j int) bool {
			c := cl.code
			g, whole := c.m.borrow(), false
			defer c.m.giveBack(g, &whole)
			nf := c.enter(g)
			nf.env = cl.env
			*(*int)(nf.at(c.params[0].off)) = i
			*(*int)(nf.at(c.params[1].off)) = j
			c.run(nf)
			r := *(*bool)(nf.at(c.results[0].off))
			nf.release()
			whole = true
			return r
		}
	})
	quick(oneIn[float64, float64])
	quick(oneIn[int, bool])
}

// oneIn is the compiled shape of a closure with one parameter and one result, both plain words.
func oneIn[P, R float64 | int | bool](cl *closure) func(P) R {
	return func(x P) R {
		c := cl.code
		g, whole := c.m.borrow(), false
		defer c.m.giveBack(g, &whole)
		nf := c.enter(g)
		nf.env = cl.env
		*(*P)(nf.at(c.params[0].off)) = x
		c.run(nf)
		r := *(*R)(nf.at(c.results[0].off))
		nf.release()
		whole = true
		return r
	}
}
