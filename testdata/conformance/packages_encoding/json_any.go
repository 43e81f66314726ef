// Go specification, "Interface types" (package encoding/json): decoding into any, numbers and raw messages.

package main

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"
)

func main() {
	var v any
	err := json.Unmarshal([]byte(` {"a":[1,2.5,"x",null,true],"b":{"c":-0.0e1}} `), &v)
	fmt.Println(v, err)
	m := v.(map[string]any)
	fmt.Printf("%T %T %T\n", m["a"], m["a"].([]any)[0], m["b"])
	dec := json.NewDecoder(strings.NewReader(`{"big":12345678901234567890} [1] "s" 3`))
	dec.UseNumber()
	for {
		var x any
		if err := dec.Decode(&x); err == io.EOF {
			break
		} else if err != nil {
			fmt.Println(err)
			break
		}
		fmt.Printf("%v %T\n", x, x)
	}
	var env struct {
		Kind string
		Body json.RawMessage
	}
	err = json.Unmarshal([]byte(`{"kind":"fill","body":{"litres": 190}}`), &env)
	fmt.Println(env.Kind, string(env.Body), err)
	var body struct{ Litres int }
	err = json.Unmarshal(env.Body, &body)
	fmt.Println(body, err)
	b, err := json.Marshal(map[string]any{"z": 1, "a": []int{}, "m": nil, "f": 1.0, "é": "<&>"})
	fmt.Println(string(b), err)
}
