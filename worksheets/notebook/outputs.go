package notebook

import (
	"maps"
	"slices"
)

// StreamOutput returns text written to a stream; name is stdout or stderr.
func StreamOutput(name, text string) Output {
	return Output{Type: Stream, Name: name, Text: text}
}

// DisplayOutput returns something shown on the way: MIME type to content. Content is a string, or for JSON types any value.
func DisplayOutput(data map[string]any) Output {
	return Output{Type: DisplayData, Data: maps.Clone(data), Metadata: map[string]any{}}
}

// ResultOutput returns the value of a cell, with the cell's execution count.
func ResultOutput(count int, data map[string]any) Output {
	return Output{Type: ExecuteResult, ExecutionCount: &count, Data: maps.Clone(data), Metadata: map[string]any{}}
}

// ErrorOutput returns the mistake that stopped a cell: its kind, its message and the lines that show where.
func ErrorOutput(ename, evalue string, traceback []string) Output {
	return Output{Type: Error, Ename: ename, Evalue: evalue, Traceback: slices.Clone(traceback)}
}

// ClearOutputs removes the outputs and execution counts of all code cells.
func (n *Notebook) ClearOutputs() {
	for _, c := range n.Cells {
		if c.Type == Code {
			c.Outputs, c.ExecutionCount = nil, nil
		}
	}
}
