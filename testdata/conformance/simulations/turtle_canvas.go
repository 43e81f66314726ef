// Go specification, "Array types": turtle commands drawn on a character canvas.

package main

import (
	"fmt"
	"strconv"
	"strings"
)

type canvas [7][15]byte

type turtle struct {
	x, y, dir int
	pen       bool
}

func (c *canvas) set(x, y int) error {
	if y < 0 || y >= len(c) || x < 0 || x >= len(c[0]) {
		return fmt.Errorf("off the canvas at %d,%d", x, y)
	}
	c[y][x] = '*'
	return nil
}

func (t *turtle) run(c *canvas, prog string) error {
	for i, cmd := range strings.Fields(prog) {
		switch {
		case cmd == "L":
			t.dir = (t.dir + 3) % 4
		case cmd == "R":
			t.dir = (t.dir + 1) % 4
		case cmd == "U", cmd == "D":
			t.pen = cmd == "D"
		default:
			n, err := strconv.Atoi(cmd)
			if err != nil {
				return fmt.Errorf("command %d: %w", i+1, err)
			}
			for range n {
				t.x += [4]int{1, 0, -1, 0}[t.dir]
				t.y += [...]int{0, 1, 0, -1}[t.dir]
				if t.pen {
					if err := c.set(t.x, t.y); err != nil {
						return fmt.Errorf("command %d: %w", i+1, err)
					}
				}
			}
		}
	}
	return nil
}

func main() {
	var c canvas
	for y := range c {
		for x := range c[y] {
			c[y][x] = '.'
		}
	}
	t := &turtle{}
	fmt.Println(t.run(&c, "1 R 1 L D 11 R 4 R 11 R 4 U R 3 R 2 L D 5"))
	for _, row := range c {
		fmt.Println(string(row[:]))
	}
	fmt.Println(*t)
	fmt.Println(t.run(&c, "10"))
	fmt.Println((&turtle{}).run(&c, "D 2 x"))
}
