package limits

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Case is a product to be held against the rules of a jurisdiction.
type Case struct {
	Jurisdiction string   // EU or US; must be given
	Category     string   // of the European Union, such as pastis; empty for none
	Scopes       []string // what else the drink is, as Scopes lists it: "artemisia" or "not artemisia", "mint", "stone fruit spirit"

	Strength     alcoholometry.Strength // must be set
	PlusMinusABV float64                // how far Strength may be off, % vol
	LabelABV     float64                // on the label, % vol; 0 for no label yet

	Findings     []Finding
	Plants       []string // of the recipe, for their cautions and for what they bring
	WarmInfusion bool     // herbs are steeped warm
}

// Line is one rule held against the product.
type Line struct {
	What     string // strength, a substance, the label
	Found    string // what is known of the product
	Rule     string // what is allowed
	Answer   Answer
	NoLimit  bool   // there is no rule for this: Answer says nothing
	Why      string // what the answer rests on, or what is missing
	Analysis string // what would tell
	Source   Source
	Low      float64 // least in the product; its unit is Unit
	High     float64 // most in the product; its unit is Unit
	Unit     string  // of Low and High; empty if nothing is known
}

// Report is a product held against every rule there is for it.
type Report struct {
	Jurisdiction string
	Lines        []Line
	Cautions     []Caution
	Hazards      []string // of the work
	Note         string   // the current text and the local authority come first
}

// ComeFirst is what every report ends with.
const ComeFirst = "no legal advice: check the current text; the local authority decides"

// Check holds a product against the rules of a jurisdiction: the least strength and the composition of its category, its label,
// each finding against the limits for its substance, and, for every plant of the recipe that brings a substance with a rule, that
// substance even if nobody has measured it. Concentrations are turned into the unit of each rule with the strength before they
// are compared.
//
// It fails with an *UnknownError for a jurisdiction, category, scope or substance that is not known, for a repealed directive, for an
// unset strength, and for a finding whose low end is above its high end.
func Check(c Case) (Report, error) {
	const fn = "limits.Check"
	t := embedded()
	region, err := t.jurisdiction(fn, c.Jurisdiction)
	if err != nil {
		return Report{}, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength of the product", c.Strength); err != nil {
		return Report{}, err
	}
	if err := quantity.CheckRange(fn, "uncertainty of the strength", c.PlusMinusABV, 0, 50, "% vol", ""); err != nil {
		return Report{}, err
	}
	if err := quantity.CheckRange(fn, "the label", c.LabelABV, 0, 100, "% vol", ""); err != nil {
		return Report{}, err
	}
	for _, s := range c.Scopes {
		if !slices.Contains(t.scopes(region), s) {
			return Report{}, &UnknownError{fn, "scope", s, t.scopes(region), false}
		}
	}
	k := checker{fn: fn, t: t, c: c, region: region}
	if k.cautions, err = t.cautions(fn, c.Plants); err != nil {
		return Report{}, err
	}
	if err := k.gather(); err != nil {
		return Report{}, err
	}
	r := Report{Jurisdiction: region, Cautions: k.cautions, Hazards: t.hazardsOf(c), Note: ComeFirst}
	for _, step := range []func() ([]Line, error){k.category, k.label, k.substances} {
		lines, err := step()
		if err != nil {
			return Report{}, err
		}
		r.Lines = append(r.Lines, lines...)
	}
	return r, nil
}

type checker struct {
	fn       string
	t        *tables
	c        Case
	region   string
	cautions []Caution
	names    []string // substances with a finding, in order; parts under the sum
	found    map[string][]Finding
	ofRule   []string // substances that the category has a rule for
}

