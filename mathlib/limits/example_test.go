package limits_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/limits"
)

// show prints rows without blanks at the end of a line.
func show(rows [][]string) {
	for _, r := range rows {
		fmt.Println(strings.TrimSpace(strings.Join(r, " | ")))
	}
}

func ExampleCheck() {
	r, err := limits.Check(limits.Case{Jurisdiction: "EU", Strength: abv(60), Plants: []string{"wormwood", "fennel"}, Findings: []limits.Finding{limits.Printed("thujone", mgL(0), mgL(76))}})
	fmt.Println(r, err)
	for _, l := range r.Lines {
		fmt.Println(l)
	}
	fmt.Println(r.Worst(), r.Needed())
	_, err = limits.Check(limits.Case{Jurisdiction: "Atlantis", Strength: abv(60)})
	fmt.Println(err)
	// Output:
	// EU: 1 cannot tell: measure, 1 no limit for this scope; no legal advice: check the current text; the local authority decides <nil>
	// thujone: cannot tell: measure; allowed at most 35 mg/kg (alcoholic beverages made from Artemisia); thujone: 0.000 mg/L to 76.00 mg/L (range from print): 0 to 83.6 mg/kg; measure thujone: gas chromatography with a mass spectrometer (GC-MS) [Regulation (EC) 1334/2008, annex III part B; read in an encyclopaedia and a report of the proposal; check the current text]
	// estragole: no limit for this scope; not measured; no limit for this scope in EU: the rule is for drinks without alcohol [Regulation (EC) 1334/2008, annex III part B; no limit for spirits; check the current text]
	// cannot tell: measure [measure thujone: gas chromatography with a mass spectrometer (GC-MS)]
	// limits.Check: no jurisdiction "Atlantis" is known; there are EU, HMPC, US
}

func ExampleReport_Rows() {
	r, _ := limits.Check(limits.Case{Jurisdiction: "EU", Category: "pastis de Marseille", Strength: abv(45), Plants: []string{"star anise"}, Findings: []limits.Finding{limits.Measured("anethole", gL(2))}})
	show(r.Rows())
	// Output:
	// what | answer | allowed | found | because | source (check the current text)
	// strength of pastis de Marseille | within | at least 45 % vol, no tolerance | 45.00 % vol | true strength | Regulation (EU) 2019/787, annex I, category 27, as a trade association has it
	// trans-anethole | within | 1.9 to 2.1 g/L (pastis de Marseille) | trans-anethole: 2000.0 mg/L (measured in the product): 2 g/L |  | a trade association (2019)
	// estragole | no limit for this scope | none known | not measured | no limit for this scope in EU: the rule is for drinks without alcohol | Regulation (EC) 1334/2008, annex III part B; no limit for spirits
	// star anise | caution |  |  | do not take for it the poisonous Japanese star anise (Illicium anisatum): buy from a trade that tests | from memory
	// work | caution |  |  | a distillate rich in anethole freezes near 21 °C: keep the condenser warmer, or it plugs and pressure builds up (melting point of monographs) |
	// work | caution |  |  | leave room in the pot for foam and swelling herbs (common practice, no source) |
	// note |  |  |  | no legal advice: check the current text; the local authority decides |
}

func ExampleMeasured() {
	fmt.Println(limits.Measured("thujone", mgKg(12)))
	// Output: thujone: 12.00 mg/kg (measured in the product)
}

func ExampleMeasuredBetween() {
	fmt.Println(limits.MeasuredBetween("thujone", mgKg(11), mgKg(13)))
	// Output: thujone: 11.00 mg/kg to 13.00 mg/kg (measured in the product)
}

func ExampleNotDetected() {
	fmt.Println(limits.NotDetected("safrole", mgKg(0.1)))
	// Output: safrole: at most 0.1 mg/kg (measured in the product)
}

func ExampleAnalysed() {
	fmt.Println(limits.Analysed("thujone", mgL(23)))
	// Output: thujone: at most 23.00 mg/L (analysed oil and mass balance)
}

func ExamplePrinted() {
	fmt.Println(limits.Printed("thujone", mgL(0), mgL(76)))
	// Output: thujone: 0.000 mg/L to 76.00 mg/L (range from print)
}

func ExampleUnknown() {
	fmt.Println(limits.Unknown("pulegone"))
	// Output: pulegone: nothing measured
}

func ExampleCautions() {
	c, _ := limits.Cautions("hyssop", "lemon balm")
	fmt.Println(c[0])
	fmt.Println(c[1])
	_, err := limits.Cautions("wormwod")
	fmt.Println(err)
	// Output:
	// hyssop: its pinocamphone causes fits; no rule limits it and nothing here follows it, so keep amounts small (from memory)
	// lemon balm: nothing is listed here, which says nothing of the plant
	// limits.Cautions: no plant "wormwod" is known; the nearest are wormwood, grand wormwood, roman wormwood
}

func ExampleLimits() {
	l, _ := limits.Limits("US")
	for _, x := range l {
		fmt.Println(x)
	}
	// Output:
	// US, thujone, products that must be free of thujone: less than 10 mg/kg [TTB Industry Circular 2007-5; 21 CFR 172.510; parts per million by the official method]
	// US, methanol, brandy: at most 0.35 % v/v [FDA Compliance Policy Guide 510.200 (1984); detention of imports; the year from memory]
	// US, safrole, food and drinks: none [Industry Circular 61-2 (1961); not permitted]
}

func ExampleScopes() {
	s, _ := limits.Scopes("US")
	fmt.Println(s, limits.Jurisdictions())
	// Output: [brandy thujone-free] [EU HMPC US]
}

func ExampleCategories() {
	fmt.Println(limits.Categories()[:3])
	// Output: [gin distilled gin London gin]
}

func ExampleAnswer_String() {
	fmt.Println(limits.Under, "|", limits.Within, "|", limits.Over, "|", limits.CannotTell)
	// Output: under | within | over | cannot tell: measure
}
