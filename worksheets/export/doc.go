// Package export writes a worksheet as a Go program that prints what the worksheet shows. It is a way out (the numbers
// do not depend on this program) and a proof: what cells say is Go, or it would not compile.
//
// A variable of the session becomes a package variable, a cell the function cellN, called in order by main. Names that
// several cells give anew get a number. Names of the prelude are qualified.
//
// The clock and the seed of a run are not exported: a program that asks for the time gets the machine's, and its chance is
// its own. Nor does a program stop at an error that a last expression shows.
package export
