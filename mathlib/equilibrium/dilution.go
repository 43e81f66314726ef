package equilibrium

import (
	"fmt"
	"math"

	"swanneck/mathlib/compound"
)

// Molar volumes of ethanol and water, cm³/mol, for the share of water in the volume. Source: DECHEMA Chemistry Data
// Series, pure components (from memory); the same as Wilson's equation takes.
const ethanolCm3, waterCm3 = 58.69, 18.07

// waterShare returns φ, the share of the water in the volume before mixing, dimensionless.
func waterShare(x float64) float64 {
	w := (1 - x) * waterCm3
	return w / (w + x*ethanolCm3)
}

// solvent is ethanol and water as a UNIFAC method sees them, with what their traces share at one composition and
// temperature.
type solvent struct {
	pair *groupPair

	x, tempK, perK float64
	r, q, rp       float64    // volume and surface of a mole
	theta          [3]float64 // share of CH2, OH, H2O in the surface
	share          [3]float64 // θ over Σ θ ψ
	effect         [3]float64 // ln Γ per surface
}

func (s *solvent) set(x, tempK float64) {
	e, w := &s.pair.ethanol, &s.pair.water
	s.x, s.tempK, s.perK = x, tempK, 1/tempK
	s.r, s.q, s.rp = x*e.r+(1-x)*w.r, x*e.q+(1-x)*w.q, x*e.rp+(1-x)*w.rp
	s.theta = [3]float64{x * e.qm[0] / s.q, x * e.qm[1] / s.q, (1 - x) * w.q / s.q}
	var psi [3][3]float64
	for i := range 3 {
		for j := range 3 {
			psi[i][j] = 1
			if i != j {
				psi[i][j] = s.pair.inter[i][j].psi(tempK, s.perK)
			}
		}
	}
	for m := range 3 {
		sum := s.theta[0]*psi[0][m] + s.theta[1]*psi[1][m] + s.theta[2]*psi[2][m]
		s.share[m] = s.theta[m] / sum
		s.effect[m] = 1 - math.Log(sum)
	}
	for m := range 3 {
		s.effect[m] -= s.share[0]*psi[m][0] + s.share[1]*psi[m][1] + s.share[2]*psi[m][2]
	}
}

const mostMains = 8

// trace is a compound so dilute in ethanol and water that only these two surround it.
type trace struct {
	name   string
	vapour compound.VapourPressure
	base   compound.Base
	mol    molecule
	in     []int            // main group → its place among the solvent's three, or -1
	to     [][3]interaction // from each of the solvent's groups to a group of the trace
	from   [][3]interaction // and back
	among  [][]interaction  // within the trace
	delta  float64          // what the measurement in water adds to ln γ, times the water's share; dimensionless
}

func newTrace(c *compound.Compound, anchored bool) (*trace, error) {
	return newTraceOf(c, c.InWater.Base, anchored)
}

func newTraceOf(c *compound.Compound, base compound.Base, anchored bool) (*trace, error) {
	m := method(base)
	mol, err := m.molecule(groupsOf(c, base))
	if err != nil {
		return nil, err
	}
	if len(mol.mains) > mostMains {
		return nil, fmt.Errorf("UNIFAC, %s: %s has %d main groups; there is room for %d", base, c.Name, len(mol.mains), mostMains)
	}
	pair := solventPair(base)
	mains := [3]int{pair.ethanol.mains[0], pair.ethanol.mains[1], pair.water.mains[0]}
	t := &trace{name: c.Name, vapour: c.Vapour, base: base, mol: mol}
	for _, k := range mol.mains {
		place := -1
		var to, from [3]interaction
		for n, s := range mains {
			if s == k {
				place = n
			}
			if to[n], err = m.between(s, k); err != nil {
				return nil, err
			}
			if from[n], err = m.between(k, s); err != nil {
				return nil, err
			}
		}
		var among []interaction
		for _, l := range mol.mains {
			p, err := m.between(k, l)
			if err != nil {
				return nil, err
			}
			among = append(among, p)
		}
		t.in, t.to, t.from, t.among = append(t.in, place), append(t.to, to), append(t.from, from), append(t.among, among)
	}
	if anchored && c.InWater.Measured() {
		s := solvent{pair: pair}
		s.set(0, c.InWater.TempC+273.15)
		t.delta = math.Log(c.InWater.GammaInf) - t.lnGamma(&s)
	}
	return t, nil
}

// lnGamma returns ln γ of the trace in the solvent as set, dimensionless: the group method, and what was measured in
// water by the share of the water in the volume, as in log-linear cosolvency.
//
// Source: Fredenslund, Jones and Prausnitz (1975) and Weidlich and Gmehling (1987) at x → 0; the weight is an own choice.
func (t *trace) lnGamma(s *solvent) float64 {
	c := &t.mol
	ln := combinatorial(c.r/s.r, c.q/s.q, c.rp/s.rp, c.q) + t.delta*waterShare(s.x)
	for k, q := range c.qm {
		if n := t.in[k]; n >= 0 {
			ln += q * s.effect[n]
			continue
		}
		to, from := &t.to[k], &t.from[k]
		sum, e := 0.0, 1.0
		for n := range 3 {
			sum += s.theta[n] * to[n].psi(s.tempK, s.perK)
			e -= s.share[n] * from[n].psi(s.tempK, s.perK)
		}
		ln += q * (e - math.Log(sum))
	}
	return ln - t.pure(s.tempK)
}

// pure returns the residual part of the pure compound, which depends on temperature alone.
func (t *trace) pure(tempK float64) float64 {
	n := len(t.mol.qm)
	if n == 1 {
		return 0
	}
	var psi [mostMains][mostMains]float64
	var share [mostMains]float64
	perK, perQ := 1/tempK, 1/t.mol.q
	ln := 0.0
	for i := range n {
		for j := range n {
			psi[i][j] = 1
			if i != j {
				psi[i][j] = t.among[i][j].psi(tempK, perK)
			}
		}
	}
	for m := range n {
		d := 0.0
		for k, q := range t.mol.qm {
			d += q * psi[k][m]
		}
		share[m] = t.mol.qm[m] / d
		ln += t.mol.qm[m] * (1 - math.Log(d*perQ))
	}
	for m, q := range t.mol.qm {
		for k := range n {
			ln -= q * share[k] * psi[m][k]
		}
	}
	return ln
}
