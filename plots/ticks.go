package plots

import (
	"math"
	"strconv"
	"strings"
)

// Numbers on an axis are whole multiples of a step 1, 2 or 5 times a power of ten, and are written from these
// whole numbers, so that no label shows a rounding error.

type tick struct {
	at    float64 // dimensionless: in the axis unit
	label string
}

// scaleMarks are the ticks of an axis and how their labels are to be read:
// value = base + label · 10^exponent.
type scaleMarks struct {
	ticks    []tick
	stepExp  int     // power of ten of the step
	step     float64 // dimensionless: in the axis unit
	exponent int
	base     string // empty if the labels are the values themselves
}

// isFlat reports whether two values differ by no more than rounding.
func isFlat(lo, hi float64) bool {
	return hi-lo <= 1e-12*max(math.Abs(lo), math.Abs(hi)) || hi-lo < 1e-290
}

// widen returns a span around values that are all the same.
func widen(lo, hi float64) (float64, float64) {
	if !isFlat(lo, hi) {
		return lo, hi
	}
	if d := 0.1 * max(math.Abs(lo), math.Abs(hi)); d >= 1e-289 {
		return lo - d, hi + d
	}
	return lo - 1, hi + 1
}

// niceStep returns the smallest step m·10^e that cuts a span into at most so many parts.
func niceStep(span float64, parts int) (m int64, e int) {
	raw := span / float64(parts) * (1 - 1e-9)
	e = int(math.Floor(math.Log10(raw)))
	for _, m = range []int64{1, 2, 5} {
		if power(m, e) >= raw {
			return m, e
		}
	}
	return 1, e + 1
}

// power returns n·10^e, correctly rounded where 10^|e| is exact.
func power(n int64, e int) float64 {
	if e < 0 {
		return float64(n) / math.Pow10(-e)
	}
	return float64(n) * math.Pow10(e)
}

// slack is how far a quotient that should be whole may lie beside it by rounding.
func slack(quotient float64) float64 { return 1e-9 + 1e-15*math.Abs(quotient) }

// roundOut returns the multiples of the step just outside lo and hi.
func roundOut(lo, hi float64, parts int) (float64, float64) {
	m, e := niceStep(hi-lo, parts)
	step := power(m, e)
	return power(int64(math.Floor(lo/step+slack(lo/step)))*m, e), power(int64(math.Ceil(hi/step-slack(hi/step)))*m, e)
}

// marksBetween returns the ticks from lo to hi, at most parts+1 of them.
func marksBetween(lo, hi float64, parts int) scaleMarks {
	m, e := niceStep(hi-lo, parts)
	step := power(m, e)
	first, last := int64(math.Ceil(lo/step-slack(lo/step))), int64(math.Floor(hi/step+slack(hi/step)))
	s := scaleMarks{stepExp: e, step: step}

	sizeOf := func(units int64) int { // power of ten of units·10^e
		return len(strconv.FormatInt(max(units, -units), 10)) - 1 + e
	}
	most := max(first*m, -first*m, last*m, -last*m)
	base := int64(0)
	if sizeOf(most)-e+1 > 8 {
		grain := int64(1)
		for grain < (last-first+1)*m {
			grain *= 10
		}
		base = int64(math.Floor(float64(first*m)/float64(grain))) * grain
		s.base = signed(trimZeros(writeUnits(base, e, 0)), base)
		most = max(first*m-base, last*m-base)
	}
	if size := sizeOf(most); most != 0 && (size >= 6 || size < -3) {
		s.exponent = 3 * int(math.Floor(float64(size)/3))
	}
	for n := first; n <= last; n++ {
		units := n*m - base
		s.ticks = append(s.ticks, tick{power(n*m, e), signed(writeUnits(units, e, s.exponent), units)})
	}
	return s
}

func signed(digits string, n int64) string {
	if n < 0 {
		return "−" + digits
	}
	return digits
}

// writeUnits writes |units|·10^(e−exponent) in full.
func writeUnits(units int64, e, exponent int) string {
	digits := strconv.FormatInt(max(units, -units), 10)
	if e >= exponent {
		if digits != "0" {
			if e-exponent > 15 {
				return digits + "×10" + superscript(e-exponent)
			}
			digits += strings.Repeat("0", e-exponent)
		}
		return groupDigits(digits)
	}
	places := exponent - e
	if places > 18 && len(digits) < places-12 {
		return digits + "×10" + superscript(-places)
	}
	if len(digits) <= places {
		digits = strings.Repeat("0", places-len(digits)+1) + digits
	}
	return groupDigits(digits[:len(digits)-places]) + "." + digits[len(digits)-places:]
}

// groupDigits sets a thin space before each third digit of a whole number of five digits and more
// (ISO 80000-1 sets digits in groups of three with a small space).
func groupDigits(digits string) string {
	if len(digits) < 5 {
		return digits
	}
	var b strings.Builder
	for i, d := range digits {
		if i > 0 && (len(digits)-i)%3 == 0 {
			b.WriteRune('\u2009')
		}
		b.WriteRune(d)
	}
	return b.String()
}

func superscript(n int) string {
	var b strings.Builder
	if n < 0 {
		b.WriteRune('⁻')
	}
	for _, d := range strconv.Itoa(max(n, -n)) {
		b.WriteRune([]rune(superscripts)[d-'0'])
	}
	return b.String()
}

// labelWith returns the text along the axis: label and unit, with the power of ten or the base that its numbers need.
func (s scaleMarks) labelWith(axis Axis) string {
	label := axis.Label
	if s.base != "" {
		sign := " − "
		base := s.base
		if rest, negative := strings.CutPrefix(base, "−"); negative {
			sign, base = " + ", rest
		}
		label = strings.TrimSpace(label + sign + base)
	}
	unit := axis.Unit
	if s.exponent != 0 {
		unit = strings.TrimSpace("10" + superscript(s.exponent) + " " + unit)
	}
	if unit == "" {
		return label
	}
	return strings.TrimSpace(label + " (" + unit + ")")
}

// numberText writes v, rounded to a tenth of the power of ten stepExp, without trailing zeros; very large and very small
// ones as a power of ten.
func numberText(v float64, stepExp int) string {
	size := 0
	if math.Abs(v) < 0.5*math.Pow10(max(stepExp-1, -320)) {
		return "0"
	}
	if v != 0 {
		size = int(math.Floor(math.Log10(math.Abs(v))))
	}
	text := ""
	if v != 0 && (size >= 9 || size < -6) {
		places := min(max(size-stepExp+1, 0), 15)
		mantissa, exponent, _ := strings.Cut(strconv.FormatFloat(math.Abs(v), 'e', places, 64), "e")
		n, _ := strconv.Atoi(exponent)
		text = trimZeros(mantissa) + "×10" + superscript(n)
	} else {
		text = trimZeros(strconv.FormatFloat(math.Abs(v), 'f', min(max(1-stepExp, 0), 15), 64))
	}
	if v < 0 && text != "0" {
		return "−" + text
	}
	return text
}

func trimZeros(s string) string {
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}
