// Go specification, "Lexical elements": raw strings, escapes and rune values.

package main

import (
	"fmt"
	"strings"
)

const poem = `heads
	hearts \n "tails"
end`

func main() {
	fmt.Println(poem)
	fmt.Println(len(poem), strings.Count(poem, "\n"), strings.Contains(poem, `\n`))
	fmt.Println("\u00e9" == "é", "e\u0301" == "é", len("e\u0301"), '\u0041' == 'A', '\x41' == '\101')
	for _, r := range []rune{'\a', '\\', '\'', '"', '\U0001F600', '\377'} {
		fmt.Printf("%d %q ", r, r)
	}
	fmt.Println()
	fmt.Println(`a`+"\x60"+`b`, "it's", "say \"hi\"")
	tabs := "1\t22\t333"
	fmt.Println(strings.Split(tabs, "\t"), len("\r\n"))
	b := []byte("\xff\000")
	fmt.Println(b, "\xe6\xb0\xb4", string([]byte{0xe6, 0xb0, 0xb4}))
}
