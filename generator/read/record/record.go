// Package record reads the file that a job at the bay is saved as, and says which records count on a day.
//
// # Decided where the format is silent
//
// A record is judged by the published schema; one that is not of the form, or contradicts itself
// (`record-disagrees`), is an error, for a damaged record must not pass in silence. What it says
// that the manual no longer has is advice (`record-differs`), and so is a worker who is not in
// people.csv: the list is of people in training. A record of another revision is never a finding.
// A value is judged by the limit that the record brought along. A record counts from the day on
// which it was saved. Answers are rows of `records/answers.csv`. A hold that failed is no gap once
// its `if-not:` branch was worked through and the hold met where it is taken anew; a gap once
// recorded stays. The demo's records are played anew with `go test ./generator -run WholeJobs
// -update`.
package record

import _ "embed"

// Schema is the JSON Schema of the file, as it is published with every site.
//
//go:embed record.schema.json
var Schema []byte
