package equilibrium

// cubics is a function of s from 0 to 1 in equal steps, each a cubic in the way through its step.
type cubics [][4]float64

// newCubics returns the function through the values, of which the first is at s = 0 and the last at s = 1. It is taken
// to be even in s, as every smooth function of s² is: its slope at 0 is 0. Slopes elsewhere are by five points.
func newCubics(values []float64) cubics {
	n := len(values)
	d := slopes(values)
	out := make(cubics, n-1)
	for i := range out {
		a, b, p, q := values[i], values[i+1], d[i], d[i+1]
		out[i] = [4]float64{a, p, 3*(b-a) - 2*p - q, 2*(a-b) + p + q}
	}
	return out
}

// slopes returns the slope at each of the values, per step.
func slopes(f []float64) []float64 {
	n := len(f)
	d := make([]float64, n)
	d[1] = (f[1] - 8*f[0] + 8*f[2] - f[3]) / 12 // with f[-1] = f[1]
	for i := 2; i < n-2; i++ {
		d[i] = (f[i-2] - 8*f[i-1] + 8*f[i+1] - f[i+2]) / 12
	}
	d[n-2] = (3*f[n-1] + 10*f[n-2] - 18*f[n-3] + 6*f[n-4] - f[n-5]) / 12
	d[n-1] = (25*f[n-1] - 48*f[n-2] + 36*f[n-3] - 16*f[n-4] + 3*f[n-5]) / 12
	return d
}

// at returns the value at s and the slope per unit of s.
func (c cubics) at(s float64) (value, slope float64) {
	n := float64(len(c))
	f := s * n
	i := min(int(f), len(c)-1)
	f -= float64(i)
	k := &c[i]
	return k[0] + f*(k[1]+f*(k[2]+f*k[3])), (k[1] + f*(2*k[2]+3*f*k[3])) * n
}

// place returns the step that s lies in, of n, and the way through it.
func place(s float64, n int) (step int, way float64) {
	f := s * float64(n)
	i := min(int(f), n-1)
	return i, f - float64(i)
}
