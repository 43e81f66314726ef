package protocol

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"sort"
	"strings"
	"time"

	"swanneck/kernel/engine"
)

type executeContent struct {
	Code            string            `json:"code"`
	Silent          bool              `json:"silent"`
	StoreHistory    *bool             `json:"store_history"`
	UserExpressions map[string]string `json:"user_expressions"`
	AllowStdin      *bool             `json:"allow_stdin"`
	StopOnError     *bool             `json:"stop_on_error"`
}

func unless(p *bool, other bool) bool {
	if p == nil {
		return other
	}
	return *p
}

// inFlight is how long after a failure requests may arrive that were sent before the front end could know of it.
const inFlight = 250 * time.Millisecond

func (k *Kernel) execute(ctx context.Context, m *Message) {
	var c executeContent
	if err := json.Unmarshal(m.Content, &c); err != nil {
		k.reply(k.shell, m, "execute_reply", withCount(errorContent("Malformed", err.Error(), nil), k.count))
		return
	}
	if k.aborted(m) {
		k.reply(k.shell, m, "execute_reply", map[string]any{"status": "aborted"}) // no count: it was not run, and is not to look so
		return
	}
	store := !c.Silent && unless(c.StoreHistory, true)
	if store {
		k.count++
	} else {
		k.extra++
	}
	out := &output{k: k, ctx: ctx, request: m, silent: c.Silent, stdin: unless(c.AllowStdin, true), count: max(k.count, 1)}
	if !c.Silent {
		k.publish("execute_input", m, map[string]any{"code": c.Code, "execution_count": k.count}, true)
	}
	var answer map[string]any
	payload := []any{}
	if name, ok := strings.CutPrefix(strings.TrimSpace(c.Code), "?"); ok {
		answer, payload = k.page(ctx, strings.TrimSpace(name))
	} else {
		answer = k.answer(c.Code, k.runner.Run(ctx, k.name(store), c.Code, out))
	}
	if answer["status"] == "ok" {
		answer["user_expressions"] = k.expressions(ctx, c.UserExpressions)
		answer["payload"] = payload
	} else {
		if !c.Silent {
			k.publish("error", m, map[string]any{"ename": answer["ename"], "evalue": answer["evalue"], "traceback": answer["traceback"]}, true)
			if unless(c.StopOnError, true) {
				k.abortAt = time.Now()
			}
		}
	}
	if store {
		k.history.add(k.count, c.Code, out.value)
	}
	k.reply(k.shell, m, "execute_reply", withCount(answer, k.count))
}

// name is what messages call the cell; a replay tells cells apart by it.
func (k *Kernel) name(counted bool) string {
	if counted {
		return fmt.Sprintf("cell %d", k.count)
	}
	return fmt.Sprintf("uncounted cell %d", k.extra)
}

// aborted says whether a request was sent before the front end could know that an earlier one had failed: it was
// queued when that one ended, or it arrived shortly after and its date is before.
func (k *Kernel) aborted(m *Message) bool {
	if k.abortAt.IsZero() {
		return false
	}
	if m.received.Before(k.abortAt) {
		return true
	}
	if m.received.Sub(k.abortAt) > inFlight {
		return false
	}
	sent, err := time.Parse(time.RFC3339Nano, m.Header.Date)
	return err == nil && sent.Before(k.abortAt)
}

func withCount(content map[string]any, count int) map[string]any {
	content["execution_count"] = count
	return content
}

// answer makes the content of a reply from how a cell ended.
func (k *Kernel) answer(source string, err error) map[string]any {
	var f *engine.Failure
	switch {
	case err == nil:
		return map[string]any{"status": "ok"}
	case !errors.As(err, &f):
		k.logf("engine: %v", err)
		return errorContent("Engine", err.Error(), nil)
	}
	name := strings.ReplaceAll(string(f.Kind), " ", "-")
	if name != "" {
		name = strings.ToUpper(name[:1]) + name[1:]
	}
	value := f.Error()
	if len(f.Items) > 0 {
		value = f.Items[0].String()
	}
	return errorContent(name, value, traceback(source, f))
}

func errorContent(name, value string, trace []string) map[string]any {
	if trace == nil {
		trace = []string{name + ": " + value}
	}
	return map[string]any{"status": "error", "ename": name, "evalue": value, "traceback": trace}
}

// traceback shows each message with the line of the cell that it is about.
func traceback(source string, f *engine.Failure) []string {
	lines := strings.Split(source, "\n")
	var out []string
	for _, p := range f.Items {
		out = append(out, p.String())
		if p.Line < 1 || p.Line > len(lines) {
			continue
		}
		text := lines[p.Line-1]
		mark := fmt.Sprintf("%4d | ", p.Line)
		out = append(out, mark+text)
		if p.Col >= 1 && p.Col <= len(text)+1 {
			out = append(out, strings.Repeat(" ", len(mark)-2)+"| "+blank(text[:p.Col-1])+"^")
		}
	}
	if f.Trace != "" {
		out = append(out, strings.TrimRight(f.Trace, "\n"))
	}
	if f.Note != "" {
		out = append(out, f.Note)
	}
	return out
}

// blank returns white space as wide as a text, tabs kept.
func blank(text string) string {
	return strings.Map(func(r rune) rune {
		if r == '\t' {
			return r
		}
		return ' '
	}, text)
}

// expressions evaluates the expressions that a front end wants to know, each on its own. They leave no trace: they
// declare nothing, and no replay runs them again.
func (k *Kernel) expressions(ctx context.Context, list map[string]string) map[string]any {
	out := map[string]any{}
	names := make([]string, 0, len(list))
	for n := range list {
		names = append(names, n)
	}
	sort.Strings(names)
	for _, n := range names {
		value, err := k.runner.Evaluate(ctx, "expression "+n, list[n])
		answer := k.answer(list[n], err)
		if answer["status"] == "ok" {
			answer["data"], answer["metadata"] = data(value), map[string]any{}
		}
		out[n] = answer
	}
	return out
}
