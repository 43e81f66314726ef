// Package eval runs Go as the language specification says it runs: chunks of a session that go/types has checked are
// compiled to closures and executed in this process. It never reads source text and decides no types of its own.
//
// # Names
//
// Everything is keyed by the checker's objects. A *types.Var is a variable's memory, so a name that is declared again
// is another variable and closures made before keep the old one. A constant's value is the checker's.
//
// # Values
//
// Each types.Type has one TypeRec, found by identity, with the storage type in which its values are held: the real
// type where the type is compiled; otherwise a type of the same layout in which the names of cell types are erased,
// pointers to cell types are unsafe.Pointer, and what is recursive is replaced by something of equal size. Memory is
// reached by address and read in the storage type of what lies there. While it is computed a value has one of some
// twenty classes (rep): numbers, strings, one-word pointers, slices, the two sorts of interfaces; structs and arrays are
// written to where they are needed.
//
// An interface{} holds a compiled value as it is. A value whose type mentions a cell's type stands in it as a Box,
// which carries the TypeRec, compares as the value does, and prints and encodes itself as a value of its type would
// (Format, MarshalJSON). In an interface of a compiled package with methods it stands as an adapter, a Box whose methods
// call back (adapter.go). Interfaces declared in cells are held as interface{}.
//
// Functions that look into their operands by reflection would see boxes and erased types. Fronts of the same signature
// take their place: front_fmt.go, front_errors.go, front_json.go; Config.Fronts adds more.
//
// # Code
//
// An expression is a func(*frame) T for its class T, specialised for locals and constants; a statement is a
// func(*frame) ctl, which says how control goes on (next, return, break, a label). A call allocates one frame: a struct
// made by reflection with all parameters, results and locals in it, so that the garbage collector sees exact types;
// frames are used again. Variables that are captured or addressed have memory of their own, new with each execution of
// their declaration. The body of a loop over a function stays in its function's frame and is called back.
//
// Function values are native ones: reflect.MakeFunc, or a literal for frequent signatures, so compiled code can call
// them; a call from a cell finds the closure behind the value and takes no detour. Generic functions are compiled once
// for each list of type arguments. Methods are found by the receiver's TypeRec with a cache at each call.
//
// Panics are Go panics that carry a *Panic with value and place. Deferred calls are kept in the frame; recover looks at
// the panic its frame was called for. Where Go leaves the order of evaluation open, variables are read after the calls
// of the same statement, as its compiler does (hoist.go). Maps are gone through in sorted order.
//
// # Limits
//
// What cannot be done faithfully is refused with an *Unsupported ("not supported in cells: …") before a chunk runs; a few
// cases are found only when they are reached. A call into compiled code that does not return cannot be stopped; loops,
// calls and channel operations of cells can. This package is no security boundary.
//
// The layouts of Go's run-time system that this package relies on (interface words, slices, method tables, what
// reflect.MakeFunc makes) are checked when the program starts, and it refuses to start on others.
package eval
