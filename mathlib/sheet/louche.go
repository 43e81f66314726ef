package sheet

import (
	"fmt"

	"swanneck/mathlib/louche"
)

// Oil is an essential oil: its compounds and how well it dissolves. OilOf, OilFrom and OilFromAmounts make one from published
// numbers, good to a factor of two; CalibrateOil makes a better one from what was seen. For an oil nobody has weighed take its
// InParts.
type Oil = louche.Oil

// OilPart is a compound of an oil and its share of the mass in per cent.
type OilPart = louche.Part

// OilAmount is a compound and how many grams of it a litre of drink holds.
type OilAmount = louche.Amount

// Drink is a spirit with essential oil in it: Strength, OilGL, and Temp (20 °C if unset).
type Drink = louche.Drink

// OilSolubility is how much of an oil a spirit holds clear: GL, with its range.
type OilSolubility = louche.Solubility

// CloudedDrink is a drink parted into the clear liquid and the droplets: OutGL, DissolvedGL, and each compound.
type CloudedDrink = louche.Separated

// CloudTemperature is the temperature below which a bottle turns hazy, with its range; At says whether it stays clear at a
// temperature, MarginC by how much.
type CloudTemperature = louche.CloudPoint

// Clarity says whether a bottle stays clear.
type Clarity = louche.Clarity

// The three answers of a CloudTemperature's At.
const (
	StaysClear     = louche.StaysClear
	TurnsCloudy    = louche.TurnsCloudy
	CloudUndecided = louche.Undecided
)

// ClearStrength is the strength down to which a spirit stays clear, with its range.
type ClearStrength = louche.ClearStrength

// Pouring says how water goes into the glass; unset, 20 mL of the drink get 1 mL at a time up to 100 mL.
type Pouring = louche.Pouring

// DrinkPath is the way of a drink from the bottle to the glass: Steps, Onset, Thickest, and columns for charts.
type DrinkPath = louche.Path

// DrinkStep is a drink at one place on its path.
type DrinkStep = louche.Step

// OilDroplets are oil out of a drink; what is 0 stands for the usual figure.
type OilDroplets = louche.Droplets

// DrinkSeen is what a house has seen of its spirit; Dripped, SeenClear and SeenCloudy make one.
type DrinkSeen = louche.Seen

// OilCalibration is an oil fitted to what was seen: Oil is the one to use, Published the one before, Factor their ratio.
type OilCalibration = louche.Calibration

// HazeSigns are answers to questions about a hazy spirit: "yes", "no", or "" for not looked at.
type HazeSigns = louche.HazeSigns

// Haze is what a haze can be.
type Haze = louche.Haze

// TwoLiquids is the region of two liquids of ethanol, water and an oil, for a triangular diagram. It is qualitative.
type TwoLiquids = louche.Triangle

// OilCurve is a line in the triangle, in columns of mass fractions.
type OilCurve = louche.Curve

// OilOf returns the oil of one compound, such as "anethole".
func OilOf(name string) Oil {
	v, err := louche.OilOf(name)
	return must("OilOf", v, err)
}

// OilFrom returns the oil of several compounds by their shares of the mass, from 50 to 100 per cent in all.
func OilFrom(parts ...OilPart) Oil {
	v, err := louche.OilFrom(parts...)
	return must("OilFrom", v, err)
}

// OilFromAmounts returns the oil of the compounds that a litre of drink holds; its TotalGL is what the Drink's OilGL then is.
func OilFromAmounts(amounts ...OilAmount) Oil {
	v, err := louche.OilFromAmounts(amounts...)
	return must("OilFromAmounts", v, err)
}

// OilLike returns an oil with the calibration of another one, much like it.
func OilLike(oil, calibrated Oil) Oil {
	v, err := oil.Like(calibrated)
	return must("OilLike", v, err)
}

