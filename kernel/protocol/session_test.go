package protocol

import (
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/go-zeromq/zmq4"
)

// answer answers the next question of a cell.
func (c *client) answer(value string) (prompt string, secret bool) {
	c.t.Helper()
	q := c.next("stdin")
	v := content(c.t, q)
	m := &Message{Header: c.codec.header("input_reply"), Parent: q.rawHeader, Content: json.RawMessage(fmt.Sprintf(`{"value":%q,"status":"ok"}`, value))}
	frames, err := c.codec.encode(m)
	if err != nil {
		c.t.Fatal(err)
	}
	if err := c.stdin.Send(zmq4.NewMsgFrom(frames...)); err != nil {
		c.t.Fatal(err)
	}
	return fmt.Sprint(v["prompt"]), v["password"] == true
}

func TestInput(t *testing.T) {
	s := serve(t, nil)
	c, other := connect(t, s), connect(t, s)
	other.ask(other.stdin, "input_reply", map[string]any{"value": "too early", "status": "ok"})
	time.Sleep(20 * time.Millisecond)
	id := c.ask(c.shell, "execute_request", map[string]any{"code": "a := Ask(\"charge? \"); b := AskSecret(\"word? \"); a + b"})
	if p, secret := c.answer("12"); p != "charge? " || secret {
		t.Errorf("asked %q, secret %v", p, secret)
	}
	if p, secret := c.answer("ä"); p != "word? " || !secret {
		t.Errorf("asked %q, secret %v", p, secret)
	}
	if r := c.reply("shell", id); r["status"] != "ok" {
		t.Error(r)
	}
	if got := say(t, c.outputs(id)); got != "execute_result:12ä" {
		t.Error(got)
	}
	if m := other.within("stdin", 20*time.Millisecond); m != nil {
		t.Error("the question went to the wrong front end")
	}
	id = c.ask(c.shell, "execute_request", map[string]any{"code": "Ask(\"?\")", "allow_stdin": false})
	if r := c.reply("shell", id); r["status"] != "error" || !strings.Contains(fmt.Sprint(r["evalue"]), "nobody is there to answer") {
		t.Error(r)
	}
	id = c.ask(c.shell, "execute_request", map[string]any{"code": "Ask(\"?\")"})
	c.next("stdin")
	c.ask(c.control, "interrupt_request", map[string]any{})
	if r := c.reply("shell", id); r["status"] != "error" {
		t.Error(r)
	}
	if r, out := c.execute("a"); say(t, out) != "execute_result:12" {
		t.Errorf("after the interrupt: %v, %s", r, say(t, out))
	}
}

func TestLiveOutput(t *testing.T) {
	c := connect(t, serve(t, nil))
	r, out := c.execute("p := Live(\"now\", 1); p.Set(2); fmt.Println(\"x\"); ClearOutput(); Show(3)")
	if got, want := say(t, out), `display_data:1 update_display_data:2 stdout:"x\n" clear_output display_data:3`; got != want {
		t.Errorf("%v, %s; want %s", r, got, want)
	}
	for _, m := range out[1:3] {
		v := content(t, m)
		if id := v["transient"].(map[string]any)["display_id"]; id != "now" {
			t.Errorf("%s: display_id %v; want now", m.Header.MsgType, id)
		}
		if data := v["data"].(map[string]any); data[displayID] != nil {
			t.Errorf("%s: the id is among the data", m.Header.MsgType)
		}
	}
}

// Ten kinds of busy cell end when interrupted, and what was declared before is there afterwards.
func TestInterruptKinds(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("import \"sync\"\nimport \"time\"\nkept := 7")
	for _, code := range []string{
		"for {}", "select {}", "<-make(chan int)", "make(chan int) <- 1", "for range make(chan int) {}", "time.Sleep(time.Hour)",
		"var mu sync.Mutex; mu.Lock(); mu.Lock()", "var wg sync.WaitGroup; wg.Add(1); wg.Wait()",
		"for { fmt.Println(kept) }", "go func() { for {} }(); for { time.Sleep(time.Millisecond) }",
		"func fib(n int) int { if n < 2 { return n }; return fib(n-1) + fib(n-2) }; fib(80)",
	} {
		id := c.ask(c.shell, "execute_request", map[string]any{"code": code})
		for m := c.next("iopub"); m.Header.MsgType != "execute_input"; m = c.next("iopub") {
		}
		time.Sleep(50 * time.Millisecond)
		start := time.Now()
		c.ask(c.control, "interrupt_request", map[string]any{})
		r := c.reply("shell", id)
		if d := time.Since(start); d > 3*time.Second {
			t.Errorf("%q took %v to stop", code, d)
		}
		if r["status"] != "error" || r["ename"] != "Interrupted" {
			t.Errorf("%q interrupted: %v", code, r)
		}
		for {
			if m := c.next("iopub"); m.Header.MsgType == "status" && parentOf(m) == id && content(t, m)["execution_state"] == "idle" {
				break
			}
		}
		if r, out := c.execute("kept"); say(t, out) != "execute_result:7" {
			t.Errorf("after %q: %v, %s", code, r, say(t, out))
		}
	}
}

