package issue

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: SEEN.

// binder is a manual of two revisions, the second of which changed a limit.
type binder struct {
	t    *testing.T
	root string
}

func (b *binder) manual() *model.Manual { return bound(b.t, b.root) }

func (b *binder) account(day string) training.Account {
	m := b.manual()
	return training.NewStandings(m, date(b.t, day)).Account(m.Procedures[0])
}

// found are the codes of what check finds on a day.
func (b *binder) found(day string) []string {
	tree, err := source.Read(b.root)
	if err != nil {
		b.t.Fatal(err)
	}
	m, list := bind.Manual(tree)
	list = append(list, check.Run(&check.Context{Manual: m, Today: date(b.t, day)})...)
	var codes []string
	for _, f := range finding.Sort(list) {
		codes = append(codes, f.Code)
	}
	return codes
}

func (b *binder) text(name string) string {
	data, err := os.ReadFile(filepath.Join(b.root, name))
	if err != nil {
		b.t.Error(err)
	}
	return string(data)
}

func (b *binder) record(day, person string) {
	_, err := training.RecordAll(b.manual(), b.root, []training.Entry{{Folder: b.root, Person: person, Procedure: "lid", Act: "read", Date: date(b.t, day)}})
	if err != nil {
		b.t.Fatal(err)
	}
}

func date(t *testing.T, day string) model.Date {
	t.Helper()
	d, ok := model.ParseDate(day)
	if !ok {
		t.Fatal(day)
	}
	return d
}

func twoRevisions(t *testing.T) *binder {
	t.Helper()
	b := &binder{t, folder(t)}
	put(t, b.root, "readings/people.csv", "person,name,roles,started,plans\nt-01,First,,2026-04-01,start\nt-02,Second,,2026-04-01,start\n")
	put(t, b.root, "readings/plans/start.yaml", "title: Start\nread: [lid]\nwithin: 14 days\n")
	issued(t, b.root, "2026-04-20")
	b.record("2026-04-21", "t-01")
	b.record("2026-04-22", "t-02")
	put(t, b.root, "register/holds.yaml", strings.Replace(holds, "10 min", "12 min", 1))
	issued(t, b.root, "2026-05-04")
	b.record("2026-05-05", "t-01")
	return b
}

func issued(t *testing.T, root, day string) {
	t.Helper()
	if _, err := Run(bound(t, root), nil, order(root, day, "reread")); err != nil {
		t.Fatal(err)
	}
}

