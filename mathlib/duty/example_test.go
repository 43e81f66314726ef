package duty_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/duty"
	"swanneck/mathlib/quantity"
)

func show(rows [][]string) {
	for _, r := range rows {
		fmt.Println(strings.TrimSpace(strings.Join(r, " | ")))
	}
}

func april() duty.Books {
	d := func(text string) duty.Date {
		date, _ := duty.ParseDate(text)
		return date
	}
	s, _ := alcoholometry.ABV(71.3)
	cellar, _ := quantity.Celsius(16)
	return duty.Books{From: d("2026-04-01"), To: d("2026-04-30"), Entries: []duty.Entry{
		{Date: d("2026-04-01"), Kind: duty.Opening, Lot: "Norderhof 7", PureL: 112.4},
		{Date: d("2026-04-08"), Kind: duty.Made, Lot: "Norderhof 8", VolumeL: 421, Strength: s, Temp: cellar},
		{Date: d("2026-04-15"), Kind: duty.Sample, Lot: "Norderhof 8", PureL: 0.35},
		{Date: d("2026-04-21"), Kind: duty.Sent, Lot: "Norderhof 7", PureL: 120},
		{Date: d("2026-04-30"), Kind: duty.Closing, Lot: "Norderhof 7"},
		{Date: d("2026-04-30"), Kind: duty.Closing, Lot: "Norderhof 8", PureL: 298.1},
	}}
}

func ExampleMakeReturn() {
	r, err := duty.MakeReturn(april())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Total)
	for _, f := range r.Findings {
		fmt.Println(f)
	}
	// Output:
	// opening 112.40 + made 301.30 + received 0.00 - sent 120.00 - samples 0.35 - destroyed 0.00 - closing 298.10 = loss -4.75 L of pure alcohol
	// lot Norderhof 7, line 4: sent more than there was: sent 120.00 L on 2026-04-21 with 112.40 L there
	// lot Norderhof 7, line 5: closing above expected: the closing is 0.00 L and -7.60 L were expected
}

func ExampleReturn_String() {
	r, _ := duty.MakeReturn(april())
	fmt.Println(r)
	// Output: 2026-04-01 to 2026-04-30: opening 112.40 + made 301.30 + received 0.00 - sent 120.00 - samples 0.35 - destroyed 0.00 - closing 298.10 = loss -4.75 L (-1.15 %); 2 findings
}

func ExampleReturn_Rows() {
	r, _ := duty.MakeReturn(april())
	show(r.Rows())
	// Output:
	// L of pure alcohol | opening | made | received | sent | samples | destroyed | closing | loss
	// Norderhof 7 | 112.40 | 0.00 | 0.00 | 120.00 | 0.00 | 0.00 | 0.00 | -7.60
	// Norderhof 8 | 0.00 | 301.30 | 0.00 | 0.00 | 0.35 | 0.00 | 298.10 | 2.85
	// total | 112.40 | 301.30 | 0.00 | 120.00 | 0.35 | 0.00 | 298.10 | -4.75
	// lot Norderhof 7, line 4: sent more than there was: sent 120.00 L on 2026-04-21 with 112.40 L there
	// lot Norderhof 7, line 5: closing above expected: the closing is 0.00 L and -7.60 L were expected
}

func ExampleLotAccount_String() {
	r, _ := duty.MakeReturn(april())
	fmt.Println(r.Lots[1])
	// Output: lot Norderhof 8: opening 0.00 + made 301.30 + received 0.00 - sent 0.00 - samples 0.35 - destroyed 0.00 - closing 298.10 = loss 2.85 L of pure alcohol
}

func ExampleAccount_String() {
	fmt.Println(duty.Account{OpeningL: 10, SentL: 7, ClosingL: 2.9, LossL: 0.1})
	// Output: opening 10.00 + made 0.00 + received 0.00 - sent 7.00 - samples 0.00 - destroyed 0.00 - closing 2.90 = loss 0.10 L of pure alcohol
}

func ExampleAccount_ExpectedL() {
	fmt.Println(duty.Account{OpeningL: 10, MadeL: 5, SentL: 7}.ExpectedL())
	// Output: 8
}

func ExampleAccount_LossPct() {
	fmt.Println(duty.Account{OpeningL: 10, ClosingL: 9.9, LossL: 0.1}.LossPct())
	// Output: 1
}

func ExampleFinding_String() {
	b := april()
	b.Entries = b.Entries[:5]
	r, _ := duty.MakeReturn(b)
	fmt.Println(r.Findings[len(r.Findings)-1])
	// Output: lot Norderhof 8: missing closing: there is no closing; reckoned as the expected 300.95 L, so the loss is not known
}

