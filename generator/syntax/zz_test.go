package syntax
import ("testing";"fmt";"strings";"baybinder/generator/source")
func TestZKeys(t *testing.T){ n:=40000; var b strings.Builder; for i:=0;i<n;i++ {fmt.Fprintf(&b,"k%d: v\n",i)}; f:=source.NewFile("a",b.String()); YAML(f,0,len(f.Text)) }
func TestZFlow(t *testing.T){ n:=40000; f:=source.NewFile("a","a: {"+strings.Repeat("x: y, ",n)+"z: 1}"); YAML(f,0,len(f.Text)) }
func TestZLinks(t *testing.T){ n:=40000; f:=source.NewFile("a",strings.Repeat("[a](",n)); Read(f) }
