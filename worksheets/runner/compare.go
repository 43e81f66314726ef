package runner

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"swanneck/kernel/display"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/results"
)

// withoutTolerance is how far a result without a tolerance may differ, as a share of its size (dimensionless): far less
// than anyone reads, and more than another order of roundings makes.
const withoutTolerance = 1e-9

// declaredIn is a result and where it is.
type declaredIn struct {
	display.ResultData
	cell  int             // from 1, code cells only
	shown display.Bundle  // what was shown of it; nil: not known
	key   nameOfOneResult // for a name that was declared twice
}

type nameOfOneResult struct {
	name string
	n    int
}

// shows is what the code cells of an executed notebook show.
type shows struct {
	results []declaredIn
	cells   []cellShows // by number less one
	stopped int         // number of the cell that did not succeed; 0: all did
}

type cellShows struct {
	others  []notebook.Output // but results and failures
	failure *notebook.Output
}

// showsOf sorts the outputs of a notebook. An error says that a result cannot be read.
func showsOf(n *notebook.Notebook) (*shows, error) {
	s := &shows{}
	times := map[string]int{}
	for _, c := range n.Cells {
		if c.Type != notebook.Code {
			continue
		}
		var cs cellShows
		for _, o := range c.Outputs {
			switch v, isResult := o.Data[display.Result]; {
			case isResult:
				d, ok := declared(v)
				if !ok || d.Version != 1 {
					return nil, fmt.Errorf("has a result in cell %d that cannot be read; want %s of version 1", len(s.cells)+1, display.Result)
				}
				s.results = append(s.results, declaredIn{d, len(s.cells) + 1, display.Bundle(o.Data), nameOfOneResult{d.Name, times[d.Name]}})
				times[d.Name]++
			case o.Type == notebook.Error:
				cs.failure = &o
				if s.stopped == 0 {
					s.stopped = len(s.cells) + 1
				}
			default:
				cs.others = append(cs.others, o)
			}
		}
		s.cells = append(s.cells, cs)
	}
	return s, nil
}

// everyCell is a last cell that is behind all.
const everyCell = math.MaxInt

// compareResults says what differs between the results of two runs, up to a last cell.
func compareResults(then, now *shows, last int) []Difference {
	var out []Difference
	found := map[nameOfOneResult]bool{}
	for _, a := range then.results {
		at := slices.IndexFunc(now.results, func(b declaredIn) bool { return b.key == a.key })
		switch {
		case a.cell > last:
		case at < 0:
			out = append(out, Difference{a.cell, fmt.Sprintf("result %q is missing: %s %s then", a.Name, results.WithPlusMinus(a.ResultData), a.Unit), nil})
		default:
			for _, what := range compareResult(a, now.results[at].ResultData) {
				out = append(out, Difference{a.cell, fmt.Sprintf("result %q: %s", a.Name, what), nil})
			}
		}
		found[a.key] = true
	}
	for _, b := range now.results {
		if !found[b.key] && b.cell <= last {
			out = append(out, Difference{b.cell, fmt.Sprintf("result %q is new: %s %s now", b.Name, results.WithPlusMinus(b.ResultData), b.Unit), nil})
		}
	}
	return out
}

func compareResult(a declaredIn, b display.ResultData) []string {
	if a.Unit != b.Unit {
		return []string{fmt.Sprintf("%s %s then, %s %s now: another unit", results.WithPlusMinus(a.ResultData), a.Unit, results.WithPlusMinus(b), b.Unit)}
	}
	var out []string
	within := min(a.Within, b.Within) // the tighter one, and none is the tightest
	switch {
	case !near(a.Value, b.Value, within):
		out = append(out, apart(a.Value, b.Value, a.Figure, b.Figure, a.Unit)+": "+byHowMuch(b.Value-a.Value, a.Unit)+"; "+tolerance(within, a.Unit))
	case !printedNear(a.Figure, b.Value, within):
		out = append(out, fmt.Sprintf("%s %s was printed then, %s %s is now; the value is the same", a.Figure, a.Unit, b.Figure, b.Unit))
	}
	if !near(a.PlusMinus, b.PlusMinus, within) {
		out = append(out, "its ± "+apart(a.PlusMinus, b.PlusMinus, results.PlusMinus(a.ResultData), results.PlusMinus(b), a.Unit))
	}
	if a.Note != b.Note {
		out = append(out, fmt.Sprintf("its note was %q, is %q", a.Note, b.Note))
	}
	if a.shown != nil { // what a person reads must be what is stored
		right := results.Bundle(a.ResultData)
		for _, mime := range []string{display.Plain, display.HTML} {
			if a.shown[mime] != right[mime] {
				was, is := excerpts(fmt.Sprint(a.shown[mime]), fmt.Sprint(right[mime]))
				return append(out, fmt.Sprintf("what the notebook shows of it, %s, is not what it holds, %s", was, is))
			}
		}
	}
	return out
}

// printedNear says whether a figure, as it was printed, is a value within its tolerance and the rounding of its last digit.
func printedNear(figure string, value, within float64) bool {
	x, err := strconv.ParseFloat(figure, 64)
	if err != nil {
		return false
	}
	mantissa, exponent, _ := strings.Cut(figure, "e")
	_, decimals, _ := strings.Cut(mantissa, ".")
	power, _ := strconv.Atoi(exponent)
	lastDigit := math.Pow(10, float64(power-len(decimals)))
	return math.Abs(x-value) <= within+0.5*lastDigit*(1+1e-9)+withoutTolerance*math.Abs(value)
}

