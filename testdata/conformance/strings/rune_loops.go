// Go specification, "For statements with range clause": rune loops with positions, truncation and padding.

package main

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

func truncate(s string, n int) string {
	count := 0
	for i := range s {
		if count == n {
			return s[:i] + "…"
		}
		count++
	}
	return s
}

func pad(s string, n int) string {
	for utf8.RuneCountInString(s) < n {
		s += "·"
	}
	return s
}

func title(s string) string {
	prev := ' '
	return strings.Map(func(r rune) rune {
		defer func() { prev = r }()
		if prev == ' ' || prev == '-' {
			return unicode.ToUpper(r)
		}
		return r
	}, s)
}

func main() {
	for _, s := range []string{"crème de violette", "gin", "水割り", ""} {
		fmt.Printf("%s|%s|%s|%d %d\n", truncate(s, 4), pad(s, 6), title(s), len(s), len([]rune(s)))
	}
	widths := map[int]int{}
	for _, r := range "aéß水😀z" {
		widths[utf8.RuneLen(r)]++
	}
	fmt.Println(widths)
	s := "añb"
	for i := 0; i < len(s); {
		r, n := utf8.DecodeRuneInString(s[i:])
		fmt.Print(i, ":", string(r), n, " ")
		i += n
	}
	for i := len(s); i > 0; {
		_, n := utf8.DecodeLastRuneInString(s[:i])
		i -= n
		fmt.Print(i, " ")
	}
	fmt.Println()
}
