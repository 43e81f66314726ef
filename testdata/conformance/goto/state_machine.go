// Go specification, "Goto statements": a lexer as labelled states.

package main

import "fmt"

type token struct{ kind, text string }

func lex(s string) (toks []token) {
	var start, pos int
	s += "\x00"
space:
	switch c := s[pos]; {
	case c == 0:
		return
	case c == ' ':
		pos++
		goto space
	case c >= '0' && c <= '9':
		start = pos
		goto number
	case c >= 'a' && c <= 'z':
		start = pos
		goto word
	}
	toks = append(toks, token{"op", s[pos : pos+1]})
	pos++
	goto space
number:
	if c := s[pos]; c >= '0' && c <= '9' || c == '.' {
		pos++
		goto number
	}
	toks = append(toks, token{"num", s[start:pos]})
	goto space
word:
	if c := s[pos]; c >= 'a' && c <= 'z' {
		pos++
		goto word
	}
	toks = append(toks, token{"word", s[start:pos]})
	goto space
}

func main() {
	for _, t := range lex("fill 12.5 + x7*(abv)") {
		fmt.Print(t.kind, ":", t.text, " ")
	}
	fmt.Println()
	fmt.Println(len(lex("")), lex("  a"))
}
