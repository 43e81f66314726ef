// Go specification, "Method sets": values, pointers and addressability.

package main

import "fmt"

type Counter struct{ n int }

func (c *Counter) Inc()    { c.n++ }
func (c Counter) Get() int { return c.n }

type Incer interface{ Inc() }
type Getter interface{ Get() int }
type Both interface {
	Incer
	Getter
}

func bump(i Incer, times int) {
	for range times {
		i.Inc()
	}
}

func main() {
	var c Counter
	c.Inc()
	(&c).Inc()
	bump(&c, 3)
	var g Getter = c
	c.Inc()
	var h Getter = &c
	fmt.Println(c.Get(), g.Get(), h.Get())
	_, valIs := any(c).(Incer)
	_, ptrIs := any(&c).(Both)
	fmt.Println(valIs, ptrIs)
	arr := []Counter{{1}, {2}}
	arr[0].Inc()
	for _, v := range arr {
		v.Inc()
	}
	fmt.Println(arr)
	m := map[string]*Counter{"a": {}}
	m["a"].Inc()
	fmt.Println(m["a"].Get(), Counter{9}.Get())
	func() {
		defer func() { fmt.Println(recover() != nil) }()
		var p *Counter
		fmt.Println(p.Get())
	}()
}
