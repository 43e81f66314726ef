// Go specification, "Expression switches": switching on strings, interfaces, structs, functions and constants.

package main

import (
	"errors"
	"fmt"
)

type Pos struct{ x, y int }
type Level int

const (
	Low Level = iota
	High
)

func where(p Pos) string {
	switch p {
	case Pos{}:
		return "origin"
	case Pos{1, 0}, Pos{0, 1}:
		return "unit"
	}
	return fmt.Sprint("at ", p)
}

func what(v any) string {
	switch v {
	case 1:
		return "int one"
	case "1":
		return "string one"
	case 1.0:
		return "float one"
	case nil:
		return "nil"
	case Low:
		return "Low"
	case Pos{2, 2}:
		return "pos"
	}
	return "other"
}

func main() {
	fmt.Println(where(Pos{}), where(Pos{0, 1}), where(Pos{3, 4}))
	for _, v := range []any{1, "1", 1.0, nil, Low, High, Pos{2, 2}, int8(1), 0} {
		fmt.Print(what(v), ", ")
	}
	fmt.Println()
	var err error
	sentinel := errors.New("x")
	for range 2 {
		switch err {
		case nil:
			fmt.Print("no error, ")
		case sentinel:
			fmt.Println("sentinel")
		}
		err = sentinel
	}
	switch b := []byte("q"); string(b) {
	case "q":
		fmt.Println("bytes as string")
	}
	switch true {
	case 1 > 2, "a" < "b":
		fmt.Println("second condition")
	}
}