// iso9001 is ISO 9001:2015, 7.5.2 and 7.5.3, point by point, as public
// summaries of the standard have them; the clauses' words are not quoted here.
// The standard asks an organisation; what is shown is what the program does of
// it, and the rest is the shop's.
var iso9001 = []struct {
	clause, asks, does string
	shows              func(b *binder) bool
}{
	{"7.5.2 a", "identification and description: title, date, author, number", "each row of revisions.csv",
		func(b *binder) bool {
			r := b.account("2026-05-06").Stood
			return r.Procedure.To.Title == "Lid off" && r.Number == "2" && r.Date.String() == "2026-05-04" && r.Written == "t-04"
		}},
	{"7.5.2 b", "format and media", "plain Markdown that any viewer shows, and pages on which no script is needed",
		func(b *binder) bool { return strings.HasPrefix(b.text("revisions/lid/2.md"), lid) }},
	{"7.5.2 c", "review and approval for suitability and adequacy", "who checked, approved and walked it is a column; writer and only checker the same is told of",
		func(b *binder) bool {
			r := b.account("2026-05-06").Stood
			put(b.t, b.root, "revisions.csv", strings.ReplaceAll(strings.ReplaceAll(b.text("revisions.csv"), "t-07", "t-04"), "foreman", ""))
			return r.Checked == "t-07" && r.Approved == "foreman" && has(b.found("2026-05-06"), "same-person")
		}},
	{"7.5.3.1 a", "available and suitable where and when it is needed", "what is issued is published; a change that was not issued stops the build",
		func(b *binder) bool {
			put(b.t, b.root, "procedures/lid.md", strings.Replace(lid, "Lift", "Slide", 1))
			return has(b.found("2026-05-06"), "changed-since-issue")
		}},
	{"7.5.3.1 b", "adequately protected from loss of integrity", "the words of a revision are proved by its row",
		func(b *binder) bool {
			before := b.account("2026-04-22").Words
			put(b.t, b.root, "revisions/lid/1.md", strings.Replace(b.text("revisions/lid/1.md"), "Lift", "Slide", 1))
			return before == training.AsIssued && b.account("2026-04-22").Words == training.Altered && has(b.found("2026-05-06"), "words-altered")
		}},
	{"7.5.3.2 a", "distribution, access, retrieval and use", "who read which revision, on any day in the past",
		func(b *binder) bool {
			april, may := b.account("2026-04-30"), b.account("2026-05-06")
			return len(april.Deeds) == 2 && april.Deeds[1].State == training.Good && april.Stood.Number == "1" &&
				len(may.Deeds) == 3 && may.Deeds[1].State == training.Stale && may.Deeds[2].State == training.Good
		}},
	{"7.5.3.2 b", "storage and preservation, legible", "the words of each revision stay, as text",
		func(b *binder) bool {
			return strings.Contains(b.text("revisions/lid/1.md"), "for: 10 min") && strings.Contains(b.text("revisions/lid/2.md"), "for: 12 min")
		}},
	{"7.5.3.2 c", "control of changes", "a changed limit cannot be kept from readers; the change is told step by step",
		func(b *binder) bool {
			put(b.t, b.root, "register/holds.yaml", strings.Replace(holds, "10 min", "13 min", 1))
			_, err := Run(b.manual(), nil, order(b.root, "2026-05-06", "none"))
			done, ok := Run(b.manual(), nil, order(b.root, "2026-05-06", "reread"))
			return err != nil && ok == nil && done[0].Number == 3 && len(done[0].Changes) == 1 && strings.Contains(done[0].Changes[0], "13 min, was 12 min")
		}},
	{"7.5.3.2 d", "retention and disposition", "rows are only ever added: what stands is never written again",
		func(b *binder) bool {
			before := b.text("revisions.csv")
			issued(b.t, b.root, "2026-05-07")
			return strings.HasPrefix(b.text("revisions.csv"), before)
		}},
	{"7.5.3.2, external documents", "those of external origin are identified and controlled", "a link to a page elsewhere is shown as one, a file inside the manual must be there; whether it is the maker's last issue is the shop's to know",
		func(b *binder) bool {
			put(b.t, b.root, "procedures/lid.md", strings.Replace(lid, "Lift", "See [the sheet](sheet.md). Lift", 1))
			return has(b.found("2026-05-06"), "broken-link")
		}},
	{"7.5.3.2, evidence", "records are protected from unintended alterations", "a row cut short or edited is told of, and nothing is added to a table that does not parse",
		func(b *binder) bool {
			cut := b.text("readings/record.csv")
			last := strings.LastIndex(cut, "2-") // the fingerprint of the last row
			put(b.t, b.root, "readings/record.csv", cut[:last+6])
			return has(b.found("2026-05-06"), "syntax") || has(b.found("2026-05-06"), "wrong-type")
		}},
	{"AS9100 7.5.3.2 e", "no unintended use of what is obsolete", "whoever read the old revision is stale once the new one asks",
		func(b *binder) bool { return has(b.found("2026-05-06"), "reading-stale") }},
}

func has(codes []string, code string) bool {
	return strings.Contains(strings.Join(codes, " ")+" ", code+" ")
}

func TestControlOfDocumentedInformation(t *testing.T) {
	for _, point := range iso9001 {
		t.Run(point.clause, func(t *testing.T) {
			b := twoRevisions(t)
			if codes := b.found("2026-05-03"); has(codes, "syntax") || has(codes, "words-altered") || has(codes, "same-person") {
				t.Fatalf("the manual has findings before anything was done to it: %v", codes)
			}
			if !point.shows(b) {
				t.Errorf("%s: not shown: %s", point.asks, point.does)
			}
		})
	}
}

// A kept form that was edited is not taken for the one that was issued.
func TestAnEditedFormIsNotTheOneThatWasIssued(t *testing.T) {
	b := twoRevisions(t)
	put(t, b.root, "revisions/lid/2.md", strings.Replace(b.text("revisions/lid/2.md"), "12 min", "1 min", 1))
	m := b.manual()
	if _, ok := fingerprint.Kept(fingerprint.Last(m, m.Procedures[0])); ok {
		t.Error("an edited form is taken for the one that was kept")
	}
}
