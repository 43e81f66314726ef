package compound

// Status says how a number came here. Its text is the word of the data files.
type Status string

// The words of the data files.
const (
	Seen      Status = "seen"      // read in print, or in a compilation that quotes print
	Memory    Status = "memory"    // recalled and not looked up
	Estimated Status = "estimated" // reckoned here from something else
	Fitted    Status = "fitted"    // fitted here to published measurements
	Isomer    Status = "isomer"    // measured on another isomer, or on a mixture of them
)

var statusWords = map[Status]string{
	Seen:      "published",
	Memory:    "from memory",
	Estimated: "estimated",
	Fitted:    "fitted here",
	Isomer:    "of another isomer",
}

// Words gives the status as it stands behind a number in a sentence: published, from memory, estimated, of another
// isomer.
func (s Status) Words() string {
	if w, ok := statusWords[s]; ok {
		return w
	}
	return "not known"
}

// Provenance says where a number comes from.
type Provenance struct {
	Status Status
	Source string // empty if the number is not known
	Note   string // what else there is to say; mostly empty
}

// Known reports whether there is a number at all.
func (p Provenance) Known() bool { return p.Source != "" }

// Sure reports whether the number is published for this very compound.
func (p Provenance) Sure() bool { return p.Status == Seen }

// String gives the status and the source in one line.
func (p Provenance) String() string {
	if !p.Known() {
		return "not known"
	}
	s := p.Status.Words()
	if p.Source != s {
		s += ": " + p.Source
	}
	if p.Note != "" {
		s += " (" + p.Note + ")"
	}
	return s
}
