package eval

import (
	"reflect"
	"unsafe"
)

// Ways around reflect for compiled functions of frequent signatures.

func param[T any](c *code, fr *frame, i int) T { return *(*T)(fr.at(c.params[i].off)) }

func giveResult[T any](c *code, fr *frame, v T) { *(*T)(fr.at(c.results[0].off)) = v }

// directBody calls a compiled function whose signature is one of the frequent ones.
func directBody(c *code, v reflect.Value) exec {
	switch fn := v.Interface().(type) {
	case func():
		return func(*frame) ctl { fn(); return doReturn }
	case func(float64) float64:
		return body1[float64, float64](c, fn)
	case func(string) string:
		return body1[string, string](c, fn)
	case func(string) int:
		return body1[string, int](c, fn)
	case func(int) string:
		return body1[int, string](c, fn)
	case func(rune) bool:
		return body1[rune, bool](c, fn)
	case func(rune) rune:
		return body1[rune, rune](c, fn)
	case func(float64, float64) float64:
		return body2[float64, float64, float64](c, fn)
	case func(string, string) bool:
		return body2[string, string, bool](c, fn)
	case func(string, string) string:
		return body2[string, string, string](c, fn)
	case func(string, string) int:
		return body2[string, string, int](c, fn)
	case func(string, string) []string:
		return body2[string, string, []string](c, fn)
	case func([]string, string) string:
		return body2[[]string, string, string](c, fn)
	case func(string, int) string:
		return body2[string, int, string](c, fn)
	case func(...any) (int, error):
		return func(fr *frame) ctl {
			n, err := fn(param[[]any](c, fr, 0)...)
			*(*int)(fr.at(c.results[0].off)) = n
			*(*error)(fr.at(c.results[1].off)) = err
			return doReturn
		}
	case func(string, ...any) (int, error):
		return func(fr *frame) ctl {
			n, err := fn(param[string](c, fr, 0), param[[]any](c, fr, 1)...)
			*(*int)(fr.at(c.results[0].off)) = n
			*(*error)(fr.at(c.results[1].off)) = err
			return doReturn
		}
	case func(string, ...any) string:
		return func(fr *frame) ctl {
			giveResult(c, fr, fn(param[string](c, fr, 0), param[[]any](c, fr, 1)...))
			return doReturn
		}
	case func(...any) string:
		return func(fr *frame) ctl {
			giveResult(c, fr, fn(param[[]any](c, fr, 0)...))
			return doReturn
		}
	}
	return nil
}

func body1[A, R any](c *code, fn func(A) R) exec {
	return func(fr *frame) ctl { giveResult(c, fr, fn(param[A](c, fr, 0))); return doReturn }
}

func body2[A, B, R any](c *code, fn func(A, B) R) exec {
	return func(fr *frame) ctl { giveResult(c, fr, fn(param[A](c, fr, 0), param[B](c, fr, 1))); return doReturn }
}

// callBare compiles a call of such a function without a frame.
func (f *fnc) callBare(t *target, args []*ex, pre exec) *ex {
	if t.code == nil || !t.code.native.IsValid() || pre != nil || len(t.code.results) != 1 {
		return nil
	}
	ti, at := t.code.results[0].ti, t.at
	var fn any
	switch n := t.code.native.Interface().(type) {
	case func(float64) float64:
		fn = bare1(n, as[float64](args[0]), at)
	case func(string) string:
		fn = bare1(n, as[string](args[0]), at)
	case func(string) int:
		fn = bare1(n, as[string](args[0]), at)
	case func(int) string:
		fn = bare1(n, as[int](args[0]), at)
	case func(rune) bool:
		fn = bare1(n, as[int32](args[0]), at)
	case func(rune) rune:
		fn = bare1(n, as[int32](args[0]), at)
	case func(float64, float64) float64:
		fn = bare2(n, as[float64](args[0]), as[float64](args[1]), at)
	case func(string, string) bool:
		fn = bare2(n, as[string](args[0]), as[string](args[1]), at)
	case func(string, string) string:
		fn = bare2(n, as[string](args[0]), as[string](args[1]), at)
	case func(string, string) int:
		fn = bare2(n, as[string](args[0]), as[string](args[1]), at)
	default:
		return nil
	}
	return &ex{ti: ti, fn: fn}
}

func bare1[A, R any](fn func(A) R, a func(*frame) A, at *site) func(*frame) R {
	return func(fr *frame) R {
		x := a(fr)
		fr.g.at = at
		return fn(x)
	}
}

func bare2[A, B, R any](fn func(A, B) R, a func(*frame) A, b func(*frame) B, at *site) func(*frame) R {
	return func(fr *frame) R {
		x := a(fr)
		y := b(fr)
		fr.g.at = at
		return fn(x, y)
	}
}

// pointerMethod calls a compiled method with a pointer receiver. A function of a *T is called as one of an
// unsafe.Pointer, which is passed alike.
func pointerMethod(c *code, rt reflect.Type, fn reflect.Value) exec {
	if rt.Kind() != reflect.Pointer {
		return nil
	}
	p := reflect.New(fn.Type())
	p.Elem().Set(fn)
	word := p.UnsafePointer()
	off := c.recv.off
	recv := func(fr *frame) unsafe.Pointer { return *(*unsafe.Pointer)(fr.at(off)) }
	ft := fn.Type()
	in, out := ft.NumIn()-1, ft.NumOut()
	is := func(i int, t reflect.Type) bool { return ft.In(i+1) == t }
	switch {
	case in == 0 && out == 0:
		f := *(*func(unsafe.Pointer))(word)
		return func(fr *frame) ctl { f(recv(fr)); return doReturn }
	case in == 0 && out == 1 && ft.Out(0) == reflect.TypeFor[string]():
		f := *(*func(unsafe.Pointer) string)(word)
		return func(fr *frame) ctl { giveResult(c, fr, f(recv(fr))); return doReturn }
	case in == 0 && out == 1 && ft.Out(0) == reflect.TypeFor[int]():
		f := *(*func(unsafe.Pointer) int)(word)
		return func(fr *frame) ctl { giveResult(c, fr, f(recv(fr))); return doReturn }
	case in == 1 && out == 0 && is(0, reflect.TypeFor[int]()):
		f := *(*func(unsafe.Pointer, int))(word)
		return func(fr *frame) ctl { f(recv(fr), param[int](c, fr, 0)); return doReturn }
	case in == 1 && out == 2 && is(0, reflect.TypeFor[string]()) && ft.Out(0) == reflect.TypeFor[int]() && ft.Out(1) == errorRType:
		f := *(*func(unsafe.Pointer, string) (int, error))(word)
		return func(fr *frame) ctl {
			n, err := f(recv(fr), param[string](c, fr, 0))
			*(*int)(fr.at(c.results[0].off)) = n
			*(*error)(fr.at(c.results[1].off)) = err
			return doReturn
		}
	}
	return nil
}
