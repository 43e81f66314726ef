// Package entry is what a worksheet asks a person for: an input of some kind, with its unit, its range and what usually
// stands there; and the reading of what the person writes instead. A cell (worksheets/cellapi) and whoever runs the
// worksheet read it by the same code.
package entry
