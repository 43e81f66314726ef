package packing

import (
	"fmt"
	"strings"
)

// The master table for single sampling, normal inspection, general level II.
//
// Source: MIL-STD-105E (1989), tables I and II-A, acceptable quality levels 0.65 to 6.5; read in a table for level II
// made from it (United States, Department of Public Works). ISO 2859-1 has the same single plans (from memory).
var (
	aqlPct = []float64{0.65, 1, 1.5, 2.5, 4, 6.5} // per cent defective
	// aqlLots is the largest lot of each code letter, A to P; larger ones are Q.
	aqlLots    = []int{8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10000, 35000, 150000, 500000}
	aqlSamples = []int{2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250}
	// aqlAccept runs along the table's diagonals: from the letter that accepts with none, the acceptance number of each
	// later letter; -1 has an arrow to the letter before, -2 one to the letter behind.
	aqlAccept = []int{0, -1, -2, 1, 2, 3, 5, 7, 10, 14, 21}
)

const aqlSource = "MIL-STD-105E (1989), tables I and II-A, single, normal, level II; ISO 2859-1 has the same (from memory)"

// AQLPlan returns the single sampling plan for normal inspection at general level II for a lot and an acceptable quality
// level aqlPct of 0.65, 1, 1.5, 2.5, 4 or 6.5 per cent defective. Where the table has an arrow, the plan it points to is
// taken, with that plan's sample. A sample as large as the lot means all of it. It fails for another level, and for a
// lot below 2.
//
// Source: MIL-STD-105E (1989), tables I and II-A; ISO 2859-1 has the same single plans (from memory).
func AQLPlan(lot int, levelPct float64) (Plan, error) {
	const fn = "packing.AQLPlan"
	if lot < 2 {
		return Plan{}, fmt.Errorf("%s: a lot of %d; give 2 or more", fn, lot)
	}
	level := -1
	var known []string
	for i, p := range aqlPct {
		known = append(known, plain(p))
		if p == levelPct {
			level = i
		}
	}
	if level < 0 {
		return Plan{}, fmt.Errorf("%s: an acceptable quality level of %s per cent; the table here has %s", fn, plain(levelPct), strings.Join(known, ", "))
	}
	letter := 0
	for letter < len(aqlLots) && lot > aqlLots[letter] {
		letter++
	}
	none := 5 - level // the letter that accepts with no defective: F for 0.65 per cent, one earlier for each next level
	at := letter - none
	switch {
	case at < 0:
		at = 0
	case at >= len(aqlAccept):
		at = len(aqlAccept) - 1
	case aqlAccept[at] == -1:
		at--
	case aqlAccept[at] == -2:
		at++
	}
	n := min(aqlSamples[none+at], lot)
	name := fmt.Sprintf("acceptable quality level %s per cent, letter %c", plain(levelPct), "ABCDEFGHJKLMNPQ"[none+at])
	return single(name, aqlSource, n, aqlAccept[at]), nil
}
