package engine

import (
	"errors"
	"fmt"
	"runtime"
	"strings"

	"github.com/elastic/go-seccomp-bpf"
	"github.com/elastic/go-seccomp-bpf/arch"
	"github.com/landlock-lsm/go-landlock/landlock"
	landlocksys "github.com/landlock-lsm/go-landlock/landlock/syscall"
	"golang.org/x/sys/unix"
)

// layer is one of the system's means to confine a process.
type layer struct {
	name    string
	missing func() string // why this system lacks it; empty if it is there
	apply   func() error
	says    func() string
}

// layers are applied in this order, since the filter refuses what Landlock is set up with.
var layers = []layer{
	{"landlock", landlockMissing, forbidFiles, landlockSays},
	{"system calls", filterMissing, filterCalls, func() string {
		return "only those that computing needs; no files, sockets, processes, tracing, mounts or code made at run time"
	}},
}

func confineBySystem() error {
	for _, l := range layers {
		if l.missing() != "" {
			continue
		}
		if err := l.apply(); err != nil {
			return err
		}
	}
	return nil
}

func systemInForce() []string {
	var out []string
	for _, l := range layers {
		if why := l.missing(); why != "" {
			out = append(out, l.name+": NOT in force: "+why)
		} else {
			out = append(out, l.name+": "+l.says())
		}
	}
	return out
}

// landlockVersion asks the kernel for its version of Landlock; 0 is none. Kernels of version 6 and later that mistake a
// program's own threads for other processes count as version 5, as in the library that is used here.
func landlockVersion() int {
	v, err := landlocksys.LandlockGetABIVersion()
	if err != nil {
		return 0
	}
	const threadsMended = 1 << 1
	if mended, err := landlocksys.LandlockGetErrata(); v > 5 && (err != nil || mended&threadsMended == 0) {
		return 5
	}
	return v
}

func landlockMissing() string {
	if landlockVersion() == 0 {
		return "not in this kernel, or switched off"
	}
	return ""
}

func landlockSays() string {
	v := landlockVersion()
	what := "no file or folder"
	if v >= 4 {
		what += ", no TCP"
	}
	if v >= 6 {
		what += ", no signal or abstract socket to other processes"
	}
	return fmt.Sprintf("%s (the kernel's version %d)", what, v)
}

// forbidFiles forbids by Landlock everything that this kernel's version knows, and allows no path and no port.
func forbidFiles() error {
	if err := landlock.V11.BestEffort().Restrict(); err != nil {
		return fmt.Errorf("cannot confine the worker: %w", err)
	}
	return nil
}

// filterMissing says why system calls cannot be filtered here; it is empty if they can.
func filterMissing() string {
	if runtime.GOARCH != "amd64" && runtime.GOARCH != "arm64" {
		return "the calls that Go makes on " + runtime.GOARCH + " are not known"
	}
	if !seccomp.Supported() {
		return "this kernel has no seccomp, or does not let this program use it"
	}
	return ""
}

// filterCalls lets through what calls lists and answers "not permitted" to everything else, so that a call that a later
// kernel brings is refused too. It holds for all threads, those that there are included.
func filterCalls() error {
	policy, err := callPolicy()
	if err != nil {
		return err
	}
	runtime.LockOSThread() // no_new_privs is set on the thread that then loads the filter
	defer runtime.UnlockOSThread()
	err = seccomp.LoadFilter(seccomp.Filter{NoNewPrivs: true, Flag: seccomp.FilterFlagTSync, Policy: policy})
	if err != nil {
		return fmt.Errorf("cannot confine the worker: %w", err)
	}
	return nil
}

// calls are the system calls that Go's runtime, and a C library under it, make while a program only computes: on files
// that are open already, on memory, on its own threads and signals, on clocks. No one call stands in all
// architectures' tables, so those that an architecture lacks are left out.
var calls = strings.Fields(`
	read write writev close epoll_create1 epoll_ctl epoll_wait epoll_pwait epoll_pwait2 eventfd2
	munmap mremap madvise mincore brk membarrier
	exit exit_group futex sched_yield sched_getaffinity set_robust_list rseq gettid getpid
	rt_sigaction rt_sigprocmask rt_sigreturn rt_sigtimedwait sigaltstack restart_syscall
	nanosleep clock_nanosleep clock_gettime clock_getres gettimeofday time getrandom`)

// The flags with which a thread is made, and nothing else is.
const (
	threadOfGo   = unix.CLONE_VM | unix.CLONE_FS | unix.CLONE_FILES | unix.CLONE_SIGHAND | unix.CLONE_SYSVSEM | unix.CLONE_THREAD
	threadOfGNU  = threadOfGo | unix.CLONE_SETTLS | unix.CLONE_PARENT_SETTID | unix.CLONE_CHILD_CLEARTID
	threadOfMusl = threadOfGNU | unix.CLONE_DETACHED
)

func callPolicy() (seccomp.Policy, error) {
	a, err := arch.GetInfo("")
	if err != nil {
		return seccomp.Policy{}, err
	}
	allow := seccomp.SyscallGroup{Action: seccomp.ActionAllow}
	for _, name := range calls {
		if _, ok := a.SyscallNames[name]; ok {
			allow.Names = append(allow.Names, name)
		}
	}
	if len(allow.Names) < len(calls)/2 {
		return seccomp.Policy{}, errors.New("cannot confine the worker: the names of system calls are not known")
	}
	when := func(name string, argument uint32, op seccomp.Operation, value uint64) {
		allow.NamesWithCondtions = append(allow.NamesWithCondtions, seccomp.NameWithConditions{
			Name: name, Conditions: seccomp.ArgumentConditions{{Argument: argument, Operation: op, Value: value}},
		})
	}
	when("mmap", 2, seccomp.BitsNotSet, unix.PROT_EXEC)
	when("mprotect", 2, seccomp.BitsNotSet, unix.PROT_EXEC)
	when("tgkill", 0, seccomp.Equal, uint64(unix.Getpid())) // Go stops its own threads so
	when("prctl", 0, seccomp.Equal, unix.PR_SET_VMA)        // Go gives its memory names
	for _, flags := range []uint64{threadOfGo, threadOfGo | unix.CLONE_SETTLS, threadOfGNU, threadOfMusl} {
		when("clone", 0, seccomp.Equal, flags)
	}
	return seccomp.Policy{
		DefaultAction: seccomp.ActionErrno, // EPERM
		Syscalls: []seccomp.SyscallGroup{
			allow,
			// A C library then falls back to clone, whose flags a filter can see.
			{Action: seccomp.ActionErrno | seccomp.Action(unix.ENOSYS), Names: []string{"clone3"}},
		},
	}, nil
}
