package eval

import (
	"go/ast"
	"go/types"
	"strconv"
	"strings"
)

// typeEnv holds the type arguments of an instance of a generic function or method.
type typeEnv struct {
	m      *Machine
	params map[*types.TypeParam]types.Type
	key    string
	locals map[*types.TypeName]*types.Named // types declared in the body: each instance has its own
	fn     *types.Func
}

func (m *Machine) newEnv(fn *types.Func, ps *types.TypeParamList, args []types.Type, key string) *typeEnv {
	e := &typeEnv{m: m, params: map[*types.TypeParam]types.Type{}, key: key, fn: fn, locals: map[*types.TypeName]*types.Named{}}
	for i := range ps.Len() {
		e.params[ps.At(i)] = types.Unalias(args[i])
	}
	return e
}

// argsKey names a list of types: identical types have one name.
func (m *Machine) argsKey(args []types.Type) string {
	if len(args) == 0 {
		return ""
	}
	var b strings.Builder
	for _, a := range args {
		b.WriteString(strconv.Itoa(m.typeID(a)))
		b.WriteByte(',')
	}
	return b.String()
}

func (m *Machine) typeID(t types.Type) int {
	t = types.Unalias(t)
	key := identityKey(t)
	for _, x := range m.typeIDs[key] {
		if types.Identical(x.t, t) {
			return x.id
		}
	}
	m.lastID++
	m.typeIDs[key] = append(m.typeIDs[key], typeAndID{t, m.lastID})
	return m.lastID
}

type typeAndID struct {
	t  types.Type
	id int
}

// instArgs returns the type arguments with which a generic function is used, given or inferred.
func (f *fnc) instArgs(id *ast.Ident) []types.Type {
	inst, ok := f.u.info.Instances[id]
	if !ok {
		return nil
	}
	var args []types.Type
	for t := range inst.TypeArgs.Types() {
		args = append(args, f.subst(t))
	}
	return args
}

// genericFunc compiles F[T] as a value; nil if e is an index expression.
func (f *fnc) genericFunc(e ast.Expr) *ex {
	var x ast.Expr
	switch e := e.(type) {
	case *ast.IndexExpr:
		x = e.X
	case *ast.IndexListExpr:
		x = e.X
	}
	var id *ast.Ident
	switch x := ast.Unparen(x).(type) {
	case *ast.Ident:
		id = x
	case *ast.SelectorExpr:
		id = x.Sel
	default:
		return nil
	}
	o, ok := f.u.info.Uses[id].(*types.Func)
	if !ok {
		return nil
	}
	return f.funcValue(f.funcCode(o, f.instArgs(id), e.Pos()), f.tiOf(e))
}

func (f *fnc) subst(t types.Type) types.Type {
	if f.env == nil {
		return t
	}
	return f.env.subst(t)
}

// subst replaces type parameters; a type without any is returned as it is.
func (e *typeEnv) subst(t types.Type) types.Type {
	switch t := t.(type) {
	case *types.TypeParam:
		if a, ok := e.params[t]; ok {
			return a
		}
	case *types.Alias:
		return e.subst(types.Unalias(t))
	case *types.Pointer:
		if x := e.subst(t.Elem()); x != t.Elem() {
			return types.NewPointer(x)
		}
	case *types.Slice:
		if x := e.subst(t.Elem()); x != t.Elem() {
			return types.NewSlice(x)
		}
	case *types.Array:
		if x := e.subst(t.Elem()); x != t.Elem() {
			return types.NewArray(x, t.Len())
		}
	case *types.Chan:
		if x := e.subst(t.Elem()); x != t.Elem() {
			return types.NewChan(t.Dir(), x)
		}
	case *types.Map:
		k, v := e.subst(t.Key()), e.subst(t.Elem())
		if k != t.Key() || v != t.Elem() {
			return types.NewMap(k, v)
		}
	case *types.Signature:
		p, r := e.tuple(t.Params()), e.tuple(t.Results())
		if p != t.Params() || r != t.Results() {
			return types.NewSignatureType(nil, nil, nil, p, r, t.Variadic())
		}
	case *types.Tuple:
		return e.tuple(t)
	case *types.Struct:
		fs := make([]*types.Var, t.NumFields())
		tags := make([]string, t.NumFields())
		changed := false
		for i := range fs {
			v := t.Field(i)
			x := e.subst(v.Type())
			if x != v.Type() {
				changed = true
				v = types.NewField(v.Pos(), v.Pkg(), v.Name(), x, v.Embedded())
			}
			fs[i], tags[i] = v, t.Tag(i)
		}
		if changed {
			return types.NewStruct(fs, tags)
		}
	case *types.Interface:
		changed := false
		var ms []*types.Func
		for m := range t.ExplicitMethods() {
			sig := e.subst(m.Signature())
			if sig != m.Type() {
				changed = true
				m = types.NewFunc(m.Pos(), m.Pkg(), m.Name(), sig.(*types.Signature))
			}
			ms = append(ms, m)
		}
		var es []types.Type
		for em := range t.EmbeddedTypes() {
			x := e.subst(em)
			changed = changed || x != em
			es = append(es, x)
		}
		if changed {
			return types.NewInterfaceType(ms, es).Complete()
		}
	case *types.Union:
		terms := make([]*types.Term, t.Len())
		changed := false
		for i := range terms {
			x := e.subst(t.Term(i).Type())
			changed = changed || x != t.Term(i).Type()
			terms[i] = types.NewTerm(t.Term(i).Tilde(), x)
		}
		if changed {
			return types.NewUnion(terms)
		}
	case *types.Named:
		return e.named(t)
	}
	return t
}

func (e *typeEnv) tuple(t *types.Tuple) *types.Tuple {
	var vs []*types.Var
	changed := false
	for i := range t.Len() {
		v := t.At(i)
		x := e.subst(v.Type())
		if x != v.Type() {
			changed = true
			v = types.NewParam(v.Pos(), v.Pkg(), v.Name(), x)
		}
		vs = append(vs, v)
	}
	if !changed {
		return t
	}
	return types.NewTuple(vs...)
}

// named instantiates a generic type, or makes this instance's own copy of a type declared in the function's body.
func (e *typeEnv) named(t *types.Named) types.Type {
	if args := t.TypeArgs(); args.Len() > 0 {
		xs := make([]types.Type, args.Len())
		changed := false
		for i := range xs {
			xs[i] = e.subst(args.At(i))
			changed = changed || xs[i] != args.At(i)
		}
		if !changed {
			return t
		}
		inst, err := types.Instantiate(e.m.ctxt, t.Origin(), xs, false)
		if err != nil {
			refuse(t.Obj().Pos(), "instance of %s: %v", t, err)
		}
		return inst
	}
	obj := t.Obj()
	if obj.Parent() == nil || obj.Pkg() == nil || obj.Parent() == obj.Pkg().Scope() || obj.Parent() == types.Universe {
		return t
	}
	if s := e.fn.Scope(); s == nil || !s.Contains(obj.Pos()) && !encloses(s, obj.Parent()) {
		return t
	}
	if n := e.locals[obj]; n != nil {
		return n
	}
	n := types.NewNamed(types.NewTypeName(obj.Pos(), obj.Pkg(), obj.Name(), nil), nil, nil)
	e.locals[obj] = n
	n.SetUnderlying(e.subst(t.Underlying()).Underlying())
	return n
}

func encloses(s, inner *types.Scope) bool {
	for ; inner != nil; inner = inner.Parent() {
		if inner == s {
			return true
		}
	}
	return false
}
