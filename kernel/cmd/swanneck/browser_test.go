package main

import (
	"context"
	"encoding/json"
	"fmt"
	"html"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"swanneck/kernel/engine"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

// browser returns a browser that runs without a screen. Under CI there must be one.
func browser(t *testing.T) string {
	t.Helper()
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	if os.Getenv("CI") == "true" {
		t.Fatal("no chromium is installed; under CI the reports are looked at in one")
	}
	t.Skip("no chromium is installed; the reports are not looked at in a browser")
	return ""
}

// broad is a worksheet that has all that can be too wide for a phone, and tries to load things from elsewhere.
func broad(t *testing.T, dir string) string {
	t.Helper()
	n := notebook.New()
	prose := func(s string) { n.Cells = append(n.Cells, notebook.NewCell(notebook.Markdown, s)) }
	code := func(s string) { n.Cells = append(n.Cells, notebook.NewCell(notebook.Code, s)) }
	long := strings.Repeat("Wacholderbeergeist", 8)
	prose("# " + long + "\n\nSee http://trap.example/prose and [" + long + "](http://trap.example/" + long + ").\n\n![vat](http://trap.example/picture.png) `" + long + "`")
	prose("> **Caution.** " + long + "\n\n| a | b | c | d | e | f | g | h |\n|-|-|-|-|-|-|-|-|\n|" + strings.Repeat(" spirit of juniper |", 8) + "\n\n- " + long + "\n  1. " + long + "\n\n```\n" + long + long + "\n```")
	code(fmt.Sprintf("pot := InputNumber(%q, 45, \"L\", Help(%q))\nkind := InputText(\"kind\", %q)\nlots := InputTable(\"lots\", \"name of the lot; volume (L)\\n%s; 300\\nb; 90\")", "the volume that stands in the pot before the heat is on", long, long, long))
	code(fmt.Sprintf("Result(%q, pot*12345.678, %q, PlusMinus(0.01), Note(%q))\nResult(\"Hearts\", -1e-30, \"kg\")\nkind", "what remains of it after all of the heads have been taken off", "L of pure alcohol at 20 °C", long))
	code(fmt.Sprintf("Result(%q, 3.5, \"g\")\nInputNumber(%q, 1, \"1\")\nlots", long, long))
	code(fmt.Sprintf("fmt.Println(%q)\nfmt.Println(\"a   b   c\", %q)", long+long, long+long))
	code("type trap struct{}\nfunc (trap) HTML() string { return `<p>vat</p><img src=\"http://trap.example/cell.png\"><link rel=stylesheet href=\"http://trap.example/a.css\"><script src=\"http://trap.example/a.js\"></script><iframe src=\"http://trap.example/frame\"></iframe><p style=\"background:url(http://trap.example/back.png);width:3000px\">wide</p><table width=3000><tr><td width=3000>" + long + "</td></tr></table>` }\ntrap{}")
	code("c := plots.New(\"Heads, hearts and tails of a run that took the whole of a long autumn day and half the night\", plots.Axis{Label: \"time\", Unit: \"min\"}, plots.Axis{Label: \"strength\", Unit: \"% vol\"})\nc.Line(\"strength\", []float64{0, 60, 120}, []float64{82, 74, 20})\nc")
	code(fmt.Sprintf("panic(%q)", long+long))
	name := filepath.Join(dir, "broad.ipynb")
	if err := notebook.WriteFile(name, n); err != nil {
		t.Fatal(err)
	}
	return name
}

// reports runs the shipped worksheets and a broad one, each with its inputs shown and kept out, and returns their reports.
func reports(t *testing.T) map[string]string {
	t.Helper()
	sheets, err := filepath.Glob("../../../worksheets/library/*.ipynb")
	if err != nil || len(sheets) == 0 {
		t.Fatalf("no worksheets in the library: %v", err)
	}
	sheets = append(sheets, broad(t, t.TempDir()))
	eng, err := limits{TimeLimit: "60s", Memory: 1024}.engine(time.Time{})
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]string{}
	for _, path := range sheets {
		sheet, err := runner.Load(path)
		if err != nil {
			t.Fatal(err)
		}
		set, err := given{}.fit(path, sheet)
		if err != nil {
			t.Fatal(err)
		}
		o := runner.Options{Engine: engine.Options(eng), Versions: versions(), Inputs: set}
		o.Engine.Folder = filepath.Dir(path)
		out, err := runner.Run(context.Background(), sheet, o)
		if err != nil {
			t.Fatal(err)
		}
		for _, o.KeepInputsOut = range []bool{false, true} {
			_, page, err := runner.Write(out, t.TempDir(), path, time.Date(2026, 3, 14, 0, 0, 0, 0, time.UTC), o)
			if err != nil {
				t.Fatal(err)
			}
			text, err := os.ReadFile(page)
			if err != nil {
				t.Fatal(err)
			}
			name := strings.TrimSuffix(filepath.Base(path), ".ipynb")
			if o.KeepInputsOut {
				name += ", inputs kept out"
			}
			found[name] = string(text)
		}
	}
	return found
}

