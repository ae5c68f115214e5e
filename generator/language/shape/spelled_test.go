package shape_test

import (
	"fmt"
	"testing"

	"baybinder/generator/language"
)

// How numbers are written out, from memory.
//
// Known: FROM MEMORY.
func TestNumbersWrittenOutAreRead(t *testing.T) {
	for _, c := range []struct{ tag, text, want string }{
		{"en", "two hundred volts", "[two hundred=200]"},
		{"en", "three hundred and sixty volts", "[three hundred and sixty=360]"},
		{"en", "one hundred ten, forty-eight", "[one hundred ten=110 forty-eight=48]"},
		{"en", "a hundred litres", "[hundred=100]"},
		{"en", "two thousand eight hundred rpm", "[two thousand eight hundred=2800]"},
		{"en", "one thousand and one; ten thousand", "[one thousand and one=1001 ten thousand=10000]"},
		{"en", "twelve hundred", "[twelve hundred=1200]"},
		{"en", "between one hundred and two hundred volts", "[one hundred=100 two hundred=200]"},
		{"en", "between two thousand and three thousand", "[two thousand=2000 three thousand=3000]"},
		{"en", "between fifty-eight and sixty-two", "[fifty-eight=58 sixty-two=62]"},
		{"en", "one hundred and the rest, two and", "[one hundred=100 two=2]"},
		{"en", "two and a half turns, one and a halfway", "[two and a half=2.5 one=1]"},
		{"en", "half an hour, half a litre, one-half", "[half an=0.5 half a=0.5 one=1 half=0.5]"},
		{"en", "a quarter of a litre, three quarters of an hour, a quarter turn", "[quarter of a=0.25 three quarters of an=0.75 quarter=0.25]"},
		{"en", "one and a quarter turns, two and three quarters, half of a litre, the three-quarter mark", "[one and a quarter=1.25 two and three quarters=2.75 half of a=0.5 three-quarter=0.75]"},
		{"en", "one quarter, two half turns", "[one=1 quarter=0.25 two half=1]"},
		{"en", "two point five, a few hundred, several thousand, five", "[five=5]"},
		{"en", "nine\nand ten, eleven", "[nine=9 ten=10 eleven=11]"},
		{"en", "", "[]"},
		{"es", "doscientos treinta voltios", "[doscientos treinta=230]"},
		{"es", "ciento diez, cien, mil, dos mil ochocientos", "[ciento diez=110 cien=100 mil=1000 dos mil ochocientos=2800]"},
		{"es", "dos y medio, media, sesenta y cinco mil", "[dos y medio=2.5 media=0.5 sesenta y cinco mil=65000]"},
		{"es", "mil quinientos cuarenta y cinco", "[mil quinientos cuarenta y cinco=1545]"},
		{"es", "tres cuartos de litro, un cuarto de vuelta, dos y cuarto", "[tres cuartos de=0.75 un=1 cuarto de=0.25 dos y cuarto=2.25]"},
		{"es", "el cuarto tornillo, cuarto, dos medias vueltas", "[dos medias=1]"},
		{"es", "dos coma cinco, varias mil", "[]"},
		{"de", "zweihundertdreißig Volt", "[zweihundertdreißig=230]"},
		{"de", "hundertzehn, einhundertzehn, hundert", "[hundertzehn=110 einhundertzehn=110 hundert=100]"},
		{"de", "zweitausendachthundert und tausend", "[zweitausendachthundert=2800 tausend=1000]"},
		{"de", "Dreitausendfünfhundertzweiundvierzig", "[Dreitausendfünfhundertzweiundvierzig=3542]"},
		{"de", "eineinhalb, anderthalb, zweieinhalb, halbe", "[eineinhalb=1.5 anderthalb=1.5 zweieinhalb=2.5 halbe=0.5]"},
		{"de", "drei viertel Liter, dreiviertel Liter, eine viertel Umdrehung", "[drei viertel=0.75 dreiviertel=0.75 eine=1 viertel=0.25]"},
		{"de", "Dreiviertelstunde, Viertelumdrehung, eineinviertel, zweieinviertel", "[Dreiviertel=0.75 Viertel=0.25 eineinviertel=1.25 zweieinviertel=2.25]"},
		{"de", "zwei und eine halbe, der vierte, ẞviertel", "[zwei und eine halbe=2.5]"},
		{"de", "ein Jahrhundert, hundertprozentig, zwei Hundertstel", "[ein=1 zwei=2]"},
		{"de", "ein paar hundert, zwei Komma fünf", "[]"},
	} {
		var got []string
		numbers := language.Known(c.tag).Numbers
		for _, n := range numbers.Counted(c.text) {
			got = append(got, fmt.Sprintf("%s=%v", c.text[n.Start:n.End], n.Value))
		}
		if said := fmt.Sprint(got); said != c.want {
			t.Errorf("%s: %q: %s, want %s", c.tag, c.text, said, c.want)
		}
	}
}

// What stands behind a unit and adds a part of one.
func TestPartsAddedBehindAUnit(t *testing.T) {
	for _, c := range []struct {
		tag, text string
		at        int
		part      float64
		size      int
	}{
		{"en", "hour and a half", 4, 0.5, 11}, {"en", "hour and a quarter, then", 4, 0.25, 14}, {"en", "hour and a halfway", 4, 0, 0},
		{"en", "hour and a half", 3, 0, 0}, {"en", "hour", 4, 0, 0}, {"en", "hour and", 4, 0, 0},
		{"es", "hora y media.", 4, 0.5, 8}, {"es", "hora y mediodía", 4, 0, 0}, {"es", "hora y medioía", 4, 0, 0},
	} {
		numbers := language.Known(c.tag).Numbers
		if part, size := numbers.PlusBehind(c.text, c.at); part != c.part || size != c.size {
			t.Errorf("%s: %q at %d: %v in %d", c.tag, c.text, c.at, part, size)
		}
	}
}
