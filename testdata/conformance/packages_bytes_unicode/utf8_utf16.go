// Go specification, "String types" (packages unicode/utf8, unicode/utf16): encoding and decoding by hand.

package main

import (
	"fmt"
	"unicode/utf16"
	"unicode/utf8"
)

func decodeAll(b []byte) (out []string) {
	for len(b) > 0 {
		r, n := utf8.DecodeRune(b)
		out = append(out, fmt.Sprintf("%U/%d", r, n))
		b = b[n:]
	}
	return
}

func encode(r rune) []byte {
	switch {
	case r < 0x80:
		return []byte{byte(r)}
	case r < 0x800:
		return []byte{0xC0 | byte(r>>6), 0x80 | byte(r)&0x3F}
	case r < 0x10000:
		return []byte{0xE0 | byte(r>>12), 0x80 | byte(r>>6)&0x3F, 0x80 | byte(r)&0x3F}
	}
	return []byte{0xF0 | byte(r>>18), 0x80 | byte(r>>12)&0x3F, 0x80 | byte(r>>6)&0x3F, 0x80 | byte(r)&0x3F}
}

func main() {
	fmt.Println(decodeAll([]byte("aé水😀\xff\xc3")))
	for _, r := range "zñ水😀" {
		e := encode(r)
		fmt.Print(utf8.RuneLen(r), string(e) == string(r), utf8.FullRune(e[:1]), " ")
	}
	fmt.Println()
	fmt.Println(utf8.RuneCountInString("aé\xff"), utf8.ValidString("\xed\xa0\x80"), utf8.ValidRune(0xD800), utf8.RuneStart(0x80))
	r, n := utf8.DecodeLastRuneInString("ok水")
	fmt.Println(string(r), n, utf8.AppendRune(nil, 'é'))
	u := utf16.Encode([]rune("a😀"))
	fmt.Printf("%x %s\n", u, string(utf16.Decode(u)))
	r1, r2 := utf16.EncodeRune('😀')
	fmt.Printf("%x %x %t %q\n", r1, r2, utf16.IsSurrogate(r1), utf16.DecodeRune(r1, r2))
}
