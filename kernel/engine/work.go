package engine

import (
	"bufio"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"runtime"
	"runtime/debug"
	"strings"
	"sync"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/display"
)

// WorkerIfAsked turns this process into a worker if it was started as one, and then does not return.
func WorkerIfAsked(c Content) {
	if os.Getenv(asked) == "" {
		return
	}
	if err := work(c); err != nil {
		fmt.Fprintln(os.Stderr, "worker:", err)
		os.Exit(1)
	}
	os.Exit(0)
}

// work is a worker's life: it runs what it is told to, until its input ends.
func work(c Content) error {
	signal.Ignore(os.Interrupt) // a key press at the terminal is the parent's to deal with
	p := &pipe{r: bufio.NewReaderSize(os.Stdin, 1<<16), w: os.Stdout}
	os.Stdout = os.Stderr // nothing but messages may reach the parent's pipe
	hello, err := p.read()
	if err != nil || hello.Setup == nil {
		return errors.Join(errors.New("this process expects to be started by its parent"), err)
	}
	if err := confine(hello.Setup.MemoryMiB); err != nil {
		return err
	}
	if os.Getenv("GOMAXPROCS") == "" { // the parent sets it for a worker beside others
		runtime.GOMAXPROCS(max(2, min(4, runtime.NumCPU()))) // one for the cell, one to hear "stop"
	}
	debug.SetMaxStack(256 << 20)
	debug.SetMemoryLimit(int64(hello.Setup.MemoryMiB) << 20 * 9 / 10)

	w := &workerSide{pipe: p, answers: make(chan message, 1)}
	go w.watchMemory(hello.Setup.MemoryMiB)
	library := c.Library()
	session := cell.NewSession(library)
	w.session = session
	w.eval = newEvaluator(evaluatorSetup{
		content: c, library: library, session: session,
		stdout: w.stream("stdout"), stderr: w.stream("stderr"),
		clock: time.Unix(0, hello.Setup.Clock).UTC(), seed: hello.Setup.Seed,
		crash: w.crash,
	})
	display.SetFace(display.Face{Show: w.publish, Text: w.eval.Text, Ask: w.ask, Clear: w.clear, Read: w.read, Input: func(name string) (string, bool) {
		text, ok := hello.Setup.Inputs[name]
		return text, ok
	}})

	runs := make(chan message)
	go func() {
		for {
			m, err := p.read()
			if err != nil {
				os.Exit(0) // the parent is gone, or wants this worker gone
			}
			switch m.Type {
			case "run":
				w.eval.Resume() // a "stop" that comes from here on is for this cell
				runs <- m
			case "complete", "hover":
				runs <- m
			case "answer", "file":
				w.answers <- m
			case "stop":
				w.eval.Stop()
			}
		}
	}()
	if err := p.write(message{Type: "ready"}); err != nil {
		return err
	}
	rest := NewRest()
	rest.Idle()
	for m := range runs {
		rest.Busy()
		var reply message
		switch m.Type {
		case "run":
			reply = message{Type: "done", Fail: w.run(m.Name, m.Source)}
			w.flush()
		case "complete":
			reply.Type, reply.ID = "completions", m.ID
			reply.Completions, reply.Start, reply.End = session.Complete(m.Source, m.Offset)
		case "hover":
			h, ok := session.Hover(m.Source, m.Offset)
			reply = message{Type: "described", ID: m.ID, Hover: &h, Flag: ok}
		}
		if err := p.write(reply); err != nil {
			return err
		}
		rest.Idle()
	}
	return nil
}

// workerSide is the worker's end of the pipe.
type workerSide struct {
	pipe    *pipe
	session *cell.Session
	eval    Evaluator
	answers chan message
	asking  sync.Mutex // one question at a time: the answers come by one channel

	mu      sync.Mutex
	buf     []byte // output of one stream that waits to be sent
	bufName string
	timer   *time.Timer
	sent    time.Time // when the last batch went
}

