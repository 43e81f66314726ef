package eval

import (
	"fmt"
	"go/token"
	"go/types"
	"reflect"
	"strconv"
	"strings"
	"sync"
	"unsafe"
)

// TypeRec describes a type of the checker and how its values are stored. Identical types have one record, so records
// are compared by address.
type TypeRec struct {
	T types.Type

	m      *Machine
	rt     reflect.Type
	word   unsafe.Pointer // rt as it stands in an interface value
	direct bool           // the value itself is the data word of an interface
	pure   bool           // rt is the type itself: nothing was erased
	rep    rep
	size   uintptr
	ops    repOps
	zero   unsafe.Pointer // a zero value; never written to

	once    sync.Once
	copyTo  func(dst, src unsafe.Pointer)
	eqOnce  sync.Once
	eqFn    func(a, b unsafe.Pointer) bool
	comp    bool // comparable, not looking into interfaces
	methods sync.Map
	tabs    sync.Map // for compiled interfaces: type word → method table
	bindTab sync.Once
	adapter unsafe.Pointer // for compiled interfaces: the method table of boxes
}

// Reflect returns the storage type: the type itself where it is compiled, else the type with the names of cell types
// erased.
func (ti *TypeRec) Reflect() reflect.Type { return ti.rt }

// Compiled says whether the storage type is the type itself.
func (ti *TypeRec) Compiled() bool { return ti.pure }

// Name returns the type's name as %T prints it.
func (ti *TypeRec) Name() string { return typeName(ti.T) }

func (ti *TypeRec) String() string { return typeName(ti.T) }

// rec returns the record of a type, which must not mention type parameters.
func (m *Machine) rec(t types.Type) *TypeRec {
	t = types.Unalias(t)
	if b, ok := t.(*types.Basic); ok && b.Info()&types.IsUntyped != 0 && b.Kind() != types.UntypedNil {
		t = types.Default(t)
	}
	m.recMu.RLock()
	ti := m.recs[t]
	m.recMu.RUnlock()
	if ti != nil {
		return ti
	}
	m.recMu.Lock()
	defer m.recMu.Unlock()
	key := identityKey(t)
	for _, x := range m.recKeys[key] {
		if types.Identical(x.T, t) {
			m.recs[t] = x
			return x
		}
	}
	ti = &TypeRec{T: t, m: m}
	ti.rt = m.rtype(t, nil)
	ti.pure = m.pure(t)
	ti.size = ti.rt.Size()
	ti.word = (*eface)(unsafe.Pointer(&[]any{ti.rt}[0])).data
	ti.rep = repOf(t, ti.rt.Kind() == reflect.Interface && ti.rt.NumMethod() > 0)
	if ti.rep == repMem {
		ti.ops = memOps{ti}
	} else {
		ti.ops = scalarOps[ti.rep]
	}
	z := reflect.New(ti.rt)
	ti.zero = z.UnsafePointer()
	if ti.rt.Kind() != reflect.Interface {
		v := z.Elem().Interface()
		ti.direct = (*eface)(unsafe.Pointer(&v)).data == nil
	}
	ti.comp = types.Comparable(t)
	m.recs[t] = ti
	m.recKeys[key] = append(m.recKeys[key], ti)
	return ti
}

// identityKey is the same for identical types; different types may share it.
func identityKey(t types.Type) string {
	var b strings.Builder
	writeType(&b, t, true)
	return b.String()
}

// unsupported is thrown while compiling; Run turns it into an error.
type unsupported struct {
	pos  token.Pos
	what string
}

func refuse(pos token.Pos, format string, args ...any) {
	panic(unsupported{pos, fmt.Sprintf(format, args...)})
}

var (
	unsafePtrType = reflect.TypeFor[unsafe.Pointer]()
	anyType       = reflect.TypeFor[any]()
	sliceType     = reflect.TypeFor[[]struct{}]()
	errorRType    = reflect.TypeFor[error]()
)

