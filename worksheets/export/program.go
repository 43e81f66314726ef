package export

import (
	"fmt"
	"go/ast"
	"go/format"
	"go/token"
	"go/types"
	"slices"
	"strings"

	"swanneck/kernel/cell"
)

// Cell is a code cell with its name in messages.
type Cell struct{ Name, Source string }

// Program returns the worksheet as the text of a Go file, formatted. title is put into its head. The error of a cell
// that the checker refuses is a cell.ErrorList, wrapped.
func Program(title string, cells []Cell, lib cell.Library) ([]byte, error) {
	w := &writer{
		session: cell.NewSession(lib), lib: lib,
		taken: map[string]bool{"main": true, "init": true, "sheet": true, "cellapi": true},
		names: map[types.Object]string{}, imports: map[string]string{},
	}
	for _, n := range types.Universe.Names() {
		w.taken[n] = true
	}
	var bodies []string
	for i, c := range cells {
		checked, err := w.session.Check(c.Name, c.Source)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", c.Name, err)
		}
		body, err := w.cell(checked, c.Source)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", c.Name, err)
		}
		checked.Commit(len(checked.Chunks), 0)
		if strings.TrimSpace(body) != "" {
			name := fmt.Sprintf("cell%d", i+1)
			bodies = append(bodies, name)
			fmt.Fprintf(&w.funcs, "\nfunc %s() {\n%s\n}\n", name, body)
		}
	}
	return w.file(title, bodies)
}

type writer struct {
	session *cell.Session
	lib     cell.Library
	taken   map[string]bool         // names at the top level of the program
	names   map[types.Object]string // what an object of the session is called in the program
	imports map[string]string       // path → name
	decls   strings.Builder         // types, constants, functions
	vars    strings.Builder
	funcs   strings.Builder
}

func (w *writer) file(title string, bodies []string) ([]byte, error) {
	var b strings.Builder
	fmt.Fprintf(&b, "// Command main is the worksheet %q as a Go program. It prints what the worksheet shows.\n", strings.ReplaceAll(title, "\n", " "))
	b.WriteString("//\n// Build it inside a checkout of the module swanneck: put it into a folder of its own there and use go run on it.\n")
	b.WriteString("package main\n\nimport (\n")
	var paths []string
	for p := range w.imports {
		paths = append(paths, p)
	}
	slices.Sort(paths)
	for _, p := range paths {
		if p[strings.LastIndex(p, "/")+1:] == w.imports[p] {
			fmt.Fprintf(&b, "\t%q\n", p)
		} else {
			fmt.Fprintf(&b, "\t%s %q\n", w.imports[p], p)
		}
	}
	b.WriteString(")\n\n")
	b.WriteString(w.vars.String())
	b.WriteString(w.decls.String())
	b.WriteString(w.funcs.String())
	b.WriteString("\nfunc main() {\n")
	for _, name := range bodies {
		fmt.Fprintf(&b, "\t%s()\n", name)
	}
	b.WriteString("}\n")
	out, err := format.Source([]byte(b.String()))
	if err != nil {
		return nil, fmt.Errorf("export: the program does not parse: %w", err)
	}
	return out, nil
}

// pkgName returns how the program calls a package.
func (w *writer) pkgName(p *types.Package) string {
	if n, ok := w.imports[p.Path()]; ok {
		return n
	}
	n := w.unique(p.Name())
	if p.Path() == "swanneck/mathlib/sheet" || p.Path() == "swanneck/worksheets/cellapi" {
		n = p.Name()
	}
	w.imports[p.Path()] = n
	return n
}

// unique returns a name at the program's top level that nothing else has.
func (w *writer) unique(name string) string {
	n := name
	for i := 2; w.taken[n]; i++ {
		n = fmt.Sprintf("%s%d", name, i)
		if c := name[len(name)-1]; c >= '0' && c <= '9' {
			n = fmt.Sprintf("%s_%d", name, i)
		}
	}
	w.taken[n] = true
	return n
}

