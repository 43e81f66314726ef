// Package inputs finds what a worksheet asks for without running it, and fits to it what people give: on the command
// line, in a plain text file, in answer to questions.
package inputs
