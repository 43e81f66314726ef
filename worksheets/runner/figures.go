package runner

import (
	"context"
	"errors"
	"fmt"
	"strings"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// Figures runs the code cells of a worksheet as Run does, in a fresh engine, and returns what it declares and the files
// it read; whatever else it shows is dropped. It is for many runs of one worksheet. A cell that does not succeed is a
// *CellFailure, and then there are no results; any other error is for what the engine cannot do.
func Figures(ctx context.Context, sources []string, o engine.Options) ([]display.ResultData, []engine.FileRead, error) {
	e, err := engine.Start(o)
	if err != nil {
		return nil, nil, err
	}
	defer e.Close()
	var out []display.ResultData
	seen := map[string]int{}
	for i, src := range sources {
		if strings.TrimSpace(src) == "" {
			continue
		}
		l := &listener{}
		err := e.Run(ctx, fmt.Sprintf("cell %d", i+1), src, l)
		var f *engine.Failure
		switch {
		case errors.As(err, &f):
		case err != nil:
			return nil, nil, err
		default:
			f = declaredTwice(seen, i+1, l.results)
		}
		if f != nil {
			return nil, e.FilesRead(), &CellFailure{Cell: i + 1, Failure: f}
		}
		out = append(out, l.results...)
	}
	return out, e.FilesRead(), nil
}

// listener takes declared results and nothing else.
type listener struct{ results []display.ResultData }

func (*listener) Stream(string, string) {}
func (*listener) Value(display.Bundle)  {}
func (l *listener) Display(b display.Bundle) {
	if v, ok := b[display.Result]; ok {
		if d, ok := declared(v); ok {
			l.results = append(l.results, d)
		}
	}
}

// declaredTwice notes the results of a cell, and returns a failure if a name stands in the worksheet already.
func declaredTwice(seen map[string]int, cell int, results []display.ResultData) *engine.Failure {
	for _, r := range results {
		if first, twice := seen[r.Name]; twice {
			return &engine.Failure{Kind: engine.Stopped, Items: []engine.Place{{Msg: fmt.Sprintf(
				"the result %q was declared in cell %d already; a result's name stands once in a worksheet", r.Name, first)}}}
		}
		seen[r.Name] = cell
	}
	return nil
}
