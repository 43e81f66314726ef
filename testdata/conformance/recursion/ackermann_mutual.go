// Go specification, "Function declarations": mutual recursion, Ackermann and binomials.

package main

import "fmt"

func even(n int) bool {
	if n == 0 {
		return true
	}
	return odd(n - 1)
}

func odd(n int) bool {
	if n == 0 {
		return false
	}
	return even(n - 1)
}

func ack(m, n int) int {
	switch {
	case m == 0:
		return n + 1
	case n == 0:
		return ack(m-1, 1)
	}
	return ack(m-1, ack(m, n-1))
}

func binom(n, k int) int {
	if k == 0 || k == n {
		return 1
	}
	return binom(n-1, k-1) + binom(n-1, k)
}

func hofF(n int) int {
	if n == 0 {
		return 1
	}
	return n - hofM(hofF(n-1))
}

func hofM(n int) int {
	if n == 0 {
		return 0
	}
	return n - hofF(hofM(n-1))
}

func main() {
	fmt.Println(even(20), odd(7), even(9))
	fmt.Println(ack(2, 3), ack(1, 10), ack(3, 2))
	fmt.Println(binom(10, 3), binom(6, 0), binom(12, 6))
	for i := range 10 {
		fmt.Print(hofF(i), hofM(i), " ")
	}
	fmt.Println()
}
