// Go specification, "Composite literals": array literals with indices and inferred length.

package main

import "fmt"

const (
	red = iota
	green
	blue
)

func main() {
	vowels := [128]bool{'a': true, 'e': true, 'i': true, 'o': true, 'u': true}
	n := 0
	for _, c := range []byte("geranium and calamus") {
		if vowels[c] {
			n++
		}
	}
	fmt.Println(n)
	a := [...]string{2: "two", "three", 0: "zero"}
	fmt.Printf("%q %d\n", a, len(a))
	b := [10]float32{-1, 4: -0.1, -0.1, 9: -1}
	fmt.Println(b)
	names := [...]string{blue: "blue", red: "red", green: "green"}
	fmt.Println(names, len(names))
	pts := [...]struct{ x, y int }{{1, 2}, {y: 5}, {}}
	fmt.Printf("%v %+v\n", pts, pts[1])
	pp := [...]*[2]int{{1, 2}, {3}}
	fmt.Println(*pp[0], *pp[1], len([...]int{}))
}
