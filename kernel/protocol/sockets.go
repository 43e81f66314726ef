package protocol

import (
	"context"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"sync"

	"github.com/go-zeromq/zmq4"
)

var (
	dealers     = []string{"DEALER", "REQ", "ROUTER"} // kinds of sockets that may connect to a ROUTER
	subscribers = []string{"SUB", "XSUB"}             // and to an XPUB
)

// socket is one of the five sockets, with its port.
type socket struct {
	name string
	zmq  zmq4.Socket
	port *port
	seen signatures // used by the goroutine that receives
	k    *Kernel
}

// openSocket listens for a socket. pub is nil but for the output.
func (k *Kernel) openSocket(name string, number int, pub *publisher) (*socket, error) {
	under, err := k.opts.Connection.listen(number)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	peers := dealers
	if pub != nil {
		peers = subscribers
	}
	p, err := newPort(under, peers, k.opts.limits, &k.Counters, k.logf)
	if err != nil {
		return nil, errors.Join(err, under.Close())
	}
	p.output = pub
	quiet := zmq4.WithLogger(log.New(io.Discard, "", 0))
	s := &socket{name: name, port: p, k: k}
	if pub != nil {
		pub.socket = s
	}
	if pub != nil {
		s.zmq = zmq4.NewXPub(context.Background(), quiet)
	} else {
		s.zmq = zmq4.NewRouter(context.Background(), quiet)
	}
	if err := s.zmq.Listen(p.endpoint()); err != nil {
		return nil, errors.Join(fmt.Errorf("protocol: %s: %w", name, err), p.Close())
	}
	return s, nil
}

// receive returns the next message that is one. It fails when the socket is closed.
func (s *socket) receive() (*Message, error) {
	for {
		raw, err := s.zmq.Recv()
		if err != nil {
			return nil, err
		}
		if raw.Type == zmq4.CmdMsg {
			continue // a command of the transport
		}
		m, err := s.k.codec.decode(raw.Frames)
		switch {
		case errors.Is(err, errSignature):
			s.k.Counters.Forged.Add(1)
		case err != nil:
			s.k.Counters.Malformed.Add(1)
		case len(s.k.codec.key) > 0 && !s.seen.fresh(raw.Frames[len(m.Identities)+1]):
			err = errReplay
			s.k.Counters.Replayed.Add(1)
		}
		if err != nil {
			s.k.logf("%s: a message was refused: %v", s.name, err)
			continue
		}
		return m, nil
	}
}

// send sends a message. A peer that is gone is no error of ours.
func (s *socket) send(m *Message) {
	frames, err := s.k.codec.encode(m)
	if err != nil {
		s.k.logf("%s: %v", s.name, err)
		return
	}
	if err := s.zmq.SendMulti(zmq4.NewMsgFrom(frames...)); err != nil {
		s.k.logf("%s: a %s did not reach its peer: %v", s.name, m.Header.MsgType, err)
	}
}

func (s *socket) close() error {
	s.port.drain()
	err := s.zmq.Close()
	if errors.Is(err, net.ErrClosed) {
		err = nil
	}
	return err
}

// echo returns what comes in as it came, until the socket is closed.
func (s *socket) echo() {
	for {
		raw, err := s.zmq.Recv()
		if err != nil {
			return
		}
		if raw.Type == zmq4.CmdMsg {
			continue
		}
		if err := s.zmq.Send(zmq4.NewMsgFrom(raw.Frames...)); err != nil {
			s.k.logf("heartbeat: %v", err)
		}
	}
}

// outbox holds output on its way to the one goroutine that sends it.
type outbox struct {
	mu     sync.Mutex
	cond   *sync.Cond
	first  []*Message // go before the list
	list   []*Message
	bytes  int
	closed bool
}

// Cell output waits while this much is on its way.
const (
	mostWaiting      = 256     // messages
	mostWaitingBytes = 8 << 20 // of content
)

func newOutbox() *outbox {
	o := &outbox{}
	o.cond = sync.NewCond(&o.mu)
	return o
}

// put hands a message on. patient says that the sender may be made to wait.
func (o *outbox) put(m *Message, patient bool) {
	o.mu.Lock()
	defer o.mu.Unlock()
	for patient && !o.closed && (len(o.list) >= mostWaiting || o.bytes >= mostWaitingBytes) {
		o.cond.Wait()
	}
	if o.closed {
		return
	}
	o.list = append(o.list, m)
	o.bytes += len(m.Content)
	o.cond.Broadcast()
}

// jump hands on a message that goes before all others.
func (o *outbox) jump(m *Message) {
	o.mu.Lock()
	defer o.mu.Unlock()
	if !o.closed {
		o.first = append(o.first, m)
		o.cond.Broadcast()
	}
}

// wait waits until something is on its way; false says that nothing will be any more.
func (o *outbox) wait() bool {
	o.mu.Lock()
	defer o.mu.Unlock()
	for len(o.first)+len(o.list) == 0 && !o.closed {
		o.cond.Wait()
	}
	return len(o.first)+len(o.list) > 0
}

// take returns the next message, or nil.
func (o *outbox) take() *Message {
	o.mu.Lock()
	defer o.mu.Unlock()
	from := &o.first
	if len(*from) == 0 {
		from = &o.list
	}
	if len(*from) == 0 {
		return nil
	}
	m := (*from)[0]
	(*from)[0] = nil
	*from = (*from)[1:]
	if from == &o.list {
		o.bytes -= len(m.Content)
		o.cond.Broadcast()
	}
	return m
}

func (o *outbox) close() {
	o.mu.Lock()
	o.closed = true
	o.cond.Broadcast()
	o.mu.Unlock()
}
