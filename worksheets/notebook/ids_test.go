package notebook

import (
	"strings"
	"testing"
)

func TestEnsureIDs(t *testing.T) {
	make := func() *Notebook {
		return &Notebook{Cells: []*Cell{
			{Type: Raw, ID: "kept"}, {Type: Raw, ID: "kept"}, {Type: Raw}, {Type: Raw},
			{Type: Raw, ID: "ä"}, {Type: Raw, ID: strings.Repeat("x", 65)}, {Type: Raw, Source: "a"},
		}}
	}
	n, again := make(), make()
	n.EnsureIDs()
	again.EnsureIDs()
	seen := map[string]bool{}
	for i, c := range n.Cells {
		if !validID(c.ID) || seen[c.ID] {
			t.Errorf("cell %d has the identifier %q; want a valid one of its own", i+1, c.ID)
		}
		if c.ID != again.Cells[i].ID {
			t.Errorf("cell %d: %q, then %q; want the same from the same cells", i+1, c.ID, again.Cells[i].ID)
		}
		seen[c.ID] = true
	}
	if n.Cells[0].ID != "kept" {
		t.Errorf("the first cell's identifier became %q", n.Cells[0].ID)
	}
	before := n.Cells[6].ID
	n.Cells[6].ID, n.Cells[6].Source = "", "b"
	n.EnsureIDs()
	if n.Cells[6].ID == before {
		t.Error("another source made the same identifier")
	}
}

// An identifier that a later cell already has is not made for an earlier one.
func TestEnsureIDsAvoidsLaterCells(t *testing.T) {
	n := &Notebook{Cells: []*Cell{{Type: Raw}}}
	n.EnsureIDs()
	taken := n.Cells[0].ID
	n = &Notebook{Cells: []*Cell{{Type: Raw}, {Type: Raw, ID: taken}}}
	n.EnsureIDs()
	if n.Cells[1].ID != taken || n.Cells[0].ID == taken {
		t.Errorf("identifiers %q and %q; the second was there first", n.Cells[0].ID, n.Cells[1].ID)
	}
}
