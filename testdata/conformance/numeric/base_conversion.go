// Go specification, "Integer literals": hand-written base conversion and checksums.

package main

import (
	"fmt"
	"math"
	"strings"
)

const digits = "0123456789abcdefghijklmnopqrstuvwxyz"

func encode(n uint64, base uint64) string {
	if n == 0 {
		return "0"
	}
	var buf [64]byte
	i := len(buf)
	for ; n > 0; n /= base {
		i--
		buf[i] = digits[n%base]
	}
	return string(buf[i:])
}

func decode(s string, base int) (n int, ok bool) {
	for _, r := range s {
		d := strings.IndexRune(digits, r)
		if d < 0 || d >= base {
			return 0, false
		}
		n = n*base + d
	}
	return n, true
}

func luhn(s string) bool {
	sum := 0
	for i := range len(s) {
		d := int(s[len(s)-1-i] - '0')
		if i%2 == 1 {
			if d *= 2; d > 9 {
				d -= 9
			}
		}
		sum += d
	}
	return sum%10 == 0
}

func main() {
	for _, b := range []uint64{2, 7, 16, 36} {
		s := encode(1<<20+255, b)
		n, ok := decode(s, int(b))
		fmt.Println(b, s, n, ok)
	}
	fmt.Println(decode("12", 2))
	fmt.Println(encode(math.MaxUint64, 2) == strings.Repeat("1", 64), luhn("79927398713"), luhn("79927398710"))
}
