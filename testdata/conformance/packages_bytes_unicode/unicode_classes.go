// Go specification, "Rune literals" (package unicode): classes and case mapping.

package main

import (
	"fmt"
	"unicode"
)

func main() {
	for _, r := range "aÉ1٣ _-\tſ漢½€\u200b" {
		fmt.Printf("%U %t%t%t%t%t%t%t%t|", r, unicode.IsLetter(r), unicode.IsUpper(r), unicode.IsLower(r), unicode.IsDigit(r), unicode.IsNumber(r), unicode.IsSpace(r), unicode.IsPunct(r), unicode.IsSymbol(r))
	}
	fmt.Println()
	fmt.Println(string(unicode.ToUpper('ß')), string(unicode.ToLower('Σ')), string(unicode.ToTitle('ǆ')), string(unicode.SimpleFold('k')))
	fmt.Println(unicode.Is(unicode.Han, '水'), unicode.Is(unicode.Latin, 'é'), unicode.In('Ж', unicode.Greek, unicode.Cyrillic), unicode.IsControl('\n'), unicode.IsPrint('\u00a0'), unicode.IsGraphic('\u00a0'))
	counts := map[string]int{}
	for _, r := range "Gin 47% — 0,7 l; Größe: 3 Fässer" {
		switch {
		case unicode.IsUpper(r):
			counts["upper"]++
		case unicode.IsLower(r):
			counts["lower"]++
		case unicode.IsDigit(r):
			counts["digit"]++
		case unicode.IsPunct(r):
			counts["punct"]++
		case unicode.IsSpace(r):
			counts["space"]++
		}
	}
	fmt.Println(counts, unicode.MaxRune, unicode.ReplacementChar)
}
