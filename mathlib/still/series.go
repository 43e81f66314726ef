package still

// The functions in this file give a run as columns for a chart: one figure for each step, in the unit that ends the name.

// SeriesL returns what has come over, L at 20 °C in one vessel.
func (r Run) SeriesL() []float64 { return r.series(func(s Step) float64 { return s.CollectedL }) }

// SeriesABV returns what runs from the condenser, % vol.
func (r Run) SeriesABV() []float64 {
	return r.series(func(s Step) float64 { return s.Strength.ABV() })
}

// SeriesParrotABV returns what is in the parrot, % vol, true; while it fills, what runs into it.
func (r Run) SeriesParrotABV() []float64 { return append([]float64(nil), r.out.running...) }

// SeriesHeadC returns the temperature at the head, °C.
func (r Run) SeriesHeadC() []float64 { return r.series(func(s Step) float64 { return s.Head.C() }) }

// SeriesPotC returns the temperature of the pot, °C.
func (r Run) SeriesPotC() []float64 { return r.series(func(s Step) float64 { return s.Pot.C() }) }

// SeriesMin returns the minutes since the heat was put on.
func (r Run) SeriesMin() []float64 { return r.series(func(s Step) float64 { return s.Min }) }

// SeriesHeatKJ returns the heat put in since the beginning, kJ.
func (r Run) SeriesHeatKJ() []float64 { return r.series(func(s Step) float64 { return s.HeatKJ }) }

// SeriesCoolingLH returns the flow of cooling water, L/h.
func (r Run) SeriesCoolingLH() []float64 {
	return r.series(func(s Step) float64 { return s.CoolingLH })
}

// SeriesMgL returns how much of a compound there is in what leaves the parrot, mg to the litre at 20 °C, as the mean of each
// step; the first figure is that of the first step. It panics with a *compound.UnknownError or a *NotCarriedError.
func (r Run) SeriesMgL(name string) []float64 {
	return r.seriesOf("still.Run.SeriesMgL", name, litresOf, 1000)
}

// SeriesGHLPure returns how much of a compound there is in what leaves the parrot, grams to the hectolitre of pure alcohol.
// It panics as SeriesMgL does.
func (r Run) SeriesGHLPure(name string) []float64 {
	return r.seriesOf("still.Run.SeriesGHLPure", name, pureLitresOf, 100)
}

func (r *Run) series(f func(Step) float64) []float64 {
	out := make([]float64, len(r.Steps))
	for i, s := range r.Steps {
		out[i] = f(s)
	}
	return out
}

func (r *Run) seriesOf(function, name string, per func(a, b flow) float64, times float64) []float64 {
	_, k, err := carried(function, name, r.names())
	if err != nil {
		panic(err)
	}
	out := make([]float64, len(r.Steps))
	last, known := 0.0, 0 // the last figure, and how many steps there are to it
	for i := 1; i < len(out); i++ {
		a, b := place{at: float64(i - 1)}, place{at: float64(i)}
		if volume := per(r.flowTo(a), r.flowTo(b)); volume > 0 {
			last = times * (r.traceTo(b, k) - r.traceTo(a, k)) / volume
			if known == 0 { // nothing flowed before
				for j := range i {
					out[j] = last
				}
			}
			known++
		}
		out[i] = last
	}
	return out
}
