package issue

import (
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// What cannot be carried out is refused, with what to write instead; an error of the
// manual stops it at its place, but for what this very issue mends: that a procedure
// changed since its last one, and of one that comes back, that others perform it.
func TestOrdersThatAreRefused(t *testing.T) {
	m := bound(t, folder(t))
	lid := m.Procedures[0]
	retired := &model.Procedure{Entry: model.Entry{ID: "rim"}, Status: "retired"}
	at := lid.Steps[0].Links[0].At
	changed, draft, other := check.ChangedSinceIssue.At(at, "changed"), check.CallsDraft.At(at, "a draft"), walk.WrongMachine.At(at, "another machine")
	good := Order{Reason: "Why."}
	for _, c := range []struct {
		name  string
		order Order
		found []finding.Finding
		texts []*model.Procedure
		want  string
	}{
		{"in order", good, nil, []*model.Procedure{lid}, ""},
		{"no reason", Order{Reason: " "}, nil, []*model.Procedure{lid}, "--reason"},
		{"instead of what stays", Order{Reason: "Why.", Instead: "lid"}, nil, []*model.Procedure{lid}, "--instead goes with --retire"},
		{"instead of what is retired", Order{Reason: "Why.", Instead: "lid", Retire: true}, nil, []*model.Procedure{lid}, ""},
		{"instead by nothing", Order{Reason: "Why.", Instead: "lud", Retire: true}, nil, []*model.Procedure{lid}, "lud"},
		{"retired in one language", Order{Reason: "Why.", Retire: true, Language: "es"}, nil, []*model.Procedure{lid}, "leave out --language"},
		{"all retired", Order{Reason: "Why.", Retire: true, All: true}, nil, []*model.Procedure{lid}, "neither --all nor --changed"},
		{"what changed retired", Order{Reason: "Why.", Retire: true, Changed: true}, nil, []*model.Procedure{lid}, "neither --all nor --changed"},
		{"one number of two", Order{Reason: "Why.", Number: 3}, nil, []*model.Procedure{lid, retired}, "--revision"},
		{"the number of one", Order{Reason: "Why.", Number: 3}, nil, []*model.Procedure{lid}, ""},
		{"two without a number", good, nil, []*model.Procedure{lid, retired}, ""},
		{"an error", good, []finding.Finding{changed, other}, []*model.Procedure{lid}, "procedures/lid.md:7 (another machine)"},
		{"an error, and retired", Order{Reason: "Why.", Retire: true}, []finding.Finding{other}, []*model.Procedure{lid}, ""},
		{"changed", good, []finding.Finding{changed}, []*model.Procedure{lid}, ""},
		{"a draft performed", good, []finding.Finding{draft}, []*model.Procedure{lid}, "(a draft)"},
		{"brought back", good, []finding.Finding{changed, draft}, []*model.Procedure{lid, retired}, ""},
		{"brought back, and an error", good, []finding.Finding{draft, other}, []*model.Procedure{retired}, "(another machine)"},
	} {
		err := c.order.fit(m, c.found, c.texts)
		if (err == nil) != (c.want == "") || err != nil && !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q", c.name, err, c.want)
		}
	}
}

// A translation is the one of that procedure and that language, in any case of
// letters.
func TestTheTextOfALanguage(t *testing.T) {
	text := func(id, language string) *model.Procedure {
		return &model.Procedure{Entry: model.Entry{ID: id}, Language: language}
	}
	lid, german, other, spanish := text("lid", ""), text("lid", "de"), text("rim", "es"), text("lid", "es-MX")
	m := &model.Manual{Procedures: []*model.Procedure{lid}, Translated: []*model.Procedure{german, other, spanish}}
	for language, want := range map[string]*model.Procedure{"": lid, "de": german, "ES-mx": spanish, "fr": nil, "es": nil} {
		if got := textOf(m, lid, language); got != want {
			t.Errorf("%q: %v", language, got)
		}
	}
}
