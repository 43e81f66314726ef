package botanical

import (
	"math"
	"strings"

	"swanneck/mathlib/compound"
)

// Marker is a compound of an essential oil and its share. Compound is a name of package compound, a sum such as "thujone" or
// "citral", or one that is printed for the plant but not known there; of such a one the grams are listed and nothing more.
type Marker struct {
	Compound string
	SharePct Range               // of the oil, per cent by mass; unset if nobody knows
	Analysed bool                // measured on the lot at hand
	From     compound.Provenance // of printed figures
}

// String gives the marker in one line.
func (m Marker) String() string {
	s := m.Compound
	if m.SharePct.IsSet() {
		s += " " + m.SharePct.String() + " % of the oil"
	} else {
		s += ", share not known"
	}
	switch {
	case m.Analysed:
		s += ", analysed"
	case m.From.Known():
		s += ", " + m.From.Status.Words()
	}
	return s
}

// followed is a marker taken apart into compounds that can be followed, with the shares of each by mass, dimensionless.
// Without compounds it is one that cannot be.
type followed struct {
	Marker
	sum       string
	compounds []string
	parts     []float64
}

// resolve finds the compounds of a marker. Names that the plant's own list prints without a compound are let through.
func resolve(fn string, m Marker, plant *Plant) (followed, error) {
	key := plain(m.Compound)
	t := embedded()
	for name, s := range t.sums {
		if plain(name) == key {
			m.Compound = name
			return followed{m, name, s.compounds, s.shares}, nil
		}
	}
	known, err := compound.Find(m.Compound)
	if err == nil {
		if known.Name == "ethanol" || known.Name == "water" {
			return followed{}, inputf(fn, "%s is no marker of an essential oil", known.Name)
		}
		m.Compound = known.Name
		return followed{m, "", []string{known.Name}, []float64{1}}, nil
	}
	if plant != nil {
		for _, row := range plant.printed {
			if row.compound == "" && named(row.name, key) {
				return followed{Marker: m}, nil
			}
		}
	}
	return followed{}, as(fn, err)
}

// named reports whether a printed name, which may be several joined by "or", is the one with the plain key.
func named(printed, key string) bool {
	if plain(printed) == key {
		return true
	}
	for part := range strings.SplitSeq(printed, " or ") {
		short, _, _ := strings.Cut(part, " (")
		if plain(part) == key || plain(short) == key {
			return true
		}
	}
	return false
}

// resolveAll takes the markers of an oil apart, checks that their shares can be those of one oil, and lowers each upper end
// to what the least shares of the others leave.
func resolveAll(fn, plant string, markers []Marker, known *Plant) ([]followed, error) {
	var out []followed
	owner := map[string]string{}
	lows := 0.0
	for _, m := range markers {
		if m.Compound == "" {
			return nil, inputf(fn, "a marker of %s has no Compound; give a name", plant)
		}
		if err := m.SharePct.check(fn, "share of "+m.Compound+" in the oil of "+plant, 0, 100, "%"); err != nil {
			return nil, err
		}
		f, err := resolve(fn, m, known)
		if err != nil {
			return nil, err
		}
		names := f.compounds
		if names == nil {
			names = []string{plain(f.Compound)}
		}
		for _, c := range names {
			if other, twice := owner[c]; twice {
				return nil, inputf(fn, "%s and %s both state %s in the oil of %s; give it one share", other, f.Compound, c, plant)
			}
			owner[c] = f.Compound
		}
		lows += f.SharePct.Low
		out = append(out, f)
	}
	if lows > 100+1e-9 {
		return nil, inputf(fn, "the shares of the markers in the oil of %s add up to %.4g %% at least; they must stay within 100 %%", plant, lows)
	}
	for i := range out {
		s := &out[i].SharePct
		if s.IsSet() && !s.IsPoint() {
			*s = Between(s.Low, math.Max(s.Low, math.Min(s.High, 100-(lows-s.Low))))
		}
	}
	return out, nil
}
