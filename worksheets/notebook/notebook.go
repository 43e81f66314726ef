package notebook

import "strings"

// The version of the format that this package writes.
const (
	Major = 4
	Minor = 5
)

// The kinds of cell of the format.
const (
	Code     = "code"
	Markdown = "markdown"
	Raw      = "raw"
)

// The kinds of output of the format.
const (
	Stream        = "stream"
	DisplayData   = "display_data"
	ExecuteResult = "execute_result"
	Error         = "error"
)

// Notebook is one worksheet file.
type Notebook struct {
	Cells    []*Cell
	Metadata map[string]any // of the whole file: kernelspec, language_info, swanneck and whatever else stood there
	Major    int            // of the format; 4
	Minor    int            // of the format; 5, or a later one as read
	Extra    map[string]any // top-level fields that the format does not name
}

// Cell is one cell. Which fields count depends on Type; a cell of an unknown type keeps its fields in Extra.
type Cell struct {
	ID             string // 1 to 64 of A-Z a-z 0-9 - _; empty until Bytes, WriteFile or EnsureIDs makes one
	Type           string // Code, Markdown or Raw
	Source         string // whole text, lines joined
	Outputs        []Output
	ExecutionCount *int              // nil: not run
	Metadata       map[string]any    // of this cell
	Attachments    map[string]Bundle // by file name, for attachment:name links; nil: none
	Extra          map[string]any    // fields that the format does not name

	noSource bool // read from a cell of unknown type that has no source
}

// Output is one output of a code cell. Which fields count depends on Type; one of an unknown type keeps its fields in Extra.
type Output struct {
	Type           string         // Stream, DisplayData, ExecuteResult or Error
	Name           string         // of a stream: stdout or stderr
	Text           string         // of a stream
	Data           Bundle         // of a display or a result
	Metadata       map[string]any // of a display or a result
	ExecutionCount *int           // of a result; nil: null
	Ename          string         // of an error: its kind
	Evalue         string         // of an error: its message
	Traceback      []string       // of an error
	Extra          map[string]any // fields that the format does not name
}

// New returns a worksheet without cells, its language set to Go.
func New() *Notebook {
	return &Notebook{
		Major: Major, Minor: Minor,
		Metadata: map[string]any{
			"kernelspec": map[string]any{
				"display_name": "Go (swanneck)",
				"language":     "go",
				"name":         "swanneck",
			},
			"language_info": map[string]any{
				"codemirror_mode": "go",
				"file_extension":  ".go",
				"mimetype":        "text/x-go",
				"name":            "go",
				"pygments_lexer":  "go",
			},
			OwnKey: map[string]any{"version": OwnVersion},
		},
	}
}

// NewCell returns a cell without an identifier; typ is Code, Markdown or Raw.
func NewCell(typ, source string) *Cell {
	return &Cell{Type: typ, Source: source}
}

// Language returns the language of the code cells in lower case: that of language_info, else that of the kernelspec, else "".
func (n *Notebook) Language() string {
	for _, place := range [][2]string{{"language_info", "name"}, {"kernelspec", "language"}} {
		if m, ok := n.Metadata[place[0]].(map[string]any); ok {
			if s, ok := m[place[1]].(string); ok && s != "" {
				return strings.ToLower(s)
			}
		}
	}
	return ""
}
