// Go specification, "Type declarations": a state machine with function states.

package main

import (
	"fmt"
	"strings"
)

type machine struct {
	credit, stock int
	out           []string
}

type state func(*machine, string) state

func idle(m *machine, in string) state {
	switch in {
	case "coin":
		m.credit += 50
		return paid
	case "stop":
		return nil
	}
	m.out = append(m.out, "insert coin")
	return idle
}

func paid(m *machine, in string) state {
	switch in {
	case "coin":
		m.credit += 50
	case "push":
		if m.credit < 100 {
			m.out = append(m.out, fmt.Sprint("need ", 100-m.credit))
			return paid
		}
		if m.stock == 0 {
			m.out = append(m.out, fmt.Sprint("sold out, back ", m.credit))
			m.credit = 0
			return idle
		}
		m.stock--
		m.credit -= 100
		m.out = append(m.out, "tonic")
		if m.credit == 0 {
			return idle
		}
	case "back":
		m.out = append(m.out, fmt.Sprint("return ", m.credit))
		m.credit = 0
		return idle
	}
	return paid
}

func main() {
	m := &machine{stock: 1}
	st := state(idle)
	for _, in := range strings.Fields("push coin push coin coin push back coin coin push stop coin") {
		if st = st(m, in); st == nil {
			m.out = append(m.out, "off")
			break
		}
	}
	fmt.Printf("%q\n%d %d\n", m.out, m.credit, m.stock)
}
