// Go specification, "Struct types": a promoted String method prints the whole struct.

package main

import (
	"fmt"
	"time"
)

type ABV float64

func (a ABV) String() string { return fmt.Sprintf("%.1f%%", float64(a)) }

type Spirit struct {
	ABV
	volumeL float64
}

type Named struct {
	name string
	Spirit
}

type Both struct {
	ABV
	time.Duration
}

type Plain struct {
	strength ABV
	list     []ABV
	ptr      *ABV
}

func main() {
	s := Spirit{40, 0.7}
	fmt.Println(s, &s, []Spirit{s, {58.5, 1}})
	fmt.Println(Named{"gin", s}, map[string]Named{"x": {"a", s}})
	fmt.Printf("%v|%s|%+v|%d\n", s, s, s, int(s.ABV))
	b := Both{1, time.Second}
	fmt.Println(b.ABV, b.Duration, b)
	p := Plain{43, []ABV{1, 2}, nil}
	fmt.Println(p)
	fmt.Printf("%+v\n", p)
	type Hidden struct{ ABV ABV }
	fmt.Println(Hidden{12}, struct{ ABV }{9})
}
