// Go specification, "Qualified identifiers" (package math/big): factorials, powers, rationals.

package main

import (
	"fmt"
	"math/big"
)

func factorial(n int64) *big.Int {
	r := big.NewInt(1)
	for i := int64(2); i <= n; i++ {
		r.Mul(r, big.NewInt(i))
	}
	return r
}

func main() {
	f := factorial(30)
	fmt.Println(f, f.BitLen(), len(f.String()), f.Sign())
	p := new(big.Int).Exp(big.NewInt(2), big.NewInt(127), nil)
	p.Sub(p, big.NewInt(1))
	fmt.Println(p, p.ProbablyPrime(10), new(big.Int).Exp(big.NewInt(3), big.NewInt(200), big.NewInt(13)))
	a, ok := new(big.Int).SetString("123456789012345678901234567890", 10)
	_, bad := new(big.Int).SetString("12x", 10)
	fmt.Println(a, ok, bad)
	q, m := new(big.Int).DivMod(a, big.NewInt(-97), new(big.Int))
	fmt.Println(q, m, new(big.Int).GCD(nil, nil, big.NewInt(84), big.NewInt(36)), a.Cmp(f))
	r := big.NewRat(1, 3)
	r.Add(r, big.NewRat(1, 6))
	fmt.Println(r, r.FloatString(5), big.NewRat(6, -4), r.Cmp(big.NewRat(1, 2)))
	h := new(big.Rat)
	for i := int64(1); i <= 10; i++ {
		h.Add(h, big.NewRat(1, i))
	}
	fmt.Println(h)
	fmt.Printf("%x %d %s %v %10d|\n", big.NewInt(255), big.NewInt(-7), a.Text(36), big.NewInt(5), big.NewInt(42))
	x := new(big.Float).SetPrec(200).SetInt64(2)
	fmt.Println(new(big.Float).SetPrec(200).Sqrt(x).Text('f', 50))
}
