package browse

import (
	"io/fs"
	"net/http"
	"net/url"
	"os"
	"path"
	"strings"
	"time"
)

// index is the page that a folder shows.
const index = "index.html"

// Handler answers requests with the files of a folder, and with nothing else.
func Handler(folder string) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		// Always ask again: a page that was rebuilt must not come from a cache.
		w.Header().Set("Cache-Control", "no-cache")
		w.Header().Set("X-Content-Type-Options", "nosniff")
		if r.Method != http.MethodGet && r.Method != http.MethodHead {
			w.Header().Set("Allow", "GET, HEAD")
			http.Error(w, "this site is only read", http.StatusMethodNotAllowed)
			return
		}
		serve(w, r, folder)
	})
}

func serve(w http.ResponseWriter, r *http.Request, folder string) {
	name, ok := fileName(r.URL.Path)
	if !ok {
		missing(w, "there is no such page")
		return
	}
	// A root per request: a build swaps the whole folder for a new one.
	root, err := os.OpenRoot(folder)
	if err != nil {
		missing(w, "there is no site here: run baybinder build")
		return
	}
	defer root.Close()
	info, err := root.Stat(name)
	switch {
	case err != nil && name == index:
		missing(w, "there is no "+index+" here: run baybinder build")
	case err == nil && info.IsDir():
		// A folder is never listed; its name without the slash leads to its page.
		to := url.URL{Path: path.Base(name) + "/", RawQuery: r.URL.RawQuery}
		w.Header().Set("Location", to.String())
		w.WriteHeader(http.StatusFound)
	case err == nil && info.Mode().IsRegular():
		send(w, r, root, name)
	default:
		missing(w, "there is no such page")
	}
}

// fileName is the file inside the folder that a request asks for. It is false
// for a path that leads elsewhere, and for hidden files.
func fileName(address string) (string, bool) {
	name := strings.TrimPrefix(address, "/")
	if name == "" || strings.HasSuffix(name, "/") {
		name += index
	}
	if !fs.ValidPath(name) || strings.ContainsAny(name, "\\\x00") {
		return "", false
	}
	return name, !strings.HasPrefix(name, ".") && !strings.Contains(name, "/.")
}

func missing(w http.ResponseWriter, message string) {
	http.Error(w, message, http.StatusNotFound)
}

func send(w http.ResponseWriter, r *http.Request, root *os.Root, name string) {
	file, err := root.Open(name)
	if err != nil {
		missing(w, "this page cannot be read")
		return
	}
	defer file.Close()
	kind := contentType(name)
	w.Header().Set("Content-Type", kind)
	if policy := policyOf(kind); policy != "" {
		w.Header().Set("Content-Security-Policy", policy)
	}
	// No time: two builds within one second have the same one, and a browser
	// that asks "newer than?" would keep the older page.
	http.ServeContent(w, r, "", time.Time{}, file)
}

// contentTypes are our own: those of the machine differ from shop to shop.
var contentTypes = map[string]string{
	".html":        "text/html; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".mjs":         "text/javascript; charset=utf-8",
	".json":        "application/json",
	".webmanifest": "application/manifest+json",
	".svg":         "image/svg+xml",
	".png":         "image/png",
	".jpg":         "image/jpeg",
	".jpeg":        "image/jpeg",
	".gif":         "image/gif",
	".webp":        "image/webp",
	".avif":        "image/avif",
	".ico":         "image/x-icon",
	".mp4":         "video/mp4",
	".webm":        "video/webm",
	".pdf":         "application/pdf",
	".txt":         "text/plain; charset=utf-8",
	".md":          "text/plain; charset=utf-8",
	".log":         "text/plain; charset=utf-8",
	".csv":         "text/csv; charset=utf-8",
	".yaml":        "text/plain; charset=utf-8",
	".xml":         "application/xml",
	".woff2":       "font/woff2",
	".wasm":        "application/wasm",
}

func contentType(name string) string {
	if known := contentTypes[strings.ToLower(path.Ext(name))]; known != "" {
		return known
	}
	return "application/octet-stream"
}
