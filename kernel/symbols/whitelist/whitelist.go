// Package whitelist names the packages and names that cells may use.
package whitelist

// Packages lists the packages a cell may import, sorted. The prelude's names need no import.
var Packages = []string{
	"bytes",
	"cmp",
	"container/heap",
	"container/list",
	"container/ring",
	"context",
	"encoding/csv",
	"encoding/json",
	"errors",
	"fmt",
	"gonum.org/v1/gonum/floats",
	"gonum.org/v1/gonum/integrate",
	"gonum.org/v1/gonum/interp",
	"gonum.org/v1/gonum/mat",
	"gonum.org/v1/gonum/optimize",
	"gonum.org/v1/gonum/stat",
	"gonum.org/v1/gonum/stat/distuv",
	"io",
	"iter",
	"maps",
	"math",
	"math/big",
	"math/bits",
	"math/cmplx",
	"math/rand",
	"math/rand/v2",
	"regexp",
	"slices",
	"sort",
	"strconv",
	"strings",
	"swanneck/mathlib/alcoholometry",
	"swanneck/mathlib/compound",
	"swanneck/mathlib/equilibrium",
	"swanneck/mathlib/mixing",
	"swanneck/mathlib/quantity",
	"swanneck/mathlib/sheet",
	"swanneck/plots",
	"swanneck/worksheets/cellapi",
	"sync",
	"sync/atomic",
	"text/tabwriter",
	"time",
	"unicode",
	"unicode/utf16",
	"unicode/utf8",
}

// Prelude lists the packages whose exported names every cell sees without an import, as it sees len.
// A cell may shadow them.
var Prelude = []string{"swanneck/mathlib/sheet", "swanneck/worksheets/cellapi"}

// Ready maps the package names that stand in every cell without an import to their paths.
var Ready = map[string]string{
	"errors":  "errors",
	"fmt":     "fmt",
	"math":    "math",
	"plots":   "swanneck/plots",
	"sort":    "sort",
	"strconv": "strconv",
	"strings": "strings",
	"time":    "time",
}
