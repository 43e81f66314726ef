package engine_test

import (
	"errors"
	"fmt"
	"net"
	"os"
	"os/signal"
	"strconv"
	"syscall"
	"time"
	"unsafe"

	"golang.org/x/sys/unix"
)

// parent is asked for before anything is confined.
var parent = os.Getppid()

// try is compiled code that does what no cell can name. It stands for a cell that has broken Go's memory safety and
// runs code of its own.
type try struct {
	name string
	// do reports how it was held back; nil means that it got out. target is what the test has laid out for it.
	do func(target string) error
	// anyone says that every user of an ordinary system can do it, so that it must succeed in a process that is not
	// confined: otherwise it proves nothing.
	anyone bool
	// landlock says from which version on Landlock alone holds it back; 0 is never.
	landlock int
}

var tries = []try{
	{"read a file", func(p string) error { _, err := os.ReadFile(p + "/file"); return err }, true, 1},
	{"read /etc/passwd", func(string) error { _, err := os.ReadFile("/etc/passwd"); return err }, true, 1},
	{"list a folder", func(p string) error { _, err := os.ReadDir(p); return err }, true, 1},
	{"write into a file", func(p string) error {
		f, err := os.OpenFile(p+"/file", os.O_WRONLY|os.O_APPEND, 0)
		if err != nil {
			return err
		}
		_, err = f.WriteString("more")
		return errors.Join(err, f.Close())
	}, true, 1},
	{"make a file", func(p string) error { return os.WriteFile(p+"/made", nil, 0o600) }, true, 1},
	{"make a folder", func(p string) error { return os.Mkdir(p+"/folder", 0o700) }, true, 1},
	{"make a symbolic link", func(p string) error { return os.Symlink("/etc", p+"/symlink") }, true, 1},
	{"make a hard link", func(p string) error { return os.Link(p+"/other", p+"/hardlink") }, true, 1},
	{"rename a file", func(p string) error { return os.Rename(p+"/other", p+"/renamed") }, true, 1},
	{"cut a file", func(p string) error { return os.Truncate(p+"/file", 1) }, true, 3},
	{"remove a file", func(p string) error { return os.Remove(p + "/removable") }, true, 1},
	{"change a file's mode", func(p string) error { return os.Chmod(p+"/file", 0o777) }, true, 0},
	{"change a file's owner", func(p string) error { return os.Chown(p+"/file", os.Getuid(), -1) }, true, 0},
	{"connect to an abstract socket", func(p string) error {
		c, err := net.Dial("unix", "@"+p)
		if err != nil {
			return err
		}
		return c.Close()
	}, true, 6},
	{"connect to loopback", func(p string) error {
		port, err := os.Readlink(p + "/port") // a link is no file: Landlock lets it be read
		if err != nil {
			port = "9"
		}
		c, err := net.DialTimeout("tcp4", "127.0.0.1:"+port, time.Second)
		if err != nil {
			return err
		}
		return c.Close()
	}, true, 4},
	{"listen on loopback", func(string) error {
		fd, err := unix.Socket(unix.AF_INET, unix.SOCK_STREAM|unix.SOCK_CLOEXEC, 0)
		if err != nil {
			return err
		}
		defer unix.Close(fd)
		return unix.Bind(fd, &unix.SockaddrInet4{Addr: [4]byte{127, 0, 0, 1}, Port: 0})
	}, true, 4},
	{"send a datagram", func(string) error {
		c, err := net.Dial("udp4", "127.0.0.1:9")
		if err != nil {
			return err
		}
		_, err = c.Write([]byte("x"))
		return errors.Join(err, c.Close())
	}, true, 0},
	{"open a socket in the file system", socket(unix.AF_UNIX, unix.SOCK_STREAM), true, 0},
	{"open a raw socket", socket(unix.AF_INET, unix.SOCK_RAW), false, 0},
	{"open a socket to the kernel", socket(unix.AF_NETLINK, unix.SOCK_RAW), true, 0},
	{"start a program", func(string) error {
		pid, err := syscall.ForkExec("/bin/sh", []string{"sh", "-c", "exit 0"}, nil)
		if err != nil {
			return err
		}
		_, err = unix.Wait4(pid, nil, 0, nil)
		return err
	}, true, 1},
	{"fork", func(string) error {
		pid, _, errno := syscall.RawSyscall6(unix.SYS_CLONE, uintptr(unix.SIGCHLD), 0, 0, 0, 0, 0)
		if errno != 0 {
			return errno
		}
		if pid == 0 {
			for {
				_, _, _ = syscall.RawSyscall(unix.SYS_EXIT_GROUP, 0, 0, 0)
			}
		}
		_, err := unix.Wait4(int(pid), nil, 0, nil)
		return err
	}, true, 0},
	{"fork by the newest call", raw(unix.SYS_CLONE3, 0, 0), false, 0},
	{"signal to the parent", func(string) error { return unix.Kill(parent, unix.SIGURG) }, true, 6},
	{"signal to a thread of the parent", func(string) error { return unix.Tgkill(parent, parent, unix.SIGURG) }, true, 6},
	{"trace the parent", func(string) error {
		const seize = 0x4206 // unlike attaching, this does not halt it
		return errnoOf(syscall.Syscall6(unix.SYS_PTRACE, seize, uintptr(parent), 0, 0, 0, 0))
	}, false, 1},
	{"read the parent's memory by a call", func(string) error {
		var word [8]byte
		here := []unix.Iovec{{Base: &word[0], Len: 8}}
		there := []unix.RemoteIovec{{Base: 0x400000, Len: 8}}
		_, err := unix.ProcessVMReadv(parent, here, there, 0)
		return err
	}, false, 1},
	{"read the parent's memory as a file", func(string) error {
		f, err := os.Open("/proc/" + strconv.Itoa(parent) + "/mem")
		if err != nil {
			return err
		}
		return f.Close()
	}, false, 1},
	{"lower the parent's limits", func(string) error {
		return unix.Prlimit(parent, unix.RLIMIT_CORE, &unix.Rlimit{}, nil)
	}, false, 0},
	{"mount", func(p string) error {
		if err := unix.Mount("none", p, "tmpfs", 0, ""); err != nil {
			return err
		}
		return unix.Unmount(p, 0)
	}, false, 1},
	{"a name space of its own", raw(unix.SYS_UNSHARE, unix.CLONE_FILES, 0), false, 0},
	{"a file in memory", func(string) error {
		fd, err := unix.MemfdCreate("x", unix.MFD_CLOEXEC)
		if err != nil {
			return err
		}
		return unix.Close(fd)
	}, true, 0},
	{"memory that can be run", func(string) error {
		b, err := unix.Mmap(-1, 0, 4096, unix.PROT_READ|unix.PROT_WRITE|unix.PROT_EXEC, unix.MAP_PRIVATE|unix.MAP_ANON)
		if err != nil {
			return err
		}
		return unix.Munmap(b)
	}, true, 0},
	{"a program in the kernel", raw(unix.SYS_BPF, 0, 0), false, 0},
	{"calls by a ring", raw(unix.SYS_IO_URING_SETUP, 0, 0), false, 0},
	{"page faults of its own", raw(unix.SYS_USERFAULTFD, 1, 0), false, 0},
	{"the kernel's keys", raw(unix.SYS_KEYCTL, 0, 0), false, 0},
	{"another personality", raw(unix.SYS_PERSONALITY, 0xffffffff, 0), true, 0},
	{"another place in the file system", func(string) error { return unix.Chdir("/") }, true, 0},
	{"shared memory", func(string) error {
		id, err := unix.SysvShmGet(unix.IPC_PRIVATE, 4096, unix.IPC_CREAT|0o600)
		if err != nil {
			return err
		}
		_, err = unix.SysvShmCtl(id, unix.IPC_RMID, nil)
		return err
	}, true, 0},
}

