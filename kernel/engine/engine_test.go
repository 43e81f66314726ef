package engine_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/display"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
	"swanneck/kernel/symbols/whitelist"
)

var content = engine.Content{
	Library:  func() cell.Library { return symbols.NewLibrary() },
	Packages: whitelist.Packages,
	Values:   symbols.Values,
}

func TestMain(m *testing.M) {
	engine.WorkerIfAsked(content)
	os.Exit(m.Run())
}

// heard writes down what a cell says.
type heard struct{ strings.Builder }

func (h *heard) Stream(name, text string) { fmt.Fprintf(h, "%s:%q ", name, text) }
func (h *heard) Display(b display.Bundle) { fmt.Fprintf(h, "display:%v ", b[display.Plain]) }
func (h *heard) Value(b display.Bundle)   { fmt.Fprintf(h, "value:%v ", b[display.Plain]) }

func start(t testing.TB, o engine.Options) *engine.Engine {
	t.Helper()
	e, err := engine.Start(o)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := e.Close(); err != nil {
			t.Error(err)
		}
	})
	return e
}

// run runs a cell and returns what it said and how it failed.
func run(t testing.TB, e *engine.Engine, src string) (string, *engine.Failure) {
	t.Helper()
	var h heard
	err := e.Run(context.Background(), "cell", src, &h)
	var f *engine.Failure
	if err != nil && !errors.As(err, &f) {
		t.Fatalf("%q: %v", src, err)
	}
	return strings.TrimSpace(h.String()), f
}

func ok(t testing.TB, e *engine.Engine, src, want string) {
	t.Helper()
	got, f := run(t, e, src)
	if f != nil {
		t.Errorf("%q failed: %v\n%s", src, f, f.Trace)
	} else if got != want {
		t.Errorf("%q said %s; want %s", src, got, want)
	}
}

func TestCells(t *testing.T) {
	e := start(t, engine.Options{})
	ok(t, e, "x := 2", "")
	ok(t, e, "x * 21", "value:42")
	ok(t, e, "fmt.Print(\"a\"); println(\"b\"); fmt.Println(\"c\"); \"d\"", `stdout:"a" stderr:"b\n" stdout:"c\n" value:d`)
	ok(t, e, "fmt.Print(1); Show(2); fmt.Print(3)", `stdout:"1" display:2 stdout:"3"`)
	ok(t, e, "ABV(40)", "value:40.00 % vol")
	ok(t, e, "x := \"now a string\"\nx", "value:now a string")
}

// A refused cell changes nothing; one that stops half-way says where and keeps what ran.
func TestFailures(t *testing.T) {
	e := start(t, engine.Options{})
	for _, c := range []struct {
		src  string
		kind engine.Kind
		line int
		col  int
		msg  string
	}{
		{"a := 1\nb := c", engine.Refused, 2, 6, "undefined: c"},
		{"import \"os\"", engine.Refused, 1, 8, "not supported in cells"},
		{"k := 1\nxs := []int{1}\nxs[k+4]", engine.Stopped, 3, 1, "index out of range [5] with length 1"},
		{"var m map[string]int\nm[\"a\"] = 1", engine.Stopped, 2, 1, "assignment to entry in nil map"},
		{"func d(a, b int) int {\n\treturn a / b\n}\nd(1, 0)", engine.Stopped, 2, 11, "integer divide by zero"},
		{"Reduce(Spirit{VolumeL: 1, Strength: ABV(40)}, ABV(50))", engine.Stopped, 1, 1, "Reduce: cannot raise"},
		{"panic(\"enough\")", engine.Stopped, 1, 1, "enough"},
		{"strconv.Atoi(\"x\")", engine.Stopped, 1, 1, "parsing \"x\": invalid syntax"},
	} {
		_, f := run(t, e, c.src)
		if f == nil {
			t.Errorf("%q succeeded", c.src)
			continue
		}
		p := f.Items[0]
		if f.Kind != c.kind || p.Line != c.line || p.Col != c.col || !strings.Contains(p.Msg, c.msg) {
			t.Errorf("%q: %s at %d:%d: %s; want %s at %d:%d: … %s", c.src, f.Kind, p.Line, p.Col, p.Msg, c.kind, c.line, c.col, c.msg)
		}
	}
	if _, f := run(t, e, "a"); f == nil || f.Kind != engine.Refused {
		t.Errorf("a, declared by a refused cell, is there: %v", f)
	}
	ok(t, e, "k", "value:1") // declared before the line that failed
}

