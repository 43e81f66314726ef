// Go specification, "Qualified identifiers" (package container/ring): a moving average and the Josephus count.

package main

import (
	"container/ring"
	"fmt"
)

type average struct {
	r     *ring.Ring
	sum   float64
	count int
}

func newAverage(n int) *average { return &average{r: ring.New(n)} }

func (a *average) add(x float64) float64 {
	if old, ok := a.r.Value.(float64); ok {
		a.sum -= old
	} else {
		a.count++
	}
	a.r.Value = x
	a.sum += x
	a.r = a.r.Next()
	return a.sum / float64(a.count)
}

func josephus(n, k int) (out []int) {
	r := ring.New(n)
	for i := 1; i <= n; i++ {
		r.Value = i
		r = r.Next()
	}
	r = r.Prev()
	for r.Len() > 1 {
		r = r.Move(k - 1)
		out = append(out, r.Unlink(1).Value.(int))
	}
	return append(out, r.Value.(int))
}

func main() {
	a := newAverage(3)
	for _, x := range []float64{3, 6, 9, 12, 0} {
		fmt.Print(a.add(x), " ")
	}
	fmt.Println()
	fmt.Println(josephus(7, 3), josephus(1, 5))
	r, s := ring.New(2), ring.New(3)
	r.Value, s.Value = "r", "s"
	r.Link(s)
	n := 0
	r.Do(func(v any) {
		if v != nil {
			fmt.Print(v, " ")
		}
		n++
	})
	fmt.Println(n, r.Len())
}