var basicTypes = map[types.BasicKind]reflect.Type{
	types.Bool: reflect.TypeFor[bool](), types.Int: reflect.TypeFor[int](), types.Int8: reflect.TypeFor[int8](),
	types.Int16: reflect.TypeFor[int16](), types.Int32: reflect.TypeFor[int32](), types.Int64: reflect.TypeFor[int64](),
	types.Uint: reflect.TypeFor[uint](), types.Uint8: reflect.TypeFor[uint8](), types.Uint16: reflect.TypeFor[uint16](),
	types.Uint32: reflect.TypeFor[uint32](), types.Uint64: reflect.TypeFor[uint64](),
	types.Uintptr: reflect.TypeFor[uintptr](), types.Float32: reflect.TypeFor[float32](),
	types.Float64: reflect.TypeFor[float64](), types.Complex64: reflect.TypeFor[complex64](),
	types.Complex128: reflect.TypeFor[complex128](), types.String: reflect.TypeFor[string](),
	types.UnsafePointer: unsafePtrType, types.UntypedNil: unsafePtrType,
}

// compiledType returns the real type of a compiled named type, or nil for a type declared in cells or sources.
func (m *Machine) compiledType(n *types.Named) reflect.Type {
	obj := n.Obj()
	if obj.Pkg() == nil {
		if obj.Name() == "error" {
			return errorRType
		}
		return nil
	}
	path := obj.Pkg().Path()
	syms, ok := m.cfg.Packages[path]
	if !ok {
		return nil
	}
	name := obj.Name()
	if n.TypeArgs().Len() > 0 {
		name = types.TypeString(n, func(*types.Package) string { return "" })
	}
	if v, ok := syms[name]; ok && v.Kind() == reflect.Pointer {
		return v.Type().Elem()
	}
	if m.cfg.Sources[path] != nil {
		return nil
	}
	if rt, ok := m.hidden.Load(obj); ok {
		return rt.(reflect.Type)
	}
	if rt := m.bindHidden(n, syms); rt != nil {
		m.hidden.Store(obj, rt)
		return rt
	}
	refuse(obj.Pos(), "type %s.%s", obj.Pkg().Name(), obj.Name())
	return nil
}

// pure says whether the storage type of t is t itself.
func (m *Machine) pure(t types.Type) bool {
	switch t := types.Unalias(t).(type) {
	case *types.Named:
		return !isAtomicPointer(t) && m.compiledType(t) != nil
	case *types.Basic:
		return true
	case *types.Pointer:
		return m.pure(t.Elem())
	case *types.Slice:
		return m.pure(t.Elem())
	case *types.Array:
		return m.pure(t.Elem())
	case *types.Chan:
		return m.pure(t.Elem())
	case *types.Map:
		return m.pure(t.Key()) && m.pure(t.Elem())
	case *types.Interface:
		return t.NumMethods() == 0 && t.NumEmbeddeds() == 0
	case *types.Signature:
		for v := range t.Params().Variables() {
			if !m.pure(v.Type()) {
				return false
			}
		}
		for v := range t.Results().Variables() {
			if !m.pure(v.Type()) {
				return false
			}
		}
		return true
	case *types.Struct:
		for f := range t.Fields() {
			if f.Embedded() || f.Name() == "_" || !m.pure(f.Type()) {
				return false
			}
		}
		return true
	}
	return false
}

