package protocol

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/go-zeromq/zmq4"
)

func ready(kind string) []byte {
	body := append([]byte("\x05READY\x0bSocket-Type\x00\x00\x00"), byte(len(kind)))
	body = append(body, kind...)
	return append([]byte{flagCommand, byte(len(body))}, body...)
}

// peer connects without a sockets library, and says what it is told to after its greeting.
func peer(t testing.TB, a net.Addr, say ...[]byte) net.Conn {
	t.Helper()
	c, err := net.Dial(a.Network(), a.String())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = c.Close() })
	for _, b := range append([][]byte{greeting()}, say...) {
		if _, err := c.Write(b); err != nil {
			t.Fatal(err)
		}
	}
	return c
}

// ended waits until the other side has closed a connection.
func ended(t testing.TB, c net.Conn) {
	t.Helper()
	if err := c.SetReadDeadline(time.Now().Add(5 * time.Second)); err != nil {
		t.Fatal(err)
	}
	_, err := io.Copy(io.Discard, c)
	if e, ok := err.(net.Error); ok && e.Timeout() {
		t.Error("the connection was left open")
	}
}

func works(t testing.TB, s *served) {
	t.Helper()
	c := connect(t, s)
	if r, out := c.execute("6 * 7"); r["status"] != "ok" || say(t, out) != "execute_result:42" {
		t.Errorf("%v, %s", r, say(t, out))
	}
}

// Peers that connect and say nothing keep nobody out, and are turned away.
func TestSilentPeers(t *testing.T) {
	s := serve(t, func(o *Options) { o.limits.handshake = 700 * time.Millisecond })
	var silent []net.Conn
	for _, a := range s.Addrs() {
		for range 5 {
			c, err := net.Dial(a.Network(), a.String())
			if err != nil {
				t.Fatal(err)
			}
			defer c.Close()
			silent = append(silent, c)
		}
	}
	start := time.Now()
	works(t, s)
	if d := time.Since(start); d > 650*time.Millisecond {
		t.Errorf("others had to wait %v", d)
	}
	for _, c := range silent {
		ended(t, c)
	}
	if n := s.Counters.Handshakes.Load(); n != uint64(len(silent)) {
		t.Errorf("%d were counted; want %d", n, len(silent))
	}
}

// Peers that say something else, or lie about lengths, are turned away.
func TestStrangePeers(t *testing.T) {
	s := serve(t, nil)
	a := s.Addrs()[0]
	liar := append([]byte{flagCommand, 10}, "\x05READY\xc8abc"...)
	long := append([]byte{flagCommand, 16}, "\x05READY\x01a\xff\xff\xff\xffabcd"...)
	huge := append([]byte{flagCommand | flagLong}, bytes.Repeat([]byte{0x7f}, 8)...)
	for i, x := range [][]byte{liar, long, huge, ready("SUB"), {0, 1, 0}} {
		ended(t, peer(t, a, x))
		if n := s.Counters.Handshakes.Load(); n != uint64(i+1) {
			t.Errorf("after %q %d were counted; want %d", x, n, i+1)
		}
	}
	c, err := net.Dial(a.Network(), a.String())
	if err != nil {
		t.Fatal(err)
	}
	defer c.Close()
	fmt.Fprint(c, "GET / HTTP/1.1\r\nHost: localhost\r\n\r\n")
	ended(t, c)
	works(t, s)
}

// A frame that claims 2^50 bytes, and a message of endless frames, cost their peer the connection and nothing else.
func TestHugeClaims(t *testing.T) {
	s := serve(t, func(o *Options) { o.limits.message = 1 << 20 })
	head := append([]byte{flagLong}, make([]byte, 8)...)
	binary.BigEndian.PutUint64(head[1:], 1<<50)
	for i, a := range s.Addrs() {
		kind := "DEALER"
		if i == 1 {
			kind = "SUB"
		}
		ended(t, peer(t, a, ready(kind), head))
	}
	c := peer(t, s.Addrs()[0], ready("DEALER"))
	for range 40_000 {
		if _, err := c.Write([]byte{flagMore, 0}); err != nil {
			break
		}
	}
	ended(t, c)
	if n := s.Counters.Oversized.Load(); n != 6 {
		t.Errorf("%d were counted; want 6", n)
	}
	works(t, s)
}

