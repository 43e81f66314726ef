package results

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"sort"
	"strings"
	"unicode"
)

// codeLetters are the digits of a check code: none that is taken for another one, and no U, so that few words arise.
const codeLetters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// Code returns the check code: twelve characters in groups of four, "7K3M-2QPA-9XYZ". Two runs have one code if their
// code cells, the inputs that were changed, and the results as printed (names, figures, units, in their order) are the
// same. It is the beginning of the SHA-256 of these lines, fields set apart by tabs:
//
//	swanneck check code 1
//	source	SHA-256 of a code cell's text in hexadecimal     for each code cell that is not blank
//	input	name	value as given, of a table its hash          for each changed input, sorted by name
//	result	name	figure as printed, with its ±	unit         for each result
//	stopped                                              if the run stopped before its end
//
// It tells a slip or a changed digit from the same thing again. It is no signature: whoever changes a worksheet can run it.
func (f *File) Code() string {
	lines := []string{"swanneck check code 1"}
	for _, s := range f.Sources {
		lines = append(lines, "source\t"+strings.TrimPrefix(s.SHA256, hashPrefix))
	}
	var given []string
	for _, in := range f.Inputs {
		if in.Changed {
			value := in.Value
			if in.SHA256 != "" {
				value = in.SHA256
			} else if strings.ContainsFunc(value, unicode.IsControl) {
				value = Hash(value)
			}
			given = append(given, "input\t"+in.Name+"\t"+value)
		}
	}
	sort.Strings(given)
	lines = append(lines, given...)
	for _, r := range f.Results {
		lines = append(lines, "result\t"+r.Name+"\t"+WithPlusMinus(r.ResultData)+"\t"+r.Unit)
	}
	if f.Stopped != "" {
		lines = append(lines, "stopped")
	}
	sum := sha256.Sum256([]byte(strings.Join(lines, "\n") + "\n"))
	bits := binary.BigEndian.Uint64(sum[:8])
	var b strings.Builder
	for i := range 12 {
		if i > 0 && i%4 == 0 {
			b.WriteByte('-')
		}
		b.WriteByte(codeLetters[bits>>(59-5*i)&31])
	}
	return b.String()
}

const hashPrefix = "sha256:"

// Hash returns the SHA-256 of a text as these files have it: "sha256:…".
func Hash(text string) string { return fmt.Sprintf("%s%x", hashPrefix, sha256.Sum256([]byte(text))) }
