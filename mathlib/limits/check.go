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