// asked collects what a browser asks the network for: every name leads to the server that keeps it.
type asked struct {
	sync.Mutex
	paths []string
}

// frames is the page that holds all reports, each at several widths with its folds open, and says how wide they want to
// be. A picture from elsewhere is asked for as well: so the test knows that it would see one.
const frames = `<!DOCTYPE html><body><img src="http://control.example/control.png"><script>
const names = %s, widths = [320, 390, 1280], found = [];
let left = names.length;
names.forEach((name, i) => {
	const f = document.createElement('iframe');
	f.style.border = 0; f.style.height = '900px'; f.style.width = '390px'; f.src = '/report/' + i;
	f.onload = () => {
		const d = f.contentDocument;
		d.querySelectorAll('details').forEach(x => x.open = true);
		for (const w of widths) {
			f.style.width = w + 'px';
			const out = [...d.querySelectorAll('main *')].filter(e => {
				if (e.closest('.wide, pre, svg')) return false; // these scroll, or scale
				const r = e.getBoundingClientRect();
				return r.right > w + 1 || r.left < -1;
			}).map(e => e.tagName + '.' + (e.closest('[class]') || e).className + ': ' + e.textContent.trim().slice(0, 40));
			found.push({name, width: w, wants: d.documentElement.scrollWidth, outside: out.slice(0, 3), text: d.body.innerText.length});
		}
		if (--left === 0) document.body.innerHTML = '<pre id="found"></pre>', document.getElementById('found').textContent = JSON.stringify(found);
	};
	document.body.append(f);
});
</script></body>`

var foundJSON = regexp.MustCompile(`(?s)<pre id="found">(.*?)</pre>`)

// No report asks the network for anything, and none is wider than the screen that shows it.
func TestReportsInABrowser(t *testing.T) {
	if testing.Short() {
		t.Skip("starts a browser")
	}
	program := browser(t)
	pages := reports(t)
	var names []string
	for name := range pages {
		names = append(names, name)
	}
	slices.Sort(names)
	list, err := json.Marshal(names)
	if err != nil {
		t.Fatal(err)
	}
	var seen asked
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		seen.Lock()
		seen.paths = append(seen.paths, r.Host+r.URL.Path)
		seen.Unlock()
		var i int
		switch _, err := fmt.Sscanf(r.URL.Path, "/report/%d", &i); {
		case r.URL.Path == "/frames":
			fmt.Fprintf(w, frames, list)
		case err == nil && i >= 0 && i < len(names):
			fmt.Fprint(w, pages[names[i]])
		default:
			http.NotFound(w, r)
		}
	}))
	defer server.Close()
	address := server.Listener.Addr().(*net.TCPAddr)

	ctx, stop := context.WithTimeout(context.Background(), 2*time.Minute)
	defer stop()
	cmd := exec.CommandContext(ctx, program, "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--user-data-dir="+t.TempDir(), "--no-first-run",
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-default-apps", "--disable-extensions", "--disable-features=NetworkTimeServiceQuerying",
		"--host-resolver-rules=MAP * "+address.String(), "--window-size=1400,900", "--virtual-time-budget=20000", "--dump-dom",
		"http://reports.example/frames")
	cmd.Env = append(os.Environ(), "http_proxy=", "https_proxy=", "HTTP_PROXY=", "HTTPS_PROXY=", "all_proxy=", "ALL_PROXY=")
	var complaints strings.Builder
	cmd.Stderr = &complaints
	dom, err := cmd.Output()
	if err != nil {
		t.Fatalf("%s: %v\n%s", program, err, complaints.String())
	}
	m := foundJSON.FindSubmatch(dom)
	if m == nil {
		t.Fatalf("the browser has not measured the reports:\n%.2000s\n%s", dom, complaints.String())
	}
	var measured []struct {
		Name               string
		Width, Wants, Text int
		Outside            []string
	}
	if err := json.Unmarshal([]byte(html.UnescapeString(string(m[1]))), &measured); err != nil {
		t.Fatal(err)
	}
	if len(measured) != 3*len(names) {
		t.Errorf("%d measurements of %d reports; want three of each", len(measured), len(names))
	}
	for _, r := range measured {
		if r.Wants > r.Width || len(r.Outside) > 0 {
			t.Errorf("%s: at a width of %d px it wants %d px; outside are %v", r.Name, r.Width, r.Wants, r.Outside)
		}
		if r.Text < 500 {
			t.Errorf("%s: at a width of %d px it shows %d letters; was it rendered?", r.Name, r.Width, r.Text)
		}
	}
	control := false
	for _, p := range seen.paths {
		switch {
		case p == "control.example/control.png":
			control = true
		case strings.HasPrefix(p, "update.googleapis.com/service/update"): // the browser itself, for news of its parts
		case strings.HasPrefix(p, "reports.example/report/"), p == "reports.example/frames", p == "reports.example/favicon.ico": // of the page that holds them
		default:
			t.Errorf("a report asks for %s", p)
		}
	}
	if !control {
		t.Error("the picture that the page around the reports asks for was not seen: neither would be those of reports")
	}
}
