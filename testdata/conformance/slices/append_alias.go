// Go specification, "Appending to and copying slices": appending within capacity overwrites the shared array.

package main

import "fmt"

func main() {
	base := make([]int, 3, 6)
	a := append(base, 1)
	b := append(base, 2)
	fmt.Println(a, b, base, len(a), cap(a))
	base[0] = 9
	fmt.Println(a[0], b[0])
	full := []int{1, 2, 3}
	c := append(full, 4)
	c[0] = 100
	fmt.Println(full, c)
	safe := append(base[:2:2], 7)
	safe[0] = -1
	fmt.Println(base, safe)
	s := []int{0, 1, 2, 3, 4}
	s = append(s[:1], s[2:]...)
	fmt.Println(s, len(s), cap(s), s[:5])
	copy(s[1:], s)
	fmt.Println(s)
}
