package syntax
import ("testing";"math/rand";"reflect";"strings";"fmt";"os"
"baybinder/generator/source")
func TestZZ(t *testing.T){
 r:=rand.New(rand.NewSource(7))
 var lines []string
 for _,f:=range manualTexts(t){ lines=append(lines,strings.Split(f.Text,"\n")...) }
 for _,x:=range tricky { lines=append(lines,strings.Split(x,"\n")...) }
 bits:=[]string{":"," ","- ","#","'","\"","[","]","{","}",",","|",">","\n","  ","\t","%","@","`","?","!","&","*","x","é","°","~","- - ",": ","\\","---","...","  - ","> ","|-","\u00a0","\u2028"}
 var texts []string
 for i:=0;i<6000;i++{
  n:=1+r.Intn(5); var b []string
  st:=r.Intn(len(lines))
  for j:=0;j<n;j++{ if r.Intn(3)==0 { b=append(b,lines[r.Intn(len(lines))]) } else {b=append(b,lines[(st+j)%len(lines)])} }
  s:=strings.Join(b,"\n")+"\n"
  for k:=r.Intn(4);k>0;k--{ p:=r.Intn(len(s)+1); for p<len(s)&&s[p]&0xC0==0x80 {p++}; if r.Intn(2)==0 { s=s[:p]+bits[r.Intn(len(bits))]+s[p:] } else if p<len(s) { q:=p+1; for q<len(s)&&s[q]&0xC0==0x80 {q++}; s=s[:p]+s[q:] } }
  texts=append(texts,s)
 }
 c:=map[string]int{}
 for i,j:=range judge(t,texts){
  f:=source.NewFile("a",texts[i]); n,fs:=YAML(f,0,len(f.Text))
  ours:=len(fs)==0; theirs:=len(j.Errors)==0
  switch { case ours&&theirs&&!reflect.DeepEqual(plainValue(n),j.Value): c["DIFF"]++; if c["DIFF"]<40 {fmt.Printf("DIFF %q\n  ours %v\n  thrs %v\n",texts[i],plainValue(n),j.Value)}
  case ours&&!theirs: c["lenient"]++; if os.Getenv("L")!=""&&c["lenient"]<60 {fmt.Printf("LENIENT %q %v\n   %v\n",texts[i],j.Errors,plainValue(n))}
  case !ours&&theirs: c["strict"]++; if os.Getenv("S")!=""&&c["strict"]<40 {fmt.Printf("STRICT %q %v\n",texts[i],fs[0].Message)}
  default: c["same"]++ }
 }
 fmt.Println(c)
}