// A cell that takes all memory, or crashes its worker, costs that cell.
func TestLostWorker(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("kept := 7")
	for code, name := range map[string]string{
		"var hold [][]byte; for { hold = append(hold, make([]byte, 1<<24)) }": "Memory",
		"go func() { panic(\"out\") }(); select {}":                           "Crashed",
	} {
		if r, _ := c.execute(code); r["status"] != "error" || r["ename"] != name || !strings.Contains(fmt.Sprint(r["traceback"]), "new worker") {
			t.Errorf("%q: %v; want %s", code, r, name)
		}
		if r, out := c.execute("kept"); say(t, out) != "execute_result:7" {
			t.Errorf("after %q: %v, %s", code, r, say(t, out))
		}
	}
}

func TestComms(t *testing.T) {
	closed := make(chan string, 1)
	s := serve(t, func(o *Options) {
		o.Targets = map[string]Target{
			"echo": func(c *Comm, data json.RawMessage) error {
				c.Receive = func(data json.RawMessage, _ [][]byte) { c.Send(data) }
				c.Closed = func(json.RawMessage) { closed <- c.ID }
				return nil
			},
			"never": func(*Comm, json.RawMessage) error { return errors.New("no") },
		}
	})
	c := connect(t, s)
	open := func(id, target string) string {
		return say(t, c.outputs(c.ask(c.shell, "comm_open", map[string]any{"comm_id": id, "target_name": target, "data": map[string]any{}})))
	}
	for id, x := range map[string][2]string{"a": {"echo", ""}, "b": {"unknown", "comm_close"}, "c": {"never", "comm_close"}} {
		if got := open(id, x[0]); got != x[1] {
			t.Errorf("open of %s: %q; want %q", x[0], got, x[1])
		}
	}
	c.ask(c.shell, "comm_msg", map[string]any{"comm_id": "a", "data": map[string]any{"x": 1}})
	for {
		if m := c.next("iopub"); m.Header.MsgType == "comm_msg" {
			if v := content(t, m); v["comm_id"] != "a" || !reflect.DeepEqual(v["data"], map[string]any{"x": 1.0}) {
				t.Error(v)
			}
			break
		}
	}
	for target, n := range map[string]int{"": 1, "echo": 1, "other": 0} {
		r := c.reply("shell", c.ask(c.shell, "comm_info_request", map[string]any{"target_name": target}))
		if got := len(r["comms"].(map[string]any)); got != n {
			t.Errorf("comm_info of %q: %v; want %d", target, r, n)
		}
	}
	c.ask(c.shell, "comm_close", map[string]any{"comm_id": "a", "data": map[string]any{}})
	if id := <-closed; id != "a" {
		t.Error(id)
	}
	r := c.reply("shell", c.ask(c.shell, "comm_info_request", map[string]any{}))
	if len(r["comms"].(map[string]any)) != 0 {
		t.Error(r)
	}
}

func TestParentDeath(t *testing.T) {
	s := serve(t, nil)
	calls := 0
	go s.watchParent(func() int { calls++; return map[bool]int{true: 100, false: 1}[calls == 1] })
	select {
	case err := <-s.ended:
		s.ended <- err
	case <-time.After(5 * time.Second):
		t.Error("the kernel outlives its parent")
	}
}

// Many cells leave neither goroutines nor memory behind in the parent.
func TestManyCells(t *testing.T) {
	cells := 5000
	if testing.Short() {
		cells = 500
	}
	c := connect(t, serve(t, func(o *Options) { o.HistoryFile = "" }))
	heap := func() (int, uint64) {
		runtime.GC()
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return runtime.NumGoroutine(), m.HeapAlloc
	}
	var goroutines int
	var memory uint64
	for i := range cells {
		if i == 100 {
			goroutines, memory = heap()
		}
		if r, out := c.execute(fmt.Sprintf("fmt.Println(%d)", i)); r["status"] != "ok" || say(t, out) != fmt.Sprintf(`stdout:"%d\n"`, i) {
			t.Fatalf("cell %d: %v, %s", i, r, say(t, out))
		}
	}
	g, m := heap()
	if g > goroutines+5 {
		t.Errorf("%d goroutines at first, %d at the end", goroutines, g)
	}
	// The cells themselves are kept, for replay and for the history.
	if most := memory + uint64(cells)*2000 + 8<<20; m > most {
		t.Errorf("%d bytes at first, %d at the end; want at most %d", memory, m, most)
	}
	t.Logf("goroutines %d → %d, bytes %d → %d", goroutines, g, memory, m)
}
