package protocol

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"
)

// appender makes a process of this test's binary append to a history: its value is the name of the file.
const appender = "SWANNECK_TEST_APPEND"

// often rewrites the file with every cell, and keeps all.
func often(b *historyBounds) {
	b.rewrite, b.keep, b.entries, b.wait = 0, 1<<30, 1<<30, 20*time.Second
}

// TestAppender is no test: it is what another process of those below runs. It says each cell that it has written.
func TestAppender(t *testing.T) {
	name := os.Getenv(appender)
	if name == "" {
		return
	}
	h := openHistory(name, t.Errorf)
	cells, err := strconv.Atoi(os.Getenv(appender + "_CELLS"))
	if err != nil {
		t.Fatal(err)
	}
	if os.Getenv(appender+"_OFTEN") != "" {
		often(&h.bounds)
	} else {
		h.bounds.wait = 20 * time.Second
	}
	for i := range cells {
		h.add(i+1, fmt.Sprintf("cell %d of %d\n%s", i+1, os.Getpid(), strings.Repeat("ä", i%700)), "")
		fmt.Println("written", i+1)
	}
	if err := h.close(); err != nil {
		t.Fatal(err)
	}
}

func startAppender(t *testing.T, name string, cells int, often bool) (*exec.Cmd, *bufio.Scanner) {
	t.Helper()
	cmd := exec.Command(os.Args[0], "-test.run=^TestAppender$")
	cmd.Env = append(os.Environ(), appender+"="+name, appender+"_CELLS="+strconv.Itoa(cells))
	if often {
		cmd.Env = append(cmd.Env, appender+"_OFTEN=1")
	}
	cmd.Stderr = os.Stderr
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	return cmd, bufio.NewScanner(out)
}

