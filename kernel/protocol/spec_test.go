package protocol

import (
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/go-zeromq/zmq4"
)

// fields are the keys of contents.
//
// Source: the reference documentation of the protocol, 5.5, "Messaging in Jupyter", the section of each message type.
var fields = map[string]string{
	"status":              "execution_state",
	"execute_input":       "code execution_count",
	"stream":              "name text",
	"display_data":        "data metadata transient",
	"update_display_data": "data metadata transient",
	"execute_result":      "data execution_count metadata transient",
	"clear_output":        "wait",
	"error":               "ename evalue traceback",
	"execute_reply":       "execution_count payload status user_expressions",
	"inspect_reply":       "data found metadata status",
	"complete_reply":      "cursor_end cursor_start matches metadata status",
	"history_reply":       "history status",
	"is_complete_reply":   "status",
	"comm_info_reply":     "comms status",
	"kernel_info_reply":   "banner debugger help_links implementation implementation_version language_info protocol_version status supported_features",
	"interrupt_reply":     "status",
	"shutdown_reply":      "restart status",
}

// conforms checks the keys of a message, and what must hold of every header.
func conforms(t *testing.T, m *Message, request string) {
	t.Helper()
	want, known := fields[m.Header.MsgType]
	got := strings.Join(slices.Sorted(maps.Keys(content(t, m))), " ")
	if !known || got != want {
		t.Errorf("%s has the keys %s; the documentation gives %s", m.Header.MsgType, got, want)
	}
	h := m.Header
	if _, err := time.Parse(time.RFC3339Nano, h.Date); err != nil || h.Version != "5.5" || h.MsgID == "" || h.Session == "" || h.Username == "" {
		t.Errorf("%s has the header %+v", h.MsgType, h)
	}
	if parentOf(m) != request {
		t.Errorf("%s has the parent %s", h.MsgType, m.Parent)
	}
}

func TestContents(t *testing.T) {
	c := connect(t, serve(t, nil))
	ids := map[string]bool{}
	seen := map[string]bool{}
	check := func(m *Message, request string) {
		t.Helper()
		conforms(t, m, request)
		if ids[m.Header.MsgID] {
			t.Errorf("the id %s came twice", m.Header.MsgID)
		}
		ids[m.Header.MsgID], seen[m.Header.MsgType] = true, true
	}
	id := c.ask(c.shell, "execute_request", map[string]any{"code": "fmt.Print(1); l := Live(\"now\", 1); l.Set(2); ClearOutput(); Show(3); 4", "user_expressions": map[string]string{"two": "1 + 1"}})
	check(c.next("shell"), id)
	for idle := false; !idle; {
		m := c.next("iopub")
		if parentOf(m) == "" {
			continue // the kernel's start
		}
		check(m, id)
		idle = content(t, m)["execution_state"] == "idle"
	}
	for request, ask := range map[string]map[string]any{
		"inspect_request":     {"code": "l", "cursor_pos": 1},
		"complete_request":    {"code": "l", "cursor_pos": 1},
		"history_request":     {"hist_access_type": "tail", "n": 3, "output": false, "raw": true},
		"is_complete_request": {"code": "l"},
		"comm_info_request":   {},
		"kernel_info_request": {},
	} {
		id := c.ask(c.shell, request, ask)
		check(c.next("shell"), id)
		c.outputs(id)
	}
	id = c.ask(c.control, "interrupt_request", map[string]any{})
	check(c.next("control"), id)
	c.outputs(id)
	id = c.ask(c.shell, "execute_request", map[string]any{"code": "1 +* 1"})
	if m := c.next("shell"); fmt.Sprint(slices.Sorted(maps.Keys(content(t, m)))) != "[ename evalue execution_count status traceback]" {
		t.Errorf("the reply to a cell that fails: %s", m.Content)
	}
	for _, m := range c.outputs(id) {
		check(m, id)
	}
	id = c.ask(c.shell, "shutdown_request", map[string]any{"restart": false})
	check(c.next("shell"), id)
	out := c.outputs(id)
	if got := say(t, out); got != "shutdown_reply" { // all front ends are told
		t.Errorf("the output of the shutdown is %s", got)
	}
	for msgType := range fields {
		if !seen[msgType] {
			t.Errorf("no %s came", msgType)
		}
	}
}

