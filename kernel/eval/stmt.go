package eval

import (
	"go/ast"
	"go/token"
	"go/types"
)

// label is a label of a function.
type label struct {
	id     ctl
	gotoed bool
}

func (f *fnc) label(name string) *label {
	if f.labels == nil {
		f.labels = map[string]*label{}
	}
	l := f.labels[name]
	if l == nil {
		*f.nlabel++
		l = &label{id: firstLabel + ctl(*f.nlabel)*4}
		f.labels[name] = l
	}
	return l
}

// block compiles a list of statements.
func (f *fnc) block(list []ast.Stmt) exec {
	return f.blockOf(list, f.stmts(list))
}

func (f *fnc) stmts(list []ast.Stmt) []exec {
	out := make([]exec, len(list))
	for i, s := range list {
		out[i] = f.stmt(s, nil)
	}
	return out
}

// blockOf runs compiled statements in order; a goto to a label among them goes on there.
func (f *fnc) blockOf(list []ast.Stmt, run []exec) exec {
	places := map[ctl]int{}
	for i, s := range list {
		for {
			l, ok := s.(*ast.LabeledStmt)
			if !ok {
				break
			}
			if lab := f.label(l.Label.Name); lab.gotoed {
				places[lab.id+labGoto] = i
			}
			s = l.Stmt
		}
	}
	if len(places) == 0 {
		return inOrder(run)
	}
	m := f.m
	return func(fr *frame) ctl {
		for i := 0; i < len(run); {
			c := run[i](fr)
			if c == next {
				i++
				continue
			}
			j, ok := places[c]
			if !ok {
				return c
			}
			if j <= i && m.stop.Load() {
				panic(m.halted())
			}
			i = j
		}
		return next
	}
}

func inOrder(run []exec) exec {
	switch len(run) {
	case 0:
		return func(*frame) ctl { return next }
	case 1:
		return run[0]
	case 2:
		a, b := run[0], run[1]
		return func(fr *frame) ctl {
			if c := a(fr); c != next {
				return c
			}
			return b(fr)
		}
	case 3:
		a, b, d := run[0], run[1], run[2]
		return func(fr *frame) ctl {
			if c := a(fr); c != next {
				return c
			}
			if c := b(fr); c != next {
				return c
			}
			return d(fr)
		}
	}
	return func(fr *frame) ctl {
		for _, s := range run {
			if c := s(fr); c != next {
				return c
			}
		}
		return next
	}
}

// prelude runs what was lifted out of a statement's expressions before it.
func prelude(pre []exec, run exec) exec {
	if len(pre) == 0 {
		return run
	}
	return func(fr *frame) ctl {
		for _, p := range pre {
			p(fr)
		}
		return run(fr)
	}
}

// stmt compiles a statement. lab is its label, if it has one.
func (f *fnc) stmt(s ast.Stmt, lab *label) exec {
	f.m.compilingAt = site{fset: f.u.fset, pos: s.Pos()}
	switch s := s.(type) {
	case *ast.EmptyStmt:
		return func(*frame) ctl { return next }
	case *ast.BlockStmt:
		return f.block(s.List)
	case *ast.LabeledStmt:
		return f.stmt(s.Stmt, f.label(s.Label.Name))
	case *ast.ExprStmt:
		return f.exprStmt(s)
	case *ast.AssignStmt:
		return f.assign(s)
	case *ast.IncDecStmt:
		return f.incDec(s)
	case *ast.DeclStmt:
		return f.declStmt(s)
	case *ast.IfStmt:
		return f.ifStmt(s)
	case *ast.ForStmt:
		return f.forStmt(s, lab)
	case *ast.RangeStmt:
		return f.rangeStmt(s, lab)
	case *ast.SwitchStmt:
		return f.switchStmt(s, lab)
	case *ast.TypeSwitchStmt:
		return f.typeSwitch(s, lab)
	case *ast.SelectStmt:
		return f.selectStmt(s, lab)
	case *ast.ReturnStmt:
		return f.returnStmt(s)
	case *ast.BranchStmt:
		return f.branch(s)
	case *ast.DeferStmt:
		return f.deferStmt(s)
	case *ast.GoStmt:
		return f.goStmt(s)
	case *ast.SendStmt:
		return f.send(s)
	}
	refuse(s.Pos(), "statement %T", s)
	return nil
}

// markGotos marks the labels that a goto names, before any block is compiled.
func (f *fnc) markGotos(n ast.Node) {
	ast.Inspect(n, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.FuncLit:
			return false
		case *ast.BranchStmt:
			if n.Tok == token.GOTO {
				f.label(n.Label.Name).gotoed = true
			}
		}
		return true
	})
}

func (f *fnc) branch(s *ast.BranchStmt) exec {
	var c ctl
	switch s.Tok {
	case token.BREAK:
		c = doBreak
		if s.Label != nil {
			c = f.label(s.Label.Name).id + labBreak
		}
	case token.CONTINUE:
		c = doContinue
		if s.Label != nil {
			c = f.label(s.Label.Name).id + labCont
		}
	case token.GOTO:
		c = f.label(s.Label.Name).id + labGoto
	case token.FALLTHROUGH:
		c = doFall
	}
	return func(*frame) ctl { return c }
}

