package protocol

import (
	"encoding/json"
	"sync"
)

// Comm is a channel between a front end, which opens it, and the kernel.
type Comm struct {
	ID     string
	Target string

	// Receive takes what the front end sends; nil drops it. Closed is called when the front end closes the comm. Both
	// are called by the goroutine of the shell.
	Receive func(data json.RawMessage, buffers [][]byte)
	Closed  func(data json.RawMessage)

	k *Kernel
}

// Target is called when a front end opens a comm; it sets Receive and Closed. An error refuses the comm.
type Target func(c *Comm, data json.RawMessage) error

// Send sends to the front ends. While a message of a front end is dealt with, it belongs to that message.
func (c *Comm) Send(data any, buffers ...[]byte) {
	m := c.k.message("comm_msg", c.k.comms.parent(), map[string]any{"comm_id": c.ID, "data": data})
	m.Buffers = buffers
	c.k.out.box.put(c.k.topical(m), true)
}

// Close closes the comm, and says so to the front ends. A comm that is closed already stays so.
func (c *Comm) Close(data any) {
	if c.k.comms.drop(c.ID) {
		c.k.closeComm(c.k.comms.parent(), c.ID, data)
	}
}

type comms struct {
	mu      sync.Mutex
	open    map[string]*Comm
	handled *Message // the message that is dealt with, or nil
}

func (c *comms) parent() *Message {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.handled
}

func (c *comms) handle(m *Message) {
	c.mu.Lock()
	c.handled = m
	c.mu.Unlock()
}

// drop forgets a comm and says whether it was open.
func (c *comms) drop(id string) bool {
	c.mu.Lock()
	defer c.mu.Unlock()
	_, was := c.open[id]
	delete(c.open, id)
	return was
}

func (c *comms) get(id string) *Comm {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.open[id]
}

// info lists the open comms, of one target if the request names one.
func (c *comms) info(m *Message) map[string]any {
	var want struct {
		Target string `json:"target_name"`
	}
	if err := json.Unmarshal(m.Content, &want); err != nil {
		return errorContent("Malformed", err.Error(), nil)
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	list := map[string]any{}
	for id, x := range c.open {
		if want.Target == "" || want.Target == x.Target {
			list[id] = map[string]any{"target_name": x.Target}
		}
	}
	return map[string]any{"status": "ok", "comms": list}
}

// comm deals with comm_open, comm_msg and comm_close. A comm for a target that is not there is closed at once. What
// belongs to no comm, and a second opening of an open one, have no effect.
func (k *Kernel) comm(m *Message) {
	var c struct {
		ID     string          `json:"comm_id"`
		Target string          `json:"target_name"`
		Data   json.RawMessage `json:"data"`
	}
	if err := json.Unmarshal(m.Content, &c); err != nil || c.ID == "" {
		k.logf("%s: the content cannot be used: %v", m.Header.MsgType, err)
		return
	}
	k.comms.handle(m)
	defer k.comms.handle(nil)
	known := k.comms.get(c.ID)
	switch m.Header.MsgType {
	case "comm_open":
		if known != nil {
			k.logf("comm_open: %q is open already", c.ID)
			return
		}
		target := k.opts.Targets[c.Target]
		if target == nil {
			k.logf("comm_open: target %q is not known", c.Target)
			k.closeComm(m, c.ID, map[string]any{})
			return
		}
		n := &Comm{ID: c.ID, Target: c.Target, k: k}
		k.comms.mu.Lock()
		k.comms.open[c.ID] = n
		k.comms.mu.Unlock()
		if err := target(n, c.Data); err != nil {
			k.logf("comm_open: %v", err)
			n.Close(map[string]any{})
		}
	case "comm_msg":
		switch {
		case known == nil:
			k.logf("comm_msg: %q is not open", c.ID)
		case known.Receive != nil:
			known.Receive(c.Data, m.Buffers)
		}
	case "comm_close":
		if k.comms.drop(c.ID) && known.Closed != nil {
			known.Closed(c.Data)
		}
	}
}

func (k *Kernel) closeComm(parent *Message, id string, data any) {
	k.publish("comm_close", parent, map[string]any{"comm_id": id, "data": data}, true)
}
