package figure

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Number reads a number without a unit (dimensionless here). A decimal comma or point, groups of three digits set apart
// by spaces, points, commas or apostrophes, and an exponent are understood. "1,512" is refused: it may be 1.512 or 1512.
// A lone point is always a decimal point.
func Number(text string) (float64, error) {
	plain, err := digits(strings.TrimSpace(text))
	if err != nil {
		return 0, err
	}
	x, err := strconv.ParseFloat(plain, 64)
	if err != nil || math.IsInf(x, 0) {
		return 0, fmt.Errorf("%q is not a number", text)
	}
	return x, nil
}

// digits rewrites a number with a decimal point and nothing between its digits.
func digits(text string) (string, error) {
	bad := fmt.Errorf("%q is not a number", text)
	s := strings.ReplaceAll(text, "−", "-")
	exponent := ""
	if i := strings.IndexAny(s, "eE"); i > 0 {
		if _, err := strconv.Atoi(s[i+1:]); err != nil {
			return "", bad
		}
		s, exponent = s[:i], "e"+s[i+1:]
	}
	sign := ""
	if s != "" && (s[0] == '-' || s[0] == '+') {
		sign, s = s[:1], s[1:]
	}
	var groups []string // between separators
	var marks []rune    // the separators
	start := 0
	for i, r := range s {
		switch {
		case r >= '0' && r <= '9':
		case r == ',' || r == '.' || r == '\'' || r == '’' || unicode.IsSpace(r):
			groups = append(groups, s[start:i])
			start = i + utf8.RuneLen(r)
			if unicode.IsSpace(r) {
				r = ' '
			}
			marks = append(marks, r)
		default:
			return "", bad
		}
	}
	groups = append(groups, s[start:])
	fraction := ""
	if n := len(marks); n > 0 && decimal(groups, marks) {
		fraction = "." + groups[n]
		groups, marks = groups[:n], marks[:n-1]
		if fraction == "." && groups[n-1] == "" {
			return "", bad
		}
	} else if n == 1 && marks[0] == ',' {
		whole := groups[0] + groups[1]
		return "", fmt.Errorf("%q may be %s.%s or %s; write it one of these ways", text, sign+groups[0], groups[1], sign+whole)
	}
	for i, m := range marks {
		if m != marks[0] || len(groups[i+1]) != 3 || i == 0 && (len(groups[0]) == 0 || len(groups[0]) > 3) {
			return "", bad
		}
	}
	whole := strings.Join(groups, "")
	if whole == "" && len(fraction) < 2 {
		return "", bad
	}
	return sign + whole + fraction + exponent, nil
}

// decimal says whether the last separator is the decimal one.
func decimal(groups []string, marks []rune) bool {
	n := len(marks)
	last := marks[n-1]
	if last != ',' && last != '.' {
		return false
	}
	for _, m := range marks[:n-1] {
		if m == last {
			return false // 1.234.567
		}
	}
	if n > 1 || last == '.' {
		return true
	}
	whole, behind := groups[0], groups[1]
	return len(behind) != 3 || len(whole) > 3 || whole == "" || whole[0] == '0'
}

// Split parts a figure from its unit: "45,5 %vol" is 45.5 and "%vol". A unit that is not there is "".
func Split(text string) (number float64, unit string, err error) {
	s := strings.TrimSpace(text)
	end := 0
	for i, r := range s {
		exponent := (r == 'e' || r == 'E') && i > 0 && i == end && followsExponent(s[i+1:])
		if !exponent && !strings.ContainsRune("0123456789.,'’+-−", r) && !unicode.IsSpace(r) {
			break
		}
		end = i + len(string(r))
	}
	digits, unit := strings.TrimSpace(s[:end]), strings.TrimSpace(s[end:])
	if digits == "" {
		return 0, "", fmt.Errorf("%q does not begin with a number", text)
	}
	number, err = Number(digits)
	return number, unit, err
}

func followsExponent(s string) bool {
	s = strings.TrimLeft(s, "+-")
	return s != "" && s[0] >= '0' && s[0] <= '9'
}
