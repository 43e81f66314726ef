// Go specification, "Defer statements": a defer in the body of a function range runs when the enclosing function ends.

package main

import "fmt"

func letters(yield func(rune) bool) {
	defer fmt.Print("iterator-done ")
	for r := 'a'; r < 'd'; r++ {
		if !yield(r) {
			return
		}
	}
}

func visit() (out string) {
	defer func() { out += "!" }()
	for r := range letters {
		defer func() { fmt.Printf("deferred-%c ", r) }()
		out += string(r)
	}
	fmt.Print("after-loop ")
	return out
}

func early() string {
	for r := range letters {
		defer fmt.Printf("d%c ", r)
		if r == 'b' {
			return "early"
		}
	}
	return "late"
}

func main() {
	s := visit()
	fmt.Println(s)
	e := early()
	fmt.Println(e)
}
