// Code generated for tests; DO NOT EDIT.

package eval_test

import (
	"reflect"

	"bufio"
	"bytes"
	"container/heap"
	"container/list"
	"container/ring"
	"context"
	"encoding/base64"
	"encoding/binary"
	"encoding/csv"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"log"
	"math"
	"math/big"
	"math/bits"
	"math/cmplx"
	"math/rand"
	rand_ "math/rand/v2"
	"os"
	"path"
	"regexp"
	"runtime"
	"runtime/debug"
	"sort"
	"strconv"
	"strings"
	"swanneck/kernel/eval"
	"sync"
	"sync/atomic"
	"text/tabwriter"
	"time"
	"unicode"
	"unicode/utf16"
	"unicode/utf8"
)

var tables = map[string]map[string]reflect.Value{
	"fmt": {
		"Append":       reflect.ValueOf(fmt.Append),
		"Appendf":      reflect.ValueOf(fmt.Appendf),
		"Appendln":     reflect.ValueOf(fmt.Appendln),
		"Errorf":       reflect.ValueOf(fmt.Errorf),
		"FormatString": reflect.ValueOf(fmt.FormatString),
		"Formatter":    reflect.ValueOf((*fmt.Formatter)(nil)),
		"_Formatter":   reflect.ValueOf((*adapter_fmt_Formatter)(nil)),
		"Fprint":       reflect.ValueOf(fmt.Fprint),
		"Fprintf":      reflect.ValueOf(fmt.Fprintf),
		"Fprintln":     reflect.ValueOf(fmt.Fprintln),
		"Fscan":        reflect.ValueOf(fmt.Fscan),
		"Fscanf":       reflect.ValueOf(fmt.Fscanf),
		"Fscanln":      reflect.ValueOf(fmt.Fscanln),
		"GoStringer":   reflect.ValueOf((*fmt.GoStringer)(nil)),
		"_GoStringer":  reflect.ValueOf((*adapter_fmt_GoStringer)(nil)),
		"Print":        reflect.ValueOf(fmt.Print),
		"Printf":       reflect.ValueOf(fmt.Printf),
		"Println":      reflect.ValueOf(fmt.Println),
		"Scan":         reflect.ValueOf(fmt.Scan),
		"ScanState":    reflect.ValueOf((*fmt.ScanState)(nil)),
		"_ScanState":   reflect.ValueOf((*adapter_fmt_ScanState)(nil)),
		"Scanf":        reflect.ValueOf(fmt.Scanf),
		"Scanln":       reflect.ValueOf(fmt.Scanln),
		"Scanner":      reflect.ValueOf((*fmt.Scanner)(nil)),
		"_Scanner":     reflect.ValueOf((*adapter_fmt_Scanner)(nil)),
		"Sprint":       reflect.ValueOf(fmt.Sprint),
		"Sprintf":      reflect.ValueOf(fmt.Sprintf),
		"Sprintln":     reflect.ValueOf(fmt.Sprintln),
		"Sscan":        reflect.ValueOf(fmt.Sscan),
		"Sscanf":       reflect.ValueOf(fmt.Sscanf),
		"Sscanln":      reflect.ValueOf(fmt.Sscanln),
		"State":        reflect.ValueOf((*fmt.State)(nil)),
		"_State":       reflect.ValueOf((*adapter_fmt_State)(nil)),
		"Stringer":     reflect.ValueOf((*fmt.Stringer)(nil)),
		"_Stringer":    reflect.ValueOf((*adapter_fmt_Stringer)(nil)),
	},
	"strings": {
		"Builder":        reflect.ValueOf((*strings.Builder)(nil)),
		"Clone":          reflect.ValueOf(strings.Clone),
		"Compare":        reflect.ValueOf(strings.Compare),
		"Contains":       reflect.ValueOf(strings.Contains),
		"ContainsAny":    reflect.ValueOf(strings.ContainsAny),
		"ContainsFunc":   reflect.ValueOf(strings.ContainsFunc),
		"ContainsRune":   reflect.ValueOf(strings.ContainsRune),
		"Count":          reflect.ValueOf(strings.Count),
		"Cut":            reflect.ValueOf(strings.Cut),
		"CutPrefix":      reflect.ValueOf(strings.CutPrefix),
		"CutSuffix":      reflect.ValueOf(strings.CutSuffix),
		"EqualFold":      reflect.ValueOf(strings.EqualFold),
		"Fields":         reflect.ValueOf(strings.Fields),
		"FieldsFunc":     reflect.ValueOf(strings.FieldsFunc),
		"FieldsFuncSeq":  reflect.ValueOf(strings.FieldsFuncSeq),
		"FieldsSeq":      reflect.ValueOf(strings.FieldsSeq),
		"HasPrefix":      reflect.ValueOf(strings.HasPrefix),
		"HasSuffix":      reflect.ValueOf(strings.HasSuffix),
		"Index":          reflect.ValueOf(strings.Index),
		"IndexAny":       reflect.ValueOf(strings.IndexAny),
		"IndexByte":      reflect.ValueOf(strings.IndexByte),
		"IndexFunc":      reflect.ValueOf(strings.IndexFunc),
		"IndexRune":      reflect.ValueOf(strings.IndexRune),
		"Join":           reflect.ValueOf(strings.Join),
		"LastIndex":      reflect.ValueOf(strings.LastIndex),
		"LastIndexAny":   reflect.ValueOf(strings.LastIndexAny),
		"LastIndexByte":  reflect.ValueOf(strings.LastIndexByte),
		"LastIndexFunc":  reflect.ValueOf(strings.LastIndexFunc),
		"Lines":          reflect.ValueOf(strings.Lines),
		"Map":            reflect.ValueOf(strings.Map),
		"NewReader":      reflect.ValueOf(strings.NewReader),
		"NewReplacer":    reflect.ValueOf(strings.NewReplacer),
		"Reader":         reflect.ValueOf((*strings.Reader)(nil)),
		"Repeat":         reflect.ValueOf(strings.Repeat),
		"Replace":        reflect.ValueOf(strings.Replace),
		"ReplaceAll":     reflect.ValueOf(strings.ReplaceAll),
		"Replacer":       reflect.ValueOf((*strings.Replacer)(nil)),
		"Split":          reflect.ValueOf(strings.Split),
		"SplitAfter":     reflect.ValueOf(strings.SplitAfter),
		"SplitAfterN":    reflect.ValueOf(strings.SplitAfterN),
		"SplitAfterSeq":  reflect.ValueOf(strings.SplitAfterSeq),
		"SplitN":         reflect.ValueOf(strings.SplitN),
		"SplitSeq":       reflect.ValueOf(strings.SplitSeq),
		"Title":          reflect.ValueOf(strings.Title),
		"ToLower":        reflect.ValueOf(strings.ToLower),
		"ToLowerSpecial": reflect.ValueOf(strings.ToLowerSpecial),
		"ToTitle":        reflect.ValueOf(strings.ToTitle),
		"ToTitleSpecial": reflect.ValueOf(strings.ToTitleSpecial),
		"ToUpper":        reflect.ValueOf(strings.ToUpper),
		"ToUpperSpecial": reflect.ValueOf(strings.ToUpperSpecial),
		"ToValidUTF8":    reflect.ValueOf(strings.ToValidUTF8),
		"Trim":           reflect.ValueOf(strings.Trim),
		"TrimFunc":       reflect.ValueOf(strings.TrimFunc),
		"TrimLeft":       reflect.ValueOf(strings.TrimLeft),
		"TrimLeftFunc":   reflect.ValueOf(strings.TrimLeftFunc),
		"TrimPrefix":     reflect.ValueOf(strings.TrimPrefix),
		"TrimRight":      reflect.ValueOf(strings.TrimRight),
		"TrimRightFunc":  reflect.ValueOf(strings.TrimRightFunc),
		"TrimSpace":      reflect.ValueOf(strings.TrimSpace),
		"TrimSuffix":     reflect.ValueOf(strings.TrimSuffix),
	},
	"sort": {
		"Find":              reflect.ValueOf(sort.Find),
		"Float64Slice":      reflect.ValueOf((*sort.Float64Slice)(nil)),
		"Float64s":          reflect.ValueOf(sort.Float64s),
		"Float64sAreSorted": reflect.ValueOf(sort.Float64sAreSorted),
		"IntSlice":          reflect.ValueOf((*sort.IntSlice)(nil)),
		"Interface":         reflect.ValueOf((*sort.Interface)(nil)),
		"_Interface":        reflect.ValueOf((*adapter_sort_Interface)(nil)),
		"Ints":              reflect.ValueOf(sort.Ints),
		"IntsAreSorted":     reflect.ValueOf(sort.IntsAreSorted),
		"IsSorted":          reflect.ValueOf(sort.IsSorted),
		"Reverse":           reflect.ValueOf(sort.Reverse),
		"Search":            reflect.ValueOf(sort.Search),
		"SearchFloat64s":    reflect.ValueOf(sort.SearchFloat64s),
		"SearchInts":        reflect.ValueOf(sort.SearchInts),
		"SearchStrings":     reflect.ValueOf(sort.SearchStrings),
		"Slice":             reflect.ValueOf(sort.Slice),
		"SliceIsSorted":     reflect.ValueOf(sort.SliceIsSorted),
		"SliceStable":       reflect.ValueOf(sort.SliceStable),
		"Sort":              reflect.ValueOf(sort.Sort),
		"Stable":            reflect.ValueOf(sort.Stable),
		"StringSlice":       reflect.ValueOf((*sort.StringSlice)(nil)),
		"Strings":           reflect.ValueOf(sort.Strings),
		"StringsAreSorted":  reflect.ValueOf(sort.StringsAreSorted),
	},
	"errors": {
		"As":             reflect.ValueOf(errors.As),
		"ErrUnsupported": reflect.ValueOf(&errors.ErrUnsupported),
		"Is":             reflect.ValueOf(errors.Is),
		"Join":           reflect.ValueOf(errors.Join),
		"New":            reflect.ValueOf(errors.New),
		"Unwrap":         reflect.ValueOf(errors.Unwrap),
	},
	"strconv": {
		"AppendBool":               reflect.ValueOf(strconv.AppendBool),
		"AppendFloat":              reflect.ValueOf(strconv.AppendFloat),
		"AppendInt":                reflect.ValueOf(strconv.AppendInt),
		"AppendQuote":              reflect.ValueOf(strconv.AppendQuote),
		"AppendQuoteRune":          reflect.ValueOf(strconv.AppendQuoteRune),
		"AppendQuoteRuneToASCII":   reflect.ValueOf(strconv.AppendQuoteRuneToASCII),
		"AppendQuoteRuneToGraphic": reflect.ValueOf(strconv.AppendQuoteRuneToGraphic),
		"AppendQuoteToASCII":       reflect.ValueOf(strconv.AppendQuoteToASCII),
		"AppendQuoteToGraphic":     reflect.ValueOf(strconv.AppendQuoteToGraphic),
		"AppendUint":               reflect.ValueOf(strconv.AppendUint),
		"Atoi":                     reflect.ValueOf(strconv.Atoi),
		"CanBackquote":             reflect.ValueOf(strconv.CanBackquote),
		"ErrRange":                 reflect.ValueOf(&strconv.ErrRange),
		"ErrSyntax":                reflect.ValueOf(&strconv.ErrSyntax),
		"FormatBool":               reflect.ValueOf(strconv.FormatBool),
		"FormatComplex":            reflect.ValueOf(strconv.FormatComplex),
		"FormatFloat":              reflect.ValueOf(strconv.FormatFloat),
		"FormatInt":                reflect.ValueOf(strconv.FormatInt),
		"FormatUint":               reflect.ValueOf(strconv.FormatUint),
		"IsGraphic":                reflect.ValueOf(strconv.IsGraphic),
		"IsPrint":                  reflect.ValueOf(strconv.IsPrint),
		"Itoa":                     reflect.ValueOf(strconv.Itoa),
		"NumError":                 reflect.ValueOf((*strconv.NumError)(nil)),
		"ParseBool":                reflect.ValueOf(strconv.ParseBool),
		"ParseComplex":             reflect.ValueOf(strconv.ParseComplex),
		"ParseFloat":               reflect.ValueOf(strconv.ParseFloat),
		"ParseInt":                 reflect.ValueOf(strconv.ParseInt),
		"ParseUint":                reflect.ValueOf(strconv.ParseUint),
		"Quote":                    reflect.ValueOf(strconv.Quote),
		"QuoteRune":                reflect.ValueOf(strconv.QuoteRune),
		"QuoteRuneToASCII":         reflect.ValueOf(strconv.QuoteRuneToASCII),
		"QuoteRuneToGraphic":       reflect.ValueOf(strconv.QuoteRuneToGraphic),
		"QuoteToASCII":             reflect.ValueOf(strconv.QuoteToASCII),
		"QuoteToGraphic":           reflect.ValueOf(strconv.QuoteToGraphic),
		"QuotedPrefix":             reflect.ValueOf(strconv.QuotedPrefix),
		"Unquote":                  reflect.ValueOf(strconv.Unquote),
		"UnquoteChar":              reflect.ValueOf(strconv.UnquoteChar),
	},
	"math": {
		"Abs":             reflect.ValueOf(math.Abs),
		"Acos":            reflect.ValueOf(math.Acos),
		"Acosh":           reflect.ValueOf(math.Acosh),
		"Asin":            reflect.ValueOf(math.Asin),
		"Asinh":           reflect.ValueOf(math.Asinh),
		"Atan":            reflect.ValueOf(math.Atan),
		"Atan2":           reflect.ValueOf(math.Atan2),
		"Atanh":           reflect.ValueOf(math.Atanh),
		"Cbrt":            reflect.ValueOf(math.Cbrt),
		"Ceil":            reflect.ValueOf(math.Ceil),
		"Copysign":        reflect.ValueOf(math.Copysign),
		"Cos":             reflect.ValueOf(math.Cos),
		"Cosh":            reflect.ValueOf(math.Cosh),
		"Dim":             reflect.ValueOf(math.Dim),
		"Erf":             reflect.ValueOf(math.Erf),
		"Erfc":            reflect.ValueOf(math.Erfc),
		"Erfcinv":         reflect.ValueOf(math.Erfcinv),
		"Erfinv":          reflect.ValueOf(math.Erfinv),
		"Exp":             reflect.ValueOf(math.Exp),
		"Exp2":            reflect.ValueOf(math.Exp2),
		"Expm1":           reflect.ValueOf(math.Expm1),
		"FMA":             reflect.ValueOf(math.FMA),
		"Float32bits":     reflect.ValueOf(math.Float32bits),
		"Float32frombits": reflect.ValueOf(math.Float32frombits),
		"Float64bits":     reflect.ValueOf(math.Float64bits),
		"Float64frombits": reflect.ValueOf(math.Float64frombits),
		"Floor":           reflect.ValueOf(math.Floor),
		"Frexp":           reflect.ValueOf(math.Frexp),
		"Gamma":           reflect.ValueOf(math.Gamma),
		"Hypot":           reflect.ValueOf(math.Hypot),
		"Ilogb":           reflect.ValueOf(math.Ilogb),
		"Inf":             reflect.ValueOf(math.Inf),
		"IsInf":           reflect.ValueOf(math.IsInf),
		"IsNaN":           reflect.ValueOf(math.IsNaN),
		"J0":              reflect.ValueOf(math.J0),
		"J1":              reflect.ValueOf(math.J1),
		"Jn":              reflect.ValueOf(math.Jn),
		"Ldexp":           reflect.ValueOf(math.Ldexp),
		"Lgamma":          reflect.ValueOf(math.Lgamma),
		"Log":             reflect.ValueOf(math.Log),
		"Log10":           reflect.ValueOf(math.Log10),
		"Log1p":           reflect.ValueOf(math.Log1p),
		"Log2":            reflect.ValueOf(math.Log2),
		"Logb":            reflect.ValueOf(math.Logb),
		"Max":             reflect.ValueOf(math.Max),
		"Min":             reflect.ValueOf(math.Min),
		"Mod":             reflect.ValueOf(math.Mod),
		"Modf":            reflect.ValueOf(math.Modf),
		"NaN":             reflect.ValueOf(math.NaN),
		"Nextafter":       reflect.ValueOf(math.Nextafter),
		"Nextafter32":     reflect.ValueOf(math.Nextafter32),
		"Pow":             reflect.ValueOf(math.Pow),
		"Pow10":           reflect.ValueOf(math.Pow10),
		"Remainder":       reflect.ValueOf(math.Remainder),
		"Round":           reflect.ValueOf(math.Round),
		"RoundToEven":     reflect.ValueOf(math.RoundToEven),
		"Signbit":         reflect.ValueOf(math.Signbit),
		"Sin":             reflect.ValueOf(math.Sin),
		"Sincos":          reflect.ValueOf(math.Sincos),
		"Sinh":            reflect.ValueOf(math.Sinh),
		"Sqrt":            reflect.ValueOf(math.Sqrt),
		"Tan":             reflect.ValueOf(math.Tan),
		"Tanh":            reflect.ValueOf(math.Tanh),
		"Trunc":           reflect.ValueOf(math.Trunc),
		"Y0":              reflect.ValueOf(math.Y0),
		"Y1":              reflect.ValueOf(math.Y1),
		"Yn":              reflect.ValueOf(math.Yn),
	},
	"time": {
		"After":                  reflect.ValueOf(time.After),
		"AfterFunc":              reflect.ValueOf(time.AfterFunc),
		"Date":                   reflect.ValueOf(time.Date),
		"Duration":               reflect.ValueOf((*time.Duration)(nil)),
		"FixedZone":              reflect.ValueOf(time.FixedZone),
		"LoadLocation":           reflect.ValueOf(time.LoadLocation),
		"LoadLocationFromTZData": reflect.ValueOf(time.LoadLocationFromTZData),
		"Local":                  reflect.ValueOf(&time.Local),
		"Location":               reflect.ValueOf((*time.Location)(nil)),
		"Month":                  reflect.ValueOf((*time.Month)(nil)),
		"NewTicker":              reflect.ValueOf(time.NewTicker),
		"NewTimer":               reflect.ValueOf(time.NewTimer),
		"Now":                    reflect.ValueOf(time.Now),
		"Parse":                  reflect.ValueOf(time.Parse),
		"ParseDuration":          reflect.ValueOf(time.ParseDuration),
		"ParseError":             reflect.ValueOf((*time.ParseError)(nil)),
		"ParseInLocation":        reflect.ValueOf(time.ParseInLocation),
		"Since":                  reflect.ValueOf(time.Since),
		"Sleep":                  reflect.ValueOf(time.Sleep),
		"Tick":                   reflect.ValueOf(time.Tick),
		"Ticker":                 reflect.ValueOf((*time.Ticker)(nil)),
		"Time":                   reflect.ValueOf((*time.Time)(nil)),
		"Timer":                  reflect.ValueOf((*time.Timer)(nil)),
		"UTC":                    reflect.ValueOf(&time.UTC),
		"Unix":                   reflect.ValueOf(time.Unix),
		"UnixMicro":              reflect.ValueOf(time.UnixMicro),
		"UnixMilli":              reflect.ValueOf(time.UnixMilli),
		"Until":                  reflect.ValueOf(time.Until),
		"Weekday":                reflect.ValueOf((*time.Weekday)(nil)),
	},
	"sync": {
		"Cond":      reflect.ValueOf((*sync.Cond)(nil)),
		"Locker":    reflect.ValueOf((*sync.Locker)(nil)),
		"_Locker":   reflect.ValueOf((*adapter_sync_Locker)(nil)),
		"Map":       reflect.ValueOf((*sync.Map)(nil)),
		"Mutex":     reflect.ValueOf((*sync.Mutex)(nil)),
		"NewCond":   reflect.ValueOf(sync.NewCond),
		"Once":      reflect.ValueOf((*sync.Once)(nil)),
		"OnceFunc":  reflect.ValueOf(sync.OnceFunc),
		"Pool":      reflect.ValueOf((*sync.Pool)(nil)),
		"RWMutex":   reflect.ValueOf((*sync.RWMutex)(nil)),
		"WaitGroup": reflect.ValueOf((*sync.WaitGroup)(nil)),
	},
	"sync/atomic": {
		"AddInt32":              reflect.ValueOf(atomic.AddInt32),
		"AddInt64":              reflect.ValueOf(atomic.AddInt64),
		"AddUint32":             reflect.ValueOf(atomic.AddUint32),
		"AddUint64":             reflect.ValueOf(atomic.AddUint64),
		"AddUintptr":            reflect.ValueOf(atomic.AddUintptr),
		"AndInt32":              reflect.ValueOf(atomic.AndInt32),
		"AndInt64":              reflect.ValueOf(atomic.AndInt64),
		"AndUint32":             reflect.ValueOf(atomic.AndUint32),
		"AndUint64":             reflect.ValueOf(atomic.AndUint64),
		"AndUintptr":            reflect.ValueOf(atomic.AndUintptr),
		"Bool":                  reflect.ValueOf((*atomic.Bool)(nil)),
		"CompareAndSwapInt32":   reflect.ValueOf(atomic.CompareAndSwapInt32),
		"CompareAndSwapInt64":   reflect.ValueOf(atomic.CompareAndSwapInt64),
		"CompareAndSwapPointer": reflect.ValueOf(atomic.CompareAndSwapPointer),
		"CompareAndSwapUint32":  reflect.ValueOf(atomic.CompareAndSwapUint32),
		"CompareAndSwapUint64":  reflect.ValueOf(atomic.CompareAndSwapUint64),
		"CompareAndSwapUintptr": reflect.ValueOf(atomic.CompareAndSwapUintptr),
		"Int32":                 reflect.ValueOf((*atomic.Int32)(nil)),
		"Int64":                 reflect.ValueOf((*atomic.Int64)(nil)),
		"LoadInt32":             reflect.ValueOf(atomic.LoadInt32),
		"LoadInt64":             reflect.ValueOf(atomic.LoadInt64),
		"LoadPointer":           reflect.ValueOf(atomic.LoadPointer),
		"LoadUint32":            reflect.ValueOf(atomic.LoadUint32),
		"LoadUint64":            reflect.ValueOf(atomic.LoadUint64),
		"LoadUintptr":           reflect.ValueOf(atomic.LoadUintptr),
		"OrInt32":               reflect.ValueOf(atomic.OrInt32),
		"OrInt64":               reflect.ValueOf(atomic.OrInt64),
		"OrUint32":              reflect.ValueOf(atomic.OrUint32),
		"OrUint64":              reflect.ValueOf(atomic.OrUint64),
		"OrUintptr":             reflect.ValueOf(atomic.OrUintptr),
		"StoreInt32":            reflect.ValueOf(atomic.StoreInt32),
		"StoreInt64":            reflect.ValueOf(atomic.StoreInt64),
		"StorePointer":          reflect.ValueOf(atomic.StorePointer),
		"StoreUint32":           reflect.ValueOf(atomic.StoreUint32),
		"StoreUint64":           reflect.ValueOf(atomic.StoreUint64),
		"StoreUintptr":          reflect.ValueOf(atomic.StoreUintptr),
		"SwapInt32":             reflect.ValueOf(atomic.SwapInt32),
		"SwapInt64":             reflect.ValueOf(atomic.SwapInt64),
		"SwapPointer":           reflect.ValueOf(atomic.SwapPointer),
		"SwapUint32":            reflect.ValueOf(atomic.SwapUint32),
		"SwapUint64":            reflect.ValueOf(atomic.SwapUint64),
		"SwapUintptr":           reflect.ValueOf(atomic.SwapUintptr),
		"Uint32":                reflect.ValueOf((*atomic.Uint32)(nil)),
		"Uint64":                reflect.ValueOf((*atomic.Uint64)(nil)),
		"Uintptr":               reflect.ValueOf((*atomic.Uintptr)(nil)),
		"Value":                 reflect.ValueOf((*atomic.Value)(nil)),
	},
	"unicode": {
		"ASCII_Hex_Digit":                    reflect.ValueOf(&unicode.ASCII_Hex_Digit),
		"Adlam":                              reflect.ValueOf(&unicode.Adlam),
		"Ahom":                               reflect.ValueOf(&unicode.Ahom),
		"Anatolian_Hieroglyphs":              reflect.ValueOf(&unicode.Anatolian_Hieroglyphs),
		"Arabic":                             reflect.ValueOf(&unicode.Arabic),
		"Armenian":                           reflect.ValueOf(&unicode.Armenian),
		"Avestan":                            reflect.ValueOf(&unicode.Avestan),
		"AzeriCase":                          reflect.ValueOf(&unicode.AzeriCase),
		"Balinese":                           reflect.ValueOf(&unicode.Balinese),
		"Bamum":                              reflect.ValueOf(&unicode.Bamum),
		"Bassa_Vah":                          reflect.ValueOf(&unicode.Bassa_Vah),
		"Batak":                              reflect.ValueOf(&unicode.Batak),
		"Bengali":                            reflect.ValueOf(&unicode.Bengali),
		"Bhaiksuki":                          reflect.ValueOf(&unicode.Bhaiksuki),
		"Bidi_Control":                       reflect.ValueOf(&unicode.Bidi_Control),
		"Bopomofo":                           reflect.ValueOf(&unicode.Bopomofo),
		"Brahmi":                             reflect.ValueOf(&unicode.Brahmi),
		"Braille":                            reflect.ValueOf(&unicode.Braille),
		"Buginese":                           reflect.ValueOf(&unicode.Buginese),
		"Buhid":                              reflect.ValueOf(&unicode.Buhid),
		"C":                                  reflect.ValueOf(&unicode.C),
		"Canadian_Aboriginal":                reflect.ValueOf(&unicode.Canadian_Aboriginal),
		"Carian":                             reflect.ValueOf(&unicode.Carian),
		"CaseRange":                          reflect.ValueOf((*unicode.CaseRange)(nil)),
		"CaseRanges":                         reflect.ValueOf(&unicode.CaseRanges),
		"Categories":                         reflect.ValueOf(&unicode.Categories),
		"CategoryAliases":                    reflect.ValueOf(&unicode.CategoryAliases),
		"Caucasian_Albanian":                 reflect.ValueOf(&unicode.Caucasian_Albanian),
		"Cc":                                 reflect.ValueOf(&unicode.Cc),
		"Cf":                                 reflect.ValueOf(&unicode.Cf),
		"Chakma":                             reflect.ValueOf(&unicode.Chakma),
		"Cham":                               reflect.ValueOf(&unicode.Cham),
		"Cherokee":                           reflect.ValueOf(&unicode.Cherokee),
		"Chorasmian":                         reflect.ValueOf(&unicode.Chorasmian),
		"Cn":                                 reflect.ValueOf(&unicode.Cn),
		"Co":                                 reflect.ValueOf(&unicode.Co),
		"Common":                             reflect.ValueOf(&unicode.Common),
		"Coptic":                             reflect.ValueOf(&unicode.Coptic),
		"Cs":                                 reflect.ValueOf(&unicode.Cs),
		"Cuneiform":                          reflect.ValueOf(&unicode.Cuneiform),
		"Cypriot":                            reflect.ValueOf(&unicode.Cypriot),
		"Cypro_Minoan":                       reflect.ValueOf(&unicode.Cypro_Minoan),
		"Cyrillic":                           reflect.ValueOf(&unicode.Cyrillic),
		"Dash":                               reflect.ValueOf(&unicode.Dash),
		"Deprecated":                         reflect.ValueOf(&unicode.Deprecated),
		"Deseret":                            reflect.ValueOf(&unicode.Deseret),
		"Devanagari":                         reflect.ValueOf(&unicode.Devanagari),
		"Diacritic":                          reflect.ValueOf(&unicode.Diacritic),
		"Digit":                              reflect.ValueOf(&unicode.Digit),
		"Dives_Akuru":                        reflect.ValueOf(&unicode.Dives_Akuru),
		"Dogra":                              reflect.ValueOf(&unicode.Dogra),
		"Duployan":                           reflect.ValueOf(&unicode.Duployan),
		"Egyptian_Hieroglyphs":               reflect.ValueOf(&unicode.Egyptian_Hieroglyphs),
		"Elbasan":                            reflect.ValueOf(&unicode.Elbasan),
		"Elymaic":                            reflect.ValueOf(&unicode.Elymaic),
		"Ethiopic":                           reflect.ValueOf(&unicode.Ethiopic),
		"Extender":                           reflect.ValueOf(&unicode.Extender),
		"FoldCategory":                       reflect.ValueOf(&unicode.FoldCategory),
		"FoldScript":                         reflect.ValueOf(&unicode.FoldScript),
		"Georgian":                           reflect.ValueOf(&unicode.Georgian),
		"Glagolitic":                         reflect.ValueOf(&unicode.Glagolitic),
		"Gothic":                             reflect.ValueOf(&unicode.Gothic),
		"Grantha":                            reflect.ValueOf(&unicode.Grantha),
		"GraphicRanges":                      reflect.ValueOf(&unicode.GraphicRanges),
		"Greek":                              reflect.ValueOf(&unicode.Greek),
		"Gujarati":                           reflect.ValueOf(&unicode.Gujarati),
		"Gunjala_Gondi":                      reflect.ValueOf(&unicode.Gunjala_Gondi),
		"Gurmukhi":                           reflect.ValueOf(&unicode.Gurmukhi),
		"Han":                                reflect.ValueOf(&unicode.Han),
		"Hangul":                             reflect.ValueOf(&unicode.Hangul),
		"Hanifi_Rohingya":                    reflect.ValueOf(&unicode.Hanifi_Rohingya),
		"Hanunoo":                            reflect.ValueOf(&unicode.Hanunoo),
		"Hatran":                             reflect.ValueOf(&unicode.Hatran),
		"Hebrew":                             reflect.ValueOf(&unicode.Hebrew),
		"Hex_Digit":                          reflect.ValueOf(&unicode.Hex_Digit),
		"Hiragana":                           reflect.ValueOf(&unicode.Hiragana),
		"Hyphen":                             reflect.ValueOf(&unicode.Hyphen),
		"IDS_Binary_Operator":                reflect.ValueOf(&unicode.IDS_Binary_Operator),
		"IDS_Trinary_Operator":               reflect.ValueOf(&unicode.IDS_Trinary_Operator),
		"Ideographic":                        reflect.ValueOf(&unicode.Ideographic),
		"Imperial_Aramaic":                   reflect.ValueOf(&unicode.Imperial_Aramaic),
		"In":                                 reflect.ValueOf(unicode.In),
		"Inherited":                          reflect.ValueOf(&unicode.Inherited),
		"Inscriptional_Pahlavi":              reflect.ValueOf(&unicode.Inscriptional_Pahlavi),
		"Inscriptional_Parthian":             reflect.ValueOf(&unicode.Inscriptional_Parthian),
		"Is":                                 reflect.ValueOf(unicode.Is),
		"IsControl":                          reflect.ValueOf(unicode.IsControl),
		"IsDigit":                            reflect.ValueOf(unicode.IsDigit),
		"IsGraphic":                          reflect.ValueOf(unicode.IsGraphic),
		"IsLetter":                           reflect.ValueOf(unicode.IsLetter),
		"IsLower":                            reflect.ValueOf(unicode.IsLower),
		"IsMark":                             reflect.ValueOf(unicode.IsMark),
		"IsNumber":                           reflect.ValueOf(unicode.IsNumber),
		"IsOneOf":                            reflect.ValueOf(unicode.IsOneOf),
		"IsPrint":                            reflect.ValueOf(unicode.IsPrint),
		"IsPunct":                            reflect.ValueOf(unicode.IsPunct),
		"IsSpace":                            reflect.ValueOf(unicode.IsSpace),
		"IsSymbol":                           reflect.ValueOf(unicode.IsSymbol),
		"IsTitle":                            reflect.ValueOf(unicode.IsTitle),
		"IsUpper":                            reflect.ValueOf(unicode.IsUpper),
		"Javanese":                           reflect.ValueOf(&unicode.Javanese),
		"Join_Control":                       reflect.ValueOf(&unicode.Join_Control),
		"Kaithi":                             reflect.ValueOf(&unicode.Kaithi),
		"Kannada":                            reflect.ValueOf(&unicode.Kannada),
		"Katakana":                           reflect.ValueOf(&unicode.Katakana),
		"Kawi":                               reflect.ValueOf(&unicode.Kawi),
		"Kayah_Li":                           reflect.ValueOf(&unicode.Kayah_Li),
		"Kharoshthi":                         reflect.ValueOf(&unicode.Kharoshthi),
		"Khitan_Small_Script":                reflect.ValueOf(&unicode.Khitan_Small_Script),
		"Khmer":                              reflect.ValueOf(&unicode.Khmer),
		"Khojki":                             reflect.ValueOf(&unicode.Khojki),
		"Khudawadi":                          reflect.ValueOf(&unicode.Khudawadi),
		"L":                                  reflect.ValueOf(&unicode.L),
		"LC":                                 reflect.ValueOf(&unicode.LC),
		"Lao":                                reflect.ValueOf(&unicode.Lao),
		"Latin":                              reflect.ValueOf(&unicode.Latin),
		"Lepcha":                             reflect.ValueOf(&unicode.Lepcha),
		"Letter":                             reflect.ValueOf(&unicode.Letter),
		"Limbu":                              reflect.ValueOf(&unicode.Limbu),
		"Linear_A":                           reflect.ValueOf(&unicode.Linear_A),
		"Linear_B":                           reflect.ValueOf(&unicode.Linear_B),
		"Lisu":                               reflect.ValueOf(&unicode.Lisu),
		"Ll":                                 reflect.ValueOf(&unicode.Ll),
		"Lm":                                 reflect.ValueOf(&unicode.Lm),
		"Lo":                                 reflect.ValueOf(&unicode.Lo),
		"Logical_Order_Exception":            reflect.ValueOf(&unicode.Logical_Order_Exception),
		"Lower":                              reflect.ValueOf(&unicode.Lower),
		"Lt":                                 reflect.ValueOf(&unicode.Lt),
		"Lu":                                 reflect.ValueOf(&unicode.Lu),
		"Lycian":                             reflect.ValueOf(&unicode.Lycian),
		"Lydian":                             reflect.ValueOf(&unicode.Lydian),
		"M":                                  reflect.ValueOf(&unicode.M),
		"Mahajani":                           reflect.ValueOf(&unicode.Mahajani),
		"Makasar":                            reflect.ValueOf(&unicode.Makasar),
		"Malayalam":                          reflect.ValueOf(&unicode.Malayalam),
		"Mandaic":                            reflect.ValueOf(&unicode.Mandaic),
		"Manichaean":                         reflect.ValueOf(&unicode.Manichaean),
		"Marchen":                            reflect.ValueOf(&unicode.Marchen),
		"Mark":                               reflect.ValueOf(&unicode.Mark),
		"Masaram_Gondi":                      reflect.ValueOf(&unicode.Masaram_Gondi),
		"Mc":                                 reflect.ValueOf(&unicode.Mc),
		"Me":                                 reflect.ValueOf(&unicode.Me),
		"Medefaidrin":                        reflect.ValueOf(&unicode.Medefaidrin),
		"Meetei_Mayek":                       reflect.ValueOf(&unicode.Meetei_Mayek),
		"Mende_Kikakui":                      reflect.ValueOf(&unicode.Mende_Kikakui),
		"Meroitic_Cursive":                   reflect.ValueOf(&unicode.Meroitic_Cursive),
		"Meroitic_Hieroglyphs":               reflect.ValueOf(&unicode.Meroitic_Hieroglyphs),
		"Miao":                               reflect.ValueOf(&unicode.Miao),
		"Mn":                                 reflect.ValueOf(&unicode.Mn),
		"Modi":                               reflect.ValueOf(&unicode.Modi),
		"Mongolian":                          reflect.ValueOf(&unicode.Mongolian),
		"Mro":                                reflect.ValueOf(&unicode.Mro),
		"Multani":                            reflect.ValueOf(&unicode.Multani),
		"Myanmar":                            reflect.ValueOf(&unicode.Myanmar),
		"N":                                  reflect.ValueOf(&unicode.N),
		"Nabataean":                          reflect.ValueOf(&unicode.Nabataean),
		"Nag_Mundari":                        reflect.ValueOf(&unicode.Nag_Mundari),
		"Nandinagari":                        reflect.ValueOf(&unicode.Nandinagari),
		"Nd":                                 reflect.ValueOf(&unicode.Nd),
		"New_Tai_Lue":                        reflect.ValueOf(&unicode.New_Tai_Lue),
		"Newa":                               reflect.ValueOf(&unicode.Newa),
		"Nko":                                reflect.ValueOf(&unicode.Nko),
		"Nl":                                 reflect.ValueOf(&unicode.Nl),
		"No":                                 reflect.ValueOf(&unicode.No),
		"Noncharacter_Code_Point":            reflect.ValueOf(&unicode.Noncharacter_Code_Point),
		"Number":                             reflect.ValueOf(&unicode.Number),
		"Nushu":                              reflect.ValueOf(&unicode.Nushu),
		"Nyiakeng_Puachue_Hmong":             reflect.ValueOf(&unicode.Nyiakeng_Puachue_Hmong),
		"Ogham":                              reflect.ValueOf(&unicode.Ogham),
		"Ol_Chiki":                           reflect.ValueOf(&unicode.Ol_Chiki),
		"Old_Hungarian":                      reflect.ValueOf(&unicode.Old_Hungarian),
		"Old_Italic":                         reflect.ValueOf(&unicode.Old_Italic),
		"Old_North_Arabian":                  reflect.ValueOf(&unicode.Old_North_Arabian),
		"Old_Permic":                         reflect.ValueOf(&unicode.Old_Permic),
		"Old_Persian":                        reflect.ValueOf(&unicode.Old_Persian),
		"Old_Sogdian":                        reflect.ValueOf(&unicode.Old_Sogdian),
		"Old_South_Arabian":                  reflect.ValueOf(&unicode.Old_South_Arabian),
		"Old_Turkic":                         reflect.ValueOf(&unicode.Old_Turkic),
		"Old_Uyghur":                         reflect.ValueOf(&unicode.Old_Uyghur),
		"Oriya":                              reflect.ValueOf(&unicode.Oriya),
		"Osage":                              reflect.ValueOf(&unicode.Osage),
		"Osmanya":                            reflect.ValueOf(&unicode.Osmanya),
		"Other":                              reflect.ValueOf(&unicode.Other),
		"Other_Alphabetic":                   reflect.ValueOf(&unicode.Other_Alphabetic),
		"Other_Default_Ignorable_Code_Point": reflect.ValueOf(&unicode.Other_Default_Ignorable_Code_Point),
		"Other_Grapheme_Extend":              reflect.ValueOf(&unicode.Other_Grapheme_Extend),
		"Other_ID_Continue":                  reflect.ValueOf(&unicode.Other_ID_Continue),
		"Other_ID_Start":                     reflect.ValueOf(&unicode.Other_ID_Start),
		"Other_Lowercase":                    reflect.ValueOf(&unicode.Other_Lowercase),
		"Other_Math":                         reflect.ValueOf(&unicode.Other_Math),
		"Other_Uppercase":                    reflect.ValueOf(&unicode.Other_Uppercase),
		"P":                                  reflect.ValueOf(&unicode.P),
		"Pahawh_Hmong":                       reflect.ValueOf(&unicode.Pahawh_Hmong),
		"Palmyrene":                          reflect.ValueOf(&unicode.Palmyrene),
		"Pattern_Syntax":                     reflect.ValueOf(&unicode.Pattern_Syntax),
		"Pattern_White_Space":                reflect.ValueOf(&unicode.Pattern_White_Space),
		"Pau_Cin_Hau":                        reflect.ValueOf(&unicode.Pau_Cin_Hau),
		"Pc":                                 reflect.ValueOf(&unicode.Pc),
		"Pd":                                 reflect.ValueOf(&unicode.Pd),
		"Pe":                                 reflect.ValueOf(&unicode.Pe),
		"Pf":                                 reflect.ValueOf(&unicode.Pf),
		"Phags_Pa":                           reflect.ValueOf(&unicode.Phags_Pa),
		"Phoenician":                         reflect.ValueOf(&unicode.Phoenician),
		"Pi":                                 reflect.ValueOf(&unicode.Pi),
		"Po":                                 reflect.ValueOf(&unicode.Po),
		"Prepended_Concatenation_Mark":       reflect.ValueOf(&unicode.Prepended_Concatenation_Mark),
		"PrintRanges":                        reflect.ValueOf(&unicode.PrintRanges),
		"Properties":                         reflect.ValueOf(&unicode.Properties),
		"Ps":                                 reflect.ValueOf(&unicode.Ps),
		"Psalter_Pahlavi":                    reflect.ValueOf(&unicode.Psalter_Pahlavi),
		"Punct":                              reflect.ValueOf(&unicode.Punct),
		"Quotation_Mark":                     reflect.ValueOf(&unicode.Quotation_Mark),
		"Radical":                            reflect.ValueOf(&unicode.Radical),
		"Range16":                            reflect.ValueOf((*unicode.Range16)(nil)),
		"Range32":                            reflect.ValueOf((*unicode.Range32)(nil)),
		"RangeTable":                         reflect.ValueOf((*unicode.RangeTable)(nil)),
		"Regional_Indicator":                 reflect.ValueOf(&unicode.Regional_Indicator),
		"Rejang":                             reflect.ValueOf(&unicode.Rejang),
		"Runic":                              reflect.ValueOf(&unicode.Runic),
		"S":                                  reflect.ValueOf(&unicode.S),
		"STerm":                              reflect.ValueOf(&unicode.STerm),
		"Samaritan":                          reflect.ValueOf(&unicode.Samaritan),
		"Saurashtra":                         reflect.ValueOf(&unicode.Saurashtra),
		"Sc":                                 reflect.ValueOf(&unicode.Sc),
		"Scripts":                            reflect.ValueOf(&unicode.Scripts),
		"Sentence_Terminal":                  reflect.ValueOf(&unicode.Sentence_Terminal),
		"Sharada":                            reflect.ValueOf(&unicode.Sharada),
		"Shavian":                            reflect.ValueOf(&unicode.Shavian),
		"Siddham":                            reflect.ValueOf(&unicode.Siddham),
		"SignWriting":                        reflect.ValueOf(&unicode.SignWriting),
		"SimpleFold":                         reflect.ValueOf(unicode.SimpleFold),
		"Sinhala":                            reflect.ValueOf(&unicode.Sinhala),
		"Sk":                                 reflect.ValueOf(&unicode.Sk),
		"Sm":                                 reflect.ValueOf(&unicode.Sm),
		"So":                                 reflect.ValueOf(&unicode.So),
		"Soft_Dotted":                        reflect.ValueOf(&unicode.Soft_Dotted),
		"Sogdian":                            reflect.ValueOf(&unicode.Sogdian),
		"Sora_Sompeng":                       reflect.ValueOf(&unicode.Sora_Sompeng),
		"Soyombo":                            reflect.ValueOf(&unicode.Soyombo),
		"Space":                              reflect.ValueOf(&unicode.Space),
		"SpecialCase":                        reflect.ValueOf((*unicode.SpecialCase)(nil)),
		"Sundanese":                          reflect.ValueOf(&unicode.Sundanese),
		"Syloti_Nagri":                       reflect.ValueOf(&unicode.Syloti_Nagri),
		"Symbol":                             reflect.ValueOf(&unicode.Symbol),
		"Syriac":                             reflect.ValueOf(&unicode.Syriac),
		"Tagalog":                            reflect.ValueOf(&unicode.Tagalog),
		"Tagbanwa":                           reflect.ValueOf(&unicode.Tagbanwa),
		"Tai_Le":                             reflect.ValueOf(&unicode.Tai_Le),
		"Tai_Tham":                           reflect.ValueOf(&unicode.Tai_Tham),
		"Tai_Viet":                           reflect.ValueOf(&unicode.Tai_Viet),
		"Takri":                              reflect.ValueOf(&unicode.Takri),
		"Tamil":                              reflect.ValueOf(&unicode.Tamil),
		"Tangsa":                             reflect.ValueOf(&unicode.Tangsa),
		"Tangut":                             reflect.ValueOf(&unicode.Tangut),
		"Telugu":                             reflect.ValueOf(&unicode.Telugu),
		"Terminal_Punctuation":               reflect.ValueOf(&unicode.Terminal_Punctuation),
		"Thaana":                             reflect.ValueOf(&unicode.Thaana),
		"Thai":                               reflect.ValueOf(&unicode.Thai),
		"Tibetan":                            reflect.ValueOf(&unicode.Tibetan),
		"Tifinagh":                           reflect.ValueOf(&unicode.Tifinagh),
		"Tirhuta":                            reflect.ValueOf(&unicode.Tirhuta),
		"Title":                              reflect.ValueOf(&unicode.Title),
		"To":                                 reflect.ValueOf(unicode.To),
		"ToLower":                            reflect.ValueOf(unicode.ToLower),
		"ToTitle":                            reflect.ValueOf(unicode.ToTitle),
		"ToUpper":                            reflect.ValueOf(unicode.ToUpper),
		"Toto":                               reflect.ValueOf(&unicode.Toto),
		"TurkishCase":                        reflect.ValueOf(&unicode.TurkishCase),
		"Ugaritic":                           reflect.ValueOf(&unicode.Ugaritic),
		"Unified_Ideograph":                  reflect.ValueOf(&unicode.Unified_Ideograph),
		"Upper":                              reflect.ValueOf(&unicode.Upper),
		"Vai":                                reflect.ValueOf(&unicode.Vai),
		"Variation_Selector":                 reflect.ValueOf(&unicode.Variation_Selector),
		"Vithkuqi":                           reflect.ValueOf(&unicode.Vithkuqi),
		"Wancho":                             reflect.ValueOf(&unicode.Wancho),
		"Warang_Citi":                        reflect.ValueOf(&unicode.Warang_Citi),
		"White_Space":                        reflect.ValueOf(&unicode.White_Space),
		"Yezidi":                             reflect.ValueOf(&unicode.Yezidi),
		"Yi":                                 reflect.ValueOf(&unicode.Yi),
		"Z":                                  reflect.ValueOf(&unicode.Z),
		"Zanabazar_Square":                   reflect.ValueOf(&unicode.Zanabazar_Square),
		"Zl":                                 reflect.ValueOf(&unicode.Zl),
		"Zp":                                 reflect.ValueOf(&unicode.Zp),
		"Zs":                                 reflect.ValueOf(&unicode.Zs),
	},
	"unicode/utf8": {
		"AppendRune":             reflect.ValueOf(utf8.AppendRune),
		"DecodeLastRune":         reflect.ValueOf(utf8.DecodeLastRune),
		"DecodeLastRuneInString": reflect.ValueOf(utf8.DecodeLastRuneInString),
		"DecodeRune":             reflect.ValueOf(utf8.DecodeRune),
		"DecodeRuneInString":     reflect.ValueOf(utf8.DecodeRuneInString),
		"EncodeRune":             reflect.ValueOf(utf8.EncodeRune),
		"FullRune":               reflect.ValueOf(utf8.FullRune),
		"FullRuneInString":       reflect.ValueOf(utf8.FullRuneInString),
		"RuneCount":              reflect.ValueOf(utf8.RuneCount),
		"RuneCountInString":      reflect.ValueOf(utf8.RuneCountInString),
		"RuneLen":                reflect.ValueOf(utf8.RuneLen),
		"RuneStart":              reflect.ValueOf(utf8.RuneStart),
		"Valid":                  reflect.ValueOf(utf8.Valid),
		"ValidRune":              reflect.ValueOf(utf8.ValidRune),
		"ValidString":            reflect.ValueOf(utf8.ValidString),
	},
	"unicode/utf16": {
		"AppendRune":  reflect.ValueOf(utf16.AppendRune),
		"Decode":      reflect.ValueOf(utf16.Decode),
		"DecodeRune":  reflect.ValueOf(utf16.DecodeRune),
		"Encode":      reflect.ValueOf(utf16.Encode),
		"EncodeRune":  reflect.ValueOf(utf16.EncodeRune),
		"IsSurrogate": reflect.ValueOf(utf16.IsSurrogate),
		"RuneLen":     reflect.ValueOf(utf16.RuneLen),
	},
	"bytes": {
		"Buffer":          reflect.ValueOf((*bytes.Buffer)(nil)),
		"Clone":           reflect.ValueOf(bytes.Clone),
		"Compare":         reflect.ValueOf(bytes.Compare),
		"Contains":        reflect.ValueOf(bytes.Contains),
		"ContainsAny":     reflect.ValueOf(bytes.ContainsAny),
		"ContainsFunc":    reflect.ValueOf(bytes.ContainsFunc),
		"ContainsRune":    reflect.ValueOf(bytes.ContainsRune),
		"Count":           reflect.ValueOf(bytes.Count),
		"Cut":             reflect.ValueOf(bytes.Cut),
		"CutPrefix":       reflect.ValueOf(bytes.CutPrefix),
		"CutSuffix":       reflect.ValueOf(bytes.CutSuffix),
		"Equal":           reflect.ValueOf(bytes.Equal),
		"EqualFold":       reflect.ValueOf(bytes.EqualFold),
		"ErrTooLarge":     reflect.ValueOf(&bytes.ErrTooLarge),
		"Fields":          reflect.ValueOf(bytes.Fields),
		"FieldsFunc":      reflect.ValueOf(bytes.FieldsFunc),
		"FieldsFuncSeq":   reflect.ValueOf(bytes.FieldsFuncSeq),
		"FieldsSeq":       reflect.ValueOf(bytes.FieldsSeq),
		"HasPrefix":       reflect.ValueOf(bytes.HasPrefix),
		"HasSuffix":       reflect.ValueOf(bytes.HasSuffix),
		"Index":           reflect.ValueOf(bytes.Index),
		"IndexAny":        reflect.ValueOf(bytes.IndexAny),
		"IndexByte":       reflect.ValueOf(bytes.IndexByte),
		"IndexFunc":       reflect.ValueOf(bytes.IndexFunc),
		"IndexRune":       reflect.ValueOf(bytes.IndexRune),
		"Join":            reflect.ValueOf(bytes.Join),
		"LastIndex":       reflect.ValueOf(bytes.LastIndex),
		"LastIndexAny":    reflect.ValueOf(bytes.LastIndexAny),
		"LastIndexByte":   reflect.ValueOf(bytes.LastIndexByte),
		"LastIndexFunc":   reflect.ValueOf(bytes.LastIndexFunc),
		"Lines":           reflect.ValueOf(bytes.Lines),
		"Map":             reflect.ValueOf(bytes.Map),
		"NewBuffer":       reflect.ValueOf(bytes.NewBuffer),
		"NewBufferString": reflect.ValueOf(bytes.NewBufferString),
		"NewReader":       reflect.ValueOf(bytes.NewReader),
		"Reader":          reflect.ValueOf((*bytes.Reader)(nil)),
		"Repeat":          reflect.ValueOf(bytes.Repeat),
		"Replace":         reflect.ValueOf(bytes.Replace),
		"ReplaceAll":      reflect.ValueOf(bytes.ReplaceAll),
		"Runes":           reflect.ValueOf(bytes.Runes),
		"Split":           reflect.ValueOf(bytes.Split),
		"SplitAfter":      reflect.ValueOf(bytes.SplitAfter),
		"SplitAfterN":     reflect.ValueOf(bytes.SplitAfterN),
		"SplitAfterSeq":   reflect.ValueOf(bytes.SplitAfterSeq),
		"SplitN":          reflect.ValueOf(bytes.SplitN),
		"SplitSeq":        reflect.ValueOf(bytes.SplitSeq),
		"Title":           reflect.ValueOf(bytes.Title),
		"ToLower":         reflect.ValueOf(bytes.ToLower),
		"ToLowerSpecial":  reflect.ValueOf(bytes.ToLowerSpecial),
		"ToTitle":         reflect.ValueOf(bytes.ToTitle),
		"ToTitleSpecial":  reflect.ValueOf(bytes.ToTitleSpecial),
		"ToUpper":         reflect.ValueOf(bytes.ToUpper),
		"ToUpperSpecial":  reflect.ValueOf(bytes.ToUpperSpecial),
		"ToValidUTF8":     reflect.ValueOf(bytes.ToValidUTF8),
		"Trim":            reflect.ValueOf(bytes.Trim),
		"TrimFunc":        reflect.ValueOf(bytes.TrimFunc),
		"TrimLeft":        reflect.ValueOf(bytes.TrimLeft),
		"TrimLeftFunc":    reflect.ValueOf(bytes.TrimLeftFunc),
		"TrimPrefix":      reflect.ValueOf(bytes.TrimPrefix),
		"TrimRight":       reflect.ValueOf(bytes.TrimRight),
		"TrimRightFunc":   reflect.ValueOf(bytes.TrimRightFunc),
		"TrimSpace":       reflect.ValueOf(bytes.TrimSpace),
		"TrimSuffix":      reflect.ValueOf(bytes.TrimSuffix),
	},
	"io": {
		"ByteReader":       reflect.ValueOf((*io.ByteReader)(nil)),
		"_ByteReader":      reflect.ValueOf((*adapter_io_ByteReader)(nil)),
		"ByteScanner":      reflect.ValueOf((*io.ByteScanner)(nil)),
		"_ByteScanner":     reflect.ValueOf((*adapter_io_ByteScanner)(nil)),
		"ByteWriter":       reflect.ValueOf((*io.ByteWriter)(nil)),
		"_ByteWriter":      reflect.ValueOf((*adapter_io_ByteWriter)(nil)),
		"Closer":           reflect.ValueOf((*io.Closer)(nil)),
		"_Closer":          reflect.ValueOf((*adapter_io_Closer)(nil)),
		"Copy":             reflect.ValueOf(io.Copy),
		"CopyBuffer":       reflect.ValueOf(io.CopyBuffer),
		"CopyN":            reflect.ValueOf(io.CopyN),
		"Discard":          reflect.ValueOf(&io.Discard),
		"EOF":              reflect.ValueOf(&io.EOF),
		"ErrClosedPipe":    reflect.ValueOf(&io.ErrClosedPipe),
		"ErrNoProgress":    reflect.ValueOf(&io.ErrNoProgress),
		"ErrShortBuffer":   reflect.ValueOf(&io.ErrShortBuffer),
		"ErrShortWrite":    reflect.ValueOf(&io.ErrShortWrite),
		"ErrUnexpectedEOF": reflect.ValueOf(&io.ErrUnexpectedEOF),
		"LimitReader":      reflect.ValueOf(io.LimitReader),
		"LimitedReader":    reflect.ValueOf((*io.LimitedReader)(nil)),
		"MultiReader":      reflect.ValueOf(io.MultiReader),
		"MultiWriter":      reflect.ValueOf(io.MultiWriter),
		"NewOffsetWriter":  reflect.ValueOf(io.NewOffsetWriter),
		"NewSectionReader": reflect.ValueOf(io.NewSectionReader),
		"NopCloser":        reflect.ValueOf(io.NopCloser),
		"OffsetWriter":     reflect.ValueOf((*io.OffsetWriter)(nil)),
		"Pipe":             reflect.ValueOf(io.Pipe),
		"PipeReader":       reflect.ValueOf((*io.PipeReader)(nil)),
		"PipeWriter":       reflect.ValueOf((*io.PipeWriter)(nil)),
		"ReadAll":          reflect.ValueOf(io.ReadAll),
		"ReadAtLeast":      reflect.ValueOf(io.ReadAtLeast),
		"ReadCloser":       reflect.ValueOf((*io.ReadCloser)(nil)),
		"_ReadCloser":      reflect.ValueOf((*adapter_io_ReadCloser)(nil)),
		"ReadFull":         reflect.ValueOf(io.ReadFull),
		"ReadSeekCloser":   reflect.ValueOf((*io.ReadSeekCloser)(nil)),
		"_ReadSeekCloser":  reflect.ValueOf((*adapter_io_ReadSeekCloser)(nil)),
		"ReadSeeker":       reflect.ValueOf((*io.ReadSeeker)(nil)),
		"_ReadSeeker":      reflect.ValueOf((*adapter_io_ReadSeeker)(nil)),
		"ReadWriteCloser":  reflect.ValueOf((*io.ReadWriteCloser)(nil)),
		"_ReadWriteCloser": reflect.ValueOf((*adapter_io_ReadWriteCloser)(nil)),
		"ReadWriteSeeker":  reflect.ValueOf((*io.ReadWriteSeeker)(nil)),
		"_ReadWriteSeeker": reflect.ValueOf((*adapter_io_ReadWriteSeeker)(nil)),
		"ReadWriter":       reflect.ValueOf((*io.ReadWriter)(nil)),
		"_ReadWriter":      reflect.ValueOf((*adapter_io_ReadWriter)(nil)),
		"Reader":           reflect.ValueOf((*io.Reader)(nil)),
		"_Reader":          reflect.ValueOf((*adapter_io_Reader)(nil)),
		"ReaderAt":         reflect.ValueOf((*io.ReaderAt)(nil)),
		"_ReaderAt":        reflect.ValueOf((*adapter_io_ReaderAt)(nil)),
		"ReaderFrom":       reflect.ValueOf((*io.ReaderFrom)(nil)),
		"_ReaderFrom":      reflect.ValueOf((*adapter_io_ReaderFrom)(nil)),
		"RuneReader":       reflect.ValueOf((*io.RuneReader)(nil)),
		"_RuneReader":      reflect.ValueOf((*adapter_io_RuneReader)(nil)),
		"RuneScanner":      reflect.ValueOf((*io.RuneScanner)(nil)),
		"_RuneScanner":     reflect.ValueOf((*adapter_io_RuneScanner)(nil)),
		"SectionReader":    reflect.ValueOf((*io.SectionReader)(nil)),
		"Seeker":           reflect.ValueOf((*io.Seeker)(nil)),
		"_Seeker":          reflect.ValueOf((*adapter_io_Seeker)(nil)),
		"StringWriter":     reflect.ValueOf((*io.StringWriter)(nil)),
		"_StringWriter":    reflect.ValueOf((*adapter_io_StringWriter)(nil)),
		"TeeReader":        reflect.ValueOf(io.TeeReader),
		"WriteCloser":      reflect.ValueOf((*io.WriteCloser)(nil)),
		"_WriteCloser":     reflect.ValueOf((*adapter_io_WriteCloser)(nil)),
		"WriteSeeker":      reflect.ValueOf((*io.WriteSeeker)(nil)),
		"_WriteSeeker":     reflect.ValueOf((*adapter_io_WriteSeeker)(nil)),
		"WriteString":      reflect.ValueOf(io.WriteString),
		"Writer":           reflect.ValueOf((*io.Writer)(nil)),
		"_Writer":          reflect.ValueOf((*adapter_io_Writer)(nil)),
		"WriterAt":         reflect.ValueOf((*io.WriterAt)(nil)),
		"_WriterAt":        reflect.ValueOf((*adapter_io_WriterAt)(nil)),
		"WriterTo":         reflect.ValueOf((*io.WriterTo)(nil)),
		"_WriterTo":        reflect.ValueOf((*adapter_io_WriterTo)(nil)),
	},
	"os": {
		"Args":                reflect.ValueOf(&os.Args),
		"Chdir":               reflect.ValueOf(os.Chdir),
		"Chmod":               reflect.ValueOf(os.Chmod),
		"Chown":               reflect.ValueOf(os.Chown),
		"Chtimes":             reflect.ValueOf(os.Chtimes),
		"Clearenv":            reflect.ValueOf(os.Clearenv),
		"CopyFS":              reflect.ValueOf(os.CopyFS),
		"Create":              reflect.ValueOf(os.Create),
		"CreateTemp":          reflect.ValueOf(os.CreateTemp),
		"DirEntry":            reflect.ValueOf((*os.DirEntry)(nil)),
		"_DirEntry":           reflect.ValueOf((*adapter_os_DirEntry)(nil)),
		"DirFS":               reflect.ValueOf(os.DirFS),
		"Environ":             reflect.ValueOf(os.Environ),
		"ErrClosed":           reflect.ValueOf(&os.ErrClosed),
		"ErrDeadlineExceeded": reflect.ValueOf(&os.ErrDeadlineExceeded),
		"ErrExist":            reflect.ValueOf(&os.ErrExist),
		"ErrInvalid":          reflect.ValueOf(&os.ErrInvalid),
		"ErrNoDeadline":       reflect.ValueOf(&os.ErrNoDeadline),
		"ErrNoHandle":         reflect.ValueOf(&os.ErrNoHandle),
		"ErrNotExist":         reflect.ValueOf(&os.ErrNotExist),
		"ErrPermission":       reflect.ValueOf(&os.ErrPermission),
		"ErrProcessDone":      reflect.ValueOf(&os.ErrProcessDone),
		"Executable":          reflect.ValueOf(os.Executable),
		"Exit":                reflect.ValueOf(os.Exit),
		"Expand":              reflect.ValueOf(os.Expand),
		"ExpandEnv":           reflect.ValueOf(os.ExpandEnv),
		"File":                reflect.ValueOf((*os.File)(nil)),
		"FileInfo":            reflect.ValueOf((*os.FileInfo)(nil)),
		"_FileInfo":           reflect.ValueOf((*adapter_os_FileInfo)(nil)),
		"FileMode":            reflect.ValueOf((*os.FileMode)(nil)),
		"FindProcess":         reflect.ValueOf(os.FindProcess),
		"Getegid":             reflect.ValueOf(os.Getegid),
		"Getenv":              reflect.ValueOf(os.Getenv),
		"Geteuid":             reflect.ValueOf(os.Geteuid),
		"Getgid":              reflect.ValueOf(os.Getgid),
		"Getgroups":           reflect.ValueOf(os.Getgroups),
		"Getpagesize":         reflect.ValueOf(os.Getpagesize),
		"Getpid":              reflect.ValueOf(os.Getpid),
		"Getppid":             reflect.ValueOf(os.Getppid),
		"Getuid":              reflect.ValueOf(os.Getuid),
		"Getwd":               reflect.ValueOf(os.Getwd),
		"Hostname":            reflect.ValueOf(os.Hostname),
		"Interrupt":           reflect.ValueOf(&os.Interrupt),
		"IsExist":             reflect.ValueOf(os.IsExist),
		"IsNotExist":          reflect.ValueOf(os.IsNotExist),
		"IsPathSeparator":     reflect.ValueOf(os.IsPathSeparator),
		"IsPermission":        reflect.ValueOf(os.IsPermission),
		"IsTimeout":           reflect.ValueOf(os.IsTimeout),
		"Kill":                reflect.ValueOf(&os.Kill),
		"Lchown":              reflect.ValueOf(os.Lchown),
		"Link":                reflect.ValueOf(os.Link),
		"LinkError":           reflect.ValueOf((*os.LinkError)(nil)),
		"LookupEnv":           reflect.ValueOf(os.LookupEnv),
		"Lstat":               reflect.ValueOf(os.Lstat),
		"Mkdir":               reflect.ValueOf(os.Mkdir),
		"MkdirAll":            reflect.ValueOf(os.MkdirAll),
		"MkdirTemp":           reflect.ValueOf(os.MkdirTemp),
		"NewFile":             reflect.ValueOf(os.NewFile),
		"NewSyscallError":     reflect.ValueOf(os.NewSyscallError),
		"Open":                reflect.ValueOf(os.Open),
		"OpenFile":            reflect.ValueOf(os.OpenFile),
		"OpenInRoot":          reflect.ValueOf(os.OpenInRoot),
		"OpenRoot":            reflect.ValueOf(os.OpenRoot),
		"PathError":           reflect.ValueOf((*os.PathError)(nil)),
		"Pipe":                reflect.ValueOf(os.Pipe),
		"ProcAttr":            reflect.ValueOf((*os.ProcAttr)(nil)),
		"Process":             reflect.ValueOf((*os.Process)(nil)),
		"ProcessState":        reflect.ValueOf((*os.ProcessState)(nil)),
		"ReadDir":             reflect.ValueOf(os.ReadDir),
		"ReadFile":            reflect.ValueOf(os.ReadFile),
		"Readlink":            reflect.ValueOf(os.Readlink),
		"Remove":              reflect.ValueOf(os.Remove),
		"RemoveAll":           reflect.ValueOf(os.RemoveAll),
		"Rename":              reflect.ValueOf(os.Rename),
		"Root":                reflect.ValueOf((*os.Root)(nil)),
		"SameFile":            reflect.ValueOf(os.SameFile),
		"Setenv":              reflect.ValueOf(os.Setenv),
		"Signal":              reflect.ValueOf((*os.Signal)(nil)),
		"_Signal":             reflect.ValueOf((*adapter_os_Signal)(nil)),
		"StartProcess":        reflect.ValueOf(os.StartProcess),
		"Stat":                reflect.ValueOf(os.Stat),
		"Stderr":              reflect.ValueOf(&os.Stderr),
		"Stdin":               reflect.ValueOf(&os.Stdin),
		"Stdout":              reflect.ValueOf(&os.Stdout),
		"Symlink":             reflect.ValueOf(os.Symlink),
		"SyscallError":        reflect.ValueOf((*os.SyscallError)(nil)),
		"TempDir":             reflect.ValueOf(os.TempDir),
		"Truncate":            reflect.ValueOf(os.Truncate),
		"Unsetenv":            reflect.ValueOf(os.Unsetenv),
		"UserCacheDir":        reflect.ValueOf(os.UserCacheDir),
		"UserConfigDir":       reflect.ValueOf(os.UserConfigDir),
		"UserHomeDir":         reflect.ValueOf(os.UserHomeDir),
		"WriteFile":           reflect.ValueOf(os.WriteFile),
	},
	"math/rand": {
		"ExpFloat64":  reflect.ValueOf(rand.ExpFloat64),
		"Float32":     reflect.ValueOf(rand.Float32),
		"Float64":     reflect.ValueOf(rand.Float64),
		"Int":         reflect.ValueOf(rand.Int),
		"Int31":       reflect.ValueOf(rand.Int31),
		"Int31n":      reflect.ValueOf(rand.Int31n),
		"Int63":       reflect.ValueOf(rand.Int63),
		"Int63n":      reflect.ValueOf(rand.Int63n),
		"Intn":        reflect.ValueOf(rand.Intn),
		"New":         reflect.ValueOf(rand.New),
		"NewSource":   reflect.ValueOf(rand.NewSource),
		"NewZipf":     reflect.ValueOf(rand.NewZipf),
		"NormFloat64": reflect.ValueOf(rand.NormFloat64),
		"Perm":        reflect.ValueOf(rand.Perm),
		"Rand":        reflect.ValueOf((*rand.Rand)(nil)),
		"Read":        reflect.ValueOf(rand.Read),
		"Seed":        reflect.ValueOf(rand.Seed),
		"Shuffle":     reflect.ValueOf(rand.Shuffle),
		"Source":      reflect.ValueOf((*rand.Source)(nil)),
		"_Source":     reflect.ValueOf((*adapter_math_rand_Source)(nil)),
		"Source64":    reflect.ValueOf((*rand.Source64)(nil)),
		"_Source64":   reflect.ValueOf((*adapter_math_rand_Source64)(nil)),
		"Uint32":      reflect.ValueOf(rand.Uint32),
		"Uint64":      reflect.ValueOf(rand.Uint64),
		"Zipf":        reflect.ValueOf((*rand.Zipf)(nil)),
	},
	"math/bits": {
		"Add":             reflect.ValueOf(bits.Add),
		"Add32":           reflect.ValueOf(bits.Add32),
		"Add64":           reflect.ValueOf(bits.Add64),
		"Div":             reflect.ValueOf(bits.Div),
		"Div32":           reflect.ValueOf(bits.Div32),
		"Div64":           reflect.ValueOf(bits.Div64),
		"LeadingZeros":    reflect.ValueOf(bits.LeadingZeros),
		"LeadingZeros16":  reflect.ValueOf(bits.LeadingZeros16),
		"LeadingZeros32":  reflect.ValueOf(bits.LeadingZeros32),
		"LeadingZeros64":  reflect.ValueOf(bits.LeadingZeros64),
		"LeadingZeros8":   reflect.ValueOf(bits.LeadingZeros8),
		"Len":             reflect.ValueOf(bits.Len),
		"Len16":           reflect.ValueOf(bits.Len16),
		"Len32":           reflect.ValueOf(bits.Len32),
		"Len64":           reflect.ValueOf(bits.Len64),
		"Len8":            reflect.ValueOf(bits.Len8),
		"Mul":             reflect.ValueOf(bits.Mul),
		"Mul32":           reflect.ValueOf(bits.Mul32),
		"Mul64":           reflect.ValueOf(bits.Mul64),
		"OnesCount":       reflect.ValueOf(bits.OnesCount),
		"OnesCount16":     reflect.ValueOf(bits.OnesCount16),
		"OnesCount32":     reflect.ValueOf(bits.OnesCount32),
		"OnesCount64":     reflect.ValueOf(bits.OnesCount64),
		"OnesCount8":      reflect.ValueOf(bits.OnesCount8),
		"Rem":             reflect.ValueOf(bits.Rem),
		"Rem32":           reflect.ValueOf(bits.Rem32),
		"Rem64":           reflect.ValueOf(bits.Rem64),
		"Reverse":         reflect.ValueOf(bits.Reverse),
		"Reverse16":       reflect.ValueOf(bits.Reverse16),
		"Reverse32":       reflect.ValueOf(bits.Reverse32),
		"Reverse64":       reflect.ValueOf(bits.Reverse64),
		"Reverse8":        reflect.ValueOf(bits.Reverse8),
		"ReverseBytes":    reflect.ValueOf(bits.ReverseBytes),
		"ReverseBytes16":  reflect.ValueOf(bits.ReverseBytes16),
		"ReverseBytes32":  reflect.ValueOf(bits.ReverseBytes32),
		"ReverseBytes64":  reflect.ValueOf(bits.ReverseBytes64),
		"RotateLeft":      reflect.ValueOf(bits.RotateLeft),
		"RotateLeft16":    reflect.ValueOf(bits.RotateLeft16),
		"RotateLeft32":    reflect.ValueOf(bits.RotateLeft32),
		"RotateLeft64":    reflect.ValueOf(bits.RotateLeft64),
		"RotateLeft8":     reflect.ValueOf(bits.RotateLeft8),
		"Sub":             reflect.ValueOf(bits.Sub),
		"Sub32":           reflect.ValueOf(bits.Sub32),
		"Sub64":           reflect.ValueOf(bits.Sub64),
		"TrailingZeros":   reflect.ValueOf(bits.TrailingZeros),
		"TrailingZeros16": reflect.ValueOf(bits.TrailingZeros16),
		"TrailingZeros32": reflect.ValueOf(bits.TrailingZeros32),
		"TrailingZeros64": reflect.ValueOf(bits.TrailingZeros64),
		"TrailingZeros8":  reflect.ValueOf(bits.TrailingZeros8),
	},
	"math/cmplx": {
		"Abs":   reflect.ValueOf(cmplx.Abs),
		"Acos":  reflect.ValueOf(cmplx.Acos),
		"Acosh": reflect.ValueOf(cmplx.Acosh),
		"Asin":  reflect.ValueOf(cmplx.Asin),
		"Asinh": reflect.ValueOf(cmplx.Asinh),
		"Atan":  reflect.ValueOf(cmplx.Atan),
		"Atanh": reflect.ValueOf(cmplx.Atanh),
		"Conj":  reflect.ValueOf(cmplx.Conj),
		"Cos":   reflect.ValueOf(cmplx.Cos),
		"Cosh":  reflect.ValueOf(cmplx.Cosh),
		"Cot":   reflect.ValueOf(cmplx.Cot),
		"Exp":   reflect.ValueOf(cmplx.Exp),
		"Inf":   reflect.ValueOf(cmplx.Inf),
		"IsInf": reflect.ValueOf(cmplx.IsInf),
		"IsNaN": reflect.ValueOf(cmplx.IsNaN),
		"Log":   reflect.ValueOf(cmplx.Log),
		"Log10": reflect.ValueOf(cmplx.Log10),
		"NaN":   reflect.ValueOf(cmplx.NaN),
		"Phase": reflect.ValueOf(cmplx.Phase),
		"Polar": reflect.ValueOf(cmplx.Polar),
		"Pow":   reflect.ValueOf(cmplx.Pow),
		"Rect":  reflect.ValueOf(cmplx.Rect),
		"Sin":   reflect.ValueOf(cmplx.Sin),
		"Sinh":  reflect.ValueOf(cmplx.Sinh),
		"Sqrt":  reflect.ValueOf(cmplx.Sqrt),
		"Tan":   reflect.ValueOf(cmplx.Tan),
		"Tanh":  reflect.ValueOf(cmplx.Tanh),
	},
	"math/big": {
		"Accuracy":     reflect.ValueOf((*big.Accuracy)(nil)),
		"ErrNaN":       reflect.ValueOf((*big.ErrNaN)(nil)),
		"Float":        reflect.ValueOf((*big.Float)(nil)),
		"Int":          reflect.ValueOf((*big.Int)(nil)),
		"Jacobi":       reflect.ValueOf(big.Jacobi),
		"NewFloat":     reflect.ValueOf(big.NewFloat),
		"NewInt":       reflect.ValueOf(big.NewInt),
		"NewRat":       reflect.ValueOf(big.NewRat),
		"ParseFloat":   reflect.ValueOf(big.ParseFloat),
		"Rat":          reflect.ValueOf((*big.Rat)(nil)),
		"RoundingMode": reflect.ValueOf((*big.RoundingMode)(nil)),
		"Word":         reflect.ValueOf((*big.Word)(nil)),
	},
	"regexp": {
		"Compile":          reflect.ValueOf(regexp.Compile),
		"CompilePOSIX":     reflect.ValueOf(regexp.CompilePOSIX),
		"Match":            reflect.ValueOf(regexp.Match),
		"MatchReader":      reflect.ValueOf(regexp.MatchReader),
		"MatchString":      reflect.ValueOf(regexp.MatchString),
		"MustCompile":      reflect.ValueOf(regexp.MustCompile),
		"MustCompilePOSIX": reflect.ValueOf(regexp.MustCompilePOSIX),
		"QuoteMeta":        reflect.ValueOf(regexp.QuoteMeta),
		"Regexp":           reflect.ValueOf((*regexp.Regexp)(nil)),
	},
	"encoding/json": {
		"Compact":               reflect.ValueOf(json.Compact),
		"Decoder":               reflect.ValueOf((*json.Decoder)(nil)),
		"Delim":                 reflect.ValueOf((*json.Delim)(nil)),
		"Encoder":               reflect.ValueOf((*json.Encoder)(nil)),
		"HTMLEscape":            reflect.ValueOf(json.HTMLEscape),
		"Indent":                reflect.ValueOf(json.Indent),
		"InvalidUTF8Error":      reflect.ValueOf((*json.InvalidUTF8Error)(nil)),
		"InvalidUnmarshalError": reflect.ValueOf((*json.InvalidUnmarshalError)(nil)),
		"Marshal":               reflect.ValueOf(json.Marshal),
		"MarshalIndent":         reflect.ValueOf(json.MarshalIndent),
		"Marshaler":             reflect.ValueOf((*json.Marshaler)(nil)),
		"_Marshaler":            reflect.ValueOf((*adapter_encoding_json_Marshaler)(nil)),
		"MarshalerError":        reflect.ValueOf((*json.MarshalerError)(nil)),
		"NewDecoder":            reflect.ValueOf(json.NewDecoder),
		"NewEncoder":            reflect.ValueOf(json.NewEncoder),
		"Number":                reflect.ValueOf((*json.Number)(nil)),
		"RawMessage":            reflect.ValueOf((*json.RawMessage)(nil)),
		"SyntaxError":           reflect.ValueOf((*json.SyntaxError)(nil)),
		"Token":                 reflect.ValueOf((*json.Token)(nil)),
		"Unmarshal":             reflect.ValueOf(json.Unmarshal),
		"UnmarshalFieldError":   reflect.ValueOf((*json.UnmarshalFieldError)(nil)),
		"UnmarshalTypeError":    reflect.ValueOf((*json.UnmarshalTypeError)(nil)),
		"Unmarshaler":           reflect.ValueOf((*json.Unmarshaler)(nil)),
		"_Unmarshaler":          reflect.ValueOf((*adapter_encoding_json_Unmarshaler)(nil)),
		"UnsupportedTypeError":  reflect.ValueOf((*json.UnsupportedTypeError)(nil)),
		"UnsupportedValueError": reflect.ValueOf((*json.UnsupportedValueError)(nil)),
		"Valid":                 reflect.ValueOf(json.Valid),
	},
	"container/list": {
		"Element": reflect.ValueOf((*list.Element)(nil)),
		"List":    reflect.ValueOf((*list.List)(nil)),
		"New":     reflect.ValueOf(list.New),
	},
	"container/heap": {
		"Fix":        reflect.ValueOf(heap.Fix),
		"Init":       reflect.ValueOf(heap.Init),
		"Interface":  reflect.ValueOf((*heap.Interface)(nil)),
		"_Interface": reflect.ValueOf((*adapter_container_heap_Interface)(nil)),
		"Pop":        reflect.ValueOf(heap.Pop),
		"Push":       reflect.ValueOf(heap.Push),
		"Remove":     reflect.ValueOf(heap.Remove),
	},
	"container/ring": {
		"New":  reflect.ValueOf(ring.New),
		"Ring": reflect.ValueOf((*ring.Ring)(nil)),
	},
	"text/tabwriter": {
		"NewWriter": reflect.ValueOf(tabwriter.NewWriter),
		"Writer":    reflect.ValueOf((*tabwriter.Writer)(nil)),
	},
	"context": {
		"AfterFunc":         reflect.ValueOf(context.AfterFunc),
		"Background":        reflect.ValueOf(context.Background),
		"CancelCauseFunc":   reflect.ValueOf((*context.CancelCauseFunc)(nil)),
		"CancelFunc":        reflect.ValueOf((*context.CancelFunc)(nil)),
		"Canceled":          reflect.ValueOf(&context.Canceled),
		"Cause":             reflect.ValueOf(context.Cause),
		"Context":           reflect.ValueOf((*context.Context)(nil)),
		"_Context":          reflect.ValueOf((*adapter_context_Context)(nil)),
		"DeadlineExceeded":  reflect.ValueOf(&context.DeadlineExceeded),
		"TODO":              reflect.ValueOf(context.TODO),
		"WithCancel":        reflect.ValueOf(context.WithCancel),
		"WithCancelCause":   reflect.ValueOf(context.WithCancelCause),
		"WithDeadline":      reflect.ValueOf(context.WithDeadline),
		"WithDeadlineCause": reflect.ValueOf(context.WithDeadlineCause),
		"WithTimeout":       reflect.ValueOf(context.WithTimeout),
		"WithTimeoutCause":  reflect.ValueOf(context.WithTimeoutCause),
		"WithValue":         reflect.ValueOf(context.WithValue),
		"WithoutCancel":     reflect.ValueOf(context.WithoutCancel),
	},
	"bufio": {
		"ErrAdvanceTooFar":     reflect.ValueOf(&bufio.ErrAdvanceTooFar),
		"ErrBadReadCount":      reflect.ValueOf(&bufio.ErrBadReadCount),
		"ErrBufferFull":        reflect.ValueOf(&bufio.ErrBufferFull),
		"ErrFinalToken":        reflect.ValueOf(&bufio.ErrFinalToken),
		"ErrInvalidUnreadByte": reflect.ValueOf(&bufio.ErrInvalidUnreadByte),
		"ErrInvalidUnreadRune": reflect.ValueOf(&bufio.ErrInvalidUnreadRune),
		"ErrNegativeAdvance":   reflect.ValueOf(&bufio.ErrNegativeAdvance),
		"ErrNegativeCount":     reflect.ValueOf(&bufio.ErrNegativeCount),
		"ErrTooLong":           reflect.ValueOf(&bufio.ErrTooLong),
		"NewReadWriter":        reflect.ValueOf(bufio.NewReadWriter),
		"NewReader":            reflect.ValueOf(bufio.NewReader),
		"NewReaderSize":        reflect.ValueOf(bufio.NewReaderSize),
		"NewScanner":           reflect.ValueOf(bufio.NewScanner),
		"NewWriter":            reflect.ValueOf(bufio.NewWriter),
		"NewWriterSize":        reflect.ValueOf(bufio.NewWriterSize),
		"ReadWriter":           reflect.ValueOf((*bufio.ReadWriter)(nil)),
		"Reader":               reflect.ValueOf((*bufio.Reader)(nil)),
		"ScanBytes":            reflect.ValueOf(bufio.ScanBytes),
		"ScanLines":            reflect.ValueOf(bufio.ScanLines),
		"ScanRunes":            reflect.ValueOf(bufio.ScanRunes),
		"ScanWords":            reflect.ValueOf(bufio.ScanWords),
		"Scanner":              reflect.ValueOf((*bufio.Scanner)(nil)),
		"SplitFunc":            reflect.ValueOf((*bufio.SplitFunc)(nil)),
		"Writer":               reflect.ValueOf((*bufio.Writer)(nil)),
	},
	"log": {
		"Default":   reflect.ValueOf(log.Default),
		"Fatal":     reflect.ValueOf(log.Fatal),
		"Fatalf":    reflect.ValueOf(log.Fatalf),
		"Fatalln":   reflect.ValueOf(log.Fatalln),
		"Flags":     reflect.ValueOf(log.Flags),
		"Logger":    reflect.ValueOf((*log.Logger)(nil)),
		"New":       reflect.ValueOf(log.New),
		"Output":    reflect.ValueOf(log.Output),
		"Panic":     reflect.ValueOf(log.Panic),
		"Panicf":    reflect.ValueOf(log.Panicf),
		"Panicln":   reflect.ValueOf(log.Panicln),
		"Prefix":    reflect.ValueOf(log.Prefix),
		"Print":     reflect.ValueOf(log.Print),
		"Printf":    reflect.ValueOf(log.Printf),
		"Println":   reflect.ValueOf(log.Println),
		"SetFlags":  reflect.ValueOf(log.SetFlags),
		"SetOutput": reflect.ValueOf(log.SetOutput),
		"SetPrefix": reflect.ValueOf(log.SetPrefix),
		"Writer":    reflect.ValueOf(log.Writer),
	},
	"runtime": {
		"BlockProfile":            reflect.ValueOf(runtime.BlockProfile),
		"BlockProfileRecord":      reflect.ValueOf((*runtime.BlockProfileRecord)(nil)),
		"Breakpoint":              reflect.ValueOf(runtime.Breakpoint),
		"CPUProfile":              reflect.ValueOf(runtime.CPUProfile),
		"Caller":                  reflect.ValueOf(runtime.Caller),
		"Callers":                 reflect.ValueOf(runtime.Callers),
		"CallersFrames":           reflect.ValueOf(runtime.CallersFrames),
		"Cleanup":                 reflect.ValueOf((*runtime.Cleanup)(nil)),
		"Error":                   reflect.ValueOf((*runtime.Error)(nil)),
		"_Error":                  reflect.ValueOf((*adapter_runtime_Error)(nil)),
		"Frame":                   reflect.ValueOf((*runtime.Frame)(nil)),
		"Frames":                  reflect.ValueOf((*runtime.Frames)(nil)),
		"Func":                    reflect.ValueOf((*runtime.Func)(nil)),
		"FuncForPC":               reflect.ValueOf(runtime.FuncForPC),
		"GC":                      reflect.ValueOf(runtime.GC),
		"GOMAXPROCS":              reflect.ValueOf(runtime.GOMAXPROCS),
		"GOROOT":                  reflect.ValueOf(runtime.GOROOT),
		"Goexit":                  reflect.ValueOf(runtime.Goexit),
		"GoroutineProfile":        reflect.ValueOf(runtime.GoroutineProfile),
		"Gosched":                 reflect.ValueOf(runtime.Gosched),
		"KeepAlive":               reflect.ValueOf(runtime.KeepAlive),
		"LockOSThread":            reflect.ValueOf(runtime.LockOSThread),
		"MemProfile":              reflect.ValueOf(runtime.MemProfile),
		"MemProfileRate":          reflect.ValueOf(&runtime.MemProfileRate),
		"MemProfileRecord":        reflect.ValueOf((*runtime.MemProfileRecord)(nil)),
		"MemStats":                reflect.ValueOf((*runtime.MemStats)(nil)),
		"MutexProfile":            reflect.ValueOf(runtime.MutexProfile),
		"NumCPU":                  reflect.ValueOf(runtime.NumCPU),
		"NumCgoCall":              reflect.ValueOf(runtime.NumCgoCall),
		"NumGoroutine":            reflect.ValueOf(runtime.NumGoroutine),
		"PanicNilError":           reflect.ValueOf((*runtime.PanicNilError)(nil)),
		"Pinner":                  reflect.ValueOf((*runtime.Pinner)(nil)),
		"ReadMemStats":            reflect.ValueOf(runtime.ReadMemStats),
		"ReadTrace":               reflect.ValueOf(runtime.ReadTrace),
		"SetBlockProfileRate":     reflect.ValueOf(runtime.SetBlockProfileRate),
		"SetCPUProfileRate":       reflect.ValueOf(runtime.SetCPUProfileRate),
		"SetCgoTraceback":         reflect.ValueOf(runtime.SetCgoTraceback),
		"SetDefaultGOMAXPROCS":    reflect.ValueOf(runtime.SetDefaultGOMAXPROCS),
		"SetFinalizer":            reflect.ValueOf(runtime.SetFinalizer),
		"SetMutexProfileFraction": reflect.ValueOf(runtime.SetMutexProfileFraction),
		"Stack":                   reflect.ValueOf(runtime.Stack),
		"StackRecord":             reflect.ValueOf((*runtime.StackRecord)(nil)),
		"StartTrace":              reflect.ValueOf(runtime.StartTrace),
		"StopTrace":               reflect.ValueOf(runtime.StopTrace),
		"ThreadCreateProfile":     reflect.ValueOf(runtime.ThreadCreateProfile),
		"TypeAssertionError":      reflect.ValueOf((*runtime.TypeAssertionError)(nil)),
		"UnlockOSThread":          reflect.ValueOf(runtime.UnlockOSThread),
		"Version":                 reflect.ValueOf(runtime.Version),
	},
	"reflect": {
		"Append":          reflect.ValueOf(reflect.Append),
		"AppendSlice":     reflect.ValueOf(reflect.AppendSlice),
		"ArrayOf":         reflect.ValueOf(reflect.ArrayOf),
		"ChanDir":         reflect.ValueOf((*reflect.ChanDir)(nil)),
		"ChanOf":          reflect.ValueOf(reflect.ChanOf),
		"Copy":            reflect.ValueOf(reflect.Copy),
		"DeepEqual":       reflect.ValueOf(reflect.DeepEqual),
		"FuncOf":          reflect.ValueOf(reflect.FuncOf),
		"Indirect":        reflect.ValueOf(reflect.Indirect),
		"Kind":            reflect.ValueOf((*reflect.Kind)(nil)),
		"MakeChan":        reflect.ValueOf(reflect.MakeChan),
		"MakeFunc":        reflect.ValueOf(reflect.MakeFunc),
		"MakeMap":         reflect.ValueOf(reflect.MakeMap),
		"MakeMapWithSize": reflect.ValueOf(reflect.MakeMapWithSize),
		"MakeSlice":       reflect.ValueOf(reflect.MakeSlice),
		"MapIter":         reflect.ValueOf((*reflect.MapIter)(nil)),
		"MapOf":           reflect.ValueOf(reflect.MapOf),
		"Method":          reflect.ValueOf((*reflect.Method)(nil)),
		"New":             reflect.ValueOf(reflect.New),
		"NewAt":           reflect.ValueOf(reflect.NewAt),
		"PointerTo":       reflect.ValueOf(reflect.PointerTo),
		"PtrTo":           reflect.ValueOf(reflect.PtrTo),
		"Select":          reflect.ValueOf(reflect.Select),
		"SelectCase":      reflect.ValueOf((*reflect.SelectCase)(nil)),
		"SelectDir":       reflect.ValueOf((*reflect.SelectDir)(nil)),
		"SliceAt":         reflect.ValueOf(reflect.SliceAt),
		"SliceHeader":     reflect.ValueOf((*reflect.SliceHeader)(nil)),
		"SliceOf":         reflect.ValueOf(reflect.SliceOf),
		"StringHeader":    reflect.ValueOf((*reflect.StringHeader)(nil)),
		"StructField":     reflect.ValueOf((*reflect.StructField)(nil)),
		"StructOf":        reflect.ValueOf(reflect.StructOf),
		"StructTag":       reflect.ValueOf((*reflect.StructTag)(nil)),
		"Swapper":         reflect.ValueOf(reflect.Swapper),
		"Type":            reflect.ValueOf((*reflect.Type)(nil)),
		"TypeOf":          reflect.ValueOf(reflect.TypeOf),
		"Value":           reflect.ValueOf((*reflect.Value)(nil)),
		"ValueError":      reflect.ValueOf((*reflect.ValueError)(nil)),
		"ValueOf":         reflect.ValueOf(reflect.ValueOf),
		"VisibleFields":   reflect.ValueOf(reflect.VisibleFields),
		"Zero":            reflect.ValueOf(reflect.Zero),
	},
	"encoding/csv": {
		"ErrBareQuote":     reflect.ValueOf(&csv.ErrBareQuote),
		"ErrFieldCount":    reflect.ValueOf(&csv.ErrFieldCount),
		"ErrQuote":         reflect.ValueOf(&csv.ErrQuote),
		"ErrTrailingComma": reflect.ValueOf(&csv.ErrTrailingComma),
		"NewReader":        reflect.ValueOf(csv.NewReader),
		"NewWriter":        reflect.ValueOf(csv.NewWriter),
		"ParseError":       reflect.ValueOf((*csv.ParseError)(nil)),
		"Reader":           reflect.ValueOf((*csv.Reader)(nil)),
		"Writer":           reflect.ValueOf((*csv.Writer)(nil)),
	},
	"cmp":    {},
	"maps":   {},
	"slices": {},
	"iter":   {},
	"math/rand/v2": {
		"ChaCha8":     reflect.ValueOf((*rand_.ChaCha8)(nil)),
		"ExpFloat64":  reflect.ValueOf(rand_.ExpFloat64),
		"Float32":     reflect.ValueOf(rand_.Float32),
		"Float64":     reflect.ValueOf(rand_.Float64),
		"Int":         reflect.ValueOf(rand_.Int),
		"Int32":       reflect.ValueOf(rand_.Int32),
		"Int32N":      reflect.ValueOf(rand_.Int32N),
		"Int64":       reflect.ValueOf(rand_.Int64),
		"Int64N":      reflect.ValueOf(rand_.Int64N),
		"IntN":        reflect.ValueOf(rand_.IntN),
		"New":         reflect.ValueOf(rand_.New),
		"NewChaCha8":  reflect.ValueOf(rand_.NewChaCha8),
		"NewPCG":      reflect.ValueOf(rand_.NewPCG),
		"NewZipf":     reflect.ValueOf(rand_.NewZipf),
		"NormFloat64": reflect.ValueOf(rand_.NormFloat64),
		"PCG":         reflect.ValueOf((*rand_.PCG)(nil)),
		"Perm":        reflect.ValueOf(rand_.Perm),
		"Rand":        reflect.ValueOf((*rand_.Rand)(nil)),
		"Shuffle":     reflect.ValueOf(rand_.Shuffle),
		"Source":      reflect.ValueOf((*rand_.Source)(nil)),
		"_Source":     reflect.ValueOf((*adapter_math_rand_v2_Source)(nil)),
		"Uint":        reflect.ValueOf(rand_.Uint),
		"Uint32":      reflect.ValueOf(rand_.Uint32),
		"Uint32N":     reflect.ValueOf(rand_.Uint32N),
		"Uint64":      reflect.ValueOf(rand_.Uint64),
		"Uint64N":     reflect.ValueOf(rand_.Uint64N),
		"UintN":       reflect.ValueOf(rand_.UintN),
		"Zipf":        reflect.ValueOf((*rand_.Zipf)(nil)),
	},
	"runtime/debug": {
		"BuildInfo":       reflect.ValueOf((*debug.BuildInfo)(nil)),
		"BuildSetting":    reflect.ValueOf((*debug.BuildSetting)(nil)),
		"CrashOptions":    reflect.ValueOf((*debug.CrashOptions)(nil)),
		"FreeOSMemory":    reflect.ValueOf(debug.FreeOSMemory),
		"GCStats":         reflect.ValueOf((*debug.GCStats)(nil)),
		"Module":          reflect.ValueOf((*debug.Module)(nil)),
		"ParseBuildInfo":  reflect.ValueOf(debug.ParseBuildInfo),
		"PrintStack":      reflect.ValueOf(debug.PrintStack),
		"ReadBuildInfo":   reflect.ValueOf(debug.ReadBuildInfo),
		"ReadGCStats":     reflect.ValueOf(debug.ReadGCStats),
		"SetCrashOutput":  reflect.ValueOf(debug.SetCrashOutput),
		"SetGCPercent":    reflect.ValueOf(debug.SetGCPercent),
		"SetMaxStack":     reflect.ValueOf(debug.SetMaxStack),
		"SetMaxThreads":   reflect.ValueOf(debug.SetMaxThreads),
		"SetMemoryLimit":  reflect.ValueOf(debug.SetMemoryLimit),
		"SetPanicOnFault": reflect.ValueOf(debug.SetPanicOnFault),
		"SetTraceback":    reflect.ValueOf(debug.SetTraceback),
		"Stack":           reflect.ValueOf(debug.Stack),
		"WriteHeapDump":   reflect.ValueOf(debug.WriteHeapDump),
	},
	"encoding/binary": {
		"Append":           reflect.ValueOf(binary.Append),
		"AppendByteOrder":  reflect.ValueOf((*binary.AppendByteOrder)(nil)),
		"_AppendByteOrder": reflect.ValueOf((*adapter_encoding_binary_AppendByteOrder)(nil)),
		"AppendUvarint":    reflect.ValueOf(binary.AppendUvarint),
		"AppendVarint":     reflect.ValueOf(binary.AppendVarint),
		"BigEndian":        reflect.ValueOf(&binary.BigEndian),
		"ByteOrder":        reflect.ValueOf((*binary.ByteOrder)(nil)),
		"_ByteOrder":       reflect.ValueOf((*adapter_encoding_binary_ByteOrder)(nil)),
		"Decode":           reflect.ValueOf(binary.Decode),
		"Encode":           reflect.ValueOf(binary.Encode),
		"LittleEndian":     reflect.ValueOf(&binary.LittleEndian),
		"NativeEndian":     reflect.ValueOf(&binary.NativeEndian),
		"PutUvarint":       reflect.ValueOf(binary.PutUvarint),
		"PutVarint":        reflect.ValueOf(binary.PutVarint),
		"Read":             reflect.ValueOf(binary.Read),
		"ReadUvarint":      reflect.ValueOf(binary.ReadUvarint),
		"ReadVarint":       reflect.ValueOf(binary.ReadVarint),
		"Size":             reflect.ValueOf(binary.Size),
		"Uvarint":          reflect.ValueOf(binary.Uvarint),
		"Varint":           reflect.ValueOf(binary.Varint),
		"Write":            reflect.ValueOf(binary.Write),
	},
	"encoding/hex": {
		"AppendDecode":     reflect.ValueOf(hex.AppendDecode),
		"AppendEncode":     reflect.ValueOf(hex.AppendEncode),
		"Decode":           reflect.ValueOf(hex.Decode),
		"DecodeString":     reflect.ValueOf(hex.DecodeString),
		"DecodedLen":       reflect.ValueOf(hex.DecodedLen),
		"Dump":             reflect.ValueOf(hex.Dump),
		"Dumper":           reflect.ValueOf(hex.Dumper),
		"Encode":           reflect.ValueOf(hex.Encode),
		"EncodeToString":   reflect.ValueOf(hex.EncodeToString),
		"EncodedLen":       reflect.ValueOf(hex.EncodedLen),
		"ErrLength":        reflect.ValueOf(&hex.ErrLength),
		"InvalidByteError": reflect.ValueOf((*hex.InvalidByteError)(nil)),
		"NewDecoder":       reflect.ValueOf(hex.NewDecoder),
		"NewEncoder":       reflect.ValueOf(hex.NewEncoder),
	},
	"encoding/base64": {
		"CorruptInputError": reflect.ValueOf((*base64.CorruptInputError)(nil)),
		"Encoding":          reflect.ValueOf((*base64.Encoding)(nil)),
		"NewDecoder":        reflect.ValueOf(base64.NewDecoder),
		"NewEncoder":        reflect.ValueOf(base64.NewEncoder),
		"NewEncoding":       reflect.ValueOf(base64.NewEncoding),
		"RawStdEncoding":    reflect.ValueOf(&base64.RawStdEncoding),
		"RawURLEncoding":    reflect.ValueOf(&base64.RawURLEncoding),
		"StdEncoding":       reflect.ValueOf(&base64.StdEncoding),
		"URLEncoding":       reflect.ValueOf(&base64.URLEncoding),
	},
	"path": {
		"Base":          reflect.ValueOf(path.Base),
		"Clean":         reflect.ValueOf(path.Clean),
		"Dir":           reflect.ValueOf(path.Dir),
		"ErrBadPattern": reflect.ValueOf(&path.ErrBadPattern),
		"Ext":           reflect.ValueOf(path.Ext),
		"IsAbs":         reflect.ValueOf(path.IsAbs),
		"Join":          reflect.ValueOf(path.Join),
		"Match":         reflect.ValueOf(path.Match),
		"Split":         reflect.ValueOf(path.Split),
	},
}

