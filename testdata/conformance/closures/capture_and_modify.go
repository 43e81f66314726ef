// Go specification, "Function literals": captured parameters, named results and struct fields.

package main

import "fmt"

type Acc struct{ sum int }

func adders(a *Acc, base int) (add func(int), get func() int) {
	add = func(n int) { a.sum += n + base; base++ }
	get = func() int { return a.sum*1000 + base }
	return add, get
}

func named(n int) (r int) {
	f := func() { r *= 2 }
	r = n + 1
	f()
	f()
	return
}

func main() {
	var a Acc
	add, get := adders(&a, 0)
	for i := range 4 {
		add(i)
	}
	fmt.Println(get(), a, named(4))
	s := []int{1, 2, 3}
	last := func() int { return s[len(s)-1] }
	s = append(s, 99)
	fmt.Println(last())
	s = s[:1]
	fmt.Println(last())
	m := map[string]func(){}
	log := ""
	for _, n := range []string{"a", "b", "c"} {
		m[n] = func() { log += n }
	}
	m["c"]()
	m["a"]()
	fmt.Println(log)
}
