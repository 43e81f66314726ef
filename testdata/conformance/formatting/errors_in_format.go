// Go specification, "Package fmt in ordinary use": wrong verbs, missing and extra arguments.

package main

import (
	"errors"
	"fmt"
)

type T struct{ a int }

func main() {
	formats := []string{"%d", "%s", "%t", "%x", "%f", "%z", "%q", "%v", "%!", "%6.2d|"}
	values := []any{"str", 1, true, 2.5, T{3}, nil, []string{"a"}, 'x', errors.New("e")}
	for _, f := range formats {
		for _, v := range values {
			fmt.Print(fmt.Sprintf(f, v), " ")
		}
		fmt.Println()
	}
	args := []any{1, 2, 3}
	for _, f := range []string{"%d %d", "%d %d %d %d", "%[5]d", "%[2]d %[1]d", "%[x]d", "%d %", "plain", "%*d"} {
		fmt.Println(fmt.Sprintf(f, args...))
	}
}
