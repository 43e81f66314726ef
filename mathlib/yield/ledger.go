package yield

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Passage is one stage as it was measured: what went in and what came of it.
type Passage struct {
	Kind   Kind
	Name   string                 // its own, if there are several of a kind; the kind if empty
	In     []alcoholometry.Spirit // what went in: what the stage before gave on, and what was added
	Out    []alcoholometry.Spirit // what it gave on
	Kept   []alcoholometry.Spirit // what was set aside for another time, such as heads and tails for the next run
	Thrown []alcoholometry.Spirit // what was thrown away on purpose and measured, such as heads

	LeastPct float64 // the loss you expect at least, per cent of what goes in; with MostPct 0 too, that of UsualLoss
	MostPct  float64 // the loss you expect at most, per cent likewise
}

// Verdict says how a loss compares with what was expected.
type Verdict string

// The verdicts on a loss.
const (
	Within     Verdict = "within"
	MoreLost   Verdict = "more than expected"
	LessLost   Verdict = "less than expected"
	MoreOut    Verdict = "more came out than went in"
	NothingOut Verdict = "nothing came out"
)

// StageAccount is the pure alcohol of a stage.
type StageAccount struct {
	Name     string
	Kind     Kind
	BetweenL float64 // given on by the stage before and not gone in here, L of pure alcohol; below 0 if more went in
	InL      float64 // L of pure alcohol
	OutL     float64 // L of pure alcohol
	KeptL    float64 // L of pure alcohol
	ThrownL  float64 // L of pure alcohol
	LossL    float64 // what went in and was found nowhere, L of pure alcohol
	LossPct  float64 // of InL
	YieldPct float64 // OutL over InL, per cent
	Expected LossRange
	Verdict  Verdict
}

// Account is the pure alcohol of all stages, from the first to the last. InL = OutL + KeptL + ThrownL + LossL + BetweenL.
type Account struct {
	Stages   []StageAccount
	InL      float64 // into the first stage, L of pure alcohol
	OutL     float64 // out of the last stage, L of pure alcohol
	KeptL    float64 // in all stages, L of pure alcohol
	ThrownL  float64 // in all stages, L of pure alcohol
	LossL    float64 // in all stages, L of pure alcohol
	BetweenL float64 // between all stages, L of pure alcohol; below 0 if more came in than was given on
	YieldPct float64 // OutL over InL, per cent
	Findings []string
}

// tolL is how much pure alcohol counts as none, L for each L: more than rounding, less than any measurement.
const tolL = 1e-9

// AccountOf adds up the passages in their order and names what is out of the ordinary: losses outside what is expected, more
// alcohol coming out than went in, and alcohol that one stage gave on and the next did not take in. It fails for a passage
// of no known kind, with nothing going in, or with a spirit that has no strength or a negative volume.
//
// Source: none; it adds litres of pure alcohol. The expected losses are those of UsualLoss unless the passage has its own.
func AccountOf(passages ...Passage) (Account, error) {
	const fn = "yield.AccountOf"
	if len(passages) == 0 {
		return Account{}, fmt.Errorf("%s: there are no stages; give at least one", fn)
	}
	var a Account
	for i, p := range passages {
		s, err := p.account(fn, i)
		if err != nil {
			return Account{}, err
		}
		if i == 0 {
			a.InL = s.InL
		} else {
			before := a.Stages[i-1]
			s.BetweenL = before.OutL - s.InL
			if d := s.BetweenL; d > tolL*before.OutL || -d > tolL*before.OutL {
				a.Findings = append(a.Findings, between(before, s))
			}
		}
		if s.Verdict != Within {
			a.Findings = append(a.Findings, s.finding())
		}
		a.KeptL += s.KeptL
		a.ThrownL += s.ThrownL
		a.LossL += s.LossL
		a.BetweenL += s.BetweenL
		a.OutL = s.OutL
		a.Stages = append(a.Stages, s)
	}
	a.YieldPct = 100 * a.OutL / a.InL
	return a, nil
}

