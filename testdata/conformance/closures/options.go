// Go specification, "Function types": functional options and function-valued fields.

package main

import "fmt"

type Still struct {
	volumeL float64
	heat    int
	onDrop  func(n int)
}

type Option func(*Still)

func Volume(l float64) Option { return func(s *Still) { s.volumeL = l } }
func Heat(h int) Option       { return func(s *Still) { s.heat = h } }
func OnDrop(f func(int)) Option {
	return func(s *Still) { s.onDrop = f }
}

func New(opts ...Option) *Still {
	s := &Still{volumeL: 50, heat: 3}
	for _, o := range opts {
		o(s)
	}
	return s
}

func (s *Still) Run() {
	for i := range s.heat {
		if s.onDrop != nil {
			s.onDrop(i)
		}
	}
}

func main() {
	var drops []int
	a := New()
	b := New(Heat(4), OnDrop(func(n int) { drops = append(drops, n*n) }), Volume(120.5))
	a.Run()
	b.Run()
	fmt.Println(a.volumeL, a.heat, b.volumeL, b.heat, drops)
	b.onDrop = nil
	b.Run()
	fmt.Println(len(drops), a.onDrop == nil)
}
