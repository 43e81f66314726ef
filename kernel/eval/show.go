package eval

import "fmt"

// Sprint is fmt.Sprint for values among which there may be boxes, at any depth.
func Sprint(a ...any) string { return sprint(a) }

// Sprintf is fmt.Sprintf for values among which there may be boxes, at any depth.
func Sprintf(format string, a ...any) string { return sprintf(format, a) }

// AsError returns a value as an error if it is one for the cells: compiled errors, and boxes whose type has a method
// Error.
func AsError(v any) (error, bool) {
	if b, ok := Unbox(v); ok {
		if b.givesString("Error") {
			return errorAdapter{b}, true
		}
		return nil, false
	}
	e, ok := v.(error)
	return e, ok
}

// AsStringer returns a value as a fmt.Stringer if it is one for the cells.
func AsStringer(v any) (fmt.Stringer, bool) {
	if b, ok := Unbox(v); ok {
		if b.givesString("String") {
			return stringerBox{b}, true
		}
		return nil, false
	}
	s, ok := v.(fmt.Stringer)
	return s, ok
}

type stringerBox struct{ Box }

// String implements fmt.Stringer.
func (s stringerBox) String() string {
	t, _ := s.callString("String")
	return t
}

// TypeName names the dynamic type of an interface value as %T does; nil is "<nil>".
func TypeName(v any) string {
	if v == nil {
		return "<nil>"
	}
	return dynName(v)
}
