package protocol

import (
	"sync"
	"time"

	"github.com/go-zeromq/zmq4"
)

// publisher is the output: one goroutine sends everything that subscribers get, in order.
type publisher struct {
	socket *socket
	box    *outbox
	watch  *sentinel
	sent   uint64     // messages handed to the library; under gate
	gate   sync.Mutex // held while one is handed over, and while a subscription is
	done   chan struct{}
}

// openPublisher opens the output socket and starts its goroutine.
func (k *Kernel) openPublisher(number int) (*publisher, error) {
	p := &publisher{box: newOutbox(), watch: newSentinel(), done: make(chan struct{})}
	s, err := k.openSocket("iopub", number, p)
	if err != nil {
		return nil, err
	}
	p.socket = s
	go s.port.hand(p.watch)
	p.watch.awaitSettled(0)
	go p.discard()
	go p.run()
	return p, nil
}

// discard takes what subscribers send beside subscriptions, so that it does not pile up.
func (p *publisher) discard() {
	for p.socket.k.alive() {
		if _, err := p.socket.zmq.Recv(); err != nil {
			return
		}
	}
}

// pause holds the output until welcome or resume: it is called when a subscription has come and before the library
// hears of it, so that the first thing the subscriber gets is its welcome.
func (p *publisher) pause() {
	p.gate.Lock()
	limit := p.socket.port.limits.stall
	if p.watch.await(p.sent, limit) { // the library has begun with the last message; now let it have ended
		p.fence(limit).Close()
	}
}

// fence waits until the library is between two messages: it takes new connections only there.
func (p *publisher) fence(limit time.Duration) *sentinel {
	s := newSentinel()
	go p.socket.port.hand(s)
	s.awaitSettled(limit)
	return s
}

func (p *publisher) resume() { p.gate.Unlock() }

// welcome greets a subscriber, who will not miss anything from here on.
func (p *publisher) welcome(topic []byte) {
	m := p.socket.k.message("iopub_welcome", nil, map[string]any{"subscription": string(topic)})
	m.Identities = [][]byte{topic}
	p.box.jump(m)
}

func (p *publisher) run() {
	defer close(p.done)
	for p.box.wait() {
		p.gate.Lock()
		if m := p.box.take(); m != nil {
			p.send(m)
		}
		p.gate.Unlock()
	}
}

func (p *publisher) send(m *Message) {
	frames, err := p.socket.k.codec.encode(m)
	if err != nil {
		p.socket.k.logf("iopub: %v", err)
		return
	}
	if w := p.socket.port.limits.window; p.sent >= w {
		p.watch.await(p.sent-w+1, 0)
	}
	if err := p.socket.zmq.Send(zmq4.NewMsgFrom(frames...)); err != nil {
		p.socket.k.logf("iopub: %v", err)
		return
	}
	p.sent++
}

// close sends what is left, waits until it has gone, and closes the socket.
func (p *publisher) close() error {
	linger := p.socket.port.limits.linger
	p.box.close()
	<-p.done
	p.watch.await(p.sent, linger)
	last := p.fence(linger)
	err := p.socket.close()
	_ = last.Close()
	_ = p.watch.Close()
	return err
}
