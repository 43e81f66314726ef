package runner

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"swanneck/kernel/display"
	"swanneck/worksheets/cellapi"
	"swanneck/worksheets/report"
	"swanneck/worksheets/results"
)

// Row returns a result as it is printed.
func Row(r display.ResultData) report.ResultRow {
	figure := r.Figure
	if r.PlusMinus > 0 {
		figure += " ± " + cellapi.Figure(r.PlusMinus, r.PlusMinus, 0)
	}
	return report.ResultRow{Name: r.Name, Figure: figure, Unit: results.Unit(r), Note: r.Note}
}

// WriteTable prints results as a table for a terminal: names, figures to the right, their ±, units, notes.
func WriteTable(w io.Writer, rows []display.ResultData) error {
	lines := make([][5]string, len(rows))
	var width [5]int
	for i, r := range rows {
		plusMinus := ""
		if r.PlusMinus > 0 {
			plusMinus = "± " + cellapi.Figure(r.PlusMinus, r.PlusMinus, 0)
		}
		lines[i] = [5]string{r.Name, r.Figure, plusMinus, results.Unit(r), r.Note}
		for k, c := range lines[i] {
			width[k] = max(width[k], utf8.RuneCountInString(c))
		}
	}
	for _, l := range lines {
		var cells []string
		for k, c := range l {
			if width[k] > 0 {
				cells = append(cells, pad(c, width[k], k == 1))
			}
		}
		if _, err := fmt.Fprintln(w, strings.TrimRight(strings.Join(cells, "  "), " ")); err != nil {
			return err
		}
	}
	return nil
}

func pad(s string, width int, right bool) string {
	fill := strings.Repeat(" ", max(0, width-utf8.RuneCountInString(s)))
	if right {
		return fill + s
	}
	return s + fill
}
