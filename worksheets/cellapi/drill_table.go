package cellapi

import (
	"fmt"
	"html"

	"swanneck/worksheets/drills/walltable"
)

// WallTable is a correction table as it hangs on the wall. PrintedTable makes one.
type WallTable struct{ t walltable.Table }

// PrintedTable returns a correction table: "strength" (true strength by reading and °C), "proof", "water" (litres to 100 L),
// "litres" and "gallons" (factors to the reference temperature), "mass" or "weight". Rows and columns are written as
// "60..80/1" or "37.5; 40; 43"; "" stands for the usual ones. What cannot be made stops the cell.
func PrintedTable(table, rows, columns string) WallTable {
	var o walltable.Options
	var err error
	if rows != "" {
		o.Down, err = walltable.Edges(rows)
	}
	if err == nil && columns != "" {
		o.Across, err = walltable.Edges(columns)
	}
	var t walltable.Table
	if err == nil {
		t, err = walltable.New(walltable.Sort(table), o)
	}
	if err != nil {
		panic(&Stop{"PrintedTable: " + withoutFunctions(err)})
	}
	return WallTable{t}
}

// String returns the table as lines of text.
func (t WallTable) String() string { return t.t.String() }

// HTML returns the table as HTML, with its notes.
func (t WallTable) HTML() string {
	out := t.t.HTML()
	for _, n := range t.t.Notes {
		out += fmt.Sprintf("\n<p><small>%s</small></p>", html.EscapeString(n))
	}
	return out
}
