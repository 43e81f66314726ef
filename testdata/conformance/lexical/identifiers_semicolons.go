// Go specification, "Lexical elements": identifiers beyond ASCII, comments, automatic semicolons.

package main

import (
	"fmt"
	"strings"
)

type größe float64 /* a general comment */

const π = 3.14159 // a line comment

/*
a comment over
several lines
*/
func Δ(a, b größe) größe { return b - a }

func naïve(x_1, _y int) int { return x_1*10 + _y }

var 水 = map[string]größe{
	"H₂O":     18.015,
	"äthanol": 46.07,
}

func main() {
	fmt.Println(Δ(1, 2.5), π, naïve(4, 2), 水["H₂O"])
	x := []int{
		1,
		2, // trailing comma is needed
	}
	s := "a" +
		"b" +
		/* here */ "c"
	if len(x) == 2 {
		fmt.Println(s)
		fmt.Println(len(s))
	}
	y := x[0] +
		x[1]
	z := strings.
		ToUpper(s)
	fmt.Println(y, z)
	{
	}
	var _, ok = 水["none"]
	fmt.Printf("%T %v\n", 水, ok)
	switch {
	case y > 2:
		fmt.Println("three")
	default:
	}
}
