package plots

import "strconv"

// pathWriter writes the data of an SVG path in relative coordinates, without repeating a command letter.
// Positions are whole numbers: tenths of a unit, or whole font units if whole is set. Rounding does not add up,
// since each step is the difference of two rounded positions.
type pathWriter struct {
	whole  bool
	out    []byte
	at     [2]int
	start  [2]int
	last   byte
	isOpen bool
}

func (w *pathWriter) empty() bool { return !w.isOpen }

func (w *pathWriter) command(letter byte) {
	if w.last != letter {
		w.out = append(w.out, letter)
		w.last = letter
	}
}

func (w *pathWriter) number(n int) {
	if k := len(w.out); k > 0 && n >= 0 {
		if c := w.out[k-1]; c >= '0' && c <= '9' {
			w.out = append(w.out, ' ')
		}
	}
	if w.whole {
		w.out = strconv.AppendInt(w.out, int64(n), 10)
	} else {
		w.out = append(w.out, tenthsText(n)...)
	}
}

// tenthsText writes a number of tenths.
func tenthsText(n int) string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	if n%10 == 0 {
		return sign + strconv.Itoa(n/10)
	}
	return sign + strconv.Itoa(n/10) + "." + strconv.Itoa(n%10)
}

func (w *pathWriter) step(to [2]int) {
	w.number(to[0] - w.at[0])
	w.number(to[1] - w.at[1])
}

func (w *pathWriter) move(to [2]int) {
	if w.last == 0 {
		w.command('M')
		w.number(to[0])
		w.number(to[1])
	} else {
		w.last = 0 // a second move would be read as a line
		w.command('m')
		w.step(to)
	}
	w.at, w.start, w.isOpen = to, to, true
}

func (w *pathWriter) line(to [2]int) {
	switch {
	case to == w.at:
		return
	case to[1] == w.at[1]:
		w.command('h')
		w.number(to[0] - w.at[0])
	case to[0] == w.at[0]:
		w.command('v')
		w.number(to[1] - w.at[1])
	default:
		w.command('l')
		w.step(to)
	}
	w.at = to
}

// curve writes a quadratic (two points) or cubic (three points) curve; the last point is its end.
func (w *pathWriter) curve(points [][2]int) {
	if len(points) == 2 {
		w.command('q')
	} else {
		w.command('c')
	}
	for _, p := range points {
		w.step(p)
	}
	w.at = points[len(points)-1]
}

func (w *pathWriter) arc(radius int, sweep bool, to [2]int) {
	w.command('a')
	w.number(radius)
	w.number(radius)
	w.number(0)
	w.number(0)
	if sweep {
		w.number(w.flag(1))
	} else {
		w.number(w.flag(0))
	}
	w.step(to)
	w.at = to
}

// flag returns n so that number writes it as n.
func (w *pathWriter) flag(n int) int {
	if w.whole {
		return n
	}
	return n * 10
}

func (w *pathWriter) close() {
	if w.isOpen {
		w.out = append(w.out, 'z')
		w.at, w.last, w.isOpen = w.start, 'z', false
	}
}