// everything reads a history, oldest first.
func everything(t *testing.T, h *history) []entry {
	t.Helper()
	list, err := h.last(nil, func(entry) bool { return true })
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// whole checks that the lines of each session are 1, 2, 3 …, in this order, and returns how many each has.
func whole(t *testing.T, list []entry) map[int]int {
	t.Helper()
	lines := map[int]int{}
	for _, e := range list {
		if lines[e.Session]++; e.Line != lines[e.Session] {
			t.Fatalf("session %d: line %d came as number %d", e.Session, e.Line, lines[e.Session])
		}
	}
	return lines
}

// Processes that append at once lose nothing, also while each rewrites the file again and again.
func TestHistoryOfSeveralProcesses(t *testing.T) {
	for _, rewriting := range []bool{false, true} {
		t.Run(fmt.Sprintf("rewriting %v", rewriting), func(t *testing.T) {
			name := filepath.Join(t.TempDir(), "state", "history.jsonl")
			cells := 1500
			if rewriting {
				cells = 120
			}
			var all []*exec.Cmd
			for range 3 {
				cmd, out := startAppender(t, name, cells, rewriting)
				go func() {
					for out.Scan() {
					}
				}()
				all = append(all, cmd)
			}
			for _, cmd := range all {
				if err := cmd.Wait(); err != nil {
					t.Fatal(err)
				}
			}
			h := openHistory(name, t.Errorf)
			if got, want := whole(t, everything(t, h)), map[int]int{1: cells, 2: cells, 3: cells}; !reflect.DeepEqual(got, want) {
				t.Errorf("lines of sessions: %v; want %v", got, want)
			}
			if n, err := h.current(); n != 4 || err != nil {
				t.Errorf("the next session has the number %d, %v; want 4", n, err)
			}
			for _, f := range []string{name, name + ".lock"} {
				if st, err := os.Stat(f); err != nil || runtime.GOOS != "windows" && st.Mode().Perm() != 0o600 {
					t.Errorf("%s: %v, %v; want mode 0600", f, st.Mode(), err)
				}
			}
		})
	}
}

// A process that is killed while it appends and rewrites loses nothing that it has written, and leaves nothing locked.
// Whoever reads meanwhile, without the lock too, sees all that was written.
func TestHistoryOfTheKilled(t *testing.T) {
	name := filepath.Join(t.TempDir(), "history.jsonl")
	for round := range 6 {
		cmd, out := startAppender(t, name, 1_000_000, true)
		written := 0
		for out.Scan() {
			if n, err := fmt.Sscanf(out.Text(), "written %d", &written); n != 1 || err != nil {
				continue
			}
			if written == 60+7*round {
				time.AfterFunc(time.Duration(round)*300*time.Microsecond, func() { _ = cmd.Process.Kill() })
			}
			seen := map[int]int{}
			for e, err := range (&historyFile{name: name, bounds: &usualBounds}).newest() {
				if err != nil {
					t.Fatal(err)
				}
				seen[e.Session]++
			}
			if got := seen[2*round+1]; got < written {
				t.Fatalf("round %d: %d cells were seen when %d had been written", round, got, written)
			}
		}
		_ = cmd.Wait()
		h := openHistory(name, t.Errorf)
		h.add(1, "after", "")
		lines := whole(t, everything(t, h))
		if n := lines[h.session-1]; written == 0 || n != written && n != written+1 { // the killed one had the number before
			t.Errorf("round %d: %d cells are there; %d were written", round, n, written)
		}
		if lines[h.session] != 1 || len(h.own) > 0 {
			t.Errorf("round %d: a cell could not be written afterwards: %v", round, lines)
		}
	}
}

// Above its size the file is rewritten with the newest cells; numbers of sessions go on.
func TestHistoryIsBounded(t *testing.T) {
	name := filepath.Join(t.TempDir(), "history.jsonl")
	old := openHistory(name, t.Errorf)
	old.bounds.rewrite, old.bounds.keep, old.bounds.entries, old.bounds.entry = 20_000, 10_000, 100, 2000
	for i := range 1000 {
		old.add(i+1, strings.Repeat("x", 100), "")
		if st, err := os.Stat(name); err != nil || st.Size() > 20_000+200 {
			t.Fatalf("after cell %d the file has %d bytes, %v", i+1, st.Size(), err)
		}
	}
	list := everything(t, old)
	for i, e := range list {
		if want := 1000 - len(list) + i + 1; e.Line != want || e.Session != 1 {
			t.Fatalf("cell %d of session %d stands in the place of cell %d", e.Line, e.Session, want)
		}
	}
	if len(list) < 70 || len(list) > 170 {
		t.Errorf("%d cells are kept", len(list))
	}
	old.bounds.entries = 10 // cells are counted, too
	for i := range 200 {
		old.add(1001+i, strings.Repeat("y", 100), "")
	}
	if list = everything(t, old); list[0].Line < 1000 {
		t.Errorf("cell %d is kept; the newest are %d", list[0].Line, list[len(list)-1].Line)
	}
	var said []string
	young := openHistory(name, func(f string, a ...any) { said = append(said, fmt.Sprintf(f, a...)) })
	young.bounds = old.bounds
	young.add(1, "young", strings.Repeat("long output ", 1000)) // the output is left out
	young.add(2, strings.Repeat("z", 5000), "")                 // the cell is left out
	young.add(3, "young", "")
	if got := everything(t, young); len(said) != 1 || !strings.Contains(said[0], "cell 2 is left out: it has 5") {
		t.Errorf("%d cells; said %q", len(got), said)
	} else if got := got[len(got)-2:]; !reflect.DeepEqual(got, []entry{{2, 1, "young", ""}, {2, 3, "young", ""}}) {
		t.Errorf("%v", got)
	}
	for range 300 { // until nothing of the young session is left
		old.add(2000, strings.Repeat("y", 100), "")
	}
	if n, err := openHistory(name, t.Errorf).current(); n != 3 || err != nil {
		t.Errorf("the next session has the number %d, %v; want 3, as 2 was taken", n, err)
	}
	memory := openHistory("", t.Errorf)
	memory.bounds.entries = 10
	for i := range 100 {
		memory.add(i+1, "x", "")
	}
	if list := everything(t, memory); len(list) != 10 || list[0] != (entry{1, 91, "x", ""}) {
		t.Errorf("in memory: %v", list)
	}
}

// Lines that are no entries are skipped, and spoil no other.
func TestHistoryDamaged(t *testing.T) {
	name := filepath.Join(t.TempDir(), "history.jsonl")
	h := openHistory(name, t.Errorf)
	h.add(1, "one", "")
	for i, damage := range []string{"{\"session\":1,\"li", "nonsense\n", "\n\n", strings.Repeat("\x00", 3<<20), "{}\n", "{\"session\":-4,\"line\":1}\n", "[1]"} {
		f, err := os.OpenFile(name, os.O_APPEND|os.O_WRONLY, 0)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := f.WriteString(damage); err != nil {
			t.Fatal(err)
		}
		if err := f.Close(); err != nil {
			t.Fatal(err)
		}
		h.add(i+2, "after the damage", "")
		if list := everything(t, h); len(list) != i+2 || len(whole(t, list)) != 1 {
			t.Fatalf("after %.20q: %v", damage, list)
		}
	}
	if err := os.WriteFile(name+".lock", []byte("damaged"), 0o600); err != nil {
		t.Fatal(err)
	}
	if n, err := openHistory(name, t.Errorf).current(); n != 2 || err != nil {
		t.Errorf("the next session has the number %d, %v; want 2", n, err)
	}
	if err := os.RemoveAll(name); err != nil { // somebody clears it
		t.Fatal(err)
	}
	h.add(9, "anew", "")
	if list := everything(t, h); len(list) != 1 || list[0] != (entry{1, 9, "anew", ""}) {
		t.Errorf("after it was cleared: %v", list)
	}
}

// What cannot be written while another process holds the file is written later.
func TestHistoryHeld(t *testing.T) {
	name := filepath.Join(t.TempDir(), "history.jsonl")
	h := openHistory(name, func(string, ...any) {})
	h.bounds.wait = 10 * time.Millisecond
	err := h.file.locked(time.Second, func(*os.File) error {
		h.add(1, "one", "")
		h.add(2, "two", "")
		if list := everything(t, h); len(list) != 2 || list[0].Input != "one" {
			t.Errorf("while the file is held: %v", list)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	h.add(3, "three", "")
	if list := everything(t, openHistory(name, t.Errorf)); len(list) != 3 || whole(t, list)[1] != 3 {
		t.Errorf("%v", list)
	}
}

// counted counts the bytes that are read.
type counted struct {
	*strings.Reader
	bytes int
}

func (c *counted) ReadAt(p []byte, at int64) (int, error) {
	c.bytes += len(p)
	return c.Reader.ReadAt(p, at)
}

// The end of a large file is read without the rest.
func TestLinesBackward(t *testing.T) {
	text := strings.Repeat("a line of forty bytes, its newline too.\n", 100_000)
	r := &counted{Reader: strings.NewReader(text)}
	n := 0
	for line, err := range linesBackward(r, r.Size(), 1000) {
		if err != nil || len(line) > 0 && len(line) != 39 {
			t.Fatalf("%q, %v", line, err)
		}
		if n++; n == 500 {
			break
		}
	}
	if r.bytes > 64<<10 {
		t.Errorf("%d bytes were read for 500 lines of 40", r.bytes)
	}
	for _, lines := range [][]string{{""}, {"a"}, {"a", "b", ""}, {"", "", "x"}, {strings.Repeat("l", 200_000), "b", strings.Repeat("m", 65_536), "c"}, {"a", strings.Repeat("too long", 50_000), "b"}} {
		text := strings.Join(lines, "\n")
		var got []string
		for line, err := range linesBackward(strings.NewReader(text), int64(len(text)), 250_000) {
			if err != nil {
				t.Fatal(err)
			}
			got = append([]string{string(line)}, got...)
		}
		var want []string
		for i, l := range lines {
			if len(l) <= 250_000 && (i > 0 || l != "") { // an empty first line is no line
				want = append(want, l)
			}
		}
		if fmt.Sprint(got) != fmt.Sprint(want) || len(got) != len(want) {
			t.Errorf("%d lines of %.30q; want %d", len(got), got, len(want))
		}
	}
}

// Source: the reference documentation of the protocol, 5.5, "History": a session's number counts up with each start, a
// negative one counts back from the current session; search takes * and ?, and unique leaves out duplicates.
func TestHistoryRequests(t *testing.T) {
	name := filepath.Join(t.TempDir(), "history.jsonl")
	for _, cells := range [][]entry{{{0, 1, "first := 1", ""}}, {{0, 1, "old := 1", ""}, {0, 2, "old", "1"}}} {
		old := openHistory(name, t.Errorf)
		for _, e := range cells {
			old.add(e.Line, e.Input, e.Output)
		}
		if err := old.close(); err != nil {
			t.Fatal(err)
		}
	}
	c := connect(t, serve(t, func(o *Options) { o.HistoryFile = name }))
	asked := func(ask map[string]any) map[string]any {
		return c.reply("shell", c.ask(c.shell, "history_request", ask))
	}
	// before the first cell of this session, too
	if got := fmt.Sprint(asked(map[string]any{"hist_access_type": "range", "session": -1, "start": 1})["history"]); got != "[[2 1 old := 1] [2 2 old]]" {
		t.Errorf("session -1 at first: %s", got)
	}
	c.execute("a := 1")
	c.execute("a")
	c.execute("a")
	for _, x := range []struct {
		ask  map[string]any
		want string
	}{
		{map[string]any{"hist_access_type": "tail", "n": 2}, "[[3 2 a] [3 3 a]]"},
		{map[string]any{"hist_access_type": "tail", "n": 0}, "[]"},
		{map[string]any{"hist_access_type": "tail", "n": 4, "raw": true, "output": false}, "[[2 2 old] [3 1 a := 1] [3 2 a] [3 3 a]]"},
		{map[string]any{"hist_access_type": "tail", "n": 2, "output": true}, "[[3 2 [a 1]] [3 3 [a 1]]]"},
		{map[string]any{"hist_access_type": "tail", "n": 3, "output": true}, "[[3 1 [a := 1 <nil>]] [3 2 [a 1]] [3 3 [a 1]]]"},
		{map[string]any{"hist_access_type": "range", "session": 0, "start": 1, "stop": 3}, "[[3 1 a := 1] [3 2 a]]"},
		{map[string]any{"hist_access_type": "range", "session": -1, "start": 1}, "[[2 1 old := 1] [2 2 old]]"},
		{map[string]any{"hist_access_type": "range", "session": -2, "start": 1, "stop": 10}, "[[1 1 first := 1]]"},
		{map[string]any{"hist_access_type": "range", "session": -3, "start": 1}, "[]"},
		{map[string]any{"hist_access_type": "range", "session": 2, "start": 2, "stop": nil}, "[[2 2 old]]"},
		{map[string]any{"hist_access_type": "range", "session": 9, "start": 1}, "[]"},
		{map[string]any{"hist_access_type": "search", "pattern": "*:= ?"}, "[[1 1 first := 1] [2 1 old := 1] [3 1 a := 1]]"},
		{map[string]any{"hist_access_type": "search", "pattern": "*:= ?", "n": 2}, "[[2 1 old := 1] [3 1 a := 1]]"},
		{map[string]any{"hist_access_type": "search", "pattern": "a"}, "[[3 2 a] [3 3 a]]"},
		{map[string]any{"hist_access_type": "search", "pattern": "a", "unique": true}, "[[3 3 a]]"},
		{map[string]any{"hist_access_type": "search", "pattern": "*", "unique": true, "n": 3}, "[[2 2 old] [3 1 a := 1] [3 3 a]]"},
		{map[string]any{"hist_access_type": "search", "pattern": "*", "n": 1}, "[[3 3 a]]"},
		{map[string]any{"hist_access_type": "search", "pattern": "[a-z]"}, "[]"},
		{map[string]any{"hist_access_type": "search", "pattern": "?ld"}, "[[2 2 old]]"},
	} {
		r := asked(x.ask)
		if got := fmt.Sprint(r["history"]); r["status"] != "ok" || got != x.want {
			t.Errorf("%v: %v; want %s", x.ask, r, x.want)
		}
	}
	if r := asked(map[string]any{"hist_access_type": "odd"}); r["status"] != "error" {
		t.Error(r)
	}
}

func TestMatches(t *testing.T) {
	for _, x := range []struct {
		pattern, text string
		want          bool
	}{
		{"a*c", "abbc", true}, {"a*c", "abb", false}, {"*b*b*", "abcb", true}, {"?", "ä", true}, {"?", "", false}, {"*", "", true}, {"a*", "a\nb", true},
		{"[a]", "a", false}, {strings.Repeat("a*", 30) + "b", strings.Repeat("a", 3000), false},
	} {
		if got := matches(x.pattern, x.text); got != x.want {
			t.Errorf("matches(%.20q, %.20q) = %v; want %v", x.pattern, x.text, got, x.want)
		}
	}
}
