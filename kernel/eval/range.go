package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"reflect"
	"unicode/utf8"
	"unsafe"
)

// setter stores the value at an address in a variable of a range clause.
type setter func(fr *frame, p unsafe.Pointer)

// rangeVar compiles one of the variables of a range clause; nil if there is none. ti is the type of the values.
func (f *fnc) rangeVar(e ast.Expr, tok token.Token, ti *TypeRec) setter {
	if e == nil {
		return nil
	}
	if id, ok := e.(*ast.Ident); ok && id.Name == "_" {
		return nil
	}
	if tok == token.DEFINE {
		v, _ := f.u.info.Defs[e.(*ast.Ident)].(*types.Var)
		if v != nil {
			return rangeDefine(f.declare(v))
		}
	}
	p := f.lhs(e)
	tmp := f.temp(ti)
	set := p.set(f.assignTo(f.localEx(ti, tmp), p.ti.T, e.Pos()))
	cp := ti.copyFn()
	return func(fr *frame, q unsafe.Pointer) {
		if p.pre != nil {
			p.pre(fr)
		}
		cp(fr.at(tmp), q)
		set(fr)
	}
}

// rangeVars compiles both variables. Where they are assigned to, the operands of both come before both assignments.
func (f *fnc) rangeVars(s *ast.RangeStmt, kt, vt *TypeRec) (key, val setter) {
	if s.Tok == token.DEFINE || s.Key == nil || s.Value == nil || isBlank(s.Key) || isBlank(s.Value) {
		return f.rangeVar(s.Key, s.Tok, kt), f.rangeVar(s.Value, s.Tok, vt)
	}
	k, v := f.lhs(s.Key), f.lhs(s.Value)
	kTmp, vTmp := f.temp(kt), f.temp(vt)
	kSet := k.set(f.assignTo(f.localEx(kt, kTmp), k.ti.T, s.Key.Pos()))
	vSet := v.set(f.assignTo(f.localEx(vt, vTmp), v.ti.T, s.Value.Pos()))
	kCopy, vCopy := kt.copyFn(), vt.copyFn()
	return func(fr *frame, p unsafe.Pointer) {
			kCopy(fr.at(kTmp), p)
		}, func(fr *frame, p unsafe.Pointer) {
			vCopy(fr.at(vTmp), p)
			for _, pre := range []exec{k.pre, v.pre} {
				if pre != nil {
					pre(fr)
				}
			}
			kSet(fr)
			vSet(fr)
		}
}

func isBlank(e ast.Expr) bool {
	id, ok := e.(*ast.Ident)
	return ok && id.Name == "_"
}

func rangeDefine(l varLoc) setter {
	off, ti := l.off, l.ti
	if l.kind == onHeap {
		cp := ti.copyFn()
		return func(fr *frame, p unsafe.Pointer) {
			q := ti.alloc()
			cp(q, p)
			*(*unsafe.Pointer)(fr.at(off)) = q
		}
	}
	switch ti.rep {
	case repInt:
		return func(fr *frame, p unsafe.Pointer) { *(*int)(fr.at(off)) = *(*int)(p) }
	case repFloat64:
		return func(fr *frame, p unsafe.Pointer) { *(*float64)(fr.at(off)) = *(*float64)(p) }
	case repString:
		return func(fr *frame, p unsafe.Pointer) { *(*string)(fr.at(off)) = *(*string)(p) }
	}
	cp := ti.copyFn()
	return func(fr *frame, p unsafe.Pointer) { cp(fr.at(off), p) }
}

// rangeStmt compiles for … range.
func (f *fnc) rangeStmt(s *ast.RangeStmt, lab *label) exec {
	pre := f.roots(s.X)
	xt := f.typ(s.X)
	switch t := core(xt).(type) {
	case *types.Basic:
		if t.Info()&types.IsString != 0 {
			return prelude(pre, f.rangeString(s, lab))
		}
		return prelude(pre, f.rangeInt(s, lab))
	case *types.Slice, *types.Array, *types.Pointer:
		return prelude(pre, f.rangeList(s, t, lab))
	case *types.Map:
		return prelude(pre, f.rangeMap(s, t, lab))
	case *types.Chan:
		return prelude(pre, f.rangeChan(s, t, lab))
	case *types.Signature:
		return prelude(pre, f.rangeFunc(s, t, lab))
	}
	refuse(s.Pos(), "range over %s", xt)
	return nil
}

