package runner

import (
	"encoding/json"

	"swanneck/kernel/display"
	"swanneck/worksheets/notebook"
)

// recorder turns what a cell says into outputs of the notebook format.
type recorder struct {
	cell    *notebook.Cell
	count   int
	results []display.ResultData
}

// maxStream bounds the text of a cell that is kept, in bytes: a worksheet that prints for ever must not fill the disk.
const maxStream = 4 << 20

func (r *recorder) Stream(name, text string) {
	if n := len(r.cell.Outputs); n > 0 {
		if last := &r.cell.Outputs[n-1]; last.Type == notebook.Stream && last.Name == name {
			if len(last.Text) > maxStream {
				return
			}
			last.Text += text
			if len(last.Text) > maxStream {
				last.Text += "\n… more output than a worksheet keeps (4 MiB); the rest is left out\n"
			}
			return
		}
	}
	r.cell.Outputs = append(r.cell.Outputs, notebook.StreamOutput(name, text))
}

func (r *recorder) Display(b display.Bundle) {
	if v, ok := b[display.Result]; ok {
		// The bundle came through JSON: bring the result back into its own type.
		if text, err := json.Marshal(v); err == nil {
			var d display.ResultData
			if json.Unmarshal(text, &d) == nil && d.Name != "" {
				r.results = append(r.results, d)
			}
		}
	}
	r.cell.Outputs = append(r.cell.Outputs, notebook.DisplayOutput(b))
}

func (r *recorder) Value(b display.Bundle) {
	r.cell.Outputs = append(r.cell.Outputs, notebook.ResultOutput(r.count, b))
}
