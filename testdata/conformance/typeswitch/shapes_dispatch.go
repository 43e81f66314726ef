// Go specification, "Type switches": double dispatch and dispatch tables side by side.

package main

import "fmt"

type Vessel interface{ isVessel() }

type Jar struct{ ml int }
type Barrel struct {
	staves int
	inner  Vessel
}
type Rack []Vessel
type Alias = Jar

func (Jar) isVessel()     {}
func (*Barrel) isVessel() {}
func (Rack) isVessel()    {}

func volume(v Vessel) int {
	switch v := v.(type) {
	case Jar:
		return v.ml
	case *Barrel:
		if v == nil {
			return -1
		}
		return v.staves*1000 + volume(v.inner)
	case Rack:
		t := 0
		for _, w := range v {
			t += volume(w)
		}
		return t
	case nil:
		return 0
	default:
		panic(fmt.Sprintf("unknown %T", v))
	}
}

func merge(a, b Vessel) string {
	switch a := a.(type) {
	case Jar:
		switch b := b.(type) {
		case Jar:
			return fmt.Sprint("jar ", a.ml+b.ml)
		case Rack:
			return fmt.Sprint("rack of ", len(b)+1)
		}
	case Rack:
		if b, ok := b.(Rack); ok {
			return fmt.Sprint("racks ", len(append(a[:len(a):len(a)], b...)))
		}
	}
	return fmt.Sprintf("%T with %T", a, b)
}

func main() {
	r := Rack{Jar{200}, &Barrel{3, Alias{50}}, nil, Rack{}, (*Barrel)(nil)}
	fmt.Println(volume(r), volume(nil), volume(r[1]))
	fmt.Println(merge(Jar{1}, Alias{2}), merge(Jar{1}, r), merge(r, r), merge(r, nil), merge(nil, r[1]))
}
