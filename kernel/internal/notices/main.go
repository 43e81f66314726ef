// Command notices collects the licence texts of everything that is built into the program: the modules it depends on,
// Go itself, and the fonts. It writes them to the file named by its argument. Run it by `go generate`.
package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"log"
	"os"
	"os/exec"
	"path/filepath"
	"sort"
	"strings"
)

type module struct {
	Path, Version, Dir string
	Main               bool
}

func main() {
	log.SetFlags(0)
	if len(os.Args) != 2 {
		log.Fatal("notices: want the name of the file to write")
	}
	// The systems differ in what they build in; the notices are of all of them together.
	mods := map[string]module{}
	for _, system := range []string{"linux", "darwin", "windows"} {
		for _, m := range modules(system) {
			mods[m.Path] = m
		}
	}
	var paths []string
	for p := range mods {
		paths = append(paths, p)
	}
	sort.Strings(paths)
	var b bytes.Buffer
	goroot, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		log.Fatal(err)
	}
	fmt.Fprintf(&b, "This program contains the work of others. Their notices follow.\n")
	put(&b, "The Go standard library and runtime", strings.TrimSpace(string(goroot)))
	for _, p := range paths {
		put(&b, p+" "+mods[p].Version, mods[p].Dir)
	}
	if err := os.WriteFile(os.Args[1], b.Bytes(), 0o644); err != nil {
		log.Fatal(err)
	}
}

// modules lists the modules that the command is built from on a system.
func modules(system string) []module {
	cmd := exec.Command("go", "list", "-deps", "-json=Module", ".")
	cmd.Env = append(os.Environ(), "GOOS="+system, "GOARCH=amd64", "CGO_ENABLED=0")
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		log.Fatalf("notices: go list: %v", err)
	}
	var mods []module
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var p struct{ Module *module }
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			return mods
		} else if err != nil {
			log.Fatal(err)
		}
		if p.Module != nil && !p.Module.Main {
			mods = append(mods, *p.Module)
		}
	}
}

// put writes the licence files of a folder. A module without one stops the build.
func put(b *bytes.Buffer, title, dir string) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		log.Fatal(err)
	}
	found := false
	for _, e := range entries {
		name := strings.ToUpper(e.Name())
		if e.IsDir() || !(strings.Contains(name, "LICEN") || strings.HasPrefix(name, "COPYING") || strings.HasPrefix(name, "NOTICE")) {
			continue
		}
		text, err := os.ReadFile(filepath.Join(dir, e.Name()))
		if err != nil {
			log.Fatal(err)
		}
		if !found {
			fmt.Fprintf(b, "\n%s\n%s\n", strings.Repeat("=", 80), title)
		}
		fmt.Fprintf(b, "\n%s\n\n%s\n", e.Name(), strings.TrimSpace(strings.ReplaceAll(string(text), "\r\n", "\n")))
		found = true
	}
	if !found {
		log.Fatalf("notices: %s: no licence file", title)
	}
}