// run checks and runs a cell.
func (w *workerSide) run(name, source string) *Failure {
	checked, err := w.session.Check(name, source)
	if err != nil {
		var list cell.ErrorList
		if !errors.As(err, &list) {
			return fail(Refused, 1, 1, "%s", err)
		}
		f := &Failure{Kind: Refused}
		for _, e := range list {
			msg := e.Msg
			if e.Hint != "" {
				msg += " (" + e.Hint + ")"
			}
			f.Items = append(f.Items, Place{e.Line, e.Col, oneLine(msg)})
		}
		return f
	}
	for i := range checked.Chunks {
		shown, completed, err := w.eval.Run(&checked.Chunks[i])
		if err != nil {
			var re *RunError
			if !errors.As(err, &re) {
				re = &RunError{Msg: err.Error()}
			}
			if re.Refused {
				completed = -1
				re.Refused = i == 0 // else what stands before it did run
			}
			checked.Commit(i, completed)
			return w.failure(name, re)
		}
		if f := w.show(shown); f != nil {
			checked.Commit(i, completed)
			return f
		}
	}
	checked.Commit(len(checked.Chunks), 0)
	return w.unread(checked)
}

// unread stops a cell whose error nobody looked at: one that is not nil, in a variable that the cell sets and never
// uses.
func (w *workerSide) unread(c *cell.Checked) *Failure {
	for _, v := range c.UnreadErrors() {
		if err, ok := w.eval.Error(w.eval.Value(v)); ok && err != nil {
			p := w.session.Fset().Position(v.Pos())
			return fail(Stopped, p.Line, p.Column, "nobody looks at %s, and it is not nil: %v", v.Name(), err)
		}
	}
	return nil
}

func (w *workerSide) failure(name string, re *RunError) *Failure {
	kind := Stopped
	switch {
	case re.Halted:
		kind = Halted
	case re.Refused:
		kind = Refused
	}
	msg := re.Msg
	if re.Name != "" && re.Name != name && re.Line > 0 {
		return fail(kind, 0, 0, "%s (in %s, %d:%d)", msg, re.Name, re.Line, re.Col)
	}
	return fail(kind, re.Line, re.Col, "%s", msg)
}

// show sends the values of the last expression. An error among them that is not nil stops the cell.
func (w *workerSide) show(shown []Shown) *Failure {
	if len(shown) == 0 {
		return nil
	}
	if len(shown) == 1 {
		b, err := display.Of(shown[0].Value, shown[0].Text)
		if err != nil {
			return fail(Stopped, 0, 0, "%s", err)
		}
		w.send(message{Type: "value", Bundle: b})
		return nil
	}
	texts := make([]string, len(shown))
	for i, s := range shown {
		texts[i] = s.Text
	}
	w.send(message{Type: "value", Bundle: display.Bundle{display.Plain: strings.Join(texts, " ")}})
	return nil
}

func (w *workerSide) publish(b display.Bundle, id string, update bool) {
	m := message{Type: "display", Bundle: b, ID: id}
	if update {
		m.Type = "update"
	}
	w.send(m)
}

func (w *workerSide) clear(wait bool) { w.send(message{Type: "clear", Flag: wait}) }

// ask puts a question to the person and waits for the answer.
func (w *workerSide) ask(prompt string, secret bool) (string, error) {
	w.asking.Lock()
	defer w.asking.Unlock()
	w.send(message{Type: "ask", Text: prompt, Flag: secret})
	m := <-w.answers
	if !m.Flag {
		return "", errors.New("nobody is there to answer")
	}
	return m.Text, nil
}

// read asks the parent for a file of the worksheet's folder: this process can open none.
func (w *workerSide) read(name string) ([]byte, error) {
	w.asking.Lock()
	defer w.asking.Unlock()
	w.send(message{Type: "read", Name: name})
	m := <-w.answers
	if !m.Flag {
		return nil, errors.New(m.Text)
	}
	return m.Data, nil
}

// send flushes what the streams hold, so that the order is kept, and sends a message.
func (w *workerSide) send(m message) {
	w.flush()
	if err := w.pipe.write(m); err != nil {
		os.Exit(0) // the parent is gone
	}
}

// crash reports a panic in a goroutine of a cell, which ends the worker as it would end a Go program.
func (w *workerSide) crash(re *RunError) {
	w.flush()
	f := w.failure(re.Name, re)
	f.Kind, f.Cell = Crashed, re.Name
	f.Items[0].Msg = "a goroutine panicked: " + f.Items[0].Msg
	_ = w.pipe.write(message{Type: "dying", Fail: f}) // if the parent is gone there is nobody to tell
	os.Exit(3)
}
