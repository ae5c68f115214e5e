package collect

import (
	"crypto/rand"
	"encoding/hex"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"time"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
)

// lasting is how long a device is known after the key that it is known by was
// made: then it types a code again.
const lasting = 90 * 24 * time.Hour

// keyFile is the file of the key within its folder: when it was made, and 32
// bytes, as text.
const keyFile = "devices"

// Devices keeps the key that devices are known by, so that they are known to
// the next run, too.
type Devices struct {
	Folder string // of this user alone; "": the key is of this run
	Now    func() time.Time
	Say    func(finding.Words) // where it cannot be kept

	mu   sync.Mutex
	made time.Time
	key  []byte
}

// current is the key, and how long it still holds. A key that is too old, that
// others may read, or that is none is put away for a new one.
func (d *Devices) current() ([]byte, time.Duration, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	now := d.Now()
	if !holds(d.made, now) {
		if err := d.renew(now); err != nil {
			return nil, 0, err
		}
	}
	return d.key, d.made.Add(lasting).Sub(now), nil
}

func holds(made, now time.Time) bool { return !now.Before(made) && now.Before(made.Add(lasting)) }

// renew reads the key that is kept, or makes one and keeps it.
func (d *Devices) renew(now time.Time) error {
	if d.Folder != "" {
		if made, key, ok := readKey(d.Folder); ok && holds(made, now) {
			d.made, d.key = made, key
			return nil
		}
	}
	key := make([]byte, 32)
	if _, err := rand.Read(key); err != nil {
		return err
	}
	d.made, d.key = now.UTC().Truncate(time.Second), key
	if d.Folder == "" {
		return nil
	}
	err := writeKey(d.Folder, d.made, key)
	if made, theirs, ok := readKey(d.Folder); errors.Is(err, fs.ErrExist) && ok && holds(made, now) {
		d.made, d.key = made, theirs // another run was quicker
		return nil
	}
	if err != nil {
		d.Say(finding.Say("devices are known only until this program ends: %s", finding.Told(err)))
	}
	return nil
}

// readKey is the key of a folder; false where there is none that nobody else
// may read. What the system says of a file's readers is not known on Windows,
// where the folder is the user's own.
func readKey(folder string) (made time.Time, key []byte, ok bool) {
	name := filepath.Join(folder, keyFile)
	info, err := os.Lstat(name)
	if err != nil || !info.Mode().IsRegular() || runtime.GOOS != "windows" && info.Mode().Perm()&0o077 != 0 {
		return time.Time{}, nil, false
	}
	text, err := os.ReadFile(name)
	if err != nil {
		return time.Time{}, nil, false
	}
	when, digits, _ := strings.Cut(strings.TrimSpace(string(text)), " ")
	made, err = time.Parse(time.RFC3339, when)
	key, wrong := hex.DecodeString(digits)
	return made, key, err == nil && wrong == nil && len(key) == 32
}

// writeKey puts a new key in the place of what is there.
func writeKey(folder string, made time.Time, key []byte) error {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return err
	}
	name := filepath.Join(folder, keyFile)
	if err := os.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return atomicfile.New(name, []byte(made.Format(time.RFC3339)+" "+hex.EncodeToString(key)+"\n"), 0o600)
}
