// Go specification, "Select statements": default, nil channels and ready channels.

package main

import "fmt"

func tryRecv(ch <-chan int) (int, string) {
	select {
	case v, ok := <-ch:
		if !ok {
			return v, "closed"
		}
		return v, "value"
	default:
		return 0, "empty"
	}
}

func trySend(ch chan<- int, v int) bool {
	select {
	case ch <- v:
		return true
	default:
		return false
	}
}

func main() {
	ch := make(chan int, 2)
	fmt.Println(tryRecv(ch))
	fmt.Println(trySend(ch, 1), trySend(ch, 2), trySend(ch, 3))
	fmt.Println(tryRecv(ch))
	close(ch)
	fmt.Println(tryRecv(ch))
	fmt.Println(tryRecv(ch))
	fmt.Println(tryRecv(nil))
	fmt.Println(trySend(nil, 1))
	var a [2]int
	b := make(chan int, 1)
	b <- 9
	i := 1
	select {
	case a[i] = <-b:
	case <-chan int(nil):
	}
	fmt.Println(a)
	m := map[string]int{}
	var ok bool
	b <- 4
	select {
	case m["x"], ok = <-b:
		fmt.Println(m, ok)
	}
}
