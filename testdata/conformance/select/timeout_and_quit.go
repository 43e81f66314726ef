// Go specification, "Select statements": time-outs, tickers and quit channels.

package main

import (
	"fmt"
	"time"
)

func wait(ch <-chan string, d time.Duration) string {
	select {
	case s := <-ch:
		return s
	case <-time.After(d):
		return "timeout"
	}
}

func fibonacci(c, quit chan int) (sent int) {
	x, y := 0, 1
	for {
		select {
		case c <- x:
			x, y = y, x+y
			sent++
		case <-quit:
			return
		}
	}
}

func main() {
	ch := make(chan string, 1)
	fmt.Println(wait(ch, 5*time.Millisecond))
	ch <- "ready"
	fmt.Println(wait(ch, time.Minute))
	c, quit := make(chan int), make(chan int)
	go func() {
		for range 10 {
			fmt.Print(<-c, " ")
		}
		quit <- 0
	}()
	fmt.Println(fibonacci(c, quit))
	tick := time.NewTicker(time.Millisecond)
	defer tick.Stop()
	n := 0
	for range tick.C {
		if n++; n == 3 {
			break
		}
	}
	fmt.Println(n)
}