func ExamplePureLOf() {
	s, _ := alcoholometry.ABV(60)
	litres, _ := duty.PureLOf(duty.Entry{WeightKg: 100, Strength: s})
	fmt.Printf("%.2f L\n", litres)
	_, err := duty.PureLOf(duty.Entry{WeightKg: 100, PureL: 66, Strength: s})
	fmt.Println(err)
	// Output:
	// 66.08 L
	// duty.PureLOf: the amount is given in 2 ways; give a volume, a weight or litres of pure alcohol
}

func ExampleReadRows() {
	units := duty.RowUnits{Volume: "L", Strength: "%vol", Temp: "°C"}
	entries, err := duty.ReadRows([]duty.Row{{Date: "2026-04-08", Kind: "made", Lot: "Norderhof 8", Volume: "421", Strength: "71,3", Temp: "16"}}, units)
	fmt.Println(len(entries), entries[0].VolumeL, entries[0].Strength, err)
	_, err = duty.ReadRows([]duty.Row{{Date: "2026-04-08", Kind: "made", Lot: "Norderhof 8", Volume: "1,512"}}, units)
	fmt.Println(err)
	// Output:
	// 1 421 71.30 % vol <nil>
	// duty.ReadRows: line 1: the volume "1,512" may be 1.512 or 1512; write it one of these ways
}

func ExampleParseDate() {
	d, err := duty.ParseDate("2026-04-30")
	fmt.Println(d, err)
	_, err = duty.ParseDate("30.4.2026")
	fmt.Println(err)
	// Output:
	// 2026-04-30 <nil>
	// duty.ParseDate: "30.4.2026" is no day; write it as year-month-day, such as 2026-03-31
}

func ExampleDate_IsSet() {
	fmt.Println(duty.Date{}.IsSet())
	// Output: false
}

func ExampleDate_Before() {
	a, _ := duty.ParseDate("2026-04-30")
	b, _ := duty.ParseDate("2026-05-01")
	fmt.Println(a.Before(b), b.Before(a))
	// Output: true false
}

func ExampleDate_String() {
	fmt.Println(duty.Date{})
	// Output: no date
}

func ExampleKinds() {
	fmt.Println(duty.Kinds())
	// Output: [opening made received sent sample destroyed closing]
}

func ExampleUnits() {
	for _, u := range duty.Units() {
		litres, _ := duty.PureLFrom(1, u)
		fmt.Printf("%s: %.4f L of pure alcohol\n", u, litres)
	}
	// Output:
	// L pure alcohol: 1.0000 L of pure alcohol
	// hL pure alcohol: 100.0000 L of pure alcohol
	// US proof gallon: 1.9018 L of pure alcohol
	// Imperial proof gallon: 2.5959 L of pure alcohol
}

func ExampleCount() {
	n, _ := duty.Count(100, duty.USProofGallon)
	fmt.Printf("%.2f proof gallons\n", n)
	_, err := duty.Count(100, "firkin")
	fmt.Println(err)
	// Output:
	// 52.58 proof gallons
	// duty.Count: "firkin" is no unit of alcohol; give L pure alcohol, hL pure alcohol, US proof gallon, Imperial proof gallon
}

func ExamplePureLFrom() {
	litres, _ := duty.PureLFrom(1.5, duty.PureHectolitre)
	fmt.Println(litres)
	// Output: 150
}

func ExampleImperialProof() {
	s, _ := alcoholometry.ABV(40)
	degrees, _ := duty.ImperialProof(s)
	fmt.Printf("%.1f degrees, %.1f under proof\n", degrees, 100-degrees)
	// Output: 69.9 degrees, 30.1 under proof
}

func ExampleFromImperialProof() {
	s, _ := duty.FromImperialProof(100)
	fmt.Println(s)
	// Output: 57.10 % vol
}

func ExampleDue() {
	d, err := duty.Due(duty.Rate{Money: 10.5, Currency: "XTS", Per: duty.PureLitre}, 120)
	fmt.Println(d, err)
	_, err = duty.Due(duty.Rate{Money: 10.5, Per: duty.PureLitre}, 120)
	fmt.Println(err)
	_, err = duty.Due(duty.Rate{Money: 10.5, Currency: "XTS"}, 120)
	fmt.Println(err)
	// Output:
	// 1260.00 XTS on 120.00 L pure alcohol at 10.5 XTS <nil>
	// duty.Due: the currency of the rate is ""; give its three letters, such as "EUR"
	// duty.Due: there is no unit of alcohol; give L pure alcohol, hL pure alcohol, US proof gallon, Imperial proof gallon
}

func ExampleDuty_String() {
	d, _ := duty.Due(duty.Rate{Money: 10, Currency: "XTS", Per: duty.USProofGallon, Step: 0.1}, 120)
	fmt.Println(d)
	// Output: 631.00 XTS on 63.10 US proof gallon at 10 XTS
}

