package report

import (
	"fmt"
	"strings"
	"testing"
)

func wall(rows, columns int, cell string) WallTable {
	t := WallTable{Title: "True strength <20 °C>", Down: "reading", Across: "°C", StrongColumn: 1, Notes: []string{"Read & note."}}
	for j := range columns {
		t.Heads = append(t.Heads, fmt.Sprint(j))
	}
	for i := range rows {
		t.Rows = append(t.Rows, fmt.Sprint(i+30))
		c := make([]string, columns)
		for j := range c {
			c[j] = cell
		}
		t.Cells = append(t.Cells, c)
	}
	return t
}

func TestWall(t *testing.T) {
	page, err := Wall(wall(51, 13, "72.4"))
	if err != nil {
		t.Fatal(err)
	}
	s := string(page)
	assertSafe(t, parsePage(t, page))
	inOrder(t, s, "<h1>True strength &lt;20 °C&gt;</h1>", "· 30 to 46", "Read &amp; note.", "· 47 to 63", "Read &amp; note.", "· 64 to 80", "Read &amp; note.")
	if n := strings.Count(s, `<th scope="row">`); n != 51 {
		t.Errorf("%d rows are printed; want 51", n)
	}
	if n := strings.Count(s, `<td class="strong">72.4</td>`); n != 51 {
		t.Errorf("%d cells are set off; want 51", n)
	}
	if sum := policy(wallCSS); !strings.Contains(s, sum[strings.Index(sum, "sha256"):][:20]) {
		t.Error("the policy of the page does not name its style sheet")
	}
	if !strings.Contains(s, "A4 landscape") || strings.Contains(s, "<script") {
		t.Error("the page is no sheet of A4 across, or has a script")
	}
}

// The more there is on a sheet, the smaller its lettering, down to a size that can just be read.
func TestWallLettering(t *testing.T) {
	last := 1e9
	for _, columns := range []int{5, 12, 16, 18, 20} {
		w := wall(10, columns, "100.00")
		p := w.points()
		if p == 0 || p > last || float64(columns+2)*6.8*wallDigit*p > wallWidthPt {
			t.Errorf("%d columns are set in %v points after %v", columns, p, last)
		}
		last = p
	}
	if _, err := Wall(wall(10, 60, "100.00")); err == nil || !strings.Contains(err.Error(), "60 columns") {
		t.Errorf("60 columns: %v; want a refusal that names them", err)
	}
}

func TestWallRefuses(t *testing.T) {
	ragged := wall(3, 3, "1")
	ragged.Cells[1] = ragged.Cells[1][:2]
	headless := wall(3, 3, "1")
	headless.Rows = headless.Rows[:2]
	for name, w := range map[string]WallTable{"empty": {}, "ragged": ragged, "headless": headless} {
		if _, err := Wall(w); err == nil || !strings.HasPrefix(err.Error(), "report.Wall: ") {
			t.Errorf("%s: %v; want an error of report.Wall", name, err)
		}
	}
}
