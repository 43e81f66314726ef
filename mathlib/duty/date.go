package duty

import (
	"fmt"
	"time"
)

// Date is a day of the calendar. Make one with ParseDate; the zero value is no day. Two dates compare with ==.
type Date struct {
	day int64 // days since 1 January 1970
	set bool
}

const layout = "2006-01-02"

// ParseDate reads a day written as year, month and day, "2026-03-31" (ISO 8601). Other orders are refused, because
// 03/04 is two days of the year.
//
// Source: ISO 8601-1:2019, 5.2.2.1, extended format.
func ParseDate(text string) (Date, error) {
	t, err := time.Parse(layout, text)
	if err != nil {
		return Date{}, fmt.Errorf("duty.ParseDate: %q is no day; write it as year-month-day, such as 2026-03-31", text)
	}
	return Date{day: t.Unix() / 86400, set: true}, nil
}

// IsSet reports whether d is a day. It is false for the zero value only.
func (d Date) IsSet() bool { return d.set }

// Before reports whether d is an earlier day than e.
func (d Date) Before(e Date) bool { return d.day < e.day }

// String gives the day as "2026-03-31", and "no date" if there is none.
func (d Date) String() string {
	if !d.set {
		return "no date"
	}
	return time.Unix(d.day*86400, 0).UTC().Format(layout)
}

// previous returns the day before.
func (d Date) previous() Date { return Date{d.day - 1, d.set} }
