package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"

	"swanneck/worksheets/library"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/report"
	"swanneck/worksheets/wholefile"
)

type listCommand struct{}

// Run prints the worksheets that come with the program.
func (listCommand) Run() error {
	names := library.Names()
	wide := 0
	for _, n := range names {
		wide = max(wide, len(n))
	}
	for _, name := range names {
		b, err := library.Worksheet(name)
		if err != nil {
			return err
		}
		sheet, err := notebook.Read(b)
		if err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		if _, err := fmt.Printf("%-*s  %s\n", wide, name, report.Title(sheet)); err != nil {
			return err
		}
	}
	fmt.Println("\nswanneck new NAME puts one of them into this folder, to be filled in and run.")
	return nil
}

type newCommand struct {
	Name string `arg:"" help:"Worksheet to start from, as swanneck list names it."`
	To   string `help:"File to write; NAME.ipynb in this folder if not given." placeholder:"FILE"`
}

// Run writes a worksheet that comes with the program. Nothing that is there is replaced.
func (c *newCommand) Run() error {
	name := strings.TrimSuffix(c.Name, ".ipynb")
	b, err := library.Worksheet(name)
	if err != nil {
		return withStatus(exitUsage, fmt.Errorf("%w; swanneck list shows all", err))
	}
	to := c.To
	if to == "" {
		to = name + ".ipynb"
	}
	if _, err := os.Lstat(to); !errors.Is(err, fs.ErrNotExist) {
		return withStatus(exitUsage, fmt.Errorf("%s is there already; name another file with --to", to))
	}
	if err := wholefile.Write(to, b); err != nil {
		return err
	}
	_, err = fmt.Printf("%s\n", to)
	return err
}
