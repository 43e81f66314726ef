package protocol

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/go-zeromq/zmq4"
)

// Source: RFC 4231, test case 2: key "Jefe", data "what do ya want for nothing?".
func TestSignature(t *testing.T) {
	c := newCodec("Jefe")
	got := string(c.signature([][]byte{[]byte("what do ya "), []byte("want "), []byte("for "), []byte("nothing?")}))
	if want := "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"; got != want {
		t.Errorf("signature = %s; RFC 4231, case 2, gives %s", got, want)
	}
	if got := newCodec("").signature(nil); len(got) != 0 {
		t.Errorf("without a key the signature is %q; want nothing", got)
	}
}

func TestDecode(t *testing.T) {
	c := newCodec("k")
	parts := [][]byte{[]byte(`{ "msg_type":"x_request",  "msg_id":"1" }`), []byte("{}"), []byte("{}"), []byte(`{"a" : 1.0}`)}
	frames := append([][]byte{[]byte("id"), delimiter, c.signature(parts)}, append(parts, []byte("buffer"))...)
	m, err := c.decode(frames)
	if err != nil || m.Header.MsgType != "x_request" || len(m.Identities) != 1 || len(m.Buffers) != 1 || string(m.Content) != `{"a" : 1.0}` {
		t.Fatalf("%+v, %v", m, err)
	}
	for i := 3; i < 7; i++ { // one space more anywhere, and the signature does not fit
		changed := append([][]byte{}, frames...)
		changed[i] = append([]byte(" "), changed[i]...)
		if _, err := c.decode(changed); !errors.Is(err, errSignature) {
			t.Errorf("frame %d changed: %v", i, err)
		}
	}
	upper := append([][]byte{}, frames...)
	upper[2] = bytes.ToUpper(upper[2])
	if _, err := c.decode(upper); !errors.Is(err, errSignature) {
		t.Errorf("upper case: %v", err)
	}
	for n := range 7 {
		if _, err := c.decode(frames[:n]); !errors.Is(err, errShape) && !errors.Is(err, errSignature) {
			t.Errorf("%d frames: %v", n, err)
		}
	}
}

func TestSignaturesForget(t *testing.T) {
	var s signatures
	for i := range remembered + 10 {
		if !s.fresh(fmt.Append(nil, i)) {
			t.Fatal(i)
		}
	}
	if s.fresh(fmt.Append(nil, remembered)) || len(s.seen) != remembered {
		t.Errorf("%d are remembered; want %d", len(s.seen), remembered)
	}
	if !s.fresh(fmt.Append(nil, 0)) {
		t.Error("the first is still remembered")
	}
}

// What is forged, replayed or malformed is counted and has no effect.
func TestRefusedMessages(t *testing.T) {
	s := serve(t, nil)
	c := connect(t, s)
	c.execute("n := 0")
	m := &Message{Header: c.codec.header("execute_request"), Content: json.RawMessage(`{"code":"n++","silent":false}`)}
	good, err := c.codec.encode(m)
	if err != nil {
		t.Fatal(err)
	}
	forged := append([][]byte{}, good...)
	forged[1] = []byte(strings.Repeat("0", 64))
	unsigned := append([][]byte{}, good...)
	unsigned[1] = nil
	for _, frames := range [][][]byte{good, good, forged, unsigned, {[]byte("nonsense")}, {{}}, good[:4]} {
		if err := c.shell.Send(zmq4.NewMsgFrom(frames...)); err != nil {
			t.Fatal(err)
		}
	}
	if r, out := c.execute("n"); say(t, out) != "execute_result:1" {
		t.Errorf("%v, %s; want the request to have run once", r, say(t, out))
	}
	for what, n := range map[string][2]uint64{"forged": {s.Counters.Forged.Load(), 2}, "replayed": {s.Counters.Replayed.Load(), 1}, "malformed": {s.Counters.Malformed.Load(), 3}} {
		if n[0] != n[1] {
			t.Errorf("%d were counted as %s; want %d", n[0], what, n[1])
		}
	}
}

