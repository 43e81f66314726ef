package engine

import (
	"errors"
	"go/types"
	"math/rand"
	randv2 "math/rand/v2"
	"reflect"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/eval"
	"swanneck/kernel/sources"
)

// closures is the evaluator of kernel/eval. This is the one file that imports it.
type closures struct {
	m       *eval.Machine
	session *cell.Session
	sources func() map[string]*sources.Checked // what the library gives as source; nil if it gives none
}

func newEvaluator(s evaluatorSetup) Evaluator {
	c := &closures{session: s.session}
	if l, ok := s.library.(interface {
		Sources() map[string]*sources.Checked
	}); ok {
		c.sources = l.Sources
	}
	c.m = eval.New(eval.Config{
		Packages: packages(s),
		Stdout:   s.stdout,
		Stderr:   s.stderr,
		GoPanic: func(p *eval.Panic) {
			pos := p.Position()
			s.crash(&RunError{Line: pos.Line, Col: pos.Column, Name: pos.Filename, Msg: p.Message()})
		},
	})
	return c
}

// Run implements Evaluator.
func (c *closures) Run(ch *cell.Chunk) ([]Shown, int, error) {
	if c.sources != nil {
		for path, s := range c.sources() {
			c.m.AddSource(path, &eval.Source{Pkg: s.Pkg, Files: s.Files, Info: s.Info, Fset: s.Fset})
		}
	}
	for _, m := range ch.Methods {
		if err := c.m.SetMethod(m.Func, m.Decl, ch.Info, c.session.Fset()); err != nil {
			return nil, 0, c.runError(err)
		}
	}
	res, err := c.m.Run(eval.Chunk{
		Funcs: ch.Funcs, Body: ch.Body, Last: ch.Last, Globals: ch.Globals,
		Info: ch.Info, Fset: c.session.Fset(), Pkg: c.session.Pkg(),
	})
	if err != nil {
		return nil, res.Statements, c.runError(err)
	}
	var shown []Shown
	for _, v := range res.Values {
		a := c.m.Any(v)
		if e, ok := eval.AsError(a); ok && e != nil && len(res.Values) > 1 {
			pos := c.session.Fset().Position(ch.Last.Pos())
			return nil, res.Statements, &RunError{Line: pos.Line, Col: pos.Column, Name: pos.Filename, Msg: e.Error()}
		}
		shown = append(shown, Shown{Value: a, Text: c.Text(a)})
	}
	return shown, res.Statements, nil
}

func (c *closures) runError(err error) *RunError {
	var u *eval.Unsupported
	if errors.As(err, &u) {
		return &RunError{Line: u.Pos.Line, Col: u.Pos.Column, Name: u.Pos.Filename, Msg: u.Error(), Refused: true}
	}
	var f *eval.Failure
	if errors.As(err, &f) {
		msg := f.Text
		if f.Panic != nil && !f.Stop && !f.Plain {
			msg = "panic: " + msg
		}
		return &RunError{Line: f.Pos.Line, Col: f.Pos.Column, Name: f.Pos.Filename, Msg: msg, Halted: f.Stop}
	}
	return &RunError{Msg: err.Error()}
}

// Stop implements Evaluator.
func (c *closures) Stop() { c.m.Stop() }

// Resume implements Evaluator.
func (c *closures) Resume() { c.m.Resume() }

// Value implements Evaluator.
func (c *closures) Value(v *types.Var) any {
	x, ok := c.m.Global(v)
	if !ok {
		return nil
	}
	return c.m.Any(x)
}

// Error implements Evaluator.
func (c *closures) Error(v any) (error, bool) { return eval.AsError(v) }

// Text implements Evaluator.
func (c *closures) Text(v any) string { return eval.Sprint(v) }

// packages returns the tables of all packages, with the session's clock and seed in place of the machine's.
func packages(s evaluatorSetup) map[string]map[string]reflect.Value {
	all := map[string]map[string]reflect.Value{}
	for _, path := range s.content.Packages {
		if t := s.content.Values(path); t != nil {
			all[path] = t
		}
	}
	if t := all["time"]; t != nil {
		now := func() time.Time { return s.clock }
		t["Now"] = reflect.ValueOf(now)
		t["Since"] = reflect.ValueOf(func(u time.Time) time.Duration { return now().Sub(u) })
		t["Until"] = reflect.ValueOf(func(u time.Time) time.Duration { return u.Sub(now()) })
	}
	replace(all["math/rand"], reflect.ValueOf(rand.New(rand.NewSource(s.seed))))
	replace(all["math/rand/v2"], reflect.ValueOf(randv2.New(randv2.NewPCG(uint64(s.seed), 0x5eed))))
	return all
}

// replace puts the methods of a seeded generator in the place of a random package's functions of the same names.
func replace(table map[string]reflect.Value, generator reflect.Value) {
	for name, v := range table {
		if v.Kind() != reflect.Func {
			continue
		}
		if m := generator.MethodByName(name); m.IsValid() && m.Type() == v.Type() {
			table[name] = m
		}
	}
}
