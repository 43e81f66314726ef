// Go specification, "Calls": a slice argument shares elements but not length.

package main

import "fmt"

func fill(s []int, v int) {
	for i := range s {
		s[i] = v
	}
}

func grow(s []int) []int {
	s = append(s, 1)
	s[0] = 42
	return s
}

func growPtr(s *[]int) { *s = append(*s, len(*s)) }

func main() {
	s := make([]int, 2, 10)
	fill(s, 7)
	fmt.Println(s)
	t := grow(s)
	fmt.Println(s, t, s[:3])
	u := grow([]int{1, 2, 3})
	fmt.Println(u)
	exact := []int{5, 6}
	v := grow(exact)
	fmt.Println(exact, v)
	for range 3 {
		growPtr(&s)
	}
	fmt.Println(s, t)
	arr := [4]int{1, 2, 3, 4}
	fill(arr[1:3], 0)
	fmt.Println(arr)
}
