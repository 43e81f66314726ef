package duty_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/duty"
)

func day(text string) duty.Date { return the(duty.ParseDate(text)) }

func entry(date string, kind duty.Kind, lot string, pureL float64) duty.Entry {
	return duty.Entry{Date: day(date), Kind: kind, Lot: lot, PureL: pureL}
}

// march is a ledger without fault.
func march() duty.Books {
	return duty.Books{From: day("2026-03-01"), To: day("2026-03-31"), Entries: []duty.Entry{
		entry("2026-03-01", duty.Opening, "A", 250),
		entry("2026-03-05", duty.Made, "B", 120),
		entry("2026-03-09", duty.Received, "A", 30),
		entry("2026-03-20", duty.Sent, "A", 180),
		entry("2026-03-22", duty.Sample, "B", 0.5),
		entry("2026-03-25", duty.Destroyed, "B", 2),
		entry("2026-03-31", duty.Closing, "A", 99),
		entry("2026-03-31", duty.Closing, "B", 117),
	}}
}

func TestAReturnByHand(t *testing.T) {
	r := the(duty.MakeReturn(march()))
	// A: 250 + 30 - 180 - 99 = 1. B: 120 - 0.5 - 2 - 117 = 0.5.
	want := []duty.Account{
		{OpeningL: 250, ReceivedL: 30, SentL: 180, ClosingL: 99, LossL: 1},
		{MadeL: 120, SampleL: 0.5, DestroyedL: 2, ClosingL: 117, LossL: 0.5},
	}
	for i, l := range r.Lots {
		if l.Account != want[i] || !l.Closed {
			t.Errorf("%v; by hand %v", l, want[i])
		}
	}
	if total := (duty.Account{OpeningL: 250, MadeL: 120, ReceivedL: 30, SentL: 180, SampleL: 0.5, DestroyedL: 2, ClosingL: 216, LossL: 1.5}); r.Total != total || len(r.Lots) != 2 {
		t.Errorf("%v; by hand %v", r.Total, total)
	}
	if len(r.Findings) != 0 || !r.Complete {
		t.Errorf("complete %v, findings %v", r.Complete, r.Findings)
	}
	if got := r.Total.LossPct(); math.Abs(got-100*1.5/400) > 1e-12 {
		t.Errorf("loss %g %%; by hand 0.375", got)
	}
	if got := (duty.Account{}).LossPct(); got != 0 {
		t.Errorf("loss of nothing: %g %%", got)
	}
}

