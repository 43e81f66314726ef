// Go specification, "Qualified identifiers" (package context): values by key type, causes, deadlines on fixed dates.

package main

import (
	"context"
	"errors"
	"fmt"
	"time"
)

type key int
type otherKey int

const (
	user key = iota
	trace
)

func with(ctx context.Context, kv ...any) context.Context {
	for i := 0; i+1 < len(kv); i += 2 {
		ctx = context.WithValue(ctx, kv[i], kv[i+1])
	}
	return ctx
}

func name(ctx context.Context) string {
	if s, ok := ctx.Value(user).(string); ok {
		return s
	}
	return "nobody"
}

func steps(ctx context.Context, n int) (done int, err error) {
	for range n {
		if err := ctx.Err(); err != nil {
			return done, fmt.Errorf("step %d: %w", done, context.Cause(ctx))
		}
		done++
	}
	return
}

func main() {
	ctx := with(context.Background(), user, "Ida", trace, 7)
	inner := with(ctx, user, "Ben", otherKey(0), "x")
	fmt.Println(name(ctx), name(inner), name(context.TODO()), inner.Value(trace), inner.Value(otherKey(0)), inner.Value(0))
	c, cancel := context.WithCancelCause(ctx)
	fmt.Println(steps(c, 3))
	cancel(errors.New("kettle dry"))
	fmt.Println(steps(c, 3))
	fmt.Println(c.Err(), errors.Is(c.Err(), context.Canceled))
	past, stop := context.WithDeadline(ctx, time.Date(2001, 1, 1, 0, 0, 0, 0, time.UTC))
	defer stop()
	at, ok := past.Deadline()
	fmt.Println(past.Err(), at.Year(), ok)
	_, ok = ctx.Deadline()
	fmt.Println(ok)
	done := make(chan string, 1)
	context.AfterFunc(past, func() { done <- "after" })
	fmt.Println(<-done)
}
