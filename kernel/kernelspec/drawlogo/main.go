// Command drawlogo draws the kernel's logo, the outline of a still with its swan's neck, as SVG and in two sizes as PNG.
// Its argument is
// the folder to write to.
package main

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"log"
	"os"
	"path/filepath"
	"strings"

	"golang.org/x/image/vector"
)

// point is a place in a square of 64 by 64.
type point struct{ x, y float32 }

// curve is a cubic curve from where the one before ended.
type curve struct{ a, b, to point }

// shape is a closed outline.
type shape struct {
	from   point
	curves []curve
}

func line(from, to point) curve { return curve{from, to, to} }

// still is a round kettle whose neck rises, bends over and falls to a condenser, as one outline.
var still = shape{point{4, 50}, []curve{
	{point{4, 40}, point{10, 35}, point{14, 31}},
	{point{18, 26}, point{17, 20}, point{19, 14}},
	{point{22, 4}, point{36, 2}, point{42, 11}},
	{point{46, 18}, point{52, 30}, point{58, 40}},
	line(point{58, 40}, point{53, 43}),
	{point{47, 33}, point{42, 23}, point{37, 15}},
	{point{33, 9}, point{26, 10}, point{25, 16}},
	{point{24, 22}, point{26, 27}, point{30, 31}},
	{point{35, 36}, point{40, 41}, point{40, 50}},
	{point{40, 57}, point{34, 60}, point{22, 60}},
	{point{10, 60}, point{4, 57}, point{4, 50}},
}}

// drop falls from the end of the neck.
var drop = shape{point{57, 45}, []curve{
	{point{60, 49}, point{62, 52}, point{62, 55}},
	{point{62, 62}, point{52, 62}, point{52, 55}},
	{point{52, 52}, point{54, 49}, point{57, 45}},
}}

var (
	copper = color.RGBA{0xA8, 0x5A, 0x32, 0xFF}
	spirit = color.RGBA{0x2F, 0x6F, 0x8F, 0xFF}
)

func main() {
	log.SetFlags(0)
	if len(os.Args) != 2 {
		log.Fatal("drawlogo: want one argument, the folder to write to")
	}
	for name, data := range map[string][]byte{"logo-svg.svg": svg(), "logo-32x32.png": raster(32), "logo-64x64.png": raster(64)} {
		if err := os.WriteFile(filepath.Join(os.Args[1], name), data, 0o644); err != nil {
			log.Fatal(err)
		}
	}
}

func svg() []byte {
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64" role="img" aria-label="swanneck">` + "\n")
	for _, p := range []struct {
		s shape
		c color.RGBA
	}{{still, copper}, {drop, spirit}} {
		fmt.Fprintf(&b, `<path fill="#%02x%02x%02x" d="M%g %g`, p.c.R, p.c.G, p.c.B, p.s.from.x, p.s.from.y)
		for _, c := range p.s.curves {
			fmt.Fprintf(&b, "C%g %g %g %g %g %g", c.a.x, c.a.y, c.b.x, c.b.y, c.to.x, c.to.y)
		}
		b.WriteString(`Z"/>` + "\n")
	}
	b.WriteString("</svg>\n")
	return []byte(b.String())
}

func raster(size int) []byte {
	img := image.NewRGBA(image.Rect(0, 0, size, size))
	k := float32(size) / 64
	for _, p := range []struct {
		s shape
		c color.RGBA
	}{{still, copper}, {drop, spirit}} {
		r := vector.NewRasterizer(size, size)
		r.MoveTo(p.s.from.x*k, p.s.from.y*k)
		for _, c := range p.s.curves {
			r.CubeTo(c.a.x*k, c.a.y*k, c.b.x*k, c.b.y*k, c.to.x*k, c.to.y*k)
		}
		r.ClosePath()
		r.Draw(img, img.Bounds(), image.NewUniform(p.c), image.Point{})
	}
	var b bytes.Buffer
	if err := png.Encode(&b, img); err != nil {
		log.Fatal(err)
	}
	return b.Bytes()
}
