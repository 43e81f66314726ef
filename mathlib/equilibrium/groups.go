package equilibrium

import (
	"embed"
	"fmt"
	"io/fs"
	"math"
	"slices"
	"sync"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

type subgroup struct {
	main int
	r, q float64 // volume and surface, dimensionless
}

// interaction holds a in K, b dimensionless and c in 1/K of ψ = exp(-(a + b T + c T²)/T).
type interaction struct{ a, b, c float64 }

func (i interaction) psi(tempK, perK float64) float64 {
	return math.Exp(-(i.a*perK + i.b + i.c*tempK))
}

// slope returns d ln ψ/dT, 1/K.
func (i interaction) slope(perK float64) float64 { return i.a*perK*perK - i.c }

// groupMethod is the parameter table of one of the UNIFAC methods.
type groupMethod struct {
	base  compound.Base
	subs  map[int]subgroup
	pairs map[[2]int]interaction
}

var (
	originalUNIFAC = sync.OnceValue(func() *groupMethod { return mustLoad(compound.Original) })
	dortmundUNIFAC = sync.OnceValue(func() *groupMethod { return mustLoad(compound.Dortmund) })
)

func method(base compound.Base) *groupMethod {
	if base == compound.Dortmund {
		return dortmundUNIFAC()
	}
	return originalUNIFAC()
}

// mustLoad returns the table of the data files. That they can be read is tested.
func mustLoad(base compound.Base) *groupMethod {
	m, err := loadGroups(files, base)
	if err != nil {
		panic(err)
	}
	return m
}

func loadGroups(fsys fs.FS, base compound.Base) (*groupMethod, error) {
	m := &groupMethod{base, map[int]subgroup{}, map[[2]int]interaction{}}
	rows, err := datafile.Read(fsys, "data/unifac_"+string(base)+"_subgroups.csv")
	if err != nil {
		return nil, err
	}
	for _, r := range rows {
		m.subs[r.Whole("subgroup")] = subgroup{r.Whole("main"), r.Number("r"), r.Number("q")}
		r.Source()
		if err := r.Err(); err != nil {
			return nil, err
		}
	}
	if rows, err = datafile.Read(fsys, "data/unifac_"+string(base)+"_pairs.csv"); err != nil {
		return nil, err
	}
	for _, r := range rows {
		m.pairs[[2]int{r.Whole("i"), r.Whole("j")}] = interaction{r.Number("a_K"), r.Number("b"), r.Number("c_1K")}
		r.Source()
		if err := r.Err(); err != nil {
			return nil, err
		}
	}
	return m, nil
}

// molecule is a compound as a UNIFAC method sees it. Everything the residual part needs of it are the surfaces of its
// main groups, because subgroups of a main group act alike per surface.
type molecule struct {
	r, q, rp float64   // volume, surface, and the volume (to the power 3/4 in the modified method); dimensionless
	mains    []int     // main groups, ascending
	qm       []float64 // their surfaces
}

func (m *groupMethod) molecule(groups []compound.Group) (molecule, error) {
	var out molecule
	surface := map[int]float64{}
	for _, g := range groups {
		s, ok := m.subs[g.Sub]
		if !ok {
			return molecule{}, fmt.Errorf("UNIFAC, %s: there is no subgroup %d in the table", m.base, g.Sub)
		}
		n := float64(g.Count)
		out.r += n * s.r
		out.q += n * s.q
		if _, seen := surface[s.main]; !seen {
			out.mains = append(out.mains, s.main)
		}
		surface[s.main] += n * s.q
	}
	slices.Sort(out.mains)
	for _, k := range out.mains {
		out.qm = append(out.qm, surface[k])
	}
	out.rp = out.r
	if m.base == compound.Dortmund {
		out.rp = math.Pow(out.r, 0.75)
	}
	return out, nil
}

// between returns the interaction of two main groups.
func (m *groupMethod) between(i, j int) (interaction, error) {
	if i == j {
		return interaction{}, nil
	}
	p, ok := m.pairs[[2]int{i, j}]
	if !ok {
		return interaction{}, fmt.Errorf("UNIFAC, %s: the interaction of main groups %d and %d is not published", m.base, i, j)
	}
	return p, nil
}

func groupsOf(c *compound.Compound, base compound.Base) []compound.Group {
	if base == compound.Dortmund {
		return c.Groups.Dortmund
	}
	return c.Groups.Original
}
