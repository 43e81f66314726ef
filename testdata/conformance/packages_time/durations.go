// Go specification, "Qualified identifiers" (package time): durations: arithmetic, printing, parsing, rounding.

package main

import (
	"fmt"
	"math"
	"time"
)

type Shift struct {
	name string
	d    time.Duration
}

func main() {
	d := 90*time.Minute + 30*time.Second + 250*time.Millisecond
	fmt.Println(d, d.Hours(), d.Minutes(), d.Seconds(), d.Milliseconds())
	fmt.Println(d.Round(time.Minute), d.Truncate(time.Minute), d.Round(time.Hour), (-d).Abs())
	fmt.Println(time.Duration(0), time.Duration(1), time.Duration(1500), 2*time.Microsecond, 1e9*time.Nanosecond)
	for _, s := range []string{"1h15m30.918s", "-1.5h", "300ms", "1us", "3 h", "", "5"} {
		p, err := time.ParseDuration(s)
		fmt.Println(p, err)
	}
	shifts := []Shift{{"strip", 5 * time.Hour}, {"spirit", 9*time.Hour + 20*time.Minute}}
	var total time.Duration
	for _, s := range shifts {
		total += s.d
	}
	fmt.Println(shifts, total, total/time.Duration(len(shifts)), int(total/time.Hour), total%time.Hour)
	n := 3
	fmt.Println(time.Duration(n)*time.Second, time.Duration(2.5*float64(time.Second)), time.Duration(math.MaxInt64))
	fmt.Printf("%v %d %T %s %.1f\n", d, d, d, d, d.Minutes())
}
