package begin

import (
	"text/template"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// speechOf is what a begun procedure says in a shop's language.
func speechOf(m *model.Manual) *shape.Speech { return &language.Of(m.Shop.Language).Speech }

// tongueOf is what is told of a begun procedure in a shop's language.
func tongueOf(m *model.Manual) *finding.Tongue { return &language.Of(m.Shop.Language).Findings }

// formOf is the template of a begun procedure in a shop's language.
func formOf(m *model.Manual) *template.Template {
	return template.Must(template.New("procedure").Parse(language.Of(m.Shop.Language).Procedure))
}
