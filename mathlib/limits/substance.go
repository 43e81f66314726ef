package limits

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// substances judges the limits of each substance that was found or is to be expected.
func (k *checker) substances() ([]Line, error) {
	names := slices.Clone(k.names)
	for _, n := range substancesOf(k.cautions) {
		if !slices.Contains(names, n) {
			names = append(names, n)
		}
	}
	var lines []Line
	for _, n := range names {
		more, err := k.limitsOf(n)
		if err != nil {
			return nil, err
		}
		lines = append(lines, more...)
	}
	return lines, nil
}

func (k *checker) limitsOf(name string) ([]Line, error) {
	var rows, apply []limitRow
	var keys []string
	for _, l := range k.t.limits {
		if l.region == k.region && l.substance == name {
			rows = append(rows, l)
			if l.key != "" && l.key != other {
				keys = append(keys, l.key)
			}
		}
	}
	chosen := k.chosen(keys)
	for _, l := range rows {
		if l.kind != "none" && (l.key == "" || slices.Contains(chosen, l.key)) {
			apply = append(apply, l)
		}
	}
	expected := ""
	if p := plantsWith(k.cautions, name); p != "" && len(k.found[name]) == 0 {
		expected = "to be expected of " + p
	}
	found := "not measured"
	if s, err := k.spanOf(name, "mg/kg"); err != nil {
		return nil, err
	} else if len(k.found[name]) > 0 {
		found = s.text
	}
	var lines []Line
	for _, l := range apply {
		r := rule{low: math.Inf(-1), high: l.limit, strict: l.kind == "below", unit: l.unit}
		line, err := k.line(name, r, l.scope, l.source)
		if err != nil {
			return nil, err
		}
		if expected != "" {
			line.Why = expected
		}
		lines = append(lines, line)
	}
	switch {
	case len(apply) > 0:
	case len(keys) > 0: // there are limits, and nobody has said which
		why := "which limit applies depends on the drink: name one of the scopes " + strings.Join(quoted(keys), ", ")
		if expected != "" {
			why = expected + "; " + why
		}
		lines = append(lines, Line{What: name, Found: found, Rule: "several", Answer: CannotTell, Why: why, Source: rows[0].source, Analysis: "measure " + name + ": " + k.analysis(name)})
	case slices.Contains(k.ofRule, name): // the category has its rule
	default:
		why := "no limit for this scope is known in " + k.region
		var src Source
		if len(rows) > 0 {
			src = rows[0].source
			why = fmt.Sprintf("no limit for this scope in %s: the rule is for %s", k.region, rows[0].scope)
			if rows[0].kind == "none" {
				why = "no limit in " + k.region + " any more since " + src.Date
			}
		}
		lines = append(lines, Line{What: name, Found: found, Rule: "none known", NoLimit: true, Why: why, Source: src})
	}
	return lines, nil
}

func quoted(keys []string) []string {
	out := make([]string, len(keys))
	for i, k := range keys {
		out[i] = fmt.Sprintf("%q", k)
	}
	return out
}

// chosen returns which of the keys of a substance apply: the user's own, else the category's, else those of the plants.
func (k *checker) chosen(keys []string) []string {
	pick := func(from []string) []string {
		var out []string
		for _, s := range from {
			if slices.Contains(keys, s) {
				out = append(out, s)
			}
		}
		return out
	}
	if own := pick(k.c.Scopes); len(own) > 0 {
		return own
	}
	if c, err := k.t.category(k.fn, k.c.Category); err == nil && k.region == "EU" {
		if own := pick([]string{c.key}); len(own) > 0 {
			return own
		}
	}
	var ofPlants []string
	for _, c := range k.cautions {
		if c.key != "" {
			ofPlants = append(ofPlants, c.key)
		}
	}
	return pick(ofPlants)
}
