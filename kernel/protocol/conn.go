package protocol

import (
	"bufio"
	"errors"
	"io"
	"net"
	"sync"
	"time"
)

// largeFrame is from where on a frame goes to the system as it is, not through the buffer.
const largeFrame = 64 << 10

// conn is a connection as the library sees it, after its handshake. The library's own greeting is swallowed, as it was
// sent before. Writes are gathered into whole messages, and sent by a goroutine of the connection, so that one peer that
// stops reading does not hold up others until it holds a large backlog.
type conn struct {
	net.Conn
	port *port
	in   *bufio.Reader

	inFrames framer
	topic    []byte // of the subscription that is being handed to the library

	mu        sync.Mutex
	cond      *sync.Cond
	skip      int // bytes of the library's greeting still to be swallowed
	outFrames framer
	queue     net.Buffers
	tailOwned bool // the last element of queue is a buffer of ours that may grow
	queued    int
	pushing   bool // the goroutine is at it
	paused    bool // the output waits for a subscription of this peer
	flush     bool // a message is whole
	err       error
	moved     time.Time // when bytes last left
	closed    bool
	once      sync.Once
}

func newConn(c net.Conn, seen []byte, p *port) *conn {
	k := &conn{Conn: c, port: p, skip: greetingLen, moved: time.Now()}
	k.in = bufio.NewReaderSize(io.MultiReader(&readBack{seen}, c), largeFrame)
	k.cond = sync.NewCond(&k.mu)
	k.inFrames.most = p.limits.message
	if p.output != nil {
		k.inFrames.onFrame = func(first []byte, more bool) {
			if !more && len(first) > 0 && first[0] == 1 && len(first) < keepBody {
				k.topic = append([]byte{}, first[1:]...)
			}
		}
	}
	go k.push()
	return k
}

// readBack gives back what was read during the handshake.
type readBack struct{ b []byte }

func (o *readBack) Read(p []byte) (int, error) {
	if len(o.b) == 0 {
		return 0, io.EOF
	}
	n := copy(p, o.b)
	o.b = o.b[n:]
	return n, nil
}

// Read hands bytes to the library. It is called by one goroutine. A claim beyond the limit ends the connection before
// the library acts on it.
func (k *conn) Read(p []byte) (int, error) {
	if k.topic != nil { // the library has registered it, or it would not read on
		if k.resume() {
			k.port.output.welcome(k.topic)
			k.port.output.resume()
		}
		k.topic = nil
	}
	n, err := k.in.Read(p)
	if n > 0 {
		if k.skipIn(p[:n]) {
			k.port.counters.Oversized.Add(1)
			k.port.logf("a peer was cut off: %v (%d MiB)", errTooLarge, k.port.limits.message>>20)
			_ = k.Close()
			return 0, io.EOF // the library takes this for the end of the connection
		}
	}
	if err != nil {
		_ = k.Close()
	}
	if k.topic != nil {
		k.port.output.pause()
		k.mu.Lock()
		k.paused = !k.closed
		gone := k.closed
		k.mu.Unlock()
		if gone {
			k.port.output.resume()
		}
	}
	return n, err
}

// resume says whether the output has to be resumed, and takes that duty.
func (k *conn) resume() bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	was := k.paused
	k.paused = false
	return was
}

// skipIn follows what is read, after the greeting, and says whether it is too large.
func (k *conn) skipIn(p []byte) bool {
	if k.inFrames.greeted < greetingLen {
		n := min(greetingLen-k.inFrames.greeted, len(p))
		k.inFrames.greeted += n
		p = p[n:]
	}
	return k.inFrames.follow(p) != nil
}

// Write takes bytes from the library. It waits while the peer's backlog is full, as long as the peer takes something.
func (k *conn) Write(p []byte) (int, error) {
	total := len(p)
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.skip > 0 {
		n := min(k.skip, len(p))
		k.skip -= n
		p = p[n:]
	}
	if k.err != nil {
		return 0, k.err
	}
	if len(p) == 0 {
		return total, nil
	}
	before := k.outFrames.messages
	if err := k.outFrames.follow(p); err != nil {
		return 0, err
	}
	switch {
	case len(p) >= largeFrame: // ours to keep: encoded messages are not changed
		k.queue = append(k.queue, p)
		k.tailOwned = false
	case k.tailOwned && cap(k.queue[len(k.queue)-1])-len(k.queue[len(k.queue)-1]) >= len(p):
		last := len(k.queue) - 1
		k.queue[last] = append(k.queue[last], p...)
	default:
		k.queue = append(k.queue, append(make([]byte, 0, max(4096, len(p))), p...))
		k.tailOwned = true
	}
	if k.queued == 0 {
		k.moved = time.Now()
	}
	k.queued += len(p)
	if k.outFrames.messages != before || k.queued > k.port.limits.backlog {
		k.flush = true
		k.cond.Broadcast()
	}
	for k.queued > k.port.limits.backlog && k.err == nil {
		left := k.port.limits.stall - time.Since(k.moved)
		if left <= 0 {
			k.port.counters.Stalled.Add(1)
			k.port.logf("a peer was cut off: it took nothing for %v while %d bytes waited for it", k.port.limits.stall, k.queued)
			k.err = io.EOF
			go k.Close()
			break
		}
		t := time.AfterFunc(left, k.cond.Broadcast)
		k.cond.Wait()
		t.Stop()
	}
	if k.err != nil {
		return 0, k.err
	}
	return total, nil
}

// push sends what is queued.
func (k *conn) push() {
	k.mu.Lock()
	defer k.mu.Unlock()
	for {
		for !k.closed && !(k.flush && k.queued > 0) {
			k.cond.Wait()
		}
		if k.closed {
			return
		}
		batch := k.queue
		k.queue, k.tailOwned, k.flush, k.pushing = nil, false, false, true
		k.mu.Unlock()
		err := k.send(batch)
		k.mu.Lock()
		k.pushing = false
		if err != nil && k.err == nil {
			k.err = errors.Join(io.EOF, err) // the library takes this for the end of the connection
		}
		k.cond.Broadcast()
		if k.err != nil {
			k.queue, k.queued = nil, 0
			k.cond.Broadcast()
			_ = k.Conn.Close()
			return
		}
	}
}

// send writes buffers in pieces, so that a slow peer is seen to move.
func (k *conn) send(batch net.Buffers) error {
	const piece = 256 << 10
	for len(batch) > 0 {
		var part net.Buffers
		size := 0
		for len(batch) > 0 && size < piece && len(part) < 512 {
			b := batch[0]
			if room := piece - size; len(b) > room {
				part = append(part, b[:room])
				batch[0] = b[room:]
				size += room
				continue
			}
			part = append(part, b)
			size += len(b)
			batch = batch[1:]
		}
		n, err := part.WriteTo(k.Conn)
		k.mu.Lock()
		k.queued -= int(n)
		k.moved = time.Now()
		k.cond.Broadcast()
		k.mu.Unlock()
		if err != nil {
			return err
		}
	}
	return nil
}

// empty says that nothing waits and no message is half written.
func (k *conn) empty() bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	return k.err != nil || k.closed || k.queued == 0 && !k.pushing && k.outFrames.between()
}

// Close ends the connection.
func (k *conn) Close() error {
	var err error
	k.once.Do(func() {
		k.port.forget(k)
		if k.resume() {
			k.port.output.resume()
		}
		k.mu.Lock()
		k.closed = true
		if k.err == nil {
			k.err = io.EOF
		}
		k.cond.Broadcast()
		k.mu.Unlock()
		err = k.Conn.Close()
	})
	return err
}