// A request whose content cannot be used is answered with an error, and the next one with what it asks for.
func TestUnusableContents(t *testing.T) {
	c := connect(t, serve(t, nil))
	unusable := map[string]any{"code": 5, "cursor_pos": "x", "hist_access_type": []int{1}, "target_name": 7, "comm_id": 8}
	for _, request := range []string{"execute", "inspect", "complete", "history", "comm_info"} {
		r := c.reply("shell", c.ask(c.shell, request+"_request", unusable))
		if r["status"] != "error" || r["ename"] != "Malformed" || r["evalue"] == "" || reflect.TypeOf(r["traceback"]) != reflect.TypeOf([]any{}) {
			t.Errorf("%s: %v", request, r)
		}
		if _, counted := r["execution_count"]; counted != (request == "execute") {
			t.Errorf("%s: %v", request, r)
		}
	}
	if r := c.reply("shell", c.ask(c.shell, "is_complete_request", unusable)); r["status"] != "unknown" {
		t.Error(r)
	}
	for _, request := range []string{"comm_open", "comm_msg", "comm_close"} {
		if out := c.outputs(c.ask(c.shell, request, unusable)); len(out) != 0 {
			t.Errorf("%s: %s", request, say(t, out))
		}
	}
	if r, out := c.execute("6 * 7"); r["execution_count"] != 1.0 || say(t, out) != "execute_result:42" {
		t.Errorf("%v, %s", r, say(t, out))
	}
}

// Expressions of a front end leave no trace: nothing is declared, and a replay does not run them again.
func TestUserExpressionsLeaveNoTrace(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("calls := 0\nfunc called() int { calls++; return calls }")
	for i := range 3 {
		id := c.ask(c.shell, "execute_request", map[string]any{"code": "", "silent": true, "user_expressions": map[string]string{
			"calls": "called()", "declares": "z := 1", "many": "1; 2", "says": "fmt.Sprint(\"a\", 1)", "type": "struct{ A int }{1}",
		}})
		r := c.reply("shell", id)
		if out := c.outputs(id); r["status"] != "ok" || r["execution_count"] != 1.0 || len(out) != 0 {
			t.Fatalf("%v, %s", r, say(t, out))
		}
		u := r["user_expressions"].(map[string]any)
		text := func(name string) string {
			v, _ := u[name].(map[string]any)
			d, _ := v["data"].(map[string]any)
			return fmt.Sprint(v["status"], " ", v["ename"], " ", d["text/plain"])
		}
		for name, want := range map[string]string{
			"calls": fmt.Sprintf("ok <nil> %d", i+1), "declares": "error Refused <nil>", "many": "error Refused <nil>", "says": "ok <nil> a1", "type": "ok <nil> {1}",
		} {
			if got := text(name); got != want {
				t.Errorf("%s: %s; want %s", name, got, want)
			}
		}
	}
	if r, _ := c.execute("z"); r["status"] != "error" {
		t.Errorf("an expression declared z: %v", r)
	}
	if r, out := c.execute("calls"); say(t, out) != "execute_result:3" {
		t.Errorf("%v, %s", r, say(t, out))
	}
	if r, _ := c.execute("go func() { panic(\"out\") }(); select {}"); r["ename"] != "Crashed" {
		t.Fatal(r)
	}
	if r, out := c.execute("calls"); say(t, out) != "execute_result:0" {
		t.Errorf("after a replay: %v, %s; want none of the expressions to have run again", r, say(t, out))
	}
}

// Cells that are not counted are told apart from each other and from those that are: a goroutine that ends the worker
// costs the cell that began it, and no other.
func TestUncountedCells(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("kept := 1")
	silent := func(code string) map[string]any {
		return c.reply("shell", c.ask(c.shell, "execute_request", map[string]any{"code": code, "silent": true}))
	}
	silent("also := 2")
	silent("go func() { time.Sleep(30 * time.Millisecond); panic(\"late\") }()")
	if r := silent("time.Sleep(10 * time.Second)"); r["ename"] != "Crashed" {
		t.Fatal(r)
	}
	for end := time.Now().Add(150 * time.Millisecond); time.Now().Before(end); time.Sleep(10 * time.Millisecond) {
		id := c.ask(c.shell, "execute_request", map[string]any{"code": "kept + also"})
		if r, out := c.reply("shell", id), c.outputs(id); say(t, out) != "execute_result:3" {
			t.Fatalf("%v, %s", r, say(t, out))
		}
	}
}

// An error in a silent request is its own affair; the cells that the person has queued run on.
func TestSilentErrorAbortsNothing(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("a := 1")
	bad := c.ask(c.shell, "execute_request", map[string]any{"code": "n := 0; for i := 0; i < 3000000; i++ { n += i }; a = a / (a - 1)", "silent": true})
	good := c.ask(c.shell, "execute_request", map[string]any{"code": "a + 1"})
	if r := c.reply("shell", bad); r["status"] != "error" {
		t.Fatal(r)
	}
	if r := c.reply("shell", good); r["status"] != "ok" {
		t.Error(r)
	}
}

