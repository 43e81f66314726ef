package runner

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"swanneck/worksheets/notebook"
)

// reasons fills in what is known of why two runs differ; where they do not, that the code has changed all the same.
func (c *Checked) reasons(before *earlier, now *provenance, n *notebook.Notebook) {
	code := changedCode(before, now, n)
	if before.altered != "" {
		code = append(code, before.altered)
	}
	if len(c.Differences) == 0 {
		c.Notes = code
		return
	}
	c.Why = append(code, changedData(before, now)...)
	for _, name := range slices.Sorted(maps.Keys(joined(before.Versions, now.Versions))) {
		if a, b := before.Versions[name], now.Versions[name]; a != b {
			c.Why = append(c.Why, fmt.Sprintf("%s was %s, is %s", name, orNothing(a), orNothing(b)))
		}
	}
	if a, b := before.Architecture, now.Architecture; a != b && a != "" {
		c.Why = append(c.Why, fmt.Sprintf("the run was on another architecture, %s; this is %s, where last digits may differ", a, b))
	}
	if len(c.Why) == 0 {
		c.Why = []string{"not known: program, data, files, inputs and code are those of the run; what is stored may have been changed by hand"}
	}
}

// changedCode says which code cells are not those of the earlier run.
func changedCode(before *earlier, now *provenance, n *notebook.Notebook) []string {
	if before.Sources == nil {
		return nil
	}
	number := map[string]int{}
	count := 0
	for _, c := range n.Cells {
		if c.Type == notebook.Code {
			count++
			number[c.ID] = count
		}
	}
	var out, kept, is []string
	was := map[string]string{}
	for _, s := range before.Sources {
		was[s.Cell] = s.SHA256
	}
	there := map[string]bool{}
	for _, s := range now.Sources {
		there[s.Cell] = true
		switch hash, known := was[s.Cell]; {
		case !known:
			out = append(out, fmt.Sprintf("cell %d is new since the run", number[s.Cell]))
		case hash != s.SHA256:
			out = append(out, fmt.Sprintf("the code of cell %d was changed after the run", number[s.Cell]))
		}
		if _, known := was[s.Cell]; known {
			is = append(is, s.Cell)
		}
	}
	gone := 0
	for _, s := range before.Sources {
		if there[s.Cell] {
			kept = append(kept, s.Cell)
		} else {
			gone++
		}
	}
	if gone > 0 {
		out = append(out, taken(gone))
	}
	if !slices.Equal(kept, is) {
		out = append(out, "the code cells stand in another order than in the run")
	}
	return out
}

func taken(n int) string {
	if n == 1 {
		return "a code cell was taken out after the run"
	}
	return fmt.Sprintf("%d code cells were taken out after the run", n)
}

// changedData says which files that cells read are not those of the earlier run.
func changedData(before *earlier, now *provenance) []string {
	var out []string
	for _, name := range slices.Sorted(maps.Keys(joined(before.Files, now.Files))) {
		a, b := before.Files[name], now.Files[name]
		switch {
		case a == b:
		case a == "":
			out = append(out, name+" was not read then")
		case b == "":
			out = append(out, name+" was read then and is not now")
		default:
			out = append(out, fmt.Sprintf("%s is not what it was: its SHA-256 began with %s and does with %s", name, begin(a), begin(b)))
		}
	}
	return out
}

func begin(hash string) string {
	hash = strings.TrimPrefix(hash, "sha256:")
	return hash[:min(8, len(hash))]
}

func orNothing(s string) string {
	if s == "" {
		return "not there"
	}
	return s
}

func joined(a, b map[string]string) map[string]string {
	out := maps.Clone(a)
	if out == nil {
		out = map[string]string{}
	}
	maps.Copy(out, b)
	return out
}

func sortedKeys(m map[string]string) []string { return slices.Sorted(maps.Keys(m)) }
