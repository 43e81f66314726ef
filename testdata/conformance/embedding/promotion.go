// Go specification, "Struct types": promoted fields and methods, depth and shadowing.

package main

import "fmt"

type Base struct {
	ID   int
	Name string
}

func (b Base) Describe() string { return fmt.Sprintf("%s#%d", b.Name, b.ID) }
func (b *Base) Rename(n string) { b.Name = n }

type Mid struct {
	Base
	Name string
}

type Top struct {
	*Mid
	extra int
}

func (t Top) Describe() string { return "top:" + t.Mid.Describe() }

func main() {
	m := Mid{Base{1, "base"}, "mid"}
	m.Rename("renamed")
	fmt.Println(m.Name, m.Base.Name, m.Describe(), m.ID)
	t := Top{&m, 5}
	t.ID = 42
	t.Rename("via top")
	fmt.Println(t.Describe(), m.ID, t.Name, t.Mid.Base.Name)
	var d interface{ Describe() string } = t
	fmt.Println(d.Describe(), d.(Top).Base.Describe())
	fmt.Printf("%+v %v\n", m, m)
	var r interface{ Rename(string) } = t
	r.Rename("iface")
	fmt.Println(m.Base.Name)
}
