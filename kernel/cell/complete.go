package cell

import (
	"go/ast"
	"go/token"
	"go/types"
	"regexp"
	"sort"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Completion is a way to go on at the cursor.
type Completion struct {
	Text string
	Kind string // "function", "method", "variable", "field", "type", "constant", "package" or "keyword"
	Type string // as Go writes it; empty for keywords and packages
}

// placeholder stands at the cursor while the cell is looked at.
const placeholder = "ˑcursorˑ"

// Complete lists what may stand at a byte offset of a cell, and the stretch of text that it would replace.
func (s *Session) Complete(src string, offset int) (list []Completion, start, end int) {
	offset = max(0, min(offset, len(src)))
	start = wordStart(src, offset)
	prefix := src[start:offset]
	l, _ := lex(src[:start])
	if n := len(l); n > 0 && l[n-1].tok == token.ILLEGAL || inText(src, offset) {
		return nil, offset, offset // within a string or a comment
	}
	seen := map[string]bool{}
	add := func(c Completion) {
		if !seen[c.Text] && len(c.Text) >= len(prefix) && strings.EqualFold(c.Text[:len(prefix)], prefix) && c.Text != "_" && !strings.Contains(c.Text, "ˑ") {
			seen[c.Text] = true
			list = append(list, c)
		}
	}
	dot := start > 0 && src[start-1] == '.'
	for _, c := range s.look(src[:start] + placeholder) {
		ast.Inspect(c.file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.SelectorExpr:
				if n.Sel.Name == placeholder {
					s.members(c.info, n.X, add)
				}
			case *ast.CompositeLit:
				for _, e := range n.Elts {
					if id, ok := e.(*ast.Ident); ok && id.Name == placeholder {
						if tv, ok := c.info.Types[n]; ok {
							fields(tv.Type, s.pkg, s.shortName(), add)
						}
					}
				}
			case *ast.Ident:
				if n.Name == placeholder && !dot {
					s.locals(n.Pos(), add)
				}
			}
			return true
		})
	}
	if !dot {
		for _, n := range s.Names() {
			add(s.describe(s.visible[n]))
		}
		for _, n := range s.lib.PredeclaredNames() {
			add(s.describe(s.lib.Predeclared(n)))
		}
		if r, ok := s.lib.(interface{ ReadyNames() []string }); ok {
			for _, n := range r.ReadyNames() {
				add(Completion{Text: n, Kind: "package"})
			}
		}
		for _, n := range types.Universe.Names() {
			add(s.describe(types.Universe.Lookup(n)))
		}
		for t := token.BREAK; t <= token.VAR; t++ {
			add(Completion{Text: t.String(), Kind: "keyword"})
		}
	}
	sort.SliceStable(list, func(i, j int) bool { // what is written as begun comes first
		return strings.HasPrefix(list[i].Text, prefix) && !strings.HasPrefix(list[j].Text, prefix)
	})
	return list, start, wordEnd(src, offset)
}

// locals adds the names of the scopes around a position.
func (s *Session) locals(pos token.Pos, add func(Completion)) {
	for scope := s.pkg.Scope().Innermost(pos); scope != nil && scope != types.Universe; scope = scope.Parent() {
		for _, n := range scope.Names() {
			o := scope.Lookup(n)
			if _, isVar := o.(*types.Var); isVar && scope != s.pkg.Scope() && o.Pos() > pos {
				continue // declared further down
			}
			add(s.describe(o))
		}
	}
}

// members adds what may stand behind a dot.
func (s *Session) members(info *types.Info, x ast.Expr, add func(Completion)) {
	if id, ok := x.(*ast.Ident); ok {
		if p, ok := info.Uses[id].(*types.PkgName); ok {
			for _, n := range p.Imported().Scope().Names() {
				if o := p.Imported().Scope().Lookup(n); o.Exported() {
					add(s.describe(o))
				}
			}
			return
		}
	}
	tv, ok := info.Types[x]
	if !ok || tv.Type == nil {
		return
	}
	t := tv.Type
	fields(t, s.pkg, s.shortName(), add)
	if !types.IsInterface(t) {
		if _, isPtr := t.Underlying().(*types.Pointer); !isPtr && tv.Addressable() {
			t = types.NewPointer(t)
		}
	}
	set := types.NewMethodSet(t)
	for sel := range set.Methods() {
		if o := sel.Obj(); (o.Exported() || o.Pkg() == s.pkg) && !s.isDead(o) {
			add(s.describe(o))
		}
	}
}

