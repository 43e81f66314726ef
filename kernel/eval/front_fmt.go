package eval

import (
	"bytes"
	"fmt"
	"io"
	"reflect"
	"strconv"
	"strings"
	"sync"
	"unicode/utf8"
)

// The front of package fmt: the same functions, for operands among which there may be boxes.

func (m *Machine) fmtFronts() map[string]any {
	return map[string]any{
		"fmt.Print":    func(a ...any) (int, error) { return io.WriteString(&m.out, sprint(a)) },
		"fmt.Println":  func(a ...any) (int, error) { return io.WriteString(&m.out, sprintln(a)) },
		"fmt.Printf":   func(f string, a ...any) (int, error) { return io.WriteString(&m.out, sprintf(f, a)) },
		"fmt.Sprint":   func(a ...any) string { return sprint(a) },
		"fmt.Sprintln": func(a ...any) string { return sprintln(a) },
		"fmt.Sprintf":  func(f string, a ...any) string { return sprintf(f, a) },
		"fmt.Fprint":   func(w io.Writer, a ...any) (int, error) { return io.WriteString(w, sprint(a)) },
		"fmt.Fprintln": func(w io.Writer, a ...any) (int, error) { return io.WriteString(w, sprintln(a)) },
		"fmt.Fprintf": func(w io.Writer, f string, a ...any) (int, error) {
			return io.WriteString(w, sprintf(f, a))
		},
		"fmt.Append":   func(b []byte, a ...any) []byte { return append(b, sprint(a)...) },
		"fmt.Appendln": func(b []byte, a ...any) []byte { return append(b, sprintln(a)...) },
		"fmt.Appendf":  func(b []byte, f string, a ...any) []byte { return append(b, sprintf(f, a)...) },
		"fmt.Errorf":   errorf,
		"fmt.Sscan":    func(s string, a ...any) (int, error) { return fmt.Sscan(s, scanArgs(a)...) },
		"fmt.Sscanln":  func(s string, a ...any) (int, error) { return fmt.Sscanln(s, scanArgs(a)...) },
		"fmt.Sscanf":   func(s, f string, a ...any) (int, error) { return fmt.Sscanf(s, f, scanArgs(a)...) },
		"fmt.Fscan":    func(r io.Reader, a ...any) (int, error) { return fmt.Fscan(r, scanArgs(a)...) },
		"fmt.Fscanln":  func(r io.Reader, a ...any) (int, error) { return fmt.Fscanln(r, scanArgs(a)...) },
		"fmt.Fscanf": func(r io.Reader, f string, a ...any) (int, error) {
			return fmt.Fscanf(r, f, scanArgs(a)...)
		},
	}
}

// scanArgs turns pointers to values of cell types into pointers to their storage.
func scanArgs(a []any) []any {
	out := make([]any, len(a))
	for i, x := range a {
		out[i] = x
		if b, ok := Unbox(x); ok {
			if v := (val{ti: b.T, v: b.T.at(b.ptr())}); v.kind() == reflect.Pointer && !v.isNil() {
				out[i] = v.deref().v.Addr().Interface()
			}
		}
	}
	return out
}

// mayHoldBox says whether values of a compiled type can contain interfaces.
func mayHoldBox(t reflect.Type) bool {
	if ok, hit := holdsCache.Load(t); hit {
		return ok.(bool)
	}
	ok := holdsInterface(t, map[reflect.Type]bool{})
	holdsCache.Store(t, ok)
	return ok
}

var holdsCache sync.Map

func holdsInterface(t reflect.Type, seen map[reflect.Type]bool) bool {
	if seen[t] {
		return false
	}
	seen[t] = true
	switch t.Kind() {
	case reflect.Interface:
		return true
	case reflect.Slice, reflect.Array, reflect.Pointer:
		return holdsInterface(t.Elem(), seen)
	case reflect.Map:
		return holdsInterface(t.Key(), seen) || holdsInterface(t.Elem(), seen)
	case reflect.Struct:
		for i := range t.NumField() {
			if holdsInterface(t.Field(i).Type, seen) {
				return true
			}
		}
	}
	return false
}

