package sensory

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/internal/chance"
	"swanneck/mathlib/quantity"
)

// Sample is one of the spirits to be tasted.
type Sample struct {
	Name     string
	Strength alcoholometry.Strength // as it is served, after any dilution
}

// ServingFor says what is to be served to whom.
type ServingFor struct {
	Samples []Sample // two for a test of difference; two to twelve for a ranking
	Tasters int      // 1 to 500
	PourML  float64  // in each glass, mL; above 0, at most 100
	Seed    uint64   // the same seed gives the same plan
}

// Glass is one glass in front of a taster.
type Glass struct {
	Code   string // three digits, or "R" for the reference of a duo-trio test
	Sample string // what is in it: not for the taster's eyes
}

// ServingPlan is who gets what, in which order and under which code.
type ServingPlan struct {
	What       string // "triangle", "duo-trio", "tetrad", "paired comparison" or "ranking"
	For        ServingFor
	Glasses    [][]Glass // for each taster, in the order of serving
	DoseG      float64   // ethanol in the glasses of the taster who gets most, g
	DoseLeastG float64   // ethanol in the glasses of the taster who gets least, g
	Notes      []string  // what is not balanced, and cautions

	method  Method
	ranking bool
}

// orders are the serving orders of the tests of difference, each equally often in a balanced plan; the first glass of the
// duo-trio test is the reference.
//
// Source: ISO 4120, ISO 10399, ISO 5495; ASTM E3009 for the tetrad test; from memory.
var orders = map[Method][]string{
	Triangle: {"ABB", "BAB", "BBA", "AAB", "ABA", "BAA"},
	DuoTrio:  {"AAB", "ABA", "BAB", "BBA"},
	Tetrad:   {"AABB", "ABAB", "ABBA", "BBAA", "BABA", "BAAB"},
	Paired:   {"AB", "BA"},
}

// PlanDifference plans the serving of a test of difference between two samples: every order of the glasses as often as
// the others, in random order over the tasters, and a three-digit code for each glass. It fails for other than two
// samples, for a sample without a strength, and for a panel or a pour out of range.
func PlanDifference(m Method, f ServingFor) (ServingPlan, error) {
	const fn = "sensory.PlanDifference"
	if err := m.check(fn); err != nil {
		return ServingPlan{}, err
	}
	if err := f.check(fn, 2, 2); err != nil {
		return ServingPlan{}, err
	}
	p := ServingPlan{What: m.String(), For: f, method: m}
	c := chance.New(f.Seed)
	var rows [][]int
	for _, order := range orders[m] {
		var row []int
		for _, letter := range order {
			row = append(row, int(letter-'A'))
		}
		rows = append(rows, row)
	}
	p.serve(c, rows, m == DuoTrio)
	return p, nil
}

// PlanRanking plans the serving of a ranking of two to twelve samples: a Williams design, in which every sample stands in
// every place as often as the others, and follows every other sample as often, in random order over the tasters, with a
// three-digit code for each glass. It fails as PlanDifference does.
//
// Source: E. J. Williams, Australian Journal of Scientific Research A 2 (1949) 149–168.
func PlanRanking(f ServingFor) (ServingPlan, error) {
	const fn = "sensory.PlanRanking"
	if err := f.check(fn, 2, 12); err != nil {
		return ServingPlan{}, err
	}
	p := ServingPlan{What: "ranking", For: f, ranking: true}
	c := chance.New(f.Seed)
	// Which sample takes which letter of the design is left to chance.
	rows := williams(len(f.Samples))
	letter := make([]int, len(f.Samples))
	for i := range letter {
		letter[i] = i
	}
	c.Shuffle(len(letter), func(i, j int) { letter[i], letter[j] = letter[j], letter[i] })
	for _, row := range rows {
		for j := range row {
			row[j] = letter[row[j]]
		}
	}
	p.serve(c, rows, false)
	return p, nil
}

// williams returns orders of k samples balanced for place and for what goes before: k orders for an even k, 2k for an odd.
func williams(k int) [][]int {
	first := make([]int, k)
	for j := range first { // 0, 1, k-1, 2, k-2, ...
		if j%2 == 1 {
			first[j] = (j + 1) / 2
		} else {
			first[j] = (k - j/2) % k
		}
	}
	var rows [][]int
	for shift := range k {
		row := make([]int, k)
		for j := range row {
			row[j] = (first[j] + shift) % k
		}
		rows = append(rows, row)
	}
	if k%2 == 1 {
		for i := range k {
			back := make([]int, k)
			for j := range back {
				back[j] = rows[i][k-1-j]
			}
			rows = append(rows, back)
		}
	}
	return rows
}

func (f ServingFor) check(fn string, fewest, most int) error {
	if n := len(f.Samples); n < fewest || n > most {
		want := fmt.Sprintf("%d to %d", fewest, most)
		if fewest == most {
			want = strconv.Itoa(fewest)
		}
		return fmt.Errorf("%s: %d samples; give %s", fn, n, want)
	}
	seen := map[string]bool{}
	for i, s := range f.Samples {
		if strings.TrimSpace(s.Name) == "" || seen[s.Name] {
			return fmt.Errorf("%s: sample %d is called %q; give each a name of its own", fn, i+1, s.Name)
		}
		seen[s.Name] = true
		if err := alcoholometry.CheckSet(fn, "the strength of "+s.Name, s.Strength); err != nil {
			return err
		}
	}
	if err := quantity.CheckRange(fn, "the number of tasters", float64(f.Tasters), 1, 500, "", ""); err != nil {
		return err
	}
	if err := quantity.CheckRange(fn, "the pour", f.PourML, 0, 100, "mL", ""); err != nil {
		return err
	}
	if f.PourML == 0 {
		return fmt.Errorf("%s: the pour is 0 mL; give what goes into a glass", fn)
	}
	return nil
}

