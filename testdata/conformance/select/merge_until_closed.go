// Go specification, "Select statements": merging two channels, disabling each when closed.

package main

import "fmt"

func emit(vs ...int) <-chan int {
	ch := make(chan int)
	go func() {
		defer close(ch)
		for _, v := range vs {
			ch <- v
		}
	}()
	return ch
}

func merge(a, b <-chan int) (sum, n int) {
	for a != nil || b != nil {
		select {
		case v, ok := <-a:
			if !ok {
				a = nil
				continue
			}
			sum += v
			n++
		case v, ok := <-b:
			if !ok {
				b = nil
				break
			}
			sum += v * 100
			n++
		}
	}
	return
}

func main() {
	fmt.Println(merge(emit(1, 2, 3), emit(4, 5)))
	fmt.Println(merge(emit(), emit(7)))
	fmt.Println(merge(nil, nil))
}
