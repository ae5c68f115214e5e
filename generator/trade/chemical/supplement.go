package chemical

// supplements are the statements of European law that the GHS does not have: they
// stand beside the others in section 2 of a safety data sheet, without a word or a
// pictogram of their own. Source: CLP annex II, part 1, and annex III, part 3, from
// memory. EUH208 names the substance, which the code alone does not.
var supplements = []Statement{
	{"EUH014", "Reacts violently with water", NoWord, NoSign, meetsWater},
	{"EUH018", "In use may form flammable/explosive vapour-air mixture", NoWord, NoSign, burns},
	{"EUH019", "May form explosive peroxides", NoWord, NoSign, burns},
	{"EUH029", "Contact with water liberates toxic gas", NoWord, NoSign, meetsWater},
	{"EUH031", "Contact with acids liberates toxic gas", NoWord, NoSign, breathed},
	{"EUH032", "Contact with acids liberates very toxic gas", NoWord, NoSign, breathed},
	{"EUH044", "Risk of explosion if heated under confinement", NoWord, NoSign, inCan},
	{"EUH066", "Repeated exposure may cause skin dryness or cracking", NoWord, NoSign, skinItch},
	{"EUH070", "Toxic by eye contact", NoWord, NoSign, eyes},
	{"EUH071", "Corrosive to the respiratory tract", NoWord, NoSign, airways},
	{"EUH202", "Cyanoacrylate. Danger. Bonds skin and eyes in seconds. Keep out of the reach of children", NoWord, NoSign, eyes},
	{"EUH203", "Contains chromium (VI). May produce an allergic reaction", NoWord, NoSign, skinAllergy},
	{"EUH204", "Contains isocyanates. May produce an allergic reaction", NoWord, NoSign, airways},
	{"EUH205", "Contains epoxy constituents. May produce an allergic reaction", NoWord, NoSign, skinAllergy},
	{"EUH206", "Warning! Do not use together with other products. May release dangerous gases (chlorine)", NoWord, NoSign, breathed},
	{"EUH208", "Contains a substance that may produce an allergic reaction", NoWord, NoSign, skinAllergy},
	{"EUH209", "Can become highly flammable in use", NoWord, NoSign, burns},
	{"EUH210", "Safety data sheet available on request", NoWord, NoSign, said},
}
