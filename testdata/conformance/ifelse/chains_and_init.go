// Go specification, "If statements": init statements, chains, scope and early returns.

package main

import (
	"fmt"
	"strconv"
)

func classify(s string) string {
	if n, err := strconv.Atoi(s); err != nil {
		if f, err := strconv.ParseFloat(s, 64); err == nil {
			return fmt.Sprintf("float %.1f", f)
		} else if s == "" {
			return "empty"
		} else {
			return "text " + err.(*strconv.NumError).Num
		}
	} else if n < 0 {
		return fmt.Sprint("negative ", n)
	} else if half := n / 2; half*2 == n {
		return fmt.Sprint("even ", half)
	} else {
		return fmt.Sprint("odd ", n, " ", half)
	}
}

func leap(y int) bool {
	if y%400 == 0 {
		return true
	}
	if y%100 == 0 {
		return false
	}
	return y%4 == 0
}

func main() {
	for _, s := range []string{"7", "8", "-3", "2.5", "", "gin"} {
		fmt.Println(classify(s))
	}
	for _, y := range []int{1900, 2000, 2024, 2025} {
		fmt.Print(y, leap(y), " ")
	}
	fmt.Println()
	m := map[string]int{"a": 1}
	if m["b"]++; m["b"] == 1 {
		fmt.Println("set", m)
	}
	if x := 5; x > 3 && !(x == 4) || x < 0 {
		x, y := x*2, x
		fmt.Println(x, y)
	}
	if true {
	} else {
		fmt.Println("never")
	}
}
