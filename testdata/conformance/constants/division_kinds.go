// Go specification, "Constant expressions": integer constants divide as integers, mixed ones as floats.

package main

import "fmt"

const (
	third  = 1 / 3
	thirdF = 1 / 3.0
	seven  = 7 / 2
	sevenF = 7 / 2.
	rem    = -7 % 3
	quo    = -7 / 3
)

func main() {
	var a float64 = 1 / 3
	var b float64 = 1 / 3.0
	var c float64 = 9 / 5 * 100
	var d float64 = 9.0 / 5 * 100
	fmt.Println(a, b, c, d)
	fmt.Println(third, thirdF, seven, sevenF, rem, quo)
	celsius := 20.0
	fmt.Println(celsius*9/5+32, celsius*(9/5)+32, 9/5*celsius+32)
	fmt.Printf("%T %T %T\n", third, thirdF, 'a'/2)
	fmt.Println('a'/2.0, 'a'+1, "x"+"y")
}
