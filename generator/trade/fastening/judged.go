package fastening

// Judged says whether the load of a bolt of a thread and a class can be worked
// out: whether the tables of ISO 898-1 know both. What is not said is no
// obstacle here: nothing claims to have judged it.
func Judged(thread, class string) bool {
	if thread != "" {
		if _, err := ParseThread(thread); err != nil {
			return false
		}
	}
	if class != "" {
		if _, err := ParseClass(class); err != nil {
			return false
		}
	}
	return true
}
