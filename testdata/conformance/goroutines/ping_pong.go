// Go specification, "Go statements": strict alternation over unbuffered channels.

package main

import (
	"fmt"
	"strings"
)

type Ball struct{ hits []string }

func player(name string, table <-chan *Ball, other chan<- *Ball, done chan<- *Ball, limit int) {
	for b := range table {
		b.hits = append(b.hits, name)
		if len(b.hits) == limit {
			done <- b
			return
		}
		other <- b
	}
}

func main() {
	a, b, done := make(chan *Ball), make(chan *Ball), make(chan *Ball)
	go player("ping", a, b, done, 7)
	go player("pong", b, a, done, 7)
	a <- new(Ball)
	ball := <-done
	fmt.Println(ball.hits, len(ball.hits))
	turn := make([]chan int, 3)
	for i := range turn {
		turn[i] = make(chan int)
	}
	end := make(chan string)
	var sb strings.Builder
	for i := range turn {
		go func() {
			for n := range turn[i] {
				fmt.Fprintf(&sb, "%c%d ", 'a'+i, n)
				if n == 8 {
					end <- sb.String()
					return
				}
				turn[(i+1)%3] <- n + 1
			}
		}()
	}
	turn[0] <- 0
	fmt.Println(<-end)
}