func (p Passage) account(function string, i int) (StageAccount, error) {
	expected, err := p.expected(function)
	if err != nil {
		return StageAccount{}, err
	}
	s := StageAccount{Name: p.Name, Kind: p.Kind, Expected: expected}
	if s.Name == "" {
		s.Name = string(p.Kind)
	}
	for _, c := range []struct {
		what    string
		spirits []alcoholometry.Spirit
		sum     *float64
	}{{"in", p.In, &s.InL}, {"out", p.Out, &s.OutL}, {"kept", p.Kept, &s.KeptL}, {"thrown away", p.Thrown, &s.ThrownL}} {
		for k, x := range c.spirits {
			if err := alcoholometry.CheckSet(function, fmt.Sprintf("the strength of spirit %d %s in %s", k+1, c.what, s.Name), x.Strength); err != nil {
				return StageAccount{}, err
			}
			if err := alcoholometry.CheckSpirit(function, x); err != nil {
				return StageAccount{}, fmt.Errorf("%w (%s, %s)", err, s.Name, c.what)
			}
			*c.sum += x.PureL()
		}
	}
	if s.InL == 0 {
		return StageAccount{}, fmt.Errorf("%s: no alcohol goes into stage %d, %s; give what went in", function, i+1, s.Name)
	}
	s.LossL = s.InL - s.OutL - s.KeptL - s.ThrownL
	s.LossPct = 100 * s.LossL / s.InL
	s.YieldPct = 100 * s.OutL / s.InL
	switch {
	case s.LossL < -tolL*s.InL:
		s.Verdict = MoreOut
	case s.OutL == 0:
		s.Verdict = NothingOut
	case s.LossPct > expected.MostPct:
		s.Verdict = MoreLost
	case s.LossPct < expected.LeastPct:
		s.Verdict = LessLost
	default:
		s.Verdict = Within
	}
	return s, nil
}

func (p Passage) expected(function string) (LossRange, error) {
	r, err := UsualLoss(p.Kind)
	if err != nil {
		return LossRange{}, unknown(function, p.Kind)
	}
	if p.LeastPct == 0 && p.MostPct == 0 {
		return r, nil
	}
	if err := pct(function, "the greatest loss expected", p.MostPct); err != nil {
		return LossRange{}, err
	}
	if err := quantity.CheckRange(function, "the least loss expected", p.LeastPct, 0, p.MostPct, "per cent", "the greatest"); err != nil {
		return LossRange{}, err
	}
	return LossRange{Kind: p.Kind, LeastPct: p.LeastPct, MostPct: p.MostPct, Source: "yours", Note: r.Note}, nil
}

func between(before, s StageAccount) string {
	if s.BetweenL < 0 {
		return fmt.Sprintf("%s L of pure alcohol more went into %s than %s gave on", quantity.Figure(-s.BetweenL), s.Name, before.Name)
	}
	return fmt.Sprintf("%s L of pure alcohol that %s gave on did not go into %s", quantity.Figure(s.BetweenL), before.Name, s.Name)
}

func (s StageAccount) finding() string {
	switch s.Verdict {
	case MoreOut:
		return fmt.Sprintf("%s: %s L of pure alcohol more came out than went in; check the readings", s.Name, quantity.Figure(-s.LossL))
	case NothingOut:
		return fmt.Sprintf("%s: nothing came out", s.Name)
	}
	return fmt.Sprintf("%s lost %.2f %% of the pure alcohol, %s (%g to %g %%, %s)", s.Name, s.LossPct, s.Verdict, s.Expected.LeastPct, s.Expected.MostPct, s.Expected.Source)
}

// String gives the stage in one line.
func (s StageAccount) String() string {
	return fmt.Sprintf("%s: in %s, out %s, kept %s, thrown away %s, lost %s L of pure alcohol (%.2f %%, %s)", s.Name, quantity.Figure(s.InL),
		quantity.Figure(s.OutL), quantity.Figure(s.KeptL), quantity.Figure(s.ThrownL), quantity.Figure(s.LossL), s.LossPct, s.Verdict)
}

// String gives the account in one line.
func (a Account) String() string {
	return fmt.Sprintf("%s of %s L of pure alcohol (%.2f %%); kept %s, thrown away %s, lost %s, between stages %s L; %d findings", quantity.Figure(a.OutL),
		quantity.Figure(a.InL), a.YieldPct, quantity.Figure(a.KeptL), quantity.Figure(a.ThrownL), quantity.Figure(a.LossL), quantity.Figure(a.BetweenL), len(a.Findings))
}

// Rows gives the account as a table: a row a stage, litres of pure alcohol, then the whole, then the findings.
func (a Account) Rows() [][]string {
	rows := [][]string{{"L of pure alcohol", "in", "out", "kept", "thrown away", "lost", "lost, %", "expected, %", ""}}
	for _, s := range a.Stages {
		rows = append(rows, []string{s.Name, quantity.Figure(s.InL), quantity.Figure(s.OutL), quantity.Figure(s.KeptL), quantity.Figure(s.ThrownL), quantity.Figure(s.LossL),
			fmt.Sprintf("%.2f", s.LossPct), fmt.Sprintf("%g to %g (%s)", s.Expected.LeastPct, s.Expected.MostPct, s.Expected.Source), string(s.Verdict)})
	}
	rows = append(rows, []string{"whole", quantity.Figure(a.InL), quantity.Figure(a.OutL), quantity.Figure(a.KeptL), quantity.Figure(a.ThrownL), quantity.Figure(a.LossL),
		fmt.Sprintf("%.2f", 100*a.LossL/a.InL), "", fmt.Sprintf("yield %.2f %%", a.YieldPct)})
	for _, f := range a.Findings {
		rows = append(rows, []string{f})
	}
	return rows
}
