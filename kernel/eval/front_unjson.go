package eval

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/types"
	"reflect"
	"strconv"
	"strings"
	"unsafe"
)

// structField is a field of a struct type as the checker knows it.
type structField struct {
	name               string
	ti                 *TypeRec
	tag                reflect.StructTag
	embedded, exported bool
}

func structFields(ti *TypeRec) []structField {
	st, ok := ti.T.Underlying().(*types.Struct)
	if !ok {
		return nil
	}
	out := make([]structField, st.NumFields())
	for i := range out {
		f := st.Field(i)
		out[i] = structField{f.Name(), ti.m.rec(f.Type()), reflect.StructTag(st.Tag(i)), f.Embedded(), f.Exported()}
	}
	return out
}

func (ti *TypeRec) elemOfPointer() *TypeRec {
	if p, ok := ti.T.Underlying().(*types.Pointer); ok {
		return ti.m.rec(p.Elem())
	}
	return nil
}

func (ti *TypeRec) isStruct() bool {
	_, ok := ti.T.Underlying().(*types.Struct)
	return ok
}

func (ti *TypeRec) pointerTo() *TypeRec { return ti.m.rec(types.NewPointer(ti.T)) }

// allocate sets a nil pointer to a new value.
func (v val) allocate() {
	*(*unsafe.Pointer)(v.ptr()) = v.ti.elemOfPointer().alloc()
}

// typeMismatch is a json.UnmarshalTypeError whose type is a cell's.
type typeMismatch struct {
	*json.UnmarshalTypeError
	name string
}

func (e *typeMismatch) Error() string {
	if e.Struct != "" || e.Field != "" {
		return "json: cannot unmarshal " + e.Value + " into Go struct field " + e.Struct + "." + e.Field + " of type " + e.name
	}
	return "json: cannot unmarshal " + e.Value + " into Go value of type " + e.name
}

// As lets package errors find the error below.
func (e *typeMismatch) As(target any) bool {
	if t, ok := target.(**json.UnmarshalTypeError); ok {
		*t = e.UnmarshalTypeError
		return true
	}
	return false
}

// unmarshal is json.Unmarshal for boxed pointers too.
func unmarshal(data []byte, v any) error { return unmarshalStrict(data, v, false) }

func unmarshalStrict(data []byte, v any, strict bool) error {
	b, ok := Unbox(v)
	if !ok {
		return json.Unmarshal(data, v)
	}
	var raw json.RawMessage
	if err := json.Unmarshal(data, &raw); err != nil {
		return err
	}
	p := val{ti: b.T, v: b.T.at(b.ptr())}
	if p.kind() != reflect.Pointer || p.isNil() {
		if p.kind() == reflect.Pointer {
			return errors.New("json: Unmarshal(nil " + b.T.Name() + ")")
		}
		return errors.New("json: Unmarshal(non-pointer " + b.T.Name() + ")")
	}
	d := &jsonDecoder{strict: strict}
	if err := d.value(raw, p.deref()); err != nil {
		return err
	}
	return d.first
}

type jsonDecoder struct {
	first  error // a mismatch does not end the decoding
	fields []string
	strct  string
	strict bool // no unknown fields
}

func (d *jsonDecoder) mismatch(raw []byte, v val) {
	if d.first != nil {
		return
	}
	e := &json.UnmarshalTypeError{Value: jsonKind(raw), Type: v.v.Type(), Struct: d.strct, Field: strings.Join(d.fields, ".")}
	if isNumber := raw[0] == '-' || raw[0] >= '0' && raw[0] <= '9'; isNumber && (v.v.CanInt() || v.v.CanUint() || v.v.CanFloat()) {
		e.Value = "number " + string(raw)
	}
	d.first = &typeMismatch{e, v.typeName()}
}

