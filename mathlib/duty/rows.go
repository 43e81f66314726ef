package duty

import "fmt"

func two(x float64) string {
	s := fmt.Sprintf("%.2f", x)
	if s == "-0.00" {
		return "0.00"
	}
	return s
}

// String gives the return in one line.
func (r Return) String() string {
	loss := fmt.Sprintf("loss %s L (%.2f %%)", two(r.Total.LossL), r.Total.LossPct())
	if !r.Complete {
		loss += ", not known of every lot"
	}
	return fmt.Sprintf("%v to %v: opening %s + made %s + received %s - sent %s - samples %s - destroyed %s - closing %s = %s; %d findings",
		r.From, r.To, two(r.Total.OpeningL), two(r.Total.MadeL), two(r.Total.ReceivedL), two(r.Total.SentL), two(r.Total.SampleL),
		two(r.Total.DestroyedL), two(r.Total.ClosingL), loss, len(r.Findings))
}

// Rows gives the return as a table: a row a lot, litres of pure alcohol, then the total, then what does not add up.
func (r Return) Rows() [][]string {
	rows := [][]string{{"L of pure alcohol", "opening", "made", "received", "sent", "samples", "destroyed", "closing", "loss"}}
	for _, l := range r.Lots {
		rows = append(rows, l.row(l.Lot, l.Closed))
	}
	rows = append(rows, r.Total.row("total", r.Complete))
	for _, f := range r.Findings {
		rows = append(rows, []string{f.String()})
	}
	return rows
}

func (a Account) row(name string, closed bool) []string {
	loss := two(a.LossL)
	if !closed {
		loss += " (no closing)"
	}
	return []string{name, two(a.OpeningL), two(a.MadeL), two(a.ReceivedL), two(a.SentL), two(a.SampleL), two(a.DestroyedL), two(a.ClosingL), loss}
}

// String gives the account of the lot in one line, in litres of pure alcohol.
func (l LotAccount) String() string { return "lot " + l.Lot + ": " + l.Account.String() }

// String gives the account in one line, in litres of pure alcohol.
func (a Account) String() string {
	return fmt.Sprintf("opening %s + made %s + received %s - sent %s - samples %s - destroyed %s - closing %s = loss %s L of pure alcohol",
		two(a.OpeningL), two(a.MadeL), two(a.ReceivedL), two(a.SentL), two(a.SampleL), two(a.DestroyedL), two(a.ClosingL), two(a.LossL))
}
