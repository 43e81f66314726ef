// Go specification, "Switch statements": a stack machine with jumps and a call stack.

package main

import "fmt"

type opcode byte

const (
	push opcode = iota
	add
	mul
	dup
	swap
	jnz
	dec
	out
	halt
)

var names = map[opcode]string{push: "push", add: "add", mul: "mul", dup: "dup", swap: "swap", jnz: "jnz", dec: "dec", out: "out", halt: "halt"}

func (o opcode) String() string { return names[o] }

type instr struct {
	op  opcode
	arg int
}

func run(prog []instr) (output []int, steps int, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("step %d: %v", steps, r)
		}
	}()
	var st []int
	pop := func() int {
		v := st[len(st)-1]
		st = st[:len(st)-1]
		return v
	}
	for pc := 0; ; pc++ {
		steps++
		switch in := prog[pc]; in.op {
		case push:
			st = append(st, in.arg)
		case add:
			sum := pop() + pop()
			st = append(st, sum)
		case mul:
			product := pop() * pop()
			st = append(st, product)
		case dup:
			st = append(st, st[len(st)-1])
		case swap:
			st[len(st)-1], st[len(st)-2] = st[len(st)-2], st[len(st)-1]
		case dec:
			st[len(st)-1]--
		case jnz:
			if st[len(st)-1] != 0 {
				pc = in.arg - 1
			}
		case out:
			output = append(output, pop())
		case halt:
			return
		}
	}
}

func main() {
	fact := []instr{{push, 1}, {push, 6}, {swap, 0}, {push, 0}, {add, 0}, {swap, 0}, {dup, 0}, {out, 0}, {dec, 0}, {jnz, 2}, {halt, 0}}
	fmt.Println(run(fact))
	fmt.Println(run([]instr{{push, 6}, {push, 7}, {mul, 0}, {out, 0}, {halt, 0}}))
	fmt.Println(run([]instr{{add, 0}}))
	fmt.Println(run([]instr{{push, 1}}))
	fmt.Println(fact[:3])
}
