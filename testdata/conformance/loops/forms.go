// Go specification, "For statements": condition, clause, infinite, and empty parts.

package main

import "fmt"

func main() {
	n := 1
	for n < 100 {
		n *= 3
	}
	fmt.Println(n)
	for i, j := 0, 5; i < j; i, j = i+1, j-1 {
		fmt.Print(i, j, " ")
	}
	fmt.Println()
	k := 0
	for {
		k++
		if k%2 == 0 {
			continue
		}
		if k > 7 {
			break
		}
		fmt.Print(k, " ")
	}
	fmt.Println(k)
	for ; k > 6; k-- {
	}
	i := 0
	for ; ; i++ {
		if i*i > 50 {
			break
		}
	}
	fmt.Println(k, i)
	for x := 1.0; x < 2; x += 0.25 {
		fmt.Print(x, " ")
	}
	for c := 'a'; c <= 'e'; c += 2 {
		fmt.Printf("%c", c)
	}
	fmt.Println()
}
