// Go specification, "If statements": the same table by if, switch, map and modulo arithmetic.

package main

import (
	"fmt"
	"strconv"
)

func byIf(n int) string {
	s := ""
	if n%3 == 0 {
		s += "fizz"
	}
	if n%5 == 0 {
		s += "buzz"
	}
	if s == "" {
		s = strconv.Itoa(n)
	}
	return s
}

func bySwitch(n int) string {
	switch {
	case n%15 == 0:
		return "fizzbuzz"
	case n%3 == 0:
		return "fizz"
	case n%5 == 0:
		return "buzz"
	}
	return fmt.Sprint(n)
}

func byMap(n int) string {
	m := map[[2]bool]string{{true, true}: "fizzbuzz", {true, false}: "fizz", {false, true}: "buzz"}
	if s, ok := m[[2]bool{n%3 == 0, n%5 == 0}]; ok {
		return s
	}
	return strconv.FormatInt(int64(n), 10)
}

func main() {
	fs := map[string]func(int) string{"if": byIf, "switch": bySwitch, "map": byMap}
	same := true
	for n := 1; n <= 60; n++ {
		for _, f := range fs {
			same = same && f(n) == byIf(n)
		}
		if n <= 15 {
			fmt.Print(byMap(n), " ")
		}
	}
	fmt.Println(same)
}
