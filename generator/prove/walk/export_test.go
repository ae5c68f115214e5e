package walk

import "baybinder/generator/model"

// Everything walks a manual and tells again what was told: the reference knows
// no "once as long as the thing stands as it does".
func Everything(m *model.Manual) *Result {
	s := newShared(m)
	s.tellAll = true
	return all(s)
}
