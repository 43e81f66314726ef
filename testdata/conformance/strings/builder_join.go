// Go specification, "Method calls": growing a string with a builder and with +=.

package main

import (
	"fmt"
	"strings"
)

func table(rows [][]string) string {
	var sb strings.Builder
	for i, row := range rows {
		if i > 0 {
			sb.WriteByte('\n')
		}
		for j, cell := range row {
			if j > 0 {
				sb.WriteString(" | ")
			}
			fmt.Fprintf(&sb, "%-6s", cell)
		}
	}
	sb.WriteRune('¶')
	return sb.String()
}

func main() {
	out := table([][]string{{"lot", "abv"}, {"A1", "43.0"}, {"B22", "58.5"}})
	fmt.Println(out)
	fmt.Println(len(out), strings.Count(out, "|"))
	s := ""
	for c := 'a'; c < 'f'; c++ {
		s += string(c)
		s = string(c) + s
	}
	fmt.Println(s, len(s))
	fmt.Println(strings.Join(strings.Split(s, ""), "."))
}
