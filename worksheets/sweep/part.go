package sweep

import (
	"fmt"
	"path/filepath"
	"strconv"
	"strings"
)

// Part is a share of a sweep: of Of parts, number Number, from 1. The zero value is the whole.
type Part struct{ Number, Of int }

// ParsePart reads "2/4".
func ParsePart(text string) (Part, error) {
	a, b, ok := strings.Cut(text, "/")
	i, errI := strconv.Atoi(strings.TrimSpace(a))
	n, errN := strconv.Atoi(strings.TrimSpace(b))
	if !ok || errI != nil || errN != nil || i < 1 || n < 1 || i > n {
		return Part{}, fmt.Errorf("%q is no part; want its number and how many there are, as 2/4", text)
	}
	return Part{i, n}, nil
}

func (p Part) whole() bool { return p.Of <= 1 }

func (p Part) String() string {
	if p.whole() {
		return "the whole sweep"
	}
	return fmt.Sprintf("part %d of %d", p.Number, p.Of)
}

// has says whether scenario k, from 1, belongs to the part: they are dealt out in turn, so that each part gets of the dear
// ones and of the cheap ones.
func (p Part) has(k int) bool { return p.whole() || (k-1)%p.Of == p.Number-1 }

// size returns how many of n scenarios belong to the part.
func (p Part) size(n int) int {
	if p.whole() {
		return n
	}
	return (n - p.Number + p.Of) / p.Of
}

// Files are what a sweep leaves in a folder. A part leaves its journal and a table for looking at.
type Files struct{ Journal, CSV, Parquet, Chart string }

// Names returns the files of a sweep of a worksheet.
func Names(folder, worksheet string, p Part) Files {
	base := filepath.Join(folder, worksheet+".sweep")
	if p.whole() {
		return Files{Journal: base + ".journal", CSV: base + ".csv", Parquet: base + ".parquet", Chart: base + ".svg"}
	}
	base += fmt.Sprintf(".part-%d-of-%d", p.Number, p.Of)
	return Files{Journal: base + ".journal", CSV: base + ".csv"}
}