type adapter_fmt_Formatter struct{ eval.Box }

func (a adapter_fmt_Formatter) Format(p0 fmt.State, p1 rune) {
	a.CallMethod("Format", p0, p1)
}

type adapter_fmt_GoStringer struct{ eval.Box }

func (a adapter_fmt_GoStringer) GoString() string {
	r := a.CallMethod("GoString")
	return eval.As[string](r[0])
}

type adapter_fmt_ScanState struct{ eval.Box }

func (a adapter_fmt_ScanState) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

func (a adapter_fmt_ScanState) ReadRune() (rune, int, error) {
	r := a.CallMethod("ReadRune")
	return eval.As[rune](r[0]), eval.As[int](r[1]), eval.As[error](r[2])
}

func (a adapter_fmt_ScanState) SkipSpace() {
	a.CallMethod("SkipSpace")
}

func (a adapter_fmt_ScanState) Token(p0 bool, p1 func(rune) bool) ([]byte, error) {
	r := a.CallMethod("Token", p0, p1)
	return eval.As[[]byte](r[0]), eval.As[error](r[1])
}

func (a adapter_fmt_ScanState) UnreadRune() error {
	r := a.CallMethod("UnreadRune")
	return eval.As[error](r[0])
}

func (a adapter_fmt_ScanState) Width() (int, bool) {
	r := a.CallMethod("Width")
	return eval.As[int](r[0]), eval.As[bool](r[1])
}

