// Package louche reckons when a spirit with essential oil in it clouds: how much oil a strength holds clear, at what
// temperature a bottle turns hazy, where on the way from the bottle to the glass the drink clouds and how strongly, and at
// what strength it must be bottled to stay clear.
//
// The model is the log-linear one of cosolvency: the decimal logarithm of an oil's solubility rises straight with the
// share of ethanol. It is good to a factor of about two up to 60 % vol, and an order of magnitude from there to 90. How it changes
// with the temperature is not published for spirit at all. So a house measures: millilitres of water dripped into 20 mL
// until it stays cloudy, bottles in the cold that stay clear or not; Calibrate takes them, and they come before every
// default. Several oils together cloud where the sum of each one's share of its own solubility passes one.
//
// Units: g/L of drink at 20 °C, mL, °C, per cent by volume at 20 °C. In the formulas f is the strength in % vol at 20 °C over
// 100, the oil counted in neither ethanol nor water. Main source: Yalkowsky, Solubility and Solubilization in Aqueous Media
// (1999), and the papers named with the formulas. Crystals, wax and hard water are no oil haze: WhichHaze tells them apart by
// questions.
package louche
