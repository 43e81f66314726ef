package export

import (
	"fmt"
	"go/ast"
	"go/scanner"
	"go/token"
	"go/types"
	"sort"
	"strings"

	"swanneck/kernel/cell"
)

// chunkText rewrites the text of a chunk's nodes.
type chunkText struct {
	w     *writer
	ch    *cell.Chunk
	src   string
	fset  *token.FileSet
	lines []int
}

// edit replaces a stretch of a cell's text.
type edit struct {
	start, end int
	text       string
}

// offset returns where a position is in the cell's text.
func (t *chunkText) offset(p token.Pos) int {
	at := t.fset.Position(p)
	return t.lines[at.Line-1] + at.Column - 1
}

// comments returns the line ends and comments between the item before a node and the node.
func (t *chunkText) comments(n ast.Node) string {
	start := t.offset(n.Pos())
	before := 0
	for _, it := range t.items() {
		if end := t.offset(it.End()); end <= start && end > before {
			before = end
		}
	}
	gap := strings.TrimLeft(t.src[before:start], "; ")
	if !strings.Contains(gap, "\n") {
		return "\n"
	}
	var s scanner.Scanner
	file := token.NewFileSet().AddFile("", -1, len(gap))
	s.Init(file, []byte(gap), nil, 0)
	for {
		_, tok, lit := s.Scan()
		switch {
		case tok == token.EOF:
			return gap
		case tok != token.SEMICOLON || lit != "\n":
			return "\n"
		}
	}
}

func (t *chunkText) items() []ast.Node {
	var out []ast.Node
	for _, d := range t.ch.Decls {
		out = append(out, d)
	}
	for _, s := range t.ch.Body.List {
		out = append(out, s)
	}
	return out
}

// node returns the text of a node with names put right.
func (t *chunkText) node(n ast.Node) (string, error) { return t.apply(n, nil) }

// statement returns the text of a statement at the top level of a cell: its declarations are assignments there.
func (t *chunkText) statement(s ast.Stmt) (string, error) {
	var more []edit
	inner := s
	for {
		l, ok := inner.(*ast.LabeledStmt)
		if !ok {
			break
		}
		inner = l.Stmt
	}
	switch s := inner.(type) {
	case *ast.AssignStmt:
		if s.Tok == token.DEFINE {
			at := t.offset(s.TokPos)
			more = append(more, edit{at, at + len(":="), "="})
		}
	case *ast.DeclStmt:
		if d, ok := s.Decl.(*ast.GenDecl); ok && d.Tok == token.VAR {
			return t.vars(d)
		}
	}
	return t.apply(s, more)
}

// vars writes a var declaration as assignments. One without values needs none: a package variable starts as zero.
func (t *chunkText) vars(d *ast.GenDecl) (string, error) {
	var b strings.Builder
	for _, spec := range d.Specs {
		v := spec.(*ast.ValueSpec)
		if len(v.Values) == 0 {
			continue
		}
		for i, n := range v.Names {
			if i > 0 {
				b.WriteString(", ")
			}
			b.WriteString(t.name(n))
		}
		b.WriteString(" = ")
		for i, x := range v.Values {
			text, err := t.node(x)
			if err != nil {
				return "", err
			}
			if i > 0 {
				b.WriteString(", ")
			}
			b.WriteString(text)
		}
		b.WriteString("\n")
	}
	return b.String(), nil
}

// lhs lists what variables are called, for an assignment.
func (t *chunkText) lhs(vars []*types.Var) string {
	names := make([]string, len(vars))
	for i, v := range vars {
		names[i] = v.Name()
		if n, ok := t.w.names[v]; ok {
			names[i] = n
		}
	}
	return strings.Join(names, ", ")
}

// name returns what an identifier is called in the program.
func (t *chunkText) name(id *ast.Ident) string {
	o := t.ch.Info.Defs[id]
	if o == nil {
		o = t.ch.Info.Uses[id]
	}
	switch o := o.(type) {
	case nil:
		return id.Name
	case *types.PkgName:
		return t.w.pkgName(o.Imported())
	}
	if n, ok := t.w.names[o]; ok {
		return n
	}
	return id.Name
}

