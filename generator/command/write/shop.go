package write

import (
	"baybinder/generator/language"
	"baybinder/generator/read/edit"
)

// shopFile is the file of the shop.
const shopFile = "shop.yaml"

// ShopSheet is what can be said of the shop in a page.
type ShopSheet struct {
	Title     string   `json:"title"`
	Language  string   `json:"language"`
	Languages []Option `json:"languages"` // those that the program has words for, each by its own name
	State     string   `json:"state"`     // of shop.yaml
}

func (d *Desk) shopSheet() (*ShopSheet, error) {
	data, err := d.look(shopFile)
	if err != nil {
		return nil, err
	}
	shop := d.bench().Manual().Shop
	s := &ShopSheet{Title: shop.Title, Language: language.Of(shop.Language).Code, State: stateOf(data)}
	for _, l := range language.All() {
		s.Languages = append(s.Languages, Option{l.Code, l.Several.Name})
	}
	return s, nil
}

// shop says what the shop is called, and which language its manual is written in.
func (d *Desk) shop(a Asked) (*Told, error) {
	now, err := d.shopSheet()
	switch {
	case err != nil:
		return nil, err
	case now.State != a.State:
		return nil, errChanged
	case one(a.Fields["title"]) == "":
		return nil, noWords
	}
	file := d.fileOf(shopFile)
	to := &draft{file: file, text: file.Text}
	for _, field := range []FormField{{Key: "title", Sort: "text"}, {Key: "language", Sort: "one", Of: now.Languages}} {
		if was := map[string]string{"title": now.Title, "language": now.Language}[field.Key]; one(a.Fields[field.Key]) == was {
			continue
		}
		value, err := field.yaml(a.Fields[field.Key])
		if err != nil {
			return nil, err
		}
		next, ok := edit.Change(file, nil, field.Key, value)
		if !ok {
			return nil, noPlace
		}
		file, to.text = next, next.Text
	}
	if err := d.enter(to, a.State); err != nil {
		return nil, err
	}
	d.dirty = true // every page is of the shop
	return &Told{Page: "index.html"}, nil
}
