// Go specification, "Break statements": breaking out of labelled blocks, switches and nested selects.

package main

import "fmt"

func classify(n int) string {
	res := "none"
check:
	switch {
	case n < 0:
		res = "negative"
		if n < -100 {
			break check
		}
		res += "-small"
	case n > 0:
		for i := range n {
			if i == 3 {
				res = "stopped"
				break check
			}
		}
		res = "counted"
	}
	return res
}

func main() {
	for _, n := range []int{-500, -5, 0, 2, 9} {
		fmt.Print(classify(n), " ")
	}
	fmt.Println()
	ch := make(chan int, 5)
	for i := range 5 {
		ch <- i * i
	}
	close(ch)
	sum := 0
drain:
	for {
		select {
		case v, ok := <-ch:
			if !ok || v > 8 {
				break drain
			}
			sum += v
		}
	}
	fmt.Println(sum, len(ch))
same:
	for i := range 2 {
		func() {
		same:
			for j := range 3 {
				if j == i {
					continue same
				}
				fmt.Print(i, j, " ")
			}
		}()
		continue same
	}
	fmt.Println()
}