// gather sorts the findings by the substance of the rule, and checks them.
func (k *checker) gather() error {
	k.found = map[string][]Finding{}
	for i, f := range k.c.Findings {
		s, err := k.t.substance(k.fn, f.Substance)
		if err != nil {
			return err
		}
		if err := checkFinding(k.fn, f); err != nil {
			return err
		}
		f.Substance = s.name
		for _, g := range k.c.Findings[:i] {
			if h, err := k.t.substance(k.fn, g.Substance); err == nil && h.name == s.name {
				return fmt.Errorf("%s: there are two findings of %s; give the better one", k.fn, s.name)
			}
		}
		name := s.name
		if s.partOf != "" {
			name = s.partOf
		}
		if len(k.found[name]) == 0 {
			k.names = append(k.names, name)
		}
		k.found[name] = append(k.found[name], f)
		if len(k.found[name]) > 1 && slices.ContainsFunc(k.found[name], func(g Finding) bool { return g.Substance == name }) {
			return fmt.Errorf("%s: there are findings of %s and of a part of it; give the sum or the parts", k.fn, name)
		}
	}
	return nil
}

// span is what is known of a substance in the unit of a rule.
type span struct {
	low, high    float64
	exact, bound bool
	text, why    string
}

// spanOf adds up what is known of a substance in a unit.
func (k *checker) spanOf(name, unit string) (span, error) {
	found := k.found[name]
	if len(found) == 0 {
		return span{high: math.Inf(1), text: "not measured", why: "nothing is measured"}, nil
	}
	s := span{exact: true, bound: true}
	var texts []string
	for _, f := range found {
		texts = append(texts, f.String())
		low, high := 0.0, math.Inf(1)
		for _, e := range []struct {
			c  quantity.Concentration
			to *float64
		}{{f.Low, &low}, {f.High, &high}} {
			if !e.c.IsSet() {
				continue
			}
			x, err := in(e.c, unit, k.c.Strength)
			if err != nil {
				return span{}, as(k.fn, err)
			}
			*e.to = x
		}
		if low > high*(1+1e-12) {
			return span{}, fmt.Errorf("%s: %s has its low end, %s, above its high end, %s", k.fn, f.Substance, f.Low, f.High)
		}
		s.low, s.high = s.low+low, s.high+high
		switch f.Support {
		case ByMassBalance:
			s.exact = false
		case ByPrint, ByNothing:
			s.exact, s.bound = false, false
		}
	}
	// A sum needs all its parts.
	if part := found[0].Substance; part != name {
		var parts []string
		for _, p := range k.t.substances {
			if p.partOf == name {
				parts = append(parts, p.name)
			}
		}
		if len(found) < len(parts) {
			s.high, s.exact, s.bound = math.Inf(1), false, false
			s.why = "the rule counts the sum of " + strings.Join(parts, " and ")
		}
	}
	s.text = strings.Join(texts, "; ")
	return s, nil
}

// line judges one rule for one substance.
func (k *checker) line(name string, r rule, scope string, src Source) (Line, error) {
	s, err := k.spanOf(name, r.unit)
	if err != nil {
		return Line{}, err
	}
	l := Line{What: name, Found: s.text, Rule: r.text(), Source: src, Why: s.why}
	if scope != "" {
		l.Rule += " (" + scope + ")"
	}
	l.Answer = r.judge(s.low, s.high, s.exact, s.bound)
	if len(k.found[name]) > 0 {
		l.Low, l.High, l.Unit = s.low, s.high, r.unit
		l.Found += ": " + spanText(s.low, s.high) + " " + r.unit
	}
	if l.Answer == CannotTell {
		l.Analysis = "measure " + name + ": " + k.analysis(name)
	}
	return l, nil
}

func spanText(low, high float64) string {
	switch {
	case math.IsInf(high, 1):
		return fmt.Sprintf("at least %.3g", low)
	case low == high:
		return fmt.Sprintf("%.3g", low)
	}
	return fmt.Sprintf("%.3g to %.3g", low, high)
}

func (k *checker) analysis(name string) string {
	for _, s := range k.t.substances {
		if s.name == name {
			return s.analysis
		}
	}
	return ""
}

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
