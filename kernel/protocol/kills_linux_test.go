package protocol

import (
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

// worker waits for a worker that is none of some others.
func worker(t testing.TB, others ...int) int {
	t.Helper()
	for until := time.Now().Add(20 * time.Second); time.Now().Before(until); time.Sleep(200 * time.Microsecond) {
		for _, pid := range children(t) {
			if !slices.Contains(others, pid) {
				return pid
			}
		}
	}
	t.Fatal("no worker was seen within 20 s")
	return 0
}

// kill kills a worker and waits until nothing is left of it.
func kill(t testing.TB, pid int) {
	t.Helper()
	if err := syscall.Kill(pid, syscall.SIGKILL); err != nil && !errors.Is(err, syscall.ESRCH) {
		t.Error(err)
	}
	for slices.Contains(children(t), pid) {
		time.Sleep(200 * time.Microsecond)
	}
}

// A front end whose kernel's worker is killed at any moment is told so, once and in order, and goes on with what it had.
func TestKilledWorker(t *testing.T) {
	kills := 20
	if testing.Short() {
		kills = 10
	}
	others := children(t)
	t.Run("kills", func(t *testing.T) { killedWorker(t, kills, others) })
	for until := time.Now().Add(5 * time.Second); time.Now().Before(until) && len(children(t)) > len(others); {
		time.Sleep(5 * time.Millisecond)
	}
	if left := children(t); len(left) > len(others) {
		t.Errorf("processes are left: %v; at first there were %v", left, others)
	}
}

func killedWorker(t *testing.T, kills int, others []int) {
	r := rand.New(rand.NewPCG(1512, 61))
	c := connect(t, serve(t, nil))
	begin := func(code string) string {
		return c.ask(c.shell, "execute_request", map[string]any{"code": code, "stop_on_error": false})
	}
	until := func(id, msgType string) { // the output up to a message of a request
		for m := c.next("iopub"); parentOf(m) != id || m.Header.MsgType != msgType; m = c.next("iopub") {
		}
	}
	rest := func(id string) (list []*Message) { // the output of a request that has begun, up to idle
		for {
			m := c.next("iopub")
			if parentOf(m) != id {
				t.Fatalf("a %s of another request came before idle", m.Header.MsgType)
			}
			if m.Header.MsgType == "status" {
				return list
			}
			list = append(list, m)
		}
	}
	told := func(situation string, reply map[string]any, list []*Message) {
		t.Helper()
		evalue, _ := reply["evalue"].(string)
		if reply["status"] != "error" || reply["ename"] != "Crashed" || !strings.Contains(evalue, "killed from outside") || strings.Contains(evalue, "\n") {
			t.Errorf("%s: the reply is %v", situation, reply)
		}
		if note := fmt.Sprint(reply["traceback"]); !strings.Contains(note, "earlier cells run again") {
			t.Errorf("%s: it is not said what was run again: %s", situation, note)
		}
		if n := len(list); n == 0 || list[n-1].Header.MsgType != "error" || content(t, list[n-1])["evalue"] != evalue {
			t.Errorf("%s: the last output is not the error", situation)
		}
	}
	id := begin("count := 0\ncharge := Ask(\"charge? \")")
	c.answer("300")
	if r := c.reply("shell", id); r["status"] != "ok" {
		t.Fatal(r)
	}
	c.outputs(id)
	c.execute("long := 0\nfor i := range 500_000 { long += i % 3 }")
	goroutines := 0 // after each kind of kill
	for count := 1; count <= kills; count++ {
		if count == 6 {
			goroutines = runtime.NumGoroutine()
		}
		pid := worker(t, others...)
		switch situation := []string{"idle", "cell", "output", "replay", "question"}[count%5]; situation {
		case "idle":
			kill(t, pid)
			reply, out := c.execute("fmt.Print(charge)")
			if got := say(t, out); reply["status"] != "ok" || !strings.HasPrefix(got, `stderr:"between two cells`) || !strings.HasSuffix(got, `stdout:"300"`) {
				t.Errorf("idle: %v, %s", reply, got)
			}
		case "cell", "replay":
			id := begin("fmt.Println(\"begun\")\ncount += 1000\nfor {}")
			until(id, "stream")
			wait := time.Duration(r.Int64N(int64(20 * time.Millisecond)))
			if situation == "replay" {
				kill(t, pid)
				pid = worker(t, append(others, pid)...)
			}
			time.Sleep(wait)
			kill(t, pid)
			told(situation, c.reply("shell", id), rest(id))
		case "output":
			id := begin("count += 1000\nfor i := range 10_000 { fmt.Println(i) }\nfor {}")
			until(id, "execute_input")
			at := r.IntN(10_000)
			var text string
			for strings.Count(text, "\n") < at {
				text += content(t, c.next("iopub"))["text"].(string)
			}
			kill(t, pid)
			list := rest(id)
			told(situation, c.reply("shell", id), list)
			for _, m := range list[:len(list)-1] {
				text += content(t, m)["text"].(string)
			}
			lines := strings.Split(strings.TrimSuffix(text, "\n"), "\n")
			for n, line := range lines {
				if text != "" && line != strconv.Itoa(n) {
					t.Fatalf("output: line %d is %q", n, line)
				}
			}
		case "question":
			id := begin("count += 1000\nAsk(\"?\")")
			until(id, "execute_input")
			q := c.next("stdin")
			if q.Header.MsgType != "input_request" {
				t.Fatal(q.Header.MsgType)
			}
			time.Sleep(time.Duration(r.Int64N(int64(5 * time.Millisecond))))
			kill(t, pid)
			told(situation, c.reply("shell", id), rest(id))
		}
		// A second kill of "replay" may have come after the replay: then this cell is told.
		reply, out := c.execute("count++\nfmt.Print(count, \" \", charge, \" \", long)")
		if got, want := say(t, out), fmt.Sprintf("stdout:%q", fmt.Sprintf("%d 300 499999", count)); reply["status"] != "ok" || !strings.HasSuffix(got, want) {
			t.Fatalf("kill %d: %v, %s; want %s", count, reply, got, want)
		}
	}
	for until := time.Now().Add(5 * time.Second); time.Now().Before(until) && runtime.NumGoroutine() > goroutines; {
		time.Sleep(5 * time.Millisecond)
	}
	if n := runtime.NumGoroutine(); n > goroutines {
		buf := make([]byte, 1<<16)
		t.Errorf("%d goroutines after the first kills, %d at the end:\n%s", goroutines, n, buf[:runtime.Stack(buf, true)])
	}
}
