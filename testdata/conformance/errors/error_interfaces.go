// Go specification, "Errors": comparing error values of struct, pointer and string kinds.

package main

import (
	"errors"
	"fmt"
)

type strErr string
type valErr struct{ code int }
type ptrErr struct{ code int }

func (e strErr) Error() string  { return string(e) }
func (e valErr) Error() string  { return fmt.Sprint("val ", e.code) }
func (e *ptrErr) Error() string { return fmt.Sprint("ptr ", e.code) }

const ErrConst = strErr("constant")

func which(n int) error {
	return [...]error{nil, ErrConst, valErr{2}, &ptrErr{3}}[n]
}

func main() {
	fmt.Println(which(1) == ErrConst, which(1) == strErr("constant"), errors.Is(which(1), ErrConst))
	fmt.Println(which(2) == valErr{2}, which(2) == valErr{3}, which(3) == which(3))
	for i := range 4 {
		switch err := which(i); err {
		case nil:
			fmt.Print("nil ")
		case ErrConst:
			fmt.Print("const ")
		case valErr{2}:
			fmt.Print("val ")
		default:
			fmt.Print("default:", err, " ")
		}
	}
	fmt.Println()
	for i := range 4 {
		switch err := which(i).(type) {
		case strErr:
			fmt.Print(len(err), " ")
		case valErr:
			fmt.Print(err.code, " ")
		case *ptrErr:
			fmt.Print(err.code*10, " ")
		case nil:
			fmt.Print("none ")
		}
	}
	fmt.Println()
	fmt.Printf("%v %s %d %+v %T %#v\n", valErr{7}, valErr{7}, valErr{7}, valErr{7}, valErr{7}, valErr{7})
	fmt.Println([]error{which(1), which(2), which(3)}, map[error]string{valErr{1}: "one"}[valErr{1}])
}
