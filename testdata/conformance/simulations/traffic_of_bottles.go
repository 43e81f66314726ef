// Go specification, "Channel types": a bottling line of three goroutines with counts.

package main

import "fmt"

type bottle struct {
	id     int
	ml     int
	label  string
	reject bool
}

func fill(n int) <-chan bottle {
	out := make(chan bottle)
	go func() {
		defer close(out)
		for i := range n {
			out <- bottle{id: i, ml: 690 + i*7%20}
		}
	}()
	return out
}

func label(in <-chan bottle) <-chan bottle {
	out := make(chan bottle, 3)
	go func() {
		defer close(out)
		for b := range in {
			b.label = fmt.Sprintf("L%03d", b.id)
			out <- b
		}
	}()
	return out
}

func check(in <-chan bottle, minML int) (good, bad []bottle) {
	for b := range in {
		if b.reject = b.ml < minML; b.reject {
			bad = append(bad, b)
			continue
		}
		good = append(good, b)
	}
	return
}

func main() {
	good, bad := check(label(fill(10)), 695)
	fmt.Println(len(good), len(bad))
	for _, b := range bad {
		fmt.Printf("%+v\n", b)
	}
	sum := 0
	for _, b := range good {
		sum += b.ml
	}
	fmt.Println(sum/len(good), good[0], good[len(good)-1].label)
}
