package report

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html"
	"slices"
	"strings"
	"unicode/utf8"
)

//go:embed report.css
var css string

// policy forbids everything but the page's own style sheet, by its hash, and pictures inside the file.
func policy(css string) string {
	sum := sha256.Sum256([]byte(css))
	return "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) +
		"'; img-src data:; base-uri 'none'; form-action 'none'"
}

// writeHead begins a file that stands alone: its head with the style sheet, and the page's header with the title, which
// stays open.
func writeHead(w *bytes.Buffer, title, css string) {
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
`, policy(css), text(title), css, text(title))
}

// writePage writes the whole file around the worksheet's HTML, which is safe already.
func writePage(w *bytes.Buffer, doc Document, title, worksheet string) {
	writeHead(w, title, css)
	writeDateline(w, doc)
	w.WriteString("</header>\n<main>\n")
	if doc.Notice != "" {
		w.WriteString(`<p class="stopped notice">` + text(doc.Notice) + "</p>\n")
	}
	writeResults(w, doc.Results)
	writeInputs(w, doc)
	if worksheet != "" {
		class := "worksheet"
		if doc.Together {
			class += " together"
		}
		w.WriteString("<section class=\"" + class + "\" aria-label=\"Worksheet\">\n" + worksheet + "</section>\n")
	}
	writeProvenance(w, doc)
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

// longWord is the number of letters above which a word in a name may be broken anywhere.
const longWord = 16

func wordy(name string) string {
	if slices.ContainsFunc(strings.Fields(name), func(w string) bool { return utf8.RuneCountInString(w) > longWord }) {
		return ` class="wordy"`
	}
	return ""
}

// longUnit and longFigure are the numbers of letters above which a unit or a figure may take several lines, so that they
// leave room on a phone.
const (
	longUnit   = 9
	longFigure = 13
)

func writeResults(w *bytes.Buffer, rows []ResultRow) {
	if len(rows) == 0 {
		return
	}
	w.WriteString("<section class=\"results\">\n<h2>What comes out</h2>\n<table>\n")
	for _, r := range rows {
		w.WriteString(resultBody(r))
	}
	w.WriteString("</table>\n</section>\n")
}

// resultBody returns a result as rows of a table.
func resultBody(r ResultRow) string {
	unit, note := "unit", ""
	if utf8.RuneCountInString(r.Unit) > longUnit {
		unit = "unit long"
	}
	if r.Note != "" {
		note = "<tr><td class=\"note\" colspan=\"3\">" + text(r.Note) + "</td></tr>\n"
	}
	figure := "figure"
	if utf8.RuneCountInString(r.Figure) > longFigure {
		figure = "figure long"
	}
	return fmt.Sprintf("<tbody>\n<tr><th scope=\"row\"%s>%s</th><td class=\"%s\">%s</td><td class=\"%s\">%s</td></tr>\n%s</tbody>\n",
		wordy(r.Name), text(r.Name), figure, strings.ReplaceAll(text(r.Figure), "± ", "±\u00a0"), unit, text(r.Unit), note)
}

// longValue is the number of letters above which an input's value may take several lines.
const longValue = 16

// changedMark stands, as a word, beside an input that was changed.
const changedMark = "changed"

const changedLegend = "“" + changedMark + "”: given for this run, in place of the value that stands in the worksheet."

func writeInputs(w *bytes.Buffer, doc Document) {
	if len(doc.Inputs) == 0 && !doc.InputsKeptOut {
		return
	}
	w.WriteString("<section class=\"inputs\">\n<h2>What went in</h2>\n")
	if doc.InputsKeptOut {
		w.WriteString("<p>" + keptOutWords + "</p>\n</section>\n")
		return
	}
	w.WriteString("<table>\n")
	for _, in := range doc.Inputs {
		class, mark := "", ""
		if in.Changed {
			class, mark = ` class="changed"`, `<strong class="mark">`+changedMark+`</strong>`
			if in.Help != "" {
				mark += " · "
			}
		}
		value, lines := inputValue(in.Value)
		fmt.Fprintf(w, "<tbody%s>\n", class)
		if lines > 1 {
			fmt.Fprintf(w, "<tr><th scope=\"rowgroup\" colspan=\"2\"%s>%s</th></tr>\n<tr><td class=\"lines\" colspan=\"2\">%s</td></tr>\n", wordy(in.Name), text(in.Name), value)
		} else {
			size := "value"
			if utf8.RuneCountInString(in.Value) > longValue {
				size = "value long"
			}
			fmt.Fprintf(w, "<tr><th scope=\"row\"%s>%s</th><td class=\"%s\">%s</td></tr>\n", wordy(in.Name), text(in.Name), size, value)
		}
		if mark != "" || in.Help != "" {
			fmt.Fprintf(w, "<tr><td class=\"note\" colspan=\"2\">%s%s</td></tr>\n", mark, text(in.Help))
		}
		w.WriteString("</tbody>\n")
	}
	w.WriteString("</table>\n")
	if anyChanged(doc.Inputs) {
		w.WriteString(`<p class="legend">` + changedLegend + "</p>\n")
	}
	w.WriteString("</section>\n")
}

// inputValue returns a value as HTML, and its lines: a small table has several.
func inputValue(value string) (markup string, lines int) {
	var out []string
	for line := range strings.Lines(strings.TrimSpace(value)) {
		out = append(out, text(strings.TrimSpace(line)))
	}
	return strings.Join(out, "<br>"), len(out)
}

func anyChanged(inputs []InputRow) bool {
	return slices.ContainsFunc(inputs, func(in InputRow) bool { return in.Changed })
}

const checkCodeWords = "Another copy of this report, or a run of your own, with the same check code has the same code in its cells, the same changed inputs and the same results as printed. A changed digit gives another check code. It is no signature: whoever can run the worksheet can make one."

func writeProvenance(w *bytes.Buffer, doc Document) {
	if len(doc.Provenance) == 0 && doc.CheckCode == "" {
		return
	}
	w.WriteString("<section class=\"provenance\">\n<h2>Where this comes from</h2>\n<table>\n<tbody>\n")
	for _, r := range doc.Provenance {
		fmt.Fprintf(w, "<tr><th scope=\"row\">%s</th><td>%s</td></tr>\n", text(r.Label), text(r.Value))
	}
	if doc.CheckCode != "" {
		fmt.Fprintf(w, "<tr><th scope=\"row\">Check code</th><td><strong>%s</strong></td></tr>\n", text(doc.CheckCode))
	}
	w.WriteString("</tbody>\n</table>\n")
	if doc.CheckCode != "" {
		w.WriteString("<p>" + checkCodeWords + "</p>\n")
	}
	w.WriteString("</section>\n")
}

// text escapes a string for text and for quoted attributes, without the control characters that HTML forbids.
func text(s string) string {
	return html.EscapeString(printable(s))
}
