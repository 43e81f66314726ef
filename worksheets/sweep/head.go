package sweep

import (
	"bytes"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"time"
)

// head is the first line of a journal: what it is a journal of.
type head struct {
	Journal   string   `json:"journal"` // journalMark
	Version   int      `json:"version"`
	Worksheet string   `json:"worksheet"` // name without ending
	Scenarios int      `json:"scenarios"` // of the whole sweep
	Part      int      `json:"part"`
	Parts     int      `json:"parts"`
	Design    Design   `json:"design"`
	Counts    []int    `json:"counts,omitempty"`
	Columns   []Column `json:"columns"`

	// What the rows follow from, as hashes: rows of two journals may stand in one table if all are the same.
	Code     string `json:"code"`     // of the cells
	Plan     string `json:"plan"`     // every input of every scenario
	Versions string `json:"versions"` // of the program and the math
	Settings string `json:"settings"` // clock, seed, limits of a cell

	Program string `json:"program"` // hash of the program's file: whoever goes on must be the same to the byte
}

const (
	journalMark    = "swanneck sweep"
	journalVersion = 1
)

// head describes a job.
func (j *Job) head() head {
	h := head{
		Journal: journalMark, Version: journalVersion, Worksheet: j.Worksheet, Scenarios: len(j.Plan.Scenarios),
		Part: max(1, j.Part.Number), Parts: max(1, j.Part.Of),
		Design: j.Plan.Design, Counts: j.Plan.Counts, Columns: j.Plan.Columns,
		Code: hash(j.Sources), Program: j.Program,
	}
	given := make([][]string, len(j.Plan.Scenarios))
	for i, s := range j.Plan.Scenarios {
		for _, v := range s {
			given[i] = append(given[i], v.text, v.Word)
		}
	}
	h.Plan = hash(j.Plan.Design, j.Plan.Columns, given)
	h.Versions = hash(j.Versions, runtime.GOARCH)
	cellTime := j.Engine.CellTime
	if cellTime == 0 {
		cellTime = time.Minute // as the engine has it
	}
	h.Settings = hash(j.Engine.CellClock().UnixNano(), j.Engine.Seed, cellTime, j.Engine.MemoryMiB)
	return h
}

// hash returns the first half of a SHA-256 of values, as hexadecimal digits.
func hash(values ...any) string {
	text, err := json.Marshal(values)
	if err != nil {
		panic(err) // strings and numbers can be written
	}
	sum := sha256.Sum256(text)
	return fmt.Sprintf("%x", sum[:16])
}

// line is the head as it stands in a file.
func (h head) line() ([]byte, error) {
	text, err := json.Marshal(h)
	return append(text, '\n'), err
}

// part is what the head is the journal of.
func (h head) part() Part { return Part{h.Part, h.Parts} }

// other says in what two journals differ; empty if their rows may stand in one table.
func (h head) other(o head) string {
	var out []string
	for _, d := range []struct {
		what string
		same bool
	}{
		{"the worksheet's name", h.Worksheet == o.Worksheet},
		{"its code", h.Code == o.Code},
		{"the inputs", h.Plan == o.Plan && h.Design == o.Design && h.Scenarios == o.Scenarios && slices.Equal(h.Columns, o.Columns)},
		{"the version of the program", h.Versions == o.Versions},
		{"date, seed or limits of a cell", h.Settings == o.Settings},
	} {
		if !d.same {
			out = append(out, d.what)
		}
	}
	return strings.Join(out, ", ")
}

// readHead reads the first line of a journal.
func readHead(line []byte) (h head, err error) {
	d := json.NewDecoder(bytes.NewReader(line))
	if err := d.Decode(&h); err != nil || h.Journal != journalMark {
		return h, fmt.Errorf("it is no journal of a sweep")
	}
	if h.Version != journalVersion {
		return h, fmt.Errorf("it is a journal of version %d; this program reads version %d", h.Version, journalVersion)
	}
	if h.Scenarios < 1 || h.Part < 1 || h.Parts < h.Part {
		return h, fmt.Errorf("its first line is damaged")
	}
	return h, nil
}