// Each fault by itself, and nothing else named with it.
func TestWhatDoesNotAddUpIsNamed(t *testing.T) {
	at := func(i int, change func(*duty.Entry)) func(*duty.Books) {
		return func(b *duty.Books) { change(&b.Entries[i]) }
	}
	add := func(e duty.Entry) func(*duty.Books) {
		return func(b *duty.Books) { b.Entries = append(b.Entries, e) }
	}
	drop := func(i int) func(*duty.Books) {
		return func(b *duty.Books) { b.Entries = slices.Delete(b.Entries, i, i+1) }
	}
	for name, c := range map[string]struct {
		change func(*duty.Books)
		want   []duty.FindingKind
		amount float64
	}{
		"nothing":                   {func(*duty.Books) {}, nil, 0},
		"opening on the day before": {at(0, func(e *duty.Entry) { e.Date = day("2026-02-28") }), nil, 0},
		"two tanks": {func(b *duty.Books) {
			b.Entries[0].PureL = 100
			b.Entries = append(b.Entries, entry("2026-03-01", duty.Opening, "A", 150))
		}, nil, 0},
		"same day, out before in": {func(b *duty.Books) {
			b.Entries = append(b.Entries, entry("2026-03-20", duty.Sent, "A", 200), entry("2026-03-20", duty.Made, "A", 200))
		}, nil, 0},
		"rounding":             {at(7, func(e *duty.Entry) { e.PureL = 117.504 }), nil, 0},
		"an entry of April":    {add(entry("2026-04-01", duty.Sent, "A", 5)), []duty.FindingKind{duty.OutsidePeriod}, 0},
		"an entry of February": {add(entry("2026-02-28", duty.Sent, "A", 5)), []duty.FindingKind{duty.OutsidePeriod}, 0},
		"a double entry":       {add(entry("2026-03-22", duty.Sample, "B", 0.5)), []duty.FindingKind{duty.DoubleEntry}, 0.5},
		"no opening":           {at(0, func(e *duty.Entry) { e.Kind, e.Date = duty.Made, day("2026-03-02") }), nil, 0},
		"no opening and a sale": {func(b *duty.Books) {
			b.Entries = append(b.Entries[:0:0], entry("2026-03-20", duty.Sent, "A", 180), entry("2026-03-31", duty.Closing, "A", 0))
		}, []duty.FindingKind{duty.MissingOpening, duty.SentMoreThanThere, duty.ClosingAboveWhatWas}, 180},
		"only a closing":    {add(entry("2026-03-31", duty.Closing, "C", 3)), []duty.FindingKind{duty.MissingOpening, duty.ClosingAboveWhatWas}, 3},
		"a late opening":    {at(0, func(e *duty.Entry) { e.Date = day("2026-03-03") }), []duty.FindingKind{duty.LateOpening}, 0},
		"no closing":        {drop(7), []duty.FindingKind{duty.MissingClosing}, 0},
		"two closings":      {add(entry("2026-03-15", duty.Closing, "A", 280)), []duty.FindingKind{duty.EarlierClosing}, 0},
		"after the closing": {at(7, func(e *duty.Entry) { e.Date = day("2026-03-24") }), []duty.FindingKind{duty.AfterClosing}, 0},
		"sent more than there was": {func(b *duty.Books) {
			b.Entries[3].PureL = 290 // 280 are there
			b.Entries = append(b.Entries, entry("2026-03-21", duty.Made, "A", 110))
		}, []duty.FindingKind{duty.SentMoreThanThere}, 10},
		"destroyed more than there was": {func(b *duty.Books) {
			b.Entries[5].PureL = 122 // 119.5 are there
			b.Entries = append(b.Entries, entry("2026-03-28", duty.Made, "B", 120))
		}, []duty.FindingKind{duty.NegativeStock}, 2.5},
		"more than expected": {at(6, func(e *duty.Entry) { e.PureL = 101 }), []duty.FindingKind{duty.ClosingAboveWhatWas}, 1},
	} {
		b := march()
		c.change(&b)
		r, err := duty.MakeReturn(b)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		var kinds []duty.FindingKind
		amount := 0.0
		for _, f := range r.Findings {
			kinds = append(kinds, f.Kind)
			amount = max(amount, f.AmountL)
			if f.Lot == "" || f.Text == "" || !f.Date.IsSet() {
				t.Errorf("%s: %+v says too little", name, f)
			}
		}
		slices.Sort(kinds)
		slices.Sort(c.want)
		if !slices.Equal(kinds, c.want) || math.Abs(amount-c.amount) > 1e-9 {
			t.Errorf("%s: %v, largest amount %g; want %v, %g", name, r.Findings, amount, c.want, c.amount)
		}
		if r.Complete != (name != "no closing") {
			t.Errorf("%s: complete %v", name, r.Complete)
		}
	}
}

func TestFindingsNameTheLine(t *testing.T) {
	b := march()
	b.Entries[3].PureL = 300
	b.Entries[3].Line = 17
	r := the(duty.MakeReturn(b))
	if len(r.Findings) != 2 || r.Findings[0].Line != 17 || !strings.Contains(r.Findings[0].String(), "line 17") {
		t.Errorf("%v; want line 17", r.Findings)
	}
}

// Whatever the ledger: the terms add up to the loss, for each lot and in all, and the order of the lines plays no part in
// the sums and in whether something is named.
func TestReturnsBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := duty.Books{From: day("2026-03-01"), To: day("2026-03-31")}
		counted := 0.0
		for i := range rapid.IntRange(1, 40).Draw(t, "entries") {
			d := rapid.IntRange(-3, 34).Draw(t, "day")
			e := duty.Entry{
				Date: day("2026-03-01"),
				Kind: rapid.SampledFrom(duty.Kinds()).Draw(t, "kind"),
				Lot:  rapid.SampledFrom([]string{"A", "B", "C"}).Draw(t, "lot"),
				Line: i + 1,
			}
			e.Date = day([]string{"2026-02-26", "2026-02-27", "2026-02-28"}[max(0, min(2, d+3))])
			if d >= 0 && d < 31 {
				e.Date = day(fmt.Sprintf("2026-03-%02d", d+1))
			} else if d >= 31 {
				e.Date = day(fmt.Sprintf("2026-04-%02d", d-30))
			}
			switch rapid.IntRange(0, 2).Draw(t, "way") {
			case 0:
				e.PureL = rapid.Float64Range(0.01, 500).Draw(t, "pure")
			case 1:
				e.VolumeL, e.Strength, e.Temp = rapid.Float64Range(0.01, 900).Draw(t, "litres"), abv(rapid.Float64Range(5, 96).Draw(t, "strength")), celsius(rapid.Float64Range(0, 35).Draw(t, "t"))
			case 2:
				e.WeightKg, e.Strength = rapid.Float64Range(0.01, 900).Draw(t, "kg"), abv(rapid.Float64Range(5, 96).Draw(t, "strength"))
			}
			if d >= 0 && d < 31 && (e.Kind == duty.Made || e.Kind == duty.Received) {
				counted += the(duty.PureLOf(e))
			}
			b.Entries = append(b.Entries, e)
		}
		r := the(duty.MakeReturn(b))
		var loss, in float64
		for _, l := range r.Lots {
			a := l.Account
			if sum := a.OpeningL + a.MadeL + a.ReceivedL - a.SentL - a.SampleL - a.DestroyedL - a.ClosingL; math.Abs(sum-a.LossL) > 1e-9 {
				t.Fatalf("%v: the terms make %.12g", l, sum)
			}
			loss += a.LossL
			in += a.MadeL + a.ReceivedL
		}
		if math.Abs(loss-r.Total.LossL) > 1e-9 || math.Abs(r.Total.ExpectedL()-r.Total.ClosingL-r.Total.LossL) > 1e-9 {
			t.Fatalf("the lots lose %.12g and the total is %v", loss, r.Total)
		}
		if math.Abs(in-counted) > 1e-9*(1+counted) {
			t.Fatalf("made and received are %.12g; the ledger has %.12g in the period", in, counted)
		}
		turned := b
		turned.Entries = slices.Clone(b.Entries)
		slices.Reverse(turned.Entries)
		other := the(duty.MakeReturn(turned))
		if math.Abs(other.Total.LossL-r.Total.LossL) > 1e-9 || (len(other.Findings) == 0) != (len(r.Findings) == 0) {
			t.Fatalf("turned round: %v and %v; before: %v and %v", other, other.Findings, r, r.Findings)
		}
	})
}

