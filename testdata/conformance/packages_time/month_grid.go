// Go specification, "Qualified identifiers" (package time): a month printed as a calendar.

package main

import (
	"fmt"
	"strings"
	"time"
)

func grid(y int, m time.Month) string {
	var sb strings.Builder
	first := time.Date(y, m, 1, 12, 0, 0, 0, time.UTC)
	fmt.Fprintf(&sb, "%s %d\nMo Tu We Th Fr Sa Su\n", m, y)
	offset := (int(first.Weekday()) + 6) % 7
	sb.WriteString(strings.Repeat("   ", offset))
	for d := first; d.Month() == m; d = d.AddDate(0, 0, 1) {
		fmt.Fprintf(&sb, "%2d", d.Day())
		if d.Weekday() == time.Sunday {
			sb.WriteByte('\n')
		} else {
			sb.WriteByte(' ')
		}
	}
	return strings.TrimRight(sb.String(), " \n")
}

func daysIn(y int, m time.Month) int { return time.Date(y, m+1, 0, 0, 0, 0, 0, time.UTC).Day() }

func main() {
	fmt.Println(grid(2024, time.February))
	for m := time.January; m <= time.December; m++ {
		fmt.Print(daysIn(2023, m), " ")
	}
	fmt.Println()
	fridays := 0
	for m := time.January; m <= time.December; m++ {
		if time.Date(2026, m, 13, 0, 0, 0, 0, time.UTC).Weekday() == time.Friday {
			fridays++
		}
	}
	fmt.Println(fridays)
}
