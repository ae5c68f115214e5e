package german

// findingsRules is the titles, reasons and mends of the rules that are not the walk's.
var findingsRules = map[string]string{
	"A language for which the program has no words": "Eine Sprache, für die das Programm keine Worte hat",
	"What the program itself puts on a page (Before you start, Fetch, Wait) stands there in another language, and what it understands of texts it cannot look for.":                                         "Was das Programm selbst auf eine Seite setzt (Bevor Sie anfangen, Holen, Warten), steht dort in einer anderen Sprache, und was es sonst in Texten erkennt, kann es nicht suchen.",
	"The manual's own texts stand as they are written. The pages mark the borrowed words with their language, so that a screen reader speaks them right. A language is added to the program as one folder.": "Die eigenen Texte des Handbuchs stehen, wie sie geschrieben sind. Die Seiten kennzeichnen die geliehenen Worte mit ihrer Sprache, damit ein Vorleseprogramm sie richtig spricht. Eine Sprache kommt als ein Ordner in das Programm.",

	"A name that nothing has": "Ein Name, den nichts trägt",
	"A link to a tool, an energy or a procedure that is not there sends someone looking for it at the bay.": "Ein Link zu einem Werkzeug, einer Energie oder einer Anweisung, die es nicht gibt, schickt jemanden am Platz auf die Suche.",
	"Write the id as its register, machine file or procedure has it, or make the entry.":                    "Schreiben Sie die Id, wie Liste, Maschinendatei oder Anweisung sie haben, oder legen Sie den Eintrag an.",

	"A link of a kind that the format does not have":                       "Ein Link einer Art, die das Format nicht hat",
	"A link whose kind nobody knows does nothing, and looks as if it did.": "Ein Link, dessen Art niemand kennt, tut nichts und sieht aus, als täte er etwas.",
	"Write one of the link kinds. A page elsewhere begins with https:.":    "Schreiben Sie eine der Arten von Links. Eine Seite anderswo beginnt mit https:.",

	"An address that could run a program or fetch from elsewhere":                                 "Eine Adresse, die ein Programm starten oder von außen etwas holen könnte",
	"The pages run nothing that a text brought along, and they make no request outside the shop.": "Die Seiten führen nichts aus, was ein Text mitbringt, und fragen nirgends außerhalb der Werkstatt an.",
	"Link to a page with https:, or to a file inside the manual.":                                 "Verlinken Sie eine Seite mit https: oder eine Datei im Handbuch.",

	"A link to a file that is not in the manual":                               "Ein Link zu einer Datei, die nicht im Handbuch ist",
	"It is found broken at the bay, with the job open.":                        "Dass er nirgends hinführt, merkt man am Platz, mitten in der Arbeit.",
	"Put the file into the manual's folder, or write its path from this file.": "Legen Sie die Datei in den Ordner des Handbuchs, oder schreiben Sie ihren Pfad von dieser Datei aus.",

	"A picture that is not in the manual":                               "Ein Bild, das nicht im Handbuch ist",
	`A step that says "as shown" and shows nothing is guessed at.`:      "Ein Schritt, der „wie abgebildet“ sagt und nichts zeigt, wird geraten.",
	"Put the picture into pictures/, or write its path from this file.": "Legen Sie das Bild in pictures/, oder schreiben Sie seinen Pfad von dieser Datei aus.",

	"A record of someone who is not in readings/people.csv":          "Ein Eintrag über jemanden, der nicht in readings/people.csv steht",
	"A record that belongs to nobody counts for nobody.":             "Ein Eintrag, der zu niemandem gehört, zählt für niemanden.",
	"Write the person's id as people.csv has it, or add the person.": "Schreiben Sie die Id der Person, wie people.csv sie hat, oder tragen Sie die Person ein.",

	"An amount that cannot be read, or of the wrong kind":              "Eine Menge, die sich nicht lesen lässt oder von der falschen Größe ist",
	"A torque that is read wrongly is worse than one that is missing.": "Ein falsch gelesenes Drehmoment ist schlimmer als ein fehlendes.",
	"Write number, space, unit, as in 110 N·m or 1 h 30 min.":          "Schreiben Sie Zahl, Leerzeichen, Einheit, wie 110 N·m oder 1 h 30 min.",

	"A field that the format does not have":                                                                           "Ein Feld, das das Format nicht hat",
	"A field that nobody reads looks as if it worked: a misspelt limit is no limit.":                                  "Ein Feld, das niemand liest, sieht aus, als wirkte es: ein falsch geschriebener Grenzwert ist keiner.",
	"Write the field's name as the format has it, or take the line out. Inside { } a text with a comma needs quotes.": "Schreiben Sie den Namen des Feldes, wie das Format ihn hat, oder nehmen Sie die Zeile heraus. Innerhalb von { } kommt ein Text mit Komma in Anführungszeichen.",

	"A value of the wrong kind": "Ein Wert der falschen Art",
	"A list where a text belongs, or a word that is not one of the choices, cannot be acted on.":                      "Mit einer Liste, wo ein Text hingehört, oder einem Wort, das nicht zur Wahl steht, ist nichts anzufangen.",
	"Write the kind of value shown. Text that holds a comma inside { } or [ ], or a colon and a space, needs quotes.": "Schreiben Sie einen Wert der gezeigten Art. Ein Text, der innerhalb von { } oder [ ] ein Komma hat, oder einen Doppelpunkt mit Leerzeichen, kommt in Anführungszeichen.",

	"A field that must be there":                      "Ein Feld, das da sein muss",
	"Without it the entry cannot be shown or judged.": "Ohne es lässt sich der Eintrag weder zeigen noch beurteilen.",
	"Write the field.":                                "Schreiben Sie das Feld.",

	"An id that cannot be used": "Eine Id, die nicht zu brauchen ist",
	"Ids stand in links, file names and addresses on every machine of the shop, so they are plain.":                                   "Ids stehen in Links, Dateinamen und Adressen auf jedem Rechner der Werkstatt; darum sind sie einfach.",
	"Use a to z, 0 to 9 and single hyphens, at most 64 characters, and none of the names that Windows keeps for itself (con, nul …).": "Nehmen Sie a bis z, 0 bis 9 und einzelne Bindestriche, höchstens 64 Zeichen, und keinen der Namen, die Windows für sich behält (con, nul …).",

	"A last row whose line does not end": "Eine letzte Zeile, die nicht abgeschlossen ist",
	"Each row that the program adds ends its line. Where the last one does not, the file was cut: a disk was full, or a copy broke off. Half a name or half a fingerprint looks like a whole one.": "Jede Zeile, die das Programm anfügt, ist abgeschlossen. Ist die letzte es nicht, wurde die Datei abgeschnitten: die Platte war voll, oder ein Kopieren brach ab. Ein halber Name oder ein halber Fingerabdruck sieht aus wie ein ganzer.",
	"See whether the row is whole, and end its line with Enter; else take the row out and record it again. No row is added behind it before.":                                                      "Sehen Sie nach, ob die Zeile vollständig ist, und schließen Sie sie mit der Eingabetaste ab; sonst nehmen Sie sie heraus und tragen sie neu ein. Vorher wird keine Zeile dahinter angefügt.",

	"A file that cannot be read as what it is":                                                                                                               "Eine Datei, die sich nicht als das lesen lässt, was sie ist",
	"What cannot be read cannot be checked, and it is left out of everything that rests on it.":                                                              "Was sich nicht lesen lässt, lässt sich nicht prüfen und fehlt in allem, was darauf beruht.",
	"Mend the spelling at the place shown. Put text in quotes where it holds a colon and a space, a space and #, or starts with one of ! # & * @ % | > [ {.": "Berichtigen Sie die Schreibweise an der gezeigten Stelle. Ein Text kommt in Anführungszeichen, wenn er einen Doppelpunkt mit Leerzeichen oder ein Leerzeichen mit # enthält oder mit einem von ! # & * @ % | > [ { beginnt.",

	"A heading or a list that does not make phases and steps": "Eine Überschrift oder Liste, die keine Abschnitte und Schritte ergibt",
	"A heading at level 2 opens a phase and a numbered list under it holds the steps. Another level, a phase of the same name or a list before the first phase leaves steps without a number to call out.": "Eine Überschrift der Ebene 2 öffnet einen Abschnitt, und eine nummerierte Liste darunter enthält die Schritte. Eine andere Ebene, ein Abschnitt gleichen Namens oder eine Liste vor dem ersten Abschnitt lässt Schritte ohne Nummer, die man ansagen könnte.",
	"Write ## before each phase's name, give each phase a name of its own, and put the numbered list under a phase.":                                                                                       "Schreiben Sie ## vor den Namen jedes Abschnitts, geben Sie jedem einen eigenen Namen, und setzen Sie die nummerierte Liste unter einen Abschnitt.",

	"A procedure without a step":                                                "Eine Anweisung ohne Schritt",
	"A page with nothing to do is found at the bay and helps nobody.":           "Eine Seite, auf der nichts zu tun ist, wird am Platz gefunden und hilft niemandem.",
	"Write a phase (## Work) and a numbered list under it, or make it a draft.": "Schreiben Sie einen Abschnitt (## Arbeit) und darunter eine nummerierte Liste, oder machen Sie einen Entwurf daraus.",

	"HTML in a procedure": "HTML in einer Anweisung",
	"HTML prints differently in every viewer, and it can carry scripts into the shop's pages.":           "HTML sieht in jedem Programm anders aus, und es kann fremde Skripte in die Seiten der Werkstatt bringen.",
	`Write it as Markdown. A comment belongs into the front matter, after #. A literal < is written \<.`: `Schreiben Sie es als Markdown. Eine Bemerkung gehört in den Dateikopf, hinter #. Das Zeichen < selbst schreibt man \<.`,

	"An id or a field that is written twice":                                                            "Eine Id oder ein Feld, das zweimal dasteht",
	"Of two entries with one id only one can be meant; the other is read by people and by nobody else.": "Von zwei Einträgen mit einer Id kann nur einer gemeint sein; den anderen lesen Menschen und sonst niemand.",
	"Keep one, or give the second an id of its own.":                                                    "Behalten Sie einen, oder geben Sie dem zweiten eine eigene Id.",

	"A tool whose calibration has run out": "Ein Werkzeug, dessen Kalibrierung abgelaufen ist",
	"What is set or measured with it counts for nothing until it is checked, and jobs that were done with it may have to be done again.": "Was damit eingestellt oder gemessen wird, zählt nicht, bis es geprüft ist, und Arbeiten, die damit getan wurden, sind vielleicht zu wiederholen.",
	"Send the tool to calibration, and write the new day as its last.":                                                                   "Geben Sie das Werkzeug zur Kalibrierung, und schreiben Sie den neuen Tag in last:.",

	"A number of fasteners that is not the machine's":                              "Eine Zahl von Verbindungselementen, die nicht die der Maschine ist",
	"Who counts four and finds five leaves one in, or takes the wrong part off.":   "Wer vier zählt und fünf findet, lässt eines drin oder baut das falsche Teil aus.",
	"Write the number that holds the part, or mend held-by in the machine's file.": "Schreiben Sie die Zahl, die das Teil hält, oder berichtigen Sie held-by in der Datei der Maschine.",

	"A part that is too heavy for the people of the step":                                              "Ein Teil, das für die Personen des Schritts zu schwer ist",
	"A back that is strained once is never what it was, and a part that is dropped falls on feet.":     "Ein einmal verhobener Rücken wird nie wieder, was er war, und ein Teil, das fällt, fällt auf Füße.",
	"Ask for more people in the step with [](people:2), or name lifting gear, a tool of kind lifting.": "Verlangen Sie im Schritt mehr Personen mit [](people:2), oder nennen Sie ein Hebezeug, ein Werkzeug der Art lifting.",

	"A lift above the recommended weight limit": "Eine Last über dem empfohlenen Grenzgewicht",
	"Far in front of the body, low down, turned or often, less than the shop's limit strains a back. The revised NIOSH lifting equation says how much less, for one person.":                    "Weit vor dem Körper, tief unten, verdreht oder oft gehoben, belastet schon weniger als der Grenzwert der Werkstatt den Rücken. Wie viel weniger, sagt die überarbeitete Hebegleichung des NIOSH, für eine Person.",
	"Ask for more people in the step with [](people:2), name lifting gear, bring the part nearer to the body or to the height of the knuckles, or mend the part's lift: in the machine's file.": "Verlangen Sie im Schritt mehr Personen mit [](people:2), nennen Sie ein Hebezeug, holen Sie das Teil näher an den Körper oder auf Höhe der Handknöchel, oder berichtigen Sie lift: des Teils in der Datei der Maschine.",

	"A stage by angle, and no angle gauge": "Eine Stufe mit Drehwinkel, und kein Drehwinkelmesser",
	"An angle by eye is off by more than the stage allows, and the bolt is stretched for good or hardly at all.": "Ein Winkel nach Augenmaß liegt weiter daneben, als die Stufe erlaubt, und die Schraube wird für immer oder kaum gedehnt.",
	"Name the angle gauge in the step, or list it under tools. Its kind in the register is angle-gauge.":         "Nennen Sie den Drehwinkelmesser im Schritt, oder schreiben Sie ihn in tools. Seine Art in der Liste ist angle-gauge.",

	"A threaded fastener without a torque":                                                   "Ein Verbindungselement mit Gewinde und ohne Drehmoment",
	"How tight is then everybody's own guess: too loose works itself off, too tight strips.": "Wie fest, rät dann jeder selbst: zu wenig löst sich von allein, zu viel reißt das Gewinde aus.",
	"Write torque: or stages:, or torque: hand for what is tightened by hand.":               "Schreiben Sie torque: oder stages:, oder torque: hand, wo von Hand angezogen wird.",

	"Something that the program cannot judge": "Etwas, das das Programm nicht beurteilen kann",
	"A thread or a class that no table has, or a sign that is not drawn, may be right. But nothing was worked out from it, and a page without a finding looks as if it had been.": "Ein Gewinde oder eine Festigkeitsklasse, die in keiner Tabelle steht, oder ein Zeichen, das nicht gezeichnet ist, kann richtig sein. Aber gerechnet wurde nichts damit, und eine Seite ohne Mangel sieht aus, als wäre es geschehen.",
	"Look the number up again; where it is right, leave it as it is.": "Schlagen Sie die Angabe noch einmal nach; ist sie richtig, lassen Sie sie stehen.",

	"A step that needs more people than the job has":                                                     "Ein Schritt, der mehr Personen braucht, als die Arbeit hat",
	"The job is begun by as many as the page says, and stands half open until a second person is found.": "Die Arbeit wird von so vielen begonnen, wie die Seite sagt, und steht halb offen, bis sich noch jemand findet.",
	"Write people: in the front matter with the most that any step or called procedure needs.":           "Schreiben Sie people: in den Dateikopf, mit der größten Zahl, die ein Schritt oder eine ausgeführte Anweisung braucht.",

	"No tool here fits the fastener": "Kein Werkzeug hier passt auf das Verbindungselement",
	"The wrong socket is found out under the machine: a walk to the crib at best, a rounded bolt at worst.":           "Der falsche Einsatz zeigt sich unter der Maschine: im besten Fall ein Weg zur Ausgabe, im schlimmsten eine rund gedrehte Schraube.",
	"Name a socket, spanner or key that fits, put the size into its fits, or mend the fastener's width across flats.": "Nennen Sie einen Einsatz oder Schlüssel, der passt, schreiben Sie die Größe in sein fits:, oder berichtigen Sie die Schlüsselweite des Verbindungselements.",

	"A torque that stretches the bolt for good": "Ein Drehmoment, das die Schraube für immer dehnt",
	"Above its proof load a bolt stays longer than it was: it lets go in service, or tears when it is tightened the next time.": "Über ihrer Prüfkraft bleibt eine Schraube länger, als sie war: sie lässt im Betrieb nach, oder reißt beim nächsten Anziehen.",
	"Look the torque up again, and the thread, the class and the condition: oil or zinc makes more pull of the same torque.":    "Schlagen Sie das Drehmoment noch einmal nach, und Gewinde, Festigkeitsklasse und Zustand: mit Öl oder Zink zieht dasselbe Drehmoment stärker.",

	"A torque, and no torque wrench":                                         "Ein Drehmoment, und kein Drehmomentschlüssel",
	"A torque that is written and cannot be set is felt by the arm instead.": "Ein Drehmoment, das dasteht und sich nicht einstellen lässt, wird nach Gefühl gegeben.",
	"Name the torque wrench in the step, or list it under tools.":            "Nennen Sie den Drehmomentschlüssel im Schritt, oder schreiben Sie ihn in tools.",

	"A torque that no wrench here is made for": "Ein Drehmoment, für das kein Schlüssel hier gemacht ist",
	"A torque wrench is used from 20 % of its maximum up to it; below that it clicks when it likes, and beyond its ends it cannot be set.":       "Ein Drehmomentschlüssel wird von 20 % seines Größtwerts bis zu diesem benutzt; darunter löst er aus, wann er will, und jenseits seiner Enden lässt er sich nicht einstellen.",
	"Name a wrench whose range holds the torque at or above 20 % of its maximum. Behind an adapter it is the setting that must be in the range.": "Nennen Sie einen Schlüssel, in dessen Bereich das Drehmoment liegt, bei 20 % seines Größtwerts oder darüber. Mit Einsteckwerkzeug oder Verlängerung muss der eingestellte Wert im Bereich liegen.",

	"A number that is not the register's":                                           "Eine Zahl, die nicht die der Liste ist",
	"Two numbers for one thing: the hands follow one and the inspection the other.": "Zwei Zahlen für eine Sache: die Hände folgen der einen, die Abnahme der anderen.",
	"Write the register's number, or leave the link's words empty and the page prints them. A number of another thing goes outside the link.": "Schreiben Sie die Zahl der Liste, oder lassen Sie die Worte des Links leer: dann setzt die Seite sie ein. Die Zahl einer anderen Sache steht außerhalb des Links.",

	"A link whose words order the opposite":                                                      "Ein Link, dessen Worte das Gegenteil anordnen",
	"The hands do what the words say; the order of the job was checked by what the link says.":   "Die Hände tun, was die Worte sagen; die Reihenfolge der Arbeit wurde nach dem geprüft, was der Link sagt.",
	"Change the words, or the link: [Undo the bolts](loosen:…), [tighten the bolts](tighten:…).": "Ändern Sie die Worte oder den Link: [Lösen Sie die Schrauben](loosen:…), [ziehen Sie die Schrauben an](tighten:…).",

	"Procedures that perform each other in a ring": "Anweisungen, die einander im Kreis ausführen",
	"A job that performs itself, by whatever way, never ends, and nothing can be worked out of it: no kit, no time, no order.": "Eine Arbeit, die sich selbst ausführt, auf welchem Weg auch immer, endet nie, und nichts lässt sich daraus errechnen: weder was zu holen ist, noch die Zeit, noch die Reihenfolge.",
	"Take one do: out of the ring, or put what both need into a procedure of its own. Further reading is see:.":                "Nehmen Sie ein do: aus dem Kreis, oder machen Sie aus dem, was beide brauchen, eine eigene Anweisung. Was nur zum Nachlesen dient, ist see:.",

	"A job that performs a draft or a retired procedure": "Eine Arbeit, die einen Entwurf oder eine zurückgezogene Anweisung ausführt",
	"Drafts are not published, and what is retired is no longer how the shop works. Whoever follows the job would stand before a link that leads nowhere.": "Entwürfe werden nicht veröffentlicht, und was zurückgezogen ist, ist nicht mehr die Arbeitsweise der Werkstatt. Wer der Arbeit folgt, stünde vor einem Link, der nirgends hinführt.",
	"Issue the draft, perform what stands instead, or make this procedure a draft until the other is ready.":                                               "Geben Sie den Entwurf heraus, führen Sie aus, was stattdessen gilt, oder machen Sie auch diese Anweisung zum Entwurf, bis die andere fertig ist.",

	"A procedure that is another than its last issued revision":                                                                                           "Eine Anweisung, die anders ist als ihre letzte Ausgabe",
	"Readers trust that what is on the page was checked and that they are told of changes. What was never issued was neither.":                            "Leser verlassen sich darauf, dass geprüft wurde, was auf der Seite steht, und dass ihnen Änderungen gesagt werden. Was nie herausgegeben wurde, ist beides nicht.",
	"Have the change checked, then issue it: baybinder issue PROCEDURE --reason … --readers … Until then, build --preview shows it, marked as a preview.": "Lassen Sie die Änderung prüfen, dann geben Sie sie heraus: baybinder issue ANWEISUNG --reason … --readers … Bis dahin zeigt build --preview sie, als Vorschau gekennzeichnet.",

	"A fault code that no reader can show":                                                                                     "Ein Fehlercode, den kein Lesegerät zeigen kann",
	"Someone looks for the code on the display, does not find it, and takes the wrong branch.":                                 "Jemand sucht den Code in der Anzeige, findet ihn nicht und nimmt den falschen Weg.",
	"Write the code as the reader shows it: P, C, B or U, then 0 to 3, then three figures or A to F (SAE J2012, ISO 15031-6).": "Schreiben Sie den Code, wie das Lesegerät ihn zeigt: P, C, B oder U, dann 0 bis 3, dann drei Ziffern oder A bis F (SAE J2012, ISO 15031-6).",

	"A procedure that makes less of a hazard, and does not say why":                                                                                      "Eine Anweisung, die eine Gefahr kleiner macht und nicht sagt, warum",
	"The register says what the hazard can do to a person. A procedure that says less, or drops a glove, needs a reason that the next reader can judge.": "Die Liste sagt, was die Gefahr einem Menschen antun kann. Eine Anweisung, die weniger sagt oder einen Handschuh weglässt, braucht einen Grund, den der nächste Leser beurteilen kann.",
	"Write because: with the reason beside the override, or take the override out.":                                                                      "Schreiben Sie because: mit dem Grund neben die Abweichung, oder nehmen Sie die Abweichung heraus.",

	"A hazard that says only half of what it must": "Eine Gefahr, die nur halb sagt, was sie muss",
	"A caution box says what the danger is, what it does to you and how to avoid it. Without one of the three it is a scare and no help.": "Ein Warnkasten sagt, was die Gefahr ist, was sie einem antut und wie man sie vermeidet. Fehlt eines der drei, erschreckt er und hilft nicht.",
	"Write nature:, consequence: and avoid: in the hazard's entry.":                                                                       "Schreiben Sie nature:, consequence: und avoid: in den Eintrag der Gefahr.",

	"A hold, a hazard or a torque whose brackets are empty": "Ein Halt, eine Gefahr oder ein Drehmoment mit leeren Klammern",
	"The page prints the register's words for an empty link. Whoever opens the file itself sees nothing there, does not stop, or does not see the torque.": "Für einen leeren Link setzt die Seite die Worte der Liste ein. Wer die Datei selbst öffnet, sieht dort nichts, hält nicht an oder sieht das Drehmoment nicht.",
	"Write words between the brackets: [Wait 60 min](hold:capacitor-wait). baybinder settle writes the register's words there.":                            "Schreiben Sie Worte zwischen die Klammern: [Warten Sie 60 min](hold:capacitor-wait). baybinder settle schreibt die Worte der Liste hinein.",

	"A role that the job takes and the procedure does not ask for":                                                               "Eine Befähigung, die die Arbeit braucht und die Anweisung nicht verlangt",
	"Who may do the job is read off the first lines of the page. A role that shows up halfway stops the job, or is passed over.": "Wer die Arbeit tun darf, liest man in den ersten Zeilen der Seite. Eine Befähigung, die mittendrin auftaucht, hält die Arbeit an oder wird übergangen.",
	"Write the role into needs: in the front matter.":                                                                            "Schreiben Sie die Befähigung in needs: im Dateikopf.",

	"A step without a time, where others have one":                                                                     "Ein Schritt ohne Zeit, wo andere eine haben",
	"The times of a job are added up. One step that is left out makes the sum too short, and nobody sees by how much.": "Die Zeiten einer Arbeit werden zusammengezählt. Fehlt die eines Schritts, ist die Summe zu klein, und niemand sieht, um wie viel.",
	"Write [](time:8min) at the end of the step, or one time for the whole phase in its first paragraph.":              "Schreiben Sie [](time:8min) ans Ende des Schritts, oder eine Zeit für den ganzen Abschnitt in seinen ersten Absatz.",

	"An act or a hold that stands outside the numbered steps": "Eine Handlung oder ein Halt außerhalb der nummerierten Schritte",
	"Only a numbered list under a phase holds steps. What stands beside it is shown on the page and does nothing: it has no number to call out, and what is taken off or switched off there counts as on.": "Nur eine nummerierte Liste unter einem Abschnitt enthält Schritte. Was daneben steht, zeigt die Seite, und es tut nichts: es hat keine Nummer, die man ansagen könnte, und was dort ausgebaut oder abgeschaltet wird, gilt als eingebaut und eingeschaltet.",
	"Write it as a numbered step: 1. and a space at the margin. Where the thing is only mentioned, link it with part:, fastener:, energy:, fluid: or setting:.":                                            "Schreiben Sie es als nummerierten Schritt: 1. und ein Leerzeichen, am Rand. Wo die Sache nur erwähnt wird, verlinken Sie sie mit part:, fastener:, energy:, fluid: oder setting:.",

	"Someone checked, approved or inspected without the role for it on that day": "Jemand hat geprüft, freigegeben oder bei der Arbeit geprüft, ohne an diesem Tag die Befähigung dafür zu haben",
	"Who may say that a text is right, or that people work by it, is settled before the day and not after. Of energy control, 29 CFR 1910.147(c)(6)(i)(A) has the inspection done by an authorized employee other than those who use the procedure. Local codes come first.": "Wer sagen darf, dass ein Text richtig ist oder dass danach gearbeitet wird, steht vor diesem Tag fest und nicht danach. Für die Sicherung von Energien verlangt 29 CFR 1910.147(c)(6)(i)(A) (USA), dass ein befugter Mitarbeiter prüft, der die Anweisung nicht selbst anwendet. Örtliche Regeln gehen vor.",
	"Have it done by someone who holds the role, and record that too. Rows stay as they are. Who may check and approve is issue: in shop.yaml.":                                                                                                                              "Lassen Sie es jemanden tun, der die Befähigung hat, und halten Sie auch das fest. Zeilen bleiben, wie sie sind. Wer prüfen und freigeben darf, steht in issue: in shop.yaml.",

	"Something that a step needs and the front matter does not list":                                                                              "Etwas, das ein Schritt braucht und das nicht im Dateikopf steht",
	"The lists are what people fetch, and warn each other of, before they start. What is missing there is missing at the bay, with the job open.": "Die Listen sind das, was man holt und wovor man einander warnt, bevor man anfängt. Was dort fehlt, fehlt am Platz, mitten in der Arbeit.",
	"Write its id into the list, with the amount where it needs one, or let baybinder settle do it.":                                              "Schreiben Sie die Id in die Liste, mit der Menge, wo sie eine braucht, oder lassen Sie es baybinder settle tun.",

	"A job by somebody who, by the files, was not qualified or not up to date": "Eine Arbeit von jemandem, der nach den Dateien nicht befähigt oder nicht auf dem Stand war",
	"The record shows who did the job and on which day. Who had not read what stood, or held none of the roles that it needs, did it without what the shop asks for. Local codes decide who may work.": "Der Nachweis zeigt, wer die Arbeit tat und an welchem Tag. Wer nicht gelesen hatte, was galt, oder keine der verlangten Befähigungen hatte, tat sie ohne das, was die Werkstatt verlangt. Wer arbeiten darf, entscheiden die örtlichen Regeln.",
	"Look the job over with somebody who is qualified. Where the list or the record lacks what was so, add it: rows of a past day are added with --today DAY.":                                         "Sehen Sie die Arbeit mit jemandem durch, der befähigt ist. Fehlt der Liste oder dem Nachweis, was so war, tragen Sie es nach: Zeilen eines vergangenen Tages mit --today TAG.",

	"A translation that leaves something out": "Eine Übersetzung, die etwas auslässt",
	"Whoever reads the page in that language does not do a step that is not there, and does not heed a caution in words that they cannot read. A shop may translate one procedure after another; what it translates, it translates whole.": "Wer die Seite in dieser Sprache liest, tut einen Schritt nicht, der nicht dasteht, und beachtet keine Warnung in Worten, die er nicht lesen kann. Eine Werkstatt darf eine Anweisung nach der anderen übersetzen; was sie übersetzt, übersetzt sie ganz.",
	"Write the step as the original has it. Write the texts of its hazards and holds in register/hazards.LANGUAGE.yaml and register/holds.LANGUAGE.yaml. Until all is there, status: draft in the translation keeps it back.":              "Schreiben Sie den Schritt, wie das Original ihn hat. Schreiben Sie die Texte der Gefahren und Halte in register/hazards.SPRACHE.yaml und register/holds.SPRACHE.yaml. Bis alles da ist, hält status: draft in der Übersetzung sie zurück.",

	"A line of the front matter that no step uses": "Eine Zeile des Dateikopfs, die kein Schritt braucht",
	"A list written from memory sends people for what the job does not need, and hides what a step forgot to name: a hazard without a box, a hold that stops nobody.": "Eine Liste aus dem Gedächtnis schickt Leute nach dem, was die Arbeit nicht braucht, und verdeckt, was ein Schritt zu nennen vergaß: eine Gefahr ohne Kasten, einen Halt, der niemanden anhält.",
	"Link it in the step that uses it, or take it out of the list. A tool that is only worn, measured with or locked with may stay.":                                  "Verlinken Sie es in dem Schritt, der es braucht, oder nehmen Sie es aus der Liste. Ein Werkzeug, das nur getragen wird oder mit dem nur gemessen oder gesichert wird, darf bleiben.",

	"A record of a day that is yet to come": "Ein Eintrag von einem Tag, der noch kommt",
	"Nobody can have read or issued anything on it, so it counts for nothing until then. It is a slip of the pen, or of a machine's clock.": "Niemand kann an ihm etwas gelesen oder herausgegeben haben, also zählt er bis dahin nicht. Jemand hat sich verschrieben, oder die Uhr eines Rechners geht falsch.",
	"Look up the day and correct it; or ask for the day that you mean with --today.":                                                        "Stellen Sie den Tag fest und berichtigen Sie ihn; oder fragen Sie mit --today nach dem Tag, den Sie meinen.",

	"An instruction that does not say who acts": "Eine Anordnung, die nicht sagt, wer handelt",
	`"Must be tightened" can be read as said of somebody else, or as done already. "Tighten" is said to whoever reads it.`:                       "„Muss angezogen werden“ kann von jemand anderem gesagt sein, oder als schon getan. „Ziehen Sie an“ gilt dem, der es liest.",
	`Begin with the verb: not "the bolts must be tightened", but "tighten the bolts". What is looked for ("the lid is shut") may stay as it is.`: "Beginnen Sie mit dem Tun: nicht „die Schrauben müssen angezogen werden“, sondern „ziehen Sie die Schrauben an“. Wonach man sieht („der Deckel ist zu“), darf so bleiben.",

	"A picture that no words stand for": "Ein Bild, für das keine Worte stehen",
	"Who listens to the page, or reads it where the picture did not print, misses what it shows.":                        "Wer die Seite hört, oder sie liest, wo das Bild nicht gedruckt wurde, dem fehlt, was es zeigt.",
	"Write between the brackets what a person should see in it: ![The plug drawn out, the lock through its handle.](…).": "Schreiben Sie zwischen die Klammern, was man darauf sehen soll: ![Der Stecker ist gezogen, das Schloss hängt in seinem Griff.](…).",

	"Someone should have read this by now": "Jemand sollte das inzwischen gelesen haben",
	"A reading plan with a date that passed is a promise that nobody keeps, and the person works beside those who know.": "Ein Leseplan mit einem vergangenen Tag ist ein Versprechen, das niemand hält, und die Person arbeitet neben denen, die Bescheid wissen.",
	"Have it read and record it: baybinder readings record PERSON PROCEDURE read. Or give the plan a longer within:.":    "Lassen Sie es lesen, und halten Sie es fest: baybinder readings record PERSON ANWEISUNG read. Oder geben Sie dem Plan ein längeres within:.",

	"Someone read this before it changed": "Jemand las dies, bevor es geändert wurde",
	"Whoever read the old wait or the old torque works by it, and has a record that says they are up to date. Of energy control, 29 CFR 1910.147(c)(7) asks for training anew where the procedure changes. Local codes come first.": "Wer die alte Wartezeit oder das alte Drehmoment gelesen hat, arbeitet danach und hat einen Nachweis, auf dem Stand zu sein. Für die Sicherung von Energien verlangt 29 CFR 1910.147(c)(7) (USA) neue Schulung, wo sich die Anweisung ändert. Örtliche Regeln gehen vor.",
	"Have them read it again, then record it: baybinder readings record PERSON PROCEDURE read.":                                                                                                                                     "Lassen Sie es erneut lesen, dann halten Sie es fest: baybinder readings record PERSON ANWEISUNG read.",

	"A record of something that the manual does not have": "Ein Nachweis von etwas, das das Handbuch nicht hat",
	"A job that belongs to no procedure, step or unit of the manual is shown nowhere, or beside the wrong machine. The manual may have changed since, so it stops nothing.":   "Eine Arbeit, die zu keiner Anweisung, keinem Schritt oder Gerät des Handbuchs gehört, steht nirgends, oder bei der falschen Maschine. Das Handbuch kann sich seither geändert haben, darum hält es nichts auf.",
	"If the procedure has another id now, write the old one in its was:. If the unit or the option is wrong, ask who did the job; a record is evidence and is not rewritten.": "Hat die Anweisung jetzt eine andere Id, schreiben Sie die alte in ihr was:. Stimmt das Gerät oder die Ausstattung nicht, fragen Sie, wer die Arbeit tat; ein Nachweis ist ein Beweis und wird nicht umgeschrieben.",

	"A record that contradicts itself": "Ein Nachweis, der sich widerspricht",
	"A value out of its limit that is recorded as passed puts a machine to work that did not pass. The page cannot write that, so the file was changed by hand or is damaged.": "Ein Wert außerhalb seines Grenzwerts, der als erfüllt festgehalten ist, bringt eine Maschine zum Einsatz, die nicht bestanden hat. Die Seite kann das nicht schreiben; die Datei wurde also von Hand geändert oder ist beschädigt.",
	"Find out what was measured, and measure again if nobody knows. Put the file back as the page saved it, or take it out and keep it on paper.":                              "Stellen Sie fest, was gemessen wurde, und messen Sie neu, wenn es niemand weiß. Legen Sie die Datei so hin, wie die Seite sie gespeichert hat, oder nehmen Sie sie heraus und bewahren Sie sie auf Papier auf.",

	"The same row twice": "Zweimal dieselbe Zeile",
	"One thing was done once. A second row of it was added by a slip, or by two people for one class.":                            "Eine Sache wurde einmal getan. Eine zweite Zeile davon kam aus Versehen dazu, oder zwei haben dieselbe Schulung eingetragen.",
	"Find out which is right. Rows are never taken out of a record that was handed on; of one that was not, take out the second.": "Stellen Sie fest, welche stimmt. Aus einer Datei, die weitergegeben wurde, werden Zeilen nie herausgenommen; aus einer anderen nehmen Sie die zweite heraus.",

	"A procedure that nobody has looked over for too long": "Eine Anweisung, die zu lange niemand überprüft hat",
	"Machines, supplies and ways of working change while the page stays. A date that somebody must answer for is how that comes out. Of energy control, 29 CFR 1910.147(c)(6) asks for an inspection at least yearly, by someone other than those who use the procedure. Local codes come first.": "Maschinen, Material und Arbeitsweisen ändern sich, und die Seite bleibt. Heraus kommt das durch einen Tag, für den jemand einsteht. Für die Sicherung von Energien verlangt 29 CFR 1910.147(c)(6) (USA) mindestens jährlich eine Prüfung durch jemanden, der die Anweisung nicht selbst anwendet. Örtliche Regeln gehen vor.",
	"Walk it through at the machine with somebody who works by it. Where nothing is to be changed, that is a row of the record: baybinder readings record WHO PROCEDURE inspected --by INSPECTOR --note TEXT. Else change it and issue it. How often is review-every: in shop.yaml.":              "Gehen Sie sie an der Maschine mit jemandem durch, der danach arbeitet. Ist nichts zu ändern, ist das eine Zeile der Lesenachweise: baybinder readings record WER ANWEISUNG inspected --by PRÜFER --note TEXT. Sonst ändern Sie sie und geben sie heraus. Wie oft, steht in review-every: in shop.yaml.",

	"A role that ran out": "Eine Befähigung, die abgelaufen ist",
	"The shop still lists the person as someone who may do the work, and the licence or the yearly check behind it is over.":                                                                                 "Die Werkstatt führt die Person noch unter denen, die diese Arbeit tun dürfen, und der Schein oder die jährliche Prüfung dahinter ist abgelaufen.",
	"Renew it and record that with readings role, or record there that it is withdrawn; one that a plan gave is renewed too by going through the plan again. How long it lasts is renew-every: of the role.": "Erneuern Sie sie, und halten Sie das mit readings role fest, oder halten Sie dort fest, dass sie entzogen ist; was ein Plan gab, erneuert sich auch, indem man den Plan noch einmal durchläuft. Wie lange sie gilt, steht in renew-every: der Befähigung.",

	"A row that was added after one that is not there": "Eine Zeile, angefügt nach einer, die nicht da ist",
	"Each row names the row that it was added after. Where that is gone, a row was taken out or changed, and nobody can say what it held.":       "Jede Zeile nennt die, nach der sie angefügt wurde. Ist diese weg, wurde eine Zeile herausgenommen oder geändert, und niemand kann sagen, was in ihr stand.",
	"Take the file back from version control. Rows that were cut off the end leave no later row to tell of it: an audit sheet of the time does.": "Holen Sie die Datei aus der Versionsverwaltung zurück. Von Zeilen, die am Ende abgeschnitten sind, erzählt keine spätere; ein Prüfblatt aus jener Zeit tut es.",

	"A revision that only its writer has checked, or work that nobody else inspected":                                   "Eine Ausgabe, die nur ihr Schreiber geprüft hat, oder Arbeit, die niemand sonst geprüft hat",
	"Whoever wrote a text reads what was meant, not what stands there. A second person finds the step that is missing.": "Wer einen Text geschrieben hat, liest, was gemeint war, nicht, was dasteht. Ein Zweiter findet den Schritt, der fehlt.",
	"Have someone else check it or walk it through, and issue it again with their name.":                                "Lassen Sie jemand anderen prüfen oder sie durchgehen, und geben Sie sie mit diesem Namen noch einmal heraus.",

	"A signal word that was typed": "Ein Signalwort, das von Hand geschrieben ist",
	"The signal word follows from the harm and from how likely it is, the same on every page. A typed one can say less than the register, and it stands in no box.": "Das Signalwort folgt aus dem Schaden und daraus, wie wahrscheinlich er ist, auf jeder Seite gleich. Ein von Hand geschriebenes kann weniger sagen als die Liste, und es steht in keinem Kasten.",
	"Link the hazard: Mind [the charged capacitors](hazard:charged-capacitors). What is painted on the machine is quoted as code: `DANGER`.":                        "Verlinken Sie die Gefahr: Achten Sie auf [die geladenen Kondensatoren](hazard:charged-capacitors). Was auf der Maschine steht, wird als Code angeführt: `GEFAHR`.",

	"A sentence of a step that has too many words":                                                                                                         "Ein Satz eines Schritts mit zu vielen Wörtern",
	"Who reads at arm's length, with a tool in hand, keeps a short sentence in mind and looks a long one up again.":                                        "Wer auf Armlänge liest, mit dem Werkzeug in der Hand, behält einen kurzen Satz und muss bei einem langen noch einmal nachsehen.",
	"Make two sentences of it, or put the reason into a paragraph of its own that begins with [Because](why:). The limit is words-in-a-step in shop.yaml.": "Machen Sie zwei Sätze daraus, oder geben Sie dem Grund einen eigenen Absatz, der mit [Weil](why:) beginnt. Die Grenze ist words-in-a-step in shop.yaml.",

	"A translation that says something else": "Eine Übersetzung, die etwas anderes sagt",
	"The order of work, the energies and the refit are worked out from the original's links. If a translation has another link, another step or another number, the page says one thing and was checked for another.": "Die Reihenfolge der Arbeit, die Energien und der Einbau werden aus den Links des Originals gerechnet. Hat eine Übersetzung einen anderen Link, einen anderen Schritt oder eine andere Zahl, sagt die Seite das eine, und geprüft wurde das andere.",
	"Give each step the links, people, times and figures of the original. The order of links in a step is free; a decimal comma is a decimal point.":                                                                  "Geben Sie jedem Schritt die Links, Personen, Zeiten und Zahlen des Originals. Die Reihenfolge der Links in einem Schritt ist frei; ein Dezimalkomma gilt wie ein Dezimalpunkt.",

	"A step that asks for more than one action": "Ein Schritt, der mehr als eine Handlung verlangt",
	"A step is ticked off once. Of two actions in one step, the second is the one that is forgotten after an interruption.":                                                                                                                                                    "Ein Schritt wird einmal abgehakt. Von zwei Handlungen in einem Schritt wird nach einer Unterbrechung die zweite vergessen.",
	"Make a step of each. Isolate and lock, unlock and restore, free and cap, fill and bleed, refit and tighten of one thing, and putting in the tool that holds a load are one action, and so is what is done at the same time. The limit is actions-in-a-step in shop.yaml.": "Machen Sie aus jeder einen Schritt. Trennen und mit Schloss sichern, Schloss abnehmen und wieder einschalten, lösen und verschließen, füllen und entlüften, einbauen und anziehen derselben Sache, und das Einlegen des Werkzeugs, das eine Last hält, sind eine Handlung, ebenso, was gleichzeitig getan wird. Die Grenze ist actions-in-a-step in shop.yaml.",

	"A record of words that were never issued": "Ein Eintrag über Worte, die nie herausgegeben wurden",
	"It says that someone read something, and nobody can say what: another manual's page, a draft, or a row that was edited by hand. It counts as stale.": "Er sagt, dass jemand etwas gelesen hat, und niemand kann sagen, was: die Seite eines anderen Handbuchs, einen Entwurf, oder die Zeile wurde von Hand geändert. Er gilt als veraltet.",
	"Find out what was read. If it was this procedure, have it read again and recorded: baybinder readings record PERSON PROCEDURE read.":                 "Stellen Sie fest, was gelesen wurde. War es diese Anweisung, lassen Sie sie erneut lesen und halten Sie es fest: baybinder readings record PERSON ANWEISUNG read.",

	"A performance that counts for no plan": "Eine Ausführung, die für keinen Plan zählt",
	"A plan asks for the job done under the eye of someone who may judge it. Seen by nobody, by oneself or by someone without the role on that day, it shows nothing.": "Ein Plan verlangt die Arbeit unter den Augen von jemandem, der sie beurteilen darf. Von niemandem gesehen, von einem selbst oder von jemandem, der an diesem Tag die Befähigung nicht hatte, zeigt sie nichts.",
	"Have it performed again before someone who holds the plan's assessor: role on the day. Rows stay as they are: they are what happened.":                            "Lassen Sie sie noch einmal ausführen, vor jemandem, der an diesem Tag die Befähigung aus assessor: des Plans hat. Zeilen bleiben, wie sie sind: sie sind, was geschah.",

	"Words of the template that nobody wrote over": "Worte der Vorlage, die niemand überschrieben hat",
	"Say here what is done: begin writes such a line to be written over. Left in a procedure that is no draft, it is a step without an instruction.": "„Sagen Sie hier, was getan wird“: begin schreibt eine solche Zeile, damit sie überschrieben wird. Bleibt sie in einer Anweisung, die kein Entwurf ist, steht dort ein Schritt ohne Anordnung.",
	"Write what is done at that place, or take the line out. Until then write status: draft.":                                                        "Schreiben Sie, was an dieser Stelle getan wird, oder nehmen Sie die Zeile heraus. Bis dahin schreiben Sie status: draft.",

	"Words that two people read in two ways": "Worte, die zwei Leute auf zwei Arten lesen",
	"As needed, some, properly: each is a decision that the writer left to whoever stands at the bay, and nobody can check it afterwards.": "Bei Bedarf, einige, ordnungsgemäß: jedes ist eine Entscheidung, die der Schreiber dem überließ, der am Platz steht, und niemand kann sie danach prüfen.",
	`Say how much, how often, until what is seen, or to which torque. What stands on the machine is quoted: "some".`:                       "Sagen Sie, wie viel, wie oft, bis was zu sehen ist, oder mit welchem Drehmoment. Was auf der Maschine steht, kommt in Anführungszeichen: „einige“.",

	"The kept words of an issued revision, changed since":                                                                          "Die behaltenen Worte einer Ausgabe, seither geändert",
	"They are the evidence of what people worked by. Once edited, nobody can say any more what was issued, or what changed since.": "Sie sind der Beweis, wonach gearbeitet wurde. Einmal geändert, kann niemand mehr sagen, was herausgegeben wurde oder was sich seither änderte.",
	"Take the file back from version control as it was issued. To change a procedure, change it in procedures/ and issue it.":      "Holen Sie die Datei, wie sie herausgegeben wurde, aus der Versionsverwaltung zurück. Um eine Anweisung zu ändern, ändern Sie sie in procedures/ und geben sie heraus.",

	"A circuit that is filled from the wrong can": "Ein Kreis, der aus der falschen Kanne gefüllt wird",
	"Two oils look alike in the jug. What goes into a circuit that it is not made for eats its seals, and is not seen until they leak.": "Zwei Öle sehen in der Kanne gleich aus. Was in einen Kreis kommt, für den es nicht gemacht ist, greift die Dichtungen an und zeigt sich erst, wenn sie lecken.",
	"Link the supply that the machine file names for the fluid, or mend supply: there.":                                                 "Verlinken Sie das Material, das die Datei der Maschine für die Flüssigkeit nennt, oder berichtigen Sie dort supply:.",
	"A sign that no reader sees, or that was lost":                                                                                      "Ein Zeichen, das kein Leser sieht oder das verloren ging",
	"A control character comes along with a copied text: it is printed as a box or as nothing, and other programs end the text there. A sign that turns letters round shows people another text than the one that is checked. Where a sign was lost, it may have been the ± of a limit or the µ of a unit.": "Ein Steuerzeichen kommt mit kopiertem Text herein: gedruckt wird es als Kästchen oder gar nicht, und andere Programme hören dort mit dem Text auf. Ein Zeichen, das die Richtung der Buchstaben umkehrt, zeigt den Leuten einen anderen Text als den geprüften. Wo ein Zeichen verloren ging, kann es das ± eines Grenzwerts oder das µ einer Einheit gewesen sein.",
	"Take it out, and write what belongs there: ± µ ° Ω and – are lost most often.": "Nehmen Sie es heraus und schreiben Sie, was dort hingehört: ± µ ° Ω und – gehen am häufigsten verloren.",
}
