package write

import (
	"os"
	"reflect"
	"regexp"
	"testing"

	"baybinder/generator/language/words"
)

// The script says every word of the table and no other; each refusal and each
// group of choices has its word.
func TestScriptAndTableAgree(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("write.js")
	if err != nil {
		t.Fatal(err)
	}
	wanted := map[string]bool{"Lang": true, "FileChanged": true, "NotSaved": true}
	for _, m := range regexp.MustCompile(`\bw\.([A-Z]\w+)|why: "(\w+)"`).FindAllStringSubmatch(string(text), -1) {
		wanted[m[1]+m[2]] = true
	}
	for _, why := range []refusal{noStep, noWords, tooLong, noPlace, notEmpty, cannotNow, noPage} {
		wanted[why.Error()] = true
	}
	for _, group := range []string{"ComesOff", "InTheWay", "MakesSafe", "StopsHere", "DueNow", "StillOpen", "OtherWork", "NotYet", "Cautions", "Stops", "Tools"} {
		wanted[group] = true
	}
	delete(wanted, "RefitLead") // the language's own speech
	delete(wanted, "Often")
	table := reflect.TypeFor[words.Write]()
	for i := range table.NumField() {
		if name := table.Field(i).Name; !wanted[name] {
			t.Errorf("nothing says %s", name)
		}
		delete(wanted, table.Field(i).Name)
	}
	for name := range wanted {
		t.Errorf("no table has %s", name)
	}
}
