// Go specification, "Function literals": a memoising wrapper and a recursive closure.

package main

import "fmt"

func memo[K comparable, V any](f func(K) V) (func(K) V, *int) {
	cache := map[K]V{}
	misses := 0
	return func(k K) V {
		if v, ok := cache[k]; ok {
			return v
		}
		misses++
		v := f(k)
		cache[k] = v
		return v
	}, &misses
}

func main() {
	var fib func(int) int
	calls := 0
	fib = func(n int) int {
		calls++
		if n < 2 {
			return n
		}
		return fib(n-1) + fib(n-2)
	}
	f15 := fib(15)
	fmt.Println(f15, calls)
	var fast func(int) int
	fast, misses := memo(func(n int) int {
		if n < 2 {
			return n
		}
		return fast(n-1) + fast(n-2)
	})
	f80 := fast(80)
	fmt.Println(f80, *misses)
	length, m := memo(func(s string) int { return len(s) })
	fmt.Println(length("abc"), length("abc"), length(""))
	fmt.Println(*m)
}
