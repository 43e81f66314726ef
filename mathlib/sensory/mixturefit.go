package sensory

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"

	"swanneck/mathlib/quantity"
)

// MixtureModel is how much bending a fitted surface is allowed.
type MixtureModel int

// The models, in Scheffé's form, without a constant: the shares add up to 1 already.
const (
	MixtureLinear       MixtureModel = iota // each ingredient adds its own
	MixtureQuadratic                        // and each pair something of its own
	MixtureSpecialCubic                     // and each three
)

// String names the model.
func (m MixtureModel) String() string {
	switch m {
	case MixtureLinear:
		return "linear"
	case MixtureQuadratic:
		return "quadratic"
	case MixtureSpecialCubic:
		return "special cubic"
	}
	return fmt.Sprintf("MixtureModel(%d)", int(m))
}

// terms returns the ingredients in each term of the model.
func (m MixtureModel) terms(q int) [][]int {
	out := choices(q, 1)
	if m >= MixtureQuadratic {
		out = append(out, choices(q, 2)...)
	}
	if m >= MixtureSpecialCubic {
		out = append(out, choices(q, 3)...)
	}
	return out
}

// MixtureTrial is what a panel said of the blends of a trial.
type MixtureTrial struct {
	Ingredients []string
	Shares      [][]float64 // a row for each tasting: the shares, dimensionless; each row adds up to 1
	Scores      []float64   // the score of each tasting, dimensionless; higher is better
	Model       MixtureModel
	SuretyPct   float64 // how often an interval holds the true value, per cent; 95 if 0
}

// MixtureTerm is one term of a fitted surface.
type MixtureTerm struct {
	Name        string  // such as "juniper" or "juniper × coriander"
	Coefficient float64 // dimensionless, in scores; of an ingredient alone: the score of the pure ingredient
	Standard    float64 // its standard error, dimensionless
	Low, High   float64 // its interval, dimensionless
	PValue      float64 // the chance of a coefficient as far from 0 if it were 0, dimensionless
}

// MixtureFit is a surface fitted to a mixture trial.
type MixtureFit struct {
	Trial        MixtureTrial
	Terms        []MixtureTerm
	R2           float64 // the share of the scatter of the scores that the surface accounts for, dimensionless
	AdjustedR2   float64 // the same, corrected for the number of terms, dimensionless
	Residual     float64 // the standard deviation of the scores around the surface, dimensionless
	Degrees      int     // degrees of freedom behind Residual
	LackDegrees  int     // degrees of freedom of the lack of fit: different blends less terms
	PureDegrees  int     // degrees of freedom of the scatter among tastings of one blend
	LackOfFitP   float64 // the chance of as bad a fit if the model were right, dimensionless; 1 if it cannot be told (no LackDegrees or no PureDegrees)
	PValue       float64 // the chance of as good a fit if all blends were alike, dimensionless
	MeanOfScores float64 // dimensionless

	terms      [][]int
	beta       []float64
	covariance *mat.SymDense // of the coefficients
	t          float64       // Student's t of the intervals
}

// Prediction is what a fitted surface says of a blend.
type Prediction struct {
	Shares    []float64 // of the ingredients, dimensionless
	Score     float64   // the mean score to be expected, dimensionless
	Standard  float64   // its standard error, dimensionless
	Low, High float64   // the interval of the mean score, dimensionless
}

// FitMixture fits a Scheffé surface to the scores of a mixture trial by least squares. R² is taken around the mean of the
// scores.
//
// It fails for shares that do not add up to 1 within 0.001, for as many scores as do not match the blends, for no more
// tastings than terms (then no interval can be given), and if the blends leave a term undetermined.
//
// Source: H. Scheffé, Journal of the Royal Statistical Society B 20 (1958) 344–360; J. A. Cornell, Experiments with
// mixtures (1981), chapters 2 and 5, for R² and the lack of fit.
func FitMixture(trial MixtureTrial) (MixtureFit, error) {
	const fn = "sensory.FitMixture"
	trial, err := trial.check(fn)
	if err != nil {
		return MixtureFit{}, err
	}
	f := MixtureFit{Trial: trial, terms: trial.Model.terms(len(trial.Ingredients))}
	n, p := len(trial.Scores), len(f.terms)
	if n <= p {
		return MixtureFit{}, fmt.Errorf("%s: %d tastings for the %d terms of a %v model leave nothing to judge the scatter by; taste %d or more, blends repeated", fn, n, p, trial.Model, p+1)
	}
	if err := f.solve(fn); err != nil {
		return MixtureFit{}, err
	}
	f.judge()
	return f, nil
}

