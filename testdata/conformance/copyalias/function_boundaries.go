// Go specification, "Calls": arguments are copied; variadic slices are passed through.

package main

import "fmt"

type Cfg struct {
	name string
	opts map[string]bool
	arr  [2]int
}

func byValue(c Cfg) Cfg { c.name = "changed"; c.opts["x"] = true; c.arr[0] = 9; return c }
func byPointer(c *Cfg)  { c.name = "changed"; c.arr[0] = 9 }
func variadic(xs ...int) {
	if len(xs) > 0 {
		xs[0] = -1
	}
}
func describe(xs ...string) string { return fmt.Sprintf("%d %t %q", len(xs), xs == nil, xs) }
func mapFn(m map[string]int)       { m["a"]++; m = nil; _ = m }
func chanFn(c chan int)            { c <- 5; c = nil; _ = c }
func ret() [2]int                  { return [2]int{1, 2} }

func main() {
	c := Cfg{"orig", map[string]bool{}, [2]int{}}
	d := byValue(c)
	fmt.Println(c, d)
	byPointer(&c)
	fmt.Println(c)
	xs := []int{1, 2, 3}
	variadic(xs...)
	variadic(xs[1], xs[2])
	variadic()
	fmt.Println(xs)
	fmt.Println(describe(), describe(nil...), describe("a"), describe([]string{}...))
	m := map[string]int{}
	mapFn(m)
	ch := make(chan int, 1)
	chanFn(ch)
	fmt.Println(m, <-ch, ret()[1])
	p := &xs
	*p = append(*p, 4)
	q := p
	*q = (*q)[1:]
	fmt.Println(xs, len(*p))
}
