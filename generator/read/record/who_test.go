package record

import (
	"strings"
	"testing"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// "A job's worker is looked up by id or name, in any case; one not known is told as
// unknown": several are parted as they are written in the languages of the program,
// a name that is one person's as a whole is not, and one that two have is neither's.
func TestWorkers(t *testing.T) {
	person := func(id, name string) *model.Person {
		return &model.Person{Entry: model.Entry{ID: id}, Name: name}
	}
	m := &model.Manual{People: []*model.Person{person("t-01", "Ana Sol"), person("t-02", "Bert"), person("t-03", "J.K."), person("t-04", "J.K."), person("t-05", "Rosa y Paz"), person("t-06", "")}}
	for text, want := range map[string]string{
		"T-01": "t-01", "ana sol": "t-01", "Ana Sol, Bert": "t-01 t-02", "Ana Sol and bert": "t-01 t-02", "Ana Sol y Bert": "t-01 t-02",
		"Bert e Ana Sol": "t-02 t-01", "Bert und Ana Sol": "t-02 t-01", "Bert & t-01": "t-02 t-01", "Rosa y Paz": "t-05",
		"J.K.": "2 of J.K.", "Bert, J.K.": "t-02 2 of J.K.", "Carl": "nobody of Carl", "": "", " , ": "",
	} {
		var got []string
		for _, w := range Workers(m, &model.Job{Worker: text}) {
			switch {
			case w.To != nil:
				got = append(got, w.To.ID)
			case len(w.Alike) == 2:
				got = append(got, "2 of "+w.Text)
			default:
				got = append(got, "nobody of "+w.Text)
			}
		}
		if said := strings.Join(got, " "); said != want {
			t.Errorf("%q is %q, want %q", text, said, want)
		}
	}
	if w := Named(m, ""); w.To != nil || w.Alike != nil {
		t.Errorf("a field without a name is %+v", w)
	}
}

// Who did a job is whom it names and who took it over or handed it on, each once.
func TestDoers(t *testing.T) {
	m := &model.Manual{People: []*model.Person{{Entry: model.Entry{ID: "t-01"}, Name: "Ana"}}}
	j := &model.Job{Worker: "ana", HandOvers: []model.JobHand{{From: " Ana ", To: "Carl"}, {From: "carl", To: "T-01"}, {From: "Carl", To: ""}}}
	var got []string
	for _, w := range Doers(m, j) {
		got = append(got, w.Text)
	}
	if said := strings.Join(got, " "); said != "ana Carl" {
		t.Error(said)
	}
}

// What a hand has changed in a record is told where it stands, with what was there.
func TestWhatIsWrongInARecordIsTold(t *testing.T) {
	for _, c := range []struct{ was, is, code, at, mend string }{
		{`"worker": "A.V.",`, ``, "missing-field", "{", "put the file back"},
		{`"worker": "A.V.",`, `"workr": "A.V.", "worker": "A.V.",`, "unknown-field", `"workr"`, "did you mean worker?"},
		{`"worker": "A.V.",`, `"weather": "dry", "worker": "A.V.",`, "unknown-field", `"weather"`, ""},
		{`"worker": "A.V.",`, `"serial": "7", "worker": "A.V.",`, "unknown-field", `"serial"`, ""}, // known, and in another place
		{`"met": false`, `"met": "no"`, "wrong-type", `"no"`, "put the file back"},
		{`"saved": "2026-05-04T00:30:00.000+02:00"`, `"saved": "2026-05-04 half past"`, "wrong-type", `"2026-05-04 half past"`, "put the file back"},
		{`"back": 30`, `"back": 99999999999999999999`, "wrong-type", `99999999999999999999`, ""},
	} {
		text := strings.Replace(whole(t), c.was, c.is, 1)
		if text == whole(t) {
			t.Fatalf("%s is not in the record", c.was)
		}
		j, found := NewReader().Read(position.NewFile("records/x.json", text))
		if j != nil || len(found) != 1 || found[0].Code != c.code || found[0].At.Text() != c.at || !strings.Contains(found[0].Mend, c.mend) || c.mend == "" && strings.Contains(found[0].Mend, "did you mean") {
			t.Errorf("%s: %v", c.is, found)
		}
		if len(found) == 1 {
			t.Log(found[0].Message, found[0].Mend)
		}
	}
}
