// Go specification, "Qualified identifiers" (package time): layouts and parse errors.

package main

import (
	"encoding/json"
	"fmt"
	"time"
)

func main() {
	t := time.Date(2025, 3, 4, 15, 6, 7, 80900000, time.UTC)
	for _, l := range []string{time.RFC3339, time.RFC3339Nano, time.Kitchen, time.RFC1123, time.ANSIC, "Mon 2 Jan 06, 3PM", "02.01.2006 15:04:05.000", "Jan _2", "2006-002", "January"} {
		fmt.Println(t.Format(l))
	}
	for _, p := range [][2]string{{time.DateOnly, "2024-02-29"}, {time.DateOnly, "2023-02-29"}, {"2.1.2006", "7.12.1999"}, {time.RFC3339, "2020-01-02T03:04:05+02:00"}, {"15:04", "25:00"}, {time.DateOnly, "soon"}, {"Jan 2", "Mar 9 x"}} {
		v, err := time.Parse(p[0], p[1])
		if err != nil {
			fmt.Println("error:", err)
			continue
		}
		fmt.Println(v.UTC())
	}
	fmt.Println(time.March, time.Saturday, time.Month(13), time.Weekday(8))
	fmt.Printf("%s|%v|%d|%02d\n", t.Month(), t.Weekday(), t.Month(), t.Day())
	b, err := json.Marshal(struct{ At time.Time }{t})
	fmt.Println(string(b), err)
}
