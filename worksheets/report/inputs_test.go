package report

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"swanneck/worksheets/notebook"
)

func TestInputs(t *testing.T) {
	doc := Document{Notebook: book(), Inputs: []InputRow{
		{"pot <i>volume", "390 L", "as <b>read", true}, {"still", "pot", "", true}, {"steeped", "yes", "overnight", false}, {"lots", "a; b\n1; 2", "", false},
	}}
	p := page(t, doc)
	inOrder(t, p, "<h2>What went in</h2>", `<tbody class="changed">`, "pot &lt;i&gt;volume", ">390 L<", `<strong class="mark">changed</strong> · as &lt;b&gt;read`,
		">still<", `<strong class="mark">changed</strong></td>`, "<tbody>", "steeped", ">overnight<", "lots", `<td class="lines" colspan="2">a; b<br>1; 2</td>`, "“changed”: given for this run")
	if n := strings.Count(p, ">changed<"); n != 2 {
		t.Errorf("%d inputs are marked as changed; want 2", n)
	}
	doc.Inputs = doc.Inputs[2:]
	if p = page(t, doc); strings.Contains(p, "“changed”") {
		t.Error("the legend stands there though nothing was changed")
	}
	if p = page(t, Document{Notebook: book()}); strings.Contains(p, "What went in") {
		t.Error("there is a section of inputs without inputs")
	}
}

// Code that says what went in is open where no table says it, and folded where one does.
func TestInputsInCode(t *testing.T) {
	c := notebook.NewCell(notebook.Code, "litres := 390.0")
	c.Metadata = map[string]any{notebook.OwnKey: map[string]any{"role": RoleInputs}}
	if p := page(t, Document{Notebook: book(c)}); !strings.Contains(p, `<details class="code" open><summary>What went in`) {
		t.Error("the code of a cell with what goes in is not open")
	}
	if p := page(t, Document{Notebook: book(c), Inputs: []InputRow{{Name: "pot volume", Value: "390 L"}}}); strings.Contains(p, "<details class=\"code\" open") {
		t.Error("the code is open though the inputs stand in a table")
	}
}

func TestCheckCode(t *testing.T) {
	p := page(t, Document{Notebook: book(), CheckCode: "7K3M-<b>", Provenance: []Row{{"Seed", "0"}}})
	inOrder(t, p, "Where this comes from", "Seed", "Check code", "7K3M-&lt;b&gt;", checkCodeWords, "</section>", "</main>")
	if p := page(t, Document{Notebook: book(), Provenance: []Row{{"Seed", "0"}}}); strings.Contains(p, "heck code") {
		t.Error("a check code is spoken of, and there is none")
	}
}

// Results stand where their cell declared them as well, as the table at the top has them.
func TestResultsInPlace(t *testing.T) {
	out := func(name, figure string) notebook.Output {
		return notebook.DisplayOutput(map[string]any{resultType: map[string]any{"name": name, "figure": figure}, "text/html": "<p>" + name + " elsewhere</p>"})
	}
	p := page(t, Document{
		Notebook: book(working(out("Water", "252.5"), out("Strength", "72.46")), working(out("Strength", "1"), out("Foreign", "3"))),
		Results:  []ResultRow{{"Strength", "72.46 ± 0.12", "% vol", "at 20 °C"}, {"Water", "252.5", "kg", ""}},
	})
	worksheet := p[strings.Index(p, `class="worksheet"`):]
	inOrder(t, worksheet, "Water", "252.5", "kg", "72.46 ±\u00a00.12", "at 20 °C", "Strength elsewhere", "Foreign elsewhere")
	root, err := html.Parse(strings.NewReader(worksheet))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(findAll(root, atom.Table)); n != 1 {
		t.Errorf("results that follow each other stand in %d tables; want 1", n)
	}
}
