// Package display turns the values of a cell into what a person sees: a bundle of the same thing in several MIME types,
// of which a front end takes the richest it can show. It runs in the worker, where the values live.
//
// A value says for itself how it can be shown, by methods:
//
//	SVG() string          a chart
//	AltText() string      what the chart shows, in words
//	Rows() [][]string     rows of label, figure, unit: a table
//	HTML() string         a fragment of HTML
//	String() string       one line
//
// Rows of text ([][]string), of which the first holds the headings, are a table.
//
// Rows of text, a [][]string, are a table as they stand.
package display

// MIME types of a bundle.
const (
	Plain  = "text/plain"
	HTML   = "text/html"
	SVG    = "image/svg+xml"
	Result = "application/vnd.swanneck.result+json" // see ResultData
)

// Bundle is one thing to show, by MIME type. Text, HTML and SVG are strings; JSON types are values for encoding/json.
type Bundle map[string]any

// ResultData is a declared result of a worksheet, as its MIME type carries it.
type ResultData struct {
	Version   int     `json:"version"` // of this form: 1
	Name      string  `json:"name"`
	Value     float64 `json:"value"`                // dimensionless here: in Unit
	Unit      string  `json:"unit"`                 // as printed
	Figure    string  `json:"figure"`               // the value, rounded for people
	PlusMinus float64 `json:"plus_minus,omitempty"` // dimensionless here: in Unit; 0 if not given
	Within    float64 `json:"within,omitempty"`     // dimensionless here: in Unit; how far a second run may differ
	Note      string  `json:"note,omitempty"`
}
