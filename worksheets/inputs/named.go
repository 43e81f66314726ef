package inputs

import "swanneck/worksheets/entry"

// Named returns the input of a name; case and spacing do not matter. An unknown name is an error that names the nearest.
func (s *Set) Named(name string) (entry.Input, error) { return s.find(name) }
