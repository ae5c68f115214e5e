package words

// Collect are the words of a page that sends its record to the program that
// shows it, as the page's script gets them.
type Collect struct {
	Kept    string `json:"kept"`
	NotKept string `json:"notKept"`

	FirstTime string `json:"firstTime"` // over the field for the code
	Wrong     string `json:"wrong"`     // the same, when a wrong one was typed
	Code      string `json:"code"`
	Send      string `json:"send"`
}
