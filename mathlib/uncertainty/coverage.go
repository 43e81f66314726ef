package uncertainty

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// effectiveDegrees returns the degrees of freedom of a combined standard uncertainty, dimensionless; +Inf if nothing
// limits them. parts are the contributions, degrees those of each.
//
// Source: JCGM 100:2008, G.4.1, equation (G.2b), the formula of Welch and Satterthwaite. It holds for contributions that
// are not correlated.
func effectiveDegrees(standard float64, parts, degrees []float64) float64 {
	var sum float64
	for i, u := range parts {
		sum += math.Pow(u/standard, 4) / degrees[i]
	}
	return 1 / sum
}

// coverageFactor returns the k with which ± k standard uncertainties hold the share pct, per cent, dimensionless. Degrees
// of freedom are cut to a whole number, which errs to the wide side.
//
// Source: JCGM 100:2008, G.3 and G.4.1.
func coverageFactor(pct, degrees float64) float64 {
	p := (1 + pct/100) / 2
	if math.IsInf(degrees, 1) || degrees > 1e6 {
		return distuv.UnitNormal.Quantile(p)
	}
	return studentQuantile(p, math.Max(math.Floor(degrees+1e-9), 1))
}

func studentQuantile(p, degrees float64) float64 {
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: degrees}.Quantile(p)
}
