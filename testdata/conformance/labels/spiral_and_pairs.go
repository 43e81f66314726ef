// Go specification, "Continue statements": nested labelled loops with several exits.

package main

import (
	"fmt"
	"strings"
)

func pythag(limit int) (out [][3]int) {
a:
	for a := 1; a <= limit; a++ {
		for b := a; b <= limit; b++ {
			for c := b; c <= limit; c++ {
				switch s := a*a + b*b; {
				case s == c*c:
					out = append(out, [3]int{a, b, c})
					continue a
				case s < c*c:
					break
				default:
					continue
				}
				break
			}
		}
	}
	return
}

func firstRepeat(words []string) (string, int) {
	n := 0
scan:
	for i, w := range words {
		for _, prev := range words[:i] {
			n++
			if prev != w {
				continue
			}
			if len(w) < 3 {
				continue scan
			}
			return w, n
		}
	}
	return "", n
}

func main() {
	fmt.Println(pythag(20))
	fmt.Println(firstRepeat(strings.Fields("a rye a oat malt rye")))
	fmt.Println(firstRepeat([]string{"x", "x"}))
outer:
	for i := range 4 {
	inner:
		for j := range 4 {
			switch {
			case j > i:
				break inner
			case i == 2:
				continue outer
			case i+j == 5:
				break outer
			}
			fmt.Print(i, j, " ")
		}
		fmt.Print("| ")
	}
	fmt.Println()
}
