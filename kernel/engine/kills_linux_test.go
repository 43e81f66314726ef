package engine_test

import (
	"context"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// children lists the processes that this one has started and that are still there, the dead that nobody waited for
// included.
func children(t testing.TB) (pids []int) {
	t.Helper()
	list, err := filepath.Glob("/proc/[0-9]*/stat")
	if err != nil || len(list) == 0 {
		t.Fatalf("no processes in /proc: %v", err)
	}
	for _, name := range list {
		b, err := os.ReadFile(name)
		if err != nil {
			continue // it has ended meanwhile
		}
		_, rest, _ := strings.Cut(string(b), ") ") // behind the name of the program
		if f := strings.Fields(rest); len(f) > 1 && f[1] == strconv.Itoa(os.Getpid()) {
			if pid, err := strconv.Atoi(filepath.Base(filepath.Dir(name))); err == nil {
				pids = append(pids, pid)
			}
		}
	}
	return pids
}

// assassin kills the workers of one engine.
type assassin struct {
	t      *testing.T
	r      *rand.Rand
	others []int // children that are none of its business
}

// target waits for a worker other than an old one.
func (a *assassin) target(old int) int {
	for until := time.Now().Add(20 * time.Second); time.Now().Before(until); time.Sleep(200 * time.Microsecond) {
		for _, pid := range children(a.t) {
			if pid != old && !slices.Contains(a.others, pid) {
				return pid
			}
		}
	}
	a.t.Error("no worker was seen within 20 s")
	return 0
}

// kill kills a worker; gone is closed when nothing is left of it.
func (a *assassin) kill(pid int) (gone chan bool) {
	gone = make(chan bool)
	if pid == 0 {
		close(gone)
		return gone
	}
	if err := syscall.Kill(pid, syscall.SIGKILL); err != nil && !errors.Is(err, syscall.ESRCH) {
		a.t.Error(err)
	}
	go func() {
		defer close(gone)
		for slices.Contains(children(a.t), pid) {
			time.Sleep(200 * time.Microsecond)
		}
	}()
	return gone
}

// within is a random moment.
func (a *assassin) within(most time.Duration) time.Duration {
	return time.Duration(a.r.Int64N(int64(most)))
}

// listener takes what a cell says and counts its lines.
type listener struct {
	text, errors strings.Builder
	lines        int
	at           int // after so many lines
	alarm        chan bool
	asked        chan bool
	reply        chan string
}

// begins is a listener that gives alarm when the cell has begun, by the first line that it prints.
func begins() *listener { return &listener{at: 1, alarm: make(chan bool)} }

func (l *listener) Stream(name, text string) {
	if name == "stderr" {
		l.errors.WriteString(text)
		return
	}
	l.text.WriteString(text)
	before := l.lines
	if l.lines += strings.Count(text, "\n"); l.alarm != nil && before < l.at && l.lines >= l.at {
		close(l.alarm)
	}
}
func (l *listener) Display(display.Bundle) {}
func (l *listener) Value(display.Bundle)   {}
func (l *listener) Ask(string, bool) (string, error) {
	close(l.asked)
	return <-l.reply, nil
}

// A worker may be killed at any moment. The parent lives, the cell that ran ends with one clear line, what had succeeded
// is there again, neither less nor twice, what was run again is said, what was heard is in order, and nothing is left
// behind.
func TestKills(t *testing.T) {
	kills := 60
	if testing.Short() {
		kills = 18
	}
	goroutines := runtime.NumGoroutine()
	a := &assassin{t: t, r: rand.New(rand.NewPCG(1512, 60)), others: children(t)}
	e, err := engine.Start(engine.Options{CellTime: -1})
	if err != nil {
		t.Fatal(err)
	}
	defer e.Close()
	cells := 0
	ran := func(src string, out *listener) *engine.Failure {
		t.Helper()
		cells++
		err := e.Run(context.Background(), fmt.Sprintf("cell %d", cells), src, out)
		var f *engine.Failure
		if err != nil && !errors.As(err, &f) {
			t.Fatalf("%q: the engine cannot go on: %v", src, err)
		}
		return f
	}
	succeeds := func(src, want string) (said string) {
		t.Helper()
		out := &listener{asked: make(chan bool), reply: make(chan string, 1)}
		out.reply <- "300"
		if f := ran(src, out); f != nil || out.text.String() != want {
			t.Fatalf("%q said %q, %v; want %q", src, out.text.String(), f, want)
		}
		return out.errors.String()
	}
	succeeds("count := 0\ntable := map[string]int{}\nfor i := range 1000 { table[fmt.Sprint(i)] = i * i }", "")
	succeeds("charge := Ask(\"charge in L? \")", "")
	succeeds("long := 0\nfor i := range 500_000 { long += i % 3 }", "")
	if f := ran("half := 5\npanic(\"no\")", &listener{}); f == nil || f.Items[0].Msg != "panic: no" {
		t.Fatalf("%v", f)
	}
	count := 0
	check := func() (said string) {
		t.Helper()
		count++
		return succeeds("count++\nfmt.Print(count, \" \", len(table), table[\"31\"], \" \", long, \" \", charge, \" \", half)", fmt.Sprintf("%d 1000 961 499999 300 5", count))
	}
	failed := func(f *engine.Failure) {
		t.Helper()
		switch {
		case f == nil:
			t.Error("the cell succeeded, though its worker was killed")
		case f.Kind != engine.Crashed || len(f.Items) != 1 || strings.Contains(f.Items[0].Msg, "\n") || !strings.Contains(f.Items[0].Msg, "killed from outside"):
			t.Errorf("%s: %q; want one line that says it was killed", f.Kind, f.Items)
		case !strings.Contains(f.Note, "earlier cells run again"):
			t.Errorf("the note is %q; want what was run again", f.Note)
		}
	}
	situations := []string{"idle", "cell", "output", "replay", "start", "question"}
	for i := range kills {
		situation := situations[i%len(situations)]
		worker := a.target(0)
		done := make(chan bool)
		told := false // what was run again has been said
		switch situation {
		case "idle":
			gone := a.kill(worker)
			time.Sleep(a.within(3 * time.Millisecond))
			out := &listener{}
			f := ran("count += 0", out)
			if f != nil {
				failed(f)
			} else if said := out.errors.String(); !strings.Contains(said, "between two cells") || !strings.Contains(said, "earlier cells run again") || strings.Count(said, "\n") != 1 {
				t.Errorf("idle: the next cell was told %q", said)
			}
			told = true
			<-gone
		case "cell":
			out, wait := begins(), a.within(20*time.Millisecond)
			go func() {
				<-out.alarm
				time.Sleep(wait)
				<-a.kill(worker)
				close(done)
			}()
			failed(ran("fmt.Println(\"begun\")\ncount += 1000\nfor {}", out))
			told = true
		case "output":
			out := &listener{at: 1 + a.r.IntN(9999), alarm: make(chan bool)}
			late := time.After(200 * time.Millisecond)
			go func() {
				select {
				case <-out.alarm:
				case <-late:
				}
				<-a.kill(worker)
				close(done)
			}()
			failed(ran("count += 1000\nfor i := range 10_000 { fmt.Println(i) }\nfor {}", out))
			told = true
			var want strings.Builder
			for n := range out.lines {
				fmt.Fprintln(&want, n)
			}
			if got := out.text.String(); got != want.String() {
				t.Errorf("%d lines were heard, and not in order: …%.60q", out.lines, got[max(0, len(got)-60):])
			}
		case "replay":
			out, wait := begins(), a.within(25*time.Millisecond)
			go func() {
				<-out.alarm
				<-a.kill(worker)
				next := a.target(worker)
				time.Sleep(wait)
				<-a.kill(next)
				close(done)
			}()
			failed(ran("fmt.Println(\"begun\")\ncount += 1000\nfor {}", out))
		case "start":
			wait := a.within(6 * time.Millisecond)
			go func() {
				next := a.target(worker)
				time.Sleep(wait)
				<-a.kill(next)
				close(done)
			}()
			if err := e.Restore(context.Background()); err != nil {
				t.Errorf("start: %v", err)
			}
			told = true
		case "question":
			out := &listener{asked: make(chan bool), reply: make(chan string, 1)}
			wait := a.within(5 * time.Millisecond)
			go func() {
				<-out.asked
				time.Sleep(wait)
				<-a.kill(worker)
				close(done)
			}()
			failed(ran("count += 1000\nAsk(\"?\")", out))
			told = true
			out.reply <- "too late"
		}
		if situation != "idle" {
			<-done
		}
		if said := check(); said != "" && told && situation != "start" {
			t.Errorf("%s: said again: %q", situation, said)
		}
	}
	startKilled(t, a)
	if err := e.Close(); err != nil {
		t.Error(err)
	}
	for until := time.Now().Add(5 * time.Second); time.Now().Before(until) && (runtime.NumGoroutine() > goroutines || len(children(t)) > len(a.others)); {
		time.Sleep(5 * time.Millisecond)
	}
	if n := runtime.NumGoroutine(); n > goroutines {
		buf := make([]byte, 1<<16)
		t.Errorf("%d goroutines before, %d after:\n%s", goroutines, n, buf[:runtime.Stack(buf, true)])
	}
	if left := children(t); len(left) > len(a.others) {
		t.Errorf("processes are left: %v; at first there were %v", left, a.others)
	}
}

// startKilled starts an engine whose first workers are killed at once.
func startKilled(t *testing.T, a *assassin) {
	old := a.target(0)
	done := make(chan bool)
	go func() {
		first := a.target(old)
		<-a.kill(first)
		close(done)
	}()
	e, err := engine.Start(engine.Options{})
	<-done
	if err != nil {
		t.Fatalf("start: %v", err)
	}
	defer e.Close()
	out := &listener{}
	if err := e.Run(context.Background(), "cell", "fmt.Print(6 * 7)", out); err != nil || out.text.String() != "42" {
		t.Errorf("after a kill at the start: %q, %v", out.text.String(), err)
	}
}
