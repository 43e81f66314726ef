// Go specification, "For statements with range clause": ranging over a string with invalid UTF-8.

package main

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

func main() {
	for _, s := range []string{"a\xffb", "\xc3", "\xe6\x97", "ok\xed\xa0\x80", "\xf4\x90\x80\x80", "é\x80é"} {
		fmt.Printf("%q valid=%t runes=%d:", s, utf8.ValidString(s), utf8.RuneCountInString(s))
		for i, r := range s {
			fmt.Printf(" %d=%U", i, r)
		}
		fmt.Println()
	}
	rs := []rune("x\xfey")
	fmt.Println(rs, string(rs) == "x\xfey", len(string(rs)))
	fmt.Printf("%x %+q\n", string(rs), "x\xfey")
	fmt.Println(strings.ToValidUTF8("a\xff\xfeb", "?"))
}
