package botanical

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
)

// Steeps is every law that goes through a series, the best first.
type Steeps struct {
	Fits    []Steep
	Refused []string // laws that do not, and why
}

// FitSteeps fits every law to a series. Which law it is, nobody knows beforehand, and few readings do not tell; inside the
// time that was read they agree, and beyond it they do not. So all are kept, and After and Reached of the result take the
// interval of the best together with those of the laws that are as good as it.
//
// It fails as FitSteep does, if no law fits.
func FitSteeps(s Series) (Steeps, error) {
	const fn = "botanical.FitSteeps"
	var out Steeps
	var first error
	for _, m := range []Model{FirstOrder, Peleg, FickSphere, WashedFirst, WashingAndDiffusion} {
		f, err := fitSteep(fn, s, m)
		if err != nil {
			if first == nil {
				first = err
			}
			out.Refused = append(out.Refused, string(m)+": "+strings.TrimPrefix(err.Error(), fn+": "))
			continue
		}
		out.Fits = append(out.Fits, f)
	}
	if len(out.Fits) == 0 {
		return Steeps{}, first
	}
	slices.SortStableFunc(out.Fits, func(a, b Steep) int {
		switch {
		case a.HasAICc && b.HasAICc:
			return cmp.Compare(a.AICc, b.AICc)
		case a.HasAICc != b.HasAICc: // with too few readings to weigh a law it stands behind
			if a.HasAICc {
				return -1
			}
			return 1
		}
		return cmp.Compare(a.SD, b.SD)
	})
	return out, nil
}

// Best returns the law that the readings like best. It panics with an *InputError if there is none.
func (s Steeps) Best() Steep {
	s.check("botanical.Steeps.Best")
	return s.Fits[0]
}

func (s Steeps) check(fn string) {
	if len(s.Fits) == 0 {
		panic(inputf(fn, "there is no fit; FitSteeps makes one"))
	}
}

// asGood returns the best law and those that the readings do not rank below it: within 2 of its criterion. With too few
// readings for that, laws of as many numbers still compare by n ln SD², to which the rest of the criterion adds the same.
func (s Steeps) asGood() []Steep {
	var out []Steep
	best := s.Fits[0]
	for _, f := range s.Fits {
		d := f.AICc - best.AICc
		if !best.HasAICc && f.Model().parameters() == best.Model().parameters() && f.SD > best.SD {
			d = 2 * float64(f.Readings) * math.Log(f.SD/best.SD)
		}
		if f.HasAICc == best.HasAICc && d <= 2 {
			out = append(out, f)
		}
	}
	return out
}

// After returns the reading after so many hours by the best law, with an interval that holds those of the laws as good as
// it. It panics with a *quantity.RangeError below 0 and beyond twice the time of the last reading.
func (s Steeps) After(hours float64) Estimate {
	const fn = "botanical.Steeps.After"
	s.check(fn)
	return s.together(func(f Steep) Estimate { return f.after(fn, hours) })
}

// Reached returns what has come out after so many hours, per cent of the end, as After does. The laws differ in this more
// than in readings, because each has an end of its own.
func (s Steeps) Reached(hours float64) Estimate {
	const fn = "botanical.Steeps.Reached"
	s.check(fn)
	return s.together(func(f Steep) Estimate { return f.reached(fn, hours) })
}

func (s Steeps) together(of func(Steep) Estimate) Estimate {
	fits := s.asGood()
	e := of(fits[0])
	if len(fits) == 1 {
		return e
	}
	each := []string{sprintf("%s %s", fits[0].Model(), threeDigits(e.Value))}
	for _, f := range fits[1:] {
		x := of(f)
		e.HasLow, e.HasHigh = e.HasLow && x.HasLow, e.HasHigh && x.HasHigh
		e.Low, e.High = math.Min(e.Low, x.Low), math.Max(e.High, x.High)
		each = append(each, sprintf("%s %s", f.Model(), threeDigits(x.Value)))
	}
	e.Notes = append(e.Notes, "laws that the readings do not tell apart: "+strings.Join(each, ", "))
	return e
}

// String gives the laws in one line.
func (s Steeps) String() string {
	if len(s.Fits) == 0 {
		return "no fit"
	}
	names := []string{}
	for _, f := range s.asGood() {
		names = append(names, string(f.Model()))
	}
	return fmt.Sprintf("%s; as good by these readings: %s", s.Fits[0], strings.Join(names, ", "))
}

// Rows gives the laws as a table, each row a label, a figure and a unit.
func (s Steeps) Rows() [][]string {
	var rows [][]string
	for _, f := range s.Fits {
		rows = append(rows, []string{string(f.Model()) + ", scatter", threeDigits(f.SD), f.Series.Unit})
		if f.HasAICc {
			rows = append(rows, []string{string(f.Model()) + ", criterion (less is better)", fmt.Sprintf("%.1f", f.AICc), ""})
		}
		rows = append(rows, []string{string(f.Model()) + ", end", threeDigits(f.Uptake.End), f.Series.Unit}, []string{string(f.Model()) + ", rate", threeDigits(f.Uptake.RatePerH), "1/h"})
	}
	for _, r := range s.Refused {
		rows = append(rows, []string{"does not go", r, ""})
	}
	return rows
}