// serve hands the orders out, block by block, and codes the glasses.
func (p *ServingPlan) serve(c *chance.Source, rows [][]int, reference bool) {
	n := p.For.Tasters
	if n%len(rows) != 0 {
		p.Notes = append(p.Notes, fmt.Sprintf("not balanced: %d orders go evenly into %d tasters and into %d, not into %d",
			len(rows), max(n/len(rows), 1)*len(rows), (n/len(rows)+1)*len(rows), n))
	}
	codes := codes{chance: c}
	for len(p.Glasses) < n {
		block := append([][]int(nil), rows...)
		c.Shuffle(len(block), func(i, j int) { block[i], block[j] = block[j], block[i] })
		for _, row := range block[:min(len(block), n-len(p.Glasses))] {
			var glasses []Glass
			hand := codes.deal(len(row))
			if reference {
				hand[0] = "R"
			}
			for j, i := range row {
				glasses = append(glasses, Glass{Code: hand[j], Sample: p.For.Samples[i].Name})
			}
			p.Glasses = append(p.Glasses, glasses)
		}
	}
	p.dose()
}

// codes draws three-digit codes from a shuffled deck of 900. While one deck lasts for the whole plan no code comes up
// twice; where it does not, none comes up twice for one taster.
type codes struct {
	chance *chance.Source
	deck   []int
}

// deal returns the codes of the next taster.
func (k *codes) deal(glasses int) []string {
	if len(k.deck) < glasses {
		k.deck = make([]int, 900)
		for i := range k.deck {
			k.deck[i] = 100 + i
		}
		k.chance.Shuffle(len(k.deck), func(i, j int) { k.deck[i], k.deck[j] = k.deck[j], k.deck[i] })
	}
	var out []string
	for _, code := range k.deck[:glasses] {
		out = append(out, strconv.Itoa(code))
	}
	k.deck = k.deck[glasses:]
	return out
}

// dose works out the ethanol in front of a taster and words the caution.
func (p *ServingPlan) dose() {
	gram := map[string]float64{}
	for _, s := range p.For.Samples {
		spirit := alcoholometry.Spirit{VolumeL: p.For.PourML / 1000, Strength: s.Strength}
		gram[s.Name] = 1000 * spirit.MassKg() * s.Strength.ABW() / 100
	}
	p.DoseLeastG = math.Inf(1)
	for _, glasses := range p.Glasses {
		var g float64
		for _, glass := range glasses {
			g += gram[glass.Sample]
		}
		p.DoseG, p.DoseLeastG = math.Max(p.DoseG, g), math.Min(p.DoseLeastG, g)
	}
	p.Notes = append(p.Notes, caution(p.DoseG))
}

// standardDrinkG is the ethanol in a standard drink, g, as the World Health Organization counts it; from memory.
const standardDrinkG = 10

func caution(doseG float64) string {
	if doseG == 0 {
		return "no alcohol is served"
	}
	s := fmt.Sprintf("up to %.1f g of ethanol a taster if it is swallowed, %.1f standard drinks of 10 g: let tasters spit, eat and drink water, and nobody drive; none for the pregnant, the young or anyone who must not drink",
		doseG, doseG/standardDrinkG)
	if doseG > 2*standardDrinkG {
		s += "; that is too much for one sitting: pour less, dilute to 20 % vol or split the session"
	}
	return s
}

// Cards returns, for each taster, what may be said: the codes in the order of serving.
func (p ServingPlan) Cards() []string {
	var out []string
	for i, glasses := range p.Glasses {
		var codes []string
		for _, g := range glasses {
			codes = append(codes, g.Code)
		}
		out = append(out, fmt.Sprintf("taster %d: %s", i+1, strings.Join(codes, " ")))
	}
	return out
}

// String gives the plan's size, dose and notes in one line. What is in the glasses stands in Rows only.
func (p ServingPlan) String() string {
	if len(p.Glasses) == 0 {
		return "no plan"
	}
	return fmt.Sprintf("%s: %d tasters, %d glasses of %s mL each; %s", p.What, len(p.Glasses), len(p.Glasses[0]), short(p.For.PourML), strings.Join(p.Notes, "; "))
}

// Rows gives the key for whoever pours: a row for each taster with code and sample in the order of serving.
func (p ServingPlan) Rows() [][]string {
	var rows [][]string
	for i, glasses := range p.Glasses {
		row := []string{fmt.Sprintf("taster %d", i+1)}
		for _, g := range glasses {
			row = append(row, g.Code+" "+g.Sample)
		}
		rows = append(rows, row)
	}
	for _, n := range p.Notes {
		rows = append(rows, []string{"note: " + n})
	}
	return rows
}
