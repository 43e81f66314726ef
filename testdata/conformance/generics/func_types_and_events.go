// Go specification, "Instantiations": generic function types with methods and an event bus.

package main

import "fmt"

type Pred[T any] func(T) bool

func (p Pred[T]) And(q Pred[T]) Pred[T] { return func(x T) bool { return p(x) && q(x) } }
func (p Pred[T]) Not() Pred[T]          { return func(x T) bool { return !p(x) } }

func Select[T any](xs []T, p Pred[T]) (out []T) {
	for _, x := range xs {
		if p(x) {
			out = append(out, x)
		}
	}
	return
}

type Bus[E any] struct{ subs []func(E) }

func (b *Bus[E]) On(f func(E)) { b.subs = append(b.subs, f) }
func (b *Bus[E]) Emit(e E) {
	for _, s := range b.subs {
		s(e)
	}
}

type Filled struct {
	cask   string
	litres int
}

func GroupBy[T any, K comparable](xs []T, key func(T) K) map[K][]T {
	m := make(map[K][]T)
	for _, x := range xs {
		k := key(x)
		m[k] = append(m[k], x)
	}
	return m
}

func main() {
	even := Pred[int](func(n int) bool { return n%2 == 0 })
	big := Pred[int](func(n int) bool { return n > 4 })
	xs := []int{1, 2, 3, 4, 5, 6, 7, 8}
	fmt.Println(Select(xs, even.And(big)), Select(xs, even.Not()), Select(xs, big.Not().And(even)))
	var bus Bus[Filled]
	total := 0
	bus.On(func(f Filled) { total += f.litres })
	bus.On(func(f Filled) { fmt.Print(f.cask, " ") })
	bus.Emit(Filled{"A", 190})
	bus.Emit(Filled{"B", 250})
	fmt.Println(total)
	fmt.Println(GroupBy(xs, func(n int) string { return []string{"fizz", "", ""}[n%3] }))
	fmt.Printf("%T %T\n", even, bus)
}
