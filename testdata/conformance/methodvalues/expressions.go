// Go specification, "Method expressions": methods as functions with an explicit receiver.

package main

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"time"
)

type T struct{ a int }

func (t T) Mv(n int) int   { return t.a + n }
func (t *T) Mp(n int)      { t.a += n }
func (t T) String() string { return fmt.Sprint("T", t.a) }

type Namer interface{ Name(string) string }
type Fixed string

func (f Fixed) Name(s string) string { return string(f) + s }

type E struct {
	T
	*bytes.Buffer
}

func main() {
	t := T{1}
	f := T.Mv
	g := (*T).Mp
	h := (*T).Mv
	g(&t, 10)
	fmt.Println(f(t, 1), h(&t, 2), (T).Mv(t, 3))
	fmt.Printf("%T %T %T %T\n", f, g, h, Namer.Name)
	fmt.Println(Namer.Name(Fixed("<"), ">"), Fixed.Name("a", "b"))
	e := E{T{5}, &bytes.Buffer{}}
	fmt.Println(E.Mv(e, 1), (*bytes.Buffer).Len(e.Buffer), time.Duration.Seconds(1500*time.Millisecond))
	ops := map[string]func(T, int) int{"mv": T.Mv}
	fmt.Println(ops["mv"](T{2}, 2), strings.Map(func(r rune) rune { return r + 1 }, "HAL"))
	names := []string{"b", "a"}
	slices.SortFunc(names, strings.Compare)
	fmt.Println(names, T.String(t))
	apply := func(xs []T, fn func(T) string) (out []string) {
		for _, x := range xs {
			out = append(out, fn(x))
		}
		return
	}
	fmt.Println(apply([]T{{1}, {2}}, T.String))
}
