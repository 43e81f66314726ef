package report

import (
	"regexp"
	"sync"

	"github.com/microcosm-cc/bluemonday"
)

// allowedHTML is the allow-list for the HTML of prose and outputs: text, lists, tables, links and pictures. No style,
// class, id, form, frame or script. It is made when it is first needed: a kernel writes no report.
var allowedHTML = sync.OnceValue(func() *bluemonday.Policy {
	p := bluemonday.NewPolicy()
	p.AllowElements(
		"h1", "h2", "h3", "h4", "h5", "h6", "p", "br", "hr", "div", "span", "pre", "blockquote",
		"b", "strong", "i", "em", "u", "s", "del", "ins", "sub", "sup", "small", "mark",
		"code", "kbd", "samp", "var", "abbr", "q", "cite",
		"ul", "ol", "li", "dl", "dt", "dd", "figure", "figcaption",
		"table", "caption", "thead", "tbody", "tfoot", "tr", "th", "td",
	)
	small := regexp.MustCompile(`^[0-9]{1,4}$`)
	p.AllowAttrs("colspan", "rowspan").Matching(regexp.MustCompile(`^[1-9][0-9]?$`)).OnElements("td", "th")
	p.AllowAttrs("scope").Matching(regexp.MustCompile(`^(row|col|rowgroup|colgroup)$`)).OnElements("th")
	p.AllowAttrs("align").Matching(regexp.MustCompile(`^(left|right|center)$`)).OnElements("td", "th")
	p.AllowAttrs("start").Matching(small).OnElements("ol")
	p.AllowAttrs("href").OnElements("a")
	p.AllowAttrs("src", "alt").OnElements("img")
	p.AllowAttrs("width", "height").Matching(small).OnElements("img")
	p.AllowURLSchemes("http", "https", "mailto", "attachment")
	p.AllowDataURIImages()
	p.RequireParseableURLs(true)
	p.RequireNoReferrerOnLinks(true)
	p.RequireNoFollowOnLinks(true)
	p.SkipElementsContent("title", "svg", "math", "template", "textarea", "select", "button", "object", "applet", "audio", "video", "canvas")
	return p
})
