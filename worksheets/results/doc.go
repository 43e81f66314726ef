// Package results knows how declared results are written: as figures for people, as what a cell shows, as results files
// in JSON and CSV, and as a check code. worksheets/FORMATS.md describes the files.
package results
