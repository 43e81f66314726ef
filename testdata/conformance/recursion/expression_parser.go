// Go specification, "Function declarations": a recursive descent parser with precedence and errors.

package main

import (
	"fmt"
	"strconv"
	"strings"
)

type parser struct {
	s string
	i int
}

func (p *parser) accept(set string) byte {
	for p.i < len(p.s) && p.s[p.i] == ' ' {
		p.i++
	}
	if p.i < len(p.s) && strings.IndexByte(set, p.s[p.i]) >= 0 {
		p.i++
		return p.s[p.i-1]
	}
	return 0
}

func (p *parser) binary(ops string, next func() (float64, error)) (float64, error) {
	v, err := next()
	for err == nil {
		op := p.accept(ops)
		if op == 0 {
			break
		}
		var w float64
		if w, err = next(); err == nil {
			switch op {
			case '+':
				v += w
			case '-':
				v -= w
			case '*':
				v *= w
			case '/':
				v /= w
			}
		}
	}
	return v, err
}

func (p *parser) expr() (float64, error) { return p.binary("+-", p.term) }
func (p *parser) term() (float64, error) { return p.binary("*/", p.factor) }

func (p *parser) factor() (float64, error) {
	switch p.accept("-(") {
	case '-':
		v, err := p.factor()
		return -v, err
	case '(':
		v, err := p.expr()
		if err == nil && p.accept(")") == 0 {
			err = fmt.Errorf("missing ) at %d", p.i)
		}
		return v, err
	}
	start := p.i
	for p.i < len(p.s) && (p.s[p.i] >= '0' && p.s[p.i] <= '9' || p.s[p.i] == '.') {
		p.i++
	}
	return strconv.ParseFloat(p.s[start:p.i], 64)
}

func main() {
	for _, s := range []string{"1+2*3", "(1+2)*3 - -4", "2*(3+4)/7", "10/4/5", "(1", "1+", "7/0"} {
		fmt.Print(s, " = ")
		fmt.Println((&parser{s: s}).expr())
	}
}
