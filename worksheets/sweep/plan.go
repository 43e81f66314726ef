package sweep

import (
	"errors"
	"fmt"
	"math"

	"swanneck/worksheets/inputs"
)

// Design says how the scenarios of a plan were chosen.
type Design string

// The designs.
const (
	Grid  Design = "grid"  // every combination of the values
	Latin Design = "latin" // points drawn so that each range is covered evenly
	List  Design = "list"  // the rows of a table
)

// Plan is what goes into a sweep.
type Plan struct {
	Design    Design
	Columns   []Column // the inputs that vary, then those that are given and do not
	Scenarios [][]Value
	Counts    []int // of a grid: how many values each input that varies has
}

// NewGrid returns every combination of values, the last input changing fastest. set holds what is given and does not vary.
// vary are texts as "pot strength=30..60/5 %vol" or "still=pot; column". More scenarios than most are refused. Tables are
// read from folder.
func NewGrid(set *inputs.Set, vary []string, folder string, most int) (*Plan, error) {
	list, err := parseAll(set, vary)
	if err != nil {
		return nil, err
	}
	n := 1.0
	for i := range list {
		k, err := list[i].count()
		if err != nil {
			return nil, err
		}
		n *= k
	}
	if err := few(n, most); err != nil {
		return nil, err
	}
	p := &Plan{Design: Grid, Scenarios: [][]Value{nil}}
	for i := range list {
		values, err := list[i].values(folder)
		if err != nil {
			return nil, err
		}
		p.Columns = append(p.Columns, column(list[i].in, true))
		p.Counts = append(p.Counts, len(values))
		var next [][]Value
		for _, s := range p.Scenarios {
			for _, v := range values {
				next = append(next, append(s[:len(s):len(s)], v))
			}
		}
		p.Scenarios = next
	}
	return p, p.fix(set)
}

// parseAll reads what is to vary, and refuses an input that stands there twice or is given too.
func parseAll(set *inputs.Set, vary []string) ([]variation, error) {
	if len(vary) == 0 {
		return nil, errors.New("nothing varies")
	}
	var list []variation
	seen := map[string]bool{}
	given := set.Values()
	for _, text := range vary {
		v, err := parseVary(set, text)
		if err != nil {
			return nil, err
		}
		if seen[v.in.Name] {
			return nil, fmt.Errorf("%s: it is varied twice", v.in.Name)
		}
		if _, both := given[v.in.Name]; both {
			return nil, fmt.Errorf("%s: it is varied, and given one value too", v.in.Name)
		}
		seen[v.in.Name] = true
		list = append(list, v)
	}
	return list, nil
}

// few refuses too many scenarios (dimensionless count).
func few(n float64, most int) error {
	if n > float64(most) {
		return fmt.Errorf("these are %s scenarios, and at most %d are run; if you mean it, say --most %s", number(n), most, number(math.Min(n, math.MaxInt32)))
	}
	return nil
}

// fix adds what is given and does not vary.
func (p *Plan) fix(set *inputs.Set) error {
	given := set.Values()
	for i, row := range set.Rows() {
		in := set.Asked[i]
		text, ok := given[in.Name]
		if !ok {
			continue
		}
		v, err := valueOf(in, text, row.Value)
		if err != nil {
			return err
		}
		p.Columns = append(p.Columns, column(in, false))
		for k, s := range p.Scenarios {
			p.Scenarios[k] = append(s[:len(s):len(s)], v)
		}
	}
	return nil
}

// inputs is what the cells of scenario k, from 0, get.
func (p *Plan) inputs(k int) map[string]string {
	out := map[string]string{}
	for i, v := range p.Scenarios[k] {
		out[p.Columns[i].Name] = v.text
	}
	return out
}
