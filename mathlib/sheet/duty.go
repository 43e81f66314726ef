package sheet

import (
	"fmt"

	"swanneck/mathlib/duty"
)

// Day is a day of the calendar; OnDay makes one.
type Day = duty.Date

// DutyEntry is a line of the ledger. Its Kind is "opening", "made", "received", "sent", "sample", "destroyed" or "closing".
type DutyEntry = duty.Entry

// DutyBooks is the ledger of a period.
type DutyBooks = duty.Books

// DutyReturn is the return of a period: lots, total, and what does not add up.
type DutyReturn = duty.Return

// DutyAccount is the reckoning of a lot or of the whole, in litres of pure alcohol.
type DutyAccount = duty.Account

// DutyFinding is something that does not add up.
type DutyFinding = duty.Finding

// LedgerUnits are the units of figures that stand in a ledger without one.
type LedgerUnits = duty.RowUnits

// AlcoholUnit is a unit in which alcohol is counted: PureLitre, PureHectolitre, USProofGallon or ImperialProofGallon.
type AlcoholUnit = duty.Unit

// DutyRate is a rate of duty that you state: money, currency, and for what unit of alcohol.
type DutyRate = duty.Rate

// DutyOwed is what is owed at a rate.
type DutyOwed = duty.Duty

// USWeight is spirit gauged by weight in the United States.
type USWeight = duty.USWeight

// USVolume is spirit gauged by volume in the United States.
type USVolume = duty.USVolume

// USGauge is a gauge by the arithmetic of 27 CFR part 30.
type USGauge = duty.USGauge

// USReduction is spirit to be brought down with water by table 6 of 27 CFR part 30.
type USReduction = duty.USReduction

// USReductionByWeight is spirit to be brought down with water by table 4 of 27 CFR part 30.
type USReductionByWeight = duty.USReductionByWeight

// USWater is the water for a reduction by table 6.
type USWater = duty.USWater

// USContainer is the weight to which a small container is filled.
type USContainer = duty.USContainer

// The units of alcohol.
const (
	PureLitre           = duty.PureLitre           // a litre of ethanol at 20 °C
	PureHectolitre      = duty.PureHectolitre      // 100 of these
	USProofGallon       = duty.USProofGallon       // a gallon of the United States at 60 °F of 50 % vol
	ImperialProofGallon = duty.ImperialProofGallon // an Imperial gallon of Imperial proof spirit
)

// OnDay reads a day written as year, month and day, such as OnDay("2026-03-31").
func OnDay(text string) Day {
	v, err := duty.ParseDate(text)
	return must("OnDay", v, err)
}

// LedgerColumns are the columns of a ledger as text, as a table of the worksheet gives them. Columns of amounts that the
// ledger has not stay unset.
type LedgerColumns struct {
	Date     []string // "2026-03-31"
	Kind     []string // opening, made, received, sent, sample, destroyed, closing
	Lot      []string
	Volume   []string
	Strength []string // for a volume or a weight
	Temp     []string // of the spirit; 20 °C where it is empty
	Weight   []string // as the balance shows it
	Pure     []string // pure alcohol at 20 °C
	Units    LedgerUnits
	Line     int // of the first row, for messages; 2 if 0, as behind a line of headings
}

// Ledger reads the lines of a ledger from its columns. A figure without a unit stops the cell unless Units has one for its
// column.
func Ledger(c LedgerColumns) []DutyEntry {
	const name = "Ledger"
	n := len(c.Date)
	for _, col := range []struct {
		name   string
		rows   []string
		needed bool
	}{{"Kind", c.Kind, true}, {"Lot", c.Lot, true}, {"Volume", c.Volume, false}, {"Strength", c.Strength, false}, {"Temp", c.Temp, false}, {"Weight", c.Weight, false}, {"Pure", c.Pure, false}} {
		if len(col.rows) != n && (col.needed || col.rows != nil) {
			must(name, 0, fmt.Errorf("the column %s has %d rows and Date has %d; give all the same", col.name, len(col.rows), n))
		}
	}
	if c.Line == 0 {
		c.Line = 2
	}
	at := func(column []string, i int) string {
		if column == nil {
			return ""
		}
		return column[i]
	}
	rows := make([]duty.Row, n)
	for i := range rows {
		rows[i] = duty.Row{
			Line: c.Line + i, Date: c.Date[i], Kind: c.Kind[i], Lot: c.Lot[i], Volume: at(c.Volume, i), Strength: at(c.Strength, i),
			Temp: at(c.Temp, i), Weight: at(c.Weight, i), Pure: at(c.Pure, i),
		}
	}
	v, err := duty.ReadRows(rows, c.Units)
	return must(name, v, err)
}

