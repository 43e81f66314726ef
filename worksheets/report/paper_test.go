package report

import (
	"bytes"
	"encoding/xml"
	"strings"
	"testing"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	gmtext "github.com/yuin/goldmark/text"
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
	"pgregory.net/rapid"

	"swanneck/worksheets/notebook"
)

// reader reads Markdown as widely used programs do: with tables, strike-through, task lists, foot notes, definition lists
// and bare addresses.
var reader = goldmark.New(goldmark.WithExtensions(extension.GFM, extension.Footnote, extension.DefinitionList))

// onPaper returns a report in Markdown, its tree and its pictures, and checks that nothing in it comes from outside: no
// HTML, no links but those to the web and to mail, no pictures but its own, and no code but in blocks.
func onPaper(t failer, doc Document) (string, ast.Node, []File) {
	t.Helper()
	page, files, err := Markdown(doc, "report of a: run")
	if err != nil {
		t.Errorf("Markdown: %v", err)
		return "", nil, nil
	}
	root := reader.Parser().Parse(gmtext.NewReader(page))
	own := map[string]bool{}
	for _, f := range files {
		own[f.Name] = true
		if !PictureOf("report of a: run", f.Name) {
			t.Errorf("PictureOf does not know the picture %q", f.Name)
		}
	}
	shown := map[string]bool{}
	_ = ast.Walk(root, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.HTMLBlock, *ast.RawHTML:
			t.Errorf("there is HTML in\n%s", page)
		case *ast.AutoLink:
			t.Errorf("a bare address %q became a link in\n%s", n.URL(page), page)
		case *ast.Link:
			if !webLink.Match(n.Destination) {
				t.Errorf("a link leads to %q", n.Destination)
			}
		case *ast.Image:
			name := strings.NewReplacer("%20", " ", "%3A", ":").Replace(string(n.Destination))
			if shown[name] = true; !own[name] {
				t.Errorf("a picture is %q, not one of the report", n.Destination)
			}
		}
		return ast.WalkContinue, nil
	})
	if len(shown) != len(own) {
		t.Errorf("%d of %d pictures are shown", len(shown), len(own))
	}
	return string(page), root, files
}

func TestMarkdownSample(t *testing.T) {
	doc := sample()
	got, _, files := onPaper(t, doc)
	inOrder(t, got, "# Proofing of vat 7\n", "14 October 2031 · proofing-vat-7.ipynb", "## What comes out", "| Water to weigh in | 252.41 | kg | in three steps, by the scale |",
		"## What went in", "| volume of the vat | 356.35 L | **changed** | at 20 °C |", "| strength of the vat | 72.4 %vol |  |  |", "“changed”",
		"lies at Sallow Quay in **vat 7**.", "> **Caution** Spirit above", "### The first step", "```\nwater 252.41 kg\n```", "| Day | Water |", "| Monday | 96.20 | kg |",
		"[tables](<https://example.org/tables>) and `TrueStrength`.", "![Strength falls from 72.4 to 43 % vol as 252 kg of water goes in](report%20of%20a%3A%20run-picture-1.svg)",
		"> **This step stopped.** Reduce: cannot raise", "1. the reading at the temperature of the vat,\n2. a jar", "> A haze that comes back",
		"## Code", "Cell 1:", "```go\nvat := Spirit", "## Where this comes from", "| Density | OIML R 22 (1975), general formula |", "**7K3M-2QPA-9XYZ**", MarkdownEnd)
	if len(files) != 1 {
		t.Fatalf("%d pictures; want the chart", len(files))
	}
	var svg struct {
		XMLName       xml.Name `xml:"http://www.w3.org/2000/svg svg"`
		Width, Height string   `xml:",attr"`
	}
	attrs := struct {
		XMLName xml.Name `xml:"svg"`
		Width   string   `xml:"width,attr"`
		Height  string   `xml:"height,attr"`
	}{}
	if err := xml.Unmarshal(files[0].Data, &attrs); err != nil || attrs.Width != "360" || attrs.Height != "200" || xml.Unmarshal(files[0].Data, &svg) != nil {
		t.Errorf("the picture is no drawing of 360 by 200: %v, %v\n%s", err, attrs, files[0].Data)
	}
	again, _, _ := onPaper(t, sample())
	if again != got {
		t.Error("the same document gave other bytes")
	}
}

