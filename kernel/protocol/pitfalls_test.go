package protocol

import (
	"bufio"
	"bytes"
	"io"
	"net"
	"os"
	"os/exec"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"
)

// firstMessage reads a subscriber's connection on to the first message.
func firstMessage(t *testing.T, s *served, c io.Reader) *Message {
	t.Helper()
	if _, err := io.ReadFull(c, make([]byte, greetingLen)); err != nil {
		t.Fatal(err)
	}
	if _, _, err := readReady(c); err != nil {
		t.Fatal(err)
	}
	return nextMessage(t, s, c)
}

func nextMessage(t *testing.T, s *served, c io.Reader) *Message {
	t.Helper()
	frames, err := readMessage(c)
	if err != nil {
		t.Fatal(err)
	}
	m, err := s.codec.decode(frames)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// subscription is the frame that subscribes to a topic.
func subscription(topic string) []byte {
	return append([]byte{0, byte(1 + len(topic)), 1}, topic...)
}

// A subscriber is welcomed with its topic, and gets what fits the topic.
//
// Source: the reference documentation of the protocol, 5.5, "Welcome message": the subscription is echoed in the content,
// and the parent header is empty.
func TestWelcome(t *testing.T) {
	s := serve(t, nil)
	for _, topic := range []string{"", "kernel.", "kernel." + s.codec.session + ".stream"} {
		c := peer(t, s.Addrs()[1], ready("SUB"), subscription(topic))
		m := firstMessage(t, s, c)
		if m.Header.MsgType != "iopub_welcome" || content(t, m)["subscription"] != topic || len(content(t, m)) != 1 || string(m.Parent) != "{}" || len(m.Identities) != 1 || string(m.Identities[0]) != topic {
			t.Errorf("%q: the first message is %s of %q: %s, parent %s", topic, m.Header.MsgType, m.Identities, m.Content, m.Parent)
		}
		s.publish("error", nil, map[string]any{}, true)
		s.publish("stream", nil, map[string]any{"name": "stdout", "text": topic}, true)
		want := []string{"error", "stream"}
		if strings.HasSuffix(topic, "stream") {
			want = want[1:]
		}
		for len(want) > 0 {
			m := nextMessage(t, s, c)
			if m.Header.MsgType == "iopub_welcome" || m.Header.MsgType == "status" {
				continue // of others whose topic fits, and of the start
			}
			if m.Header.MsgType != want[0] {
				t.Fatalf("%q: a %s came; want %v", topic, m.Header.MsgType, want)
			}
			want = want[1:]
		}
	}
}

// From its welcome on, a subscriber misses nothing, however much is being said when it comes.
func TestNothingIsMissedAfterTheWelcome(t *testing.T) {
	s := serve(t, nil)
	var published atomic.Int64
	stop, stopped := make(chan bool), make(chan bool)
	go func() {
		defer close(stopped)
		for i := 0; ; i++ {
			select {
			case <-stop:
				return
			default:
			}
			s.publish("stream", nil, map[string]any{"name": "stdout", "text": "x", "i": i}, true)
			published.Store(int64(i + 1))
		}
	}()
	for round := range 60 {
		conn := peer(t, s.Addrs()[1], ready("SUB"), subscription(""))
		c := bufio.NewReaderSize(conn, 1) // no bytes before they are asked for
		m := firstMessage(t, s, c)
		atWelcome := int(published.Load())
		if m.Header.MsgType != "iopub_welcome" {
			t.Fatalf("round %d: the first message is %s", round, m.Header.MsgType)
		}
		next := -1
		for range 30 {
			m := nextMessage(t, s, c)
			if m.Header.MsgType != "stream" {
				continue
			}
			i := int(content(t, m)["i"].(float64))
			if next < 0 && i > atWelcome+1 || next >= 0 && i != next {
				t.Fatalf("round %d: message %d came; want %d (%d had been published at the welcome)", round, i, next, atWelcome)
			}
			next = i + 1
		}
		_ = conn.Close()
	}
	close(stop)
	<-stopped
}

// What waits in the library's queue at the end, because the peer's backlog is full, leaves too.
func TestLingerOfTheQueue(t *testing.T) {
	s := serve(t, func(o *Options) { o.limits.backlog, o.limits.linger = 64<<10, 8*time.Second })
	c := subscribe(t, s)
	const n = 500
	for i := range n {
		s.publish("stream", nil, map[string]any{"name": "stdout", "text": strings.Repeat("y", 30_000), "i": i}, false)
	}
	s.Shutdown()
	time.Sleep(200 * time.Millisecond)
	for next := 0; next < n; {
		m := nextMessage(t, s, c)
		if m.Header.MsgType != "stream" {
			continue
		}
		if got := content(t, m)["i"]; got != float64(next) {
			t.Fatalf("message %v came as number %d", got, next)
		}
		next++
	}
}

// keptConn keeps the very slices that are written.
type keptConn struct {
	net.Conn
	got chan []byte
}

func (c *keptConn) Write(p []byte) (int, error) {
	c.got <- p
	return len(p), nil
}

func (c *keptConn) Close() error { return nil }

// A large frame goes to the system as it is; a small one is gathered into a buffer.
func TestLargeFramesAreNotCopied(t *testing.T) {
	for size, copied := range map[int]bool{100: true, largeFrame - 1: true, largeFrame: false, 200_000: false} {
		under := &keptConn{got: make(chan []byte, 64)}
		k := newConn(under, nil, &port{limits: limits{}.filled(), counters: &Counters{}, logf: t.Logf, conns: map[*conn]bool{}})
		body := bytes.Repeat([]byte{7}, size)
		head := []byte{flagLong, 0, 0, 0, 0, 0, byte(size >> 16), byte(size >> 8), byte(size)}
		for _, p := range [][]byte{greeting(), head, body} {
			if _, err := k.Write(p); err != nil {
				t.Fatal(err)
			}
		}
		var sent []byte
		same := false
		for len(sent) < len(head)+size {
			select {
			case p := <-under.got:
				sent = append(sent, p...)
				same = same || slices.ContainsFunc([]int{0, len(p) - 1}, func(i int) bool { return &p[i] == &body[0] || &p[i] == &body[size-1] })
			case <-time.After(5 * time.Second):
				t.Fatalf("%d of %d bytes came", len(sent), len(head)+size)
			}
		}
		if !bytes.Equal(sent, append(head, body...)) || same == copied {
			t.Errorf("a frame of %d bytes: copied %v; want %v", size, !same, copied)
		}
		_ = k.Close()
	}
}

// orphan makes a process of this test's binary the parent of a kernel, or a kernel.
const orphan = "SWANNECK_TEST_ORPHAN"

// A kernel whose parent process has ended ends, although nobody told it.
func TestOrphan(t *testing.T) {
	again := func(role string) *exec.Cmd {
		cmd := exec.Command(os.Args[0], "-test.run=^TestOrphan$")
		cmd.Env = append(os.Environ(), orphan+"="+role)
		cmd.Stderr = os.Stderr
		return cmd
	}
	switch os.Getenv(orphan) {
	case "parent":
		cmd := again("kernel")
		cmd.Stdout = os.Stdout
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		_, _ = os.Stdin.Read(make([]byte, 1)) // until the test has seen the kernel
		os.Exit(0)
	case "kernel":
		s := serve(t, func(o *Options) { o.OutliveParent = false })
		works(t, s)
		_, _ = os.Stdout.WriteString("at work\n")
		err := <-s.ended
		s.ended <- err
		_, _ = os.Stdout.WriteString("ended\n")
		return
	}
	cmd := again("parent")
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	lines := bufio.NewReader(out)
	if line, err := lines.ReadString('\n'); line != "at work\n" {
		t.Fatalf("%q, %v", line, err)
	}
	if err := in.Close(); err != nil {
		t.Fatal(err)
	}
	said := make(chan string, 1)
	go func() {
		line, _ := lines.ReadString('\n')
		said <- line
	}()
	select {
	case line := <-said:
		if line != "ended\n" {
			t.Errorf("the kernel said %q", line)
		}
	case <-time.After(10 * time.Second):
		t.Error("the kernel outlives its parent")
	}
	_ = cmd.Wait()
}
