// Go specification, "Conversions between numeric types": truncation, wrap and rounding.

package main

import "fmt"

func main() {
	f := 3.99
	g := -3.99
	fmt.Println(int(f), int(g), int64(f*100), uint8(f))
	n := 300
	fmt.Println(uint8(n), int8(n), int16(n), uint16(n))
	m := -1
	fmt.Println(uint8(m), uint16(m), uint32(m), uint64(m))
	big := int64(1)<<53 + 1
	fmt.Println(big, int64(float64(big)), float32(16777217))
	x := uint32(0xdeadbeef)
	fmt.Println(int32(x), int16(x), byte(x), int64(int32(x)))
	third := 1.0 / 3
	fmt.Println(float32(third), float64(float32(third)) == third)
	c := complex64(complex(third, 1))
	fmt.Println(c, complex128(c) == complex(third, 1))
}
