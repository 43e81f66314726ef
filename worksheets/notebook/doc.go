// Package notebook reads and writes the open notebook format, version 4.5.
//
// A file that the format's reference library wrote comes back byte for byte: one space of indent, sorted keys, no
// escaping beyond what JSON asks for, multi-line text as a list of lines, numbers as they stood in the file, a newline
// at the end. What this package does not understand is kept in the Extra fields and in the metadata maps, so a worksheet
// that another program made loses nothing by passing through.
//
// Files of version 4.0 to 4.4 are raised to 4.5: their cells get identifiers. Older and newer major versions are refused.
//
// JSON values in maps are nil, bool, json.Number, string, []any and map[string]any as Read leaves them. A caller may also
// put in Go numbers, slices, maps and structs that encoding/json can write.
//
// Source: the notebook format 4.5, JSON schema and reference writer of the Python package nbformat 5.11.1.
package notebook
