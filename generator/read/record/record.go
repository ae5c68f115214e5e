// Package record reads the file that a job at the bay is saved as, and says which records count on a day.
package record

import _ "embed"

// Schema is the JSON Schema of the file, as it is published with every site.
//
//go:embed record.schema.json
var Schema []byte
