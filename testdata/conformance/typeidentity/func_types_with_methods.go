// Go specification, "Type declarations": function types with methods, as map values and implementations.

package main

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
)

type Rule func(float64) error

func (r Rule) And(s Rule) Rule {
	return func(v float64) error {
		if err := r(v); err != nil {
			return err
		}
		return s(v)
	}
}

func (r Rule) Check(v float64) string {
	if err := r(v); err != nil {
		return err.Error()
	}
	return "ok"
}

type Checker interface{ Check(float64) string }
type CheckerFunc func(float64) string

func (f CheckerFunc) Check(v float64) string { return f(v) }

func Min(m float64) Rule {
	return func(v float64) error {
		if v < m {
			return fmt.Errorf("%g below %g", v, m)
		}
		return nil
	}
}

func Max(m float64) Rule {
	return func(v float64) error {
		if v > m {
			return fmt.Errorf("%g above %g", v, m)
		}
		return nil
	}
}

func main() {
	rules := map[string]Checker{
		"gin":   Min(37.5).And(Max(60)),
		"vodka": Min(37.5),
		"any":   CheckerFunc(func(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }),
	}
	for _, n := range slices.Sorted(maps.Keys(rules)) {
		for _, v := range []float64{30, 40, 70} {
			fmt.Print(n, " ", rules[n].Check(v), "; ")
		}
		fmt.Println()
	}
	fmt.Printf("%T %T\n", rules["gin"], rules["any"])
	var none Rule
	fmt.Println(none == nil, Rule(nil) == nil)
}
