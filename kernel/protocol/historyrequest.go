package protocol

import (
	"encoding/json"
	"slices"
	"strings"
)

type historyContent struct {
	Output  bool   `json:"output"`
	Access  string `json:"hist_access_type"`
	Session int    `json:"session"` // 0 is the current one, -1 the one before; numbers above 0 are as in replies
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
	var list []entry
	var err error
	switch c.Access {
	case "tail", "":
		list, err = k.history.last(c.N, func(entry) bool { return true })
	case "range":
		list, err = k.history.span(c)
	case "search":
		list, err = k.history.last(c.N, fits(c.Pattern, c.Unique))
	default:
		return historyError("Malformed", "hist_access_type "+c.Access+": want tail, range or search")
	}
	if err != nil {
		return historyError("History", err.Error())
	}
	out := make([]any, 0, len(list))
	for _, e := range list {
		if c.Output {
			var o any
			if e.Output != "" {
				o = e.Output
			}
			out = append(out, []any{e.Session, e.Line, []any{e.Input, o}})
		} else {
			out = append(out, []any{e.Session, e.Line, e.Input})
		}
	}
	return map[string]any{"status": "ok", "history": out}
}

func historyError(name, value string) map[string]any {
	c := errorContent(name, value, nil)
	c["history"] = []any{}
	return c
}

// last returns the newest n entries that are wanted, all of them without n, in the order in which they were run.
func (h *history) last(n *int, wanted func(entry) bool) (list []entry, err error) {
	if n != nil && *n == 0 {
		return nil, nil
	}
	for e, err := range h.newest() {
		if err != nil {
			return nil, err
		}
		if !wanted(e) {
			continue
		}
		if list = append(list, e); n != nil && len(list) == *n {
			break
		}
	}
	slices.Reverse(list)
	return list, nil
}

// span returns entries of one session.
func (h *history) span(c historyContent) ([]entry, error) {
	session := c.Session
	if session <= 0 {
		current, err := h.current()
		if err != nil {
			return nil, err
		}
		session += current
	}
	return h.last(nil, func(e entry) bool {
		return e.Session == session && e.Line >= c.Start && (c.Stop == nil || e.Line < *c.Stop)
	})
}

// fits says whether an entry, met from the newest on, fits a pattern; unique leaves out all but the newest of equal ones.
func fits(pattern string, unique bool) func(entry) bool {
	if pattern == "" {
		pattern = "*"
	}
	seen := map[string]bool{}
	return func(e entry) bool {
		if !matches(pattern, e.Input) || unique && seen[e.Input] {
			return false
		}
		if unique {
			seen[e.Input] = true
		}
		return true
	}
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
