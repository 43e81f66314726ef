package engine

import (
	"encoding/binary"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"sync"

	"swanneck/kernel/cell"
	"swanneck/kernel/display"
)

// wireVersion is the version of the messages between parent and worker. They are one binary, so it only ever differs
// when a file was replaced under a running parent.
const wireVersion = 1

// message is what parent and worker say to each other: a length of four bytes, then JSON.
type message struct {
	V    int    `json:"v"`
	Type string `json:"t"`

	// to the worker: "hello", "run", "stop", "answer", "complete", "hover", "file"
	Setup  *setup `json:"setup,omitempty"`
	Name   string `json:"name,omitempty"`
	Source string `json:"source,omitempty"`
	Offset int    `json:"offset,omitempty"`

	// from the worker: "ready", "stream", "display", "update", "clear", "value", "ask", "read", "done", "dying", "completions",
	// "described"
	Stream string         `json:"stream,omitempty"`
	Text   string         `json:"text,omitempty"` // of a stream; the prompt of "ask"; what was answered
	ID     string         `json:"id,omitempty"`   // of a display that can be updated; of a question to the checker
	Flag   bool           `json:"flag,omitempty"` // "ask": a secret; "clear": wait; "answer": there is one; "described": there is something; "file": there is one
	Bundle display.Bundle `json:"bundle,omitempty"`
	Data   []byte         `json:"data,omitempty"` // of a file
	Fail   *Failure       `json:"fail,omitempty"`

	Completions []cell.Completion `json:"completions,omitempty"`
	Hover       *cell.Hover       `json:"hover,omitempty"`
	Start       int               `json:"start,omitempty"`
	End         int               `json:"end,omitempty"`
}

// setup is what a worker is told at its start.
type setup struct {
	Clock     int64 `json:"clock"` // Unix nanoseconds
	Seed      int64 `json:"seed"`
	MemoryMiB int   `json:"memory_mib"`

	Inputs map[string]string `json:"inputs,omitempty"` // what was given in the place of defaults, as text
}

// maxMessage bounds a message in bytes, so that a damaged length does not take all memory.
const maxMessage = 128 << 20

// pipe reads and writes messages. Writing is safe for several goroutines.
type pipe struct {
	r  io.Reader
	w  io.Writer
	mu sync.Mutex
}

func (p *pipe) write(m message) error {
	m.V = wireVersion
	body, err := json.Marshal(m)
	if err != nil {
		return fmt.Errorf("engine: message %q: %w", m.Type, err)
	}
	buf := make([]byte, 4, 4+len(body))
	binary.BigEndian.PutUint32(buf, uint32(len(body)))
	p.mu.Lock()
	defer p.mu.Unlock()
	_, err = p.w.Write(append(buf, body...))
	return err
}

func (p *pipe) read() (message, error) {
	var m message
	var head [4]byte
	if _, err := io.ReadFull(p.r, head[:]); err != nil {
		return m, err
	}
	n := binary.BigEndian.Uint32(head[:])
	if n > maxMessage {
		return m, fmt.Errorf("engine: a message of %d bytes; at most %d are allowed", n, maxMessage)
	}
	body := make([]byte, n)
	if _, err := io.ReadFull(p.r, body); err != nil {
		return m, err
	}
	if err := json.Unmarshal(body, &m); err != nil {
		return m, fmt.Errorf("engine: message: %w", err)
	}
	if m.Fail != nil && len(m.Fail.Items) == 0 {
		return m, errors.New("engine: a failure that says nothing")
	}
	if m.V != wireVersion {
		return m, fmt.Errorf("engine: message of version %d; this program speaks %d", m.V, wireVersion)
	}
	return m, nil
}
