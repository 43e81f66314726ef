package eval

import (
	"fmt"
	"go/token"
	"reflect"
	"runtime"
	"strconv"
)

// Panic is a panic on its way through the evaluator.
type Panic struct {
	Value any // as the cell sees it: a Box, or a compiled value
	At    *site
	Prev  *Panic // the panic this one replaced

	recovered bool
	fatal     bool // no recover stops it
	goexit    bool
}

// stopped is thrown when the machine was asked to stop.
var stopped = &Panic{fatal: true, Value: fatalError("stopped")}

type fatalError string

func (e fatalError) Error() string { return string(e) }

// runtimeError is a run-time error of the language: its text reads as Go's.
type runtimeError string

func (e runtimeError) Error() string { return "runtime error: " + string(e) }

// RuntimeError marks it as a runtime.Error.
func (runtimeError) RuntimeError() {}

// plainError is a runtime.Error whose text has no head.
type plainError string

func (e plainError) Error() string { return string(e) }

// RuntimeError marks it as a runtime.Error.
func (plainError) RuntimeError() {}

var _ runtime.Error = runtimeError("")

func throw(at *site, text string) { panic(&Panic{Value: runtimeError(text), At: at}) }

func throwf(at *site, format string, args ...any) { throw(at, fmt.Sprintf(format, args...)) }

func nilDeref(at *site) { throw(at, "invalid memory address or nil pointer dereference") }

// asPanic turns what recover returned into a Panic; at is the place of the last call into compiled code.
func asPanic(r any, at *site) *Panic {
	switch r := r.(type) {
	case *Panic:
		return r
	case unsupported:
		return &Panic{Value: r, At: at, fatal: true}
	}
	return &Panic{Value: r, At: at}
}

// Error gives the message as Go prints it after "panic: ".
func (p *Panic) Error() string { return p.Message() }

// Message is the panic value as Go prints an uncaught panic.
func (p *Panic) Message() string {
	switch v := plain(p.Value).(type) {
	case unsupported:
		return "not supported in cells: " + v.what
	case Box:
		if s, ok := v.callString("Error"); ok {
			return s
		}
		if s, ok := v.callString("String"); ok {
			return s
		}
		rv := reflect.ValueOf(v.V)
		if s, ok := printBasic(rv); ok {
			return v.T.Name() + "(" + s + ")"
		}
		return fmt.Sprintf("(%s) %#x", v.T.Name(), v.ptr())
	case error:
		s := v.Error()
		if _, ok := v.(runtime.Error); ok {
			return s
		}
		return s
	case fmt.Stringer:
		return v.String()
	case string:
		return v
	case nil:
		return "nil"
	default:
		rv := reflect.ValueOf(v)
		if s, ok := printBasic(rv); ok {
			if rv.Type().PkgPath() == "" {
				return s
			}
			return rv.Type().String() + "(" + s + ")"
		}
		return fmt.Sprintf("(%s) %p", rv.Type(), v)
	}
}

func printBasic(v reflect.Value) (string, bool) {
	switch v.Kind() {
	case reflect.Bool:
		return strconv.FormatBool(v.Bool()), true
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		return strconv.FormatInt(v.Int(), 10), true
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64, reflect.Uintptr:
		return strconv.FormatUint(v.Uint(), 10), true
	case reflect.Float32, reflect.Float64:
		return printFloat(v.Float(), v.Type().Bits()), true
	case reflect.Complex64, reflect.Complex128:
		return strconv.FormatComplex(v.Complex(), 'g', -1, v.Type().Bits()), true
	case reflect.String:
		return strconv.Quote(v.String()), true
	}
	return "", false
}

// Position returns where the panic arose.
func (p *Panic) Position() token.Position {
	if p.At == nil || p.At.fset == nil {
		return token.Position{}
	}
	return p.At.fset.Position(p.At.pos)
}

// throwPlain throws a run-time error whose text has no "runtime error: " in front.
func throwPlain(at *site, text string) { panic(&Panic{Value: plainError(text), At: at}) }