func (f *fnc) exprStmt(s *ast.ExprStmt) exec {
	pre := f.roots(s.X)
	e := ast.Unparen(s.X)
	if h, ok := f.hoist[e]; ok && h != nil {
		return prelude(pre, func(*frame) ctl { return next })
	}
	if call, ok := e.(*ast.CallExpr); ok {
		fun := ast.Unparen(call.Fun)
		if tv := f.u.info.Types[fun]; !tv.IsType() && !tv.IsBuiltin() {
			t := f.target(call)
			args, p := f.args(call, t.sig)
			run := f.caller(t, args, p)
			return prelude(pre, func(fr *frame) ctl { run(fr).release(); return next })
		}
	}
	x := f.expr(e)
	if x.fn == nil {
		call := x.call
		return prelude(pre, func(fr *frame) ctl {
			if nf := call(fr); nf != nil {
				nf.release()
			}
			return next
		})
	}
	return prelude(pre, x.ti.ops.discard(x.fn))
}

func (f *fnc) ifStmt(s *ast.IfStmt) exec {
	var init exec
	if s.Init != nil {
		init = f.stmt(s.Init, nil)
	}
	pre := f.roots(s.Cond)
	cond := as[bool](f.expr(s.Cond))
	then := f.stmt(s.Body, nil)
	var els exec
	if s.Else != nil {
		els = f.stmt(s.Else, nil)
	}
	var run exec
	if els == nil {
		run = func(fr *frame) ctl {
			if cond(fr) {
				return then(fr)
			}
			return next
		}
	} else {
		run = func(fr *frame) ctl {
			if cond(fr) {
				return then(fr)
			}
			return els(fr)
		}
	}
	run = prelude(pre, run)
	if init == nil {
		return run
	}
	return func(fr *frame) ctl { init(fr); return run(fr) }
}

// forStmt compiles a loop with a condition. Variables of its head that are shared are new in each turn.
func (f *fnc) forStmt(s *ast.ForStmt, lab *label) exec {
	var init exec
	var renew []exec
	if s.Init != nil {
		init = f.stmt(s.Init, nil)
		if a, ok := s.Init.(*ast.AssignStmt); ok && a.Tok == token.DEFINE {
			for _, l := range a.Lhs {
				v, _ := f.u.info.Defs[l.(*ast.Ident)].(*types.Var)
				if v == nil {
					continue
				}
				if loc, ok := f.vars[v]; ok && loc.kind == onHeap {
					renew = append(renew, loc.define(loc.read()))
				}
			}
		}
	}
	cond := func(*frame) bool { return true }
	endless := s.Cond == nil
	if s.Cond != nil {
		pre := f.roots(s.Cond)
		c := as[bool](f.expr(s.Cond))
		cond = c
		if len(pre) > 0 {
			cond = func(fr *frame) bool {
				for _, p := range pre {
					p(fr)
				}
				return c(fr)
			}
		}
	}
	var post exec
	if s.Post != nil {
		post = f.stmt(s.Post, nil)
	}
	if len(renew) > 0 {
		p := post
		post = func(fr *frame) ctl {
			for _, r := range renew {
				r(fr)
			}
			if p != nil {
				p(fr)
			}
			return next
		}
	}
	body := f.stmt(s.Body, nil)
	brk, cont := labels(lab)
	stop, m := &f.m.stop, f.m
	return func(fr *frame) ctl {
		if init != nil {
			init(fr)
		}
		for endless || cond(fr) {
			if c := body(fr); c != next && c != doContinue && c != cont {
				if c == doBreak || c == brk {
					return next
				}
				return c
			}
			if post != nil {
				post(fr)
			}
			if stop.Load() {
				panic(m.halted())
			}
		}
		return next
	}
}

// labels returns the outcomes that break and continue with a label have; without a label none matches.
func labels(lab *label) (brk, cont ctl) {
	if lab == nil {
		return -1, -1
	}
	return lab.id + labBreak, lab.id + labCont
}

func (f *fnc) returnStmt(s *ast.ReturnStmt) exec {
	if len(s.Results) == 0 {
		return func(*frame) ctl { return doReturn }
	}
	pre := f.roots(s.Results...)
	if len(s.Results) == 1 && len(f.result) == 1 {
		l := f.result[0]
		st := l.store(f.exprTo(s.Results[0], l.ti.T))
		return prelude(pre, func(fr *frame) ctl { st(fr); return doReturn })
	}
	if len(s.Results) == 1 {
		vals, run := f.spread(f.expr(s.Results[0]))
		sts := make([]exec, len(vals))
		for i, v := range vals {
			l := f.result[i]
			sts[i] = l.store(f.assignTo(v, l.ti.T, s.Pos()))
		}
		return prelude(pre, func(fr *frame) ctl {
			run(fr)
			for _, st := range sts {
				st(fr)
			}
			return doReturn
		})
	}
	var keep, sts []exec
	for i, e := range s.Results {
		l := f.result[i]
		x := f.exprTo(e, l.ti.T)
		if !f.named || x.cv != nil { // nothing can read the results before all are set
			if x.cv == nil {
				keep = append(keep, l.store(x))
				continue
			}
			sts = append(sts, l.store(x))
			continue
		}
		t := f.localEx(l.ti, f.temp(l.ti))
		keep = append(keep, varLoc{kind: inFrame, off: t.off, ti: l.ti}.store(x))
		sts = append(sts, l.store(t))
	}
	return prelude(pre, func(fr *frame) ctl {
		for _, k := range keep {
			k(fr)
		}
		for _, st := range sts {
			st(fr)
		}
		return doReturn
	})
}

func (f *fnc) declStmt(s *ast.DeclStmt) exec {
	g := s.Decl.(*ast.GenDecl)
	if g.Tok != token.VAR {
		return func(*frame) ctl { return next }
	}
	var run []exec
	for _, sp := range g.Specs {
		vs := sp.(*ast.ValueSpec)
		lhs := make([]ast.Expr, len(vs.Names))
		for i, n := range vs.Names {
			lhs[i] = n
		}
		run = append(run, f.define(lhs, vs.Values, vs.Pos()))
	}
	return inOrder(run)
}
