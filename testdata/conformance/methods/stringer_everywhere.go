// Go specification, "Method declarations": String and Error methods seen through slices, maps, pointers and structs.

package main

import "fmt"

type Kind int

func (k Kind) String() string { return [...]string{"malt", "grain"}[k] }

type Ref struct{ n int }

func (r *Ref) String() string { return fmt.Sprint("ref", r.n) }

type Wrap struct {
	Kind Kind
	Ref  *Ref
	val  Kind
	any  any
}

type Fail struct{ Code int }

func (f Fail) Error() string  { return fmt.Sprint("fail ", f.Code) }
func (f Fail) String() string { return "string is hidden by Error" }

func main() {
	k := Kind(1)
	fmt.Println(k, &k != nil, []Kind{0, 1}, [2]Kind{1, 0}, map[Kind]Kind{1: 0}, struct{ K Kind }{1})
	fmt.Println([]any{k, 3, "s"}, any(k))
	r := Ref{5}
	fmt.Println(&r, r, []*Ref{}, []Ref{r})
	fmt.Println(Wrap{Kind: 1, val: 1, any: Kind(0)}.Kind)
	fmt.Printf("%v %+v\n", struct {
		A Kind
		B any
	}{1, Kind(0)}, struct{ E error }{Fail{1}})
	fmt.Printf("%v %s %d %x %q %#v %T\n", k, k, k, int(k), k, k, k)
	fmt.Println(Fail{3}, []error{Fail{4}}, map[string]error{"e": Fail{5}})
	fmt.Printf("[%6s|%-6v|%3d]\n", k, k, k)
	fmt.Println(fmt.Sprint(k, k), fmt.Sprintf("%v", []fmt.Stringer{k, &r}))
}