// near says whether two figures are the same within a tolerance; 0 is none.
func near(a, b, within float64) bool {
	size := max(math.Abs(a), math.Abs(b))
	if within == 0 {
		return math.Abs(b-a) <= withoutTolerance*size
	}
	return math.Abs(b-a) <= within+1e-12*size // the difference of 0.4 and 0.3 is not 0.1 to the last bit
}

// apart writes two figures as printed, or with all their digits if they would look the same.
func apart(a, b float64, figureA, figureB, unit string) string {
	if figureA == figureB {
		figureA, figureB = strconv.FormatFloat(a, 'g', -1, 64), strconv.FormatFloat(b, 'g', -1, 64)
	}
	if figureA == "" {
		figureA = "0"
	}
	if figureB == "" {
		figureB = "0"
	}
	return fmt.Sprintf("%s %s then, %s %s now", figureA, unit, figureB, unit)
}

func byHowMuch(by float64, unit string) string {
	direction := "more"
	if by < 0 {
		direction = "less"
	}
	return fmt.Sprintf("%s %s %s", strconv.FormatFloat(math.Abs(by), 'g', 3, 64), unit, direction)
}

func tolerance(within float64, unit string) string {
	if within == 0 {
		return fmt.Sprintf("no tolerance is declared (Within), so %g of it is allowed", withoutTolerance)
	}
	return fmt.Sprintf("tolerance %s %s", strconv.FormatFloat(within, 'g', -1, 64), unit)
}

// compareOthers says what differs between the outputs of a cell, results and failures apart.
func compareOthers(cell int, then, now []notebook.Output) []Difference {
	var out []Difference
	for i := range max(len(then), len(now)) {
		which := ""
		if max(len(then), len(now)) > 1 {
			which = fmt.Sprintf("output %d, ", i+1)
		}
		switch {
		case i >= len(then):
			out = append(out, Difference{cell, which + kindOf(now[i]) + " is new", nil})
		case i >= len(now):
			out = append(out, Difference{cell, which + kindOf(then[i]) + " is missing", nil})
		default:
			if what, more := compareOutput(then[i], now[i]); what != "" {
				out = append(out, Difference{cell, which + what, more})
			}
		}
	}
	return out
}

// kindOf says in a word or two what an output is.
func kindOf(o notebook.Output) string {
	switch {
	case o.Type == notebook.Stream && o.Name == "stderr":
		return "what is printed as an error"
	case o.Type == notebook.Stream:
		return "what is printed"
	case slices.ContainsFunc(keys(o.Data), picture):
		return "chart"
	case o.Data[display.HTML] != nil:
		return "table"
	}
	return "value"
}

func picture(mime string) bool { return strings.HasPrefix(mime, "image/") }

func keys(b notebook.Bundle) []string {
	var out []string
	for k := range b {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

// compareOutput says what differs between two outputs in the same place: charts by their bytes, text after normal.
func compareOutput(a, b notebook.Output) (what string, more []string) {
	if kindOf(a) != kindOf(b) {
		return fmt.Sprintf("%s then, %s now", kindOf(a), kindOf(b)), nil
	}
	if a.Type == notebook.Stream {
		if d := textDifference(a.Text, b.Text); d != nil {
			return kindOf(a) + " differs in " + d[0], d[1:]
		}
		return "", nil
	}
	mimes := keys(a.Data)
	for _, m := range keys(b.Data) {
		if !slices.Contains(mimes, m) {
			mimes = append(mimes, m)
		}
	}
	slices.SortStableFunc(mimes, func(x, y string) int { return strings.Compare(order(x), order(y)) })
	for _, m := range mimes {
		va, inA := a.Data[m]
		vb, inB := b.Data[m]
		ta, textA := va.(string)
		tb, textB := vb.(string)
		switch {
		case inA != inB:
			return fmt.Sprintf("%s differs: %s is there in one of the runs only", kindOf(a), m), nil
		case picture(m) || !textA || !textB:
			if asJSON(va) != asJSON(vb) {
				if picture(m) {
					return "chart differs", words(a, b)
				}
				return fmt.Sprintf("%s differs in %s", kindOf(a), m), nil
			}
		default:
			if d := textDifference(ta, tb); d != nil {
				return kindOf(a) + " differs in " + d[0], d[1:]
			}
		}
	}
	return "", nil
}

// order puts the form that says most to a person first.
func order(mime string) string {
	switch {
	case picture(mime):
		return "0" + mime
	case mime == display.Plain:
		return "1"
	case mime == display.HTML:
		return "2"
	}
	return "3" + mime
}

// words are those in which charts that differ describe themselves, if these differ too.
func words(a, b notebook.Output) []string {
	ta, _ := a.Data.Text(display.Plain)
	tb, _ := b.Data.Text(display.Plain)
	if d := textDifference(ta, tb); d != nil {
		return d[1:]
	}
	return nil
}

// asJSON writes content for comparison: keys sorted, numbers as they stand.
func asJSON(v any) string {
	b, err := json.Marshal(v)
	if err != nil {
		return fmt.Sprintf("%v", v)
	}
	return string(b)
}
