// Go specification, "Return statements": result values are set before deferred functions run.

package main

import (
	"errors"
	"fmt"
)

var trace []string

func note(s string) int { trace = append(trace, s); return len(trace) }

func a() (n int) {
	defer func() { note(fmt.Sprint("deferred sees ", n)) }()
	n = 5
	return n + note("return expression")
}

func b() (x, y int) {
	defer func() { x, y = y*10, x*10 }()
	x = 1
	return x + 1, x + 2
}

func c() func() int {
	n := 1
	defer func() { n = 100 }()
	return func() int { return n }
}

func d() (p *int) {
	v := 3
	defer func() { v++ }()
	return &v
}

func e() (s []int) {
	defer func() { s[0] = 9 }()
	t := []int{1, 2}
	return t
}

func f() (arr [2]int) {
	t := [2]int{1, 2}
	defer func() { t[0] = 50 }()
	return t
}

func main() {
	fmt.Println(a())
	fmt.Println(trace)
	fmt.Println(b())
	fmt.Println(c()(), *d(), e(), f())
	n, err := func() (n int, err error) {
		defer func() {
			if n > 3 {
				err = errors.New("too many")
			}
		}()
		return 4, nil
	}()
	fmt.Println(n, err)
}