// A subscriber that does not read is cut off; the others get everything, and new ones can come.
func TestStoppedSubscriber(t *testing.T) {
	s := serve(t, func(o *Options) { o.limits.backlog, o.limits.stall = 1<<20, 1500*time.Millisecond })
	stopped := peer(t, s.Addrs()[1], ready("SUB"), []byte{0, 1, 1})
	c := connect(t, s)
	const n = 3000
	text := strings.Repeat("x", 10_000)
	start := time.Now()
	for i := range n {
		s.publish("stream", nil, map[string]any{"name": "stdout", "text": text, "i": i}, true)
	}
	for i := range n {
		m := c.next("iopub")
		for m.Header.MsgType != "stream" {
			m = c.next("iopub")
		}
		if got := content(t, m)["i"]; got != float64(i) {
			t.Fatalf("message %d came as number %d", int(got.(float64)), i)
		}
	}
	if d := time.Since(start); d > 15*time.Second {
		t.Errorf("the others waited %v", d)
	}
	if n := s.Counters.Stalled.Load(); n != 1 {
		t.Errorf("%d were cut off; want 1", n)
	}
	ended(t, stopped)
	works(t, s)
}

// subscribe connects a subscriber without a library and reads on to its welcome.
func subscribe(t testing.TB, s *served) net.Conn {
	t.Helper()
	c := peer(t, s.Addrs()[1], ready("SUB"), []byte{0, 1, 1})
	if _, err := io.ReadFull(c, make([]byte, greetingLen)); err != nil {
		t.Fatal(err)
	}
	for {
		frames, err := readMessage(c)
		if err != nil {
			t.Fatal(err)
		}
		if bytes.Contains(bytes.Join(frames, nil), []byte("iopub_welcome")) {
			return c
		}
	}
}

// Nothing is lost at the end: what was said before a shutdown arrives, even where the reader begins after it.
func TestLinger(t *testing.T) {
	s := serve(t, func(o *Options) { o.limits.linger = 8 * time.Second }) // under the race detector reading takes long
	c := subscribe(t, s)
	const n = 1000
	for i := range n {
		s.publish("stream", nil, map[string]any{"name": "stdout", "text": strings.Repeat("y", 12_000), "i": i}, true)
	}
	s.Shutdown()
	time.Sleep(200 * time.Millisecond)
	for next := 0; next < n; {
		frames, err := readMessage(c)
		if err != nil {
			t.Fatalf("%d of %d messages arrived: %v", next, n, err)
		}
		m, err := s.codec.decode(frames)
		if err != nil {
			t.Fatal(err)
		}
		if m.Header.MsgType != "stream" {
			continue
		}
		if got := content(t, m)["i"]; got != float64(next) {
			t.Fatalf("message %v came as number %d", got, next)
		}
		next++
	}
}

// A reader that is slow gets a hundred thousand outputs, all of them and in order, and whoever writes waits for it.
func TestSlowReader(t *testing.T) {
	s := serve(t, func(o *Options) { o.limits.backlog = 256 << 10 })
	c := subscribe(t, s)
	const n = 100_000
	var written atomic.Int64
	go func() {
		for i := range n {
			s.publish("stream", nil, map[string]any{"name": "stdout", "text": "z", "i": i}, true)
			written.Add(1)
		}
		s.status(nil, "idle")
	}()
	time.Sleep(300 * time.Millisecond)
	if w := written.Load(); w > n/2 {
		t.Errorf("%d messages were taken while nobody read", w)
	}
	next := 0
	for {
		frames, err := readMessage(c)
		if err != nil {
			t.Fatalf("after %d: %v", next, err)
		}
		m, err := s.codec.decode(frames)
		if err != nil {
			t.Fatal(err)
		}
		var v struct {
			I     *int   `json:"i"`
			State string `json:"execution_state"`
		}
		if err := json.Unmarshal(m.Content, &v); err != nil {
			t.Fatal(err)
		}
		if v.State == "idle" {
			break
		}
		if v.I == nil {
			continue
		}
		if *v.I != next {
			t.Fatalf("message %d came as number %d", *v.I, next)
		}
		next++
		if next%1000 == 0 {
			time.Sleep(time.Millisecond)
		}
	}
	if next != n {
		t.Errorf("%d of %d came before idle", next, n)
	}
}

// readMessage reads the frames of a message from a connection without a library.
func readMessage(r io.Reader) ([][]byte, error) {
	var frames [][]byte
	for {
		head := make([]byte, 2)
		if _, err := io.ReadFull(r, head); err != nil {
			return nil, err
		}
		size := uint64(head[1])
		if head[0]&flagLong != 0 {
			rest := make([]byte, 7)
			if _, err := io.ReadFull(r, rest); err != nil {
				return nil, err
			}
			size = binary.BigEndian.Uint64(append([]byte{head[1]}, rest...))
		}
		body := make([]byte, size)
		if _, err := io.ReadFull(r, body); err != nil {
			return nil, err
		}
		frames = append(frames, body)
		if head[0]&flagMore == 0 {
			return frames, nil
		}
	}
}