// save keeps the first error of a method, and says where it arose.
func (d *jsonDecoder) save(err error) {
	if err == nil || d.first != nil {
		return
	}
	d.first = err
	if m, ok := err.(*json.UnmarshalTypeError); ok && len(d.fields) > 0 {
		m.Struct = d.strct
		fs := d.fields
		if m.Field != "" {
			fs = append(fs[:len(fs):len(fs)], m.Field)
		}
		m.Field = strings.Join(fs, ".")
	}
}

func jsonKind(raw []byte) string {
	switch raw[0] {
	case '{':
		return "object"
	case '[':
		return "array"
	case '"':
		return "string"
	case 't', 'f':
		return "bool"
	}
	return "number"
}

// value decodes into v. The error is one that ends the decoding.
func (d *jsonDecoder) value(raw []byte, v val) error {
	raw = bytes.TrimSpace(raw)
	null := string(raw) == "null"
	if v.ti == nil || v.ti.pure && !holdsInterfaces(v) {
		return d.native(raw, v)
	}
	if v.kind() == reflect.Pointer {
		if null {
			*(*unsafe.Pointer)(v.ptr()) = nil
			return nil
		}
		if v.isNil() {
			v.allocate()
		}
		return d.value(raw, v.deref())
	}
	pt := v.ti.pointerTo()
	if !pt.pure {
		p := Box{pt, makeEface(pt.word, v.ptr())}
		if p.is("UnmarshalJSON", 1, 1) {
			d.save(As[error](p.CallMethod("UnmarshalJSON", []byte(raw))[0]))
			return nil
		}
		if !null && p.is("UnmarshalText", 1, 1) {
			var s string
			if json.Unmarshal(raw, &s) != nil {
				d.mismatch(raw, v)
				return nil
			}
			d.save(As[error](p.CallMethod("UnmarshalText", []byte(s))[0]))
			return nil
		}
	}
	switch v.kind() {
	case reflect.Interface:
		if null {
			v.v.SetZero()
			return nil
		}
		if v.v.Type() == anyType && v.ti.T.Underlying().(*types.Interface).NumMethods() == 0 {
			return d.native(raw, val{v: v.v})
		}
		d.mismatch(raw, v)
		return nil
	case reflect.Map, reflect.Slice:
		if null {
			v.v.SetZero()
			return nil
		}
	}
	if null {
		return nil
	}
	switch v.kind() {
	case reflect.Struct:
		return d.object(raw, v)
	case reflect.Map:
		return d.mapping(raw, v)
	case reflect.Slice, reflect.Array:
		if v.kind() == reflect.Slice && v.v.Type().Elem().Kind() == reflect.Uint8 && raw[0] == '"' {
			return d.native(raw, v)
		}
		return d.list(raw, v)
	}
	return d.native(raw, v)
}

// native decodes a value whose storage type is enough.
func (d *jsonDecoder) native(raw []byte, v val) error {
	err := json.Unmarshal(raw, v.v.Addr().Interface())
	var m *json.UnmarshalTypeError
	if errors.As(err, &m) {
		if d.first == nil {
			m.Struct = d.strct
			fs := d.fields
			if m.Field != "" {
				fs = append(fs[:len(fs):len(fs)], m.Field)
			}
			m.Field = strings.Join(fs, ".")
			name := m.Type.String()
			if v.ti != nil && m.Type == v.v.Type() {
				name = v.ti.Name()
			}
			d.first = &typeMismatch{m, name}
			if v.ti == nil || v.ti.pure {
				d.first = m
			}
		}
		return nil
	}
	return err
}

// each calls fn for the members of an object in order.
func each(raw []byte, fn func(key string, value []byte) error) error {
	dec := json.NewDecoder(bytes.NewReader(raw))
	if _, err := dec.Token(); err != nil {
		return err
	}
	for dec.More() {
		k, err := dec.Token()
		if err != nil {
			return err
		}
		var v json.RawMessage
		if err := dec.Decode(&v); err != nil {
			return err
		}
		if err := fn(k.(string), v); err != nil {
			return err
		}
	}
	return nil
}