func (s *Session) isDead(o types.Object) bool {
	fn, ok := o.(*types.Func)
	return ok && s.dead[fn]
}

// fields adds the fields of a struct, or of the struct a pointer leads to, embedded ones' fields included.
func fields(t types.Type, pkg *types.Package, short types.Qualifier, add func(Completion)) {
	seen := map[types.Type]bool{}
	var walk func(types.Type)
	walk = func(t types.Type) {
		if p, ok := t.Underlying().(*types.Pointer); ok {
			t = p.Elem()
		}
		st, ok := t.Underlying().(*types.Struct)
		if !ok || seen[t] {
			return
		}
		seen[t] = true
		for f := range st.Fields() {
			if f.Exported() || f.Pkg() == pkg {
				add(Completion{Text: f.Name(), Kind: "field", Type: types.TypeString(f.Type(), short)})
			}
			if f.Embedded() {
				walk(f.Type())
			}
		}
	}
	walk(t)
}

// shortName writes packages by their names, and not at all the cells' own and those whose names stand in every cell
// without one.
func (s *Session) shortName() types.Qualifier {
	return func(p *types.Package) string {
		if p == s.pkg || s.unnamed()[p.Path()] {
			return ""
		}
		return p.Name()
	}
}

// unnamed lists the packages, by path, whose names are predeclared in cells, and those that the predeclared types come
// from.
func (s *Session) unnamed() map[string]bool {
	if s.plain != nil {
		return s.plain
	}
	s.plain = map[string]bool{}
	for _, n := range s.lib.PredeclaredNames() {
		o := s.lib.Predeclared(n)
		if o == nil || o.Pkg() == nil {
			continue
		}
		s.plain[o.Pkg().Path()] = true
		if t, ok := o.(*types.TypeName); ok {
			if named, ok := types.Unalias(t.Type()).(*types.Named); ok && named.Obj().Pkg() != nil {
				s.plain[named.Obj().Pkg().Path()] = true
			}
		}
	}
	return s.plain
}

// withoutPackages takes the names of these packages from a message of the checker, which no cell needs to write. What the
// cells import by name keeps it.
func (s *Session) withoutPackages(msg string) string {
	for path := range s.unnamed() {
		name := path[strings.LastIndexByte(path, '/')+1:]
		if _, imported := s.visible[name].(*types.PkgName); !imported && strings.Contains(msg, name+".") {
			msg = regexp.MustCompile(`(^|[^\w./])(?:`+regexp.QuoteMeta(path)+`|`+name+`)\.([A-Z])`).ReplaceAllString(msg, "$1$2")
		}
	}
	return msg
}

func (s *Session) describe(o types.Object) Completion {
	c := Completion{Text: o.Name(), Type: types.TypeString(o.Type(), s.shortName())}
	switch o := o.(type) {
	case *types.Func:
		c.Kind = "function"
		if o.Signature().Recv() != nil {
			c.Kind = "method"
		}
	case *types.TypeName:
		c.Kind = "type"
		c.Type = types.TypeString(o.Type().Underlying(), s.shortName())
	case *types.Const, *types.Nil:
		c.Kind = "constant"
	case *types.PkgName:
		c.Kind, c.Type = "package", ""
	case *types.Builtin:
		c.Kind, c.Type = "function", ""
	default:
		c.Kind = "variable"
	}
	return c
}

func wordStart(src string, at int) int {
	for at > 0 {
		r, n := utf8.DecodeLastRuneInString(src[:at])
		if r != '_' && !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			break
		}
		at -= n
	}
	return at
}

func wordEnd(src string, at int) int {
	for at < len(src) {
		r, n := utf8.DecodeRuneInString(src[at:])
		if r != '_' && !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			break
		}
		at += n
	}
	return at
}

// inText says whether an offset lies within a string, a rune or a comment.
func inText(src string, offset int) bool {
	l, _ := lexComments(src)
	for _, x := range l {
		switch x.tok {
		case token.STRING, token.CHAR, token.COMMENT:
			end := x.off + len(x.lit)
			if offset > x.off && (offset < end || offset == end && x.tok == token.COMMENT && !strings.HasPrefix(x.lit, "/*")) {
				return true
			}
		}
	}
	return false
}
