package botanical

// Estimate is a figure with what is known of its range. A side that the readings do not bound is not given: HasLow or
// HasHigh is then false, and that is the answer.
type Estimate struct {
	What            string
	Value           float64 // in the unit that Unit names
	Low, High       float64 // ends of the range, in the same unit
	HasLow, HasHigh bool
	Unit            string
	Notes           []string
}

// Range returns both ends, in Unit, for a field that takes a range. It panics with an *InputError where one end is not
// known.
func (e Estimate) Range() Range {
	if !e.HasLow || !e.HasHigh {
		panic(inputf("botanical.Estimate.Range", "one end is not known: %v; take more readings, or give a range of your own", e))
	}
	return Between(e.Low, e.High)
}

// String gives the figure in one line: with its range, or one-sided where only one end is known.
func (e Estimate) String() string {
	unit := ""
	if e.Unit != "" {
		unit = " " + e.Unit
	}
	switch {
	case e.HasLow && e.HasHigh:
		return sprintf("%s: %s (%s to %s)%s", e.What, threeDigits(e.Value), threeDigits(e.Low), threeDigits(e.High), unit)
	case e.HasLow:
		return sprintf("%s: at least %s%s; nothing bounds it above", e.What, threeDigits(e.Low), unit)
	case e.HasHigh:
		return sprintf("%s: at most %s%s; nothing bounds it below", e.What, threeDigits(e.High), unit)
	}
	return sprintf("%s: cannot tell", e.What)
}

// Rows gives the figure as a table, each row a label, a figure and a unit.
func (e Estimate) Rows() [][]string {
	rows := [][]string{}
	switch {
	case e.HasLow && e.HasHigh:
		rows = append(rows, []string{e.What, threeDigits(e.Value), e.Unit}, []string{e.What + ", from", threeDigits(e.Low), e.Unit}, []string{e.What + ", to", threeDigits(e.High), e.Unit})
	case e.HasLow:
		rows = append(rows, []string{e.What + ", at least", threeDigits(e.Low), e.Unit})
	case e.HasHigh:
		rows = append(rows, []string{e.What + ", at most", threeDigits(e.High), e.Unit})
	default:
		rows = append(rows, []string{e.What, "cannot tell", ""})
	}
	for _, n := range e.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}
