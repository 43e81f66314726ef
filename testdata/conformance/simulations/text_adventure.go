// Go specification, "Map types": rooms, exits and commands from a script.

package main

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

type room struct {
	desc  string
	exits map[string]string
	items []string
}

type game struct {
	rooms map[string]*room
	at    string
	bag   []string
}

func (g *game) do(line string) string {
	verb, arg, _ := strings.Cut(line, " ")
	r := g.rooms[g.at]
	switch verb {
	case "go":
		to, ok := r.exits[arg]
		if !ok {
			return "no way " + arg
		}
		g.at = to
		return g.rooms[to].desc
	case "take":
		if i := slices.Index(r.items, arg); i >= 0 {
			r.items = slices.Delete(r.items, i, i+1)
			g.bag = append(g.bag, arg)
			return "taken"
		}
		return "no " + arg + " here"
	case "look":
		return fmt.Sprint(r.desc, " ", r.items, " ", slices.Sorted(maps.Keys(r.exits)))
	}
	return fmt.Sprintf("what is %q?", verb)
}

func main() {
	g := &game{at: "yard", rooms: map[string]*room{
		"yard":  {desc: "a wet yard", exits: map[string]string{"in": "still", "down": "cave"}},
		"still": {"a warm room", map[string]string{"out": "yard"}, []string{"key", "glass"}},
		"cave":  {desc: "dark", exits: map[string]string{"up": "yard"}},
	}}
	for _, l := range []string{"look", "go in", "take key", "take key", "look", "go down", "go out", "go down", "dance"} {
		fmt.Println(">", l, "-", g.do(l))
	}
	fmt.Println(g.bag, g.at)
}
