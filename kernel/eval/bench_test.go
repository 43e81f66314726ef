package eval_test

import (
	"testing"
	"time"
)

// The figures are of whole programs: nanoseconds a turn of the loop named.
func benchProgram(b *testing.B, src string) {
	getWorld()
	n := 0
	for b.Loop() {
		if _, err := runProgram("bench.go", src, time.Minute, false); err != nil {
			b.Fatal(err)
		}
		n++
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(n)/1e6, "ns/turn")
}

func BenchmarkFloatLoop(b *testing.B) {
	benchProgram(b, `package main
func main() {
	s, x := 0.0, 0.5
	for i := 0; i < 1000000; i++ {
		s += x * float64(i)
	}
	if s == 0 { panic(1) }
}`)
}

func BenchmarkIntLoop(b *testing.B) {
	benchProgram(b, `package main
func main() {
	s := 0
	for i := range 1000000 {
		if i%3 == 0 { s += i } else { s -= 1 }
	}
	if s == 0 { panic(1) }
}`)
}

func BenchmarkCall(b *testing.B) {
	benchProgram(b, `package main
func add(a, b int) int { return a + b }
func main() {
	s := 0
	for i := 0; i < 1000000; i++ {
		s = add(s, i)
	}
}`)
}

func BenchmarkClosureCall(b *testing.B) {
	benchProgram(b, `package main
func main() {
	s := 0
	add := func(a int) { s += a }
	for i := 0; i < 1000000; i++ {
		add(i)
	}
}`)
}

func BenchmarkMethodCall(b *testing.B) {
	benchProgram(b, `package main
type T struct{ n int }
func (t *T) Add(d int) { t.n += d }
func main() {
	t := &T{}
	for i := 0; i < 1000000; i++ {
		t.Add(i)
	}
}`)
}

func BenchmarkInterfaceCall(b *testing.B) {
	benchProgram(b, `package main
type A interface{ Add(int) }
type T struct{ n int }
func (t *T) Add(d int) { t.n += d }
func main() {
	var t A = &T{}
	for i := 0; i < 1000000; i++ {
		t.Add(i)
	}
}`)
}

func BenchmarkSlice(b *testing.B) {
	benchProgram(b, `package main
func main() {
	xs := make([]float64, 1000)
	for k := 0; k < 1000; k++ {
		for i := range xs {
			xs[i] = xs[i]*0.5 + 1
		}
	}
}`)
}

func BenchmarkMapStringInt(b *testing.B) {
	benchProgram(b, `package main
func main() {
	m := map[string]int{}
	keys := []string{"a", "b", "c", "d"}
	for i := 0; i < 1000000; i++ {
		m[keys[i&3]]++
	}
}`)
}

func BenchmarkStructs(b *testing.B) {
	benchProgram(b, `package main
type P struct{ x, y float64 }
func (p P) plus(q P) P { return P{p.x + q.x, p.y + q.y} }
func main() {
	p := P{}
	for i := 0; i < 1000000; i++ {
		p = p.plus(P{1, 2})
	}
}`)
}

func BenchmarkSqrt(b *testing.B) {
	benchProgram(b, `package main
import "math"
func main() {
	s := 0.0
	for i := 0; i < 1000000; i++ {
		s += math.Sqrt(float64(i))
	}
}`)
}

func BenchmarkAppendBox(b *testing.B) {
	benchProgram(b, `package main
type Node struct { v int; next *Node }
func main() {
	var head *Node
	for i := 0; i < 1000000; i++ {
		head = &Node{i, nil}
	}
	_ = head
}`)
}

func BenchmarkChannel(b *testing.B) {
	benchProgram(b, `package main
func main() {
	c := make(chan int, 100)
	go func() { for i := range 1000000 { c <- i }; close(c) }()
	for range c {}
}`)
}
