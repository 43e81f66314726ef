// Go specification, "Send statements": a buffered channel as semaphore, and request-reply.

package main

import (
	"fmt"
	"sync"
)

type request struct {
	n     int
	reply chan<- int
}

func server(reqs <-chan request) {
	sum := 0
	for r := range reqs {
		sum += r.n
		r.reply <- sum
	}
}

func main() {
	reqs := make(chan request)
	go server(reqs)
	reply := make(chan int)
	for i := range 5 {
		reqs <- request{i * i, reply}
		fmt.Print(<-reply, " ")
	}
	close(reqs)
	fmt.Println()
	sem := make(chan struct{}, 2)
	var mu sync.Mutex
	var wg sync.WaitGroup
	active, peak, total := 0, 0, 0
	for i := range 8 {
		wg.Add(1)
		go func() {
			defer wg.Done()
			sem <- struct{}{}
			defer func() { <-sem }()
			mu.Lock()
			active++
			peak = max(peak, active)
			total += i
			active--
			mu.Unlock()
		}()
	}
	wg.Wait()
	fmt.Println(peak <= 2, total, len(sem))
}
