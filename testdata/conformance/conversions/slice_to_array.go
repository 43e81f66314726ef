// Go specification, "Conversions from slice to array or array pointer": length checks and aliasing.

package main

import "fmt"

type Triple [3]int
type Ints []int

func try(f func()) {
	defer func() {
		if e := recover(); e != nil {
			fmt.Println("panic:", e)
		}
	}()
	f()
}

func main() {
	s := []int{1, 2, 3, 4}
	a := [2]int(s)
	p := (*[4]int)(s)
	p[0] = 99
	fmt.Println(a, *p, s)
	t := Triple(Ints(s))
	t[1] = -1
	fmt.Println(t, s)
	z := [0]int(s)
	var nilSlice []int
	zp := (*[0]int)(nilSlice)
	ep := (*[0]int)([]int{})
	fmt.Println(len(z), zp == nil, ep == nil)
	try(func() { fmt.Println([5]int(s)) })
	try(func() { _ = (*Triple)(s[:2]) })
	fmt.Printf("%T %T\n", t, (*Triple)(s))
}
