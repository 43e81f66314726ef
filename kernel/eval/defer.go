package eval

import (
	"go/ast"
	"go/types"
)

// deferred is a call put off to the end of its function.
type deferred struct {
	nf    *frame
	bare  bool // recover itself was deferred
	below *deferred
}

// deferring wraps the body of a function that defers calls.
func deferring(run exec) exec {
	return func(fr *frame) (c ctl) {
		depth, done := fr.g.depth, false
		defer func() {
			if done {
				return
			}
			r := recover()
			g := fr.g
			if r == nil {
				g.depth = depth
				unwind(fr, &Panic{goexit: true})
				return
			}
			p := asPanic(r, g.at)
			if p.fatal {
				panic(p)
			}
			g.depth = depth
			unwind(fr, p)
			c = doReturn
		}()
		run(fr)
		for fr.defers != nil {
			d := fr.defers
			fr.defers = d.below
			d.call(fr, nil)
		}
		done = true
		return doReturn
	}
}

// call runs a deferred call; p is the panic that unwinds the function, if there is one.
func (d *deferred) call(fr *frame, p *Panic) {
	if d.bare { // called by a panic it is not called by a deferred function
		if p == nil {
			fr.recovered()
		}
		return
	}
	nf := d.nf
	nf.panic = p
	nf.code.run(nf)
	nf.panic = nil
	nf.release()
}

// unwind runs the deferred calls of a panicking function. It returns if one of them recovered, else it panics on.
func unwind(fr *frame, p *Panic) {
	g := fr.g
	depth := g.depth
	for fr.defers != nil {
		d := fr.defers
		fr.defers = d.below
		if q := d.tryCall(fr, p); q != nil {
			g.depth = depth
			if q.fatal {
				panic(q)
			}
			if q != p && p != nil && !p.recovered {
				q.Prev = p
			}
			p = q
			continue
		}
		if p != nil && p.recovered {
			p = nil
		}
	}
	if p != nil && !p.goexit {
		panic(p)
	}
}

// tryCall runs a deferred call and returns the panic that it ended with.
func (d *deferred) tryCall(fr *frame, p *Panic) (q *Panic) {
	done := false
	defer func() {
		if done {
			return
		}
		if r := recover(); r != nil {
			q = asPanic(r, fr.g.at)
		}
	}()
	d.call(fr, p)
	done = true
	return nil
}

// recovered is what recover returns in the function of this frame.
func (fr *frame) recovered() any {
	p := fr.panic
	if p == nil || p.recovered || p.goexit {
		return nil
	}
	p.recovered = true
	return p.Value
}

// deferStmt compiles defer: function and arguments are evaluated now.
func (f *fnc) deferStmt(s *ast.DeferStmt) exec {
	pre := f.roots(s.Call)
	if f.u.info.Types[ast.Unparen(s.Call.Fun)].IsBuiltin() && f.builtinName(s.Call.Fun) == "recover" {
		return func(fr *frame) ctl {
			fr.defers = &deferred{bare: true, below: fr.defers}
			return next
		}
	}
	start := f.laterCall(s.Call)
	return prelude(pre, func(fr *frame) ctl {
		nf := start(fr, fr.g)
		fr.defers = &deferred{nf: nf, below: fr.defers}
		return next
	})
}

// laterCall evaluates what a call needs and returns the callee's frame, ready to run.
func (f *fnc) laterCall(e *ast.CallExpr) func(*frame, *routine) *frame {
	fun := ast.Unparen(e.Fun)
	tv := f.u.info.Types[fun]
	if !tv.IsType() && !tv.IsBuiltin() {
		t := f.target(e)
		args, pre := f.args(e, t.sig)
		return f.starter(t, f.stores(t, args), pre)
	}
	// A function of its own for builtins and conversions.
	var args []*ex
	var vars []*types.Var
	for _, a := range e.Args {
		x := f.expr(a)
		if x.isNil {
			x = f.zeroEx(f.m.anyRec)
		}
		args = append(args, x)
		vars = append(vars, types.NewParam(0, nil, "", x.ti.T))
	}
	sig := types.NewSignatureType(nil, nil, nil, types.NewTuple(vars...), nil, false)
	c, lay := f.m.newCode("deferred", sig, nil)
	f.m.buildSynth(c, lay, f.u, f.env, func(g *fnc, _ *ex, as []*ex) *ex {
		x := g.builtin(g.builtinName(e.Fun), as, e)
		if x.fn == nil {
			call := x.call
			return &ex{ti: f.m.rec(types.Typ[types.Bool]), fn: func(fr *frame) bool { call(fr); return true }}
		}
		return x
	})
	t := &target{code: c, sig: sig, at: f.site(e.Pos())}
	return f.starter(t, f.stores(t, args), nil)
}

// goStmt compiles go.
func (f *fnc) goStmt(s *ast.GoStmt) exec {
	pre := f.roots(s.Call)
	start := f.laterCall(s.Call)
	m := f.m
	at := f.site(s.Pos())
	return prelude(pre, func(fr *frame) ctl {
		g := &routine{m: m, at: at}
		fr.g.at = at
		nf := start(fr, g)
		go m.goroutine(g, nf)
		return next
	})
}

// goroutine runs a goroutine of the cells to its end.
func (m *Machine) goroutine(g *routine, nf *frame) {
	done := false
	defer func() {
		if done {
			return
		}
		if r := recover(); r != nil {
			m.lost(asPanic(r, g.at))
		}
	}()
	nf.code.run(nf)
	done = true
}