// apply rewrites a node's text.
func (t *chunkText) apply(n ast.Node, edits []edit) (string, error) {
	info := t.ch.Info
	selected := map[*ast.Ident]bool{} // behind a dot, or keys: not names of the top level
	ast.Inspect(n, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.SelectorExpr:
			selected[n.Sel] = true
		case *ast.KeyValueExpr:
			if id, ok := n.Key.(*ast.Ident); ok {
				if v, ok := info.Uses[id].(*types.Var); ok && v.IsField() {
					selected[id] = true
				}
			}
		case *ast.FuncDecl:
			if n.Recv != nil {
				selected[n.Name] = true
			}
		case *ast.Field:
			for _, id := range n.Names {
				if v, ok := info.Defs[id].(*types.Var); ok && v.IsField() {
					selected[id] = true
				}
			}
		}
		return true
	})
	edits = append(edits, t.unused(n)...)
	ast.Inspect(n, func(n ast.Node) bool {
		id, ok := n.(*ast.Ident)
		if !ok || selected[id] || id.Name == "_" {
			return true
		}
		text := t.name(id)
		if o := info.Uses[id]; o != nil && o.Pkg() != nil && o.Pkg() != t.w.session.Pkg() {
			if _, isPkg := o.(*types.PkgName); !isPkg && o.Parent() == o.Pkg().Scope() {
				text = t.w.pkgName(o.Pkg()) + "." + o.Name() // predeclared, or imported with a dot
			}
		}
		if text != id.Name {
			at := t.offset(id.Pos())
			edits = append(edits, edit{at, at + len(id.Name), text})
		}
		return true
	})
	start, end := t.offset(n.Pos()), t.offset(n.End())
	sort.SliceStable(edits, func(i, j int) bool { return edits[i].start < edits[j].start })
	var b strings.Builder
	at := start
	for _, e := range edits {
		if e.start < at {
			continue
		}
		b.WriteString(t.src[at:e.start] + e.text)
		at = e.end
	}
	b.WriteString(t.src[at:end])
	return b.String(), nil
}

// unused finds local variables that nothing uses, which Go refuses and cells allow, and makes the edits that use them.
func (t *chunkText) unused(n ast.Node) []edit {
	info := t.ch.Info
	used := map[types.Object]bool{}
	for _, o := range info.Uses {
		used[o] = true
	}
	var out []edit
	note := func(at token.Pos, format string, ids ...ast.Expr) {
		for _, x := range ids {
			id, ok := x.(*ast.Ident)
			if !ok || id.Name == "_" {
				continue
			}
			if v, ok := info.Defs[id].(*types.Var); ok && !used[v] && t.w.names[v] == "" {
				off := t.offset(at)
				out = append(out, edit{off, off, fmt.Sprintf(format, id.Name)})
			}
		}
	}
	declared := func(s ast.Stmt, at token.Pos, format string) {
		switch s := s.(type) {
		case *ast.AssignStmt:
			if s.Tok == token.DEFINE {
				note(at, format, s.Lhs...)
			}
		case *ast.DeclStmt:
			if d, ok := s.Decl.(*ast.GenDecl); ok && d.Tok == token.VAR {
				for _, spec := range d.Specs {
					for _, id := range spec.(*ast.ValueSpec).Names {
						note(at, format, id)
					}
				}
			}
		}
	}
	list := func(stmts []ast.Stmt) {
		for _, s := range stmts {
			declared(s, s.End(), "; _ = %s")
		}
	}
	const inBody = " _ = %s; "
	ast.Inspect(n, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.BlockStmt:
			list(n.List)
		case *ast.CaseClause:
			list(n.Body)
		case *ast.CommClause:
			list(n.Body)
			if n.Comm != nil {
				declared(n.Comm, n.Colon+1, inBody)
			}
		case *ast.IfStmt:
			declared(n.Init, n.Body.Lbrace+1, inBody)
		case *ast.ForStmt:
			declared(n.Init, n.Body.Lbrace+1, inBody)
		case *ast.RangeStmt:
			if n.Tok == token.DEFINE {
				note(n.Body.Lbrace+1, inBody, n.Key, n.Value)
			}
		case *ast.SwitchStmt:
			if n.Init != nil && len(n.Body.List) > 0 {
				declared(n.Init, n.Body.List[0].(*ast.CaseClause).Colon+1, inBody)
			}
		case *ast.TypeSwitchStmt:
			if a, ok := n.Assign.(*ast.AssignStmt); ok && !t.anyUsed(n.Body.List, used) {
				out = append(out, edit{t.offset(a.Pos()), t.offset(a.Rhs[0].Pos()), ""})
			}
		}
		return true
	})
	return out
}

// anyUsed says whether any clause of a type switch uses the variable that the switch declares.
func (t *chunkText) anyUsed(clauses []ast.Stmt, used map[types.Object]bool) bool {
	for _, c := range clauses {
		if used[t.ch.Info.Implicits[c]] {
			return true
		}
	}
	return false
}
