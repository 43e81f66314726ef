package cell

import (
	"errors"
	"fmt"
	"go/ast"
	"go/constant"
	"go/parser"
	"go/scanner"
	"go/token"
	"go/types"
	"maps"
	"math"
	"strconv"
	"strings"
)

// Check parses and type-checks a cell against what earlier cells left alive. It changes nothing that later cells can
// see: Commit does. The error is an ErrorList with places in the cell.
func (s *Session) Check(name, src string) (checked *Checked, err error) {
	defer func() {
		// The front end must survive any text. A fault of its own refuses the cell.
		if r := recover(); r != nil {
			checked, err = nil, ErrorList{{Line: 1, Col: 1, Msg: fmt.Sprintf("not supported in cells: the checker failed on this text (%v)", r)}}
		}
	}()
	lexemes, lexErrs := lex(src)
	p := newPlaces(src)
	if len(lexErrs) > 0 {
		return nil, fromScanner(lexErrs)
	}
	if e := lineComment(src, p); e != nil {
		return nil, ErrorList{e}
	}
	if e := balanced(lexemes, p); e != nil {
		return nil, ErrorList{e}
	}
	items := split(src, lexemes)
	program := len(items) > 0 && items[0].kind == packageClause
	for i, it := range items {
		if it.kind != packageClause {
			continue
		}
		if text := strings.Join(strings.Fields(src[it.start:it.end]), " "); i > 0 || !strings.HasPrefix(text, "package main") {
			return nil, ErrorList{errorAt(p.position(it.start), "not supported in cells: a package other than main")}
		}
	}
	c := &Checked{Name: name, session: s}
	extra := map[string]types.Object{}
	if errs := s.imported(c, src, items, p, extra); len(errs) > 0 {
		return nil, errs.tidy()
	}
	if program {
		if err := s.checkParts(c, src, []chunk{wholeProgram(items)}, p, extra, true); err != nil {
			return nil, err
		}
		return c, nil
	}
	names := s.meaning()
	err = s.checkParts(c, src, arrange(src, items, names, false), p, extra, false)
	if err != nil && strings.Contains(err.Error(), ": undefined: ") {
		// Keys of composite literals may have been variables after all.
		again := &Checked{Name: name, session: s, imports: c.imports}
		if s.checkParts(again, src, arrange(src, items, names, true), p, extra, false) == nil {
			return again, nil
		}
	}
	if err != nil {
		return nil, err
	}
	return c, nil
}

// checkParts checks the chunks of a cell one after the other; each sees what those before it declare.
func (s *Session) checkParts(c *Checked, src string, parts []chunk, p *places, imported map[string]types.Object, program bool) error {
	extra := maps.Clone(imported)
	added := map[*types.Func]bool{}
	var errs ErrorList
	for i, part := range parts {
		ch, es := s.checkChunk(c.Name, src, part, p, extra, program, i == len(parts)-1 && !program)
		errs = append(errs, es...)
		if ch == nil || len(errs) > 0 {
			break
		}
		if es := s.addMethods(ch, added); len(es) > 0 {
			errs = append(errs, es...)
			break
		}
		c.Chunks = append(c.Chunks, *ch)
		for _, o := range ch.declared {
			extra[o.Name()] = o
		}
		for _, v := range ch.Globals {
			extra[v.Name()] = v
		}
	}
	if len(errs) == 0 {
		return nil
	}
	for m := range added { // go/types cannot take a method back; nobody may see it
		s.dead[m] = true
	}
	return errs.tidy()
}

// lineComment refuses comments that would move the places of messages.
func lineComment(src string, p *places) *Error {
	if !strings.Contains(src, "//line ") && !strings.Contains(src, "/*line ") {
		return nil
	}
	l, _ := lexComments(src)
	for _, x := range l {
		if x.tok == token.COMMENT && (strings.HasPrefix(x.lit, "//line ") || strings.HasPrefix(x.lit, "/*line ")) {
			return errorAt(p.position(x.off), "not supported in cells: a comment that begins with \"line\" and a place")
		}
	}
	return nil
}

// balanced refuses brackets without their partner, so that no item can end the function it is put into.
func balanced(l []lexeme, p *places) *Error {
	partner := map[token.Token]token.Token{token.RPAREN: token.LPAREN, token.RBRACE: token.LBRACE, token.RBRACK: token.LBRACK}
	var open []lexeme
	for _, x := range l {
		switch x.tok {
		case token.LPAREN, token.LBRACE, token.LBRACK:
			open = append(open, x)
		case token.RPAREN, token.RBRACE, token.RBRACK:
			if len(open) == 0 || open[len(open)-1].tok != partner[x.tok] {
				return errorAt(p.position(x.off), "syntax error: unexpected %s", x.tok)
			}
			open = open[:len(open)-1]
		}
	}
	if n := len(open); n > 0 {
		return errorAt(p.position(open[n-1].off), "syntax error: this %s is never closed", open[n-1].tok)
	}
	return nil
}

func fromScanner(list scanner.ErrorList) ErrorList {
	var out ErrorList
	for _, e := range list {
		out = append(out, &Error{Line: e.Pos.Line, Col: e.Pos.Column, Msg: "syntax error: " + e.Msg, Hint: hint(e.Msg)})
	}
	return out.tidy()
}

