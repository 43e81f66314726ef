package main

import (
	"errors"
	"fmt"
	"os"

	"swanneck/kernel/kernelspec"
)

// place is where front ends look for kernels.
type place struct {
	User   bool   `xor:"place" help:"For this user; this is the usual case."`
	System bool   `xor:"place" help:"For everyone at this machine."`
	Prefix string `xor:"place" placeholder:"DIR" help:"Below a folder, as that of a virtual environment."`
	DryRun bool   `help:"Say what would be done, and do nothing."`
}

func (p *place) folder() (string, error) {
	switch {
	case p.System:
		return kernelspec.System(), nil
	case p.Prefix != "":
		return kernelspec.Below(p.Prefix)
	}
	return kernelspec.User()
}

type installCommand struct{ place }

// Run registers the kernel with notebook front ends.
func (c *installCommand) Run() error {
	dir, err := c.folder()
	if err != nil {
		return withStatus(exitUsage, err)
	}
	exe, err := os.Executable()
	if err != nil {
		return fmt.Errorf("this program cannot find itself: %w", err)
	}
	files, err := kernelspec.Files(exe)
	if err != nil {
		return err
	}
	if c.DryRun {
		_, err = fmt.Printf("would write to %s:\n", dir)
		for _, f := range files {
			_, e := fmt.Printf("  %s, %d bytes\n", f.Name, len(f.Data))
			err = errors.Join(err, e)
		}
		return err
	}
	if err := kernelspec.Install(dir, files); err != nil {
		return err
	}
	_, err = fmt.Printf("installed in %s; notebook front ends offer it as %s from their next start\n", dir, kernelspec.Name)
	return err
}

type uninstallCommand struct{ place }

// Run takes the kernel back.
func (c *uninstallCommand) Run() error {
	dir, err := c.folder()
	if err != nil {
		return withStatus(exitUsage, err)
	}
	found, err := kernelspec.Installed(dir)
	if err != nil {
		return err
	}
	switch {
	case !found:
		_, err = fmt.Printf("nothing is installed in %s\n", dir)
	case c.DryRun:
		_, err = fmt.Printf("would remove %s\n", dir)
	default:
		if err := kernelspec.Uninstall(dir); err != nil {
			return err
		}
		_, err = fmt.Printf("removed %s\n", dir)
	}
	return err
}