func (trial MixtureTrial) check(fn string) (MixtureTrial, error) {
	if err := checkIngredients(fn, trial.Ingredients); err != nil {
		return trial, err
	}
	if trial.Model < MixtureLinear || trial.Model > MixtureSpecialCubic {
		return trial, fmt.Errorf("%s: there is no model %d; take MixtureLinear, MixtureQuadratic or MixtureSpecialCubic", fn, int(trial.Model))
	}
	if len(trial.Shares) != len(trial.Scores) {
		return trial, fmt.Errorf("%s: %d blends and %d scores; give one score for each tasting", fn, len(trial.Shares), len(trial.Scores))
	}
	shares := make([][]float64, len(trial.Shares))
	for i, row := range trial.Shares {
		x, err := whole(fn, fmt.Sprintf("tasting %d", i+1), row, trial.Ingredients)
		if err != nil {
			return trial, err
		}
		shares[i] = x
		if s := trial.Scores[i]; math.IsNaN(s) || math.IsInf(s, 0) {
			return trial, fmt.Errorf("%s: the score of tasting %d is %v; give a finite number", fn, i+1, s)
		}
	}
	trial.Shares = shares
	var err error
	trial.SuretyPct, err = share(fn, "the surety", trial.SuretyPct, 95, 50, 99.99)
	return trial, err
}

// whole returns shares that add up to 1 exactly, if they do so within rounding.
func whole(fn, what string, shares []float64, ingredients []string) ([]float64, error) {
	if len(shares) != len(ingredients) {
		return nil, fmt.Errorf("%s: %s has %d shares for %d ingredients", fn, what, len(shares), len(ingredients))
	}
	var sum float64
	for j, x := range shares {
		if err := quantity.CheckRange(fn, fmt.Sprintf("the share of %s in %s", ingredients[j], what), x, 0, 1, "", "shares are parts of 1"); err != nil {
			return nil, err
		}
		sum += x
	}
	if math.Abs(sum-1) > 0.001 {
		return nil, fmt.Errorf("%s: the shares of %s add up to %.4g; they must add up to 1", fn, what, sum)
	}
	out := append([]float64(nil), shares...)
	if math.Abs(sum-1) > 1e-12 {
		for j := range out {
			out[j] /= sum
		}
	}
	return out, nil
}

// columns returns the value of each term for shares, dimensionless.
func columns(terms [][]int, shares []float64) []float64 {
	out := make([]float64, len(terms))
	for i, t := range terms {
		out[i] = 1
		for _, j := range t {
			out[i] *= shares[j]
		}
	}
	return out
}

// solve works out the coefficients and their covariance over the residual variance.
func (f *MixtureFit) solve(fn string) error {
	n, p := len(f.Trial.Scores), len(f.terms)
	x := mat.NewDense(n, p, nil)
	for i, shares := range f.Trial.Shares {
		x.SetRow(i, columns(f.terms, shares))
	}
	var qr mat.QR
	qr.Factorize(x)
	var r mat.Dense
	qr.RTo(&r)
	for j := range p {
		if math.Abs(r.At(j, j)) < 1e-9*math.Abs(r.At(0, 0)) {
			return fmt.Errorf("%s: the blends leave %q undetermined in a %v model; add blends in which these ingredients vary on their own, or take a simpler model", fn, f.termName(j), f.Trial.Model)
		}
	}
	var beta mat.VecDense
	if err := qr.SolveVecTo(&beta, false, mat.NewVecDense(n, f.Trial.Scores)); err != nil {
		return fmt.Errorf("%s: the blends hardly tell the terms of a %v model apart (%w); add blends that differ more, or take a simpler model", fn, f.Trial.Model, err)
	}
	f.beta = beta.RawVector().Data
	upper := mat.NewTriDense(p, mat.Upper, nil)
	for i := range p {
		for j := i; j < p; j++ {
			upper.SetTri(i, j, r.At(i, j))
		}
	}
	var inverse mat.TriDense
	if err := inverse.InverseTri(upper); err != nil {
		return fmt.Errorf("%s: the blends hardly tell the terms of a %v model apart (%w); add blends that differ more, or take a simpler model", fn, f.Trial.Model, err)
	}
	f.covariance = mat.NewSymDense(p, nil)
	f.covariance.SymOuterK(1, &inverse)
	return nil
}

