// Package write lets a writer change the manual in the pages that watch serves, by choosing.
//
// A page of the watched site gets a switch, and a script of this package. What
// a writer does goes as an act (Act) to one address by POST: what would come of
// it (try), what can be written at a place (choices), and the save itself. The
// file stays the truth: an act makes a text of a file's text, and of the file's
// bytes those change that the two texts do not share (pieces.go). What is found,
// offered and mended is worked out below; here it becomes what a page shows.
//
//	write.go  the addresses        guard.go  who is answered
//	desk.go   look, try, save      acts.go   what can be done
//	step.go   a step's own lines   sheet.go, offered.go  what a page is told
//	entry.go  a new entry          change.go one that is there
//	head.go   the front matter     rename.go  an id, wherever it is named
//	shop.go   the shop
//
// # Decided where the format is silent
//
// Only this machine is answered: the listener is on the loopback, the caller's
// address must be too, Host must be one of the server's names, Origin its own,
// the content type JSON, and each run has a token that only its pages hold. No
// page of another origin may frame one. Who may use this machine's browser may
// write: there are no accounts.
//
// A save names the state of the file that its writer saw, and is refused where
// the bytes differ; both versions are shown. Program and commands take turns
// (base/turn), an editor does not: one that saves between the look and the
// rename loses, as between two editors. A file that leads out of the manual is
// not written. A save is undone only while the file is as that save left it; what
// can be undone is kept while watch runs.
//
// The lists of the front matter, needs and people follow the steps at each save:
// of what the writer's own act brings or takes away. What was found before stays
// as it was. Numbers of a list are not written anew: Markdown counts for itself.
// Sub-steps move among sub-steps. Nothing is issued here, and a procedure begun
// here is a draft.
package write

import (
	"cmp"
	"embed"
	"encoding/json"
	"errors"
	"fmt"
	"html"
	"net/http"
	"path/filepath"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// Root is the beginning of the addresses that pages ask by POST. A site has no
// hidden files.
const Root = "/.write/"

// Takes are these addresses.
func Takes() []string {
	var out []string
	for name := range routes {
		out = append(out, Root+name)
	}
	return append(out, Root+pictureAt)
}

const (
	scriptAt = "/.write.js"
	styleAt  = "/.write.css"
)

var (
	//go:embed desk.js form.js head.js paste.js picture.js procedure.js fill.js
	scripts embed.FS
	//go:embed write.css
	style []byte
	//go:embed forms.css
	formStyle []byte
)

// New is a desk for the manual of a folder. token is what its pages know and no
// other.
// today is the day that dated rules use.
func New(folder string, manual Manual, token string, today model.Date) (*Desk, error) {
	root, err := filepath.Abs(folder)
	if err == nil {
		root, err = filepath.EvalSymlinks(root)
	}
	if err != nil {
		return nil, err
	}
	return &Desk{root: root, manual: manual, token: token, today: today, seen: map[string]string{}}, nil
}

// Tags are what a page gets at its end, "" for one that nobody writes in.
func (d *Desk) Tags(page string) string {
	page = strings.TrimPrefix(page, "/")
	if page != "" && !strings.HasSuffix(page, ".html") && !strings.HasSuffix(page, "/") {
		return ""
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.manual.Bench() == nil {
		_, _ = d.look("shop.yaml") // what cannot be read is told where it is asked for
	}
	say, _ := json.Marshal(d.words()) // it is text
	return fmt.Sprintf(`<link rel="stylesheet" href="%s"><script src="%s" data-token="%s" data-words="%s" defer></script>`,
		styleAt, scriptAt, html.EscapeString(d.token), html.EscapeString(string(say)))
}

// Wrap answers what pages ask of the desk, and leaves the rest to the site.
func (d *Desk) Wrap(site http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("X-Frame-Options", "DENY") // a press on the switch is meant
		switch {
		case r.URL.Path == scriptAt:
			own(w, "text/javascript", script())
		case r.URL.Path == styleAt:
			own(w, "text/css", slices.Concat(style, formStyle))
		case strings.HasPrefix(r.URL.Path, Root):
			d.guarded(w, r)
		default:
			site.ServeHTTP(w, r)
		}
	})
}

// script are the scripts in the order in which they rest on each other.
func script() []byte {
	var out []byte
	for _, name := range []string{"desk", "form", "head", "paste", "picture", "procedure", "fill"} {
		data, _ := scripts.ReadFile(name + ".js") // it is in the program
		out = append(out, data...)
	}
	return out
}

