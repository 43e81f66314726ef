// Go specification, "Arithmetic operators": interest in integer cents, month by month.

package main

import "fmt"

type Cents int64

func (c Cents) String() string { return fmt.Sprintf("%d.%02d", int64(c)/100, int64(c)%100) }

type loan struct {
	left    Cents
	rateBP  int64 // basis points a year
	payment Cents
}

type payment struct {
	month               int
	interest, principal Cents
	left                Cents
}

func (l loan) schedule() (out []payment) {
	for m := 1; l.left > 0 && m < 100; m++ {
		interest := Cents((int64(l.left)*l.rateBP + 60000) / 120000)
		pay := min(l.payment, l.left+interest)
		p := pay - interest
		l.left -= p
		out = append(out, payment{m, interest, p, l.left})
	}
	return
}

func main() {
	l := loan{120000, 625, 25000}
	var paid, interest Cents
	for _, p := range l.schedule() {
		fmt.Println(p)
		paid += p.interest + p.principal
		interest += p.interest
	}
	fmt.Println(l.left, paid, interest, paid-interest == l.left)
	fmt.Printf("%v %d %T\n", interest, interest, interest)
}
