package sweep

import (
	"errors"
	"os"
	"strings"
	"testing"
)

// A journal cut off at any byte is gone on with, and the files are the same: whatever moment a kill comes at.
func TestJournalCutAnywhere(t *testing.T) {
	p, err := NewGrid(set(t), []string{"pot strength=30;45 %vol", "still=pot;column"}, ".", 10)
	if err != nil {
		t.Fatal(err)
	}
	j := job(t, p)
	out, err := j.Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	want, book := tables(t, out.Files), mustRead(t, out.Journal)
	step := len(book) / 23
	for at := 0; at <= len(book); at += step {
		if err := os.WriteFile(out.Journal, []byte(book[:at]), 0o600); err != nil {
			t.Fatal(err)
		}
		again, err := j.Run(t.Context())
		if err != nil {
			t.Fatalf("cut at byte %d: %v", at, err)
		}
		if taken := max(0, strings.Count(book[:at], "\n")-1); again.Taken != taken {
			t.Errorf("cut at byte %d: %d rows were taken; %d were whole", at, again.Taken, taken)
		}
		if got := tables(t, again.Files); got != want {
			t.Errorf("cut at byte %d: the files are others", at)
		}
	}
	// A machine that goes down may leave rubbish at the end.
	if err := os.WriteFile(out.Journal, []byte(book[:len(book)-20]+"\x00\x00\x00\x00\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if again, err := j.Run(t.Context()); err != nil || tables(t, again.Files) != want {
		t.Errorf("rubbish at the end: %v", err)
	}
}

func TestJournalOfAnother(t *testing.T) {
	p := plan(t)
	j := job(t, p)
	out, err := j.Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	book := mustRead(t, out.Journal)
	lines := strings.SplitAfter(book, "\n")
	unfinished := strings.Join(lines[:5], "")
	for name, c := range map[string]struct {
		change func(*Job)
		says   string
	}{
		"code":     {func(j *Job) { j.Sources = append([]string{"// changed"}, sheet...) }, "other: its code)"},
		"inputs":   {func(j *Job) { j.Plan = otherPlan(t) }, "other: the inputs)"},
		"settings": {func(j *Job) { j.Engine.Seed = 1 }, "other: date, seed or limits of a cell)"},
		"versions": {func(j *Job) { j.Versions = append(j.Versions, struct{ What, Version string }{"mathlib", "2"}) }, "other: the version of the program)"},
		"program":  {func(j *Job) { j.Program = "another" }, "other: the program, though of the same version)"},
	} {
		other := *j
		c.change(&other)
		if err := os.WriteFile(out.Journal, []byte(unfinished), 0o600); err != nil {
			t.Fatal(err)
		}
		_, err := other.Run(t.Context())
		if !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), c.says) || !strings.Contains(err.Error(), "with 4 of 12 rows done") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want %q", name, err, c.says)
		}
		if got := mustRead(t, out.Journal); got != unfinished {
			t.Errorf("%s: a refused journal was written to", name)
		}
		other.Again = true
		if o, err := other.Run(t.Context()); err != nil || o.Taken != 0 {
			t.Errorf("%s, again: %+v, %v", name, o, err)
		}
		// One that is finished has its tables, and makes room.
		if o, err := j.Run(t.Context()); err != nil || o.Taken != 0 {
			t.Errorf("%s, after a finished one: %+v, %v", name, o, err)
		}
	}
	for text, says := range map[string]string{
		"name,value\n1,2\n": "it is no journal of a sweep",
		strings.Replace(book, `"version":1`, `"version":2`, 1):          "a journal of version 2",
		lines[0] + lines[1] + "{\"scen\n" + lines[2]:                    "line 3 is damaged",
		lines[0] + `{"scenario":13,"status":"ok"}` + "\n" + lines[1]:    "no scenario of the journal has the number 13",
		lines[0] + strings.Replace(lines[1], "30", `"x"`, 1) + lines[2]: "line 2 is damaged",
	} {
		if err := os.WriteFile(out.Journal, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := j.Run(t.Context()); !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), says) || !strings.HasSuffix(err.Error(), "--again starts anew") {
			t.Errorf("%.60q: %v; want %q", text, err, says)
		}
	}
	// The folder under that name.
	if err := errors.Join(os.Remove(out.Journal), os.Mkdir(out.Journal, 0o700)); err != nil {
		t.Fatal(err)
	}
	if _, err := j.Run(t.Context()); err == nil || !strings.Contains(err.Error(), "not a plain file") {
		t.Errorf("a folder: %v", err)
	}
}

func otherPlan(t *testing.T) *Plan {
	p := plan(t)
	p.Scenarios[7] = p.Scenarios[6]
	return p
}

// Two sweeps do not write one journal.
func TestJournalIsLocked(t *testing.T) {
	j := job(t, plan(t))
	var second error
	j.Progress = func(done, _, _ int) {
		if done == 2 {
			other := *j
			other.Progress = nil
			_, second = other.Run(t.Context())
		}
	}
	if _, err := j.Run(t.Context()); err != nil {
		t.Fatal(err)
	}
	if second == nil && !locks {
		t.Skip("this system has no locks that we know")
	}
	if !errors.Is(second, ErrInput) || !strings.Contains(second.Error(), "another sweep is writing it now") {
		t.Errorf("%v; want a refusal", second)
	}
}