// Whatever a cell does to its process, the parent lives, says so, and brings back what earlier cells had made.
func TestCellsThatTakeTheWorkerWithThem(t *testing.T) {
	for _, c := range []struct {
		name, src string
		kind      engine.Kind
		msg       string
		opts      engine.Options
	}{
		{"endless loop", "for {\n}", engine.Time, "longer than 300ms", engine.Options{CellTime: 300 * time.Millisecond}},
		{"blocked for ever", "select {}", engine.Time, "longer than", engine.Options{CellTime: 300 * time.Millisecond}},
		{"sleep", "time.Sleep(time.Hour)", engine.Time, "longer than", engine.Options{CellTime: 300 * time.Millisecond, Grace: 100 * time.Millisecond}},
		{"mutex", "var mu sync.Mutex\nmu.Lock()\nmu.Lock()", engine.Time, "longer than", engine.Options{CellTime: 300 * time.Millisecond, Grace: 100 * time.Millisecond}},
		{"panic in a goroutine", "go func() { panic(\"away\") }()\ntime.Sleep(time.Minute)", engine.Crashed, "away", engine.Options{}},
		{"memory at once", "b := make([]byte, 40<<30)\nfor i := 0; i < len(b); i += 4096 {\n\tb[i] = 1\n}", engine.Memory, "memory", engine.Options{MemoryMiB: 256}},
		{"memory bit by bit", "var all [][]byte\nfor {\n\tb := make([]byte, 1<<20)\n\tfor i := 0; i < len(b); i += 1024 {\n\t\tb[i] = 1\n\t}\n\tall = append(all, b)\n}", engine.Memory, "memory", engine.Options{MemoryMiB: 256}},
	} {
		t.Run(c.name, func(t *testing.T) {
			e := start(t, c.opts)
			ok(t, e, "import (\"sync\"; \"math/rand\")\nx := rand.Int()\ny := time.Now().Unix()\nvar _ sync.Mutex", "")
			before, _ := run(t, e, "fmt.Print(x, y)")
			_, f := run(t, e, c.src)
			if f == nil || f.Kind != c.kind || !strings.Contains(f.Items[0].Msg, c.msg) {
				t.Fatalf("failure %+v; want %s … %s", f, c.kind, c.msg)
			}
			after, f := run(t, e, "fmt.Print(x, y)")
			if f != nil || after != before {
				t.Errorf("afterwards the earlier variables are %s, %v; before they were %s", after, f, before)
			}
		})
	}
}

// A recursion without end is a mistake of the cell, with a line, whoever notices it.
func TestStackOverflow(t *testing.T) {
	e := start(t, engine.Options{})
	ok(t, e, "x := 1", "")
	_, f := run(t, e, "func f(n int) int { return f(n+1) + 1 }\nf(0)")
	if f == nil || !strings.Contains(f.Error(), "stack") {
		t.Errorf("%v; want a word of the stack", f)
	}
	ok(t, e, "x", "value:1")
}

func TestInterrupt(t *testing.T) {
	e := start(t, engine.Options{})
	ctx, cancel := context.WithTimeout(context.Background(), 200*time.Millisecond)
	defer cancel()
	var h heard
	err := e.Run(ctx, "cell", "for i := 0; ; i++ {\n}", &h)
	var f *engine.Failure
	if !errors.As(err, &f) || f.Kind != engine.Halted {
		t.Errorf("%v; want a halted cell", err)
	}
	ok(t, e, "1", "value:1")
}

func TestClockAndSeed(t *testing.T) {
	src := "import \"math/rand\"\nfmt.Print(time.Now().Format(time.RFC3339), rand.Int63())"
	first, _ := run(t, start(t, engine.Options{Seed: 7}), src)
	again, _ := run(t, start(t, engine.Options{Seed: 7}), src)
	other, _ := run(t, start(t, engine.Options{Seed: 8}), src)
	if first != again || first == other || !strings.Contains(first, "2026-01-01T12:00:00Z") {
		t.Errorf("seed 7: %s and %s; seed 8: %s", first, again, other)
	}
}

func TestRestore(t *testing.T) {
	e := start(t, engine.Options{})
	ok(t, e, "n := 0", "")
	ok(t, e, "n++; fmt.Print(n)", `stdout:"1"`)
	if err := e.Restore(context.Background()); err != nil {
		t.Fatal(err)
	}
	ok(t, e, "n", "value:1")
	if err := e.Forget(); err != nil {
		t.Fatal(err)
	}
	if _, f := run(t, e, "n"); f == nil {
		t.Error("n is known after Forget")
	}
}

func TestLongOutputInOrder(t *testing.T) {
	e := start(t, engine.Options{})
	var b strings.Builder
	out := streamOnly{&b}
	if err := e.Run(context.Background(), "cell", "for i := range 20000 { fmt.Println(i) }", out); err != nil {
		t.Fatal(err)
	}
	for i, line := range strings.Split(strings.TrimSpace(b.String()), "\n") {
		if line != fmt.Sprint(i) {
			t.Fatalf("line %d is %q", i, line)
		}
	}
}

type streamOnly struct{ *strings.Builder }

func (s streamOnly) Stream(_, text string)    { s.WriteString(text) }
func (s streamOnly) Display(_ display.Bundle) {}
func (s streamOnly) Value(_ display.Bundle)   {}

// person answers questions, and keeps what is shown where.
type person struct {
	heard
	answers []string
}

func (p *person) Ask(prompt string, secret bool) (string, error) {
	if len(p.answers) == 0 {
		return "", errors.New("gone")
	}
	a := p.answers[0]
	p.answers = p.answers[1:]
	fmt.Fprintf(p, "ask:%q/%v ", prompt, secret)
	return a, nil
}
func (p *person) Clear(wait bool) { fmt.Fprintf(p, "clear:%v ", wait) }
func (p *person) Update(id string, b display.Bundle) {
	fmt.Fprintf(p, "update %s:%v ", id, b[display.Plain])
}

