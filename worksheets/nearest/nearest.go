// Package nearest says which names a wrong one may stand for.
package nearest

import (
	"sort"
	"strings"
)

// Names lists up to three names, those nearest to a wrong one first.
func Names(wrong string, names []string) []string {
	wrong = plain(wrong)
	near := append([]string(nil), names...)
	sort.SliceStable(near, func(i, k int) bool { return distance(wrong, plain(near[i])) < distance(wrong, plain(near[k])) })
	return near[:min(3, len(near))]
}

// plain takes case and spacing off: they do not matter.
func plain(name string) string { return strings.ToLower(strings.Join(strings.Fields(name), " ")) }

// distance counts the changes of letters that make one word of another. A word that is part of the other is nearer.
func distance(a, b string) int {
	ra, rb := []rune(a), []rune(b)
	row := make([]int, len(rb)+1)
	for k := range row {
		row[k] = k
	}
	for i := range ra {
		diagonal := row[0]
		row[0] = i + 1
		for k := range rb {
			cost := diagonal
			if ra[i] != rb[k] {
				cost++
			}
			diagonal = row[k+1]
			row[k+1] = min(cost, row[k]+1, row[k+1]+1)
		}
	}
	if strings.Contains(b, a) {
		return row[len(rb)] / 4
	}
	return row[len(rb)]
}
