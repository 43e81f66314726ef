package botanical

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"swanneck/mathlib/compound"
)

// Plant is what is printed of a plant, or recalled: From and the From of its figures say which. Find returns one.
type Plant struct {
	Name     string
	Synonyms []string
	Species  string
	Part     string // the part that the figures are of
	Fresh    bool   // the figures are of the fresh plant
	From     compound.Provenance

	Oil           OilContent // what lots hold, from low to high
	Minimum       OilContent // what the pharmacopoeia asks for at least; its Amount is unset where it asks for nothing
	OilDensityKgL Range      // of the oil; unset if nobody is quoted
	DensityFrom   compound.Provenance

	partWords []string
	printed   []printed
}

// printed is a row of markers.csv.
type printed struct {
	name     string
	compound string // of package compound or of sums.csv; empty if it is in neither
	share    Range  // % of the oil; unset if none is printed
	kind     string
	used     bool
	from     compound.Provenance
}

// Find returns what is printed of the plant of a name or of one of its usual synonyms. Case, blanks and hyphens do not
// matter. It fails with an *UnknownPlantError, which offers the nearest names.
func Find(name string) (Plant, error) {
	t := embedded()
	key := plain(name)
	if i, ok := t.index[key]; ok && key != "" {
		return t.plants[i].clone(), nil
	}
	return Plant{}, &UnknownPlantError{Func: "botanical.Find", Name: name, Nearest: t.nearest(key, 3)}
}

// PlantNames returns the names of the plants there are, sorted.
func PlantNames() []string {
	var out []string
	for _, p := range embedded().plants {
		out = append(out, p.Name)
	}
	slices.Sort(out)
	return out
}

// clone returns a copy that shares nothing, so that nobody changes the numbers of somebody else.
func (p *Plant) clone() Plant {
	c := *p
	c.Synonyms, c.partWords, c.printed = slices.Clone(p.Synonyms), slices.Clone(p.partWords), slices.Clone(p.printed)
	return c
}

// Herb returns gPerL grams of a plant to each litre as the recipe counts them, with the printed figures filled in: oil
// content, density of the oil and markers, all as ranges. Change what you know better, first of all Oil and Markers. It
// fails with an *UnknownPlantError.
func Herb(plant string, gPerL float64) (Botanical, error) {
	p, err := Find(plant)
	if err != nil {
		return Botanical{}, as("botanical.Herb", err)
	}
	return p.herb(gPerL), nil
}

func (p Plant) herb(gPerL float64) Botanical {
	b := Botanical{Plant: p.Name, Part: p.Part, GPerL: gPerL, Oil: p.Oil, Markers: p.Markers()}
	b.Oil.DensityKgL = p.OilDensityKgL
	return b
}

// Markers returns the marker compounds printed for the plant's oil, with their shares as ranges. Rows of one compound are
// taken together, from the least to the most that any of them prints.
func (p Plant) Markers() []Marker {
	var out []Marker
	for _, row := range p.printed {
		if !row.used {
			continue
		}
		name := row.compound
		if name == "" {
			name = row.name
		}
		i := slices.IndexFunc(out, func(m Marker) bool { return m.Compound == name })
		if i < 0 {
			out = append(out, Marker{Compound: name, SharePct: row.share, From: row.from})
			continue
		}
		m := &out[i]
		// A row that prints a least figure only says nothing of the most, so the widest of both counts.
		m.SharePct = Between(min(m.SharePct.Low, row.share.Low), max(m.SharePct.High, row.share.High))
		if m.From.Source != row.from.Source {
			m.From.Source += "; " + row.from.Source
		}
	}
	return out
}

// hasPart reports whether the figures are of this part; an empty word means the usual one.
func (p *Plant) hasPart(part string) bool {
	return part == "" || slices.Contains(p.partWords, strings.ToLower(strings.TrimSpace(part)))
}

// String gives the plant and its oil in one line.
func (p Plant) String() string {
	s := fmt.Sprintf("%s (%s, %s): %v", p.Name, p.Species, p.Part, p.Oil)
	if p.Minimum.Amount.IsSet() {
		s += fmt.Sprintf("; at least %s %s, %s, in the pharmacopoeia", p.Minimum.Amount, p.Minimum.Unit, p.Minimum.Basis)
	}
	return s
}

// Rows gives what is printed of the plant, each as a label, a figure and a unit, with the status in the label where it is
// not published.
func (p Plant) Rows() [][]string {
	rows := [][]string{
		{"plant", p.Name + " (" + p.Species + ")", ""},
		{"part", p.Part, ""},
		{"oil, " + string(p.Oil.Basis) + label(p.Oil.From), p.Oil.Amount.String(), string(p.Oil.Unit)},
	}
	if p.Minimum.Amount.IsSet() {
		rows = append(rows, []string{"oil, least of the pharmacopoeia, " + string(p.Minimum.Basis) + label(p.Minimum.From), p.Minimum.Amount.String(), string(p.Minimum.Unit)})
	}
	if p.OilDensityKgL.IsSet() {
		rows = append(rows, []string{"density of the oil" + label(p.DensityFrom), p.OilDensityKgL.String(), "kg/L"})
	}
	for _, row := range p.printed {
		what, figure, unit := row.name, row.share.String(), "% of the oil"
		switch row.kind {
		case "min":
			figure = "at least " + threeDigits(row.share.Low)
		case "max":
			figure = "at most " + threeDigits(row.share.High)
		case "named":
			figure, unit = "named without a share", ""
		}
		if row.compound == "" {
			what += ", not followed"
		}
		rows = append(rows, []string{what + label(row.from), figure, unit})
	}
	return rows
}

// label gives a status in brackets, and nothing for a published number.
func label(p compound.Provenance) string {
	if p.Sure() || !p.Known() {
		return ""
	}
	return " (" + p.Status.Words() + ")"
}

// plain strips a name of what people write in different ways.
func plain(name string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return -1
	}, strings.ToLower(name))
}

// nearest returns n names of plants: first those that hold the key or are held by it, then those that take the fewest edits
// from the key.
func (t *tables) nearest(key string, n int) []string {
	type near struct {
		edits int
		name  string
	}
	var all []near
	for _, p := range t.plants {
		best := 1 << 20
		for _, name := range append([]string{p.Name}, p.Synonyms...) {
			name = plain(name)
			e := edits(key, name)
			if len(key) >= 4 && (strings.Contains(name, key) || strings.Contains(key, name)) {
				e = 0
			}
			best = min(best, e)
		}
		all = append(all, near{best, p.Name})
	}
	slices.SortFunc(all, func(a, b near) int {
		if a.edits != b.edits {
			return a.edits - b.edits
		}
		return strings.Compare(a.name, b.name)
	})
	var out []string
	for _, a := range all[:min(n, len(all))] {
		out = append(out, a.name)
	}
	return out
}

// edits counts the letters to insert, delete or replace to make b of a (Levenshtein's distance).
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
	return row[len(rb)]
}
