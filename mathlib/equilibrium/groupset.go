package equilibrium

import (
	"math"
	"slices"
)

// groupSet is a fixed list of molecules in one UNIFAC method, with the room for its sums: it must not be used by two
// goroutines at once.
type groupSet struct {
	mol   []molecule
	index [][]int // molecule → places of its main groups in the list of all

	n      int           // main groups
	inter  []interaction // n × n, row by row
	psi    []float64     // n × n at the temperature set
	pure   []float64     // molecule → residual part of the pure liquid
	theta  []float64     // share of the surface
	sum    []float64     // Σ_n θ_n ψ_nm
	share  []float64     // θ_m over that sum
	effect []float64     // ln Γ per surface
}

func newGroupSet(m *groupMethod, mol []molecule) (*groupSet, error) {
	var mains []int
	for _, c := range mol {
		for _, k := range c.mains {
			if !slices.Contains(mains, k) {
				mains = append(mains, k)
			}
		}
	}
	slices.Sort(mains)
	n := len(mains)
	s := &groupSet{mol: mol, n: n, inter: make([]interaction, n*n), psi: make([]float64, n*n), pure: make([]float64, len(mol)),
		theta: make([]float64, n), sum: make([]float64, n), share: make([]float64, n), effect: make([]float64, n)}
	for i, a := range mains {
		for j, b := range mains {
			p, err := m.between(a, b)
			if err != nil {
				return nil, err
			}
			s.inter[i*n+j] = p
		}
	}
	for _, c := range mol {
		var at []int
		for _, k := range c.mains {
			at = append(at, slices.Index(mains, k))
		}
		s.index = append(s.index, at)
	}
	return s, nil
}

// setTemp reckons what depends on temperature alone.
func (s *groupSet) setTemp(tempK float64) {
	perK := 1 / tempK
	for i := range s.n {
		row := s.psi[i*s.n : (i+1)*s.n]
		for j, p := range s.inter[i*s.n : (i+1)*s.n] {
			if i == j {
				row[j] = 1
			} else {
				row[j] = p.psi(tempK, perK)
			}
		}
	}
	for i := range s.mol {
		c, at := &s.mol[i], s.index[i]
		s.pure[i] = 0
		if len(at) == 1 {
			continue // a molecule of one main group has no residual part of its own
		}
		perQ := 1 / c.q
		for b, m := range at {
			d := 0.0
			for a, k := range at {
				d += c.qm[a] * s.psi[k*s.n+m]
			}
			s.sum[b] = d * perQ
			s.share[b] = c.qm[b] / d
		}
		for b, m := range at {
			e := 1 - math.Log(s.sum[b])
			for a, k := range at {
				e -= s.share[a] * s.psi[m*s.n+k]
			}
			s.pure[i] += c.qm[b] * e
		}
	}
}

// lnGamma puts the natural logarithms of the activity coefficients at the temperature set into out. The fractions go
// into the formula as they stand, summing to 1 or not.
//
// Source: Fredenslund, Jones and Prausnitz, AIChE J. 21 (1975) 1086; Weidlich and Gmehling, Ind. Eng. Chem. Res. 26
// (1987) 1372. With θ_m the share of main group m in the surface, ln Γ_k/Q_k = 1 - ln Σ_n θ_n ψ_nm - Σ_n θ_n ψ_mn/Σ_l θ_l ψ_ln.
func (s *groupSet) lnGamma(x, out []float64) {
	r, q, rp := 0.0, 0.0, 0.0
	clear(s.theta)
	for i, xi := range x {
		c := &s.mol[i]
		r += xi * c.r
		q += xi * c.q
		rp += xi * c.rp
		for a, k := range s.index[i] {
			s.theta[k] += xi * c.qm[a]
		}
	}
	perQ := 1 / q
	for k := range s.theta {
		s.theta[k] *= perQ
	}
	clear(s.sum)
	for k, th := range s.theta {
		for m, p := range s.psi[k*s.n : (k+1)*s.n] {
			s.sum[m] += th * p
		}
	}
	for m, th := range s.theta {
		s.share[m] = th / s.sum[m]
	}
	for m := range s.n {
		e := 1 - math.Log(s.sum[m])
		for k, p := range s.psi[m*s.n : (m+1)*s.n] {
			e -= s.share[k] * p
		}
		s.effect[m] = e
	}
	for i := range x {
		c := &s.mol[i]
		ln := combinatorial(c.r/r, c.q*perQ, c.rp/rp, c.q) - s.pure[i]
		for a, k := range s.index[i] {
			ln += c.qm[a] * s.effect[k]
		}
		out[i] = ln
	}
}
