// Go specification, "Channel types": fan-out and ordered fan-in through a slice of channels.

package main

import (
	"fmt"
	"sort"
)

type task struct {
	n   int
	out chan int
}

func square(in <-chan task) {
	for t := range in {
		t.out <- t.n * t.n
		close(t.out)
	}
}

func ordered(ns ...int) (out []int) {
	in := make(chan task)
	for range 3 {
		go square(in)
	}
	results := make(chan chan int, len(ns))
	go func() {
		for _, n := range ns {
			t := task{n, make(chan int, 1)}
			results <- t.out
			in <- t
		}
		close(in)
		close(results)
	}()
	for c := range results {
		out = append(out, <-c)
	}
	return
}

func broadcast(n int) (got []int) {
	start := make(chan struct{})
	done := make(chan int)
	for i := range n {
		go func() {
			<-start
			done <- i
		}()
	}
	close(start)
	for range n {
		got = append(got, <-done)
	}
	sort.Ints(got)
	return
}

func main() {
	fmt.Println(ordered(5, 1, 4, 2, 9, 7))
	fmt.Println(ordered())
	fmt.Println(broadcast(6))
	var bidirectional chan int = make(chan int, 1)
	func(w chan<- int) { w <- 3 }(bidirectional)
	func(r <-chan int) { fmt.Println(<-r) }(bidirectional)
}
