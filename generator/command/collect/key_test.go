package collect

import (
	"net/http"
	"os"
	"path/filepath"
	"runtime"
	"testing"
	"time"
)

// run is a bench whose devices are known by the key of a folder.
func run(t *testing.T, folder string, now *time.Time) *bench {
	t.Helper()
	b := newBench(t)
	b.collector.devices = &Devices{Folder: folder, Now: func() time.Time { return *now }, Say: logged(t)}
	return b
}

// types is what a device is known by after it has typed the code.
func (b *bench) types(t *testing.T) *http.Cookie {
	t.Helper()
	r := b.sent(t, b.collector.Code())
	r.URL.Path, r.RemoteAddr = DeviceAt, "192.0.2.7:4711"
	got := b.ask(r)
	if got.StatusCode != http.StatusNoContent || len(got.Cookies()) != 1 {
		t.Fatalf("the code: %d", got.StatusCode)
	}
	return got.Cookies()[0]
}

// knows sends a record from the device.
func (b *bench) knows(t *testing.T, device *http.Cookie) bool {
	t.Helper()
	r := b.sent(t, finished(30))
	r.RemoteAddr = "192.0.2.7:4711"
	r.AddCookie(device)
	return b.ask(r).StatusCode == http.StatusCreated
}

// TestADeviceIsKnownToTheNextRun: a device that typed the code in one run sends
// in the next, for 90 days and no longer, however long a run lasts; and no more
// once the key was taken away, was open to others, or is no key.
func TestADeviceIsKnownToTheNextRun(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "keys")
	begun := time.Date(2026, time.May, 4, 10, 0, 0, 0, time.UTC)
	now := begun
	first := run(t, folder, &now)
	device := first.types(t)
	if device.MaxAge != 90*24*3600 {
		t.Errorf("it is kept for %d s", device.MaxAge)
	}
	file := filepath.Join(folder, keyFile)
	info, err := os.Stat(file)
	must(t, err)
	inside, err := os.Stat(folder)
	must(t, err)
	if runtime.GOOS != "windows" && (info.Mode().Perm() != 0o600 || inside.Mode().Perm() != 0o700) {
		t.Errorf("the key has the mode %v in a folder of %v", info.Mode(), inside.Mode())
	}
	now = begun.AddDate(0, 0, 89)
	if !run(t, folder, &now).knows(t, device) || !first.knows(t, device) {
		t.Error("after 89 days it is not known")
	}
	if other := run(t, folder, &now).types(t); other.MaxAge != 24*3600 {
		t.Errorf("a device that comes on the last day is kept for %d s", other.MaxAge)
	}
	now = begun.AddDate(0, 0, -1)
	if run(t, folder, &now).knows(t, device) {
		t.Error("a key of tomorrow is taken")
	}

	for name, spoil := range map[string]func(file string) error{
		"taken away":     os.Remove,
		"open to others": func(file string) error { return os.Chmod(file, 0o644) },
		"no key":         func(file string) error { return os.WriteFile(file, []byte("2026-05-04T10:00:00Z 00\n"), 0o600) },
		"empty":          func(file string) error { return os.WriteFile(file, nil, 0o600) },
		"a way elsewhere": func(file string) error {
			if err := os.Rename(file, file+"-real"); err != nil {
				return err
			}
			return os.Symlink(file+"-real", file)
		},
	} {
		if runtime.GOOS == "windows" && (name == "open to others" || name == "a way elsewhere") {
			continue
		}
		now, folder = begun, filepath.Join(t.TempDir(), "keys")
		device := run(t, folder, &now).types(t)
		must(t, spoil(filepath.Join(folder, keyFile)))
		next := run(t, folder, &now)
		if next.knows(t, device) {
			t.Errorf("%s: the device is known", name)
		}
		if !run(t, folder, &now).knows(t, next.types(t)) {
			t.Errorf("%s: no new key was kept", name)
		}
	}

	now, folder = begun, filepath.Join(t.TempDir(), "keys")
	long := run(t, folder, &now)
	device = long.types(t)
	now = begun.Add(lasting)
	if long.knows(t, device) || run(t, folder, &now).knows(t, device) {
		t.Error("after 90 days it is still known")
	}
	if !long.knows(t, long.types(t)) {
		t.Error("it cannot come again after 90 days")
	}
}

// TestWithoutAFolderDevicesAreOfTheRun: where no key can be kept, devices are
// known to this run alone.
func TestWithoutAFolderDevicesAreOfTheRun(t *testing.T) {
	now := time.Date(2026, time.May, 4, 10, 0, 0, 0, time.UTC)
	file := filepath.Join(t.TempDir(), "file")
	must(t, os.WriteFile(file, nil, 0o600))
	for _, folder := range []string{"", filepath.Join(file, "keys")} {
		b := run(t, folder, &now)
		device := b.types(t)
		if !b.knows(t, device) || run(t, folder, &now).knows(t, device) {
			t.Errorf("%q: the device is not known to its own run alone", folder)
		}
	}
}
