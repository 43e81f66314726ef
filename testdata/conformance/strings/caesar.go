// Go specification, "String types": a substitution cipher over bytes and runes.

package main

import (
	"fmt"
	"strings"
)

type Cipher struct{ shift int }

func (c Cipher) rot(r rune) rune {
	switch {
	case r >= 'a' && r <= 'z':
		return 'a' + (r-'a'+rune(c.shift)+26)%26
	case r >= 'A' && r <= 'Z':
		return 'A' + (r-'A'+rune(c.shift)+26)%26
	}
	return r
}

func (c Cipher) Encode(s string) string { return strings.Map(c.rot, s) }
func (c Cipher) Decode(s string) string { return strings.Map(Cipher{-c.shift}.rot, s) }

func main() {
	msg := "Fill cask 7, Öl & Zest!"
	for _, n := range []int{0, 3, 13, 25} {
		c := Cipher{n}
		e := c.Encode(msg)
		fmt.Println(n, e, c.Decode(e) == msg)
	}
	counts := [26]int{}
	for i := 0; i < len(msg); i++ {
		if b := msg[i] | 0x20; b >= 'a' && b <= 'z' {
			counts[b-'a']++
		}
	}
	fmt.Println(counts)
}
