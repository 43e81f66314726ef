// Go specification, "Method values": the receiver is evaluated and copied when the value is made.

package main

import "fmt"

type T struct{ a int }

func (t T) Mv(n int) int    { return t.a*10 + n }
func (t *T) Mp(f float32) T { t.a++; return T{t.a * int(f)} }
func mk(n int) T            { fmt.Print("mk", n, " "); return T{n} }
func (t *T) Self() *T       { return t }

func main() {
	t := T{7}
	pt := &t
	f := t.Mv
	g := t.Mp
	h := pt.Mv
	t.a = 1
	r := g(2)
	fmt.Println(f(1), h(2), r, t)
	*pt = T{5}
	r = g(1)
	fmt.Println(f(1), r, pt.Mv(3))
	k := mk(3).Mv
	fmt.Println(k(0), k(1))
	fs := []func(int) int{f, h, k, pt.Self().Mv}
	sum := 0
	for _, fn := range fs {
		sum += fn(0)
	}
	fmt.Println(sum)
	fmt.Printf("%T %T\n", f, g)
	defer func() { fmt.Println("nil receiver:", recover() != nil) }()
	var np *T
	ok := np.Self
	fmt.Println(ok() == nil)
	bad := np.Mv
	fmt.Println("not reached", bad == nil)
}
