package spanish

// findingsRules is the titles, reasons and mends of the rules that are not the walk's.
var findingsRules = map[string]string{
	"A language for which the program has no words": "Un idioma para el que el programa no tiene palabras",
	"What the program itself puts on a page (Before you start, Fetch, Wait) stands there in another language, and what it understands of texts it cannot look for.":                                         "Lo que el programa mismo pone en una página (Antes de empezar, Traer, Esperar) está ahí en otro idioma, y lo que entiende de los textos no lo puede buscar.",
	"The manual's own texts stand as they are written. The pages mark the borrowed words with their language, so that a screen reader speaks them right. A language is added to the program as one folder.": "Los textos del manual se quedan como están escritos. Las páginas marcan las palabras prestadas con su idioma, para que un lector de pantalla las diga bien. Un idioma se añade al programa como una carpeta.",

	"A name that nothing has": "Un nombre que no tiene nada",
	"A link to a tool, an energy or a procedure that is not there sends someone looking for it at the bay.": "Un enlace a una herramienta, una energía o un procedimiento que no existe manda a alguien a buscarlo por el puesto.",
	"Write the id as its register, machine file or procedure has it, or make the entry.":                    "Escriba el id como está en su lista, en el archivo de la máquina o en el procedimiento, o haga la entrada.",

	"A link of a kind that the format does not have":                       "Un enlace de un tipo que el formato no tiene",
	"A link whose kind nobody knows does nothing, and looks as if it did.": "Un enlace cuyo tipo nadie conoce no hace nada, y parece que sí.",
	"Write one of the link kinds. A page elsewhere begins with https:.":    "Escriba uno de los tipos de enlace. Una página de fuera empieza por https:.",

	"An address that could run a program or fetch from elsewhere":                                 "Una dirección que podría ejecutar un programa o traer algo de fuera",
	"The pages run nothing that a text brought along, and they make no request outside the shop.": "Las páginas no ejecutan nada que venga en un texto, y no piden nada fuera del taller.",
	"Link to a page with https:, or to a file inside the manual.":                                 "Enlace una página con https:, o un archivo del manual.",

	"A link to a file that is not in the manual":                               "Un enlace a un archivo que no está en el manual",
	"It is found broken at the bay, with the job open.":                        "Que está roto se descubre en el puesto, con el trabajo abierto.",
	"Put the file into the manual's folder, or write its path from this file.": "Ponga el archivo en la carpeta del manual, o escriba su camino desde este archivo.",

	"A picture that is not in the manual":                               "Una imagen que no está en el manual",
	`A step that says "as shown" and shows nothing is guessed at.`:      "Un paso que dice «como se muestra» y no muestra nada deja adivinar.",
	"Put the picture into pictures/, or write its path from this file.": "Ponga la imagen en pictures/, o escriba su camino desde este archivo.",

	"A record of someone who is not in readings/people.csv":          "Un registro de alguien que no está en readings/people.csv",
	"A record that belongs to nobody counts for nobody.":             "Un registro que no es de nadie no cuenta para nadie.",
	"Write the person's id as people.csv has it, or add the person.": "Escriba el id de la persona como está en people.csv, o añada a la persona.",

	"An amount that cannot be read, or of the wrong kind":              "Una cantidad que no se puede leer, o de otra magnitud",
	"A torque that is read wrongly is worse than one that is missing.": "Un par mal leído es peor que uno que falta.",
	"Write number, space, unit, as in 110 N·m or 1 h 30 min.":          "Escriba número, espacio, unidad, como en 110 N·m o 1 h 30 min.",

	"A field that the format does not have":                                                                           "Un campo que el formato no tiene",
	"A field that nobody reads looks as if it worked: a misspelt limit is no limit.":                                  "Un campo que nadie lee parece que funciona: un límite mal escrito no es un límite.",
	"Write the field's name as the format has it, or take the line out. Inside { } a text with a comma needs quotes.": "Escriba el nombre del campo como lo tiene el formato, o quite la línea. Dentro de { } un texto con una coma va entre comillas.",

	"A value of the wrong kind": "Un valor del tipo equivocado",
	"A list where a text belongs, or a word that is not one of the choices, cannot be acted on.":                      "Con una lista donde va un texto, o con una palabra que no es ninguna de las posibles, no se puede hacer nada.",
	"Write the kind of value shown. Text that holds a comma inside { } or [ ], or a colon and a space, needs quotes.": "Escriba el tipo de valor que se muestra. Va entre comillas un texto que tiene una coma dentro de { } o [ ], o dos puntos y un espacio.",

	"A field that must be there":                      "Un campo que tiene que estar",
	"Without it the entry cannot be shown or judged.": "Sin él la entrada no se puede mostrar ni juzgar.",
	"Write the field.":                                "Escriba el campo.",

	"An id that cannot be used": "Un id que no se puede usar",
	"Ids stand in links, file names and addresses on every machine of the shop, so they are plain.":                                   "Los ids están en enlaces, nombres de archivo y direcciones en todos los ordenadores del taller; por eso son sencillos.",
	"Use a to z, 0 to 9 and single hyphens, at most 64 characters, and none of the names that Windows keeps for itself (con, nul …).": "Use de la a a la z, de 0 a 9 y guiones sueltos, como mucho 64 caracteres, y ninguno de los nombres que Windows se guarda (con, nul …).",

	"A last row whose line does not end": "Una última fila cuya línea no termina",
	"Each row that the program adds ends its line. Where the last one does not, the file was cut: a disk was full, or a copy broke off. Half a name or half a fingerprint looks like a whole one.": "Cada fila que añade el programa termina su línea. Si la última no termina, el archivo se cortó: un disco estaba lleno, o una copia se interrumpió. Medio nombre o media huella parece uno entero.",
	"See whether the row is whole, and end its line with Enter; else take the row out and record it again. No row is added behind it before.":                                                      "Vea si la fila está entera, y termine su línea con Intro; si no, quite la fila y regístrelo de nuevo. Hasta entonces no se añade ninguna fila detrás.",

	"A file that cannot be read as what it is":                                                                                                               "Un archivo que no se puede leer como lo que es",
	"What cannot be read cannot be checked, and it is left out of everything that rests on it.":                                                              "Lo que no se puede leer no se puede comprobar, y se deja fuera de todo lo que se apoya en ello.",
	"Mend the spelling at the place shown. Put text in quotes where it holds a colon and a space, a space and #, or starts with one of ! # & * @ % | > [ {.": "Corrija la escritura en el lugar que se muestra. Ponga entre comillas un texto que tiene dos puntos y un espacio, o un espacio y #, o que empieza por uno de estos: ! # & * @ % | > [ {.",

	"A heading or a list that does not make phases and steps": "Un título o una lista que no hace fases y pasos",
	"A heading at level 2 opens a phase and a numbered list under it holds the steps. Another level, a phase of the same name or a list before the first phase leaves steps without a number to call out.": "Un título de nivel 2 abre una fase y una lista numerada debajo tiene los pasos. Otro nivel, una fase del mismo nombre o una lista antes de la primera fase dejan pasos sin un número que decir en voz alta.",
	"Write ## before each phase's name, give each phase a name of its own, and put the numbered list under a phase.":                                                                                       "Escriba ## delante del nombre de cada fase, dé a cada fase un nombre propio, y ponga la lista numerada debajo de una fase.",

	"A procedure without a step":                                                "Un procedimiento sin pasos",
	"A page with nothing to do is found at the bay and helps nobody.":           "Una página en la que no hay nada que hacer se descubre en el puesto y no ayuda a nadie.",
	"Write a phase (## Work) and a numbered list under it, or make it a draft.": "Escriba una fase (## Trabajo) y una lista numerada debajo, o haga de él un borrador.",

	"HTML in a procedure": "HTML en un procedimiento",
	"HTML prints differently in every viewer, and it can carry scripts into the shop's pages.":           "El HTML se ve distinto en cada programa, y puede meter código ajeno en las páginas del taller.",
	`Write it as Markdown. A comment belongs into the front matter, after #. A literal < is written \<.`: `Escríbalo como Markdown. Un comentario va en el encabezado, detrás de #. El signo < se escribe \<.`,

	"An id or a field that is written twice":                                                            "Un id o un campo escrito dos veces",
	"Of two entries with one id only one can be meant; the other is read by people and by nobody else.": "De dos entradas con un mismo id solo puede valer una; la otra la lee la gente y nadie más.",
	"Keep one, or give the second an id of its own.":                                                    "Deje una, o dé a la segunda un id propio.",

	"A tool whose calibration has run out": "Una herramienta con la calibración vencida",
	"What is set or measured with it counts for nothing until it is checked, and jobs that were done with it may have to be done again.": "Lo que se ajusta o se mide con ella no cuenta hasta que se compruebe, y quizá haya que repetir los trabajos que se hicieron con ella.",
	"Send the tool to calibration, and write the new day as its last.":                                                                   "Mande calibrar la herramienta, y escriba el día nuevo en last:.",

	"A number of fasteners that is not the machine's":                              "Un número de fijaciones que no es el de la máquina",
	"Who counts four and finds five leaves one in, or takes the wrong part off.":   "Quien cuenta cuatro y encuentra cinco deja una puesta, o desmonta la pieza equivocada.",
	"Write the number that holds the part, or mend held-by in the machine's file.": "Escriba cuántas sujetan la pieza, o corrija held-by: en el archivo de la máquina.",

	"A part that is too heavy for the people of the step":                                              "Una pieza demasiado pesada para las personas del paso",
	"A back that is strained once is never what it was, and a part that is dropped falls on feet.":     "Una espalda dañada una vez no vuelve a ser la misma, y una pieza que se cae da en los pies.",
	"Ask for more people in the step with [](people:2), or name lifting gear, a tool of kind lifting.": "Pida más personas en el paso con [](people:2), o nombre un equipo de elevación, una herramienta de tipo lifting.",

	"A lift above the recommended weight limit": "Un levantamiento por encima del peso recomendado",
	"Far in front of the body, low down, turned or often, less than the shop's limit strains a back. The revised NIOSH lifting equation says how much less, for one person.":                    "Muy por delante del cuerpo, cerca del suelo, con giro o muchas veces, menos que el límite del taller ya daña una espalda. La ecuación de levantamiento revisada de NIOSH dice cuánto menos, para una persona.",
	"Ask for more people in the step with [](people:2), name lifting gear, bring the part nearer to the body or to the height of the knuckles, or mend the part's lift: in the machine's file.": "Pida más personas en el paso con [](people:2), nombre un equipo de elevación, acerque la pieza al cuerpo o a la altura de los nudillos, o corrija lift: de la pieza en el archivo de la máquina.",

	"A stage by angle, and no angle gauge": "Una etapa por ángulo, y ningún medidor de ángulo",
	"An angle by eye is off by more than the stage allows, and the bolt is stretched for good or hardly at all.": "Un ángulo a ojo se desvía más de lo que la etapa permite, y el tornillo queda estirado para siempre o casi nada.",
	"Name the angle gauge in the step, or list it under tools. Its kind in the register is angle-gauge.":         "Nombre el medidor de ángulo en el paso, o póngalo en tools:. Su tipo en la lista es angle-gauge.",

	"A threaded fastener without a torque":                                                   "Una fijación con rosca y sin par",
	"How tight is then everybody's own guess: too loose works itself off, too tight strips.": "Cuánto se aprieta lo adivina entonces cada uno: con poco se afloja sola, con demasiado se pasa la rosca.",
	"Write torque: or stages:, or torque: hand for what is tightened by hand.":               "Escriba torque: o stages:, o torque: hand para lo que se aprieta a mano.",

	"Something that the program cannot judge": "Algo que el programa no puede juzgar",
	"A thread or a class that no table has, or a sign that is not drawn, may be right. But nothing was worked out from it, and a page without a finding looks as if it had been.": "Una rosca o una clase que no está en ninguna tabla, o una señal que no se dibuja, puede ser correcta. Pero de ella no se calculó nada, y una página sin hallazgos parece decir que sí.",
	"Look the number up again; where it is right, leave it as it is.": "Busque otra vez el número; si es correcto, déjelo como está.",

	"A step that needs more people than the job has":                                                     "Un paso que necesita más personas de las que tiene el trabajo",
	"The job is begun by as many as the page says, and stands half open until a second person is found.": "El trabajo lo empiezan tantas personas como dice la página, y se queda a medio abrir hasta que se encuentra a otra.",
	"Write people: in the front matter with the most that any step or called procedure needs.":           "Escriba people: en el encabezado con el número mayor que necesite un paso o un procedimiento que se realiza.",

	"No tool here fits the fastener": "Ninguna herramienta de aquí sirve para la fijación",
	"The wrong socket is found out under the machine: a walk to the crib at best, a rounded bolt at worst.":           "Que el vaso no es el que sirve se descubre debajo de la máquina: en el mejor caso es un paseo al almacén, en el peor un tornillo redondeado.",
	"Name a socket, spanner or key that fits, put the size into its fits, or mend the fastener's width across flats.": "Nombre un vaso o una llave que sirva, ponga la medida en su fits:, o corrija el ancho entre caras de la fijación.",

	"A torque that stretches the bolt for good": "Un par que estira el tornillo para siempre",
	"Above its proof load a bolt stays longer than it was: it lets go in service, or tears when it is tightened the next time.": "Por encima de su carga de prueba un tornillo se queda más largo de lo que era: se suelta en servicio, o se rompe la próxima vez que se aprieta.",
	"Look the torque up again, and the thread, the class and the condition: oil or zinc makes more pull of the same torque.":    "Busque otra vez el par, y la rosca, la clase y el estado: con aceite o cinc el mismo par tira más.",

	"A torque, and no torque wrench":                                         "Un par, y ninguna llave dinamométrica",
	"A torque that is written and cannot be set is felt by the arm instead.": "Un par que está escrito y no se puede ajustar se da a pulso.",
	"Name the torque wrench in the step, or list it under tools.":            "Nombre la llave dinamométrica en el paso, o póngala en tools:.",

	"A torque that no wrench here is made for": "Un par para el que no vale ninguna llave de aquí",
	"A torque wrench is used from 20 % of its maximum up to it; below that it clicks when it likes, and beyond its ends it cannot be set.":       "Una llave dinamométrica se usa desde el 20 % de su máximo hasta el máximo; por debajo salta cuando quiere, y más allá de sus extremos no se puede ajustar.",
	"Name a wrench whose range holds the torque at or above 20 % of its maximum. Behind an adapter it is the setting that must be in the range.": "Nombre una llave en cuyo alcance esté el par, al 20 % de su máximo o más. Con un adaptador es el ajuste lo que tiene que estar en el alcance.",

	"A number that is not the register's":                                           "Un número que no es el de la lista",
	"Two numbers for one thing: the hands follow one and the inspection the other.": "Dos números para una cosa: las manos siguen uno y la inspección el otro.",
	"Write the register's number, or leave the link's words empty and the page prints them. A number of another thing goes outside the link.": "Escriba el número de la lista, o deje vacías las palabras del enlace y la página las pone. Un número de otra cosa va fuera del enlace.",

	"A link whose words order the opposite":                                                      "Un enlace cuyas palabras ordenan lo contrario",
	"The hands do what the words say; the order of the job was checked by what the link says.":   "Las manos hacen lo que dicen las palabras; el orden del trabajo se comprobó con lo que dice el enlace.",
	"Change the words, or the link: [Undo the bolts](loosen:…), [tighten the bolts](tighten:…).": "Cambie las palabras o el enlace: [Afloje los tornillos](loosen:…), [apriete los tornillos](tighten:…).",

	"Procedures that perform each other in a ring": "Procedimientos que se realizan unos a otros en círculo",
	"A job that performs itself, by whatever way, never ends, and nothing can be worked out of it: no kit, no time, no order.": "Un trabajo que se realiza a sí mismo, por el camino que sea, no acaba nunca, y no se puede calcular nada de él: ni lo que hay que traer, ni el tiempo, ni el orden.",
	"Take one do: out of the ring, or put what both need into a procedure of its own. Further reading is see:.":                "Quite un do: del círculo, o ponga lo que ambos necesitan en un procedimiento aparte. Lo que es solo para leer más es see:.",

	"A job that performs a draft or a retired procedure": "Un trabajo que realiza un borrador o un procedimiento retirado",
	"Drafts are not published, and what is retired is no longer how the shop works. Whoever follows the job would stand before a link that leads nowhere.": "Los borradores no salen en las páginas, y lo retirado ya no es la manera de trabajar del taller. Quien sigue el trabajo se encontraría con un enlace que no lleva a ninguna parte.",
	"Issue the draft, perform what stands instead, or make this procedure a draft until the other is ready.":                                               "Publique el borrador, realice el que vale en su lugar, o deje este procedimiento como borrador hasta que el otro esté listo.",

	"A procedure that is another than its last issued revision":                                                                                           "Un procedimiento que no es como su última revisión publicada",
	"Readers trust that what is on the page was checked and that they are told of changes. What was never issued was neither.":                            "Quien lee confía en que lo que está en la página fue revisado y en que se le avisa de los cambios. Con lo que nunca se publicó no pasó ni lo uno ni lo otro.",
	"Have the change checked, then issue it: baybinder issue PROCEDURE --reason … --readers … Until then, build --preview shows it, marked as a preview.": "Haga revisar el cambio y publíquelo: baybinder issue PROCEDIMIENTO --reason … --readers … Hasta entonces build --preview lo muestra, marcado como vista previa.",

	"A fault code that no reader can show":                                                                                     "Un código de avería que ningún lector puede mostrar",
	"Someone looks for the code on the display, does not find it, and takes the wrong branch.":                                 "Alguien busca el código en la pantalla, no lo encuentra y toma el camino equivocado.",
	"Write the code as the reader shows it: P, C, B or U, then 0 to 3, then three figures or A to F (SAE J2012, ISO 15031-6).": "Escriba el código como lo muestra el lector: P, C, B o U, luego de 0 a 3, luego tres cifras o letras de la A a la F (SAE J2012, ISO 15031-6).",

	"A procedure that makes less of a hazard, and does not say why":                                                                                      "Un procedimiento que hace menor un peligro y no dice por qué",
	"The register says what the hazard can do to a person. A procedure that says less, or drops a glove, needs a reason that the next reader can judge.": "La lista dice lo que el peligro puede hacerle a una persona. Un procedimiento que dice menos, o que quita un guante, necesita una razón que el próximo lector pueda juzgar.",
	"Write because: with the reason beside the override, or take the override out.":                                                                      "Escriba because: con la razón al lado del cambio, o quite el cambio.",

	"A hazard that says only half of what it must": "Un peligro que dice solo la mitad de lo que debe",
	"A caution box says what the danger is, what it does to you and how to avoid it. Without one of the three it is a scare and no help.": "Un recuadro de aviso dice cuál es el peligro, qué le hace y cómo evitarlo. Si falta una de las tres cosas, asusta y no ayuda.",
	"Write nature:, consequence: and avoid: in the hazard's entry.":                                                                       "Escriba nature:, consequence: y avoid: en la entrada del peligro.",

	"A hold, a hazard or a torque whose brackets are empty": "Una parada, un peligro o un par con los corchetes vacíos",
	"The page prints the register's words for an empty link. Whoever opens the file itself sees nothing there, does not stop, or does not see the torque.": "En un enlace vacío la página pone las palabras de la lista. Quien abre el archivo mismo no ve nada ahí, no se detiene, o no ve el par.",
	"Write words between the brackets: [Wait 60 min](hold:capacitor-wait). baybinder settle writes the register's words there.":                            "Escriba palabras entre los corchetes: [Espere 60 min](hold:capacitor-wait). baybinder settle pone ahí las palabras de la lista.",

	"A role that the job takes and the procedure does not ask for":                                                               "Una función que el trabajo pide y el procedimiento no",
	"Who may do the job is read off the first lines of the page. A role that shows up halfway stops the job, or is passed over.": "Quién puede hacer el trabajo se lee en las primeras líneas de la página. Una función que aparece a medio camino detiene el trabajo, o se pasa por alto.",
	"Write the role into needs: in the front matter.":                                                                            "Escriba la función en needs: del encabezado.",

	"A step without a time, where others have one":                                                                     "Un paso sin tiempo, donde otros lo tienen",
	"The times of a job are added up. One step that is left out makes the sum too short, and nobody sees by how much.": "Los tiempos de un trabajo se suman. Si falta el de un paso la suma es corta, y nadie ve cuánto.",
	"Write [](time:8min) at the end of the step, or one time for the whole phase in its first paragraph.":              "Escriba [](time:8min) al final del paso, o un solo tiempo para toda la fase en su primer párrafo.",

	"An act or a hold that stands outside the numbered steps": "Una acción o una parada fuera de los pasos numerados",
	"Only a numbered list under a phase holds steps. What stands beside it is shown on the page and does nothing: it has no number to call out, and what is taken off or switched off there counts as on.": "Solo una lista numerada bajo una fase tiene pasos. Lo que está al lado sale en la página y no hace nada: no tiene un número que decir en voz alta, y lo que ahí se desmonta o se corta cuenta como puesto.",
	"Write it as a numbered step: 1. and a space at the margin. Where the thing is only mentioned, link it with part:, fastener:, energy:, fluid: or setting:.":                                            "Escríbalo como un paso numerado: 1. y un espacio, al margen. Donde la cosa solo se menciona, enlácela con part:, fastener:, energy:, fluid: o setting:.",

	"Someone checked, approved or inspected without the role for it on that day": "Alguien revisó, aprobó o inspeccionó sin tener ese día la función para ello",
	"Who may say that a text is right, or that people work by it, is settled before the day and not after. Of energy control, 29 CFR 1910.147(c)(6)(i)(A) has the inspection done by an authorized employee other than those who use the procedure. Local codes come first.": "Quién puede decir que un texto está bien, o que la gente trabaja según él, se decide antes del día y no después. Para el control de energías, 29 CFR 1910.147(c)(6)(i)(A) pide que inspeccione un empleado autorizado que no sea de los que usan el procedimiento. Las normas locales van primero.",
	"Have it done by someone who holds the role, and record that too. Rows stay as they are. Who may check and approve is issue: in shop.yaml.":                                                                                                                              "Haga que lo haga alguien que tenga la función, y regístrelo también. Las filas se quedan como están. Quién puede revisar y aprobar es issue: en shop.yaml.",

	"Something that a step needs and the front matter does not list":                                                                              "Algo que un paso necesita y que no está en el encabezado",
	"The lists are what people fetch, and warn each other of, before they start. What is missing there is missing at the bay, with the job open.": "Las listas son lo que la gente trae, y de lo que se avisa, antes de empezar. Lo que falta ahí falta en el puesto, con el trabajo abierto.",
	"Write its id into the list, with the amount where it needs one, or let baybinder settle do it.":                                              "Escriba su id en la lista, con la cantidad donde haga falta, o deje que lo haga baybinder settle.",

	"A job by somebody who, by the files, was not qualified or not up to date": "Un trabajo de alguien que, según los archivos, no tenía la función o no estaba al día",
	"The record shows who did the job and on which day. Who had not read what stood, or held none of the roles that it needs, did it without what the shop asks for. Local codes decide who may work.": "El registro muestra quién hizo el trabajo y qué día. Quien no había leído lo que valía, o no tenía ninguna de las funciones que pide, lo hizo sin lo que el taller exige. Quién puede trabajar lo deciden las normas locales.",
	"Look the job over with somebody who is qualified. Where the list or the record lacks what was so, add it: rows of a past day are added with --today DAY.":                                         "Repase el trabajo con alguien que tenga la función. Donde a la lista o al registro les falta lo que fue así, añádalo: las filas de un día pasado se añaden con --today DÍA.",

	"A translation that leaves something out": "Una traducción que omite algo",
	"Whoever reads the page in that language does not do a step that is not there, and does not heed a caution in words that they cannot read. A shop may translate one procedure after another; what it translates, it translates whole.": "Quien lee la página en ese idioma no hace un paso que no está, y no atiende a un aviso en palabras que no puede leer. Un taller puede traducir un procedimiento tras otro; el que traduce, lo traduce entero.",
	"Write the step as the original has it. Write the texts of its hazards and holds in register/hazards.LANGUAGE.yaml and register/holds.LANGUAGE.yaml. Until all is there, status: draft in the translation keeps it back.":              "Escriba el paso como lo tiene el original. Escriba los textos de sus peligros y paradas en register/hazards.IDIOMA.yaml y register/holds.IDIOMA.yaml. Hasta que esté todo, status: draft en la traducción la retiene.",

	"A line of the front matter that no step uses": "Una línea del encabezado que ningún paso usa",
	"A list written from memory sends people for what the job does not need, and hides what a step forgot to name: a hazard without a box, a hold that stops nobody.": "Una lista escrita de memoria manda a buscar lo que el trabajo no necesita, y tapa lo que un paso olvidó nombrar: un peligro sin recuadro, una parada que no detiene a nadie.",
	"Link it in the step that uses it, or take it out of the list. A tool that is only worn, measured with or locked with may stay.":                                  "Enlácelo en el paso que lo usa, o quítelo de la lista. Una herramienta que solo se lleva puesta, o con la que solo se mide o se bloquea, puede quedarse.",

	"A record of a day that is yet to come": "Un registro de un día que aún no ha llegado",
	"Nobody can have read or issued anything on it, so it counts for nothing until then. It is a slip of the pen, or of a machine's clock.": "Nadie puede haber leído o publicado nada ese día, así que hasta entonces no cuenta. Es un error al escribir, o del reloj de un ordenador.",
	"Look up the day and correct it; or ask for the day that you mean with --today.":                                                        "Busque el día y corríjalo; o pida el día que quiere con --today.",

	"An instruction that does not say who acts": "Una instrucción que no dice quién actúa",
	`"Must be tightened" can be read as said of somebody else, or as done already. "Tighten" is said to whoever reads it.`:                       "«Debe ser apretado» se puede entender como dicho a otro, o como ya hecho. «Apriete» se le dice a quien lo lee.",
	`Begin with the verb: not "the bolts must be tightened", but "tighten the bolts". What is looked for ("the lid is shut") may stay as it is.`: "Empiece por el verbo: no «los tornillos deben ser apretados», sino «apriete los tornillos». Lo que se mira («la tapa está cerrada») puede quedarse así.",

	"A picture that no words stand for": "Una imagen sin palabras que la sustituyan",
	"Who listens to the page, or reads it where the picture did not print, misses what it shows.":                        "Quien escucha la página, o la lee donde la imagen no se imprimió, se pierde lo que muestra.",
	"Write between the brackets what a person should see in it: ![The plug drawn out, the lock through its handle.](…).": "Escriba entre los corchetes lo que hay que ver en ella: ![La clavija fuera, el candado por su asa.](…).",

	"Someone should have read this by now": "Alguien ya debería haber leído esto",
	"A reading plan with a date that passed is a promise that nobody keeps, and the person works beside those who know.": "Un plan de lectura con una fecha pasada es una promesa que nadie cumple, y la persona trabaja junto a quienes sí saben.",
	"Have it read and record it: baybinder readings record PERSON PROCEDURE read. Or give the plan a longer within:.":    "Haga que lo lea y regístrelo: baybinder readings record PERSONA PROCEDIMIENTO read. O dé al plan un within: más largo.",

	"Someone read this before it changed": "Alguien leyó esto antes de que cambiara",
	"Whoever read the old wait or the old torque works by it, and has a record that says they are up to date. Of energy control, 29 CFR 1910.147(c)(7) asks for training anew where the procedure changes. Local codes come first.": "Quien leyó la espera antigua o el par antiguo trabaja con ellos, y tiene un registro que dice que está al día. Para el control de energías, 29 CFR 1910.147(c)(7) pide formar de nuevo cuando cambia el procedimiento. Las normas locales van primero.",
	"Have them read it again, then record it: baybinder readings record PERSON PROCEDURE read.":                                                                                                                                     "Haga que lo lean de nuevo y regístrelo: baybinder readings record PERSONA PROCEDIMIENTO read.",

	"A record of something that the manual does not have": "Un registro de algo que el manual no tiene",
	"A job that belongs to no procedure, step or unit of the manual is shown nowhere, or beside the wrong machine. The manual may have changed since, so it stops nothing.":   "Un trabajo que no es de ningún procedimiento, paso o unidad del manual no sale en ninguna parte, o sale junto a otra máquina. El manual puede haber cambiado desde entonces, así que no detiene nada.",
	"If the procedure has another id now, write the old one in its was:. If the unit or the option is wrong, ask who did the job; a record is evidence and is not rewritten.": "Si el procedimiento tiene ahora otro id, escriba el antiguo en su was:. Si la unidad o la opción está mal, pregunte a quien hizo el trabajo; un registro es una prueba y no se reescribe.",

	"A record that contradicts itself": "Un registro que se contradice",
	"A value out of its limit that is recorded as passed puts a machine to work that did not pass. The page cannot write that, so the file was changed by hand or is damaged.": "Un valor fuera de su límite que está registrado como cumplido pone a trabajar una máquina que no pasó la prueba. La página no puede escribir eso: el archivo se cambió a mano o está dañado.",
	"Find out what was measured, and measure again if nobody knows. Put the file back as the page saved it, or take it out and keep it on paper.":                              "Averigüe qué se midió, y mida de nuevo si nadie lo sabe. Ponga el archivo como lo guardó la página, o sáquelo y guárdelo en papel.",

	"The same row twice": "La misma fila dos veces",
	"One thing was done once. A second row of it was added by a slip, or by two people for one class.":                            "Una cosa se hizo una vez. Una segunda fila de ella se añadió por descuido, o la añadieron dos personas para una misma clase.",
	"Find out which is right. Rows are never taken out of a record that was handed on; of one that was not, take out the second.": "Averigüe cuál es la correcta. De un registro que ya se entregó no se quitan filas nunca; de uno que no, quite la segunda.",

	"A procedure that nobody has looked over for too long": "Un procedimiento que nadie ha repasado desde hace demasiado tiempo",
	"Machines, supplies and ways of working change while the page stays. A date that somebody must answer for is how that comes out. Of energy control, 29 CFR 1910.147(c)(6) asks for an inspection at least yearly, by someone other than those who use the procedure. Local codes come first.": "Las máquinas, los suministros y las maneras de trabajar cambian, y la página se queda igual. Eso se descubre con una fecha de la que alguien responde. Para el control de energías, 29 CFR 1910.147(c)(6) pide una inspección al menos cada año, por alguien que no sea de los que usan el procedimiento. Las normas locales van primero.",
	"Walk it through at the machine with somebody who works by it. Where nothing is to be changed, that is a row of the record: baybinder readings record WHO PROCEDURE inspected --by INSPECTOR --note TEXT. Else change it and issue it. How often is review-every: in shop.yaml.":              "Recórralo en la máquina con alguien que trabaje con él. Si no hay que cambiar nada, es una fila del registro: baybinder readings record QUIÉN PROCEDIMIENTO inspected --by INSPECTOR --note TEXTO. Si no, cámbielo y publíquelo. Cada cuánto es review-every: en shop.yaml.",

	"A role that ran out": "Una función que venció",
	"The shop still lists the person as someone who may do the work, and the licence or the yearly check behind it is over.":                                                                                 "El taller sigue teniendo a la persona en la lista de quienes pueden hacer el trabajo, y el carné o la revisión anual en que se apoya ha vencido.",
	"Renew it and record that with readings role, or record there that it is withdrawn; one that a plan gave is renewed too by going through the plan again. How long it lasts is renew-every: of the role.": "Renuévela y regístrelo con readings role, o registre ahí que se retira; la que dio un plan se renueva también haciendo el plan de nuevo. Cuánto dura es renew-every: de la función.",

	"A row that was added after one that is not there": "Una fila que se añadió después de otra que no está",
	"Each row names the row that it was added after. Where that is gone, a row was taken out or changed, and nobody can say what it held.":       "Cada fila nombra aquella tras la que se añadió. Si esa no está, se quitó o se cambió una fila, y nadie puede decir qué tenía.",
	"Take the file back from version control. Rows that were cut off the end leave no later row to tell of it: an audit sheet of the time does.": "Recupere el archivo del control de versiones. Si se cortaron filas del final no queda ninguna posterior que lo diga: lo dice una hoja de auditoría de entonces.",

	"A revision that only its writer has checked, or work that nobody else inspected":                                   "Una revisión que solo ha revisado quien la escribió, o un trabajo que no inspeccionó nadie más",
	"Whoever wrote a text reads what was meant, not what stands there. A second person finds the step that is missing.": "Quien escribió un texto lee lo que quiso decir, no lo que está escrito. Una segunda persona encuentra el paso que falta.",
	"Have someone else check it or walk it through, and issue it again with their name.":                                "Haga que otra persona lo revise o lo recorra, y publíquelo de nuevo con su nombre.",

	"A signal word that was typed": "Una palabra de señal escrita a mano",
	"The signal word follows from the harm and from how likely it is, the same on every page. A typed one can say less than the register, and it stands in no box.": "La palabra de señal sale del daño y de su probabilidad, igual en todas las páginas. Una escrita a mano puede decir menos que la lista, y no está en ningún recuadro.",
	"Link the hazard: Mind [the charged capacitors](hazard:charged-capacitors). What is painted on the machine is quoted as code: `DANGER`.":                        "Enlace el peligro: Cuidado con [los condensadores cargados](hazard:charged-capacitors). Lo que está pintado en la máquina se cita como código: `PELIGRO`.",

	"A sentence of a step that has too many words":                                                                                                         "Una frase de un paso con demasiadas palabras",
	"Who reads at arm's length, with a tool in hand, keeps a short sentence in mind and looks a long one up again.":                                        "Quien lee a un brazo de distancia, con una herramienta en la mano, retiene una frase corta y tiene que volver a mirar una larga.",
	"Make two sentences of it, or put the reason into a paragraph of its own that begins with [Because](why:). The limit is words-in-a-step in shop.yaml.": "Haga dos frases de ella, o ponga la razón en un párrafo aparte que empiece por [Porque](why:). El límite es words-in-a-step en shop.yaml.",

	"A translation that says something else": "Una traducción que dice otra cosa",
	"The order of work, the energies and the refit are worked out from the original's links. If a translation has another link, another step or another number, the page says one thing and was checked for another.": "El orden del trabajo, las energías y el montaje salen de los enlaces del original. Si una traducción tiene otro enlace, otro paso u otro número, la página dice una cosa y se comprobó otra.",
	"Give each step the links, people, times and figures of the original. The order of links in a step is free; a decimal comma is a decimal point.":                                                                  "Dé a cada paso los enlaces, personas, tiempos y cifras del original. El orden de los enlaces en un paso es libre; una coma decimal vale como un punto decimal.",

	"A step that asks for more than one action": "Un paso que pide más de una acción",
	"A step is ticked off once. Of two actions in one step, the second is the one that is forgotten after an interruption.":                                                                                                                                                    "Un paso se marca una vez. De dos acciones en un paso, la segunda es la que se olvida después de una interrupción.",
	"Make a step of each. Isolate and lock, unlock and restore, free and cap, fill and bleed, refit and tighten of one thing, and putting in the tool that holds a load are one action, and so is what is done at the same time. The limit is actions-in-a-step in shop.yaml.": "Haga un paso de cada una. Cortar y bloquear, quitar el candado y devolver la energía, soltar y tapar, llenar y purgar, montar y apretar la misma cosa, y poner la herramienta que sujeta una carga son una sola acción, y también lo que se hace a la vez. El límite es actions-in-a-step en shop.yaml.",

	"A record of words that were never issued": "Un registro de palabras que nunca se publicaron",
	"It says that someone read something, and nobody can say what: another manual's page, a draft, or a row that was edited by hand. It counts as stale.": "Dice que alguien leyó algo, y nadie puede decir qué: la página de otro manual, un borrador, o una fila cambiada a mano. Cuenta como caducado.",
	"Find out what was read. If it was this procedure, have it read again and recorded: baybinder readings record PERSON PROCEDURE read.":                 "Averigüe qué se leyó. Si fue este procedimiento, haga que lo lea de nuevo y regístrelo: baybinder readings record PERSONA PROCEDIMIENTO read.",

	"A performance that counts for no plan": "Un trabajo hecho que no cuenta para ningún plan",
	"A plan asks for the job done under the eye of someone who may judge it. Seen by nobody, by oneself or by someone without the role on that day, it shows nothing.": "Un plan pide que el trabajo se haga bajo la mirada de alguien que puede juzgarlo. Si no lo vio nadie, o lo vio uno mismo o alguien sin la función ese día, no demuestra nada.",
	"Have it performed again before someone who holds the plan's assessor: role on the day. Rows stay as they are: they are what happened.":                            "Haga que lo haga de nuevo ante alguien que ese día tenga la función assessor: del plan. Las filas se quedan como están: son lo que pasó.",

	"Words of the template that nobody wrote over": "Palabras de la plantilla sobre las que nadie escribió",
	"Say here what is done: begin writes such a line to be written over. Left in a procedure that is no draft, it is a step without an instruction.": "«Diga aquí qué se hace»: begin escribe una línea así para que se escriba encima. Si se queda en un procedimiento que no es borrador, es un paso sin instrucción.",
	"Write what is done at that place, or take the line out. Until then write status: draft.":                                                        "Escriba lo que se hace en ese lugar, o quite la línea. Hasta entonces escriba status: draft.",

	"Words that two people read in two ways": "Palabras que dos personas entienden de dos maneras",
	"As needed, some, properly: each is a decision that the writer left to whoever stands at the bay, and nobody can check it afterwards.": "Según sea necesario, algunos, debidamente: cada una es una decisión que quien escribe dejó a quien está en el puesto, y después nadie puede comprobarla.",
	`Say how much, how often, until what is seen, or to which torque. What stands on the machine is quoted: "some".`:                       "Diga cuánto, cada cuánto, hasta ver qué, o a qué par. Lo que está escrito en la máquina va entre comillas: «algunos».",

	"The kept words of an issued revision, changed since":                                                                          "Las palabras guardadas de una revisión publicada, cambiadas después",
	"They are the evidence of what people worked by. Once edited, nobody can say any more what was issued, or what changed since.": "Son la prueba de aquello con lo que se trabajó. Una vez cambiadas, nadie puede decir ya qué se publicó, ni qué cambió desde entonces.",
	"Take the file back from version control as it was issued. To change a procedure, change it in procedures/ and issue it.":      "Recupere del control de versiones el archivo como se publicó. Para cambiar un procedimiento, cámbielo en procedures/ y publíquelo.",

	"A circuit that is filled from the wrong can": "Un circuito que se llena del bidón equivocado",
	"Two oils look alike in the jug. What goes into a circuit that it is not made for eats its seals, and is not seen until they leak.": "Dos aceites parecen iguales en la jarra. El que no es para ese circuito se come sus juntas, y no se nota hasta que hay fugas.",
	"Link the supply that the machine file names for the fluid, or mend supply: there.":                                                 "Enlace el suministro que el archivo de la máquina nombra para el fluido, o corrija ahí supply:.",
	"A sign that no reader sees, or that was lost":                                                                                      "Un signo que ningún lector ve, o que se perdió",
	"A control character comes along with a copied text: it is printed as a box or as nothing, and other programs end the text there. A sign that turns letters round shows people another text than the one that is checked. Where a sign was lost, it may have been the ± of a limit or the µ of a unit.": "Un carácter de control llega con un texto copiado: se imprime como un cuadro o no se imprime, y otros programas terminan ahí el texto. Un signo que da la vuelta a las letras muestra otro texto que el comprobado. Donde se perdió un signo, pudo ser el ± de un límite o la µ de una unidad.",
	"Take it out, and write what belongs there: ± µ ° Ω and – are lost most often.": "Quítelo y escriba lo que va ahí: ± µ ° Ω y – son los que más se pierden.",
}
