// Go specification, "Interface types": a registry of constructors chosen by name.

package main

import "fmt"

type Filter interface {
	Apply([]float64) []float64
	fmt.Stringer
}

type scale float64
type clamp struct{ lo, hi float64 }
type seq []Filter

func (s scale) Apply(xs []float64) []float64 {
	return each(xs, func(x float64) float64 { return x * float64(s) })
}
func (s scale) String() string { return fmt.Sprintf("scale(%g)", float64(s)) }
func (c *clamp) Apply(xs []float64) []float64 {
	return each(xs, func(x float64) float64 { return max(c.lo, min(x, c.hi)) })
}
func (c *clamp) String() string { return fmt.Sprintf("clamp(%g..%g)", c.lo, c.hi) }
func (s seq) Apply(xs []float64) []float64 {
	for _, f := range s {
		xs = f.Apply(xs)
	}
	return xs
}
func (s seq) String() string { return fmt.Sprint([]Filter(s)) }

func each(xs []float64, f func(float64) float64) []float64 {
	out := make([]float64, len(xs))
	for i, x := range xs {
		out[i] = f(x)
	}
	return out
}

var registry = map[string]func(args ...float64) (Filter, error){
	"scale": func(a ...float64) (Filter, error) {
		if len(a) != 1 {
			return nil, fmt.Errorf("scale wants 1 number, got %d", len(a))
		}
		return scale(a[0]), nil
	},
	"clamp": func(a ...float64) (Filter, error) { return &clamp{a[0], a[1]}, nil },
}

func main() {
	var s seq
	for _, spec := range []struct {
		name string
		args []float64
	}{{"scale", []float64{2}}, {"clamp", []float64{0, 5}}, {"scale", nil}, {"warp", nil}} {
		mk, ok := registry[spec.name]
		if !ok {
			fmt.Println("no filter", spec.name)
			continue
		}
		f, err := mk(spec.args...)
		if err != nil {
			fmt.Println(err, f == nil)
			continue
		}
		s = append(s, f)
	}
	fmt.Println(s, s.Apply([]float64{-1, 1, 2, 9}))
	fmt.Printf("%v %d %T %T\n", Filter(s), len(s), s[0], s[1])
}
