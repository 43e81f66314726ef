// Go specification, "Go statements": results gathered by index so that the order is fixed.

package main

import (
	"fmt"
	"sync"
)

func work(n int) (sum int) {
	for i := 1; i <= n; i++ {
		sum += i * i
	}
	return
}

func main() {
	jobs := []int{3, 10, 1, 100, 7}
	results := make([]int, len(jobs))
	var wg sync.WaitGroup
	for i, j := range jobs {
		wg.Add(1)
		go func() {
			defer wg.Done()
			results[i] = work(j)
		}()
	}
	wg.Wait()
	fmt.Println(results)
	var wg2 sync.WaitGroup
	squares := make([]string, 4)
	for i := range squares {
		wg2.Go(func() { squares[i] = fmt.Sprint(i * i) })
	}
	wg2.Wait()
	fmt.Println(squares)
	done := make(chan int)
	x := 1
	go func(n int) { done <- n + 1 }(x * 10)
	x = 5
	fmt.Println(<-done, x)
}