// rtype computes the storage type. busy holds the cell types being expanded: inside themselves they are replaced by
// a type of the same layout, since reflect cannot make recursive types. Pointers to cell types are always
// unsafe.Pointer.
func (m *Machine) rtype(t types.Type, busy []*types.Named) reflect.Type {
	switch t := types.Unalias(t).(type) {
	case *types.Basic:
		return basicTypes[t.Kind()]
	case *types.Named:
		if isAtomicPointer(t) {
			return atomicPointer
		}
		if rt := m.compiledType(t); rt != nil {
			return rt
		}
		for _, b := range busy {
			if b == t || types.Identical(b, t) {
				return placeholder(t.Underlying())
			}
		}
		if len(busy) > 60 {
			return placeholder(t.Underlying())
		}
		return m.rtype(t.Underlying(), append(busy[:len(busy):len(busy)], t))
	case *types.Pointer:
		if !m.pure(t.Elem()) {
			return unsafePtrType
		}
		return reflect.PointerTo(m.rtype(t.Elem(), busy))
	case *types.Slice:
		return reflect.SliceOf(m.rtype(t.Elem(), busy))
	case *types.Array:
		e := m.rtype(t.Elem(), busy)
		if e.Size() > 0 && uint64(t.Len()) > 1<<33/uint64(e.Size()) {
			refuse(0, "array type %s: too large", t)
		}
		return reflect.ArrayOf(int(t.Len()), e)
	case *types.Chan:
		dir := map[types.ChanDir]reflect.ChanDir{types.SendRecv: reflect.BothDir, types.SendOnly: reflect.SendDir, types.RecvOnly: reflect.RecvDir}[t.Dir()]
		e := m.rtype(t.Elem(), busy)
		if e.Size() >= 1<<16 {
			refuse(0, "channel of elements larger than 64 kB")
		}
		return reflect.ChanOf(dir, e)
	case *types.Map:
		return reflect.MapOf(m.rtype(t.Key(), busy), m.rtype(t.Elem(), busy))
	case *types.Interface:
		return anyType
	case *types.Signature:
		var in, out []reflect.Type
		for v := range t.Params().Variables() {
			in = append(in, m.rtype(v.Type(), busy))
		}
		for v := range t.Results().Variables() {
			out = append(out, m.rtype(v.Type(), busy))
		}
		return reflect.FuncOf(in, out, t.Variadic())
	case *types.Struct:
		fields := make([]reflect.StructField, t.NumFields())
		for i := range fields {
			f := t.Field(i)
			sf := reflect.StructField{Name: f.Name(), Type: m.rtype(f.Type(), busy), Tag: reflect.StructTag(t.Tag(i))}
			if f.Name() == "_" {
				sf.Name = "_" + strconv.Itoa(i)
			}
			if !f.Exported() {
				sf.PkgPath = "main"
			}
			fields[i] = sf
		}
		return reflect.StructOf(fields)
	}
	refuse(0, "values of type %s", t)
	return nil
}

// placeholder returns a type with the layout of a type that is being expanded.
func placeholder(u types.Type) reflect.Type {
	switch u.(type) {
	case *types.Slice:
		return sliceType
	case *types.Interface:
		return anyType
	}
	return unsafePtrType
}

// alloc returns new zeroed memory for a value.
func (ti *TypeRec) alloc() unsafe.Pointer {
	return reflect.New(ti.rt).UnsafePointer()
}

// at returns the value at an address as a reflect.Value of the storage type.
func (ti *TypeRec) at(p unsafe.Pointer) reflect.Value {
	return reflect.NewAt(ti.rt, p).Elem()
}

// newFrom returns memory holding a copy of a reflect.Value.
func (ti *TypeRec) put(p unsafe.Pointer, v reflect.Value) {
	dst := ti.at(p)
	if v.Type() == ti.rt {
		dst.Set(v)
		return
	}
	if v.Type().AssignableTo(ti.rt) {
		dst.Set(v)
		return
	}
	// Same layout, other names: placeholders of recursive types.
	tmp := reflect.New(v.Type())
	tmp.Elem().Set(v)
	dst.Set(reflect.NewAt(ti.rt, tmp.UnsafePointer()).Elem())
}

// payload returns the data word of an interface value whose dynamic type is exactly ti.
func (ti *TypeRec) payload(x any) (unsafe.Pointer, bool) {
	e := (*eface)(unsafe.Pointer(&x))
	if ti.pure {
		return e.data, e.typ == ti.word
	}
	if e.typ != boxWord {
		return nil, false
	}
	b := (*Box)(e.data)
	if b.T != ti {
		return nil, false
	}
	return (*eface)(unsafe.Pointer(&b.V)).data, true
}

// anyAt makes an interface value of the value at p. The memory must not change afterwards.
func (ti *TypeRec) anyAt(p unsafe.Pointer) any {
	switch ti.rep {
	case repAny:
		return *(*any)(p)
	case repIface:
		return (*(*iface)(p)).any()
	}
	w := p
	if ti.direct {
		w = *(*unsafe.Pointer)(p)
	}
	v := makeEface(ti.word, w)
	if ti.pure {
		return v
	}
	return Box{ti, v}
}

