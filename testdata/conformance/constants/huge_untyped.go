// Go specification, "Constants": untyped constants of arbitrary precision come back into range.

package main

import "fmt"

const (
	huge    = 1 << 100
	huger   = huge * huge
	back    = huger >> 195
	ratio   = huge / (huge - 1.0)
	tiny    = 1.0 / huge
	rebuilt = tiny * huge
)

func main() {
	fmt.Println(back, int64(huge>>90), uint8(huge>>93))
	fmt.Println(ratio == 1, ratio > 1)
	fmt.Println(rebuilt, rebuilt == 1)
	var f float64 = huge
	fmt.Println(f, float32(huge))
	fmt.Printf("%T %T\n", back, rebuilt)
	fmt.Println(huger/huge == huge, huge%1000)
}
