// Go specification, "Method declarations": unit types that convert into each other.

package main

import "fmt"

type Celsius float64
type Fahrenheit float64
type Kelvin float64

func (c Celsius) F() Fahrenheit { return Fahrenheit(c*9/5 + 32) }
func (c Celsius) K() Kelvin     { return Kelvin(c + 273.15) }
func (f Fahrenheit) C() Celsius { return Celsius((f - 32) * 5 / 9) }

func (c Celsius) String() string    { return fmt.Sprintf("%.2f°C", float64(c)) }
func (f Fahrenheit) String() string { return fmt.Sprintf("%.2f°F", float64(f)) }
func (k Kelvin) String() string     { return fmt.Sprintf("%.2fK", float64(k)) }

type Probe struct {
	at    string
	reads []Celsius
}

func (p Probe) Mean() Celsius {
	var sum Celsius
	for _, r := range p.reads {
		sum += r
	}
	return sum / Celsius(len(p.reads))
}

func main() {
	for _, c := range []Celsius{-40, 0, 20, 78.15} {
		fmt.Println(c, c.F(), c.K(), c.F().C() == c)
	}
	p := Probe{"neck", []Celsius{78.2, 79, 81.5}}
	fmt.Println(p, p.Mean(), p.Mean().F())
	fmt.Printf("%v %.1f %T %+v\n", p.Mean(), float64(p.Mean()), p.Mean(), p)
}
