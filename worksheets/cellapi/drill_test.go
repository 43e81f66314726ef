package cellapi_test

import (
	"strings"
	"testing"

	"swanneck/worksheets/cellapi"
)

func TestDrill(t *testing.T) {
	d := cellapi.Drill(7, "water")
	if d.Kind() != "water" || d.Unit() != "kg" {
		t.Errorf("Drill(7, water) is of kind %q in %q", d.Kind(), d.Unit())
	}
	if d.String() != cellapi.Drill(7, " WATER ").String() || d.String() == cellapi.Drill(8, "water").String() {
		t.Error("a seed and a kind do not give their own problem")
	}
	solution := d.Solution().String()
	_, answer, found := strings.Cut(solution, "Answer: ")
	if !found {
		t.Fatalf("no answer in %q", solution)
	}
	figure, _, _ := strings.Cut(answer, " ")
	for _, shown := range []string{d.String(), d.HTML()} {
		if strings.Contains(shown, figure) || !strings.Contains(shown, "kilograms of water") {
			t.Errorf("the problem shows its answer %s, or not its question: %s", figure, shown)
		}
	}
	if v := d.Check(strings.Replace(figure, ".", ",", 1) + " kg"); !v.Right() || v.String() != "right" || !v.Read() {
		t.Errorf("Check(%s kg) = %v", figure, v)
	}
	if v := d.Check("0,4 t"); v.Right() || !v.Read() || v.OffBy() == 0 {
		t.Errorf("Check(0,4 t) = %v, off by %v", v, v.OffBy())
	}
	if !strings.Contains(solution, "volumes added") || !strings.Contains(d.Solution().HTML(), "<ol>") {
		t.Errorf("the solution does not name the usual mistakes, or has no steps: %s", solution)
	}
	for answer, want := range map[string]string{"": "there is no answer", "400": "has no unit", "12 L": "kg", "warm": "begin with a number", "1,512 kg": "1.512"} {
		v := d.Check(answer)
		if v.Right() || v.Read() || !strings.Contains(v.String(), want) {
			t.Errorf("Check(%q) = %v; want it not read, with %q", answer, v, want)
		}
	}
}

func TestDrillSet(t *testing.T) {
	set := cellapi.DrillSet(3, 20, "any")
	kinds := map[string]int{}
	for _, d := range set {
		kinds[d.Kind()]++
	}
	for _, k := range cellapi.DrillKinds() {
		if kinds[k] != 2 {
			t.Errorf("of 20 problems %d are of the kind %q; want 2", kinds[k], k)
		}
	}
	for _, d := range cellapi.DrillSet(3, 5, "bottles") {
		if d.Kind() != "bottles" {
			t.Errorf("a set of bottles holds %q", d.Kind())
		}
	}
}

func TestDrillsThatAreNone(t *testing.T) {
	for want, f := range map[string]func(){
		`Drill: there is no kind "beer"`:  func() { cellapi.Drill(1, "beer") },
		"DrillSet: 0 problems":            func() { cellapi.DrillSet(1, 0, "") },
		`DrillSet: there is no kind "be`:  func() { cellapi.DrillSet(1, 3, "beer") },
		"not made by Drill":               func() { cellapi.DrillProblem{}.Check("1 kg") },
		"was not read":                    func() { cellapi.Drill(1, "water").Check("much").OffBy() },
		`PrintedTable: there is no table`: func() { cellapi.PrintedTable("height", "", "") },
		"PrintedTable: \"warm\"":          func() { cellapi.PrintedTable("water", "warm", "") },
		"PrintedTable: the row 120":       func() { cellapi.PrintedTable("strength", "120", "") },
	} {
		func() {
			defer func() {
				s, ok := recover().(*cellapi.Stop)
				if !ok || !strings.Contains(s.Error(), want) || strings.Contains(s.Error(), "\n") {
					t.Errorf("%v; want one line with %q", s, want)
				}
			}()
			f()
			t.Errorf("accepted; want %q", want)
		}()
	}
}

// Source: 27 CFR part 30, Table 1, directions for interpolation: a reading of 80 at 68 °F and 69 °F.
func TestPrintedTable(t *testing.T) {
	table := cellapi.PrintedTable("proof", "80", "68..69")
	if !strings.HasSuffix(table.String(), "80  76.4  76.0") {
		t.Errorf("PrintedTable(proof, 80, 68..69) = %s; 27 CFR part 30 has 76.4 and 76.0", table)
	}
	if h := table.HTML(); !strings.Contains(h, ">76.4<") || !strings.Contains(h, "<caption>") {
		t.Errorf("the table as HTML: %s", h)
	}
}
