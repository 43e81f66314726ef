package engine_test

import (
	"encoding/json"
	"fmt"
	"go/token"
	"go/types"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"golang.org/x/sys/unix"

	"swanneck/kernel/cell"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
)

// aloneEnv starts this test's program with one layer of the confinement, which then makes all tries and prints how they
// ended. Its value is "layer target".
const aloneEnv = "CONFINE_ALONE"

func init() {
	if v := os.Getenv(aloneEnv); v != "" {
		layer, target, _ := strings.Cut(v, " ")
		alone(layer, target)
	}
	content = withProbe(content)
}

func alone(layer, target string) {
	apply := map[string]func() error{
		"nothing":  func() error { return nil },
		"landlock": engine.Layer("landlock"),
		"filter":   engine.Layer("system calls"),
		"limits":   func() error { return engine.LimitSelf(64) },
	}[layer]
	if err := apply(); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	list := tries
	if layer == "limits" {
		list = limitTries
	}
	ended := map[string]string{}
	for _, t := range list {
		ended[t.name] = attempt(t.name, target)
	}
	if err := json.NewEncoder(os.Stdout).Encode(ended); err != nil {
		os.Exit(1)
	}
	os.Exit(0)
}

// withProbe gives cells a package "probe" that makes the tries.
func withProbe(c engine.Content) engine.Content {
	library, values := c.Library, c.Values
	text := types.NewVar(token.NoPos, nil, "", types.Typ[types.String])
	pkg := types.NewPackage("probe", "probe")
	pkg.Scope().Insert(types.NewFunc(token.NoPos, pkg, "Try", types.NewSignatureType(nil, nil, nil,
		types.NewTuple(text, text), types.NewTuple(text), false)))
	pkg.MarkComplete()
	c.Library = func() cell.Library { return probeLibrary{library().(*symbols.Library), pkg} }
	c.Packages = append(slices.Clone(c.Packages), "probe")
	c.Values = func(path string) map[string]reflect.Value {
		if path == "probe" {
			return map[string]reflect.Value{"Try": reflect.ValueOf(attempt)}
		}
		return values(path)
	}
	return c
}

type probeLibrary struct {
	*symbols.Library
	probe *types.Package
}

func (l probeLibrary) Import(path string) (*types.Package, error) {
	if path == "probe" {
		return l.probe, nil
	}
	return l.Library.Import(path)
}

// layOut makes a folder with what the tries work on, and listeners whose port and name it gives away.
func layOut(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	for _, name := range []string{"file", "other", "removable"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(name), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	l, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { l.Close() })
	abstract, err := net.Listen("unix", "@"+dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { abstract.Close() })
	_, port, _ := net.SplitHostPort(l.Addr().String())
	if err := os.Symlink(port, filepath.Join(dir, "port")); err != nil {
		t.Fatal(err)
	}
	return dir
}

// needs skips a test for want of something in the kernel, except where all must run.
func needs(t *testing.T, have bool, what string) {
	t.Helper()
	if have {
		return
	}
	if os.Getenv("CI") != "" {
		t.Fatalf("this kernel has no %s, and nothing may be skipped here", what)
	}
	t.Skipf("this kernel has no %s", what)
}

func endedAlone(t *testing.T, layer, target string) map[string]string {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), aloneEnv+"="+layer+" "+target)
	var stderr strings.Builder
	cmd.Stderr = &stderr
	b, err := cmd.Output()
	if err != nil {
		t.Fatalf("with %s: %v\n%s", layer, err, stderr.String())
	}
	ended := map[string]string{}
	if err := json.Unmarshal(b, &ended); err != nil || len(ended) == 0 {
		t.Fatalf("with %s: %q, %v", layer, b, err)
	}
	return ended
}

// A try that nothing holds back where nothing confines proves nothing where something does.
func TestTriesGetOutOfAProcessThatIsNotConfined(t *testing.T) {
	ended := endedAlone(t, "nothing", layOut(t))
	for _, try := range tries {
		if try.anyone && ended[try.name] != out {
			t.Errorf("%s: %s; it must succeed here", try.name, ended[try.name])
		}
	}
}

// Compiled code in a worker, which is more than any cell has, gets nowhere, and the worker goes on.
func TestBreakOutOfTheWorker(t *testing.T) {
	needs(t, engine.FilterMissing() == "", "filter of system calls")
	dir := layOut(t)
	e := start(t, engine.Options{})
	ok(t, e, "import \"probe\"\nkept := 42", "")
	names := []string{"old calls", "another program in place of this", "use up the open files", "raise its own limits"}
	for _, try := range tries {
		names = append(names, try.name)
	}
	for _, name := range names {
		said, f := run(t, e, fmt.Sprintf("probe.Try(%q, %q)", name, dir))
		if f != nil || !strings.HasPrefix(said, "value:EPERM") && !strings.HasPrefix(said, "value:ENOSYS") {
			t.Errorf("%s: %s %v; want EPERM from the filter", name, said, f)
		} else {
			t.Logf("%-36s stopped by the filter of system calls: %s", name, said)
		}
	}
	ok(t, e, "kept", "value:42")
	for name, want := range map[string]string{"file": "file", "other": "other", "removable": "removable"} {
		if got, err := os.ReadFile(filepath.Join(dir, name)); string(got) != want {
			t.Errorf("%s holds %q, %v; want %q", name, got, err, want)
		}
	}
	if entries, err := os.ReadDir(dir); err != nil || len(entries) != 4 {
		t.Errorf("the folder holds %v, %v; want the 4 things that were laid out", entries, err)
	}
}

