// Go specification, "For statements": a day-by-day simulation printed as a table.

package main

import (
	"fmt"
	"strings"
)

type day struct {
	n       int
	sugarGL float64
	yeast   float64
}

func simulate(sugarGL float64, days int) (log []day) {
	yeast := 1.0
	for d := 0; d <= days; d++ {
		log = append(log, day{d, sugarGL, yeast})
		if sugarGL < 1 {
			break
		}
		rate := 12 * yeast * sugarGL / (sugarGL + 40)
		if rate > sugarGL {
			rate = sugarGL
		}
		sugarGL -= rate
		switch {
		case d < 3:
			yeast *= 1.8
		case d > 6:
			yeast *= 0.9
		}
	}
	return
}

func main() {
	log := simulate(180, 14)
	fmt.Println("day  sugar yeast")
	for _, d := range log {
		fmt.Printf("%3d %6.1f %5.2f %s\n", d.n, d.sugarGL, d.yeast, strings.Repeat("=", int(d.sugarGL/20)))
	}
	used := log[0].sugarGL - log[len(log)-1].sugarGL
	fmt.Printf("%.1f %% vol\n", used*0.511/7.894)
}
