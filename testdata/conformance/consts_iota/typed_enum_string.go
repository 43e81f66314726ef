// Go specification, "Iota": an enumeration with a String method, used as map key and array index.

package main

import (
	"fmt"
	"strconv"
)

type Stage int

const (
	Mash Stage = iota
	Ferment
	Strip
	Spirit
	Rest
	stages
)

var stageNames = [...]string{Mash: "mash", Ferment: "ferment", Strip: "strip", Spirit: "spirit", Rest: "rest"}

func (s Stage) String() string {
	if s < 0 || s >= stages {
		return "Stage(" + strconv.Itoa(int(s)) + ")"
	}
	return stageNames[s]
}

func main() {
	for s := Mash; s < stages; s++ {
		fmt.Print(s, " ")
	}
	fmt.Println(len(stageNames), stages, Stage(-1))
	hours := map[Stage]int{Spirit: 9, Mash: 4, Ferment: 96}
	fmt.Println(hours)
	var byStage [stages]float64
	byStage[Strip] = 6.5
	fmt.Println(byStage)
	fmt.Printf("%v %d %s %+v %#v %T\n", Strip, Strip, Strip, Strip, Strip, Strip)
	fmt.Println(Strip+1, Rest-Ferment == Strip+1)
}
