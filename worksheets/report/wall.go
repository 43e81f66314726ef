package report

import (
	"bytes"
	_ "embed"
	"fmt"
	"strings"
	"unicode/utf8"
)

//go:embed wall.css
var wallCSS string

// WallTable is a table of figures to be printed large, on A4 across, and hung up.
type WallTable struct {
	Title        string
	Down, Across string     // what rows and columns are
	Heads        []string   // of the columns
	Rows         []string   // heads of the rows
	Cells        [][]string // by row, as many as there are columns
	StrongColumn int        // a column set off from the others; -1 for none
	Notes        []string   // under the table, on every sheet
}

// Sizes of lettering on a sheet, in points, the largest first, and room that may be added above and below a row, in
// points.
var (
	wallPoints = []float64{18, 16, 14, 12, 11, 10, 9, 8}
	wallRoomPt = []float64{5, 4, 3, 2, 1, 0}
)

const (
	wallWidthPt  = 277 * 72 / 25.4 // A4 across between margins of 10 mm
	wallHeightPt = 192 * 72 / 25.4 // between margins of 9 mm
	wallAroundPt = 95.0            // title, edges and notes
	wallDigit    = 0.62            // width of a digit in the widest of the usual sans-serif faces, of the size of the lettering
	wallGap      = 0.8             // least space between two columns, in digits
)

// wallRowPt is the height of a row in points.
func wallRowPt(points float64) float64 { return points*1.2 + 3 }

// Wall returns a wall table as one HTML file that stands alone: no script, no network. On paper it fills as many sheets as
// its rows need, each complete with heads and notes. It fails if a row has not as many cells as there are columns, and
// for more columns than a sheet takes in the smallest lettering, which is 8 points.
func Wall(t WallTable) ([]byte, error) {
	if len(t.Heads) == 0 || len(t.Rows) == 0 || len(t.Rows) != len(t.Cells) {
		return nil, fmt.Errorf("report.Wall: %d columns, %d heads of rows and %d rows; want some of each, and a head for every row", len(t.Heads), len(t.Rows), len(t.Cells))
	}
	for i, c := range t.Cells {
		if len(c) != len(t.Heads) {
			return nil, fmt.Errorf("report.Wall: row %d has %d cells; want %d, one for every column", i+1, len(c), len(t.Heads))
		}
	}
	points := t.points()
	if points == 0 {
		return nil, fmt.Errorf("report.Wall: %d columns do not fit on a sheet; want fewer", len(t.Heads))
	}
	most := int((wallHeightPt-wallAroundPt)/wallRowPt(points)) - 1 // one is the head
	sheets := (len(t.Rows) + most - 1) / most
	each := (len(t.Rows) + sheets - 1) / sheets
	room := 0.0 // what is left is given to the rows
	for _, r := range wallRoomPt {
		if float64(each+1)*(wallRowPt(points)+2*r) <= wallHeightPt-wallAroundPt {
			room = r
			break
		}
	}
	var w bytes.Buffer
	writeHead(&w, t.Title, wallCSS)
	w.WriteString("</header>\n<main>\n")
	class := fmt.Sprintf("sheet p%.0f r%.0f", points, room)
	if sheets == 1 {
		class += " only" // the page's heading is its title
	}
	for i := 0; i < len(t.Rows); i += each {
		t.sheet(&w, i, min(i+each, len(t.Rows)), class)
	}
	w.WriteString("</main>\n</body>\n</html>\n")
	return w.Bytes(), nil
}

// points returns the largest lettering in which a row fits on a sheet, 0 if none does.
func (t WallTable) points() float64 {
	widest := 0
	for j, h := range t.Heads {
		widest = max(widest, utf8.RuneCountInString(h))
		for i, c := range t.Cells {
			widest = max(widest, utf8.RuneCountInString(c[j]), utf8.RuneCountInString(t.Rows[i]))
		}
	}
	digits := float64(len(t.Heads)+2) * (float64(widest) + wallGap) // rows have their head on both sides
	for _, p := range wallPoints {
		if digits*wallDigit*p <= wallWidthPt {
			return p
		}
	}
	return 0
}

// sheet writes the rows from first to before end as one sheet of paper.
func (t WallTable) sheet(w *bytes.Buffer, first, end int, class string) {
	title := t.Title
	if end-first < len(t.Rows) {
		title += fmt.Sprintf(" · %s to %s", t.Rows[first], t.Rows[end-1])
	}
	fmt.Fprintf(w, "<section class=\"%s\">\n<h2>%s</h2>\n<p class=\"edges\"><b>Down:</b> %s. <b>Across:</b> %s.</p>\n",
		class, text(title), text(t.Down), text(t.Across))
	w.WriteString("<div class=\"wide\" role=\"region\" aria-label=\"Table\" tabindex=\"0\">\n<table>\n")
	t.heads(w)
	w.WriteString("<tbody>\n")
	for i := first; i < end; i++ {
		fmt.Fprintf(w, "<tr><th scope=\"row\">%s</th>", text(t.Rows[i]))
		for j, c := range t.Cells[i] {
			fmt.Fprintf(w, "<td%s>%s</td>", t.strong(j), text(c))
		}
		fmt.Fprintf(w, "<th aria-hidden=\"true\">%s</th></tr>\n", text(t.Rows[i]))
	}
	w.WriteString("</tbody>\n</table>\n</div>\n<div class=\"notes\">\n")
	for _, n := range t.Notes {
		w.WriteString("<p>" + text(strings.TrimSpace(n)) + "</p>\n")
	}
	w.WriteString("</div>\n</section>\n")
}

func (t WallTable) heads(w *bytes.Buffer) {
	w.WriteString("<thead><tr><th></th>")
	for j, h := range t.Heads {
		fmt.Fprintf(w, "<th scope=\"col\"%s>%s</th>", t.strong(j), text(h))
	}
	w.WriteString("<th></th></tr></thead>\n")
}

func (t WallTable) strong(column int) string {
	if column == t.StrongColumn {
		return ` class="strong"`
	}
	return ""
}