func TestUnsigned(t *testing.T) {
	c := connect(t, serve(t, func(o *Options) { o.Connection.Key = "" }))
	if r, out := c.execute("1 + 1"); r["status"] != "ok" || say(t, out) != "execute_result:2" {
		t.Errorf("%v, %s", r, say(t, out))
	}
}

func TestConnectionFile(t *testing.T) {
	for _, c := range []Connection{{Transport: "udp"}, {SignatureScheme: "hmac-md5"}, {ShellPort: 70000}, {Transport: "ipc"}} {
		if err := c.check(); err == nil {
			t.Errorf("%+v was accepted", c)
		}
	}
	for ip, warned := range map[string]bool{"127.0.0.1": false, "::1": false, "localhost": false, "0.0.0.0": true, "*": true, "192.0.2.7": true} {
		c := Connection{Transport: "tcp", IP: ip}
		if got := c.warning() != ""; got != warned {
			t.Errorf("%s: warned %v; want %v", ip, got, warned)
		}
	}
}

func TestAbortedByDate(t *testing.T) {
	failed := time.Now()
	k := &Kernel{abortAt: failed}
	for _, x := range []struct {
		sent, received time.Duration
		want           bool
	}{{-2, -1, true}, {-1, 1, true}, {1, 2, false}, {-1, 2000, false}} {
		m := &Message{received: failed.Add(x.received * time.Millisecond)}
		m.Header.Date = failed.Add(x.sent * time.Millisecond).UTC().Format(time.RFC3339Nano)
		if got := k.aborted(m); got != x.want {
			t.Errorf("sent %d ms and received %d ms after the failure: aborted %v; want %v", x.sent, x.received, got, x.want)
		}
	}
	if k.aborted(&Message{received: failed.Add(time.Millisecond)}) {
		t.Error("a request without a date that came after the failure was aborted")
	}
}

func FuzzDecode(f *testing.F) {
	c := newCodec("")
	f.Add([]byte("<IDS|MSG>"), []byte(`{"msg_type":"a"}`), []byte("{}"), []byte("{}"))
	f.Fuzz(func(t *testing.T, a, header, parent, body []byte) {
		m, err := c.decode([][]byte{a, delimiter, nil, header, parent, []byte("{}"), body})
		if err != nil {
			return
		}
		frames, err := c.encode(m)
		if err != nil {
			t.Fatal(err)
		}
		if again, err := c.decode(frames); err != nil || again.Header != m.Header {
			t.Fatalf("%v: %+v, then %+v", err, m.Header, again)
		}
	})
}

// However the bytes are cut, the frames are the same.
func FuzzFramer(f *testing.F) {
	f.Add([]byte{1, 1, 'a', 0, 2, 'b', 'c', 2, 0, 0, 0, 0, 0, 0, 0, 1, 'x'}, byte(3))
	f.Fuzz(func(t *testing.T, stream []byte, cut byte) {
		run := func(step int) (n uint64, frames []string, bad bool) {
			fr := framer{most: 1 << 16}
			fr.onFrame = func(b []byte, more bool) { frames = append(frames, fmt.Sprint(more, string(b))) }
			for at := 0; at < len(stream); at += step {
				if fr.follow(stream[at:min(at+step, len(stream))]) != nil {
					return fr.messages, frames, true
				}
			}
			return fr.messages, frames, false
		}
		n1, f1, b1 := run(max(1, len(stream)))
		n2, f2, b2 := run(int(cut)%7 + 1)
		if n1 != n2 || b1 != b2 || fmt.Sprint(f1) != fmt.Sprint(f2) {
			t.Fatalf("whole: %d %v %v; cut: %d %v %v", n1, f1, b1, n2, f2, b2)
		}
	})
}
