package cell

import (
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"maps"
	"slices"
	"strings"
)

// Method is a method of a type that an earlier cell declared.
type Method struct {
	Func *types.Func   // as the type has it
	Decl *ast.FuncDecl // its new text
}

// lateMark stands in the name of the function that a late method is checked as. No cell can write such a name by
// accident, and none can call it: it is not visible.
const lateMark = "ˑlateˑ"

// asFunction rewrites the text of a method, func (t T) M(a int) {…}, as func M(t T, a int) {…} with the mark in its
// name. start is where the text begins in the cell; place writes a line comment for an offset there.
func asFunction(text string, start int, place func(off int) string) string {
	const head = "package p;"
	fset := token.NewFileSet()
	f, err := parser.ParseFile(fset, "", head+text, parser.SkipObjectResolution)
	if err != nil || len(f.Decls) != 1 {
		return place(start) + text
	}
	fd := f.Decls[0].(*ast.FuncDecl)
	at := func(p token.Pos) int { return fset.Position(p).Offset - len(head) }
	recvStart, recvEnd := at(fd.Recv.Opening)+1, at(fd.Recv.Closing)
	recv := place(start+recvStart) + text[recvStart:recvEnd]
	if len(fd.Recv.List[0].Names) == 0 {
		recv = "_ " + recv
	}
	params := at(fd.Type.Params.Opening) + 1
	sep := ", "
	if len(fd.Type.Params.List) == 0 {
		sep = ""
	} else if len(fd.Type.Params.List[0].Names) == 0 {
		// Parameters without names beside a receiver with one do not mix: name them.
		var b strings.Builder
		for i, p := range fd.Type.Params.List {
			if i > 0 {
				b.WriteString(", ")
			}
			b.WriteString("_ " + text[at(p.Type.Pos()):at(p.Type.End())])
		}
		return place(start) + "func " + place(start+at(fd.Name.Pos())) + fd.Name.Name + lateMark + baseName(fd.Recv.List[0].Type) +
			"(" + recv + ", " + b.String() + place(start+at(fd.Type.Params.Closing)) + text[at(fd.Type.Params.Closing):]
	}
	return place(start) + "func " + place(start+at(fd.Name.Pos())) + fd.Name.Name + lateMark + baseName(fd.Recv.List[0].Type) +
		"(" + recv + sep + place(start+params) + text[params:]
}

// lateMethods takes the functions that stand for late methods out of a checked chunk and makes them methods again.
func (s *Session) lateMethods(ch *Chunk, part chunk) ErrorList {
	if len(part.late) == 0 {
		return nil
	}
	var errs ErrorList
	var funcs []*ast.FuncDecl
	for _, fd := range ch.Funcs {
		name, base, ok := strings.Cut(fd.Name.Name, lateMark)
		if !ok {
			funcs = append(funcs, fd)
			continue
		}
		pos := s.fset.Position(fd.Name.Pos())
		fn := ch.Info.Defs[fd.Name].(*types.Func)
		sig := fn.Signature()
		if sig.TypeParams().Len() > 0 {
			errs = append(errs, errorAt(pos, "not supported in cells: a method of the generic type %s, which an earlier cell declared", base))
			continue
		}
		recv := sig.Params().At(0)
		rest := make([]*types.Var, 0, sig.Params().Len()-1)
		for i := 1; i < sig.Params().Len(); i++ {
			rest = append(rest, sig.Params().At(i))
		}
		named, ok := receiverType(recv.Type())
		if !ok || named.TypeParams().Len() > 0 {
			errs = append(errs, errorAt(pos, "not supported in cells: a method of the generic type %s, which an earlier cell declared", base))
			continue
		}
		method := types.NewFunc(fd.Name.Pos(), s.pkg, name, types.NewSignatureType(recv, nil, nil, types.NewTuple(rest...), sig.Results(), sig.Variadic()))
		if st, ok := named.Underlying().(*types.Struct); ok {
			for f := range st.Fields() {
				if f.Name() == name {
					errs = append(errs, errorAt(pos, "field and method with the same name %s", name))
				}
			}
		}
		// The tree and the checker's notes tell of a method from here on.
		fd.Name.Name = name
		delete(ch.Info.Defs, fd.Name)
		ch.Info.Defs[fd.Name] = method
		first := fd.Type.Params.List[0]
		fd.Recv = &ast.FieldList{Opening: first.Pos(), List: []*ast.Field{first}, Closing: first.End()}
		fd.Type.Params.List = fd.Type.Params.List[1:]
		ch.late = append(ch.late, Method{Func: method, Decl: fd})
	}
	ch.Funcs = funcs
	return errs
}

func receiverType(t types.Type) (*types.Named, bool) {
	if p, ok := types.Unalias(t).(*types.Pointer); ok {
		t = p.Elem()
	}
	n, ok := types.Unalias(t).(*types.Named)
	return n, ok
}

// addMethods gives the late methods of a chunk to their types. added collects those that are new.
func (s *Session) addMethods(ch *Chunk, added map[*types.Func]bool) ErrorList {
	var errs ErrorList
	for _, m := range ch.late {
		named, _ := receiverType(m.Func.Signature().Recv().Type())
		var old *types.Func
		for o := range named.Methods() {
			if o.Name() == m.Func.Name() {
				old = o
			}
		}
		switch {
		case old == nil:
			named.AddMethod(m.Func)
			added[m.Func] = true
			ch.Funcs = append(ch.Funcs, m.Decl)
		case !types.Identical(old.Signature(), m.Func.Signature()) ||
			types.TypeString(old.Signature().Recv().Type(), nil) != types.TypeString(m.Func.Signature().Recv().Type(), nil):
			e := errorAt(s.fset.Position(m.Decl.Name.Pos()), "not supported in cells: another signature for method %s of %s", old.Name(), named.Obj().Name())
			e.Hint = "declare the type again, with its methods, in one cell"
			errs = append(errs, e)
		default:
			if s.dead[old] {
				delete(s.dead, old)
				added[old] = true
			}
			ch.Methods = append(ch.Methods, Method{Func: old, Decl: m.Decl})
		}
	}
	return errs
}

// deadMethods refuses the use of methods that only a refused cell declared.
func (s *Session) deadMethods(info *types.Info) ErrorList {
	var errs ErrorList
	if len(s.dead) == 0 {
		return nil
	}
	uses := slices.SortedFunc(maps.Keys(info.Uses), func(a, b *ast.Ident) int { return int(a.Pos() - b.Pos()) })
	for _, id := range uses {
		if fn, ok := info.Uses[id].(*types.Func); ok && s.dead[fn] {
			errs = append(errs, errorAt(s.fset.Position(id.Pos()), "%s undefined: the cell that declared this method was refused", fn.Name()))
		}
	}
	return errs
}
