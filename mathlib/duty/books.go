package duty

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// usualToleranceL is what the sum of rounded entries may be off, L of pure alcohol, unless Books says otherwise. Common
// practice, no source: half a unit of the last digit of a ledger kept to 0.01 L.
const usualToleranceL = 0.005

// Books is the ledger of a period.
type Books struct {
	From, To   Date // the first and the last day of the period
	Entries    []Entry
	ToleranceL float64 // differences up to it are not named, L of pure alcohol; 0.005 if 0
}

// Account is the reckoning of a lot or of the whole, in litres of pure alcohol at 20 °C.
type Account struct {
	OpeningL   float64 // L
	MadeL      float64 // L
	ReceivedL  float64 // L
	SentL      float64 // L
	SampleL    float64 // L
	DestroyedL float64 // L
	ClosingL   float64 // L; the expected stock if there is no closing entry
	LossL      float64 // opening + made + received - sent - samples - destroyed - closing, L; below 0 for a gain
}

// ExpectedL returns what should be there at the end, L of pure alcohol.
func (a Account) ExpectedL() float64 {
	return a.OpeningL + a.MadeL + a.ReceivedL - a.SentL - a.SampleL - a.DestroyedL
}

// LossPct returns the loss in per cent of what was there and came in, and 0 if that is nothing.
func (a Account) LossPct() float64 {
	base := a.OpeningL + a.MadeL + a.ReceivedL
	if base == 0 {
		return 0
	}
	return 100 * a.LossL / base
}

// LotAccount is the reckoning of a lot.
type LotAccount struct {
	Lot string
	Account
	Closed bool // there is a closing entry; without one the loss is not known and reckoned as 0
}

// Return is the return of a period.
type Return struct {
	From, To Date
	Lots     []LotAccount // by name
	Total    Account
	Findings []Finding // what does not add up, by lot and date; empty if all does
	Complete bool      // every lot has a closing entry
}

// MakeReturn adds up the ledger of a period: for each lot and in all, opening + made + received - sent - samples -
// destroyed - closing is the loss. What does not add up is named in the findings; the sums are reckoned all the same:
// entries outside the period are left out (an opening may be dated on the day before it, as the closing of the period
// before), a lot without an opening begins with nothing, one without a closing ends with what is expected, and of several
// closings the last day counts. Openings and closings of one day add up, as of a lot in two tanks. On a day what comes in
// is reckoned before what goes out.
//
// It fails for a period that is none, for no entries, and for an entry that says no day, kind, lot or amount, or an amount that is no
// amount (see PureLOf), with its line.
//
// Source: common practice of excise accounts, no source; each term by PureLOf.
func MakeReturn(b Books) (Return, error) {
	const fn = "duty.MakeReturn"
	if !b.From.IsSet() || !b.To.IsSet() || b.To.Before(b.From) {
		return Return{}, fmt.Errorf("%s: the period is from %v to %v; give two days, the first not after the second", fn, b.From, b.To)
	}
	if err := notBelow0(fn, "the tolerance", b.ToleranceL, "L"); err != nil {
		return Return{}, err
	}
	if len(b.Entries) == 0 {
		return Return{}, fmt.Errorf("%s: the ledger has no entries; a period in which nothing happened has an opening and a closing", fn)
	}
	tol := b.ToleranceL
	if tol == 0 {
		tol = usualToleranceL
	}
	postings, err := post(fn, b.Entries)
	if err != nil {
		return Return{}, err
	}
	r := Return{From: b.From, To: b.To, Complete: true}
	r.Findings = doubles(postings)
	inside := postings[:0:0]
	for _, p := range postings {
		if p.outside(b) {
			r.Findings = append(r.Findings, p.finding(OutsidePeriod, fmt.Sprintf("%s of %v is outside %v to %v and not counted", p.Kind, p.Date, b.From, b.To)))
			continue
		}
		inside = append(inside, p)
	}
	for _, lot := range lotsOf(inside) {
		a, findings := reckon(lot, b, tol)
		r.Lots = append(r.Lots, a)
		r.Findings = append(r.Findings, findings...)
		r.Total.add(a.Account)
		r.Complete = r.Complete && a.Closed
	}
	slices.SortStableFunc(r.Findings, func(x, y Finding) int {
		if c := strings.Compare(x.Lot, y.Lot); c != 0 {
			return c
		}
		return cmp.Compare(x.Date.day, y.Date.day)
	})
	return r, nil
}

func (a *Account) add(b Account) {
	a.OpeningL += b.OpeningL
	a.MadeL += b.MadeL
	a.ReceivedL += b.ReceivedL
	a.SentL += b.SentL
	a.SampleL += b.SampleL
	a.DestroyedL += b.DestroyedL
	a.ClosingL += b.ClosingL
	a.LossL += b.LossL
}

// posting is an entry with its litres of pure alcohol.
type posting struct {
	Entry
	pureL float64
}

// post reckons the entries.
func post(fn string, entries []Entry) ([]posting, error) {
	out := make([]posting, len(entries))
	for i, e := range entries {
		if e.Line == 0 {
			e.Line = i + 1
		}
		at := fmt.Sprintf("%s: line %d", fn, e.Line)
		if err := e.check(at); err != nil {
			return nil, err
		}
		pure, err := pureLOf(at, e)
		if err != nil {
			return nil, err
		}
		out[i] = posting{e, pure}
	}
	return out, nil
}

// outside reports whether the entry is not of the period.
func (p posting) outside(b Books) bool {
	from := b.From
	if p.Kind == Opening {
		from = from.previous()
	}
	return p.Date.Before(from) || b.To.Before(p.Date)
}

// lotsOf parts the entries by lot, by name.
func lotsOf(all []posting) [][]posting {
	byName := map[string][]posting{}
	var names []string
	for _, p := range all {
		if byName[p.Lot] == nil {
			names = append(names, p.Lot)
		}
		byName[p.Lot] = append(byName[p.Lot], p)
	}
	slices.Sort(names)
	var out [][]posting
	for _, n := range names {
		out = append(out, byName[n])
	}
	return out
}
