package protocol

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/go-zeromq/zmq4"
)

func TestKernelInfo(t *testing.T) {
	c := connect(t, serve(t, nil))
	for name, sock := range map[string]zmq4.Socket{"shell": c.shell, "control": c.control} {
		id := c.ask(sock, "kernel_info_request", map[string]any{})
		r := c.reply(name, id)
		lang, _ := r["language_info"].(map[string]any)
		if r["status"] != "ok" || r["protocol_version"] != "5.5" || lang["name"] != "go" || lang["file_extension"] != ".go" || lang["nbconvert_exporter"] != nil {
			t.Errorf("%s: %v", name, r)
		}
		if out := c.outputs(id); len(out) != 0 {
			t.Errorf("%s: %s came between busy and idle", name, say(t, out))
		}
	}
}

func TestExecute(t *testing.T) {
	c := connect(t, serve(t, nil))
	for i, x := range []struct{ code, status, want string }{
		{"x := 2", "ok", ""},
		{"x * 21", "ok", "execute_result:42"},
		{"fmt.Print(\"a\"); println(\"b\"); fmt.Println(\"c\"); \"d\"", "ok", `stdout:"a" stderr:"b\n" stdout:"c\n" execute_result:d`},
		{"y := x +* 2", "error", "error"},
		{"fmt.Println(1)\nvar p *int\n*p = 1", "error", `stdout:"1\n" error`},
	} {
		r, out := c.execute(x.code)
		if r["status"] != x.status || say(t, out) != x.want || r["execution_count"] != float64(i+1) {
			t.Errorf("%q: %v, %s; want %s, %s", x.code, r, say(t, out), x.status, x.want)
		}
		if x.status == "ok" && (!reflect.DeepEqual(r["payload"], []any{}) || !reflect.DeepEqual(r["user_expressions"], map[string]any{})) {
			t.Errorf("%q: %v", x.code, r)
		}
	}
	r, _ := c.execute("a := 1\nb := a / (a - 1)\nfmt.Println(b)")
	if got := fmt.Sprint(r["traceback"]); !strings.Contains(got, "2:") || !strings.Contains(got, "   2 | b := a / (a - 1)") {
		t.Errorf("the error does not show its line: %s", got)
	}
}

func TestSilentAndUserExpressions(t *testing.T) {
	c := connect(t, serve(t, func(o *Options) { o.HistoryFile = filepath.Join(t.TempDir(), "h", "history.jsonl") }))
	c.execute("x := 20")
	id := c.ask(c.shell, "execute_request", map[string]any{"code": "x++; fmt.Println(x); x", "silent": true})
	if r, out := c.reply("shell", id), c.outputs(id); r["status"] != "ok" || r["execution_count"] != 1.0 || len(out) != 0 {
		t.Errorf("silent: %v, %s", r, say(t, out))
	}
	id = c.ask(c.shell, "execute_request", map[string]any{"code": "x", "store_history": false, "user_expressions": map[string]string{"good": "x*2", "bad": "nothing", "worse": "x := 3"}})
	r, out := c.reply("shell", id), c.outputs(id)
	if r["execution_count"] != 1.0 || say(t, out) != "execute_result:21" {
		t.Errorf("store_history false: %v, %s", r, say(t, out))
	}
	u := r["user_expressions"].(map[string]any)
	good, bad, worse := u["good"].(map[string]any), u["bad"].(map[string]any), u["worse"].(map[string]any)
	if good["status"] != "ok" || good["data"].(map[string]any)["text/plain"] != "42" || bad["status"] != "error" || bad["ename"] != "Refused" || worse["status"] != "error" {
		t.Errorf("user expressions: %v", u)
	}
	id = c.ask(c.shell, "history_request", map[string]any{"hist_access_type": "tail", "n": 10, "output": false, "raw": true})
	if h := c.reply("shell", id)["history"]; !reflect.DeepEqual(h, []any{[]any{1.0, 1.0, "x := 20"}}) {
		t.Errorf("history: %v", h)
	}
}

