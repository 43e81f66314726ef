// Go specification, "Handling panics": panicking again while deferred functions run.

package main

import "fmt"

func inner() {
	defer fmt.Print("inner-defer ")
	panic("first")
}

func middle() {
	defer func() {
		r := recover()
		fmt.Print("middle saw ", r, "; ")
		panic(fmt.Sprint("second after ", r))
	}()
	inner()
}

func outer() (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("outer: %v", r)
		}
	}()
	middle()
	return nil
}

func replaced() (r any) {
	defer func() { r = recover() }()
	defer func() { panic("newer") }()
	panic("older")
}

func finished() (s string) {
	defer func() { s += fmt.Sprint(recover() == nil) }()
	defer func() { s += fmt.Sprint(recover(), " ") }()
	panic("once")
}

func main() {
	err := outer()
	fmt.Println(err)
	fmt.Println(replaced())
	fmt.Println(finished())
}
