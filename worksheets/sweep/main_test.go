package sweep

import (
	"flag"
	"fmt"
	"os"
	"testing"

	"swanneck/kernel/cell"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
	"swanneck/kernel/symbols/whitelist"
	"swanneck/worksheets/inputs"
)

func TestMain(m *testing.M) {
	engine.WorkerIfAsked(engine.Content{
		Library:  func() cell.Library { return symbols.NewLibrary() },
		Packages: whitelist.Packages,
		Values:   symbols.Values,
	})
	os.Exit(m.Run())
}

// Random tests draw the same in every run, so that a run can be repeated; -rapid.seed draws otherwise.
func init() {
	if err := flag.Set("rapid.seed", "1979"); err != nil {
		panic(err)
	}
}

// sheet is a worksheet with inputs of several kinds. Its third cell cannot water weak spirit down; its counter would tell
// if one scenario saw what another left.
var sheet = []string{
	`pot := InputStrength("pot strength", ABV(45), Between(ABV(20), ABV(70)))
volume := InputNumber("pot volume", 390, "L", Between(10, 1000))
still := InputChoice("still", "pot", []string{"pot", "column"})
filtered := InputYesNo("filtered", false)
filled := InputDate("filled on", "2026-03-14")
InputText("lot", "T-1")
share := InputNumber("share (by volume)", 0.5, "1")
room := InputTemperature("room", Celsius(20))
var runs int`,
	``,
	`runs++
water := Reduce(Spirit{VolumeL: volume, Strength: pot}, ABV(40)).WaterKg
Result("water", water*share, "kg")`,
	`if still == "column" {
	Result("day", float64(filled.Day()), "1", Note("of the month"))
}
fmt.Println(filtered, room)
Result("runs", float64(runs), "1")`,
}

func set(t testing.TB, given ...string) *inputs.Set {
	t.Helper()
	asked, err := inputs.Find(sheet, symbols.NewLibrary())
	if err != nil {
		t.Fatal(err)
	}
	s := inputs.NewSet(asked)
	for _, g := range given {
		if err := s.Assign(g, "."); err != nil {
			t.Fatal(err)
		}
	}
	return s
}

// said writes the scenarios of a plan, a line each.
func said(p *Plan) []string {
	var out []string
	for _, s := range p.Scenarios {
		line := ""
		for i, v := range s {
			if i > 0 {
				line += " | "
			}
			line += p.Columns[i].say(v)
		}
		out = append(out, line)
	}
	return out
}

func job(t testing.TB, p *Plan) *Job {
	t.Helper()
	return &Job{Worksheet: "pot", Sources: sheet, Plan: p, Workers: 2, Folder: t.TempDir()}
}

func mustRead(t testing.TB, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// tables returns everything that a finished sweep left, as one text.
func tables(t testing.TB, f Files) string {
	t.Helper()
	text := ""
	for _, name := range []string{f.CSV, f.Parquet, f.Chart} {
		if name != "" {
			text += fmt.Sprintf("== %d\n%s", len(name), mustRead(t, name))
		}
	}
	return text
}

// setOf is the inputs of another worksheet, of one cell.
func setOf(t testing.TB, source string) *inputs.Set {
	t.Helper()
	asked, err := inputs.Find([]string{source}, symbols.NewLibrary())
	if err != nil {
		t.Fatal(err)
	}
	return inputs.NewSet(asked)
}
