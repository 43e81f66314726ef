// Go specification, "Map types": keys of struct, array, interface, pointer, bool and float types.

package main

import (
	"fmt"
	"math"
)

type Batch struct {
	year int
	code string
}

func main() {
	a, b := new(int), new(int)
	ptrs := map[*int]string{a: "a", b: "b"}
	*a = 5
	fmt.Println(ptrs[a], ptrs[b], len(ptrs))
	structs := map[Batch]float64{{2024, "A"}: 43, {2024, "B"}: 44.5, {2023, "Z"}: 58}
	fmt.Println(structs, structs[Batch{2024, "B"}])
	anyKeys := map[any]int{1: 1, "1": 2, 1.0: 3, int8(1): 4, true: 5, [1]int{1}: 6, nil: 7, Batch{}: 8}
	fmt.Println(anyKeys[1], anyKeys["1"], anyKeys[1.0], anyKeys[int8(1)], anyKeys[int16(1)], anyKeys[[1]int{1}], anyKeys[nil], anyKeys[Batch{}])
	f := map[float64]int{}
	f[math.NaN()]++
	f[math.NaN()]++
	f[0]++
	f[math.Copysign(0, -1)]++
	fmt.Println(len(f), f[math.NaN()], f[0])
	clear(f)
	fmt.Println(len(f))
	defer func() { fmt.Println(recover()) }()
	anyKeys[[]int{1}] = 9
}
