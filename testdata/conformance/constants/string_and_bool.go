// Go specification, "Constants": string and boolean constants, len of a constant string.

package main

import "fmt"

const (
	first  = "juniper"
	second = "coriander"
	both   = first + " & " + second
	size   = len(both)
	longer = len(second) > len(first)
	raw    = `a\n"b"`
	esc    = "tab\tquote\"\u00e9\x41\101"
)

var table [len(first)]int

func main() {
	fmt.Println(both, size, longer)
	fmt.Println(raw, len(raw))
	fmt.Println(esc, len(esc))
	for i := range table {
		table[i] = int(first[i] - 'a')
	}
	fmt.Println(table, len(table))
	const empty = "" == first
	fmt.Println(first < second, first != second, !longer, empty)
}