// imported reads the import declarations of a cell.
func (s *Session) imported(c *Checked, src string, items []item, p *places, extra map[string]types.Object) ErrorList {
	var errs ErrorList
	for _, it := range items {
		if it.kind != importDecl {
			continue
		}
		line, col := p.at(it.start)
		text := fmt.Sprintf("package main\n/*line %s:%d:%d*/%s\n", c.Name, line, col, src[it.start:it.end])
		f, err := parser.ParseFile(s.fset, c.Name, text, parser.ImportsOnly|parser.SkipObjectResolution)
		if err != nil {
			errs = append(errs, fromParser(err)...)
			continue
		}
		for _, spec := range f.Imports {
			path, _ := strconv.Unquote(spec.Path.Value)
			pkg, err := s.importPath(path)
			if err != nil {
				errs = append(errs, errorAt(s.fset.Position(spec.Path.Pos()), "%s", err))
				continue
			}
			name := pkg.Name()
			if spec.Name != nil {
				name = spec.Name.Name
			}
			switch name {
			case "_":
			case ".":
				for _, n := range pkg.Scope().Names() {
					if o := pkg.Scope().Lookup(n); o.Exported() {
						extra[n] = o
						c.imports = append(c.imports, o)
					}
				}
			default:
				o := types.NewPkgName(spec.Pos(), s.pkg, name, pkg)
				extra[name] = o
				c.imports = append(c.imports, o)
			}
		}
	}
	return errs
}

func fromParser(err error) ErrorList {
	var list scanner.ErrorList
	if errors.As(err, &list) && len(list) > 0 {
		return fromScanner(list[:1]) // what follows the first is often its echo
	}
	return ErrorList{{Line: 1, Col: 1, Msg: err.Error()}}
}

// wholeProgram takes a cell that starts with a package clause as a file: its variables are the package's.
func wholeProgram(items []item) chunk {
	var c chunk
	for _, it := range items {
		if it.kind != importDecl && it.kind != packageClause {
			c.decls = append(c.decls, it)
		}
	}
	return c
}

func (s *Session) checkChunk(name, src string, part chunk, p *places, extra map[string]types.Object, program, last bool) (*Chunk, ErrorList) {
	text := part.render(src, name, p)
	if program {
		text = strings.TrimSuffix(text, "}\n") + "main()\n}\n"
	}
	file, err := parser.ParseFile(s.fset, name, text, parser.SkipObjectResolution|parser.AllErrors)
	if err != nil {
		return nil, fromParser(err)
	}
	funcs, body, bodyType := parts(file)
	if body == nil {
		return nil, ErrorList{errorAt(p.position(0), "syntax error: this cell does not parse as declarations and statements")}
	}
	ch := &Chunk{Funcs: funcs, Decls: file.Decls[:len(file.Decls)-1], Body: body, Info: newInfo()}
	var shown *ast.ExprStmt
	if n := len(body.List); last && n > 0 {
		shown, _ = body.List[n-1].(*ast.ExprStmt)
	}
	s.fill(file, extra)

	var errs ErrorList
	var unused []types.Error
	report := func(err error) {
		var te types.Error
		if !errors.As(err, &te) || harmless(te, shown) {
			if strings.HasPrefix(te.Msg, "declared and not used") {
				unused = append(unused, te)
			}
			return
		}
		e := errorAt(s.fset.Position(te.Pos), "%s", s.withoutPackages(te.Msg))
		e.Hint = hint(te.Msg)
		if name, ok := strings.CutPrefix(te.Msg, "undefined: "); ok && e.Hint == "" {
			e.Hint = s.nearest(name)
		}
		if strings.HasPrefix(te.Msg, "\t") && len(errs) > 0 { // the continuation of the error before
			errs[len(errs)-1].Msg += ";" + strings.TrimRight(strings.ReplaceAll(te.Msg, "\t", " "), "\n")
			return
		}
		e.Msg = strings.TrimRight(strings.NewReplacer("\n\t", "; ", "\n", "; ", "\t", " ").Replace(e.Msg), "; ")
		errs = append(errs, e)
	}
	_ = types.NewChecker(s.config(report), s.fset, s.pkg, ch.Info).Files([]*ast.File{file})
	for _, te := range unused {
		for id, o := range ch.Info.Defs {
			if v, ok := o.(*types.Var); ok && id.Pos() == te.Pos && types.Identical(v.Type(), errorType) && v.Parent() != ch.Info.Scopes[bodyType] {
				e := errorAt(s.fset.Position(te.Pos), "%s", te.Msg)
				e.Hint = "look at the error, or write _ in its place to say that it does not matter"
				errs = append(errs, e)
			}
		}
	}
	if len(errs) > 0 {
		return nil, errs
	}
	if errs = s.lateMethods(ch, part); len(errs) > 0 {
		return nil, errs
	}
	if errs = s.deadMethods(ch.Info); len(errs) > 0 {
		return nil, errs
	}
	errs = dropped(ch.Info, s.fset, file, shown)
	if len(errs) > 0 {
		return nil, errs
	}
	if shown != nil {
		if e := s.unshowable(ch.Info, shown.X); e != nil {
			return nil, ErrorList{e}
		}
	}
	if shown != nil && showable(ch.Info, shown) {
		ch.Last = shown.X
		body.List = body.List[:len(body.List)-1]
	}
	for _, n := range topNames(file) {
		if o := s.pkg.Scope().Lookup(n); o != nil && !strings.Contains(n, lateMark) {
			ch.declared = append(ch.declared, o)
		}
	}
	sortByPos(ch.declared)
	scope := ch.Info.Scopes[bodyType]
	for _, n := range scope.Names() {
		switch o := scope.Lookup(n).(type) {
		case *types.Var:
			ch.Globals = append(ch.Globals, o)
		}
	}
	sortByPos(ch.Globals)
	return ch, nil
}

