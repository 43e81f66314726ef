package runner

import (
	"encoding/json"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
	"swanneck/worksheets/notebook"
)

// recorder turns what a cell says into outputs of the notebook format.
type recorder struct {
	cell    *notebook.Cell
	count   int
	results []display.ResultData
	places  map[string]int // displays that can be updated: where they are in the outputs
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
	if id, ok := b[engine.DisplayID].(string); ok {
		delete(b, engine.DisplayID)
		if r.places == nil {
			r.places = map[string]int{}
		}
		r.places[id] = len(r.cell.Outputs)
	}
	r.cell.Outputs = append(r.cell.Outputs, notebook.DisplayOutput(b))
}

// Update implements engine.Updater for displays of the same cell.
func (r *recorder) Update(id string, b display.Bundle) {
	if at, ok := r.places[id]; ok {
		r.cell.Outputs[at] = notebook.DisplayOutput(b)
	}
}

// Clear implements engine.Clearer. Results stay declared: they are not output.
func (r *recorder) Clear(bool) { r.cell.Outputs, r.places = nil, nil }

func (r *recorder) Value(b display.Bundle) {
	r.cell.Outputs = append(r.cell.Outputs, notebook.ResultOutput(r.count, b))
}
