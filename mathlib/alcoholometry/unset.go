package alcoholometry

import "fmt"

// UnsetError says that a strength was needed and the zero value of Strength was given: most often a field that
// nobody filled in.
type UnsetError struct {
	Func  string // the function, such as "alcoholometry.DensityKgM3"
	Param string // what is unset, such as "the strength" or "spirit 2"
}

// Error names the function, what is unset and how to set it, in one line.
func (e *UnsetError) Error() string {
	return fmt.Sprintf("%s: %s is not set; give one, such as ABV(43), or Water for no alcohol", e.Func, e.Param)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *UnsetError) StopsCell() {}

// CheckSet returns an *UnsetError with the names given if s is unset, and nil otherwise.
func CheckSet(function, param string, s Strength) error {
	if s.set {
		return nil
	}
	return &UnsetError{Func: function, Param: param}
}
