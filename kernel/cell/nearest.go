package cell

import "strings"

// nearest names what a name that means nothing was probably meant to be.
func (s *Session) nearest(name string) string {
	best, least := "", 3 // changes of letters
	if len(name) < 5 {
		least = 2
	}
	try := func(known string) {
		if strings.EqualFold(known, name) {
			best, least = known, 0
			return
		}
		if d := distance(name, known); d < least {
			best, least = known, d
		}
	}
	for _, n := range s.Names() {
		try(n)
	}
	for _, n := range s.lib.PredeclaredNames() {
		try(n)
	}
	if best == "" {
		return ""
	}
	return "is " + best + " meant?"
}

// distance counts the letters to change, add or drop to make one word of another (Levenshtein's distance).
func distance(a, b string) int {
	if len(a)-len(b) > 3 || len(b)-len(a) > 3 {
		return 4
	}
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		diagonal := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := 1
			if a[i] == b[j] {
				cost = 0
			}
			diagonal, row[j+1] = row[j+1], min(row[j+1]+1, row[j]+1, diagonal+cost)
		}
	}
	return row[len(b)]
}
