package report

import (
	"encoding/json"
	"strings"
	"testing"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"swanneck/worksheets/notebook"
)

// dot is a PNG of one pixel.
const dot = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="

func shown(t *testing.T, cells ...*notebook.Cell) string {
	t.Helper()
	p := page(t, Document{Notebook: book(cells...)})
	return p[strings.Index(p, "<main>"):]
}

func TestRichestForm(t *testing.T) {
	all := map[string]any{
		"text/html": "<p>as HTML</p>", "image/svg+xml": sampleChart(), "image/png": dot, "text/markdown": "*as Markdown*", "text/plain": "as text",
		"application/vnd.swanneck.result+json": map[string]any{"figure": json.Number("1")},
	}
	for _, step := range []struct{ drop, want string }{
		{"", "<p>as HTML</p>"}, {"text/html", "<svg"}, {"image/svg+xml", "<img src=\"data:image/png;base64," + dot[:20]},
		{"image/png", "<em>as Markdown</em>"}, {"text/markdown", "as text</pre>"}, {"text/plain", "[output of type application/vnd.swanneck.result+json"},
	} {
		delete(all, step.drop)
		got := shown(t, working(notebook.DisplayOutput(all)))
		if !strings.Contains(got, step.want) {
			t.Errorf("with %d forms: %q is not in\n%s", len(all), step.want, got)
		}
		if n := strings.Count(got, ">as ") + strings.Count(got, "<figure"); n > 1 {
			t.Errorf("with %d forms: %d are shown; want one", len(all), n)
		}
	}
	empty := shown(t, working(notebook.DisplayOutput(map[string]any{"text/html": "<div><script>draw()</script></div>", "text/plain": "as text"})))
	if !strings.Contains(empty, "as text") {
		t.Error("HTML of which nothing is left hides the text beside it")
	}
}

func TestCaution(t *testing.T) {
	for source, want := range map[string]bool{
		"> **Caution** hot":             true,
		"> **Caution: hot** do not":     true,
		"> __CAUTION.__ hot\n>\n> two":  true,
		"Text first\n\n> **Caution** x": true,
		"> **Cautionary** tale":         false,
		"> Caution without bold":        false,
		"> a **Caution** later":         false,
		"**Caution** not quoted":        false,
		"> ## **Caution**":              false,
	} {
		got := shown(t, prosaic(source))
		if strings.Contains(got, `class="caution" role="note"`) != want {
			t.Errorf("%q is a caution: %v; want %v", source, !want, want)
		}
		if want && (!strings.Contains(got, `class="sign"`) || strings.Contains(got, "<blockquote")) {
			t.Errorf("%q has no sign, or is a quotation still", source)
		}
	}
	if rules := css[strings.Index(css, "@media print"):]; !strings.Contains(rules, ".caution") || strings.Contains(rules, ".caution { display: none") {
		t.Error("the rules for print do not keep cautions")
	}
}

func TestTables(t *testing.T) {
	got := shown(t, prosaic("| Day | Water | Unit | Note | Share |\n|--|--|--|--|:-:|\n| 1 | 96.20 | kg | 12 then 5 | 7 |\n| 2 | −1 071,05 | kg | – | 8 |"))
	root, err := html.Parse(strings.NewReader(got))
	if err != nil {
		t.Fatal(err)
	}
	table := find(root, atom.Table)
	if table == nil || attr(table.Parent, "class") != "wide" {
		t.Fatalf("no table in a box that scrolls:\n%s", got)
	}
	want := map[string]bool{"Day": true, "Water": true, "Unit": false, "Note": false, "96.20": true, "kg": false, "12 then 5": false, "−1 071,05": true}
	for _, a := range []atom.Atom{atom.Th, atom.Td} {
		for _, c := range findAll(table, a) {
			if right, ok := want[words(c)]; ok {
				delete(want, words(c))
				if (attr(c, "class") == "n") != right && words(c) != "kg" {
					t.Errorf("%q stands to the right: %v; want %v", words(c), !right, right)
				}
			}
		}
	}
	if len(want) > 0 {
		t.Errorf("cells not found: %v", want)
	}
	if !strings.Contains(got, `<td align="center" class="n">7</td>`) {
		t.Errorf("the author's alignment is gone:\n%s", got)
	}
}

func TestFigurePattern(t *testing.T) {
	for s, want := range map[string]bool{
		"1": true, "-1.5": true, "−1.5": true, "1,250.5": true, "1\u202f250": true, "1e-05": true, "12 %": true, "0.3 ± 0.1": true, "5–7": true, "~3": true,
		"": false, "kg": false, "1 kg": false, "vat 7": false, "-": false, "1a": false, "2031-10-14": false,
	} {
		if figure.MatchString(s) != want {
			t.Errorf("%q is a figure: %v; want %v", s, !want, want)
		}
	}
}

func TestAttachments(t *testing.T) {
	c := prosaic("![jar](attachment:a%20jar.png) ![ring](attachment:ring.svg) ![gone](attachment:gone.png)")
	c.Attachments = map[string]notebook.Bundle{
		"a jar.png": {"image/png": dot},
		"ring.svg":  {"image/svg+xml": `<svg viewBox="0 0 1 1"><script>x</script></svg>`},
	}
	got := shown(t, c)
	inOrder(t, got, `<img src="data:image/png;base64,`, `alt="jar"`, `<img src="data:image/svg+xml;base64,`, `alt="ring"`, "picture not in this file: gone")
}

