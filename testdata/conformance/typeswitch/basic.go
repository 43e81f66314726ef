// Go specification, "Type switches": cases for concrete types, several types, nil and default.

package main

import (
	"fmt"
	"strings"
)

type Celsius float64
type Names []string

func kind(v any) string {
	switch x := v.(type) {
	case nil:
		return "nil"
	case int:
		return fmt.Sprint("int ", x+1)
	case int8, int16:
		return fmt.Sprintf("small %T %v", x, x)
	case Celsius:
		return fmt.Sprintf("warm %.1f", float64(x))
	case float64:
		return fmt.Sprint("float ", x/2)
	case Names:
		return "names " + strings.Join(x, "+")
	case []string:
		return fmt.Sprint("strings ", len(x))
	case func() int:
		return fmt.Sprint("func ", x())
	case *int:
		return fmt.Sprint("pointer ", *x)
	case map[string]int:
		return fmt.Sprint("map ", x["a"])
	case struct{ X int }:
		return fmt.Sprint("struct ", x.X)
	default:
		return fmt.Sprintf("other %T", x)
	}
}

func main() {
	n := 7
	for _, v := range []any{nil, 1, int8(2), int16(3), Celsius(20), 5.0, Names{"a", "b"}, []string{"c"}, func() int { return 9 }, &n, map[string]int{"a": 4}, struct{ X int }{6}, 'x', [2]int{}, make(chan int)} {
		fmt.Println(kind(v))
	}
}
