package begin

import (
	"text/template"

	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// speechOf is what a begun procedure says in a shop's language.
func speechOf(m *model.Manual) *shape.Speech { return &language.Of(m.Shop.Language).Speech }

// formOf is the template of a begun procedure in a shop's language.
func formOf(m *model.Manual) *template.Template {
	return template.Must(template.New("procedure").Parse(language.Of(m.Shop.Language).Procedure))
}
