package eval

import (
	"go/token"
	"go/types"
	"reflect"
	"testing"
	"unsafe"
)

// typeOf reads a type expression; %s of a compiled type must read the same.
func typeOf(t *testing.T, expr string) types.Type {
	t.Helper()
	tv, err := types.Eval(token.NewFileSet(), types.NewPackage("main", "main"), token.NoPos, expr)
	if err != nil {
		t.Fatal(err)
	}
	return tv.Type
}

var spelled = map[string]reflect.Type{
	"[]byte":                             reflect.TypeFor[[]byte](),
	"rune":                               reflect.TypeFor[rune](),
	"map[string][]any":                   reflect.TypeFor[map[string][]any](),
	"[3]*int":                            reflect.TypeFor[[3]*int](),
	"func(int, ...string) (bool, error)": reflect.TypeFor[func(int, ...string) (bool, error)](),
	"func() func()":                      reflect.TypeFor[func() func()](),
	"chan<- int":                         reflect.TypeFor[chan<- int](),
	"chan (<-chan int)":                  reflect.TypeFor[chan (<-chan int)](),
	"struct{}":                           reflect.TypeFor[struct{}](),
	"struct{ A int `k:\"v\"`; B []string }": reflect.TypeFor[struct {
		A int `k:"v"`
		B []string
	}](),
	"interface{ Error() string }": reflect.TypeFor[interface{ Error() string }](),
	"any":                         reflect.TypeFor[any](),
	"complex64":                   reflect.TypeFor[complex64](),
}

// Types are named as package reflect names them.
func TestTypeName(t *testing.T) {
	for expr, rt := range spelled {
		if got := typeName(typeOf(t, expr)); got != rt.String() {
			t.Errorf("typeName(%s) = %s; reflect gives %s", expr, got, rt)
		}
	}
}

// A compiled type is stored as itself; identical types have one record.
func TestStorageOfCompiledTypes(t *testing.T) {
	m := New(Config{})
	for expr, rt := range spelled {
		ti := m.rec(typeOf(t, expr))
		if ti.pure && ti.rt != rt {
			t.Errorf("%s is stored as %s; want %s", expr, ti.rt, rt)
		}
		if ti != m.rec(typeOf(t, expr)) {
			t.Errorf("%s has two records", expr)
		}
	}
}

// recursive makes type T struct { next *T; kids []T; byName map[string]T; f func(T) T; v any }.
func recursive() *types.Named {
	p := types.NewPackage("main", "main")
	n := types.NewNamed(types.NewTypeName(0, p, "T", nil), nil, nil)
	v := func(name string, t types.Type) *types.Var { return types.NewField(0, p, name, t, false) }
	par := types.NewTuple(types.NewParam(0, p, "", n))
	n.SetUnderlying(types.NewStruct([]*types.Var{
		v("next", types.NewPointer(n)), v("kids", types.NewSlice(n)), v("byName", types.NewMap(types.Typ[types.String], n)),
		v("f", types.NewSignatureType(nil, nil, nil, par, par, false)), v("v", types.NewInterfaceType(nil, nil)),
	}, nil))
	return n
}

// A recursive type gets the layout that Go gives it.
func TestStorageOfRecursiveTypes(t *testing.T) {
	type T struct {
		next   *T
		kids   []T
		byName map[string]T
		f      func(T) T
		v      any
	}
	ti := New(Config{}).rec(recursive())
	want := reflect.TypeFor[T]()
	if ti.pure || ti.rt.Size() != want.Size() || ti.rt.NumField() != want.NumField() {
		t.Fatalf("stored as %s", ti.rt)
	}
	for i := range want.NumField() {
		if ti.rt.Field(i).Offset != want.Field(i).Offset {
			t.Errorf("field %s at %d; want %d", want.Field(i).Name, ti.rt.Field(i).Offset, want.Field(i).Offset)
		}
	}
	_ = T{nil, nil, nil, nil, nil}.next
}

// Boxes of one type compare as their values do; those of different types differ.
func TestBoxesCompare(t *testing.T) {
	m := New(Config{})
	p := types.NewPackage("main", "main")
	named := func(name string) *TypeRec {
		return m.rec(types.NewNamed(types.NewTypeName(0, p, name, nil), types.Typ[types.Int], nil))
	}
	a, b := named("A"), named("B")
	box := func(ti *TypeRec, n int) any { return ti.copyAny(unsafe.Pointer(&n)) }
	for _, tt := range []struct {
		x, y any
		want bool
	}{
		{box(a, 1), box(a, 1), true}, {box(a, 1), box(a, 2), false}, {box(a, 1), box(b, 1), false}, {box(a, 1), 1, false},
		{nil, box(a, 0), false}, {map[any]int{box(a, 1): 5}[box(a, 1)], 5, true},
	} {
		if got := equalAny(tt.x, tt.y); got != tt.want {
			t.Errorf("equalAny(%v, %v) = %v", tt.x, tt.y, got)
		}
	}
}

// copier copies every word of a value.
func TestCopier(t *testing.T) {
	type inner struct {
		s string
		b bool
	}
	type T struct {
		a uint8
		p *int
		i [3]inner
		e error
		f float32
	}
	n := 3
	src := T{1, &n, [3]inner{{"x", true}, {}, {"z", false}}, plainError("e"), 2.5}
	var dst T
	copier(reflect.TypeFor[T]())(unsafe.Pointer(&dst), unsafe.Pointer(&src))
	if dst != src {
		t.Errorf("copy is %v; want %v", dst, src)
	}
	big := [40]string{39: "last"}
	var to [40]string
	copier(reflect.TypeFor[[40]string]())(unsafe.Pointer(&to), unsafe.Pointer(&big))
	if to != big {
		t.Error("a large array was not copied whole")
	}
}

// A closure is found again behind the function value made of it; a compiled function has none.
func TestClosureOf(t *testing.T) {
	m := New(Config{})
	cl := &closure{}
	for _, rt := range []reflect.Type{reflect.TypeFor[func()](), reflect.TypeFor[func(string) []int](), reflect.TypeFor[func(int, int) bool]()} {
		if got := closureOf(m.funcWord(cl, rt)); got != cl {
			t.Errorf("%s: closureOf gives %p; want %p", rt, got, cl)
		}
	}
	f := func() {}
	other := reflect.MakeFunc(reflect.TypeFor[func()](), func([]reflect.Value) []reflect.Value { return nil }).Interface().(func())
	method := m.Stop
	for _, g := range []func(){f, other, method} {
		if closureOf(*(*unsafe.Pointer)(unsafe.Pointer(&g))) != nil {
			t.Error("a closure behind a compiled function")
		}
	}
}
