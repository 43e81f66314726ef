// Go specification, "Alias declarations": aliases keep identity and methods, definitions drop methods.

package main

import "fmt"

type Base struct{ n int }

func (b Base) Hello() string { return fmt.Sprint("hello ", b.n) }
func (b *Base) Add(k int)    { b.n += k }

type Alias = Base
type Defined Base
type Wrapped struct{ Base }
type IntAlias = int
type Names = []string
type Fn = func(Names) IntAlias
type Greeter = interface{ Hello() string }

func greet(v any) string {
	if g, ok := v.(Greeter); ok {
		return g.Hello()
	}
	return fmt.Sprintf("%T cannot", v)
}

func count(n Names) int { return len(n) }

func main() {
	a := Alias{1}
	a.Add(4)
	d := Defined(a)
	d.n++
	fmt.Println(greet(a), greet(d), greet(Base(d)), greet(Wrapped{a}))
	fmt.Printf("%T %T %T %T\n", a, d, IntAlias(3), Names{"x"})
	var f Fn = count
	fmt.Println(f([]string{"a", "b"}), any(IntAlias(1)) == any(1))
	var b Base = a
	fmt.Println(b == a, any(b) == any(a), any(d) == any(a))
	type local = map[string]Base
	m := local{"k": b}
	fmt.Printf("%T %v\n", m, m)
	var _ error = (interface{ Error() string })(nil)
	switch any(m).(type) {
	case map[string]Alias:
		fmt.Println("same map type")
	}
}
