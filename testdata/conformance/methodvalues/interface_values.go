// Go specification, "Method values": method values of interface values and of embedded fields.

package main

import "fmt"

type Speaker interface{ Say() string }
type Dog struct{ name string }
type Robot struct{ id int }

func (d Dog) Say() string    { return d.name + ": woof" }
func (r *Robot) Say() string { r.id++; return fmt.Sprint("beep ", r.id) }

type Kennel struct {
	Speaker
	count int
}

func collect(fs ...func() string) (out []string) {
	for _, f := range fs {
		out = append(out, f())
	}
	return
}

func main() {
	var s Speaker = Dog{"Rex"}
	f := s.Say
	r := &Robot{}
	s = r
	g := s.Say
	s = Dog{"Max"}
	fmt.Printf("%q\n", collect(f, g, s.Say, g, r.Say))
	k := Kennel{s, 1}
	h := k.Say
	k.Speaker = r
	fmt.Printf("%q\n", collect(h, k.Say, func() string { return Kennel.Say(k)[:4] }))
	defer func() { fmt.Println(recover()) }()
	var none Speaker
	m := none.Say
	_ = m
}
