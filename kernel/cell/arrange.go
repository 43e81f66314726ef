package cell

import (
	"fmt"
	"go/token"
	"strings"
)

// chunk is a part of a cell that is checked and run as a whole: declarations, then statements.
type chunk struct {
	decls, stmts []item
}

// arrange orders the items of a cell into chunks. Declarations come first, as in a file; but a function that uses a
// variable which a statement of the same cell declares comes after that statement, and the statements behind it follow.
func arrange(src string, items []item) []chunk {
	definers := map[string]int{} // name → index in stmts of the last statement that declares it
	var decls, stmts []item
	for _, it := range items {
		switch it.kind {
		case statement:
			for _, name := range declares(src, it) {
				definers[name] = len(stmts)
			}
			stmts = append(stmts, it)
		case importDecl, packageClause:
		default:
			decls = append(decls, it)
		}
	}
	after := make([]int, len(decls)) // number of statements that must come before a declaration
	names := make([]string, len(decls))
	words := make([]map[string]bool, len(decls))
	for i, d := range decls {
		names[i] = declaredName(src, d)
		words[i] = mentions(src, d)
		if d.kind != funcDecl {
			continue
		}
		for w := range words[i] {
			if at, ok := definers[w]; ok && at+1 > after[i] {
				after[i] = at + 1
			}
		}
	}
	// A function that mentions a late function is late as well.
	for changed := true; changed; {
		changed = false
		for i := range decls {
			if decls[i].kind != funcDecl {
				continue
			}
			for j := range decls {
				if i != j && names[j] != "" && after[j] > after[i] && words[i][names[j]] {
					after[i], changed = after[j], true
				}
			}
		}
	}
	var out []chunk
	var cur chunk
	for n := 0; n <= len(stmts); n++ {
		var here []item
		for i, d := range decls {
			if after[i] == n {
				here = append(here, d)
			}
		}
		if len(here) > 0 && len(cur.stmts) > 0 {
			out, cur = append(out, cur), chunk{}
		}
		cur.decls = append(cur.decls, here...)
		if n < len(stmts) {
			cur.stmts = append(cur.stmts, stmts[n])
		}
	}
	return append(out, cur)
}

// declares lists the names that a statement declares at its top level.
func declares(src string, it item) []string {
	l, _ := lex(src[it.start:it.end])
	var names []string
	if len(l) == 0 {
		return nil
	}
	if l[0].tok == token.VAR {
		depth := 0
		fresh := true // at the start of a specification
		for _, x := range l[1:] {
			switch x.tok {
			case token.LPAREN, token.LBRACE, token.LBRACK:
				depth++
				continue
			case token.RPAREN, token.RBRACE, token.RBRACK:
				depth--
				continue
			case token.SEMICOLON:
				fresh = depth <= 1
				continue
			case token.COMMA:
				continue
			case token.IDENT:
				if fresh && depth <= 1 {
					names = append(names, x.lit)
					if !followedByComma(l, x.off) {
						fresh = false
					}
					continue
				}
			}
			if depth <= 1 {
				fresh = false
			}
		}
		return names
	}
	for i := 0; i+1 < len(l); i += 2 {
		if l[i].tok != token.IDENT {
			return nil
		}
		names = append(names, l[i].lit)
		switch l[i+1].tok {
		case token.DEFINE:
			return names
		case token.COMMA:
		default:
			return nil
		}
	}
	return nil
}

func followedByComma(l []lexeme, off int) bool {
	for i, x := range l {
		if x.off == off {
			return i+1 < len(l) && l[i+1].tok == token.COMMA
		}
	}
	return false
}

// declaredName is the name of a function; methods and grouped declarations have none here.
func declaredName(src string, it item) string {
	l, _ := lex(src[it.start:it.end])
	if it.kind == funcDecl && len(l) > 1 && l[1].tok == token.IDENT {
		return l[1].lit
	}
	return ""
}

// mentions returns the identifiers of an item that may refer to something outside it: all but those behind a dot.
func mentions(src string, it item) map[string]bool {
	l, _ := lex(src[it.start:it.end])
	out := map[string]bool{}
	for i, x := range l {
		if x.tok == token.IDENT && (i == 0 || l[i-1].tok != token.PERIOD) {
			out[x.lit] = true
		}
	}
	return out
}

// places knows where the lines of a cell begin.
type places struct {
	src   string
	lines []int
}

func newPlaces(src string) *places {
	p := &places{src: src, lines: []int{0}}
	for i := range len(src) {
		if src[i] == '\n' {
			p.lines = append(p.lines, i+1)
		}
	}
	return p
}

// at returns line and column, from 1, of a byte offset.
func (p *places) at(off int) (line, col int) {
	lo, hi := 0, len(p.lines)
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; p.lines[mid] <= off {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo + 1, off - p.lines[lo] + 1
}

func (p *places) position(off int) token.Position {
	line, col := p.at(off)
	return token.Position{Offset: off, Line: line, Column: col}
}

// render writes a chunk as the text of a Go file. Line comments give every item its place in the cell.
func (c chunk) render(src, name string, p *places) string {
	var b strings.Builder
	b.WriteString("package main\n")
	put := func(it item) {
		line, col := p.at(it.start)
		fmt.Fprintf(&b, "/*line %s:%d:%d*/%s\n", name, line, col, src[it.start:it.end])
	}
	for _, d := range c.decls {
		put(d)
	}
	b.WriteString("func _() {\n")
	for _, s := range c.stmts {
		put(s)
	}
	b.WriteString("}\n")
	return b.String()
}
