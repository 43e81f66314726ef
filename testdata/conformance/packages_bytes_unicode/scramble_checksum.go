// Go specification, "String types" (package bytes): XOR scrambling, checksums and comparing.

package main

import (
	"bytes"
	"fmt"
)

type key []byte

func (k key) apply(b []byte) []byte {
	out := make([]byte, len(b))
	for i, c := range b {
		out[i] = c ^ k[i%len(k)]
	}
	return out
}

func fletcher(b []byte) uint16 {
	var lo, hi uint16
	for _, c := range b {
		lo = (lo + uint16(c)) % 255
		hi = (hi + lo) % 255
	}
	return hi<<8 | lo
}

func adler(b []byte) uint32 {
	a, c := uint32(1), uint32(0)
	for _, x := range b {
		a = (a + uint32(x)) % 65521
		c = (c + a) % 65521
	}
	return c<<16 | a
}

func main() {
	msg := []byte("fill level 58 %")
	k := key("oak")
	enc := k.apply(msg)
	fmt.Printf("%x\n%s %t\n", enc, k.apply(enc), bytes.Equal(k.apply(enc), msg))
	fmt.Printf("%04x %04x %08x\n", fletcher([]byte("abcde")), fletcher(nil), adler([]byte("hearts")))
	diff := 0
	for i := range msg {
		if enc[i] != msg[i] {
			diff++
		}
	}
	fmt.Println(diff, bytes.IndexAny(msg, "0123456789"), bytes.LastIndexByte(msg, 'l'))
}
