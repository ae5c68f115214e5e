package chemical

// part is what a statement speaks of.
type part uint8

const (
	burns         part = iota // gases, aerosols, liquids and solids that burn
	feedsFire                 // oxidizers
	meetsWater                // gives off gas in water
	meetsAir                  // catches fire by itself
	underGas                  // gas under pressure, in a bottle
	inCan                     // a can under pressure, which bursts in heat
	eatsMetal                 // corrosive to metals
	swallowed                 // acute, by the mouth
	lungs                     // swallowed, and then in the lungs
	onSkin                    // acute, through the skin
	burnsSkin                 // corrosive to skin and eyes
	skinItch                  // irritates the skin
	skinAllergy               // sensitises the skin
	eyes                      // serious damage
	eyesSting                 // irritation
	breathed                  // acute, by breathing
	breathAllergy             // sensitises the lungs
	airways                   // irritates the airways, makes drowsy
	later                     // what shows late: cancer, unborn children, organs
	water                     // water life
	ozone
	said // nothing to be done about it
)

// statements is the closed set, in the order of the codes. Code, text and word
// were seen: CLP annex I, tables 2.3.1 and 2.6.2, a public list of H200 to H224
// with signal words, and a public dump of the GHS table; the dump's slips are
// corrected and stand in the test. From memory are: the second half of H260,
// the words of H228 below, and "May cause" of H373. The two categories of H221 are
// in CLP table 2.2.
//
// A code may stand for two categories (see twofold): the graver one is taken, as
// the code alone does not say which it is, and the label's working says so.
var statements = []Statement{
	{"H220", "Extremely flammable gas", Danger, Flame, burns},
	{"H221", "Flammable gas", Danger, Flame, burns},
	{"H222", "Extremely flammable aerosol", Danger, Flame, burns},
	{"H223", "Flammable aerosol", Warning, Flame, burns},
	{"H224", "Extremely flammable liquid and vapour", Danger, Flame, burns},
	{"H225", "Highly flammable liquid and vapour", Danger, Flame, burns},
	{"H226", "Flammable liquid and vapour", Warning, Flame, burns},
	{"H228", "Flammable solid", Danger, Flame, burns},
	{"H229", "Pressurised container: May burst if heated", Warning, NoSign, inCan},
	{"H250", "Catches fire spontaneously if exposed to air", Danger, Flame, meetsAir},
	{"H251", "Self-heating; may catch fire", Danger, Flame, meetsAir},
	{"H252", "Self-heating in large quantities; may catch fire", Warning, Flame, meetsAir},
	{"H260", "In contact with water releases flammable gases which may ignite spontaneously", Danger, Flame, meetsWater},
	{"H261", "In contact with water releases flammable gases", Danger, Flame, meetsWater},
	{"H270", "May cause or intensify fire; oxidiser", Danger, FlameOverCircle, feedsFire},
	{"H271", "May cause fire or explosion; strong oxidiser", Danger, FlameOverCircle, feedsFire},
	{"H272", "May intensify fire; oxidiser", Danger, FlameOverCircle, feedsFire},
	{"H280", "Contains gas under pressure; may explode if heated", Warning, GasCylinder, underGas},
	{"H281", "Contains refrigerated gas; may cause cryogenic burns or injury", Warning, GasCylinder, underGas},
	{"H290", "May be corrosive to metals", Warning, Corrosion, eatsMetal},
	{"H300", "Fatal if swallowed", Danger, Skull, swallowed},
	{"H301", "Toxic if swallowed", Danger, Skull, swallowed},
	{"H302", "Harmful if swallowed", Warning, ExclamationMark, swallowed},
	{"H304", "May be fatal if swallowed and enters airways", Danger, HealthHazard, lungs},
	{"H310", "Fatal in contact with skin", Danger, Skull, onSkin},
	{"H311", "Toxic in contact with skin", Danger, Skull, onSkin},
	{"H312", "Harmful in contact with skin", Warning, ExclamationMark, onSkin},
	{"H314", "Causes severe skin burns and eye damage", Danger, Corrosion, burnsSkin},
	{"H315", "Causes skin irritation", Warning, ExclamationMark, skinItch},
	{"H317", "May cause an allergic skin reaction", Warning, ExclamationMark, skinAllergy},
	{"H318", "Causes serious eye damage", Danger, Corrosion, eyes},
	{"H319", "Causes serious eye irritation", Warning, ExclamationMark, eyesSting},
	{"H330", "Fatal if inhaled", Danger, Skull, breathed},
	{"H331", "Toxic if inhaled", Danger, Skull, breathed},
	{"H332", "Harmful if inhaled", Warning, ExclamationMark, breathed},
	{"H334", "May cause allergy or asthma symptoms or breathing difficulties if inhaled", Danger, HealthHazard, breathAllergy},
	{"H335", "May cause respiratory irritation", Warning, ExclamationMark, airways},
	{"H336", "May cause drowsiness or dizziness", Warning, ExclamationMark, airways},
	{"H340", "May cause genetic defects", Danger, HealthHazard, later},
	{"H341", "Suspected of causing genetic defects", Warning, HealthHazard, later},
	{"H350", "May cause cancer", Danger, HealthHazard, later},
	{"H351", "Suspected of causing cancer", Warning, HealthHazard, later},
	{"H360", "May damage fertility or the unborn child", Danger, HealthHazard, later},
	{"H361", "Suspected of damaging fertility or the unborn child", Warning, HealthHazard, later},
	{"H370", "Causes damage to organs", Danger, HealthHazard, later},
	{"H371", "May cause damage to organs", Warning, HealthHazard, later},
	{"H372", "Causes damage to organs through prolonged or repeated exposure", Danger, HealthHazard, later},
	{"H373", "May cause damage to organs through prolonged or repeated exposure", Warning, HealthHazard, later},
	{"H400", "Very toxic to aquatic life", Warning, Environment, water},
	{"H410", "Very toxic to aquatic life with long lasting effects", Warning, Environment, water},
	{"H411", "Toxic to aquatic life with long lasting effects", NoWord, Environment, water},
	{"H412", "Harmful to aquatic life with long lasting effects", NoWord, NoSign, water},
	{"H413", "May cause long lasting harmful effects to aquatic life", NoWord, NoSign, water},
	{"H420", "Harms public health and the environment by destroying ozone in the upper atmosphere", Warning, ExclamationMark, ozone},
}

// category is one that a code stands for.
type category struct {
	Number string
	Word   Word
	Sign   Sign
}

// twofold are the two categories that a code may stand for, the graver first.
// Source: CLP table 2.2 for H221; tables 2.7, 2.12 and 2.14 for the others, from
// memory.
var twofold = map[string][2]category{
	"H221": {{"1B", Danger, Flame}, {"2", Warning, NoSign}},
	"H228": {{"1", Danger, Flame}, {"2", Warning, Flame}},
	"H261": {{"2", Danger, Flame}, {"3", Warning, Flame}},
	"H272": {{"2", Danger, FlameOverCircle}, {"3", Warning, FlameOverCircle}},
}
