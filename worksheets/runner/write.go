package runner

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"swanneck/worksheets/notebook"
	"swanneck/worksheets/report"
	"swanneck/worksheets/wholefile"
)

// Prepare looks whether the outputs of some worksheets can be written, before anything is run: the folder is there or can
// be made, two worksheets do not leave one name, and nothing is replaced but what a run left.
func Prepare(dir string, sheets []string) error {
	if dir == "" {
		return inputError{errors.New("--out is empty; name a folder")}
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("%s: cannot make this folder: %w", dir, wholefile.Cause(err))
	}
	probe, err := os.CreateTemp(dir, ".probe-*")
	if err != nil {
		return fmt.Errorf("%s: cannot write in this folder: %w", dir, wholefile.Cause(err))
	}
	if err := errors.Join(probe.Close(), os.Remove(probe.Name())); err != nil {
		return fmt.Errorf("%s: cannot write in this folder: %w", dir, wholefile.Cause(err))
	}
	from := map[string]string{}
	for _, sheet := range sheets {
		ipynb, html := Names(dir, sheet)
		if other, ok := from[ipynb]; ok {
			return inputError{fmt.Errorf("%s and %s would both leave %s; run them into two folders", other, sheet, ipynb)}
		}
		from[ipynb] = sheet
		for _, f := range []string{ipynb, html} {
			info, err := os.Lstat(f)
			if err != nil {
				continue
			}
			for _, s := range sheets {
				if same(f, s) {
					return inputError{fmt.Errorf("%s is the worksheet itself; choose another folder with --out", f)}
				}
			}
			if !info.Mode().IsRegular() {
				return inputError{fmt.Errorf("%s is there and is not a plain file; choose another folder with --out", f)}
			}
		}
		if _, err := os.Lstat(ipynb); err == nil {
			old, err := notebook.ReadFile(ipynb)
			if err != nil || old.Own()["run"] == nil {
				return inputError{fmt.Errorf("%s is there and is not the output of a run; choose another folder with --out", ipynb)}
			}
		}
	}
	return nil
}

// Write leaves the executed notebook and the report in a folder that Prepare has looked at. date is printed in the
// report; a zero date is left out.
func Write(out *Outcome, dir, sheet string, date time.Time, o Options) (ipynb, html string, err error) {
	ipynb, html = Names(dir, sheet)
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
	if f := out.Failure; f != nil {
		doc.Notice = fmt.Sprintf("This run stopped in cell %d of the worksheet. The cells after it were not run, and their results are missing. %s", f.Cell, f.Failure.Items[0].Msg)
	}
	for _, r := range out.Results {
		doc.Results = append(doc.Results, Row(r))
	}
	for _, v := range o.Versions {
		doc.Provenance = append(doc.Provenance, report.Row{Label: v.What, Value: v.Version})
	}
	doc.Provenance = append(doc.Provenance,
		report.Row{Label: "Clock in cells", Value: o.Engine.CellClock().Format("2006-01-02 15:04 MST")},
		report.Row{Label: "Seed", Value: fmt.Sprint(o.Engine.Seed)})
	return doc
}