func TestMarkdownHostile(t *testing.T) {
	more := []struct{ name, html, stays string }{
		{"Markdown link", "[x](javascript:alert(1)) ![y](https://example.org/t.png) <https://example.org> https://example.org www.example.org", ""},
		{"Markdown HTML", "<b onclick=x>\n\n<!-- c -->\n\n<?php ?>\n\n&lt;script&gt;", ""},
		{"reference", "[a]: https://example.org\n\n[a] [^1]\n\n[^1]: note", ""},
		{"fence", "```\n```\n~~~\n<script>", ""},
		{"breaks out of a table", "a | b \\| c\n|--|\n", ""},
		{"mathematics and attributes", "$x$ {onclick=x} {{x}} `<b>` \\<b>", ""},
	}
	for _, c := range append(more, hostile...) {
		for place, doc := range map[string]Document{
			"prose":           {Notebook: book(prosaic("# Title\n\n" + c.html))},
			"HTML output":     {Notebook: book(working(notebook.DisplayOutput(map[string]any{"text/html": c.html})))},
			"HTML table":      {Notebook: book(working(notebook.DisplayOutput(map[string]any{"text/html": "<table><tr><td><code>" + c.html + "</code></td><td>" + c.html + "</td></tr></table>"})))},
			"Markdown output": {Notebook: book(working(notebook.DisplayOutput(map[string]any{"text/markdown": c.html})))},
			"stream":          {Notebook: book(working(notebook.StreamOutput("stdout", c.html)))},
			"error":           {Notebook: book(working(notebook.ErrorOutput(c.html, c.html, []string{c.html})))},
			"code":            {Notebook: book(notebook.NewCell(notebook.Code, c.html))},
			"output type":     {Notebook: book(working(notebook.Output{Type: c.html}))},
			"picture text":    {Notebook: book(working(notebook.DisplayOutput(map[string]any{"image/png": dot, "text/plain": c.html})))},
			"everywhere else": {Notebook: book(), Title: c.html, FileName: c.html, Notice: c.html, CheckCode: c.html, Results: []ResultRow{{c.html, c.html, c.html, c.html}},
				Inputs: []InputRow{{c.html, c.html, c.html, true}}, Provenance: []Row{{c.html, c.html}}},
		} {
			onPaper(t, doc)
			if t.Failed() {
				t.Fatalf("%s, as %s", c.name, place)
			}
		}
	}
}

// The check that the tests above rest on must itself find each kind of harm.
func TestOnPaperFindsHarm(t *testing.T) {
	for _, bad := range []string{"<b>x</b>", "[x](file:///etc)", "![x](https://example.org/x.png)", "https://example.org"} {
		root := reader.Parser().Parse(gmtext.NewReader([]byte("text " + bad)))
		found := false
		_ = ast.Walk(root, func(n ast.Node, _ bool) (ast.WalkStatus, error) {
			switch n.(type) {
			case *ast.RawHTML, *ast.AutoLink, *ast.Link, *ast.Image:
				found = true
			}
			return ast.WalkContinue, nil
		})
		if !found {
			t.Errorf("the reader of the tests makes nothing of %q", bad)
		}
	}
}

// Text that is written into Markdown reads as it was, wherever it stands.
func TestEscapedTextReadsAsItWas(t *testing.T) {
	piece := rapid.OneOf(rapid.SampledFrom([]string{"*", "_", "`", "~", "|", "\\", "<", ">", "[", "]", "(", ")", "!", "#", "-", "+", "=", ":", "1.", "2)", "&", "&lt;", "amp;",
		"http://a.b", "www.a.b", "a@b.de", "$", "{", "}", "^", "é", "漢", "± 0.1", "43 % vol", "\"", "'", "---", "***", "- ", "\n", "\t", "    "}), rapid.StringMatching(`[a-z0-9 ]{1,6}`))
	rapid.Check(t, func(t *rapid.T) {
		s := strings.Join(rapid.SliceOfN(piece, 1, 12).Draw(t, "text"), "")
		if squeezed(s) == "" {
			return
		}
		for name, doc := range map[string]string{"a paragraph": atLineStart(escaped(strings.TrimSpace(s))), "a heading": "## " + escaped(strings.TrimSpace(s)),
			"a quotation": quoted(atLineStart(escaped(strings.TrimSpace(s)))), "a cell": pipeTable{head: []string{escaped(s), "b"}, rows: [][]string{{"c", "d"}}}.String()} {
			var b bytes.Buffer
			if err := reader.Convert([]byte(doc), &b); err != nil {
				t.Fatal(err)
			}
			root, err := html.Parse(&b)
			if err != nil {
				t.Fatal(err)
			}
			place := map[string]atom.Atom{"a paragraph": atom.P, "a heading": atom.H2, "a quotation": atom.P, "a cell": atom.Th}[name]
			n := find(root, place)
			if n == nil || squeezed(words(n)) != squeezed(s) {
				t.Fatalf("%q as %s, written %q, does not read as it was: %v", s, name, doc, n)
			}
			if strings.Contains(s, "@") {
				return // an address of mail may become a link: it leads nowhere else
			}
			if find(root, atom.A) != nil || find(root, atom.Em) != nil || find(root, atom.Code) != nil || find(root, atom.Del) != nil {
				t.Fatalf("%q as %s, written %q, became markup", s, name, doc)
			}
		}
	})
}

