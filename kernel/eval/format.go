package eval

import (
	"fmt"
	"go/types"
	"io"
	"reflect"
	"strings"
	"unsafe"
)

// printer prints one operand as package fmt does.
type printer struct {
	s        fmt.State
	arg      *val // the value whose methods were looked at last; nil once its parts are printed
	erroring bool
	sharpV   bool
	plusV    bool
}

// Format prints the boxed value as package fmt prints a value of its type.
func (b Box) Format(s fmt.State, verb rune) {
	v := val{ti: b.T, v: b.T.at(b.ptr())}
	formatVal(s, verb, v)
}

// operand is a compiled value in which boxes may lie.
type operand struct{ v val }

// Format implements fmt.Formatter.
func (o operand) Format(s fmt.State, verb rune) { formatVal(s, verb, o.v) }

func formatVal(s fmt.State, verb rune, v val) {
	p := &printer{s: s, sharpV: verb == 'v' && s.Flag('#'), plusV: verb == 'v' && s.Flag('+')}
	p.printArg(v, verb)
}

func (p *printer) str(s string) { io.WriteString(p.s, s) }

func (p *printer) printArg(v val, verb rune) {
	p.arg = &v
	switch verb {
	case 'T':
		p.leaf(v.typeName(), 's')
		return
	case 'p':
		p.pointer(v, 'p')
		return
	}
	if p.methods(v, verb) {
		return
	}
	p.value(v, verb, 0)
}

// leaf prints a plain value with the flags of the directive.
func (p *printer) leaf(x any, verb rune) {
	fmt.Fprintf(p.s, fmt.FormatString(p.s, verb), x)
}

// padded prints a text with the width of the directive alone.
func (p *printer) padded(s string) {
	f := "%"
	if p.s.Flag('-') {
		f += "-"
	}
	if w, ok := p.s.Width(); ok {
		f += fmt.Sprint(w)
	}
	fmt.Fprintf(p.s, f+"s", s)
}

func (p *printer) bad(verb rune, v val) {
	p.erroring = true
	p.str("%!" + string(verb) + "(")
	if p.arg != nil {
		v = *p.arg
	}
	p.str(v.typeName() + "=")
	q := &printer{s: noFlags{p.s}, erroring: true}
	if p.arg != nil {
		q.printArg(v, 'v')
	} else {
		q.value(v, 'v', 0)
	}
	p.str(")")
	p.erroring = false
}

// noFlags hides the flags of a directive.
type noFlags struct{ fmt.State }

func (noFlags) Width() (int, bool)     { return 0, false }
func (noFlags) Precision() (int, bool) { return 0, false }
func (noFlags) Flag(int) bool          { return false }

// methods prints a value that knows how to print itself.
func (p *printer) methods(v val, verb rune) (handled bool) {
	if p.erroring || v.ro {
		return false
	}
	if v.ti != nil && v.kind() == reflect.Interface {
		return false
	}
	x := v.any()
	b, boxed := x.(Box)
	if !boxed {
		return p.nativeMethods(x, v, verb)
	}
	switch {
	case b.is("Format", 2, 0) && b.Signature("Format").Params().At(0).Type().String() == "fmt.State":
		handled = true
		defer p.catch(v, verb, "Format")
		b.CallMethod("Format", p.s, verb)
		return true
	case p.sharpV:
		if b.givesString("GoString") {
			handled = true
			defer p.catch(v, verb, "GoString")
			s, _ := b.callString("GoString")
			p.padded(s)
			return true
		}
		return false
	}
	switch verb {
	case 'v', 's', 'x', 'X', 'q':
		for _, name := range []string{"Error", "String"} {
			if b.givesString(name) {
				handled = true
				defer p.catch(v, verb, name)
				s, _ := b.callString(name)
				p.text(s, verb)
				return true
			}
		}
	}
	return false
}

// text prints what a method returned.
func (p *printer) text(s string, verb rune) {
	if verb == 'v' {
		verb = 's'
	}
	p.leaf(s, verb)
}

