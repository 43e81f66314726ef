// Go specification, "Package initialization": dependencies through methods, closures and composite literals.

package main

import (
	"fmt"
	"strings"
)

var total = sum(prices)
var prices = []int{base, base * 2, extra.get()}
var base = 5
var extra = counter{start}
var start = func() int { return seedValue * 100 }()
var seedValue = 3

type counter struct{ n int }

func (c counter) get() int { return c.n + offset }

var offset = 7

func sum(xs []int) (t int) {
	for _, x := range xs {
		t += x
	}
	return
}

var names = strings.Split(joined, ",")
var joined = "a,b," + third()

func third() string { return string(rune('a' + len(word))) }

var word = "xy"
var p = &target
var target = []string{names[2]}

func main() {
	fmt.Println(total, prices, base, extra, start)
	fmt.Println(names, joined, (*p)[0])
}
