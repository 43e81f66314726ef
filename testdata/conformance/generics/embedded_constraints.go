// Go specification, "General interfaces": constraints embedding other constraints and core operations.

package main

import (
	"cmp"
	"fmt"
)

type Signed interface{ ~int | ~int8 | ~int32 | ~int64 }
type Unsigned interface{ ~uint | ~uint8 | ~uint32 }
type Integer interface{ Signed | Unsigned }
type Float interface{ ~float32 | ~float64 }
type Real interface {
	Integer | Float
}

func Abs[T Signed | Float](x T) T {
	if x < 0 {
		return -x
	}
	return x
}

func GCD[T Integer](a, b T) T {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func Mean[T Real](xs []T) float64 {
	var s float64
	for _, x := range xs {
		s += float64(x)
	}
	return s / float64(len(xs))
}

func Clamp[T cmp.Ordered](x, lo, hi T) T { return max(lo, min(x, hi)) }
func Bits[T Unsigned](x T) (n int) {
	for ; x != 0; x &= x - 1 {
		n++
	}
	return
}

type Deg int8

func main() {
	fmt.Println(Abs(-3), Abs(2.5), Abs(Deg(-7)), Abs[float32](-0.5), Abs(int8(-128)))
	fmt.Println(GCD(84, 36), GCD(uint8(250), 100), GCD[Deg](12, 18))
	fmt.Println(Mean([]Deg{1, 2, 4}), Mean([]float32{0.5}), Mean([]uint{7, 8}))
	fmt.Println(Clamp(15, 0, 10), Clamp("m", "p", "z"), Clamp(-0.5, 0, 1), Bits(uint8(255)), Bits(uint(12)))
}
