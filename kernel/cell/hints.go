package cell

import (
	"regexp"
	"strings"
)

// hint says what would be right where people who know spirits better than Go are likely to trip.
func hint(msg string) string {
	for _, h := range hints {
		if m := h.when.FindStringSubmatch(msg); m != nil {
			out := h.say
			for i, s := range m[1:] {
				out = strings.ReplaceAll(out, []string{"$1", "$2"}[i], s)
			}
			return out
		}
	}
	return ""
}

var hints = []struct {
	when *regexp.Regexp
	say  string
}{
	{regexp.MustCompile(`^cannot use (-?[\d.]+) \(untyped \w+ constant\S*\) as (?:\S+\.)?Strength value`), "write ABV($1) for $1 % vol"},
	{regexp.MustCompile(`^cannot use (-?[\d.]+) \(untyped \w+ constant\S*\) as (?:\S+\.)?Temperature value`), "write Celsius($1) or Fahrenheit($1)"},
	{regexp.MustCompile(`^cannot use (-?[\d.]+) \(untyped \w+ constant\S*\) as (?:\S+\.)?Pressure value`), "write KPa($1)"},
	{regexp.MustCompile(`^cannot use (\w+) \(variable of type (?:float64|int)\) as (?:\S+\.)?Strength value`), "write ABV($1) if it is in % vol"},
	{regexp.MustCompile(`^cannot use (\w+) \(variable of type (?:float64|int)\) as (?:\S+\.)?Temperature value`), "write Celsius($1) or Fahrenheit($1)"},
	{regexp.MustCompile(`operator [-+*/] not defined on .*\bStrength\b`), "strengths do not add: use Blend for two spirits, and .ABV() for the bare figure"},
	{regexp.MustCompile(`operator [-+*/] not defined on .*\bTemperature\b`), "use .C() for the bare figure in °C"},
	{regexp.MustCompile(`operator [-+*/] not defined on .*\bSpirit\b`), "use Blend to put spirits together: volumes do not add"},
	{regexp.MustCompile(`mismatched types int and float64|mismatched types float64 and int`), "write float64(…) around the whole number"},
	{regexp.MustCompile(`as float64 value in argument to (?:sheet\.)?(TrueStrength|TrueProof|StrengthPlusMinus)$`), "a reading is a bare number, what the instrument shows: $1(45.3, …)"},
	{regexp.MustCompile(`as (?:\S+\.)?Spirit value`), "write Spirit{VolumeL: …, Strength: …}"},
	{regexp.MustCompile(`^unknown field \w+ in struct literal of type (?:\S+\.)?Spirit$`), "its fields are VolumeL, Strength and Temp"},
	{regexp.MustCompile(`^cannot use (\w+) \(variable of type int\) as float64 value`), "where $1 is set, write its figure with a point, as 390.0"},
	{regexp.MustCompile(`^assignment mismatch: (\d+) variables? but (\d+) values?`), "figures are written with a point, as 390.5; a comma stands between two values"},
	{regexp.MustCompile(`illegal character U\+2212`), "write the plain minus, -"},
	{regexp.MustCompile(`illegal character U\+00B0`), "write Celsius(22) or Fahrenheit(72)"},
	{regexp.MustCompile(`^no new variables on left side of :=`), "use = to give a variable of this cell a new value"},
	{regexp.MustCompile(`^assignment mismatch: 1 variable but .* returns 2 values`), "take the error too: v, err := …"},
}
