// Go specification, "Constants": typed constants are checked against their type and take part in its arithmetic.

package main

import (
	"fmt"
	"math"
)

type Litres float64
type Count uint8

const (
	cask    Litres = 200
	barrels Count  = 250
	half           = cask / 2
	room           = 255 - barrels
	full    Litres = Litres(barrels) * cask
)

func main() {
	fmt.Println(cask, barrels, half, room, full)
	fmt.Printf("%T %T %T %T\n", half, room, full, cask*2)
	n := barrels
	n += room
	fmt.Println(n)
	n++
	fmt.Println(n)
	const mask = ^Count(0)
	const neg = ^0
	fmt.Println(mask, neg, -5>>1, ^Count(15))
	fmt.Println(math.MaxInt64, uint64(math.MaxUint64), math.MinInt8)
}
