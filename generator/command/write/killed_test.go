package write_test

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"

	"baybinder/generator/command/write"
)

// saving is set for the run that saves until it is killed; it names the folder.
const saving = "BAYBINDER_TEST_SAVES_IN"

// A desk that is killed while it saves leaves the file as it was or as it was to
// be, whenever that is.
func TestKilledWhileItSaves(t *testing.T) {
	if folder := os.Getenv(saving); folder != "" {
		saveForEver(t, folder)
	}
	t.Parallel()
	self, err := os.Executable()
	must(t, err)
	const kills = 8
	for range kills {
		d := newDesk(t, shop)
		cmd := exec.Command(self, "-test.run=^TestKilledWhileItSaves$")
		cmd.Env = append(os.Environ(), saving+"="+d.folder)
		out, err := cmd.StdoutPipe()
		must(t, err)
		must(t, cmd.Start())
		lines := bufio.NewScanner(out)
		for saves := 0; saves < 3 && lines.Scan(); {
			if strings.HasPrefix(lines.Text(), "saved") {
				saves++
			}
		}
		must(t, cmd.Process.Kill())
		_ = cmd.Wait() // it was killed
		if got := d.file("procedures/job.md"); got != version(0) && got != version(1) {
			t.Fatalf("it left\n%q", got)
		}
		d.must("open", write.Act{})
		d.must("save", write.Act{Do: "words", Step: "2.1", Text: "It goes on."})
	}
}

// version is the file in one of two states, which differ in length.
func version(i int) string {
	return strings.Replace(job, "3. Sweep.", "3. "+words(i), 1)
}

func words(i int) string {
	return []string{"Sweep.", "Sweep" + strings.Repeat(" again", 4000) + "."}[i]
}

func saveForEver(t *testing.T, folder string) {
	d := deskOf(t, folder)
	d.must("open", write.Act{})
	for i := 1; ; i++ {
		d.must("save", write.Act{Do: "words", Step: "1.3", Text: words(i % 2)})
		fmt.Println("saved")
	}
}
