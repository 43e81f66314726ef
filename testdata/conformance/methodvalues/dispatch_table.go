// Go specification, "Method values": a command table of bound methods.

package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
)

type Calc struct {
	stack []float64
	err   error
}

func (c *Calc) pop() float64 {
	if len(c.stack) == 0 {
		c.err = errors.New("stack empty")
		return 0
	}
	v := c.stack[len(c.stack)-1]
	c.stack = c.stack[:len(c.stack)-1]
	return v
}

func (c *Calc) push(v float64) { c.stack = append(c.stack, v) }
func (c *Calc) add()           { c.push(c.pop() + c.pop()) }
func (c *Calc) mul()           { c.push(c.pop() * c.pop()) }
func (c *Calc) sub()           { b, a := c.pop(), c.pop(); c.push(a - b) }
func (c *Calc) div() {
	b, a := c.pop(), c.pop()
	if b == 0 {
		c.err = errors.New("divide by zero")
		return
	}
	c.push(a / b)
}

func run(src string) (float64, error) {
	c := &Calc{}
	ops := map[string]func(){"+": c.add, "-": c.sub, "*": c.mul, "/": c.div}
	for _, tok := range strings.Fields(src) {
		if op, ok := ops[tok]; ok {
			op()
		} else if v, err := strconv.ParseFloat(tok, 64); err != nil {
			return 0, err
		} else {
			c.push(v)
		}
		if c.err != nil {
			return 0, fmt.Errorf("at %q: %w", tok, c.err)
		}
	}
	top := c.pop()
	return top, c.err
}

func main() {
	for _, s := range []string{"3 4 + 2 *", "10 4 - 3 /", "1 +", "1 0 /", "2 x", ""} {
		v, err := run(s)
		fmt.Println(v, err)
	}
}
