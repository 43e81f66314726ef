// Go specification, "Defer statements": defers in loops run at the end of the function, not of the iteration.

package main

import "fmt"

func tidy(names []string) (log []string) {
	for _, n := range names {
		log = append(log, "open "+n)
		defer func() { log = append(log, "close "+n) }()
	}
	log = append(log, "work")
	return log
}

func each(names []string) (log []string) {
	for _, n := range names {
		func() {
			log = append(log, "open "+n)
			defer func() { log = append(log, "close "+n) }()
		}()
	}
	return
}

func stack(n int) (out []int) {
	if n == 0 {
		return nil
	}
	defer func() { out = append(out, n) }()
	return stack(n - 1)
}

func main() {
	names := []string{"valve", "tank"}
	fmt.Printf("%q\n", tidy(names))
	fmt.Printf("%q\n", each(names))
	fmt.Println(stack(5))
	for i := 0; i < 3; i++ {
		func() {
			defer fmt.Print(i, ";")
			i := i * 10
			fmt.Print(i, " ")
		}()
	}
	fmt.Println()
}
