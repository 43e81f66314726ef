package eval

import (
	"cmp"
	"go/ast"
	"go/token"
	"go/types"
	"reflect"
	"slices"
	"unsafe"
)

// mapKind does the elementary operations on maps of one type. A nil word is a nil map.
type mapKind interface {
	// get returns the address of a copy of the element, or nil.
	get(m, key unsafe.Pointer) unsafe.Pointer
	set(m, key, elem unsafe.Pointer)
	del(m, key unsafe.Pointer)
	size(m unsafe.Pointer) int
}

// anyMap works for every map, through reflect.
type anyMap struct{ mt, kt, et *TypeRec }

func (a anyMap) val(m unsafe.Pointer) reflect.Value {
	return reflect.NewAt(a.mt.rt, unsafe.Pointer(&m)).Elem()
}

func (a anyMap) key(k unsafe.Pointer) reflect.Value { return reflect.NewAt(a.mt.rt.Key(), k).Elem() }

func (a anyMap) get(m, key unsafe.Pointer) unsafe.Pointer {
	if m == nil {
		return nil
	}
	v := a.val(m).MapIndex(a.key(key))
	if !v.IsValid() {
		return nil
	}
	p := reflect.New(v.Type())
	p.Elem().Set(v)
	return p.UnsafePointer()
}

func (a anyMap) set(m, key, elem unsafe.Pointer) {
	a.val(m).SetMapIndex(a.key(key), reflect.NewAt(a.mt.rt.Elem(), elem).Elem())
}

func (a anyMap) del(m, key unsafe.Pointer) {
	if m != nil {
		a.val(m).SetMapIndex(a.key(key), reflect.Value{})
	}
}

func (a anyMap) size(m unsafe.Pointer) int {
	if m == nil {
		return 0
	}
	return a.val(m).Len()
}

// quickMap works for maps whose keys and elements have plain classes. A map is laid out by the sizes of its keys and
// elements and how the keys are hashed, so a named string serves as a string.
type quickMap[K comparable, V any] struct{}

func (quickMap[K, V]) get(m, key unsafe.Pointer) unsafe.Pointer {
	v, ok := (*(*map[K]V)(unsafe.Pointer(&m)))[*(*K)(key)]
	if !ok {
		return nil
	}
	return unsafe.Pointer(&v)
}

func (quickMap[K, V]) set(m, key, elem unsafe.Pointer) {
	(*(*map[K]V)(unsafe.Pointer(&m)))[*(*K)(key)] = *(*V)(elem)
}

func (quickMap[K, V]) del(m, key unsafe.Pointer) {
	delete(*(*map[K]V)(unsafe.Pointer(&m)), *(*K)(key))
}

func (quickMap[K, V]) size(m unsafe.Pointer) int { return len(*(*map[K]V)(unsafe.Pointer(&m))) }

func quickElem[K comparable](et *TypeRec) mapKind {
	switch et.rep {
	case repInt:
		return quickMap[K, int]{}
	case repFloat64:
		return quickMap[K, float64]{}
	case repString:
		return quickMap[K, string]{}
	case repBool:
		return quickMap[K, bool]{}
	case repAny:
		return quickMap[K, any]{}
	case repPtr:
		return quickMap[K, unsafe.Pointer]{}
	case repSlice:
		return quickMap[K, slice]{}
	}
	return nil
}

func (m *Machine) mapKind(t *types.Map) (mapKind, *TypeRec, *TypeRec, *TypeRec) {
	mt, kt, et := m.rec(t), m.rec(t.Key()), m.rec(t.Elem())
	var k mapKind
	switch kt.rep {
	case repString:
		k = quickElem[string](et)
	case repInt:
		k = quickElem[int](et)
	}
	if k == nil {
		k = anyMap{mt, kt, et}
	}
	return k, mt, kt, et
}

// hashable panics for a key that holds what cannot be compared.
func (ti *TypeRec) hashable() func(p unsafe.Pointer) {
	switch ti.rep {
	case repAny, repIface:
		return func(p unsafe.Pointer) { checkHash(ti.anyAt(p)) }
	case repMem:
		return ti.hashFields()
	}
	return nil
}

func (ti *TypeRec) hashFields() func(p unsafe.Pointer) {
	switch u := ti.T.Underlying().(type) {
	case *types.Struct:
		var fs []func(p unsafe.Pointer)
		for i := range u.NumFields() {
			off := ti.rt.Field(i).Offset
			if h := ti.m.rec(u.Field(i).Type()).hashable(); h != nil {
				fs = append(fs, func(p unsafe.Pointer) { h(unsafe.Add(p, off)) })
			}
		}
		if len(fs) == 0 {
			return nil
		}
		return func(p unsafe.Pointer) {
			for _, f := range fs {
				f(p)
			}
		}
	case *types.Array:
		et := ti.m.rec(u.Elem())
		h := et.hashable()
		if h == nil {
			return nil
		}
		return func(p unsafe.Pointer) {
			for i := range int(u.Len()) {
				h(unsafe.Add(p, uintptr(i)*et.size))
			}
		}
	}
	return nil
}

