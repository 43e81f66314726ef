package report

import (
	"bytes"
	"encoding/base64"
	"errors"
	"fmt"
	"net/url"
	"path/filepath"
	"regexp"
	"strings"
)

// File is a picture that stands beside a report in Markdown.
type File struct {
	Name string
	Data []byte
}

// Markdown returns the report as CommonMark with pipe tables, and the pictures that stand beside it; name is that of the
// report's file, without its ending, and begins theirs: NAME-picture-1.svg. Pictures are files of their own because most
// programs that show Markdown refuse drawings inside it. Code comes after everything else, as Markdown cannot fold.
// What stands in cells is rewritten from what HTML shows of it: no HTML is left, and no link that HTML would not have (a
// bare address of mail is one for some programs, whatever is done).
// It fails as HTML does, and if name is empty.
func Markdown(doc Document, name string) (page []byte, pictures []File, err error) {
	if err := doc.check("report.Markdown"); err != nil {
		return nil, nil, err
	}
	if name == "" {
		return nil, nil, errors.New("report.Markdown: the report has no name; want the name of its file without the ending")
	}
	title, pieces := doc.parts()
	doc = doc.toShow()
	m := &paper{name: name}
	m.block("# " + escaped(title))
	var dateline []string
	if !doc.Date.IsZero() {
		dateline = append(dateline, doc.Date.Format("2 January 2006"))
	}
	if doc.FileName != "" {
		dateline = append(dateline, escaped(doc.FileName))
	}
	m.block(atLineStart(strings.Join(dateline, " · ")))
	if doc.Notice != "" {
		m.block(quoted(atLineStart(escaped(doc.Notice))))
	}
	if len(doc.Results) > 0 {
		m.block("## What comes out")
		m.block(resultTable(doc.Results))
	}
	m.inputs(doc)
	for _, p := range pieces {
		p.markdown(m)
	}
	if len(m.code) > 0 {
		m.block("## Code")
		for _, c := range m.code {
			m.block(fmt.Sprintf("Cell %d:", c.number))
			m.block(fenced(c.source, c.language))
		}
	}
	m.provenance(doc)
	m.block(MarkdownEnd)
	return []byte(strings.Join(m.blocks, "\n\n") + "\n"), m.pictures, nil
}

// MarkdownEnd is the last line of every report in Markdown: who finds a file without it knows that no run has written it.
const MarkdownEnd = "Written by a run of the worksheet; the next run writes it anew."

// paper gathers the blocks of a report in Markdown.
type paper struct {
	name     string
	blocks   []string
	code     []codeText // comes at the end
	pictures []File
}

func (m *paper) block(s string) {
	if s != "" {
		m.blocks = append(m.blocks, s)
	}
}

// picture adds a file and returns the Markdown that shows it.
func (m *paper) picture(words, ending string, data []byte) string {
	f := File{fmt.Sprintf("%s-picture-%d.%s", m.name, len(m.pictures)+1, ending), data}
	m.pictures = append(m.pictures, f)
	return "![" + escaped(words) + "](" + strings.ReplaceAll(url.PathEscape(f.Name), ":", "%3A") + ")"
}

// PictureOf says whether a file's name is one of those that Markdown gives to the pictures of a report of this name.
func PictureOf(name, file string) bool {
	rest, ok := strings.CutPrefix(filepath.Base(file), name+"-picture-")
	return ok && pictureEnding.MatchString(rest)
}

var pictureEnding = regexp.MustCompile(`^[1-9][0-9]*\.(svg|png|jpeg|gif|webp)$`)

// dataPicture takes a picture out of a data URI.
func (m *paper) dataPicture(words, uri string) string {
	kind, data, ok := strings.Cut(strings.TrimPrefix(uri, "data:image/"), ";base64,")
	if kind == "svg+xml" {
		kind = "svg"
	}
	raw, err := base64.StdEncoding.DecodeString(data)
	if !ok || err != nil || !pictureEnding.MatchString("1."+kind) {
		return escaped("[picture: " + words + "]")
	}
	return m.picture(words, kind, raw)
}