func TestMarkdownOfHTML(t *testing.T) {
	for source, want := range map[string]string{
		`<p>a <b>b</b>c <i> d </i>e</p>`:                                         "a **b**c *d* e",
		`<p>one<br>two<br></p>`:                                                  "one\\\ntwo",
		`<p>- no list</p><p>1. nor this</p>`:                                     "\\- no list\n\n1\\. nor this",
		`<b>(a)</b>b`:                                                            "(a)b", // emphasis would not end there
		`m<sup>3</sup> x<sub>1</sub>`:                                            "m^3 x\\_1",
		"<code>a`b</code> <code>a|b</code>":                                      "``a`b`` a\\|b",
		`<ul><li>a<li>b<ul><li>c</ul></ul><ul><li>d</ul>`:                        "- a\n\n- b\n\n  - c\n\n* d",
		`<ol start=9><li>a<li><p>b</p><p>c</p></ol>`:                             "9. a\n\n10. b\n\n    c",
		`<blockquote><p>a</p><p>b</p></blockquote>`:                              "> a\n>\n> b",
		"<pre>a\n```\nb</pre>":                                                   "````\na\n```\nb\n````",
		`<h2>a <i>b</i></h2><hr><dl><dt>t<dd>d</dl>`:                             "### a *b*\n\n---\n\nt\n\nd",
		`<a href="https://a.b/c?e=(f)&g=h">x [y]</a>`:                            "[x \\[y\\]](<https://a.b/c?e=(f)&g=h>)",
		`<table><caption>c</caption><tr><th>a<th>b</tr><tr><td>1<td>x|y</table>`: "c\n\n| a | b |\n|--:|---|\n| 1 | x\\|y |",
		`<table><tr><td rowspan=2>a<td>b<tr><td>c<tr><td colspan=2>d</table>`:    "|  |  |\n|---|---|\n| a | b |\n|  | c |\n| d |  |",
	} {
		tree := safeTree(source, nil)
		if tree == nil {
			t.Errorf("%s: nothing is left", source)
			continue
		}
		m := &paper{name: "x"}
		if got := strings.Join(m.blocksIn(tree), "\n\n"); got != want {
			t.Errorf("%s:\n%q; want\n%q", source, got, want)
		}
	}
}

func TestTarget(t *testing.T) {
	for href, want := range map[string]string{"https://a.b/c d?e=<f>&g=h\\i|j`": "<https://a.b/c%20d?e=%3Cf%3E&g=h%5Ci%7Cj%60>", "https://a.b/%": "<>", "mailto:a@b.c": "<mailto:a@b.c>"} {
		if got := target(href); got != want {
			t.Errorf("target(%q) = %s; want %s", href, got, want)
		}
	}
}

func TestMarkdownRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		doc  Document
		name string
	}{"no notebook": {Document{}, "a"}, "nil cell": {Document{Notebook: book(nil)}, "a"}, "no name": {sample(), ""}} {
		if _, _, err := Markdown(c.doc, c.name); err == nil || !strings.HasPrefix(err.Error(), "report.Markdown: ") {
			t.Errorf("%s: Markdown = %v", name, err)
		}
	}
	for file, want := range map[string]bool{"a-picture-1.svg": true, "a-picture-12.png": true, "a-picture-01.svg": false, "a-picture-1.svg.txt": false, "b-picture-1.svg": false, "a.svg": false} {
		if PictureOf("a", file) != want {
			t.Errorf("PictureOf(a, %s) = %v; want %v", file, !want, want)
		}
	}
}