func TestLooking(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("äöü := 3; import \"strings\"")
	const code = "s := \"ä\"; strings.HasPref"
	id := c.ask(c.shell, "complete_request", map[string]any{"code": code, "cursor_pos": 25})
	r := c.reply("shell", id)
	if !reflect.DeepEqual(r["matches"], []any{"HasPrefix"}) || r["cursor_start"] != 18.0 || r["cursor_end"] != 25.0 {
		t.Errorf("complete: %v", r)
	}
	typed := r["metadata"].(map[string]any)["_jupyter_types_experimental"].([]any)[0].(map[string]any)
	if typed["text"] != "HasPrefix" || typed["type"] != "function" || typed["start"] != 18.0 || typed["end"] != 25.0 {
		t.Errorf("typed: %v", typed)
	}
	id = c.ask(c.shell, "inspect_request", map[string]any{"code": "äöü + 1", "cursor_pos": 2, "detail_level": 0})
	r = c.reply("shell", id)
	if data, _ := r["data"].(map[string]any); r["found"] != true || !strings.Contains(fmt.Sprint(data["text/plain"]), "äöü int") {
		t.Errorf("inspect: %v", r)
	}
	id = c.ask(c.shell, "inspect_request", map[string]any{"code": "1 + 1", "cursor_pos": 0, "detail_level": 0})
	if r = c.reply("shell", id); r["found"] != false || r["status"] != "ok" {
		t.Errorf("inspect of nothing: %v", r)
	}
	r, _ = c.execute("?strings")
	if p, _ := r["payload"].([]any); r["status"] != "ok" || len(p) != 1 || p[0].(map[string]any)["source"] != "page" {
		t.Errorf("page: %v", r)
	}
	for code, want := range map[string]string{
		"x := 1": "complete", "": "complete", "for i := range 3 {": "incomplete", "x :=": "incomplete", "f(1,\n2": "incomplete", "s := `a": "incomplete",
		"/* a": "incomplete", "x := )": "invalid", "s := \"a": "invalid", "{(}": "invalid", "a # b": "invalid",
	} {
		id := c.ask(c.shell, "is_complete_request", map[string]any{"code": code})
		if r := c.reply("shell", id); r["status"] != want {
			t.Errorf("is_complete %q: %v; want %s", code, r, want)
		}
	}
	id = c.ask(c.shell, "is_complete_request", map[string]any{"code": "for {\n\tif true {"})
	if r := c.reply("shell", id); r["indent"] != "\t\t" {
		t.Errorf("indent: %q", r["indent"])
	}
}

func TestOffsets(t *testing.T) {
	const text = "aä€𝄞z"
	for points, at := range map[int]int{-1: 0, 0: 0, 1: 1, 2: 3, 3: 6, 4: 10, 5: 11, 9: 11} {
		if got := byteOffset(text, points); got != at {
			t.Errorf("byteOffset(%d) = %d; want %d", points, got, at)
		}
		if points >= 0 && points <= 5 {
			if got := pointOffset(text, at); got != points {
				t.Errorf("pointOffset(%d) = %d; want %d", at, got, points)
			}
		}
	}
}

func TestUnknownRequests(t *testing.T) {
	c := connect(t, serve(t, nil))
	for name, sock := range map[string]zmq4.Socket{"shell": c.shell, "control": c.control} {
		id := c.ask(sock, "create_subshell_request", map[string]any{})
		if out := c.outputs(id); len(out) != 0 {
			t.Errorf("%s: %s", name, say(t, out))
		}
		if m := c.within(name, 50*time.Millisecond); m != nil {
			t.Errorf("%s: an unknown request was answered with %s", name, m.Header.MsgType)
		}
	}
}

// A loop for ever holds up neither control nor heartbeat, and an interrupt ends it. What had been declared stays.
func TestInterrupt(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("kept := 7")
	for _, code := range []string{"for {}", "select {}", "fmt.Println(\"on\"); for { kept += 0 }"} {
		id := c.ask(c.shell, "execute_request", map[string]any{"code": code})
		for m := c.next("iopub"); m.Header.MsgType != "execute_input"; m = c.next("iopub") {
		}
		if r := c.reply("control", c.ask(c.control, "kernel_info_request", map[string]any{})); r["status"] != "ok" {
			t.Error(r)
		}
		if err := c.beat.Send(zmq4.NewMsgString("tick")); err != nil {
			t.Fatal(err)
		}
		if m, err := c.beat.Recv(); err != nil || string(m.Bytes()) != "tick" {
			t.Errorf("heartbeat: %v, %v", m, err)
		}
		time.Sleep(20 * time.Millisecond)
		if r := c.reply("control", c.ask(c.control, "interrupt_request", map[string]any{})); r["status"] != "ok" {
			t.Error(r)
		}
		if r := c.reply("shell", id); r["status"] != "error" || r["ename"] != "Interrupted" {
			t.Errorf("%q interrupted: %v", code, r)
		}
		if r, out := c.execute("kept"); r["status"] != "ok" || say(t, out) != "execute_result:7" {
			t.Errorf("after %q: %v, %s", code, r, say(t, out))
		}
	}
}

