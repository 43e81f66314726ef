// Go specification, "Map types": struct values are copied; pointers and slices are shared.

package main

import "fmt"

type Lot struct {
	bottles int
	notes   []string
}

func main() {
	byValue := map[string]Lot{"a": {bottles: 6}}
	l := byValue["a"]
	l.bottles = 100
	l.notes = append(l.notes, "lost")
	fmt.Println(byValue)
	byValue["a"] = l
	fmt.Println(byValue)
	byPtr := map[string]*Lot{"b": {bottles: 12}}
	byPtr["b"].bottles++
	byPtr["b"].notes = append(byPtr["b"].notes, "kept")
	fmt.Println(*byPtr["b"], byPtr["zzz"] == nil)
	groups := map[bool][]int{}
	for i := range 7 {
		groups[i%2 == 0] = append(groups[i%2 == 0], i)
	}
	fmt.Println(groups)
	nested := map[string]map[string]int{}
	for _, p := range [][2]string{{"x", "1"}, {"x", "2"}, {"y", "1"}, {"x", "1"}} {
		if nested[p[0]] == nil {
			nested[p[0]] = map[string]int{}
		}
		nested[p[0]][p[1]]++
	}
	fmt.Println(nested)
}
