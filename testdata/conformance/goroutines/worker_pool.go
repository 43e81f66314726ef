// Go specification, "Go statements": a worker pool with jobs and results sorted at the end.

package main

import (
	"fmt"
	"sort"
	"strings"
	"sync"
)

type job struct {
	id   int
	text string
}

type result struct {
	id, vowels int
}

func worker(jobs <-chan job, out chan<- result) {
	for j := range jobs {
		n := 0
		for _, r := range j.text {
			if strings.ContainsRune("aeiou", r) {
				n++
			}
		}
		out <- result{j.id, n}
	}
}

func main() {
	jobs, out := make(chan job), make(chan result, 4)
	var wg sync.WaitGroup
	for range 3 {
		wg.Add(1)
		go func() {
			defer wg.Done()
			worker(jobs, out)
		}()
	}
	go func() {
		for i, w := range strings.Fields("angelica orris liquorice cubeb grains of paradise") {
			jobs <- job{i, w}
		}
		close(jobs)
		wg.Wait()
		close(out)
	}()
	var all []result
	for r := range out {
		all = append(all, r)
	}
	sort.Slice(all, func(i, j int) bool { return all[i].id < all[j].id })
	fmt.Println(all)
}
