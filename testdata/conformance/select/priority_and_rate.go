// Go specification, "Select statements": preferring one channel, and a token bucket.

package main

import "fmt"

func drain(urgent, normal <-chan string) (out []string) {
	for {
		select {
		case s := <-urgent:
			out = append(out, "!"+s)
			continue
		default:
		}
		select {
		case s := <-normal:
			out = append(out, s)
		default:
			return
		}
	}
}

type bucket chan struct{}

func newBucket(n int) bucket {
	b := make(bucket, n)
	b.refill(n)
	return b
}

func (b bucket) refill(n int) (added int) {
	for range n {
		select {
		case b <- struct{}{}:
			added++
		default:
			return
		}
	}
	return
}

func (b bucket) take() bool {
	select {
	case <-b:
		return true
	default:
		return false
	}
}

func main() {
	u, n := make(chan string, 3), make(chan string, 3)
	for _, s := range []string{"a", "b", "c"} {
		n <- s
	}
	u <- "x"
	u <- "y"
	fmt.Println(drain(u, n))
	b := newBucket(2)
	fmt.Println(b.take(), b.take(), b.take())
	added := b.refill(5)
	fmt.Println(added, len(b))
	taken := b.take()
	fmt.Println(taken, len(b))
}
