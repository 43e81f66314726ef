// Go specification, "Go statements": counting words in parallel, merging into one map.

package main

import (
	"fmt"
	"strings"
	"sync"
)

func mapper(line string) map[string]int {
	m := map[string]int{}
	for _, w := range strings.Fields(line) {
		m[strings.ToLower(strings.Trim(w, ".,"))]++
	}
	return m
}

func main() {
	lines := strings.Split("Heads first, hearts second.\nHearts are kept.\nTails are kept, too, for second runs.", "\n")
	parts := make(chan map[string]int)
	for _, l := range lines {
		go func() { parts <- mapper(l) }()
	}
	total := map[string]int{}
	for range lines {
		for w, n := range <-parts {
			total[w] += n
		}
	}
	fmt.Println(total)
	var mu sync.Mutex
	var wg sync.WaitGroup
	hist := make([]int, 4)
	for w := range total {
		wg.Add(1)
		go func() {
			defer wg.Done()
			mu.Lock()
			hist[len(w)/2]++
			mu.Unlock()
		}()
	}
	wg.Wait()
	fmt.Println(hist)
}