func (d *jsonDecoder) object(raw []byte, v val) error {
	if raw[0] != '{' {
		d.mismatch(raw, v)
		return nil
	}
	fields := jsonFields(v)
	name := ""
	if n, ok := types.Unalias(v.ti.T).(*types.Named); ok {
		name = n.Obj().Name()
	}
	outer := d.strct
	defer func() { d.strct = outer }()
	return each(raw, func(key string, data []byte) error {
		var hit *jsonField
		for i := range fields {
			if fields[i].name == key {
				hit = &fields[i]
				break
			}
			if hit == nil && strings.EqualFold(fields[i].name, key) {
				hit = &fields[i]
			}
		}
		if hit == nil {
			if d.strict && d.first == nil {
				d.first = fmt.Errorf("json: unknown field %q", key)
			}
			return nil
		}
		x, _ := v.path(hit.index, true)
		d.strct = name
		d.fields = append(d.fields, hit.name)
		if hit.quoted && data[0] == '"' {
			var s string
			if json.Unmarshal(data, &s) == nil {
				if x.kind() == reflect.String {
					var t string
					if json.Unmarshal([]byte(s), &t) == nil {
						data = []byte(s)
					}
				} else {
					data = []byte(s)
				}
			}
		}
		err := d.value(data, x)
		d.fields = d.fields[:len(d.fields)-1]
		return err
	})
}

func (d *jsonDecoder) mapping(raw []byte, v val) error {
	if raw[0] != '{' {
		d.mismatch(raw, v)
		return nil
	}
	mt := v.ti.T.Underlying().(*types.Map)
	kt, et := v.ti.m.rec(mt.Key()), v.ti.m.rec(mt.Elem())
	if v.isNil() {
		*(*unsafe.Pointer)(v.ptr()) = newMap(v.ti.rt, 0)
	}
	return each(raw, func(key string, data []byte) error {
		k := val{ti: kt, v: kt.at(kt.alloc())}
		e := val{ti: et, v: et.at(et.alloc())}
		pt := kt.pointerTo()
		switch {
		case !pt.pure && (Box{pt, makeEface(pt.word, k.ptr())}).is("UnmarshalText", 1, 1):
			b := Box{pt, makeEface(pt.word, k.ptr())}
			if err := As[error](b.CallMethod("UnmarshalText", []byte(key))[0]); err != nil {
				return err
			}
		case k.kind() == reflect.String:
			k.v.SetString(key)
		case k.v.CanInt():
			n, err := strconv.ParseInt(key, 10, k.v.Type().Bits())
			if err != nil {
				return fmt.Errorf("json: cannot unmarshal number %s into Go value of type %s", key, kt.Name())
			}
			k.v.SetInt(n)
		case k.v.CanUint():
			n, err := strconv.ParseUint(key, 10, k.v.Type().Bits())
			if err != nil {
				return fmt.Errorf("json: cannot unmarshal number %s into Go value of type %s", key, kt.Name())
			}
			k.v.SetUint(n)
		default:
			return fmt.Errorf("json: cannot unmarshal object into Go value of type %s", v.typeName())
		}
		if err := d.value(data, e); err != nil {
			return err
		}
		v.v.SetMapIndex(k.v, e.v)
		return nil
	})
}

func (d *jsonDecoder) list(raw []byte, v val) error {
	if raw[0] != '[' {
		d.mismatch(raw, v)
		return nil
	}
	var items []json.RawMessage
	if err := json.Unmarshal(raw, &items); err != nil {
		return err
	}
	if v.kind() == reflect.Slice {
		if v.v.Cap() < len(items) || v.isNil() {
			v.v.Set(reflect.MakeSlice(v.v.Type(), len(items), len(items)))
		} else {
			v.v.SetLen(len(items))
		}
	}
	n := v.v.Len()
	for i, it := range items {
		if i >= n {
			break
		}
		if err := d.value(it, v.index(i)); err != nil {
			return err
		}
	}
	for i := len(items); i < n; i++ {
		v.index(i).v.SetZero()
	}
	return nil
}
