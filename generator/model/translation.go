package model

// IndexWords makes the texts in other languages ready to be found.
func (m *Manual) IndexWords() {
	m.words = map[[3]string]*Words{}
	for i := range m.Words {
		w := &m.Words[i]
		if key := [3]string{w.Register, w.ID, w.Language}; m.words[key] == nil {
			m.words[key] = w
		}
	}
	m.halfRead = map[[2]string]bool{}
	for _, w := range m.HalfRead {
		m.halfRead[[2]string{w.Register, w.Language}] = true
	}
}

// WordsOf are the texts of an entry in a language; nil where there are none.
func (m *Manual) WordsOf(register, id, language string) *Words {
	return m.words[[3]string{register, id, language}]
}

// LacksWords says that a text of an entry is not there in a language. What could not
// be read there may be that text.
func (m *Manual) LacksWords(register, id, language, field string) bool {
	w := m.WordsOf(register, id, language)
	if w == nil {
		return !m.halfRead[[2]string{register, language}]
	}
	return len(w.Texts[field]) == 0 && !w.Unread
}

// Text is a named text of an entry as it was written, with its words.
type Text struct {
	Field string   // as the format calls it: "first-aid"
	Words []string // one, or the list
	Keys  []string // of answers; nil elsewhere
}

// Texts are what people read of the hazard, fields that are empty left out.
func (h *Hazard) Texts() []Text {
	return written(Text{"name", []string{h.Name}, nil}, Text{"nature", []string{h.Nature}, nil}, Text{"consequence", []string{h.Consequence}, nil},
		Text{"avoid", h.Avoid, nil}, Text{"first-aid", []string{h.FirstAid}, nil})
}

// Texts are what people read of an override, fields that it leaves as they are
// left out.
func (o *HazardOverride) Texts() []Text {
	return written(Text{"nature", []string{o.Nature}, nil}, Text{"consequence", []string{o.Consequence}, nil},
		Text{"avoid", o.Avoid, nil}, Text{"first-aid", []string{o.FirstAid}, nil})
}

// Texts are what people read of the hold, fields that are empty left out.
func (h *Hold) Texts() []Text {
	answers := Text{Field: "answers"}
	for _, a := range h.Answers {
		answers.Words, answers.Keys = append(answers.Words, a.Value), append(answers.Keys, a.Key)
	}
	return written(Text{"name", []string{h.Name}, nil}, Text{"why", []string{h.Why}, nil}, Text{"what", []string{h.What}, nil},
		Text{"at", h.Places, nil}, Text{"if-not", []string{h.IfNot}, nil}, Text{"good", []string{h.Good}, nil}, answers)
}

func written(all ...Text) []Text {
	var out []Text
	for _, t := range all {
		if len(t.Words) > 1 || len(t.Words) == 1 && t.Words[0] != "" {
			out = append(out, t)
		}
	}
	return out
}
