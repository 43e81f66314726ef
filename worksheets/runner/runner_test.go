package runner_test

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
	"swanneck/kernel/symbols/whitelist"
	"swanneck/worksheets/inputs"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

func TestMain(m *testing.M) {
	engine.WorkerIfAsked(engine.Content{
		Library:  func() cell.Library { return symbols.NewLibrary() },
		Packages: whitelist.Packages,
		Values:   symbols.Values,
	})
	os.Exit(m.Run())
}

var made = []runner.Version{{What: "mathlib", Version: "1"}, {What: "swanneck", Version: "0.1.0"}}

// sheet makes a worksheet of code cells, whose identifiers are a, b, c….
func sheet(cells ...string) *notebook.Notebook {
	n := notebook.New()
	for i, source := range cells {
		c := notebook.NewCell(notebook.Code, source)
		c.ID = string(rune('a' + i))
		n.Cells = append(n.Cells, c)
	}
	return n
}

// executed runs a worksheet from a folder and leaves the notebook there as out.ipynb.
func executed(t *testing.T, dir string, o runner.Options, given map[string]string, cells ...string) (string, *runner.Outcome) {
	t.Helper()
	n := sheet(cells...)
	asked, err := inputs.Find(runner.Sources(n), symbols.NewLibrary())
	if err != nil {
		t.Log("inputs: ", err) // a cell that is to fail
	}
	o.Inputs = inputs.NewSet(asked)
	for name, value := range given {
		if err := o.Inputs.Give(name, value, dir); err != nil {
			t.Fatal(err)
		}
	}
	o.Versions, o.Engine.Folder = made, dir
	out, err := runner.Run(context.Background(), n, o)
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(dir, "out.ipynb")
	if err := notebook.WriteFile(path, out.Notebook); err != nil {
		t.Fatal(err)
	}
	return path, out
}

func file(t *testing.T, dir, name, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}

// edit replaces text in a file; it must be there.
func edit(t *testing.T, path, from, to string) {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(b), from) {
		t.Fatalf("%q is not in %s", from, path)
	}
	if err := os.WriteFile(path, []byte(strings.ReplaceAll(string(b), from, to)), 0o600); err != nil {
		t.Fatal(err)
	}
}

func check(t *testing.T, path string, o runner.CheckOptions) (*runner.Checked, string) {
	t.Helper()
	if o.Versions == nil {
		o.Versions = made
	}
	o.Library = symbols.NewLibrary()
	c, err := runner.Check(context.Background(), path, o)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	if err := c.Write(&b, filepath.Base(path)); err != nil {
		t.Fatal(err)
	}
	return c, b.String()
}

// water is a worksheet with two results, a text, a table and a chart.
var water = []string{
	`l := InputNumber("volume", 100, "L")
fmt.Println("for", l, "L")
fmt.Println("second line")`,
	`Result("Water", l*0.5, "kg", Within(0.1))
Result("Pure alcohol", l*0.4, "L", PlusMinus(0.2), Note("at 20 °C"))`,
	`c := plots.New("w", plots.Axis{Label: "x", Unit: "1"}, plots.Axis{Label: "y", Unit: "1"})
c.Line("l", []float64{1, 2}, []float64{1, l})
c`,
	`Make(Spirit{VolumeL: l, Strength: ABV(43)}, ABV(72.4))`,
}

// long keeps the tests of limits short.
var long = engine.Options{CellTime: 20 * time.Second}
