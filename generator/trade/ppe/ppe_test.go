package ppe

import "testing"

// Names of signs: ISO 7010, as listed in a public graphics package. Which gear
// goes under which sign: common practice, no source.
func TestSign(t *testing.T) {
	for name, want := range map[string]string{
		"1000 V gloves":           "M009", // Wear protective gloves
		"face shield":             "M013", // Wear a face shield
		"ear defenders":           "M003", // Wear ear protection
		"safety glasses":          "M004", // Wear eye protection
		"acid apron":              "M026", // Use protective apron
		"gear bag":                "M001", // "ear" inside a word is not the ear
		"guantes de nitrilo":      "M009",
		"safety boots, steel toe": "M008",
		"HV set (gloves)":         "M009",
		"HV set (long)gloves":     "M009",
		"long,gloves":             "M009",
	} {
		if got := Sign(name); got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
}
