// Go specification, "For statements": Collatz lengths, Euclid and digit sums.

package main

import (
	"fmt"
	"math"
)

func collatz(n int) (steps, peak int) {
	for peak = n; n != 1; steps++ {
		if n%2 == 0 {
			n /= 2
		} else {
			n = 3*n + 1
		}
		peak = max(peak, n)
	}
	return
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func digits(n int) (sum int) {
	for ; n > 0; n /= 10 {
		sum += n % 10
	}
	return
}

func main() {
	best, bestN := 0, 0
	for n := 1; n < 1000; n++ {
		if s, _ := collatz(n); s > best {
			best, bestN = s, n
		}
	}
	_, peak := collatz(bestN)
	fmt.Println(bestN, best, peak)
	fmt.Println(gcd(1071, 462), gcd(0, 5), gcd(17, 4), digits(98765))
	for a := 1; a < 20; a++ {
		for b := a; b < 20; b++ {
			c := int(math.Sqrt(float64(a*a + b*b)))
			if c*c == a*a+b*b && gcd(a, b) == 1 {
				fmt.Print(a, "-", b, "-", c, " ")
			}
		}
	}
	fmt.Println()
}
