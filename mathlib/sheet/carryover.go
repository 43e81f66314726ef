package sheet

import (
	"math"

	"swanneck/mathlib/botanical"
	"swanneck/mathlib/still"
)

// NamedCut is a cut of a run with the name it goes by in the house, such as "hearts".
type NamedCut struct {
	Name string
	Cut  still.Cut
}

// CarryOver returns the predicted aroma composition of the cuts of a run that was charged with c.Pot and carried c.Traces
// along as congeners. What comes late out of a plant (ReleasePerH) needs the power of the still's heater. Give the cuts in the
// order in which they run; what no cut holds counts as left in the pot.
func CarryOver(c HerbCharge, run still.Run, cuts ...NamedCut) MarkerCarryOver {
	const name = "CarryOver"
	late := false
	for _, l := range c.Loads {
		late = late || l.ReleasePerH.IsSet()
	}
	var named []botanical.Cut
	for _, x := range cuts {
		named = append(named, botanical.Cut{Name: x.Name, Spirit: x.Cut.Spirit})
	}
	var passages []botanical.Passage
	for _, f := range run.Congeners {
		p := botanical.Passage{Compound: f.Name, Notes: f.Notes}
		for _, x := range cuts {
			share := 0.0
			if f.ChargeG > 0 {
				share = x.Cut.Content(f.Name).MassG / f.ChargeG
			}
			p.Shares = append(p.Shares, share)
		}
		passages = append(passages, p)
	}
	if late {
		courses(run, cuts, passages)
	}
	v, err := botanical.Carry(c, named, passages)
	return must(name, v, err)
}

// courseMoments are those at which a run is looked at for what comes late: each is a two-hundredth of its steps.
const courseMoments = 200

// courses adds to each passage how much of its compound is left in the still as time goes on.
func courses(run still.Run, cuts []NamedCut, passages []botanical.Passage) {
	if len(run.Steps) == 0 || len(cuts) == 0 {
		return
	}
	for i := range passages {
		passages[i].Course = []botanical.Moment{{Left: 1}, {Min: run.Steps[0].Min, Left: 1}}
	}
	last := len(run.Steps) - 1
	for j := 1; j <= courseMoments; j++ {
		at := last * j / courseMoments
		if at == last*(j-1)/courseMoments {
			continue
		}
		step := run.Steps[at]
		to := still.AtEnd()
		if at < last {
			to = still.AtVolume(step.CollectedL)
		}
		over := run.Cut(still.AtStart(), to)
		into := 0
		for k, x := range cuts {
			if step.CollectedL >= x.Cut.FromL {
				into = k
			}
		}
		for i, f := range run.Congeners {
			course := passages[i].Course
			left := 0.0
			if f.ChargeG > 0 { // rounding must not bring anything back
				left = math.Min(math.Max(1-over.Content(f.Name).MassG/f.ChargeG, 0), course[len(course)-1].Left)
			}
			passages[i].Course = append(course, botanical.Moment{Min: step.Min, Left: left, Cut: into})
		}
	}
}
