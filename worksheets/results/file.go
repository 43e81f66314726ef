package results

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"swanneck/kernel/display"
)

// Format is what stands in a results file to tell it from other JSON; Version is the version of its layout.
const (
	Format  = "swanneck results"
	Version = 1
)

// File is what a results file holds: the results of one run, and what they depend on.
type File struct {
	Worksheet    string // name of the worksheet's file, without folders
	Title        string // of the worksheet; may be empty
	Clock        time.Time
	Seed         int64
	Versions     map[string]string // of the program and its sources
	Architecture string            // of the machine: amd64, arm64
	Inputs       []Input           // all, in the worksheet's order
	Files        map[string]string // hashes of the files that cells have read, by name
	Sources      []Source          // of the code cells that are not blank, in order
	Results      []Result          // in the order of their declaration
	Stopped      string            // where the run stopped before its end, and why; else empty
	CheckCode    string            // see Code
}

// Input is an input of a run.
type Input struct {
	Name    string
	Value   string // as a person writes it; of a table its file's name, or its text
	Changed bool   // another than what usually stands there
	SHA256  string // of a table that was given as a file: "sha256:…"
}

// Source is a code cell's text.
type Source struct {
	Cell   string `json:"cell"`   // its identifier in the notebook
	SHA256 string `json:"sha256"` // "sha256:…"
}

// Result is a declared result.
type Result struct {
	display.ResultData
	Cell int // where it was declared, from 1, code cells only
}

// The fields of a file, in the order in which they are written: by name.
type (
	fileJSON struct {
		Architecture string            `json:"architecture"`
		CheckCode    string            `json:"check_code"`
		Clock        string            `json:"clock"`
		Files        map[string]string `json:"files"`
		Format       string            `json:"format"`
		Inputs       []inputJSON       `json:"inputs"`
		Results      []resultJSON      `json:"results"`
		Seed         int64             `json:"seed"`
		Sources      []Source          `json:"sources"`
		Stopped      string            `json:"stopped,omitempty"`
		Title        string            `json:"title"`
		Version      int               `json:"version"`
		Versions     map[string]string `json:"versions"`
		Worksheet    string            `json:"worksheet"`
	}
	inputJSON struct {
		Changed bool   `json:"changed"`
		Name    string `json:"name"`
		SHA256  string `json:"sha256,omitempty"`
		Value   string `json:"value"`
	}
	resultJSON struct {
		Cell      int     `json:"cell"`
		Figure    string  `json:"figure"`
		Name      string  `json:"name"`
		Note      string  `json:"note"`
		PlusMinus float64 `json:"plus_minus"`
		Unit      string  `json:"unit"`
		Value     float64 `json:"value"`
		Within    float64 `json:"within"`
	}
)

