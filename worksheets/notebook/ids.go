package notebook

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/google/uuid"
)

// idSpace sets the identifiers made here apart from other name-based ones.
var idSpace = uuid.NewSHA1(uuid.NameSpaceURL, []byte("urn:swanneck:cell"))

// EnsureIDs gives every cell a valid identifier that no other cell has. Cells that have one keep it; of two cells with
// the same one the first keeps it. A made identifier depends only on the cell's place and source and on the identifiers
// already there.
func (n *Notebook) EnsureIDs() {
	for i, id := range n.ids() {
		n.Cells[i].ID = id
	}
}

func (n *Notebook) ids() []string {
	ids := make([]string, len(n.Cells))
	taken := map[string]bool{}
	for i, c := range n.Cells {
		if validID(c.ID) && !taken[c.ID] {
			ids[i] = c.ID
			taken[c.ID] = true
		}
	}
	for i, c := range n.Cells {
		for try := 0; ids[i] == ""; try++ {
			name := fmt.Sprintf("%d\n%d\n%s", i, try, c.Source)
			u := uuid.NewSHA1(idSpace, []byte(name))
			id := strings.ReplaceAll(u.String(), "-", "")[:8]
			if !taken[id] {
				ids[i] = id
				taken[id] = true
			}
		}
	}
	return ids
}

func validID(id string) bool {
	if len(id) < 1 || len(id) > 64 {
		return false
	}
	for _, r := range id {
		switch {
		case 'a' <= r && r <= 'z', 'A' <= r && r <= 'Z', '0' <= r && r <= '9', r == '-', r == '_':
		default:
			return false
		}
	}
	return true
}

// cellName names a cell in an error, counted from one.
func cellName(i int) string { return "cell " + strconv.Itoa(i+1) }