// An amount is the same in all three ways, and as alcoholometry has it.
func TestThreeWaysOfAnAmount(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := alcoholometry.Spirit{VolumeL: rapid.Float64Range(0.1, 5000).Draw(t, "L"), Strength: abv(rapid.Float64Range(1, 96).Draw(t, "strength")), Temp: celsius(rapid.Float64Range(0, 40).Draw(t, "t"))}
		byVolume := the(duty.PureLOf(duty.Entry{VolumeL: s.VolumeL, Strength: s.Strength, Temp: s.Temp}))
		kg := the(alcoholometry.BalanceFromMassKg(s.MassKg(), s.Strength, s.Temp))
		byWeight := the(duty.PureLOf(duty.Entry{WeightKg: kg, Strength: s.Strength, Temp: s.Temp}))
		if math.Abs(byVolume-s.PureL()) > 1e-12*byVolume || math.Abs(byWeight-byVolume) > 1e-11*byVolume {
			t.Fatalf("%v holds %.12g L: by volume %.12g, by weight %.12g", s, s.PureL(), byVolume, byWeight)
		}
	})
}

func TestReturnRefuses(t *testing.T) {
	for name, change := range map[string]func(*duty.Books){
		"no period":          func(b *duty.Books) { b.From = duty.Date{} },
		"period backwards":   func(b *duty.Books) { b.To = day("2026-02-01") },
		"no entries":         func(b *duty.Books) { b.Entries = nil },
		"negative tolerance": func(b *duty.Books) { b.ToleranceL = -1 },
		"no date":            func(b *duty.Books) { b.Entries[1].Date = duty.Date{} },
		"no kind":            func(b *duty.Books) { b.Entries[1].Kind = "" },
		"other kind":         func(b *duty.Books) { b.Entries[1].Kind = "sold" },
		"no lot":             func(b *duty.Books) { b.Entries[1].Lot = "" },
		"no amount":          func(b *duty.Books) { b.Entries[1].PureL = 0 },
		"negative":           func(b *duty.Books) { b.Entries[1].PureL = -1 },
		"two amounts":        func(b *duty.Books) { b.Entries[1].VolumeL = 3 },
		"no strength":        func(b *duty.Books) { b.Entries[1].PureL, b.Entries[1].VolumeL = 0, 3 },
		"weight, no strength": func(b *duty.Books) {
			b.Entries[1].PureL, b.Entries[1].WeightKg = 0, 3
		},
		"hot": func(b *duty.Books) {
			b.Entries[1].PureL, b.Entries[1].VolumeL, b.Entries[1].Strength, b.Entries[1].Temp = 0, 3, abv(40), celsius(80)
		},
	} {
		b := march()
		change(&b)
		r, err := duty.MakeReturn(b)
		if err == nil {
			t.Errorf("%s: %v and no error", name, r)
			continue
		}
		if strings.Contains(err.Error(), "\n") || !strings.HasPrefix(err.Error(), "duty.MakeReturn: ") {
			t.Errorf("%s: %v", name, err)
		}
		if name != "no period" && name != "period backwards" && name != "no entries" && name != "negative tolerance" && !strings.Contains(err.Error(), "line 2") {
			t.Errorf("%s: %v; want the line", name, err)
		}
	}
}
