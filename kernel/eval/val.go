package eval

import (
	"go/types"
	"reflect"
	"slices"
	"unsafe"
)

// val is a value to print: of a checker's type, or (ti nil) of a compiled type that only reflect knows. v is always
// addressable and readable; ro says that it was reached through an unexported field, so that its methods stay unused.
type val struct {
	ti *TypeRec
	v  reflect.Value
	ro bool
}

// valOf looks into an interface value.
func valOf(x any, ro bool) (val, bool) {
	if x == nil {
		return val{}, false
	}
	if b, ok := Unbox(x); ok {
		return val{b.T, b.T.at(b.ptr()), ro}, true
	}
	return val{nil, addressable(reflect.ValueOf(x)), ro}, true
}

func addressable(v reflect.Value) reflect.Value {
	p := reflect.New(v.Type()).Elem()
	p.Set(v)
	return p
}

// bare makes a value reached through an unexported field readable.
func bare(v reflect.Value) reflect.Value {
	if v.CanAddr() {
		return reflect.NewAt(v.Type(), v.Addr().UnsafePointer()).Elem()
	}
	return addressable(v)
}

func (a val) kind() reflect.Kind {
	if a.ti == nil {
		return a.v.Kind()
	}
	switch a.ti.T.Underlying().(type) {
	case *types.Pointer:
		return reflect.Pointer
	case *types.Map:
		return reflect.Map
	case *types.Chan:
		return reflect.Chan
	case *types.Signature:
		return reflect.Func
	case *types.Slice:
		return reflect.Slice
	}
	return a.v.Kind()
}

func (a val) typeName() string {
	if a.ti == nil {
		return a.v.Type().String()
	}
	return a.ti.Name()
}

// any returns the value as an interface holds it.
func (a val) any() any {
	if a.ti == nil {
		return a.v.Interface()
	}
	return a.ti.copyAny(a.v.Addr().UnsafePointer())
}

func (a val) ptr() unsafe.Pointer { return a.v.Addr().UnsafePointer() }

func (a val) isNil() bool { return *(*unsafe.Pointer)(a.ptr()) == nil }

// deref returns what a pointer points to.
func (a val) deref() val {
	if a.ti == nil {
		return val{nil, a.v.Elem(), a.ro}
	}
	et := a.ti.m.rec(a.ti.T.Underlying().(*types.Pointer).Elem())
	return val{et, et.at(*(*unsafe.Pointer)(a.ptr())), a.ro}
}

func (a val) numField() int { return a.v.NumField() }

func (a val) fieldName(i int) string {
	if a.ti == nil {
		return a.v.Type().Field(i).Name
	}
	return a.ti.T.Underlying().(*types.Struct).Field(i).Name()
}

func (a val) field(i int) val {
	f := bare(a.v.Field(i))
	if a.ti == nil {
		return val{nil, f, a.ro || !a.v.Type().Field(i).IsExported()}
	}
	sf := a.ti.T.Underlying().(*types.Struct).Field(i)
	ft := a.ti.m.rec(sf.Type())
	return val{ft, ft.at(f.Addr().UnsafePointer()), a.ro || !sf.Exported()}
}

func (a val) elemRec() *TypeRec {
	if a.ti == nil {
		return nil
	}
	switch t := a.ti.T.Underlying().(type) {
	case *types.Slice:
		return a.ti.m.rec(t.Elem())
	case *types.Array:
		return a.ti.m.rec(t.Elem())
	case *types.Map:
		return a.ti.m.rec(t.Elem())
	}
	return nil
}

func (a val) index(i int) val {
	e := a.v.Index(i)
	if r := a.elemRec(); r != nil {
		return val{r, r.at(e.Addr().UnsafePointer()), a.ro}
	}
	return val{nil, e, a.ro}
}

// entries returns a map's keys and elements in order.
func (a val) entries() (keys, elems []val) {
	type pair struct{ k, v val }
	var ps []pair
	var kt, et *TypeRec
	if a.ti != nil {
		kt, et = a.ti.m.rec(a.ti.T.Underlying().(*types.Map).Key()), a.elemRec()
	}
	retype := func(t *TypeRec, v reflect.Value) val {
		v = addressable(v)
		if t != nil {
			return val{t, t.at(v.Addr().UnsafePointer()), a.ro}
		}
		return val{nil, v, a.ro}
	}
	for it := a.v.MapRange(); it.Next(); {
		ps = append(ps, pair{retype(kt, it.Key()), retype(et, it.Value())})
	}
	slices.SortStableFunc(ps, func(x, y pair) int { return compareKeys(x.k.v, y.k.v) })
	for _, p := range ps {
		keys, elems = append(keys, p.k), append(elems, p.v)
	}
	return keys, elems
}

// content returns the value in an interface.
func (a val) content() (val, bool) {
	if a.v.IsNil() {
		return val{}, false
	}
	return valOf(a.v.Elem().Interface(), a.ro)
}
