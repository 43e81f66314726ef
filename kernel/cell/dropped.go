package cell

import (
	"go/ast"
	"go/token"
	"go/types"
)

var errorType = types.Universe.Lookup("error").Type()

// dropped refuses calls whose error nobody looks at: in interpreted work a dropped error is a wrong number that looks
// right. The last expression of a cell is shown, its error with it.
func dropped(info *types.Info, fset *token.FileSet, file *ast.File, shown *ast.ExprStmt) ErrorList {
	var errs ErrorList
	look := func(x ast.Expr, how string) {
		call, ok := ast.Unparen(x).(*ast.CallExpr)
		if !ok || !returnsError(info, call) || neverFails(info, call) {
			return
		}
		e := errorAt(fset.Position(call.Pos()), "the error of %s is dropped%s", types.ExprString(call.Fun), how)
		e.Hint = "take it and look at it, or write _ = to say that it does not matter"
		errs = append(errs, e)
	}
	ast.Inspect(file, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.ExprStmt:
			if n != shown {
				look(n.X, "")
			}
		case *ast.DeferStmt:
			look(n.Call, " by defer")
		case *ast.GoStmt:
			look(n.Call, " by go")
		}
		return true
	})
	return errs
}

func returnsError(info *types.Info, call *ast.CallExpr) bool {
	tv, ok := info.Types[call]
	if !ok || tv.Type == nil {
		return false
	}
	if t, ok := tv.Type.(*types.Tuple); ok {
		for v := range t.Variables() {
			if types.Identical(v.Type(), errorType) {
				return true
			}
		}
		return false
	}
	return types.Identical(tv.Type, errorType)
}

// neverFails lists the calls whose error is customarily not looked at: printing, and writing to memory.
func neverFails(info *types.Info, call *ast.CallExpr) bool {
	var obj types.Object
	switch f := ast.Unparen(call.Fun).(type) {
	case *ast.Ident:
		obj = info.Uses[f]
	case *ast.SelectorExpr:
		obj = info.Uses[f.Sel]
	}
	fn, ok := obj.(*types.Func)
	if !ok || fn.Pkg() == nil {
		return false
	}
	recv := fn.Signature().Recv()
	if recv == nil {
		if fn.Pkg().Path() != "fmt" {
			return false
		}
		switch fn.Name() {
		case "Print", "Printf", "Println", "Fprint", "Fprintf", "Fprintln":
			return true
		}
		return false
	}
	t := recv.Type()
	if p, ok := t.(*types.Pointer); ok {
		t = p.Elem()
	}
	n, ok := t.(*types.Named)
	if !ok || n.Obj().Pkg() == nil {
		return false
	}
	switch n.Obj().Pkg().Path() + "." + n.Obj().Name() {
	case "strings.Builder", "bytes.Buffer":
		return true
	}
	return false
}
