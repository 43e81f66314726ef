// Package symbols is what a cell may import: for each package of a whitelist its values (as the evaluator calls
// them), its types (as the checker sees them) and its documentation (as completion and hover show it).
//
// Everything but this file's neighbours without "_gen" in their name is written by `go generate`, with the toolchain
// that go.mod pins and without file positions, so that the same sources give the same bytes. Nothing here opens a
// file, a socket or a process, and no package that can is on the list.
//
// The values of a package are in one map: functions and constants by value, variables as addressable values, types as
// typed nil pointers, and for each interface type T an adapter named "_T": a compiled type that satisfies T and hands
// each call on to a value that a cell declared.
package symbols

//go:generate go run ./gen
