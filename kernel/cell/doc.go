// Package cell turns the text of a worksheet cell into checked Go, or refuses it.
//
// A cell is split into items (split.go), arranged into chunks (arrange.go), parsed and type-checked by go/types
// against what earlier cells left alive (check.go), and searched for dropped errors (dropped.go). What comes out is a
// tree with types: the package knows Go and knows no interpreter. Refusals carry the cell's own line and column and,
// where a distiller is likely to trip, a hint (hints.go).
//
// # What a cell is
//
// A cell is Go at the level of a file and of a function body at once. Imports, types, constants, functions and methods
// may stand anywhere in it, in any order, as in a file. Everything else is a statement of one function body, in order.
// The variables that this body declares at its top level belong to the session: later cells see them. A later
// declaration of the same name hides the earlier one and leaves alone whatever already refers to it, as an inner scope
// does. If the cell ends in an expression, its value is shown.
package cell
