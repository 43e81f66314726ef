// Go specification, "Qualified identifiers" (package strings): searching, cutting, splitting.

package main

import (
	"fmt"
	"strings"
	"unicode"
)

func main() {
	s := "lot=A7;abv=58.5;;note=dry, oak"
	fmt.Println(strings.Contains(s, "abv"), strings.Index(s, ";"), strings.LastIndex(s, ";"), strings.IndexByte(s, 'z'), strings.Count(s, ";"), strings.Count("abc", ""))
	for _, kv := range strings.Split(s, ";") {
		k, v, ok := strings.Cut(kv, "=")
		fmt.Printf("%q %q %t; ", k, v, ok)
	}
	fmt.Println()
	fmt.Printf("%q %q %q\n", strings.SplitN(s, ";", 2), strings.SplitAfter("a,b,c", ","), strings.Split("", ","))
	fmt.Printf("%q %q\n", strings.Fields("  a  b\tc\n"), strings.FieldsFunc("a1b22c", unicode.IsDigit))
	fmt.Println(strings.HasPrefix(s, "lot"), strings.HasSuffix(s, "oak"), strings.ContainsAny(s, "xyz"), strings.ContainsRune(s, '5'))
	fmt.Println(strings.IndexAny("golang", "ny"), strings.IndexFunc("abc1", unicode.IsDigit), strings.IndexRune("chicken", 'k'))
	rest, found := strings.CutPrefix(s, "lot=")
	fmt.Println(rest[:2], found)
	for part := range strings.SplitSeq("x-y-z", "-") {
		fmt.Print(part, ".")
	}
	for l := range strings.Lines("one\ntwo") {
		fmt.Printf(" %q", l)
	}
	fmt.Println()
}