func resultTable(rows []ResultRow) string {
	t := pipeTable{head: []string{"Result", "Figure", "Unit", "Note"}, right: map[int]bool{1: true}}
	for _, r := range rows {
		t.rows = append(t.rows, []string{escaped(r.Name), escaped(r.Figure), escaped(r.Unit), escaped(r.Note)})
	}
	return t.String()
}

func (m *paper) inputs(doc Document) {
	if doc.InputsKeptOut {
		m.block("## What went in")
		m.block(keptOutWords)
	}
	if len(doc.Inputs) == 0 {
		return
	}
	m.block("## What went in")
	t := pipeTable{head: []string{"Input", "Value", "", "Help"}}
	for _, in := range doc.Inputs {
		mark := ""
		if in.Changed {
			mark = "**" + changedMark + "**"
		}
		value := strings.ReplaceAll(strings.TrimSpace(in.Value), "\n", " / ")
		t.rows = append(t.rows, []string{escaped(in.Name), escaped(value), mark, escaped(in.Help)})
	}
	m.block(t.String())
	if anyChanged(doc.Inputs) {
		m.block(changedLegend)
	}
}

func (m *paper) provenance(doc Document) {
	if len(doc.Provenance) == 0 && doc.CheckCode == "" {
		return
	}
	m.block("## Where this comes from")
	t := pipeTable{head: []string{"", ""}}
	for _, r := range doc.Provenance {
		t.rows = append(t.rows, []string{escaped(r.Label), escaped(r.Value)})
	}
	if doc.CheckCode != "" {
		t.rows = append(t.rows, []string{"Check code", "**" + escaped(doc.CheckCode) + "**"})
	}
	m.block(t.String())
	if doc.CheckCode != "" {
		m.block(checkCodeWords)
	}
}

func (s shownTree) markdown(m *paper) {
	for _, b := range m.blocksIn(s.tree) {
		m.block(b)
	}
}

func (c codeText) markdown(m *paper) {
	if c.open {
		m.block("What went in:")
		m.block(fenced(c.source, c.language))
		return
	}
	m.code = append(m.code, c)
}

func (p printedText) markdown(m *paper) { m.block(fenced(p.text, "")) }

func (s stoppedStep) markdown(m *paper) {
	words := "**This step stopped.** " + escaped(s.message)
	if s.trace != "" {
		words += "\n\n" + fenced(s.trace, "")
	}
	m.block(quoted(words))
}

func (f figures) markdown(m *paper) { m.block(resultTable(f)) }

func (c drawnChart) markdown(m *paper) {
	m.block(m.picture(c.label, "svg", []byte(c.alone)))
	m.block(atLineStart(escaped(c.caption())))
}

func (p shownPicture) markdown(m *paper) { m.block(m.dataPicture(p.label, p.uri)) }

func (n notShown) markdown(m *paper) { m.block(escaped(n.words())) }

// fenced returns a block of code. Its fence is longer than any row of backticks inside.
func fenced(s, language string) string {
	s = strings.Trim(printable(s), "\n")
	fence := "```"
	for _, run := range backticks.FindAllString(s, -1) {
		if len(run) >= len(fence) {
			fence = run + "`"
		}
	}
	if !plainLanguage.MatchString(language) {
		language = ""
	}
	return fence + language + "\n" + s + "\n" + fence
}

var (
	backticks     = regexp.MustCompile("`+")
	plainLanguage = regexp.MustCompile(`^[a-z0-9+#-]{1,20}$`)
)

// pipeTable is a table of Markdown; its cells are escaped already.
type pipeTable struct {
	head  []string
	right map[int]bool // columns of figures
	rows  [][]string
}

func (t pipeTable) String() string {
	var b bytes.Buffer
	line := func(cells []string) {
		b.WriteString("|")
		for i := range t.head {
			cell := ""
			if i < len(cells) {
				cell = cells[i]
			}
			b.WriteString(" " + cell + " |")
		}
		b.WriteString("\n")
	}
	line(t.head)
	b.WriteString("|")
	for i := range t.head {
		b.WriteString(map[bool]string{true: "--:|", false: "---|"}[t.right[i]])
	}
	b.WriteString("\n")
	for _, r := range t.rows {
		line(r)
	}
	return strings.TrimRight(b.String(), "\n")
}
