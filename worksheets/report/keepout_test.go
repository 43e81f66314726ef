package report

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/worksheets/notebook"
)

// secret draws words that stand nowhere else.
func secret(what string) *rapid.Generator[string] {
	return rapid.Custom(func(t *rapid.T) string {
		return "zq" + rapid.StringMatching(`[a-z]{6}[0-9]{4}`).Draw(t, what)
	})
}

// Whatever goes in, whatever is printed and whatever the code says, a report with inputs kept out tells none of it.
func TestNothingThatWentInIsTold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var secrets []string
		draw := func(what string) string {
			s := secret(what).Draw(t, what)
			secrets = append(secrets, s)
			return s
		}
		value := draw("value")
		inputs := []InputRow{{draw("name"), value, draw("help"), rapid.Bool().Draw(t, "changed")}, {draw("name"), draw("value"), "", false}}
		code := fmt.Sprintf("%s := InputText(%q, %q)\nResult(\"Hearts\", 1, \"L\", Note(\"at rest\"))\nResult(\"Cut\", 2, \"L\") // %s", draw("variable"), inputs[0].Name, value, draw("remark"))
		result := func(name, note string) notebook.Output {
			m := map[string]any{"name": name, "figure": "1.5", "note": note}
			return notebook.DisplayOutput(map[string]any{resultType: m, "text/html": "<p>" + name + note + "</p>", "text/plain": name + note})
		}
		put := draw("put together")
		cell := notebook.NewCell(notebook.Code, code)
		cell.Outputs = []notebook.Output{
			result("Hearts", "at rest"), result("Cut", "at "+put), result("Of "+put, ""), result(value, value),
			notebook.StreamOutput("stdout", draw("printed")), notebook.StreamOutput("stderr", draw("printed")),
			notebook.DisplayOutput(map[string]any{"text/html": "<table><tr><td>" + draw("table") + "</td></tr></table>"}),
			notebook.DisplayOutput(map[string]any{"text/markdown": draw("Markdown")}),
			notebook.ResultOutput(1, map[string]any{"text/plain": draw("value")}),
			notebook.ResultOutput(1, map[string]any{"image/svg+xml": sampleChart(), "text/plain": draw("beside a chart"), "text/html": "<p>" + draw("beside a chart") + "</p>"}),
			notebook.DisplayOutput(map[string]any{"image/png": dot, "text/plain": draw("beside a picture")}),
			notebook.ErrorOutput(draw("error"), draw("error"), []string{draw("trace")}),
			{Type: draw("type")}, notebook.DisplayOutput(map[string]any{"x/" + draw("MIME type"): "x"}),
		}
		own := prosaic("# A private title " + draw("private prose"))
		hidden := working(notebook.DisplayOutput(map[string]any{"image/svg+xml": strings.Replace(sampleChart(), "Strength falls", draw("private chart"), 1)}))
		for _, c := range []*notebook.Cell{own, hidden} {
			c.Metadata = map[string]any{notebook.OwnKey: map[string]any{"private": true}}
		}
		doc := Document{
			Notebook: book(own, prosaic("# Autumn run\n\n> **Caution.** Hot."), cell, hidden, prosaic("Then rest.")),
			Results:  []ResultRow{{"Hearts", "1.5", "L", "at rest"}, {"Cut", "1.5", "L", "at " + put}, {"Of " + put, "1.5", "L", ""}, {value, "1.5", "L", value}},
			Inputs:   inputs, InputsKeptOut: true, FileName: "run.ipynb", CheckCode: "7K3M-2QPA-9XYZ",
		}
		pageHTML, err := HTML(doc)
		if err != nil {
			t.Fatal(err)
		}
		pageMarkdown, files, err := Markdown(doc, "run")
		if err != nil {
			t.Fatal(err)
		}
		if len(files) != 2 {
			t.Fatalf("%d pictures; want the chart and the picture that are not private", len(files))
		}
		all := string(pageHTML) + string(pageMarkdown)
		for _, f := range files {
			all += f.Name + string(f.Data)
		}
		for _, s := range append(secrets, "InputText", ":= ", "private title") {
			if i := strings.Index(all, s); i >= 0 {
				t.Fatalf("the report tells %q: …%s…", s, all[max(0, i-80):min(len(all), i+80)])
			}
		}
		for _, p := range []string{string(pageHTML), string(pageMarkdown)} {
			for _, s := range []string{"Autumn run", "Hearts", "at rest", "Cut", "Result 3", "Result 4", "1.5", "kept out of this report by its maker", "Hot.", "Then rest.", "Strength falls", "7K3M-2QPA-9XYZ"} {
				if !strings.Contains(p, s) {
					t.Fatalf("%q is left out:\n%s", s, p[strings.Index(p, "</style>")+1:])
				}
			}
		}
	})
}

// Without the wish to keep anything out, the same worksheet tells all of it: the check above can fail.
func TestPrivateCellsAreShownToTheirMaker(t *testing.T) {
	c := prosaic("Anise from the south field")
	c.Metadata = map[string]any{notebook.OwnKey: map[string]any{"private": true}}
	doc := Document{Notebook: book(c, working(notebook.StreamOutput("stdout", "steeped 18 h"))), Inputs: []InputRow{{"anise", "4.5 kg", "", false}},
		Results: []ResultRow{{"Oil", "12", "g", "of 4.5 kg"}}}
	open := page(t, doc)
	doc.InputsKeptOut = true
	kept := page(t, doc)
	for _, s := range []string{"south field", "steeped 18 h", "4.5 kg", "of 4.5 kg"} {
		if !strings.Contains(open, s) || strings.Contains(kept, s) {
			t.Errorf("%q: shown to the maker %v, to others %v; want true, false", s, strings.Contains(open, s), strings.Contains(kept, s))
		}
	}
}
