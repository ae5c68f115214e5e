package ledger

import (
	"crypto/sha256"
	"encoding/hex"
	"strings"
)

// Sum is the name by which a later row knows the one that it was added after:
// the first 8 hex digits of the SHA-256 of its cells, trimmed, without empty
// ones at the end, joined by U+001F.
func Sum(cells []string) string {
	n := len(cells)
	for n > 0 && cells[n-1] == "" {
		n--
	}
	sum := sha256.Sum256([]byte(strings.Join(cells[:n], "\x1f")))
	return hex.EncodeToString(sum[:4])
}
