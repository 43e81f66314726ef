package main

import (
	_ "embed"
	"fmt"
)

//go:generate go run ../../internal/notices notices_gen.txt

//go:embed notices_gen.txt
var notices string

type licencesCommand struct{}

func (licencesCommand) Run() error {
	_, err := fmt.Print(notices)
	return err
}
