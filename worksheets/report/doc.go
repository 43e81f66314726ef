// Package report turns a worksheet that has been run into the one HTML file that a client reads: on a phone in the
// still house, on a desk, or on paper; and into Markdown. What went in is listed, or kept out.
//
// The file stands alone: no script, no network, pictures inside it. What the worksheet holds is not trusted: prose and
// tables pass an allow-list (bluemonday), charts another (svg.go), everything else is escaped, and a content security
// policy in the file forbids what might slip through. The same document gives the same bytes.
//
// Units are those of the worksheet; this package computes nothing.
package report
