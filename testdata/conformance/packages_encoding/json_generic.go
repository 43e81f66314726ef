// Go specification, "Type parameter declarations" (package encoding/json): decoding through generic helpers.

package main

import (
	"encoding/json"
	"fmt"
)

type Page[T any] struct {
	Items []T  `json:"items"`
	Next  *int `json:"next,omitempty"`
}

type Bottle struct {
	Name string `json:"name"`
	Ml   int    `json:"ml"`
}

func Decode[T any](s string) (v T, err error) {
	err = json.Unmarshal([]byte(s), &v)
	return
}

func RoundTrip[T any](v T) (T, string) {
	b, err := json.Marshal(v)
	if err != nil {
		panic(err)
	}
	w, err := Decode[T](string(b))
	if err != nil {
		panic(err)
	}
	return w, string(b)
}

func main() {
	p, err := Decode[Page[Bottle]](`{"items":[{"name":"gin","ml":500},{"name":"rum"}],"next":2}`)
	fmt.Println(p.Items, *p.Next, err)
	n, err := Decode[[]int]("[1,2,3]")
	fmt.Println(n, err)
	m, err := Decode[map[string][]float64](`{"a":[1.5],"b":null}`)
	fmt.Println(m, err)
	_, err = Decode[Page[int]](`{"items":["x"]}`)
	fmt.Println(err != nil)
	fmt.Println(RoundTrip(Page[string]{Items: []string{"é", "\u2028"}}))
	fmt.Println(RoundTrip([2]Bottle{{"a", 1}}))
	fmt.Println(RoundTrip(map[int]bool{3: true, 1: false}))
}
