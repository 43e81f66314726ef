// Go specification, "Qualified identifiers" (package math/rand): a seeded generator gives the same sequence.

package main

import (
	"fmt"
	"math/rand"
	"sort"
)

type weighted struct {
	name string
	w    int
}

func pick(r *rand.Rand, ws []weighted) string {
	total := 0
	for _, w := range ws {
		total += w.w
	}
	n := r.Intn(total)
	for _, w := range ws {
		if n < w.w {
			return w.name
		}
		n -= w.w
	}
	return "never"
}

func main() {
	a, b := rand.New(rand.NewSource(42)), rand.New(rand.NewSource(42))
	same := true
	for range 100 {
		same = same && a.Int63() == b.Int63()
	}
	fmt.Println(same, a.Intn(1000) == b.Intn(1000))
	r := rand.New(rand.NewSource(3))
	p := r.Perm(6)
	seen := make([]bool, 6)
	for _, x := range p {
		seen[x] = true
	}
	fmt.Println(len(p), seen)
	counts := map[string]int{}
	ws := []weighted{{"heads", 1}, {"hearts", 7}, {"tails", 2}}
	for range 1000 {
		counts[pick(r, ws)]++
	}
	fmt.Println(counts["hearts"] > counts["tails"], counts["tails"] > counts["heads"], counts["heads"]+counts["hearts"]+counts["tails"])
	in := 0
	for range 20000 {
		x, y := r.Float64(), r.Float64()
		if x*x+y*y < 1 {
			in++
		}
	}
	fmt.Printf("%.1f\n", 4*float64(in)/20000)
	s := []int{1, 2, 3, 4, 5}
	r.Shuffle(len(s), func(i, j int) { s[i], s[j] = s[j], s[i] })
	sort.Ints(s)
	fmt.Println(s)
}
