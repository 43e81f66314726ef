// Package sources holds, as Go source of our own, the generic packages of the standard library that cells may import.
//
// A compiled generic function has no value that could be handed to a cell: it exists only for the type arguments that
// the compiler met. So cmp, iter, maps and slices are written here once more, after their documentation, are checked when
// a cell first needs them, and are run by the evaluator like the cell's own functions. The signatures are those of the
// standard library, letter by letter; a test compares them.
//
// The files stand under _src, which the go command leaves out of ./... but compiles when a test imports it: so the tests
// run the same text that cells get, beside the real packages.
//
// Rules for the files under _src: no package variables, no init, no unsafe, no imports but cmp and iter; loops rather
// than calls, for they are interpreted; a panic has the text that the standard library's has.
//
// A package read from type data may speak of a type declared here: strings.Lines returns an iter.Seq. There is then
// only one iter.Seq if the packages checked here are put into the importer's map of packages before that data is read;
// Declaring says which packages that are.
package sources