// An interrupt while nothing runs is answered and stops nothing that comes after.
func TestInterruptOfNothing(t *testing.T) {
	c := connect(t, serve(t, nil))
	for i := range 5 {
		if r := c.reply("control", c.ask(c.control, "interrupt_request", map[string]any{})); r["status"] != "ok" {
			t.Error(r)
		}
		if r, out := c.execute(fmt.Sprint(i)); say(t, out) != fmt.Sprintf("execute_result:%d", i) {
			t.Errorf("%v, %s", r, say(t, out))
		}
	}
}

// Of the optional features none is claimed: a front end then opens no subshells and starts no debugger.
func TestFeaturesThatAreNot(t *testing.T) {
	c := connect(t, serve(t, nil))
	r := c.reply("shell", c.ask(c.shell, "kernel_info_request", map[string]any{}))
	if f, ok := r["supported_features"].([]any); !ok || len(f) != 0 || r["debugger"] != false {
		t.Errorf("%v", r)
	}
	for _, request := range []string{"create_subshell_request", "list_subshell_request", "delete_subshell_request", "debug_request", "connect_request", "x"} {
		for name, sock := range map[string]zmq4.Socket{"shell": c.shell, "control": c.control} {
			if out := c.outputs(c.ask(sock, request, map[string]any{})); len(out) != 0 {
				t.Errorf("%s: %s", request, say(t, out))
			}
			if m := c.within(name, 10*time.Millisecond); m != nil {
				t.Errorf("%s was answered with %s", request, m.Header.MsgType)
			}
		}
	}
}

// What a comm sends while a message is dealt with belongs to that message; a comm that the kernel closes is no longer
// listed; a second opening and messages of no comm change nothing.
func TestCommsBelong(t *testing.T) {
	var own atomic.Pointer[Comm]
	c := connect(t, serve(t, func(o *Options) {
		o.Targets = map[string]Target{"twice": func(c *Comm, data json.RawMessage) error {
			own.Store(c)
			c.Send(map[string]any{"open": true})
			c.Receive = func(data json.RawMessage, buffers [][]byte) {
				c.Send(map[string]any{"n": 1}, []byte{1, 2}, []byte("b"))
				if string(data) == `{"end":true}` {
					c.Close(map[string]any{"bye": 1})
					c.Close(nil)
				}
			}
			return nil
		}}
	}))
	send := func(msgType string, content map[string]any) []*Message {
		t.Helper()
		content["comm_id"] = "a"
		return c.outputs(c.ask(c.shell, msgType, content))
	}
	open := func() int {
		t.Helper()
		r := c.reply("shell", c.ask(c.shell, "comm_info_request", map[string]any{}))
		for id, x := range r["comms"].(map[string]any) {
			if id != "a" || !reflect.DeepEqual(x, map[string]any{"target_name": "twice"}) {
				t.Errorf("%v", r)
			}
		}
		return len(r["comms"].(map[string]any))
	}
	if got := say(t, send("comm_msg", map[string]any{"data": map[string]any{}})); got != "" {
		t.Errorf("a message of no comm: %s", got)
	}
	if got := say(t, send("comm_open", map[string]any{"target_name": "twice", "data": map[string]any{}})); got != "comm_msg" {
		t.Errorf("open: %s", got)
	}
	first := own.Load()
	if got := say(t, send("comm_open", map[string]any{"target_name": "twice", "data": map[string]any{}})); got != "" || own.Load() != first || open() != 1 {
		t.Errorf("a second opening: %s, %d open", got, open())
	}
	if out := send("comm_msg", map[string]any{"data": map[string]any{}}); say(t, out) != "comm_msg" || len(out[0].Buffers) != 2 || string(out[0].Buffers[1]) != "b" {
		t.Errorf("message: %s", say(t, out))
	}
	out := send("comm_msg", map[string]any{"data": map[string]any{"end": true}})
	if got := say(t, out); got != "comm_msg comm_close" || open() != 0 {
		t.Errorf("close: %s, %d open", got, open())
	} else if v := content(t, out[1]); v["comm_id"] != "a" || !reflect.DeepEqual(v["data"], map[string]any{"bye": 1.0}) {
		t.Errorf("close: %v", v)
	}
	if got := say(t, send("comm_close", map[string]any{"data": map[string]any{}})); got != "" {
		t.Errorf("a comm that is closed already: %s", got)
	}
}
