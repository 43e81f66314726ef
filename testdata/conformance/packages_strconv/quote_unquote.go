// Go specification, "Qualified identifiers" (package strconv): quoting and unquoting.

package main

import (
	"fmt"
	"strconv"
)

func main() {
	for _, s := range []string{"plain", "tab\t", "quote\"", "é水", "\x00\xff", "back`tick"} {
		q := strconv.Quote(s)
		u, err := strconv.Unquote(q)
		fmt.Println(q, strconv.QuoteToASCII(s), u == s, err, strconv.CanBackquote(s))
	}
	fmt.Println(strconv.QuoteRune('☺'), strconv.QuoteRune('\n'), strconv.QuoteRuneToASCII('é'))
	for _, s := range []string{"`raw\\n`", "'x'", "\"\\u00e9\"", "\"unterminated", "bare", "'xy'"} {
		u, err := strconv.Unquote(s)
		fmt.Printf("%q %v; ", u, err)
	}
	fmt.Println()
	r, multi, tail, err := strconv.UnquoteChar(`\u00e9tail`, '"')
	fmt.Println(string(r), multi, tail, err)
	fmt.Println(strconv.IsPrint('a'), strconv.IsPrint('\u007f'))
}
