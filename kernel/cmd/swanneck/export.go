package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"swanneck/kernel/cell"
	"swanneck/kernel/symbols"
	"swanneck/worksheets/export"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
	"swanneck/worksheets/wholefile"
)

type exportCommand struct {
	Worksheet string `arg:"" help:"Worksheet to write as a Go program."`
	To        string `help:"File to write; standard output if not given." placeholder:"FILE"`
}

func (c *exportCommand) Run() error {
	sheet, err := runner.Load(c.Worksheet)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	var cells []export.Cell
	for _, s := range sheet.Cells {
		if s.Type == notebook.Code {
			cells = append(cells, export.Cell{Name: fmt.Sprintf("cell %d", len(cells)+1), Source: s.Source})
		}
	}
	title := strings.TrimSuffix(filepath.Base(c.Worksheet), filepath.Ext(c.Worksheet))
	text, err := export.Program(title, cells, symbols.NewLibrary())
	if err != nil {
		var list cell.ErrorList
		if errors.As(err, &list) {
			err = fmt.Errorf("%s, line %w", strings.TrimSuffix(err.Error(), ": "+list.Error()), list[0])
		}
		return withStatus(exitFailed, fmt.Errorf("%s: %w", c.Worksheet, err))
	}
	if c.To == "" {
		_, err := os.Stdout.Write(text)
		return err
	}
	return wholefile.Write(c.To, text)
}
