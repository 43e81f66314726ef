package runner

import (
	"strings"
	"testing"

	"swanneck/kernel/display"
	"swanneck/worksheets/notebook"
)

// A tolerance holds in both directions, its end included; without one, a share of the size is allowed.
func TestNear(t *testing.T) {
	for _, c := range []struct {
		a, b, within float64
		want         bool
	}{
		{0.3, 0.4, 0.1, true}, // 0.4-0.3 is 0.10000000000000003
		{0.3, 0.4001, 0.1, false},
		{-1, 1, 2, true},
		{-1, 1, 1.9, false},
		{252.4, 252.4 * (1 + 0.9e-9), 0, true},
		{252.4, 252.4 * (1 + 1.1e-9), 0, false},
		{-252.4, 252.4, 0, false},
		{0, 0, 0, true},
		{0, 1e-300, 0, false}, // nothing is near zero without a tolerance
		{1e300, 1.0000000001e300, 0, true},
		{1e300, -1e300, 1, false},
	} {
		if got := near(c.a, c.b, c.within); got != c.want {
			t.Errorf("near(%v, %v, %v) = %v; want %v", c.a, c.b, c.within, got, c.want)
		}
		if got := near(c.b, c.a, c.within); got != c.want {
			t.Errorf("near(%v, %v, %v) = %v; want %v", c.b, c.a, c.within, got, c.want)
		}
	}
}

func TestPrintedNear(t *testing.T) {
	for _, c := range []struct {
		figure        string
		value, within float64
		want          bool
	}{
		{"252.4", 252.36, 0, true},
		{"252.4", 252.44, 0, true},
		{"252.4", 252.46, 0, false},
		{"252.4", 252.54, 0.1, true},
		{"252.4", 252.56, 0.1, false},
		{"252", 252.4, 0, true},
		{"252", 253, 0, false},
		{"1.2e-07", 1.24e-7, 0, true},
		{"1.2e-07", 1.26e-7, 0, false},
		{"1e+300", 1.4e300, 0, true},
		{"-0.5", -0.5, 0, true},
		{"much", 1, 0, false},
	} {
		if got := printedNear(c.figure, c.value, c.within); got != c.want {
			t.Errorf("printedNear(%q, %v, %v) = %v; want %v", c.figure, c.value, c.within, got, c.want)
		}
	}
}

func TestCompareOthers(t *testing.T) {
	text := func(s string) notebook.Output { return notebook.StreamOutput("stdout", s) }
	shown := func(b display.Bundle) notebook.Output { return notebook.DisplayOutput(b) }
	chart := func(svg, alt string) notebook.Output {
		return shown(display.Bundle{display.SVG: svg, display.Plain: alt})
	}
	for _, c := range []struct {
		name      string
		then, now []notebook.Output
		want      string // what is said, lines joined by "|"
	}{
		{"nothing", nil, nil, ""},
		{"the same", []notebook.Output{text("a\n"), chart("<svg/>", "x")}, []notebook.Output{text("a  \n"), chart("<svg/>", "x")}, ""},
		{"a chart and its words", []notebook.Output{chart("<svg/>", "up")}, []notebook.Output{chart("<svg />", "down")}, "chart differs|then: up|now:  down"},
		{"a picture", []notebook.Output{shown(display.Bundle{"image/png": "AAA"})}, []notebook.Output{shown(display.Bundle{"image/png": "AAB"})}, "chart differs"},
		{"space in a chart counts", []notebook.Output{chart("<svg/> ", "x")}, []notebook.Output{chart("<svg/>", "x")}, "chart differs"},
		{"another stream", []notebook.Output{text("a")}, []notebook.Output{notebook.StreamOutput("stderr", "a")}, "what is printed then, what is printed as an error now"},
		{"another kind", []notebook.Output{text("a")}, []notebook.Output{chart("<svg/>", "x")}, "what is printed then, chart now"},
		{"one more", []notebook.Output{text("a")}, []notebook.Output{text("a"), chart("<svg/>", "x")}, "output 2, chart is new"},
		{"one less", []notebook.Output{text("a"), shown(display.Bundle{display.Plain: "1"})}, []notebook.Output{text("a")}, "output 2, value is missing"},
		{"a form less", []notebook.Output{shown(display.Bundle{display.Plain: "1", display.HTML: "<b>1</b>"})}, []notebook.Output{shown(display.Bundle{display.Plain: "1", display.HTML: "<b>1</b>", "text/latex": "1"})},
			"table differs: text/latex is there in one of the runs only"},
		{"JSON", []notebook.Output{shown(display.Bundle{"application/json": map[string]any{"b": 1, "a": 2}})}, []notebook.Output{shown(display.Bundle{"application/json": map[string]any{"a": 2, "b": 1}})}, ""},
		{"other JSON", []notebook.Output{shown(display.Bundle{"application/json": []any{1}})}, []notebook.Output{shown(display.Bundle{"application/json": []any{2}})}, "value differs in application/json"},
	} {
		var said []string
		for _, d := range compareOthers(1, c.then, c.now) {
			said = append(append(said, d.What), d.More...)
		}
		if got := strings.Join(said, "|"); got != c.want {
			t.Errorf("%s: %q; want %q", c.name, got, c.want)
		}
	}
}
