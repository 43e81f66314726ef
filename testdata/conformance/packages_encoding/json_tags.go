// Go specification, "Struct types" (package encoding/json): tags, omitted, renamed and embedded fields.

package main

import (
	"encoding/json"
	"fmt"
)

type Base struct {
	ID   int    `json:"id"`
	Note string `json:"note,omitempty"`
}

type Spirit struct {
	Base
	Name     string   `json:"name"`
	VolumeL  float64  `json:"volume_l"`
	Tags     []string `json:"tags"`
	Secret   string   `json:"-"`
	Dash     int      `json:"-,"`
	Quoted   int      `json:"quoted,string"`
	Ptr      *int     `json:"ptr"`
	OptPtr   *int     `json:"opt,omitempty"`
	internal int
	NoTag    bool
}

func main() {
	n := 5
	s := Spirit{Base{7, ""}, "Aniseed <dry> & \"old\"", 0.7, nil, "x", 1, 42, nil, &n, 3, true}
	b, err := json.Marshal(s)
	fmt.Println(string(b), err)
	var t Spirit
	err = json.Unmarshal(b, &t)
	fmt.Println(err, t.Base, t.Name, t.VolumeL, t.Tags == nil, t.Secret == "", t.Dash, t.Quoted, t.Ptr == nil, *t.OptPtr, t.internal, t.NoTag)
	err = json.Unmarshal([]byte(`{"ID":9,"NAME":"case","unknown":[1,2],"volume_l":1e-3,"tags":["a"]}`), &t)
	fmt.Println(err, t.ID, t.Name, t.VolumeL, t.Tags, t.Quoted)
	b, err = json.Marshal([]Base{{1, "n"}, {2, ""}})
	fmt.Println(string(b), err)
}
