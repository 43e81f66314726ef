package still

import "math"

// An oil layer. What a spirit cannot dissolve of an oil lies on it as a second liquid and gives off no more vapour than that
// liquid does; without this limit limonene would come over a hundred times too fast.
//
// It is looked for in pot and thumper. Plates hold stronger spirit, which dissolves more; there none is looked for.
//
// The layer is taken as an ideal liquid of the traces alone. With N moles of ethanol and water, n_k moles of a trace, of
// which the activity coefficient in the spirit is γ_k, and O moles of oil, the oil holds x_k = n_k/(O + N/γ_k), which sum
// to 1; that is also the activity of the trace everywhere.

// oilMoles returns O, given n and N/γ of each trace, or 0 where everything dissolves.
func oilMoles(n, room []float64) float64 {
	sum, total := 0.0, 0.0
	for k, moles := range n {
		sum += moles / room[k]
		total += moles
	}
	if sum <= 1 {
		return 0
	}
	// Σ n/(O + N/γ) - 1 falls with O and is convex: Newton's method from the left never passes the root.
	oil := 0.0
	for range 100 {
		f, slope := -1.0, 0.0
		for k, moles := range n {
			q := 1 / (oil + room[k])
			f += moles * q
			slope -= moles * q * q
		}
		next := math.Min(oil-f/slope, total)
		if math.Abs(next-oil) <= 1e-13*total {
			return next
		}
		oil = next
	}
	return oil
}

// layer recognises an oil layer in a vessel.
type layer struct {
	line *line
	// perPa are 1/pS, 1/Pa, of each trace at the temperature coldK: the least that the vessel has. At any higher one the
	// activity K p/pS is smaller, so that most moments need no more than this to tell that everything is dissolved.
	perPa []float64
	coldK float64
	room  []float64
}

func newLayer(l *line, n int, coldK float64) layer {
	y := layer{line: l, perPa: make([]float64, n), coldK: coldK, room: make([]float64, n)}
	for k := range y.perPa {
		y.perPa[k] = math.Exp(-l.LnVapourPressurePa(k, coldK))
	}
	return y
}

// cap turns the volatilities k of traces as if dissolved into those of what is in the vessel, which holds n of each and
// total moles of ethanol and water at tempK. It returns the moles of oil.
func (y *layer) cap(k, n []float64, total, tempK float64) (oil float64) {
	pPa := y.line.P().KPa() * 1000
	if tempK >= y.coldK {
		sum := 0.0
		for i, moles := range n {
			sum += moles * k[i] * y.perPa[i]
		}
		if sum*pPa <= total {
			return 0
		}
	}
	for i := range n {
		gamma := k[i] * pPa * math.Exp(-y.line.LnVapourPressurePa(i, tempK))
		y.room[i] = total / gamma
	}
	if oil = oilMoles(n, y.room); oil == 0 {
		return 0
	}
	// The vapour is that of the activity n/(O + N/γ), where the dissolved alone would have the activity n γ/N.
	for i := range n {
		k[i] *= y.room[i] / (oil + y.room[i])
	}
	return oil
}
