package eval

import (
	"go/types"
	"reflect"
)

// Adapters let compiled code call the methods of values whose types were declared in cells. For each compiled
// interface T with methods, the table of T's package holds under "_T" a nil pointer to a struct of exactly one field,
// an embedded Box, whose methods call back by name:
//
//	type _Stringer struct{ eval.Box }
//
//	func (a _Stringer) String() string { return a.CallMethod("String")[0].(string) }
//
// A result that is itself an interface is converted with eval.As, which lets nil through:
//
//	func (a _Wrapper) Unwrap() error { return eval.As[error](a.CallMethod("Unwrap")[0]) }
//
// Variadic parameters are handed on as one slice. The adapter of error is in this package.

// As reads a result of CallMethod as an interface type; nil stays nil.
func As[T any](v any) T {
	t, _ := v.(T)
	return t
}

// errorAdapter is the adapter for error.
type errorAdapter struct{ Box }

// Error implements error.
func (a errorAdapter) Error() string {
	s, _ := a.callString("Error")
	return s
}

// Unwrap gives package errors the error below, if the cell's type has such a method.
func (a errorAdapter) Unwrap() error {
	sig := a.Signature("Unwrap")
	if sig == nil || sig.Params().Len() != 0 || sig.Results().Len() != 1 || !isError(sig.Results().At(0).Type()) {
		return nil
	}
	return As[error](a.CallMethod("Unwrap")[0])
}

// Is lets package errors ask the cell's type.
func (a errorAdapter) Is(target error) bool {
	if t, ok := target.(unboxer); ok && a.T.comp && equalAny(a.Box, t.unbox()) {
		return true
	}
	sig := a.Signature("Is")
	if sig == nil || sig.Params().Len() != 1 || sig.Results().Len() != 1 || !isError(sig.Params().At(0).Type()) {
		return false
	}
	b, _ := a.CallMethod("Is", target)[0].(bool)
	return b
}

func isError(t types.Type) bool { return types.Identical(t, types.Universe.Lookup("error").Type()) }

// adapterType returns the adapter for a compiled interface, or nil.
func (m *Machine) adapterType(ti *TypeRec) reflect.Type {
	n, ok := types.Unalias(ti.T).(*types.Named)
	if !ok {
		return nil
	}
	if n.Obj().Pkg() == nil {
		return reflect.TypeFor[errorAdapter]()
	}
	v, ok := m.cfg.Packages[n.Obj().Pkg().Path()]["_"+n.Obj().Name()]
	if !ok || v.Kind() != reflect.Pointer {
		return nil
	}
	at := v.Type().Elem()
	if !at.Implements(ti.rt) || at.Size() != reflect.TypeFor[Box]().Size() {
		return nil
	}
	return at
}
