// Go specification, "For statements with range clause": ranging over an integer.

package main

import "fmt"

type Index uint8

func rounds() int { fmt.Print("once "); return 3 }

func main() {
	for i := range 3 {
		fmt.Print(i, " ")
	}
	for range 2 {
		fmt.Print("x ")
	}
	for i := range rounds() {
		fmt.Print(i, " ")
	}
	fmt.Println()
	n := 4
	for i := range n {
		n = 1
		i *= 2
		fmt.Print(i, " ")
	}
	for i := range 0 {
		fmt.Print("never", i)
	}
	for i := range -5 {
		fmt.Print("never", i)
	}
	fmt.Println()
	for i := range Index(3) {
		fmt.Printf("%T%d ", i, i)
	}
	var u uint8
	for u = range 256 - 1 {
	}
	const big = int64(2)
	for i := range big {
		fmt.Printf("%T ", i)
	}
	fmt.Println(u)
}
