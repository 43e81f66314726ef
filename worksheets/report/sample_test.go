package report

import (
	"flag"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"
	"time"

	"swanneck/worksheets/notebook"
)

var keep = flag.String("keep", "", "write the sample report to this file, to look at it")

// sample is a proofing worksheet of an invented distillery, with one of everything that a report shows.
func sample() Document {
	nb := notebook.New()
	md := func(s string) { nb.Cells = append(nb.Cells, notebook.NewCell(notebook.Markdown, s)) }
	code := func(s string, outputs ...notebook.Output) {
		c := notebook.NewCell(notebook.Code, s)
		c.Outputs = outputs
		nb.Cells = append(nb.Cells, c)
	}
	md("# Proofing of vat 7\n\nThe heart of the autumn run lies at Sallow Quay in **vat 7**. It goes down to bottling strength over four days, in steps, so that it does not cloud.")
	md("> **Caution** Spirit above 50 % vol gives off vapour that burns at room temperature. No flame, no phone on charge beside the open vat, and air the room before you weigh in water.")
	md("## The first step\n\nWeigh the water in; do not measure it by volume.")
	code("vat := Spirit{VolumeL: 356.35, Strength: ABV(72.4)}\nplan, err := Reduce(vat, ABV(43)) // true strengths at 20 °C\nfmt.Println(\"water\", plan.WaterKg, \"kg\")\nif plan.WaterKg > 300 {\n\tpanic(`too much for the scale`)\n}",
		notebook.StreamOutput("stdout", "water 252.41 kg\n"),
		notebook.StreamOutput("stderr", "the reading was taken at 26 °C; the true strength is used\n"))
	code("Table(plan.Steps)",
		notebook.ResultOutput(2, map[string]any{
			"text/plain": "steps",
			"text/html": "<style>td{color:red}</style><table class=\"x\"><thead><tr><th>Day</th><th>Water</th><th>Unit</th><th>Strength, % vol</th><th>Warming, °C</th><th>What to look at before going on to the next step</th></tr></thead><tbody>" +
				"<tr><td>Monday</td><td>96.20</td><td>kg</td><td>60.0</td><td>3.1</td><td>clear</td></tr><tr><td>Tuesday</td><td>71.05</td><td>kg</td><td>52.5</td><td>1.4</td><td>clear after 2 h</td></tr><tr><td>Wednesday</td><td>85.16</td><td>kg</td><td>43.0</td><td>1.3</td><td>a haze that goes when warmed</td></tr></tbody></table>",
		}))
	md("### How the strength falls\n\n| Instrument | Reading | True strength |\n|:--|--:|--:|\n| Alcoholometer at 26 °C | 45.33 | 43.0 |\n| Density meter | 43.1 | 43.1 |\n\nSee the [tables](https://example.org/tables) and `TrueStrength`.")
	code("Plot(plan)", notebook.DisplayOutput(map[string]any{"image/svg+xml": sampleChart(), "text/plain": "Strength of vat 7 against water added"}))
	code("Reduce(vat, ABV(80))", notebook.ErrorOutput("RangeError", "Reduce: cannot raise 72.4 % vol to 80.0 % vol by adding water",
		[]string{"\x1b[31mReduce: cannot raise 72.4 % vol to 80.0 % vol by adding water\x1b[0m", "  line 1: Reduce(vat, ABV(80))"}))
	code("fmt.Println(long)", notebook.StreamOutput("stdout", "readings "+strings.Repeat("43.1 43.0 42.9 ", 20)+"\nunbroken"+strings.Repeat("_x", 120)+"\n"))
	md("Two checks before bottling:\n\n1. the reading at the temperature of the vat,\n2. a jar kept at 2 °C overnight.\n\n> A haze that comes back is oil, not ice.")
	return Document{
		Notebook: nb, Date: time.Date(2031, 10, 14, 16, 30, 0, 0, time.UTC), FileName: "proofing-vat-7.ipynb",
		Results: []ResultRow{
			{"Water to weigh in", "252.41", "kg", "in three steps, by the scale"},
			{"Volume afterwards", "600.0", "L", "at 20 °C"},
			{"The alcoholometer then shows", "45.33", "% vol", "at the 26 °C of the vat; the true strength is 43.0"},
			{"Warming", "5.8", "°C", ""},
		},
		Inputs: []InputRow{
			{"volume of the vat", "356.35 L", "at 20 °C", true},
			{"strength of the vat", "72.4 %vol", "", false},
			{"jars", "jar; volume (mL)\n1; 200\n2; 180", "as they were filled", true},
		},
		CheckCode: "7K3M-2QPA-9XYZ",
		Provenance: []Row{
			{"Worksheet", "proofing-vat-7.ipynb"}, {"Fingerprint", strings.Repeat("9c41", 16)},
			{"Density", "OIML R 22 (1975), general formula"}, {"Inputs", "vat volume 356.35 L; strength 72.4 % vol; target 43 % vol"},
		},
	}
}

// sampleChart is a line chart made of shapes, as the charts of worksheets are.
func sampleChart() string {
	var d strings.Builder
	for i := range 41 {
		x := float64(i) * 6.5
		fmt.Fprintf(&d, "%s%.1f %.1f", map[bool]string{true: "M", false: "L"}[i == 0], 50+x, 20+130*(1-math.Exp(-x/150)))
	}
	var grid strings.Builder
	for i := range 5 {
		fmt.Fprintf(&grid, `<use xlink:href="#tick" x="0" y="%d"/>`, 20+i*35)
	}
	return `<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="360pt" height="200pt" viewBox="0 0 360 200">` +
		`<title>Strength falls from 72.4 to 43 % vol as 252 kg of water goes in</title><defs><path id="tick" d="M44 0H320" style="fill:none;stroke:#c9d2ce;stroke-width:0.8"/><clipPath id="frame"><rect x="50" y="10" width="270" height="155"/></clipPath></defs>` +
		grid.String() + `<path clip-path="url(#frame)" style="fill:none;stroke:#84482a;stroke-width:2.5" d="` + d.String() + `"/><path d="M50 10V165H320" fill="none" stroke="#1f2a2e"/></svg>`
}

func TestSample(t *testing.T) {
	page, err := HTML(sample())
	if err != nil {
		t.Fatal(err)
	}
	if *keep != "" {
		if err := os.WriteFile(*keep, page, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	root := parsePage(t, page)
	inOrder(t, string(page), "<h1>Proofing of vat 7</h1>", "14 October 2031", "proofing-vat-7.ipynb", "What comes out", "252.41", "What went in", "volume of the vat", "356.35 L", "changed", "strength of the vat", "1; 200",
		"The heart of the autumn run", `class="caution"`, "The first step", "<details", "water 252.41 kg", "Monday", "<svg", "This step stopped",
		"Where this comes from", "OIML R 22", "Check code", "7K3M-2QPA-9XYZ", "no signature")
	if n := strings.Count(string(page), ">Proofing of vat 7<"); n != 2 { // in the head and as the heading
		t.Errorf("the title stands %d times between tags; want 2", n)
	}
	assertSafe(t, root)
}
