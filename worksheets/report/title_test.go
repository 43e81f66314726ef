package report_test

import (
	"testing"

	"swanneck/worksheets/notebook"
	"swanneck/worksheets/report"
)

func TestTitle(t *testing.T) {
	n := notebook.New()
	if got := report.Title(n); got != "" {
		t.Errorf("of no prose: %q; want nothing", got)
	}
	n.Cells = []*notebook.Cell{
		notebook.NewCell(notebook.Code, "// # not this"),
		notebook.NewCell(notebook.Markdown, "> # nor this\n\nsome words"),
		notebook.NewCell(notebook.Markdown, "words\n\n## Water for *one* lot\n\n# Later"),
	}
	if got, want := report.Title(n), "Water for one lot"; got != want {
		t.Errorf("%q; want %q", got, want)
	}
}
