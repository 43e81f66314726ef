package duty

import "fmt"

// FindingKind says what does not add up.
type FindingKind string

// What may not add up.
const (
	OutsidePeriod       FindingKind = "outside the period"
	DoubleEntry         FindingKind = "double entry"
	MissingOpening      FindingKind = "missing opening"
	LateOpening         FindingKind = "late opening"
	MissingClosing      FindingKind = "missing closing"
	EarlierClosing      FindingKind = "earlier closing"
	AfterClosing        FindingKind = "after the closing"
	SentMoreThanThere   FindingKind = "sent more than there was"
	NegativeStock       FindingKind = "negative stock"
	ClosingAboveWhatWas FindingKind = "closing above expected"
)

// Finding is something that does not add up.
type Finding struct {
	Kind    FindingKind
	Lot     string
	Date    Date    // of the entry, or the last day of the period
	Line    int     // of the ledger; 0 if no single line is to blame
	AmountL float64 // by how much, L of pure alcohol; 0 if it is not an amount
	Text    string  // what is wrong, in words
}

// String gives the finding in one line.
func (f Finding) String() string {
	line := ""
	if f.Line > 0 {
		line = fmt.Sprintf(", line %d", f.Line)
	}
	return fmt.Sprintf("lot %s%s: %s: %s", f.Lot, line, f.Kind, f.Text)
}

// finding blames an entry.
func (p posting) finding(kind FindingKind, text string) Finding {
	return Finding{Kind: kind, Lot: p.Lot, Date: p.Date, Line: p.Line, Text: text}
}

// doubles names entries that say the same as an earlier one. Both are counted.
func doubles(all []posting) []Finding {
	first := map[Entry]int{}
	var out []Finding
	for _, p := range all {
		key := p.Entry
		key.Line = 0
		if line, seen := first[key]; seen {
			f := p.finding(DoubleEntry, fmt.Sprintf("%s of %.2f L on %v stands in line %d too; both are counted", p.Kind, p.pureL, p.Date, line))
			f.AmountL = p.pureL
			out = append(out, f)
			continue
		}
		first[key] = p.Line
	}
	return out
}
