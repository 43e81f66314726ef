// Go specification, "Interface types": an expression tree evaluated and printed through an interface.

package main

import (
	"errors"
	"fmt"
	"strconv"
)

type Expr interface {
	Eval(env map[string]float64) (float64, error)
	fmt.Stringer
}

type Num float64
type Var string
type Bin struct {
	op   byte
	l, r Expr
}

func (n Num) Eval(map[string]float64) (float64, error) { return float64(n), nil }
func (n Num) String() string                           { return strconv.FormatFloat(float64(n), 'g', -1, 64) }
func (v Var) String() string                           { return string(v) }
func (v Var) Eval(env map[string]float64) (float64, error) {
	if x, ok := env[string(v)]; ok {
		return x, nil
	}
	return 0, fmt.Errorf("no value for %s", v)
}
func (b Bin) String() string { return fmt.Sprintf("(%v %c %v)", b.l, b.op, b.r) }
func (b Bin) Eval(env map[string]float64) (float64, error) {
	l, err := b.l.Eval(env)
	if err != nil {
		return 0, err
	}
	r, err := b.r.Eval(env)
	if err != nil {
		return 0, err
	}
	switch b.op {
	case '+':
		return l + r, nil
	case '*':
		return l * r, nil
	case '/':
		if r == 0 {
			return 0, errors.New("division by zero in " + b.String())
		}
		return l / r, nil
	}
	return 0, fmt.Errorf("bad operator %q", b.op)
}

func main() {
	e := Bin{'/', Bin{'*', Var("abv"), Num(2)}, Bin{'+', Var("x"), Num(0.5)}}
	fmt.Println(e)
	for _, env := range []map[string]float64{{"abv": 40, "x": 1.5}, {"abv": 40}, {"abv": 1, "x": -0.5}} {
		v, err := e.Eval(env)
		fmt.Println(v, err)
	}
	fmt.Println(Bin{'?', Num(1), Num(2)}.Eval(nil))
	fmt.Println([]Expr{Num(1.25), Var("y"), Bin{'+', Num(1), Var("z")}})
}
