// Go specification, "For statements with range clause": endless generators: Fibonacci, Collatz, primes, windows.

package main

import (
	"fmt"
	"iter"
)

func fib(yield func(int) bool) {
	for a, b := 0, 1; yield(a); a, b = b, a+b {
	}
}

func primes() iter.Seq[int] {
	return func(yield func(int) bool) {
		var found []int
	next:
		for n := 2; ; n++ {
			for _, p := range found {
				if n%p == 0 {
					continue next
				}
			}
			found = append(found, n)
			if !yield(n) {
				return
			}
		}
	}
}

func windows[T any](s []T, n int) iter.Seq2[int, []T] {
	return func(yield func(int, []T) bool) {
		for i := 0; i+n <= len(s) && yield(i, s[i:i+n:i+n]); i++ {
		}
	}
}

func zip[A, B any](a iter.Seq[A], b iter.Seq[B]) iter.Seq2[A, B] {
	return func(yield func(A, B) bool) {
		next, stop := iter.Pull(b)
		defer stop()
		for x := range a {
			y, ok := next()
			if !ok || !yield(x, y) {
				return
			}
		}
	}
}

func main() {
	for f, p := range zip(fib, primes()) {
		if f > 50 {
			break
		}
		fmt.Print(f, "/", p, " ")
	}
	fmt.Println()
	for i, w := range windows([]rune("still"), 3) {
		fmt.Print(i, string(w), " ")
	}
	fmt.Println()
	total := 0
	for p := range primes() {
		if p > 100 {
			break
		}
		total += p
	}
	fmt.Println(total)
}
