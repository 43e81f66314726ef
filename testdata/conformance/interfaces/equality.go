// Go specification, "Comparison operators": comparing interface values by dynamic type and value.

package main

import "fmt"

type ID int
type Other int
type Named interface{ Name() string }

func (i ID) Name() string    { return fmt.Sprint("id", int(i)) }
func (o Other) Name() string { return fmt.Sprint("id", int(o)) }

type Box struct{ n int }

func (b *Box) Name() string { return "box" }

func main() {
	var a, b, c Named = ID(1), ID(1), Other(1)
	fmt.Println(a == b, a == c, a != c, a == ID(1), a.Name() == c.Name())
	x, y := &Box{1}, &Box{1}
	var p, q, r Named = x, y, x
	fmt.Println(p == q, p == r, p == Named(x), *x == *y)
	var n Named
	var nb *Box
	fmt.Println(n == nil)
	n = nb
	fmt.Println(n == nil, n == (*Box)(nil), n.Name())
	m := map[Named]int{ID(1): 10, Other(1): 20, x: 30}
	fmt.Println(m[b], m[c], m[r], m[q])
	var u, v any = 1, int64(1)
	fmt.Println(u == v, u == 1, v == int64(1), any("a") == any("a"), any(nil) == nil)
	func() {
		defer func() { fmt.Println(recover()) }()
		var f, g any = []int{1}, []int{1}
		fmt.Println(f == g)
	}()
}
