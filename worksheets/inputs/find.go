package inputs

import (
	"fmt"
	"go/ast"
	"go/constant"
	"go/types"
	"strings"

	"swanneck/kernel/cell"
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/entry"
)

// cellapi is the package whose functions declare inputs.
const cellapi = "swanneck/worksheets/cellapi"

// kinds are the functions that declare an input.
var kinds = map[string]entry.Kind{
	"InputNumber": entry.Number, "InputStrength": entry.Strength, "InputTemperature": entry.Temperature,
	"InputPressure": entry.Pressure, "InputChoice": entry.Choice, "InputYesNo": entry.YesNo, "InputDate": entry.Date,
	"InputText": entry.Text, "InputTable": entry.Table, "InputFile": entry.File,
}

// Find lists the inputs that cells declare, in the order of the text, without running anything. sources are the code
// cells of a worksheet. A cell that the checker refuses ends the search: its error comes with what was found before.
func Find(sources []string, lib cell.Library) ([]entry.Input, error) {
	session := cell.NewSession(lib)
	var found []entry.Input
	at := map[string]int{}
	for i, src := range sources {
		checked, err := session.Check(fmt.Sprintf("cell %d", i+1), src)
		if err != nil {
			return found, fmt.Errorf("cell %d: %w", i+1, err)
		}
		for k := range checked.Chunks {
			list, err := inChunk(session, &checked.Chunks[k])
			if err != nil {
				return found, fmt.Errorf("cell %d, %w", i+1, err)
			}
			for _, in := range list {
				in.Cell = i + 1
				if first, twice := at[in.Name]; twice {
					return found, fmt.Errorf("cell %d, line %d: the input %q is declared in cell %d already; a name stands once in a worksheet", in.Cell, in.Line, in.Name, first)
				}
				at[in.Name] = in.Cell
				found = append(found, in)
			}
		}
		checked.Commit(len(checked.Chunks), 0)
	}
	return found, nil
}

func inChunk(s *cell.Session, ch *cell.Chunk) (found []entry.Input, err error) {
	look := func(n ast.Node) bool {
		call, ok := n.(*ast.CallExpr)
		if !ok || err != nil {
			return err == nil
		}
		f := callee(ch.Info, call)
		if f == nil || f.Pkg() == nil || f.Pkg().Path() != cellapi {
			return true
		}
		kind, ok := kinds[f.Name()]
		if !ok {
			return true
		}
		in, e := declared(ch.Info, kind, call)
		in.Line = s.Fset().Position(call.Pos()).Line
		if e == nil {
			e = in.Check()
		}
		if e != nil {
			err = fmt.Errorf("line %d: %s: %w", in.Line, f.Name(), e)
		}
		found = append(found, in)
		return true
	}
	for _, d := range ch.Decls {
		ast.Inspect(d, look)
	}
	if ch.Body != nil {
		ast.Inspect(ch.Body, look)
	}
	if ch.Last != nil {
		ast.Inspect(ch.Last, look)
	}
	return found, err
}

// callee returns the function that a call names, or nil.
func callee(info *types.Info, call *ast.CallExpr) *types.Func {
	var id *ast.Ident
	switch f := ast.Unparen(call.Fun).(type) {
	case *ast.Ident:
		id = f
	case *ast.SelectorExpr:
		id = f.Sel
	default:
		return nil
	}
	f, _ := info.Uses[id].(*types.Func)
	return f
}

// declared reads a call that declares an input. Its arguments must be written out: constants, and ABV(45) and the like.
func declared(info *types.Info, kind entry.Kind, call *ast.CallExpr) (in entry.Input, err error) {
	in.Kind = kind
	if call.Ellipsis.IsValid() {
		return in, fmt.Errorf("what it is called with must be written out")
	}
	args := call.Args
	if in.Name, err = text(info, args[0]); err != nil {
		return in, err
	}
	rest := args[2:]
	switch kind {
	case entry.Number:
		x, err := number(info, args[1])
		if err != nil {
			return in, err
		}
		if in.Unit, err = text(info, args[2]); err != nil {
			return in, err
		}
		in.Usual, rest = in.Figure(x), args[3:]
	case entry.Strength, entry.Temperature, entry.Pressure:
		in.Unit = map[entry.Kind]string{entry.Strength: entry.StrengthUnit, entry.Temperature: entry.TemperatureUnit, entry.Pressure: entry.PressureUnit}[kind]
		x, err := figureOf(info, kind, args[1])
		if err != nil {
			return in, err
		}
		in.Usual = in.Figure(x)
	case entry.YesNo:
		v := info.Types[args[1]].Value
		if v == nil {
			return in, fmt.Errorf("write true or false")
		}
		in.Usual = map[bool]string{true: "yes", false: "no"}[constant.BoolVal(v)]
	default:
		if in.Usual, err = text(info, args[1]); err != nil {
			return in, err
		}
	}
	if kind == entry.Choice {
		list, ok := ast.Unparen(args[2]).(*ast.CompositeLit)
		if !ok {
			return in, fmt.Errorf("the choices must be written out, as []string{\"pot\", \"column\"}")
		}
		for _, e := range list.Elts {
			c, err := text(info, e)
			if err != nil {
				return in, err
			}
			in.Choices = append(in.Choices, c)
		}
		rest = args[3:]
	}
	for _, o := range rest {
		if err := option(info, &in, o); err != nil {
			return in, err
		}
	}
	return in, nil
}

