// Go specification, "Qualified identifiers" (package text/tabwriter): aligned columns.

package main

import (
	"fmt"
	"strings"
	"text/tabwriter"
)

type row struct {
	name  string
	abv   float64
	count int
}

func render(flags uint, pad byte, rows []row) (string, error) {
	var sb strings.Builder
	w := tabwriter.NewWriter(&sb, 0, 8, 2, pad, flags)
	fmt.Fprintln(w, "name\tabv\tcount\t")
	for _, r := range rows {
		fmt.Fprintf(w, "%s\t%.1f\t%d\t\n", r.name, r.abv, r.count)
	}
	err := w.Flush()
	return sb.String(), err
}

func main() {
	rows := []row{{"gin", 43, 120}, {"angelica liqueur", 28.5, 6}, {"éau", 7, 10000}}
	for _, f := range []uint{0, tabwriter.AlignRight, tabwriter.Debug, tabwriter.AlignRight | tabwriter.Debug} {
		s, err := render(f, ' ', rows)
		fmt.Print(s, err, "\n")
	}
	s, err := render(0, '.', rows[:1])
	fmt.Print(s, err, "\n")
}
