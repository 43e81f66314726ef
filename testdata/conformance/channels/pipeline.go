// Go specification, "Channel types": a pipeline of stages with directional channels.

package main

import "fmt"

func source(n int) <-chan int {
	out := make(chan int)
	go func() {
		defer close(out)
		for i := 1; i <= n; i++ {
			out <- i
		}
	}()
	return out
}

func stage(in <-chan int, f func(int) (int, bool)) <-chan int {
	out := make(chan int)
	go func() {
		defer close(out)
		for v := range in {
			if w, ok := f(v); ok {
				out <- w
			}
		}
	}()
	return out
}

func sink(in <-chan int, done chan<- []int) {
	var got []int
	for v := range in {
		got = append(got, v)
	}
	done <- got
}

func main() {
	square := func(n int) (int, bool) { return n * n, true }
	odd := func(n int) (int, bool) { return n, n%2 == 1 }
	done := make(chan []int)
	go sink(stage(stage(source(9), square), odd), done)
	fmt.Println(<-done)
	total := 0
	for v := range stage(source(100), odd) {
		total += v
	}
	fmt.Println(total)
}