// Landlock is there for the day on which the filter has a hole.
func TestLandlockAlone(t *testing.T) {
	version := engine.LandlockVersion()
	needs(t, version > 0, "Landlock")
	ended := endedAlone(t, "landlock", layOut(t))
	held := 0
	for _, try := range tries {
		if try.landlock == 0 || try.landlock > version {
			continue
		}
		held++
		if e := ended[try.name]; !strings.HasPrefix(e, "EACCES") && !strings.HasPrefix(e, "EPERM") {
			t.Errorf("%s: %s; want it held back by Landlock", try.name, e)
		} else {
			t.Logf("%-36s stopped by Landlock: %s", try.name, e)
		}
	}
	if held < 10 {
		t.Errorf("Landlock held back %d tries; want 10 at least", held)
	}
}

// The filter holds without Landlock, on kernels that have only the one.
func TestFilterAlone(t *testing.T) {
	needs(t, engine.FilterMissing() == "", "filter of system calls")
	for name, e := range endedAlone(t, "filter", layOut(t)) {
		if !strings.HasPrefix(e, "EPERM") && !strings.HasPrefix(e, "ENOSYS") {
			t.Errorf("%s: %s; want EPERM from the filter", name, e)
		}
	}
}

func TestLimitsAlone(t *testing.T) {
	ended := endedAlone(t, "limits", layOut(t))
	for name, want := range map[string]string{
		"fill the disk": "EFBIG", "use up the open files": "EMFILE", "raise its own limits": "EPERM", "allocate 10 GiB": "ENOMEM",
	} {
		switch got := ended[name]; {
		case strings.HasPrefix(got, want):
			t.Logf("%-36s stopped by a limit: %s", name, got)
		case name == "allocate 10 GiB" && underRace, name == "raise its own limits" && got == out && os.Getuid() == 0:
			t.Logf("%s: %s; not limited under the race detector, or for the system's administrator", name, got)
		default:
			t.Errorf("%s: %s; want %s", name, got, want)
		}
	}
}

// Whatever threads a worker has or makes, each is confined.
func TestEveryThreadIsConfined(t *testing.T) {
	needs(t, engine.FilterMissing() == "", "filter of system calls")
	e := start(t, engine.Options{})
	ok(t, e, "import (\"probe\"; \"sync\")\nvar wg sync.WaitGroup\nfor range 50 {\n\twg.Go(func() { time.Sleep(time.Millisecond) })\n}\nwg.Wait()", "")
	said, f := run(t, e, `probe.Try("pid", "")`)
	if f != nil {
		t.Fatal(f)
	}
	proc := "/proc/" + strings.TrimPrefix(said, "value:")
	limits, err := os.ReadFile(proc + "/limits")
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`Max file size +0 +0 `, `Max core file size +0 +0 `, `Max open files +16 +16 `, `Max data size +[0-9]+ +[0-9]+ `} {
		if !regexp.MustCompile(want).Match(limits) && (!underRace || !strings.Contains(want, "data")) {
			t.Errorf("the worker's limits lack %q:\n%s", want, limits)
		}
	}
	files, err := filepath.Glob(proc + "/task/*/status")
	if err != nil || len(files) < 2 {
		t.Fatalf("%d threads, %v; a Go program has at least 2", len(files), err)
	}
	for _, file := range files {
		status, err := os.ReadFile(file)
		if err != nil {
			continue // the thread has ended
		}
		for _, want := range []string{"\nSeccomp:\t2\n", "\nNoNewPrivs:\t1\n"} {
			if !strings.Contains(string(status), want) {
				t.Errorf("%s lacks %q:\n%s", file, want, status)
			}
		}
	}
	t.Logf("%d threads, all confined", len(files))
}

// What whoever started this program left open is closed before the first cell.
func TestInheritedFilesAreClosed(t *testing.T) {
	secret, err := os.Open("/etc/passwd")
	if err != nil {
		t.Fatal(err)
	}
	defer secret.Close()
	if _, err := unix.FcntlInt(secret.Fd(), unix.F_SETFD, 0); err != nil { // as a shell leaves it
		t.Fatal(err)
	}
	e := start(t, engine.Options{})
	ok(t, e, "import \"probe\"", "")
	said, f := run(t, e, `probe.Try("pid", "")`)
	if f != nil {
		t.Fatal(f)
	}
	links, err := filepath.Glob("/proc/" + strings.TrimPrefix(said, "value:") + "/fd/*")
	if err != nil || len(links) < 3 {
		t.Fatalf("%v, %v; a worker has three pipes", links, err)
	}
	for _, link := range links {
		if to, _ := os.Readlink(link); to == "/etc/passwd" {
			t.Errorf("the worker still holds %s", to)
		}
	}
}

func TestContainmentSaysWhatIsInForce(t *testing.T) {
	all := strings.Join(engine.Containment(), "\n")
	t.Log("\n" + all)
	for what, want := range map[string]bool{
		"no file or folder":       engine.LandlockVersion() > 0,
		"landlock: NOT":           engine.LandlockVersion() == 0,
		"only those that":         engine.FilterMissing() == "",
		"size of a worker's data": !underRace,
	} {
		if strings.Contains(all, what) != want {
			t.Errorf("%q is said: %v; want %v", what, !want, want)
		}
	}
}
