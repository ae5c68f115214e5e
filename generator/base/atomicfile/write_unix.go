//go:build !windows

package atomicfile

import (
	"io/fs"

	"github.com/google/renameio/v2"
)

type pendingFile struct{ *renameio.PendingFile }

func (p pendingFile) commit() error { return p.CloseAtomicallyReplace() }
func (p pendingFile) discard()      { _ = p.Cleanup() }

// begin writes data beside a path.
func begin(at string, data []byte, mode fs.FileMode) (pending, error) {
	file, err := renameio.NewPendingFile(at, renameio.WithPermissions(mode), renameio.WithStaticPermissions(mode))
	if err != nil {
		return nil, err
	}
	if _, err := file.Write(data); err != nil {
		_ = file.Cleanup()
		return nil, err
	}
	return pendingFile{file}, nil
}
