// Go specification, "Qualified identifiers" (package strings): wrapping and centring text.

package main

import (
	"fmt"
	"strings"
)

const text = "The low wines come over clear and are caught in the receiver, whence they return to the spirit still for a second, slower run."

func wrap(s string, width int) (lines []string) {
	var line string
	for _, w := range strings.Fields(s) {
		if line != "" && len(line)+1+len(w) > width {
			lines = append(lines, line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		line += w
	}
	return append(lines, line)
}

func centre(s string, width int) string {
	left := (width - len(s)) / 2
	return strings.Repeat(" ", max(left, 0)) + s
}

func justify(s string, width int) string {
	words := strings.Fields(s)
	gaps := len(words) - 1
	if gaps == 0 {
		return s
	}
	spaces := width - len(strings.Join(words, ""))
	var sb strings.Builder
	for i, w := range words {
		sb.WriteString(w)
		if i < gaps {
			n := spaces / gaps
			if i < spaces%gaps {
				n++
			}
			sb.WriteString(strings.Repeat(" ", n))
		}
	}
	return sb.String()
}

func main() {
	for _, l := range wrap(text, 30) {
		fmt.Printf("|%-30s|%s|\n", centre(l, 30), justify(l, 30))
	}
}
