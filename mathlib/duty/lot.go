package duty

import (
	"cmp"
	"fmt"
	"slices"
)

// reckon adds up the entries of one lot.
func reckon(entries []posting, b Books, tol float64) (LotAccount, []Finding) {
	a := LotAccount{Lot: entries[0].Lot}
	var findings []Finding
	openings, moves, closings := byKind(entries)
	findings = append(findings, a.open(openings, moves, b)...)
	findings = append(findings, a.move(moves, tol)...)
	findings = append(findings, a.close(closings, moves, b, tol)...)
	return a, findings
}

// byKind parts the entries of a lot and puts the movements in the order in which they are reckoned: by day, what comes
// in before what goes out.
func byKind(entries []posting) (openings, moves, closings []posting) {
	for _, p := range entries {
		switch p.Kind {
		case Opening:
			openings = append(openings, p)
		case Closing:
			closings = append(closings, p)
		default:
			moves = append(moves, p)
		}
	}
	slices.SortStableFunc(moves, func(x, y posting) int {
		if c := cmp.Compare(x.Date.day, y.Date.day); c != 0 {
			return c
		}
		return cmp.Compare(fromTo(x.Kind), fromTo(y.Kind))
	})
	return openings, moves, closings
}

func fromTo(k Kind) int {
	if k.in() {
		return 0
	}
	return 1
}

func (a *LotAccount) open(openings, moves []posting, b Books) []Finding {
	var out []Finding
	for _, p := range openings {
		a.OpeningL += p.pureL
		if b.From.Before(p.Date) {
			out = append(out, p.finding(LateOpening, fmt.Sprintf("the opening is of %v and the period begins on %v", p.Date, b.From)))
		}
	}
	if len(openings) > 0 || len(moves) > 0 && moves[0].Kind.in() {
		return out // a lot that begins with what is made or received needs no opening
	}
	text := "there is no opening, and nothing made or received; reckoned as 0 L"
	first := Finding{Kind: MissingOpening, Lot: a.Lot, Date: b.From, Text: text}
	if len(moves) > 0 {
		first.Text = fmt.Sprintf("there is no opening, and the first entry, line %d, takes out; reckoned as 0 L", moves[0].Line)
	}
	return append(out, first)
}

func (a *LotAccount) move(moves []posting, tol float64) []Finding {
	var out []Finding
	stock := a.OpeningL
	for _, p := range moves {
		switch p.Kind {
		case Made:
			a.MadeL += p.pureL
		case Received:
			a.ReceivedL += p.pureL
		case Sent:
			a.SentL += p.pureL
		case Sample:
			a.SampleL += p.pureL
		case Destroyed:
			a.DestroyedL += p.pureL
		}
		if p.Kind.in() {
			stock += p.pureL
			continue
		}
		there := stock
		stock -= p.pureL
		if stock >= -tol || p.pureL <= tol {
			continue
		}
		kind := NegativeStock
		if p.Kind == Sent {
			kind = SentMoreThanThere
		}
		text := fmt.Sprintf("%s %.2f L on %v with %.2f L there", p.Kind, p.pureL, p.Date, there)
		if there < 0 {
			text = fmt.Sprintf("%s %.2f L on %v with nothing there (%.2f L short before)", p.Kind, p.pureL, p.Date, -there)
		}
		f := p.finding(kind, text)
		f.AmountL = min(-stock, p.pureL)
		out = append(out, f)
	}
	return out
}

func (a *LotAccount) close(closings, moves []posting, b Books, tol float64) []Finding {
	expected := a.ExpectedL()
	if len(closings) == 0 {
		a.ClosingL = expected
		return []Finding{{Kind: MissingClosing, Lot: a.Lot, Date: b.To, Text: fmt.Sprintf("there is no closing; reckoned as the expected %.2f L, so the loss is not known", expected)}}
	}
	a.Closed = true
	var out []Finding
	last := slices.MaxFunc(closings, func(x, y posting) int { return cmp.Compare(x.Date.day, y.Date.day) })
	for _, p := range closings {
		if p.Date != last.Date {
			out = append(out, p.finding(EarlierClosing, fmt.Sprintf("the closing of %v is followed by one of %v and not counted", p.Date, last.Date)))
			continue
		}
		a.ClosingL += p.pureL
	}
	for _, p := range moves {
		if last.Date.Before(p.Date) {
			out = append(out, p.finding(AfterClosing, fmt.Sprintf("%s on %v, after the closing of %v", p.Kind, p.Date, last.Date)))
		}
	}
	a.LossL = expected - a.ClosingL
	if a.LossL < -tol {
		f := last.finding(ClosingAboveWhatWas, fmt.Sprintf("the closing is %.2f L and %.2f L were expected", a.ClosingL, expected))
		f.AmountL = -a.LossL
		out = append(out, f)
	}
	return out
}
