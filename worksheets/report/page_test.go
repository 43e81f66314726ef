package report

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"swanneck/worksheets/notebook"
)

func parsePage(t *testing.T, page []byte) *html.Node {
	t.Helper()
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	return root
}

func inOrder(t *testing.T, s string, parts ...string) {
	t.Helper()
	if i := strings.Index(s, "</style>"); i >= 0 {
		s = s[i:]
	}
	for _, p := range parts {
		i := strings.Index(s, p)
		if i < 0 {
			t.Errorf("%q is missing, or not after what should come before it", p)
			continue
		}
		s = s[i+len(p):]
	}
}

func each(n *html.Node, f func(*html.Node)) {
	f(n)
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		each(c, f)
	}
}

// failer is what assertSafe needs of a test, so that a test can try assertSafe itself.
type failer interface {
	Helper()
	Errorf(format string, args ...any)
}

// assertSafe checks a whole page as a browser would build it: nothing that runs, nothing that loads.
func assertSafe(t failer, root *html.Node) {
	t.Helper()
	assertSafeButIDs(t, root)
	ids := map[string]bool{}
	each(root, func(n *html.Node) {
		if id := attr(n, "id"); id != "" && ids[id] {
			t.Errorf("the identifier %q stands twice", id)
		} else {
			ids[id] = true
		}
	})
}

func assertSafeButIDs(t failer, root *html.Node) {
	t.Helper()
	elements := 0
	each(root, func(n *html.Node) {
		if n.Type != html.ElementNode {
			return
		}
		elements++
		switch n.Data {
		case "script", "iframe", "object", "embed", "link", "base", "form", "input", "foreignObject", "foreignobject", "animate", "set", "image", "video", "audio", "template":
			t.Errorf("the page has a <%s>", n.Data)
		case "style":
			if n.Parent.Data != "head" || n.FirstChild.Data != css && n.FirstChild.Data != wallCSS {
				t.Errorf("the page has a style sheet that is not ours")
			}
		}
		for _, a := range n.Attr {
			key, value := strings.ToLower(a.Key), strings.ToLower(a.Val)
			switch {
			case strings.HasPrefix(key, "on"), key == "style", key == "srcset", key == "action", key == "background", key == "poster":
				t.Errorf("<%s> has the attribute %s=%q", n.Data, a.Key, a.Val)
			case key == "src" && !strings.HasPrefix(value, "data:image/"):
				t.Errorf("<%s> loads %q", n.Data, a.Val)
			case key == "href" && n.Data != "a" && !strings.HasPrefix(value, "#"):
				t.Errorf("<%s> refers to %q", n.Data, a.Val)
			case key == "href" && n.Data == "a" && !webLink.MatchString(a.Val):
				t.Errorf("a link leads to %q", a.Val)
			case strings.Contains(value, "javascript:"):
				t.Errorf("<%s> has %s=%q", n.Data, a.Key, a.Val)
			}
		}
	})
	if elements < 8 {
		t.Errorf("only %d elements were looked at", elements)
	}
}

func page(t *testing.T, doc Document) string {
	t.Helper()
	data, err := HTML(doc)
	if err != nil {
		t.Fatal(err)
	}
	assertSafe(t, parsePage(t, data))
	return string(data)
}

func book(cells ...*notebook.Cell) *notebook.Notebook {
	n := notebook.New()
	n.Cells = cells
	return n
}

func prosaic(s string) *notebook.Cell { return notebook.NewCell(notebook.Markdown, s) }

func working(outputs ...notebook.Output) *notebook.Cell {
	c := notebook.NewCell(notebook.Code, "x")
	c.Outputs = outputs
	return c
}

func TestTitle(t *testing.T) {
	for _, c := range []struct {
		name, title, file, source, want string
		left                            int // headings of the prose that are left
	}{
		{"from the heading", "", "a.ipynb", "# Vat *7* & `co`\n\nText", "Vat 7 &amp; co", 0},
		{"given, same as the heading", "vat 7", "", "Vat 7\n===\n", "vat 7", 0},
		{"given, another heading", "Vat 8", "", "# Vat 7", "Vat 8", 1},
		{"from the file", "", "/tmp/vat-7.ipynb", "no heading", "vat-7", 0},
		{"from nothing", "", "", "", "Worksheet", 0},
		{"not from a quotation", "", "", "> # In a quotation\n\n# Vat 7", "Vat 7", 1},
		{"injection", `</title><script>alert(1)</script>"'`, "", "", "&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;&#34;&#39;", 0},
	} {
		p := page(t, Document{Notebook: book(prosaic(c.source)), Title: c.title, FileName: c.file})
		if !strings.Contains(p, "<h1>"+c.want+"</h1>") || !strings.Contains(p, "<title>"+c.want+"</title>") {
			t.Errorf("%s: no title %q in\n%s", c.name, c.want, p[strings.Index(p, "</style>"):])
		}
		root := parsePage(t, []byte(p))
		if got := len(findAll(root, atom.H2)); got != c.left {
			t.Errorf("%s: %d headings left; want %d", c.name, got, c.left)
		}
		if got := len(findAll(root, atom.H1)); got != 1 {
			t.Errorf("%s: %d first headings; want 1", c.name, got)
		}
	}
}

func TestSameBytes(t *testing.T) {
	first := page(t, sample())
	for range 5 {
		if page(t, sample()) != first {
			t.Fatal("the same document gave other bytes")
		}
	}
	other := sample()
	other.Date = other.Date.AddDate(0, 0, 1)
	if page(t, other) == first {
		t.Error("another date gave the same bytes")
	}
}

func TestPolicyNamesTheStyleSheet(t *testing.T) {
	p := page(t, Document{Notebook: book()})
	inHead := p[:strings.Index(p, "</head>")]
	for _, want := range []string{"default-src 'none'", "img-src data:", "style-src 'sha256-", `name="viewport"`} {
		if !strings.Contains(inHead, want) {
			t.Errorf("the head lacks %q", want)
		}
	}
	if strings.Contains(css, "url(") || strings.Contains(css, "@import") || strings.Contains(css, "</") {
		t.Error("the style sheet loads something, or ends itself")
	}
}

func TestRowsAreEscaped(t *testing.T) {
	p := page(t, Document{
		Notebook: book(), FileName: "<b>.ipynb", Date: time.Date(2031, 1, 2, 0, 0, 0, 0, time.UTC),
		Results:    []ResultRow{{"<i>n", "<i>f", "<i>u", "<i>t"}},
		Provenance: []Row{{"<i>l", "<img src=x onerror=alert(1)>"}},
	})
	inOrder(t, p, `<time datetime="2031-01-02">2 January 2031</time>`, "&lt;b&gt;.ipynb", "&lt;i&gt;n", "&lt;i&gt;f", "&lt;i&gt;u", "&lt;i&gt;t", "&lt;i&gt;l", "&lt;img src=x")
}

func TestRefuses(t *testing.T) {
	for name, doc := range map[string]Document{"no notebook": {}, "nil cell": {Notebook: book(nil)}} {
		if _, err := HTML(doc); err == nil || !strings.HasPrefix(err.Error(), "report.HTML: ") {
			t.Errorf("%s: HTML = %v", name, err)
		}
	}
}
