package report

import (
	"go/scanner"
	"go/token"
	"go/types"
	"strings"
)

// maxColouredBytes is the longest source that is coloured; longer ones are shown plain.
const maxColouredBytes = 200_000

// colourCode returns the HTML of source code, its parts in spans of our own classes. Go is coloured, by the scanner of its
// own compiler; another language is shown plain.
func colourCode(language, source string) string {
	source = printable(strings.TrimRight(source, "\n"))
	if language != "go" || len(source) > maxColouredBytes {
		return text(source)
	}
	var s scanner.Scanner
	file := token.NewFileSet().AddFile("", -1, len(source))
	broken := false
	s.Init(file, []byte(source), func(token.Position, string) { broken = true }, scanner.ScanComments)
	var b strings.Builder
	done := 0 // bytes of the source that are written
	write := func(to int, class string) {
		if to <= done || to > len(source) {
			return
		}
		if class == "" {
			b.WriteString(text(source[done:to]))
		} else {
			b.WriteString(`<span class="` + class + `">` + text(source[done:to]) + `</span>`)
		}
		done = to
	}
	for !broken {
		pos, tok, lit := s.Scan()
		if tok == token.EOF {
			break
		}
		at := file.Offset(pos)
		if class := codeClass(tok, lit, source, at); class != "" {
			write(at, "")
			write(at+len(lit), class)
		}
	}
	if broken { // it did not run either
		return text(source)
	}
	write(len(source), "")
	return b.String()
}

func codeClass(tok token.Token, lit, source string, at int) string {
	switch {
	case tok == token.COMMENT:
		return "c-note"
	case tok.IsKeyword():
		return "c-word"
	case tok == token.STRING || tok == token.CHAR:
		return "c-text"
	case tok == token.INT || tok == token.FLOAT || tok == token.IMAG:
		return "c-num"
	case tok == token.IDENT:
		_, isType := types.Universe.Lookup(lit).(*types.TypeName)
		switch {
		case isType:
			return "c-type"
		case strings.HasPrefix(source[at+len(lit):], "("):
			return "c-func"
		}
	}
	return ""
}