// judge works out how well the surface fits.
func (f *MixtureFit) judge() {
	n, p := len(f.Trial.Scores), len(f.beta)
	for _, y := range f.Trial.Scores {
		f.MeanOfScores += y / float64(n)
	}
	var left, total float64
	for i, shares := range f.Trial.Shares {
		y := f.Trial.Scores[i]
		left += sq(y - dot(columns(f.terms, shares), f.beta))
		total += sq(y - f.MeanOfScores)
	}
	f.Degrees = n - p
	variance := left / float64(f.Degrees)
	f.Residual = math.Sqrt(variance)
	f.covariance.ScaleSym(variance, f.covariance)
	f.R2, f.AdjustedR2, f.PValue = 1, 1, 0
	if total > 0 {
		f.R2 = 1 - left/total
		f.AdjustedR2 = 1 - variance/(total/float64(n-1))
	}
	if variance > 0 && p > 1 {
		f.PValue = distuv.F{D1: float64(p - 1), D2: float64(f.Degrees)}.Survival((total - left) / float64(p-1) / variance)
	}
	f.lackOfFit(left)
	student := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(f.Degrees)}
	f.t = student.Quantile((1 + f.Trial.SuretyPct/100) / 2)
	for j, b := range f.beta {
		se := math.Sqrt(f.covariance.At(j, j))
		term := MixtureTerm{Name: f.termName(j), Coefficient: b, Standard: se, Low: b - f.t*se, High: b + f.t*se}
		if se > 0 {
			term.PValue = 2 * student.Survival(math.Abs(b)/se)
		} else if b == 0 {
			term.PValue = 1
		}
		f.Terms = append(f.Terms, term)
	}
}

// lackOfFit compares the misfit with the scatter among tastings of one blend.
func (f *MixtureFit) lackOfFit(left float64) {
	f.LackOfFitP = 1
	var blends [][]float64
	var scores [][]float64
next:
	for i, x := range f.Trial.Shares {
		for k, known := range blends {
			if near(x, known) {
				scores[k] = append(scores[k], f.Trial.Scores[i])
				continue next
			}
		}
		blends, scores = append(blends, x), append(scores, []float64{f.Trial.Scores[i]})
	}
	var pure float64
	for _, ys := range scores {
		var mean float64
		for _, y := range ys {
			mean += y / float64(len(ys))
		}
		for _, y := range ys {
			pure += sq(y - mean)
		}
	}
	f.PureDegrees = len(f.Trial.Scores) - len(blends)
	f.LackDegrees = len(blends) - len(f.beta)
	if f.PureDegrees > 0 && f.LackDegrees > 0 && pure > 0 {
		lack := math.Max(left-pure, 0) / float64(f.LackDegrees)
		f.LackOfFitP = distuv.F{D1: float64(f.LackDegrees), D2: float64(f.PureDegrees)}.Survival(lack / (pure / float64(f.PureDegrees)))
	}
}

func (f MixtureFit) termName(j int) string {
	var names []string
	for _, i := range f.terms[j] {
		names = append(names, f.Trial.Ingredients[i])
	}
	return strings.Join(names, " × ")
}

// Predict returns the mean score that the surface gives a blend, with its interval. It fails for shares that do not fit the
// ingredients or do not add up to 1.
func Predict(f MixtureFit, shares []float64) (Prediction, error) {
	const fn = "sensory.Predict"
	if len(f.beta) == 0 {
		return Prediction{}, fmt.Errorf("%s: there is no fitted surface; make one with FitMixture", fn)
	}
	x, err := whole(fn, "the blend", shares, f.Trial.Ingredients)
	if err != nil {
		return Prediction{}, err
	}
	return f.predict(x), nil
}

func (f *MixtureFit) predict(x []float64) Prediction {
	c := columns(f.terms, x)
	p := Prediction{Shares: x, Score: dot(c, f.beta), Standard: f.standard(c)}
	p.Low, p.High = p.Score-f.t*p.Standard, p.Score+f.t*p.Standard
	return p
}

func (f *MixtureFit) score(x []float64) float64 { return dot(columns(f.terms, x), f.beta) }

// standard returns the standard error of a sum of coefficients with the weights c, dimensionless.
func (f *MixtureFit) standard(c []float64) float64 {
	v := mat.NewVecDense(len(c), c)
	return math.Sqrt(math.Max(mat.Inner(v, f.covariance, v), 0))
}

func dot(a, b []float64) float64 {
	var sum float64
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}

func sq(x float64) float64 { return x * x }
