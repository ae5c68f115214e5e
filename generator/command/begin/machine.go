package begin

import (
	_ "embed"
	"os"
	"path"
	"path/filepath"
	"strings"
	"text/template"

	"baybinder/generator/base/finding"
	"baybinder/generator/command/schema"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
)

//go:embed machine.yaml
var machineText string

var machineTemplate = template.Must(template.New("machine").Parse(machineText))

// Machine writes a new machine's file, with a pattern of every section, and
// returns its path inside the manual.
func Machine(manual, id, name string) (string, error) {
	if why := decode.BadIDWhy(id); !why.IsZero() {
		return "", finding.Refuse("the id %q %s: write it like air-press", id, why)
	}
	tree, err := readWhole(manual)
	if err != nil {
		return "", err
	}
	at := path.Join("machines", id+".yaml")
	m, _ := bind.Manual(tree)
	if machine := model.ByID(m.Machines, id); machine != nil {
		return "", finding.Refuse("there is a machine %s already: %s", id, machine.At.Path())
	}
	var text strings.Builder
	if described, is := schema.Of(at); is && there(manual, described.Path()) {
		text.WriteString(described.Setting(at) + "\n")
	}
	if err := machineTemplate.Execute(&text, fields{Name: yamlText(titleOf(name, id))}); err != nil {
		return "", err
	}
	return at, writeNew(manual, at, text.String())
}

// there says whether the manual has a file, hidden or not.
func there(manual, name string) bool {
	_, err := os.Stat(filepath.Join(manual, filepath.FromSlash(name)))
	return err == nil
}
