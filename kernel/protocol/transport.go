package protocol

import (
	"context"
	"errors"
	"fmt"
	"net"
	"strconv"
	"sync"
	"sync/atomic"
	"time"

	"github.com/go-zeromq/zmq4"
	"github.com/go-zeromq/zmq4/transport"
)

// scheme is the name under which the sockets library knows the transport of ours. The address is the number of a port
// in ports.
const scheme = "swanneck"

var (
	register sync.Once
	ports    sync.Map // string → *port
	portNo   atomic.Uint64
)

// limits bounds what peers can do. The zero value is the usual case.
type limits struct {
	handshake time.Duration // for a peer to introduce itself; 0 is 10 s
	message   uint64        // bytes of a message received; 0 is 512 MiB
	backlog   int           // bytes that wait for one peer before senders have to; 0 is 16 MiB
	stall     time.Duration // how long a peer whose backlog is full may take nothing before it is cut off; 0 is 5 s
	window    uint64        // messages of the output that the library may hold; 0 is 256
	linger    time.Duration // for messages to leave at the end; 0 is 2 s
}

func (l limits) filled() limits {
	if l.handshake == 0 {
		l.handshake = handshakeTime
	}
	if l.message == 0 {
		l.message = 512 << 20
	}
	if l.backlog == 0 {
		l.backlog = 16 << 20
	}
	if l.stall == 0 {
		l.stall = 5 * time.Second
	}
	if l.window == 0 {
		l.window = 256
	}
	if l.linger == 0 {
		l.linger = 2 * time.Second
	}
	return l
}

// port is a listening socket of ours that hands on connections when they have introduced themselves.
type port struct {
	id       string
	under    net.Listener
	peers    []string // kinds of sockets that may connect
	limits   limits
	counters *Counters
	logf     func(format string, args ...any)
	output   *publisher // nil but for the output

	ready chan net.Conn
	quit  chan struct{}
	once  sync.Once

	mu    sync.Mutex
	conns map[*conn]bool
	raw   map[net.Conn]bool // shaking hands
}

// newPort registers a port; the library listens at endpoint.
func newPort(under net.Listener, peers []string, l limits, counters *Counters, logf func(string, ...any)) (*port, error) {
	var err error
	register.Do(func() { err = zmq4.RegisterTransport(scheme, library{}) })
	if err != nil {
		return nil, fmt.Errorf("protocol: %w", err)
	}
	p := &port{
		id: strconv.FormatUint(portNo.Add(1), 10), under: under, peers: peers, limits: l.filled(), counters: counters, logf: logf,
		ready: make(chan net.Conn), quit: make(chan struct{}), conns: map[*conn]bool{}, raw: map[net.Conn]bool{},
	}
	ports.Store(p.id, p)
	return p, nil
}

func (p *port) endpoint() string { return scheme + "://" + p.id }

// library is the transport that the sockets library sees.
type library struct{}

var _ transport.Transport = library{}

func (library) Addr(ep string) (string, error) { return ep, nil }

func (library) Dial(context.Context, transport.Dialer, string) (net.Conn, error) {
	return nil, errors.New("protocol: this transport only listens")
}

func (library) Listen(_ context.Context, addr string) (net.Listener, error) {
	p, ok := ports.Load(addr)
	if !ok {
		return nil, fmt.Errorf("protocol: no port %q", addr)
	}
	go p.(*port).accept()
	return p.(*port), nil
}

// accept takes connections and lets each introduce itself in a goroutine of its own.
func (p *port) accept() {
	for {
		c, err := p.under.Accept()
		if err != nil {
			select {
			case <-p.quit:
				return
			case <-time.After(50 * time.Millisecond): // out of file descriptors, say: this passes
			}
			if errors.Is(err, net.ErrClosed) {
				return
			}
			continue
		}
		p.mu.Lock()
		p.raw[c] = true
		p.mu.Unlock()
		go p.introduce(c)
	}
}

func (p *port) introduce(c net.Conn) {
	seen, err := shake(c, p.peers, p.limits.handshake)
	p.mu.Lock()
	delete(p.raw, c)
	p.mu.Unlock()
	if err != nil {
		select {
		case <-p.quit: // ours was the end
		default:
			p.counters.Handshakes.Add(1)
			p.logf("a peer was turned away: %v", err)
		}
		_ = c.Close() // it was never in use
		return
	}
	framed := newConn(c, seen, p)
	p.mu.Lock()
	p.conns[framed] = true
	p.mu.Unlock()
	p.hand(framed)
}

// hand gives a connection to the library.
func (p *port) hand(c net.Conn) {
	select {
	case p.ready <- c:
	case <-p.quit:
		_ = c.Close()
	}
}

// Accept is called by the library.
func (p *port) Accept() (net.Conn, error) {
	select {
	case c := <-p.ready:
		return c, nil
	case <-p.quit:
		return nil, net.ErrClosed
	}
}

// Addr returns the address that peers connect to.
func (p *port) Addr() net.Addr { return p.under.Addr() }

// Close stops listening. Connections are closed by the library.
func (p *port) Close() error {
	var err error
	p.once.Do(func() {
		close(p.quit)
		ports.Delete(p.id)
		err = p.under.Close()
		p.mu.Lock()
		defer p.mu.Unlock()
		for c := range p.raw {
			_ = c.Close()
		}
	})
	return err
}

func (p *port) forget(c *conn) {
	p.mu.Lock()
	delete(p.conns, c)
	p.mu.Unlock()
}

// drain waits until everything written has left for the peers, or time is up.
func (p *port) drain() {
	until := time.Now().Add(p.limits.linger)
	for time.Now().Before(until) {
		p.mu.Lock()
		waiting := false
		for c := range p.conns {
			waiting = waiting || !c.empty()
		}
		p.mu.Unlock()
		if !waiting {
			return
		}
		time.Sleep(time.Millisecond)
	}
}
