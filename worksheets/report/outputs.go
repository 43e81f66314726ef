package report

import (
	"encoding/json"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"

	"swanneck/worksheets/notebook"
)

// resultType is the MIME type of a declared result.
const resultType = "application/vnd.swanneck.result+json"

// outputs takes in the outputs of a cell. Neighbouring pieces of one stream are one text.
func (b *body) outputs(outputs []notebook.Output) {
	for i := 0; i < len(outputs); i++ {
		o := outputs[i]
		switch o.Type {
		case notebook.Stream:
			for i+1 < len(outputs) && outputs[i+1].Type == notebook.Stream && outputs[i+1].Name == o.Name {
				i++
				o.Text += outputs[i].Text
			}
			b.plain(o.Text, o.Name == "stderr")
		case notebook.Error:
			b.stopped(o)
		case notebook.DisplayData, notebook.ExecuteResult:
			b.display(o)
		default:
			b.cannotShow(o.Type)
		}
	}
}

// inColumns matches text that is set in columns or drawn with characters.
var inColumns = regexp.MustCompile(`\S(?:\t|  )[^\n]*\S|[|+─-╿]`)

func (b *body) plain(s string, aside bool) {
	if s = strings.Trim(terminalText(s), "\n"); strings.TrimSpace(s) != "" {
		b.add(printedText{s, aside})
	}
}

func (b *body) stopped(o notebook.Output) {
	message := strings.TrimSpace(terminalText(o.Evalue))
	if message == "" {
		message = strings.TrimSpace(terminalText(o.Ename))
	}
	trace := strings.TrimSpace(terminalText(strings.Join(o.Traceback, "\n")))
	if trace == message || trace == o.Ename+": "+message {
		trace = ""
	}
	b.add(stoppedStep{message, trace})
}

// display takes in the richest form of a bundle that can be shown: a result, HTML, SVG, a picture, Markdown, text.
func (b *body) display(o notebook.Output) {
	if b.result(o) {
		return
	}
	if s, ok := o.Data.Text("text/html"); ok && b.tree(s) {
		return
	}
	if b.picture(o, description(o)) {
		return
	}
	if s, ok := o.Data.Text("text/markdown"); ok && b.tree(parseProse(s).html()) {
		return
	}
	if s, ok := o.Data.Text("text/plain"); ok {
		b.plain(s, false)
		return
	}
	b.cannotShow(strings.Join(slices.Sorted(maps.Keys(o.Data)), ", "))
}

// result takes in a declared result, if that is what the output is.
func (b *body) result(o notebook.Output) bool {
	name, figure := declared(o)
	row, ok := b.results[name]
	if !ok || !strings.HasPrefix(row.Figure, figure) { // a second one of that name, which stops the cell
		return false
	}
	b.add(figures{row})
	return true
}

// declared returns the name and the figure of a declared result, empty if the output is none.
func declared(o notebook.Output) (name, figure string) {
	var r struct{ Name, Figure string }
	if v, ok := o.Data[resultType]; ok {
		// As it was read from a file or as it was made: through JSON it is the same.
		if text, err := json.Marshal(v); err != nil || json.Unmarshal(text, &r) != nil {
			return "", ""
		}
	}
	return r.Name, r.Figure
}

func (b *body) tree(dirty string) bool {
	tree := safeTree(dirty, nil)
	if tree != nil {
		b.add(shownTree{"shown", tree})
	}
	return tree != nil
}

// picture takes in a drawing or a picture. words describe it if it does not do so itself.
func (b *body) picture(o notebook.Output, words string) bool {
	mime, uri := pictureURI(o.Data)
	if s, ok := o.Data.Text("image/svg+xml"); ok {
		chart, err := safeSVG(s, fmt.Sprintf("c%d-", b.charts+1))
		// The allow-list has no lettering: where a picture shows the same with its letters, that is better.
		if err == nil && (len(chart.lettering) == 0 || uri == "") {
			b.charts++
			label := chart.label
			if label == "" {
				label = words
			}
			if label == "" {
				label = fmt.Sprintf("Chart %d", b.charts)
			}
			b.add(drawnChart{chart, label})
			return true
		}
	}
	if uri == "" {
		return false
	}
	if words == "" {
		words = "Picture"
	}
	b.add(shownPicture{uri, words, pictureWidthPx(o, mime)})
	return true
}

func (b *body) cannotShow(what string) {
	if what != "" {
		b.add(notShown{what})
	}
}

// description is the text beside a picture, if that is a sentence rather than a dump; else it is empty.
func description(o notebook.Output) string {
	s, _ := o.Data.Text("text/plain")
	s = strings.TrimSpace(terminalText(s))
	if strings.Contains(s, "\n") || len(s) > 300 || strings.HasPrefix(s, "<") {
		return ""
	}
	return s
}

// pictureWidthPx is the width in CSS pixels that the output's metadata asks for, 0 if it does not.
func pictureWidthPx(o notebook.Output, mime string) int64 {
	m, _ := o.Metadata[mime].(map[string]any)
	num, _ := m["width"].(json.Number)
	if w, err := num.Int64(); err == nil && w >= 1 && w <= 4000 {
		return w
	}
	return 0
}