// own sends a file of this package.
func own(w http.ResponseWriter, kind string, data []byte) {
	w.Header().Set("Content-Type", kind+"; charset=utf-8")
	w.Header().Set("Cache-Control", "no-cache")
	_, _ = w.Write(data)
}

// Asked is what a page asks.
type Asked struct {
	Page  string `json:"page"`  // its address in the site
	State string `json:"state"` // of the file that it shows; "" where it asks for the first time
	Act   Act    `json:"act,omitzero"`

	In     string              `json:"in,omitempty"`     // of a form: a register, or a section of the machine's file
	ID     string              `json:"id,omitempty"`     // of an entry that is there
	Fields map[string][]string `json:"fields,omitempty"` // of one that is there, those that change
}

// Told is the answer.
type Told struct {
	Sheet    *Sheet        `json:"sheet,omitempty"`
	Trial    *Trial        `json:"trial,omitempty"`
	Choices  *Choices      `json:"choices,omitempty"`
	Machine  *MachineSheet `json:"machine,omitempty"`
	Machines []MachineName `json:"machines,omitempty"`
	Form     *Form         `json:"form,omitempty"`
	Starts   *Starts       `json:"starts,omitempty"`
	Shop     *ShopSheet    `json:"shop,omitempty"`
	Renamed  *Renamed      `json:"renamed,omitempty"`
	Cures    []Found       `json:"cures,omitempty"` // steps that mend what is found in one
	Found    []Choice      `json:"found,omitempty"`
	On       string        `json:"on,omitempty"`   // the step that was written
	Page     string        `json:"page,omitempty"` // where the writer looks on, if not here

	Why    string `json:"why,omitempty"`    // why it was not done: a word of the tables
	More   string `json:"more,omitempty"`   // the same in the program's words
	Theirs string `json:"theirs,omitempty"` // where the file changed underneath: its text now
}

// routes are what can be asked, by the rest of the address.
var routes = map[string]func(d *Desk, a Asked) (*Told, error){
	"open": (*Desk).show, "form": (*Desk).form, "entry": (*Desk).entry, "try": (*Desk).tryAct, "choices": (*Desk).chosen, "starts": (*Desk).starts, "rename": (*Desk).rename, "shop": (*Desk).shop, "find": (*Desk).found, "save": (*Desk).saveAct,
	"undo": (*Desk).undo, "redo": (*Desk).redo, "machines": (*Desk).machines, "cures": (*Desk).cures, "begin": (*Desk).begin,
}

// pictureAt is the one route that is sent a picture; what else it says stands
// in the address.
const pictureAt = "picture"

