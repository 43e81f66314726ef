// Go specification, "Struct types": error types that embed other errors and interfaces.

package main

import (
	"errors"
	"fmt"
)

type Op struct {
	Name string
	error
}

type Timeout interface {
	error
	Timeout() bool
}

type netErr struct{ msg string }

func (n netErr) Error() string { return n.msg }
func (n netErr) Timeout() bool { return n.msg == "slow" }

type Detailed struct {
	*Op
	Hint string
}

func (o Op) Unwrap() error       { return o.error }
func (d Detailed) Error() string { return d.Op.Error() + " (" + d.Hint + ")" }

func main() {
	op := Op{"fetch", netErr{"slow"}}
	fmt.Println(op, op.Error())
	d := Detailed{&op, "retry"}
	var err error = d
	fmt.Println(err)
	var to Timeout
	found := errors.As(err, &to)
	fmt.Println(found, to.Timeout(), to)
	var o *Op
	var dd Detailed
	isOp, isDetailed := errors.As(err, &o), errors.As(err, &dd)
	fmt.Println(isOp, isDetailed, dd.Hint, dd.Name)
	fmt.Println(errors.Is(err, netErr{"slow"}), errors.Is(op, netErr{"fast"}), errors.Unwrap(op) == netErr{"slow"})
	fmt.Printf("%v|%s|%T|%T\n", op, d, err, to)
	_, isTimeout := any(op).(Timeout)
	fmt.Println(isTimeout, []error{op, d, netErr{"x"}})
	op.error = errors.New("replaced")
	fmt.Println(d.Error())
}
