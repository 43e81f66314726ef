package cellapi

import (
	"regexp"

	"swanneck/worksheets/drills"
)

// DrillProblem is a proofing problem. It shows what is asked; the answer and the way to it come when they are asked for,
// by Check and Solution. Drill makes one.
type DrillProblem struct{ p drills.Problem }

// Drill returns the proofing problem of a seed and a kind, as in Drill(7, "water"): a situation in an invented still house,
// with a question. The kind "" or "any" draws one; DrillKinds lists them. The same seed and kind give the same problem.
// A kind that there is not stops the cell.
func Drill(seed int64, kind string) DrillProblem {
	p, err := problem(seed, kind)
	if err != nil {
		panic(&Stop{"Drill: " + withoutFunctions(err)})
	}
	return DrillProblem{p}
}

func problem(seed int64, kind string) (drills.Problem, error) {
	k, err := drills.Named(kind)
	if err != nil {
		return drills.Problem{}, err
	}
	return drills.New(seed, k)
}

// DrillSet returns a set of count problems from one seed, from 1 to 200, of one kind, or with "" or "any" of all kinds in
// the order in which a course takes them.
func DrillSet(seed int64, count int, kind string) []DrillProblem {
	k, err := drills.Named(kind)
	if err != nil {
		panic(&Stop{"DrillSet: " + withoutFunctions(err)})
	}
	set, err := drills.NewSet(seed, count, k)
	if err != nil {
		panic(&Stop{"DrillSet: " + withoutFunctions(err)})
	}
	out := make([]DrillProblem, len(set.Problems))
	for i, p := range set.Problems {
		out[i] = DrillProblem{p}
	}
	return out
}

// DrillKinds lists the kinds of problems.
func DrillKinds() []string {
	var out []string
	for _, k := range drills.Kinds() {
		out = append(out, string(k))
	}
	return out
}

// ownFunctions matches the names of functions in errors of the packages behind.
var ownFunctions = regexp.MustCompile(`\b(drills|walltable|alcoholometry|mixing|quantity)\.[A-Za-z.]+: `)

func withoutFunctions(err error) string { return ownFunctions.ReplaceAllString(err.Error(), "") }

func (d DrillProblem) made(method string) drills.Problem {
	if d.p.Kind == "" {
		panic(&Stop{"DrillProblem." + method + ": this problem was not made by Drill or DrillSet"})
	}
	return d.p
}

// Kind is the kind of the problem.
func (d DrillProblem) Kind() string { return string(d.made("Kind").Kind) }

// Unit is the unit in which the answer is given.
func (d DrillProblem) Unit() string { return d.made("Unit").Unit }

// Check reads an answer with its unit, such as "252 kg" or "43,1 %vol", and says whether it is right, which of the usual
// mistakes leads to it, or by how much it is off.
func (d DrillProblem) Check(answer string) DrillVerdict {
	return DrillVerdict{d.made("Check").Check(answer)}
}

// Solution returns the worked solution: the steps with what is looked up in the tables, the answer with its tolerance, and
// what the usual mistakes give.
func (d DrillProblem) Solution() DrillSolution { return DrillSolution{d.made("Solution")} }

// String returns the problem as text, without its answer.
func (d DrillProblem) String() string {
	if d.p.Kind == "" {
		return "no drill"
	}
	return d.p.String()
}

// HTML returns the problem as HTML, without its answer.
func (d DrillProblem) HTML() string {
	if d.p.Kind == "" {
		return "<p>no drill</p>"
	}
	return d.p.HTML()
}

// DrillVerdict is what an answer is worth.
type DrillVerdict struct{ v drills.Verdict }

// Right says whether the answer is right, within the tolerance of the problem.
func (v DrillVerdict) Right() bool { return v.v.Right }

// Mistake names the usual mistake that leads to the answer; "" if none does.
func (v DrillVerdict) Mistake() string { return v.v.Mistake }

// Read says whether the answer could be read: a number with a unit that fits.
func (v DrillVerdict) Read() bool { return v.v.Unit != "" && v.v.Unread == "" }

// OffBy returns by how much the answer is above the right one, in the unit of the problem. An answer that could not be read
// stops the cell.
func (v DrillVerdict) OffBy() float64 {
	if !v.Read() {
		panic(&Stop{"DrillVerdict.OffBy: the answer was not read: " + v.v.Unread})
	}
	return v.v.OffBy
}

// String returns the verdict in a line.
func (v DrillVerdict) String() string { return v.v.String() }

// DrillSolution is the worked solution of a problem.
type DrillSolution struct{ p drills.Problem }

// String returns the solution as text.
func (s DrillSolution) String() string { return s.p.Solution() }

// HTML returns the solution as HTML.
func (s DrillSolution) HTML() string { return s.p.SolutionHTML() }
