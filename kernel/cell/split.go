package cell

import (
	"go/ast"
	"go/parser"
	"go/scanner"
	"go/token"
	"slices"
	"strings"
)

// kind says what an item of a cell is.
type kind int

const (
	statement kind = iota
	importDecl
	typeDecl
	constDecl
	funcDecl
	packageClause
	varDecl // a var declaration that stands before every statement
)

// item is a stretch of a cell that ends at the top level, at a semicolon or the end of a line.
type item struct {
	kind       kind
	start, end int // byte offsets in the cell
}

// lexeme is a token with its place.
type lexeme struct {
	tok token.Token
	off int
	lit string
}

// lex returns the tokens of src, semicolons that line ends stand for included, and the errors of the scanner.
func lex(src string) ([]lexeme, scanner.ErrorList) { return scan(src, 0) }

// lexComments is lex with the comments among the tokens.
func lexComments(src string) ([]lexeme, scanner.ErrorList) { return scan(src, scanner.ScanComments) }

func scan(src string, mode scanner.Mode) ([]lexeme, scanner.ErrorList) {
	fset := token.NewFileSet()
	file := fset.AddFile("", fset.Base(), len(src))
	var errs scanner.ErrorList
	var s scanner.Scanner
	s.Init(file, []byte(src), func(pos token.Position, msg string) { errs.Add(pos, msg) }, mode)
	var out []lexeme
	for {
		pos, tok, lit := s.Scan()
		if tok == token.EOF {
			return out, errs
		}
		out = append(out, lexeme{tok, file.Offset(pos), lit})
	}
}

// split cuts a cell into items.
func split(src string, lexemes []lexeme) []item {
	var items []item
	first, depth := 0, 0
	flush := func(next, end int) {
		if next > first {
			if header(lexemes[first:next]) && next < len(lexemes) && lexemes[next].lit == ";" && !parses(src[lexemes[first].off:end]) {
				return // this semicolon stands in the head of a for, if or switch
			}
			items = append(items, item{kindOf(lexemes[first:next]), lexemes[first].off, end})
		}
		first = next + 1
	}
	for i, l := range lexemes {
		switch l.tok {
		case token.LPAREN, token.LBRACE, token.LBRACK:
			depth++
		case token.RPAREN, token.RBRACE, token.RBRACK:
			depth--
		case token.SEMICOLON:
			if depth <= 0 {
				flush(i, l.off)
			}
		}
	}
	flush(len(lexemes), len(src))
	leadingVars(src, items)
	return items
}

// leadingVars makes declarations of the var items that stand before the first statement, as if they stood in a file: in
// the order of what they need. One that names itself in its value means the variable of an earlier cell, and stays a
// statement, and so does all behind it.
func leadingVars(src string, items []item) {
	for i := range items {
		it := &items[i]
		if it.kind != statement {
			continue
		}
		text := src[it.start:it.end]
		if !strings.HasPrefix(text, "var") {
			return
		}
		f, err := parser.ParseFile(token.NewFileSet(), "", "package p\n"+text, parser.SkipObjectResolution)
		if err != nil || len(f.Decls) != 1 {
			return
		}
		itself := false
		ast.Inspect(f, func(n ast.Node) bool {
			if s, ok := n.(*ast.ValueSpec); ok {
				for _, v := range s.Values {
					ast.Inspect(v, func(n ast.Node) bool {
						if id, ok := n.(*ast.Ident); ok && isOneOf(id.Name, s.Names) {
							itself = true
						}
						return true
					})
				}
			}
			return true
		})
		if itself {
			return
		}
		it.kind = varDecl
	}
}

func isOneOf(name string, ids []*ast.Ident) bool {
	return slices.ContainsFunc(ids, func(id *ast.Ident) bool { return id.Name == name })
}

// header says whether a statement, behind its labels, is of a kind whose head may hold semicolons.
func header(l []lexeme) bool {
	for len(l) > 2 && l[0].tok == token.IDENT && l[1].tok == token.COLON {
		l = l[2:]
		for len(l) > 1 && l[0].tok == token.SEMICOLON {
			l = l[1:]
		}
	}
	switch l[0].tok {
	case token.FOR, token.IF, token.SWITCH:
		return true
	}
	return false
}

// parses says whether a text is whole statements.
func parses(text string) bool {
	_, err := parser.ParseFile(token.NewFileSet(), "", "package p\nfunc _() {\n"+text+"\n}", parser.SkipObjectResolution)
	return err == nil
}

// kindOf tells an item's kind from its first tokens. A var declaration is a statement: its variables are made in order
// with what stands around it.
func kindOf(l []lexeme) kind {
	switch l[0].tok {
	case token.IMPORT:
		return importDecl
	case token.TYPE:
		return typeDecl
	case token.CONST:
		return constDecl
	case token.PACKAGE:
		return packageClause
	case token.FUNC:
		if len(l) > 1 && l[1].tok == token.IDENT {
			return funcDecl
		}
		// A parenthesis may open a receiver, func (t T) Name(…), or the parameters of a literal.
		depth := 0
		for i, x := range l[1:] {
			switch x.tok {
			case token.LPAREN, token.LBRACK:
				depth++
			case token.RPAREN, token.RBRACK:
				depth--
				if depth == 0 {
					rest := l[i+2:]
					if len(rest) > 1 && rest[0].tok == token.IDENT && rest[1].tok == token.LPAREN && receiver(l[1:i+2]) &&
						hasBodyAfterParams(rest[1:]) {
						return funcDecl
					}
					return statement
				}
			}
		}
	}
	return statement
}

// receiver says whether a parenthesised list can be a receiver: one parameter.
func receiver(l []lexeme) bool {
	depth := 0
	for _, x := range l {
		switch x.tok {
		case token.LPAREN, token.LBRACK:
			depth++
		case token.RPAREN, token.RBRACK:
			depth--
		case token.COMMA:
			if depth == 1 {
				return false
			}
		}
	}
	return len(l) > 2
}

// hasBodyAfterParams tells func (t T) Name(a int) {…} from func (x int) T(y), a literal without a body (not Go).
func hasBodyAfterParams(l []lexeme) bool {
	for _, x := range l {
		if x.tok == token.LBRACE {
			return true
		}
	}
	return false
}
