package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"reflect"
	"sync/atomic"
	"unsafe"
)

// chanOf makes a reflect.Value of a channel.
func chanOf(rt reflect.Type, w unsafe.Pointer) reflect.Value {
	return reflect.NewAt(rt, unsafe.Pointer(&w)).Elem()
}

// stopCase is the select case of a machine that is asked to stop.
func (m *Machine) stopCase() reflect.SelectCase {
	return reflect.SelectCase{Dir: reflect.SelectRecv, Chan: reflect.ValueOf(*m.stopCh.Load())}
}

// recv receives, or panics when the machine is stopped meanwhile.
func (m *Machine) recv(c reflect.Value) (reflect.Value, bool) {
	if v, ok := c.TryRecv(); v.IsValid() {
		return v, ok
	}
	i, v, ok := reflect.Select([]reflect.SelectCase{{Dir: reflect.SelectRecv, Chan: c}, m.stopCase()})
	if i == 1 {
		panic(m.halted())
	}
	return v, ok
}

// receive compiles <-c.
func (f *fnc) receive(e *ast.UnaryExpr) *ex {
	x := f.expr(e.X)
	c, rt, m, at := as[unsafe.Pointer](x), x.ti.rt, f.m, f.site(e.Pos())
	et := f.m.rec(core(x.ti.T).(*types.Chan).Elem())
	off := f.temp(et)
	return f.atPtr(func(fr *frame) unsafe.Pointer {
		w := c(fr)
		fr.g.at = at
		v, _ := m.recv(chanOf(rt, w))
		p := fr.at(off)
		et.put(p, v)
		return p
	}, 0, et)
}

// receiveOk compiles v, ok = <-c.
func (f *fnc) receiveOk(e *ast.UnaryExpr) ([]*ex, exec) {
	x := f.expr(e.X)
	c, rt, m, at := as[unsafe.Pointer](x), x.ti.rt, f.m, f.site(e.Pos())
	et := f.m.rec(core(x.ti.T).(*types.Chan).Elem())
	bt := f.m.rec(types.Typ[types.Bool])
	vo, oo := f.temp(et), f.temp(bt)
	return []*ex{f.localEx(et, vo), f.localEx(bt, oo)}, func(fr *frame) ctl {
		w := c(fr)
		fr.g.at = at
		v, ok := m.recv(chanOf(rt, w))
		et.put(fr.at(vo), v)
		*(*bool)(fr.at(oo)) = ok
		return next
	}
}

// send compiles c <- v.
func (f *fnc) send(s *ast.SendStmt) exec {
	pre := f.roots(s.Chan, s.Value)
	x := f.expr(s.Chan)
	ct := core(x.ti.T).(*types.Chan)
	v := f.exprTo(s.Value, ct.Elem())
	c, rt, m, at := as[unsafe.Pointer](x), x.ti.rt, f.m, f.site(s.Arrow)
	p := f.ref(v)
	et := rt.Elem()
	return prelude(pre, func(fr *frame) ctl {
		w := c(fr)
		q := p(fr)
		fr.g.at = at
		ch, val := chanOf(rt, w), reflect.NewAt(et, q).Elem()
		if !ch.TrySend(val) {
			if i, _, _ := reflect.Select([]reflect.SelectCase{{Dir: reflect.SelectSend, Chan: ch, Send: val}, m.stopCase()}); i == 1 {
				panic(m.halted())
			}
		}
		return next
	})
}

// comm is a case of a select statement.
type comm struct {
	ch    func(*frame) unsafe.Pointer
	rt    reflect.Type
	val   ptrFn // of a send
	store func(fr *frame, v reflect.Value, ok bool)
	body  exec
	at    *site
}