// cell adds the declarations of a cell to the program and returns its statements as text.
func (w *writer) cell(c *cell.Checked, src string) (string, error) {
	var body strings.Builder
	for i := range c.Chunks {
		ch := &c.Chunks[i]
		t := &chunkText{w: w, ch: ch, src: src, fset: w.session.Fset(), lines: lineStarts(src)}
		vars := slices.Clone(ch.Globals)
		for _, o := range ch.Declared() {
			if v, ok := o.(*types.Var); ok {
				vars = append(vars, v)
			} else {
				w.names[o] = w.unique(o.Name())
			}
		}
		for _, fd := range ch.Funcs {
			if fd.Recv == nil && fd.Name.Name == "init" {
				w.names[ch.Info.Defs[fd.Name]] = w.unique("setUp")
			}
		}
		for _, v := range vars {
			if v.Name() == "_" {
				continue
			}
			w.names[v] = w.unique(v.Name())
			typ, err := w.typeText(v.Type())
			if err != nil {
				return "", fmt.Errorf("%s: %w", v.Name(), err)
			}
			fmt.Fprintf(&w.vars, "var %s %s\n", w.names[v], typ)
		}
		for _, d := range ch.Decls {
			if g, ok := d.(*ast.GenDecl); ok && g.Tok == token.VAR {
				continue // set below, in the cell's turn
			}
			text, err := t.node(d)
			if err != nil {
				return "", err
			}
			fmt.Fprintf(&w.decls, "\n%s\n", text)
		}
		for _, in := range ch.Info.InitOrder {
			text, err := t.node(in.Rhs)
			if err != nil {
				return "", err
			}
			fmt.Fprintf(&body, "%s = %s\n", t.lhs(in.Lhs), text)
		}
		for _, fd := range ch.Funcs {
			if fd.Recv == nil && fd.Name.Name == "init" {
				o := ch.Info.Defs[fd.Name]
				fmt.Fprintf(&body, "%s()\n", w.names[o])
			}
		}
		for _, s := range ch.Body.List {
			text, err := t.statement(s)
			if err != nil {
				return "", err
			}
			body.WriteString(t.comments(s) + text)
		}
		if ch.Last != nil {
			text, err := t.node(ch.Last)
			if err != nil {
				return "", err
			}
			body.WriteString(t.comments(ch.Last) + w.pkgName(w.cellapi()) + ".Show(" + text + ")")
		}
	}
	return body.String(), nil
}

func (w *writer) cellapi() *types.Package {
	p, err := w.lib.Import("swanneck/worksheets/cellapi")
	if err != nil {
		panic(err) // it is on every whitelist
	}
	return p
}

// typeText writes a type as the program names it.
func (w *writer) typeText(t types.Type) (string, error) {
	var bad string
	text := types.TypeString(t, func(p *types.Package) string {
		if p == w.session.Pkg() {
			return ""
		}
		return w.pkgName(p)
	})
	// Types of the session may have another name in the program.
	seen := map[types.Type]bool{}
	var walk func(types.Type)
	renames := map[string]string{}
	walk = func(t types.Type) {
		if t == nil || seen[t] {
			return
		}
		seen[t] = true
		switch t := t.(type) {
		case *types.Alias:
			walk(types.Unalias(t))
		case *types.Named:
			o := t.Obj()
			if o.Pkg() == w.session.Pkg() {
				if n, ok := w.names[o]; ok && n != o.Name() {
					renames[o.Name()] = n
				} else if !ok {
					bad = o.Name()
				}
			} else if o.Pkg() != nil && !o.Exported() {
				bad = o.Pkg().Name() + "." + o.Name()
			}
			for a := range t.TypeArgs().Types() {
				walk(a)
			}
		case interface{ Elem() types.Type }:
			if m, ok := t.(*types.Map); ok {
				walk(m.Key())
			}
			walk(t.Elem())
		case *types.Signature:
			for v := range t.Params().Variables() {
				walk(v.Type())
			}
			for v := range t.Results().Variables() {
				walk(v.Type())
			}
		case *types.Struct:
			for f := range t.Fields() {
				walk(f.Type())
			}
		}
	}
	walk(t)
	if bad != "" {
		return "", fmt.Errorf("not supported in an export: a variable of type %s, which has no name at the top of a program", bad)
	}
	for from, to := range renames {
		text = replaceWord(text, from, to)
	}
	return text, nil
}

func replaceWord(s, from, to string) string {
	var b strings.Builder
	for i := 0; i < len(s); {
		if strings.HasPrefix(s[i:], from) && (i == 0 || !wordByte(s[i-1]) && s[i-1] != '.') && (i+len(from) == len(s) || !wordByte(s[i+len(from)])) {
			b.WriteString(to)
			i += len(from)
			continue
		}
		b.WriteByte(s[i])
		i++
	}
	return b.String()
}

func wordByte(c byte) bool {
	return c == '_' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= 0x80
}

func lineStarts(src string) []int {
	out := []int{0}
	for i := range len(src) {
		if src[i] == '\n' {
			out = append(out, i+1)
		}
	}
	return out
}
