package runner

import (
	"fmt"
	"os"
	"path/filepath"
	"time"

	"swanneck/kernel/engine"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/report"
	"swanneck/worksheets/wholefile"
)

// Write leaves the executed notebook and the report in a folder, which it makes if need be. Neither replaces the
// worksheet: that is refused. date is printed in the report; a zero date is left out.
func Write(out *Outcome, dir, sheet string, date time.Time, o Options) (ipynb, html string, err error) {
	ipynb, html = Names(dir, sheet)
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return "", "", fmt.Errorf("%s: cannot make this folder: %w", dir, wholefile.Cause(err))
	}
	for _, f := range []string{ipynb, html} {
		if same(f, sheet) {
			return "", "", inputError{fmt.Errorf("%s is the worksheet itself; choose another folder with --out", f)}
		}
	}
	page, err := report.HTML(document(out, sheet, date, o))
	if err != nil {
		return "", "", err
	}
	if err := notebook.WriteFile(ipynb, out.Notebook); err != nil {
		return "", "", err
	}
	if err := wholefile.Write(html, page); err != nil {
		return "", "", err
	}
	return ipynb, html, nil
}

func same(a, b string) bool {
	fa, errA := os.Stat(a)
	fb, errB := os.Stat(b)
	return errA == nil && errB == nil && os.SameFile(fa, fb)
}

func document(out *Outcome, sheet string, date time.Time, o Options) report.Document {
	doc := report.Document{Notebook: out.Notebook, Date: date, FileName: filepath.Base(sheet)}
	for _, r := range out.Results {
		doc.Results = append(doc.Results, Row(r))
	}
	for _, v := range o.Versions {
		doc.Provenance = append(doc.Provenance, report.Row{Label: v.What, Value: v.Version})
	}
	clock := o.Engine.Clock
	if clock.IsZero() {
		clock = engine.DefaultClock
	}
	doc.Provenance = append(doc.Provenance,
		report.Row{Label: "Clock in cells", Value: clock.UTC().Format("2006-01-02 15:04 MST")},
		report.Row{Label: "Seed", Value: fmt.Sprint(o.Engine.Seed)})
	return doc
}