func ExampleDuty_Rows() {
	d, _ := duty.Due(duty.Rate{Money: 1050, Currency: "XTS", Per: duty.PureHectolitre}, 120)
	show(d.Rows())
	// Output:
	// pure alcohol at 20 °C | 120.00 | L
	// for the duty | 1.20 | hL pure alcohol
	// rate, as given | 1050 | XTS for one hL pure alcohol
	// duty, not rounded | 1260.0000 | XTS
}

func ExampleUSGaugeByWeight() {
	g, _ := duty.USGaugeByWeight(duty.USWeight{WeightLb: 81000, Proof: 190, WineGalPerLb: 0.14718, ProofGalPerLb: 0.27964})
	fmt.Println(g)
	// Output: 11921.6 wine gallons, 22650.8 proof gallons
}

func ExampleUSGaugeByTable3() {
	g, _ := duty.USGaugeByTable3(duty.USWeight{WeightLb: 60378, Proof: 190, ProofGalPerLb: 0.27964})
	for _, s := range g.Steps {
		fmt.Println(s)
	}
	fmt.Println(g.ProofGal)
	// Output:
	// 60000 lb: 16778.4 proof gallons
	// 300 lb: 83.9 proof gallons
	// 70 lb: 19.6 proof gallons
	// 8 lb: 2.2 proof gallons
	// 16884.1
}

func ExampleUSGaugeByVolume() {
	warm, _ := quantity.Fahrenheit(72)
	g, _ := duty.USGaugeByVolume(duty.USVolume{ObservedGal: 4308.48, Temp: warm, Proof: 86.8})
	fmt.Println(g)
	// Output: 4286.94 wine gallons, 3721.1 proof gallons
}

func ExampleUSGallonsToDraw() {
	warm, _ := quantity.Fahrenheit(76)
	gal, _ := duty.USGallonsToDraw(55.1, duty.USVolume{Temp: warm, Proof: 190})
	fmt.Println(gal)
	// Output: 55.6
}

func ExampleUSGaugeCases() {
	g, _ := duty.USGaugeCases(40, 9, 80)
	fmt.Println(g)
	// Output: 95.10192 wine gallons, 76.1 proof gallons
}

func ExampleUSGauge_String() {
	fmt.Println(duty.USGauge{WineGal: 678.2, ProofGal: 583.3})
	// Output: 678.2 wine gallons, 583.3 proof gallons
}

func ExampleUSGauge_Rows() {
	g, _ := duty.USGaugeByWeight(duty.USWeight{WeightLb: 5350, Proof: 86, ApparentProof: 85.5, WineGalPerLb: 0.12676})
	show(g.Rows())
	// Output:
	// wine gallons at 60 °F | 678.2 | gal
	// proof gallons | 583.3 | proof gal
	// 5350 lb × 0.12676 (table 4, as given) = 678.2 wine gallons |  |
	// 678.2 wine gallons × 86 proof / 100 = 583.3 proof gallons |  |
}

func ExampleUSReduceByTable6() {
	w, _ := duty.USReduceByTable6(duty.USReduction{FromProof: 191, ToProof: 188, FromWater: 5.59, ToWater: 7.36})
	fmt.Println(w)
	// Output: 1.84 gal of water for 100 gal by the regulation's arithmetic, 1.887 gal without cutting off
}

func ExampleUSWater_String() {
	w, _ := duty.USReduceByTable6(duty.USReduction{FromProof: 112, ToProof: 100})
	fmt.Println(w)
	// Output: 12.42 gal of water for 100 gal by the regulation's arithmetic, 12.429 gal without cutting off
}

func ExampleUSWater_Rows() {
	w, _ := duty.USReduceByTable6(duty.USReduction{FromProof: 191, ToProof: 188, FromWater: 5.59, ToWater: 7.36})
	show(w.Rows())
	// Output:
	// water for 100 gallons, by the regulation's arithmetic | 1.84 | gal
	// the same without cutting off | 1.887 | gal
	// 95.5 / 94 = 1.01 |  |
	// 7.36 × 1.01 = 7.43 |  |
	// 7.43 - 5.59 = 1.84 gallons of water for 100 gallons |  |
}

func ExampleUSReduceByTable4() {
	lb, _ := duty.USReduceByTable4(duty.USReductionByWeight{WeightLb: 1000, FromProof: 200, ToProof: 190, FromGalPerLb: 0.30258, ToGalPerLb: 0.27964})
	fmt.Println(lb, "lb of water")
	// Output: 82.03 lb of water
}

func ExampleUSContainerFor() {
	c, _ := duty.USContainerFor(5, 192, 0)
	fmt.Println(c)
	// Output: 33 lb 13 oz (33.81 lb)
}

func ExampleUSContainer_String() {
	fmt.Println(duty.USContainer{WeightLb: 6.81, Lb: 6, Ounces: 13})
	// Output: 6 lb 13 oz (6.81 lb)
}
