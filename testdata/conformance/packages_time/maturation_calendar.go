// Go specification, "Qualified identifiers" (package time): a cask calendar with ages and due dates.

package main

import (
	"fmt"
	"time"
)

type cask struct {
	id     string
	filled time.Time
	months int
}

func date(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 0, 0, 0, 0, time.UTC) }

func age(from, to time.Time) (years, months, days int) {
	years, months = to.Year()-from.Year(), int(to.Month()-from.Month())
	days = to.Day() - from.Day()
	if days < 0 {
		months--
		days += date(to.Year(), to.Month(), 0).Day()
	}
	if months < 0 {
		years--
		months += 12
	}
	return
}

func easter(y int) time.Time {
	a, b, c := y%19, y/100, y%100
	d, e := b/4, b%4
	g := (8*b + 13) / 25
	h := (19*a + b - d - g + 15) % 30
	i, k := c/4, c%4
	l := (32 + 2*e + 2*i - h - k) % 7
	m := (a + 11*h + 22*l) / 451
	n := h + l - 7*m + 114
	return date(y, time.Month(n/31), n%31+1)
}

func main() {
	today := date(2026, 3, 1)
	for _, c := range []cask{{"A", date(2023, 3, 1), 36}, {"B", date(2024, 1, 20), 24}, {"C", date(2025, 12, 15), 36}} {
		due := c.filled.AddDate(0, c.months, 0)
		y, m, d := age(c.filled, today)
		fmt.Printf("%s filled %s, %dy %dm %dd, due %s (%s) ready %t\n", c.id, c.filled.Format("2 Jan 2006"), y, m, d, due.Format(time.DateOnly), due.Weekday(), !due.After(today))
	}
	for y := 2024; y < 2028; y++ {
		fmt.Print(easter(y).Format("2 Jan "), easter(y).Weekday() == time.Sunday, "; ")
	}
	fmt.Println()
}
