package report

import (
	"encoding/base64"
	"strings"
	"testing"

	"swanneck/worksheets/notebook"
)

// hostile are pieces of HTML that try to run, to load or to dress up, each with the words that must stay readable.
// The kinds are those of the OWASP cross-site scripting filter evasion list; the wording is our own.
var hostile = []struct{ name, html, stays string }{
	{"script", `<script>alert(1)</script>vat`, "vat"},
	{"script in capitals with a slash", `<SCRIPT/x>alert(1)</SCRIPT>vat`, "vat"},
	{"broken tags", `<<script>alert(1)//<</script><p>vat`, "vat"},
	{"picture that fails", `<img src=x onerror=alert(1)>vat`, "vat"},
	{"picture from the network", `<img src="https://example.org/track.png" alt="still">vat`, "picture not in this file: still"},
	{"picture without scheme", `<img src="//example.org/x.png">vat`, "vat"},
	{"SVG in a picture", `<img src="data:image/svg+xml;base64,PHN2Zy8+">vat`, "vat"},
	{"HTML in a picture", `<img src="data:text/html,<script>alert(1)</script>">vat`, "vat"},
	{"script link", `<a href="javascript:alert(1)">vat</a>`, "vat"},
	{"script link with a tab", "<a href=\"java\tscript:alert(1)\">vat</a>", "vat"},
	{"script link, encoded", `<a href="&#106;avascript&colon;alert(1)">vat</a>`, "vat"},
	{"data link", `<a href="data:image/png;base64,aaaa">vat</a>`, "vat"},
	{"file link", `<a href="file:///etc/passwd">vat</a>`, "vat"},
	{"attachment link", `<a href="attachment:x">vat</a>`, "vat"},
	{"style expression", `<p style="width:expression(alert(1));background:url(https://example.org)">vat</p>`, "vat"},
	{"style sheet", `<style>@import "https://example.org/x.css";</style><p>vat</p>`, "vat"},
	{"handlers", `<p onclick=alert(1) onmouseover="alert(1)">vat</p>`, "vat"},
	{"frame", `<iframe src="https://example.org" srcdoc="<script>alert(1)</script>"></iframe><p>vat</p>`, "vat"},
	{"form", `<form action="https://example.org"><input name=a><button>go</button></form><p>vat</p>`, "vat"},
	{"refresh", `<meta http-equiv="refresh" content="0;url=https://example.org"><base href="https://example.org"><link rel=stylesheet href=x><p>vat</p>`, "vat"},
	{"SVG with script", `<svg onload=alert(1)><script>alert(1)</script></svg><p>vat</p>`, "vat"},
	{"MathML mix", `<math><mtext><table><mglyph><style><img src=x onerror=alert(1)></style></mglyph></table></mtext></math><p>vat</p>`, "vat"},
	{"noscript mix", `<noscript><p title="</noscript><img src=x onerror=alert(1)>"></noscript><p>vat</p>`, "vat"},
	{"template", `<template><script>alert(1)</script></template><p>vat</p>`, "vat"},
	{"our own classes", `<div class="caution" id="x">vat</div>`, "vat"},
	{"end of the page", `</div></section></main></body></html><script>alert(1)</script><p>vat</p>`, "vat"},
	{"comment", `<!--><script>alert(1)</script>--><p>vat</p>`, "vat"},
	{"turned reading direction", "<p>vat\u202e 04</p>", "vat 04"},
}

func TestHostileHTML(t *testing.T) {
	for _, c := range hostile {
		for place, cell := range map[string]*notebook.Cell{
			"prose":           prosaic("# Title\n\n" + c.html),
			"HTML output":     working(notebook.DisplayOutput(map[string]any{"text/html": c.html, "text/plain": "vat 04"})),
			"Markdown output": working(notebook.DisplayOutput(map[string]any{"text/markdown": c.html})),
			"plain output":    working(notebook.ResultOutput(1, map[string]any{"text/plain": c.html})),
			"stream":          working(notebook.StreamOutput("stdout", c.html)),
			"error":           working(notebook.ErrorOutput(c.html, c.html, []string{c.html})),
			"code":            notebook.NewCell(notebook.Code, c.html),
			"output type":     working(notebook.Output{Type: c.html}),
			"MIME type":       working(notebook.DisplayOutput(map[string]any{c.html: "x"})),
			"picture text":    working(notebook.DisplayOutput(map[string]any{"image/svg+xml": sampleChart(), "text/plain": c.html + `" onload="alert(1)`})),
		} {
			p := page(t, Document{Notebook: book(cell)}) // page checks that it is safe
			if t.Failed() {
				t.Fatalf("%s, as %s, is not safe:\n%s", c.name, place, p[strings.Index(p, "</style>"):])
			}
			if place == "HTML output" && !strings.Contains(p, c.stays) {
				t.Errorf("%s: %q is not left in\n%s", c.name, c.stays, p[strings.Index(p, "</style>"):])
			}
		}
	}
}

// probe counts the complaints of a check.
type probe int

func (p *probe) Helper()               {}
func (p *probe) Errorf(string, ...any) { *p++ }

// The check that the tests above rest on must itself find each kind of harm.
func TestAssertSafeFindsHarm(t *testing.T) {
	for _, bad := range []string{
		`<script></script>`, `<p onclick="x">`, `<p style="x">`, `<img src="https://example.org">`, `<a href="javascript:x">`,
		`<svg><use href="https://example.org#a"></use></svg>`, `<style>x</style>`, `<svg><foreignObject></foreignObject></svg>`, `<p id="a"></p><p id="a"></p>`,
	} {
		var p probe
		assertSafe(&p, parsePage(t, []byte(`<!DOCTYPE html><head></head><body>`+strings.Repeat("<p>x</p>", 8)+bad)))
		if p == 0 {
			t.Errorf("assertSafe finds nothing wrong with %s", bad)
		}
	}
}

