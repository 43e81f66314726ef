package sources_test

import (
	"fmt"
	"iter"
	"runtime"
	"strings"
	"testing"
	"time"

	own "swanneck/kernel/sources/_src/iter"
)

type (
	push  = func(yield func(int) bool)
	push2 = func(yield func(int, string) bool)
	pull  = func(push) (func() (int, bool), func())
	pull2 = func(push2) (func() (int, string, bool), func())
)

func ownPull(s push) (func() (int, bool), func())            { return own.Pull(s) }
func realPull(s push) (func() (int, bool), func())           { return iter.Pull(s) }
func ownPull2(s push2) (func() (int, string, bool), func())  { return own.Pull2(s) }
func realPull2(s push2) (func() (int, string, bool), func()) { return iter.Pull2(s) }

// script is what happened, line by line.
type script struct{ lines []string }

func (s *script) say(v ...any) { s.lines = append(s.lines, fmt.Sprint(v...)) }

// try says what a call returns or panics with.
func (s *script) try(name string, f func() any) { s.say(name, ": ", outcome(f)) }

// pulled plays every scene of a sequence that is asked for its values.
var scenes = map[string]func(s *script, p pull){
	"drained": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) { s.say("start"); s.say(y(1)); s.say(y(2)); s.say("end") })
		for range 5 {
			v, ok := next()
			s.say(v, ok)
		}
		stop()
	},
	"empty": func(s *script, p pull) {
		next, stop := p(func(func(int) bool) {})
		v, ok := next()
		s.say(v, ok)
		stop()
	},
	"stopped": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) { defer s.say("cleaned up"); s.say(y(1)); s.say(y(2), y(3)) })
		v, ok := next()
		s.say(v, ok)
		stop()
		s.say("stopped")
		stop()
		v, ok = next()
		s.say(v, ok)
	},
	"stopped before the start": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) { s.say("start"); y(1) })
		stop()
		v, ok := next()
		s.say(v, ok)
	},
	"panic at once": func(s *script, p pull) {
		next, stop := p(func(func(int) bool) { panic("no mash") })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		stop()
	},
	"panic after a value": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) { y(1); panic(fmt.Errorf("boiled over")) })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		s.try("stop", func() any { stop(); return nil })
	},
	"panic while stopping": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) { defer func() { panic("cracked") }(); y(1) })
		next()
		s.try("stop", func() any { stop(); return nil })
		s.try("stop", func() any { stop(); return nil })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
	},
	"recovered by the sequence": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) { defer func() { s.say(recover()) }(); y(1); panic("x") })
		next()
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		stop()
	},
	"panic of nil": func(s *script, p pull) {
		next, _ := p(func(func(int) bool) { panic(nil) })
		s.try("next", func() any { next(); return nil })
	},
	"no sequence": func(s *script, p pull) {
		next, _ := p(nil)
		s.try("next", func() any { next(); return nil })
		s.try("next", func() any { v, ok := next(); return fmt.Sprint(v, ok) })
		_, stop := p(nil)
		s.try("stop", func() any { stop(); return nil })
	},
	"yield kept": func(s *script, p pull) {
		var kept func(int) bool
		next, stop := p(func(y func(int) bool) { kept = y; y(1) })
		next()
		s.try("early", func() any { return kept(5) })
		v, ok := next()
		s.say(v, ok)
		s.try("late", func() any { return kept(6) })
		stop()
	},
	"next by the sequence": func(s *script, p pull) {
		var next func() (int, bool)
		next, _ = p(func(y func(int) bool) { next() })
		s.try("next", func() any { next(); return nil })
	},
	"one in another": func(s *script, p pull) {
		next, stop := p(func(y func(int) bool) {
			inner, end := p(func(y func(int) bool) { _ = y(10) && y(20) && y(30) })
			defer end()
			for v, ok := inner(); ok && y(v+1); v, ok = inner() {
			}
			s.say("outer ends")
		})
		for range 2 {
			v, ok := next()
			s.say(v, ok)
		}
		stop()
	},
	"two at a time": func(s *script, p pull) {
		count := func(y func(int) bool) {
			for i := 0; y(i); i++ {
			}
		}
		a, stopA := p(count)
		b, stopB := p(count)
		for range 3 {
			v, _ := a()
			a()
			w, _ := b()
			s.say(v, " ", w)
		}
		stopA()
		stopB()
	},
}

// asPull plays the scenes of Pull with a Pull2.
func asPull(p pull2) pull {
	return func(seq push) (func() (int, bool), func()) {
		var seq2 push2
		if seq != nil {
			seq2 = func(y func(int, string) bool) { seq(func(v int) bool { return y(v, fmt.Sprint("n", v)) }) }
		}
		next, stop := p(seq2)
		return func() (int, bool) {
			v, s, ok := next()
			if want := fmt.Sprint("n", v); ok && s != want || !ok && s != "" {
				panic(fmt.Sprintf("with %d, %v came %q", v, ok, s))
			}
			return v, ok
		}, stop
	}
}

func TestPull(t *testing.T) {
	allTested(t, "iter", map[string]bool{"Pull": true, "Pull2": true})
	for _, kind := range []struct {
		name       string
		ours, real pull
	}{{"Pull", ownPull, realPull}, {"Pull2", asPull(ownPull2), asPull(realPull2)}} {
		for name, scene := range scenes {
			t.Run(kind.name+"/"+name, func(t *testing.T) {
				var got, want script
				scene(&got, kind.ours)
				scene(&want, kind.real)
				if g, w := strings.Join(got.lines, "\n"), strings.Join(want.lines, "\n"); g != w || w == "" {
					t.Errorf("%s:\n%s\nthe standard library's:\n%s", name, g, w)
				}
			})
		}
	}
}

// Stop called by the sequence itself ends it: the standard library leaves open what happens.
func TestPullStoppedFromInside(t *testing.T) {
	var next func() (int, bool)
	var stop func()
	more := true
	next, stop = ownPull(func(y func(int) bool) { stop(); more = y(3) })
	if v, ok := next(); v != 0 || ok || more {
		t.Errorf("next = %d, %v and yield = %v; want 0, false, false", v, ok, more)
	}
}

// A sequence that is stopped or drained leaves no goroutine behind.
func TestPullLeavesNoGoroutine(t *testing.T) {
	before := runtime.NumGoroutine()
	for i := range 50 {
		next, stop := ownPull(func(y func(int) bool) { _ = y(1) && y(2) })
		for range i % 5 {
			next()
		}
		stop()
	}
	deadline := time.Now().Add(10 * time.Second)
	for runtime.NumGoroutine() > before && time.Now().Before(deadline) {
		time.Sleep(time.Millisecond)
	}
	if n := runtime.NumGoroutine(); n > before {
		t.Errorf("%d goroutines before, %d after", before, n)
	}
}