// EntryPureL returns the litres of pure alcohol in a line of the ledger.
func EntryPureL(e DutyEntry) float64 {
	v, err := duty.PureLOf(e)
	return must("EntryPureL", v, err)
}

// ReturnOf adds up the ledger of a period and names what does not add up.
func ReturnOf(b DutyBooks) DutyReturn {
	v, err := duty.MakeReturn(b)
	return must("ReturnOf", v, err)
}

// CountAlcohol returns so many litres of pure alcohol in the unit given.
func CountAlcohol(pureL float64, unit AlcoholUnit) float64 {
	v, err := duty.Count(pureL, unit)
	return must("CountAlcohol", v, err)
}

// PureLFrom returns the litres of pure alcohol in so much of a unit.
func PureLFrom(amount float64, unit AlcoholUnit) float64 {
	v, err := duty.PureLFrom(amount, unit)
	return must("PureLFrom", v, err)
}

// DutyOn returns the duty on so many litres of pure alcohol at a rate that you state.
func DutyOn(rate DutyRate, pureL float64) DutyOwed {
	v, err := duty.Due(rate, pureL)
	return must("DutyOn", v, err)
}

// ImperialProof returns a strength in degrees of the Imperial proof scale: 100 is proof spirit, of 57.1 % vol.
func ImperialProof(s Strength) float64 {
	v, err := duty.ImperialProof(s)
	return must("ImperialProof", v, err)
}

// FromImperialProof returns the strength of so many degrees of the Imperial proof scale.
func FromImperialProof(degrees float64) Strength {
	v, err := duty.FromImperialProof(degrees)
	return must("FromImperialProof", v, err)
}

// USGaugeByWeight returns the wine and proof gallons of weighed spirit by table 4 and the rounding of 27 CFR part 30.
func USGaugeByWeight(w USWeight) USGauge {
	v, err := duty.USGaugeByWeight(w)
	return must("USGaugeByWeight", v, err)
}

// USGaugeByTable3 returns the proof gallons of weighed spirit in the manner of table 3.
func USGaugeByTable3(w USWeight) USGauge {
	v, err := duty.USGaugeByTable3(w)
	return must("USGaugeByTable3", v, err)
}

// USGaugeByVolume returns the wine and proof gallons of measured spirit by table 7 and the rounding of 27 CFR part 30.
func USGaugeByVolume(m USVolume) USGauge {
	v, err := duty.USGaugeByVolume(m)
	return must("USGaugeByVolume", v, err)
}

// USGallonsToDraw returns the gallons to measure out so that so many gallons at 60 °F are drawn.
func USGallonsToDraw(wineGal float64, m USVolume) float64 {
	v, err := duty.USGallonsToDraw(wineGal, m)
	return must("USGallonsToDraw", v, err)
}

// USGaugeCases returns the wine and proof gallons in cases of bottles.
func USGaugeCases(cases int, litresPerCaseL, proof float64) USGauge {
	v, err := duty.USGaugeCases(cases, litresPerCaseL, proof)
	return must("USGaugeCases", v, err)
}

// USReduceByTable6 returns the gallons of water for 100 gallons of spirit, as the regulation reckons and without cutting off.
func USReduceByTable6(r USReduction) USWater {
	v, err := duty.USReduceByTable6(r)
	return must("USReduceByTable6", v, err)
}

// USReduceByTable4 returns the pounds of water that bring weighed spirit to a lower proof.
func USReduceByTable4(r USReductionByWeight) float64 {
	v, err := duty.USReduceByTable4(r)
	return must("USReduceByTable4", v, err)
}

// USContainerFor returns the weight to which a container of up to 10 gallons is filled.
func USContainerFor(gallons, proof, galPerLb float64) USContainer {
	v, err := duty.USContainerFor(gallons, proof, galPerLb)
	return must("USContainerFor", v, err)
}
