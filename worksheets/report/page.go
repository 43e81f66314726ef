package report

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html"
	"strings"
	"unicode/utf8"
)

//go:embed report.css
var css string

// policy forbids everything but our own style sheet, by its hash, and pictures inside the file.
func policy() string {
	sum := sha256.Sum256([]byte(css))
	return "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) +
		"'; img-src data:; base-uri 'none'; form-action 'none'"
}

// writePage writes the whole file around the worksheet's HTML, which is safe already.
func writePage(w *bytes.Buffer, doc Document, title, worksheet string) {
	fmt.Fprintf(w, `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="%s">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light">
<title>%s</title>
<style>%s</style>
</head>
<body>
<header>
<h1>%s</h1>
`, policy(), text(title), css, text(title))
	writeDateline(w, doc)
	w.WriteString("</header>\n<main>\n")
	if doc.Notice != "" {
		w.WriteString(`<p class="stopped notice">` + text(doc.Notice) + "</p>\n")
	}
	writeResults(w, doc.Results)
	if worksheet != "" {
		w.WriteString("<section class=\"worksheet\" aria-label=\"Worksheet\">\n" + worksheet + "</section>\n")
	}
	writeProvenance(w, doc.Provenance)
	w.WriteString("</main>\n</body>\n</html>\n")
}

func writeDateline(w *bytes.Buffer, doc Document) {
	var parts []string
	if !doc.Date.IsZero() {
		parts = append(parts, fmt.Sprintf(`<time datetime="%s">%s</time>`,
			doc.Date.Format("2006-01-02"), doc.Date.Format("2 January 2006")))
	}
	if doc.FileName != "" {
		parts = append(parts, `<span class="file">`+text(doc.FileName)+`</span>`)
	}
	if len(parts) > 0 {
		w.WriteString(`<p class="dateline">` + strings.Join(parts, " · ") + "</p>\n")
	}
}

// longUnit is the number of letters above which a unit may take several lines, so that it leaves room on a phone.
const longUnit = 9

func writeResults(w *bytes.Buffer, rows []ResultRow) {
	if len(rows) == 0 {
		return
	}
	w.WriteString("<section class=\"results\">\n<h2>What comes out</h2>\n<table>\n")
	for _, r := range rows {
		unit := "unit"
		if utf8.RuneCountInString(r.Unit) > longUnit {
			unit = "unit long"
		}
		fmt.Fprintf(w, "<tbody>\n<tr><th scope=\"row\">%s</th><td class=\"figure\">%s</td><td class=\"%s\">%s</td></tr>\n",
			text(r.Name), text(r.Figure), unit, text(r.Unit))
		if r.Note != "" {
			fmt.Fprintf(w, "<tr><td class=\"note\" colspan=\"3\">%s</td></tr>\n", text(r.Note))
		}
		w.WriteString("</tbody>\n")
	}
	w.WriteString("</table>\n</section>\n")
}

func writeProvenance(w *bytes.Buffer, rows []Row) {
	if len(rows) == 0 {
		return
	}
	w.WriteString("<section class=\"provenance\">\n<h2>Where this comes from</h2>\n<table>\n<tbody>\n")
	for _, r := range rows {
		fmt.Fprintf(w, "<tr><th scope=\"row\">%s</th><td>%s</td></tr>\n", text(r.Label), text(r.Value))
	}
	w.WriteString("</tbody>\n</table>\n</section>\n")
}

// text escapes a string for text and for quoted attributes, without the control characters that HTML forbids.
func text(s string) string {
	return html.EscapeString(printable(s))
}
