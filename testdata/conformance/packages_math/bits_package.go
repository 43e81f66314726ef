// Go specification, "Qualified identifiers" (package math/bits): counting, rotating and wide arithmetic.

package main

import (
	"fmt"
	"math"
	"math/bits"
)

func main() {
	var x uint32 = 0b1011_0000
	fmt.Println(bits.OnesCount32(x), bits.LeadingZeros32(x), bits.TrailingZeros32(x), bits.Len32(x), bits.Len(0), bits.TrailingZeros8(0))
	fmt.Printf("%08b %#x %#x\n", bits.Reverse8(0b00010110), bits.ReverseBytes32(0x01020304), bits.RotateLeft32(0x80000001, 4))
	fmt.Printf("%#x %#x\n", bits.RotateLeft8(0x85, -1), bits.RotateLeft64(1, 63))
	hi, lo := bits.Mul64(math.MaxUint64, math.MaxUint64)
	fmt.Println(hi, lo)
	q, r := bits.Div64(1, 0, 3)
	fmt.Println(q, r)
	sum, carry := bits.Add64(math.MaxUint64, 1, 0)
	diff, borrow := bits.Sub64(0, 1, 0)
	fmt.Println(sum, carry, diff, borrow, bits.UintSize >= 32)
	n := uint(37)
	next := uint(1) << bits.Len(n-1)
	fmt.Println(next, bits.OnesCount(n)%2 == 1)
	h := uint64(14695981039346656037)
	for _, c := range []byte("oak") {
		h = bits.RotateLeft64(h^uint64(c), 5) * 1099511628211
	}
	fmt.Println(h)
	defer func() { fmt.Println(recover()) }()
	fmt.Println(bits.Div64(3, 0, 3))
}