// OilHeld returns how much of an oil a spirit of strength s holds clear at t.
func OilHeld(oil Oil, s Strength, t Temperature) OilSolubility {
	v, err := louche.SolubilityOf(oil, s, t)
	return must("OilHeld", v, err)
}

// AnetholeByDescriptorsGL returns what a second model says of anethole at 25 °C, g/L, up to 60 % vol, for comparing.
func AnetholeByDescriptorsGL(s Strength) float64 {
	v, err := louche.AnetholeByDescriptorsGL(s)
	return must("AnetholeByDescriptorsGL", v, err)
}

// Louche parts a drink into the clear liquid and the droplets of oil.
func Louche(d Drink, oil Oil) CloudedDrink {
	v, err := louche.Separate(d, oil)
	return must("Louche", v, err)
}

// CloudPoint returns the temperature below which a bottle turns hazy, with its range.
func CloudPoint(d Drink, oil Oil) CloudTemperature {
	v, err := louche.CloudPointOf(d, oil)
	return must("CloudPoint", v, err)
}

// ClearAt returns the bottling strength from which oilGL grams of oil in a litre stay clear at t.
func ClearAt(oil Oil, oilGL float64, t Temperature) ClearStrength {
	v, err := louche.ClearAt(oil, oilGL, t)
	return must("ClearAt", v, err)
}

// ClearReduced returns down to what strength a spirit may be reduced at its Temp, its oil thinning with it, and stay clear.
func ClearReduced(d Drink, oil Oil) ClearStrength {
	v, err := louche.ClearReduced(d, oil)
	return must("ClearReduced", v, err)
}

// PourWater returns the way of a drink from the bottle to the glass, drop by drop. One Pouring may say how.
func PourWater(d Drink, oil Oil, how ...Pouring) DrinkPath {
	const name = "PourWater"
	var p Pouring
	switch len(how) {
	case 0:
	case 1:
		p = how[0]
	default:
		must(name, 0, fmt.Errorf("%d Pourings are given; give one at most", len(how)))
	}
	v, err := louche.Pour(d, oil, p)
	return must(name, v, err)
}

// TurbidityPerM returns how strongly droplets take light out of a straight beam; the unit is 1/m.
func TurbidityPerM(d OilDroplets) float64 {
	v, err := louche.TurbidityPerM(d)
	return must("TurbidityPerM", v, err)
}

// Dripped says that waterML millilitres of water made 20 mL of the drink stay cloudy, at its Temp.
func Dripped(d Drink, waterML float64) DrinkSeen { return louche.Dripped(d, waterML) }

// SeenClear says that a bottle of the drink was clear after a night at its Temp.
func SeenClear(d Drink) DrinkSeen { return louche.SeenClear(d) }

// SeenCloudy says that a bottle of the drink was hazy after a night at its Temp.
func SeenCloudy(d Drink) DrinkSeen { return louche.SeenCloudy(d) }

// CalibrateOil fits an oil's solubility to what was seen of it; drips and bottles come before every published number.
func CalibrateOil(oil Oil, seen ...DrinkSeen) OilCalibration {
	v, err := louche.Calibrate(oil, seen...)
	return must("CalibrateOil", v, err)
}

// WhichHaze tells from a few questions what a haze is: oil, fatty esters, plant wax, hard water or crystals of anethole.
func WhichHaze(signs HazeSigns) Haze {
	v, err := louche.WhichHaze(signs)
	return must("WhichHaze", v, err)
}

// OilTriangle returns the region of two liquids of ethanol, water and an oil at t, for plots.NewTriangle. It is qualitative.
func OilTriangle(oil Oil, t Temperature) TwoLiquids {
	v, err := louche.TriangleOf(oil, t)
	return must("OilTriangle", v, err)
}

// DilutionLine returns the way of a drink as water is added, for plots.NewTriangle: a straight line to the water corner.
func DilutionLine(d Drink, oil Oil) OilCurve {
	v, err := louche.DilutionLine(d, oil)
	return must("DilutionLine", v, err)
}
