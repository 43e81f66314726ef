package eval

import (
	"go/ast"
	"go/types"
	"unsafe"
)

// rangeState is the state of one run of a loop over a function.
type rangeState struct {
	state loopState
	c     ctl
}

type loopState uint8

const (
	loopReady loopState = iota
	loopRunning
	loopDone
	loopOver
)

var loopErrors = map[loopState]string{
	loopRunning: "range function continued iteration after loop body panic",
	loopDone:    "range function continued iteration after function for loop body returned false",
	loopOver:    "range function continued iteration after whole loop exit",
}

// yieldEnv is the environment of the function that a loop over a function passes to it: the frame of the loop.
type yieldEnv struct {
	fr *frame
	st *rangeState
}

// rangeFunc compiles a loop over a function. The body stays a part of its own function: it runs on that function's
// frame, so that return, defer, goto and outer labels keep their meaning.
func (f *fnc) rangeFunc(s *ast.RangeStmt, t *types.Signature, lab *label) exec {
	yt := f.m.rec(t.Params().At(0).Type())
	ysig := yt.T.Underlying().(*types.Signature)
	c, lay := f.m.newCode("loop body", ysig, nil)
	var sets []setter
	switch ysig.Params().Len() {
	case 1:
		sets = []setter{f.rangeVar(s.Key, s.Tok, c.params[0].ti)}
	case 2:
		key, val := f.rangeVars(s, c.params[0].ti, c.params[1].ti)
		sets = []setter{key, val}
	}
	body := f.stmt(s.Body, nil)
	brk, cont := labels(lab)
	at := f.site(s.X.Pos())
	stop := &f.m.stop
	mach := f.m
	c.finish(lay, func(nf *frame) ctl {
		env := (*yieldEnv)(nf.env)
		fr, st := env.fr, env.st
		if st.state != loopReady {
			throw(at, loopErrors[st.state])
		}
		st.state = loopRunning
		for i, set := range sets {
			if set != nil {
				set(fr, nf.at(c.params[i].off))
			}
		}
		r := body(fr)
		if stop.Load() {
			panic(mach.halted())
		}
		on := r == next || r == doContinue || r == cont
		if on {
			st.state = loopReady
		} else {
			st.state, st.c = loopDone, r
		}
		*(*bool)(nf.at(c.results[0].off)) = on
		return doReturn
	})
	x := f.expr(s.X)
	tg := &target{sig: t, at: at}
	f.funcTarget(tg, x)
	off := f.temp(yt)
	run := f.caller(tg, []*ex{f.localEx(yt, off)}, nil)
	m, rt := f.m, yt.rt
	return func(fr *frame) ctl {
		env := &yieldEnv{fr, &rangeState{}}
		*(*unsafe.Pointer)(fr.at(off)) = m.funcWord(&closure{c, unsafe.Pointer(env)}, rt)
		run(fr).release()
		st := env.st
		was := st.state
		st.state = loopOver
		switch was {
		case loopRunning:
			throw(at, "range function recovered a loop body panic and did not resume panicking")
		case loopDone:
			if st.c == doBreak || st.c == brk {
				return next
			}
			return st.c
		}
		return next
	}
}
