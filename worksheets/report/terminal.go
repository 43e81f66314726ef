package report

import (
	"regexp"
	"strings"
)

// terminalCodes are the escape sequences for colours, cursor movement and titles.
//
// Source: ECMA-48 (1991), 5.4 control sequences and 5.6 control strings.
var terminalCodes = regexp.MustCompile("\x1b\\[[0-?]*[ -/]*[@-~]|\x1b[\\]PX^_][^\x07\x1b]*(?:\x07|\x1b\\\\)?|\x1b[ -/]*[0-~]")

// terminalText returns what a terminal would leave on the screen: no escape sequences, and of a line that a program
// wrote over, the last state.
func terminalText(s string) string {
	s = terminalCodes.ReplaceAllString(s, "")
	s = strings.ReplaceAll(s, "\r\n", "\n")
	if strings.Contains(s, "\r") {
		lines := strings.Split(s, "\n")
		for i, line := range lines {
			line = strings.TrimRight(line, "\r")
			lines[i] = line[strings.LastIndexByte(line, '\r')+1:]
		}
		s = strings.Join(lines, "\n")
	}
	return printable(s)
}

// printable drops the control characters that have no place in HTML and puts U+FFFD for bytes that are not UTF-8.
// Marks that turn the reading direction go too: they could show other figures than those in the file.
func printable(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			return r
		case r < ' ', 0x7f <= r && r < 0xa0, 0x202a <= r && r <= 0x202e, 0x2066 <= r && r <= 0x2069:
			return -1
		}
		return r
	}, s)
}
