// Go specification, "Map types": sets with empty structs: union, intersection, difference.

package main

import (
	"fmt"
	"sort"
	"strings"
)

type Set map[string]struct{}

func NewSet(xs ...string) Set {
	s := Set{}
	for _, x := range xs {
		s[x] = struct{}{}
	}
	return s
}

func (s Set) Has(x string) bool { _, ok := s[x]; return ok }

func (s Set) Filter(keep func(string) bool) Set {
	out := Set{}
	for x := range s {
		if keep(x) {
			out[x] = struct{}{}
		}
	}
	return out
}

func (s Set) And(t Set) Set   { return s.Filter(t.Has) }
func (s Set) Minus(t Set) Set { return s.Filter(func(x string) bool { return !t.Has(x) }) }
func (s Set) String() string {
	keys := make([]string, 0)
	for k := range s {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return "{" + strings.Join(keys, " ") + "}"
}

func main() {
	a := NewSet("juniper", "lemon", "cardamom", "lemon")
	b := NewSet("lemon", "fennel")
	fmt.Println(a, b, len(a))
	fmt.Println(a.And(b), a.Minus(b), b.Minus(a), a.Has("fennel"))
	both := []Set{a.And(b), NewSet()}
	fmt.Println(both, map[string]Set{"b": b})
	fmt.Printf("%v %s %d\n", a, b, len(both[1]))
}
