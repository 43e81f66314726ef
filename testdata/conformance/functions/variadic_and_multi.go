// Go specification, "Function types": variadic parameters, several results, passing results on.

package main

import (
	"fmt"
	"slices"
)

func sum(base int, xs ...int) int {
	for _, x := range xs {
		base += x
	}
	return base
}

func minmax(xs ...float64) (lo, hi float64, ok bool) {
	if len(xs) == 0 {
		return
	}
	return slices.Min(xs), slices.Max(xs), true
}

func split(total int) (x, y int) {
	x = total * 4 / 9
	y = total - x
	return
}

func pair() (int, int)                    { return 3, 4 }
func mixed(f string, vs ...any) string    { return fmt.Sprintf(f, vs...) + "/" + fmt.Sprint(len(vs)) }
func apply(f func(...int) int, n int) int { return f(n, n, n) }
func count(xs ...int) int                 { return len(xs) }

func main() {
	fmt.Println(sum(1), sum(1, 2, 3), sum(0, []int{4, 5}...), sum(pair()))
	fmt.Println(minmax(2, -1, 9))
	fmt.Println(minmax())
	fmt.Println(split(17))
	fmt.Println(mixed("%v-%v", 1, "a"), mixed("%v", []any{2}...), mixed("none"), mixed("%v", []int{1, 2}))
	fmt.Println(apply(count, 7), count(pair()))
	fmt.Printf("%T %T\n", sum, minmax)
	var f func(int, ...int) int = sum
	fmt.Println(f(1, 1), f != nil)
}