// An error aborts the execute requests that were sent before the front end could know, and no other requests.
func TestAbort(t *testing.T) {
	c := connect(t, serve(t, nil))
	c.execute("a := 1")
	bad := c.ask(c.shell, "execute_request", map[string]any{"code": "n := 0; for i := 0; i < 3000000; i++ { n += i }; a = a / (a - 1)"})
	var later []string
	for range 20 {
		later = append(later, c.ask(c.shell, "execute_request", map[string]any{"code": "a = 100"}))
	}
	info := c.ask(c.shell, "kernel_info_request", map[string]any{})
	if r := c.reply("shell", bad); r["status"] != "error" {
		t.Fatal(r)
	}
	for i, id := range later {
		if r := c.reply("shell", id); r["status"] != "aborted" || r["execution_count"] != nil {
			t.Errorf("request %d: %v; want aborted", i, r)
		}
	}
	if r := c.reply("shell", info); r["status"] != "ok" {
		t.Error(r)
	}
	if r, out := c.execute("a"); r["status"] != "ok" || say(t, out) != "execute_result:1" {
		t.Errorf("after the reply: %v, %s", r, say(t, out))
	}
	bad = c.ask(c.shell, "execute_request", map[string]any{"code": "a = a / (a - 1)", "stop_on_error": false})
	good := c.ask(c.shell, "execute_request", map[string]any{"code": "a = 5"})
	if r := c.reply("shell", bad); r["status"] != "error" {
		t.Fatal(r)
	}
	if r := c.reply("shell", good); r["status"] != "ok" {
		t.Errorf("stop_on_error false: %v", r)
	}
}

func TestShutdown(t *testing.T) {
	for name, code := range map[string]string{"idle": "", "busy": "for {}"} {
		t.Run(name, func(t *testing.T) {
			s := serve(t, nil)
			c := connect(t, s)
			if code != "" {
				c.ask(c.shell, "execute_request", map[string]any{"code": code})
				for m := c.next("iopub"); m.Header.MsgType != "execute_input"; m = c.next("iopub") {
				}
			}
			start := time.Now()
			id := c.ask(c.control, "shutdown_request", map[string]any{"restart": true})
			if r := c.reply("control", id); r["status"] != "ok" || r["restart"] != true {
				t.Error(r)
			}
			select {
			case err := <-s.ended:
				s.ended <- err
			case <-time.After(5 * time.Second):
				t.Fatal("the kernel did not end within 5 s")
			}
			if d := time.Since(start); d > 2500*time.Millisecond {
				t.Errorf("the end took %v; front ends kill after 2.5 s", d)
			}
		})
	}
}

func TestShutdownOnShell(t *testing.T) {
	s := serve(t, nil)
	c := connect(t, s)
	id := c.ask(c.shell, "shutdown_request", map[string]any{"restart": false})
	if r := c.reply("shell", id); r["status"] != "ok" || r["restart"] != false {
		t.Error(r)
	}
	if err := <-s.ended; err != nil {
		t.Error(err)
	}
	s.ended <- nil
}

func TestIPC(t *testing.T) {
	prefix := ipcPrefix(t)
	s := serve(t, func(o *Options) {
		o.Connection = Connection{Transport: "ipc", IP: prefix, ShellPort: 1, IOPubPort: 2, StdinPort: 3, ControlPort: 4, HBPort: 5, Key: testKey}
	})
	c := connect(t, s)
	if r, out := c.execute("6 * 7"); r["status"] != "ok" || say(t, out) != "execute_result:42" {
		t.Errorf("%v, %s", r, say(t, out))
	}
	if st, err := os.Stat(filepath.Dir(prefix)); err != nil || st.Mode().Perm() != 0o700 {
		t.Errorf("the folder of the sockets: %v, %v; want mode 0700", st.Mode(), err)
	}
	if st, err := os.Stat(prefix + "-1"); err != nil || st.Mode().Perm() != 0o600 {
		t.Errorf("a socket: %v, %v; want mode 0600", st.Mode(), err)
	}
}
