// Go specification, "Slice types": sieve of Eratosthenes with a bool slice and a bit slice.

package main

import "fmt"

func primes(n int) (ps []int) {
	composite := make([]bool, n+1)
	for i := 2; i <= n; i++ {
		if composite[i] {
			continue
		}
		ps = append(ps, i)
		for j := i * i; j <= n; j += i {
			composite[j] = true
		}
	}
	return
}

type Bits []uint64

func (b Bits) Set(i int)      { b[i>>6] |= 1 << (i & 63) }
func (b Bits) Has(i int) bool { return b[i>>6]&(1<<(i&63)) != 0 }

func countPrimes(n int) int {
	b := make(Bits, n/64+1)
	count := 0
	for i := 2; i <= n; i++ {
		if !b.Has(i) {
			count++
			for j := i * i; j <= n; j += i {
				b.Set(j)
			}
		}
	}
	return count
}

func main() {
	fmt.Println(primes(50))
	fmt.Println(len(primes(1000)), countPrimes(1000), countPrimes(10000))
	var b Bits = make([]uint64, 2)
	b.Set(0)
	b.Set(63)
	b.Set(64)
	fmt.Printf("%x %t %t\n", b, b.Has(64), b.Has(65))
}
