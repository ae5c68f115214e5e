package browse

import (
	"net"
	"net/http"
	"os"
	"slices"
	"strings"
)

// Guard answers only what is asked of this server by one of its names, and only
// GET and HEAD; at the addresses of takes also POST. A page from elsewhere can make a name of its own lead to this
// machine (DNS rebinding), and would then read the site as if it were its own;
// the name that the browser asked for gives it away (RFC 9110, 7.2).
func Guard(address string, site http.Handler, takes ...string) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch {
		case !named(address, r.Host):
			http.Error(w, "this site has another name: open the address that baybinder printed", http.StatusMisdirectedRequest)
		case r.Method == http.MethodPost && slices.Contains(takes, r.URL.Path):
			site.ServeHTTP(w, r)
		case r.Method != http.MethodGet && r.Method != http.MethodHead:
			w.Header().Set("Allow", "GET, HEAD")
			http.Error(w, "this site is only read", http.StatusMethodNotAllowed)
		default:
			site.ServeHTTP(w, r)
		}
	})
}

// named says that a host is a name of a server at an address: the address
// itself, or a name of the loopback. A server at every address of its machine
// has also the machine's name and all addresses; a number is no name that
// somebody else could make lead here.
func named(address, host string) bool {
	name := hostname(host)
	if name == "localhost" || strings.HasSuffix(name, ".localhost") || name == hostname(address) {
		return true
	}
	ip := net.ParseIP(name)
	if ip != nil && ip.IsLoopback() {
		return true
	}
	if at := net.ParseIP(hostname(address)); at == nil || !at.IsUnspecified() {
		return false
	}
	own, err := os.Hostname()
	own = strings.ToLower(own)
	return ip != nil || err == nil && (name == own || name == own+".local" || strings.HasPrefix(own, name+"."))
}

// hostname is a host without its port and its brackets, in small letters.
func hostname(host string) string {
	if name, _, err := net.SplitHostPort(host); err == nil {
		host = name
	}
	host = strings.TrimSuffix(strings.TrimPrefix(host, "["), "]")
	return strings.TrimSuffix(strings.ToLower(host), ".")
}

// policyOf is what a file may do that is opened by itself: a drawing runs
// nothing and fetches nothing (Content Security Policy Level 3). Pages say for
// themselves what they may.
func policyOf(kind string) string {
	if strings.HasPrefix(kind, "image/") || strings.Contains(kind, "xml") || kind == "application/octet-stream" {
		return "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox"
	}
	return ""
}
