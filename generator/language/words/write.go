package words

// Write are the words with which a manual is written in its pages. {0} stands for
// what the script puts there.
type Write struct {
	Lang string
	Told string // the language that findings are told in

	Write          string
	Leave          string
	Saved          string
	Wrote          string
	Undone         string
	Undo           string
	Redo           string
	NothingToMend  string
	OneToMend      string
	ManyToMend     string
	OneHint        string
	ManyHints      string
	Draft          string
	Issued         string
	WriteHere      string
	WriteStep      string
	AsWritten      string
	NewStep        string
	StandsSo       string
	SaveStep       string
	Close          string
	WhenRefitted   string
	Why            string
	WhyLead        string
	ATime          string
	HowManyMinutes string
	TwoPeople      string
	Split          string
	Move           string
	MoveBehind     string
	Behind         string
	FirstIn        string
	TakeOut        string
	Put            string
	NextStep       string
	NextHere       string
	NextIn         string
	ChooseOrWrite  string
	WriteYourself  string
	NewPhase       string
	PhaseName      string
	AddPhase       string
	Rename         string
	RenameWhat     string
	Find           string
	FoundNone      string
	FoundHits      string
	Offers         string
	ComesOff       string
	MakesSafe      string
	DueNow         string
	StillOpen      string
	StopsHere      string
	OtherWork      string
	InTheWay       string
	NotYet         string
	Stands         string
	BelongsHere    string
	Cautions       string
	Stops          string
	Tools          string
	ThenFound      string
	LeaveOut       string
	LeaveOutWhich  string
	Elsewhere      string
	FromStrip      string
	FileChanged    string
	InFile         string
	YourWords      string
	KeepMine       string
	TakeTheirs     string
	Pasted         string
	AsSteps        string
	AsPhases       string // steps, phases
	AsOne          string
	NotSaved       string
	NoAnswer       string
	NoStep         string
	NoWords        string
	TooLong        string
	NoPlace        string
	NotEmpty       string
	CannotNow      string
	NoPage         string
	TitleOf        string
	Phases         string

	New           string
	Missing       string
	SaveEntry     string
	WroteEntry    string
	OneALine      string
	ForExample    string
	MayStayEmpty  string
	NothingChosen string
	HowMany       string
	NoneYet       string
	BeginNew      string
	NewProcedure  string
	NewMachine    string
	JobName       string
	MachineName   string
	ForMachine    string
	AnyMachine    string
	StartsFrom    string
	FromNothing   string
	FromPart      string
	FromText      string
	OldText       string
	BeginIt       string
	APicture      string
	PictureShows  string
	NoPicture     string
	DropHere      string
	PutBefore     string
	Change        string
	ChangeWhat    string
	ChangeThere   string

	FoundAs   string
	AsLeftBy  string
	AsFoundIn string
	AsWhole   string
	AddFound  string
	Add       string
	HowFound  string
	SummaryOf string
	MachineOf string
	NotSaid   string

	NameInFiles string
	RenamedTo   string
	IssueAnew   string
	BadID       string
	IDTaken     string

	TheShop      string
	ShopName     string
	ShopLanguage string

	LeaveSo      string
	Conditions   string
	More         string
	IfNot        string
	IfAnswer     string
	TakeAgain    string
	MayBeLeftOut string
	GoodPause    string

	Entries  map[string]string // what a new entry is, by its list
	Fields   map[string]string // what a form asks, by the field
	Values   map[string]string // answers that can be chosen, by the format's own word; those of kinds are the page's
	Examples map[string]string // what an answer may be, by the field
	Lists    map[string]string // what its entries are, over a section of a machine's file
}
