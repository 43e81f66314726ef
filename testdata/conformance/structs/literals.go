// Go specification, "Composite literals": keyed, positional and elided struct literals.

package main

import "fmt"

type Point struct{ X, Y int }

type Line struct {
	From, To Point
	label    string
}

func main() {
	p := Point{1, 2}
	q := Point{Y: 5}
	l := Line{p, Point{X: 3}, "a"}
	m := Line{To: q}
	fmt.Println(p, q, l, m)
	fmt.Printf("%+v\n%#v\n", l, m)
	pp := &Point{7, 8}
	pp.X++
	ps := []*Point{{1, 1}, pp, nil}
	fmt.Println(*ps[0], *ps[1], ps[2] == nil)
	lines := map[Point]Line{{0, 0}: {label: "origin"}, {9, 9}: {From: *pp}}
	fmt.Printf("%+v\n", lines)
	arr := [2][]Point{{{1, 2}}, {{3, 4}, {5, 6}}}
	fmt.Println(arr, len(arr[1]))
	var zero Line
	fmt.Println(zero == Line{}, l.From.Y, (&l).To.X)
	if (p == Point{1, 2}) {
		fmt.Println("equal")
	}
}
