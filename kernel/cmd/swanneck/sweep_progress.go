package main

import (
	"fmt"
	"os"
	"sync/atomic"
	"time"

	"github.com/vbauerster/mpb/v8"
	"github.com/vbauerster/mpb/v8/decor"
	"golang.org/x/term"
)

// sweepProgress shows how far a sweep is and how long it will take: a bar on a terminal, plain lines elsewhere.
type sweepProgress struct {
	name    string
	workers int
	all     *mpb.Progress
	bar     *mpb.Bar
	began   time.Time
	said    time.Time    // when the last line was printed
	left    atomic.Value // string: the bar reads it in its own time
}

func newSweepProgress(name string, workers int) *sweepProgress {
	p := &sweepProgress{name: name, workers: workers}
	if term.IsTerminal(int(os.Stdout.Fd())) {
		p.all = mpb.New(mpb.WithOutput(os.Stdout), mpb.WithWidth(40))
	}
	return p
}

// between is how often a plain line is printed, at most.
const between = 10 * time.Second

func (p *sweepProgress) at(done, total, taken int) {
	first := p.began.IsZero()
	if first {
		p.began, p.said = time.Now(), time.Now()
	}
	left := timeLeft(time.Since(p.began), done-taken, total-done)
	p.left.Store(left)
	switch {
	case p.all != nil:
		if first {
			p.bar = p.all.New(int64(total), mpb.BarStyle().Lbound(" ").Filler("▬").Tip("▬").Padding("·").Rbound(" "),
				mpb.PrependDecorators(decor.Name(p.name)),
				mpb.AppendDecorators(decor.CountersNoUnit("scenario %d of %d"), decor.Any(p.estimate)))
		}
		p.bar.SetCurrent(int64(done))
	case first:
		fmt.Printf("%s: %s, %s%s\n", p.name, count(total, "scenario"), count(p.workers, "worker"), map[bool]string{true: fmt.Sprintf("; %d are done already", taken)}[taken > 0])
	case done == total:
		fmt.Printf("%s: %d of %d scenarios done\n", p.name, done, total)
	case time.Since(p.said) >= between:
		p.said = time.Now()
		fmt.Printf("%s: %d of %d scenarios done%s\n", p.name, done, total, left)
	}
}

func (p *sweepProgress) estimate(s decor.Statistics) string {
	if s.Completed || s.Aborted {
		return ""
	}
	left, _ := p.left.Load().(string)
	return left
}

func (p *sweepProgress) end() {
	if p.bar != nil {
		p.bar.Abort(false)
	}
	if p.all != nil {
		p.all.Wait()
	}
}

// timeLeft says how long the rest will take, if it goes on as it went; nothing before there is something to go by.
func timeLeft(since time.Duration, done, left int) string {
	if done == 0 || left == 0 {
		return ""
	}
	d := time.Duration(float64(since) / float64(done) * float64(left))
	switch {
	case d >= 2*time.Hour:
		return fmt.Sprintf(", about %d h left", int(d.Hours()+0.5))
	case d >= 2*time.Minute:
		return fmt.Sprintf(", about %d min left", int(d.Minutes()+0.5))
	}
	return fmt.Sprintf(", about %d s left", int(d.Seconds()+1))
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
