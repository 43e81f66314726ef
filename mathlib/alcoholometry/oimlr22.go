package alcoholometry

// The general formula for the density of a mixture of ethanol and water, kg/m³:
//
//	ρ(p,t) = A1 + Σ(k=2..12) A_k p^(k-1) + Σ(k=1..6) B_k (t-20)^k + Σ(i=1..5) Σ(k=1..m_i) C_i,k p^k (t-20)^i
//
// with p the mass fraction of ethanol, t the temperature in °C, and m = 11, 10, 9, 4, 2. It holds from -20 to 40 °C
// as long as the mixture is liquid. Its temperature is that of the scale of 1968 (IPTS-68); a thermometer of today
// (ITS-90) shows 0.005 °C less at 20 °C and 0.010 °C less at 40 °C. As in the legal tables, the number on the
// thermometer is put into the formula as it is; that moves the density by less than 0.01 kg/m³.
//
// Source: OIML R 22, International alcoholometric tables (1975), general formula; the same 54 coefficients stand in
// the annex to Council Directive 76/766/EEC.

// r22 holds the coefficients by the power of the mass fraction (first index, 0 to 11) and by the power of t-20 °C
// (second index, 0 to 6): r22[0] is A1, B1 … B6, and r22[k] is A_(k+1), C_1,k … C_5,k. Unit: kg/(m³ °C^i).
var r22 = [12][7]float64{
	{998.20123, -0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11},
	{-192.9769495, 0.1693443461530087, -0.0119301300505701, -0.0006802995733503803, 4.075376675622027e-06, -2.788074354782409e-08},
	{389.1238958, -10.46914743455169, 0.2517399633803461, 0.01876837790289664, -8.76305857347111e-06, 1.345612883493354e-08},
	{-1668.103923, 71.96353469546523, -2.170575700536993, -0.2002561813734156, 6.515031360099368e-06},
	{13522.15441, -704.7478054272792, 13.53034988843029, 1.02299296671922, -1.51578483698721e-06},
	{-88292.78388, 3924.090430035045, -50.29988758547014, -2.895696483903638},
	{306287.4042, -12101.64659068747, 109.635566657757, 4.810060584300675},
	{-613838.1234, 22486.46550400788, -142.2753946421155, -4.672147440794683},
	{747017.2998, -26055.62982188164, 108.043594285623, 2.458043105903461},
	{-547846.1354, 18523.73922069467, -44.14153236817392, -0.5411227621436812},
	{223446.0334, -7420.201433430137, 7.442971530188783},
	{-39032.85426, 1285.617841998974},
}
