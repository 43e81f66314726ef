package eval_test

import (
	"strings"
	"testing"
	"time"
)

// Small programs beside the corpus: what once went wrong, or is easily got wrong. The wanted output is that of the Go
// toolchain named in go.mod.
var language = map[string]struct{ src, want string }{
	"variables are read after the calls of their statement": {`
var g = 1
func inc() int { g++; return g }
func main() { x := g + inc(); y := []int{g, inc(), g}; fmt.Println(x, y, g, inc()) }`, "4 [3 3 3] 4 4\n"},
	"builtin functions are calls too": {`
func main() { x := make([]int, 1); f := func() int { x = make([]int, 3); return 2 }; a, b, c := len(x), f(), len(x); fmt.Println(a, b, c) }`, "1 2 3\n"},
	"a left side is checked when it is assigned to": {`
func main() {
	m := map[int]int{}; var p *int
	defer func() { fmt.Println(recover() != nil, m) }()
	m[2], *p = 42, 2
}`, "true map[2:42]\n"},
	"a receive with ok runs once": {`
func main() { c := make(chan int, 2); c <- 1; c <- 2; f := func() chan int { return c }; var v [1]int; var ok bool; i := func() int { return 0 }; v[i()], ok = <-f(); fmt.Println(v, ok, len(c)) }`, "[1] true 1\n"},
	"defer recover() sees no panic of its own function": {`
func f() { defer func() { fmt.Println("outer", recover()) }(); defer recover(); panic(1) }
func main() { f() }`, "outer 1\n"},
	"defer recover() in a deferred function stops the panic": {`
func f() { defer func() { fmt.Println("outer", recover()) }(); defer func() { defer recover() }(); panic(1) }
func main() { f() }`, "outer <nil>\n"},
	"types named through aliases are identical": {`
type B struct{}
type A = B
func main() { var x any = map[string]B{}; _, ok := x.(map[string]A); fmt.Println(ok) }`, "true\n"},
	"parameter names do not matter to identity": {`
func main() { var x any = func(a int) {}; _, ok := x.(func(b int)); fmt.Println(ok) }`, "true\n"},
	"a nil pointer in a value method called through an interface": {`
type T int
func (t T) F() {}
var t *T
var i interface{ F() } = t
func main() { defer func() { fmt.Println(recover()) }(); i.F() }`, "value method main.T.F called using nil *T pointer\n"},
	"the key of an empty map cannot be hashed": {`
func main() { defer func() { fmt.Println(recover()) }(); m := map[any]int{}; _ = m[[]int{}] }`, "hash of unhashable type: []int\n"},
	"the key of a full map cannot be hashed": {`
func main() { defer func() { fmt.Println(recover()) }(); m := map[any]int{1: 1}; _ = m[[]int{}] }`, "runtime error: hash of unhashable type []int\n"},
	"an unsigned index is not negative": {`
func main() { defer func() { fmt.Println(recover()) }(); i := ^uint64(0); _ = []int{1}[i] }`, "runtime error: index out of range [18446744073709551615] with length 1\n"},
	"constants of complex numbers in generic functions": {`
func inc[T int8 | complex64](x T) T { x++; return x }
func main() { fmt.Println(inc(int8(127)), inc(complex64(1i))) }`, "-128 (1+1i)\n"},
	"types declared in generic functions differ by instance": {`
func name[T any]() any { type local struct{ v T }; return local{} }
func main() { fmt.Printf("%v %v\n", name[int]() == name[int](), name[int]() == name[string]()) }`, "true false\n"},
	"a loop over a function keeps its own labels": {`
func up(yield func(int) bool) { for i := 0; yield(i); i++ {} }
func main() {
outer:
	for i := range up { for j := range up { if j > i { continue outer }; if i == 3 { break outer }; fmt.Print(i, j, " ") } }
	fmt.Println()
}`, "0 0 1 0 1 1 2 0 2 1 2 2 \n"},
	"no method is called on a hidden field": {`
type E struct{}
func (E) Error() string { return "error" }
type S struct { e E; E E; any any; D map[string]E }
func main() { fmt.Println(S{any: E{}, D: map[string]E{"k": {}}}) }`, "{{} error {} map[k:error]}\n"},
	"OnceValue and AsType": {`
type E struct{ n int }
func (e *E) Error() string { return "e" }
func main() {
	f := sync.OnceValue(func() int { fmt.Print("once "); return 3 })
	e, ok := errors.AsType[*E](fmt.Errorf("x: %w", &E{4}))
	fmt.Println(f(), f(), e.n, ok)
}`, "once 3 3 4 true\n"},
	"atomic.Pointer": {`
type T struct{ n int }
func main() { var p atomic.Pointer[T]; a, b := &T{1}, &T{2}; fmt.Println(p.Load() == nil, p.CompareAndSwap(nil, a), p.Swap(b).n, p.Load().n) }`, "true true 1 2\n"},
}

func TestLanguage(t *testing.T) {
	for name, tt := range language {
		src := "package main\n\nimport (\"errors\"; \"fmt\"; \"sync\"; \"sync/atomic\")\n\nvar _ = errors.New\nvar _ sync.Mutex\nvar _ atomic.Bool\n" + tt.src + "\n"
		got, err := runProgram(strings.ReplaceAll(name, " ", "_")+".go", src, 10*time.Second, false)
		if err != nil || got != tt.want {
			t.Errorf("%s: %v\n got  %q\n want %q", name, err, got, tt.want)
		}
	}
}
