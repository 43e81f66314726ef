package louche

import (
	"fmt"
	"strings"

	"swanneck/mathlib/internal/datafile"
)

// HazeSigns are answers to questions about a hazy spirit: "yes", "no", or "" for not looked at.
type HazeSigns struct {
	ClearsWarm       string // clear when warmed to 25 to 30 °C, and hazy again when cold?
	ClearsWithSpirit string // clear when a tenth of neutral spirit is added?
	Flocs            string // flocs or threads rather than an even veil?
	WhiteSediment    string // a fine white sediment after some days?
	HardWater        string // reduced with tap or well water, and the haze came days later?
	ClearsWithAcid   string // clear when a drop of vinegar or citric acid goes into a glass of it?
	Needles          string // sparkling needles or plates that melt at about 21 °C?
}

// Haze is what a haze can be.
type Haze struct {
	Found   string   // the one haze that the answers leave; empty if they leave several or none
	Left    []string // the hazes that the answers leave
	Ask     string   // the question that would part them best; empty if none would
	Advice  string   // what is usually done about Found
	Answers int      // how many questions were answered
}

type hazeRow struct {
	name   string
	signs  [len(questions)]byte // 'y', 'n' or ' '
	advice string
}

// questions are the columns of the data file, with their words, in the order of HazeSigns.
var questions = [...]struct{ column, words string }{
	{"clears_warm", "does it clear at 25 to 30 °C and come back in the cold?"},
	{"clears_with_spirit", "does a tenth of neutral spirit clear it?"},
	{"flocs", "are there flocs or threads rather than an even veil?"},
	{"white_sediment", "does a fine white sediment settle in some days?"},
	{"hard_water", "was it reduced with tap or well water, and did the haze come days later?"},
	{"clears_with_acid", "does a drop of vinegar or citric acid clear it?"},
	{"needles", "are there sparkling needles that melt at about 21 °C?"},
}

func readHaze(r datafile.Row) hazeRow {
	h := hazeRow{name: r.Text("haze"), advice: r.Text("advice")}
	for i, q := range questions {
		switch s := r.Text(q.column); s {
		case "y", "n":
			h.signs[i] = s[0]
		case "":
			h.signs[i] = ' '
		default:
			r.Fail("%s is %q; it must be y, n or empty", q.column, s)
		}
	}
	return h
}

// WhichHaze tells from a few questions what a haze is: oil, fatty esters, plant wax, hard water or crystals of anethole. A haze is
// named only if at least two answers were given and every other one is ruled out.
//
// Common practice, no source. No model takes part.
func WhichHaze(signs HazeSigns) (Haze, error) {
	const fn = "louche.WhichHaze"
	var given [len(questions)]byte
	var r Haze
	for i, s := range []string{signs.ClearsWarm, signs.ClearsWithSpirit, signs.Flocs, signs.WhiteSediment, signs.HardWater, signs.ClearsWithAcid, signs.Needles} {
		switch strings.ToLower(strings.TrimSpace(s)) {
		case "":
			given[i] = ' '
			continue
		case "yes":
			given[i] = 'y'
		case "no":
			given[i] = 'n'
		default:
			return Haze{}, fmt.Errorf("%s: the answer to %q is %q; it must be yes, no or empty", fn, questions[i].words, s)
		}
		r.Answers++
	}
	var left []hazeRow
	for _, h := range embedded().hazes {
		fits := true
		for i, s := range h.signs {
			fits = fits && (s == ' ' || given[i] == ' ' || s == given[i])
		}
		if fits {
			left = append(left, h)
			r.Left = append(r.Left, h.name)
		}
	}
	if len(left) == 1 && r.Answers >= 2 {
		r.Found, r.Advice = left[0].name, left[0].advice
		return r, nil
	}
	// The best question splits what is left most evenly.
	best := 0
	for i, q := range questions {
		yes, no := 0, 0
		for _, h := range left {
			switch h.signs[i] {
			case 'y':
				yes++
			case 'n':
				no++
			}
		}
		if given[i] == ' ' && min(yes, no) > best {
			best, r.Ask = min(yes, no), q.words
		}
	}
	if r.Ask == "" && len(left) == 1 {
		for i, q := range questions { // one is left after a single answer: ask for a second sign of it
			if given[i] == ' ' && left[0].signs[i] == 'y' {
				r.Ask = q.words
				break
			}
		}
	}
	return r, nil
}

// String gives the answer in one line.
func (h Haze) String() string {
	switch {
	case h.Found != "":
		return h.Found + ": " + h.Advice
	case len(h.Left) == 0:
		return "cannot tell: no haze fits all answers; look again, and send a sample to a laboratory"
	case h.Ask == "":
		return "cannot tell " + strings.Join(h.Left, ", ") + " apart by these questions; send a sample to a laboratory"
	}
	return "cannot tell yet (" + strings.Join(h.Left, ", ") + "): " + h.Ask
}

// Rows gives the answer, each row a label and a text.
func (h Haze) Rows() [][]string {
	rows := [][]string{{"haze", h.Found, ""}}
	if h.Found == "" {
		rows = [][]string{{"haze", "cannot tell", ""}, {"still possible", strings.Join(h.Left, ", "), ""}, {"to ask next", h.Ask, ""}}
	} else {
		rows = append(rows, []string{"usually done (common practice, no source)", h.Advice, ""})
	}
	return rows
}
