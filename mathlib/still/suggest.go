package still

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// CutLimits says what the hearts are to keep to. Everything unset asks for nothing.
type CutLimits struct {
	HeadsUnder []CongenerLimit        // the hearts begin where all of these have fallen under their limits
	TailsOver  []CongenerLimit        // and end where one of these rises over its limit
	TailsAt    alcoholometry.Strength // or where what runs falls to this strength
}

// CongenerLimit is how much of a compound there may be in what runs.
type CongenerLimit struct {
	Name string
	Most quantity.Concentration
}

// Suggestion is a run parted by limits: a starting point for the nose, not a rule.
type Suggestion struct {
	Heads, Hearts, Tails Cut // Heads and Tails have an unset Spirit where the limits leave none
	Words                []string
}

// notARule stands on every suggestion.
const notARule = "a starting point for the nose, not a rule"

// String gives the suggestion in one line.
func (s Suggestion) String() string {
	var parts []string
	for _, c := range []struct {
		name string
		cut  Cut
	}{{"heads", s.Heads}, {"hearts", s.Hearts}, {"tails", s.Tails}} {
		if c.cut.Spirit.Strength.IsSet() {
			parts = append(parts, fmt.Sprintf("%s %s L at %v", c.name, quantity.Figure(c.cut.Spirit.VolumeL), c.cut.Spirit.Strength))
		}
	}
	return strings.Join(parts, ", ") + " (" + notARule + ")"
}

// Rows gives the suggestion as a table, each row a label, a figure and a unit.
func (s Suggestion) Rows() [][]string {
	var rows [][]string
	for _, c := range []struct {
		name string
		cut  Cut
	}{{"heads", s.Heads}, {"hearts", s.Hearts}, {"tails", s.Tails}} {
		if !c.cut.Spirit.Strength.IsSet() {
			rows = append(rows, []string{c.name, "none", ""})
			continue
		}
		rows = append(rows,
			[]string{c.name, quantity.Figure(c.cut.Spirit.VolumeL), "L"},
			[]string{c.name + ", strength", fmt.Sprintf("%.1f", c.cut.Spirit.Strength.ABV()), "% vol"},
			[]string{c.name + ", share of the charge's alcohol", fmt.Sprintf("%.1f", c.cut.YieldPct), "%"})
	}
	for _, w := range s.Words {
		rows = append(rows, []string{"note", w, ""})
	}
	return append(rows, []string{"this is", notARule, ""})
}

// SuggestCuts parts a run by limits. Its words say what limited it, what the hearts still hold, and where cutting cannot
// help. It fails with a *NeverError where a head compound never falls under its limit, and where the tails would begin
// before the heads end; a tail compound that stays under its limit ends nothing.
func SuggestCuts(r Run, limits CutLimits) (Suggestion, error) {
	const fn = "still.SuggestCuts"
	if len(r.Steps) == 0 {
		return Suggestion{}, inputf(fn, "there is no run; Distil makes one")
	}
	var s Suggestion
	begin, beginsAt, err := s.heads(fn, &r, limits)
	if err != nil {
		return Suggestion{}, err
	}
	end, endsAt, err := s.tails(fn, &r, limits, begin)
	if err != nil {
		return Suggestion{}, err
	}
	if begin.at >= end.at {
		return Suggestion{}, inputf(fn, "the tails would begin (%s) before the heads end (%s); loosen one of the limits", endsAt, beginsAt)
	}
	if begin.at > 0 {
		if s.Heads, err = r.between(fn, place{}, begin, "the start", beginsAt); err != nil {
			return Suggestion{}, err
		}
	}
	if s.Hearts, err = r.between(fn, begin, end, beginsAt, endsAt); err != nil {
		return Suggestion{}, err
	}
	if end != r.end() {
		if s.Tails, err = r.between(fn, end, r.end(), endsAt, "the end"); err != nil {
			return Suggestion{}, err
		}
	}
	for k := range r.Congeners {
		if w := r.helps(k); !w.Helps {
			s.Words = append(s.Words, w.String())
		}
	}
	return s, nil
}

