// Go specification, "Integer operators" (package bytes): a hex dump and run-length coding.

package main

import (
	"bytes"
	"fmt"
)

func dump(b []byte) string {
	var out bytes.Buffer
	for off := 0; off < len(b); off += 8 {
		row := b[off:min(off+8, len(b))]
		fmt.Fprintf(&out, "%04x  % -23x  ", off, row)
		for _, c := range row {
			if c < 32 || c > 126 {
				c = '.'
			}
			out.WriteByte(c)
		}
		out.WriteByte('\n')
	}
	return out.String()
}

func rle(s string) []byte {
	var out []byte
	for i := 0; i < len(s); {
		j := i
		for j < len(s) && s[j] == s[i] && j-i < 9 {
			j++
		}
		out = append(out, byte('0'+j-i), s[i])
		i = j
	}
	return out
}

func unrle(b []byte) string {
	var out []byte
	for i := 0; i+1 < len(b); i += 2 {
		out = append(out, bytes.Repeat(b[i+1:i+2], int(b[i]-'0'))...)
	}
	return string(out)
}

func main() {
	fmt.Print(dump([]byte("Gin\tà la carte\x00\xffend")))
	s := "aaabccccccccccccd"
	e := rle(s)
	fmt.Println(string(e), unrle(e) == s, len(rle("")))
}
