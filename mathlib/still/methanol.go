package still

import (
	"fmt"
	"strings"
	"sync"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/internal/datafile"
	"swanneck/mathlib/quantity"
)

// MethanolLimit is the most methanol that a published rule allows in a kind of spirit.
type MethanolLimit struct {
	Name     string // such as "eu-fruit"
	Region   string
	Category string
	Source   string                 // with its status where it was not read
	PerPure  quantity.Concentration // to the pure alcohol; or unset, and
	VolPct   float64                // of the spirit's volume, per cent
}

// String gives the limit in one line.
func (m MethanolLimit) String() string {
	limit := m.PerPure.String()
	if !m.PerPure.IsSet() {
		limit = fmt.Sprintf("%g %% of the volume", m.VolPct)
	}
	return fmt.Sprintf("%s, %s: methanol at most %s (%s)", m.Region, m.Category, limit, m.Source)
}

var methanolLimits = sync.OnceValue(func() []MethanolLimit {
	rows, err := datafile.Read(files, "data/methanol_limits.csv")
	if err != nil {
		panic(err) // a test reads it
	}
	var out []MethanolLimit
	for _, r := range rows {
		m := MethanolLimit{Name: r.Text("name"), Region: r.Text("region"), Category: r.Text("category"), Source: sourceOf(r)}
		switch r.Text("unit") {
		case "g_hl_pure":
			if m.PerPure, err = quantity.GHLPure(r.Number("limit")); err != nil {
				r.Fail("%v", err)
			}
		case "pct_vol":
			m.VolPct = r.Number("limit")
		default:
			r.Fail("the unit is %q; it must be g_hl_pure or pct_vol", r.Text("unit"))
		}
		if err := r.Err(); err != nil {
			panic(err)
		}
		out = append(out, m)
	}
	return out
})

// MethanolLimits returns the published limits for methanol that are known here.
func MethanolLimits() []MethanolLimit { return append([]MethanolLimit(nil), methanolLimits()...) }

// MethanolVerdict says how methanol in a spirit stands to a published limit.
type MethanolVerdict struct {
	Answer string // "within", "over" or "cannot tell: measure"
	Limit  MethanolLimit
	Found  quantity.Concentration // in the unit of the limit, or per litre; unset if it is not known
	Share  float64                // found over the limit, dimensionless; 0 if it is not known
}

// nearLimit is the share of the limit from which on a reckoned figure does not tell on which side an analysis would lie,
// dimensionless: volatilities are good to a fifth or so.
const nearLimit = 0.8

// CheckMethanol holds methanol in a spirit of strength s against a limit by its name (see MethanolLimits). measured says
// that the concentration is an analysis; a reckoned one answers "cannot tell: measure" near the limit, and so does an
// unset one. It fails for a name that is not known and with an *alcoholometry.UnsetError.
func CheckMethanol(c quantity.Concentration, s alcoholometry.Strength, limit string, measured bool) (MethanolVerdict, error) {
	const fn = "still.CheckMethanol"
	if err := alcoholometry.CheckSet(fn, "the strength", s); err != nil {
		return MethanolVerdict{}, err
	}
	var v MethanolVerdict
	var names []string
	for _, m := range methanolLimits() {
		names = append(names, m.Name)
		if strings.EqualFold(m.Name, strings.TrimSpace(limit)) {
			v.Limit = m
		}
	}
	if v.Limit.Name == "" {
		return MethanolVerdict{}, inputf(fn, "no limit is called %q; there are %s", limit, strings.Join(names, ", "))
	}
	v.Answer = "cannot tell: measure"
	if !c.IsSet() {
		return v, nil
	}
	if v.Limit.PerPure.IsSet() {
		x, err := alcoholometry.ConcentrationGHLPure(c, s)
		if err != nil {
			return MethanolVerdict{}, as(fn, err)
		}
		if v.Found, err = quantity.GHLPure(x); err != nil {
			return MethanolVerdict{}, as(fn, err)
		}
		v.Share = x / v.Limit.PerPure.Value()
	} else {
		methanol, err := compound.Find("methanol")
		if err != nil {
			return MethanolVerdict{}, as(fn, err)
		}
		x, err := alcoholometry.ConcentrationMgL(c, s)
		if err != nil {
			return MethanolVerdict{}, as(fn, err)
		}
		if v.Found, err = quantity.MgL(x); err != nil {
			return MethanolVerdict{}, as(fn, err)
		}
		v.Share = x / (v.Limit.VolPct / 100 * methanol.Density.KgM3 * 1000)
	}
	switch {
	case !measured && v.Share > nearLimit && v.Share < 1/nearLimit:
	case v.Share <= 1:
		v.Answer = "within"
	default:
		v.Answer = "over"
	}
	return v, nil
}

// String gives the verdict in one line.
func (v MethanolVerdict) String() string {
	if !v.Found.IsSet() {
		return fmt.Sprintf("%s: methanol is not known; %v", v.Answer, v.Limit)
	}
	return fmt.Sprintf("%s: %v of methanol, %.0f %% of the limit; %v", v.Answer, v.Found, 100*v.Share, v.Limit)
}

// Cautions lists what to mind, a line each.
func (v MethanolVerdict) Cautions() []string {
	return []string{
		"methanol comes over from the first drop to the last: no cut removes it, only a charge with less of it does",
		"a reckoning is no analysis: have the spirit analysed, and check the current text of the rule",
		localRules,
	}
}
