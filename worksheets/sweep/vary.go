package sweep

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"swanneck/worksheets/entry"
	"swanneck/worksheets/figure"
	"swanneck/worksheets/inputs"
)

// variation is what an input runs through: values one by one, or a range.
type variation struct {
	in     entry.Input
	words  []string // of a list: the values as they are written
	ranged bool
	low    float64 // in the range's unit, as the next two
	high   float64
	step   float64 // 0: the range has none
	unit   string  // as it is written
}

// parseVary reads "name=values". Values are a list, set apart by semicolons: "30; 40; 50 %vol", whose last unit is that of
// all that have none; or a range with its step: "30..60/5 %vol"; or a range: "30..60 %vol".
func parseVary(set *inputs.Set, text string) (variation, error) {
	name, values, ok := strings.Cut(text, "=")
	if !ok {
		return variation{}, fmt.Errorf("%q: want name=values, as \"pot strength=30..60/5 %%vol\" or \"still=pot; column\"", text)
	}
	in, err := set.Named(name)
	if err != nil {
		return variation{}, err
	}
	v := variation{in: in}
	if column(in, true).Figures && strings.Contains(values, "..") {
		err = v.readRange(values)
	} else {
		err = v.readList(values)
	}
	if err != nil {
		return v, fmt.Errorf("%s: %w", in.Name, err)
	}
	return v, nil
}

func (v *variation) readList(values string) error {
	for _, w := range strings.Split(values, ";") {
		if w = strings.TrimSpace(w); w == "" {
			return errors.New("an empty value stands between two semicolons or at an end; want values set apart by semicolons, as \"30; 40; 50 %vol\"")
		}
		v.words = append(v.words, w)
	}
	if len(v.words) < 2 {
		if column(v.in, true).Figures {
			return fmt.Errorf("%q is one value, which does not vary; set values apart by semicolons, as \"30; 40; 50 %%vol\", or give one value by --set", v.words[0])
		}
		return fmt.Errorf("%q is one value, which does not vary; set values apart by semicolons, or give one value by --set", v.words[0])
	}
	if !column(v.in, true).Figures {
		return nil
	}
	_, unit, err := figure.Split(v.words[len(v.words)-1])
	if err != nil {
		return err
	}
	for i, w := range v.words {
		_, own, err := figure.Split(w)
		if err != nil {
			return err
		}
		if own == "" && unit != "" {
			v.words[i] = w + " " + unit
		}
	}
	return nil
}

func (v *variation) readRange(values string) error {
	before, behind, _ := strings.Cut(values, "..")
	low, lowUnit, err := figure.Split(before)
	if err != nil {
		return err
	}
	high, rest, err := figure.Split(behind)
	if err != nil {
		return err
	}
	unit, step := rest, 0.0
	if s, ok := strings.CutPrefix(rest, "/"); ok {
		if step, unit, err = figure.Split(s); err != nil {
			return err
		}
		if step <= 0 {
			return fmt.Errorf("a step of %v; want one above zero", step)
		}
	}
	if lowUnit != "" && plain(lowUnit) != plain(unit) {
		return fmt.Errorf("%q has two units; want it once, at the end, as \"30..60/5 %%vol\"", strings.TrimSpace(values))
	}
	if low >= high {
		return fmt.Errorf("the range runs from %v to %v; want the lower end first", low, high)
	}
	v.ranged, v.low, v.high, v.step, v.unit = true, low, high, step, unit
	return nil
}

// at writes a figure (in the range's unit) as it is given to cells.
func (v *variation) at(x float64) string {
	return strings.TrimSpace(strconv.FormatFloat(x, 'f', -1, 64) + " " + v.unit)
}

// stops returns how many values a range has with its step. An end that the step does not reach is refused.
func (v *variation) stops() (float64, error) {
	if v.step == 0 {
		return 0, fmt.Errorf("%s: a range without a step, as \"%s..%s\"; give one, as \"%s..%s/%s\", or have points drawn by --latin",
			v.in.Name, number(v.low), number(v.high), number(v.low), number(v.high), number(tidy((v.high-v.low)/4)))
	}
	n := math.Round((v.high - v.low) / v.step)
	if math.Abs(v.low+n*v.step-v.high) > 1e-9*math.Max(math.Abs(v.high), v.step) {
		whole := math.Floor((v.high - v.low) / v.step)
		if whole == 0 {
			return 0, fmt.Errorf("%s: a step of %s is more than the range from %s to %s", v.in.Name, number(v.step), number(v.low), number(v.high))
		}
		return 0, fmt.Errorf("%s: steps of %s from %s do not end at %s; want %s or %s as the end", v.in.Name, number(v.step), number(v.low),
			number(v.high), number(tidy(v.low+whole*v.step)), number(tidy(v.low+(whole+1)*v.step)))
	}
	return n + 1, nil
}

// count returns how many values there are.
func (v *variation) count() (float64, error) {
	if v.ranged {
		return v.stops()
	}
	return float64(len(v.words)), nil
}

// values reads all values, and refuses those that do not fit or stand there twice.
func (v *variation) values(folder string) ([]Value, error) {
	words := v.words
	if v.ranged {
		n, err := v.stops()
		if err != nil {
			return nil, err
		}
		for i := range int(n) {
			words = append(words, v.at(tidy(v.low+float64(i)*v.step)))
		}
	}
	out := make([]Value, len(words))
	at := map[string]int{}
	for i, w := range words {
		x, err := read(v.in, w, folder)
		if err != nil {
			return nil, err
		}
		key := column(v.in, true).say(x)
		if first, twice := at[key]; twice {
			return nil, fmt.Errorf("%s: %s and %s are one value; want each once", v.in.Name, words[first], w)
		}
		at[key], out[i] = i, x
	}
	return out, nil
}
