// Go specification, "For statements": yearly loss from casks, a made-up rate, with a table.

package main

import "fmt"

type cask struct {
	id       string
	volumeL  float64
	percent  float64
	lossRate float64 // share a year
}

func (c cask) year() cask {
	c.volumeL *= 1 - c.lossRate
	c.percent -= 0.4
	return c
}

type fleet []cask

func (f fleet) volume() (total float64) {
	for _, c := range f {
		total += c.volumeL
	}
	return
}

func (f fleet) next() fleet {
	out := make(fleet, len(f))
	for i, c := range f {
		out[i] = c.year()
	}
	return out
}

func main() {
	f := fleet{{"north-1", 200, 63.5, 0.02}, {"cellar-4", 250, 63.5, 0.015}, {"loft-2", 50, 60, 0.06}}
	history := []fleet{f}
	for range 10 {
		history = append(history, history[len(history)-1].next())
	}
	for y, g := range history {
		if y%5 != 0 {
			continue
		}
		fmt.Printf("year %2d:", y)
		for _, c := range g {
			fmt.Printf(" %s %.1fL/%.1f", c.id, c.volumeL, c.percent)
		}
		fmt.Printf(" total %.1f\n", g.volume())
	}
	first := -1
	for y, g := range history {
		if g[2].volumeL < 40 {
			first = y
			break
		}
	}
	fmt.Println(first, f[0] == history[0][0])
}
