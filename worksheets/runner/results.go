package runner

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"swanneck/worksheets/report"
	"swanneck/worksheets/results"
	"swanneck/worksheets/wholefile"
)

// ResultsFile returns what the results files of a run hold. sheet is the name of the worksheet's file.
func ResultsFile(out *Outcome, sheet string) (*results.File, error) {
	p, err := readProvenance(out.Notebook)
	if err != nil {
		return nil, fmt.Errorf("runner.ResultsFile: %s %w", sheet, err)
	}
	f := resultsOf(out)
	f.Worksheet, f.Title = filepath.Base(sheet), report.Title(out.Notebook)
	f.Clock, f.Seed, f.Versions, f.Architecture, f.Files = p.Clock, p.Seed, p.Versions, p.Architecture, p.Files
	f.CheckCode = f.Code()
	return f, nil
}

// CheckCode returns the check code of a run, as "7K3M-2QPA-9XYZ": the same for the same code cells, changed inputs and
// results as printed. results.File.Code says how it is made.
func CheckCode(out *Outcome) string { return resultsOf(out).Code() }

// resultsOf returns what a check code covers.
func resultsOf(out *Outcome) *results.File {
	f := &results.File{Sources: sources(out.Notebook)}
	for _, in := range out.Inputs {
		f.Inputs = append(f.Inputs, results.Input{Name: in.Name, Value: in.Value, Changed: in.Changed, SHA256: in.Hash})
	}
	for i, r := range out.Results {
		f.Results = append(f.Results, results.Result{ResultData: r, Cell: out.Cells[i]})
	}
	if out.Failure != nil {
		f.Stopped = out.Failure.Error()
	}
	return f
}

// ResultNames returns the results files that a run leaves in a folder.
func ResultNames(dir, sheet string) (json, csv string) {
	ipynb, _ := Names(dir, sheet)
	base := strings.TrimSuffix(ipynb, ".ipynb")
	return base + ".results.json", base + ".results.csv"
}

// PrepareResults is Prepare for the results files.
func PrepareResults(dir string, sheets []string) error {
	for _, sheet := range sheets {
		json, csv := ResultNames(dir, sheet)
		for _, path := range []string{json, csv} {
			info, err := os.Lstat(path)
			if errors.Is(err, os.ErrNotExist) {
				continue
			}
			ours := err == nil && info.Mode().IsRegular()
			if ours {
				var old []byte
				if old, err = os.ReadFile(path); path == json {
					_, bad := results.Read(old)
					ours = err == nil && bad == nil
				} else {
					ours = err == nil && results.LooksLikeCSV(old)
				}
			}
			if !ours {
				return inputError{fmt.Errorf("%s is there and is not the results of a run; choose another folder with --out", path)}
			}
		}
	}
	return nil
}

func resultsFiles(out *Outcome, dir, sheet string) ([]wholefile.File, error) {
	f, err := ResultsFile(out, sheet)
	if err != nil {
		return nil, err
	}
	jsonText, err := f.JSON()
	if err != nil {
		return nil, err
	}
	csvText, err := f.CSV()
	if err != nil {
		return nil, err
	}
	json, csv := ResultNames(dir, sheet)
	return []wholefile.File{{Path: json, Data: jsonText}, {Path: csv, Data: csvText}}, nil
}
