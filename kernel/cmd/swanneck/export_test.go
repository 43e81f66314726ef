package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"swanneck/kernel/display"
	"swanneck/kernel/symbols"
	"swanneck/worksheets/export"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

// A worksheet as a Go program prints what the worksheet shows: cells are Go.
func TestExportPrintsTheSame(t *testing.T) {
	if _, err := exec.LookPath("go"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("no go command")
		}
		t.Skip("there is no go command here to build the program with")
	}
	root, err := filepath.Abs("../../..")
	if err != nil {
		t.Fatal(err)
	}
	sheets, err := filepath.Glob(filepath.Join(root, "worksheets/library/*.ipynb"))
	if err != nil || len(sheets) == 0 {
		t.Fatalf("no worksheets: %v", err)
	}
	for _, path := range append(sheets, "testdata/names.ipynb") {
		t.Run(filepath.Base(path), func(t *testing.T) {
			sheet, err := runner.Load(path)
			if err != nil {
				t.Fatal(err)
			}
			out, err := runner.Run(context.Background(), sheet, runner.Options{})
			if err != nil {
				t.Fatal(err)
			}
			if out.Failure != nil {
				t.Fatal(out.Failure)
			}
			var cells []export.Cell
			var want strings.Builder
			for _, c := range out.Notebook.Cells {
				if c.Type != notebook.Code {
					continue
				}
				cells = append(cells, export.Cell{Name: fmt.Sprintf("cell %d", len(cells)+1), Source: c.Source})
				for _, o := range c.Outputs {
					if o.Type == notebook.Stream && o.Name == "stderr" {
						continue
					}
					if o.Type == notebook.Stream {
						want.WriteString(o.Text)
					} else {
						text, _ := o.Data.Text(display.Plain)
						want.WriteString(strings.TrimSuffix(text, "\n") + "\n")
					}
				}
			}
			text, err := export.Program("test", cells, symbols.NewLibrary())
			if err != nil {
				t.Fatal(err)
			}
			// It must stand in the module to be built; git does not see this folder.
			dir, err := os.MkdirTemp(outFolder(t, root), "exported-")
			if err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { os.RemoveAll(dir) })
			if err := os.WriteFile(filepath.Join(dir, "main.go"), text, 0o644); err != nil {
				t.Fatal(err)
			}
			for _, args := range [][]string{{"vet", "-composites=false", "."}, {"run", "."}} {
				cmd := exec.Command("go", args...)
				cmd.Dir = dir
				var stdout, stderr bytes.Buffer
				cmd.Stdout, cmd.Stderr = &stdout, &stderr
				if err := cmd.Run(); err != nil {
					t.Fatalf("go %s: %v\n%s\n%s", args[0], err, stderr.String(), text)
				}
				if args[0] == "run" && stdout.String() != want.String() {
					t.Errorf("the program prints\n%s\nthe worksheet shows\n%s", stdout.String(), want.String())
				}
			}
		})
	}
}

func outFolder(t *testing.T, root string) string {
	t.Helper()
	dir := filepath.Join(root, "out")
	if err := os.MkdirAll(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	return dir
}
