package sweep

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"io"
	"math"
	"reflect"
	"strconv"
	"testing"

	"github.com/parquet-go/parquet-go"
	"pgregory.net/rapid"

	"swanneck/worksheets/figure"
)

func TestMergeKeepsTheWorksheetsOrder(t *testing.T) {
	var got []ResultColumn
	for _, row := range []string{"abd", "acd", "e", "xab", "", "dz"} {
		var f []Figure
		for _, r := range row {
			f = append(f, Figure{Name: string(r), Unit: "1"})
		}
		got = merge(got, f)
	}
	text := ""
	for _, c := range got {
		text += c.Name
	}
	if text != "xeacbdz" {
		t.Errorf("%q; want each result behind the one before it in its row", text)
	}
}

func TestHeadings(t *testing.T) {
	table := &Table{
		Columns: []Column{{Name: "strength", Unit: "%vol"}, {Name: "Status"}, {Name: "n", Unit: "1"}},
		Results: []ResultColumn{{"Strength", "% vol"}, {"water", "kg"}, {"water", "L"}, {"scenario", "1"}},
	}
	want := []string{"scenario", "strength (%vol)", "input Status", "n", "result Strength (% vol)", "water (kg)", "result water (L)", "result scenario", "status"}
	if got := table.Headings(); !reflect.DeepEqual(got, want) {
		t.Errorf("%q; want %q", got, want)
	}
}

// random draws a table with whatever may stand in one.
func random(t *rapid.T) *Table {
	figureOf := rapid.Float64Range(-1e300, 1e300).Filter(func(x float64) bool { return !math.IsNaN(x) })
	word := rapid.SampledFrom([]string{"pot", "", "=1+1", "a, \"b\"", "°C; ж", "-"})
	table := &Table{
		Columns: []Column{{Name: "pot, strength", Unit: "%vol", Figures: true}, {Name: "still.kind"}},
		Results: []ResultColumn{{"water", "kg"}, {"=day", "1"}, {"a.b (c)", "L"}},
	}
	for i := range rapid.IntRange(0, 30).Draw(t, "rows") {
		r := Row{Scenario: i + 1, Inputs: []Value{{Figure: figureOf.Draw(t, "in")}, {Word: word.Draw(t, "word")}}, Status: "cell 3: a, \"b\""}
		if rapid.Bool().Draw(t, "ok") {
			r.Status = OK
			for _, c := range table.Results {
				if rapid.Bool().Draw(t, "has") {
					r.Results = append(r.Results, Figure{c.Name, c.Unit, figureOf.Draw(t, "out")})
				}
			}
		}
		table.Rows = append(table.Rows, r)
	}
	return table
}

// CSV and Parquet, read back by others' code, say the same: each field of each row.
func TestCSVAndParquetAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := random(t)
		text, err := table.CSV()
		if err != nil {
			t.Fatal(err)
		}
		lines, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		data, err := table.Parquet()
		if err != nil {
			t.Fatal(err)
		}
		file, err := parquet.OpenFile(bytes.NewReader(data), int64(len(data)))
		if err != nil {
			t.Fatal(err)
		}
		leaves := file.Root().Columns()
		if len(leaves) != len(lines[0]) {
			t.Fatalf("%d columns in Parquet, %d in CSV", len(leaves), len(lines[0]))
		}
		kinds := []parquet.Kind{parquet.Int64, parquet.Double, parquet.ByteArray, parquet.Double, parquet.Double, parquet.Double, parquet.ByteArray}
		for i, c := range leaves {
			if cellText(c.Name()) != lines[0][i] || c.Type().Kind() != kinds[i] {
				t.Errorf("column %d is %q, %v; the CSV has %q", i, c.Name(), c.Type(), lines[0][i])
			}
		}
		if file.NumRows() != int64(len(table.Rows)) || len(lines)-1 != len(table.Rows) {
			t.Fatalf("%d rows in Parquet, %d in CSV; the table has %d", file.NumRows(), len(lines)-1, len(table.Rows))
		}
		for n, row := range readParquet(t, file) {
			for i, v := range row {
				field := lines[n+1][i]
				same := false
				switch {
				case v.IsNull():
					same = field == "" && i >= 3
				case kinds[i] == parquet.Double:
					x, err := strconv.ParseFloat(field, 64)
					same = err == nil && x == v.Double()
				case kinds[i] == parquet.Int64:
					same = field == strconv.FormatInt(v.Int64(), 10)
				default:
					same = field == cellText(string(v.ByteArray()))
				}
				if !same {
					t.Errorf("row %d, %q: %v in Parquet, %q in CSV", n+1, lines[0][i], v, field)
				}
			}
		}
		var notes []columnNote
		about, _ := file.Lookup(columnsKey)
		if err := json.Unmarshal([]byte(about), &notes); err != nil || len(notes) != 7 || notes[1].Unit != "%vol" || notes[5].Name != "a.b (c)" || notes[5].Column != leaves[5].Name() {
			t.Errorf("%s: %v", about, err)
		}
		if again, err := table.Parquet(); err != nil || !bytes.Equal(again, data) {
			t.Errorf("written twice, the bytes differ: %v", err)
		}
	})
}

func readParquet(t *rapid.T, file *parquet.File) (out [][]parquet.Value) {
	for _, g := range file.RowGroups() {
		rows := g.Rows()
		for buf := make([]parquet.Row, 1); ; {
			n, err := rows.ReadRows(buf)
			if n == 1 {
				row := make([]parquet.Value, len(buf[0]))
				for _, v := range buf[0] {
					row[v.Column()] = v.Clone()
				}
				out = append(out, row)
			}
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatal(err)
			}
		}
		if err := rows.Close(); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

// Our own reader of tables takes the CSV of a sweep.
func TestCSVIsATable(t *testing.T) {
	out, err := job(t, plan(t)).Run(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	table, err := figure.ReadTable(mustRead(t, out.CSV))
	if err != nil || len(table.Rows) != 12 || table.Headings[1] != "pot strength (%vol)" {
		t.Errorf("%+v, %v", table, err)
	}
}
