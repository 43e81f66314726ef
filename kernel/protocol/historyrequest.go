package protocol

import (
	"encoding/json"
	"strings"
)

type historyContent struct {
	Output  bool   `json:"output"`
	Access  string `json:"hist_access_type"`
	Session int    `json:"session"` // 0 is the current one, -1 the one before
	Start   int    `json:"start"`
	Stop    *int   `json:"stop"` // the first line that is left out
	N       *int   `json:"n"`
	Pattern string `json:"pattern"` // * and ? stand for what they stand for in names of files
	Unique  bool   `json:"unique"`
}

func (k *Kernel) historyReply(m *Message) map[string]any {
	var c historyContent
	if err := json.Unmarshal(m.Content, &c); err != nil {
		return historyError("Malformed", err.Error())
	}
	list, current, err := k.history.all()
	if err != nil {
		return historyError("History", err.Error())
	}
	switch c.Access {
	case "tail", "":
		list = last(list, c.N)
	case "range":
		list = span(list, current, c)
	case "search":
		list = last(found(list, c.Pattern, c.Unique), c.N)
	default:
		return historyError("Malformed", "hist_access_type "+c.Access+": want tail, range or search")
	}
	out := make([]any, 0, len(list))
	for _, e := range list {
		if c.Output {
			var o any
			if e.Output != "" {
				o = e.Output
			}
			out = append(out, []any{e.number, e.Line, []any{e.Input, o}})
		} else {
			out = append(out, []any{e.number, e.Line, e.Input})
		}
	}
	return map[string]any{"status": "ok", "history": out}
}

func historyError(name, value string) map[string]any {
	c := errorContent(name, value, nil)
	c["history"] = []any{}
	return c
}

func last(list []entry, n *int) []entry {
	if n == nil || *n < 0 || *n >= len(list) {
		return list
	}
	return list[len(list)-*n:]
}

func span(list []entry, current int, c historyContent) []entry {
	session := c.Session
	if session <= 0 {
		session += current
	}
	var out []entry
	for _, e := range list {
		if e.number == session && e.Line >= c.Start && (c.Stop == nil || e.Line < *c.Stop) {
			out = append(out, e)
		}
	}
	return out
}

// found returns the entries that a pattern fits, in the order of the file; unique leaves out all but the latest of
// equal ones.
func found(list []entry, pattern string, unique bool) []entry {
	if pattern == "" {
		pattern = "*"
	}
	var out []entry
	seen := map[string]bool{}
	for i := len(list) - 1; i >= 0; i-- {
		e := list[i]
		if !matches(pattern, e.Input) || unique && seen[e.Input] {
			continue
		}
		seen[e.Input] = true
		out = append(out, e)
	}
	for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
		out[i], out[j] = out[j], out[i]
	}
	return out
}

// matches says whether a pattern with * and ? fits a whole text, newlines included. It takes time in proportion to the
// product of both lengths at most.
func matches(pattern, text string) bool {
	if !strings.ContainsAny(pattern, "*?") {
		return pattern == text
	}
	p, t := []rune(pattern), []rune(text)
	i, j, star, mark := 0, 0, -1, 0
	for j < len(t) {
		switch {
		case i < len(p) && p[i] == '*':
			star, mark = i, j
			i++
		case i < len(p) && (p[i] == '?' || p[i] == t[j]):
			i++
			j++
		case star >= 0:
			mark++
			i, j = star+1, mark
		default:
			return false
		}
	}
	for i < len(p) && p[i] == '*' {
		i++
	}
	return i == len(p)
}
