package eval

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"unsafe"
)

// words is an interface value printed as its two words.
type words struct{ v any }

// printCall compiles print and println, which write to the standard error.
func (f *fnc) printCall(name string, a []*ex) *ex {
	vals := make([]func(*frame) any, len(a))
	for i, x := range a {
		if x.isNil {
			vals[i] = func(*frame) any { return nil }
			continue
		}
		if x.ti.rep == repIface || x.ti.rep == repAny {
			v := as[any](f.toAny(x, f.m.anyRec))
			vals[i] = func(fr *frame) any { return words{v(fr)} }
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
	if w, ok := v.(words); ok {
		e := (*eface)(unsafe.Pointer(&w.v))
		return fmt.Sprintf("(%#x,%#x)", uintptr(e.typ), uintptr(e.data))
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
	case reflect.Func:
		return fmt.Sprintf("%#x", uintptr(*(*unsafe.Pointer)(addressable(rv).Addr().UnsafePointer())))
	case reflect.Pointer, reflect.Map, reflect.Chan, reflect.UnsafePointer:
		return fmt.Sprintf("%#x", rv.Pointer())
	}
	return "(" + rv.Type().String() + ")"
}

// printFloat is the form of print: as short as identifies the number.
func printFloat(x float64, bits int) string { return strconv.FormatFloat(x, 'g', -1, bits) }
