// Go specification, "Arithmetic operators" (package math): number theory by hand.

package main

import (
	"fmt"
	"math"
)

func factor(n int) (out [][2]int) {
	for p := 2; p*p <= n; p++ {
		k := 0
		for n%p == 0 {
			n /= p
			k++
		}
		if k > 0 {
			out = append(out, [2]int{p, k})
		}
	}
	if n > 1 {
		out = append(out, [2]int{n, 1})
	}
	return
}

func totient(n int) int {
	r := n
	for _, f := range factor(n) {
		r -= r / f[0]
	}
	return r
}

func powMod(b, e, m int) int {
	r := 1
	for b %= m; e > 0; e >>= 1 {
		if e&1 == 1 {
			r = r * b % m
		}
		b = b * b % m
	}
	return r
}

func egcd(a, b int) (g, x, y int) {
	if b == 0 {
		return a, 1, 0
	}
	g, x, y = egcd(b, a%b)
	return g, y, x - a/b*y
}

func main() {
	fmt.Println(factor(360), factor(97), factor(1), factor(1001))
	fmt.Println(totient(36), totient(97), powMod(7, 222, 1000), powMod(2, 10, 1025))
	fmt.Println(egcd(240, 46))
	fmt.Println(int(math.Sqrt(99)), int(math.Sqrt(100)), int(math.Log2(1000)))
	for n := 2; n < 500; n++ {
		sum := 1
		for d := 2; d*d <= n; d++ {
			if n%d == 0 {
				sum += d
				if d*d != n {
					sum += n / d
				}
			}
		}
		if sum == n {
			fmt.Print(n, " ")
		}
	}
	fmt.Println()
}
