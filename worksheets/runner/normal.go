package runner

import (
	"fmt"
	"regexp"
	"strings"
	"unicode/utf8"
)

// What two runs of one program may print in different ways: colours and the like, and where things lie in memory.
var (
	escapes   = regexp.MustCompile(`\x1b(?:\[[0-?]*[ -/]*[@-~]|\][^\x07\x1b]*(?:\x07|\x1b\\)?|[@-Z\\^_])`)
	addresses = regexp.MustCompile(`\b0x[0-9a-fA-F]{6,16}\b`)
)

// normal returns a text as it is compared: without escape sequences and space at the ends of lines and of the whole, with
// one kind of line end, addresses of memory (0x and six digits or more) as 0x….
func normal(text string) string {
	text = strings.ReplaceAll(text, "\r\n", "\n")
	text = addresses.ReplaceAllString(escapes.ReplaceAllString(text, ""), "0x…")
	lines := strings.Split(text, "\n")
	for i, l := range lines {
		lines[i] = strings.TrimRight(l, " \t\r")
	}
	return strings.TrimRight(strings.Join(lines, "\n"), "\n")
}

// textDifference returns the first line in which two texts differ, or nothing if they are the same.
func textDifference(then, now string) []string {
	then, now = normal(then), normal(now)
	if then == now {
		return nil
	}
	a, b := strings.Split(then, "\n"), strings.Split(now, "\n")
	i, others := 0, 0
	for i < len(a) && i < len(b) && a[i] == b[i] {
		i++
	}
	for k := i + 1; k < max(len(a), len(b)); k++ {
		if k >= len(a) || k >= len(b) || a[k] != b[k] {
			others++
		}
	}
	was, is := excerpts(line(a, i), line(b, i))
	place := fmt.Sprintf("line %d", i+1)
	if others > 0 {
		place += fmt.Sprintf(", and %d more", others)
	}
	return []string{place, "then: " + was, "now:  " + is}
}

func line(lines []string, i int) string {
	if i >= len(lines) {
		return "(no such line)"
	}
	return lines[i]
}

// maxExcerpt is the longest stretch of a line that is shown, in characters.
const maxExcerpt = 100

// excerpts cuts two long lines to where they differ.
func excerpts(a, b string) (string, string) {
	if utf8.RuneCountInString(a) <= maxExcerpt && utf8.RuneCountInString(b) <= maxExcerpt {
		return a, b
	}
	ra, rb := []rune(a), []rune(b)
	same := 0
	for same < len(ra) && same < len(rb) && ra[same] == rb[same] {
		same++
	}
	from := max(0, same-20)
	cut := func(r []rune) string {
		s := ""
		if from > 0 {
			s = "…"
		}
		if len(r)-from > maxExcerpt {
			return s + string(r[from:from+maxExcerpt]) + "…"
		}
		return s + string(r[from:])
	}
	return cut(ra), cut(rb)
}
