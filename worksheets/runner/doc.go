// Package runner runs a worksheet from top to bottom in a fresh engine, without any notebook program, and writes what
// came of it: the executed notebook, the report, results files. The worksheet itself is never written to. It also runs what
// was executed before again and says what differs. worksheets/FORMATS.md describes what is written and compared.
package runner