// selectStmt compiles select. Of several ready cases the first is taken, the order turning slowly so that none starves.
func (f *fnc) selectStmt(s *ast.SelectStmt, lab *label) exec {
	var cases []comm
	var def exec
	for _, st := range s.Body.List {
		cl := st.(*ast.CommClause)
		if cl.Comm == nil {
			def = f.block(cl.Body)
			continue
		}
		c := comm{at: f.site(cl.Pos())}
		var bind []exec
		switch x := cl.Comm.(type) {
		case *ast.SendStmt:
			ch := f.keep(f.expr(x.Chan))
			v := f.keep(f.exprTo(x.Value, core(ch.x.ti.T).(*types.Chan).Elem()))
			get := as[unsafe.Pointer](ch.x)
			c.rt = ch.x.ti.rt
			p := f.ref(v.x)
			c.ch = func(fr *frame) unsafe.Pointer { ch.run(fr); v.run(fr); return get(fr) }
			c.val = p
		case *ast.ExprStmt:
			f.recvCase(&c, x.X)
		case *ast.AssignStmt:
			vals := f.recvCase(&c, x.Rhs[0])
			for i, l := range x.Lhs {
				v := vals[i]
				if x.Tok == token.DEFINE {
					id := l.(*ast.Ident)
					if id.Name == "_" {
						continue
					}
					if o, _ := f.u.info.Defs[id].(*types.Var); o != nil {
						bind = append(bind, f.declare(o).define(v))
						continue
					}
				}
				p := f.lhs(l)
				if p.ti == nil {
					continue
				}
				if p.pre != nil {
					bind = append(bind, p.pre)
				}
				bind = append(bind, p.set(f.assignTo(v, p.ti.T, l.Pos())))
			}
		}
		c.body = sequence(bind, f.block(cl.Body), nil)
		cases = append(cases, c)
	}
	brk, _ := labels(lab)
	m, at := f.m, f.site(s.Pos())
	var turn atomic.Int64
	leave := func(c ctl) ctl {
		if c == doBreak || c == brk {
			return next
		}
		return c
	}
	return func(fr *frame) ctl {
		fr.g.at = at
		sc := make([]reflect.SelectCase, len(cases), len(cases)+1)
		for i, c := range cases {
			sc[i] = reflect.SelectCase{Dir: reflect.SelectRecv, Chan: chanOf(c.rt, c.ch(fr))}
			if c.val != nil {
				sc[i].Dir = reflect.SelectSend
				sc[i].Send = reflect.NewAt(c.rt.Elem(), c.val(fr)).Elem()
			}
		}
		if m.stop.Load() {
			panic(m.halted())
		}
		first := 0
		if len(cases) > 0 {
			first = int(turn.Add(1)>>6) % len(cases)
		}
		for k := range cases {
			i := (first + k) % len(cases)
			fr.g.at = cases[i].at
			if cases[i].val != nil {
				if sc[i].Chan.TrySend(sc[i].Send) {
					return leave(cases[i].body(fr))
				}
				continue
			}
			if v, ok := sc[i].Chan.TryRecv(); v.IsValid() {
				cases[i].store(fr, v, ok)
				return leave(cases[i].body(fr))
			}
		}
		if def != nil {
			return leave(def(fr))
		}
		i, v, ok := reflect.Select(append(sc, m.stopCase()))
		if i == len(cases) {
			panic(m.halted())
		}
		if cases[i].val == nil {
			cases[i].store(fr, v, ok)
		}
		return leave(cases[i].body(fr))
	}
}

// recvCase compiles the receive of a select case; the values stand in the frame.
func (f *fnc) recvCase(c *comm, e ast.Expr) []*ex {
	x := f.expr(ast.Unparen(e).(*ast.UnaryExpr).X)
	c.ch, c.rt = as[unsafe.Pointer](x), x.ti.rt
	et := f.m.rec(core(x.ti.T).(*types.Chan).Elem())
	bt := f.m.rec(types.Typ[types.Bool])
	vo, oo := f.temp(et), f.temp(bt)
	c.store = func(fr *frame, v reflect.Value, ok bool) {
		et.put(fr.at(vo), v)
		*(*bool)(fr.at(oo)) = ok
	}
	return []*ex{f.localEx(et, vo), f.localEx(bt, oo)}
}
