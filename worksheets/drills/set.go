package drills

import (
	"fmt"
	"slices"
	"strings"
)

// Set is a set of problems for a class.
type Set struct {
	Seed     int64
	Problems []Problem
}

// maxSet is the largest set: more is no lesson.
const maxSet = 200

// NewSet returns count problems, from 1 to 200, of the kinds given or, without any, of all kinds, in the order in which a
// course takes them. No kind comes a second time before every other has come once, and no problem comes twice. The same
// seed, count and kinds give the same set.
func NewSet(seed int64, count int, of ...Kind) (Set, error) {
	if count < 1 || count > maxSet {
		return Set{}, fmt.Errorf("drills.NewSet: %d problems; want 1 to %d", count, maxSet)
	}
	var wanted []Kind
	for _, k := range of {
		k, err := Named(string(k))
		if err != nil {
			return Set{}, fmt.Errorf("drills.NewSet: %w", err)
		}
		if k != "" && !slices.Contains(wanted, k) {
			wanted = append(wanted, k)
		}
	}
	order := Kinds()
	if len(wanted) == 0 {
		wanted = order
	}
	c := newChance(seed, "set")
	var drawn []Kind
	for len(drawn) < count {
		deck := slices.Clone(wanted)
		c.r.Shuffle(len(deck), func(i, j int) { deck[i], deck[j] = deck[j], deck[i] })
		drawn = append(drawn, deck[:min(len(deck), count-len(drawn))]...)
	}
	slices.SortStableFunc(drawn, func(a, b Kind) int { return slices.Index(order, a) - slices.Index(order, b) })
	set := Set{Seed: seed}
	seen := map[string]bool{}
	for len(set.Problems) < count {
		p, err := New(int64(c.r.IntN(1_000_000)), drawn[len(set.Problems)])
		if err != nil {
			return Set{}, err
		}
		if !seen[p.Text] {
			seen[p.Text] = true
			p.Number = len(set.Problems) + 1
			set.Problems = append(set.Problems, p)
		}
	}
	return set, nil
}

// Titles of the two files.
const (
	PaperTitle = "Proofing drills"
	KeyTitle   = "Proofing drills: key"
)

const paperHead = `Spirits here are ethanol and water, the still houses are invented. Strengths are true strengths in per cent by volume at 20 °C where nothing else is said, and alcoholometers are marked at 20 °C. Write the unit with every answer and the way to it underneath.`

// Paper returns the paper that the class gets, as Markdown, a piece a problem behind the head.
func (s Set) Paper() []string {
	out := []string{firm(fmt.Sprintf("# %s\n\nName: %s Date: %s\n\n%s\n\nTables: %s.", PaperTitle, line(30), line(16), paperHead, s.tables()))}
	for _, p := range s.Problems {
		room := strings.Repeat("&nbsp;\n\n", min(2+len(p.Steps)/2, 5)) // to work in
		out = append(out, firm(fmt.Sprintf("## %s\n\n%s\n\n**%s**\n\n%sAnswer: %s %s", p.heading(), p.Text, p.Question, room, line(18), p.unitWords())))
	}
	return out
}

// Key returns the key that the trainer keeps, as Markdown, a piece a problem behind the head.
func (s Set) Key() []string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\nTo the paper of seed %d, %d problems. Each can be set again by its own kind and seed.\n\nTables: %s.\n\n| | Answer | Problem | Kind and seed |\n|--:|:--|:--|:--|\n", KeyTitle, s.Seed, len(s.Problems), s.tables())
	for _, p := range s.Problems {
		fmt.Fprintf(&b, "| %d | **%s** | %s | %s, %d |\n", p.Number, p.Right(), p.Title, p.Kind, p.Seed)
	}
	out := []string{firm(b.String())}
	for _, p := range s.Problems {
		var b strings.Builder
		fmt.Fprintf(&b, "## %s\n\n%s\n\n**%s**\n\n", p.heading(), p.Text, p.Question)
		for j, st := range p.Steps {
			fmt.Fprintf(&b, "%d. %s\n", j+1, st)
		}
		fmt.Fprintf(&b, "\n**Answer: %s**\n\n%s\n\n| Given, %s | It was |\n|--:|:--|\n", p.Right(), p.Why, p.Unit)
		for _, m := range p.Mistakes {
			fmt.Fprintf(&b, "| %.*f | %s |\n", p.Decimals, m.Figure, m.Name)
		}
		out = append(out, firm(b.String()))
	}
	return out
}

// tables names the tables that the set needs.
func (s Set) tables() string {
	var names []string
	for _, p := range s.Problems {
		for _, t := range p.Tables() {
			if n := t.Name(); !slices.Contains(names, n) {
				names = append(names, n)
			}
		}
	}
	return strings.Join(names, "; ")
}

// line is a line to write on.
func line(n int) string { return strings.Repeat(`\_`, n) }
