// Go specification, "Comparison operators": strings compare bytewise.

package main

import (
	"cmp"
	"fmt"
	"sort"
	"strings"
)

func main() {
	words := []string{"b", "B", "a", "", "ab", "aB", "é", "z", "aa"}
	sort.Strings(words)
	fmt.Printf("%q\n", words)
	fmt.Println("a" < "b", "a" < "B", "" < "a", "ab" < "abc", "z" < "é")
	fmt.Println(strings.Compare("a", "b"), cmp.Compare("b", "a"), strings.EqualFold("Straße", "STRASSE"), strings.EqualFold("É", "é"))
	lo, hi := words[0], words[0]
	for _, w := range words {
		lo = min(lo, w)
		hi = max(hi, w)
	}
	fmt.Printf("%q %q\n", lo, hi)
	var a any = "x"
	fmt.Println(a == "x", a == any("y"))
	switch s := "ko"; {
	case s >= "m":
		fmt.Println("late")
	case s >= "f":
		fmt.Println("middle")
	default:
		fmt.Println("early")
	}
}
