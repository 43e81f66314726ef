package report

import (
	"regexp"
	"strings"
)

// escaped writes text so that Markdown shows it as it is: no emphasis, no link, no HTML, no table, on one line.
//
// Source: CommonMark 0.31.2, 2.4 (a backslash before any mark of ASCII takes its meaning). Bars, tildes, bare addresses,
// braces and dollar signs mean something in wide-spread dialects.
func escaped(s string) string {
	s = space.ReplaceAllString(printable(s), " ")
	s = marks.ReplaceAllString(s, `\$0`)
	s = scheme.ReplaceAllString(s, `$1\://`)
	return www.ReplaceAllString(s, `$1\.`)
}

var (
	space  = regexp.MustCompile(`[ \t\n]+`)
	marks  = regexp.MustCompile("[\\\\`*_{}\\[\\]<>|~$#@]|&[#a-zA-Z]")
	scheme = regexp.MustCompile(`([A-Za-z])://`)
	www    = regexp.MustCompile(`(?i)(www)\.`)
)

// atLineStart escapes what means something only at the start of a line: a list, a rule, an underline of a heading.
func atLineStart(s string) string {
	lines := strings.Split(s, "\n")
	for i, l := range lines {
		l = strings.TrimLeft(l, " ")
		if opening.MatchString(l) {
			l = `\` + l
		}
		lines[i] = numbered.ReplaceAllString(l, `$1\$2$3`)
	}
	return strings.Join(lines, "\n")
}

var (
	opening  = regexp.MustCompile(`^(?:[-+:](?: |$)|[-=:][-=: ]*$)`)
	numbered = regexp.MustCompile(`^([0-9]{1,9})([.)])( |$)`)
)

// readsAs returns the words that a reader of Markdown sees.
func readsAs(markdown string) string { return wordsOf(parseProse(markdown).html()) }

func squeezed(s string) string {
	return strings.TrimSpace(space.ReplaceAllString(printable(s), " "))
}
