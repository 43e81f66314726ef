package runner

import (
	"encoding/json"
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"swanneck/worksheets/notebook"
	"swanneck/worksheets/results"
)

// provenance is what an executed notebook says of its run.
type provenance struct {
	Architecture string            `json:"architecture"`
	Clock        time.Time         `json:"clock"`
	Files        map[string]string `json:"files"`  // hashes by name
	Inputs       map[string]string `json:"inputs"` // what was given, as cells got it
	Seed         int64             `json:"seed"`
	Sources      []results.Source  `json:"sources"`
	Versions     map[string]string `json:"versions"`
}

var errNotExecuted = errors.New("is not the output of a run: it says neither with what clock and seed nor with what inputs; want what swanneck run left")

// readProvenance reads what stamp has written.
func readProvenance(n *notebook.Notebook) (*provenance, error) {
	run, ok := n.Own()["run"]
	if !ok {
		return nil, errNotExecuted
	}
	if v := n.OwnVersion(); v != notebook.OwnVersion {
		return nil, fmt.Errorf("has a provenance of version %d; this program reads version %d", v, notebook.OwnVersion)
	}
	text, err := json.Marshal(run) // it came through JSON, or it has just been made
	if err != nil {
		return nil, fmt.Errorf("has a provenance that cannot be read: %w", err)
	}
	p := &provenance{}
	if err := json.Unmarshal(text, p); err != nil {
		return nil, fmt.Errorf("has a provenance that cannot be read: %w", err)
	}
	if p.Clock.IsZero() {
		return nil, errors.New("has a provenance without a clock; want what swanneck run left")
	}
	for name := range p.Files {
		if !filepath.IsLocal(filepath.FromSlash(name)) || strings.ContainsFunc(name, notPlain) {
			return nil, fmt.Errorf("says it read the file %q, which no worksheet can", name)
		}
	}
	return p, nil
}

func notPlain(r rune) bool { return plainRune(r) != r }

// sources lists the code cells that are not blank, with the hashes of their texts.
func sources(n *notebook.Notebook) []results.Source {
	var out []results.Source
	for _, c := range n.Cells {
		if c.Type == notebook.Code && strings.TrimSpace(c.Source) != "" {
			out = append(out, results.Source{Cell: c.ID, SHA256: results.Hash(c.Source)})
		}
	}
	return out
}

// sourcesForNotebook is sources as the provenance has it.
func sourcesForNotebook(n *notebook.Notebook) []any {
	list := []any{}
	for _, s := range sources(n) {
		list = append(list, map[string]any{"cell": s.Cell, "sha256": s.SHA256})
	}
	return list
}
