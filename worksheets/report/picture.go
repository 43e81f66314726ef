package report

import (
	"bytes"
	"encoding/base64"
	"net/url"
	"strings"

	"swanneck/worksheets/notebook"
)

// pictureTypes are the picture types that are shown, best first, with the bytes that such a file starts with.
var pictureTypes = []struct{ mime, magic string }{
	{"image/png", "\x89PNG\r\n\x1a\n"},
	{"image/jpeg", "\xff\xd8\xff"},
	{"image/gif", "GIF8"},
	{"image/webp", "RIFF"},
}

// pictureURI returns the data URI of the best picture in a bundle, "" if there is none that is what it says.
func pictureURI(b notebook.Bundle) (mime, uri string) {
	for _, t := range pictureTypes {
		s, ok := b.Text(t.mime)
		if !ok {
			continue
		}
		data, err := base64.StdEncoding.DecodeString(strings.Join(strings.Fields(s), ""))
		if err != nil || !bytes.HasPrefix(data, []byte(t.magic)) {
			continue
		}
		return t.mime, "data:" + t.mime + ";base64," + base64.StdEncoding.EncodeToString(data)
	}
	return "", ""
}

// attachedPicture returns the data URI of an attachment by the name in its link, which may be percent-encoded.
func attachedPicture(attached map[string]notebook.Bundle, name string) string {
	b, ok := attached[name]
	if !ok {
		plain, err := url.PathUnescape(name)
		if err != nil {
			return ""
		}
		b = attached[plain]
	}
	if _, uri := pictureURI(b); uri != "" {
		return uri
	}
	if s, ok := b.Text("image/svg+xml"); ok {
		if chart, err := safeSVG(s, ""); err == nil {
			return "data:image/svg+xml;base64," + base64.StdEncoding.EncodeToString([]byte(chart.markup))
		}
	}
	return ""
}