// A message of many frames leaves in one piece, and a large frame without being copied.
func TestCoalescing(t *testing.T) {
	under := &countingConn{}
	k := newConn(under, nil, &port{limits: limits{}.filled(), counters: &Counters{}, logf: t.Logf, conns: map[*conn]bool{}})
	defer k.Close()
	write := func(p []byte) {
		t.Helper()
		if _, err := k.Write(p); err != nil {
			t.Fatal(err)
		}
	}
	write(greeting()) // swallowed
	want := []byte{}
	for i := range 7 {
		head := []byte{flagMore, 3}
		if i == 6 {
			head[0] = 0
		}
		write(head)
		time.Sleep(2 * time.Millisecond) // for whoever sends before the message is whole
		write([]byte("abc"))
		want = append(append(want, head...), "abc"...)
	}
	for until := time.Now().Add(5 * time.Second); !k.empty() && time.Now().Before(until); {
		time.Sleep(time.Millisecond)
	}
	under.mu.Lock()
	defer under.mu.Unlock()
	if !bytes.Equal(under.got, want) || under.calls != 1 {
		t.Errorf("%d writes of %q; want one of %q", under.calls, under.got, want)
	}
}

type countingConn struct {
	net.Conn
	mu    sync.Mutex
	got   []byte
	calls int
}

func (c *countingConn) Write(p []byte) (int, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.got = append(c.got, p...)
	c.calls++
	return len(p), nil
}

func (c *countingConn) Close() error { return nil }

// A thousand peers come and go; nothing of them stays.
func TestReconnects(t *testing.T) {
	s := serve(t, nil)
	works(t, s)
	time.Sleep(50 * time.Millisecond)
	before := runtime.NumGoroutine()
	for i := range 1000 {
		kind, a := "DEALER", s.Addrs()[0]
		if i%2 == 1 {
			kind, a = "SUB", s.Addrs()[1]
		}
		c := peer(t, a, ready(kind))
		if i%2 == 1 {
			if _, err := c.Write([]byte{0, 1, 1}); err != nil {
				t.Fatal(err)
			}
		}
		if i%3 == 0 {
			if _, err := io.ReadFull(c, make([]byte, greetingLen)); err != nil {
				t.Fatal(err)
			}
		}
		_ = c.Close()
	}
	after := 0
	for until := time.Now().Add(5 * time.Second); time.Now().Before(until); time.Sleep(20 * time.Millisecond) {
		if after = runtime.NumGoroutine(); after <= before+5 {
			break
		}
	}
	if after > before+5 {
		t.Errorf("%d goroutines before, %d after", before, after)
	}
	works(t, s)
}

// Two front ends at once see each other's output, and each gets its own replies.
func TestTwoClients(t *testing.T) {
	s := serve(t, nil)
	a, b := connect(t, s), connect(t, s)
	r, _ := a.execute("x := 5")
	if r["status"] != "ok" {
		t.Fatal(r)
	}
	id := b.ask(b.shell, "execute_request", map[string]any{"code": "x"})
	if r := b.reply("shell", id); r["status"] != "ok" {
		t.Error(r)
	}
	for _, c := range []*client{a, b} {
		if got := say(t, c.outputs(id)); got != "execute_result:5" {
			t.Errorf("%s", got)
		}
	}
	if m := a.within("shell", 50*time.Millisecond); m != nil {
		t.Errorf("a %s went to the wrong peer", m.Header.MsgType)
	}
}

func TestBigFrames(t *testing.T) {
	got := make(chan [][]byte, 1)
	s := serve(t, func(o *Options) {
		o.Targets = map[string]Target{"big": func(c *Comm, _ json.RawMessage) error {
			c.Receive = func(_ json.RawMessage, buffers [][]byte) {
				got <- buffers
				c.Send(map[string]any{"n": len(buffers[0])})
			}
			return nil
		}}
	})
	c := connect(t, s)
	c.ask(c.shell, "comm_open", map[string]any{"comm_id": "b", "target_name": "big", "data": map[string]any{}})
	m := &Message{Header: c.codec.header("comm_msg"), Content: json.RawMessage(`{"comm_id":"b","data":{}}`), Buffers: [][]byte{bytes.Repeat([]byte{7}, 64<<20)}}
	frames, err := c.codec.encode(m)
	if err != nil {
		t.Fatal(err)
	}
	if err := c.shell.Send(zmq4.NewMsgFrom(frames...)); err != nil {
		t.Fatal(err)
	}
	for {
		if m := c.next("iopub"); m.Header.MsgType == "comm_msg" {
			break
		}
	}
	if b := <-got; len(b) != 1 || !bytes.Equal(b[0], m.Buffers[0]) {
		t.Errorf("%d buffers came", len(b))
	}
}
