package check

var (
	formRules []*Rule
	listRules []*Rule
	callRules []*Rule
	wordRules []*Rule
)