func socket(family, kind int) func(string) error {
	return func(string) error {
		fd, err := unix.Socket(family, kind|unix.SOCK_CLOEXEC, 0)
		if err != nil {
			return err
		}
		return unix.Close(fd)
	}
}

func raw(number, a, b uintptr) func(string) error {
	return func(string) error { return errnoOf(syscall.Syscall(number, a, b, 0)) }
}

func errnoOf(_, _ uintptr, e syscall.Errno) error {
	if e != 0 {
		return e
	}
	return nil
}

// limitTries are held back by the limits alone.
var limitTries = []try{
	{name: "fill the disk", do: func(p string) error {
		signal.Ignore(unix.SIGXFSZ) // or the system ends the process
		f, err := os.OpenFile(p+"/file", os.O_WRONLY|os.O_TRUNC, 0)
		if err != nil {
			return err
		}
		_, err = f.Write(make([]byte, 1<<16))
		return errors.Join(err, f.Close())
	}},
	{name: "use up the open files", do: func(string) error {
		for range 200 {
			if _, err := unix.Dup(1); err != nil {
				return err
			}
		}
		return nil
	}},
	{name: "raise its own limits", do: func(string) error {
		return unix.Setrlimit(unix.RLIMIT_FSIZE, &unix.Rlimit{Cur: 1 << 20, Max: 1 << 20})
	}},
	{name: "allocate 10 GiB", do: func(string) error {
		b, err := unix.Mmap(-1, 0, 10<<30, unix.PROT_READ|unix.PROT_WRITE, unix.MAP_PRIVATE|unix.MAP_ANON)
		if err != nil {
			return err
		}
		return unix.Munmap(b)
	}},
}

// oldCall makes a system call the way 32-bit programs do, where the filter's numbers mean something else: a number of
// the x32 table on amd64. It is refused as unknown.
func oldCall() error {
	const x32 = 0x40000000
	var st unix.Utsname
	return errnoOf(syscall.Syscall(x32|unix.SYS_UNAME, uintptr(unsafe.Pointer(&st)), 0, 0))
}

// attempt makes the try of a name and says how it ended.
func attempt(name, target string) string {
	switch name {
	case "pid":
		return strconv.Itoa(os.Getpid())
	case "old calls":
		return said(oldCall())
	case "another program in place of this":
		return said(unix.Exec("/bin/true", []string{"true"}, nil))
	}
	for _, t := range append(tries, limitTries...) {
		if t.name == name {
			return said(t.do(target))
		}
	}
	panic("no try named " + name)
}

const out = "it got out"

func said(err error) string {
	var errno syscall.Errno
	switch {
	case err == nil:
		return out
	case errors.As(err, &errno):
		return fmt.Sprintf("%s: %s", unix.ErrnoName(errno), err)
	default:
		return err.Error()
	}
}
