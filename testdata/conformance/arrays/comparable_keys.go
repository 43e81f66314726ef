// Go specification, "Comparison operators": arrays compare element by element and serve as map keys.

package main

import "fmt"

type Pos [2]int

func (p Pos) Add(q Pos) Pos { return Pos{p[0] + q[0], p[1] + q[1]} }

func main() {
	visits := map[Pos]int{}
	dirs := map[byte]Pos{'N': {0, 1}, 'S': {0, -1}, 'E': {1, 0}, 'W': {-1, 0}}
	at := Pos{}
	visits[at]++
	for _, c := range []byte("NNESWSNW") {
		at = at.Add(dirs[c])
		visits[at]++
	}
	fmt.Println(at, len(visits), visits[Pos{}], visits[Pos{0, 1}])
	fmt.Println(visits)
	fmt.Println(Pos{1, 2} == [2]int{1, 2}, Pos{1} != Pos{1, 1})
	var i, j any = Pos{3, 4}, [2]int{3, 4}
	fmt.Println(i == j, i == any(Pos{3, 4}))
	fmt.Printf("%T %v %#v\n", at, at, at)
}
