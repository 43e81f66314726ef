// Go specification, "Selectors and index expressions": arrays of structs are addressable in place.

package main

import "fmt"

type Jar struct {
	name string
	ml   int
	log  [2]int
}

func (j *Jar) Add(ml int) { j.ml += ml; j.log[0]++ }

func main() {
	var shelf [3]Jar
	for i := range shelf {
		shelf[i].name = string(rune('A' + i))
		shelf[i].Add(100 * (i + 1))
	}
	j := &shelf[1]
	j.Add(5)
	j.log[1] = 77
	fmt.Println(shelf)
	for _, c := range shelf {
		c.Add(1000)
	}
	for i := range shelf {
		shelf[i].log[0] *= 10
	}
	fmt.Println(shelf)
	snapshot := shelf
	shelf[0], shelf[2] = shelf[2], shelf[0]
	fmt.Println(snapshot[0].name, shelf[0].name, *j, snapshot == shelf)
	idx := []*Jar{&shelf[0], &shelf[2]}
	idx[1].name = "Z"
	fmt.Printf("%+v\n", shelf)
}