func option(info *types.Info, in *entry.Input, x ast.Expr) error {
	call, ok := ast.Unparen(x).(*ast.CallExpr)
	if !ok {
		return fmt.Errorf("an option must be written out, as Between(20, 70)")
	}
	f := callee(info, call)
	var err error
	switch {
	case f != nil && f.Name() == "Help":
		in.Help, err = text(info, call.Args[0])
	case f != nil && f.Name() == "Between":
		in.Ranged = true
		if in.Min, err = figureOf(info, in.Kind, call.Args[0]); err == nil {
			in.Max, err = figureOf(info, in.Kind, call.Args[1])
		}
	default:
		err = fmt.Errorf("an option is Between or Help")
	}
	return err
}

func text(info *types.Info, x ast.Expr) (string, error) {
	v := info.Types[x].Value
	if v == nil || v.Kind() != constant.String {
		return "", fmt.Errorf("%s must be written out: the text of an input is known before anything runs", types.ExprString(x))
	}
	return constant.StringVal(v), nil
}

func number(info *types.Info, x ast.Expr) (float64, error) {
	v := info.Types[x].Value
	if v == nil || constant.ToFloat(v).Kind() != constant.Float {
		return 0, fmt.Errorf("%s must be written out: a figure of an input is known before anything runs", types.ExprString(x))
	}
	f, _ := constant.Float64Val(constant.ToFloat(v))
	return f, nil
}

// figureOf returns a figure of an input in the unit of its kind: a number, or ABV(45), Celsius(20) and the like.
func figureOf(info *types.Info, kind entry.Kind, x ast.Expr) (float64, error) {
	if kind == entry.Number {
		return number(info, x)
	}
	if call, ok := ast.Unparen(x).(*ast.CallExpr); ok && len(call.Args) == 1 {
		if f := callee(info, call); f != nil && strings.HasPrefix(f.Pkg().Path(), "swanneck/mathlib/") {
			if make, ok := makers[kind][f.Name()]; ok {
				n, err := number(info, call.Args[0])
				if err != nil {
					return 0, err
				}
				return make(n)
			}
		}
	}
	return 0, fmt.Errorf("%s must be written out, as %s", types.ExprString(x),
		map[entry.Kind]string{entry.Strength: "ABV(45)", entry.Temperature: "Celsius(20)", entry.Pressure: "KPa(101.3)"}[kind])
}

// makers are the functions of one number that make a strength, a temperature, a pressure; they return it in the unit of
// its kind.
var makers = map[entry.Kind]map[string]func(float64) (float64, error){
	entry.Strength: {
		"ABV": strength(alcoholometry.ABV), "ABW": strength(alcoholometry.ABW), "USProof": strength(alcoholometry.USProof),
		"MoleFraction": strength(alcoholometry.MoleFraction),
	},
	entry.Temperature: {
		"Celsius": temperature(quantity.Celsius), "Fahrenheit": temperature(quantity.Fahrenheit), "Kelvin": temperature(quantity.Kelvin),
	},
	entry.Pressure: {
		"KPa": pressure(quantity.KPa), "MmHg": pressure(quantity.MmHg), "Bar": pressure(quantity.Bar), "Atm": pressure(quantity.Atm),
		"PSI": pressure(quantity.PSI), "AtAltitude": pressure(quantity.AtAltitude),
	},
}

func strength(f func(float64) (alcoholometry.Strength, error)) func(float64) (float64, error) {
	return func(x float64) (float64, error) {
		s, err := f(x)
		if err != nil {
			return 0, err
		}
		return s.ABV(), nil
	}
}

func temperature(f func(float64) (quantity.Temperature, error)) func(float64) (float64, error) {
	return func(x float64) (float64, error) {
		t, err := f(x)
		return t.C(), err
	}
}

func pressure(f func(float64) (quantity.Pressure, error)) func(float64) (float64, error) {
	return func(x float64) (float64, error) {
		p, err := f(x)
		return p.KPa(), err
	}
}
