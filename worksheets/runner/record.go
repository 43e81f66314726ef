package runner

import (
	"encoding/json"
	"slices"

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
		if d, ok := declared(v); ok {
			r.results = append(r.results, d)
			b[display.Result] = d // its version is written as 1, not as 1.0
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

// Clear implements engine.Clearer. Declared results stay: they are more than output.
func (r *recorder) Clear(bool) {
	r.cell.Outputs = slices.DeleteFunc(r.cell.Outputs, func(o notebook.Output) bool { return o.Data[display.Result] == nil })
	r.places = nil
}

func (r *recorder) Value(b display.Bundle) {
	r.cell.Outputs = append(r.cell.Outputs, notebook.ResultOutput(r.count, b))
}

// declared brings a result that came through JSON back into its own type.
func declared(v any) (d display.ResultData, ok bool) {
	text, err := json.Marshal(v)
	if err == nil {
		err = json.Unmarshal(text, &d)
	}
	return d, err == nil && d.Name != ""
}
