package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"time"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

type evalCommand struct {
	limits
	Code string `arg:"" help:"Go, as in a cell of a worksheet; - reads it from standard input."`
}

func (c *evalCommand) Run() error {
	o, err := c.engine(time.Time{})
	if err != nil {
		return withStatus(exitUsage, err)
	}
	code := c.Code
	if code == "-" {
		b, err := io.ReadAll(os.Stdin)
		if err != nil {
			return withStatus(exitUsage, fmt.Errorf("standard input: %w", err))
		}
		code = string(b)
	}
	o.Folder = "."
	e, err := engine.Start(o)
	if err != nil {
		return err
	}
	defer e.Close()
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	out := &printer{}
	err = e.Run(ctx, "cell", code, out)
	var f *engine.Failure
	if errors.As(err, &f) {
		for _, l := range f.Items {
			fmt.Fprintln(os.Stderr, l)
		}
		return &statusError{status: exitFailed}
	}
	return errors.Join(err, out.err)
}

// printer prints what a cell shows.
type printer struct{ err error }

func (p *printer) Stream(name, text string) {
	w := os.Stdout
	if name == "stderr" {
		w = os.Stderr
	}
	p.print(w, text)
}

func (p *printer) Display(b display.Bundle) { p.bundle(b) }
func (p *printer) Value(b display.Bundle)   { p.bundle(b) }

func (p *printer) bundle(b display.Bundle) {
	text, _ := b[display.Plain].(string)
	p.print(os.Stdout, strings.TrimSuffix(text, "\n")+"\n")
}

func (p *printer) print(w io.Writer, text string) {
	if _, err := io.WriteString(w, text); err != nil && p.err == nil {
		p.err = fmt.Errorf("standard output: %w", err)
	}
}
