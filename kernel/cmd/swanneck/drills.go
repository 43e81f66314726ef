package main

import (
	"fmt"
	"os"
	"path/filepath"

	"swanneck/worksheets/drills"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/report"
	"swanneck/worksheets/wholefile"
)

type drillsCommand struct {
	Seed  int64    `help:"Seed of the set: the same seed, count and kinds give the same problems." default:"1"`
	Count int      `help:"Number of problems." default:"10"`
	Kind  []string `help:"Kind of problem, as \"true strength\" or water; may stand several times. All kinds if not given." placeholder:"KIND" sep:"none"`
	Out   string   `help:"Folder for what comes out." default:"out"`
}

// Run writes a set of proofing problems as a paper for the class and a key for the trainer.
func (c *drillsCommand) Run() error {
	kinds := make([]drills.Kind, len(c.Kind))
	for i, k := range c.Kind {
		kind, err := drills.Named(k)
		if err != nil {
			return withStatus(exitUsage, fmt.Errorf("--kind: %w", err))
		}
		kinds[i] = kind
	}
	set, err := drills.NewSet(c.Seed, c.Count, kinds...)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	key := proseDocument(set.Key())
	for _, v := range versions() {
		key.Provenance = append(key.Provenance, report.Row{Label: v.What, Value: v.Version})
	}
	paper := proseDocument(set.Paper())
	files := make([]wholefile.File, 2)
	for i, f := range []struct {
		what string
		doc  report.Document
	}{{"paper", paper}, {"key", key}} {
		page, err := report.HTML(f.doc)
		if err != nil {
			return err
		}
		files[i] = wholefile.File{Path: filepath.Join(c.Out, fmt.Sprintf("drills-%d-%s.html", c.Seed, f.what)), Data: page}
	}
	if err := makeFolder(c.Out); err != nil {
		return err
	}
	if err := wholefile.WriteAll(files...); err != nil {
		return err
	}
	fmt.Printf("paper  %s\nkey    %s\n", files[0].Path, files[1].Path)
	return nil
}

// proseDocument returns pieces of Markdown as a document for a report.
func proseDocument(pieces []string) report.Document {
	n := notebook.New()
	for _, p := range pieces {
		n.Cells = append(n.Cells, notebook.NewCell(notebook.Markdown, p))
	}
	return report.Document{Notebook: n, Together: true}
}

// makeFolder makes the folder for what comes out.
func makeFolder(dir string) error {
	if dir == "" {
		return withStatus(exitUsage, fmt.Errorf("--out is empty; name a folder"))
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("%s: cannot make this folder: %w", dir, wholefile.Cause(err))
	}
	return nil
}
