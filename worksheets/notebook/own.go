package notebook

import (
	"encoding/json"
	"strconv"
)

// OwnKey is the place of this program's own metadata, in a notebook's and in a cell's metadata.
const OwnKey = "swanneck"

// OwnVersion is the version of the layout of this program's own metadata.
const OwnVersion = 1

// Own returns this program's own metadata of the notebook, or nil. It is the map itself, not a copy.
func (n *Notebook) Own() map[string]any {
	m, _ := n.Metadata[OwnKey].(map[string]any)
	return m
}

// SetOwn sets one field of this program's own metadata of the notebook and sees to it that the version stands there.
func (n *Notebook) SetOwn(key string, value any) {
	m := n.Own()
	if m == nil {
		m = map[string]any{}
		if n.Metadata == nil {
			n.Metadata = map[string]any{}
		}
		n.Metadata[OwnKey] = m
	}
	if _, ok := m["version"]; !ok {
		m["version"] = OwnVersion
	}
	m[key] = value
}

// OwnVersion returns the version of this program's own metadata in the file, 0 if there is none.
func (n *Notebook) OwnVersion() int {
	switch v := n.Own()["version"].(type) {
	case int:
		return v
	case json.Number:
		if i, err := strconv.Atoi(v.String()); err == nil {
			return i
		}
	}
	return 0
}

// Own returns this program's own metadata of the cell, or nil. It is the map itself, not a copy.
func (c *Cell) Own() map[string]any {
	m, _ := c.Metadata[OwnKey].(map[string]any)
	return m
}