// answer answers one question, one at a time.
func (d *Desk) answer(w http.ResponseWriter, r *http.Request, body []byte) {
	name := strings.TrimPrefix(r.URL.Path, Root)
	ask, known := routes[name]
	var asked Asked
	if name == pictureAt {
		ask = func(d *Desk, _ Asked) (*Told, error) { return d.picture(r.URL.Query(), body) }
	} else if err := json.Unmarshal(body, &asked); err != nil || !known {
		d.refuse(w, http.StatusBadRequest, finding.Say("this is nothing that a page of the manual asks"))
		return
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	told, err := ask(d, asked)
	status := http.StatusOK
	if err != nil {
		told, status = d.refused(told, err)
	}
	w.Header().Set("Content-Type", "application/json")
	w.WriteHeader(status)
	_ = json.NewEncoder(w).Encode(told) // who asked may be gone
}

// refused says why nothing was done.
func (d *Desk) refused(told *Told, err error) (*Told, int) {
	if told == nil {
		told = &Told{}
	}
	var word refusal
	var field missing
	switch {
	case errors.Is(err, errChanged):
		told.Why = "FileChanged"
		return told, http.StatusConflict
	case errors.As(err, &field):
		told.Why, told.More = "Missing", string(field)
		return told, http.StatusUnprocessableEntity
	case errors.As(err, &word):
		told.Why = string(word)
		return told, http.StatusUnprocessableEntity
	}
	told.Why, told.More = "NotSaved", d.inShop(finding.Told(err))
	return told, http.StatusInternalServerError
}

// of is the procedure of a page as it stands on the disk, and its state.
func (d *Desk) of(at string) (*model.Procedure, string, error) {
	if d.manual.Bench() == nil || d.dirty {
		if _, err := d.look("shop.yaml"); err != nil {
			return nil, "", err
		}
	}
	p := d.procedureOf(at)
	if p == nil {
		return nil, "", noPage
	}
	data, err := d.look(p.File.Path)
	if err != nil {
		return nil, "", err
	}
	if p = d.procedureOf(at); p == nil || data == nil {
		return nil, "", noPage
	}
	return p, stateOf(data), nil
}

// asSeen is the same for a page that was shown already: it is an error where the
// file is not what it was.
func (d *Desk) asSeen(a Asked) (*model.Procedure, error) {
	p, state, err := d.of(a.Page)
	if err == nil && state != a.State {
		err = errChanged
	}
	return p, err
}

func (d *Desk) open(a Asked) (*Told, error) {
	p, state, err := d.of(a.Page)
	if err != nil {
		return nil, err
	}
	return &Told{Sheet: d.sheet(p, state)}, nil
}

// said are the words that the page's script says.
type said struct {
	words.Write
	RefitLead string   // the first words of what holds at the refit only
	Often     []string // the names of phases that procedures often have
}

// language is that of the manual's shop; the default one's until somebody looked.
func (d *Desk) language() *shape.Language {
	if b := d.manual.Bench(); b != nil {
		return language.Of(b.Manual().Shop.Language)
	}
	return language.Default()
}

// inShop is words as the shop is told them.
func (d *Desk) inShop(w finding.Words) string {
	text, _ := d.language().Findings.Say(w) // in English where a word lacks
	return text
}

func (d *Desk) words() said {
	l := d.language()
	s := &l.Speech
	return said{l.Write, s.WhenRefit, []string{s.MakeSafe, s.Strip, s.Work, s.Refit, s.GiveBack}}
}

func (d *Desk) tryAct(a Asked) (*Told, error) {
	p, err := d.asSeen(a)
	if err != nil {
		return nil, err
	}
	to, err := apply(d.bench(), p, a.Act)
	if err != nil {
		return nil, err
	}
	return &Told{Trial: d.try(to)}, nil
}

func (d *Desk) chosen(a Asked) (*Told, error) {
	p, err := d.asSeen(a)
	if err != nil {
		return nil, err
	}
	list, err := d.choices(p, a.Act)
	return &Told{Choices: list}, err
}

func (d *Desk) found(a Asked) (*Told, error) {
	p, err := d.asSeen(a)
	if err != nil {
		return nil, err
	}
	return &Told{Found: d.find(p, a.Act.Text)}, nil
}

// saveAct does an act. Where the file changed underneath, what stands in it now
// is told with the refusal.
func (d *Desk) saveAct(a Asked) (*Told, error) {
	p, state, err := d.of(a.Page)
	if err != nil {
		return nil, err
	}
	if state != a.State {
		return &Told{Sheet: d.sheet(p, state), Theirs: p.File.Text}, errChanged
	}
	to, err := apply(d.bench(), p, a.Act)
	if err != nil {
		return nil, err
	}
	on := d.try(to).On
	if err := d.put(to, a.Act.Do, a.State); err != nil {
		return nil, err
	}
	told, err := d.open(a)
	if err == nil {
		told.On = on
	}
	return told, err
}

func (d *Desk) undo(a Asked) (*Told, error) { return d.step(a, &d.done, &d.undone, false) }

func (d *Desk) redo(a Asked) (*Told, error) { return d.step(a, &d.undone, &d.done, true) }

// step goes one save back or forth, and shows the page that it was in.
func (d *Desk) step(a Asked, from, to *[]save, forth bool) (*Told, error) {
	s, err := d.back(from, to, forth)
	if err != nil {
		return nil, err
	}
	told, err := d.show(a)
	if err != nil {
		return &Told{Page: cmp.Or(d.pageOf(s.stands(forth)), "index.html")}, nil // the page is gone with the file
	}
	if told.Sheet == nil || told.Sheet.File != s.Path {
		told.Page = d.pageOf(s.Path)
	}
	return told, nil
}

// pageOf is the address of the page of a file, "" where it has none.
func (d *Desk) pageOf(path string) string {
	if b := d.manual.Bench(); b != nil {
		for _, m := range b.Manual().Machines {
			if m.At.Path() == path {
				return page.PageOf(m)
			}
		}
	}
	at, _ := d.manual.Page(path)
	return at
}
