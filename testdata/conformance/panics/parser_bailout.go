// Go specification, "Handling panics": a parser that bails out with panic and returns an error.

package main

import "fmt"

type syntaxError struct {
	pos int
	msg string
}

func (e *syntaxError) Error() string { return fmt.Sprintf("%d: %s", e.pos, e.msg) }

type parser struct {
	in  string
	pos int
}

func (p *parser) fail(msg string) { panic(&syntaxError{p.pos, msg}) }

func (p *parser) peek() byte {
	if p.pos < len(p.in) {
		return p.in[p.pos]
	}
	return 0
}

func (p *parser) list() (n int) {
	if p.peek() != '(' {
		p.fail("want (")
	}
	p.pos++
	for p.peek() != ')' {
		switch c := p.peek(); {
		case c == '(':
			n += p.list()
		case c >= '0' && c <= '9':
			n += int(c - '0')
			p.pos++
		case c == 0:
			p.fail("unexpected end")
		default:
			p.fail(fmt.Sprintf("bad %q", c))
		}
	}
	p.pos++
	return n
}

func Sum(in string) (n int, err error) {
	defer func() {
		if e, ok := recover().(*syntaxError); ok {
			n, err = 0, e
		}
	}()
	p := &parser{in: in}
	return p.list(), nil
}

func main() {
	for _, in := range []string{"(12(34)(5))", "()", "(1", "x", "(1a)"} {
		n, err := Sum(in)
		fmt.Printf("%q %d %v\n", in, n, err)
	}
}
