package eval_test

import (
	"fmt"
	"testing"
	"time"
)

// A cell costs about the same after three hundred others as at the start.
func TestCellCostStaysFlat(t *testing.T) {
	c := newCells(t)
	c.ok("total := 0\n")
	cost := func(from, n int) time.Duration {
		var d time.Duration
		for i := range n {
			src := fmt.Sprintf("type T%d struct{ a, b int }\nfunc (t T%d) Sum() int { return t.a + t.b }\nfunc f%d(n int) int { s := 0; for i := range n { s += i }; return s }\n---\nx%d := f%d(10) + T%d{1, 2}.Sum()\ntotal += x%d\n",
				from+i, from+i, from+i, from+i, from+i, from+i, from+i)
			c.ok(src)
			d += c.spent
		}
		return d / time.Duration(n)
	}
	first := cost(0, 50)
	cost(50, 250)
	last := cost(300, 50)
	t.Logf("a cell costs %v at first, %v after 300 (without checking)", first, last)
	if last > 10*first+time.Millisecond {
		t.Errorf("a cell costs %v after 300 cells, %v at first", last, first)
	}
	c.ok("fmt.Print(total)\n")
	c.printed(fmt.Sprint(350 * 48))
}
