// Package sweep runs a worksheet many times, each time with other inputs, and makes one table of what went in and what
// came out.
//
// A Plan says what goes in: every combination of some values (Grid), points drawn so that each range is covered evenly
// (Latin), or the rows of a table (List). A Job runs a plan, or a part of one, on several workers at once; each scenario
// has an engine of its own, so none sees what another left. What is done stands in a journal, and a job that was killed
// goes on from there. Gather joins the journals of parts. The table is the same, byte for byte, however many workers and
// parts made it and however often it was interrupted.
//
// Every figure is in the unit of its column.
package sweep
