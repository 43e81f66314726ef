package sweep

import (
	"errors"
	"fmt"
	"math"
	"strconv"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
	"swanneck/worksheets/runner"
)

// OK is the status of a scenario whose cells all succeeded.
const OK = "ok"

// Row is a scenario and what came of it.
type Row struct {
	Scenario int // from 1
	Inputs   []Value
	Results  []Figure // none if the status is not OK: what stood before the mistake is not the whole
	Status   string   // OK, or in one line why there are no results
}

// Figure is a declared result.
type Figure struct {
	Name  string  `json:"name"`
	Unit  string  `json:"unit"`
	Value float64 `json:"value"` // dimensionless here: in Unit
}

func figures(results []display.ResultData) []Figure {
	out := make([]Figure, len(results))
	for i, r := range results {
		out[i] = Figure{r.Name, r.Unit, r.Value}
	}
	return out
}

// reason says why a scenario has no results, in a line that is the same whenever it is run: where a cell happened to be
// when its time was up is left out.
func reason(f *runner.CellFailure) string {
	if k := f.Failure.Kind; k == engine.Time || k == engine.Memory {
		return fmt.Sprintf("cell %d: %s", f.Cell, f.Failure.Items[0].Msg)
	}
	return f.Error()
}

// crashed says that a worker died, which may have come from outside.
func crashed(err error) bool {
	var f *runner.CellFailure
	return errors.As(err, &f) && f.Failure.Kind == engine.Crashed
}

// number writes a number with all its digits, as JSON would (dimensionless here).
func number(x float64) string {
	if size := math.Abs(x); size != 0 && (size < 1e-6 || size >= 1e21) {
		return strconv.FormatFloat(x, 'e', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}
