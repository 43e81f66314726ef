// Go specification, "Struct types": anonymous structs as tables, in slices, maps and as identical types.

package main

import "fmt"

var config struct {
	Name  string
	Ports []int
	Inner struct{ On bool }
}

func origin() struct{ X, Y int } { return struct{ X, Y int }{} }

func main() {
	config.Name = "stillhouse"
	config.Ports = append(config.Ports, 1, 2)
	config.Inner.On = true
	fmt.Printf("%v %+v\n", config, config)
	tests := []struct {
		in   int
		want string
	}{{1, "odd"}, {2, "even"}, {in: 7}}
	for _, tt := range tests {
		got := "even"
		if tt.in%2 == 1 {
			got = "odd"
		}
		fmt.Print(tt, got == tt.want, " ")
	}
	fmt.Println()
	type P struct{ X, Y int }
	var p P = origin()
	p.X = 4
	o := struct{ X, Y int }{4, 0}
	fmt.Println(p == o, o)
	fmt.Printf("%T %T\n", p, o)
	set := map[struct{ a, b int }]bool{{1, 2}: true}
	fmt.Println(set[struct{ a, b int }{1, 2}], len(set))
	var e struct{}
	fmt.Println(e, e == struct{}{})
}
