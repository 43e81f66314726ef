// Go specification, "Method sets": String of declared types inside slices, maps, arrays, structs and pointers.

package main

import "fmt"

type Hue int

func (h Hue) String() string { return [...]string{"amber", "straw", "copper"}[h] }

type Temp float64

func (t Temp) String() string { return fmt.Sprintf("%.1f°", float64(t)) }

type Tag string

func (t *Tag) String() string { return "tag:" + string(*t) }

type Row struct {
	Hue   Hue
	Temps []Temp
	ByHue map[Hue]Temp
	Next  *Row
	Any   any
}

func main() {
	fmt.Println([]Hue{0, 1, 2}, [2]Hue{2}, map[Hue][]Hue{1: {0}}, [][]Hue{{1}, {}})
	r := Row{2, []Temp{20, 78.25}, map[Hue]Temp{1: 4, 0: 3.5}, nil, []Hue{1}}
	fmt.Println(r)
	fmt.Printf("%v\n%+v\n%s\n", r, &r, []Hue{1})
	fmt.Printf("%d %q %x %v\n", []Hue{0, 2}, []Hue{0, 2}, []Hue{1}, []any{Hue(1), Temp(2), 3})
	t := Tag("x")
	fmt.Println(&t, t, []*Tag{}, map[string]Tag{"a": "b"})
	h := Hue(1)
	p := &h
	fmt.Println(p.String(), *p, struct {
		H Hue
		P *Row
	}{h, nil})
	fmt.Printf("%#v %#v %#v\n", h, []Hue{1}, map[Hue]Temp{1: 2})
	fmt.Println(fmt.Sprint(h)+"!", "x"+h.String(), fmt.Sprintf("%6v|%-8v|", h, h))
	var s fmt.Stringer = h
	fmt.Println(s, []fmt.Stringer{h, Temp(1), &t})
}
