package protocol

import (
	"io"
	"net"
	"sync"
	"time"
)

// sentinel is a subscriber of our own within the process. What it has seen, the library has taken from its queue: so
// that the queue, which has no bound, can be bounded, and waited for at the end.
type sentinel struct {
	mu      sync.Mutex
	cond    *sync.Cond
	script  []byte // what it still has to say
	skip    int    // of the library's greeting
	frames  framer
	settled bool // it is known to the library with its subscription
	closed  bool
}

func newSentinel() *sentinel {
	s := &sentinel{skip: greetingLen, script: greeting()}
	s.cond = sync.NewCond(&s.mu)
	ready := []byte("\x05READY\x0bSocket-Type\x00\x00\x00\x03SUB")
	s.script = append(s.script, flagCommand, byte(len(ready)))
	s.script = append(s.script, ready...)
	s.script = append(s.script, 0, 1, 1) // subscribe to everything
	return s
}

func (s *sentinel) Read(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if n := copy(p, s.script); n > 0 {
		s.script = s.script[n:]
		return n, nil
	}
	s.settled = true
	s.cond.Broadcast()
	for !s.closed {
		s.cond.Wait()
	}
	return 0, io.EOF
}

func (s *sentinel) Write(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	rest := p
	if s.skip > 0 {
		n := min(s.skip, len(rest))
		s.skip -= n
		rest = rest[n:]
	}
	before := s.frames.messages
	err := s.frames.follow(rest)
	if s.frames.messages != before {
		s.cond.Broadcast()
	}
	return len(p), err
}

// seen returns how many messages came. The first "message" was the library's READY.
func (s *sentinel) seenLocked() uint64 { return s.frames.messages - min(1, s.frames.messages) }

// await waits until n messages were seen, or until time is up; 0 is no limit.
func (s *sentinel) await(n uint64, limit time.Duration) bool {
	return s.wait(limit, func() bool { return s.seenLocked() >= n })
}

// awaitSettled waits until the library knows the sentinel. It adds a connection only between two messages: then all
// messages before have been handed to every subscriber.
func (s *sentinel) awaitSettled(limit time.Duration) bool {
	return s.wait(limit, func() bool { return s.settled })
}

func (s *sentinel) wait(limit time.Duration, done func() bool) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	late := false
	if limit > 0 && !done() {
		t := time.AfterFunc(limit, func() {
			s.mu.Lock()
			late = true
			s.cond.Broadcast()
			s.mu.Unlock()
		})
		defer t.Stop()
	}
	for !done() && !s.closed && !late {
		s.cond.Wait()
	}
	return done()
}

// Close ends the sentinel.
func (s *sentinel) Close() error {
	s.mu.Lock()
	s.closed = true
	s.cond.Broadcast()
	s.mu.Unlock()
	return nil
}

// The rest of net.Conn; nothing of it matters within a process.
func (s *sentinel) LocalAddr() net.Addr              { return &net.UnixAddr{Name: "sentinel", Net: "unix"} }
func (s *sentinel) RemoteAddr() net.Addr             { return s.LocalAddr() }
func (s *sentinel) SetDeadline(time.Time) error      { return nil }
func (s *sentinel) SetReadDeadline(time.Time) error  { return nil }
func (s *sentinel) SetWriteDeadline(time.Time) error { return nil }