func TestStreams(t *testing.T) {
	got := shown(t, working(
		notebook.StreamOutput("stdout", "one\x1b[31m red\x1b[0m "), notebook.StreamOutput("stdout", "<two>\n"),
		notebook.StreamOutput("stderr", "10 %\r50 %\rdone\r\n"), notebook.StreamOutput("stdout", "a  b\nc  d\n")))
	inOrder(t, got, `<pre class="out flow" tabindex="0">one red &lt;two&gt;</pre>`, `<pre class="out aside flow" tabindex="0">done</pre>`,
		`<pre class="out" tabindex="0">a  b`)
}

func TestStopped(t *testing.T) {
	got := shown(t, working(notebook.ErrorOutput("RangeError", "too hot", []string{"\x1b[1mline 3\x1b[0m", "too hot"})))
	inOrder(t, got, "This step stopped.</strong> too hot", "<summary>Where</summary>", "line 3\ntoo hot")
	if got := shown(t, working(notebook.ErrorOutput("RangeError", "too hot", []string{"RangeError: too hot"}))); strings.Contains(got, "Where") {
		t.Error("a trace that only repeats the message is shown")
	}
}

func TestCharts(t *testing.T) {
	chart := map[string]any{"image/svg+xml": sampleChart()}
	got := shown(t, working(notebook.DisplayOutput(chart), notebook.DisplayOutput(chart))) // page checks that no identifier stands twice
	inOrder(t, got, `<figure role="img" aria-label="Strength falls`, `viewBox="0 0 360 200"`, `id="c1-tick"`, `stroke="#c9d2ce"`, `<clipPath id="c1-frame"`,
		`href="#c1-tick"`, `clip-path="url(#c1-frame)"`, `id="c2-tick"`, `href="#c2-tick"`)
	if strings.Contains(got, "height=\"200pt\"") {
		t.Error("a fixed height keeps the chart from shrinking")
	}
	sized := shown(t, working(notebook.DisplayOutput(map[string]any{"image/svg+xml": `<svg width="300" height="150px"><rect width="3" height="4"/></svg>`, "text/plain": "a box"})))
	inOrder(t, sized, `aria-label="a box"`, `width="300"`, `viewBox="0 0 300 150"`, `<rect width="3" height="4">`)
}

func TestChartLabel(t *testing.T) {
	for svg, want := range map[string]string{
		`<svg viewBox="0 0 1 1"><title>Vat  7</title></svg>`:                                "Vat 7",
		`<svg viewBox="0 0 1 1"><title>Vat 7</title><desc>Falls.</desc></svg>`:              "Vat 7. Falls.",
		`<svg viewBox="0 0 1 1"><title>Vat 7</title><desc>Vat 7 falls.</desc></svg>`:        "Vat 7 falls.",
		`<svg viewBox="0 0 1 1" aria-label="Vat 7"><desc>Falls.</desc></svg>`:               "Vat 7. Falls.",
		`<svg viewBox="0 0 1 1"><g><title>a part</title></g></svg>`:                         "Chart 1",
		`<svg viewBox="0 0 1 1"><title>"&gt;&lt;script&gt;</title><desc><g/>x</desc></svg>`: "&#34;&gt;&lt;script&gt;. x",
	} {
		got := shown(t, working(notebook.DisplayOutput(map[string]any{"image/svg+xml": svg})))
		if !strings.Contains(got, `<figure role="img" aria-label="`+want+`">`) {
			t.Errorf("%s: the label is not %q:\n%s", svg, want, got)
		}
	}
}

// Lettering is not on the list of what a drawing may hold; it must not vanish without a word.
func TestLettering(t *testing.T) {
	svg := `<svg viewBox="0 0 9 9"><g><text x="1">Strength, <tspan>% vol</tspan></text></g><rect width="3" height="4"/></svg>`
	got := shown(t, working(notebook.DisplayOutput(map[string]any{"image/svg+xml": svg})))
	inOrder(t, got, "<svg", "<figcaption>", "Strength, % vol")
	got = shown(t, working(notebook.DisplayOutput(map[string]any{"image/svg+xml": svg, "image/png": dot})))
	if !strings.Contains(got, "<img") {
		t.Error("a picture with its letters is at hand, but not shown")
	}
}

func TestCode(t *testing.T) {
	const source = "if a < b && c > \"<&>\" {\n\treturn 0x1F // why\n}"
	got := shown(t, notebook.NewCell(notebook.Code, source))
	root, err := html.Parse(strings.NewReader(got))
	if err != nil {
		t.Fatal(err)
	}
	if code := find(root, atom.Code); code == nil || words(code) != source {
		t.Errorf("the code reads otherwise than it is: %v", got)
	}
	inOrder(t, got, "3 lines", `class="c-word">if<`, `class="c-text"`, `class="c-note"`)
	if strings.Contains(got, "<details open") || strings.Contains(shown(t, notebook.NewCell(notebook.Code, " \n")), "<details") {
		t.Error("code is not folded, or an empty cell is shown")
	}
}

func TestOtherCells(t *testing.T) {
	if got := shown(t, notebook.NewCell(notebook.Raw, "for another converter")); strings.Contains(got, "converter") {
		t.Error("a raw cell is shown")
	}
	if got := shown(t, working(notebook.Output{Type: "hologram"})); !strings.Contains(got, "[output of type hologram") {
		t.Error("an unknown output vanishes")
	}
}
