package cell

import (
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"strings"
)

// loose is what can be known of a chunk that need not be right: half-written cells are looked at while they are typed.
type loose struct {
	file *ast.File
	info *types.Info
	fset *token.FileSet // of its own: the session's would grow with every key
}

// look parses and checks a cell as far as it goes. Nothing in the session changes.
func (s *Session) look(src string) (out []loose) {
	defer func() {
		if recover() != nil { // a half-written cell may trip the checker; then there is nothing to say about it
			out = nil
		}
	}()
	src += closers(src)
	lexemes, _ := lex(src)
	p := newPlaces(src)
	items := split(src, lexemes)
	c := &Checked{Name: "look", session: s}
	extra := map[string]types.Object{}
	_ = s.imported(c, src, items, p, extra) // imports that cannot be had add nothing
	names := s.meaning()
	fset := token.NewFileSet() // one for all, so that places are told apart
	for _, part := range arrange(src, items, names, false) {
		file, _ := parser.ParseFile(fset, c.Name, part.render(src, c.Name, p), parser.SkipObjectResolution|parser.AllErrors)
		if file == nil {
			continue
		}
		s.fill(file, extra)
		l := loose{file, newInfo(), fset}
		_ = types.NewChecker(s.config(func(error) {}), fset, s.pkg, l.info).Files([]*ast.File{file})
		out = append(out, l)
		for _, n := range topNames(file) {
			if o := s.pkg.Scope().Lookup(n); o != nil {
				extra[n] = o
			}
		}
		if _, _, typ := parts(file); typ != nil {
			if scope := l.info.Scopes[typ]; scope != nil {
				for _, n := range scope.Names() {
					extra[n] = scope.Lookup(n)
				}
			}
		}
	}
	return out
}

// closers returns the brackets that a half-written text leaves open.
func closers(src string) string {
	l, _ := lex(src)
	var open []token.Token
	for _, x := range l {
		switch x.tok {
		case token.LPAREN, token.LBRACE, token.LBRACK:
			open = append(open, x.tok)
		case token.RPAREN, token.RBRACE, token.RBRACK:
			if len(open) > 0 {
				open = open[:len(open)-1]
			}
		}
	}
	var b strings.Builder
	for i := len(open) - 1; i >= 0; i-- {
		b.WriteString(map[token.Token]string{token.LPAREN: ")", token.LBRACE: "\n}", token.LBRACK: "]"}[open[i]])
	}
	return b.String()
}
