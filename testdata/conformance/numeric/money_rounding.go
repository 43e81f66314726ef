// Go specification, "Numeric types": rounding prices in integers and floats.

package main

import (
	"fmt"
	"math"
)

type Cents int64

func FromFloat(f float64) Cents { return Cents(math.Round(f * 100)) }

func (c Cents) Percent(p int) Cents {
	n := int64(c) * int64(p)
	if n >= 0 {
		return Cents((n + 50) / 100)
	}
	return Cents((n - 50) / 100)
}

func split(total Cents, parts int) []Cents {
	out := make([]Cents, parts)
	share, rest := total/Cents(parts), total%Cents(parts)
	for i := range out {
		out[i] = share
		if Cents(i) < rest {
			out[i]++
		}
	}
	return out
}

func (c Cents) String() string { return fmt.Sprintf("%d.%02d", c/100, c%100) }

func main() {
	fmt.Println(FromFloat(19.99), FromFloat(0.005), FromFloat(1.115))
	p := Cents(2450)
	fmt.Println(p, p.Percent(19), p+p.Percent(19), Cents(-150).Percent(33) == -50)
	fmt.Println(split(1000, 3), split(7, 4))
	for _, f := range []float64{0.5, 1.5, 2.5, -2.5, 2.4999} {
		fmt.Print(math.Round(f), math.RoundToEven(f), math.Floor(f), math.Trunc(f), math.Ceil(f), int(f), " | ")
	}
	fmt.Println()
	sum := 0.0
	var exact Cents
	for range 1000 {
		sum += 0.1
		exact += 10
	}
	fmt.Println(sum == 100, exact, math.Round(sum*100)/100)
}
