package limits

import (
	"embed"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

// Source says where a row comes from.
type Source struct {
	Text   string // the rule or book
	Status string // seen, memory, or part: some of it from memory
	Date   string // year of the rule; empty if it has none
	Note   string
}

// String gives the source with its year and, unless it was seen, its status.
func (s Source) String() string {
	text := s.Text
	if s.Date != "" && !strings.Contains(text, s.Date) {
		text += " (" + s.Date + ")"
	}
	switch {
	case strings.Contains(text, "from memory"), strings.Contains(text, "no source"):
	case s.Status == "memory":
		text += ", from memory"
	case s.Status == "part":
		text += ", part of it from memory"
	}
	if s.Note != "" {
		text += "; " + s.Note
	}
	return text
}

// other is the key of rows for drinks without alcohol and medicines: they never apply to a spirit.
const other = "other"

type limitRow struct {
	region, substance, scope, key, kind string
	limit                               float64
	unit                                string
	source                              Source
}

type category struct {
	name   string
	minPct float64
	key    string
	rule   string
	source Source
}

type categoryRule struct {
	category, substance, kind string
	low, high                 float64
	unit                      string
	source                    Source
}

type substance struct {
	name, partOf, analysis string
	names                  []string // with synonyms
}

type labelRow struct {
	region, key    string
	plusMinus, atF float64
	source         Source
}

type plant struct {
	name       string
	names      []string // with synonyms
	substances []string
	key        string
	caution    string
	source     Source
}

type hazard struct {
	when, text string
	source     Source
}

type tables struct {
	limits     []limitRow
	categories []category
	rules      []categoryRule
	substances []substance
	labels     []labelRow
	plants     []plant
	hazards    []hazard
}

// embedded returns the data files. That they can be read is tested.
var embedded = sync.OnceValue(func() *tables {
	t, err := load(files)
	if err != nil {
		panic(err)
	}
	return t
})

func split(s string) []string {
	var out []string
	for p := range strings.SplitSeq(s, ";") {
		if p = strings.TrimSpace(p); p != "" {
			out = append(out, p)
		}
	}
	return out
}

func oneOf(r datafile.Row, column string, allowed ...string) string {
	s := r.Text(column)
	if !slices.Contains(allowed, s) {
		r.Fail("%s is %q; it must be one of %s", column, s, strings.Join(allowed, ", "))
	}
	return s
}

var units = []string{"mg/kg", "g/hL pa", "% v/v", "g/L"}

func load(fsys fs.FS) (*tables, error) {
	t := &tables{}
	for _, step := range []struct {
		file string
		read func(datafile.Row, Source)
	}{
		{"substances", func(r datafile.Row, _ Source) {
			t.substances = append(t.substances, substance{r.Text("substance"), r.Text("part_of"), r.Text("analysis"), append([]string{r.Text("substance")}, split(r.Text("synonyms"))...)})
		}},
		{"limits", func(r datafile.Row, s Source) {
			row := limitRow{region: r.Text("region"), substance: r.Text("substance"), scope: r.Text("scope"), key: r.Text("key"), kind: oneOf(r, "kind", "max", "below", "none"), unit: r.Text("unit"), source: s}
			if row.kind != "none" {
				row.limit = r.Number("limit")
			}
			if row.kind != "none" && row.key != other && !slices.Contains(units, row.unit) {
				r.Fail("the unit is %q; it must be one of %s", row.unit, strings.Join(units, ", "))
			}
			t.mustKnow(r, row.substance)
			t.limits = append(t.limits, row)
		}},
		{"categories", func(r datafile.Row, s Source) {
			t.categories = append(t.categories, category{r.Text("category"), r.Number("min_pct_vol"), r.Text("key"), r.Text("rule"), s})
		}},
		{"category_rules", func(r datafile.Row, s Source) {
			row := categoryRule{r.Text("category"), r.Text("substance"), oneOf(r, "kind", "min", "max", "band"), r.Optional("low"), r.Optional("high"), oneOf(r, "unit", units...), s}
			if row.kind == "band" && row.low >= row.high {
				r.Fail("the band runs from %g to %g", row.low, row.high)
			}
			if !slices.ContainsFunc(t.categories, func(c category) bool { return c.name == row.category }) {
				r.Fail("the category %q is not in categories.csv", row.category)
			}
			t.mustKnow(r, row.substance)
			t.rules = append(t.rules, row)
		}},
		{"labels", func(r datafile.Row, s Source) {
			t.labels = append(t.labels, labelRow{r.Text("region"), r.Text("key"), r.Number("plus_minus_pct"), r.Number("at_F"), s})
		}},
		{"plants", func(r datafile.Row, s Source) {
			p := plant{r.Text("plant"), append([]string{r.Text("plant")}, split(r.Text("synonyms"))...), split(r.Text("substances")), r.Text("key"), r.Text("caution"), s}
			for _, x := range p.substances {
				t.mustKnow(r, x)
			}
			t.plants = append(t.plants, p)
		}},
		{"safety", func(r datafile.Row, s Source) {
			t.hazards = append(t.hazards, hazard{r.Text("when"), r.Text("text"), s})
		}},
	} {
		rows, err := datafile.Read(fsys, "data/"+step.file+".csv")
		if err != nil {
			return nil, err
		}
		dated := step.file == "limits" || step.file == "categories" || step.file == "category_rules" || step.file == "labels"
		for _, r := range rows {
			status, text, note := r.Source()
			if !slices.Contains([]string{"seen", "memory", "part"}, status) {
				r.Fail("the status is %q; it must be seen, memory or part", status)
			}
			s := Source{Text: text, Status: status, Note: note}
			if dated {
				if s.Date = r.Text("date"); s.Date == "" {
					r.Fail("there is no date; a rule without its year is not taken")
				}
			}
			step.read(r, s)
			if err := r.Err(); err != nil {
				return nil, err
			}
		}
	}
	return t, nil
}

func (t *tables) mustKnow(r datafile.Row, name string) {
	if !slices.ContainsFunc(t.substances, func(s substance) bool { return s.name == name }) {
		r.Fail("the substance %q is not in substances.csv", name)
	}
}
