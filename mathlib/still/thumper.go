package still

import "math"

// warmThumper distils the pot into the thumper until that boils. All the vapour condenses there; nothing comes over yet.
//
// A thumper is not one more plate: charged with what is in the pot it strengthens the distillate only by what this warming
// up brings into it.
func (r *marcher) warmThumper() error {
	h := heats()
	cold := r.batch.Thumper.Temp.K()
	v := r.now.v
	if x := fraction(v.thumpE, v.thumpN); cold > r.head.TempK(x) {
		return inputf(r.function, "the thumper's charge is at %v, above its boiling point; give it a lower temperature", r.batch.Thumper.Temp)
	}
	got := v.thumpN * h.liquid(fraction(v.thumpE, v.thumpN), cold) // enthalpy in the thumper
	steam := 0.0
	if r.batch.Steam.Live {
		steam = r.batch.Steam.PerVapour
	}
	const most = 400 // steps: each takes half a per cent of the pot
	size := v.n / 200
	rate := func(v vessels) vessels {
		y, _ := r.pot.vapour(fraction(v.e, v.n))
		return vessels{e: -y, n: steam - 1, thumpE: y, thumpN: 1}
	}
	step := func(v vessels, size float64) vessels {
		k1 := rate(v)
		k2 := rate(v.plus(size/2, k1))
		k3 := rate(v.plus(size/2, k2))
		k4 := rate(v.plus(size, k3))
		return v.plus(size/6, k1.plus(2, k2).plus(2, k3).plus(1, k4))
	}
	// The vapour's enthalpy, taken in the middle of the step by its mean composition.
	brings := func(a, b vessels) float64 {
		y := fraction(b.thumpE-a.thumpE, b.thumpN-a.thumpN)
		x, _ := r.pot.liquid(y)
		return (b.thumpN - a.thumpN) * h.vapour(y, r.pot.TempK(x))
	}
	for range most {
		short := func(size float64) float64 {
			if size == 0 {
				return r.thumperJ(v.thumpE, v.thumpN) - got
			}
			w := step(v, size)
			return r.thumperJ(w.thumpE, w.thumpN) - got - brings(v, w)
		}
		before, after := short(0), short(size)
		done := before <= 0 || after <= 0
		if done && before > 0 {
			size = root(short, 0, size, before, after, 1e-13*v.n)
		} else if done {
			size = 0
		}
		if size > 0 {
			w := step(v, size)
			heat := brings(v, w)
			r.now.steamN += steam * size
			r.warmTraces(v, w)
			if r.powerW > 0 {
				r.now.book.seconds += (heat + r.potJ(w.e, w.n) - r.potJ(v.e, v.n)) / r.powerW
			}
			r.now.book.steam += steam * size * r.steamJMol
			r.now.book.warmUp += heat + r.potJ(w.e, w.n) - r.potJ(v.e, v.n) - steam*size*r.steamJMol
			got += heat
			v = w
		}
		if done {
			r.now.v = v
			return nil
		}
		if v.n < 2*dryShare*r.start.n || fraction(v.e, v.n) < leastFraction {
			break
		}
	}
	return &NeverError{Func: r.function, What: "the boiling of the thumper", Why: "the pot runs dry before; charge the thumper with less, or warmer"}
}

// warmTraces moves the traces that go with the vapour from the pot into the thumper, from a to b.
func (r *marcher) warmTraces(a, b vessels) {
	if !r.traced {
		return
	}
	size := b.thumpN - a.thumpN
	mean := append([]float64(nil), r.enrich.volatilities(r.pot, fraction(a.e, a.n))...)
	r.potLayer.cap(mean, r.now.potK, a.n, r.pot.TempK(fraction(a.e, a.n)))
	for k := range mean {
		mean[k] /= a.n
	}
	end := r.enrich.volatilities(r.pot, fraction(b.e, b.n))
	r.potLayer.cap(end, r.now.potK, b.n, r.pot.TempK(fraction(b.e, b.n)))
	for k, n := range r.now.potK {
		over := -n * math.Expm1(-size/2*(mean[k]+end[k]/b.n))
		r.now.potK[k] -= over
		r.now.thumpK[k] += over
	}
}
