// Go specification, "Channel types": the concurrent prime sieve.

package main

import "fmt"

func generate(ch chan<- int, stop <-chan struct{}) {
	for i := 2; ; i++ {
		select {
		case ch <- i:
		case <-stop:
			return
		}
	}
}

func filter(src <-chan int, dst chan<- int, prime int, stop <-chan struct{}) {
	for {
		select {
		case i := <-src:
			if i%prime != 0 {
				select {
				case dst <- i:
				case <-stop:
					return
				}
			}
		case <-stop:
			return
		}
	}
}

func main() {
	stop := make(chan struct{})
	defer close(stop)
	ch := make(chan int)
	go generate(ch, stop)
	for range 12 {
		prime := <-ch
		fmt.Print(prime, " ")
		next := make(chan int)
		go filter(ch, next, prime, stop)
		ch = next
	}
	fmt.Println()
}
