package packing

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

func ml(litres float64) string { return fmt.Sprintf("%.1f", 1000*litres) }
func pct(share float64) string { return fmt.Sprintf("%.2f", 100*share) }

// yes writes a verdict.
func yes(ok bool, is, isNot string) string {
	if ok {
		return is
	}
	return isNot
}

// String gives the filling in one line.
func (f Filling) String() string {
	return fmt.Sprintf("%s mL at %v, %.1f g on the balance (%.1f g with the bottle), for %s mL at %v",
		ml(f.VolumeL), f.Bottle.Temp, 1000*f.NetKg, 1000*f.GrossKg, ml(f.ContentsL), f.Bottle.MarkedAt)
}

// Rows gives the filling as a table, each row a label, a figure and a unit.
func (f Filling) Rows() [][]string {
	return [][]string{
		{fmt.Sprintf("contents at %v", f.Bottle.MarkedAt), ml(f.ContentsL), "mL"},
		{fmt.Sprintf("to fill at %v", f.Bottle.Temp), ml(f.VolumeL), "mL"},
		{"weight on the balance, without the bottle", fmt.Sprintf("%.1f", 1000*f.NetKg), "g"},
		{"weight on the balance, with the bottle", fmt.Sprintf("%.1f", 1000*f.GrossKg), "g"},
		{"true mass of the spirit", fmt.Sprintf("%.1f", 1000*f.MassKg), "g"},
	}
}

// String gives the head space in one line.
func (h HeadSpace) String() string {
	full := "not full up to 40 °C"
	if h.FillsUp {
		full = fmt.Sprintf("full at %v", h.FullAt)
	}
	return fmt.Sprintf("%s mL (%.1f %%) of head space when closed, %s mL (%.1f %%) at %v; %s", ml(h.ClosedL), h.ClosedPct, ml(h.WarmL), h.WarmPct, h.Closed.Warmest, full)
}

// Rows gives the head space as a table, each row a label, a figure and a unit.
func (h HeadSpace) Rows() [][]string {
	rows := [][]string{
		{fmt.Sprintf("head space when closed, %v", h.Closed.Temp), ml(h.ClosedL), "mL"},
		{"of what the bottle holds", fmt.Sprintf("%.1f", h.ClosedPct), "%"},
		{fmt.Sprintf("head space at %v", h.Closed.Warmest), ml(h.WarmL), "mL"},
		{"of what the bottle holds", fmt.Sprintf("%.1f", h.WarmPct), "%"},
		{fmt.Sprintf("enough for %s %%", plain(h.Closed.LeastPct)), yes(h.Enough, "yes", "no"), ""},
		{"a bottle must hold, at 20 °C", ml(h.BrimNeededL), "mL"},
	}
	if h.FillsUp {
		rows = append(rows, []string{"spirit fills the bottle at", fmt.Sprintf("%.1f", h.FullAt.C()), "°C"})
	}
	if h.MisleadingUS {
		rows = append(rows, []string{fmt.Sprintf("more head space than 27 CFR 5.202(b) allows (%s %%)", plain(USHeadSpacePct)), "yes", ""})
	}
	return rows
}

// String gives the bottles in one line.
func (b Bottles) String() string {
	return fmt.Sprintf("%d bottles with %s L of pure alcohol, %s L left over, %s L filled beyond the label", b.Bottles, quantity.Figure(b.PureL), quantity.Figure(b.LeftOverL), quantity.Figure(b.GivenAwayL))
}

// Rows gives the bottles as a table, each row a label, a figure and a unit.
func (b Bottles) Rows() [][]string {
	rows := [][]string{{"full bottles", fmt.Sprint(b.Bottles), ""}}
	if b.Run.PerCase > 0 {
		rows = append(rows, []string{fmt.Sprintf("cases of %d", b.Run.PerCase), fmt.Sprint(b.Cases), ""}, []string{"loose bottles", fmt.Sprint(b.Loose), ""})
	}
	return append(rows,
		[]string{fmt.Sprintf("left over, %v", b.Run.Tank.Temp), quantity.Figure(b.LeftOverL), "L"},
		[]string{"filled beyond the label", quantity.Figure(b.GivenAwayL), "L"},
		[]string{"pure alcohol in the bottles, 20 °C", quantity.Figure(b.PureL), "L"})
}

// String gives the target in one line.
func (f FillTarget) String() string {
	return fmt.Sprintf("fill %.1f mL on the average for %s mL, with a standard deviation of %s mL", f.TargetML, ml(f.NominalL), plain(f.SpreadML))
}

// Rows gives the target as a table, each row a label, a figure and a unit.
func (f FillTarget) Rows() [][]string {
	return [][]string{
		{"tolerable negative error", fmt.Sprintf("%.1f", f.TolerableML), "mL"},
		{"average for the nominal volume", fmt.Sprintf("%.1f", f.ByMeanML), "mL"},
		{"average for 1 in 40 beyond the tolerable error", fmt.Sprintf("%.1f", f.ByErrorML), "mL"},
		{"average for 1 in 10 000 beyond twice that", fmt.Sprintf("%.1f", f.ByTwiceML), "mL"},
		{"least average to set", fmt.Sprintf("%.1f", f.TargetML), "mL"},
	}
}