// heads returns where all of the limits for the heads are kept.
func (s *Suggestion) heads(function string, r *Run, limits CutLimits) (begin place, at string, err error) {
	at = AtStart().String()
	for _, l := range limits.HeadsUnder {
		m := UnderLimit(l.Name, l.Most)
		p, err := r.find(function, m, place{})
		var never *NeverError
		switch {
		case errors.As(err, &never) && never.Already:
			s.Words = append(s.Words, fmt.Sprintf("%s is under %v from the start", l.Name, l.Most))
		case err != nil:
			return place{}, "", err
		case p.at > begin.at:
			begin, at = p, m.String()
		}
	}
	return begin, at, nil
}

// tails returns where the first of the limits for the tails is passed.
func (s *Suggestion) tails(function string, r *Run, limits CutLimits, begin place) (end place, at string, err error) {
	end, at = r.end(), AtEnd().String()
	var marks []Mark
	for _, l := range limits.TailsOver {
		marks = append(marks, OverLimit(l.Name, l.Most))
	}
	if limits.TailsAt.IsSet() {
		marks = append(marks, AtStrength(limits.TailsAt))
	}
	for _, m := range marks {
		p, err := r.find(function, m, begin)
		var never *NeverError
		switch {
		case errors.As(err, &never) && !never.Already:
			s.Words = append(s.Words, fmt.Sprintf("the run ends before %v", m))
		case err != nil:
			return place{}, "", err
		case p.at < end.at:
			end, at = p, m.String()
		}
	}
	return end, at, nil
}

// Parting says whether cutting a run can lower a compound.
type Parting struct {
	Name     string
	Helps    bool
	WholeGHL float64 // in all of the distillate, grams to the hectolitre of pure alcohol
	BestGHL  float64 // in the half of the alcohol, taken in one piece, that holds least of it
}

// String says it in one line.
func (p Parting) String() string {
	if p.Helps {
		return fmt.Sprintf("%s can be cut away: the best half of the alcohol, in one piece, holds %s g/hL of pure alcohol of it, all together %s", p.Name, threeDigits(p.BestGHL), threeDigits(p.WholeGHL))
	}
	return fmt.Sprintf("cutting does not help against %s: it comes over throughout, and even the best half of the alcohol holds %s g/hL of pure alcohol of it, all together %s; only another charge or a column made for it does", p.Name, threeDigits(p.BestGHL), threeDigits(p.WholeGHL))
}

// partsBelow is the share of the whole's concentration below which the best half must lie for cutting to count as a help,
// dimensionless. Own choice.
const partsBelow = 0.7

// CanCut returns whether cutting the run can lower a compound to the pure alcohol, by the half of the alcohol, in one piece,
// that holds least of it. It panics with a *compound.UnknownError or a *NotCarriedError.
func (r Run) CanCut(name string) Parting {
	_, k, err := carried("still.Run.CanCut", name, r.names())
	if err != nil {
		panic(err)
	}
	return r.helps(k)
}

func (r *Run) helps(k int) Parting {
	p := Parting{Name: r.Congeners[k].Name}
	whole := pureLitresOf(flow{}, r.flowTo(r.end()))
	p.WholeGHL = 100 * r.traceTo(r.end(), k) / whole
	p.BestGHL = p.WholeGHL
	n := r.last()
	pure, gram := make([]float64, n+1), make([]float64, n+1)
	for i := range pure {
		at := place{at: float64(i)}
		pure[i], gram[i] = pureLitresOf(flow{}, r.flowTo(at)), r.traceTo(at, k)
	}
	for i, j := 0, 0; j <= n; i++ {
		for j <= n && pure[j]-pure[i] < whole/2 {
			j++
		}
		if j <= n {
			p.BestGHL = math.Min(p.BestGHL, 100*(gram[j]-gram[i])/(pure[j]-pure[i]))
		}
	}
	p.Helps = p.BestGHL < partsBelow*p.WholeGHL
	return p
}
