package engine

import (
	"context"
	"io"
	"os"
	"os/exec"
	"testing"
)

// A goroutine that ends the worker in the middle of a replay costs its own cell, not the one that is being run again.
func TestReplayDropsTheCulprit(t *testing.T) {
	cmd := exec.Command(os.Args[0], "-test.run=^$")
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	defer cmd.Wait()
	w := &worker{cmd: cmd, pipe: &pipe{w: io.Discard}, inbox: make(chan message, 3)}
	late := fail(Crashed, 0, 0, "a goroutine panicked: late")
	late.Cell = "cell 1"
	w.inbox <- message{Type: "done"}
	w.inbox <- message{Type: "dying", Fail: late}
	sum := newSession(nil, request{}).sum()
	e := &Engine{opts: Options{}.filled(), done: []request{{name: "cell 1", output: sum}, {name: "cell 2", output: sum}}}
	var lost, changed []string
	again, err := e.replay(context.Background(), w, map[int]int{}, &lost, &changed)
	if err != nil || !again || len(e.done) != 1 || e.done[0].name != "cell 2" || len(lost) != 1 || lost[0] != "cell 1" {
		t.Errorf("again %v, %v; kept %v, lost %v; want cell 1 lost and cell 2 kept", again, err, e.done, lost)
	}
}
