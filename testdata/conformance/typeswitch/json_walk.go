// Go specification, "Type switches": walking decoded JSON of unknown shape.

package main

import (
	"encoding/json"
	"fmt"
	"sort"
	"strconv"
	"strings"
)

func walk(v any, depth int, out *[]string) {
	pad := strings.Repeat(".", depth)
	switch t := v.(type) {
	case map[string]any:
		keys := make([]string, 0, len(t))
		for k := range t {
			keys = append(keys, k)
		}
		sort.Strings(keys)
		for _, k := range keys {
			*out = append(*out, pad+k)
			walk(t[k], depth+1, out)
		}
	case []any:
		for i, e := range t {
			*out = append(*out, fmt.Sprint(pad, "#", i))
			walk(e, depth+1, out)
		}
	case string:
		*out = append(*out, pad+strconv.Quote(t))
	case float64, bool:
		*out = append(*out, fmt.Sprintf("%s%v:%T", pad, t, t))
	case nil:
		*out = append(*out, pad+"null")
	default:
		panic(fmt.Sprintf("unexpected %T", t))
	}
}

func main() {
	var v any
	err := json.Unmarshal([]byte(`{"lot":"A7","abv":[43,58.5],"peated":false,"owner":{"name":null,"tags":["x\u00e9"]}}`), &v)
	var out []string
	walk(v, 0, &out)
	fmt.Println(err)
	fmt.Println(strings.Join(out, "\n"))
}
