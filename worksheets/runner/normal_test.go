package runner

import (
	"slices"
	"strings"
	"testing"
)

func TestNormal(t *testing.T) {
	for _, c := range [][2]string{
		{"\x1b[1;31mred\x1b[0m and \x1b]8;;http://x\x07link\x1b]8;;\x07", "red and link"},
		{"\x1b]0;title\x1b\\text", "text"},
		{"at 0xc000012345, 0x5a3b20.", "at 0x…, 0x…."},
		{"0x1F and 0x12345 are numbers, and so is 10xc0000123", "0x1F and 0x12345 are numbers, and so is 10xc0000123"},
		{"a  \nb\t\r\nc\n\n", "a\nb\nc"},
		{"  in front stays", "  in front stays"},
		{"", ""},
	} {
		if got := normal(c[0]); got != c[1] {
			t.Errorf("normal(%q) = %q; want %q", c[0], got, c[1])
		}
	}
}

func TestTextDifference(t *testing.T) {
	for _, c := range []struct {
		then, now string
		want      []string
	}{
		{"a\nb\n", "a\nb", nil},
		{"a\nb\nc", "a\nx\nc", []string{"line 2", "then: b", "now:  x"}},
		{"a\nb\nc\nd", "a\nx\nc\ny\nz", []string{"line 2, and 2 more", "then: b", "now:  x"}},
		{"a", "a\nb", []string{"line 2", "then: (no such line)", "now:  b"}},
		{"", "a", []string{"line 1", "then: ", "now:  a"}},
	} {
		if got := textDifference(c.then, c.now); !slices.Equal(got, c.want) {
			t.Errorf("textDifference(%q, %q) = %q; want %q", c.then, c.now, got, c.want)
		}
	}
	long := strings.Repeat("ä", 500)
	got := textDifference(long+"1"+long, long+"2"+long)
	if want := "then: …" + strings.Repeat("ä", 20) + "1" + strings.Repeat("ä", 79) + "…"; len(got) != 3 || got[1] != want {
		t.Errorf("a long line: %q; want %q", got, want)
	}
}
