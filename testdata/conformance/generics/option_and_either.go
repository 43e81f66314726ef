// Go specification, "Instantiations": optional values, results and chaining by functions.

package main

import "fmt"

type Option[T any] struct {
	v  T
	ok bool
}

func Some[T any](v T) Option[T] { return Option[T]{v, true} }
func None[T any]() Option[T]    { return Option[T]{} }

func (o Option[T]) Or(d T) T {
	if o.ok {
		return o.v
	}
	return d
}

func (o Option[T]) String() string {
	if !o.ok {
		return "none"
	}
	return fmt.Sprintf("some(%v)", o.v)
}

func Bind[T, U any](o Option[T], f func(T) Option[U]) Option[U] {
	if !o.ok {
		return None[U]()
	}
	return f(o.v)
}

func Lookup[K comparable, V any](m map[K]V, k K) Option[V] {
	v, ok := m[k]
	return Option[V]{v, ok}
}

func main() {
	stock := map[string]int{"gin": 4, "rum": 0}
	perBottle := func(n int) Option[float64] {
		if n == 0 {
			return None[float64]()
		}
		return Some(100 / float64(n))
	}
	for _, k := range []string{"gin", "rum", "ale"} {
		n := Lookup(stock, k)
		fmt.Println(k, n, Bind(n, perBottle), Bind(n, perBottle).Or(-1))
	}
	opts := []Option[string]{Some("x"), None[string](), Some("")}
	fmt.Println(opts, Some(Some(1)), Some([]int{1}))
	fmt.Printf("%v %s %T\n", opts[0], opts[1], opts[2])
	fmt.Println(Some(3) == Some(3), None[int]() == Option[int]{})
}
