package protocol

import (
	"encoding/json"
	"sync"
)

// Comm is a channel between a front end and the kernel, opened by either.
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

// Send sends to the front ends.
func (c *Comm) Send(data any) {
	c.k.publish("comm_msg", nil, map[string]any{"comm_id": c.ID, "data": data}, true)
}

type comms struct {
	mu   sync.Mutex
	open map[string]*Comm
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

// comm deals with comm_open, comm_msg and comm_close. A comm for a target that is not there is closed at once.
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
	known := k.comms.get(c.ID)
	switch m.Header.MsgType {
	case "comm_open":
		target := k.opts.Targets[c.Target]
		if target == nil || known != nil {
			k.logf("comm_open: target %q is not known, or the comm is open already", c.Target)
			k.publish("comm_close", m, map[string]any{"comm_id": c.ID, "data": map[string]any{}}, true)
			return
		}
		n := &Comm{ID: c.ID, Target: c.Target, k: k}
		k.comms.mu.Lock()
		k.comms.open[c.ID] = n
		k.comms.mu.Unlock()
		if err := target(n, c.Data); err != nil {
			k.logf("comm_open: %v", err)
			k.dropComm(c.ID)
			k.publish("comm_close", m, map[string]any{"comm_id": c.ID, "data": map[string]any{}}, true)
		}
	case "comm_msg":
		if known != nil && known.Receive != nil {
			known.Receive(c.Data, m.Buffers)
		}
	case "comm_close":
		k.dropComm(c.ID)
		if known != nil && known.Closed != nil {
			known.Closed(c.Data)
		}
	}
}

func (k *Kernel) dropComm(id string) {
	k.comms.mu.Lock()
	delete(k.comms.open, id)
	k.comms.mu.Unlock()
}
