package eval

import (
	"go/types"
	"strconv"
	"strings"
)

// typeName writes a type as reflect does: main.T, interface {}, struct { X int }.
func typeName(t types.Type) string {
	var b strings.Builder
	writeType(&b, t, false)
	return b.String()
}

// writeType writes a type; inside type arguments packages stand with their paths.
func writeType(b *strings.Builder, t types.Type, arg bool) {
	switch t := types.Unalias(t).(type) {
	case *types.Basic:
		if t.Kind() == types.UnsafePointer {
			b.WriteString("unsafe.Pointer")
			return
		}
		t, _ = types.Default(t).(*types.Basic)
		switch t.Kind() {
		case types.Uint8:
			b.WriteString("uint8")
		case types.Int32:
			b.WriteString("int32")
		default:
			b.WriteString(t.Name())
		}
	case *types.Named:
		if p := t.Obj().Pkg(); p != nil {
			if arg {
				b.WriteString(p.Path())
			} else {
				b.WriteString(p.Name())
			}
			b.WriteByte('.')
		}
		b.WriteString(t.Obj().Name())
		if args := t.TypeArgs(); args.Len() > 0 {
			b.WriteByte('[')
			for i := range args.Len() {
				if i > 0 {
					b.WriteByte(',')
				}
				writeType(b, args.At(i), true)
			}
			b.WriteByte(']')
		}
	case *types.Pointer:
		b.WriteByte('*')
		writeType(b, t.Elem(), arg)
	case *types.Slice:
		b.WriteString("[]")
		writeType(b, t.Elem(), arg)
	case *types.Array:
		b.WriteByte('[')
		b.WriteString(strconv.FormatInt(t.Len(), 10))
		b.WriteByte(']')
		writeType(b, t.Elem(), arg)
	case *types.Map:
		b.WriteString("map[")
		writeType(b, t.Key(), arg)
		b.WriteByte(']')
		writeType(b, t.Elem(), arg)
	case *types.Chan:
		switch t.Dir() {
		case types.SendRecv:
			b.WriteString("chan ")
			if c, ok := types.Unalias(t.Elem()).(*types.Chan); ok && c.Dir() == types.RecvOnly {
				b.WriteByte('(')
				writeType(b, c, arg)
				b.WriteByte(')')
				return
			}
		case types.SendOnly:
			b.WriteString("chan<- ")
		case types.RecvOnly:
			b.WriteString("<-chan ")
		}
		writeType(b, t.Elem(), arg)
	case *types.Signature:
		b.WriteString("func")
		writeSignature(b, t, arg)
	case *types.Struct:
		if t.NumFields() == 0 {
			b.WriteString("struct {}")
			return
		}
		b.WriteString("struct { ")
		for i := range t.NumFields() {
			if i > 0 {
				b.WriteString("; ")
			}
			f := t.Field(i)
			if !f.Embedded() {
				b.WriteString(f.Name())
				b.WriteByte(' ')
			}
			writeType(b, f.Type(), arg)
			if tag := t.Tag(i); tag != "" {
				b.WriteByte(' ')
				b.WriteString(strconv.Quote(tag))
			}
		}
		b.WriteString(" }")
	case *types.Interface:
		if t.NumMethods() == 0 {
			b.WriteString("interface {}")
			return
		}
		b.WriteString("interface { ")
		for i := range t.NumMethods() {
			if i > 0 {
				b.WriteString("; ")
			}
			m := t.Method(i)
			b.WriteString(m.Name())
			writeSignature(b, m.Signature(), arg)
		}
		b.WriteString(" }")
	case *types.Tuple:
		b.WriteString(t.String())
	default:
		b.WriteString(t.String())
	}
}

func writeSignature(b *strings.Builder, s *types.Signature, arg bool) {
	b.WriteByte('(')
	for i := range s.Params().Len() {
		if i > 0 {
			b.WriteString(", ")
		}
		t := s.Params().At(i).Type()
		if s.Variadic() && i == s.Params().Len()-1 {
			b.WriteString("...")
			if sl, ok := t.Underlying().(*types.Slice); ok {
				t = sl.Elem()
			}
		}
		writeType(b, t, arg)
	}
	b.WriteByte(')')
	switch n := s.Results().Len(); {
	case n == 1:
		b.WriteByte(' ')
		writeType(b, s.Results().At(0).Type(), arg)
	case n > 1:
		b.WriteString(" (")
		for i := range n {
			if i > 0 {
				b.WriteString(", ")
			}
			writeType(b, s.Results().At(i).Type(), arg)
		}
		b.WriteByte(')')
	}
}
