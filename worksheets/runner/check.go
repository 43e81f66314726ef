package runner

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"swanneck/kernel/cell"
	"swanneck/kernel/engine"
	"swanneck/worksheets/entry"
	"swanneck/worksheets/inputs"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/results"
)

// CheckOptions says how to check an executed worksheet.
type CheckOptions struct {
	Engine   engine.Options // the limits of cells; clock, seed and inputs are those of the earlier run
	Versions []Version      // of this program and its sources
	Library  cell.Library   // finds the inputs
	Folder   string         // where the worksheet's tables are; empty: beside it
	Against  string         // results file to compare with; empty: what the worksheet itself holds
}

// Checked is what a check found.
type Checked struct {
	Results, Others int          // how many were compared
	Differences     []Difference // by cell
	SameFailure     string       // both runs stopped with this; empty: they did not
	Notes           []string     // what is worth knowing though it is no difference
	Why             []string     // what may have made the differences
	Code, CodeThen  string       // check codes of this run and of the earlier one; CodeThen is empty if that is not known
}

// Difference is something that two runs do not have in common.
type Difference struct {
	Cell int // from 1, code cells only
	What string
	More []string // further lines: both versions
}

// Same says whether the earlier run and this one succeeded and gave the same.
func (c *Checked) Same() bool { return len(c.Differences) == 0 && c.SameFailure == "" }

// Check runs an executed worksheet again in a fresh engine, with the clock, seed and inputs of its run, and compares. An
// error that is ErrInput says that the worksheet cannot be checked.
func Check(ctx context.Context, path string, o CheckOptions) (*Checked, error) {
	sheet, err := Load(path)
	if err != nil {
		return nil, err
	}
	if o.Folder == "" {
		o.Folder = filepath.Dir(path)
	}
	before, err := earlierRun(path, sheet, o)
	if err != nil {
		return nil, inputError{err}
	}
	for _, name := range sortedKeys(before.Files) {
		if _, err := os.Stat(filepath.Join(o.Folder, filepath.FromSlash(name))); err != nil {
			return nil, inputError{fmt.Errorf("%s read %s, which is not in %s; --folder says where its tables are", path, name, o.Folder)}
		}
	}
	o.Engine.Clock, o.Engine.Seed, o.Engine.Folder = before.Clock, before.Seed, o.Folder
	out, err := Run(ctx, sheet, Options{Engine: o.Engine, Versions: o.Versions, Inputs: before.given})
	if err != nil {
		return nil, err
	}
	executed, err := clone(out.Notebook)
	if err != nil {
		return nil, err
	}
	now, err := showsOf(executed)
	if err != nil {
		return nil, err
	}
	after, err := readProvenance(executed)
	if err != nil {
		return nil, err
	}
	if f := out.Failure; f != nil && unfinished(f.Failure.Kind) && !sameFailure(before.shows, now, f.Cell) {
		return nil, inputError{fmt.Errorf("%s cannot be run to its end: %w", path, f)}
	}
	c := &Checked{Results: len(before.shows.results), Code: CheckCode(out), CodeThen: before.code}
	c.compare(before, now, out)
	c.reasons(before, after, executed)
	return c, nil
}

// unfinished says whether a cell failed for want of time, memory or patience, not by what it computes.
func unfinished(k engine.Kind) bool {
	return k == engine.Time || k == engine.Memory || k == engine.Crashed || k == engine.Halted
}

// earlier is the run that a check compares with.
type earlier struct {
	provenance
	given   *inputs.Set
	shows   *shows // of a results file the results alone
	code    string // check code; empty if not known
	altered string // that what is compared with was changed after its run; empty: it was not, as far as can be told
}

