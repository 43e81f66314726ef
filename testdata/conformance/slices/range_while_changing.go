// Go specification, "For statements with range clause": the range expression is evaluated once.

package main

import "fmt"

func main() {
	s := []int{1, 2, 3}
	for i, v := range s {
		s = append(s, v*10)
		if i == 0 {
			s[1] = 77
		}
	}
	fmt.Println(s)
	t := []int{1, 2, 3, 4}
	for i := range t {
		t = t[:len(t)-1]
		fmt.Print(i, len(t), " ")
	}
	fmt.Println(t)
	u := []int{3, 4, 5}
	for i, v := range u {
		u[(i+1)%3] = v + 1
	}
	fmt.Println(u)
	w := []string{"a", "b"}
	for _, v := range w {
		v += "!"
		w[0] = v
		w = nil
		fmt.Print(v, len(w), " ")
		break
	}
	fmt.Println(w == nil)
}
