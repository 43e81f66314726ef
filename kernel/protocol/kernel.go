package protocol

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net"
	"os"
	"sync"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// Runner is what runs the cells: *engine.Engine.
type Runner interface {
	Run(ctx context.Context, name, source string, out engine.Output) error
	Evaluate(ctx context.Context, name, expression string) (display.Bundle, error)
	Complete(ctx context.Context, src string, offset int) (list []cell.Completion, start, end int, err error)
	Hover(ctx context.Context, src string, offset int) (cell.Hover, bool, error)
	Close() error
}

// Options sets up a kernel.
type Options struct {
	Connection    Connection
	Version       string                           // of the program, for kernel_info
	Start         func() (Runner, error)           // starts what runs the cells; called once, beside the sockets
	HistoryFile   string                           // where what was run is kept; empty is nowhere
	Log           func(format string, args ...any) // one line; nil is silence
	OutliveParent bool                             // do not end when the parent process does
	Targets       map[string]Target                // for comms that front ends open

	limits limits
}

// Kernel is a kernel at work.
type Kernel struct {
	Counters Counters

	opts    Options
	codec   *codec
	shell   *socket
	control *socket
	stdin   *socket
	beat    *socket
	out     *publisher
	history *history
	comms   comms
	queue   *requests
	answers chan *Message // input replies

	quit     chan struct{}
	quitOnce sync.Once
	workers  sync.WaitGroup

	mu     sync.Mutex
	cancel context.CancelFunc // of the running request, or nil

	runner  Runner    // used by the shell's goroutine only
	count   int       // likewise
	extra   int       // likewise: cells that were not counted
	abortAt time.Time // likewise: when the latest request failed that stops others
}

// Listen opens the sockets. Serve does the rest.
func Listen(o Options) (*Kernel, error) {
	if err := o.Connection.check(); err != nil {
		return nil, err
	}
	o.limits = o.limits.filled()
	k := &Kernel{opts: o, codec: newCodec(o.Connection.Key), queue: newRequests(), quit: make(chan struct{}), answers: make(chan *Message, 16)}
	k.comms.open = map[string]*Comm{}
	if w := o.Connection.warning(); w != "" {
		k.logf("warning: %s", w)
	}
	if o.Connection.Transport == "ipc" && openFolder(o.Connection.IP) {
		k.logf("warning: other users can enter the folder of the sockets %s-*; the sockets themselves are closed to them", o.Connection.IP)
	}
	if o.Connection.Key == "" {
		k.logf("warning: the connection file has no key: messages are not signed, and whoever can connect can run cells")
	}
	k.history = openHistory(o.HistoryFile, k.logf)
	open := func(s **socket, name string, number int) error {
		var err error
		*s, err = k.openSocket(name, number, nil)
		return err
	}
	var err error
	if k.out, err = k.openPublisher(o.Connection.IOPubPort); err == nil {
		c := o.Connection
		err = errors.Join(open(&k.beat, "heartbeat", c.HBPort), open(&k.stdin, "stdin", c.StdinPort),
			open(&k.control, "control", c.ControlPort), open(&k.shell, "shell", c.ShellPort))
	}
	if err != nil {
		return nil, errors.Join(err, k.close())
	}
	return k, nil
}

// Addrs returns where the sockets listen: shell, iopub, stdin, control, heartbeat.
func (k *Kernel) Addrs() [5]net.Addr {
	return [5]net.Addr{k.shell.port.Addr(), k.out.socket.port.Addr(), k.stdin.port.Addr(), k.control.port.Addr(), k.beat.port.Addr()}
}

// Serve runs requests until a shutdown is asked for or Shutdown is called.
func (k *Kernel) Serve() error {
	k.publish("status", nil, map[string]any{"execution_state": "starting"}, false)
	go k.beat.echo()
	go k.receiveAnswers()
	go k.receiveRequests()
	go k.serveControl()
	if !k.opts.OutliveParent {
		go k.watchParent(os.Getppid)
	}
	failed := make(chan error, 1)
	k.workers.Add(1)
	go func() {
		defer k.workers.Done()
		failed <- k.serveShell()
	}()
	var err error
	select {
	case err = <-failed:
		k.Shutdown()
	case <-k.quit:
	}
	k.awaitShell(3 * time.Second)
	return errors.Join(err, k.close())
}

// awaitShell waits for a cell that was told to stop.
func (k *Kernel) awaitShell(limit time.Duration) {
	ended := make(chan struct{})
	go func() { k.workers.Wait(); close(ended) }()
	select {
	case <-ended:
	case <-time.After(limit):
		k.logf("a cell did not stop within %v; its worker ends with this process", limit)
	}
}

// Interrupt stops the running cell, if there is one.
func (k *Kernel) Interrupt() {
	k.mu.Lock()
	cancel := k.cancel
	k.mu.Unlock()
	if cancel != nil {
		cancel()
	}
}

// Shutdown makes Serve end.
func (k *Kernel) Shutdown() {
	k.quitOnce.Do(func() { close(k.quit) })
	k.queue.close()
	k.Interrupt()
}

func (k *Kernel) alive() bool {
	select {
	case <-k.quit:
		return false
	default:
		return true
	}
}

func (k *Kernel) close() error {
	k.Shutdown()
	var errs []error
	for _, s := range []*socket{k.shell, k.control, k.stdin, k.beat} {
		if s != nil {
			errs = append(errs, s.close())
		}
	}
	if k.out != nil {
		errs = append(errs, k.out.close())
	}
	errs = append(errs, k.history.close())
	return errors.Join(errs...)
}

func (k *Kernel) logf(format string, args ...any) {
	if k.opts.Log != nil {
		k.opts.Log(format, args...)
	}
}

// message makes a message; parent is the request that it belongs to, or nil.
func (k *Kernel) message(msgType string, parent *Message, content any) *Message {
	m := &Message{Header: k.codec.header(msgType)}
	if parent != nil {
		m.Parent = parent.rawHeader
	}
	b, err := json.Marshal(content)
	if err != nil { // a value of a cell that has no form in JSON
		k.logf("%s: %v", msgType, err)
		b, _ = json.Marshal(map[string]any{"status": "error", "ename": "Unprintable", "evalue": err.Error(), "traceback": []string{},
			"name": "stderr", "text": err.Error() + "\n", "data": map[string]string{"text/plain": err.Error()}, "metadata": map[string]any{}})
	}
	m.Content = b
	return m
}

// publish sends to all subscribers. patient says that the caller may be made to wait for slow ones.
func (k *Kernel) publish(msgType string, parent *Message, content any, patient bool) {
	k.out.box.put(k.topical(k.message(msgType, parent, content)), patient)
}

// topical gives a message the topic under which subscribers get it.
func (k *Kernel) topical(m *Message) *Message {
	m.Identities = [][]byte{fmt.Appendf(nil, "kernel.%s.%s", k.codec.session, m.Header.MsgType)}
	return m
}

func (k *Kernel) status(parent *Message, state string) {
	k.publish("status", parent, map[string]any{"execution_state": state}, false)
}

// reply answers a request.
func (k *Kernel) reply(s *socket, request *Message, msgType string, content any) {
	m := k.message(msgType, request, content)
	m.Identities = request.Identities
	s.send(m)
}
