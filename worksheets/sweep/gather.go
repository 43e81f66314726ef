package sweep

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"swanneck/worksheets/wholefile"
)

// Gather joins the journals of the parts of one sweep into its table. Each of paths is a journal or a folder with
// journals in it. A part that is missing, not finished or there twice is named.
func Gather(paths []string) (*Table, error) {
	files, err := journals(paths)
	if err != nil {
		return nil, inputError{err}
	}
	var first *kept
	var firstFile string
	from := map[int]string{} // by part
	rows := map[int]Row{}
	read := map[string]string{}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			return nil, inputError{fmt.Errorf("%s cannot be read: %w", f, wholefile.Cause(err))}
		}
		k, err := readJournal(f, text)
		if err != nil {
			return nil, err
		}
		if k.empty {
			return nil, inputError{fmt.Errorf("%s: nothing is in it yet", f)}
		}
		if first == nil {
			first, firstFile = k, f
		}
		if diff := first.head.other(k.head); diff != "" {
			return nil, inputError{fmt.Errorf("%s and %s are of two sweeps (other: %s); name the journals of one", firstFile, f, diff)}
		}
		p := k.head.part()
		if k.head.Parts != first.head.Parts {
			return nil, inputError{fmt.Errorf("%s is %v, and %s is %v: they overlap; name the journals of one division", firstFile, first.head.part(), f, p)}
		}
		if other, twice := from[p.Number]; twice {
			return nil, inputError{fmt.Errorf("%v is there twice: %s and %s", p, other, f)}
		}
		from[p.Number] = f
		if n := p.size(k.head.Scenarios); len(k.rows) < n {
			return nil, inputError{fmt.Errorf("%s: %v has %d of its %d rows; run it again, and it goes on from there", f, p, len(k.rows), n)}
		}
		if err := noteFiles(read, k.files); err != nil {
			return nil, inputError{fmt.Errorf("%s: %w", f, err)}
		}
		for n, r := range k.rows {
			rows[n] = r
		}
	}
	var missing []string
	for i := 1; i <= first.head.Parts; i++ {
		if from[i] == "" {
			missing = append(missing, fmt.Sprint(i))
		}
	}
	if len(missing) > 0 {
		return nil, inputError{fmt.Errorf("of the %d parts of %s, these are missing: %s", first.head.Parts, first.head.Worksheet, strings.Join(missing, ", "))}
	}
	return newTable(first.head, rows), nil
}

// journals lists the journals that paths name.
func journals(paths []string) ([]string, error) {
	var out []string
	for _, p := range paths {
		info, err := os.Stat(p)
		if err != nil {
			return nil, fmt.Errorf("%s cannot be read: %w", p, wholefile.Cause(err))
		}
		if !info.IsDir() {
			if !info.Mode().IsRegular() {
				return nil, fmt.Errorf("%s is not a plain file", p)
			}
			out = append(out, p)
			continue
		}
		entries, err := os.ReadDir(p)
		if err != nil {
			return nil, fmt.Errorf("%s cannot be read: %w", p, wholefile.Cause(err))
		}
		n := len(out)
		for _, e := range entries {
			if strings.Contains(e.Name(), ".sweep.part-") && strings.HasSuffix(e.Name(), ".journal") {
				out = append(out, filepath.Join(p, e.Name()))
			}
		}
		if len(out) == n {
			return nil, fmt.Errorf("%s: no part of a sweep has left a journal here", p)
		}
	}
	slices.Sort(out)
	return slices.Compact(out), nil
}
