// Go specification, "Select statements": channel and send expressions are evaluated once, in order.

package main

import "fmt"

func ch(name string, c chan int) chan int { fmt.Print("chan-", name, " "); return c }
func val(n int) int                       { fmt.Print("val-", n, " "); return n }

func index(i int) int { fmt.Print("index "); return i }

func main() {
	a, b := make(chan int, 1), make(chan int, 1)
	b <- 5
	var full = make(chan int)
	var got [3]int
	select {
	case ch("full", full) <- val(1):
		fmt.Println("sent")
	case got[index(2)] = <-ch("b", b):
		fmt.Println("received", got)
	}
	select {
	case ch("a", a) <- val(2):
		fmt.Println("sent", len(a))
	case <-ch("nil", nil):
	}
	select {
	case got[index(0)] = <-ch("full", full):
	default:
		fmt.Println("default", got)
	}
}
