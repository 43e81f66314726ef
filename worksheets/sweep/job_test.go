package sweep

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"swanneck/kernel/engine"
)

// plan has 12 scenarios, of which those of 30 %vol fail.
func plan(t testing.TB) *Plan {
	t.Helper()
	p, err := NewGrid(set(t, "share (by volume)=0.25"), []string{"pot strength=30;45;60 %vol", "pot volume=100..200/100 L", "still=pot;column"}, ".", 100)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestJob(t *testing.T) {
	j := job(t, plan(t))
	out, err := j.Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(mustRead(t, out.CSV), "\r\n")
	want := map[int]string{
		0: "scenario,pot strength (%vol),pot volume (L),still,share (by volume),water (kg),day,runs,status",
		1: `1,30,100,pot,0.25,,,,"cell 3, line 2:10: Reduce: cannot raise 30.00 % vol to 40.00 % vol by adding water"`,
	}
	for i, w := range want {
		if lines[i] != w {
			t.Errorf("line %d: %q; want %q", i+1, lines[i], w)
		}
	}
	if len(lines) != 14 || len(out.Table.Failed()) != 4 || len(out.Table.Rows) != 12 {
		t.Fatalf("%q: want 12 rows, 4 of them failed", lines)
	}
	for i, r := range out.Table.Rows[4:] {
		water, ok := r.result(ResultColumn{"water", "kg"})
		// 45 %vol to 40 %vol: 100 L become 112.5 L by pure alcohol, and mixing takes next to nothing off; a quarter is asked for.
		if r.Inputs[0].Figure == 45 && r.Inputs[1].Figure == 100 && !(ok && water > 0.25*12.4 && water < 0.25*12.8) {
			t.Errorf("row %d: water is %v kg", i+5, water)
		}
		if runs, _ := r.result(ResultColumn{"runs", "1"}); runs != 1 {
			t.Errorf("row %d: the counter stands at %v: it saw another scenario", i+5, runs)
		}
		if day, has := r.result(ResultColumn{"day", "1"}); has != (r.Inputs[2].Word == "column") || has && day != 14 {
			t.Errorf("row %d: %v %v", i+5, day, has)
		}
	}
	if out.Chart == "" || !strings.Contains(mustRead(t, out.Chart), "</svg>") || out.Shows != "water against pot strength" {
		t.Errorf("%+v", out.Written)
	}
	if left, err := filepath.Glob(filepath.Join(j.Folder, "*")); err != nil || len(left) != 4 {
		t.Errorf("%q, %v; want journal, CSV, Parquet, chart", left, err)
	}
}

// However many workers and however often it is interrupted, the files are the same, and no finished row is run again.
func TestJobGoesOn(t *testing.T) {
	whole := job(t, plan(t))
	whole.Workers = 1
	out, err := whole.Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	want := tables(t, out.Files)
	for stop := 1; stop < 12; stop += 3 {
		j := job(t, plan(t))
		j.Workers = 3
		rows := 0
		for tries := 0; ; tries++ {
			if tries > 20 {
				t.Fatal("it does not come to an end")
			}
			ctx, cancel := context.WithCancel(t.Context())
			before := -1
			j.Progress = func(done, total, taken int) {
				if before < 0 && done != rows || taken != rows && before < 0 || total != 12 {
					t.Errorf("it begins with %d rows of %d, %d taken; there were %d", done, total, taken, rows)
				}
				if before >= 0 && done != before+1 {
					t.Errorf("from %d rows to %d", before, done)
				}
				if before = done; done-taken == stop {
					cancel()
				}
			}
			out, err := j.Run(ctx)
			cancel()
			if err != nil {
				t.Fatal(err)
			}
			rows = out.Done
			if out.Table != nil {
				if got := tables(t, out.Files); got != want {
					t.Errorf("interrupted every %d rows, the files are others", stop)
				}
				break
			}
		}
	}
}

// A worker that is killed from outside costs nothing but time.
func TestJobWhoseWorkersDie(t *testing.T) {
	out, err := job(t, plan(t)).Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	want := tables(t, out.Files)
	j := job(t, plan(t))
	killed := 0
	j.Progress = func(done, _, _ int) {
		if done == 3 || done == 8 {
			killed += killWorkers(t)
		}
	}
	if out, err = j.Run(t.Context()); err != nil {
		t.Fatal(err)
	}
	if got := tables(t, out.Files); got != want {
		t.Errorf("the files are others:\n%s", mustRead(t, out.CSV))
	}
	// Whoever ends the sweep may end the workers too, and a moment sooner.
	j = job(t, plan(t))
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	j.Progress = func(done, _, _ int) {
		if done == 3 {
			killed += killWorkers(t)
			cancel()
		}
	}
	if out, err = j.Run(ctx); err != nil || out.Table != nil {
		t.Fatalf("%+v, %v; want an interrupted sweep", out, err)
	}
	j.Progress = nil
	if out, err = j.Run(t.Context()); err != nil {
		t.Fatal(err)
	}
	if got := tables(t, out.Files); got != want {
		t.Errorf("ended with its workers, the files are others:\n%s", mustRead(t, out.CSV))
	}
	if killed == 0 {
		t.Skip("no worker was seen")
	}
}

// What a cell does badly is a row, and the same row each time.
func TestRowsThatFail(t *testing.T) {
	source := `n := InputChoice("what", "well", []string{"well", "panic", "sleep", "spin", "crash", "memory", "twice", "infinite"})
switch n {
case "panic":
	var s []int
	fmt.Println(s[3])
case "sleep":
	time.Sleep(time.Hour)
case "spin":
	for { }
case "crash":
	go func() { panic("lost") }()
	time.Sleep(time.Minute)
case "memory":
	var s [][]byte
	for { s = append(s, make([]byte, 1<<20)) }
case "twice":
	Result("a", 1, "1")
case "infinite":
	Result("b", math.Inf(1), "1")
}
Result("a", 1, "1")`
	p, err := NewGrid(setOf(t, source), []string{"what=well; panic; sleep; spin; crash; memory; twice; infinite"}, ".", 10)
	if err != nil {
		t.Fatal(err)
	}
	j := &Job{Worksheet: "bad", Sources: []string{source}, Plan: p, Workers: 2, Folder: t.TempDir(),
		Engine: engine.Options{CellTime: 2 * time.Second, Grace: 200 * time.Millisecond, MemoryMiB: 256}}
	out, err := j.Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	for i, says := range []string{OK, "index out of range", "cell 1: the cell ran longer than 2s", "cell 1: the cell ran longer than 2s", "lost", "memory", `result "a" was declared in cell 1 already`, "must be a finite number"} {
		r := out.Table.Rows[i]
		if !strings.Contains(r.Status, says) || strings.Contains(r.Status, "\n") || (len(r.Results) == 0) != (i > 0) {
			t.Errorf("%s: %+v; want %q", r.Inputs[0].Word, r, says)
		}
	}
}

// A file that cells read must not change under a sweep.
func TestFilesThatChange(t *testing.T) {
	source := `n := InputNumber("n", 1, "1"); Result("a", Table("t.csv").Numbers("a", "1")[0]*n, "1")`
	p, err := NewGrid(setOf(t, source), []string{"n=1..6/1"}, ".", 10)
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	write := func(text string) {
		if err := os.WriteFile(filepath.Join(dir, "t.csv"), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	write("a\n1\n")
	j := &Job{Worksheet: "x", Sources: []string{source}, Plan: p, Workers: 1, Folder: t.TempDir(), Engine: engine.Options{Folder: dir}}
	var once atomic.Bool
	j.Progress = func(done, _, _ int) {
		if done == 2 && once.CompareAndSwap(false, true) {
			write("a\n2\n")
		}
	}
	_, err = j.Run(t.Context())
	if !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), "t.csv was changed since the sweep began; --again starts anew") {
		t.Errorf("%v; want a refusal", err)
	}
	if _, err = j.Run(t.Context()); !errors.Is(err, ErrInput) {
		t.Errorf("%v; want a refusal again", err)
	}
	write("a\n1\n")
	out, err := j.Run(t.Context())
	if err != nil || out.Taken != 2 {
		t.Errorf("with the file as it was: %+v, %v; want two rows taken", out, err)
	}
	if x, _ := out.Table.Rows[5].result(ResultColumn{"a", "1"}); x != 6 {
		t.Errorf("the last row is %v; want 6", x)
	}
}
