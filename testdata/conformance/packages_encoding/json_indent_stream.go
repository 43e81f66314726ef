// Go specification, "Struct types" (package encoding/json): indented output, an encoder, maps with integer keys.

package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
)

type Cut struct {
	From  string  `json:"from"`
	AtABV float64 `json:"at_abv"` // percent by volume
}

type Run struct {
	No    int            `json:"no"`
	Cuts  []Cut          `json:"cuts"`
	Yield map[int]string `json:"yield"`
	Meta  struct {
		By string `json:"by"`
	} `json:"meta"`
	Bytes []byte  `json:"bytes"`
	Arr   [2]bool `json:"arr"`
	Any   any     `json:"any"`
	Err   error   `json:"err"`
}

func main() {
	r := Run{No: 3, Cuts: []Cut{{"heads", 80.5}, {"tails", 55}}, Yield: map[int]string{10: "x", 2: "y"}, Bytes: []byte("hi"), Any: Cut{"any", 1}}
	r.Meta.By = "Ida"
	b, err := json.MarshalIndent(r, "", "  ")
	fmt.Println(string(b), err)
	var sb strings.Builder
	enc := json.NewEncoder(&sb)
	enc.SetEscapeHTML(false)
	for _, v := range []any{1, "a<b", nil, []Cut{}} {
		if err := enc.Encode(v); err != nil {
			fmt.Println(err)
		}
	}
	fmt.Print(sb.String())
	var buf bytes.Buffer
	err = json.Compact(&buf, []byte("{ \"a\" : [ 1 , 2 ] }"))
	fmt.Println(buf.String(), err)
}
