package compound

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// UnknownError says that there is no compound of a name.
type UnknownError struct {
	Func    string   // the function, such as "compound.Find"
	Name    string   // the name asked for
	Nearest []string // the names that look most like it
}

// Error gives the name and those that look most like it in one line.
func (e *UnknownError) Error() string {
	return fmt.Sprintf("%s: no compound %q is known; the nearest names are %s", e.Func, e.Name, strings.Join(e.Nearest, ", "))
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *UnknownError) StopsCell() {}

// Find returns the compound of a name or of one of its usual synonyms. Case, blanks and hyphens do not matter, and
// Greek letters may be written as such. It fails with an *UnknownError, which offers the nearest names.
func Find(name string) (*Compound, error) {
	t := embedded()
	key := plain(name)
	if i, ok := t.index[key]; ok && key != "" {
		return t.list[i].clone(), nil
	}
	return nil, &UnknownError{Func: "compound.Find", Name: name, Nearest: t.nearest(key, 3)}
}

// All returns every compound, sorted by name.
func All() []*Compound {
	t := embedded()
	out := make([]*Compound, len(t.list))
	for i, c := range t.list {
		out[i] = c.clone()
	}
	return out
}

// Names returns the names of every compound, sorted.
func Names() []string {
	t := embedded()
	out := make([]string, len(t.list))
	for i, c := range t.list {
		out[i] = c.Name
	}
	return out
}

var greek = strings.NewReplacer("α", "alpha", "β", "beta", "γ", "gamma", "δ", "delta")

// plain strips a name of what people write in different ways.
func plain(name string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return -1
	}, greek.Replace(strings.ToLower(name)))
}

// nearest returns n names of compounds, those first of which a name or synonym takes the fewest edits to become key; the
// end of a name may be left out for one more.
func (t *table) nearest(key string, n int) []string {
	type near struct {
		edits int
		name  string
	}
	var all []near
	for _, c := range t.list {
		best := edits(key, plain(c.Name))
		for _, s := range c.Synonyms {
			best = min(best, edits(key, plain(s)))
		}
		all = append(all, near{best, c.Name})
	}
	slices.SortStableFunc(all, func(a, b near) int { return a.edits - b.edits }) // the list is sorted by name
	var out []string
	for _, a := range all[:min(n, len(all))] {
		out = append(out, a.name)
	}
	return out
}

// edits counts the letters to insert, delete or replace to make b of a (Levenshtein's distance), or one more than it takes
// to make the beginning of b.
func edits(a, b string) int {
	ra, rb := []rune(a), []rune(b)
	row := make([]int, len(rb)+1)
	for j := range row {
		row[j] = j
	}
	for i, ca := range ra {
		diagonal := row[0]
		row[0] = i + 1
		for j, cb := range rb {
			cost := diagonal
			if ca != cb {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j]+1, row[j+1]+1)
		}
	}
	return min(row[len(rb)], 1+slices.Min(row))
}
