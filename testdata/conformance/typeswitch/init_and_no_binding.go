// Go specification, "Type switches": init statements, no binding, break, and shadowed names.

package main

import "fmt"

type Animal interface{ Sound() string }
type Dog struct{}
type Cat struct{ lives int }

func (Dog) Sound() string { return "woof" }
func (c *Cat) Sound() string {
	c.lives--
	return "meow"
}

func next(q *[]Animal) Animal {
	if len(*q) == 0 {
		return nil
	}
	a := (*q)[0]
	*q = (*q)[1:]
	return a
}

func main() {
	queue := []Animal{Dog{}, &Cat{9}, nil, &Cat{1}}
	for range 5 {
		switch a := next(&queue); a := a.(type) {
		case *Cat:
			if a.lives == 1 {
				fmt.Println("last life")
				break
			}
			sound := a.Sound()
			fmt.Println(sound, a.lives)
		case Dog:
			fmt.Println(a.Sound())
		case nil:
			fmt.Println("nobody", a == nil)
		}
	}
	var v any = 3.5
	switch v.(type) {
	case int, float64:
		fmt.Println("number")
	case string:
		fmt.Println("text")
	}
	n := 0
	switch func() any { n++; return n }().(type) {
	case string, bool, int:
		fmt.Println("evaluated", n)
	}
}
