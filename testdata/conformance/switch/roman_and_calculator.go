// Go specification, "Expression switches": switches over runes and operators.

package main

import (
	"fmt"
	"unicode"
)

func roman(s string) (n int) {
	prev := 0
	for i := len(s) - 1; i >= 0; i-- {
		var v int
		switch s[i] {
		case 'I':
			v = 1
		case 'V':
			v = 5
		case 'X':
			v = 10
		case 'L':
			v = 50
		case 'C':
			v = 100
		case 'D':
			v = 500
		case 'M':
			v = 1000
		}
		if v < prev {
			n -= v
		} else {
			n += v
			prev = v
		}
	}
	return
}

func class(r rune) string {
	switch {
	case unicode.IsUpper(r):
		return "U"
	case unicode.IsLower(r):
		return "l"
	case unicode.IsDigit(r):
		return "9"
	case unicode.IsSpace(r):
		return "_"
	}
	return "?"
}

func main() {
	for _, s := range []string{"IV", "XIX", "MCMXCIV", "MMXXVI", ""} {
		fmt.Print(s, "=", roman(s), " ")
	}
	for _, r := range "Ab 3-Ω.語\t" {
		fmt.Print(class(r))
	}
	fmt.Println()
	days := func(m, y int) int {
		switch m {
		case 2:
			switch {
			case y%400 == 0:
				return 29
			case y%100 == 0:
				return 28
			case y%4 == 0:
				return 29
			}
			return 28
		case 4, 6, 9, 11:
			return 30
		}
		return 31
	}
	fmt.Println(days(2, 2000), days(2, 1900), days(2, 2024), days(2, 2026), days(9, 1), days(12, 1))
}
