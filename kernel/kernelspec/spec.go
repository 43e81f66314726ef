package kernelspec

import (
	_ "embed"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
)

// Name is the name of the kernel's folder, and how front ends show the kernel.
const Name = "swanneck"

//go:embed logo-svg.svg
var logoSVG []byte

//go:embed logo-32x32.png
var logo32 []byte

//go:embed logo-64x64.png
var logo64 []byte

// File is a file of the kernel's folder.
type File struct {
	Name string
	Data []byte
}

// Files returns the files of the kernel's folder; program is the absolute path of the binary.
func Files(program string) ([]File, error) {
	if !filepath.IsAbs(program) {
		return nil, fmt.Errorf("kernelspec.Files: program %q; want an absolute path", program)
	}
	spec, err := json.MarshalIndent(map[string]any{
		"argv":           []string{program, "kernel", "--connection", "{connection_file}"},
		"display_name":   Name,
		"language":       "go",
		"interrupt_mode": "message",
		"metadata":       map[string]any{"debugger": false},
	}, "", "  ")
	if err != nil {
		return nil, fmt.Errorf("kernelspec.Files: %w", err)
	}
	return []File{
		{"kernel.json", append(spec, '\n')}, {"logo-32x32.png", logo32}, {"logo-64x64.png", logo64}, {"logo-svg.svg", logoSVG},
	}, nil
}

// User returns the kernel's folder for one user.
func User() (string, error) {
	if dir := os.Getenv("JUPYTER_DATA_DIR"); dir != "" {
		return filepath.Join(dir, "kernels", Name), nil
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "", fmt.Errorf("kernelspec.User: %w", err)
	}
	switch runtime.GOOS {
	case "darwin":
		return filepath.Join(home, "Library", "Jupyter", "kernels", Name), nil
	case "windows":
		base := os.Getenv("APPDATA")
		if base == "" {
			return "", errors.New("kernelspec.User: APPDATA is not set; want the folder of the user's application data")
		}
		return filepath.Join(base, "jupyter", "kernels", Name), nil
	}
	if dir := os.Getenv("XDG_DATA_HOME"); dir != "" {
		return filepath.Join(dir, "jupyter", "kernels", Name), nil
	}
	return filepath.Join(home, ".local", "share", "jupyter", "kernels", Name), nil
}

// System returns the kernel's folder for everyone at the machine.
func System() string {
	if runtime.GOOS == "windows" {
		return filepath.Join(os.Getenv("PROGRAMDATA"), "jupyter", "kernels", Name)
	}
	return filepath.Join("/usr/local/share/jupyter/kernels", Name)
}

// Below returns the kernel's folder below a prefix, as that of a virtual environment.
func Below(prefix string) (string, error) {
	abs, err := filepath.Abs(prefix)
	if err != nil {
		return "", fmt.Errorf("kernelspec.Below: %w", err)
	}
	return filepath.Join(abs, "share", "jupyter", "kernels", Name), nil
}

// Install writes the files. A folder of ours that is there already is replaced.
func Install(dir string, files []File) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("kernelspec.Install: %w", err)
	}
	for _, f := range files {
		if err := writeFile(filepath.Join(dir, f.Name), f.Data); err != nil {
			return fmt.Errorf("kernelspec.Install: %w", err)
		}
	}
	return nil
}

// writeFile writes a file whole or not at all.
func writeFile(name string, data []byte) error {
	t, err := os.CreateTemp(filepath.Dir(name), ".new-*")
	if err != nil {
		return err
	}
	_, err = t.Write(data)
	err = errors.Join(err, t.Chmod(0o644), t.Close())
	if err == nil {
		err = os.Rename(t.Name(), name)
	}
	if err != nil {
		return errors.Join(err, os.Remove(t.Name()))
	}
	return nil
}

// Installed says whether a folder holds a kernel.
func Installed(dir string) (bool, error) {
	_, err := os.Stat(filepath.Join(dir, "kernel.json"))
	if errors.Is(err, fs.ErrNotExist) {
		return false, nil
	}
	return err == nil, err
}

// Uninstall removes the files that Install writes, and the folder if nothing else is in it.
func Uninstall(dir string) error {
	for _, n := range []string{"kernel.json", "logo-32x32.png", "logo-64x64.png", "logo-svg.svg"} {
		if err := os.Remove(filepath.Join(dir, n)); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return fmt.Errorf("kernelspec.Uninstall: %w", err)
		}
	}
	if err := os.Remove(dir); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("kernelspec.Uninstall: something else is in the folder: %w", err)
	}
	return nil
}