type adapter_fmt_Scanner struct{ eval.Box }

func (a adapter_fmt_Scanner) Scan(p0 fmt.ScanState, p1 rune) error {
	r := a.CallMethod("Scan", p0, p1)
	return eval.As[error](r[0])
}

type adapter_fmt_State struct{ eval.Box }

func (a adapter_fmt_State) Flag(p0 int) bool {
	r := a.CallMethod("Flag", p0)
	return eval.As[bool](r[0])
}

func (a adapter_fmt_State) Precision() (int, bool) {
	r := a.CallMethod("Precision")
	return eval.As[int](r[0]), eval.As[bool](r[1])
}

func (a adapter_fmt_State) Width() (int, bool) {
	r := a.CallMethod("Width")
	return eval.As[int](r[0]), eval.As[bool](r[1])
}

func (a adapter_fmt_State) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_fmt_Stringer struct{ eval.Box }

func (a adapter_fmt_Stringer) String() string {
	r := a.CallMethod("String")
	return eval.As[string](r[0])
}

type adapter_sort_Interface struct{ eval.Box }

func (a adapter_sort_Interface) Len() int {
	r := a.CallMethod("Len")
	return eval.As[int](r[0])
}

func (a adapter_sort_Interface) Less(p0 int, p1 int) bool {
	r := a.CallMethod("Less", p0, p1)
	return eval.As[bool](r[0])
}

