// Go specification, "Numeric types": a table of made-up dilutions, integers and floats mixed.

package main

import "fmt"

type Blend struct {
	litres  int
	percent float64
}

func (b Blend) Pure() float64 { return float64(b.litres) * b.percent / 100 }

func (b Blend) Reduce(to float64) (waterL float64, err error) {
	if to <= 0 || to > b.percent {
		return 0, fmt.Errorf("cannot go from %.1f to %.1f", b.percent, to)
	}
	return float64(b.litres) * (b.percent/to - 1), nil
}

func mix(bs ...Blend) (out Blend) {
	pure := 0.0
	for _, b := range bs {
		out.litres += b.litres
		pure += b.Pure()
	}
	out.percent = pure / float64(out.litres) * 100
	return
}

func main() {
	b := Blend{120, 72.4}
	fmt.Printf("%6s %8s\n", "to", "water L")
	for to := 70.0; to >= 40; to -= 7.5 {
		w, err := b.Reduce(to)
		fmt.Printf("%6.1f %8.2f %v\n", to, w, err)
	}
	_, err := b.Reduce(80)
	fmt.Println(err)
	m := mix(b, Blend{30, 40}, Blend{litres: 10})
	fmt.Printf("%d L at %.3f, pure %.2f L, %+v\n", m.litres, m.percent, m.Pure(), Blend{1, 2.5})
}
