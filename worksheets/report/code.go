package report

import (
	"strings"

	"github.com/alecthomas/chroma/v2"
	"github.com/alecthomas/chroma/v2/lexers"
)

// maxColouredBytes is the longest source that is coloured; longer ones are shown plain.
const maxColouredBytes = 200_000

// colourCode returns the HTML of source code, its parts in spans of our own classes.
func colourCode(language, source string) string {
	source = printable(strings.TrimRight(source, "\n"))
	lexer := lexers.Get(language)
	if language == "" || lexer == nil || len(source) > maxColouredBytes {
		return text(source)
	}
	tokens, err := chroma.Coalesce(lexer).Tokenise(&chroma.TokeniseOptions{State: "root"}, source)
	if err != nil {
		return text(source)
	}
	var b, plain strings.Builder
	for t := tokens(); t != chroma.EOF; t = tokens() {
		plain.WriteString(t.Value)
		if class := codeClass(t.Type); class != "" {
			b.WriteString(`<span class="` + class + `">` + text(t.Value) + `</span>`)
		} else {
			b.WriteString(text(t.Value))
		}
	}
	// A lexer that loses or changes text must not change what the reader sees.
	if strings.TrimRight(plain.String(), "\n") != source {
		return text(source)
	}
	return b.String()
}

func codeClass(t chroma.TokenType) string {
	switch {
	case t.InCategory(chroma.Comment):
		return "c-note"
	case t == chroma.KeywordType || t == chroma.NameClass:
		return "c-type"
	case t.InCategory(chroma.Keyword):
		return "c-word"
	case t.InSubCategory(chroma.LiteralString):
		return "c-text"
	case t.InSubCategory(chroma.LiteralNumber):
		return "c-num"
	case t == chroma.NameFunction || t == chroma.NameBuiltin:
		return "c-func"
	}
	return ""
}
