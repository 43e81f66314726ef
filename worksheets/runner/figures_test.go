package runner_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"swanneck/kernel/engine"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

// Figures gives what Run gives, for every worksheet of ours and for cells that go wrong.
func TestFiguresAreThoseOfRun(t *testing.T) {
	shipped, err := filepath.Glob("../library/*.ipynb")
	if err != nil || len(shipped) == 0 {
		t.Fatalf("no worksheets: %v", err)
	}
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "t.csv"), []byte("a\n1\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	type trial struct {
		name  string
		sheet *notebook.Notebook
	}
	var trials []trial
	for _, path := range shipped {
		n, err := runner.Load(path)
		if err != nil {
			t.Fatal(err)
		}
		trials = append(trials, trial{path, n})
	}
	for _, cells := range [][]string{
		{`Result("a", 1, "kg")`, "", "  ", `fmt.Println(1); Result("b", 2, "L", PlusMinus(0.5)); 3`},
		{`Result("a", 1, "kg")`, `Result("a", 1, "kg")`},
		{`Result("a", 1, "kg"); Result("a", 2, "kg")`},
		{`Result("a", 1, "kg"); nothing`},
		{`Result("a", 1, "kg")`, `Result("b", Table("t.csv").Numbers("a", "1")[0], "kg"); var s []int; s[3]++`},
	} {
		trials = append(trials, trial{strings.Join(cells, " | "), sheet(cells...)})
	}
	for _, c := range trials {
		o := engine.Options{Folder: dir}
		out, err := runner.Run(context.Background(), c.sheet, runner.Options{Engine: o})
		if err != nil {
			t.Fatal(err)
		}
		got, read, err := runner.Figures(context.Background(), runner.Sources(c.sheet), o)
		var f *runner.CellFailure
		if err != nil && !errors.As(err, &f) {
			t.Fatalf("%s: %v", c.name, err)
		}
		switch {
		case out.Failure != nil:
			if f == nil || f.Error() != out.Failure.Error() || got != nil {
				t.Errorf("%s: %v, %v; Run says %v", c.name, got, err, out.Failure)
			}
		case err != nil || !reflect.DeepEqual(got, out.Results):
			t.Errorf("%s: %v, %v; Run gives %v", c.name, got, err, out.Results)
		}
		if strings.Contains(c.name, "t.csv") && (len(read) != 1 || read[0].Name != "t.csv") {
			t.Errorf("%s: it read %v", c.name, read)
		}
	}
}
