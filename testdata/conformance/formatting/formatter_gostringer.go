// Go specification, "Package fmt in ordinary use": Formatter, GoStringer, Stringer and Error together.

package main

import (
	"fmt"
	"strings"
)

type Money int64

func (m Money) Format(s fmt.State, verb rune) {
	switch verb {
	case 'v', 's':
		if s.Flag('+') {
			fmt.Fprint(s, "EUR ")
		}
		w, ok := s.Width()
		txt := fmt.Sprintf("%d.%02d", int64(m)/100, int64(m)%100)
		if ok {
			txt = fmt.Sprintf("%*s", w, txt)
		}
		fmt.Fprint(s, txt)
	default:
		fmt.Fprintf(s, fmt.FormatString(s, verb), int64(m))
	}
}

type Secret string

func (Secret) String() string   { return "***" }
func (Secret) GoString() string { return "Secret(…)" }

type Both struct{}

func (Both) Error() string  { return "as error" }
func (Both) String() string { return "as string" }

type Panicky struct{ p *int }

func (p Panicky) String() string { return fmt.Sprint(*p.p) }

func main() {
	m := Money(12345)
	fmt.Printf("%v|%+v|%10s|%d|%06x\n", m, m, m, m, m)
	fmt.Println(m, []Money{1, 250}, map[string]Money{"a": 99})
	s := Secret("pw")
	fmt.Printf("%v %s %#v %q %x %d\n", s, s, s, s, s, len(s))
	fmt.Println([]Secret{s}, struct{ S Secret }{s})
	fmt.Printf("%#v %v %s %d\n", struct{ S Secret }{s}, Both{}, Both{}, Both{})
	n := 4
	fmt.Println(Panicky{&n})
	fmt.Println(strings.Contains(fmt.Sprint(Panicky{}), "PANIC=String method: runtime error: invalid memory address"))
	var np *Secret
	fmt.Println(np)
}