// printable prepares an operand for the real package fmt.
func printable(x any) any {
	if x == nil {
		return nil
	}
	if b, ok := Unbox(x); ok {
		return b
	}
	switch x.(type) {
	case error, fmt.Stringer, fmt.Formatter, reflect.Value:
		return x
	}
	if mayHoldBox(reflect.TypeOf(x)) {
		return operand{val{nil, addressable(reflect.ValueOf(x)), false}}
	}
	return x
}

func isText(x any) bool {
	if b, ok := Unbox(x); ok {
		return b.T.rep == repString
	}
	return x != nil && reflect.TypeOf(x).Kind() == reflect.String
}

func sprint(a []any) string {
	var b strings.Builder
	for i, x := range a {
		if i > 0 && !isText(x) && !isText(a[i-1]) {
			b.WriteByte(' ')
		}
		fmt.Fprint(&b, printable(x))
	}
	return b.String()
}

func sprintln(a []any) string {
	var b strings.Builder
	for i, x := range a {
		if i > 0 {
			b.WriteByte(' ')
		}
		fmt.Fprint(&b, printable(x))
	}
	b.WriteByte('\n')
	return b.String()
}

func simple(a []any) bool {
	for _, x := range a {
		switch x.(type) {
		case nil, bool, int, string, float64, int64, uint8, int32, []int, []string, []float64:
			continue
		}
		if _, ok := x.(unboxer); ok {
			return false
		}
		if mayHoldBox(reflect.TypeOf(x)) {
			return false
		}
	}
	return true
}

func sprintf(format string, a []any) string {
	if simple(a) {
		return fmt.Sprintf(format, a...)
	}
	f, args := rewrite(format, a)
	return fmt.Sprintf(f, args...)
}

func errorf(format string, a ...any) error {
	if simple(a) {
		return fmt.Errorf(format, a...)
	}
	f, args := rewrite(format, a)
	return fmt.Errorf(f, args...)
}

// rewrite resolves argument indexes and starred widths, and prints what the real package could not: types and
// addresses of boxes. What remains are plain directives that take one argument each.
func rewrite(format string, a []any) (string, []any) {
	r := &rewriter{format: format, a: a}
	r.run()
	return r.out.String(), r.args
}

type rewriter struct {
	format    string
	a         []any
	out       bytes.Buffer
	args      []any
	n         int // the next argument
	reordered bool
	good      bool
	after     bool // an index stood just before
}

func (r *rewriter) literal(s string) { r.out.WriteString(strings.ReplaceAll(s, "%", "%%")) }

func (r *rewriter) run() {
	f := r.format
	for i := 0; i < len(f); {
		j := strings.IndexByte(f[i:], '%')
		if j < 0 {
			r.out.WriteString(f[i:])
			break
		}
		r.out.WriteString(f[i : i+j])
		i += j + 1
		i = r.directive(i)
	}
	if !r.reordered && r.n < len(r.a) {
		r.literal("%!(EXTRA ")
		for k, x := range r.a[r.n:] {
			if k > 0 {
				r.literal(", ")
			}
			if x == nil {
				r.literal("<nil>")
				continue
			}
			r.literal(dynName(x) + "=" + fmt.Sprint(printable(x)))
		}
		r.literal(")")
	}
}

// index reads an explicit argument index.
func (r *rewriter) index(i int) int {
	f := r.format
	if i >= len(f) || f[i] != '[' {
		return i
	}
	r.reordered = true
	end := strings.IndexByte(f[i:], ']')
	if end < 0 {
		r.good = false
		return i + 1
	}
	n, err := strconv.Atoi(f[i+1 : i+end])
	if err != nil || n < 1 || n > len(r.a) {
		r.good = false
		return i + end + 1
	}
	r.n = n - 1
	r.after = true
	return i + end + 1
}

