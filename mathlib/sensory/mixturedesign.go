package sensory

import (
	"fmt"
	"math"
	"strings"

	"swanneck/mathlib/internal/chance"
	"swanneck/mathlib/quantity"
)

// TrialBlend is one blend of a mixture trial.
type TrialBlend struct {
	Shares []float64 // of each ingredient, dimensionless; they add up to 1
	Kind   string    // "pure", "binary", "centroid", "vertex", "edge", "face" or the like
}

// MixtureDesign is which blends to make for a mixture trial.
type MixtureDesign struct {
	Ingredients []string
	Blends      []TrialBlend
	Notes       []string // limits that could not be kept as they were given
}

// The largest designs.
const (
	mostIngredients = 10
	mostBlends      = 5000
)

// SimplexLattice returns the {q, degree} lattice: all blends of the ingredients in whole multiples of 1/degree. Degree 2
// bears a quadratic model, degree 3 a special cubic one and more. It fails for fewer than 2 or more than 10 ingredients, a
// degree that is not from 1 to 10, and a lattice of more than 5000 blends.
//
// Source: H. Scheffé, Journal of the Royal Statistical Society B 20 (1958) 344–360.
func SimplexLattice(ingredients []string, degree int) (MixtureDesign, error) {
	const fn = "sensory.SimplexLattice"
	if err := checkIngredients(fn, ingredients); err != nil {
		return MixtureDesign{}, err
	}
	if err := quantity.CheckRange(fn, "the degree", float64(degree), 1, 10, "", ""); err != nil {
		return MixtureDesign{}, err
	}
	q := len(ingredients)
	if n := binomialCoefficient(q+degree-1, degree); n > mostBlends {
		return MixtureDesign{}, fmt.Errorf("%s: %d ingredients to the degree %d are %d blends; take a lower degree or fewer ingredients (at most %d blends)", fn, q, degree, n, mostBlends)
	}
	d := MixtureDesign{Ingredients: append([]string(nil), ingredients...)}
	parts := make([]int, q)
	var walk func(at, left int)
	walk = func(at, left int) {
		if at == q-1 {
			parts[at] = left
			b := TrialBlend{Shares: make([]float64, q), Kind: lattice(parts)}
			for i, p := range parts {
				b.Shares[i] = float64(p) / float64(degree)
			}
			d.Blends = append(d.Blends, b)
			return
		}
		for p := left; p >= 0; p-- {
			parts[at] = p
			walk(at+1, left-p)
		}
	}
	walk(0, degree)
	return d, nil
}

// lattice names a point by how many ingredients are in it.
func lattice(parts []int) string {
	n := 0
	for _, p := range parts {
		if p > 0 {
			n++
		}
	}
	return ofSome(n)
}

func ofSome(n int) string {
	switch n {
	case 1:
		return "pure"
	case 2:
		return "binary"
	case 3:
		return "of three"
	}
	return fmt.Sprintf("of %d", n)
}

// SimplexCentroid returns the blends of equal shares of every choice of the ingredients, the pure ones and the blend of all
// included: 2^q - 1 blends, which bear a special cubic model. It fails for fewer than 2 or more than 10 ingredients.
//
// Source: H. Scheffé, Journal of the Royal Statistical Society B 25 (1963) 235–263.
func SimplexCentroid(ingredients []string) (MixtureDesign, error) {
	const fn = "sensory.SimplexCentroid"
	if err := checkIngredients(fn, ingredients); err != nil {
		return MixtureDesign{}, err
	}
	q := len(ingredients)
	d := MixtureDesign{Ingredients: append([]string(nil), ingredients...)}
	for size := 1; size <= q; size++ {
		for _, choice := range choices(q, size) {
			b := TrialBlend{Shares: make([]float64, q), Kind: ofSome(size)}
			for _, i := range choice {
				b.Shares[i] = 1 / float64(size)
			}
			d.Blends = append(d.Blends, b)
		}
	}
	return d, nil
}

// choices returns all choices of size things of n, in order.
func choices(n, size int) [][]int {
	var out [][]int
	var walk func(from int, chosen []int)
	walk = func(from int, chosen []int) {
		if len(chosen) == size {
			out = append(out, append([]int(nil), chosen...))
			return
		}
		for i := from; i < n; i++ {
			walk(i+1, append(chosen, i))
		}
	}
	walk(0, nil)
	return out
}

func binomialCoefficient(n, k int) int {
	out := 1.0
	for i := 1; i <= k; i++ {
		out = out * float64(n-k+i) / float64(i)
	}
	return int(math.Round(math.Min(out, 1e9)))
}

func checkIngredients(fn string, ingredients []string) error {
	if n := len(ingredients); n < 2 || n > mostIngredients {
		return fmt.Errorf("%s: %d ingredients; give 2 to %d", fn, n, mostIngredients)
	}
	seen := map[string]bool{}
	for i, s := range ingredients {
		if strings.TrimSpace(s) == "" || seen[s] {
			return fmt.Errorf("%s: ingredient %d is called %q; give each a name of its own", fn, i+1, s)
		}
		seen[s] = true
	}
	return nil
}

// InRandomOrder returns the design with every blend times times over, in random order: so the palate's tiring falls on
// all blends alike. The same seed gives the same order. It fails for times below 1 or above 50.
func InRandomOrder(d MixtureDesign, times int, seed uint64) (MixtureDesign, error) {
	if err := quantity.CheckRange("sensory.InRandomOrder", "how often to make each blend", float64(times), 1, 50, "", ""); err != nil {
		return MixtureDesign{}, err
	}
	out := MixtureDesign{Ingredients: d.Ingredients, Notes: d.Notes}
	for range times {
		out.Blends = append(out.Blends, d.Blends...)
	}
	c := chance.New(seed)
	c.Shuffle(len(out.Blends), func(i, j int) { out.Blends[i], out.Blends[j] = out.Blends[j], out.Blends[i] })
	return out, nil
}

// String gives the design's size in one line.
func (d MixtureDesign) String() string {
	s := fmt.Sprintf("%d blends of %s", len(d.Blends), strings.Join(d.Ingredients, ", "))
	for _, n := range d.Notes {
		s += "; " + n
	}
	return s
}

// Rows gives the design as a table: a head, then a row for each blend with the shares in per cent and what it is.
func (d MixtureDesign) Rows() [][]string {
	head := []string{"blend"}
	for _, s := range d.Ingredients {
		head = append(head, s+", %")
	}
	rows := [][]string{append(head, "")}
	for i, b := range d.Blends {
		row := []string{fmt.Sprint(i + 1)}
		for _, x := range b.Shares {
			row = append(row, percent(x))
		}
		rows = append(rows, append(row, b.Kind))
	}
	for _, n := range d.Notes {
		rows = append(rows, []string{"note: " + n})
	}
	return rows
}

// percent prints a share with one decimal, or none if it needs none.
func percent(share float64) string {
	p := 100 * share
	if math.Abs(p-math.Round(p)) < 0.005 {
		return fmt.Sprintf("%.0f", math.Abs(p))
	}
	return fmt.Sprintf("%.1f", p)
}
