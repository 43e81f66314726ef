package runner

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"runtime"
	"strings"
	"time"
	"unicode"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
	"swanneck/worksheets/inputs"
	"swanneck/worksheets/notebook"
)

// Options says how to run a worksheet. The zero value is the usual case.
type Options struct {
	Engine   engine.Options
	Versions []Version             // of the program and its sources, for the provenance
	Inputs   *inputs.Set           // what the worksheet asks for and was given; nil: it was not looked at
	Progress func(done, total int) // called before the first cell and after each one; may be nil

	ResultsFiles  bool // Write leaves the results as JSON and CSV too
	Markdown      bool // Write leaves the report as Markdown too
	KeepInputsOut bool // Write leaves reports that do not tell the inputs, and no notebook
}

// Version is a row of provenance.
type Version struct{ What, Version string }

// Outcome is what a run gave.
type Outcome struct {
	Notebook *notebook.Notebook // executed
	Results  []display.ResultData
	Cells    []int        // where each result was declared, from 1, code cells only
	Inputs   []inputs.Row // what the worksheet asked for and got
	Failure  *CellFailure // nil if every cell succeeded
}

// CellFailure says which cell did not succeed. The cells behind it were not run.
type CellFailure struct {
	Cell    int // from 1, code cells only
	Failure *engine.Failure
}

func (f *CellFailure) Error() string {
	first := f.Failure.Items[0]
	at := fmt.Sprintf("cell %d", f.Cell)
	if first.Line > 0 {
		at += fmt.Sprintf(", line %d:%d", first.Line, first.Col)
	}
	s := at + ": " + first.Msg
	if n := len(f.Failure.Items) - 1; n > 0 {
		s += fmt.Sprintf("; and %d more", n)
	}
	return s
}

// Said returns what the cells printed to standard output, a line each, with the number of the cell.
func (o *Outcome) Said() []Line {
	var out []Line
	n := 0
	for _, c := range o.Notebook.Cells {
		if c.Type != notebook.Code {
			continue
		}
		n++
		for _, x := range c.Outputs {
			if x.Type != notebook.Stream || x.Name != "stdout" {
				continue
			}
			for l := range strings.Lines(x.Text) {
				out = append(out, Line{n, strings.Map(plainRune, strings.TrimRight(l, "\r\n"))})
			}
		}
	}
	return out
}

// Line is a line that a cell printed.
type Line struct {
	Cell int // from 1
	Text string
}

// plainRune keeps a worksheet from speaking to the terminal.
func plainRune(r rune) rune {
	if unicode.IsControl(r) && r != '\t' {
		return '\uFFFD'
	}
	return r
}

// ErrInput marks errors of what was handed in: a file that is not there, not a notebook, not in Go.
var ErrInput = errors.New("input")

// Sources returns the code cells of a worksheet, in order.
func Sources(n *notebook.Notebook) []string {
	var out []string
	for _, c := range n.Cells {
		if c.Type == notebook.Code {
			out = append(out, c.Source)
		}
	}
	return out
}

// Load reads a worksheet and refuses what cannot be run. Its errors wrap ErrInput.
func Load(path string) (*notebook.Notebook, error) {
	n, err := notebook.ReadFile(path)
	if err != nil {
		return nil, inputError{err}
	}
	if lang := n.Language(); lang != "" && lang != "go" {
		return nil, inputError{fmt.Errorf("%s: the notebook's language is %s; a worksheet's is go", path, lang)}
	}
	return n, nil
}

type inputError struct{ error }

func (e inputError) Is(target error) bool { return target == ErrInput }
func (e inputError) Unwrap() error        { return e.error }

// Run runs the code cells of a worksheet in order, in a fresh engine, and returns an executed copy. It stops at the
// first cell that does not succeed. The error is for what the engine cannot do; a failing cell is in the outcome.
func Run(ctx context.Context, sheet *notebook.Notebook, o Options) (*Outcome, error) {
	n, err := clone(sheet)
	if err != nil {
		return nil, err
	}
	n.EnsureIDs()
	n.ClearOutputs()
	if o.Inputs != nil {
		o.Engine.Inputs = o.Inputs.Values()
	}
	e, err := engine.Start(o.Engine)
	if err != nil {
		return nil, err
	}
	defer e.Close()
	total := 0
	for _, c := range n.Cells {
		if c.Type == notebook.Code {
			total++
		}
	}
	progress := o.Progress
	if progress == nil {
		progress = func(int, int) {}
	}
	progress(0, total)
	out := &Outcome{Notebook: n}
	if o.Inputs != nil {
		out.Inputs = o.Inputs.Rows()
	}
	seen := map[string]int{}
	count := 0
	for _, c := range n.Cells {
		if c.Type != notebook.Code {
			continue
		}
		count++
		if strings.TrimSpace(c.Source) == "" {
			progress(count, total)
			continue
		}
		rec := &recorder{cell: c, count: count}
		err := e.Run(ctx, fmt.Sprintf("cell %d", count), c.Source, rec)
		k := count
		c.ExecutionCount = &k
		var f *engine.Failure
		if errors.As(err, &f) {
			c.Outputs = append(c.Outputs, notebook.ErrorOutput(string(f.Kind), f.Items[0].String(), f.Lines()))
			out.Failure = &CellFailure{Cell: count, Failure: f}
			break
		}
		if err != nil {
			return nil, err
		}
		if f := declaredTwice(seen, count, rec.results); f != nil {
			c.Outputs = append(c.Outputs, notebook.ErrorOutput(string(f.Kind), f.Items[0].Msg, f.Lines()))
			out.Failure = &CellFailure{Cell: count, Failure: f}
			break // the results of a cell that did not succeed do not count
		}
		for _, r := range rec.results {
			out.Results, out.Cells = append(out.Results, r), append(out.Cells, count)
		}
		progress(count, total)
	}
	stamp(n, o, e.FilesRead())
	return out, nil
}

func clone(n *notebook.Notebook) (*notebook.Notebook, error) {
	b, err := n.Bytes()
	if err != nil {
		return nil, err
	}
	return notebook.Read(b)
}

// stamp writes the provenance into the notebook's own metadata: worksheets/FORMATS.md says what stands there.
func stamp(n *notebook.Notebook, o Options, read []engine.FileRead) {
	versions := map[string]any{}
	for _, v := range o.Versions {
		versions[v.What] = v.Version
	}
	run := map[string]any{
		"clock":        o.Engine.CellClock().Format(time.RFC3339),
		"seed":         o.Engine.Seed,
		"versions":     versions,
		"architecture": runtime.GOARCH,
		"sources":      sourcesForNotebook(n),
	}
	if len(read) > 0 {
		files := map[string]any{}
		for _, f := range read {
			files[f.Name] = fmt.Sprintf("sha256:%x", f.SHA256)
		}
		run["files"] = files
	}
	if o.Inputs != nil && len(o.Inputs.Values()) > 0 {
		given := map[string]any{}
		for name, text := range o.Inputs.Values() {
			given[name] = text
		}
		run["inputs"] = given
	}
	n.SetOwn("run", run)
}

// Names returns the two files a run leaves in a folder.
func Names(dir, sheet string) (ipynb, html string) {
	base := strings.TrimSuffix(filepath.Base(sheet), filepath.Ext(sheet))
	return filepath.Join(dir, base+".ipynb"), filepath.Join(dir, base+".html")
}
