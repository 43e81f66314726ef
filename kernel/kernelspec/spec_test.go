package kernelspec

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"runtime"
	"testing"
)

func TestInstallAndUninstall(t *testing.T) {
	prefix := t.TempDir()
	dir, err := Below(prefix)
	if err != nil {
		t.Fatal(err)
	}
	if want := filepath.Join(prefix, "share", "jupyter", "kernels", Name); dir != want {
		t.Fatalf("Below = %s; want %s", dir, want)
	}
	program, err := filepath.Abs("a program")
	if err != nil {
		t.Fatal(err)
	}
	files, err := Files(program)
	if err != nil {
		t.Fatal(err)
	}
	for range 2 { // the second time over the first
		if err := Install(dir, files); err != nil {
			t.Fatal(err)
		}
	}
	b, err := os.ReadFile(filepath.Join(dir, "kernel.json"))
	if err != nil {
		t.Fatal(err)
	}
	var spec struct {
		Argv      []string `json:"argv"`
		Display   string   `json:"display_name"`
		Language  string   `json:"language"`
		Interrupt string   `json:"interrupt_mode"`
	}
	if err := json.Unmarshal(b, &spec); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(spec.Argv, []string{program, "kernel", "--connection", "{connection_file}"}) || spec.Display != Name || spec.Language != "go" || spec.Interrupt != "message" {
		t.Errorf("kernel.json: %+v", spec)
	}
	list, err := os.ReadDir(dir)
	if err != nil || len(list) != 4 {
		t.Errorf("%d files, %v; want 4", len(list), err)
	}
	if err := os.WriteFile(filepath.Join(dir, "theirs"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := Uninstall(dir); err == nil {
		t.Error("a folder with somebody else's file in it was removed")
	}
	if found, err := Installed(dir); found || err != nil {
		t.Errorf("Installed = %v, %v after Uninstall", found, err)
	}
	if err := os.Remove(filepath.Join(dir, "theirs")); err != nil {
		t.Fatal(err)
	}
	for range 2 {
		if err := Uninstall(dir); err != nil {
			t.Error(err)
		}
	}
	if _, err := os.Stat(dir); !os.IsNotExist(err) {
		t.Errorf("the folder is still there: %v", err)
	}
}

func TestFilesWantAnAbsolutePath(t *testing.T) {
	if _, err := Files("swanneck"); err == nil {
		t.Error("a relative path was accepted")
	}
}

func TestUserFolder(t *testing.T) {
	t.Setenv("JUPYTER_DATA_DIR", "data")
	if got, err := User(); err != nil || got != filepath.Join("data", "kernels", Name) {
		t.Errorf("User() = %s, %v", got, err)
	}
	if runtime.GOOS != "linux" {
		return
	}
	t.Setenv("JUPYTER_DATA_DIR", "")
	t.Setenv("XDG_DATA_HOME", "")
	t.Setenv("HOME", "/home/somebody")
	if got, err := User(); err != nil || got != "/home/somebody/.local/share/jupyter/kernels/"+Name {
		t.Errorf("User() = %s, %v", got, err)
	}
}

func TestLogos(t *testing.T) {
	for size, data := range map[int][]byte{32: logo32, 64: logo64} {
		img, err := png.Decode(bytes.NewReader(data))
		if err != nil || img.Bounds().Dx() != size || img.Bounds().Dy() != size {
			t.Errorf("logo of %d: %v", size, err)
			continue
		}
		if _, _, _, a := img.At(0, 0).RGBA(); a != 0 {
			t.Errorf("logo of %d: its corner is not transparent", size)
		}
		if _, _, _, a := img.At(size*22/64, size*50/64).RGBA(); a == 0 {
			t.Errorf("logo of %d: the kettle is not there", size)
		}
	}
	for d := xml.NewDecoder(bytes.NewReader(logoSVG)); ; {
		if _, err := d.Token(); err == io.EOF {
			break
		} else if err != nil {
			t.Fatal(err)
		}
	}
}

// The files of the logos are what drawlogo draws.
func TestLogosAreDrawn(t *testing.T) {
	here, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("go", "run", "swanneck/kernel/kernelspec/drawlogo", t.TempDir())
	cmd.Dir = here
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	for name, data := range map[string][]byte{"logo-svg.svg": logoSVG, "logo-32x32.png": logo32, "logo-64x64.png": logo64} {
		got, err := os.ReadFile(filepath.Join(cmd.Args[len(cmd.Args)-1], name))
		if err != nil || !bytes.Equal(got, data) {
			t.Errorf("%s differs from what drawlogo draws: %v", name, err)
		}
	}
}
