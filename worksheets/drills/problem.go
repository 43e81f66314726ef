package drills

import (
	"fmt"
	"math"
	"strconv"
)

// Problem is a drill: what is asked, the answer and how it is found.
type Problem struct {
	Kind     Kind
	Seed     int64
	Number   int // in a set, from 1; 0 if it stands alone
	Title    string
	Text     string // the situation
	Question string
	Unit     string // in which the answer is given: the unit of the problem

	Answer    float64   // in the unit of the problem
	Tolerance float64   // how far an answer may be off and be right, in the unit of the problem; 0 for a count
	Decimals  int       // to which the answer is written
	Why       string    // why the tolerance is what it is
	Steps     []Step    // the worked solution
	Mistakes  []Mistake // the usual ones, each at least two tolerances away from the answer
}

// draft is a problem before it is known whether it can be set.
type draft struct {
	text, question, unit string
	decimals             int
	answer               float64 // in unit
	least                float64 // the tolerance that a trainer gives at least, in unit; 0 for a count
	solve                func(*slate) float64
	wrong                []Mistake
}

// drawsAtMost bounds the search for a problem that can be set. Of 5,000 seeds a kind, the longest search took 120 draws (for
// bottles, where rounding must not change the count), and most take one.
const drawsAtMost = 2000

// New returns the problem of a seed and a kind; the empty kind stands for any. It fails for a kind that there is not.
//
// Figures are drawn until the problem is fit to be set: every wrong route that makes the kind worth asking leads at
// least two tolerances away from the answer.
func New(seed int64, kind Kind) (Problem, error) {
	named, err := Named(string(kind))
	if err != nil {
		return Problem{}, fmt.Errorf("drills.New: there is no kind %q; Kinds lists them", string(kind))
	}
	if kind = named; kind == "" {
		kind = kinds[newChance(seed, "kind").r.IntN(len(kinds))].kind
	}
	for _, k := range kinds {
		if k.kind != kind {
			continue
		}
		c := newChance(seed, string(kind))
		for range drawsAtMost {
			if p, fit := k.draw(c).set(); fit {
				p.Kind, p.Seed, p.Title = kind, seed, k.title
				return p, nil
			}
		}
	}
	return Problem{}, fmt.Errorf("drills.New: seed %d gives no problem of the kind %q in %d draws; take another seed", seed, kind, drawsAtMost)
}

// set works the solution and makes a problem of the draft, if it is fit to be set.
func (d draft) set() (p Problem, fit bool) {
	w := work(d.solve, d.answer)
	p = Problem{Text: d.text, Question: d.question, Unit: d.unit, Answer: d.answer, Decimals: d.decimals, Steps: w.steps}
	if d.least == 0 {
		return d.setCount(p, w)
	}
	p.Tolerance = roundUp(max(d.least, w.worst))
	p.Why = fmt.Sprintf("Rounding in the tables and on the way can move the answer by up to %s %s. ±%s %s counts as right, so that good tables of other print and a reading to the nearest mark do too.",
		figures(w.worst), p.Unit, figures(p.Tolerance), p.Unit)
	wrong := append(d.wrong, spare(decimalPoint, d.answer/10))
	if p.Unit != "% vol" && p.Unit != "proof" { // ten times a strength is none
		wrong = append(wrong, spare(decimalPoint, d.answer*10))
	}
	p.Mistakes, fit = told(wrong, p.Answer, p.Tolerance)
	return p, fit
}

// setCount is set for a whole number: the steps lead to it before its fraction is cut off, and no rounding may change it.
func (d draft) setCount(p Problem, w worked) (Problem, bool) {
	p.Why = "The answer is a whole number, and the figures are such that rounding in the tables does not change it: it is right or it is not."
	part := d.answer - math.Floor(d.answer)
	if part < 2*w.worst || part > 1-2*w.worst {
		return p, false
	}
	p.Answer = math.Floor(d.answer)
	for i, m := range d.wrong {
		d.wrong[i].Figure = math.Floor(m.Figure)
	}
	var fit bool
	p.Mistakes, fit = told(d.wrong, p.Answer, 0)
	return p, fit
}

// roundUp returns the next figure that is easy to say, in the unit of x.
func roundUp(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, m := range []float64{1, 1.5, 2, 3, 4, 5, 6, 8} {
		if x <= m*power*(1+1e-9) {
			return easy(m * power)
		}
	}
	return easy(10 * power)
}

func easy(x float64) float64 {
	y, err := strconv.ParseFloat(figures(x), 64)
	if err != nil {
		panic(err) // a number that was just written
	}
	return y
}

// figures writes a small amount to two digits.
func figures(x float64) string {
	y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 2, 64), 64)
	if err != nil {
		panic(err) // a number that was just written
	}
	return strconv.FormatFloat(y, 'f', -1, 64)
}

// Figure writes a figure in the unit of the problem as an answer is written, with its unit.
func (p Problem) Figure(x float64) string {
	return strconv.FormatFloat(x, 'f', p.Decimals, 64) + " " + p.Unit
}
