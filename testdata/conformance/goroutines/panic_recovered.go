// Go specification, "Go statements": a panic recovered inside its goroutine becomes an error.

package main

import (
	"errors"
	"fmt"
)

func safeGo(f func() int) <-chan error {
	ch := make(chan error, 1)
	go func() {
		defer close(ch)
		defer func() {
			if r := recover(); r != nil {
				ch <- fmt.Errorf("goroutine: %v", r)
			}
		}()
		if n := f(); n < 0 {
			ch <- errors.New("negative")
		}
	}()
	return ch
}

func main() {
	var m map[string]int
	zero := 0
	tasks := []func() int{
		func() int { return 1 },
		func() int { return -1 },
		func() int { return 1 / zero },
		func() int { m["a"]++; return 0 },
		func() int { panic("told to") },
	}
	chans := make([]<-chan error, len(tasks))
	for i, t := range tasks {
		chans[i] = safeGo(t)
	}
	for i, c := range chans {
		err, open := <-c
		fmt.Println(i, err, open)
	}
}
