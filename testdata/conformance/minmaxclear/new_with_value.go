// Go specification, "Allocation": new with a type and new with a value.

package main

import (
	"fmt"
	"strings"
)

type Opts struct {
	Proof *float64
	Name  *string
	Depth *int
}

func show(o Opts) string {
	var parts []string
	if o.Proof != nil {
		parts = append(parts, fmt.Sprint("proof=", *o.Proof))
	}
	if o.Name != nil {
		parts = append(parts, "name="+*o.Name)
	}
	if o.Depth != nil {
		parts = append(parts, fmt.Sprint("depth=", *o.Depth))
	}
	return strings.Join(parts, ",")
}

func main() {
	p := new(int)
	q := new(int)
	*p = 3
	fmt.Println(*p, *q, p == q)
	s := new([3]string)
	s[1] = "x"
	fmt.Printf("%q %T\n", *s, s)
	n := new(42)
	f := new(2.5)
	*n++
	fmt.Println(*n, *f)
	fmt.Printf("%T %T %T\n", n, f, new("s"))
	fmt.Println(show(Opts{Proof: new(100.0), Depth: new(len("abc"))}))
	fmt.Println(show(Opts{Name: new(strings.ToUpper("rye"))}))
	m := new(map[string]int)
	fmt.Println(*m == nil, len(*m))
}
