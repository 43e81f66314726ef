package cell

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"slices"
	"strings"
)

// chunk is a part of a cell that is checked and run as a whole: declarations, then statements.
type chunk struct {
	decls, stmts []item
	late         map[int]string // start of a method in decls → its type, which an earlier cell declared
}

// arrange orders the items of a cell into chunks. Declarations come first, as in a file; but a function that uses a
// variable which a statement of the same cell declares comes after that statement, and the statements behind it follow.
// Methods of types that earlier cells declared come before what may call them.
//
// The key in a composite literal T{key: …} may be a variable or a field: keys says which to take it for.
func arrange(src string, items []item, names meaning, keys bool) []chunk {
	definers := map[string]int{} // name → index in stmts of the last statement that declares it
	var decls []decl
	var stmts []item
	for _, it := range items {
		switch it.kind {
		case statement:
			for _, name := range declares(src, it) {
				if !names.outside(name) {
					definers[name] = len(stmts)
				}
			}
			stmts = append(stmts, it)
		case importDecl, packageClause:
		default:
			decls = append(decls, describe(src, it))
		}
	}
	own := map[string]bool{}
	for _, d := range decls {
		for n := range d.names {
			own[n] = true
		}
	}
	late := map[string]bool{} // names of late methods
	for i := range decls {
		d := &decls[i]
		if d.method != "" && !own[d.base] && names.isType(d.base) {
			d.late = true
			late[d.method] = true
		}
	}
	// key says when a declaration comes: at 2n after n statements, at 2n+1 after the late methods there as well.
	key := make([]int, len(decls))
	for i, d := range decls {
		if d.kind == funcDecl || d.kind == varDecl {
			for w := range d.mentions {
				if at, ok := definers[w]; ok && 2*(at+1) > key[i] {
					key[i] = 2 * (at + 1)
				}
			}
			for w := range d.keys {
				if at, ok := definers[w]; ok && keys && 2*(at+1) > key[i] {
					key[i] = 2 * (at + 1)
				}
			}
		}
		for sel := range d.selects {
			if late[sel] && !d.late {
				key[i] |= 1
			}
		}
	}
	// What mentions a late declaration is late as well, and a type waits for its methods.
	for changed := true; changed; {
		changed = false
		raise := func(i, to int) {
			if key[i] < to {
				key[i], changed = to, true
			}
		}
		for i, d := range decls {
			for j, e := range decls {
				if i == j {
					continue
				}
				for n := range e.names {
					if d.mentions[n] {
						raise(i, key[j])
					}
					if d.base == n {
						raise(j, key[i])
					}
				}
			}
		}
	}
	var out []chunk
	cur := chunk{late: map[int]string{}}
	cut := func() {
		if len(cur.decls)+len(cur.stmts) > 0 {
			out, cur = append(out, cur), chunk{late: map[int]string{}}
		}
	}
	for k := 0; k <= 2*len(stmts)+1; k++ {
		for i, d := range decls {
			if key[i] != k {
				continue
			}
			if len(cur.stmts) > 0 || k%2 == 1 && len(cur.late) > 0 {
				cut()
			}
			cur.decls = append(cur.decls, d.item)
			if d.late {
				cur.late[d.start] = d.base
			}
		}
		if k%2 == 1 && k/2 < len(stmts) {
			if len(cur.late) > 0 {
				cut()
			}
			cur.stmts = append(cur.stmts, stmts[k/2])
		}
	}
	if len(cur.decls)+len(cur.stmts) > 0 || len(out) == 0 {
		out = append(out, cur)
	}
	return out
}

// meaning is what arrange must know of names.
type meaning struct {
	isType  func(name string) bool // of a type that an earlier cell declared
	outside func(name string) bool // of the language, or of a package that needs no import: functions mean these
}

func (s *Session) meaning() meaning {
	return meaning{
		isType:  func(n string) bool { _, ok := s.visible[n].(*types.TypeName); return ok },
		outside: func(n string) bool { _, ready := s.lib.Ready(n); return ready || types.Universe.Lookup(n) != nil },
	}
}

// decl is a declaration with what it declares and what it refers to outside itself.
type decl struct {
	item
	names    map[string]bool
	mentions map[string]bool
	keys     map[string]bool // keys of composite literals: fields, or variables outside
	selects  map[string]bool // names behind a dot
	method   string          // of a method: its name
	base     string          // and the name of its type
	late     bool            // the type is of an earlier cell
}

// describe parses a declaration by itself. One that does not parse declares nothing here; the check says why.
func describe(src string, it item) decl {
	d := decl{item: it, names: map[string]bool{}, mentions: map[string]bool{}, keys: map[string]bool{}, selects: map[string]bool{}}
	f, err := parser.ParseFile(token.NewFileSet(), "", "package p\n"+src[it.start:it.end], 0)
	if err != nil || len(f.Decls) != 1 {
		return d
	}
	for _, n := range topNames(f) {
		d.names[n] = true
	}
	if fd, ok := f.Decls[0].(*ast.FuncDecl); ok && fd.Recv != nil && len(fd.Recv.List) == 1 {
		d.method, d.base = fd.Name.Name, baseName(fd.Recv.List[0].Type)
	}
	for _, id := range f.Unresolved {
		d.mentions[id.Name] = true
	}
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.SelectorExpr:
			d.selects[n.Sel.Name] = true
		case *ast.KeyValueExpr: // the parser resolves no keys of composite literals
			if id, ok := n.Key.(*ast.Ident); ok {
				d.keys[id.Name] = true
			}
		}
		return true
	})
	return d
}

// declares lists the names that a statement declares at its top level.
func declares(src string, it item) []string {
	l, _ := lex(src[it.start:it.end])
	var names []string
	if len(l) == 0 {
		return nil
	}
	if l[0].tok == token.VAR {
		for n := range describe(src, it).names {
			names = append(names, n)
		}
		slices.Sort(names)
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

// render writes a chunk as the text of a Go file. Line comments give every item its place in the cell. A late method is
// written as a function of its receiver: go/types takes methods only with their type.
func (c chunk) render(src, name string, p *places) string {
	var b strings.Builder
	b.WriteString("package main\n")
	place := func(off int) string {
		line, col := p.at(off)
		return fmt.Sprintf("/*line %s:%d:%d*/", name, line, col)
	}
	for _, d := range c.decls {
		text := src[d.start:d.end]
		if _, ok := c.late[d.start]; ok {
			b.WriteString(asFunction(text, d.start, place) + "\n")
			continue
		}
		b.WriteString(place(d.start) + text + "\n")
	}
	b.WriteString("func _() {\n")
	for _, s := range c.stmts {
		b.WriteString(place(s.start) + src[s.start:s.end] + "\n")
	}
	b.WriteString("}\n")
	return b.String()
}