func checkHash(v any) {
	if b, ok := Unbox(v); ok {
		if !b.T.comp {
			panic(unhashable(b.T.Name()))
		}
		if h := b.T.hashable(); h != nil {
			h(b.ptr())
		}
		return
	}
	if v == nil {
		return
	}
	if rt := reflect.TypeOf(v); !rt.Comparable() {
		panic(unhashable(rt.String()))
	}
}

// unhashable is thrown with the name of a type; what Go says of it depends on whether the map is empty.
type unhashable string

// check compiles the test of a key that may hold what cannot be compared; nil if none is needed.
func (kt *TypeRec) check(kind mapKind, at *site) func(fr *frame, m, key unsafe.Pointer) {
	h := kt.hashable()
	if h == nil {
		return nil
	}
	return func(fr *frame, m, key unsafe.Pointer) {
		defer func() {
			r := recover()
			name, ok := r.(unhashable)
			switch {
			case r == nil:
			case !ok:
				panic(r)
			case kind == nil || kind.size(m) > 0:
				throw(at, "hash of unhashable type "+string(name))
			default:
				throwPlain(at, "hash of unhashable type: "+string(name))
			}
		}()
		h(key)
	}
}

// mapIndex compiles m[k].
func (f *fnc) mapIndex(e *ast.IndexExpr, t *types.Map) *ex {
	return f.mapGet(f.expr(e.X), f.exprTo(e.Index, t.Key()), t, e.Pos())
}

func (f *fnc) mapGet(mx, kx *ex, t *types.Map, pos token.Pos) *ex {
	kind, _, kt, et := f.m.mapKind(t)
	m, k := as[unsafe.Pointer](mx), f.ref(kx)
	check := kt.check(kind, f.site(pos))
	zero := et.zero
	find := func(fr *frame) unsafe.Pointer {
		w := m(fr)
		q := k(fr)
		if check != nil {
			check(fr, w, q)
		}
		p := kind.get(w, q)
		if p == nil {
			return zero
		}
		return p
	}
	x := &ex{ti: et, addr: find}
	switch {
	case kt.rep == repString && et.rep == repInt:
		x.fn = quickGet[string, int](m, as[string](kx))
	case kt.rep == repInt && et.rep == repInt:
		x.fn = quickGet[int, int](m, as[int](kx))
	case kt.rep == repString && et.rep == repFloat64:
		x.fn = quickGet[string, float64](m, as[string](kx))
	case kt.rep == repString && et.rep == repString:
		x.fn = quickGet[string, string](m, as[string](kx))
	case kt.rep == repString && et.rep == repBool:
		x.fn = quickGet[string, bool](m, as[string](kx))
	case kt.rep == repInt && et.rep == repBool:
		x.fn = quickGet[int, bool](m, as[int](kx))
	case kt.rep == repString && et.rep == repSlice:
		x.fn = quickGet[string, slice](m, as[string](kx))
	case kt.rep == repString && et.rep == repPtr:
		x.fn = quickGet[string, unsafe.Pointer](m, as[string](kx))
	default:
		x.fn = et.ops.load(find)
	}
	return x
}

func quickGet[K comparable, V any](m func(*frame) unsafe.Pointer, k func(*frame) K) func(*frame) V {
	return func(fr *frame) V {
		w := m(fr)
		return (*(*map[K]V)(unsafe.Pointer(&w)))[k(fr)]
	}
}

// mapIndexOk compiles v, ok = m[k].
func (f *fnc) mapIndexOk(e *ast.IndexExpr) ([]*ex, exec) {
	t := core(f.typ(e.X)).(*types.Map)
	kind, _, kt, et := f.m.mapKind(t)
	m := as[unsafe.Pointer](f.expr(e.X))
	k := f.ref(f.exprTo(e.Index, t.Key()))
	check := kt.check(kind, f.site(e.Pos()))
	bt := f.m.rec(types.Typ[types.Bool])
	v, ok := f.temp(et), f.temp(bt)
	cp, zero := et.copyFn(), et.zero
	return []*ex{f.localEx(et, v), f.localEx(bt, ok)}, func(fr *frame) ctl {
		w := m(fr)
		q := k(fr)
		if check != nil {
			check(fr, w, q)
		}
		p := kind.get(w, q)
		*(*bool)(fr.at(ok)) = p != nil
		if p == nil {
			p = zero
		}
		cp(fr.at(v), p)
		return next
	}
}

