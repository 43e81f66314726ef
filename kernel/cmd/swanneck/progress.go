package main

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/vbauerster/mpb/v8"
	"github.com/vbauerster/mpb/v8/decor"
	"golang.org/x/term"
)

// progress shows how far a run is: a bar on a terminal, plain lines elsewhere.
type progress struct {
	name string
	all  *mpb.Progress
	bar  *mpb.Bar
}

func newProgress(path string) *progress {
	p := &progress{name: filepath.Base(path)}
	if term.IsTerminal(int(os.Stdout.Fd())) {
		p.all = mpb.New(mpb.WithOutput(os.Stdout), mpb.WithWidth(40))
		p.bar = p.all.New(0, mpb.BarStyle().Lbound(" ").Filler("▬").Tip("▬").Padding("·").Rbound(" "),
			mpb.PrependDecorators(decor.Name(p.name)), mpb.AppendDecorators(decor.CountersNoUnit("cell %d of %d")))
	}
	return p
}

func (p *progress) at(done, total int) {
	switch {
	case p.bar != nil:
		p.bar.SetTotal(int64(total), false)
		p.bar.SetCurrent(int64(done))
	case done == 0:
		fmt.Printf("%s: %d cells\n", p.name, total)
	case done == total:
		fmt.Printf("%s: cell %d of %d done\n", p.name, done, total)
	}
}

func (p *progress) end() {
	if p.bar != nil {
		p.bar.Abort(false)
		p.all.Wait()
	}
}