// JSON returns the file's bytes: the same contents give the same bytes.
func (f *File) JSON() ([]byte, error) {
	w := fileJSON{
		Format: Format, Version: Version, Worksheet: f.Worksheet, Title: f.Title, Clock: f.Clock.UTC().Format(time.RFC3339), Seed: f.Seed,
		Versions: f.Versions, Architecture: f.Architecture, Files: f.Files, Stopped: f.Stopped, CheckCode: f.CheckCode,
		Inputs: []inputJSON{}, Results: []resultJSON{}, Sources: append([]Source{}, f.Sources...),
	}
	if w.Versions == nil {
		w.Versions = map[string]string{}
	}
	if w.Files == nil {
		w.Files = map[string]string{}
	}
	for _, in := range f.Inputs {
		w.Inputs = append(w.Inputs, inputJSON{in.Changed, in.Name, in.SHA256, in.Value})
	}
	for _, r := range f.Results {
		w.Results = append(w.Results, resultJSON{r.Cell, r.Figure, r.Name, r.Note, r.PlusMinus, r.Unit, r.Value, r.Within})
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	if err := e.Encode(w); err != nil {
		return nil, fmt.Errorf("results.JSON: %w", err)
	}
	return b.Bytes(), nil
}

// Read reads a results file. Its errors are one line and do not name the file.
func Read(data []byte) (*File, error) {
	if !utf8.Valid(data) {
		return nil, errors.New("is not UTF-8 text; want a results file")
	}
	var head struct {
		Format  string `json:"format"`
		Version int    `json:"version"`
	}
	if err := json.Unmarshal(data, &head); err != nil {
		return nil, fmt.Errorf("is not a whole results file: %w", err)
	}
	switch {
	case head.Format != Format:
		return nil, fmt.Errorf("is not a results file: its format is %q; want %q", head.Format, Format)
	case head.Version != Version:
		return nil, fmt.Errorf("is a results file of version %d; this program reads version %d", head.Version, Version)
	}
	var w fileJSON
	if err := json.Unmarshal(data, &w); err != nil {
		return nil, fmt.Errorf("is not a whole results file: %w", err)
	}
	f := &File{
		Worksheet: w.Worksheet, Title: w.Title, Seed: w.Seed, Versions: w.Versions, Architecture: w.Architecture,
		Files: w.Files, Sources: w.Sources, Stopped: w.Stopped, CheckCode: w.CheckCode,
	}
	var err error
	if f.Clock, err = time.Parse(time.RFC3339, w.Clock); err != nil {
		return nil, fmt.Errorf("has the clock %q; want a time as 2026-01-01T12:00:00Z", w.Clock)
	}
	for _, in := range w.Inputs {
		f.Inputs = append(f.Inputs, Input{in.Name, in.Value, in.Changed, in.SHA256})
	}
	seen := map[string]bool{}
	for i, r := range w.Results {
		switch {
		case strings.TrimSpace(r.Name) == "" || strings.TrimSpace(r.Unit) == "":
			return nil, fmt.Errorf("has a result without a name or a unit, its number %d", i+1)
		case strings.ContainsFunc(r.Name+r.Unit+r.Figure+r.Note, unicode.IsControl):
			return nil, fmt.Errorf("has control characters in the result %q; want plain text", r.Name)
		case seen[r.Name]:
			return nil, fmt.Errorf("has the result %q twice; a result's name stands once", r.Name)
		case r.PlusMinus < 0 || r.Within < 0:
			return nil, fmt.Errorf("has a ± or a tolerance below zero in the result %q", r.Name)
		}
		seen[r.Name] = true
		f.Results = append(f.Results, Result{display.ResultData{
			Version: 1, Name: r.Name, Value: r.Value, Unit: r.Unit, Figure: r.Figure, PlusMinus: r.PlusMinus, Within: r.Within, Note: r.Note,
		}, r.Cell})
	}
	return f, nil
}

// csvHead is the first line of the CSV form.
var csvHead = []string{"name", "value", "unit", "plus_minus", "within", "note"}

// CSV returns the results as a table: commas between fields, points before decimals, CRLF behind lines (RFC 4180), one line
// of headings. A ± or tolerance that was not given is an empty field. A text that a spreadsheet would take for a formula
// has an apostrophe in front.
func (f *File) CSV() ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	rows := [][]string{csvHead}
	for _, r := range f.Results {
		rows = append(rows, []string{cellText(r.Name), number(r.Value), cellText(r.Unit), given(r.PlusMinus), given(r.Within), cellText(r.Note)})
	}
	if err := w.WriteAll(rows); err != nil {
		return nil, fmt.Errorf("results.CSV: %w", err)
	}
	return b.Bytes(), nil
}

// LooksLikeCSV says whether text begins as CSV writes it.
func LooksLikeCSV(text []byte) bool {
	return bytes.HasPrefix(text, []byte(strings.Join(csvHead, ",")+"\r\n"))
}

func cellText(s string) string {
	if s != "" && strings.ContainsRune("=+-@", rune(s[0])) {
		return "'" + s
	}
	return s
}

func given(x float64) string {
	if x == 0 {
		return ""
	}
	return number(x)
}

// number writes a number with all its digits, as JSON would.
func number(x float64) string {
	if size := math.Abs(x); size != 0 && (size < 1e-6 || size >= 1e21) {
		return strconv.FormatFloat(x, 'e', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}