// mapSet compiles m[k] = v.
func (f *fnc) mapSet(mx, kx, vx *ex, t *types.Map, pos token.Pos) exec {
	kind, _, kt, et := f.m.mapKind(t)
	at := f.site(pos)
	m, k := as[unsafe.Pointer](mx), f.ref(f.frozen(kx))
	check := kt.check(nil, at)
	v := f.assignTo(vx, et.T, pos)
	off, in := f.temp(et), v.init()
	return func(fr *frame) ctl {
		w := m(fr)
		q := k(fr)
		p := fr.at(off)
		in(fr, p)
		if w == nil {
			throwPlain(at, "assignment to entry in nil map")
		}
		if check != nil {
			check(fr, w, q)
		}
		kind.set(w, q, p)
		return next
	}
}

// frozen copies an operand that lies in memory, if what is evaluated after it could change it.
func (f *fnc) frozen(x *ex) *ex {
	if x.local || x.cv != nil {
		return x
	}
	y := *x
	y.addr = nil
	return &y
}

func (f *fnc) mapLit(e *ast.CompositeLit, t *types.Map, ti *TypeRec) *ex {
	kind, _, kt, et := f.m.mapKind(t)
	at := f.site(e.Pos())
	type pair struct{ k, v intoFn }
	var pairs []pair
	for _, el := range e.Elts {
		kv := el.(*ast.KeyValueExpr)
		pairs = append(pairs, pair{f.element2(kv.Key, t.Key()).init(), f.element2(kv.Value, t.Elem()).init()})
	}
	ko, vo := f.temp(kt), f.temp(et)
	check := kt.check(nil, at)
	rt := ti.rt
	return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
		w := newMap(rt, len(pairs))
		for _, p := range pairs {
			k, v := fr.at(ko), fr.at(vo)
			p.k(fr, k)
			p.v(fr, v)
			if check != nil {
				check(fr, w, k)
			}
			kind.set(w, k, v)
		}
		return w
	}}
}

func newMap(rt reflect.Type, n int) unsafe.Pointer {
	return reflect.MakeMapWithSize(rt, n).UnsafePointer()
}

// mapKeys returns a map's keys, sorted where they can be, and their elements.
func mapKeys(ti *TypeRec, w unsafe.Pointer) (keys, elems []reflect.Value) {
	if w == nil {
		return nil, nil
	}
	m := reflect.NewAt(ti.rt, unsafe.Pointer(&w)).Elem()
	n := m.Len()
	keys = make([]reflect.Value, 0, n)
	type pair struct{ k, v reflect.Value }
	ps := make([]pair, 0, n)
	for it := m.MapRange(); it.Next(); {
		k, v := reflect.New(ti.rt.Key()), reflect.New(ti.rt.Elem())
		k.Elem().SetIterKey(it)
		v.Elem().SetIterValue(it)
		ps = append(ps, pair{k.Elem(), v.Elem()})
	}
	slices.SortStableFunc(ps, func(a, b pair) int { return compareKeys(a.k, b.k) })
	for _, p := range ps {
		keys = append(keys, p.k)
		elems = append(elems, p.v)
	}
	return keys, elems
}

// compareKeys orders map keys as package fmt does; what has no order stays as it comes.
func compareKeys(a, b reflect.Value) int {
	switch a.Kind() {
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		return cmp.Compare(a.Int(), b.Int())
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64, reflect.Uintptr:
		return cmp.Compare(a.Uint(), b.Uint())
	case reflect.String:
		return cmp.Compare(a.String(), b.String())
	case reflect.Float32, reflect.Float64:
		return cmp.Compare(a.Float(), b.Float())
	case reflect.Complex64, reflect.Complex128:
		if c := cmp.Compare(real(a.Complex()), real(b.Complex())); c != 0 {
			return c
		}
		return cmp.Compare(imag(a.Complex()), imag(b.Complex()))
	case reflect.Bool:
		switch {
		case a.Bool() == b.Bool():
			return 0
		case a.Bool():
			return 1
		}
		return -1
	case reflect.Struct:
		if a.Type() == reflect.TypeFor[Box]() {
			x, y := a.Interface().(Box), b.Interface().(Box)
			if x.T != y.T {
				return cmp.Compare(x.T.Name(), y.T.Name())
			}
			return compareKeys(reflect.ValueOf(x.V), reflect.ValueOf(y.V))
		}
		for i := range a.NumField() {
			if c := compareKeys(a.Field(i), b.Field(i)); c != 0 {
				return c
			}
		}
	case reflect.Array:
		for i := range a.Len() {
			if c := compareKeys(a.Index(i), b.Index(i)); c != 0 {
				return c
			}
		}
	case reflect.Interface:
		switch {
		case a.IsNil() && b.IsNil():
			return 0
		case a.IsNil():
			return -1
		case b.IsNil():
			return 1
		}
		x, y := a.Elem(), b.Elem()
		if x.Type() != y.Type() {
			if c := cmp.Compare(x.Kind(), y.Kind()); c != 0 {
				return c
			}
			return cmp.Compare(x.Type().String(), y.Type().String())
		}
		return compareKeys(x, y)
	}
	return 0
}