// earlierRun reads what is to be compared with. Its errors are for ErrInput.
func earlierRun(path string, sheet *notebook.Notebook, o CheckOptions) (*earlier, error) {
	asked, err := inputs.Find(Sources(sheet), o.Library)
	var refused cell.ErrorList
	if err != nil && !errors.As(err, &refused) { // a cell that is refused is met by the run
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	if o.Against != "" {
		return earlierResults(o.Against, sheet, asked, o.Folder)
	}
	p, err := readProvenance(sheet)
	if errors.Is(err, errNotExecuted) {
		if name := otherKernel(sheet); name != "" {
			return nil, fmt.Errorf("%s is a notebook of another kernel (%q); want what swanneck run left", path, name)
		}
	}
	if err != nil {
		return nil, fmt.Errorf("%s %w", path, err)
	}
	e := &earlier{provenance: *p, given: inputs.NewSet(asked)}
	for _, name := range sortedKeys(p.Inputs) {
		if err := e.given.Restore(name, p.Inputs[name]); err != nil {
			return nil, fmt.Errorf("%s: the run was given the input %q: %w", path, name, err)
		}
	}
	if e.shows, err = showsOf(sheet); err != nil {
		return nil, fmt.Errorf("%s %w", path, err)
	}
	if p.Sources != nil {
		then := &Outcome{Inputs: e.given.Rows(), Notebook: notebook.New()}
		for _, r := range e.shows.results {
			if r.cell != e.shows.stopped {
				then.Results, then.Cells = append(then.Results, r.ResultData), append(then.Cells, r.cell)
			}
		}
		f := resultsOf(then)
		f.Sources = p.Sources
		if e.shows.stopped > 0 {
			f.Stopped = "stopped"
		}
		e.code = f.Code()
	}
	return e, nil
}

// otherKernel names the kernel of a notebook if that is not this program's.
func otherKernel(n *notebook.Notebook) string {
	spec, _ := n.Metadata["kernelspec"].(map[string]any)
	name, _ := spec["name"].(string)
	if name == "swanneck" {
		return ""
	}
	return name
}

// earlierResults is earlierRun for a results file.
func earlierResults(file string, sheet *notebook.Notebook, asked []entry.Input, folder string) (*earlier, error) {
	text, err := os.ReadFile(file)
	if err != nil {
		return nil, err
	}
	f, err := results.Read(text)
	if err != nil {
		return nil, fmt.Errorf("%s %w", file, err)
	}
	e := &earlier{
		provenance: provenance{Architecture: f.Architecture, Clock: f.Clock, Files: f.Files, Seed: f.Seed, Sources: f.Sources, Versions: f.Versions},
		given:      inputs.NewSet(asked),
		shows:      &shows{},
		code:       f.CheckCode,
	}
	if code := f.Code(); code != f.CheckCode {
		e.altered = fmt.Sprintf("%s was changed after its run: its contents have the check code %s, and it says %s", file, code, f.CheckCode)
	}
	for name := range f.Files {
		if !filepath.IsLocal(filepath.FromSlash(name)) {
			return nil, fmt.Errorf("%s says it read the file %q, which no worksheet can", file, name)
		}
	}
	for _, in := range f.Inputs {
		if !in.Changed {
			continue
		}
		if in.SHA256 != "" && in.Value != filepath.Base(in.Value) {
			return nil, fmt.Errorf("%s: the table of the input %q is called %q; want a name without folders", file, in.Name, in.Value)
		}
		if err := e.giveAgain(in, folder); err != nil {
			return nil, fmt.Errorf("%s: the run was given the input %q: %w", file, in.Name, err)
		}
	}
	for _, r := range f.Results {
		e.shows.results = append(e.shows.results, declaredIn{r.ResultData, r.Cell, nil, nameOfOneResult{r.Name, 0}})
	}
	if f.Stopped != "" {
		return nil, fmt.Errorf("%s is of a run that stopped in %s; want the results of a whole run", file, f.Stopped)
	}
	return e, nil
}

// giveAgain gives an input as a results file says it: its value, or the table of its name in the folder.
func (e *earlier) giveAgain(in results.Input, folder string) error {
	if in.SHA256 == "" {
		return e.given.Restore(in.Name, in.Value)
	}
	if err := e.given.Give(in.Name, in.Value, folder); err != nil {
		return err
	}
	for _, r := range e.given.Rows() {
		if r.Name == in.Name && r.Hash != in.SHA256 {
			return fmt.Errorf("%s in %s is not the table that was given then", in.Value, folder)
		}
	}
	return nil
}

// compare fills in the differences.
func (c *Checked) compare(before *earlier, now *shows, out *Outcome) {
	then := before.shows
	last := everyCell // of those that are compared
	switch f := out.Failure; {
	case f == nil && then.stopped == 0:
	case f != nil && sameFailure(then, now, f.Cell):
		last, c.SameFailure = f.Cell, f.Error()
	case f != nil && then.stopped == 0:
		last = f.Cell - 1
		c.Differences = append(c.Differences, Difference{f.Cell, "stops now; this cell and what follows is not compared", []string{"now:  " + f.Failure.Items[0].String()}})
	case f != nil:
		last = min(f.Cell, then.stopped) - 1
		c.Differences = append(c.Differences, Difference{f.Cell, "stops in another way", []string{
			fmt.Sprintf("then: in cell %d, %s", then.stopped, then.cells[then.stopped-1].failure.Evalue),
			fmt.Sprintf("now:  in cell %d, %s", f.Cell, f.Failure.Items[0])}})
	default:
		last = then.stopped - 1
		c.Differences = append(c.Differences, Difference{then.stopped, "stopped then and does not now; this cell and what follows is not compared",
			[]string{"then: " + then.cells[then.stopped-1].failure.Evalue}})
	}
	c.Differences = append(c.Differences, compareResults(then, now, last)...)
	for i := range then.cells { // none, of a results file
		c.Others += len(then.cells[i].others)
		if i+1 <= last {
			c.Differences = append(c.Differences, compareOthers(i+1, then.cells[i].others, now.cells[i].others)...)
		}
	}
	slices.SortStableFunc(c.Differences, func(a, b Difference) int { return a.Cell - b.Cell })
}

// sameFailure says whether two runs stopped in the same cell with the same words.
func sameFailure(then, now *shows, cell int) bool {
	if then.stopped != cell || now.stopped != cell {
		return false
	}
	a, b := then.cells[cell-1].failure, now.cells[cell-1].failure
	return a.Ename == b.Ename && normal(a.Evalue) == normal(b.Evalue)
}

// Write says what was found, in lines for a terminal. name is that of the worksheet.
func (c *Checked) Write(w io.Writer, name string) error {
	verdict := "same"
	switch n := len(c.Differences); {
	case n == 1:
		verdict = "differs in 1 place"
	case n > 1:
		verdict = fmt.Sprintf("differs in %d places", n)
	case c.SameFailure != "":
		verdict = "same failure in " + c.SameFailure
	}
	code := "check code " + c.Code
	if c.CodeThen != "" && c.CodeThen != c.Code {
		code += ", then " + c.CodeThen
	}
	lines := []string{fmt.Sprintf("%s: %s (%s, %s); %s", name, verdict, count(c.Results, "result"), count(c.Others, "other output"), code)}
	for _, d := range c.Differences {
		lines = append(lines, fmt.Sprintf("  cell %d: %s", d.Cell, d.What))
		for _, m := range d.More {
			lines = append(lines, "    "+m)
		}
	}
	if len(c.Differences) > 0 && c.SameFailure != "" {
		lines = append(lines, "  both runs stopped in "+c.SameFailure)
	}
	for _, n := range c.Notes {
		lines = append(lines, "  "+n)
	}
	for _, y := range c.Why {
		lines = append(lines, "  why: "+y)
	}
	for _, l := range lines {
		if _, err := fmt.Fprintln(w, strings.Map(plainRune, l)); err != nil {
			return err
		}
	}
	return nil
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