// parts finds the functions of a rendered chunk and the function that holds its statements, which is the last.
func parts(f *ast.File) (funcs []*ast.FuncDecl, body *ast.BlockStmt, typ *ast.FuncType) {
	for _, d := range f.Decls {
		if fd, ok := d.(*ast.FuncDecl); ok {
			funcs = append(funcs, fd)
		}
	}
	if n := len(funcs); n > 0 && funcs[n-1].Name.Name == "_" && funcs[n-1].Body != nil {
		return funcs[:n-1], funcs[n-1].Body, funcs[n-1].Type
	}
	return funcs, nil, nil
}

// topNames lists what a file declares at its top level, methods left out.
func topNames(f *ast.File) []string {
	var out []string
	for _, d := range f.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Recv == nil && d.Name.Name != "_" {
				out = append(out, d.Name.Name)
			}
		case *ast.GenDecl:
			for _, spec := range d.Specs {
				switch spec := spec.(type) {
				case *ast.TypeSpec:
					out = append(out, spec.Name.Name)
				case *ast.ValueSpec:
					for _, n := range spec.Names {
						out = append(out, n.Name)
					}
				}
			}
		}
	}
	return out
}

func baseName(x ast.Expr) string {
	switch x := ast.Unparen(x).(type) {
	case *ast.StarExpr:
		return baseName(x.X)
	case *ast.IndexExpr:
		return baseName(x.X)
	case *ast.IndexListExpr:
		return baseName(x.X)
	case *ast.Ident:
		return x.Name
	}
	return ""
}

// harmless says which of the checker's findings a cell may have: variables and imports that are not used, and, as the
// last item, an expression that is not used but shown.
func harmless(e types.Error, shown *ast.ExprStmt) bool {
	switch {
	case strings.HasPrefix(e.Msg, "declared and not used"), strings.HasSuffix(e.Msg, "imported and not used"):
		return true
	case shown != nil && strings.HasSuffix(e.Msg, "is not used"):
		return e.Pos == ast.Unparen(shown.X).Pos() || e.Pos == shown.X.Pos()
	}
	return false
}

// unshowable says what is wrong with a last expression that is Go and yet nothing to show: a constant that no variable
// could hold, or a function that was meant to be called.
func (s *Session) unshowable(info *types.Info, x ast.Expr) *Error {
	tv, ok := info.Types[x]
	if !ok || tv.Type == nil {
		return nil
	}
	if b, ok := tv.Type.(*types.Basic); ok && tv.Value != nil && b.Info()&types.IsUntyped != 0 {
		d := types.Default(b).(*types.Basic)
		fits := true
		switch v := tv.Value; d.Kind() {
		case types.Int:
			_, fits = constant.Int64Val(constant.ToInt(v))
		case types.Int32:
			var n int64
			n, fits = constant.Int64Val(constant.ToInt(v))
			fits = fits && n == int64(int32(n))
		case types.Float64:
			f, _ := constant.Float64Val(v)
			fits = !math.IsInf(f, 0)
		}
		if !fits {
			return errorAt(s.fset.Position(x.Pos()), "cannot use %s (untyped %s constant) as %s value: it overflows", types.ExprString(x), d.Name(), d.Name())
		}
	}
	if _, ok := tv.Type.Underlying().(*types.Signature); ok && tv.IsValue() {
		e := errorAt(s.fset.Position(x.Pos()), "%s is a function and was not called", types.ExprString(x))
		e.Hint = "write " + types.ExprString(x) + "(…)"
		if sig := tv.Type.Underlying().(*types.Signature); sig.Params().Len() == 0 {
			e.Hint = "write " + types.ExprString(x) + "()"
		}
		return e
	}
	return nil
}

// showable says whether the last expression has a value that is worth showing: not what printing returns.
func showable(info *types.Info, s *ast.ExprStmt) bool {
	if call, ok := ast.Unparen(s.X).(*ast.CallExpr); ok && neverFails(info, call) {
		return false
	}
	tv, ok := info.Types[s.X]
	if !ok || tv.IsType() || tv.IsVoid() || tv.IsBuiltin() {
		return false
	}
	if t, ok := tv.Type.(*types.Tuple); ok && t.Len() == 0 {
		return false
	}
	return tv.Type != nil
}
