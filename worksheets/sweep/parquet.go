package sweep

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"

	"github.com/parquet-go/parquet-go"
	"github.com/parquet-go/parquet-go/compress"
	"github.com/parquet-go/parquet-go/encoding"
)

// columnsKey is where a Parquet file of ours says what its columns are.
const columnsKey = "swanneck.columns"

// columnNote describes a column of a Parquet file.
type columnNote struct {
	Column string `json:"column"`
	What   string `json:"what"` // "scenario", "input", "result", "status"
	Name   string `json:"name,omitempty"`
	Unit   string `json:"unit,omitempty"`
	Varied bool   `json:"varied,omitempty"`
}

// Parquet returns the table as an Apache Parquet file: columns in the order and with the headings of the CSV, numbers as
// doubles (the scenario as a 64-bit integer), words as strings, results optional. Under the key "swanneck.columns" of the
// file's metadata stands, as JSON, what each column is and in which unit.
func (t *Table) Parquet() ([]byte, error) {
	headings := t.Headings()
	notes := []columnNote{{What: "scenario"}}
	nodes := []parquet.Node{parquet.Int(64)}
	for _, c := range t.Columns {
		node := parquet.String()
		if c.Figures {
			node = parquet.Leaf(parquet.DoubleType)
		}
		nodes = append(nodes, node)
		notes = append(notes, columnNote{What: "input", Name: c.Name, Unit: c.Unit, Varied: c.Varied})
	}
	for _, c := range t.Results {
		nodes = append(nodes, parquet.Optional(parquet.Leaf(parquet.DoubleType)))
		notes = append(notes, columnNote{What: "result", Name: c.Name, Unit: c.Unit})
	}
	nodes = append(nodes, parquet.String())
	notes = append(notes, columnNote{What: "status"})
	root := columns{}
	for i, h := range headings {
		notes[i].Column = h
		root = append(root, field{nodes[i], h})
	}
	about, err := json.Marshal(notes)
	if err != nil {
		return nil, fmt.Errorf("sweep.Parquet: %w", err)
	}
	var b bytes.Buffer
	w := parquet.NewWriter(&b, parquet.NewSchema("sweep", root), parquet.Compression(&parquet.Snappy),
		parquet.CreatedBy("swanneck", "1", "sweep"), parquet.KeyValueMetadata(columnsKey, string(about)))
	for _, r := range t.Rows {
		row := parquet.Row{parquet.Int64Value(int64(r.Scenario)).Level(0, 0, 0)}
		put := func(v parquet.Value, definition int) { row = append(row, v.Level(0, definition, len(row))) }
		for i, v := range r.Inputs {
			if t.Columns[i].Figures {
				put(parquet.DoubleValue(v.Figure), 0)
			} else {
				put(parquet.ByteArrayValue([]byte(v.Word)), 0)
			}
		}
		for _, c := range t.Results {
			if x, ok := r.result(c); ok {
				put(parquet.DoubleValue(x), 1)
			} else {
				put(parquet.NullValue(), 0)
			}
		}
		put(parquet.ByteArrayValue([]byte(r.Status)), 0)
		if _, err := w.WriteRows([]parquet.Row{row}); err != nil {
			return nil, fmt.Errorf("sweep.Parquet: scenario %d: %w", r.Scenario, err)
		}
	}
	if err := w.Close(); err != nil {
		return nil, fmt.Errorf("sweep.Parquet: %w", err)
	}
	return b.Bytes(), nil
}

// columns is a schema that keeps its columns in order; the library's own sorts them by name.
type columns []field

type field struct {
	parquet.Node
	name string
}

// ID, String and the rest make columns a parquet.Node.
func (columns) ID() int                     { return 0 }
func (columns) String() string              { return "columns" }
func (columns) Type() parquet.Type          { return parquet.Group{}.Type() }
func (columns) Optional() bool              { return false }
func (columns) Repeated() bool              { return false }
func (columns) Required() bool              { return true }
func (columns) Leaf() bool                  { return false }
func (columns) Encoding() encoding.Encoding { return nil }
func (columns) Compression() compress.Codec { return nil }
func (columns) GoType() reflect.Type        { return reflect.TypeFor[struct{}]() }

func (c columns) Fields() []parquet.Field {
	out := make([]parquet.Field, len(c))
	for i := range c {
		out[i] = c[i]
	}
	return out
}

func (f field) Name() string { return f.name }

// Value is for rows that are Go structs; ours are not.
func (f field) Value(reflect.Value) reflect.Value { return reflect.Value{} }