func (p *printer) nativeMethods(x any, v val, verb rune) (handled bool) {
	if f, ok := x.(fmt.Formatter); ok {
		handled = true
		defer p.catch(v, verb, "Format")
		f.Format(p.s, verb)
		return true
	}
	if p.sharpV {
		if g, ok := x.(fmt.GoStringer); ok {
			handled = true
			defer p.catch(v, verb, "GoString")
			p.padded(g.GoString())
			return true
		}
		return false
	}
	switch verb {
	case 'v', 's', 'x', 'X', 'q':
		switch g := x.(type) {
		case error:
			handled = true
			defer p.catch(v, verb, "Error")
			p.text(g.Error(), verb)
			return true
		case fmt.Stringer:
			handled = true
			defer p.catch(v, verb, "String")
			p.text(g.String(), verb)
			return true
		}
	}
	return false
}

// catch prints the panic of a method.
func (p *printer) catch(v val, verb rune, name string) {
	r := recover()
	if r == nil {
		return
	}
	q, ok := r.(*Panic)
	if ok && q.fatal {
		panic(q)
	}
	if v.kind() == reflect.Pointer && v.isNil() {
		p.str("<nil>")
		return
	}
	x := r
	if ok {
		x = q.Value
	}
	p.str("%!" + string(verb) + "(PANIC=" + name + " method: ")
	if w, ok := valOf(x, false); ok {
		in := &printer{s: noFlags{p.s}}
		in.printArg(w, 'v')
	} else {
		p.str("<nil>")
	}
	p.str(")")
}

func (b Box) is(name string, params, results int) bool {
	sig := b.Signature(name)
	return sig != nil && sig.Params().Len() == params && sig.Results().Len() == results
}

func (b Box) givesString(name string) bool {
	if !b.is(name, 0, 1) {
		return false
	}
	t, ok := types.Unalias(b.Signature(name).Results().At(0).Type()).(*types.Basic)
	return ok && t.Kind() == types.String
}

const (
	intVerbs     = "vdboOxXcqU"
	floatVerbs   = "vbgGxXfFeE"
	stringVerbs  = "vsxXq"
	pointerVerbs = "vpbodxX"
)

// value prints a value by its kind.
func (p *printer) value(v val, verb rune, depth int) {
	if depth > 0 && !v.ro {
		if v.ti == nil || v.kind() != reflect.Interface {
			p.arg = &v
		}
		if p.methods(v, verb) {
			return
		}
	}
	p.arg = nil
	plain := func(verbs string) {
		if !strings.ContainsRune(verbs, verb) {
			p.bad(verb, v)
			return
		}
		p.leaf(basicOf(v.v), verb)
	}
	switch k := v.kind(); k {
	case reflect.Bool:
		plain("vt")
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64, reflect.Uint, reflect.Uint8,
		reflect.Uint16, reflect.Uint32, reflect.Uint64, reflect.Uintptr:
		plain(intVerbs)
	case reflect.Float32, reflect.Float64, reflect.Complex64, reflect.Complex128:
		plain(floatVerbs)
	case reflect.String:
		plain(stringVerbs)
	case reflect.Map:
		if p.sharpV {
			p.str(v.typeName())
			if v.isNil() {
				p.str("(nil)")
				return
			}
			p.str("{")
		} else {
			p.str("map[")
		}
		keys, elems := v.entries()
		for i := range keys {
			p.between(i)
			p.value(keys[i], verb, depth+1)
			p.str(":")
			p.value(elems[i], verb, depth+1)
		}
		if p.sharpV {
			p.str("}")
		} else {
			p.str("]")
		}
	case reflect.Struct:
		if p.sharpV {
			p.str(v.typeName())
		}
		p.str("{")
		for i := range v.numField() {
			p.between(i)
			if p.plusV || p.sharpV {
				p.str(v.fieldName(i) + ":")
			}
			f := v.field(i)
			if f.kind() == reflect.Interface {
				if c, ok := f.content(); ok {
					f = c
				}
			}
			p.value(f, verb, depth+1)
		}
		p.str("}")
	case reflect.Interface:
		c, ok := v.content()
		switch {
		case ok:
			p.value(c, verb, depth+1)
		case p.sharpV:
			p.str(v.typeName() + "(nil)")
		default:
			p.str("<nil>")
		}
	case reflect.Array, reflect.Slice:
		p.list(v, verb, depth)
	case reflect.Pointer:
		if depth == 0 && !v.isNil() {
			e := v.deref()
			switch e.kind() {
			case reflect.Array, reflect.Slice, reflect.Struct, reflect.Map:
				p.str("&")
				p.value(e, verb, depth+1)
				return
			}
		}
		p.pointer(v, verb)
	case reflect.Chan, reflect.Func, reflect.UnsafePointer:
		p.pointer(v, verb)
	}
}

