package runner

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"swanneck/worksheets/report"
	"swanneck/worksheets/wholefile"
)

// MarkdownName returns the report in Markdown that a run leaves in a folder. Its pictures stand beside it.
func MarkdownName(dir, sheet string) string {
	ipynb, _ := Names(dir, sheet)
	return strings.TrimSuffix(ipynb, ".ipynb") + ".md"
}

// PrepareMarkdown is Prepare for the report in Markdown and its pictures.
func PrepareMarkdown(dir string, sheets []string) error {
	for _, sheet := range sheets {
		md := MarkdownName(dir, sheet)
		info, err := os.Lstat(md)
		ours := false
		if err == nil && info.Mode().IsRegular() {
			old, err := os.ReadFile(md)
			ours = err == nil && bytes.HasSuffix(old, []byte("\n"+report.MarkdownEnd+"\n"))
		}
		if err == nil && !ours {
			return inputError{fmt.Errorf("%s is there and is not the report of a run; choose another folder with --out", md)}
		}
		if pictures := picturesOf(md); len(pictures) > 0 && !ours {
			return inputError{fmt.Errorf("%s is there without a report of a run beside it; choose another folder with --out", pictures[0])}
		}
	}
	return nil
}

// picturesOf returns the files beside a report in Markdown that are named as its pictures are.
func picturesOf(md string) []string {
	entries, err := os.ReadDir(filepath.Dir(md))
	if err != nil {
		return nil // nothing is there, or writing will say what is wrong
	}
	name := strings.TrimSuffix(filepath.Base(md), ".md")
	var out []string
	for _, e := range entries {
		if report.PictureOf(name, e.Name()) {
			out = append(out, filepath.Join(filepath.Dir(md), e.Name()))
		}
	}
	return out
}

func markdownFiles(doc report.Document, dir, sheet string) ([]wholefile.File, error) {
	md := MarkdownName(dir, sheet)
	page, pictures, err := report.Markdown(doc, strings.TrimSuffix(filepath.Base(md), ".md"))
	if err != nil {
		return nil, err
	}
	files := []wholefile.File{{Path: md, Data: page}}
	for _, p := range pictures {
		files = append(files, wholefile.File{Path: filepath.Join(filepath.Dir(md), p.Name), Data: p.Data})
	}
	return files, nil
}

// removeOldPictures removes what the report of an earlier run showed and this one does not.
func removeOldPictures(dir, sheet string, written []wholefile.File) error {
	var errs []error
	for _, p := range picturesOf(MarkdownName(dir, sheet)) {
		if !slices.ContainsFunc(written, func(f wholefile.File) bool { return f.Path == p }) {
			errs = append(errs, os.Remove(p))
		}
	}
	return errors.Join(errs...)
}

// Leftovers returns files in a folder that an earlier run of a worksheet has left and that may tell its inputs, now that a
// report without them is written there.
func Leftovers(dir, sheet string, o Options) []string {
	ipynb, _ := Names(dir, sheet)
	json, csv := ResultNames(dir, sheet)
	old := []string{ipynb, json, csv}
	if !o.Markdown {
		md := MarkdownName(dir, sheet)
		old = append(append(old, md), picturesOf(md)...)
	}
	return slices.DeleteFunc(old, func(path string) bool {
		_, err := os.Lstat(path)
		return err != nil
	})
}
