// Go specification, "Composite literals": an inventory with events, undo and a report.

package main

import "fmt"

type kind int

const (
	in kind = iota
	out
	loss
)

func (k kind) String() string { return [...]string{"in", "out", "loss"}[k] }

type event struct {
	kind
	item string
	n    int
}

type inventory struct {
	stock map[string]int
	log   []event
}

func (v *inventory) apply(e event) error {
	delta := e.n
	if e.kind != in {
		delta = -delta
	}
	if v.stock[e.item]+delta < 0 {
		return fmt.Errorf("%v %d %s: only %d", e.kind, e.n, e.item, v.stock[e.item])
	}
	v.stock[e.item] += delta
	v.log = append(v.log, e)
	return nil
}

func (v *inventory) undo() (e event, ok bool) {
	if len(v.log) == 0 {
		return
	}
	e, v.log = v.log[len(v.log)-1], v.log[:len(v.log)-1]
	if e.kind == in {
		v.stock[e.item] -= e.n
	} else {
		v.stock[e.item] += e.n
	}
	return e, true
}

func main() {
	v := &inventory{stock: map[string]int{}}
	for _, e := range []event{{in, "cork", 100}, {out, "cork", 30}, {out, "wax", 1}, {loss, "cork", 5}, {in, "wax", 2}} {
		if err := v.apply(e); err != nil {
			fmt.Println("refused:", err)
		}
	}
	fmt.Println(v.stock, v.log)
	fmt.Println(v.undo())
	fmt.Println(v.undo())
	fmt.Println(v.stock, len(v.log))
}