func (a adapter_sort_Interface) Swap(p0 int, p1 int) {
	a.CallMethod("Swap", p0, p1)
}

type adapter_sync_Locker struct{ eval.Box }

func (a adapter_sync_Locker) Lock() {
	a.CallMethod("Lock")
}

func (a adapter_sync_Locker) Unlock() {
	a.CallMethod("Unlock")
}

type adapter_io_ByteReader struct{ eval.Box }

func (a adapter_io_ByteReader) ReadByte() (byte, error) {
	r := a.CallMethod("ReadByte")
	return eval.As[byte](r[0]), eval.As[error](r[1])
}

type adapter_io_ByteScanner struct{ eval.Box }

func (a adapter_io_ByteScanner) ReadByte() (byte, error) {
	r := a.CallMethod("ReadByte")
	return eval.As[byte](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ByteScanner) UnreadByte() error {
	r := a.CallMethod("UnreadByte")
	return eval.As[error](r[0])
}

type adapter_io_ByteWriter struct{ eval.Box }

func (a adapter_io_ByteWriter) WriteByte(p0 byte) error {
	r := a.CallMethod("WriteByte", p0)
	return eval.As[error](r[0])
}

type adapter_io_Closer struct{ eval.Box }

func (a adapter_io_Closer) Close() error {
	r := a.CallMethod("Close")
	return eval.As[error](r[0])
}

type adapter_io_ReadCloser struct{ eval.Box }

func (a adapter_io_ReadCloser) Close() error {
	r := a.CallMethod("Close")
	return eval.As[error](r[0])
}

func (a adapter_io_ReadCloser) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_ReadSeekCloser struct{ eval.Box }

func (a adapter_io_ReadSeekCloser) Close() error {
	r := a.CallMethod("Close")
	return eval.As[error](r[0])
}

func (a adapter_io_ReadSeekCloser) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ReadSeekCloser) Seek(p0 int64, p1 int) (int64, error) {
	r := a.CallMethod("Seek", p0, p1)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

type adapter_io_ReadSeeker struct{ eval.Box }

func (a adapter_io_ReadSeeker) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ReadSeeker) Seek(p0 int64, p1 int) (int64, error) {
	r := a.CallMethod("Seek", p0, p1)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

type adapter_io_ReadWriteCloser struct{ eval.Box }

func (a adapter_io_ReadWriteCloser) Close() error {
	r := a.CallMethod("Close")
	return eval.As[error](r[0])
}

func (a adapter_io_ReadWriteCloser) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ReadWriteCloser) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_ReadWriteSeeker struct{ eval.Box }

