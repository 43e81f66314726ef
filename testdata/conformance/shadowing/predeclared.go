// Go specification, "Predeclared identifiers": predeclared names may be redeclared.

package main

import (
	"fmt"
	"strings"
)

type string2 = string

func cap(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

type error interface{ Code() int }

type fault int

func (f fault) Code() int { return int(f) }

func check(n int) error {
	if n > 2 {
		return fault(n)
	}
	return nil
}

func main() {
	fmt.Println(cap("gin"))
	var s string2 = "alias"
	fmt.Printf("%T %s\n", s, s)
	if err := check(7); err != nil {
		fmt.Println(err.Code(), check(1) == nil)
	}
	int := 3.7
	fmt.Println(int)
	nil := 0
	true := "yes"
	fmt.Println(nil, true)
	{
		len := func(x ...any) float64 { return 0.5 }
		fmt.Println(len(1, 2))
		type byte struct{ v uint8 }
		fmt.Println(byte{9})
	}
	copy := strings.Clone("copy")
	iota := 12
	const c = 5
	fmt.Println(copy, iota+c)
	var rune rune = 'r'
	fmt.Println(rune)
}
