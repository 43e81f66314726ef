// Go specification, "Conversions": struct types that differ only in tags convert to each other.

package main

import "fmt"

type Row struct {
	Name  string `json:"name"`
	Count int    `json:"count,omitempty"`
}

type Record struct {
	Name  string `csv:"n"`
	Count int
}

func main() {
	r := Row{"angelica", 3}
	rec := Record(r)
	rec.Count++
	fmt.Println(r, rec, Row(rec) == r)
	anon := struct {
		Name  string
		Count int
	}(rec)
	fmt.Printf("%T %+v\n", anon, anon)
	p := (*Record)(&r)
	p.Name = "orris"
	fmt.Println(r.Name)
	var plain struct {
		Name  string
		Count int
	} = anon
	fmt.Printf("%v %v\n", plain == anon, plain)
	fmt.Printf("%#v\n", rec)
}