func (a adapter_io_ReadWriteSeeker) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ReadWriteSeeker) Seek(p0 int64, p1 int) (int64, error) {
	r := a.CallMethod("Seek", p0, p1)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ReadWriteSeeker) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_ReadWriter struct{ eval.Box }

func (a adapter_io_ReadWriter) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

func (a adapter_io_ReadWriter) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_Reader struct{ eval.Box }

func (a adapter_io_Reader) Read(p0 []byte) (int, error) {
	r := a.CallMethod("Read", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_ReaderAt struct{ eval.Box }

func (a adapter_io_ReaderAt) ReadAt(p0 []byte, p1 int64) (int, error) {
	r := a.CallMethod("ReadAt", p0, p1)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_ReaderFrom struct{ eval.Box }

func (a adapter_io_ReaderFrom) ReadFrom(p0 io.Reader) (int64, error) {
	r := a.CallMethod("ReadFrom", p0)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

type adapter_io_RuneReader struct{ eval.Box }

func (a adapter_io_RuneReader) ReadRune() (rune, int, error) {
	r := a.CallMethod("ReadRune")
	return eval.As[rune](r[0]), eval.As[int](r[1]), eval.As[error](r[2])
}

type adapter_io_RuneScanner struct{ eval.Box }

func (a adapter_io_RuneScanner) ReadRune() (rune, int, error) {
	r := a.CallMethod("ReadRune")
	return eval.As[rune](r[0]), eval.As[int](r[1]), eval.As[error](r[2])
}

func (a adapter_io_RuneScanner) UnreadRune() error {
	r := a.CallMethod("UnreadRune")
	return eval.As[error](r[0])
}

type adapter_io_Seeker struct{ eval.Box }

func (a adapter_io_Seeker) Seek(p0 int64, p1 int) (int64, error) {
	r := a.CallMethod("Seek", p0, p1)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

type adapter_io_StringWriter struct{ eval.Box }

func (a adapter_io_StringWriter) WriteString(p0 string) (int, error) {
	r := a.CallMethod("WriteString", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_WriteCloser struct{ eval.Box }

func (a adapter_io_WriteCloser) Close() error {
	r := a.CallMethod("Close")
	return eval.As[error](r[0])
}

func (a adapter_io_WriteCloser) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_WriteSeeker struct{ eval.Box }

func (a adapter_io_WriteSeeker) Seek(p0 int64, p1 int) (int64, error) {
	r := a.CallMethod("Seek", p0, p1)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

func (a adapter_io_WriteSeeker) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_Writer struct{ eval.Box }

func (a adapter_io_Writer) Write(p0 []byte) (int, error) {
	r := a.CallMethod("Write", p0)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_WriterAt struct{ eval.Box }

func (a adapter_io_WriterAt) WriteAt(p0 []byte, p1 int64) (int, error) {
	r := a.CallMethod("WriteAt", p0, p1)
	return eval.As[int](r[0]), eval.As[error](r[1])
}

type adapter_io_WriterTo struct{ eval.Box }

func (a adapter_io_WriterTo) WriteTo(p0 io.Writer) (int64, error) {
	r := a.CallMethod("WriteTo", p0)
	return eval.As[int64](r[0]), eval.As[error](r[1])
}

type adapter_os_DirEntry struct{ eval.Box }

func (a adapter_os_DirEntry) Info() (fs.FileInfo, error) {
	r := a.CallMethod("Info")
	return eval.As[fs.FileInfo](r[0]), eval.As[error](r[1])
}

func (a adapter_os_DirEntry) IsDir() bool {
	r := a.CallMethod("IsDir")
	return eval.As[bool](r[0])
}

func (a adapter_os_DirEntry) Name() string {
	r := a.CallMethod("Name")
	return eval.As[string](r[0])
}

func (a adapter_os_DirEntry) Type() fs.FileMode {
	r := a.CallMethod("Type")
	return eval.As[fs.FileMode](r[0])
}

type adapter_os_FileInfo struct{ eval.Box }

func (a adapter_os_FileInfo) IsDir() bool {
	r := a.CallMethod("IsDir")
	return eval.As[bool](r[0])
}

func (a adapter_os_FileInfo) ModTime() time.Time {
	r := a.CallMethod("ModTime")
	return eval.As[time.Time](r[0])
}

func (a adapter_os_FileInfo) Mode() fs.FileMode {
	r := a.CallMethod("Mode")
	return eval.As[fs.FileMode](r[0])
}

func (a adapter_os_FileInfo) Name() string {
	r := a.CallMethod("Name")
	return eval.As[string](r[0])
}

func (a adapter_os_FileInfo) Size() int64 {
	r := a.CallMethod("Size")
	return eval.As[int64](r[0])
}

func (a adapter_os_FileInfo) Sys() any {
	r := a.CallMethod("Sys")
	return eval.As[any](r[0])
}

type adapter_os_Signal struct{ eval.Box }

func (a adapter_os_Signal) Signal() {
	a.CallMethod("Signal")
}

func (a adapter_os_Signal) String() string {
	r := a.CallMethod("String")
	return eval.As[string](r[0])
}

type adapter_math_rand_Source struct{ eval.Box }

func (a adapter_math_rand_Source) Int63() int64 {
	r := a.CallMethod("Int63")
	return eval.As[int64](r[0])
}

func (a adapter_math_rand_Source) Seed(p0 int64) {
	a.CallMethod("Seed", p0)
}

type adapter_math_rand_Source64 struct{ eval.Box }

func (a adapter_math_rand_Source64) Int63() int64 {
	r := a.CallMethod("Int63")
	return eval.As[int64](r[0])
}

func (a adapter_math_rand_Source64) Seed(p0 int64) {
	a.CallMethod("Seed", p0)
}

func (a adapter_math_rand_Source64) Uint64() uint64 {
	r := a.CallMethod("Uint64")
	return eval.As[uint64](r[0])
}

type adapter_encoding_json_Marshaler struct{ eval.Box }

func (a adapter_encoding_json_Marshaler) MarshalJSON() ([]byte, error) {
	r := a.CallMethod("MarshalJSON")
	return eval.As[[]byte](r[0]), eval.As[error](r[1])
}

type adapter_encoding_json_Unmarshaler struct{ eval.Box }

func (a adapter_encoding_json_Unmarshaler) UnmarshalJSON(p0 []byte) error {
	r := a.CallMethod("UnmarshalJSON", p0)
	return eval.As[error](r[0])
}

type adapter_container_heap_Interface struct{ eval.Box }

func (a adapter_container_heap_Interface) Len() int {
	r := a.CallMethod("Len")
	return eval.As[int](r[0])
}

func (a adapter_container_heap_Interface) Less(p0 int, p1 int) bool {
	r := a.CallMethod("Less", p0, p1)
	return eval.As[bool](r[0])
}

func (a adapter_container_heap_Interface) Pop() any {
	r := a.CallMethod("Pop")
	return eval.As[any](r[0])
}

func (a adapter_container_heap_Interface) Push(p0 any) {
	a.CallMethod("Push", p0)
}

func (a adapter_container_heap_Interface) Swap(p0 int, p1 int) {
	a.CallMethod("Swap", p0, p1)
}

type adapter_context_Context struct{ eval.Box }

func (a adapter_context_Context) Deadline() (time.Time, bool) {
	r := a.CallMethod("Deadline")
	return eval.As[time.Time](r[0]), eval.As[bool](r[1])
}

func (a adapter_context_Context) Done() <-chan struct{} {
	r := a.CallMethod("Done")
	return eval.As[<-chan struct{}](r[0])
}

func (a adapter_context_Context) Err() error {
	r := a.CallMethod("Err")
	return eval.As[error](r[0])
}

func (a adapter_context_Context) Value(p0 any) any {
	r := a.CallMethod("Value", p0)
	return eval.As[any](r[0])
}

type adapter_runtime_Error struct{ eval.Box }

func (a adapter_runtime_Error) Error() string {
	r := a.CallMethod("Error")
	return eval.As[string](r[0])
}

func (a adapter_runtime_Error) RuntimeError() {
	a.CallMethod("RuntimeError")
}

type adapter_math_rand_v2_Source struct{ eval.Box }

func (a adapter_math_rand_v2_Source) Uint64() uint64 {
	r := a.CallMethod("Uint64")
	return eval.As[uint64](r[0])
}

type adapter_encoding_binary_AppendByteOrder struct{ eval.Box }

func (a adapter_encoding_binary_AppendByteOrder) AppendUint16(p0 []byte, p1 uint16) []byte {
	r := a.CallMethod("AppendUint16", p0, p1)
	return eval.As[[]byte](r[0])
}

func (a adapter_encoding_binary_AppendByteOrder) AppendUint32(p0 []byte, p1 uint32) []byte {
	r := a.CallMethod("AppendUint32", p0, p1)
	return eval.As[[]byte](r[0])
}

func (a adapter_encoding_binary_AppendByteOrder) AppendUint64(p0 []byte, p1 uint64) []byte {
	r := a.CallMethod("AppendUint64", p0, p1)
	return eval.As[[]byte](r[0])
}

func (a adapter_encoding_binary_AppendByteOrder) String() string {
	r := a.CallMethod("String")
	return eval.As[string](r[0])
}

type adapter_encoding_binary_ByteOrder struct{ eval.Box }

func (a adapter_encoding_binary_ByteOrder) PutUint16(p0 []byte, p1 uint16) {
	a.CallMethod("PutUint16", p0, p1)
}

func (a adapter_encoding_binary_ByteOrder) PutUint32(p0 []byte, p1 uint32) {
	a.CallMethod("PutUint32", p0, p1)
}

func (a adapter_encoding_binary_ByteOrder) PutUint64(p0 []byte, p1 uint64) {
	a.CallMethod("PutUint64", p0, p1)
}

func (a adapter_encoding_binary_ByteOrder) String() string {
	r := a.CallMethod("String")
	return eval.As[string](r[0])
}

func (a adapter_encoding_binary_ByteOrder) Uint16(p0 []byte) uint16 {
	r := a.CallMethod("Uint16", p0)
	return eval.As[uint16](r[0])
}

func (a adapter_encoding_binary_ByteOrder) Uint32(p0 []byte) uint32 {
	r := a.CallMethod("Uint32", p0)
	return eval.As[uint32](r[0])
}

func (a adapter_encoding_binary_ByteOrder) Uint64(p0 []byte) uint64 {
	r := a.CallMethod("Uint64", p0)
	return eval.As[uint64](r[0])
}
