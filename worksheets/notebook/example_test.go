package notebook_test

import (
	"fmt"

	"swanneck/worksheets/notebook"
)

func ExampleNew() {
	n := notebook.New()
	c := notebook.NewCell(notebook.Code, `fmt.Println("two parts")`)
	count := 1
	c.ExecutionCount = &count
	c.Outputs = []notebook.Output{notebook.StreamOutput("stdout", "two parts\n")}
	n.Cells = append(n.Cells, c)
	data, err := n.Bytes()
	if err != nil {
		fmt.Println(err)
		return
	}
	back, err := notebook.Read(data)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(back.Language(), len(back.Cells), back.Cells[0].Outputs[0].Text)
	// Output: go 1 two parts
}

func ExampleRead() {
	_, err := notebook.Read([]byte("{\n \"cells\": [\n"))
	fmt.Println(err)
	// Output: notebook.Read: line 3 (byte 14) breaks off before the JSON is complete; want a whole notebook file
}