// turn runs a loop body and says whether the loop goes on; else c is how the loop ends.
type turn func(fr *frame) (c ctl, on bool)

func (f *fnc) turn(s *ast.RangeStmt, lab *label) turn {
	body := f.stmt(s.Body, nil)
	brk, cont := labels(lab)
	stop, m := &f.m.stop, f.m
	return func(fr *frame) (ctl, bool) {
		if c := body(fr); c != next && c != doContinue && c != cont {
			if c == doBreak || c == brk {
				return next, false
			}
			return c, false
		}
		if stop.Load() {
			panic(m.halted())
		}
		return next, true
	}
}

func (f *fnc) rangeInt(s *ast.RangeStmt, lab *label) exec {
	x := f.expr(s.X)
	ti := x.ti
	if s.Key != nil && s.Tok == token.DEFINE {
		if id := s.Key.(*ast.Ident); id.Name != "_" {
			ti = f.rec(f.u.info.Defs[id].Type())
		}
	} else if s.Key != nil {
		if id, ok := s.Key.(*ast.Ident); !ok || id.Name != "_" {
			ti = f.tiOf(s.Key)
		}
	}
	if x.ti.rep != ti.rep {
		x = f.convert(x, ti, s.X.Pos())
	}
	key := f.rangeVar(s.Key, s.Tok, ti)
	step := f.turn(s, lab)
	switch ti.rep {
	case repInt:
		return rangeUpTo[int](x, key, step)
	case repInt8:
		return rangeUpTo[int8](x, key, step)
	case repInt16:
		return rangeUpTo[int16](x, key, step)
	case repInt32:
		return rangeUpTo[int32](x, key, step)
	case repInt64:
		return rangeUpTo[int64](x, key, step)
	case repUint:
		return rangeUpTo[uint](x, key, step)
	case repUint8:
		return rangeUpTo[uint8](x, key, step)
	case repUint16:
		return rangeUpTo[uint16](x, key, step)
	case repUint32:
		return rangeUpTo[uint32](x, key, step)
	case repUint64:
		return rangeUpTo[uint64](x, key, step)
	}
	return rangeUpTo[uintptr](x, key, step)
}

func rangeUpTo[T integer](x *ex, key setter, step turn) exec {
	n := as[T](x)
	return func(fr *frame) ctl {
		end := n(fr)
		i := new(T)
		for ; *i < end; *i++ {
			if key != nil {
				key(fr, unsafe.Pointer(i))
			}
			if c, on := step(fr); !on {
				return c
			}
		}
		return next
	}
}

func (f *fnc) rangeString(s *ast.RangeStmt, lab *label) exec {
	x := as[string](f.expr(s.X))
	key, val := f.rangeVars(s, f.m.rec(types.Typ[types.Int]), f.m.rec(types.Typ[types.Int32]))
	step := f.turn(s, lab)
	return func(fr *frame) ctl {
		str := x(fr)
		v := new(struct {
			i int
			r rune
		})
		for v.i < len(str) {
			size := 1
			v.r = rune(str[v.i])
			if v.r >= utf8.RuneSelf {
				v.r, size = utf8.DecodeRuneInString(str[v.i:])
			}
			if key != nil {
				key(fr, unsafe.Pointer(&v.i))
			}
			if val != nil {
				val(fr, unsafe.Pointer(&v.r))
			}
			if c, on := step(fr); !on {
				return c
			}
			v.i += size
		}
		return next
	}
}

