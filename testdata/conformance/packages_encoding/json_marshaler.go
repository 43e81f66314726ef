// Go specification, "Implementing an interface" (package encoding/json): own MarshalJSON and text methods.

package main

import (
	"encoding/json"
	"fmt"
)

type Stage int

var stages = []string{"mash", "run", "rest"}

func (s Stage) MarshalText() ([]byte, error) { return []byte(stages[s]), nil }
func (s *Stage) UnmarshalText(b []byte) error {
	for i, n := range stages {
		if n == string(b) {
			*s = Stage(i)
			return nil
		}
	}
	return fmt.Errorf("no stage %q", b)
}

type Pair struct{ a, b int }

func (p Pair) MarshalJSON() ([]byte, error) { return fmt.Appendf(nil, "[%d,%d]", p.a, p.b), nil }
func (p *Pair) UnmarshalJSON(b []byte) error {
	var xs [2]int
	if err := json.Unmarshal(b, &xs); err != nil {
		return err
	}
	p.a, p.b = xs[0], xs[1]
	return nil
}

type Log struct {
	Stage Stage         `json:"stage"`
	Span  Pair          `json:"span"`
	Hours map[Stage]int `json:"hours"`
	Ptr   *Pair         `json:"ptr"`
}

func main() {
	l := Log{1, Pair{3, 9}, map[Stage]int{2: 8, 0: 4}, &Pair{}}
	b, err := json.Marshal(l)
	fmt.Println(string(b), err)
	var m Log
	err = json.Unmarshal(b, &m)
	fmt.Println(m.Stage, m.Span, m.Hours, *m.Ptr, err)
	err = json.Unmarshal([]byte(`{"stage":"nap"}`), &m)
	fmt.Println(err)
	err = json.Unmarshal([]byte(`{"span":{}}`), &m)
	fmt.Println(err)
}
