package numbers

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// ValueDisagrees is told at the link in whose words the number stands.
var ValueDisagrees = finding.Rule{
	Code:  "value-disagrees",
	Title: "A number that is not the register's",
	Why:   "Two numbers for one thing: the hands follow one and the inspection the other.",
	Mend:  "Write the register's number, or leave the link's words empty and the page prints them. A number of another thing goes outside the link.",
}

// valuesDisagree holds the amounts in the words of every link against what its
// register or machine file says.
func valuesDisagree(j *job) []finding.Finding {
	var found []finding.Finding
	refilled := refillsOf(j)
	for _, block := range j.of.Blocks() {
		for _, link := range block.Links {
			if !link.Bad && (link.To == nil || !valuesLost(link.To)) {
				found = append(found, valueDisagrees(link, block.Links, j.language(), refilled[link])...)
				found = append(found, moreThanListed(j, link, block.Links)...)
			}
		}
	}
	return found
}

// refillsOf are the links to what the procedure let out before them: to fill it is to
// fill all of it. Any other fill: fills a part of it in.
func refillsOf(j *job) map[*model.Link]bool {
	out := map[*model.Link]bool{}
	for s, drained := range letOut(j) {
		for _, l := range s.Links {
			if f, is := l.To.(*model.Fluid); is && drained[f] {
				out[l] = true
			}
		}
	}
	return out
}

// valueDisagrees compares the amounts of one link's words. Amounts of a kind
// that the register does not state are nobody's business.
func valueDisagrees(link *model.Link, beside []*model.Link, tag string, refilled bool) []finding.Finding {
	amounts := amountsIn(link.Text, tag)
	if len(amounts) == 0 {
		return nil
	}
	words, unknown := besides(link, beside)
	if unknown {
		return nil
	}
	states := statedBy(link)
	states.words = append(states.words, words...)
	limits := limitsOf(link)
	var typed, right, write []string
	for _, q := range amounts {
		rivals := sameKind(states.values, q.Quantity)
		agrees := func(q quantity.Quantity) bool { return agreesWithOne(q, rivals) || agreesWithOne(q, states.words) }
		if q.Tolerance {
			for i, l := range q.offBy(limits) {
				if i == 0 {
					typed = append(typed, q.said)
				}
				right, write = with(right, l.String()), with(write, l.String())
			}
			continue
		}
		if slices.ContainsFunc(limits, q.isMiddleOf) || len(rivals) == 0 || zeroed(link, q.Quantity) || q.isLeft(link, rivals, tag) ||
			link.Kind.Act == model.Fill && !refilled && atMostOne(q.Quantity, rivals) || q.readAnyWay(agrees) {
			continue
		}
		typed = append(typed, q.said)
		for _, r := range rivals {
			right = with(right, r.String())
			write = with(write, r.In(q.Unit).String()) // in the unit that was typed
		}
	}
	if len(typed) == 0 {
		return append(boundTurned(link, amounts, tag), branchTurned(link, amounts, tag)...)
	}
	return []finding.Finding{states.disagree(link, typed, right, write)}
}

// moreThanListed is told of a supply's link whose own words say more of it than the
// procedure lists. What is filled into a circuit is held against its capacity.
func moreThanListed(j *job, link *model.Link, block []*model.Link) []finding.Finding {
	supply, is := link.To.(*model.Supply)
	if !is || link.Text == "" {
		return nil
	}
	links := make([]sentence.Placed, 0, len(block))
	for _, l := range block {
		links = append(links, sentence.Placed{Link: l})
	}
	if filledFrom(links, supply) {
		return nil
	}
	listed := (&beside{of: j, names: map[string]bool{}}).supplies([]sentence.Placed{{Link: link}})
	var typed, right []string
	for _, t := range amountsOf(sentence.Sentence{Text: link.Text}, listed) {
		for i, r := range listed.against(t) {
			if i == 0 {
				typed = append(typed, t.said)
			}
			right = with(right, r.String())
		}
	}
	if len(typed) == 0 {
		return nil
	}
	return []finding.Finding{stated{who: "the list of supplies"}.disagree(link, typed, right, right)}
}

// with is a list and a text that it may have already.
func with(list []string, text string) []string {
	if slices.Contains(list, text) {
		return list
	}
	return append(list, text)
}

func (s stated) disagree(link *model.Link, typed, right, write []string) finding.Finding {
	f := ValueDisagrees.At(link.At, "the words say %s, and %s says %s", listOf(typed), finding.Say(s.who), listOf(right)).
		WithMend("write %s, or leave the words empty; a number of another thing goes outside the link", listOf(write))
	if link.To != nil {
		f = f.See(link.To.Base().At, "it is stated here")
	}
	return f
}

func sameKind(values []quantity.Quantity, q quantity.Quantity) []quantity.Quantity {
	var out []quantity.Quantity
	for _, v := range values {
		if q.Fits(v.Unit.Dimension()) {
			out = append(out, v)
		}
	}
	return out
}

func agreesWithOne(typed quantity.Quantity, values []quantity.Quantity) bool {
	return slices.ContainsFunc(values, func(v quantity.Quantity) bool { return quantity.Agrees(typed, v) })
}

func atMostOne(typed quantity.Quantity, values []quantity.Quantity) bool {
	return slices.ContainsFunc(values, func(v quantity.Quantity) bool { return typed.Base() <= v.Base() })
}

// zeroed says whether a zero is what an act leaves: "let it down to 0 bar".
func zeroed(link *model.Link, q quantity.Quantity) bool {
	return link.Kind.Empties && q.Value == 0
}

// isLeft says whether an amount bounds what an act leaves: "let it down below 0.5
// bar". It is less than what there was. A proof has its limit beside it.
func (a amountIn) isLeft(link *model.Link, rivals []quantity.Quantity, tag string) bool {
	tongue := language.Known(tag)
	if tongue == nil || !link.Kind.Empties || link.Kind.Act == model.Prove {
		return false
	}
	if a.boundingIn(link.Text, tongue).side != quantity.AtMost {
		return false
	}
	return !slices.ContainsFunc(rivals, func(r quantity.Quantity) bool { return a.Base() >= r.Base() })
}

// besides are amounts that a link may say of another thing: a proof, the limits
// of the measurements beside it. They are unknown where one of these could not be
// read, or cannot show the energy: its own rule tells.
func besides(link *model.Link, beside []*model.Link) (amounts []quantity.Quantity, unknown bool) {
	if link.Kind.Act != model.Prove {
		return nil, false
	}
	of, _ := link.To.(*model.Energy)
	for _, l := range beside {
		hold, is := l.To.(*model.Hold)
		if l.Is(model.LinkHold) && l.Bad || is && (valuesLost(hold) || blind(hold, of)) {
			return nil, true
		}
		if is && hold.Kind == "measure" {
			amounts = append(amounts, numbersOf(hold.Limit)...)
		}
	}
	return amounts, false
}

// blind says that a measurement of an energy has a limit in a dimension that says
// nothing of it.
func blind(h *model.Hold, of *model.Energy) bool {
	return of != nil && h.Of.ID == of.ID && !h.Limit.IsZero() && !of.ShownIn(h.Limit.Unit.Dimension())
}
