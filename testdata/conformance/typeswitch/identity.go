// Go specification, "Type identity": defined types differ, aliases and equal literals are the same.

package main

import "fmt"

type Litre float64
type Volume = Litre
type Gram float64
type Strs []string

func name(v any) string {
	switch v.(type) {
	case Litre:
		return "Litre"
	case Gram:
		return "Gram"
	case float64:
		return "float64"
	case []string:
		return "[]string"
	case Strs:
		return "Strs"
	case struct {
		A int
		B string
	}:
		return "struct"
	case func(int) string:
		return "func"
	case [3]byte:
		return "bytes3"
	case rune:
		return "rune"
	case byte:
		return "byte"
	}
	return "?"
}

func main() {
	type local struct {
		A int
		B string
	}
	fmt.Println(name(Volume(1)), name(Gram(1)), name(1.0), name([]string{}), name(Strs{}))
	fmt.Println(name(local{}), name(struct {
		A int
		B string
	}{}), name(func(x int) string { return "" }), name([3]uint8{}), name(int32(1)), name(uint8(1)))
	fmt.Printf("%T %T %T\n", Volume(2), local{}, []Gram{})
	var v any = Litre(2)
	_, isG := v.(Gram)
	l, isV := v.(Volume)
	fmt.Println(isG, isV, l)
}
