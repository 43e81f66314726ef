// Go specification, "Go statements": stopping goroutines through a context.

package main

import (
	"context"
	"errors"
	"fmt"
	"time"
)

type keyType struct{}

func count(ctx context.Context, out chan<- int) error {
	for i := 0; ; i++ {
		select {
		case out <- i:
		case <-ctx.Done():
			close(out)
			return ctx.Err()
		}
	}
}

func main() {
	ctx, cancel := context.WithCancel(context.WithValue(context.Background(), keyType{}, "lot 7"))
	out := make(chan int)
	errs := make(chan error, 1)
	go func() { errs <- count(ctx, out) }()
	sum := 0
	for v := range out {
		sum += v
		if v == 5 {
			cancel()
			break
		}
	}
	for range out {
	}
	err := <-errs
	fmt.Println(sum, err, errors.Is(err, context.Canceled))
	fmt.Println(ctx.Value(keyType{}), ctx.Value("other"))
	tctx, stop := context.WithTimeout(ctx, time.Hour)
	defer stop()
	fmt.Println(tctx.Err(), tctx.Value(keyType{}))
	short, stop2 := context.WithTimeout(context.Background(), time.Millisecond)
	defer stop2()
	<-short.Done()
	fmt.Println(short.Err(), errors.Is(short.Err(), context.DeadlineExceeded))
	cctx, because := context.WithCancelCause(context.Background())
	because(errors.New("power cut"))
	fmt.Println(cctx.Err(), context.Cause(cctx))
}
