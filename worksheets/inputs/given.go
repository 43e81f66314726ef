package inputs

import (
	"bufio"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"swanneck/worksheets/entry"
	"swanneck/worksheets/nearest"
)

// Set is what a worksheet's inputs are for one run: what was given, fitted to what is asked for.
type Set struct {
	Asked []entry.Input
	given map[string]given
}

type given struct {
	text string // what the cell gets: of a table its CSV
	say  string // what a person reads: of a table the file's name
	hash string // of a table
}

// NewSet begins with what usually stands there.
func NewSet(asked []entry.Input) *Set { return &Set{Asked: asked, given: map[string]given{}} }

// Give puts a value in the place of an input's usual one, or says in a line why it does not fit. Tables and files are
// given by the name of a CSV file, from folder.
func (s *Set) Give(name, text, folder string) error {
	in, err := s.find(name)
	if err != nil {
		return err
	}
	g := given{text: strings.TrimSpace(text), say: strings.TrimSpace(text)}
	if (in.Kind == entry.Table || in.Kind == entry.File) && !strings.Contains(g.text, "\n") {
		p := g.text
		if !filepath.IsAbs(p) {
			p = filepath.Join(folder, p)
		}
		b, err := os.ReadFile(p)
		if err != nil {
			var pe *os.PathError
			if errors.As(err, &pe) {
				err = pe.Err
			}
			return fmt.Errorf("%s: a table is given by its CSV file; %s: %w", in.Name, g.text, err)
		}
		g.text, g.say = string(b)+"\n", filepath.Base(p)
		g.hash = fmt.Sprintf("sha256:%x", sha256.Sum256(b))
	}
	if _, err := in.Read(g.text); err != nil {
		return err
	}
	s.given[in.Name] = g
	return nil
}

// Assign is Give for "name=value".
func (s *Set) Assign(assignment, folder string) error {
	name, value, ok := strings.Cut(assignment, "=")
	if !ok {
		return fmt.Errorf("%q: want name=value, as \"pot strength=45 %%vol\"", assignment)
	}
	return s.Give(name, value, folder)
}

// find returns the input of a name; case and spacing do not matter. An unknown name is answered with the nearest ones.
func (s *Set) find(name string) (entry.Input, error) {
	plain := func(n string) string { return strings.ToLower(strings.Join(strings.Fields(n), " ")) }
	for _, in := range s.Asked {
		if plain(in.Name) == plain(name) {
			return in, nil
		}
	}
	if len(s.Asked) == 0 {
		return entry.Input{}, fmt.Errorf("%q: this worksheet asks for no inputs", strings.TrimSpace(name))
	}
	names := make([]string, len(s.Asked))
	for i, in := range s.Asked {
		names[i] = in.Name
	}
	return entry.Input{}, fmt.Errorf("no input is called %q; %s", strings.TrimSpace(name), Nearest(plain(name), names))
}

// Nearest names up to three names that a wrong one may stand for.
func Nearest(wrong string, names []string) string {
	return "the nearest: " + strings.Join(nearest.Names(wrong, names), ", ")
}

// Values is what the engine hands to cells: what was given, by name.
func (s *Set) Values() map[string]string {
	out := map[string]string{}
	for name, g := range s.given {
		out[name] = g.text
	}
	return out
}

// Row is an input of a run, as a person reads it.
type Row struct {
	Name, Value, Help string
	Changed           bool   // another than what usually stands there
	Hash              string // of a table that was given: "sha256:…"
}

// Rows lists all inputs in the worksheet's order.
func (s *Set) Rows() []Row {
	var rows []Row
	for _, in := range s.Asked {
		r := Row{Name: in.Name, Value: in.Usual, Help: in.Help}
		if g, ok := s.given[in.Name]; ok {
			r.Value, r.Hash = g.say, g.hash
			r.Changed = g.text != in.Usual && !same(in, g.text)
		} else if in.Kind == entry.Table {
			r.Value = strings.Join(strings.Split(strings.TrimSpace(in.Usual), "\n"), " / ")
		}
		rows = append(rows, r)
	}
	return rows
}

// same says whether a text means what usually stands there.
func same(in entry.Input, text string) bool {
	if in.Kind == entry.Table || in.Kind == entry.File {
		return false
	}
	a, errA := in.Read(in.Usual)
	b, errB := in.Read(text)
	return errA == nil && errB == nil && a == b
}

// Ask puts every input as a question: its name, what fits, what stands there now. An empty line keeps that. A number
// without a unit has the one shown. What does not fit is said and asked again.
func (s *Set) Ask(r io.Reader, w io.Writer, folder string) error {
	lines := bufio.NewReader(r)
	for _, in := range s.Asked {
		now := in.Usual
		if g, ok := s.given[in.Name]; ok {
			now = g.say
		} else if in.Kind == entry.Table {
			now = "as in the worksheet"
		}
		hint := strings.Join(nonEmpty(in.Help, in.Range()), "; ")
		if hint != "" {
			hint = " (" + hint + ")"
		}
		for {
			if _, err := fmt.Fprintf(w, "%s%s [%s]: ", in.Name, hint, now); err != nil {
				return err
			}
			line, err := lines.ReadString('\n')
			if line = strings.TrimSpace(line); line == "" {
				if err != nil {
					return fmt.Errorf("the questions ended at %q: %w", in.Name, err)
				}
				break
			}
			if e := s.Give(in.Name, in.Bare(line), folder); e != nil {
				if err != nil {
					return e
				}
				if _, err := fmt.Fprintf(w, "  %v\n", e); err != nil {
					return err
				}
				continue
			}
			break
		}
	}
	return nil
}

func nonEmpty(s ...string) []string {
	var out []string
	for _, x := range s {
		if x != "" {
			out = append(out, x)
		}
	}
	return out
}
