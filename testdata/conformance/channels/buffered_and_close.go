// Go specification, "Channel types": buffering, closing, comma ok and ranging.

package main

import "fmt"

func main() {
	ch := make(chan int, 3)
	ch <- 1
	ch <- 2
	fmt.Println(len(ch), cap(ch))
	v, ok := <-ch
	fmt.Println(v, ok)
	ch <- 3
	close(ch)
	for v := range ch {
		fmt.Print(v, " ")
	}
	v, ok = <-ch
	fmt.Println(v, ok, len(ch))
	strs := make(chan string, 1)
	close(strs)
	s, ok := <-strs
	fmt.Printf("%q %t\n", s, ok)
	var in chan<- int = make(chan int, 1)
	in <- 5
	fmt.Println(len(in), <-func() <-chan int { c := make(chan int, 1); c <- 8; return c }())
	cc := make(chan chan int, 1)
	c := make(chan int, 1)
	cc <- c
	c <- 77
	fmt.Println(<-<-cc)
	fmt.Printf("%T %T %T\n", in, cc, (<-chan func())(nil))
	var n chan int
	fmt.Println(n == nil, c == c, c == ch)
}
