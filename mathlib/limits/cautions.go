package limits

import (
	"fmt"
	"slices"
	"strings"
)

// Caution is a word of warning for a plant.
type Caution struct {
	Plant      string
	Text       string
	Substances []string // with a rule or a risk, which an analysis would find
	Source     Source
	Listed     bool // false: nothing is listed for the plant, which says nothing of it
	key        string
}

// String gives the caution in one line.
func (c Caution) String() string {
	s := c.Plant + ": " + c.Text
	if c.Listed {
		s += " (" + c.Source.String() + ")"
	}
	return s
}

// Cautions returns a caution for each plant. The list is short and from memory: a plant that is not in it is not therefore
// harmless. It fails for a name that is nearly one of the list, which would otherwise go without its caution.
func Cautions(plants ...string) ([]Caution, error) {
	return embedded().cautions("limits.Cautions", plants)
}

func (t *tables) cautions(function string, plants []string) ([]Caution, error) {
	var out []Caution
	var names []string
	for _, p := range t.plants {
		names = append(names, p.names...)
	}
	for _, name := range plants {
		if plain(name) == "" {
			return nil, fmt.Errorf("%s: a plant has no name", function)
		}
		p, ok := t.plant(name)
		if !ok {
			near := nearest(name, names, 1)[0]
			if d := edits(plain(name), plain(near)); d <= 2 && len(plain(name)) > 4 && !slices.Contains(harmless, plain(name)) {
				return nil, &UnknownError{function, "plant", name, nearest(name, names, 3), true}
			}
			out = append(out, Caution{Plant: name, Text: "nothing is listed here, which says nothing of the plant"})
			continue
		}
		out = append(out, Caution{Plant: p.name, Text: p.caution, Substances: slices.Clone(p.substances), Source: p.source, Listed: true, key: p.key})
	}
	return out, nil
}

// harmless are common plants whose names are nearly those of others.
var harmless = []string{"cinnamon"}

// hazards returns what to look out for in the work with a recipe.
func (t *tables) hazardsOf(c Case) []string {
	anethole := false
	for _, p := range c.Plants {
		if q, ok := t.plant(p); ok && slices.Contains([]string{"star anise", "aniseed", "fennel"}, q.name) {
			anethole = true
		}
	}
	for _, f := range c.Findings {
		if s, err := t.substance("", f.Substance); err == nil && s.name == "trans-anethole" {
			anethole = true
		}
	}
	when := map[string]bool{"infusion": c.WarmInfusion, "anethole": anethole, "pot": len(c.Plants) > 0}
	var out []string
	for _, h := range t.hazards {
		if when[h.when] {
			out = append(out, h.text+" ("+h.source.String()+")")
		}
	}
	return out
}

// substancesOf returns the substances that the plants of a recipe bring, each once, in order.
func substancesOf(cautions []Caution) []string {
	var out []string
	for _, c := range cautions {
		for _, s := range c.Substances {
			if !slices.Contains(out, s) {
				out = append(out, s)
			}
		}
	}
	return out
}

func plantsWith(cautions []Caution, substance string) string {
	var out []string
	for _, c := range cautions {
		if slices.Contains(c.Substances, substance) {
			out = append(out, c.Plant)
		}
	}
	return strings.Join(out, ", ")
}