func TestHostileSVG(t *testing.T) {
	const open = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 10 10">`
	const shape = `<path d="M0 0L9 9"/>`
	for _, c := range []struct{ name, svg string }{
		{"script", open + `<script>alert(1)</script>` + shape + `</svg>`},
		{"handlers", `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1" onload="alert(1)"><path onclick="alert(1)" d="M0 0L9 9"/></svg>`},
		{"foreign HTML", open + `<foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><img src="x" onerror="alert(1)"/></body></foreignObject>` + shape + `</svg>`},
		{"picture", open + `<image href="https://example.org/x.png"/>` + shape + `</svg>`},
		{"outside use", open + `<use xlink:href="https://example.org/x.svg#a"/><use href="data:image/svg+xml,x#a"/>` + shape + `</svg>`},
		{"link", open + `<a xlink:href="javascript:alert(1)"><path d="M1 1"/></a>` + shape + `</svg>`},
		{"style sheet", open + `<style>@import url(https://example.org)</style>` + shape + `</svg>`},
		{"style attribute", open + `<path style="fill:url(https://example.org#x);stroke:red;background:url(x)" d="M0 0L9 9"/></svg>`},
		{"paint from outside", open + `<path fill="url(https://example.org#x)" clip-path="url('https://example.org#y')" d="M0 0L9 9"/></svg>`},
		{"animation", open + `<use href="#a"><set attributeName="href" to="javascript:alert(1)"/><animate attributeName="href" values="javascript:alert(1)"/></use>` + shape + `</svg>`},
		{"handler in another space", open + `<path xmlns:x="urn:x" x:onclick="alert(1)" d="M0 0L9 9"/></svg>`},
		{"same name in another space", open + `<g xmlns="http://www.w3.org/1999/xhtml"><script xmlns="http://www.w3.org/1999/xhtml">alert(1)</script></g>` + shape + `</svg>`},
		{"title that ends early", open + `<title>&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;</title>` + shape + `</svg>`},
		{"desc with HTML", open + `<desc><![CDATA[</desc><img src=x onerror=alert(1)>]]></desc>` + shape + `</svg>`},
		{"entity", `<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/passwd">]>` + open + shape + `</svg>`},
	} {
		p := page(t, Document{Notebook: book(working(notebook.DisplayOutput(map[string]any{"image/svg+xml": c.svg, "text/plain": "a chart"})))})
		if !strings.Contains(p, `d="M0 0L9 9"`) || !strings.Contains(p, "viewBox=") {
			t.Errorf("%s: the harmless shape or the viewBox is gone:\n%s", c.name, p[strings.Index(p, "</style>"):])
		}
		if strings.Contains(p, "example.org") {
			t.Errorf("%s: an outside address is left:\n%s", c.name, p[strings.Index(p, "</style>"):])
		}
	}
}

// A drawing that cannot be read gives way to the next form.
func TestBrokenSVG(t *testing.T) {
	for _, svg := range []string{"", "no drawing", "<svg><path></svg>", "<html><svg/></html>", `<svg>&a;</svg>`,
		strings.Repeat("<svg>", 300) + strings.Repeat("</svg>", 300), `<svg xmlns="urn:x"></svg>`} {
		p := page(t, Document{Notebook: book(working(notebook.DisplayOutput(map[string]any{"image/svg+xml": svg, "text/plain": "the words"})))})
		if !strings.Contains(p, "the words") || strings.Contains(p, "<figure") {
			t.Errorf("%.40q: the text beside it is not shown", svg)
		}
	}
}

func TestNestedUsesAreCut(t *testing.T) {
	svg := `<svg viewBox="0 0 1 1"><defs><path id="a" d="M0 0"/><g id="b"><use href="#a"/><use href="#a"/></g><g id="c"><use href="#b"/><use href="#c"/></g></defs><use href="#c"/><use href="#a"/></svg>`
	chart, err := safeSVG(svg, "p-")
	if err != nil {
		t.Fatal(err)
	}
	if got := strings.Count(chart.markup, "<use"); got != 3 || strings.Contains(chart.markup, `href="#p-b"`) || strings.Contains(chart.markup, `href="#p-c"`) {
		t.Errorf("uses left: %s; want only those of the path", chart.markup)
	}
}

func TestPicturesAreWhatTheySay(t *testing.T) {
	for name, data := range map[string]string{
		"not base64": "<script>", "HTML": base64.StdEncoding.EncodeToString([]byte("<html>")), "nothing": "",
	} {
		p := page(t, Document{Notebook: book(working(notebook.DisplayOutput(map[string]any{"image/png": data, "text/plain": "the words"})))})
		if strings.Contains(p, "<img") || !strings.Contains(p, "the words") {
			t.Errorf("%s: shown as a picture", name)
		}
	}
}

func FuzzSVG(f *testing.F) {
	f.Add(sampleChart())
	f.Add(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><title>a</title><g style="fill:red;d:x"><text>t</text></g></svg>`)
	f.Fuzz(func(t *testing.T, s string) {
		chart, err := safeSVG(s, "p-")
		if err != nil {
			return
		}
		root := parsePage(t, []byte("<!DOCTYPE html><head></head><body><p>a</p><p>b</p><p>c</p><p>d</p><p>e</p><p>f</p>"+chart.markup))
		assertSafeButIDs(t, root)
		again, err := safeSVG(chart.markup, "")
		if err != nil || again.markup != chart.markup {
			t.Errorf("cleaned twice, different (%v):\n%s\n%s", err, chart.markup, again.markup)
		}
	})
}
