package limits

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// UnknownError says that there is no jurisdiction, category, substance, plant or scope of a name.
type UnknownError struct {
	Func    string   // the function, such as "limits.Check"
	What    string   // what was asked for, such as "jurisdiction"
	Name    string   // the name asked for
	Known   []string // those there are, or the nearest
	Nearest bool     // whether Known are only the nearest
}

// Error gives the name and those that there are in one line.
func (e *UnknownError) Error() string {
	list := "there are"
	if e.Nearest {
		list = "the nearest are"
	}
	return fmt.Sprintf("%s: no %s %q is known; %s %s", e.Func, e.What, e.Name, list, strings.Join(e.Known, ", "))
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *UnknownError) StopsCell() {}

var greek = strings.NewReplacer("α", "alpha", "β", "beta")

// plain strips a name of what people write in different ways.
func plain(name string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return -1
	}, greek.Replace(strings.ToLower(name)))
}

// edits counts the letters to insert, delete or replace to make b of a (Levenshtein's distance).
func edits(a, b string) int {
	ra, rb := []rune(a), []rune(b)
	row := make([]int, len(rb)+1)
	for j := range row {
		row[j] = j
	}
	for i, ca := range ra {
		corner := row[0]
		row[0] = i + 1
		for j, cb := range rb {
			change := corner
			if ca != cb {
				change++
			}
			corner = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(rb)]
}

// nearest returns the n of names that take the fewest edits to become name, the first of equals in the order given.
func nearest(name string, names []string, n int) []string {
	sorted := slices.Clone(names)
	slices.SortStableFunc(sorted, func(a, b string) int { return edits(plain(name), plain(a)) - edits(plain(name), plain(b)) })
	return sorted[:min(n, len(sorted))]
}

func (t *tables) substance(function, name string) (substance, error) {
	var all []string
	for _, s := range t.substances {
		for _, n := range s.names {
			if plain(n) == plain(name) && plain(name) != "" {
				return s, nil
			}
		}
		all = append(all, s.name)
	}
	return substance{}, &UnknownError{function, "substance with a rule", name, nearest(name, all, 3), true}
}

func (t *tables) category(function, name string) (category, error) {
	var all []string
	for _, c := range t.categories {
		if plain(c.name) == plain(name) {
			return c, nil
		}
		all = append(all, c.name)
	}
	return category{}, &UnknownError{function, "category", name, all, false}
}

// plant returns the plant of a name; false if the list of cautions has none of it.
func (t *tables) plant(name string) (plant, bool) {
	for _, p := range t.plants {
		for _, n := range p.names {
			if plain(n) == plain(name) && plain(name) != "" {
				return p, true
			}
		}
	}
	return plant{}, false
}

// Jurisdictions returns the jurisdictions there are, sorted.
func Jurisdictions() []string { return embedded().jurisdictions() }

func (t *tables) jurisdictions() []string {
	var out []string
	for _, l := range t.limits {
		if !slices.Contains(out, l.region) {
			out = append(out, l.region)
		}
	}
	slices.Sort(out)
	return out
}

func (t *tables) jurisdiction(function, name string) (string, error) {
	if p := plain(name); strings.Contains(p, "88388") {
		return "", fmt.Errorf("%s: Directive 88/388/EEC is repealed since 20 January 2011 (thujone 5, 10, 25 or 35 mg/kg by strength, coumarin 10 mg/kg); choose one of %s",
			function, strings.Join(t.jurisdictions(), ", "))
	}
	for _, j := range t.jurisdictions() {
		if plain(j) == plain(name) {
			return j, nil
		}
	}
	return "", &UnknownError{function, "jurisdiction", name, t.jurisdictions(), false}
}

// scopes returns the keys of a jurisdiction, sorted.
func (t *tables) scopes(region string) []string {
	var out []string
	for _, l := range t.limits {
		if l.region == region && l.key != "" && l.key != other && !slices.Contains(out, l.key) {
			out = append(out, l.key)
		}
	}
	for _, l := range t.labels {
		if l.region == region && l.key != "" {
			out = append(out, l.key)
		}
	}
	slices.Sort(out)
	return out
}
