package protocol

import (
	"context"
	"encoding/json"
	"go/scanner"
	"go/token"
	"strings"
	"unicode/utf8"

	"swanneck/kernel/cell"
)

type lookContent struct {
	Code      string `json:"code"`
	CursorPos *int   `json:"cursor_pos"`
}

// look reads the content of a request about a place in a cell; offset is in bytes.
func look(m *Message) (c lookContent, offset int, err error) {
	if err := json.Unmarshal(m.Content, &c); err != nil {
		return c, 0, err
	}
	if c.CursorPos == nil {
		return c, len(c.Code), nil
	}
	return c, byteOffset(c.Code, *c.CursorPos), nil
}

// byteOffset turns a count of Unicode code points into a byte offset.
func byteOffset(text string, points int) int {
	if points <= 0 {
		return 0
	}
	for at := range text {
		if points == 0 {
			return at
		}
		points--
	}
	return len(text)
}

// pointOffset turns a byte offset into a count of Unicode code points.
func pointOffset(text string, at int) int {
	return utf8.RuneCountInString(text[:max(0, min(at, len(text)))])
}

func (k *Kernel) complete(ctx context.Context, m *Message) map[string]any {
	c, offset, err := look(m)
	if err != nil {
		return errorContent("Malformed", err.Error(), nil)
	}
	list, start, end, err := k.runner.Complete(ctx, c.Code, offset)
	if err != nil {
		return errorContent("Engine", err.Error(), nil)
	}
	from, to := pointOffset(c.Code, start), pointOffset(c.Code, end)
	matches := make([]string, 0, len(list))
	typed := make([]map[string]any, 0, len(list))
	for _, x := range list {
		matches = append(matches, x.Text)
		t := map[string]any{"start": from, "end": to, "text": x.Text, "type": x.Kind}
		if x.Type != "" {
			t["signature"] = x.Type
		}
		typed = append(typed, t)
	}
	return map[string]any{
		"status": "ok", "matches": matches, "cursor_start": from, "cursor_end": to,
		"metadata": map[string]any{"_jupyter_types_experimental": typed},
	}
}

func (k *Kernel) inspect(ctx context.Context, m *Message) map[string]any {
	c, offset, err := look(m)
	if err != nil {
		return errorContent("Malformed", err.Error(), nil)
	}
	h, found, err := k.runner.Hover(ctx, c.Code, offset)
	if err != nil {
		return errorContent("Engine", err.Error(), nil)
	}
	answer := map[string]any{"status": "ok", "found": found, "data": map[string]any{}, "metadata": map[string]any{}}
	if found {
		answer["data"] = documentation(h)
	}
	return answer
}

func documentation(h cell.Hover) map[string]any {
	text := h.Decl
	mark := "```go\n" + h.Decl + "\n```"
	if doc := strings.TrimSpace(h.Doc); doc != "" {
		text += "\n\n" + doc
		mark += "\n\n" + doc
	}
	return map[string]any{"text/plain": text + "\n", "text/markdown": mark + "\n"}
}

// page answers the cell "?Name": the documentation of a name, for the front end's pager.
func (k *Kernel) page(ctx context.Context, name string) (map[string]any, []any) {
	h, found, err := k.runner.Hover(ctx, name, len(name))
	switch {
	case err != nil:
		return errorContent("Engine", err.Error(), nil), nil
	case !found:
		return errorContent("Unknown", "nothing is known about "+name, nil), nil
	}
	return map[string]any{"status": "ok"}, []any{map[string]any{"source": "page", "data": documentation(h), "start": 0}}
}

func isComplete(m *Message) map[string]any {
	c, _, err := look(m)
	switch {
	case err != nil:
		return map[string]any{"status": "unknown"}
	case malformed(c.Code):
		return map[string]any{"status": "invalid"}
	case cell.Incomplete(c.Code):
		return map[string]any{"status": "incomplete", "indent": indent(c.Code)}
	}
	return map[string]any{"status": "complete"}
}

// malformed says that no continuation can make the text Go: a bracket closes what is not open, or a sign, a string or
// a number is none.
func malformed(src string) bool {
	bad := false
	var s scanner.Scanner
	fset := token.NewFileSet()
	s.Init(fset.AddFile("", -1, len(src)), []byte(src), func(_ token.Position, msg string) {
		bad = bad || msg != "comment not terminated" && msg != "raw string literal not terminated"
	}, 0)
	var open []token.Token
	closes := map[token.Token]token.Token{token.RPAREN: token.LPAREN, token.RBRACK: token.LBRACK, token.RBRACE: token.LBRACE}
	for {
		_, tok, _ := s.Scan()
		switch tok {
		case token.EOF:
			return bad
		case token.ILLEGAL:
			bad = true
		case token.LPAREN, token.LBRACK, token.LBRACE:
			open = append(open, tok)
		case token.RPAREN, token.RBRACK, token.RBRACE:
			if len(open) == 0 || open[len(open)-1] != closes[tok] {
				return true
			}
			open = open[:len(open)-1]
		}
	}
}

// indent proposes how the next line begins: as the last one, and one tab more behind an open bracket.
func indent(src string) string {
	last := src[strings.LastIndexByte(strings.TrimRight(src, "\n"), '\n')+1:]
	lead := last[:len(last)-len(strings.TrimLeft(last, " \t"))]
	if t := strings.TrimSpace(last); t != "" && strings.ContainsRune("{([", rune(t[len(t)-1])) {
		return lead + "\t"
	}
	return lead
}
