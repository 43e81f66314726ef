package botanical

import "math"

// checkCourse returns an error unless the moments go forward, what is left does not grow and every cut is one.
func checkCourse(fn, compound string, course []Moment, cuts int) error {
	if len(course) == 1 {
		return inputf(fn, "the course of %s has one moment; give at least two", compound)
	}
	for i, m := range course {
		if !(m.Min >= 0) || math.IsInf(m.Min, 0) || !(m.Left >= 0 && m.Left <= 1+1e-9) || m.Cut < 0 || m.Cut >= cuts {
			return inputf(fn, "moment %d of the course of %s is at %g minutes with %g left and goes into cut %d; minutes must be 0 or more, what is left from 0 to 1 and the cut from 0 to %d", i+1, compound, m.Min, m.Left, m.Cut, cuts-1)
		}
		if i > 0 && (m.Min < course[i-1].Min || m.Left > course[i-1].Left*(1+1e-9)) {
			return inputf(fn, "the course of %s goes back at moment %d: %g minutes after %g, %g left after %g", compound, i+1, m.Min, course[i-1].Min, m.Left, course[i-1].Left)
		}
	}
	return nil
}

// late carries an account through a run in which part of it comes out of the plant as it goes, db/dt = -k b. What is in the
// pot leaves it as the passage says, whenever it got there: traces do not mind each other. In each step what newly comes
// out flows in evenly.
//
// Source: first-order desorption (Milojević and others, Hem. Ind. 67 (2013) 843) into a pot of which the compound boils off.
func late(a Account, course []Moment, perH float64) Account {
	for j := range course[:len(course)-1] {
		m, next := course[j], course[j+1]
		out := -a.LateG * math.Expm1(-perH*(next.Min-m.Min)/60)
		stays := 0.0
		if m.Left > 0 {
			stays = math.Min(next.Left/m.Left, 1)
		}
		stayed := a.PotG*stays + out*meanStay(stays)
		a.CutsG[m.Cut] += a.PotG + out - stayed
		a.LateG -= out
		a.PotG = stayed
	}
	a.PlantG += a.LateG
	a.LateG = 0
	return a
}

// meanStay returns which share is still there at the end of a step of something that flows in evenly, where of what was
// there from the start the share stays is.
func meanStay(stays float64) float64 {
	switch {
	case stays <= 0:
		return 0
	case stays > 1-1e-8:
		return (1 + stays) / 2
	}
	return (stays - 1) / math.Log(stays)
}
