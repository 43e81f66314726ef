package sweep

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"

	"swanneck/worksheets/wholefile"
)

// ErrInput marks errors of what was handed in, as a journal of another sweep.
var ErrInput = errors.New("input")

type inputError struct{ error }

func (e inputError) Is(target error) bool { return target == ErrInput }
func (e inputError) Unwrap() error        { return e.error }

// journalRow is a line of a journal, but the first.
type journalRow struct {
	Scenario int               `json:"scenario"`
	Inputs   []any             `json:"inputs"` // numbers and words
	Results  []Figure          `json:"results,omitempty"`
	Status   string            `json:"status"`
	Files    map[string]string `json:"files,omitempty"` // what its cells read: hashes by name
}

// journal is where finished rows are kept. It stays when the tables are written: another chart needs no other run, and the
// journals of parts are gathered.
type journal struct {
	path string
	file *os.File
}

// kept is what a journal holds.
type kept struct {
	head  head
	rows  map[int]Row // by scenario
	files map[string]string
	end   int64 // where the last whole line ends
	empty bool  // there is not even a head
}

// finished says whether all rows are there.
func (k *kept) finished() bool { return len(k.rows) == k.head.part().size(k.head.Scenarios) }

// otherThan says why the rows cannot be those of a job; empty if they can.
func (k *kept) otherThan(h head) string {
	if k.empty {
		return ""
	}
	diff := k.head.other(h)
	if diff == "" && k.head.Program != h.Program {
		diff = "the program, though of the same version"
	}
	if diff == "" && k.head.part() != h.part() {
		diff = "the part" // somebody has renamed it
	}
	return diff
}

// readJournal reads what stands in a journal. A last line that is only half there is left out.
func readJournal(path string, text []byte) (*kept, error) {
	k := &kept{rows: map[int]Row{}, files: map[string]string{}}
	for n := 1; ; n++ {
		i := bytes.IndexByte(text[k.end:], '\n')
		if i < 0 {
			k.empty = n == 1
			return k, nil
		}
		line := text[k.end : k.end+int64(i)]
		if n == 1 {
			h, err := readHead(line)
			if err != nil {
				return nil, inputError{fmt.Errorf("%s: %w", path, err)}
			}
			k.head = h
		} else if err := k.add(line); err != nil {
			if k.end+int64(i)+1 == int64(len(text)) { // the machine went down while it was written
				return k, nil
			}
			return nil, inputError{fmt.Errorf("%s, line %d is damaged: %w", path, n, err)}
		}
		k.end += int64(i) + 1
	}
}

// add takes a row.
func (k *kept) add(line []byte) error {
	var r journalRow
	if err := json.Unmarshal(line, &r); err != nil {
		return errors.New("it cannot be read")
	}
	if r.Scenario < 1 || r.Scenario > k.head.Scenarios || !k.head.part().has(r.Scenario) {
		return fmt.Errorf("no scenario of the journal has the number %d", r.Scenario)
	}
	if len(r.Inputs) != len(k.head.Columns) || r.Status == "" {
		return errors.New("something is missing")
	}
	row := Row{Scenario: r.Scenario, Results: r.Results, Status: r.Status}
	for i, c := range k.head.Columns {
		var v Value
		ok := true
		if c.Figures {
			v.Figure, ok = r.Inputs[i].(float64)
		} else {
			v.Word, ok = r.Inputs[i].(string)
		}
		if !ok {
			return fmt.Errorf("%q is %v", c.Name, r.Inputs[i])
		}
		row.Inputs = append(row.Inputs, v)
	}
	if err := noteFiles(k.files, r.Files); err != nil {
		return err
	}
	k.rows[r.Scenario] = row
	return nil
}

// noteFiles notes what cells have read. Rows that saw two states of one file do not belong into one table.
func noteFiles(all, read map[string]string) error {
	for name, sum := range read {
		if before, ok := all[name]; ok && before != sum {
			return fmt.Errorf("%s was changed since the sweep began", name)
		}
		all[name] = sum
	}
	return nil
}

// openJournal opens the journal of a sweep, or makes it, and returns what it holds already. again empties it.
func openJournal(path string, h head, again bool) (*journal, *kept, error) {
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() {
		return nil, nil, inputError{fmt.Errorf("%s is there and is not a plain file; choose another folder with --out", path)}
	}
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE|os.O_APPEND, 0o666)
	if err != nil {
		return nil, nil, fmt.Errorf("%s cannot be written: %w", path, wholefile.Cause(err))
	}
	j := &journal{path, f}
	k, err := j.begin(h, again)
	if err != nil {
		return nil, nil, errors.Join(err, f.Close())
	}
	return j, k, nil
}

func (j *journal) begin(h head, again bool) (*kept, error) {
	if err := lock(j.file); err != nil {
		return nil, inputError{fmt.Errorf("%s: another sweep is writing it now; wait for its end, or choose another folder with --out", j.path)}
	}
	text, err := io.ReadAll(j.file)
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read: %w", j.path, wholefile.Cause(err))
	}
	none := &kept{empty: true, rows: map[int]Row{}, files: map[string]string{}}
	k := none
	if !again {
		if k, err = readJournal(j.path, text); err != nil {
			return nil, inputError{fmt.Errorf("%w; --again starts anew", err)}
		}
		switch diff := k.otherThan(h); {
		case k.empty:
			k = none
		case diff != "" && k.finished():
			k = none // its tables are written; nothing is lost
		case diff != "":
			return nil, inputError{fmt.Errorf("%s is of another sweep, with %d of %d rows done (other: %s); --again starts anew",
				j.path, len(k.rows), k.head.part().size(k.head.Scenarios), diff)}
		}
	}
	if err := j.file.Truncate(k.end); err != nil {
		return nil, j.failed(err)
	}
	k.head = h
	if k.empty {
		line, err := h.line()
		if err != nil {
			return nil, err
		}
		if _, err := j.file.Write(line); err != nil {
			return nil, j.failed(err)
		}
	}
	return k, nil
}

// write adds a finished row, in one piece: whoever is killed leaves half a line at most, and that at the end.
func (j *journal) write(h head, r Row, files map[string]string) error {
	line := journalRow{Scenario: r.Scenario, Inputs: make([]any, len(r.Inputs)), Results: r.Results, Status: r.Status, Files: files}
	for i, v := range r.Inputs {
		if line.Inputs[i] = v.Word; h.Columns[i].Figures {
			line.Inputs[i] = v.Figure
		}
	}
	text, err := json.Marshal(line)
	if err != nil {
		return fmt.Errorf("sweep: scenario %d: %w", r.Scenario, err)
	}
	if _, err := j.file.Write(append(text, '\n')); err != nil {
		return j.failed(err)
	}
	return nil
}

func (j *journal) failed(err error) error {
	return fmt.Errorf("%s cannot be written: %w", j.path, wholefile.Cause(err))
}

func (j *journal) close() error {
	if err := j.file.Close(); err != nil {
		return j.failed(err)
	}
	return nil
}
