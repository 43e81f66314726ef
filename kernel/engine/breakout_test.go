package engine_test

import (
	"context"
	"errors"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// What a cell can write of its own, without any help. Whatever stops it, the engine lives, and what earlier cells had
// made is there for the next.
func TestBreakOutOfACell(t *testing.T) {
	quick := engine.Options{CellTime: time.Second, Grace: 200 * time.Millisecond, MemoryMiB: 256}
	for _, c := range []struct {
		name, src string
		stopped   string      // what stops it, in words
		kind      engine.Kind // how the cell ends; empty where it may end well, or in one of several ways
		says      string      // a part of what is said
	}{
		{"files", "import \"os\"\nos.ReadFile(\"/etc/passwd\")", "whitelist", engine.Refused, "a cell has no files"},
		{"network", "import \"net\"\nnet.Dial(\"tcp\", \"127.0.0.1:80\")", "whitelist", engine.Refused, "a cell has no network"},
		{"the web", "import \"net/http\"\nhttp.Get(\"http://127.0.0.1\")", "whitelist", engine.Refused, "a cell has no network"},
		{"programs", "import \"os/exec\"\nexec.Command(\"true\").Run()", "whitelist", engine.Refused, "no processes"},
		{"system calls", "import \"syscall\"\nsyscall.Kill(1, 9)", "whitelist", engine.Refused, "no system calls"},
		{"unsafe", "import \"unsafe\"\nx := 1\nunsafe.Pointer(&x)", "whitelist", engine.Refused, "keeps to Go's types"},
		{"reflection", "import \"reflect\"\nreflect.ValueOf(1)", "whitelist", engine.Refused, "keeps to the types it names"},
		{"plug-ins", "import \"plugin\"\nplugin.Open(\"x.so\")", "whitelist", engine.Refused, "not supported in cells"},
		{"C", "import \"C\"\nC.abort()", "whitelist", engine.Refused, ""},
		{"a file by its path", "import \"../../../etc\"\n1", "whitelist", engine.Refused, ""},
		{"a function without a body", "//go:linkname exit os.runtime_beforeExit\nfunc exit(int)\nexit(1)", "checker", engine.Refused, ""},
		{"the worker's own output", "print(\"\\x00\\x00\\x00\\x10{\\\"v\\\":1,\\\"t\\\":\\\"x\\\"}\")", "the pipe is not standard output", "", ""},
		{"10 GiB at once", "b := make([]byte, 10<<30)\nfor i := 0; i < len(b); i += 4096 {\n\tb[i] = 1\n}", "limit on data, or the watch on memory", engine.Memory, "memory"},
		{"10 GiB bit by bit", "s := \"x\"\nfor {\n\ts += s\n}", "limit on data, or the watch on memory", engine.Memory, "memory"},
		{"a million goroutines", "stop := make(chan int)\nfor range 1000000 {\n\tgo func() { <-stop }()\n}\nselect {}", "watch on memory or on time", "", ""},
		{"goroutines that make goroutines", "var bomb func()\nbomb = func() {\n\tfor {\n\t\tgo bomb()\n\t}\n}\nbomb()", "watch on memory or on time", "", ""},
		{"deep recursion", "func down(n int) int { return down(n+1) + 1 }\ndown(0)", "limit on the stack", "", "stack"},
		{"a race on an interface", "import \"sync\"\nvar v any = 1\nvar wg sync.WaitGroup\nwg.Go(func() {\n\tfor range 200000 {\n\t\tv = 1\n\t\tv = \"text\"\n\t\tv = []int{1}\n\t}\n})\nfor range 2000 {\n\tfmt.Sprint(v)\n\tfmt.Sprintf(\"%v %T\", v, v)\n}\nwg.Wait()", "nothing need; the worker is confined", "", ""},
		{"writes to a map from two sides", "m := map[int]int{}\ngo func() {\n\tfor i := 0; ; i++ {\n\t\tm[i%100] = i\n\t}\n}()\nfor i := 0; i < 3000000; i++ {\n\tm[i%100] = i\n}", "worker process", "", ""},
		{"output without end", "for {\n\tfmt.Println(\"and on\")\n}", "watch on time", engine.Time, "longer than"},
		{"a loop without end", "for {\n}", "watch on time", engine.Time, "longer than"},
		{"sleep", "time.Sleep(time.Hour)", "watch on time", engine.Time, "longer than"},
		{"a panic", "panic(\"out\")", "evaluator", engine.Stopped, "out"},
		{"a panic in a goroutine", "go func() { panic(\"out\") }()\ntime.Sleep(time.Hour)", "worker process", engine.Crashed, "out"},
		{"a nil pointer", "var p *struct{ x [1 << 20]int }\np.x[1<<19] = 1", "evaluator", engine.Stopped, "nil pointer"},
		{"close twice", "c := make(chan int)\nclose(c)\nclose(c)", "evaluator", engine.Stopped, "close of closed channel"},
		{"a lock for ever", "import \"sync\"\nvar mu sync.Mutex\nmu.Lock()\nmu.Lock()", "watch on time", engine.Time, "longer than"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if c.name == "10 GiB bit by bit" && underRace {
				t.Skip("the system does not limit data under the race detector, and copying gigabytes keeps Go's own watch from looking")
			}
			o := quick
			if c.kind == engine.Memory {
				o.CellTime = time.Minute
			}
			e := start(t, o)
			ok(t, e, "kept := 42", "")
			err := e.Run(context.Background(), "cell", c.src, deaf{})
			var f *engine.Failure
			if err != nil && !errors.As(err, &f) {
				t.Fatalf("the engine itself failed: %v", err)
			}
			switch {
			case c.kind != "" && (f == nil || f.Kind != c.kind):
				t.Errorf("%+v; want %s", f, c.kind)
			case c.says != "" && (f == nil || !strings.Contains(f.Error(), c.says)):
				t.Errorf("%+v; want a word of %q", f, c.says)
			}
			if _, again := run(t, e, "kept"); again != nil && again.Kind != engine.Memory {
				t.Errorf("the next cell: %v", again) // it may find a worker still full of what the cell left, and get a new one
			}
			ok(t, e, "kept", "value:42")
			if f != nil {
				t.Logf("stopped by: %s. %s: %s", c.stopped, f.Kind, f.Items[0])
			} else {
				t.Logf("stopped by: %s. The cell ended well", c.stopped)
			}
		})
	}
}

// deaf hears nothing.
type deaf struct{}

func (deaf) Stream(string, string)  {}
func (deaf) Display(display.Bundle) {}
func (deaf) Value(display.Bundle)   {}
