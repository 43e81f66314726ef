package equilibrium

import "math"

// Activity is an activity model of ethanol (1) and water (2).
type Activity interface {
	// LnGamma returns the natural logarithms of the activity coefficients of ethanol and of water, dimensionless, at
	// the mole fraction x of ethanol and at tempK, and how much each grows per kelvin.
	LnGamma(x, tempK float64) (ln1, ln2, perK1, perK2 float64)
}

// NRTL holds the parameters of the equation of Renon and Prausnitz: tau_ij = a_ij + b_ij/T, G_ij = exp(-alpha tau_ij).
type NRTL struct {
	A12, A21   float64 // dimensionless
	B12K, B21K float64
	Alpha      float64 // dimensionless
}

// LnGamma returns the natural logarithms of the activity coefficients, dimensionless, and their slopes, 1/K.
//
// Source: Renon and Prausnitz, AIChE J. 14 (1968) 135, for two components:
// ln γ1 = x2²[τ21 (G21/(x1+x2 G21))² + τ12 G12/(x2+x1 G12)²], and the same with 1 and 2 exchanged.
func (m NRTL) LnGamma(x, tempK float64) (ln1, ln2, perK1, perK2 float64) {
	u := 1 / tempK
	x2 := 1 - x
	tau12, tau21 := m.A12+m.B12K*u, m.A21+m.B21K*u
	dtau12, dtau21 := -m.B12K*u*u, -m.B21K*u*u
	g12, g21 := math.Exp(-m.Alpha*tau12), math.Exp(-m.Alpha*tau21)
	dg12, dg21 := -m.Alpha*g12*dtau12, -m.Alpha*g21*dtau21
	p, q := 1/(x+x2*g21), 1/(x2+x*g12)
	dp, dq := -p*p*x2*dg21, -q*q*x*dg12
	a, c := g21*p, g12*q // G21/(x1+x2 G21), G12/(x2+x1 G12)
	da, dc := dg21*p+g21*dp, dg12*q+g12*dq
	ln1 = x2 * x2 * (tau21*a*a + tau12*c*q)
	ln2 = x * x * (tau12*c*c + tau21*a*p)
	perK1 = x2 * x2 * (dtau21*a*a + 2*tau21*a*da + dtau12*c*q + tau12*(dc*q+c*dq))
	perK2 = x * x * (dtau12*c*c + 2*tau12*c*dc + dtau21*a*p + tau21*(da*p+a*dp))
	return
}

// Wilson holds the parameters of Wilson's equation: ln Lambda_ij = a_ij + b_ij/T.
type Wilson struct {
	A12, A21   float64 // dimensionless
	B12K, B21K float64
}

// LnGamma returns the natural logarithms of the activity coefficients, dimensionless, and their slopes, 1/K.
//
// Source: Wilson, J. Am. Chem. Soc. 86 (1964) 127, for two components:
// ln γ1 = -ln(x1+Λ12 x2) + x2[Λ12/(x1+Λ12 x2) - Λ21/(Λ21 x1+x2)].
func (m Wilson) LnGamma(x, tempK float64) (ln1, ln2, perK1, perK2 float64) {
	u := 1 / tempK
	x2 := 1 - x
	l12, l21 := math.Exp(m.A12+m.B12K*u), math.Exp(m.A21+m.B21K*u)
	dl12, dl21 := -m.B12K*u*u*l12, -m.B21K*u*u*l21
	p, q := 1/(x+l12*x2), 1/(x2+l21*x)
	d := l12*p - l21*q
	dd := dl12*p*(1-l12*x2*p) - dl21*q*(1-l21*x*q)
	ln1 = math.Log(p) + x2*d
	ln2 = math.Log(q) - x*d
	perK1 = -x2*dl12*p + x2*dd
	perK2 = -x*dl21*q - x*dd
	return
}

// UNIQUAC holds the parameters of the equation of Abrams and Prausnitz: ln tau_ij = a_ij + b_ij/T, with the volumes and
// surfaces of pure-component tables: r 2.1055 and 0.92, q 1.972 and 1.40, z = 10. (With those of UNIFAC the fitted
// parameters give no azeotrope.)
type UNIQUAC struct {
	A12, A21   float64 // dimensionless
	B12K, B21K float64
}

// Volumes and surfaces of ethanol and water, dimensionless. Source: Abrams and Prausnitz, AIChE J. 21 (1975) 116, as in
// pure-component tables (from memory).
const (
	uniquacR1, uniquacR2 = 2.1055, 0.92
	uniquacQ1, uniquacQ2 = 1.972, 1.40
)

// LnGamma returns the natural logarithms of the activity coefficients, dimensionless, and their slopes, 1/K.
//
// Source: Abrams and Prausnitz, AIChE J. 21 (1975) 116. θ is the share of the surface, V and F are volume and surface
// over mole fraction.
func (m UNIQUAC) LnGamma(x, tempK float64) (ln1, ln2, perK1, perK2 float64) {
	u := 1 / tempK
	x2 := 1 - x
	tau12, tau21 := math.Exp(m.A12+m.B12K*u), math.Exp(m.A21+m.B21K*u)
	dtau12, dtau21 := -m.B12K*u*u*tau12, -m.B21K*u*u*tau21
	r, q := x*uniquacR1+x2*uniquacR2, x*uniquacQ1+x2*uniquacQ2
	th1, th2 := x*uniquacQ1/q, x2*uniquacQ2/q
	p1, p2 := 1/(th1+th2*tau21), 1/(th2+th1*tau12)
	ds1, ds2 := th2*dtau21, th1*dtau12
	ln1 = combinatorial(uniquacR1/r, uniquacQ1/q, uniquacR1/r, uniquacQ1) + uniquacQ1*(1+math.Log(p1)-th1*p1-th2*tau12*p2)
	ln2 = combinatorial(uniquacR2/r, uniquacQ2/q, uniquacR2/r, uniquacQ2) + uniquacQ2*(1+math.Log(p2)-th2*p2-th1*tau21*p1)
	perK1 = uniquacQ1 * (-ds1*p1 + th1*ds1*p1*p1 - th2*dtau12*p2 + th2*tau12*ds2*p2*p2)
	perK2 = uniquacQ2 * (-ds2*p2 + th2*ds2*p2*p2 - th1*dtau21*p1 + th1*tau21*ds1*p1*p1)
	return
}

// combinatorial returns the part of ln γ that comes of the sizes: v and f are volume and surface over mole fraction, vp
// the same as v or with the 3/4 power of modified UNIFAC, q the surface.
func combinatorial(v, f, vp, q float64) float64 {
	return 1 - vp + math.Log(vp) - 5*q*(1-v/f+math.Log(v/f))
}
