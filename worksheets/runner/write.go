package runner

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"time"

	"swanneck/worksheets/entry"
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

// Write leaves the executed notebook and the report in a folder that Prepare has looked at, and what more the options say.
// All are written, or none. With inputs kept out there is no notebook and ipynb is empty. date is printed in the report; a
// zero date is left out.
func Write(out *Outcome, dir, sheet string, date time.Time, o Options) (ipynb, html string, err error) {
	ipynb, html = Names(dir, sheet)
	doc := document(out, sheet, date, o)
	page, err := report.HTML(doc)
	if err != nil {
		return "", "", err
	}
	files := []wholefile.File{{Path: html, Data: page}}
	if o.KeepInputsOut {
		ipynb = ""
	} else {
		executed, err := out.Notebook.Bytes()
		if err != nil {
			return "", "", err
		}
		files = append(files, wholefile.File{Path: ipynb, Data: executed})
	}
	if o.ResultsFiles && o.KeepInputsOut {
		return "", "", errors.New("runner.Write: results files tell the inputs, which are to be kept out; want one or the other")
	}
	if o.ResultsFiles {
		more, err := resultsFiles(out, dir, sheet)
		if err != nil {
			return "", "", err
		}
		files = append(files, more...)
	}
	if o.Markdown {
		more, err := markdownFiles(doc, dir, sheet)
		if err != nil {
			return "", "", err
		}
		files = append(files, more...)
	}
	if err := wholefile.WriteAll(files...); err != nil {
		return "", "", err
	}
	if o.Markdown {
		if err := removeOldPictures(dir, sheet, files); err != nil {
			return "", "", err
		}
	}
	return ipynb, html, nil
}

func same(a, b string) bool {
	fa, errA := os.Stat(a)
	fb, errB := os.Stat(b)
	return errA == nil && errB == nil && os.SameFile(fa, fb)
}

func document(out *Outcome, sheet string, date time.Time, o Options) report.Document {
	doc := report.Document{Notebook: out.Notebook, Date: date, FileName: filepath.Base(sheet), InputsKeptOut: o.KeepInputsOut, CheckCode: CheckCode(out)}
	if f := out.Failure; f != nil {
		doc.Notice = fmt.Sprintf("This run stopped in cell %d of the worksheet. The cells after it were not run, and their results are missing.", f.Cell)
		if !o.KeepInputsOut {
			doc.Notice += " " + f.Failure.Items[0].Msg
		}
	}
	for _, r := range out.Results {
		doc.Results = append(doc.Results, Row(r))
	}
	for i, in := range out.Inputs {
		row := report.InputRow{Name: in.Name, Value: in.Value, Help: in.Help, Changed: in.Changed}
		if o.Inputs != nil && i < len(o.Inputs.Asked) && o.Inputs.Asked[i].Kind == entry.Table && in.Hash == "" && !in.Changed {
			row.Value = o.Inputs.Asked[i].Usual // its lines, which the row has as one
		}
		doc.Inputs = append(doc.Inputs, row)
	}
	for _, v := range o.Versions {
		doc.Provenance = append(doc.Provenance, report.Row{Label: v.What, Value: v.Version})
	}
	doc.Provenance = append(doc.Provenance,
		report.Row{Label: "Clock in cells", Value: o.Engine.CellClock().Format("2006-01-02 15:04 MST")},
		report.Row{Label: "Seed", Value: fmt.Sprint(o.Engine.Seed)})
	if !o.KeepInputsOut { // a hash tells whether a guess is right
		doc.Provenance = append(doc.Provenance, filesRead(out)...)
	}
	return doc
}

// filesRead lists the tables that were read, with their hashes.
func filesRead(out *Outcome) []report.Row {
	var rows []report.Row
	for _, in := range out.Inputs {
		if in.Hash != "" {
			rows = append(rows, report.Row{Label: "Table given: " + in.Value, Value: in.Hash})
		}
	}
	if p, err := readProvenance(out.Notebook); err == nil { // an outcome of Run has one
		for _, name := range slices.Sorted(maps.Keys(p.Files)) {
			rows = append(rows, report.Row{Label: "Table read: " + name, Value: p.Files[name]})
		}
	}
	return rows
}
