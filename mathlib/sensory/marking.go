package sensory

import (
	"fmt"
	"strings"
)

// Mark compares the tasters' answers with a plan's key, in the order of the tasters. An answer is the code of the odd glass
// (triangle), of the glass like the reference (duo-trio), or the codes of the two glasses that belong together (tetrad),
// set apart by a space. A paired comparison has no right answer until you say which sample was to be chosen: see
// CountVotes.
//
// It fails for a missing answer, and for a code that the taster did not get.
func Mark(p ServingPlan, answers []string) (Answers, error) {
	const fn = "sensory.Mark"
	if p.ranking || p.method == Paired {
		return Answers{}, fmt.Errorf("%s: a %s has no right answer; take CountVotes for a paired comparison and RanksFrom for a ranking", fn, p.What)
	}
	wanted := 1
	if p.method == Tetrad {
		wanted = 2
	}
	chosen, err := p.read(fn, answers, wanted)
	if err != nil {
		return Answers{}, err
	}
	a := Answers{Method: p.method, Tasters: len(p.Glasses)}
	for i, glasses := range p.Glasses {
		if p.right(glasses, chosen[i]) {
			a.Right++
		} else {
			a.Wrong++
		}
	}
	return a, nil
}

func (p ServingPlan) right(glasses []Glass, chosen []int) bool {
	sample := glasses[chosen[0]].Sample
	switch p.method {
	case Tetrad:
		return sample == glasses[chosen[1]].Sample
	case DuoTrio:
		return sample == glasses[0].Sample
	}
	same := 0
	for _, g := range glasses {
		if g.Sample == sample {
			same++
		}
	}
	return same == 1
}

// CountVotes counts which sample of a paired comparison each taster chose. An answer is a code, or "-" for undecided. It
// fails for a missing answer, and for a code that the taster did not get.
func CountVotes(p ServingPlan, answers []string) (Votes, error) {
	const fn = "sensory.CountVotes"
	if p.ranking || p.method != Paired {
		return Votes{}, fmt.Errorf("%s: the plan is for a %s; votes are counted in a paired comparison", fn, p.What)
	}
	v := Votes{First: p.For.Samples[0].Name, Second: p.For.Samples[1].Name, Tasters: len(p.Glasses)}
	decided := append([]string(nil), answers...)
	for i, a := range answers {
		if strings.TrimSpace(a) == "-" && i < len(p.Glasses) {
			v.Undecided++
			decided[i] = p.Glasses[i][0].Code // any: it is not counted
		}
	}
	chosen, err := p.read(fn, decided, 1)
	if err != nil {
		return Votes{}, err
	}
	for i, glasses := range p.Glasses {
		switch {
		case strings.TrimSpace(answers[i]) == "-":
		case glasses[chosen[i][0]].Sample == v.First:
			v.ForFirst++
		default:
			v.ForSecond++
		}
	}
	return v, nil
}

// RanksFrom turns the answers of a ranking into ranks. An answer is all codes of the taster, the best (or the strongest)
// first, set apart by spaces; codes of samples that are level are joined by "=", as "314=271 577". It fails for a missing
// answer, for a code that the taster did not get, and for one that is missing or comes twice.
func RanksFrom(p ServingPlan, answers []string) (Ranking, error) {
	const fn = "sensory.RanksFrom"
	if !p.ranking {
		return Ranking{}, fmt.Errorf("%s: the plan is for a %s; ranks come from a ranking", fn, p.What)
	}
	plain := make([]string, len(answers))
	groups := make([][]int, len(answers)) // how many samples are level in each place
	for i, a := range answers {
		for _, group := range strings.Fields(strings.ReplaceAll(strings.ReplaceAll(a, " =", "="), "= ", "=")) {
			level := strings.Split(group, "=")
			groups[i] = append(groups[i], len(level))
			for _, code := range level {
				if code == "" {
					return Ranking{}, fmt.Errorf("%s: taster %d answered %q; join two codes that are level by one =, as 314=271", fn, i+1, a)
				}
			}
			plain[i] += " " + strings.Join(level, " ")
		}
	}
	k := len(p.For.Samples)
	chosen, err := p.read(fn, plain, k)
	if err != nil {
		return Ranking{}, err
	}
	r := Ranking{Tasters: len(p.Glasses)}
	column := map[string]int{}
	for j, s := range p.For.Samples {
		r.Samples = append(r.Samples, s.Name)
		column[s.Name] = j
	}
	for i, glasses := range p.Glasses {
		row := make([]float64, k)
		at := 0
		for _, n := range groups[i] {
			for _, g := range chosen[i][at : at+n] {
				row[column[glasses[g].Sample]] = float64(2*at+n+1) / 2
			}
			at += n
		}
		r.Ranks = append(r.Ranks, row)
	}
	return r, nil
}

// read finds the glasses that the answers name: wanted codes of each taster, none twice.
func (p ServingPlan) read(fn string, answers []string, wanted int) ([][]int, error) {
	if len(p.Glasses) == 0 {
		return nil, fmt.Errorf("%s: there is no plan; make one with PlanDifference or PlanRanking", fn)
	}
	if len(answers) != len(p.Glasses) {
		return nil, fmt.Errorf("%s: %d answers from %d tasters; give one for each taster, in their order", fn, len(answers), len(p.Glasses))
	}
	var out [][]int
	for i, answer := range answers {
		codes := strings.Fields(answer)
		if len(codes) == 0 {
			return nil, fmt.Errorf("%s: taster %d gave no answer; whoever cannot decide must guess, or leave the panel", fn, i+1)
		}
		if len(codes) != wanted {
			return nil, fmt.Errorf("%s: taster %d answered %q; give %d of the codes %s", fn, i+1, answer, wanted, p.codes(i))
		}
		var chosen []int
		seen := map[int]bool{}
		for _, code := range codes {
			at := -1
			for j, g := range p.Glasses[i] {
				if g.Code == code && code != "R" {
					at = j
				}
			}
			if at < 0 {
				return nil, fmt.Errorf("%s: taster %d answered %q, which is none of the codes %s", fn, i+1, code, p.codes(i))
			}
			if seen[at] {
				return nil, fmt.Errorf("%s: taster %d named %s twice", fn, i+1, code)
			}
			seen[at] = true
			chosen = append(chosen, at)
		}
		out = append(out, chosen)
	}
	return out, nil
}

// codes lists what a taster may answer.
func (p ServingPlan) codes(taster int) string {
	var out []string
	for _, g := range p.Glasses[taster] {
		if g.Code != "R" {
			out = append(out, g.Code)
		}
	}
	return strings.Join(out, ", ")
}
