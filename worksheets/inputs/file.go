package inputs

import (
	"fmt"
	"strings"

	"swanneck/worksheets/entry"
)

// Write returns the inputs as a plain text file that a person fills in and hands back:
//
//	pot strength: 45 %vol
//	  # before heating; 20 to 70 %vol
//	lots:
//	  volume (L); strength (%vol)
//	  300; 72.4
//
// A line that begins with # is a remark. What stands behind a name is its value; a table stands in lines that begin with
// a space, or behind its name as the name of a CSV file.
func (s *Set) Write(title string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "# Inputs of %s. Change what stands behind a colon; leave the unit, or write another of its kind.\n", title)
	for _, in := range s.Asked {
		b.WriteString("\n")
		if words := strings.Join(nonEmpty(in.Help, in.Range()), "; "); words != "" {
			fmt.Fprintf(&b, "# %s\n", words)
		}
		g, given := s.given[in.Name]
		switch {
		case given && strings.Contains(g.text, "\n") && g.hash == "", !given && in.Kind == entry.Table:
			text := in.Usual
			if given {
				text = g.text
			}
			fmt.Fprintf(&b, "%s:\n", in.Name)
			for _, l := range strings.Split(strings.TrimSpace(text), "\n") {
				fmt.Fprintf(&b, "  %s\n", strings.TrimSpace(l))
			}
		case given:
			fmt.Fprintf(&b, "%s: %s\n", in.Name, g.say)
		default:
			fmt.Fprintf(&b, "%s: %s\n", in.Name, in.Usual)
		}
	}
	return b.String()
}

// ReadFile gives what a text file of inputs says. Every mistake is named with its line; nothing is given if there is one.
func (s *Set) ReadFile(name, text, folder string) error {
	text = strings.TrimPrefix(text, "\ufeff")
	type item struct {
		line       int
		name, text string
		block      bool
	}
	var items []item
	n := 0
	for line := range strings.Lines(text) {
		n++
		line = strings.TrimRight(line, "\r\n")
		plain := strings.TrimSpace(line)
		switch {
		case plain == "" || plain[0] == '#':
		case line[0] == ' ' || line[0] == '\t':
			if len(items) == 0 || items[len(items)-1].text != "" && !items[len(items)-1].block {
				return fmt.Errorf("%s:%d: a line that begins with a space belongs to a table, and there is none above it", name, n)
			}
			last := &items[len(items)-1]
			last.block = true
			last.text += plain + "\n"
		default:
			key, value, ok := strings.Cut(line, ":")
			if !ok {
				return fmt.Errorf("%s:%d: want name: value, as \"pot strength: 45 %%vol\"", name, n)
			}
			items = append(items, item{line: n, name: strings.TrimSpace(key), text: strings.TrimSpace(value)})
		}
	}
	seen := map[string]int{}
	trial := NewSet(s.Asked)
	for _, it := range items {
		in, err := s.find(it.name)
		if err == nil {
			if first, twice := seen[in.Name]; twice {
				err = fmt.Errorf("%q stands in line %d already", in.Name, first)
			}
			seen[in.Name] = it.line
		}
		if err == nil {
			err = trial.Give(it.name, it.text, folder)
		}
		if err != nil {
			return fmt.Errorf("%s:%d: %w", name, it.line, err)
		}
	}
	for k, g := range trial.given {
		s.given[k] = g
	}
	return nil
}
