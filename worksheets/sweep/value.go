package sweep

import (
	"fmt"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"swanneck/worksheets/entry"
	"swanneck/worksheets/inputs"
)

// Column is an input of a plan.
type Column struct {
	Name    string `json:"name"`
	Unit    string `json:"unit,omitempty"` // of the figures; empty for words
	Figures bool   `json:"figures"`        // numbers stand in it, not words
	Varied  bool   `json:"varied"`         // it is not the same in every scenario
}

// Value is an input of a scenario.
type Value struct {
	Figure float64 // dimensionless here: in the column's unit, to 12 digits where it was given in another
	Word   string  // of a column of words

	text string // what cells get
}

func column(in entry.Input, varied bool) Column {
	switch in.Kind {
	case entry.Number, entry.Strength, entry.Temperature, entry.Pressure:
		return Column{Name: in.Name, Unit: in.Unit, Figures: true, Varied: varied}
	}
	return Column{Name: in.Name, Varied: varied}
}

// read reads what is given for an input, or says why it does not fit. Tables are given by a CSV file, from folder.
func read(in entry.Input, text, folder string) (Value, error) {
	set := inputs.NewSet([]entry.Input{in})
	if err := set.Give(in.Name, text, folder); err != nil {
		return Value{}, err
	}
	return valueOf(in, set.Values()[in.Name], set.Rows()[0].Value)
}

// valueOf returns a value that fits. word is how a person reads it.
func valueOf(in entry.Input, text, word string) (Value, error) {
	if !utf8.ValidString(text + word) {
		return Value{}, fmt.Errorf("%s: the text is not UTF-8", in.Name)
	}
	v := Value{text: text, Word: word}
	read, err := in.Read(text)
	if err != nil {
		return Value{}, err
	}
	switch in.Kind {
	case entry.Number:
		v.Figure = read.Figure
	case entry.Strength:
		v.Figure = read.Strength.ABV()
	case entry.Temperature:
		v.Figure = read.Temp.C()
	case entry.Pressure:
		v.Figure = read.Pressure.KPa()
	case entry.Choice, entry.Text:
		v.Word = read.Text
	case entry.YesNo:
		v.Word = map[bool]string{true: "yes", false: "no"}[read.Yes]
	case entry.Date:
		v.Word = read.Date.Format(time.DateOnly)
	}
	if column(in, false).Figures {
		v.Word, v.Figure = "", tidy(v.Figure)
	}
	return v, nil
}

// tidy takes off what a conversion of units leaves behind the twelfth digit.
func tidy(x float64) float64 {
	y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', 11, 64), 64)
	if err != nil { // beyond the largest number, by a rounding
		return x
	}
	return y
}

// say writes a value with its unit.
func (c Column) say(v Value) string {
	if !c.Figures {
		return v.Word
	}
	if c.Unit == "1" {
		return number(v.Figure)
	}
	return number(v.Figure) + " " + c.Unit
}

// plain is how names are compared.
func plain(name string) string { return strings.ToLower(strings.Join(strings.Fields(name), " ")) }
