package eval

import (
	"go/types"
	"reflect"
	"sort"
)

// The front of package errors.
func errorFronts() map[string]any {
	return map[string]any{
		"errors.Is": errorsIs,
		"errors.As": errorsAs,
	}
}

// below returns the errors an error wraps.
func below(err error) []error {
	if b, ok := Unbox(err); ok {
		sig := b.Signature("Unwrap")
		if sig == nil || sig.Params().Len() != 0 || sig.Results().Len() != 1 {
			return nil
		}
		switch r := sig.Results().At(0).Type(); {
		case isError(r):
			if e := As[error](b.CallMethod("Unwrap")[0]); e != nil {
				return []error{e}
			}
		case types.Identical(r, types.NewSlice(types.Universe.Lookup("error").Type())):
			return As[[]error](b.CallMethod("Unwrap")[0])
		}
		return nil
	}
	switch x := err.(type) {
	case interface{ Unwrap() error }:
		if e := x.Unwrap(); e != nil {
			return []error{e}
		}
	case interface{ Unwrap() []error }:
		return x.Unwrap()
	}
	return nil
}

func comparableError(err error) bool {
	if b, ok := Unbox(err); ok {
		return b.T.comp
	}
	return reflect.TypeOf(err).Comparable()
}

func errorsIs(err, target error) bool {
	if err == nil || target == nil {
		return err == nil && target == nil
	}
	comp := comparableError(target)
	var is func(err error) bool
	is = func(err error) bool {
		if comp && comparableError(err) && equalAny(plain(err), plain(target)) {
			return true
		}
		if b, ok := Unbox(err); ok {
			if sig := b.Signature("Is"); sig != nil && sig.Params().Len() == 1 && sig.Results().Len() == 1 &&
				isError(sig.Params().At(0).Type()) {
				if As[bool](b.CallMethod("Is", target)[0]) {
					return true
				}
			}
		} else if x, ok := err.(interface{ Is(error) bool }); ok && x.Is(target) {
			return true
		}
		for _, e := range below(err) {
			if e != nil && is(e) {
				return true
			}
		}
		return false
	}
	return is(err)
}

func errorsAs(err error, target any) bool {
	if err == nil {
		return false
	}
	if target == nil {
		panic("errors: target cannot be nil")
	}
	b, boxed := Unbox(target)
	if !boxed {
		v := reflect.ValueOf(target)
		if v.Kind() != reflect.Pointer || v.IsNil() {
			panic("errors: target must be a non-nil pointer")
		}
		if e := v.Type().Elem(); e.Kind() != reflect.Interface && !e.Implements(errorRType) {
			panic("errors: *target must be interface or implement error")
		}
		return asEach(err, target, func(x any) bool {
			if bx, ok := x.(Box); ok {
				if v.Type().Elem() == errorRType {
					v.Elem().Set(reflect.ValueOf(errorAdapter{bx}))
					return true
				}
				if v.Type().Elem() == anyType {
					v.Elem().Set(reflect.ValueOf(x))
					return true
				}
				return false
			}
			if reflect.TypeOf(x).AssignableTo(v.Type().Elem()) {
				v.Elem().Set(reflect.ValueOf(x))
				return true
			}
			return false
		})
	}
	pt, ok := b.T.T.Underlying().(*types.Pointer)
	p := val{ti: b.T, v: b.T.at(b.ptr())}
	if !ok || p.isNil() {
		panic("errors: target must be a non-nil pointer")
	}
	et := b.T.m.rec(pt.Elem())
	if !types.IsInterface(et.T) && !types.Implements(et.T, types.Universe.Lookup("error").Type().Underlying().(*types.Interface)) {
		panic("errors: *target must be interface or implement error")
	}
	dst := p.deref().ptr()
	return asEach(err, target, func(x any) bool {
		if !et.test()(x) {
			return false
		}
		et.putAny(dst, x)
		return true
	})
}

// asEach tries an error and all it wraps.
func asEach(err error, target any, take func(any) bool) bool {
	if take(plain(err)) {
		return true
	}
	if b, ok := Unbox(err); ok {
		if sig := b.Signature("As"); sig != nil && sig.Params().Len() == 1 && sig.Results().Len() == 1 {
			if As[bool](b.CallMethod("As", target)[0]) {
				return true
			}
		}
	} else if x, ok := err.(interface{ As(any) bool }); ok && x.As(target) {
		return true
	}
	for _, e := range below(err) {
		if e != nil && asEach(e, target, take) {
			return true
		}
	}
	return false
}

// reflectFronts are functions that take a slice as an any.
func reflectFronts() map[string]any {
	storage := func(x any) any {
		if b, ok := Unbox(x); ok {
			return b.V
		}
		return x
	}
	return map[string]any{
		"maps.clone": func(x any) any {
			b, boxed := Unbox(x)
			if !boxed {
				return cloneMap(reflect.ValueOf(x)).Interface()
			}
			return Box{b.T, cloneMap(reflect.ValueOf(b.V)).Interface()}
		},
		"sort.Slice":         func(x any, less func(i, j int) bool) { sort.Slice(storage(x), less) },
		"sort.SliceStable":   func(x any, less func(i, j int) bool) { sort.SliceStable(storage(x), less) },
		"sort.SliceIsSorted": func(x any, less func(i, j int) bool) bool { return sort.SliceIsSorted(storage(x), less) },
	}
}

func cloneMap(m reflect.Value) reflect.Value {
	if m.IsNil() {
		return m
	}
	c := reflect.MakeMapWithSize(m.Type(), m.Len())
	for it := m.MapRange(); it.Next(); {
		c.SetMapIndex(it.Key(), it.Value())
	}
	return c
}
