// Go specification, "Qualified identifiers" (package text/tabwriter): a report with groups and totals.

package main

import (
	"bytes"
	"fmt"
	"maps"
	"slices"
	"text/tabwriter"
)

type line struct {
	group, item string
	qty         int
	unitC       int
}

func euros(c int) string { return fmt.Sprintf("%d.%02d", c/100, c%100) }

func report(lines []line) (string, error) {
	var buf bytes.Buffer
	w := tabwriter.NewWriter(&buf, 0, 0, 3, ' ', tabwriter.AlignRight)
	groups := map[string][]line{}
	for _, l := range lines {
		groups[l.group] = append(groups[l.group], l)
	}
	total := 0
	for _, g := range slices.Sorted(maps.Keys(groups)) {
		sub := 0
		for _, l := range groups[g] {
			sub += l.qty * l.unitC
			fmt.Fprintf(w, "%s\t%s\t%d\t%s\t\n", g, l.item, l.qty, euros(l.qty*l.unitC))
		}
		total += sub
		fmt.Fprintf(w, "\t\t\t%s\t\n", euros(sub))
	}
	fmt.Fprintf(w, "\t\tall\t%s\t\n", euros(total))
	if err := w.Flush(); err != nil {
		return "", err
	}
	return buf.String(), nil
}

func main() {
	s, err := report([]line{{"herbs", "juniper", 12, 1499}, {"glass", "bottle", 250, 89}, {"herbs", "orris", 1, 12050}, {"glass", "stopper", 250, 7}})
	fmt.Print(s, err, "\n")
}
