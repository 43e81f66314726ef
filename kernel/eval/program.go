package eval

import (
	"go/ast"
	"go/types"
)

// RunProgram runs a whole package as the Go command would: its variables in the order of their dependencies, its init
// functions, and main if it has one.
func (m *Machine) RunProgram(s *Source) error {
	m.Resume()
	var fns []*ast.FuncDecl
	for _, f := range s.Files {
		for _, d := range f.Decls {
			if fd, ok := d.(*ast.FuncDecl); ok {
				fns = append(fns, fd)
			}
		}
	}
	if err := m.Declare(Chunk{Funcs: fns, Info: s.Info, Fset: s.Fset, Pkg: s.Pkg}); err != nil {
		return err
	}
	start, err := m.starter(s, fns)
	if err != nil {
		return err
	}
	if err := start(); err != nil {
		return err
	}
	if main, ok := s.Pkg.Scope().Lookup("main").(*types.Func); ok && s.Pkg.Name() == "main" {
		return m.call(main)
	}
	return nil
}

// starter compiles what a package does before anything else runs: its variables, then its init functions.
func (m *Machine) starter(s *Source, fns []*ast.FuncDecl) (func() error, error) {
	vars, err := m.initializer(s)
	if err != nil {
		return nil, err
	}
	return func() error {
		if err := m.protect(vars); err != nil {
			return err
		}
		for _, fd := range fns {
			if fd.Recv == nil && fd.Name.Name == "init" {
				if err := m.call(s.Info.Defs[fd.Name].(*types.Func)); err != nil {
					return err
				}
			}
		}
		return nil
	}, nil
}

// call runs a function without parameters.
func (m *Machine) call(fn *types.Func) error {
	var c *code
	if err := m.compile(nil, func() { c = m.funcCode(fn, nil, fn.Pos()) }); err != nil {
		return err
	}
	return m.protect(func() {
		m.main.depth = 0
		nf := c.enter(m.main)
		c.run(nf)
		nf.release()
	})
}

// initializer compiles the initialisation of a package's variables.
func (m *Machine) initializer(s *Source) (func(), error) {
	sig := types.NewSignatureType(nil, nil, nil, nil, nil, false)
	var c *code
	err := m.compile(s.Fset, func() {
		var lay *layout
		c, lay = m.newCode("init", sig, nil)
		n := 0
		f := &fnc{m: m, u: &unit{m, s.Info, s.Fset, s.Pkg}, code: c, lay: lay, vars: map[*types.Var]varLoc{}, nlabel: &n,
			hoist: map[ast.Expr]*ex{}, esc: map[*types.Var]bool{}}
		var list []exec
		for _, in := range s.Info.InitOrder {
			if v := in.Lhs[0]; v.Pkg() != nil {
				if _, ok := m.symbol(v); ok {
					continue // the compiled package has it
				}
			}
			for v := range escaping(s.Info, in.Rhs) {
				f.esc[v] = true
			}
			for _, v := range in.Lhs {
				if v.Name() != "_" {
					m.globalVar(v)
				}
			}
			pre := f.roots(in.Rhs)
			var sets []exec
			if len(in.Lhs) == 1 {
				v := in.Lhs[0]
				x := f.exprTo(in.Rhs, v.Type())
				if v.Name() == "_" {
					sets = append(sets, x.ti.ops.discard(x.fn))
				} else {
					sets = append(sets, m.globalVar(v).define(x))
				}
			} else {
				vals, get := f.several(in.Rhs)
				sets = append(sets, get)
				for i, v := range in.Lhs {
					if v.Name() != "_" {
						sets = append(sets, m.globalVar(v).define(f.assignTo(vals[i], v.Type(), v.Pos())))
					}
				}
			}
			list = append(list, prelude(pre, inOrder(sets)))
		}
		c.finish(lay, inOrder(list))
	})
	if err != nil {
		return nil, err
	}
	return func() {
		nf := c.enter(m.main)
		c.run(nf)
	}, nil
}
