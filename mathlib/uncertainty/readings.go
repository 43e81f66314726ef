package uncertainty

import (
	"fmt"
	"math"
)

// Repeated is a quantity that was read several times: its value is the mean, and the spread of the readings says how far
// that may be off, as Student's t with one degree of freedom less than there are readings. What all readings share, such
// as the instrument's own error, is not in the spread and goes into Also.
//
// Source: JCGM 100:2008, 4.2.1 to 4.2.3.
type Repeated struct {
	Name     string
	Unit     string    // of the readings
	Readings []float64 // two or more, in Unit
	Also     []Part    // what else may be wrong, in Unit
}

// Input returns the mean with its parts, in Unit.
func (r Repeated) Input() (Input, error) {
	n := len(r.Readings)
	if n < 2 {
		return Input{}, fmt.Errorf("%s: %d readings; give two or more, or an instrument with its tolerance", name(r.Name, "repeated readings"), n)
	}
	var sum float64
	for i, x := range r.Readings {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return Input{}, fmt.Errorf("%s: reading %d is %v %s; give a finite number", name(r.Name, "repeated readings"), i+1, x, r.Unit)
		}
		sum += x
	}
	mean := sum / float64(n)
	var squares float64
	for _, x := range r.Readings {
		squares += (x - mean) * (x - mean)
	}
	parts := append([]Part(nil), r.Also...)
	if squares > 0 {
		spread := StudentT(math.Sqrt(squares/float64(n-1)/float64(n)), n-1).Called("spread of the readings")
		parts = append([]Part{spread}, parts...)
	} else if len(parts) == 0 {
		return Input{}, fmt.Errorf("%s: all %d readings are %v %s, so their spread says nothing; add the division of the scale to Also, such as Rectangular of half of it",
			name(r.Name, "repeated readings"), n, mean, r.Unit)
	}
	return Input{Name: r.Name, Value: mean, Unit: r.Unit, Parts: parts}.Input()
}

// Certificate is a value with the expanded uncertainty that a certificate gives for it.
//
// Source: JCGM 100:2008, 4.3.3.
type Certificate struct {
	Name     string
	Value    float64 // in the unit named
	Unit     string
	Expanded float64 // the expanded uncertainty, in the unit named; above 0
	Factor   float64 // the coverage factor it was stated with, dimensionless; 2 if 0
}

// Input returns the value as normally spread with the standard uncertainty Expanded/Factor, in Unit.
func (c Certificate) Input() (Input, error) {
	k := c.Factor
	if k == 0 {
		k = 2
	}
	if !(k > 0) || math.IsInf(k, 0) {
		return Input{}, fmt.Errorf("%s: the coverage factor is %v; give the certificate's, such as 2", name(c.Name, "certificate"), k)
	}
	return Input{Name: c.Name, Value: c.Value, Unit: c.Unit, Parts: []Part{Normal(c.Expanded / k).Called("certificate")}}.Input()
}
