package protocol

import (
	"context"
	"encoding/json"
	"time"

	"swanneck/kernel/engine"
)

func (k *Kernel) receiveRequests() {
	for {
		m, err := k.shell.receive()
		if err != nil {
			return
		}
		k.queue.put(m)
	}
}

// serveShell runs the requests of the shell, one after the other.
func (k *Kernel) serveShell() error {
	type started struct {
		r   Runner
		err error
	}
	start := make(chan started, 1)
	go func() {
		r, err := k.opts.Start()
		start <- started{r, err}
	}()
	wait := func() error { // what needs no cell need not wait
		if k.runner != nil {
			return nil
		}
		s := <-start
		k.runner = s.r
		return s.err
	}
	defer func() {
		if wait() == nil {
			if err := k.runner.Close(); err != nil {
				k.logf("engine: %v", err)
			}
		}
	}()
	rest := engine.NewRest()
	defer rest.Busy()
	for {
		rest.Idle()
		m := k.queue.take()
		rest.Busy()
		if m == nil {
			return nil
		}
		k.status(m, "busy")
		if m.Header.MsgType != "kernel_info_request" && m.Header.MsgType != "shutdown_request" {
			if err := wait(); err != nil {
				return err
			}
		}
		k.request(m)
		k.status(m, "idle")
	}
}

// request answers one request of the shell. What is not known gets no answer.
func (k *Kernel) request(m *Message) {
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	k.running(cancel)
	defer k.running(nil)
	if !k.alive() {
		cancel()
	}
	switch m.Header.MsgType {
	case "kernel_info_request":
		k.reply(k.shell, m, "kernel_info_reply", k.info())
	case "execute_request":
		k.execute(ctx, m)
	case "complete_request":
		k.reply(k.shell, m, "complete_reply", k.complete(ctx, m))
	case "inspect_request":
		k.reply(k.shell, m, "inspect_reply", k.inspect(ctx, m))
	case "is_complete_request":
		k.reply(k.shell, m, "is_complete_reply", isComplete(m))
	case "history_request":
		k.reply(k.shell, m, "history_reply", k.historyReply(m))
	case "comm_info_request":
		k.reply(k.shell, m, "comm_info_reply", k.comms.info(m))
	case "comm_open", "comm_msg", "comm_close":
		k.comm(m)
	case "shutdown_request":
		k.shutdown(k.shell, m)
	default:
		k.logf("shell: %q is not known", m.Header.MsgType)
	}
}

func (k *Kernel) running(cancel context.CancelFunc) {
	k.mu.Lock()
	k.cancel = cancel
	k.mu.Unlock()
}

func (k *Kernel) info() map[string]any {
	return map[string]any{
		"status": "ok", "protocol_version": Version, "implementation": "swanneck", "implementation_version": k.opts.Version,
		"language_info": map[string]any{
			"name": "go", "version": "1.26", "mimetype": "text/x-go", "file_extension": ".go", "pygments_lexer": "go", "codemirror_mode": "go",
		},
		"banner":   "swanneck " + k.opts.Version + ": Go with the arithmetic of distilling. ?Name shows what a name means.",
		"debugger": false, "supported_features": []string{}, "help_links": []any{},
	}
}

func (k *Kernel) shutdown(s *socket, m *Message) {
	var c struct {
		Restart bool `json:"restart"`
	}
	if err := json.Unmarshal(m.Content, &c); err != nil {
		k.logf("shutdown_request: %v", err)
	}
	k.Interrupt()
	answer := map[string]any{"status": "ok", "restart": c.Restart}
	k.reply(s, m, "shutdown_reply", answer)
	k.publish("shutdown_reply", m, answer, false)
	defer k.Shutdown()
	if s == k.control {
		k.status(m, "idle") // the sockets close before the caller could say so
	}
}

// serveControl answers on the control socket, whatever the shell is doing.
func (k *Kernel) serveControl() {
	for {
		m, err := k.control.receive()
		if err != nil {
			return
		}
		k.status(m, "busy")
		switch m.Header.MsgType {
		case "kernel_info_request":
			k.reply(k.control, m, "kernel_info_reply", k.info())
		case "interrupt_request":
			k.Interrupt()
			k.reply(k.control, m, "interrupt_reply", map[string]any{"status": "ok"})
		case "shutdown_request":
			k.shutdown(k.control, m)
			return
		default:
			k.logf("control: %q is not known", m.Header.MsgType)
		}
		k.status(m, "idle")
	}
}

// watchParent ends the kernel when its parent process is gone: nobody could end it any more.
func (k *Kernel) watchParent(parent func() int) {
	first := parent()
	for {
		select {
		case <-k.quit:
			return
		case <-time.After(time.Second):
		}
		if parent() != first {
			k.logf("the parent process is gone")
			k.Shutdown()
			return
		}
	}
}
