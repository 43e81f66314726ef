package eval

import (
	"go/ast"
	"go/token"
	"go/types"
)

// escaping finds the variables of a function that are captured by function literals or whose address is taken, so
// that they need memory of their own.
func escaping(info *types.Info, root ast.Node) map[*types.Var]bool {
	s := &escapeScan{info: info, esc: map[*types.Var]bool{}, depth: map[*types.Var]int{}}
	s.walk(root, 0)
	return s.esc
}

type escapeScan struct {
	info  *types.Info
	esc   map[*types.Var]bool
	depth map[*types.Var]int
}

func (s *escapeScan) walk(root ast.Node, depth int) {
	ast.Inspect(root, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.FuncLit:
			s.walk(n.Type, depth+1)
			s.walk(n.Body, depth+1)
			return false
		case *ast.Ident:
			if v, ok := s.info.Defs[n].(*types.Var); ok {
				s.depth[v] = depth
			}
			if v, ok := s.info.Uses[n].(*types.Var); ok {
				if d, ok := s.depth[v]; ok && d != depth {
					s.esc[v] = true
				}
			}
		case *ast.CaseClause:
			if v, ok := s.info.Implicits[n].(*types.Var); ok {
				s.depth[v] = depth
			}
		case *ast.UnaryExpr:
			if n.Op == token.AND {
				s.taken(n.X)
			}
		case *ast.SliceExpr:
			t := s.info.TypeOf(n.X)
			if t != nil {
				switch t.Underlying().(type) {
				case *types.Array, *types.Interface:
					s.taken(n.X)
				}
			}
		case *ast.SelectorExpr:
			sel := s.info.Selections[n]
			if sel != nil && sel.Kind() == types.MethodVal {
				// A pointer method on an addressable operand takes its address. For operands of type parameters
				// nobody knows yet.
				recv := sel.Obj().(*types.Func).Signature().Recv()
				_, ptr := types.Unalias(recv.Type()).(*types.Pointer)
				_, tp := types.Unalias(sel.Recv()).(*types.TypeParam)
				if t := s.info.TypeOf(n.X); t != nil {
					if _, ok := t.Underlying().(*types.Pointer); ok {
						return true
					}
				}
				if ptr || tp || len(sel.Index()) > 1 {
					s.taken(n.X)
				}
			}
		}
		return true
	})
}

// taken marks the variable that an address of e points into.
func (s *escapeScan) taken(e ast.Expr) {
	for {
		switch x := e.(type) {
		case *ast.ParenExpr:
			e = x.X
		case *ast.Ident:
			if v, ok := s.info.Uses[x].(*types.Var); ok {
				s.esc[v] = true
			}
			return
		case *ast.SelectorExpr:
			sel := s.info.Selections[x]
			if sel == nil || sel.Kind() != types.FieldVal {
				return
			}
			if t := s.info.TypeOf(x.X); t != nil {
				if _, ok := t.Underlying().(*types.Pointer); ok {
					return
				}
			}
			e = x.X
		case *ast.IndexExpr:
			t := s.info.TypeOf(x.X)
			if t == nil {
				return
			}
			switch t.Underlying().(type) {
			case *types.Array, *types.Interface:
			default:
				return
			}
			e = x.X
		default:
			return
		}
	}
}
