package drills

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"unicode"
)

// arithmetic works out what a step reckons, from its text alone: numbers, + − × ÷ and brackets.
func arithmetic(text string) (x float64, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%q: %v", text, r)
		}
	}()
	p := &sum{rest: []rune(strings.ReplaceAll(text, " ", ""))}
	x = p.terms()
	if len(p.rest) > 0 {
		panic("what is " + string(p.rest))
	}
	return x, nil
}

type sum struct{ rest []rune }

func (p *sum) next(signs string) rune {
	if len(p.rest) == 0 || !strings.ContainsRune(signs, p.rest[0]) {
		return 0
	}
	r := p.rest[0]
	p.rest = p.rest[1:]
	return r
}

func (p *sum) terms() float64 {
	x := p.factors()
	for {
		switch p.next("+−") {
		case '+':
			x += p.factors()
		case '−':
			x -= p.factors()
		default:
			return x
		}
	}
}

func (p *sum) factors() float64 {
	x := p.number()
	for {
		switch p.next("×÷") {
		case '×':
			x *= p.number()
		case '÷':
			x /= p.number()
		default:
			return x
		}
	}
}

func (p *sum) number() float64 {
	if p.next("(") != 0 {
		x := p.terms()
		if p.next(")") == 0 {
			panic("a bracket stays open")
		}
		return x
	}
	n := 0
	for n < len(p.rest) && (unicode.IsDigit(p.rest[n]) || p.rest[n] == '.') {
		n++
	}
	x, err := strconv.ParseFloat(string(p.rest[:n]), 64)
	if err != nil {
		panic(err)
	}
	p.rest = p.rest[n:]
	return x
}

func TestArithmetic(t *testing.T) {
	for text, want := range map[string]float64{"2 + 3 × (4 − 1) ÷ 2": 6.5, "10 − 2 − 3": 5, "8 ÷ 2 × 3": 12, "(1 + 2) × 3": 9} {
		if got, err := arithmetic(text); err != nil || got != want {
			t.Errorf("arithmetic(%q) = %v, %v; want %v", text, got, err, want)
		}
	}
	for _, bad := range []string{"", "2 +", "(2", "2 kg", "2 ** 3"} {
		if got, err := arithmetic(bad); err == nil {
			t.Errorf("arithmetic(%q) = %v; want an error", bad, got)
		}
	}
}
