package report

import "swanneck/worksheets/notebook"

// Title returns the first heading of a worksheet's prose, without its markup; empty if there is none.
func Title(n *notebook.Notebook) string {
	for _, c := range n.Cells {
		if c.Type != notebook.Markdown {
			continue
		}
		p := parseProse(c.Source)
		if h := p.firstHeading(); h != nil {
			return p.words(h)
		}
	}
	return ""
}
