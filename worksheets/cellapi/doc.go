// Package cellapi is what a cell may ask of its worksheet. Its exported names are predeclared in cells, as those of
// mathlib/sheet are. In a plain Go program the same calls print their text.
package cellapi
