// Go specification, "Close": the texts of channel panics.

package main

import "fmt"

func try(name string, f func()) {
	defer func() {
		if r := recover(); r != nil {
			_, isErr := r.(error)
			fmt.Println(name, "->", r, isErr)
			return
		}
		fmt.Println(name, "fine")
	}()
	f()
}

func main() {
	ch := make(chan int, 1)
	var none chan int
	n := -1
	try("close", func() { close(ch) })
	try("close again", func() { close(ch) })
	try("send on closed", func() { ch <- 1 })
	try("close nil", func() { close(none) })
	try("make", func() { _ = make(chan int, n) })
	try("select send on closed", func() {
		select {
		case ch <- 1:
		default:
		}
	})
	try("receive", func() { fmt.Print(<-ch, " ") })
}
