package engine

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"sync"
	"sync/atomic"
	"time"
)

// worker is the parent's end of a worker process.
type worker struct {
	cmd    *exec.Cmd
	pipe   *pipe
	stdin  io.Closer
	inbox  chan message
	stderr *tail
	dead   chan struct{} // closed when the process has been waited for
	err    error         // of waiting
	fat    atomic.Bool   // killed for the memory it held
	last   *Failure      // what it said as it died, if it did
}

// asked is the environment variable that makes a process a worker.
const asked = "SWANNECK_WORKER"

func startWorker(o Options) (*worker, error) {
	exe, err := os.Executable()
	if err != nil {
		return nil, fmt.Errorf("engine: cannot find this program to start a worker: %w", err)
	}
	cmd := exec.Command(exe)
	cmd.Env = append([]string{asked + "=1", "TZ=UTC", "GOTRACEBACK=single"}, raceEnv...)
	if o.Batch {
		cmd.Env = append(cmd.Env, "GOMAXPROCS=1", "GOGC=400")
	}
	if v := os.Getenv("SYSTEMROOT"); v != "" { // Windows starts no process without it
		cmd.Env = append(cmd.Env, "SYSTEMROOT="+v)
	}
	stdin, err := cmd.StdinPipe()
	if err != nil {
		return nil, fmt.Errorf("engine: %w", err)
	}
	stdout, err := cmd.StdoutPipe()
	if err != nil {
		return nil, fmt.Errorf("engine: %w", err)
	}
	w := &worker{cmd: cmd, stdin: stdin, stderr: &tail{}, inbox: make(chan message, 64), dead: make(chan struct{})}
	cmd.Stderr = w.stderr
	if err := cmd.Start(); err != nil {
		return nil, fmt.Errorf("engine: cannot start a worker: %w", err)
	}
	w.pipe = &pipe{r: bufio.NewReaderSize(stdout, 1<<16), w: stdin}
	go w.receive()
	go w.watchResident(o.MemoryMiB)
	if err := w.pipe.write(message{Type: "hello", Setup: &setup{
		Clock: o.Clock.UnixNano(), Seed: o.Seed, MemoryMiB: o.MemoryMiB, Inputs: o.Inputs,
	}}); err != nil {
		_ = w.end()
		return nil, w.unborn(err.Error())
	}
	select {
	case m, ok := <-w.inbox:
		if !ok || m.Type != "ready" {
			return nil, w.unborn(w.postMortem().Items[0].Msg)
		}
	case <-time.After(20 * time.Second):
		_ = w.end()
		return nil, errors.New("engine: the worker did not start within 20 s")
	}
	return w, nil
}

// errKilled says that a worker was killed while it started, not by us: it is worth trying again.
var errKilled = errors.New("killed from outside")

// unborn says why a worker that has ended did not start.
func (w *worker) unborn(why string) error {
	if w.killed() {
		return fmt.Errorf("engine: the worker did not start: %w", errKilled)
	}
	return fmt.Errorf("engine: the worker did not start: %s", why)
}

// startSurely starts a worker, again if it is killed meanwhile.
func startSurely(o Options) (w *worker, err error) {
	for range 4 {
		if w, err = startWorker(o); !errors.Is(err, errKilled) {
			break
		}
	}
	return w, err
}

// receive hands on what the worker says, until its end.
func (w *worker) receive() {
	for {
		m, err := w.pipe.read()
		if err != nil {
			break
		}
		w.inbox <- m
	}
	w.err = w.cmd.Wait()
	close(w.dead)
	close(w.inbox)
}

// watchResident kills a worker that holds more memory than it may, as the system sees it. The worker watches itself
// more closely, but a single long operation can keep it from looking.
func (w *worker) watchResident(mib int) {
	tick := time.NewTicker(50 * time.Millisecond)
	defer tick.Stop()
	for {
		select {
		case <-w.dead:
			return
		case <-tick.C:
			if held, ok := residentMiB(w.cmd.Process.Pid); ok && held > mib+64 {
				w.fat.Store(true)
				w.kill()
				return
			}
		}
	}
}

func (w *worker) kill() { _ = w.cmd.Process.Kill() } // an error means that it has ended already

// end closes the worker's input, which ends it, and kills it if it does not end.
func (w *worker) end() error {
	_ = w.stdin.Close() // closed twice, or by a dead process: either way it is closed
	t := time.AfterFunc(time.Second, w.kill)
	defer t.Stop()
	for range w.inbox { // let receive come to its end
	}
	<-w.dead
	return nil
}

// killed says that a worker that has ended was ended by a signal. Systems without signals do not tell.
func (w *worker) killed() bool {
	return w.cmd.ProcessState != nil && !w.cmd.ProcessState.Exited()
}

// postMortem says why a worker is gone that has closed its pipe, or is about to.
func (w *worker) postMortem() *Failure {
	t := time.AfterFunc(time.Second, w.kill)
	for m := range w.inbox {
		if m.Type == "dying" {
			w.last = m.Fail
		}
	}
	<-w.dead
	t.Stop()
	if w.last != nil {
		return w.last
	}
	text := w.stderr.String()
	f := fail(Crashed, 0, 0, "the cell ended its worker process: %s", cause(text, w.err))
	if w.killed() && text == "" && !w.fat.Load() {
		f = fail(Crashed, 0, 0, "the worker process was killed from outside (%s)", cause("", w.err))
		f.outside = true
	}
	if w.fat.Load() || strings.Contains(text, "out of memory") || strings.Contains(text, "cannot allocate memory") {
		f = fail(Memory, 0, 0, "the cell needed more memory than it may have, and its worker ended")
	}
	f.Trace = text
	return f
}

// cause finds the line of a Go trace that says what happened.
func cause(text string, err error) string {
	for line := range strings.Lines(text) {
		for _, mark := range []string{"fatal error: ", "runtime: goroutine stack exceeds", "panic: ", "SIG"} {
			if strings.HasPrefix(line, mark) {
				return strings.TrimSpace(strings.TrimPrefix(strings.TrimPrefix(line, "fatal error: "), "runtime: "))
			}
		}
	}
	if err != nil {
		return err.Error()
	}
	return "it ended by itself"
}

// tail keeps the first and the last part of what a worker writes to its standard error.
type tail struct {
	mu          sync.Mutex
	first, last []byte
}

func (t *tail) Write(p []byte) (int, error) {
	const most = 16 << 10
	t.mu.Lock()
	defer t.mu.Unlock()
	n := len(p)
	if room := most - len(t.first); room > 0 {
		k := min(room, len(p))
		t.first = append(t.first, p[:k]...)
		p = p[k:]
	}
	t.last = append(t.last, p...)
	if len(t.last) > most {
		t.last = append([]byte(nil), t.last[len(t.last)-most:]...)
	}
	return n, nil
}

func (t *tail) String() string {
	t.mu.Lock()
	defer t.mu.Unlock()
	if len(t.last) > 0 {
		return string(t.first) + "\n…\n" + string(t.last)
	}
	return string(t.first)
}
