package sensory

import (
	"fmt"
	"strings"
)

// String gives the surface in one line.
func (f MixtureFit) String() string {
	if len(f.Terms) == 0 {
		return "no fitted surface"
	}
	s := "score ="
	for i, t := range f.Terms {
		sign, c := "+", t.Coefficient
		if c < 0 {
			sign, c = "−", -c
		}
		if i > 0 || sign == "−" {
			s += " " + sign
		}
		s += fmt.Sprintf(" %.2f %s", c, t.Name)
	}
	return s + fmt.Sprintf("; R² %.3f (adjusted %.3f), scatter %.2f%s", f.R2, f.AdjustedR2, f.Residual, f.warning())
}

// warning says what speaks against the surface.
func (f MixtureFit) warning() string {
	level := 1 - f.Trial.SuretyPct/100
	switch {
	case f.PureDegrees > 0 && f.LackDegrees > 0 && f.LackOfFitP < level:
		return fmt.Sprintf("; the model does not fit (lack of fit, p = %s): take one with more terms", chanceText(f.LackOfFitP))
	case f.PValue > level:
		return fmt.Sprintf("; the blends may all be alike (p = %s): the surface means little", chanceText(f.PValue))
	}
	return ""
}

// Rows gives the surface as a table, a row for each term and for each figure of its fit.
func (f MixtureFit) Rows() [][]string {
	if len(f.Terms) == 0 {
		return [][]string{{"no fitted surface", "", ""}}
	}
	rows := [][]string{{"term", "coefficient", fmt.Sprintf("interval, %s %%", short(f.Trial.SuretyPct)), "standard error", "p"}}
	for _, t := range f.Terms {
		rows = append(rows, []string{t.Name, fmt.Sprintf("%.2f", t.Coefficient), fmt.Sprintf("%.2f to %.2f", t.Low, t.High),
			fmt.Sprintf("%.2f", t.Standard), chanceText(t.PValue)})
	}
	rows = append(rows,
		[]string{"R²", fmt.Sprintf("%.4f", f.R2), fmt.Sprintf("adjusted %.4f", f.AdjustedR2), "", ""},
		[]string{"scatter of the scores", fmt.Sprintf("%.3f", f.Residual), fmt.Sprintf("%d degrees of freedom", f.Degrees), "", ""},
		[]string{"chance of such a fit if all blends are alike", chanceText(f.PValue), "", "", ""})
	if f.PureDegrees > 0 && f.LackDegrees > 0 {
		rows = append(rows, []string{"lack of fit, p", chanceText(f.LackOfFitP), fmt.Sprintf("%d and %d degrees of freedom", f.LackDegrees, f.PureDegrees), "", ""})
	}
	if w := f.warning(); w != "" {
		rows = append(rows, []string{"note: " + strings.TrimPrefix(w, "; "), "", "", "", ""})
	}
	return rows
}

// String gives the blend with its score in one line.
func (p Prediction) String() string {
	return fmt.Sprintf("%s: %.2f (%.2f to %.2f)", percents(p.Shares), p.Score, p.Low, p.High)
}

func percents(shares []float64) string {
	var out []string
	for _, x := range shares {
		out = append(out, percent(x))
	}
	return strings.Join(out, " : ") + " %"
}
