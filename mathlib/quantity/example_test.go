package quantity_test

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

func ExampleCelsius() {
	t, err := quantity.Celsius(15)
	fmt.Println(t, err)
	// Output: 15.0 °C <nil>
}

func ExampleFahrenheit() {
	t, _ := quantity.Fahrenheit(60)
	fmt.Println(t)
	// Output: 15.6 °C
}

func ExampleKelvin() {
	_, err := quantity.Kelvin(-3)
	fmt.Println(err)
	// Output: quantity.Kelvin: temperature is -3 K; it must be at least 0 K (absolute zero)
}

func ExampleTemperature_C() {
	t, _ := quantity.Fahrenheit(212)
	fmt.Println(t.C(), quantity.Temperature{}.C())
	// Output: 100 20
}

func ExampleTemperature_F() {
	t, _ := quantity.Celsius(15)
	fmt.Println(t.F())
	// Output: 59
}

func ExampleTemperature_K() {
	fmt.Println(quantity.Temperature{}.K())
	// Output: 293.15
}

func ExampleTemperature_String() {
	fmt.Println(quantity.Temperature{})
	// Output: 20.0 °C
}

func ExampleKPa() {
	p, _ := quantity.KPa(95)
	fmt.Printf("%.0f mmHg\n", p.MmHg())
	// Output: 713 mmHg
}

func ExampleMmHg() {
	p, _ := quantity.MmHg(720)
	fmt.Println(p)
	// Output: 95.99 kPa
}

func ExampleBar() {
	p, _ := quantity.Bar(0.1)
	fmt.Println(p)
	// Output: 10.00 kPa
}

func ExampleAtm() {
	p, _ := quantity.Atm(2)
	fmt.Println(p)
	// Output: 202.65 kPa
}

func ExamplePSI() {
	p, _ := quantity.PSI(14.5)
	fmt.Println(p)
	// Output: 99.97 kPa
}

func ExampleAtAltitude() {
	p, _ := quantity.AtAltitude(1200)
	fmt.Printf("%.1f kPa\n", p.KPa())
	// Output: 87.7 kPa
}

func ExamplePressure_KPa() {
	fmt.Println(quantity.Pressure{}.KPa())
	// Output: 101.325
}

func ExamplePressure_MmHg() {
	fmt.Printf("%.2f\n", quantity.Pressure{}.MmHg())
	// Output: 760.00
}

func ExamplePressure_Bar() {
	fmt.Println(quantity.Pressure{}.Bar())
	// Output: 1.01325
}

func ExamplePressure_Atm() {
	p, _ := quantity.KPa(50.6625)
	fmt.Println(p.Atm())
	// Output: 0.5
}

func ExamplePressure_PSI() {
	fmt.Printf("%.1f\n", quantity.Pressure{}.PSI())
	// Output: 14.7
}

func ExamplePressure_String() {
	fmt.Println(quantity.Pressure{})
	// Output: 101.33 kPa
}

func ExampleUSGallonsToL() {
	fmt.Printf("%.2f L\n", quantity.USGallonsToL(50))
	// Output: 189.27 L
}

func ExampleLToUSGallons() {
	fmt.Printf("%.1f gal\n", quantity.LToUSGallons(600))
	// Output: 158.5 gal
}

func ExampleImperialGallonsToL() {
	fmt.Printf("%.1f L\n", quantity.ImperialGallonsToL(10))
	// Output: 45.5 L
}

func ExampleLToImperialGallons() {
	fmt.Printf("%.1f gal\n", quantity.LToImperialGallons(600))
	// Output: 132.0 gal
}

func ExampleUSFluidOuncesToL() {
	fmt.Printf("%.1f mL\n", quantity.LToML(quantity.USFluidOuncesToL(1.5)))
	// Output: 44.4 mL
}

func ExampleLToUSFluidOunces() {
	fmt.Printf("%.1f fl oz\n", quantity.LToUSFluidOunces(0.75))
	// Output: 25.4 fl oz
}

func ExampleImperialFluidOuncesToL() {
	fmt.Printf("%.1f mL\n", quantity.LToML(quantity.ImperialFluidOuncesToL(1)))
	// Output: 28.4 mL
}

func ExampleLToImperialFluidOunces() {
	fmt.Printf("%.1f fl oz\n", quantity.LToImperialFluidOunces(0.7))
	// Output: 24.6 fl oz
}

func ExampleMLToL() {
	fmt.Println(quantity.MLToL(700))
	// Output: 0.7
}

func ExampleLToML() {
	fmt.Println(quantity.LToML(0.5))
	// Output: 500
}

func ExampleHLToL() {
	fmt.Println(quantity.HLToL(6))
	// Output: 600
}

func ExampleLToHL() {
	fmt.Println(quantity.LToHL(2520))
	// Output: 25.2
}

func ExamplePoundsToKg() {
	fmt.Printf("%.2f kg\n", quantity.PoundsToKg(400))
	// Output: 181.44 kg
}

func ExampleKgToPounds() {
	fmt.Printf("%.1f lb\n", quantity.KgToPounds(100))
	// Output: 220.5 lb
}

func ExampleOuncesToKg() {
	fmt.Printf("%.3f kg\n", quantity.OuncesToKg(8))
	// Output: 0.227 kg
}

func ExampleKgToOunces() {
	fmt.Printf("%.1f oz\n", quantity.KgToOunces(1))
	// Output: 35.3 oz
}

func ExampleGToKg() {
	fmt.Println(quantity.GToKg(250))
	// Output: 0.25
}

func ExampleKgToG() {
	fmt.Println(quantity.KgToG(1.5))
	// Output: 1500
}

func ExampleFigure() {
	fmt.Println(quantity.Figure(0.7), quantity.Figure(43.2), quantity.Figure(2520))
	// Output: 0.700 43.20 2520.0
}

func ExampleCheckRange() {
	fmt.Println(quantity.CheckRange("still.Run", "reflux", -1, 0, math.Inf(1), "", ""))
	// Output: still.Run: reflux is -1; it must be at least 0
}

func ExampleRangeError() {
	err := &quantity.RangeError{Func: "alcoholometry.DensityKgM3", Param: "temperature", Value: 60, Min: -20, Max: 40, Unit: "°C", Source: "OIML R 22 (1975)"}
	fmt.Println(err)
	// Output: alcoholometry.DensityKgM3: temperature is 60 °C; it must be from -20 to 40 °C (OIML R 22 (1975))
}
