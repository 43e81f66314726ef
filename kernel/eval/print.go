package eval

import (
	"fmt"
	"math"
	"reflect"
	"strconv"
	"strings"
)

// printCall compiles print and println, which write to the standard error.
func (f *fnc) printCall(name string, a []*ex) *ex {
	vals := make([]func(*frame) any, len(a))
	for i, x := range a {
		if x.isNil {
			vals[i] = func(*frame) any { return nil }
			continue
		}
		if x.ti.rep == repIface || x.ti.rep == repAny {
			vals[i] = as[any](f.toAny(x, f.m.anyRec))
			continue
		}
		fn := as[any](f.toAny(x, f.m.anyRec))
		vals[i] = fn
	}
	ln := name == "println"
	m := f.m
	return effect(func(fr *frame) {
		var b strings.Builder
		for i, v := range vals {
			if ln && i > 0 {
				b.WriteByte(' ')
			}
			x := v(fr)
			if bx, ok := Unbox(x); ok {
				x = bx.V
			}
			b.WriteString(printText(x))
		}
		if ln {
			b.WriteByte('\n')
		}
		fmt.Fprint(&m.errOut, b.String())
	})
}

func printText(v any) string {
	if v == nil {
		return "nil"
	}
	rv := reflect.ValueOf(v)
	switch rv.Kind() {
	case reflect.String:
		return rv.String()
	}
	if s, ok := printBasic(rv); ok {
		return s
	}
	switch rv.Kind() {
	case reflect.Slice:
		return fmt.Sprintf("[%d/%d]%#x", rv.Len(), rv.Cap(), rv.Pointer())
	case reflect.Pointer, reflect.Map, reflect.Chan, reflect.Func, reflect.UnsafePointer:
		return fmt.Sprintf("%#x", rv.Pointer())
	}
	return "(" + rv.Type().String() + ")"
}

// printFloat is the form of print: one digit, point, six digits, exponent of three.
func printFloat(x float64) string {
	switch {
	case math.IsNaN(x):
		return "NaN"
	case math.IsInf(x, 1):
		return "+Inf"
	case math.IsInf(x, -1):
		return "-Inf"
	}
	s := strconv.FormatFloat(x, 'e', 6, 64)
	if s[0] != '-' {
		s = "+" + s
	}
	i := strings.IndexByte(s, 'e')
	exp := s[i+2:]
	for len(exp) < 3 {
		exp = "0" + exp
	}
	return s[:i+2] + exp
}
