package eval

import (
	"go/token"
	"go/types"
	"reflect"
	"strconv"
	"unsafe"
)

// frame heads the memory of one call; the parameters, results and local variables follow it. The whole is one
// allocation of a type made for the function, so the collector sees every pointer in it. Variables that outlive the
// call or are shared (captured or addressed) live in memory of their own, and the frame holds their address.
type frame struct {
	g      *routine
	env    unsafe.Pointer // the closure's captured variables: an array of addresses
	code   *code
	panic  *Panic    // the panic this call was deferred for, if its function was called by the unwinding
	defers *deferred // calls deferred so far, last first
	loops  *rangeState
	next   *frame // the next free frame of the same function
}

func (fr *frame) at(off uintptr) unsafe.Pointer { return unsafe.Add(unsafe.Pointer(fr), off) }

// routine is the state of one goroutine of the cells.
type routine struct {
	m     *Machine
	free  []*frame // free frames by function
	depth int
	at    *site // of the last call into compiled code
}

// ctl says where control goes after a statement.
type ctl int

const (
	next ctl = iota
	doReturn
	doBreak
	doContinue
	doFall
	// From here: label number*4 plus one of the kinds below.
	firstLabel ctl = 8
	labBreak   ctl = 1
	labCont    ctl = 2
	labGoto    ctl = 3
)

// slot is a place in a frame.
type slot struct {
	off uintptr
	ti  *TypeRec
}

// site is a place in a source.
type site struct {
	fset     *token.FileSet
	pos      token.Pos
	unsigned bool // the index at fault is of an unsigned type
}

// code is a compiled function.
type code struct {
	m       *Machine
	id      int
	name    string
	sig     *types.Signature
	params  []slot
	recv    *slot // stands behind the results, so that params lie alike for all methods of one signature
	results []slot
	body    exec
	ftype   reflect.Type
	clears  []uintptr // pointer words to clear before a frame is used again
	pool    bool
	done    bool
	native  reflect.Value // the compiled function, for the shapes that can be called without a frame
}

// enter returns a frame for a call.
func (c *code) enter(g *routine) *frame {
	if c.pool && c.id < len(g.free) {
		if fr := g.free[c.id]; fr != nil {
			g.free[c.id] = fr.next
			fr.next = nil
			return fr
		}
	}
	fr := (*frame)(reflect.New(c.ftype).UnsafePointer())
	fr.g = g
	fr.code = c
	return fr
}

// release gives a frame back. Nothing may point into it any more.
func (fr *frame) release() {
	c := fr.code
	if !c.pool {
		return
	}
	for _, off := range c.clears {
		*(*unsafe.Pointer)(fr.at(off)) = nil
	}
	g := fr.g
	if c.id >= len(g.free) {
		g.free = append(g.free, make([]*frame, c.id+16-len(g.free))...)
	}
	fr.env = nil
	fr.panic = nil
	fr.next = g.free[c.id]
	g.free[c.id] = fr
}

// run executes a function whose parameters stand in the frame.
func (c *code) run(fr *frame) {
	g := fr.g
	g.depth++
	if g.depth > g.m.maxDepth {
		g.depth = 0
		panic(g.m.overflow(g.at))
	}
	if g.m.stop.Load() {
		panic(g.m.halted())
	}
	c.body(fr)
	g.depth--
}

// layout places variables in a frame.
type layout struct {
	fields []reflect.StructField
	size   uintptr
	clears []uintptr
	many   bool
}

var frameType = reflect.TypeFor[frame]()

func newLayout() *layout {
	return &layout{size: frameType.Size()}
}

func (l *layout) add(rt reflect.Type) uintptr {
	a := uintptr(rt.Align())
	off := (l.size + a - 1) &^ (a - 1)
	l.size = off + rt.Size()
	l.fields = append(l.fields, reflect.StructField{Type: rt})
	w, ok := pointerWords(rt, off, nil, 16)
	if !ok {
		l.many = true
	}
	l.clears = append(l.clears, w...)
	return off
}

func (l *layout) addRec(ti *TypeRec) uintptr {
	switch ti.rep {
	case repPtr:
		return l.add(unsafePtrType)
	case repSlice:
		return l.add(sliceType)
	case repAny, repIface:
		return l.add(anyType)
	case repMem:
		return l.add(ti.rt)
	}
	return l.add(scalarTypes[ti.rep])
}

var scalarTypes = map[rep]reflect.Type{
	repBool: reflect.TypeFor[bool](), repInt: reflect.TypeFor[int](), repInt8: reflect.TypeFor[int8](),
	repInt16: reflect.TypeFor[int16](), repInt32: reflect.TypeFor[int32](), repInt64: reflect.TypeFor[int64](),
	repUint: reflect.TypeFor[uint](), repUint8: reflect.TypeFor[uint8](), repUint16: reflect.TypeFor[uint16](),
	repUint32: reflect.TypeFor[uint32](), repUint64: reflect.TypeFor[uint64](), repUintptr: reflect.TypeFor[uintptr](),
	repFloat32: reflect.TypeFor[float32](), repFloat64: reflect.TypeFor[float64](),
	repComplex64: reflect.TypeFor[complex64](), repComplex128: reflect.TypeFor[complex128](),
	repString: reflect.TypeFor[string](),
}

// frameType returns the type of the whole frame.
func (l *layout) typ() reflect.Type {
	fs := make([]reflect.StructField, 0, len(l.fields)+1)
	fs = append(fs, reflect.StructField{Name: "H", Type: frameType})
	for i, f := range l.fields {
		f.Name = "F" + strconv.Itoa(i)
		fs = append(fs, f)
	}
	t := reflect.StructOf(fs)
	if n := len(fs); n > 1 && t.Size() < l.size {
		panic("eval: frame layout")
	}
	return t
}