func (p *printer) between(i int) {
	switch {
	case i == 0:
	case p.sharpV:
		p.str(", ")
	default:
		p.str(" ")
	}
}

// list prints arrays and slices.
func (p *printer) list(v val, verb rune, depth int) {
	n := v.v.Len()
	if v.v.Type().Elem().Kind() == reflect.Uint8 {
		switch verb {
		case 's', 'q', 'x', 'X':
			b := make([]byte, n)
			reflect.Copy(reflect.ValueOf(b), v.v.Slice(0, n))
			p.leaf(b, verb)
			return
		}
	}
	if p.sharpV {
		p.str(v.typeName())
		if v.kind() == reflect.Slice && v.isNil() {
			p.str("(nil)")
			return
		}
		p.str("{")
	} else {
		p.str("[")
	}
	for i := range n {
		p.between(i)
		p.value(v.index(i), verb, depth+1)
	}
	if p.sharpV {
		p.str("}")
	} else {
		p.str("]")
	}
}

// pointer prints an address.
func (p *printer) pointer(v val, verb rune) {
	switch v.kind() {
	case reflect.Chan, reflect.Func, reflect.Map, reflect.Pointer, reflect.Slice, reflect.UnsafePointer:
	default:
		p.bad(verb, v)
		return
	}
	w := *(*unsafe.Pointer)(v.ptr())
	switch {
	case !strings.ContainsRune(pointerVerbs, verb):
		p.bad(verb, v)
	case verb == 'v' && p.sharpV:
		p.str("(" + v.typeName() + ")(")
		if w == nil {
			p.str("nil")
		} else {
			p.str(fmt.Sprintf("%#x", uintptr(w)))
		}
		p.str(")")
	case verb == 'v' && w == nil:
		p.padded("<nil>")
	case verb == 'v' || verb == 'p':
		p.leaf(w, verb)
	default:
		p.leaf(uintptr(w), verb)
	}
}

// basicOf strips the name from a value of a basic kind.
func basicOf(v reflect.Value) any {
	switch v.Kind() {
	case reflect.Bool:
		return v.Bool()
	case reflect.Int:
		return int(v.Int())
	case reflect.Int8:
		return int8(v.Int())
	case reflect.Int16:
		return int16(v.Int())
	case reflect.Int32:
		return int32(v.Int())
	case reflect.Int64:
		return v.Int()
	case reflect.Uint:
		return uint(v.Uint())
	case reflect.Uint8:
		return uint8(v.Uint())
	case reflect.Uint16:
		return uint16(v.Uint())
	case reflect.Uint32:
		return uint32(v.Uint())
	case reflect.Uint64:
		return v.Uint()
	case reflect.Uintptr:
		return uintptr(v.Uint())
	case reflect.Float32:
		return float32(v.Float())
	case reflect.Float64:
		return v.Float()
	case reflect.Complex64:
		return complex64(v.Complex())
	case reflect.Complex128:
		return v.Complex()
	}
	return v.String()
}
