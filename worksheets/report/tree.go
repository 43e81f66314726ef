package report

import (
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

// setClass adds a class of ours to n: the allow-list has left none of the author's. An alignment that the author asked
// for stays.
func setClass(n *html.Node, class string) {
	for i := range n.Attr {
		if n.Attr[i].Key == "class" {
			n.Attr[i].Val += " " + class
			return
		}
	}
	n.Attr = append(n.Attr, html.Attribute{Key: "class", Val: class})
}

// words returns the text below n.
func words(n *html.Node) string {
	var b strings.Builder
	var walk func(*html.Node)
	walk = func(n *html.Node) {
		if n.Type == html.TextNode {
			b.WriteString(n.Data)
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c)
		}
	}
	walk(n)
	return b.String()
}

// firstSolid returns the first child that is not blank text.
func firstSolid(n *html.Node) *html.Node {
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		if c.Type != html.TextNode || strings.TrimSpace(c.Data) != "" {
			return c
		}
	}
	return nil
}

func findAll(n *html.Node, a atom.Atom) []*html.Node {
	var found []*html.Node
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		if c.DataAtom == a {
			found = append(found, c)
		}
		found = append(found, findAll(c, a)...)
	}
	return found
}

func find(n *html.Node, a atom.Atom) *html.Node {
	if all := findAll(n, a); len(all) > 0 {
		return all[0]
	}
	return nil
}
