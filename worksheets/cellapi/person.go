package cellapi

import "swanneck/kernel/display"

// Ask puts a question to the person at the notebook and returns the answer. Where nobody can answer, the cell stops.
func Ask(prompt string) string {
	a, err := display.Ask(prompt, false)
	if err != nil {
		panic(&Stop{"Ask: " + err.Error() + "; give the value in the cell"})
	}
	return a
}

// AskSecret is Ask for an answer that is not to be seen while it is typed.
func AskSecret(prompt string) string {
	a, err := display.Ask(prompt, true)
	if err != nil {
		panic(&Stop{"AskSecret: " + err.Error()})
	}
	return a
}

// Place is a spot in the output whose content can change.
type Place struct{ id string }

// Live shows a value at this point of the cell and returns its place, where Set shows another one.
func Live(name string, value any) Place {
	if name == "" {
		panic(&Stop{"Live: a place that can change needs a name"})
	}
	if err := display.Live(name, value, false); err != nil {
		panic(&Stop{err.Error()})
	}
	return Place{name}
}

// Set shows a value in the place of what was there.
func (p Place) Set(value any) {
	if p.id == "" {
		panic(&Stop{"Place.Set: this place was not made by Live"})
	}
	if err := display.Live(p.id, value, true); err != nil {
		panic(&Stop{err.Error()})
	}
}

// ClearOutput takes away what the cell has shown so far.
func ClearOutput() { display.Clear(false) }