// copyAny is anyAt of a copy.
func (ti *TypeRec) copyAny(p unsafe.Pointer) any {
	if ti.rep == repAny || ti.rep == repIface || ti.direct {
		return ti.anyAt(p)
	}
	q := ti.alloc()
	ti.copyFn()(q, p)
	return ti.anyAt(q)
}

// grow makes room for n more elements of type ti.
func (ti *TypeRec) grow(x slice, n int) slice {
	if x.len+n < 0 {
		panic(runtimeError("growslice: len out of range"))
	}
	if x.len+n <= x.cap {
		return x
	}
	if ti.size == 0 {
		x.cap = x.len + n
		if x.p == nil {
			x.p = ti.zero
		}
		return x
	}
	st := reflect.SliceOf(ti.rt)
	v := reflect.New(st)
	*(*slice)(v.UnsafePointer()) = x
	v.Elem().Grow(n)
	return *(*slice)(v.UnsafePointer())
}

// copyFn returns a function that copies a value of this type, with the write barriers its pointers need.
func (ti *TypeRec) copyFn() func(dst, src unsafe.Pointer) {
	ti.once.Do(func() { ti.copyTo = copier(ti.rt) })
	return ti.copyTo
}

func copier(rt reflect.Type) func(dst, src unsafe.Pointer) {
	size := rt.Size()
	words, ok := pointerWords(rt, 0, nil, 12)
	switch {
	case size == 0:
		return func(_, _ unsafe.Pointer) {}
	case ok && len(words) == 0:
		switch {
		case size == 8 && rt.Align() == 8:
			return func(dst, src unsafe.Pointer) { *(*uint64)(dst) = *(*uint64)(src) }
		case size == 16 && rt.Align() == 8:
			return func(dst, src unsafe.Pointer) { *(*[2]uint64)(dst) = *(*[2]uint64)(src) }
		case size == 24 && rt.Align() == 8:
			return func(dst, src unsafe.Pointer) { *(*[3]uint64)(dst) = *(*[3]uint64)(src) }
		}
		return func(dst, src unsafe.Pointer) {
			copy(unsafe.Slice((*byte)(dst), size), unsafe.Slice((*byte)(src), size))
		}
	case ok:
		// Runs of plain bytes between pointer words.
		type run struct{ off, n uintptr }
		var runs []run
		var at uintptr
		for _, w := range words {
			if w > at {
				runs = append(runs, run{at, w - at})
			}
			at = w + ptrSize
		}
		if size > at {
			runs = append(runs, run{at, size - at})
		}
		return func(dst, src unsafe.Pointer) {
			for _, w := range words {
				*(*unsafe.Pointer)(unsafe.Add(dst, w)) = *(*unsafe.Pointer)(unsafe.Add(src, w))
			}
			for _, r := range runs {
				copy(unsafe.Slice((*byte)(unsafe.Add(dst, r.off)), r.n), unsafe.Slice((*byte)(unsafe.Add(src, r.off)), r.n))
			}
		}
	}
	return func(dst, src unsafe.Pointer) {
		reflect.NewAt(rt, dst).Elem().Set(reflect.NewAt(rt, src).Elem())
	}
}

const ptrSize = unsafe.Sizeof(uintptr(0))

// pointerWords lists the offsets of words that hold pointers; it gives up beyond limit.
func pointerWords(rt reflect.Type, off uintptr, w []uintptr, limit int) ([]uintptr, bool) {
	switch rt.Kind() {
	case reflect.Pointer, reflect.UnsafePointer, reflect.Map, reflect.Chan, reflect.Func, reflect.String, reflect.Slice:
		w = append(w, off)
	case reflect.Interface:
		w = append(w, off, off+ptrSize)
	case reflect.Array:
		if rt.Len() > 0 {
			probe, ok := pointerWords(rt.Elem(), 0, nil, limit)
			if !ok || len(probe)*rt.Len() > limit {
				return nil, false
			}
			for i := range rt.Len() {
				for _, p := range probe {
					w = append(w, off+uintptr(i)*rt.Elem().Size()+p)
				}
			}
		}
	case reflect.Struct:
		for i := range rt.NumField() {
			f := rt.Field(i)
			var ok bool
			if w, ok = pointerWords(f.Type, off+f.Offset, w, limit); !ok {
				return nil, false
			}
		}
	}
	return w, len(w) <= limit
}
