package equilibrium

import (
	"math"
	"sync"

	"swanneck/mathlib/compound"
)

// groupPair is a UNIFAC method for ethanol and water. Their main groups are three: CH2, OH and H2O, of which ethanol has
// the first two.
type groupPair struct {
	ethanol, water molecule
	inter          [3][3]interaction
}

var (
	originalPair = sync.OnceValue(func() *groupPair { return newGroupPair(originalUNIFAC()) })
	dortmundPair = sync.OnceValue(func() *groupPair { return newGroupPair(dortmundUNIFAC()) })
)

func solventPair(base compound.Base) *groupPair {
	if base == compound.Dortmund {
		return dortmundPair()
	}
	return originalPair()
}

func newGroupPair(m *groupMethod) *groupPair {
	g := &groupPair{}
	var err error
	take := func(name string) (mol molecule) {
		c, e := compound.Find(name)
		if e == nil {
			mol, e = m.molecule(groupsOf(c, m.base))
		}
		if err == nil {
			err = e
		}
		return mol
	}
	g.ethanol, g.water = take("ethanol"), take("water")
	if err != nil || len(g.ethanol.mains) != 2 || len(g.water.mains) != 1 {
		panic("equilibrium: the data files know ethanol and water by other groups than CH2, OH and H2O") // a test loads them
	}
	mains := [3]int{g.ethanol.mains[0], g.ethanol.mains[1], g.water.mains[0]}
	for i, a := range mains {
		for j, b := range mains {
			if g.inter[i][j], err = m.between(a, b); err != nil {
				panic(err)
			}
		}
	}
	return g
}

// LnGamma returns the natural logarithms of the activity coefficients, dimensionless, and their slopes, 1/K. The formula
// is that of groupSet.lnGamma.
func (g *groupPair) LnGamma(x, tempK float64) (ln1, ln2, perK1, perK2 float64) {
	e, w := &g.ethanol, &g.water
	x2 := 1 - x
	u := 1 / tempK
	var psi, dpsi [3][3]float64
	for i := range 3 {
		for j := range 3 {
			if i == j {
				psi[i][j] = 1
				continue
			}
			p := g.inter[i][j].psi(tempK, u)
			psi[i][j], dpsi[i][j] = p, p*g.inter[i][j].slope(u)
		}
	}
	q := x*e.q + x2*w.q
	effect, slope := residual3(&psi, &dpsi, [3]float64{x * e.qm[0] / q, x * e.qm[1] / q, x2 * w.q / q})
	pure, pureSlope := residual3(&psi, &dpsi, [3]float64{e.qm[0] / e.q, e.qm[1] / e.q, 0})
	r, rp := x*e.r+x2*w.r, x*e.rp+x2*w.rp
	ln1 = combinatorial(e.r/r, e.q/q, e.rp/rp, e.q) + e.qm[0]*(effect[0]-pure[0]) + e.qm[1]*(effect[1]-pure[1])
	ln2 = combinatorial(w.r/r, w.q/q, w.rp/rp, w.q) + w.q*effect[2]
	perK1 = e.qm[0]*(slope[0]-pureSlope[0]) + e.qm[1]*(slope[1]-pureSlope[1])
	perK2 = w.q * slope[2]
	return
}

// residual3 returns ln Γ per surface of three main groups whose shares of the surface are theta, and its slope by
// temperature.
func residual3(psi, dpsi *[3][3]float64, theta [3]float64) (effect, slope [3]float64) {
	var share, dshare [3]float64
	for m := range 3 {
		s := theta[0]*psi[0][m] + theta[1]*psi[1][m] + theta[2]*psi[2][m]
		ds := theta[0]*dpsi[0][m] + theta[1]*dpsi[1][m] + theta[2]*dpsi[2][m]
		share[m] = theta[m] / s
		dshare[m] = -share[m] * ds / s
		effect[m] = 1 - math.Log(s)
		slope[m] = -ds / s
	}
	for m := range 3 {
		for k := range 3 {
			effect[m] -= share[k] * psi[m][k]
			slope[m] -= dshare[k]*psi[m][k] + share[k]*dpsi[m][k]
		}
	}
	return
}