func (f *fnc) rangeList(s *ast.RangeStmt, t types.Type, lab *label) exec {
	var base func(*frame) slice
	var elem types.Type
	blank := func(e ast.Expr) bool {
		id, ok := e.(*ast.Ident)
		return e == nil || ok && id.Name == "_"
	}
	switch t := t.(type) {
	case *types.Slice:
		elem = t.Elem()
		base = as[slice](f.expr(s.X))
	case *types.Pointer:
		a := t.Elem().Underlying().(*types.Array)
		elem = a.Elem()
		n := int(a.Len())
		x := f.expr(s.X)
		p := as[unsafe.Pointer](x)
		need := !blank(s.Value)
		at := f.site(s.X.Pos())
		base = func(fr *frame) slice {
			q := p(fr)
			if q == nil && need && n > 0 {
				nilDeref(at)
			}
			return slice{q, n, n}
		}
	case *types.Array:
		elem = t.Elem()
		n := int(t.Len())
		if blank(s.Value) {
			if hasCallOrRecv(s.X) {
				p := f.ref(f.expr(s.X))
				base = func(fr *frame) slice { return slice{p(fr), n, n} }
				break
			}
			base = func(*frame) slice { return slice{nil, n, n} }
			break
		}
		x := f.expr(s.X)
		in, ti := x.init(), x.ti
		base = func(fr *frame) slice { // the loop runs over a copy
			p := ti.alloc()
			in(fr, p)
			return slice{p, n, n}
		}
	}
	et := f.m.rec(elem)
	key, val := f.rangeVars(s, f.m.rec(types.Typ[types.Int]), et)
	step := f.turn(s, lab)
	size := et.size
	if key == nil && val == nil {
		return func(fr *frame) ctl {
			for range base(fr).len {
				if c, on := step(fr); !on {
					return c
				}
			}
			return next
		}
	}
	return func(fr *frame) ctl {
		l := base(fr)
		i := new(int)
		for ; *i < l.len; *i++ {
			if key != nil {
				key(fr, unsafe.Pointer(i))
			}
			if val != nil {
				val(fr, unsafe.Add(l.p, uintptr(*i)*size))
			}
			if c, on := step(fr); !on {
				return c
			}
		}
		return next
	}
}

func hasCallOrRecv(e ast.Expr) bool {
	found := false
	ast.Inspect(e, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.CallExpr:
			found = true
		case *ast.UnaryExpr:
			found = found || n.Op == token.ARROW
		}
		return !found
	})
	return found
}

// rangeMap goes through a map in the order of its keys where they have one. Entries removed on the way are left out.
func (f *fnc) rangeMap(s *ast.RangeStmt, t *types.Map, lab *label) exec {
	x := f.expr(s.X)
	kind, mt, kt, et := f.m.mapKind(t)
	w := as[unsafe.Pointer](x)
	key, val := f.rangeVars(s, kt, et)
	step := f.turn(s, lab)
	return func(fr *frame) ctl {
		m := w(fr)
		keys, elems := mapKeys(mt, m)
		for i, k := range keys {
			kp := k.Addr().UnsafePointer()
			p := kind.get(m, kp)
			if p == nil {
				if kind.size(m) == 0 || k.Equal(k) {
					continue
				}
				p = elems[i].Addr().UnsafePointer() // a key that equals nothing
			}
			if key != nil {
				key(fr, kp)
			}
			if val != nil {
				val(fr, p)
			}
			if c, on := step(fr); !on {
				return c
			}
		}
		return next
	}
}

func (f *fnc) rangeChan(s *ast.RangeStmt, t *types.Chan, lab *label) exec {
	x := f.expr(s.X)
	w, rt, m, at := as[unsafe.Pointer](x), x.ti.rt, f.m, f.site(s.X.Pos())
	et := f.m.rec(t.Elem())
	key := f.rangeVar(s.Key, s.Tok, et)
	step := f.turn(s, lab)
	return func(fr *frame) ctl {
		ch := chanOf(rt, w(fr))
		for {
			fr.g.at = at
			v, ok := m.recv(ch)
			if !ok {
				return next
			}
			if key != nil {
				p := reflect.New(et.rt).UnsafePointer()
				et.put(p, v)
				key(fr, p)
			}
			if c, on := step(fr); !on {
				return c
			}
		}
	}
}
