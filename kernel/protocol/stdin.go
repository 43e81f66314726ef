package protocol

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"time"
)

// Why a question got no answer.
var (
	ErrNoInput     = errors.New("protocol.Ask: the front end takes no questions; run the cell where it does, or give the value in the cell")
	ErrInterrupted = errors.New("protocol.Ask: interrupted while waiting for an answer")
)

func (k *Kernel) receiveAnswers() {
	for {
		m, err := k.stdin.receive()
		if err != nil {
			return
		}
		if m.Header.MsgType != "input_reply" {
			k.logf("stdin: %q is not known", m.Header.MsgType)
			continue
		}
		select {
		case k.answers <- m:
		default:
			k.logf("stdin: an answer came that nobody waits for")
		}
	}
}

// ask sends a question to the front end that sent a request, and waits for the answer. Answers to other questions, or
// from before, are dropped; one that names no question is taken, as some front ends name none.
func (k *Kernel) ask(ctx context.Context, request *Message, allowed bool, prompt string, secret bool) (string, error) {
	if !allowed {
		return "", ErrNoInput
	}
	q := k.message("input_request", request, map[string]any{"prompt": prompt, "password": secret})
	q.Identities = request.Identities
	for {
		select {
		case <-k.answers:
			continue
		default:
		}
		break
	}
	asked := time.Now()
	k.stdin.send(q)
	for {
		select {
		case <-ctx.Done():
			return "", ErrInterrupted
		case m := <-k.answers:
			var parent Header
			if err := json.Unmarshal(m.Parent, &parent); err != nil || parent.MsgID != "" && parent.MsgID != q.Header.MsgID || m.received.Before(asked) {
				continue
			}
			var c struct {
				Status string `json:"status"`
				Value  string `json:"value"`
			}
			if err := json.Unmarshal(m.Content, &c); err != nil {
				return "", fmt.Errorf("protocol.Ask: the answer cannot be read: %w", err)
			}
			if c.Status == "error" {
				return "", errors.New("protocol.Ask: the front end could not ask")
			}
			return c.Value, nil
		}
	}
}