// String gives the verdict in one line.
func (v Verdict) String() string {
	return fmt.Sprintf("%s: mean %.2f mL of at least %.2f mL, %d of %d short by more than %s mL, %d by more than twice that",
		yes(v.Passed, "passed", "not passed"), v.MeanML, v.LeastMeanML, v.Defective, v.Looked, plain(v.TolerableML), v.Twice)
}

// Rows gives the verdict as a table, each row a label, a figure and a unit.
func (v Verdict) Rows() [][]string {
	return [][]string{
		{fmt.Sprintf("mean of %d", v.MeanOf), fmt.Sprintf("%.2f", v.MeanML), "mL"},
		{"standard deviation", fmt.Sprintf("%.2f", v.SpreadML), "mL"},
		{fmt.Sprintf("least mean, k = %.3f", v.FactorK), fmt.Sprintf("%.2f", v.LeastMeanML), "mL"},
		{"mean", yes(v.MeanOK, "accepted", "refused"), ""},
		{fmt.Sprintf("short by more than %s mL, of %d", plain(v.TolerableML), v.Looked), fmt.Sprint(v.Defective), "bottles"},
		{"contents (" + v.Check.Plan.Source + ")", yes(v.ContentsOK, "accepted", "refused"), ""},
		{"short by more than twice that, not for sale", fmt.Sprint(v.Twice), "bottles"},
		{"reference test", yes(v.Passed, "passed", "not passed"), ""},
	}
}

// String gives the fill in one line.
func (u USFill) String() string {
	return fmt.Sprintf("%d of %d beyond ± %s %%; %d over, %d under (chance of so uneven a split %.2f)", u.Outside, u.Bottles, plain(u.TolerancePct), u.Over, u.Under, u.EvenChance)
}

// Rows gives the fill as a table, each row a label, a figure and a unit.
func (u USFill) Rows() [][]string {
	return [][]string{
		{"bottles measured", fmt.Sprint(u.Bottles), ""},
		{fmt.Sprintf("beyond ± %s %%", plain(u.TolerancePct)), fmt.Sprint(u.Outside), "bottles"},
		{"overfilled", fmt.Sprint(u.Over), "bottles"},
		{"underfilled", fmt.Sprint(u.Under), "bottles"},
		{"chance of so uneven a split", pct(u.EvenChance), "%"},
		{"mean deviation", fmt.Sprintf("%+.2f", u.MeanPct), "%"},
		{"largest deviation", fmt.Sprintf("%+.2f", u.WorstPct), "%"},
	}
}

// String gives the answer in one line.
func (s Size) String() string {
	if s.Warning != "" {
		return s.Warning
	}
	return fmt.Sprintf("%s mL is allowed by %s (%s)", plain(s.NominalML), s.List.Name, s.List.Date)
}

// String gives the list in one line.
func (s Sizes) String() string {
	out := s.Name + " (" + s.Date + "):"
	for _, x := range s.ListML {
		out += " " + plain(x)
	}
	return out + " mL"
}

// String gives the chance in one line.
func (c LabelChance) String() string {
	return fmt.Sprintf("%.2f %% vol measured for %s %% vol ± %s: within with a chance of %s %%", c.MeasuredABV, plain(c.Label.LabelABV), plain(c.Label.Rule.PlusMinusABV), pct(c.Within))
}

// Rows gives the chance as a table, each row a label, a figure and a unit.
func (c LabelChance) Rows() [][]string {
	rows := [][]string{
		{fmt.Sprintf("measured, at %v", c.Label.Rule.MeasuredAt), fmt.Sprintf("%.2f", c.MeasuredABV), "% vol"},
		{"label", plain(c.Label.LabelABV) + " ± " + plain(c.Label.Rule.PlusMinusABV), "% vol"},
		{"chance of being within", pct(c.Within), "%"},
		{"chance of being below", pct(c.Below), "%"},
		{"chance of being above", pct(c.Above), "%"},
	}
	if c.MarginOK {
		rows = append(rows, []string{"measured within this of the label for 95 %", fmt.Sprintf("%.2f", c.MarginABV), "% vol"})
	} else {
		rows = append(rows, []string{"the uncertainty is too large for 95 %", "", ""})
	}
	if c.Warning != "" {
		rows = append(rows, []string{c.Warning, "", ""})
	}
	return append(rows, []string{"rule: " + c.Label.Rule.Name, c.Label.Rule.Source, ""})
}

// String gives the outcome in one line.
func (o Outcome) String() string {
	return fmt.Sprintf("accepted with a chance of %s %%, drawing %.1f on the average", pct(o.Accept), o.Sampled)
}
