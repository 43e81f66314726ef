// Go specification, "Qualified identifiers" (package time): calendar arithmetic on fixed dates.

package main

import (
	"fmt"
	"time"
)

func main() {
	t := time.Date(2024, time.February, 28, 22, 30, 0, 0, time.UTC)
	fmt.Println(t, t.Weekday(), t.YearDay())
	fmt.Println(t.Add(26*time.Hour).Format("2006-01-02 15:04"), t.AddDate(0, 0, 2).Format(time.DateOnly), t.AddDate(1, 1, 0).Format(time.DateOnly))
	fmt.Println(time.Date(2023, 14, 35, 25, 61, 61, 0, time.UTC))
	u := time.Date(2026, 11, 25, 6, 0, 0, 5e8, time.UTC)
	fmt.Println(u.Sub(t), u.Sub(t).Hours()/24 > 1000, t.Before(u), t.After(u), t.Equal(u), t.Compare(u))
	y, w := u.ISOWeek()
	fmt.Println(y, w, u.Unix(), u.UnixMilli(), time.Unix(1e9, 0).UTC())
	fmt.Println(u.Truncate(time.Hour).Equal(u), u.Round(time.Second).Second(), u.Nanosecond())
	yy, m, d := u.Date()
	h, mi, s := u.Clock()
	fmt.Println(yy, m, d, h, mi, s, m == time.November, int(m))
	var zero time.Time
	fmt.Println(zero, zero.IsZero(), zero.Unix())
	zone := time.FixedZone("HUT", 5*3600+1800)
	z := u.In(zone)
	fmt.Println(z, z.Equal(u), z == u)
	name, off := z.Zone()
	fmt.Println(name, off)
}
