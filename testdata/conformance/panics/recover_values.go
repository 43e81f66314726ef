// Go specification, "Handling panics": recover returns the panic value, whatever its type.

package main

import (
	"errors"
	"fmt"
)

type Custom struct {
	code int
	why  string
}

type MyErr string

func (e MyErr) Error() string { return "my: " + string(e) }

func catch(v any) (out string) {
	defer func() {
		switch r := recover().(type) {
		case nil:
			out = "nothing"
		case error:
			out = "error " + r.Error()
		case string:
			out = "string " + r
		case Custom:
			out = fmt.Sprintf("custom %d %s", r.code, r.why)
		default:
			out = fmt.Sprintf("%T %v", r, r)
		}
	}()
	if v != "skip" {
		panic(v)
	}
	return "unused"
}

func main() {
	for _, v := range []any{"boom", 42, 2.5, Custom{3, "leak"}, MyErr("bad"), errors.New("plain"), &[]int{1}, "skip", [2]bool{true}} {
		fmt.Println(catch(v))
	}
	fmt.Println(catch(nil))
}
