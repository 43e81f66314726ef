// Go specification, "Variable declarations": typed, untyped, grouped, several at once and blank.

package main

import (
	"fmt"
	"time"
)

var (
	count    int
	name             = "still"
	x, y     float64 = -1, 2
	i, label         = 7, "seven"
	_, size          = bounds()
	fn               = func(n int) int { return n + count }
)

func bounds() (lo, hi int) { return 3, 9 }

func main() {
	var a, b int
	var c = 'c'
	var d, e = 1.5, "e"
	f, g := true, 2i
	var h []string
	fmt.Println(count, name, x, y, i, label, size, fn(1))
	fmt.Println(a, b, c, d, e, f, g, h == nil)
	fmt.Printf("%T %T %T %T %T %T\n", c, d, f, g, h, fn)
	count = 10
	fmt.Println(fn(1))
	_, hi := bounds()
	lo, _ := bounds()
	fmt.Println(lo, hi)
	var p *int = &a
	*p = 5
	var iface interface{ String() string }
	fmt.Println(a, iface == nil)
	var t, u, v = func() (int, string, error) { return 1, "two", nil }()
	fmt.Println(t, u, v)
	_ = b
	var _ fmt.Stringer = time.Second
}
