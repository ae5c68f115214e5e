package finding

import (
	"bytes"
	"encoding/gob"
	"errors"

	"baybinder/generator/base/position"
)

// keptFile is a file in which kept findings stand.
type keptFile struct {
	Path string
	Text string // "" where the files that are at hand have it
	Here bool   // it is one of the files that are at hand
}

type keptPos struct{ File, Start, End int } // File counts from 1; 0 is nowhere

type keptPlace struct {
	At   keptPos
	Text string
}

type kept struct {
	Code           string
	Level          Level
	At             keptPos
	Message, Mend  string
	Related, Fixes []keptPlace
	Settled, Aside bool
	Lang           string
}

type keptList struct {
	Files []keptFile
	List  []kept
}

// Keep writes findings down, to be read by Restore. at gives a file that is at
// hand then, by its path; nil for others.
func Keep(list []Finding, at func(path string) *position.File) ([]byte, error) {
	k := keeper{at: at, known: map[*position.File]int{}}
	for _, f := range list {
		one := kept{Code: f.Code, Level: f.Level, At: k.pos(f.At), Message: f.Message, Mend: f.Mend, Settled: f.Settled, Aside: f.Aside, Lang: f.Lang}
		for _, r := range f.Related {
			one.Related = append(one.Related, keptPlace{k.pos(r.At), r.Message})
		}
		for _, x := range f.Fixes {
			one.Fixes = append(one.Fixes, keptPlace{k.pos(x.At), x.Text})
		}
		k.out.List = append(k.out.List, one)
	}
	var out bytes.Buffer
	err := gob.NewEncoder(&out).Encode(k.out)
	return out.Bytes(), err
}

type keeper struct {
	at    func(path string) *position.File
	known map[*position.File]int
	out   keptList
}

func (k *keeper) pos(p position.Pos) keptPos {
	if p.File == nil {
		return keptPos{}
	}
	if k.known[p.File] == 0 {
		f := keptFile{Path: p.File.Path, Here: k.at(p.File.Path) == p.File}
		if !f.Here {
			f.Text = p.File.Text
		}
		k.out.Files = append(k.out.Files, f)
		k.known[p.File] = len(k.out.Files)
	}
	return keptPos{k.known[p.File], p.Start, p.End}
}

var errNotKept = errors.New("these are no findings of this program and these files")

// Restore reads what Keep wrote, with the rules and the files that there were
// then. What the words were made of (Says, Asks) is not kept.
func Restore(data []byte, rules []*Rule, at func(path string) *position.File) ([]Finding, error) {
	var in keptList
	if err := gob.NewDecoder(bytes.NewReader(data)).Decode(&in); err != nil {
		return nil, err
	}
	byCode := map[string]*Rule{}
	for _, r := range rules {
		byCode[r.Code] = r
	}
	files := make([]*position.File, len(in.Files)+1)
	for i, f := range in.Files {
		if files[i+1] = at(f.Path); !f.Here {
			files[i+1] = position.NewFile(f.Path, f.Text)
		} else if files[i+1] == nil {
			return nil, errNotKept
		}
	}
	var list []Finding
	for _, k := range in.List {
		rule := byCode[k.Code]
		if rule == nil {
			return nil, errNotKept
		}
		f := Finding{Rule: rule, Level: k.Level, At: k.At.in(files), Message: k.Message, Mend: k.Mend, Settled: k.Settled, Aside: k.Aside, Lang: k.Lang}
		for _, r := range k.Related {
			f.Related = append(f.Related, Place{At: r.At.in(files), Message: r.Text})
		}
		for _, x := range k.Fixes {
			f.Fixes = append(f.Fixes, Fix{x.At.in(files), x.Text})
		}
		list = append(list, f)
	}
	return list, nil
}

func (p keptPos) in(files []*position.File) position.Pos {
	if p.File == 0 {
		return position.Pos{}
	}
	return position.Pos{File: files[p.File], Start: p.Start, End: p.End}
}
