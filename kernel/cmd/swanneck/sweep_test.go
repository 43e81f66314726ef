//go:build unix

package main

import (
	"bytes"
	"errors"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// program starts this program as a process of its own: the test binary under the program's name.
func program(t *testing.T, args ...string) (cmd *exec.Cmd, said *bytes.Buffer) {
	t.Helper()
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	said = &bytes.Buffer{}
	cmd = &exec.Cmd{Path: exe, Args: append([]string{"swanneck"}, args...), Stdout: said, Stderr: said}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	return cmd, said
}

// trial is a sweep of 90 scenarios, some of which fail.
func trial(out string) []string {
	return []string{"sweep", "../../../worksheets/library/proofing.ipynb", "--workers", "2", "--out", out,
		"--vary", "reading of the alcoholometer=38..67/1 %vol", "--vary", "strength wanted=40;43;50 %vol"}
}

// trialFiles are what it leaves, as one text.
func trialFiles(t *testing.T, out string) string {
	t.Helper()
	text := ""
	for _, end := range []string{"csv", "parquet", "svg"} {
		b, err := os.ReadFile(filepath.Join(out, "proofing.sweep."+end))
		if err != nil {
			t.Fatal(err)
		}
		text += string(b)
	}
	return text
}

func wholeTrial(t *testing.T) (files string, took time.Duration) {
	t.Helper()
	out := t.TempDir()
	began := time.Now()
	cmd, said := program(t, trial(out)...)
	if err := cmd.Wait(); exitStatus(err) != 1 || !strings.Contains(said.String(), "of 90 scenarios have no results") {
		t.Fatalf("%v: %s", err, said)
	}
	return trialFiles(t, out), time.Since(began)
}

func exitStatus(err error) int {
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		return exit.ExitCode()
	}
	return 0
}

// Killed again and again at random moments, and started again each time, a sweep leaves the files of one that ran through.
func TestSweepKilled(t *testing.T) {
	if testing.Short() {
		t.Skip("many sweeps")
	}
	want, took := wholeTrial(t)
	r := rand.New(rand.NewPCG(9, 1))
	out := t.TempDir()
	kills := 0
	for {
		cmd, said := program(t, trial(out)...)
		after := time.Duration(float64(took) * (0.02 + 0.4*r.Float64()))
		timer := time.AfterFunc(after, func() { _ = cmd.Process.Kill() }) // an error means that it has ended already
		err := cmd.Wait()
		timer.Stop()
		if s, ok := cmd.ProcessState.Sys().(syscall.WaitStatus); ok && s.Signaled() {
			if kills++; kills > 60 {
				t.Fatalf("it does not come to an end: %s", said)
			}
			continue
		}
		if exitStatus(err) != 1 || !strings.Contains(said.String(), "rows were taken from") {
			t.Fatalf("%v: %s", err, said)
		}
		break
	}
	if kills < 2 {
		t.Errorf("it was killed %d times; want more, or the test shows nothing", kills)
	}
	if got := trialFiles(t, out); got != want {
		t.Errorf("after %d kills the files are others than those of a sweep that ran through", kills)
	}
	left, err := filepath.Glob(filepath.Join(out, "*"))
	if err != nil || len(left) != 4 {
		t.Errorf("%q, %v; want journal, CSV, Parquet and chart", left, err)
	}
}

// Interrupted, a sweep ends at once, says how far it is, and goes on from there.
func TestSweepInterrupted(t *testing.T) {
	if testing.Short() {
		t.Skip("many sweeps")
	}
	want, _ := wholeTrial(t)
	for _, sig := range []os.Signal{os.Interrupt, syscall.SIGTERM} {
		out := t.TempDir()
		cmd, said := program(t, trial(out)...)
		for until := time.Now().Add(20 * time.Second); time.Now().Before(until); time.Sleep(5 * time.Millisecond) {
			if b, err := os.ReadFile(filepath.Join(out, "proofing.sweep.journal")); err == nil && bytes.Count(b, []byte("\n")) > 6 {
				break
			}
		}
		if err := cmd.Process.Signal(sig); err != nil {
			t.Fatal(err)
		}
		began := time.Now()
		err := cmd.Wait()
		if took := time.Since(began); exitStatus(err) != 1 || took > 5*time.Second ||
			!strings.Contains(said.String(), " of 90 rows are done and kept in "+out) || !strings.HasSuffix(said.String(), "; the same command goes on from there\n") {
			t.Fatalf("%v: %v after %v: %s", sig, err, took, said)
		}
		if left, err := filepath.Glob(filepath.Join(out, "*")); err != nil || len(left) != 1 {
			t.Errorf("%q; want the journal alone", left)
		}
		cmd, said = program(t, trial(out)...)
		if err := cmd.Wait(); exitStatus(err) != 1 || !strings.Contains(said.String(), "are done already") {
			t.Fatalf("%v: %s", err, said)
		}
		if got := trialFiles(t, out); got != want {
			t.Errorf("after %v the files are others than those of a sweep that ran through", sig)
		}
	}
}
