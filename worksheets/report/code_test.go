package report

import (
	"html"
	"regexp"
	"strings"
	"testing"
)

func TestColourCode(t *testing.T) {
	src := "// to 43 %\nfor i := range 3 { // \"twice\"\n\tvar x float64 = .5e1\n\tfmt.Println(\"a < b\", 'c', `raw\n<b>`, x, i)\n}\n/* the\nend */"
	got := colourCode("go", src)
	inOrder(t, got, `class="c-note">// to 43 %<`, `class="c-word">for<`, `class="c-word">range<`, `class="c-num">3<`, `class="c-type">float64<`,
		`class="c-num">.5e1<`, `class="c-func">Println<`, `class="c-text">&#34;a &lt; b&#34;<`, `class="c-text">&#39;c&#39;<`, "class=\"c-text\">`raw\n&lt;b&gt;`<", "class=\"c-note\">/* the\nend */<")
	for name, s := range map[string]string{"go": src, "another language": "<b>for", "broken": "for \"open", "empty": "", "carriage returns": "a := `x\r\ny`\r\nb := 2"} {
		lang := "go"
		if name == "another language" {
			lang = "pear"
		}
		plain := html.UnescapeString(regexp.MustCompile(`</?span[^>]*>`).ReplaceAllString(colourCode(lang, s), ""))
		if plain != html.UnescapeString(text(strings.TrimRight(printable(s), "\n"))) {
			t.Errorf("%s: the reader sees %q of %q", name, plain, s)
		}
	}
}