// star reads a width or precision from the arguments.
func (r *rewriter) star() (int, bool) {
	if r.n >= len(r.a) {
		return 0, false
	}
	x := r.a[r.n]
	r.n++
	if b, ok := Unbox(x); ok {
		x = b.V
	}
	v := reflect.ValueOf(x)
	switch {
	case !v.IsValid():
		return 0, false
	case v.CanInt():
		return int(v.Int()), v.Int() <= 1e6 && v.Int() >= -1e6
	case v.CanUint():
		return int(v.Uint()), v.Uint() <= 1e6
	}
	return 0, false
}

// directive handles what follows a percent sign and returns where the text goes on.
func (r *rewriter) directive(i int) int {
	f := r.format
	r.good, r.after = true, false
	spec := "%"
	minus := false
	for i < len(f) && strings.IndexByte("#0+- ", f[i]) >= 0 {
		minus = minus || f[i] == '-'
		spec += f[i : i+1]
		i++
	}
	i = r.index(i)
	if i < len(f) && f[i] == '*' {
		i++
		w, ok := r.star()
		if !ok {
			r.literal("%!(BADWIDTH)")
		} else {
			if w < 0 {
				w = -w
				spec += "-"
			}
			spec += strconv.Itoa(w)
		}
		r.after = false
	} else {
		j := i
		for i < len(f) && f[i] >= '0' && f[i] <= '9' {
			i++
		}
		if i > j && r.after {
			r.good = false
		}
		spec += f[j:i]
	}
	if i < len(f) && f[i] == '.' {
		i++
		if r.after {
			r.good = false
		}
		i = r.index(i)
		spec += "."
		if i < len(f) && f[i] == '*' {
			i++
			p, ok := r.star()
			if p < 0 || !ok {
				r.literal("%!(BADPREC)")
				spec = strings.TrimSuffix(spec, ".")
			} else {
				spec += strconv.Itoa(p)
			}
			r.after = false
		} else {
			j := i
			for i < len(f) && f[i] >= '0' && f[i] <= '9' {
				i++
			}
			spec += f[j:i]
		}
	}
	if !r.after {
		i = r.index(i)
	}
	if i >= len(f) {
		r.literal("%!(NOVERB)")
		return i
	}
	verb, size := utf8.DecodeRuneInString(f[i:])
	i += size
	switch {
	case verb == '%':
		r.out.WriteString("%%")
	case !r.good:
		r.literal("%!" + string(verb) + "(BADINDEX)")
	case r.n >= len(r.a):
		r.literal("%!" + string(verb) + "(MISSING)")
	default:
		x := r.a[r.n]
		r.n++
		r.emit(spec, verb, x)
	}
	return i
}

func (r *rewriter) emit(spec string, verb rune, x any) {
	b, boxed := Unbox(x)
	switch {
	case boxed && verb == 'T':
		r.literal(fmt.Sprintf(spec+"s", b.T.Name()))
		return
	case boxed && verb == 'p':
		v := val{ti: b.T, v: b.T.at(b.ptr())}
		r.literal(fmt.Sprintf(spec+"v", pointerOperand{v}))
		return
	case boxed && verb == 'w' && b.givesString("Error"):
		r.args = append(r.args, errorAdapter{b})
	case boxed:
		r.args = append(r.args, b)
	case verb == 'T' || verb == 'p' || verb == 'w':
		r.args = append(r.args, x)
	default:
		r.args = append(r.args, printable(x))
	}
	r.out.WriteString(spec + string(verb))
}

// pointerOperand prints as %p.
type pointerOperand struct{ v val }

// Format implements fmt.Formatter.
func (o pointerOperand) Format(s fmt.State, _ rune) {
	p := &printer{s: s, arg: &o.v}
	p.pointer(o.v, 'p')
}
