package main

import (
	"errors"
	"fmt"
	"path/filepath"

	"swanneck/worksheets/drills/walltable"
	"swanneck/worksheets/figure"
	"swanneck/worksheets/report"
	"swanneck/worksheets/wholefile"
)

type tablesCommand struct {
	Tables    []string `arg:"" optional:"" name:"table" help:"Tables to write: strength, proof, water, litres, gallons, mass, weight. All of them if none is given."`
	Down      string   `help:"Rows, as 30..80/1, or single figures set apart by semicolons, as \"37.5; 40; 43\"." placeholder:"RANGE"`
	Across    string   `help:"Columns, written like the rows." placeholder:"RANGE"`
	Reference string   `help:"Temperature for which the alcoholometer is marked (strength), or of strengths and volumes (water), as \"15 °C\"." placeholder:"TEMP"`
	Out       string   `help:"Folder for what comes out." default:"out"`
}

// Run writes correction tables to be printed on A4 across and hung up, a file a table.
func (c *tablesCommand) Run() error {
	sorts := walltable.Sorts()
	if len(c.Tables) > 0 {
		sorts = nil
		for _, s := range c.Tables {
			sorts = append(sorts, walltable.Sort(s))
		}
	}
	if len(sorts) > 1 && (c.Down != "" || c.Across != "" || c.Reference != "") {
		return withStatus(exitUsage, errors.New("--down, --across and --reference go with one table; name it"))
	}
	o, err := c.options()
	if err != nil {
		return withStatus(exitUsage, err)
	}
	files := make([]wholefile.File, len(sorts))
	for i, s := range sorts {
		t, err := walltable.New(s, o)
		if err != nil {
			return withStatus(exitUsage, err)
		}
		page, err := report.Wall(report.WallTable{Title: t.Title, Down: t.Down, Across: t.Across, Heads: t.Heads, Rows: t.Rows,
			Cells: t.Cells, StrongColumn: t.StrongColumn, Notes: t.Notes})
		if err != nil {
			return withStatus(exitUsage, err)
		}
		files[i] = wholefile.File{Path: filepath.Join(c.Out, "table-"+string(s)+".html"), Data: page}
	}
	if err := makeFolder(c.Out); err != nil {
		return err
	}
	if err := wholefile.WriteAll(files...); err != nil {
		return err
	}
	for i, s := range sorts {
		fmt.Printf("%-9s %s\n", s, files[i].Path)
	}
	return nil
}

func (c *tablesCommand) options() (o walltable.Options, err error) {
	if c.Down != "" {
		if o.Down, err = walltable.Edges(c.Down); err != nil {
			return o, fmt.Errorf("--down: %w", err)
		}
	}
	if c.Across != "" {
		if o.Across, err = walltable.Edges(c.Across); err != nil {
			return o, fmt.Errorf("--across: %w", err)
		}
	}
	if c.Reference != "" {
		if o.Reference, err = figure.Temperature(c.Reference); err != nil {
			return o, fmt.Errorf("--reference: %w", err)
		}
	}
	return o, nil
}
