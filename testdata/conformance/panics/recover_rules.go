// Go specification, "Handling panics": recover works only when called directly by a deferred function.

package main

import "fmt"

func helper() any { return recover() }

func nested() (got string) {
	defer func() {
		got = fmt.Sprintf("outer=%v", recover())
	}()
	defer func() {
		func() {
			if r := recover(); r != nil {
				fmt.Println("must not happen", r)
			}
		}()
	}()
	panic("deep")
}

func direct() (ok bool) {
	defer func() { ok = recover() == "x" }()
	defer helper()
	fmt.Print("running ")
	return
}

func continues() int {
	total := 0
	for i := -1; i < 3; i++ {
		func() {
			defer func() {
				if recover() != nil {
					total += 100
				}
			}()
			total += 6 / i
		}()
	}
	return total
}

func main() {
	fmt.Println(recover())
	fmt.Println(nested())
	fmt.Println(direct())
	fmt.Println(continues())
}
