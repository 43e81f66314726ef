package cellapi_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"swanneck/kernel/display"
	"swanneck/worksheets/cellapi"
)

func ExampleResult() {
	cellapi.Result("Water to weigh in", 252.4137, "kg", cellapi.Within(0.1))
	cellapi.Result("True strength", 43.0312, "% vol", cellapi.PlusMinus(0.128), cellapi.Note("at 20 °C"))
	// Output:
	// Water to weigh in: 252.4 kg
	// True strength: 43.03 ± 0.13 % vol (at 20 °C)
}

func ExampleShow() {
	cellapi.Show(1.5, "L")
	// Output: 1.5 L
}

func TestFigure(t *testing.T) {
	for _, c := range []struct {
		x, plusMinus, within float64
		want                 string
	}{
		{252.4137, 0, 0.1, "252.4"},
		{252.4137, 0, 1, "252"},
		{43.0312, 0.128, 0, "43.03"},
		{43.0312, 1.28, 0, "43.0"},
		{1512, 0, 0, "1512"},
		{1512.44, 0, 0, "1512.4"},
		{0.0123456, 0, 0, "0.01235"},
		{-0.00001, 0, 0.1, "0.0"},
		{0, 0, 0, "0"},
		{1.2e-7, 0, 0, "1.2e-07"},
		{0.00012345, 0, 0, "0.0001234"},
		{5, 1e-12, 0, "5"},
		{1e300, 0, 0, "1e+300"},
		{3, 0, 0, "3"},
	} {
		if got := cellapi.Figure(c.x, c.plusMinus, c.within); got != c.want {
			t.Errorf("Figure(%v, %v, %v) = %s; want %s", c.x, c.plusMinus, c.within, got, c.want)
		}
	}
}

func TestResultsThatAreNone(t *testing.T) {
	for want, f := range map[string]func(){
		"needs a name":      func() { cellapi.Result(" ", 1, "kg") },
		"needs a unit":      func() { cellapi.Result("water", 1, "") },
		"one line":          func() { cellapi.Result("water\n", 1, "kg") },
		"plain text":        func() { cellapi.Result("water", 1, "kg", cellapi.Note("\x1b[2J")) },
		"NaN kg":            func() { cellapi.Result("water", math.NaN(), "kg") },
		"+Inf kg":           func() { cellapi.Result("water", math.Inf(1), "kg") },
		"±":                 func() { cellapi.Result("water", 1, "kg", cellapi.PlusMinus(-1)) },
		"must be finite":    func() { cellapi.Result("water", 1, "kg", cellapi.Within(math.NaN())) },
		"not below zero":    func() { cellapi.Result("water", 1, "kg", cellapi.Within(-0.1)) },
		"Result: \"water\"": func() { cellapi.Result("water", math.NaN(), "kg") },
	} {
		func() {
			defer func() {
				s, ok := recover().(*cellapi.Stop)
				if !ok || !strings.Contains(s.Error(), want) || strings.Contains(s.Error(), "\n") {
					t.Errorf("%v; want one line with %q", s, want)
				}
			}()
			f()
			t.Errorf("accepted; want %q", want)
		}()
	}
}

func TestResultBundle(t *testing.T) {
	var got display.Bundle
	defer display.SetFace(display.Face{
		Show: func(b display.Bundle, _ string, _ bool) { got = b },
		Text: func(v any) string { return fmt.Sprint(v) },
	})()
	cellapi.Result("a < b", 1.25, "L", cellapi.Within(0.01))
	r, ok := got[display.Result].(display.ResultData)
	if !ok || r.Name != "a < b" || r.Value != 1.25 || r.Unit != "L" || r.Within != 0.01 || r.Version != 1 || r.Figure != "1.25" {
		t.Errorf("%+v", got[display.Result])
	}
	if html := got[display.HTML].(string); !strings.Contains(html, "a &lt; b") {
		t.Errorf("not escaped: %s", html)
	}
}
