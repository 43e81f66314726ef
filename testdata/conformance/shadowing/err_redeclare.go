// Go specification, "Short variable declarations": redeclaration reuses a variable in the same scope only.

package main

import (
	"fmt"
	"strconv"
)

func parse(s string) (int, error) { return strconv.Atoi(s) }

func sum(a, b string) (n int, err error) {
	x, err := parse(a)
	if err != nil {
		return
	}
	y, err := parse(b)
	if err != nil {
		return 0, fmt.Errorf("second: %w", err)
	}
	if z, err := parse(a + b); err == nil {
		n = z
	}
	n += x + y
	return
}

func lost() (err error) {
	if true {
		_, err := parse("bad")
		_ = err
	}
	return
}

func main() {
	fmt.Println(sum("1", "2"))
	fmt.Println(sum("1", "z"))
	fmt.Println(sum("q", "2"))
	fmt.Println(lost())
	a, b := 1, 2
	p := &a
	a, c := 10, 3
	fmt.Println(a, b, c, *p == a)
	{
		a, d := 99, 4
		_ = d
		fmt.Println(a, *p)
	}
	_, e := 5, "five"
	fmt.Println(a, e)
}
