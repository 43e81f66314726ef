// Go specification, "Type assertions" (package encoding/json): errors and their types.

package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
)

type Rec struct {
	N int
	S []string
	M map[string]bool
}

func main() {
	for _, in := range []string{`{"N":"x"}`, `{"N":1.5}`, `{"S":{}}`, `{"N":1`, `{"N":1,}`, ``, `[1]`, `{"M":{"a":1}}`, `{"N":1} x`, `nul`, `{"N":300000000000000000000}`} {
		var r Rec
		err := json.Unmarshal([]byte(in), &r)
		var se *json.SyntaxError
		var te *json.UnmarshalTypeError
		switch {
		case errors.As(err, &se):
			fmt.Println("syntax", se.Offset, err)
		case errors.As(err, &te):
			fmt.Println("type", te.Field, te.Value, err)
		default:
			fmt.Println("other", err)
		}
	}
	_, err := json.Marshal(map[string]any{"c": make(chan int)})
	fmt.Println(err)
	_, err = json.Marshal(math.Inf(1))
	fmt.Println(err)
	dec := json.NewDecoder(strings.NewReader(`{"N":1,"extra":2}`))
	dec.DisallowUnknownFields()
	var r Rec
	err = dec.Decode(&r)
	fmt.Println(err, json.Valid([]byte(`{}`)), json.Valid([]byte(`{]`)))
	var p *Rec
	err = json.Unmarshal([]byte("{}"), p)
	fmt.Println(err)
}
