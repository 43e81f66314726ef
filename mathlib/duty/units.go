package duty

import (
	"fmt"
	"strings"
	"sync"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Unit is a unit in which alcohol is counted for duty.
type Unit string

// The units of alcohol.
const (
	PureLitre           Unit = "L pure alcohol"        // a litre of ethanol at 20 °C
	PureHectolitre      Unit = "hL pure alcohol"       // 100 of these
	USProofGallon       Unit = "US proof gallon"       // a gallon of 231 cubic inches at 60 °F of 50 % vol
	ImperialProofGallon Unit = "Imperial proof gallon" // an Imperial gallon of Imperial proof spirit, until 1979
)

// Units returns the units of alcohol that Count knows.
func Units() []Unit { return []Unit{PureLitre, PureHectolitre, USProofGallon, ImperialProofGallon} }

// Count returns so many litres of pure alcohol at 20 °C (pureL) in the unit given. It fails for a negative amount and for
// a unit that it does not know.
//
// Source: PureLitre: Alcoholic Liquor Duties Act 1979 (UK), section 2(2), and Directive 92/83/EEC, article 21 (from
// memory). USProofGallon: 27 CFR 19.1 and 26 USC 5002; with the density of ethanol at 60 °F of OIML R 22 (1975) a proof
// gallon is 1.9018 L. ImperialProofGallon: 2.5959 L, see ImperialProof.
func Count(pureL float64, unit Unit) (float64, error) {
	const fn = "duty.Count"
	litres, err := litresIn(fn, unit)
	if err != nil {
		return 0, err
	}
	if err := notBelow0(fn, "the pure alcohol", pureL, "L"); err != nil {
		return 0, err
	}
	return pureL / litres, nil
}

// PureLFrom returns the litres of pure alcohol at 20 °C in so much of a unit (amount, in the unit given): the way back
// from Count. It fails as Count does.
func PureLFrom(amount float64, unit Unit) (float64, error) {
	const fn = "duty.PureLFrom"
	litres, err := litresIn(fn, unit)
	if err != nil {
		return 0, err
	}
	if err := notBelow0(fn, "the amount", amount, string(unit)); err != nil {
		return 0, err
	}
	return amount * litres, nil
}

// litresIn returns the litres of pure alcohol in a unit.
func litresIn(fn string, unit Unit) (float64, error) {
	switch unit {
	case PureLitre:
		return 1, nil
	case PureHectolitre:
		return 100, nil
	case USProofGallon:
		l, err := usProofGallonL()
		return l, err
	case ImperialProofGallon:
		p, err := imperialProof()
		return p.gallonPureL, err
	}
	var known []string
	for _, u := range Units() {
		known = append(known, string(u))
	}
	if unit == "" {
		return 0, fmt.Errorf("%s: there is no unit of alcohol; give %s", fn, strings.Join(known, ", "))
	}
	return 0, fmt.Errorf("%s: %q is no unit of alcohol; give %s", fn, string(unit), strings.Join(known, ", "))
}

// usProofGallonL returns the litres of pure alcohol, at 20 °C, in a proof gallon.
var usProofGallonL = sync.OnceValues(func() (float64, error) {
	t, err := quantity.Fahrenheit(60)
	if err != nil {
		return 0, err
	}
	proof, err := alcoholometry.USProof(100)
	if err != nil {
		return 0, err
	}
	return alcoholometry.Spirit{VolumeL: quantity.USGallonsToL(1), Strength: proof, Temp: t}.PureL(), nil
})
