package compound

import (
	"fmt"
	"strconv"
)

// atomicG are the masses of a mole of atoms, g. Source: IUPAC Commission on Isotopic Abundances and Atomic Weights,
// abridged standard atomic weights (2021).
var atomicG = map[byte]float64{'H': 1.008, 'C': 12.011, 'O': 15.999}

// atoms counts the atoms of a formula such as C2H6O.
func atoms(formula string) (map[byte]int, error) {
	out := map[byte]int{}
	for i := 0; i < len(formula); {
		e := formula[i]
		if _, ok := atomicG[e]; !ok {
			return nil, fmt.Errorf("formula %q: no atom is called %q here; give carbon, hydrogen and oxygen", formula, e)
		}
		j := i + 1
		for j < len(formula) && formula[j] >= '0' && formula[j] <= '9' {
			j++
		}
		n := 1
		if j > i+1 {
			n, _ = strconv.Atoi(formula[i+1 : j]) // digits only
		}
		out[e] += n
		i = j
	}
	if len(out) == 0 {
		return nil, fmt.Errorf("the formula is empty")
	}
	return out, nil
}

// molarMassG returns the molar mass, g/mol, of a formula.
func molarMassG(formula string) (float64, error) {
	n, err := atoms(formula)
	if err != nil {
		return 0, err
	}
	return float64(n['C'])*atomicG['C'] + float64(n['H'])*atomicG['H'] + float64(n['O'])*atomicG['O'], nil
}
