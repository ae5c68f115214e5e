package signs

// undrawn are registered signs that no file here draws, by what they warn of:
// in English, from memory, and in our own Spanish.
var undrawn = map[string][2]string{
	"W013": {"Guard dog", "Perro guardián"},
	"W033": {"Barbed wire", "Alambre de espino"},
	"W034": {"Bull", "Toro"},
	"W036": {"Fragile roof", "Tejado frágil"},
	"W037": {"Run over by a vehicle or a machine", "Atropello por un vehículo o una máquina"},
	"W039": {"Falling ice", "Caída de hielo"},
	"W040": {"Roof avalanche", "Avalancha desde el tejado"},
	"W042": {"Arc flash", "Arco eléctrico"},
	"M020": {"Use the pedestrian walkway", "Use el paso de peatones"},
	"M022": {"Use barrier cream", "Use crema protectora"},
	"M023": {"Use the footbridge", "Use la pasarela"},
	"M024": {"Use this walkway", "Use este camino"},
	"M025": {"Protect infants' eyes with opaque eye protection", "Proteja los ojos de los niños con protección opaca"},
	"M027": {"Install a guard", "Instale un resguardo"},
	"M029": {"Sound horn", "Toque la bocina"},
	"M030": {"Use litter bin", "Use la papelera"},
	"P005": {"Not drinking water", "Agua no potable"},
	"P006": {"No access for forklift trucks and other industrial vehicles", "Prohibido el paso a carretillas elevadoras y otros vehículos industriales"},
	"P007": {"No access for people with active implanted cardiac devices", "Prohibido el paso a personas con dispositivos cardíacos implantados activos"},
	"P008": {"No metallic articles or watches", "Prohibidos los objetos metálicos y los relojes"},
	"P012": {"No heavy load", "Prohibidas las cargas pesadas"},
	"P013": {"No activated mobile phones", "Prohibidos los teléfonos móviles encendidos"},
	"P014": {"No access for people with metallic implants", "Prohibido el paso a personas con implantes metálicos"},
	"P017": {"No pushing", "No empujar"},
	"P018": {"No sitting", "No sentarse"},
	"P020": {"Do not use the lift in the event of fire", "No usar el ascensor en caso de incendio"},
	"P021": {"No dogs", "Prohibidos los perros"},
	"P022": {"No eating or drinking", "Prohibido comer y beber"},
	"P023": {"Do not obstruct", "No obstruir"},
	"P024": {"Do not walk or stand here", "No caminar ni permanecer aquí"},
	"P025": {"Do not use this incomplete scaffold", "No usar este andamio incompleto"},
	"P027": {"Do not use this lift for people", "Prohibido el transporte de personas en este montacargas"},
	"P029": {"No photography", "Prohibido hacer fotografías"},
	"P030": {"Do not tie knots in rope", "No hacer nudos en la cuerda"},
	"P034": {"Do not use for grinding wet", "No usar para amolar en húmedo"},
	"P035": {"Do not wear metal-studded footwear", "No usar calzado con clavos metálicos"},
}

// Undrawn is the name of a registered sign that is not drawn here, in a
// language: Spanish, and English in every other; "" where it is not known.
func Undrawn(number, language string) string {
	if language == "es" {
		return undrawn[number][1]
	}
	return undrawn[number][0]
}
