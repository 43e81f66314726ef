package sheet_test

import (
	"fmt"

	. "swanneck/mathlib/sheet"
)

func ledger() []DutyEntry {
	return Ledger(LedgerColumns{
		Date:     []string{"2026-04-01", "2026-04-08", "2026-04-21", "2026-04-30", "2026-04-30"},
		Kind:     []string{"opening", "made", "sent", "closing", "closing"},
		Lot:      []string{"Norderhof 7", "Norderhof 8", "Norderhof 7", "Norderhof 7", "Norderhof 8"},
		Volume:   []string{"", "421", "", "", ""},
		Strength: []string{"", "71,3", "", "", ""},
		Temp:     []string{"", "16", "", "", ""},
		Pure:     []string{"112.4", "", "112.4", "0", "299.5"},
		Units:    LedgerUnits{Volume: "L", Strength: "%vol", Temp: "°C", Pure: "L"},
	})
}

func ExampleOnDay() {
	fmt.Println(OnDay("2026-04-30"))
	// Output: 2026-04-30
}

func ExampleLedger() {
	e := ledger()[1]
	fmt.Println(e.Date, e.Kind, e.Lot, e.VolumeL, e.Strength)
	// Output: 2026-04-08 made Norderhof 8 421 71.30 % vol
}

func ExampleEntryPureL() {
	fmt.Printf("%.2f\n", EntryPureL(ledger()[1]))
	// Output: 301.30
}

func ExampleReturnOf() {
	fmt.Println(ReturnOf(DutyBooks{From: OnDay("2026-04-01"), To: OnDay("2026-04-30"), Entries: ledger()}))
	// Output: 2026-04-01 to 2026-04-30: opening 112.40 + made 301.30 + received 0.00 - sent 112.40 - samples 0.00 - destroyed 0.00 - closing 299.50 = loss 1.80 L (0.44 %); 0 findings
}

func ExampleCountAlcohol() {
	fmt.Printf("%.2f proof gallons\n", CountAlcohol(112.4, USProofGallon))
	// Output: 59.10 proof gallons
}

func ExamplePureLFrom() {
	fmt.Println(PureLFrom(2, PureHectolitre))
	// Output: 200
}

func ExampleDutyOn() {
	fmt.Println(DutyOn(DutyRate{Money: 10.5, Currency: "XTS", Per: PureLitre}, 112.4))
	// Output: 1180.20 XTS on 112.40 L pure alcohol at 10.5 XTS
}

func ExampleImperialProof() {
	fmt.Printf("%.1f\n", ImperialProof(ABV(40)))
	// Output: 69.9
}

func ExampleFromImperialProof() {
	fmt.Println(FromImperialProof(75))
	// Output: 42.88 % vol
}

func ExampleUSGaugeByWeight() {
	fmt.Println(USGaugeByWeight(USWeight{WeightLb: 5350, Proof: 86, ApparentProof: 85.5, WineGalPerLb: 0.12676}))
	// Output: 678.2 wine gallons, 583.3 proof gallons
}

func ExampleUSGaugeByTable3() {
	fmt.Println(USGaugeByTable3(USWeight{WeightLb: 321.5, Proof: 86}).ProofGal)
	// Output: 35.1
}

func ExampleUSGaugeByVolume() {
	fmt.Println(USGaugeByVolume(USVolume{ObservedGal: 4308.48, Temp: Fahrenheit(72), Proof: 86.8}))
	// Output: 4286.94 wine gallons, 3721.1 proof gallons
}

func ExampleUSGallonsToDraw() {
	fmt.Println(USGallonsToDraw(55.1, USVolume{Temp: Fahrenheit(76), Proof: 190}))
	// Output: 55.6
}

func ExampleUSGaugeCases() {
	fmt.Println(USGaugeCases(40, 9, 80))
	// Output: 95.10192 wine gallons, 76.1 proof gallons
}

func ExampleUSReduceByTable6() {
	fmt.Println(USReduceByTable6(USReduction{FromProof: 112, ToProof: 100}))
	// Output: 12.42 gal of water for 100 gal by the regulation's arithmetic, 12.429 gal without cutting off
}

func ExampleUSReduceByTable4() {
	fmt.Println(USReduceByTable4(USReductionByWeight{WeightLb: 1000, FromProof: 200, ToProof: 190}))
	// Output: 82.1
}

func ExampleUSContainerFor() {
	fmt.Println(USContainerFor(5, 192, 0))
	// Output: 33 lb 13 oz (33.81 lb)
}
