package sweep

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Every scenario belongs to one part, and the parts differ by one at most.
func TestParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 500).Draw(t, "scenarios")
		of := rapid.IntRange(1, 60).Draw(t, "parts")
		all := 0
		for i := 1; i <= of; i++ {
			p := Part{i, of}
			has := 0
			for k := 1; k <= n; k++ {
				if p.has(k) {
					has++
				}
			}
			if has != p.size(n) || has < n/of || has > n/of+1 {
				t.Fatalf("%v of %d scenarios has %d; size says %d", p, n, has, p.size(n))
			}
			all += has
		}
		if all != n {
			t.Fatalf("%d parts of %d scenarios have %d together", of, n, all)
		}
	})
	for _, text := range []string{"", "1", "0/4", "5/4", "a/4", "1/0", "-1/4", "1/4/2"} {
		if p, err := ParsePart(text); err == nil {
			t.Errorf("ParsePart(%q) = %v", text, p)
		}
	}
	if p, err := ParsePart(" 2 / 4"); err != nil || p != (Part{2, 4}) {
		t.Errorf("%v, %v", p, err)
	}
}

func TestGather(t *testing.T) {
	whole, err := job(t, plan(t)).Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	want := tables(t, whole.Files)
	const n = 5
	dir := t.TempDir()
	part := func(i int) *Job {
		j := job(t, plan(t))
		j.Part, j.Folder = Part{i, n}, dir
		return j
	}
	var files []string
	for i := 1; i <= n; i++ {
		out, err := part(i).Run(t.Context())
		if err != nil || out.Chart != "" || out.Parquet != "" {
			t.Fatalf("%+v, %v", out, err)
		}
		if i == 2 && !strings.Contains(mustRead(t, out.CSV), "\r\n2,30,") {
			t.Errorf("%q", mustRead(t, out.CSV))
		}
		files = append(files, out.Journal)
	}
	same := func(paths ...string) {
		t.Helper()
		table, err := Gather(paths)
		if err != nil {
			t.Error(err)
			return
		}
		w, err := table.Write(t.TempDir(), ChartChoice{})
		if err != nil || tables(t, w.Files) != want {
			t.Errorf("%q: %v; want the files of the whole sweep", paths, err)
		}
	}
	same(dir)
	same(files[3], files[0], files[4], files[2], files[1])
	same(dir, files[2])       // named twice is there once
	same(whole.Files.Journal) // a sweep in one piece

	refused := func(says string, paths ...string) {
		t.Helper()
		_, err := Gather(paths)
		if !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), says) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%q: %v; want %q", paths, err, says)
		}
	}
	refused("of the 5 parts of pot, these are missing: 1, 4", files[1], files[2], files[4])
	refused("cannot be read: no such file", filepath.Join(dir, "none"))
	refused("no part of a sweep has left a journal here", t.TempDir())
	refused("is no journal", whole.CSV)
	other := t.TempDir()
	again := filepath.Join(other, "copy.journal")
	if err := os.WriteFile(again, []byte(mustRead(t, files[1])), 0o600); err != nil {
		t.Fatal(err)
	}
	refused("part 2 of 5 is there twice: ", dir, again)

	// A part that did not come to its end.
	ctx, cancel := context.WithCancel(t.Context())
	j := part(3)
	j.Folder, j.Workers = other, 1
	j.Progress = func(done, _, _ int) {
		if done == 1 {
			cancel()
		}
	}
	out, err := j.Run(ctx)
	if err != nil || out.Table != nil || out.Total != 2 {
		t.Fatalf("%+v, %v", out, err)
	}
	refused(fmt.Sprintf("part 3 of 5 has %d of its 2 rows", out.Done), files[0], files[1], out.Journal, files[3], files[4])

	// Another division, and another sweep.
	j = part(1)
	j.Part, j.Folder = Part{1, 4}, t.TempDir()
	if out, err = j.Run(t.Context()); err != nil {
		t.Fatal(err)
	}
	refused("they overlap", files[1], out.Journal)
	j = part(1)
	j.Engine.Seed, j.Folder = 3, t.TempDir()
	if out, err = j.Run(t.Context()); err != nil {
		t.Fatal(err)
	}
	refused("are of two sweeps (other: date, seed or limits of a cell)", files[1], out.Journal)
}

// More parts than scenarios: some have nothing to do, and say so by an empty table.
func TestEmptyParts(t *testing.T) {
	p, err := NewGrid(set(t), []string{"still=pot;column"}, ".", 10)
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	for i := 1; i <= 4; i++ {
		j := job(t, p)
		j.Part, j.Folder = Part{i, 4}, dir
		out, err := j.Run(t.Context())
		if err != nil {
			t.Fatal(err)
		}
		if i > 2 && mustRead(t, out.CSV) != "scenario,still,status\r\n" {
			t.Errorf("%q", mustRead(t, out.CSV))
		}
	}
	if table, err := Gather([]string{dir}); err != nil || len(table.Rows) != 2 {
		t.Errorf("%+v, %v", table, err)
	}
}
