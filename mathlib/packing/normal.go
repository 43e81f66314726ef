package packing

import "gonum.org/v1/gonum/stat/distuv"

// normalBelow returns the share of a normal distribution below z standard deviations, dimensionless.
func normalBelow(z float64) float64 { return distuv.UnitNormal.CDF(z) }

// normalQuantile returns the z below which the share p of a normal distribution lies, dimensionless.
func normalQuantile(p float64) float64 { return distuv.UnitNormal.Quantile(p) }

// studentQuantile returns the value below which the share p of Student's t with the given degrees of freedom lies,
// dimensionless.
func studentQuantile(p, degrees float64) float64 {
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: degrees}.Quantile(p)
}
