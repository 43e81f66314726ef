package cell

import (
	"go/ast"
	"go/token"
	"go/types"
	"strings"
)

// Hover is what there is to say about a name.
type Hover struct {
	Decl       string // its declaration, in Go
	Doc        string // its documentation, or empty
	Start, End int    // the name in the cell, in bytes
}

// Hover describes the name at a byte offset of a cell, or else the function in whose brackets the offset is; ok is false
// where there is neither.
func (s *Session) Hover(src string, offset int) (h Hover, ok bool) {
	offset = max(0, min(offset, len(src)))
	if h, ok = s.describeName(src, offset); ok {
		return h, true
	}
	if at, inside := calledAround(src, offset); inside {
		return s.describeName(src, at)
	}
	return h, false
}

// calledAround finds the name before the bracket that is open at an offset.
func calledAround(src string, offset int) (at int, ok bool) {
	l, _ := lex(src)
	depth := 0
	for i := len(l) - 1; i > 0; i-- {
		if l[i].off >= offset {
			continue
		}
		switch l[i].tok {
		case token.RPAREN, token.RBRACK, token.RBRACE:
			depth++
		case token.LPAREN, token.LBRACK, token.LBRACE:
			depth--
		}
		if depth < 0 {
			before := l[i-1]
			if l[i].tok == token.LPAREN && before.tok == token.IDENT {
				return before.off, true
			}
			depth = 0 // a literal within the arguments: look further out
		}
	}
	return 0, false
}

// describeName describes the name at an offset.
func (s *Session) describeName(src string, offset int) (h Hover, ok bool) {
	start, end := wordStart(src, offset), wordEnd(src, offset)
	if start == end || inText(src, offset) {
		return h, false
	}
	p := newPlaces(src)
	line, col := p.at(start)
	for _, c := range s.look(src) {
		ast.Inspect(c.file, func(n ast.Node) bool {
			id, isIdent := n.(*ast.Ident)
			if !isIdent || ok {
				return !ok
			}
			at := c.fset.Position(id.Pos())
			if at.Line != line || at.Column != col || at.Filename != "look" || id.Name != src[start:end] {
				return true
			}
			o := c.info.Uses[id]
			if o == nil {
				o = c.info.Defs[id]
			}
			if o != nil {
				h = Hover{Decl: types.ObjectString(o, s.shortName()), Doc: s.doc(o, c.info, c.file, id), Start: start, End: end}
				ok = true
			}
			return true
		})
		if ok {
			return h, true
		}
	}
	// A name that is not part of a whole cell yet.
	if o := s.Lookup(src[start:end]); o != nil && !(start > 0 && src[start-1] == '.') {
		return Hover{Decl: types.ObjectString(o, s.shortName()), Doc: s.doc(o, nil, nil, nil), Start: start, End: end}, true
	}
	return h, false
}

// doc finds the documentation of an object of a library.
func (s *Session) doc(o types.Object, info *types.Info, file *ast.File, id *ast.Ident) string {
	lib, ok := s.lib.(interface {
		Docs(path string) (map[string]string, error)
	})
	if !ok {
		return ""
	}
	key := o.Name()
	pkg := o.Pkg()
	switch o := o.(type) {
	case *types.PkgName:
		key, pkg = "", o.Imported()
	case *types.Func:
		if recv := o.Signature().Recv(); recv != nil {
			if n, ok := receiverType(recv.Type()); ok {
				key = n.Obj().Name() + "." + key
			}
		}
	case *types.Var:
		if o.IsField() {
			owner := fieldOwner(info, file, id)
			if owner == nil {
				return ""
			}
			key, pkg = owner.Name()+"."+key, owner.Pkg()
		}
	}
	if pkg == nil || pkg == s.pkg {
		return ""
	}
	docs, err := lib.Docs(pkg.Path())
	if err != nil {
		return ""
	}
	if text := docs[key]; text != "" {
		return text
	}
	if t, ok := o.(*types.TypeName); ok { // an alias: the documentation of what it stands for
		if n, ok := types.Unalias(t.Type()).(*types.Named); ok && n.Obj() != o && n.Obj().Pkg() != nil {
			return s.doc(n.Obj(), nil, nil, nil)
		}
	}
	return ""
}

// fieldOwner finds the type whose field is named at an identifier.
func fieldOwner(info *types.Info, file *ast.File, id *ast.Ident) *types.TypeName {
	if info == nil || file == nil {
		return nil
	}
	var owner *types.TypeName
	named := func(t types.Type) {
		if t == nil {
			return
		}
		if n, ok := receiverType(t); ok {
			owner = n.Obj()
		}
	}
	ast.Inspect(file, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.SelectorExpr:
			if n.Sel == id {
				named(info.Types[n.X].Type)
			}
		case *ast.CompositeLit:
			for _, e := range n.Elts {
				if kv, ok := e.(*ast.KeyValueExpr); ok && kv.Key == id {
					named(info.Types[n].Type)
				}
			}
		}
		return true
	})
	return owner
}

// Incomplete says whether a cell lacks its end: an open bracket, string or comment, or an operator without its right
// side. Front ends ask this to decide whether a line break ends the input.
func Incomplete(src string) bool {
	l, errs := lex(src)
	for _, e := range errs {
		if strings.HasPrefix(e.Msg, "raw string literal not terminated") || strings.HasPrefix(e.Msg, "comment not terminated") {
			return true // a raw string or a comment; others end with their line
		}
	}
	if closers(src) != "" {
		return true
	}
	if len(l) == 0 {
		return false
	}
	last := l[len(l)-1]
	return last.tok.IsOperator() && last.tok.String() != ")" && last.tok.String() != "]" && last.tok.String() != "}" &&
		last.tok.String() != ";" && last.tok.String() != "++" && last.tok.String() != "--"
}
