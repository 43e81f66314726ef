package display

import (
	"errors"
	"strings"
	"testing"
)

type chart struct{}

func (chart) SVG() string     { return "<svg/>" }
func (chart) AltText() string { return "a line that falls" }

type table struct{}

func (table) Rows() [][]string { return [][]string{{"water", "25.2", "kg"}, {"<b>", "1", "L"}} }

type stuck struct{}

func (stuck) SVG() string { panic(errors.New("nothing to draw")) }

func TestOf(t *testing.T) {
	if b, err := Of(3, "3"); err != nil || len(b) != 1 || b[Plain] != "3" {
		t.Errorf("a number: %v, %v", b, err)
	}
	if b, err := Of(chart{}, "{}"); err != nil || b[SVG] != "<svg/>" || b[Plain] != "a line that falls" {
		t.Errorf("a chart: %v, %v", b, err)
	}
	b, err := Of(table{}, "rows")
	if html, _ := b[HTML].(string); err != nil || !strings.Contains(html, "<th align=\"left\">water</th><td>25.2</td><td align=\"left\">kg</td>") || !strings.Contains(html, "&lt;b&gt;") {
		t.Errorf("a table: %v, %v", b, err)
	}
	if b, err := Of(stuck{}, ""); err == nil || err.Error() != "nothing to draw" {
		t.Errorf("a chart that cannot be drawn: %v, %v", b, err)
	}
}

func TestRowsOfTextAreATable(t *testing.T) {
	b, err := Of([][]string{{"plant", "g/L"}, {"juniper & rue", "30"}}, "[[plant g/L] [juniper & rue 30]]")
	if err != nil {
		t.Fatal(err)
	}
	if want := "plant          g/L\njuniper & rue  30"; b[Plain] != want {
		t.Errorf("plain: %q; want %q", b[Plain], want)
	}
	if html, _ := b[HTML].(string); !strings.HasPrefix(html, "<table>") || !strings.Contains(html, "juniper &amp; rue</th><td>30</td>") {
		t.Errorf("HTML: %s", html)
	}
}
