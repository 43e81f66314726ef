package drills

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"swanneck/worksheets/figure"
)

// Units that are not among those of package figure.
const (
	pureUnit        = "L of pure alcohol"
	proofGallonUnit = "proof gallons"
)

// Verdict is what an answer is worth.
type Verdict struct {
	Right   bool
	Unread  string  // why the answer could not be read; empty if it was
	Mistake string  // the name of the usual mistake that leads there; empty if none does
	How     string  // what is wrong with that
	Given   float64 // the answer, in the unit of the problem
	OffBy   float64 // the answer less the right one, in the unit of the problem
	Unit    string

	decimals int
}

// Check reads an answer with its unit, such as "252 kg" or "43,1 % vol", and says whether it is right, what mistake leads to
// it, or by how much it is off. Units of the same kind are converted.
func (p Problem) Check(answer string) Verdict {
	v := Verdict{Unit: p.Unit, decimals: p.Decimals}
	x, err := p.read(answer)
	if err != nil {
		v.Unread = err.Error()
		return v
	}
	v.Given, v.OffBy = x, x-p.Answer
	if math.Abs(v.OffBy) <= p.Tolerance*(1+1e-9) {
		v.Right = true
		return v
	}
	reach := p.Tolerance
	if p.Tolerance == 0 {
		reach = 0.5 // counts are whole
	}
	best := math.Inf(1)
	for _, m := range p.Mistakes {
		if off := math.Abs(x - m.Figure); off <= reach*(1+1e-9) && off < best {
			best, v.Mistake, v.How = off, m.Name, m.How
		}
	}
	return v
}

// String gives the verdict in a line or two.
func (v Verdict) String() string {
	switch {
	case v.Unread != "":
		return "not read: " + v.Unread
	case v.Right:
		return "right"
	case v.Mistake != "":
		return "not right: " + v.Mistake + ". " + v.How
	}
	much := "too much"
	if v.OffBy < 0 {
		much = "too little"
	}
	return fmt.Sprintf("not right: %.*f %s %s", v.decimals, math.Abs(v.OffBy), v.Unit, much)
}

// read returns an answer in the unit of the problem.
func (p Problem) read(answer string) (float64, error) {
	answer = strings.TrimSpace(answer)
	if answer == "" {
		return 0, fmt.Errorf("there is no answer; write it as \"%s\"", p.blank())
	}
	x, unit, err := figure.Split(answer)
	switch {
	case err != nil:
		return 0, err
	case unit == "":
		return 0, fmt.Errorf("%q has no unit; write it as \"%s %s\"", answer, answer, p.Unit)
	}
	switch p.Unit {
	case "% vol":
		if p.Kind == Reading {
			return onTheScale(x, unit)
		}
		s, err := figure.StrengthIn(x, unit)
		if err != nil {
			return 0, plain(err)
		}
		return s.ABV(), nil
	case "proof":
		s, err := figure.StrengthIn(x, unit)
		if err != nil {
			return 0, plain(err)
		}
		return s.USProof(), nil
	case proofGallonUnit:
		switch strings.ToLower(strings.Join(strings.Fields(unit), " ")) {
		case "proof gallons", "proof gallon", "proof gal", "pg":
			return x, nil
		}
		return 0, fmt.Errorf("%q does not fit; want proof gallons", unit)
	case "bottles":
		if unit != "bottles" && unit != "bottle" {
			return 0, fmt.Errorf("%q does not fit; want bottles", unit)
		}
		if x != math.Trunc(x) {
			return 0, fmt.Errorf("%q is no whole number; only full bottles count", answer)
		}
		return x, nil
	case pureUnit:
		switch strings.ToLower(unit) {
		case "lpa", "la":
			return x, nil
		}
		unit = without(unit, "of pure alcohol", "pure alcohol", "of alcohol")
		return figure.Convert(x, unit, "L")
	}
	return figure.Convert(x, without(unit, "of water", "water", "of spirit", "spirit", "of blend"), p.Unit)
}

// onTheScale takes what an alcoholometer shows: a figure of its scale is no strength and is not converted.
func onTheScale(x float64, unit string) (float64, error) {
	switch strings.ToLower(strings.Join(strings.Fields(unit), "")) {
	case "%vol", "%", "vol%", "%abv":
		return x, nil
	}
	return 0, fmt.Errorf("%q does not fit; want what the scale shows, in %% vol", unit)
}

func without(unit string, endings ...string) string {
	for _, e := range endings {
		if s, found := strings.CutSuffix(unit, " "+e); found {
			return strings.TrimSpace(s)
		}
	}
	return unit
}

// plain takes the name of our own function from an error.
func plain(err error) error {
	if i := strings.Index(err.Error(), ": "); i > 0 && strings.HasPrefix(err.Error(), "alcoholometry.") {
		return errors.New(err.Error()[i+2:])
	}
	return err
}

// blank is the form of an answer.
func (p Problem) blank() string { return "… " + p.Unit }
