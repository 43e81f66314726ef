package protocol

import (
	"context"
	"encoding/json"
	"fmt"
	"net"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/go-zeromq/zmq4"

	"swanneck/kernel/cell"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
	"swanneck/kernel/symbols/whitelist"
)

func TestMain(m *testing.M) {
	engine.WorkerIfAsked(engine.Content{
		Library:  func() cell.Library { return symbols.NewLibrary() },
		Packages: whitelist.Packages,
		Values:   symbols.Values,
	})
	os.Exit(m.Run())
}

const testKey = "a key of the test"

// served is a kernel with clients of the test's own.
type served struct {
	*Kernel
	ended chan error
}

// serve starts a kernel on free ports.
func serve(t testing.TB, change func(*Options)) *served {
	t.Helper()
	o := Options{
		Connection: Connection{Transport: "tcp", IP: "127.0.0.1", Key: testKey}, Version: "test", OutliveParent: true,
		Start: func() (Runner, error) { return engine.Start(engine.Options{CellTime: -1}) },
	}
	if change != nil {
		change(&o)
	}
	k, err := Listen(o)
	if err != nil {
		t.Fatal(err)
	}
	s := &served{k, make(chan error, 1)}
	go func() { s.ended <- k.Serve() }()
	t.Cleanup(func() {
		k.Shutdown()
		select {
		case err := <-s.ended:
			if err != nil {
				t.Error(err)
			}
		case <-time.After(10 * time.Second):
			t.Error("the kernel did not end within 10 s of its shutdown")
		}
	})
	return s
}

// client is a front end.
type client struct {
	t       testing.TB
	codec   *codec
	shell   zmq4.Socket
	control zmq4.Socket
	stdin   zmq4.Socket
	beat    zmq4.Socket
	got     map[string]chan *Message // by channel
}

func endpoint(a net.Addr) string {
	if a.Network() == "unix" {
		return "ipc://" + a.String()
	}
	return "tcp://" + a.String()
}

func connect(t testing.TB, s *served) *client {
	t.Helper()
	c := &client{t: t, codec: newCodec(string(s.codec.key)), got: map[string]chan *Message{}}
	id := zmq4.WithID(zmq4.SocketIdentity(c.codec.session))
	ctx, cancel := context.WithCancel(context.Background())
	a := s.Addrs()
	c.shell, c.control, c.stdin = zmq4.NewDealer(ctx, id), zmq4.NewDealer(ctx, id), zmq4.NewDealer(ctx, id)
	c.beat = zmq4.NewReq(ctx)
	sub := zmq4.NewSub(ctx)
	all := map[string]zmq4.Socket{"shell": c.shell, "iopub": sub, "stdin": c.stdin, "control": c.control, "heartbeat": c.beat}
	for i, name := range []string{"shell", "iopub", "stdin", "control", "heartbeat"} {
		if err := all[name].Dial(endpoint(a[i])); err != nil {
			t.Fatal(name, err)
		}
	}
	if err := sub.SetOption(zmq4.OptionSubscribe, ""); err != nil {
		t.Fatal(err)
	}
	for name, sock := range map[string]zmq4.Socket{"shell": c.shell, "iopub": sub, "control": c.control, "stdin": c.stdin} {
		ch := make(chan *Message, 1<<16)
		c.got[name] = ch
		go func() {
			for {
				raw, err := sock.Recv()
				if err != nil || ctx.Err() != nil {
					return
				}
				m, err := c.codec.decode(raw.Frames)
				if err != nil {
					t.Errorf("%s: %v", name, err)
					continue
				}
				ch <- m
			}
		}()
	}
	t.Cleanup(func() {
		cancel()
		for _, sock := range all {
			_ = sock.Close()
		}
	})
	if m := c.next("iopub"); m.Header.MsgType != "iopub_welcome" {
		t.Fatalf("the first message of the output is %s; want iopub_welcome", m.Header.MsgType)
	}
	return c
}

// ask sends a request and returns its id.
func (c *client) ask(sock zmq4.Socket, msgType string, content any) string {
	c.t.Helper()
	b, err := json.Marshal(content)
	if err != nil {
		c.t.Fatal(err)
	}
	m := &Message{Header: c.codec.header(msgType), Content: b}
	frames, err := c.codec.encode(m)
	if err != nil {
		c.t.Fatal(err)
	}
	if err := sock.Send(zmq4.NewMsgFrom(frames...)); err != nil {
		c.t.Fatal(err)
	}
	return m.Header.MsgID
}

func (c *client) next(channel string) *Message {
	c.t.Helper()
	m := c.within(channel, 20*time.Second)
	if m == nil {
		c.t.Fatalf("%s: nothing came within 20 s", channel)
	}
	return m
}

func (c *client) within(channel string, limit time.Duration) *Message {
	select {
	case m := <-c.got[channel]:
		return m
	case <-time.After(limit):
		return nil
	}
}

// reply waits for the answer to a request, and checks what must hold of every answer.
func (c *client) reply(channel, id string) map[string]any {
	c.t.Helper()
	for {
		m := c.next(channel)
		if parentOf(m) == id {
			return content(c.t, m)
		}
	}
}

func parentOf(m *Message) string {
	var h Header
	_ = json.Unmarshal(m.Parent, &h)
	return h.MsgID
}

func content(t testing.TB, m *Message) map[string]any {
	t.Helper()
	var v map[string]any
	if err := json.Unmarshal(m.Content, &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// outputs returns what was said for a request, from busy to idle, without these two. It fails if there is anything in
// between that belongs to another request.
func (c *client) outputs(id string) []*Message {
	c.t.Helper()
	var list []*Message
	busy := false
	for {
		m := c.next("iopub")
		state, _ := content(c.t, m)["execution_state"].(string)
		switch {
		case parentOf(m) != id && busy && m.Header.MsgType != "status" && m.Header.MsgType != "iopub_welcome": // control says busy and idle when it will
			c.t.Fatalf("a %s of another request came before idle", m.Header.MsgType)
		case parentOf(m) != id:
		case m.Header.MsgType == "status" && state == "busy":
			busy = true
		case m.Header.MsgType == "status" && state == "idle":
			return list
		case !busy:
			c.t.Fatalf("a %s came before busy", m.Header.MsgType)
		default:
			list = append(list, m)
		}
	}
}

func (c *client) execute(code string) (reply map[string]any, out []*Message) {
	c.t.Helper()
	id := c.ask(c.shell, "execute_request", map[string]any{"code": code, "silent": false, "store_history": true, "user_expressions": map[string]string{}, "allow_stdin": true, "stop_on_error": true})
	return c.reply("shell", id), c.outputs(id)
}

// say writes messages as one line each: type and what matters of the content.
func say(t testing.TB, list []*Message) string {
	var b strings.Builder
	for _, m := range list {
		v := content(t, m)
		switch m.Header.MsgType {
		case "execute_input":
			continue
		case "stream":
			fmt.Fprintf(&b, "%v:%q ", v["name"], v["text"])
		case "execute_result", "display_data", "update_display_data":
			d, _ := v["data"].(map[string]any)
			fmt.Fprintf(&b, "%s:%v ", m.Header.MsgType, d["text/plain"])
		default:
			fmt.Fprintf(&b, "%s ", m.Header.MsgType)
		}
	}
	return strings.TrimSpace(b.String())
}

func ipcPrefix(t testing.TB) string {
	dir, err := os.MkdirTemp("", "sn") // the path of a socket is short by law
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.RemoveAll(dir) })
	return filepath.Join(dir, "own", "k")
}
