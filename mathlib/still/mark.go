package still

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Mark is a place in a run: where it ends, where the reflux changes, where a cut is made. Make one with AtStrength,
// AtPotStrength, AtVolume, AtHead, UnderLimit, OverLimit, AtStart or AtEnd. The zero value is no place.
type Mark struct {
	kind     markKind
	strength alcoholometry.Strength
	volumeL  float64
	temp     quantity.Temperature
	name     string
	limit    quantity.Concentration
}

type markKind int

const (
	noMark markKind = iota
	startMark
	endMark
	strengthMark
	potMark
	volumeMark
	headMark
	underMark
	overMark
)

// AtStart is where a run begins.
func AtStart() Mark { return Mark{kind: startMark} }

// AtEnd is where a run ends.
func AtEnd() Mark { return Mark{kind: endMark} }

// AtStrength is where what runs falls to the strength s.
func AtStrength(s alcoholometry.Strength) Mark { return Mark{kind: strengthMark, strength: s} }

// AtPotStrength is where the pot falls to the strength s.
func AtPotStrength(s alcoholometry.Strength) Mark { return Mark{kind: potMark, strength: s} }

// AtVolume is where volumeL litres have been collected, as they measure at 20 °C in one vessel.
func AtVolume(volumeL float64) Mark { return Mark{kind: volumeMark, volumeL: volumeL} }

// AtHead is where the vapour at the head rises to the temperature t.
func AtHead(t quantity.Temperature) Mark { return Mark{kind: headMark, temp: t} }

// UnderLimit is where a compound in what runs falls under a limit, as esters do at the end of the heads.
func UnderLimit(name string, limit quantity.Concentration) Mark {
	return Mark{kind: underMark, name: name, limit: limit}
}

// OverLimit is where a compound in what runs rises over a limit, as furfural and acids do at the beginning of the tails.
func OverLimit(name string, limit quantity.Concentration) Mark {
	return Mark{kind: overMark, name: name, limit: limit}
}

// IsSet reports whether m is a place. It is false for the zero value only.
func (m Mark) IsSet() bool { return m.kind != noMark }

// String says where the mark is.
func (m Mark) String() string {
	switch m.kind {
	case startMark:
		return "the start"
	case endMark:
		return "the end"
	case strengthMark:
		return fmt.Sprintf("%v running", m.strength)
	case potMark:
		return fmt.Sprintf("%v in the pot", m.strength)
	case volumeMark:
		return quantity.Figure(m.volumeL) + " L collected"
	case headMark:
		return fmt.Sprintf("%v at the head", m.temp)
	case underMark:
		return fmt.Sprintf("%s under %v", m.name, m.limit)
	case overMark:
		return fmt.Sprintf("%s over %v", m.name, m.limit)
	}
	return "no mark"
}

// check returns an error unless the mark makes sense; names are the compounds carried along.
func (m *Mark) check(function string, names []string) error {
	switch m.kind {
	case strengthMark, potMark:
		return alcoholometry.CheckSet(function, "the strength of a mark", m.strength)
	case volumeMark:
		if !(m.volumeL > 0) {
			return inputf(function, "a mark is at %g L; it must be above 0 L", m.volumeL)
		}
	case underMark, overMark:
		if !m.limit.IsSet() {
			return inputf(function, "the limit for %s is not set; give one, such as MgL(35)", m.name)
		}
		name, _, err := carried(function, m.name, names)
		m.name = name
		return err
	case noMark:
		return inputf(function, "a mark is not set; give one, such as AtStrength(ABV(60))")
	}
	return nil
}
