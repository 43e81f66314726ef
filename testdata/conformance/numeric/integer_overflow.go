// Go specification, "Integer overflow": unsigned and signed integers wrap.

package main

import (
	"fmt"
	"math"
)

type Byte uint8

func main() {
	var u8 uint8 = 250
	var i8 int8 = 127
	var i32 int32 = math.MaxInt32
	var i64 int64 = math.MinInt64
	u8 += 10
	i8++
	i32 += 2
	fmt.Println(u8, i8, i32, -i64, i64-1)
	var u uint = 0
	u--
	fmt.Println(u, u == math.MaxUint, ^uint32(0))
	var b Byte = 200
	fmt.Println(b*2, b+b, -b, ^b, b<<1, b/3)
	fmt.Println(int8(-128)/int8(-1+0*int(i8)), i8*i8, uint16(65535)*uint16(u8))
	h := uint32(2166136261)
	for _, c := range []byte("distil") {
		h ^= uint32(c)
		h *= 16777619
	}
	fmt.Println(h, int32(h), int16(h), uint64(h)*uint64(h))
	x := uint64(88172645463325252)
	for range 3 {
		x ^= x << 13
		x ^= x >> 7
		x ^= x << 17
		fmt.Print(x%1000, " ")
	}
	fmt.Println()
}
