// Go specification, "Appending to and copying slices": copy handles overlap and strings.

package main

import "fmt"

func insert(s []string, at int, v string) []string {
	s = append(s, "")
	copy(s[at+1:], s[at:])
	s[at] = v
	return s
}

func remove[T any](s []T, at int) []T {
	copy(s[at:], s[at+1:])
	return s[:len(s)-1]
}

func rotate(s []int, k int) {
	k %= len(s)
	tmp := make([]int, k)
	copy(tmp, s[:k])
	copy(s, s[k:])
	copy(s[len(s)-k:], tmp)
}

func main() {
	s := []int{1, 2, 3, 4, 5, 6}
	n := copy(s[2:], s)
	fmt.Println(n, s)
	n = copy(s, s[3:])
	fmt.Println(n, s)
	b := make([]byte, 4)
	n = copy(b, "vermouth")
	fmt.Println(n, string(b))
	n = copy(b[2:], "X")
	fmt.Println(n, string(b))
	names := []string{"a", "c"}
	names = insert(names, 1, "b")
	names = insert(names, 3, "d")
	fmt.Println(names, remove(names, 0))
	r := []int{1, 2, 3, 4, 5}
	rotate(r, 7)
	fmt.Println(r)
}
