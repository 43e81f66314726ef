// Go specification, "Qualified identifiers" (package strings): case, trimming, replacing, repeating.

package main

import (
	"fmt"
	"strings"
	"unicode"
)

func main() {
	s := "  ..Gin & Tonic..  "
	fmt.Printf("%q %q %q\n", strings.TrimSpace(s), strings.Trim(s, " ."), strings.TrimLeft("xxabcxx", "x"))
	fmt.Printf("%q %q %q\n", strings.TrimPrefix("prefix-body", "prefix-"), strings.TrimSuffix("a.txt", ".txt"), strings.TrimRight("abc123", "0123456789"))
	fmt.Println(strings.ToUpper("straße é"), strings.ToLower("ÉCOLE"), strings.ToTitle("abc"))
	fmt.Println(strings.Replace("aaaa", "a", "b", 2), strings.ReplaceAll("aaaa", "aa", "b"), strings.Replace("ab", "", "-", -1))
	r := strings.NewReplacer("<", "&lt;", ">", "&gt;", "&", "&amp;")
	fmt.Println(r.Replace("a<b & c>d"))
	fmt.Println(strings.Repeat("ab", 3)+"|", strings.Repeat("-", 0) == "", strings.Join([]string{"a"}, ","), strings.Join(nil, ","))
	fmt.Println(strings.Map(func(r rune) rune {
		switch {
		case r == 'a':
			return 'A'
		case unicode.IsSpace(r):
			return -1
		}
		return r
	}, "a banana split"))
	fmt.Printf("%q %q\n", strings.TrimFunc("123abc456", unicode.IsDigit), strings.Title("the worm tub"))
	fmt.Println(strings.EqualFold("GIN", "gin"), strings.Compare("a", "b"))
}
