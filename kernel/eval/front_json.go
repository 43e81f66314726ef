package eval

import (
	"bytes"
	"encoding"
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// The front of package encoding/json. The real package encodes boxes through MarshalJSON; decoding into a cell's type
// goes through json.Unmarshal and Decoder.Decode here.

func jsonFronts() map[string]any {
	var strict sync.Map // decoders that refuse unknown fields
	return map[string]any{
		"encoding/json.Unmarshal": unmarshal,
		"encoding/json.Decoder.DisallowUnknownFields": func(d *json.Decoder) {
			strict.Store(d, true)
			d.DisallowUnknownFields()
		},
		"encoding/json.Decoder.Decode": func(d *json.Decoder, v any) error {
			if b, ok := Unbox(v); ok {
				var raw json.RawMessage
				if err := d.Decode(&raw); err != nil {
					return err
				}
				_, s := strict.Load(d)
				return unmarshalStrict(raw, b, s)
			}
			return d.Decode(v)
		},
	}
}

// MarshalJSON encodes the boxed value as package encoding/json encodes a value of its type.
func (b Box) MarshalJSON() ([]byte, error) {
	var e jsonEncoder
	err := e.value(val{ti: b.T, v: b.T.at(b.ptr())}, false)
	return e.Bytes(), err
}

type jsonEncoder struct{ bytes.Buffer }

func (e *jsonEncoder) native(x any) error {
	enc := json.NewEncoder(&e.Buffer)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(x); err != nil {
		return err
	}
	e.Truncate(e.Len() - 1) // the newline
	return nil
}

// method calls a method that returns bytes and an error.
func (b Box) bytesOf(name string) ([]byte, error, bool) {
	if !b.is(name, 0, 2) {
		return nil, nil, false
	}
	r := b.CallMethod(name)
	data, ok := r[0].([]byte)
	return data, As[error](r[1]), ok
}

// marshaler returns the box of v, or of its address, whose method can be used.
func (v val) marshaler(name string, addressable bool) (Box, bool) {
	b, ok := v.any().(Box)
	if ok && b.is(name, 0, 2) {
		return b, true
	}
	if !addressable || v.ti == nil {
		return Box{}, false
	}
	pt := v.ti.pointerTo()
	b = Box{pt, makeEface(pt.word, v.ptr())}
	return b, !pt.pure && b.is(name, 0, 2)
}

func (e *jsonEncoder) value(v val, addressable bool) error {
	if v.kind() == reflect.Interface {
		c, ok := v.content()
		if !ok {
			e.WriteString("null")
			return nil
		}
		return e.value(c, false)
	}
	if v.kind() == reflect.Pointer && v.isNil() {
		e.WriteString("null")
		return nil
	}
	if v.ti == nil || v.ti.pure && !holdsInterfaces(v) {
		if addressable && v.v.CanAddr() {
			if m, ok := v.v.Addr().Interface().(json.Marshaler); ok {
				return e.native(m)
			}
		}
		return e.native(v.v.Interface())
	}
	for _, name := range []string{"MarshalJSON", "MarshalText"} {
		b, ok := v.marshaler(name, addressable)
		if !ok {
			continue
		}
		data, err, ok := b.bytesOf(name)
		if !ok {
			continue
		}
		if err == nil && name == "MarshalJSON" {
			err = json.Compact(&e.Buffer, data)
		}
		if err != nil {
			return fmt.Errorf("json: error calling %s for type %s: %w", name, v.typeName(), err)
		}
		if name == "MarshalText" {
			return e.native(string(data))
		}
		return nil
	}
	switch v.kind() {
	case reflect.Pointer:
		return e.value(v.deref(), true)
	case reflect.Struct:
		return e.object(v, addressable)
	case reflect.Map:
		return e.mapping(v)
	case reflect.Slice:
		if v.isNil() {
			e.WriteString("null")
			return nil
		}
		if v.v.Type().Elem().Kind() == reflect.Uint8 {
			return e.native(v.v.Bytes())
		}
		return e.list(v, true)
	case reflect.Array:
		return e.list(v, addressable)
	case reflect.Chan, reflect.Func, reflect.Complex64, reflect.Complex128, reflect.UnsafePointer:
		return fmt.Errorf("json: unsupported type: %s", v.typeName())
	}
	return e.native(basicOf(v.v))
}

func holdsInterfaces(v val) bool { return mayHoldBox(v.v.Type()) }

func (e *jsonEncoder) list(v val, addressable bool) error {
	e.WriteByte('[')
	for i := range v.v.Len() {
		if i > 0 {
			e.WriteByte(',')
		}
		if err := e.value(v.index(i), addressable); err != nil {
			return err
		}
	}
	e.WriteByte(']')
	return nil
}

func (e *jsonEncoder) mapping(v val) error {
	if v.isNil() {
		e.WriteString("null")
		return nil
	}
	keys, elems := v.entries()
	type entry struct {
		k string
		v val
	}
	var es []entry
	for i, k := range keys {
		s, err := jsonKey(k)
		if err != nil {
			return err
		}
		es = append(es, entry{s, elems[i]})
	}
	slices.SortFunc(es, func(a, b entry) int { return strings.Compare(a.k, b.k) })
	e.WriteByte('{')
	for i, x := range es {
		if i > 0 {
			e.WriteByte(',')
		}
		if err := e.native(x.k); err != nil {
			return err
		}
		e.WriteByte(':')
		if err := e.value(x.v, false); err != nil {
			return err
		}
	}
	e.WriteByte('}')
	return nil
}

func jsonKey(k val) (string, error) {
	if k.kind() == reflect.String {
		return k.v.String(), nil
	}
	if b, ok := k.any().(Box); ok {
		if data, err, ok := b.bytesOf("MarshalText"); ok {
			return string(data), err
		}
	} else if t, ok := k.any().(encoding.TextMarshaler); ok {
		data, err := t.MarshalText()
		return string(data), err
	}
	switch {
	case k.v.CanInt():
		return strconv.FormatInt(k.v.Int(), 10), nil
	case k.v.CanUint():
		return strconv.FormatUint(k.v.Uint(), 10), nil
	}
	return "", fmt.Errorf("json: unsupported type: map with keys of type %s", k.typeName())
}

func (e *jsonEncoder) object(v val, addressable bool) error {
	e.WriteByte('{')
	first := true
	for _, f := range jsonFields(v) {
		x, ok := v.path(f.index, false)
		if !ok || f.omitEmpty && isEmpty(x) || f.omitZero && isZero(x) {
			continue
		}
		if !first {
			e.WriteByte(',')
		}
		first = false
		if err := e.native(f.name); err != nil {
			return err
		}
		e.WriteByte(':')
		start := e.Len()
		if err := e.value(x, addressable); err != nil {
			return err
		}
		if f.quoted {
			text := string(e.Bytes()[start:])
			if k := x.kind(); k == reflect.Pointer || text == "null" {
				if text == "null" {
					continue
				}
			}
			e.Truncate(start)
			if err := e.native(text); err != nil {
				return err
			}
		}
	}
	e.WriteByte('}')
	return nil
}

func isEmpty(v val) bool {
	switch v.kind() {
	case reflect.Array, reflect.Map, reflect.Slice, reflect.String:
		return v.v.Len() == 0
	case reflect.Struct:
		return false
	case reflect.Pointer:
		return v.isNil()
	}
	return v.v.IsZero()
}

func isZero(v val) bool {
	if b, ok := v.any().(Box); ok && b.is("IsZero", 0, 1) {
		return As[bool](b.CallMethod("IsZero")[0])
	}
	if z, ok := v.any().(interface{ IsZero() bool }); ok {
		return z.IsZero()
	}
	return v.v.IsZero()
}

// path follows embedded structs; a nil pointer on the way ends it, or is set with alloc.
func (v val) path(index []int, alloc bool) (val, bool) {
	for i, n := range index {
		if i > 0 && v.kind() == reflect.Pointer {
			if v.isNil() {
				if !alloc {
					return val{}, false
				}
				v.allocate()
			}
			v = v.deref()
		}
		v = v.field(n)
	}
	return v, true
}

// jsonField is a field of an object, possibly of an embedded struct.
type jsonField struct {
	name                        string
	index                       []int
	tagged                      bool
	omitEmpty, omitZero, quoted bool
}

// jsonFields lists what a struct shows: an outer name hides inner ones, and of equals the tagged one counts.
func jsonFields(v val) []jsonField {
	type level struct {
		t     *TypeRec
		index []int
	}
	if v.ti == nil {
		return nil
	}
	byName := map[string][]jsonField{}
	var order []string
	seen := map[*TypeRec]bool{}
	cur := []level{{v.ti, nil}}
	for len(cur) > 0 {
		var deeper []level
		count := map[string]bool{}
		for _, l := range cur {
			if seen[l.t] {
				continue
			}
			seen[l.t] = true
			for i, sf := range structFields(l.t) {
				tag := sf.tag.Get("json")
				if tag == "-" {
					continue
				}
				name, opts, _ := strings.Cut(tag, ",")
				index := append(slices.Clone(l.index), i)
				ft := sf.ti
				if sf.embedded {
					if p := ft.elemOfPointer(); p != nil {
						ft = p
					}
					st := ft.isStruct()
					if !sf.exported && !st {
						continue
					}
					if name == "" && st {
						deeper = append(deeper, level{ft, index})
						continue
					}
				} else if !sf.exported {
					continue
				}
				f := jsonField{name: name, index: index, tagged: name != ""}
				if name == "" {
					f.name = sf.name
				}
				for o := range strings.SplitSeq(opts, ",") {
					switch o {
					case "omitempty":
						f.omitEmpty = true
					case "omitzero":
						f.omitZero = true
					case "string":
						f.quoted = sf.ti.rep <= repString
					}
				}
				if len(byName[f.name]) == 0 {
					order = append(order, f.name)
				} else if !count[f.name] {
					continue // hidden by an outer field
				}
				count[f.name] = true
				byName[f.name] = append(byName[f.name], f)
			}
		}
		cur = deeper
	}
	var out []jsonField
	for _, n := range order {
		fs := byName[n]
		if len(fs) == 1 {
			out = append(out, fs[0])
			continue
		}
		var tagged []jsonField
		for _, f := range fs {
			if f.tagged {
				tagged = append(tagged, f)
			}
		}
		if len(tagged) == 1 {
			out = append(out, tagged[0])
		}
	}
	slices.SortFunc(out, func(a, b jsonField) int { return slices.Compare(a.index, b.index) })
	return out
}
