// Package runner runs a worksheet from top to bottom in a fresh engine, without any notebook program, and writes what
// came of it: the executed notebook and the report. The worksheet itself is never written to.
package runner
