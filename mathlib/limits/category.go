package limits

import (
	"fmt"
	"math"
	"slices"

	"swanneck/mathlib/quantity"
)

// category judges strength and composition of the category.
func (k *checker) category() ([]Line, error) {
	if k.c.Category == "" {
		return nil, nil
	}
	if k.region != "EU" {
		return nil, fmt.Errorf("%s: categories are known of the EU only, not of %s; leave Category empty", k.fn, k.region)
	}
	cat, err := k.t.category(k.fn, k.c.Category)
	if err != nil {
		return nil, err
	}
	abv := k.c.Strength.ABV()
	r := rule{low: cat.minPct, high: math.Inf(1), unit: "% vol"}
	low, high := abv-k.c.PlusMinusABV, abv+k.c.PlusMinusABV
	if k.c.PlusMinusABV == 0 { // a strength stated as 37.5 must not fall short of 37.5 by rounding
		low, high = low+1e-9, high+1e-9
	}
	l := Line{What: "strength of " + cat.name, Found: strengthText(abv, k.c.PlusMinusABV), Rule: r.text() + ", no tolerance", Source: cat.source, Answer: r.judge(low, high, true, true),
		Why: "true strength", Low: abv - k.c.PlusMinusABV, High: abv + k.c.PlusMinusABV, Unit: "% vol"}
	if cat.rule != "" {
		l.Why += "; besides: " + cat.rule
	}
	if l.Answer == CannotTell {
		l.Analysis = "measure the strength: pycnometer or oscillating U-tube"
	}
	lines := []Line{l}
	for _, x := range k.t.rules {
		if x.category != cat.name {
			continue
		}
		r := rule{low: x.low, high: x.high, unit: x.unit}
		switch x.kind {
		case "min":
			r.high = math.Inf(1)
		case "max":
			r.low = math.Inf(-1)
		}
		l, err := k.line(x.substance, r, cat.name, x.source)
		if err != nil {
			return nil, err
		}
		k.ofRule = append(k.ofRule, x.substance)
		lines = append(lines, l)
	}
	return lines, nil
}

func strengthText(abv, plusMinus float64) string {
	if plusMinus == 0 {
		return fmt.Sprintf("%.2f %% vol", abv)
	}
	return fmt.Sprintf("%.2f ± %.2f %% vol", abv, plusMinus)
}

// label judges the label against the true strength.
func (k *checker) label() ([]Line, error) {
	if k.c.LabelABV == 0 {
		return nil, nil
	}
	var best *labelRow
	for i, l := range k.t.labels {
		if l.region == k.region && (l.key == "" && best == nil || l.key != "" && slices.Contains(k.c.Scopes, l.key)) {
			best = &k.t.labels[i]
		}
	}
	if best == nil {
		return []Line{{What: "label", NoLimit: true, Why: "no tolerance of labels is known for " + k.region}}, nil
	}
	at, err := quantity.Fahrenheit(best.atF)
	if err != nil {
		return nil, as(k.fn, err)
	}
	abv := k.c.Strength.ABVAt(at)
	const rounding = 1e-9
	r := rule{low: k.c.LabelABV - best.plusMinus - rounding, high: k.c.LabelABV + best.plusMinus + rounding, unit: "% vol"}
	l := Line{What: "label", Found: strengthText(abv, k.c.PlusMinusABV), Source: best.source, Why: "true strength at " + at.String(),
		Rule:   fmt.Sprintf("label %g ± %g %% vol", k.c.LabelABV, best.plusMinus),
		Answer: r.judge(abv-k.c.PlusMinusABV, abv+k.c.PlusMinusABV, true, true), Low: abv - k.c.PlusMinusABV, High: abv + k.c.PlusMinusABV, Unit: "% vol"}
	if l.Answer == CannotTell {
		l.Analysis = "measure the strength: pycnometer or oscillating U-tube"
	}
	return []Line{l}, nil
}
