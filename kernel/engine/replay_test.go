package engine_test

import (
	"context"
	"errors"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// An expression is evaluated with what the cells have made, declares nothing, and no replay runs it again.
func TestEvaluate(t *testing.T) {
	e := start(t, engine.Options{})
	ctx := context.Background()
	ok(t, e, "calls := 0\nfunc called() int { calls++; return calls }\nx := 20", "")
	for expression, want := range map[string]string{"x * 2 + 2": "42", "func() int { y := x; return y }()": "20", "ABV(40)": "40.00 % vol"} {
		if b, err := e.Evaluate(ctx, "expression", expression); err != nil || b[display.Plain] != want {
			t.Errorf("%s: %v, %v; want %s", expression, b, err, want)
		}
	}
	for _, bad := range []string{"z := 3", "z", "import \"strings\"", "x; x", "type T int", "strconv.Atoi(\"x\")", "1 / (x - 20)", ""} {
		var f *engine.Failure
		if b, err := e.Evaluate(ctx, "expression", bad); !errors.As(err, &f) {
			t.Errorf("%s: %v, %v; want a failure", bad, b, err)
		}
	}
	for _, name := range []string{"y", "z", "T"} {
		if _, f := run(t, e, name); f == nil || f.Kind != engine.Refused {
			t.Errorf("%s, which only an expression knew, is known: %v", name, f)
		}
	}
	for range 3 {
		if _, err := e.Evaluate(ctx, "expression", "called()"); err != nil {
			t.Fatal(err)
		}
	}
	ok(t, e, "calls", "value:3")
	if err := e.Restore(ctx); err != nil {
		t.Fatal(err)
	}
	ok(t, e, "calls", "value:0") // the expressions were not run again
	ok(t, e, "called()", "value:1")
	var f *engine.Failure
	if _, err := e.Evaluate(ctx, "expression", "func() int { go func() { panic(\"out\") }(); select {} }()"); !errors.As(err, &f) || f.Kind != engine.Crashed {
		t.Errorf("an expression that ends the worker: %v", err)
	}
	ok(t, e, "calls", "value:1")
}

// An expression that is interrupted leaves nothing to be said about.
func TestEvaluateInterrupted(t *testing.T) {
	e := start(t, engine.Options{})
	ctx, cancel := context.WithTimeout(context.Background(), 100*time.Millisecond)
	defer cancel()
	var f *engine.Failure
	if _, err := e.Evaluate(ctx, "expression", "func() int { for {} }()"); !errors.As(err, &f) || f.Kind != engine.Halted {
		t.Fatalf("%v", err)
	}
	if _, f := run(t, e, "go func() { panic(\"out\") }()\nselect {}"); f == nil || strings.Contains(f.Note, "stopped") {
		t.Errorf("%v; want no word of what was stopped", f)
	}
}

// A goroutine that ends the worker while no cell runs is told to the next cell, with its cell, which is not run again:
// also if the checker was asked in between.
func TestPanicBetweenCells(t *testing.T) {
	for name, between := range map[string]func(*engine.Engine) error{
		"nothing": func(*engine.Engine) error { return nil },
		"completion": func(e *engine.Engine) error {
			_, _, _, err := e.Complete(context.Background(), "x", 1)
			return err
		},
		"expression": func(e *engine.Engine) error {
			_, err := e.Evaluate(context.Background(), "expression", "x")
			return err
		},
	} {
		t.Run(name, func(t *testing.T) {
			e := start(t, engine.Options{})
			ok(t, e, "x := 1", "")
			var h heard
			if err := e.Run(context.Background(), "cell 2", "go func() { time.Sleep(20*time.Millisecond); panic(\"late\") }()", &h); err != nil {
				t.Fatal(err)
			}
			time.Sleep(200 * time.Millisecond)
			if err := between(e); err != nil {
				t.Errorf("without the worker: %v", err)
			}
			_, f := run(t, e, "x = 2")
			if f == nil || f.Kind != engine.Crashed || f.Cell != "cell 2" || !strings.Contains(f.Error(), "late") || !strings.Contains(f.Note, "the earlier cell run again") {
				t.Fatalf("%+v; want what cell 2 did", f)
			}
			ok(t, e, "time.Sleep(100*time.Millisecond)\nx", "value:1")
		})
	}
}

// An answer to a question that was given up is not taken for that to another.
func TestQuestions(t *testing.T) {
	e := start(t, engine.Options{})
	ok(t, e, "litres := 3.5\nkilos := 2.0", "")
	given, cancel := context.WithCancel(context.Background())
	cancel()
	for i := range 50 {
		if _, _, _, err := e.Complete(given, "kilo", 4); err == nil {
			continue // the answer was quicker
		}
		list, _, _, err := e.Complete(context.Background(), "litr", 4)
		if err != nil || len(list) == 0 || list[0].Text != "litres" {
			t.Fatalf("round %d: %v, %v; want litres", i, list, err)
		}
	}
}
