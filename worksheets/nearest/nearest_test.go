package nearest_test

import (
	"strings"
	"testing"

	"swanneck/worksheets/nearest"
)

func TestNames(t *testing.T) {
	names := []string{"True strength", "Water to weigh in", "Spirit to take", "Warming by the mixing"}
	for wrong, want := range map[string]string{
		"Watr to weigh in": "Water to weigh in",
		"TRUE  STRENGTH":   "True strength",
		"strength":         "True strength",
		"spirit":           "Spirit to take",
	} {
		got := nearest.Names(wrong, names)
		if len(got) != 3 || got[0] != want {
			t.Errorf("Names(%q) = %q; want three, %q first", wrong, got, want)
		}
	}
	if got := nearest.Names("x", []string{"a"}); strings.Join(got, ",") != "a" {
		t.Errorf("of one name: %q", got)
	}
	if got := nearest.Names("x", nil); len(got) != 0 {
		t.Errorf("of no names: %q", got)
	}
}
