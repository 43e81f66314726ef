package compound_test

import (
	"strconv"
	"strings"
	"testing"

	"swanneck/mathlib/compound"
)

// subgroups gives the atoms of each subgroup, in both numberings. Subgroup 27, the ring ether, stands with its two carbon
// atoms bare, as eucalyptol uses it.
var subgroups = map[int]string{
	1: "C1H3", 2: "C1H2", 3: "C1H1", 4: "C1", 5: "C2H3", 6: "C2H2", 7: "C2H2", 8: "C2H1", 9: "C1H1", 10: "C1", 11: "C2H3",
	12: "C2H2", 13: "C2H1", 14: "O1H1", 15: "C1H4O1", 16: "H2O1", 17: "C1O1H1", 18: "C2H3O1", 19: "C2H2O1", 20: "C1H1O1",
	21: "C2H3O2", 22: "C2H2O2", 24: "C1H3O1", 25: "C1H2O1", 26: "C1H1O1", 27: "C2O1", 42: "C1O2H1", 61: "C5H4O2", 77: "C1O2",
	78: "C1H2", 79: "C1H1", 80: "C1", 81: "O1H1", 82: "O1H1",
}

func count(formula string, times int, into map[byte]int) {
	for i := 0; i < len(formula); {
		j := i + 1
		for j < len(formula) && formula[j] >= '0' && formula[j] <= '9' {
			j++
		}
		n := 1
		if j > i+1 {
			n, _ = strconv.Atoi(formula[i+1 : j])
		}
		into[formula[i]] += n * times
		i = j
	}
}

// No atom is lost or made on the way from the formula to the groups.
func TestGroupsHoldTheAtomsOfTheFormula(t *testing.T) {
	for _, c := range compound.All() {
		want := map[byte]int{}
		count(c.Formula, 1, want)
		for method, groups := range map[string][]compound.Group{"original": c.Groups.Original, "Dortmund": c.Groups.Dortmund} {
			got := map[byte]int{}
			for _, g := range groups {
				f, ok := subgroups[g.Sub]
				if !ok {
					t.Errorf("%s: subgroup %d is not listed", c.Name, g.Sub)
				}
				count(f, g.Count, got)
			}
			for _, e := range []byte("CHO") {
				if got[e] != want[e] {
					t.Errorf("%s, %s: the groups hold %d atoms of %c; the formula %s %d", c.Name, method, got[e], e, c.Formula, want[e])
				}
			}
		}
	}
}

// The last digit of a registry number checks the others: the sum of each digit by its place from the right, modulo 10.
// Source: Chemical Abstracts Service, "Check Digit Verification of CAS Registry Numbers" (from memory).
func TestRegistryNumbersCheck(t *testing.T) {
	for _, c := range compound.All() {
		digits := strings.ReplaceAll(c.CAS, "-", "")
		sum := 0
		for i := range len(digits) - 1 {
			sum += int(digits[i]-'0') * (len(digits) - 1 - i)
		}
		if len(digits) < 5 || sum%10 != int(digits[len(digits)-1]-'0') {
			t.Errorf("%s: the check digit of %s should be %d", c.Name, c.CAS, sum%10)
		}
	}
}