func TestAskAndLive(t *testing.T) {
	e := start(t, engine.Options{})
	p := &person{answers: []string{"300", "x"}}
	if err := e.Run(context.Background(), "cell", "a := Ask(\"charge in L? \"); s := AskSecret(\"?\")\nl := Live(\"now\", 1)\nl.Set(a + s)\nClearOutput()", p); err != nil {
		t.Fatal(err)
	}
	if got, want := p.String(), `ask:"charge in L? "/false ask:"?"/true display:1 update now:300x clear:false `; got != want {
		t.Errorf("heard %s; want %s", got, want)
	}
	if err := e.Restore(context.Background()); err != nil { // with the answers that were given
		t.Fatal(err)
	}
	ok(t, e, "a + s", "value:300x")
	if _, f := run(t, e, "Ask(\"?\")"); f == nil || !strings.Contains(f.Error(), "nobody is there to answer") {
		t.Errorf("without a person: %v", f)
	}
}

func TestCompleteAndHover(t *testing.T) {
	e := start(t, engine.Options{})
	ok(t, e, "litres := 3.5", "")
	list, from, to, err := e.Complete(context.Background(), "2 * lit", 7)
	if err != nil || len(list) == 0 || list[0].Text != "litres" || list[0].Type != "float64" || from != 4 || to != 7 {
		t.Errorf("%v %d %d %v", list, from, to, err)
	}
	h, found, err := e.Hover(context.Background(), "Reduce", 2)
	if err != nil || !found || !strings.Contains(h.Decl, "Reduce(") || !strings.Contains(h.Doc, "water") {
		t.Errorf("%+v %v %v", h, found, err)
	}
}

func BenchmarkWorkerReady(b *testing.B) {
	for b.Loop() {
		e, err := engine.Start(engine.Options{})
		if err != nil {
			b.Fatal(err)
		}
		b.StopTimer()
		e.Close()
		b.StartTimer()
	}
}

func BenchmarkRoundTrip(b *testing.B) {
	e := start(b, engine.Options{})
	for b.Loop() {
		if err := e.Run(context.Background(), "cell", "1 + 1", streamOnly{&strings.Builder{}}); err != nil {
			b.Fatal(err)
		}
	}
}

// What a stopped cell did before it stopped is there after a replay too.
func TestReplayOfStoppedCells(t *testing.T) {
	e := start(t, engine.Options{MemoryMiB: 256})
	ok(t, e, "x := 1", "")
	if _, f := run(t, e, "x = 5\npanic(\"no\")"); f == nil || f.Items[0].Msg != "panic: no" {
		t.Fatalf("%v", f)
	}
	if _, f := run(t, e, "var all [][]byte\nfor {\n\tall = append(all, make([]byte, 1<<26))\n\tfor i := range all[len(all)-1] {\n\t\tall[len(all)-1][i] = 1\n\t\ti += 4096\n\t}\n}"); f == nil {
		t.Fatal("succeeded")
	}
	ok(t, e, "x", "value:5")
}

// A stop that comes early is not lost, and does not reach the replay.
func TestCancelledBefore(t *testing.T) {
	e := start(t, engine.Options{Grace: 30 * time.Second})
	ok(t, e, "x := 1\nfor i := range 3000000 { x += i % 2 }", "")
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	begin := time.Now()
	err := e.Run(ctx, "cell", "for {\n}", &heard{})
	var f *engine.Failure
	if !errors.As(err, &f) || f.Kind != engine.Halted || time.Since(begin) > 10*time.Second {
		t.Fatalf("%v after %v", err, time.Since(begin))
	}
	ok(t, e, "x", "value:1500001")
}

// A goroutine that brings its worker down later is not started again by the replay.
func TestLatePanic(t *testing.T) {
	e := start(t, engine.Options{})
	ok(t, e, "x := 1", "")
	var h heard
	if err := e.Run(context.Background(), "cell 2", "go func() { time.Sleep(50*time.Millisecond); panic(\"late\") }()", &h); err != nil {
		t.Fatal(err)
	}
	if _, f := run(t, e, "time.Sleep(10*time.Second)"); f == nil || !strings.Contains(f.Error(), "late") {
		t.Fatalf("%v", f)
	}
	ok(t, e, "time.Sleep(200*time.Millisecond)\nx", "value:1")
}

// An error that is set and never looked at does not pass in silence.
func TestUnreadError(t *testing.T) {
	e := start(t, engine.Options{})
	if _, f := run(t, e, "n, err := strconv.Atoi(\"12x\")\nn * 2"); f == nil || !strings.Contains(f.Error(), "nobody looks at err") {
		t.Errorf("%v", f)
	}
	ok(t, e, "m, err := strconv.Atoi(\"12\")\nm * 2", "value:24")
	ok(t, e, "k, err := strconv.Atoi(\"12x\")\nif err != nil {\n\tk = -1\n}\nk", "value:-1")
}
