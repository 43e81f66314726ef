package whitelist

// hidden lists exported names that cells do not get, by package path: they read files or standard input, or would make
// the same worksheet give other numbers.
var hidden = map[string]map[string]bool{
	"fmt":  {"Scan": true, "Scanf": true, "Scanln": true},
	"time": {"LoadLocation": true, "LoadLocationFromTZData": true},
}

// Hidden says whether cells do not get a name of a package.
func Hidden(path, name string) bool { return hidden[path][name] }
