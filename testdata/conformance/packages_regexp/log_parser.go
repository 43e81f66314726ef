// Go specification, "Qualified identifiers" (package regexp): a log parsed into records and counted.

package main

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

var line = regexp.MustCompile(`^(\d\d:\d\d) \[(INFO|WARN|ERROR)\] (\w+)(?:=(-?[\d.]+))?(?: (.*))?$`)

type record struct {
	at, level, key string
	val            float64
	msg            string
}

func parse(s string) (record, bool) {
	m := line.FindStringSubmatch(s)
	if m == nil {
		return record{}, false
	}
	v := 0.0
	if m[4] != "" {
		var err error
		if v, err = strconv.ParseFloat(m[4], 64); err != nil {
			return record{}, false
		}
	}
	return record{m[1], m[2], m[3], v, m[5]}, true
}

func main() {
	log := `08:01 [INFO] temp=78.2 rising
08:07 [WARN] flow=-0.5
08:09 [ERROR] pump stopped, call Ida
nonsense
08:12 [INFO] temp=1.2.3 bad number
08:15 [DEBUG] x=1`
	levels := map[string]int{}
	for i, l := range strings.Split(log, "\n") {
		r, ok := parse(l)
		if !ok {
			fmt.Println(i+1, "skipped")
			continue
		}
		levels[r.level]++
		fmt.Printf("%d %+v\n", i+1, r)
	}
	fmt.Println(levels)
}
