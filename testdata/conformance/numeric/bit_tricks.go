// Go specification, "Arithmetic operators": masks, popcounts, swaps and field packing.

package main

import (
	"fmt"
	"math"
)

type Date uint32

func pack(y, m, d int) Date { return Date(y)<<9 | Date(m)<<5 | Date(d) }
func (d Date) parts() (int, int, int) {
	return int(d >> 9), int(d >> 5 & 15), int(d & 31)
}

func popcount(x uint64) (n int) {
	for ; x != 0; x &= x - 1 {
		n++
	}
	return
}

func reverse(b byte) (r byte) {
	for range 8 {
		r = r<<1 | b&1
		b >>= 1
	}
	return
}

func isPow2(n uint) bool { return n != 0 && n&(n-1) == 0 }

func main() {
	d := pack(2026, 11, 25)
	fmt.Println(d)
	fmt.Println(d.parts())
	fmt.Println(popcount(0), popcount(255), popcount(math.MaxUint64), isPow2(64), isPow2(65))
	fmt.Printf("%08b %08b %#x\n", reverse(0b00010111), ^byte(0xF0), 0xFF&^0x0F)
	a, b := 12, 99
	a ^= b
	b ^= a
	a ^= b
	fmt.Println(a, b)
	flags := uint8(0)
	for _, bit := range []uint{0, 3, 7} {
		flags |= 1 << bit
	}
	fmt.Printf("%08b %t %t\n", flags, flags>>3&1 == 1, flags&(1<<4) != 0)
	var crc byte
	for _, c := range []byte("123456789") {
		crc ^= c
		for range 8 {
			if crc&0x80 != 0 {
				crc = crc<<1 ^ 0x07
			} else {
				crc <<= 1
			}
		}
	}
	fmt.Printf("%#02x\n", crc)
}
