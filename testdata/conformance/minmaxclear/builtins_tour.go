// Go specification, "Built-in functions": len, cap, append, copy, complex, real, imag, delete, make.

package main

import "fmt"

func main() {
	s := make([]int, 2, 5)
	s = append(s, 1, 2)
	s = append(s, s...)
	fmt.Println(len(s), cap([3]int{}), s)
	b := append([]byte("hello "), "world"...)
	fmt.Println(string(b), len("日本"), len([...]int{9: 0}))
	c := complex(3, -4)
	fmt.Println(real(c), imag(c), c)
	var c64 complex64 = complex(float32(1), 2)
	fmt.Printf("%T %T %T\n", c, c64, real(c64))
	ch := make(chan string, 4)
	ch <- "a"
	ch <- "b"
	fmt.Println(len(ch), cap(ch))
	var nilCh chan int
	var nilMap map[int]int
	var p *[7]int
	fmt.Println(len(nilCh), cap(nilCh), len(nilMap), len(p), cap(p))
	m := make(map[string][]int)
	m["x"] = append(m["x"], 1)
	m["x"] = append(m["x"], 2)
	delete(m, "y")
	fmt.Println(m, len(m["zz"]))
	len := 3
	fmt.Println(len, cap(s[:0:2]))
	var e []string
	fmt.Println(e == nil, append(e, "x"))
}
