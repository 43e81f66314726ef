package runner

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"swanneck/kernel/display"
	"swanneck/worksheets/cellapi"
	"swanneck/worksheets/report"
)

// Row returns a result as it is printed.
func Row(r display.ResultData) report.ResultRow {
	figure := r.Figure
	if r.PlusMinus > 0 {
		figure += " ± " + cellapi.Figure(r.PlusMinus, r.PlusMinus, 0)
	}
	return report.ResultRow{Name: r.Name, Figure: figure, Unit: r.Unit, Note: r.Note}
}

// WriteTable prints results as a table for a terminal: names left, figures right, units behind them.
func WriteTable(w io.Writer, results []display.ResultData) error {
	name, figure, unit := 0, 0, 0
	for _, r := range results {
		row := Row(r)
		name = max(name, utf8.RuneCountInString(row.Name))
		figure = max(figure, utf8.RuneCountInString(row.Figure))
		unit = max(unit, utf8.RuneCountInString(row.Unit))
	}
	for _, r := range results {
		row := Row(r)
		line := pad(row.Name, name, false) + "  " + pad(row.Figure, figure, true) + " " + pad(row.Unit, unit, false) + "  " + row.Note
		if _, err := fmt.Fprintln(w, strings.TrimRight(line, " ")); err != nil {
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
