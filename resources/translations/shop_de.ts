<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>"Found to": how far the hole may be off (root mean square) where lengths are read to {read} and marks are known: {known}. These are common practice, no published source: set your own.</source>
   <translation>"Gefunden auf": wie weit das Loch daneben sein kann (quadratisches Mittel), wenn Längen auf {read} abgelesen werden und Marken bekannt sind: {known}. Das ist übliche Praxis, keine veröffentlichte Quelle: setzen Sie Ihre eigenen Werte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>1 to 2: {apart}</source>
   <translation>1 bis 2: {apart}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>100 mm in both directions</source>
   <translation>100 mm in beiden Richtungen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>A and B are the paper marks {a} and {b} of leaf {leaf}.</source>
   <translation>A und B sind die Papiermarken {a} und {b} von Blatt {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>A disc over the centre hides it; a new wedge cut wider makes it good.</source>
   <translation>Eine Scheibe über der Mitte verdeckt es; ein neuer, breiter geschnittener Keil macht es gut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>A knife along a straightedge slips: the other hand stays behind the blade's way, the straightedge is clamped, the offcut is cleared with the knife laid down.</source>
   <translation>Ein Messer am Lineal rutscht: die andere Hand bleibt hinter dem Weg der Klinge, das Lineal ist gespannt, der Abschnitt wird weggenommen, wenn das Messer abgelegt ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>A lean of {lean} deg puts the lowest leaf of a lift {lowest} off its line. Alike all along both seams it moves that piece's tip by {slide} along its axis, and the ring still closes. Coming up along every seam it would open or overlap the ring by {turn} deg, {gap} at the rim, at the most.</source>
   <translation>Eine Neigung von {lean} Grad setzt das unterste Blatt eines Teilstapels um {lowest} neben seine Linie. Längs beider Fugen gleich, rückt sie die Spitze dieses Teils um {slide} längs seiner Achse, und der Ring schließt sich dennoch. Längs jeder Fuge anwachsend öffnete oder überlappte sie den Ring um höchstens {turn} Grad, {gap} am Rand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>A lean of {lean} deg puts the lowest leaf of a lift {lowest} off its line. Joints of two such pieces open by up to twice that.</source>
   <translation>Eine Neigung von {lean} Grad setzt das unterste Blatt eines Teilstapels um {lowest} neben seine Linie. Fugen zweier solcher Teile öffnen sich um bis zum Doppelten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>A part that is under is trued {lost} beyond its tip, which goes with the waste: the tips no longer meet, their figure comes to lie {moved} apart.</source>
   <translation>Was zu klein ist, wird um {lost} über seine Spitze hinaus gefügt, die mit dem Verschnitt weggeht: die Spitzen treffen sich nicht mehr, ihre Textur kommt {moved} auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>A press, its hydraulics and a vacuum vessel hold energy: work only with what is rated for it and tested, never beyond its plate or its gauge's red mark, hands clear while it closes. A rigid vacuum vessel can collapse, a hose can burst. Follow local rules for pressure equipment, and leave repair to those who hold the licence.</source>
   <translation>Presse, Hydraulik und Vakuumbehälter halten Energie: nur mit dem arbeiten, was dafür ausgelegt und geprüft ist, nie über das Schild oder die rote Marke des Manometers, Hände weg beim Schließen. Ein starrer Vakuumbehälter kann einbrechen, ein Schlauch platzen. Örtliche Regeln für Druckgeräte befolgen und Reparaturen denen lassen, die die Zulassung haben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/trued.py" />
   <source>A ring of {ways} pieces needs {ways} angles; these are {count}.</source>
   <translation>Ein Ring aus {ways} Teilen braucht {ways} Winkel; dies sind {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>A seam is cut over by an angle or by a width, not by both; give 0 for one of them.</source>
   <translation>Eine Fuge wird um einen Winkel oder um eine Breite zu groß geschnitten, nicht um beides; geben Sie für eines davon 0.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>A test cut cannot have {count} wedges; cut 1 to 64, best half a ring of them.</source>
   <translation>Ein Probeschnitt kann nicht {count} Keile haben; schneiden Sie 1 bis 64, am besten einen halben Ring.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>A top takes {count} leaves that follow each other in the log, and of each {size}; a margin of {margin} all round is in the least size.</source>
   <translation>Eine Platte braucht {count} Blätter, die im Stamm aufeinander folgen, und von jedem {size}; ein Rand von {margin} ringsum ist im kleinsten Maß enthalten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/paper.py" />
   <source>A4 upright</source>
   <translation>A4 hoch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>A: {a}, B: {b} of leaf {leaf}, as it was outlined; mark them before anything is trimmed off.</source>
   <translation>A: {a}, B: {b} von Blatt {leaf}, wie es umrissen wurde; anzeichnen, bevor etwas abgeschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/paper.py" />
   <source>ANSI A upright</source>
   <translation>ANSI A hoch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Adhesive</source>
   <translation>Klebstoff</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Adhesive: {name}.</source>
   <translation>Klebstoff: {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Adhesives and finishes: the maker's sheet says what hands, skin, eyes and lungs must be kept from, at what temperature and for how long; it wins over any paper of ours.</source>
   <translation>Klebstoffe und Oberflächen: das Merkblatt des Herstellers sagt, wovor Hände, Haut, Augen und Lunge zu schützen sind, bei welcher Temperatur und wie lange; es geht jedem Papier von uns vor.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Adhesives: read label and safety sheet, ventilate, wear gloves and glasses. Urea, phenol and melamine resins give off formaldehyde, more so in heat; limits in air are 0.75 ppm over 8 h and 2 ppm over 15 min (29 CFR 1910.1048; check the current text). Isocyanates sensitise.</source>
   <translation>Klebstoffe: Etikett und Sicherheitsdatenblatt lesen, lüften, Handschuhe und Brille tragen. Harnstoff-, Phenol- und Melaminharze geben Formaldehyd ab, in Wärme mehr; Grenzwerte in der Luft sind 0.75 ppm über 8 h und 2 ppm über 15 min (29 CFR 1910.1048; aktuellen Text prüfen). Isocyanate sensibilisieren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>All edges lie {shifted} in alike: the ring closes all the same, each piece {moved} further in along its axis, and its figure with it.</source>
   <translation>Alle Kanten liegen gleich {shifted} innen: der Ring schließt sich trotzdem, jedes Teil {moved} weiter innen längs seiner Achse, und seine Textur mit ihm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>All edges lie {shifted} out alike: the ring closes all the same, each piece {moved} further out along its axis, and its figure with it.</source>
   <translation>Alle Kanten liegen gleich {shifted} außen: der Ring schließt sich trotzdem, jedes Teil {moved} weiter außen längs seiner Achse, und seine Textur mit ihm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>All files are made from one layout and carry its revision mark. Do not mix them with those of another mark: an older packet is kept beside this one, and nothing in it is changed.</source>
   <translation>Alle Dateien sind aus einem Legeplan gemacht und tragen seinen Änderungsvermerk. Nicht mit denen eines anderen Vermerks mischen: eine ältere Mappe bleibt neben dieser, und nichts darin wird geändert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>All leaves lie face up.</source>
   <translation>Alle Blätter liegen mit der Vorderseite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>All sheets are seen from the show face, and positions run {counted}, unless a sheet says that it shows a leaf.</source>
   <translation>Alle Zeichnungsblätter sind von der Sichtseite gesehen, und Plätze laufen {counted}, außer wo eines sagt, dass es ein Furnierblatt zeigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>All tips still meet in one point.</source>
   <translation>Alle Spitzen treffen sich noch in einem Punkt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>An inch cannot be parted into {value!r:.40} here; choose one of: {allowed}.</source>
   <translation>Ein Zoll lässt sich hier nicht in {value!r:.40} teilen; wählen Sie eines von: {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>An odd number of pieces has no straight diameter: only the last joint can be trued, from both its pieces alike.</source>
   <translation>Eine ungerade Zahl von Teilen hat keinen geraden Durchmesser: nur die letzte Fuge lässt sich fügen, von beiden Teilen gleich.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Approved by</source>
   <translation>Genehmigt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Area</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As cut</source>
   <translation>Wie geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As cut the rim is {over} over and the axis {axis} long.</source>
   <translation>Wie geschnitten ist der Rand um {over} größer und die Achse {axis} lang.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>As cut, seen from the face of the leaf.</source>
   <translation>Wie geschnitten, von der Vorderseite des Blatts gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>As entered from the maker's sheet: {said}.</source>
   <translation>Wie aus dem Merkblatt des Herstellers eingegeben: {said}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As it lies on its leaf, face up. Dashed: as cut.</source>
   <translation>Wie es auf seinem Blatt liegt, Vorderseite oben. Gestrichelt: wie geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As it lies on its leaf, face up; cut as drawn.</source>
   <translation>Wie es auf seinem Blatt liegt, Vorderseite oben; geschnitten wie gezeichnet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>As taped, apart, what is off {factor} times as large; grey: off</source>
   <translation>Wie geklebt, auseinander, Abweichungen {factor} mal so groß; grau: Abweichung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>As trimmed, seen from the face of the leaf.</source>
   <translation>Wie besäumt, von der Vorderseite des Blatts gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/tiles.py" />
   <source>At 1:1 this template takes {count} sheets of {paper}; the most is {most}: take larger paper.</source>
   <translation>In 1:1 braucht diese Schablone {count} Bogen {paper}; höchstens {most} sind möglich: nehmen Sie größeres Papier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>At the rim the figure beside a wedge's edge lies {moved} further inside than on the photograph.</source>
   <translation>Am Rand liegt die Textur neben der Kante eines Keils {moved} weiter innen als auf dem Foto.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>At the rim the figure beside a wedge's edge lies {moved} further outside than on the photograph.</source>
   <translation>Am Rand liegt die Textur neben der Kante eines Keils {moved} weiter außen als auf dem Foto.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>At the trued joints the mirror is off by {mirror_off} at the rim.</source>
   <translation>An den gefügten Fugen ist der Spiegel am Rand um {mirror_off} daneben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>At {spread:g} g/m2, as entered, that is {grams:.0f} g of adhesive, without what stays on roller and pot.</source>
   <translation>Bei {spread:g} g/m2, wie eingegeben, sind das {grams:.0f} g Klebstoff, ohne was an Rolle und Topf bleibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Axes that run along a seam: {along}.</source>
   <translation>Achsen, die längs einer Fuge laufen: {along}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>BACK UP</source>
   <translation>RÜCKSEITE OBEN</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Before a leaf is pinned, chalk on it, inside the outline near the rim: position, F or B for the side that will show, and an arrow towards the tip. The number at the leaf's end goes with the waste.</source>
   <translation>Bevor ein Blatt gestiftet wird, mit Kreide darauf schreiben, innerhalb des Umrisses nahe dem Rand: Platz, V (Vorderseite) oder R (Rückseite) für die Seite, die zu sehen sein wird, und einen Pfeil zur Spitze. Die Nummer am Blattende geht mit dem Verschnitt weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Before a leaf is pinned, chalk on it, inside the outline near the rim: position, F or B for the side that will show, and an arrow up the grain, to the leaf's upper end. The number at the leaf's end goes with the waste.</source>
   <translation>Bevor ein Blatt gestiftet wird, mit Kreide darauf schreiben, innerhalb des Umrisses nahe dem Rand: Platz, V (Vorderseite) oder R (Rückseite) für die Seite, die zu sehen sein wird, und einen Pfeil faseraufwärts, zum oberen Ende des Blatts. Die Nummer am Blattende geht mit dem Verschnitt weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Before each piece of tape look at the side up and at the tip, and at the figure across the seam.</source>
   <translation>Vor jedem Stück Papier auf die obere Seite und die Spitze sehen, und auf die Textur über der Fuge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Before you cut</source>
   <translation>Vor dem Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Before you cut, compare the revision mark in the title block with the model's: paper with another mark is stale.</source>
   <translation>Vor dem Schneiden den Änderungsvermerk im Schriftfeld mit dem des Modells vergleichen: Papier mit anderem Vermerk ist veraltet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Before you cut, compare the revision mark with the model's: paper with another mark is stale.</source>
   <translation>Vor dem Schneiden den Änderungsvermerk mit dem des Modells vergleichen: Papier mit anderem Vermerk ist veraltet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Between finished edge and blank a pin needs {BAND}: with less, hold the face with tape over the edge instead.</source>
   <translation>Zwischen fertiger Kante und Rohteil braucht ein Stift {BAND}: bei weniger das Furnier statt dessen mit Band über der Kante halten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Bill of materials</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Bring the trued edges together tip to tip, tape the middle first, then outwards.</source>
   <translation>Die gefügten Kanten Spitze an Spitze zusammenbringen, zuerst die Mitte kleben, dann nach außen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Bring the trued edges together, tape the middle first, then outwards.</source>
   <translation>Die gefügten Kanten zusammenbringen, zuerst die Mitte kleben, dann nach außen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Bundle</source>
   <translation>Paket</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Bundles</source>
   <translation>Pakete</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>By the errors of its holes alone the cut is off by up to {at_cut} (root mean square, leaf {leaf}).</source>
   <translation>Allein durch die Fehler der Löcher liegt der Schnitt bis zu {at_cut} daneben (quadratisches Mittel, Blatt {leaf}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Carry the pieces on a board, flat: tips are thin and break.</source>
   <translation>Die Teile flach auf einem Brett tragen: Spitzen sind dünn und brechen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Caution: prick with an awl away from the hand that holds the leaf, on a soft board. Drive the pins square: a pin that leans moves every leaf by its height in the stack.</source>
   <translation>Vorsicht: mit der Ahle von der Hand weg stechen, die das Blatt hält, auf weichem Brett. Stifte senkrecht einschlagen: ein schiefer Stift versetzt jedes Blatt nach seiner Höhe im Stapel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Caution: {caution}</source>
   <translation>Vorsicht: {caution}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Cautions</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Centre, axes and pins</source>
   <translation>Mitte, Achsen und Stifte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Chalk and pencil, on the glue side and the show face: come off before glue; they stain, and weaken the bond.</source>
   <translation>Kreide und Bleistift, auf Leimseite und Sichtseite: kommen vor dem Leimen weg; sie färben und schwächen die Leimung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Chalk marks guide the taping; they come off before glue.</source>
   <translation>Kreidezeichen leiten das Kleben; sie kommen vor dem Leimen weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Chalk number, side and arrow on each leaf inside the outline, as the marking sheet shows.</source>
   <translation>Nummer, Seite und Pfeil auf jedes Blatt innerhalb des Umrisses schreiben, wie das Blatt zum Anschreiben zeigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Chalk number, side and tip into every piece before it is cut: the end of the leaf goes with the waste. Chalk comes off before glue.</source>
   <translation>Nummer, Seite und Spitze in jedes Teil schreiben, bevor es geschnitten wird: das Blattende geht mit dem Verschnitt weg. Kreide kommt vor dem Leimen weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the back of leaves {backs}: the side that will be glued, so that the show side stays clean.</source>
   <translation>Auf die Rückseite der Blätter {backs} schreiben: die Seite, die geleimt wird, damit die Sichtseite sauber bleibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the back of leaves {backs}: the side that will show, so that the marks are read while the top is laid out.</source>
   <translation>Auf die Rückseite der Blätter {backs} schreiben: die Seite, die zu sehen sein wird, damit die Zeichen beim Auslegen der Platte gelesen werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces} and on the back of leaves {backs}: the side that will be glued, so that the show side stays clean.</source>
   <translation>Auf die Vorderseite der Blätter {faces} und auf die Rückseite der Blätter {backs} schreiben: die Seite, die geleimt wird, damit die Sichtseite sauber bleibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces} and on the back of leaves {backs}: the side that will show, so that the marks are read while the top is laid out.</source>
   <translation>Auf die Vorderseite der Blätter {faces} und auf die Rückseite der Blätter {backs} schreiben: die Seite, die zu sehen sein wird, damit die Zeichen beim Auslegen der Platte gelesen werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces}: the side that will be glued, so that the show side stays clean.</source>
   <translation>Auf die Vorderseite der Blätter {faces} schreiben: die Seite, die geleimt wird, damit die Sichtseite sauber bleibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces}: the side that will show, so that the marks are read while the top is laid out.</source>
   <translation>Auf die Vorderseite der Blätter {faces} schreiben: die Seite, die zu sehen sein wird, damit die Zeichen beim Auslegen der Platte gelesen werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Check the scale before use: both bars measure 100 mm (3.937 in). Fit to page shrinks a sheet.</source>
   <translation>Vor Gebrauch den Maßstab prüfen: beide Balken messen 100 mm (3.937 Zoll). An die Seite anpassen verkleinert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Clamp the straightedge, then take the hands away from the line before the knife.</source>
   <translation>Das Lineal spannen, dann vor dem Messer die Hände von der Linie nehmen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Clamp the work, cut away from the hand and keep out of the blade's line; dust is caught where it is made. Local codes and the makers' sheets come first.</source>
   <translation>Das Werkstück spannen, von der Hand weg schneiden und aus der Schnittlinie bleiben; Staub wird gefangen, wo er entsteht. Örtliche Vorschriften und die Merkblätter der Hersteller gehen vor.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Close from the centre outwards to the pressure; look at the gauge again as glue flows.</source>
   <translation>Von der Mitte nach außen bis zum Druck schließen; noch einmal aufs Manometer sehen, wenn der Leim fließt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Close the bag, pump, listen for leaks, and watch that the face stays on its marks.</source>
   <translation>Den Sack schließen, pumpen, nach Lecks horchen, und aufpassen, dass das Furnier auf seinen Zeichen bleibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>Closing the ring: as cut</source>
   <translation>Ring schließen: wie geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>Closing the ring: before cutting</source>
   <translation>Ring schließen: vor dem Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>Contents of the packet</source>
   <translation>Inhalt der Mappe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Created by</source>
   <translation>Erstellt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/dxf.py" />
   <source>Curves that are neither straight nor round are arcs within {tolerance:.4f} mm of them.</source>
   <translation>Kurven, die weder gerade noch rund sind, sind Bogen innerhalb {tolerance:.4f} mm von ihnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Cut a test piece of the template and lay it together as often as there are ways before the stack is cut.</source>
   <translation>Ein Probestück nach der Schablone schneiden und so oft zusammenlegen, wie es Keile sind, bevor der Stapel geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut a trial leaf of plain veneer by the steps below and measure it: what it is smaller all round than the template, the tool has taken inside the line.</source>
   <translation>Ein Probeblatt aus schlichtem Furnier nach den Schritten unten schneiden und messen: um was es ringsum kleiner ist als die Schablone, das hat das Werkzeug innerhalb der Linie genommen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut a trial stack of plain veneer, as high as a lift, by the steps below, in boards of its own. Lay its top and bottom pieces on each other: they show kerf and lean.</source>
   <translation>Einen Probestapel aus schlichtem Furnier schneiden, so hoch wie ein Teilstapel, nach den Schritten unten, in eigenen Decklagen. Oberstes und unterstes Teil aufeinander legen: sie zeigen Schnittfuge und Neigung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut a trial stack of plain veneer, as high as a lift, by the steps below. Lay its top and bottom pieces on each other: they show kerf and lean.</source>
   <translation>Einen Probestapel aus schlichtem Furnier schneiden, so hoch wie ein Teilstapel, nach den Schritten unten. Oberstes und unterstes Teil aufeinander legen: sie zeigen Schnittfuge und Neigung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Cut all wedges of the stack by this one template, number and side marked.</source>
   <translation>Alle Keile des Stapels mit dieser einen Schablone schneiden, Nummer und Seite angeschrieben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as one stack to an outline of {outlines}, across x along the grain; each piece is then cut to its own seams.</source>
   <translation>Als ein Stapel nach einem Umriss von {outlines} geschnitten, quer x längs der Faser; jedes Teil wird dann auf seine eigenen Fugen geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as one stack to an outline of {outlines}, across x along the grain; longer rims are cut back when the top is taped.</source>
   <translation>Als ein Stapel nach einem Umriss von {outlines} geschnitten, quer x längs der Faser; längere Ränder werden zurückgeschnitten, wenn die Platte geklebt ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as single pieces, set out {count} times.</source>
   <translation>Als Einzelteile geschnitten, {count} mal angerissen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as {count} stacks to outlines of {outlines}, across x along the grain; each piece is then cut to its own seams.</source>
   <translation>Als {count} Stapel nach Umrissen von {outlines} geschnitten, quer x längs der Faser; jedes Teil wird dann auf seine eigenen Fugen geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as {count} stacks to outlines of {outlines}, across x along the grain; longer rims are cut back when the top is taped.</source>
   <translation>Als {count} Stapel nach Umrissen von {outlines} geschnitten, quer x längs der Faser; längere Ränder werden zurückgeschnitten, wenn die Platte geklebt ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Cut in {count} lifts of {high} at most: {lifts}.</source>
   <translation>In {count} Teilstapeln von höchstens {high} geschnitten: {lifts}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut in {count} lots by shape, each set out by itself: {named} and others, see the cut list.</source>
   <translation>In {count} Losen nach Form geschnitten, jedes für sich angerissen: {named} und andere, siehe Zuschnittliste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut in {count} lots by shape, each set out by itself: {named}.</source>
   <translation>In {count} Losen nach Form geschnitten, jedes für sich angerissen: {named}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Cut list</source>
   <translation>Zuschnittliste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>Cut list, sizes of the pieces in mm</source>
   <translation>Zuschnittliste, Maße der Teile in mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Cut on leaf {leaf}</source>
   <translation>Zuschnitt auf Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Cut outside the line: going round counter-clockwise as seen here, the tool is on its right, its middle {half} off, on the line for the tool.</source>
   <translation>Außerhalb der Linie schneiden: gegen den Uhrzeiger, wie hier gesehen, ist das Werkzeug rechts davon, seine Mitte {half} daneben, auf der Linie für das Werkzeug.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Cut outside the line: going round counter-clockwise as seen here, the tool is on its right.</source>
   <translation>Außerhalb der Linie schneiden: gegen den Uhrzeiger, wie hier gesehen, ist das Werkzeug rechts davon.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut positions {again} along their own outlines, which are marked on them: one piece at a time, by knife, on a board under its own template.</source>
   <translation>Die Plätze {again} nach ihren eigenen, angezeichneten Umrissen schneiden: Teil um Teil, mit dem Messer, auf einem Brett unter seiner Schablone.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side} along the template.</source>
   <translation>{side} längs der Schablone schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side} by a straight outside its curve, to which it is trimmed later.</source>
   <translation>{side} gerade außerhalb der Rundung schneiden, auf die später besäumt wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side} no further than its ends, for the piece reaches beyond it: on a band saw, or by knife in lifts.</source>
   <translation>{side} nur bis zu den Enden schneiden, denn das Teil reicht darüber hinaus: auf der Bandsäge, oder mit dem Messer in Teilstapeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side}.</source>
   <translation>{side} schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Cut {number} of {count} on leaf {leaf}</source>
   <translation>Zuschnitt {number} von {count} auf Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Cut {number}: positions {positions}.</source>
   <translation>Zuschnitt {number}: Plätze {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} across the grain: tape over the line first, or the veneer breaks out.</source>
   <translation>{side} quer zur Faser schneiden: zuerst Band über die Linie, sonst bricht das Furnier aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} along the grain, which leads the knife: hold it against the straightedge.</source>
   <translation>{side} längs der Faser schneiden, die das Messer führt: am Lineal halten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} in the arrow's direction, in which a knife that follows the grain runs off into the waste and not into the piece.</source>
   <translation>{side} in Pfeilrichtung schneiden, in der ein Messer, das der Faser folgt, in den Verschnitt läuft und nicht ins Teil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} no further than its ends, for the piece reaches beyond it: on a band saw, or by knife in lifts.</source>
   <translation>{side} nur bis zu den Enden schneiden, denn das Teil reicht darüber hinaus: auf der Bandsäge, oder mit dem Messer in Teilstapeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side}.</source>
   <translation>{side} schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Cuts on one leaf lie {gap} apart at least; the kerf takes {both} of it where both run there.</source>
   <translation>Zuschnitte auf einem Blatt liegen mindestens {gap} auseinander; die Schnittfuge nimmt davon {both}, wo beide dort laufen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Cutting plan</source>
   <translation>Schnittplan</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/dxf.py" />
   <source>DXF files need the Python package ezdxf, which is missing; take the SVG files, or run this in a terminal and start FreeCAD again: {command}</source>
   <translation>DXF-Dateien brauchen das Python-Paket ezdxf, das fehlt; nehmen Sie die SVG-Dateien, oder führen Sie dies in einem Terminal aus und starten Sie FreeCAD neu: {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Date of this layout</source>
   <translation>Datum</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Dimensions in</source>
   <translation>Maße in</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Directions run counter-clockwise from right. Pins go through the oversize of face and core, off the seams; they keep the face from swimming on wet adhesive.</source>
   <translation>Richtungen laufen gegen den Uhrzeiger von rechts. Stifte gehen durch das Übermaß von Sichtseite und Träger, neben den Fugen; sie halten das Furnier, damit es auf nassem Klebstoff nicht schwimmt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Do not cut with it yet: {reach} in {count} of 100 rings only. Open it by {turn}: {base} from the tip each mark goes {moves} mm out. Then make another test cut.</source>
   <translation>Noch nicht damit schneiden: {reach} nur bei {count} von 100 Ringen. Um {turn} öffnen: {base} von der Spitze rückt jedes Zeichen {moves} mm nach außen. Dann noch einen Probeschnitt machen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Document type</source>
   <translation>Dokumentart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Dots: the two pins, {apart} apart, {free} from the nearest cut. On the pictures of the steps grey is what is kept, dashed what falls, red the cut with its direction, a crossed ring a screw, a square a clamp.</source>
   <translation>Punkte: die zwei Stifte, {apart} auseinander, {free} vom nächsten Schnitt. Auf den Bildern der Schritte ist grau, was bleibt, gestrichelt, was fällt, rot der Schnitt mit seiner Richtung, ein gekreuzter Ring eine Schraube, ein Quadrat ein Spanner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Dots: the two pins, {apart} apart, {free} from the nearest cut. On the pictures of the steps grey is what is kept, dashed what falls, red the cut with its direction.</source>
   <translation>Punkte: die zwei Stifte, {apart} auseinander, {free} vom nächsten Schnitt. Auf den Bildern der Schritte ist grau, was bleibt, gestrichelt, was fällt, rot der Schnitt mit seiner Richtung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Drawn by</source>
   <translation>Gezeichnet</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Drive screws in the places shown and nowhere else, and count them: metal in the blade's way throws pieces.</source>
   <translation>Schrauben nur an den gezeigten Stellen setzen, und sie zählen: Metall im Weg der Klinge schleudert Teile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Dry run: lay all in the press without adhesive, find the centre, close, look, open.</source>
   <translation>Trockenlauf: alles ohne Klebstoff in die Presse legen, die Mitte finden, schließen, ansehen, öffnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Dry-lay before glue.</source>
   <translation>Vor dem Leimen trocken auslegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>Dry-lay before glue. Cut away from the hand, with the stack held; follow local rules and the makers' sheets for dust, blades and adhesives.</source>
   <translation>Vor dem Leimen trocken auslegen. Von der Hand weg schneiden, den Stapel gehalten; örtliche Regeln und die Merkblätter der Hersteller zu Staub, Klingen und Klebstoffen befolgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Dry-lay before glue: all pieces in order, show face up, every seam in raking light.</source>
   <translation>Vor dem Leimen trocken auslegen: alle Teile der Reihe nach, Sichtseite oben, jede Fuge im Streiflicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Dust: that of many woods irritates or sensitises; draw it off at its source and wear a mask that fits. Local limits count.</source>
   <translation>Staub: der vieler Hölzer reizt oder macht empfindlich; an der Quelle absaugen und eine passende Maske tragen. Örtliche Grenzwerte gelten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Dust: this wood ({species}) is named among the sensitising ones ({name}): once sensitised, a body answers to the least trace of it with skin, nose or asthma. Wood dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a fitted mask, do not blow or sweep it.</source>
   <translation>Staub: dieses Holz ({species}) wird unter den sensibilisierenden genannt ({name}): einmal empfindlich, antwortet ein Körper auf die kleinste Spur davon mit Haut, Nase oder Asthma. Holzstaub jeder Art kann Asthma bringen, der von Laubholz Nasenkrebs. Wo er entsteht absaugen, eine dicht sitzende Maske tragen, nicht blasen oder fegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Dust: which wood this is was not entered: take it as a sensitising one. Wood dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a fitted mask, do not blow or sweep it.</source>
   <translation>Staub: welches Holz dies ist, wurde nicht eingegeben: nehmen Sie es für ein sensibilisierendes. Holzstaub jeder Art kann Asthma bringen, der von Laubholz Nasenkrebs. Wo er entsteht absaugen, eine dicht sitzende Maske tragen, nicht blasen oder fegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Dust: {species} is not named in the list of sensitising woods used here, which is not complete: take it as one until you know better. Wood dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a fitted mask, do not blow or sweep it.</source>
   <translation>Staub: {species} wird in der hier gebrauchten, nicht vollständigen Liste sensibilisierender Hölzer nicht genannt: nehmen Sie es für eines, bis Sie es besser wissen. Holzstaub jeder Art kann Asthma bringen, der von Laubholz Nasenkrebs. Wo er entsteht absaugen, eine dicht sitzende Maske tragen, nicht blasen oder fegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Each piece is cut to its own outline; those shown here are of all pieces of a stack together, and pins stand outside all of them.</source>
   <translation>Jedes Teil wird nach seinem eigenen Umriss geschnitten; die hier gezeigten sind die aller Teile eines Stapels zusammen, und Stifte stehen außerhalb von allen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Electric, gas and pressure work that asks for a licence is for those who hold it. Local rules come before this sheet.</source>
   <translation>Arbeiten an Strom, Gas und Druck, die eine Zulassung verlangen, sind Sache derer, die sie haben. Örtliche Regeln gehen diesem Blatt vor.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>Every piece shows the photograph of the side that is up, in its own colours and without finish. A screen or a printer may show them otherwise than daylight.</source>
   <translation>Jedes Teil zeigt das Foto der Seite, die oben ist, in seinen eigenen Farben und ohne Oberfläche. Bildschirm oder Drucker können sie anders zeigen als das Tageslicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>FACE UP</source>
   <translation>VORDERSEITE OBEN</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Find the centre again: stretch two threads between opposite marks of the axes.</source>
   <translation>Die Mitte wieder finden: zwei Fäden zwischen gegenüberliegenden Zeichen der Achsen spannen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Finished {size}, across x along the grain.</source>
   <translation>Fertig {size}, quer x längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Finished {size}, as cut {blank}, across x along the grain.</source>
   <translation>Fertig {size}, wie geschnitten {blank}, quer x längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>For all positions.</source>
   <translation>Für alle Plätze.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>For one top: {count} leaves and {spares} spares, {all} in all, each at least {size} (across the leaf, along the grain).</source>
   <translation>Für eine Platte: {count} Blätter und {spares} Reserve, {all} im Ganzen, jedes mindestens {size} (quer zum Blatt, längs der Faser).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>For position {positions}.</source>
   <translation>Für Platz {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>For positions {positions}.</source>
   <translation>Für die Plätze {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>For {tops} tops: {count} leaves and {spares} spares, {all} in all, each at least {size} (across the leaf, along the grain).</source>
   <translation>Für {tops} Platten: {count} Blätter und {spares} Reserve, {all} im Ganzen, jedes mindestens {size} (quer zum Blatt, längs der Faser).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Force on the panel: {force:.1f} kN.</source>
   <translation>Kraft auf die Platte: {force:.1f} kN.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Fresh blade, hand behind the blade and off the line, many light strokes.</source>
   <translation>Frische Klinge, Hand hinter der Klinge und neben der Linie, viele leichte Schnitte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Fresh blade, hand behind the blade and off the line, many light strokes; the straightedge clamped at both ends and never held by hand alone.</source>
   <translation>Frische Klinge, Hand hinter der Klinge und neben der Linie, viele leichte Schnitte; das Lineal an beiden Enden gespannt und nie nur mit der Hand gehalten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>From it lay the template of the edge on centre and axes and draw round it; measure from the centre to the edge on all four axes.</source>
   <translation>Von dort die Schablone der Kante auf Mitte und Achsen legen und umreißen; auf allen vier Achsen von der Mitte zur Kante messen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>From it strike the edge with a trammel of {radius} from the centre; measure from the centre to the edge on all four axes.</source>
   <translation>Von dort die Kante mit einem Stangenzirkel von {radius} aus der Mitte schlagen; auf allen vier Achsen von der Mitte zur Kante messen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>From the top down, all faces up: leaves {leaves}.</source>
   <translation>Von oben nach unten, alle Vorderseiten oben: Blätter {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>Full line: cut</source>
   <translation>Volle Linie: schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>GRAIN</source>
   <translation>FASER</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Glue area: {area} a glue line, {count} of them (with backer): {all}.</source>
   <translation>Leimfläche: {area} je Leimfuge, {count} davon (mit Gegenfurnier): {all}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Glue area: {area} a glue line, {count} of them (without backer): {all}.</source>
   <translation>Leimfläche: {area} je Leimfuge, {count} davon (ohne Gegenfurnier): {all}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Guards and riving knife as the saw's maker has them; both hands behind the sled's fence; nothing is taken from the table before the blade stands still; dust drawn off, eyes and lungs protected.</source>
   <translation>Schutz und Spaltkeil, wie der Hersteller der Säge sie vorsieht; beide Hände hinter dem Anschlag des Schlittens; nichts wird vom Tisch genommen, bevor das Sägeblatt steht; Staub abgesaugt, Augen und Lunge geschützt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Gum tape goes on the show face: short pieces across the seam first, drawn tight, then one along it. It shrinks as it dries and pulls the seam shut. Wet it sparingly; let it dry under a board before the next step.</source>
   <translation>Fugenpapier kommt auf die Sichtseite: zuerst kurze Stücke quer über die Fuge, straff gezogen, dann eines längs. Es schrumpft beim Trocknen und zieht die Fuge zu. Sparsam nässen; vor dem nächsten Schritt unter einem Brett trocknen lassen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Gum tape, on the show face: comes off after pressing; it holds the seams in the press. Damp it, wait, scrape or sand it off along the grain.</source>
   <translation>Fugenpapier, auf der Sichtseite: kommt nach dem Pressen weg; es hält die Fugen in der Presse. Anfeuchten, warten, längs der Faser abziehen oder abschleifen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Have the backer ready: both faces are glued in one go, or the panel cups.</source>
   <translation>Das Gegenfurnier bereit haben: beide Seiten werden in einem Zug geleimt, sonst verzieht sich die Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Hold the leaf down round the outline and under the piece. Take the file of its position and side; set the tool so that the file's two pins lie on the bed's.</source>
   <translation>Das Blatt rund um den Umriss und unter dem Teil niederhalten. Die Datei seines Platzes und seiner Seite nehmen; das Werkzeug so einrichten, dass die zwei Stifte der Datei auf denen des Betts liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Hold the leaf flat under a board along its whole width; a free end splits.</source>
   <translation>Das Blatt auf ganzer Breite unter einem Brett flach halten; ein freies Ende reißt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Hold-downs lie outside the tool's way; try the way once with the tool lifted.</source>
   <translation>Spanner liegen außerhalb des Werkzeugwegs; den Weg einmal mit gehobenem Werkzeug probieren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Holds the piece: {held}.</source>
   <translation>Hält das Teil: {held}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Holds what falls: {waste_held}.</source>
   <translation>Hält, was fällt: {waste_held}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>How holes are found</source>
   <translation>Wie Löcher gefunden werden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>How it is taped</source>
   <translation>Wie geklebt wird</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/planning.py" />
   <source>How many leaves this match takes follows from their width: give the width of the leaves to be had, or the number of strips.</source>
   <translation>Wie viele Blätter dieses Furnierbild braucht, folgt aus ihrer Breite: geben Sie die Breite der erhältlichen Blätter, oder die Zahl der Streifen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>How well was not kept.</source>
   <translation>Wie gut, wurde nicht festgehalten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Identification number</source>
   <translation>Zeichnungsnummer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>In plain tints, without a photograph: {items}.</source>
   <translation>In schlichten Tönen, ohne Foto: {items}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>In stack {stack} no two pins {apart} mm apart find room {margin} mm inside all leaves and {clear} mm from the cuts; move the cut, or glue tabs of veneer or card to the ends of every leaf and pin through them.</source>
   <translation>In Stapel {stack} finden keine zwei Stifte im Abstand von {apart} mm Platz, {margin} mm innerhalb aller Blätter und {clear} mm von den Schnitten; verschieben Sie den Zuschnitt, oder leimen Sie an die Enden jedes Blatts Laschen aus Furnier oder Karton und stiften Sie durch diese.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>In stack {stack} no two pins {apart} mm apart find room {margin} mm inside all leaves and {clear} mm from the cuts; with {less} mm for both there is room: ask for that, move the cut, or glue tabs of veneer or card to the ends of every leaf and pin through them.</source>
   <translation>In Stapel {stack} finden keine zwei Stifte im Abstand von {apart} mm Platz, {margin} mm innerhalb aller Blätter und {clear} mm von den Schnitten; mit {less} mm für beides ist Platz: verlangen Sie das, verschieben Sie den Zuschnitt, oder leimen Sie an die Enden jedes Blatts Laschen aus Furnier oder Karton und stiften Sie durch diese.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>In the press</source>
   <translation>In der Presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>Inner field: {step}</source>
   <translation>Inneres Feld: {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>It is drawn lying, its lower end to the left.</source>
   <translation>Es ist liegend gezeichnet, sein unteres Ende links.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>It is in doubt how leaf {leaf} and those after lie.</source>
   <translation>Es ist zweifelhaft, wie Blatt {leaf} und die danach liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>It is in doubt how leaves {leaves} and those after lie.</source>
   <translation>Es ist zweifelhaft, wie die Blätter {leaves} und die danach liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>It may stay as it is.</source>
   <translation>Sie kann bleiben, wie sie ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>It stays {open} open at the rim: nothing is left to true off. Cut one piece anew from a spare leaf, wider by that.</source>
   <translation>Er bleibt am Rand um {open} offen: wegzufügen ist nichts mehr. Ein Teil aus einem Reserveblatt neu schneiden, um das breiter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Its pin holes are the leaf's: set it, or the tool, by them.</source>
   <translation>Ihre Stiftlöcher sind die des Blatts: sie, oder das Werkzeug, danach setzen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Its steps are those of stack {name}.</source>
   <translation>Seine Schritte sind die von Stapel {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Kerf {kerf}, lean {lean} deg, at most {most} of leaves at once, boards {around} beyond the cuts, pins {clear} from them: common practice, no published source: set your own.</source>
   <translation>Schnittfuge {kerf}, Neigung {lean} Grad, höchstens {most} Blätter auf einmal, Decklagen {around} über die Schnitte hinaus, Stifte {clear} davon: übliche Praxis, keine veröffentlichte Quelle: setzen Sie Ihre eigenen Werte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Knives and saws: cut away from the hand, with the stack held between boards and never loose at a blade; guards on, eyes covered.</source>
   <translation>Messer und Sägen: von der Hand weg schneiden, den Stapel zwischen Brettern gehalten und nie lose an der Klinge; Schutz auf, Augen geschützt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>L: the leaf it is cut from.</source>
   <translation>L: das Blatt, aus dem es geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Large: the position. Positions run {way}.</source>
   <translation>Groß: der Platz. Plätze laufen {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Largest of face and core: {size}; in the press {thickness} thick.</source>
   <translation>Größtes von Sichtseite und Träger: {size}; in der Presse {thickness} dick.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Lay all pieces in their places, the side up as marked, and prove the order by one mark of the figure that goes through all of them.</source>
   <translation>Alle Teile auf ihre Plätze legen, die Seite oben wie angeschrieben, und die Reihenfolge an einem Zeichen der Textur nachweisen, das durch alle geht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Lay all positions out dry, in order, show face up, and judge every seam in raking light before glue is mixed.</source>
   <translation>Alle Plätze trocken auslegen, der Reihe nach, Sichtseite oben, und jede Fuge im Streiflicht beurteilen, bevor Leim angerührt wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Lay it on the FACE of the leaf, this side up.</source>
   <translation>Auf die VORDERSEITE des Blatts legen, diese Seite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Lay it on the stack with the leaves' FACES up, this side up.</source>
   <translation>Auf den Stapel legen, die VORDERSEITEN der Blätter oben, diese Seite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>Lay out</source>
   <translation>Auslegen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Lay the field into the band dry; fit its line until no light shows, then tape.</source>
   <translation>Das Feld trocken ins Band legen; seine Linie einpassen, bis kein Licht durchscheint, dann kleben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lay the next lift on the same pins, under the same template.</source>
   <translation>Den nächsten Teilstapel auf dieselben Stifte legen, unter dieselbe Schablone.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Lay the open edges of {parts} along one straightedge and take off as little as makes them straight.</source>
   <translation>Die offenen Kanten von {parts} an ein Lineal legen und so wenig wegnehmen, wie sie gerade macht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Leaf by leaf</source>
   <translation>Blatt für Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Leaf thickness</source>
   <translation>Blattdicke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Leaf {leaf} as it is left, seen from its face; letters are those of the table.</source>
   <translation>Blatt {leaf}, wie es übrig bleibt, von vorn gesehen; Buchstaben wie in der Tabelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Leaf {leaf} lies on top, face up, grain upright. The cut serves positions {positions}.</source>
   <translation>Blatt {leaf} liegt oben, Vorderseite oben, Faser aufrecht. Der Zuschnitt dient den Plätzen {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Leaf {leaves} has no room for it: at this spot a wedge can be cut to {angle} at most. Move the wedge on the bundle, take less oversize or wider leaves, or prove the template by a test cut, so that less over will do.</source>
   <translation>Blatt {leaves} hat dafür keinen Platz: an dieser Stelle lässt sich ein Keil höchstens auf {angle} schneiden. Verschieben Sie den Keil auf dem Paket, nehmen Sie weniger Übermaß oder breitere Blätter, oder prüfen Sie die Schablone durch einen Probeschnitt, so dass weniger Zugabe genügt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Leave it in for the maker's time; then stand it on edge with air on both faces until the moisture is even.</source>
   <translation>So lange darin lassen, wie der Hersteller sagt; dann auf die Kante stellen, Luft an beiden Seiten, bis die Feuchte gleichmäßig ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Leave the diameter open between {one} on one side and {two} on the other, as measured.</source>
   <translation>Lassen Sie den Durchmesser zwischen {one} auf der einen und {two} auf der anderen Seite offen, wie gemessen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Leave the diameter open between {one} on one side and {two} on the other: of {count} it does best.</source>
   <translation>Lassen Sie den Durchmesser zwischen {one} auf der einen und {two} auf der anderen Seite offen: von {count} ist er der beste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Leaves</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>Leaves marked "back" are pinned where the figure of their backs lies, up to {moved} from where their faces would be; they are pricked face up like the others.</source>
   <translation>Mit "Rückseite" bezeichnete Blätter werden gestiftet, wo die Textur ihrer Rückseite liegt, bis zu {moved} von dort, wo ihre Vorderseite wäre; gestochen werden sie mit der Vorderseite oben wie die anderen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Leaves that will be turned over are turned after the cut.</source>
   <translation>Blätter, die gewendet werden, werden nach dem Schnitt gewendet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Leaves {leaves} have no room for it: at this spot a wedge can be cut to {angle} at most. Move the wedge on the bundle, take less oversize or wider leaves, or prove the template by a test cut, so that less over will do.</source>
   <translation>Die Blätter {leaves} haben dafür keinen Platz: an dieser Stelle lässt sich ein Keil höchstens auf {angle} schneiden. Verschieben Sie den Keil auf dem Paket, nehmen Sie weniger Übermaß oder breitere Blätter, oder prüfen Sie die Schablone durch einen Probeschnitt, so dass weniger Zugabe genügt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Leaves: see the cut list.</source>
   <translation>Blätter: siehe Zuschnittliste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Left whole: {whole_leaves}.</source>
   <translation>Ganz übrig: {whole_leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Length is along the grain. The area is that of all parts of a row.</source>
   <translation>Länge ist längs der Faser. Die Fläche ist die aller Stücke einer Zeile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lift by lift, leaves {first} first: put them on the two pins, all faces up, in their order, leaf {top} uppermost.</source>
   <translation>Teilstapel um Teilstapel, die Blätter {first} zuerst: auf die zwei Stifte legen, alle Vorderseiten oben, der Reihe nach, Blatt {top} zuoberst.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lift the piece off and lay it aside in its order; put the next leaf on the pins.</source>
   <translation>Das Teil abnehmen und der Reihe nach ablegen; das nächste Blatt auf die Stifte legen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lift the pieces off in their order; the edge of the lowest shows the lean.</source>
   <translation>Die Teile der Reihe nach abnehmen; die Kante des untersten zeigt die Neigung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Limits in air (check the current text): wood dust, NIOSH 1 mg/m3; OSHA 29 CFR 1910.1000 as particulates 15 mg/m3 total, 5 respirable.</source>
   <translation>Grenzwerte in der Luft (aktuellen Text prüfen): Holzstaub, NIOSH 1 mg/m3; OSHA 29 CFR 1910.1000 als Staub 15 mg/m3 gesamt, 5 alveolengängig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Local rules for the workshop, the makers' sheets for machine, blade and dust, and licensed practice come before this sheet.</source>
   <translation>Örtliche Regeln für die Werkstatt, die Merkblätter der Hersteller zu Maschine, Klinge und Staub, und zugelassene Fachleute gehen diesem Blatt vor.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>L{leaf}</source>
   <translation>L{leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>Map of the sheets, {scale}</source>
   <translation>Übersicht der Bogen, {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Mark centre and axes on the tape of the face and over the edges of the core; lay mark on mark.</source>
   <translation>Mitte und Achsen auf dem Papier der Sichtseite und über die Kanten des Trägers anzeichnen; Zeichen auf Zeichen legen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Mark the centre and the two axes on the back of the core's edge and on the tape of the face, by the distances given.</source>
   <translation>Die Mitte und die zwei Achsen hinten auf der Kante des Trägers und auf dem Papier der Sichtseite anzeichnen, nach den gegebenen Abständen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Mark with a hard, sharp pencil, not with a knife, on the side that is up.</source>
   <translation>Mit hartem, spitzem Bleistift anzeichnen, nicht mit dem Messer, auf der oberen Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Marking</source>
   <translation>Anschreiben</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/paper.py" />
   <source>Marks for leaves</source>
   <translation>Marken für Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Masking or plastic tape, on the show face: comes off before pressing, once gum tape is on; it prints, and its gum stays in the pores.</source>
   <translation>Kreppband oder Kunststoffband, auf der Sichtseite: kommt vor dem Pressen weg, sobald Fugenpapier darauf ist; es drückt sich ab, und sein Kleber bleibt in den Poren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Match, order</source>
   <translation>Furnierbild, Folge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Measure along A-B from A, then square to the side.</source>
   <translation>Längs A-B von A messen, dann rechtwinklig zur Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Mirror image. Seen from the show face positions run {way}.</source>
   <translation>Spiegelbild. Von der Sichtseite gesehen laufen Plätze {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Mirror image: lay it on the BACK of the leaf, this side up (a turned piece shows its back).</source>
   <translation>Spiegelbild: auf die RÜCKSEITE des Blatts legen, diese Seite oben (ein gewendetes Teil zeigt seine Rückseite).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} % unsure): without any over the ring would close on the mean; the over allows for it.</source>
   <translation>Feuchte {photograph} % beim Fotografieren, {cut} % beim Schneiden, {taping} % beim Kleben ({unsure} % unsicher): ohne Zugabe schlösse sich der Ring im Mittel; die Zugabe rechnet damit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} % unsure): without any over the ring would open by {gap} at the rim; the over allows for it.</source>
   <translation>Feuchte {photograph} % beim Fotografieren, {cut} % beim Schneiden, {taping} % beim Kleben ({unsure} % unsicher): ohne Zugabe öffnete sich der Ring am Rand um {gap}; die Zugabe rechnet damit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} % unsure): without any over the ring would overlap by {gap} at the rim; the over allows for it.</source>
   <translation>Feuchte {photograph} % beim Fotografieren, {cut} % beim Schneiden, {taping} % beim Kleben ({unsure} % unsicher): ohne Zugabe überlappte der Ring am Rand um {gap}; die Zugabe rechnet damit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>More in the model.</source>
   <translation>Weitere im Modell.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>NOT UP TO DATE: {reason}</source>
   <translation>NICHT AUF DEM STAND: {reason}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Net {net}, blank {blank}, across x along the grain.</source>
   <translation>Fertig {net}, Rohteil {blank}, quer x längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>No leaf is left whole: there is no spare.</source>
   <translation>Kein Blatt bleibt ganz: es gibt keine Reserve.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>No leaf is turned over.</source>
   <translation>Kein Blatt ist gewendet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>No price was entered: give one for the bundle, a leaf, a m2 or a sq ft.</source>
   <translation>Kein Preis wurde eingegeben: geben Sie einen für das Paket, ein Blatt, m2 oder Quadratfuß.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/parts.py" />
   <source>No straight cut from edge to edge parts the {count} cuts on these leaves with {room} mm to spare, as a saw would need; move them further apart, or cut by knife or on a machine.</source>
   <translation>Kein gerader Schnitt von Kante zu Kante trennt die {count} Zuschnitte auf diesen Blättern mit {room} mm Abstand, wie eine Säge ihn braucht; rücken Sie sie weiter auseinander, oder schneiden Sie mit dem Messer oder auf einer Maschine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>No tip is lost if that can be, then as little trued off as can be, then the most even halves.</source>
   <translation>Wenn möglich geht keine Spitze verloren, dann wird so wenig weggefügt wie möglich, dann die gleichmäßigsten Hälften.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>No tip is lost if that can be, then as little trued off as can be; of those that are sure, truing shows least there, where most surfaces lie between the leaves that meet ({broken:.1f} on the mean); else the most even halves.</source>
   <translation>Wenn möglich geht keine Spitze verloren, dann wird so wenig weggefügt wie möglich; unter denen, die sicher sind, fällt das Fügen dort am wenigsten auf, wo die meisten Flächen zwischen den Blättern liegen, die sich treffen (im Mittel {broken:.1f}); sonst die gleichmäßigsten Hälften.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>No: it does not go in; {missing} are missing.</source>
   <translation>Nein: es geht nicht hinein; {missing} fehlen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Nobody reaches in while the tool turns or burns; it never runs alone; dust or fumes drawn off; the piece held before the tool starts.</source>
   <translation>Niemand greift hinein, während das Werkzeug läuft oder brennt; es läuft nie allein; Staub oder Rauch abgesaugt; das Teil gehalten, bevor das Werkzeug anläuft.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Notes, findings, cautions</source>
   <translation>Hinweise, Befunde, Warnungen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Nothing falls yet: the piece still hangs in the waste.</source>
   <translation>Noch fällt nichts: das Teil hängt noch im Verschnitt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Number every offcut as its leaf: a patch or a strip from the same leaf, or the next, matches in colour and figure.</source>
   <translation>Jeden Abschnitt wie sein Blatt nummerieren: ein Flicken oder Streifen aus demselben Blatt, oder dem nächsten, stimmt in Farbe und Textur.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/picture.py" />
   <source>Numbers cannot be drawn in this session; ask for the picture without them.</source>
   <translation>In dieser Sitzung lassen sich keine Zahlen zeichnen; verlangen Sie das Bild ohne sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}, the diameter chosen by wedges measured to {measured}.</source>
   <translation>Von 100 so geschnittenen Ringen: {reach} bei {count}, der Durchmesser nach Keilen gewählt, die auf {measured} gemessen sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}, the diameter fixed beforehand.</source>
   <translation>Von 100 so geschnittenen Ringen: {reach} bei {count}, der Durchmesser vorher festgelegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}, the quarters fixed beforehand.</source>
   <translation>Von 100 so geschnittenen Ringen: {reach} bei {count}, die Viertel vorher festgelegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}.</source>
   <translation>Von 100 so geschnittenen Ringen: {reach} bei {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>Of the layers of this file only {cut} is cut along, or {tool} by a machine that does not reckon the width of its tool.</source>
   <translation>Von den Ebenen dieser Datei wird nur an {cut} entlang geschnitten, oder an {tool} von einer Maschine, die die Breite ihres Werkzeugs nicht verrechnet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>Of the layers of this file only {cut} is cut along.</source>
   <translation>Von den Ebenen dieser Datei wird nur an {cut} entlang geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Of the oversize {left} are left at the rim.</source>
   <translation>Vom Übermaß bleiben am Rand {left}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Of these {positions} need a second cut.</source>
   <translation>Davon brauchen {positions} einen zweiten Schnitt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Of {usable} of usable area in {count} leaves, {used} lie in the cuts, {kerf} go with the kerf and {left} are left.</source>
   <translation>Von {usable} nutzbarer Fläche in {count} Blättern liegen {used} in den Zuschnitten, {kerf} gehen mit der Schnittfuge, und {left} bleiben übrig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Offcuts</source>
   <translation>Abschnitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>On a straight line mark {base} from the tip. There square off {offset} to both sides. The seams run from the tip through the two marks.</source>
   <translation>Auf einer Geraden {base} von der Spitze anzeichnen. Dort rechtwinklig {offset} nach beiden Seiten. Die Fugen laufen von der Spitze durch die zwei Zeichen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>On a straight line mark {base} from the tip. There square off {offset} to both sides. The seams run from the tip through the two marks. Make a test cut and lay it together before the stack is cut.</source>
   <translation>Auf einer Geraden {base} von der Spitze anzeichnen. Dort rechtwinklig {offset} nach beiden Seiten. Die Fugen laufen von der Spitze durch die zwei Zeichen. Einen Probeschnitt machen und zusammenlegen, bevor der Stapel geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>On the least leaf the match lies with its point at {size} from the lower left corner; a longer leaf leaves room to choose where the figure is best. Faults and crooked edges come off what is bought.</source>
   <translation>Auf dem kleinsten Blatt liegt das Furnierbild mit seiner Spitze {size} von der Ecke links unten; ein längeres Blatt lässt Platz, die beste Textur zu wählen. Fehler und krumme Kanten gehen vom Gekauften ab.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>On the leaves of positions {again} mark their own outline too, fine, each with its own template by the two holes.</source>
   <translation>Auf den Blättern der Plätze {again} auch ihren eigenen Umriss fein anzeichnen, jeden mit seiner Schablone nach den zwei Löchern.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>One finished top has {top:.3f} m2 ({top_2:.2f} sq ft).</source>
   <translation>Eine fertige Platte hat {top:.3f} m2 ({top_2:.2f} Quadratfuß).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>One leaf after another, leaf {top} first: put it on the two pins, the side up that the file of its position names, its face.</source>
   <translation>Blatt um Blatt, Blatt {top} zuerst: auf die zwei Stifte legen, die Seite oben, die die Datei seines Platzes nennt, die Vorderseite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>One leaf after another, leaf {top} first: put it on the two pins, the side up that the file of its position names; the backs of positions {turned} are up.</source>
   <translation>Blatt um Blatt, Blatt {top} zuerst: auf die zwei Stifte legen, die Seite oben, die die Datei seines Platzes nennt; bei den Plätzen {turned} ist die Rückseite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>One leaf at a time on the two pins: leaves {order}.</source>
   <translation>Blatt für Blatt auf den zwei Stiften: Blätter {order}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>One leaf of {thickness} mm is thicker than the {most} mm that you cut at once; set a higher limit, or cut leaf by leaf on a machine.</source>
   <translation>Ein Blatt von {thickness} mm ist dicker als die {most} mm, die Sie auf einmal schneiden; setzen Sie eine höhere Grenze, oder schneiden Sie Blatt für Blatt auf einer Maschine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>One outline serves pieces of several shapes. Cut by shape they would be {count} stacks with a template each, and take {share} % less of the leaves.</source>
   <translation>Ein Umriss dient Teilen mehrerer Formen. Nach Form geschnitten wären es {count} Stapel mit je einer Schablone und {share} % weniger von den Blättern.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>One piece shows a back that was not photographed: its neighbour's picture, or its own face, stands in for it.</source>
   <translation>Ein Teil zeigt eine Rückseite, die nicht fotografiert wurde: das Bild des Nachbarn oder die eigene Vorderseite steht dafür.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>One sheet, {name}.</source>
   <translation>Ein Bogen, {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>One wrong cut through the stack spoils every leaf of it at once: cut a trial from a spare or an end first, and keep the spares from the same bundle, next to those used.</source>
   <translation>Ein falscher Schnitt durch den Stapel verdirbt alle Blätter auf einmal: schneiden Sie zuerst eine Probe aus Reserve oder Ende, und heben Sie die Reserve aus demselben Paket auf, neben den gebrauchten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>Only a radial match is a ring that closes; choose one, or see its joints in the checks.</source>
   <translation>Nur ein Sternbild ist ein Ring, der sich schließt; wählen Sie eines, oder sehen Sie seine Fugen in den Prüfungen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Only dust falls.</source>
   <translation>Nur Staub fällt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Opening, cut after pressing</source>
   <translation>Öffnung, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Or lay the strip on the leaf, its cross where the strip says and its line along a straightedge through both marks, the arrow towards the second, and prick the hole through the ring. Print at 100 %: the bars must measure 100 mm.</source>
   <translation>Oder den Streifen aufs Blatt legen, sein Kreuz wo der Streifen sagt und seine Linie längs eines Lineals durch beide Marken, der Pfeil zur zweiten, und das Loch durch den Ring stechen. Mit 100 % drucken: die Balken müssen 100 mm messen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Order of the day</source>
   <translation>Ablauf des Tages</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Other leaves lie under it by their registers, not by their edges: what is measured here holds for this leaf alone.</source>
   <translation>Andere Blätter liegen nach ihren Lagen darunter, nicht nach ihren Kanten: was hier gemessen wird, gilt nur für dieses Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>Outer band: {step}</source>
   <translation>Äußeres Band: {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Owner</source>
   <translation>Eigentümer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Part the stack between the cuts; tape the fresh edges at once.</source>
   <translation>Den Stapel zwischen den Zuschnitten trennen; die frischen Kanten gleich überkleben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Piece</source>
   <translation>Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Piece {letter}</source>
   <translation>Teil {letter}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/wedge.py" />
   <source>Piece {position} does not run to a tip between two straight seams; there is no drawing of such a piece yet.</source>
   <translation>Teil {position} läuft nicht zwischen zwei geraden Fugen auf eine Spitze zu; von so einem Teil gibt es noch keine Zeichnung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Pieces</source>
   <translation>Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Pieces keep their places: a matched face is not reshuffled to make it close.</source>
   <translation>Die Teile behalten ihre Plätze: eine gelegte Fläche wird nicht umgeordnet, damit sie sich schließt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Pieces keep their places: a matched ring is not reshuffled.</source>
   <translation>Die Teile behalten ihre Plätze: ein gelegter Ring wird nicht umgeordnet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>Pieces of both sides come from leaf {leaves}, and its sides lie otherwise: cut the upright pieces on the first pair of holes, pin again on the second for the turned ones.</source>
   <translation>Teile beider Seiten kommen aus Blatt {leaves}, und seine Seiten liegen verschieden: die nicht gewendeten Teile auf dem ersten Lochpaar schneiden, für die gewendeten auf dem zweiten neu stiften.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>Pin holes at 1:1</source>
   <translation>Stiftlöcher 1:1</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Pinning</source>
   <translation>Stiften</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Pins are sharp: press leaves down with a block beside the pin, not with a finger.</source>
   <translation>Stifte sind spitz: Blätter mit einem Klotz neben dem Stift niederdrücken, nicht mit dem Finger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Pins, on the oversize: come off after pressing; they mark the plates: sink them, or draw them once the face is held.</source>
   <translation>Stifte, im Übermaß: kommen nach dem Pressen weg; sie zeichnen die Platten: versenken, oder ziehen, sobald das Furnier gehalten ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Places are those of the mark's middle, from the left edge as seen on the side that is chalked and from the lower end; a finger's breadth either way does no harm.</source>
   <translation>Die Orte sind die der Mitte des Zeichens, vom linken Rand der beschriebenen Seite und vom unteren Ende; ein Fingerbreit mehr oder weniger schadet nicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan.py" />
   <source>Plan</source>
   <translation>Draufsicht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_parts.py" />
   <source>Plan in parts {number} of {count}</source>
   <translation>Draufsicht in Teilen {number} von {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_parts.py" />
   <source>Plan, part {number} of {count}: column {column} of {columns} from the left, row {row} of {rows} from the top</source>
   <translation>Draufsicht, Teil {number} von {count}: Spalte {column} von {columns} von links, Reihe {row} von {rows} von oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Plan, scale {scale}.</source>
   <translation>Draufsicht, Maßstab {scale}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Position and leaf: {listed}.</source>
   <translation>Platz und Blatt: {listed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Position {pairs}.</source>
   <translation>Platz {pairs}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Position {places}, from the leaf of the same number.</source>
   <translation>Platz {places}, aus dem Blatt derselben Nummer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Position {positions}.</source>
   <translation>Platz {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Positions run {way}, seen from the show face.</source>
   <translation>Plätze laufen {way}, von der Sichtseite gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Positions run {way}.</source>
   <translation>Plätze laufen {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Positions run {way}; the parts of the plan that follow have them.</source>
   <translation>Plätze laufen {way}; die folgenden Teile der Draufsicht haben sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Positions {pairs}.</source>
   <translation>Plätze {pairs}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Positions {places}, from the leaves of the same numbers.</source>
   <translation>Plätze {places}, aus den Blättern derselben Nummern.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Positions {places}, leaves {leaves}; the cut list has which is which.</source>
   <translation>Plätze {places}, Blätter {leaves}; welches welches ist, sagt die Zuschnittliste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Positions {turned} show their backs: their leaves lie back up, and their files are mirror images with the pins in their places. All others lie face up.</source>
   <translation>Die Plätze {turned} zeigen die Rückseite: ihre Blätter liegen mit der Rückseite oben, und ihre Dateien sind Spiegelbilder, die Stifte an ihren Stellen. Alle anderen liegen mit der Vorderseite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Press day</source>
   <translation>Presstag</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Press or bag: not entered, so that nothing is said of its size.</source>
   <translation>Presse oder Sack: nicht eingegeben, also ist über die Größe nichts gesagt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Presses and bags: keep within the rating of press, bag, hoses and pump. A pressure vessel is for those who are licensed for it.</source>
   <translation>Pressen und Säcke: innerhalb dessen bleiben, wofür Presse, Sack, Schläuche und Pumpe ausgelegt sind. Ein Druckbehälter ist Sache derer, die dafür zugelassen sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Pressure on the face, as entered from the maker's sheet: {wanted}.</source>
   <translation>Druck auf die Fläche, wie aus dem Merkblatt eingegeben: {wanted}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Pressure: look it up in the maker's sheet of the adhesive.</source>
   <translation>Druck: im Merkblatt des Klebstoffs nachsehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Price as entered: {amount} for each {per}.</source>
   <translation>Preis wie eingegeben: {amount} je {per}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Prick away from the hand that holds the leaf, into a soft board; prick square.</source>
   <translation>Von der Hand weg stechen, die das Blatt hält, in ein weiches Brett; senkrecht stechen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Prick the two holes of each leaf as the pinning sheet gives them.</source>
   <translation>Die zwei Löcher jedes Blatts stechen, wie das Blatt zum Stiften sie gibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>Print at 100 %: both bars measure 100 mm. Seen from the face of the leaf.</source>
   <translation>Mit 100 % drucken: beide Balken messen 100 mm. Von der Vorderseite des Blatts gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Print at 100 %: fit to page shrinks a sheet. Both bars measure 100 mm (3.937 in).</source>
   <translation>Mit 100 % drucken: an die Seite anpassen verkleinert. Beide Balken messen 100 mm (3.937 Zoll).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Prove the order of the leaves by following one mark of the figure through the stack, number every leaf on the face near its lower end, and register the leaves on the figure and not on their edges.</source>
   <translation>Die Reihenfolge der Blätter nachweisen, indem ein Zeichen der Textur durch den Stapel verfolgt wird; jedes Blatt vorn nahe dem unteren Ende nummerieren; die Blätter nach der Textur ausrichten und nicht nach ihren Kanten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Put leaves {first} on the two pins, all faces up, in their order, leaf {top} uppermost.</source>
   <translation>Die Blätter {first} auf die zwei Stifte legen, alle Vorderseiten oben, der Reihe nach, Blatt {top} zuoberst.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Put the template on the two pins over the leaves, tape the lift to the board in the waste, clamp the straightedge over the piece.</source>
   <translation>Die Schablone auf die zwei Stifte über die Blätter legen, den Teilstapel im Verschnitt aufs Brett kleben, das Lineal über dem Teil spannen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Put the upper board, {board} thick, on the pins and the template over it; score the template's outline into the board, which is the line. Take the template off, drive the screws in the places shown, wrap tape round the sandwich, clamp it on the sled.</source>
   <translation>Die obere Decklage, {board} dick, auf die Stifte und die Schablone darauf legen; ihren Umriss in die Decklage ritzen, das ist die Linie. Schablone abnehmen, Schrauben an den gezeigten Stellen setzen, Band um das Ganze wickeln, auf den Schlitten spannen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Red: faults of this leaf ({told}); others have their own.</source>
   <translation>Rot: Fehler dieses Blatts ({told}); andere haben ihre eigenen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Revision mark</source>
   <translation>Änderungsvermerk</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Rim from the lower seam: {lengths}.</source>
   <translation>Rand ab der unteren Fuge: {lengths}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Rim: arc of radius {radius}, chord {chord}, rise {rise}.</source>
   <translation>Rand: Bogen mit Radius {radius}, Sehne {chord}, Stich {rise}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Rim: one straight of {length}.</source>
   <translation>Rand: eine Gerade von {length}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Run the tool round the outline of cut {number}, as the file of its position has it, outside the line: counter-clockwise as seen, the tool on the right; begin and end in the arrow's place.</source>
   <translation>Das Werkzeug um den Umriss von Zuschnitt {number} führen, wie die Datei seines Platzes ihn hat, außerhalb der Linie: gegen den Uhrzeiger gesehen, das Werkzeug rechts; am Pfeil beginnen und enden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Run the tool round the outline, as the file of its position has it, outside the line: counter-clockwise as seen, the tool on the right; begin and end in the arrow's place.</source>
   <translation>Das Werkzeug um den Umriss führen, wie die Datei seines Platzes ihn hat, außerhalb der Linie: gegen den Uhrzeiger gesehen, das Werkzeug rechts; am Pfeil beginnen und enden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>STOP: do not cut</source>
   <translation>HALT: nicht schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Saw off the oversize clear of the line, show face up for a hand saw or router bit that cuts down, face down for a saw that cuts up.</source>
   <translation>Das Übermaß mit Abstand von der Linie absägen, Sichtseite oben für Handsäge oder Fräser, die nach unten schneiden, unten für eine Säge, die nach oben schneidet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Saws and routers at the edge: support the panel, cut with the feed against the cutter, guards on, eyes and ears covered.</source>
   <translation>Sägen und Fräsen an der Kante: die Platte stützen, im Gegenlauf arbeiten, Schutz auf, Augen und Ohren geschützt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Scale of plan</source>
   <translation>Maßstab Draufsicht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Scale of wedge</source>
   <translation>Maßstab Keil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Score the show face on the line before the saw, so that nothing lifts.</source>
   <translation>Die Sichtseite vor der Säge auf der Linie ritzen, damit nichts ausreißt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>Seam {seam} of this ring never meets the top's edge, so that its closing cannot be told; move the ring's centre into the top.</source>
   <translation>Fuge {seam} dieses Rings trifft nie die Kante der Platte, also ist ihr Schließen nicht zu sagen; rücken Sie die Mitte des Rings in die Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Seams are cut over, {angle} deg in all, as the templates have them; pins, lines and offcuts here reckon with it.</source>
   <translation>Fugen werden zu groß geschnitten, im Ganzen {angle} Grad, wie die Schablonen es haben; Stifte, Linien und Abschnitte hier rechnen damit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Seams are cut over, {width} on each, as the templates have them; pins, lines and offcuts here reckon with it.</source>
   <translation>Fugen werden zu groß geschnitten, je {width}, wie die Schablonen es haben; Stifte, Linien und Abschnitte hier rechnen damit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section along x through the centre of the match, from the left end of the top to the centre, seen from the lower end. The show face is on top.</source>
   <translation>Schnitt längs x durch die Mitte des Furnierbilds, vom linken Ende der Platte zur Mitte, vom unteren Ende gesehen. Die Sichtseite ist oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section through the build-up</source>
   <translation>Schnitt durch den Aufbau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section, continued</source>
   <translation>Schnitt, Fortsetzung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Seen from the faces of the leaves, grain upright.</source>
   <translation>Von den Vorderseiten der Blätter gesehen, Faser aufrecht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>Seen from the show face, positions counter-clockwise.</source>
   <translation>Von der Sichtseite gesehen, Plätze gegen den Uhrzeiger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Seen from the show face.</source>
   <translation>Von der Sichtseite gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Set out {angle} by hand: along its middle {base} from the tip as cut, then {offset} square to each side. Make a test cut.</source>
   <translation>{angle} von Hand anreißen: auf der Mittellinie {base} von der Spitze wie geschnitten, dann {offset} rechtwinklig nach jeder Seite. Einen Probeschnitt machen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Set out {angle} by hand: along its middle {base} from the tip, then {offset} square to each side. Make a test cut.</source>
   <translation>{angle} von Hand anreißen: auf der Mittellinie {base} von der Spitze, dann {offset} rechtwinklig nach jeder Seite. Einen Probeschnitt machen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Set the template to {angle}, {over} over, never under: from the tip mark {base} on the axis and square off {offset} to both sides. Read to {reading} mm that is sure to {sure}.</source>
   <translation>Die Schablone auf {angle} stellen, {over} zu groß, nie zu klein: von der Spitze auf der Achse {base} anzeichnen und rechtwinklig {offset} nach beiden Seiten. Auf {reading} mm abgelesen ist das sicher auf {sure}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Set-out of {angle}, not to scale</source>
   <translation>Anriss von {angle}, nicht maßstäblich</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Set-out of {angle}, not to scale.</source>
   <translation>Anriss von {angle}, nicht maßstäblich.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Sharp edges: cut away from the hand, with work and rule held down, and keep the guard on the saw. What local rules and the machine's own sheet ask comes first.</source>
   <translation>Scharfe Kanten: von der Hand weg schneiden, Werkstück und Lineal niedergehalten, den Schutz auf der Säge lassen. Was örtliche Regeln und das Merkblatt der Maschine verlangen, geht vor.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Sheet</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Sheet {sheet}: row {row} of {rows}, column {column} of {columns}, {page}.</source>
   <translation>Bogen {sheet}: Reihe {row} von {rows}, Spalte {column} von {columns}, {page}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Sizes are across the leaf x along the grain. Side up: what is seen of the leaf on the finished top.</source>
   <translation>Maße sind quer zum Blatt x längs der Faser. Seite oben: was vom Blatt auf der fertigen Platte zu sehen ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Sizes are of rectangles along the grain that fit; larger ones may be found by hand. What an offcut is kept for, and from which size on, is common practice: set your own.</source>
   <translation>Maße sind von Rechtecken längs der Faser, die hineinpassen; größere findet man vielleicht von Hand. Wofür ein Abschnitt aufgehoben wird, und ab welcher Größe, ist übliche Praxis: setzen Sie Ihre eigene.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Some parts of stack {stacks} have room for neither a pin nor a screw: before it is closed, stick boards and leaves together there with removable double-sided tape in the waste, so that no leaf can slip.</source>
   <translation>Einige Teile von Stapel {stacks} haben weder für einen Stift noch für eine Schraube Platz: bevor er geschlossen wird, Decklagen und Blätter dort im Verschnitt mit lösbarem doppelseitigem Band verkleben, damit kein Blatt rutschen kann.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Spare leaves are cut like the others and kept: a piece that breaks at the press or the trimming has its neighbour in the sequence.</source>
   <translation>Reserveblätter werden wie die anderen geschnitten und aufgehoben: ein Teil, das in der Presse oder beim Besäumen bricht, hat seinen Nachbarn in der Messerfolge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Spare leaves are cut with the others and kept: a piece that breaks at the press or the trimming has its neighbour in the sequence.</source>
   <translation>Reserveblätter werden mit den anderen geschnitten und aufgehoben: ein Teil, das in der Presse oder beim Besäumen bricht, hat seinen Nachbarn in der Messerfolge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Spares among them: {leaves}.</source>
   <translation>Reserve darunter: {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Spares among them: {spares}, face up.</source>
   <translation>Reserve darunter: {spares}, Vorderseite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Spread, lay the face on its marks, caul and film on it.</source>
   <translation>Auftragen, das Furnier auf seine Zeichen legen, Folie und Zulage darauf.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Spread, lay the face on its marks, set the pins in the oversize, caul and film on it.</source>
   <translation>Auftragen, das Furnier auf seine Zeichen legen, die Stifte ins Übermaß setzen, Folie und Zulage darauf.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stack</source>
   <translation>Stapel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stack {stacks}, step {number}: {step}</source>
   <translation>Stapel {stacks}, Schritt {number}: {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stack {stack}</source>
   <translation>Stapel {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Stack {stack}: where the pins stand</source>
   <translation>Stapel {stack}: wo die Stifte stehen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stacks {stacks}, step {number}: {step}</source>
   <translation>Stapel {stacks}, Schritt {number}: {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>Standard error at a leaf's corner up to {error}.</source>
   <translation>Standardabweichung an einer Blattecke bis {error}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Step {number}: {step}</source>
   <translation>Schritt {number}: {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Still to be looked up there: {missing}.</source>
   <translation>Dort noch nachzusehen: {missing}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>TIP</source>
   <translation>SPITZE</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Take tape and chalk off the glue side; vacuum both.</source>
   <translation>Band und Kreide von der Leimseite nehmen; beide absaugen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Take {offsets} at the rim, nothing at the tip, off both its pieces.</source>
   <translation>{offsets} am Rand wegnehmen, an der Spitze nichts, von beiden Teilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Tape of any kind, on the glue side: comes off before glue; no adhesive bonds through it: a strip left there lets go and shows as a ridge.</source>
   <translation>Band jeder Art, auf der Leimseite: kommt vor dem Leimen weg; kein Klebstoff bindet hindurch: ein vergessener Streifen löst sich und zeichnet sich als Grat ab.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Tape the middle of the seam first, then outwards.</source>
   <translation>Zuerst die Mitte der Fuge kleben, dann nach außen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the four quarters; dry-lay before glue, measure, and true each quarter at both ends alike: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Bis zu den vier Vierteln kleben; vor dem Leimen trocken auslegen, messen, und jedes Viertel an beiden Enden gleich fügen: im Mittel {lost} am Rand, zur Spitze auf nichts auslaufend.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the two halves; dry-lay before glue, measure, and true each half at both ends alike: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Bis zu den zwei Hälften kleben; vor dem Leimen trocken auslegen, messen, und jede Hälfte an beiden Enden gleich fügen: im Mittel {lost} am Rand, zur Spitze auf nichts auslaufend.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the two halves; dry-lay before glue, measure, and true each half at its last end: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Bis zu den zwei Hälften kleben; vor dem Leimen trocken auslegen, messen, und jede Hälfte an ihrem letzten Ende fügen: im Mittel {lost} am Rand, zur Spitze auf nichts auslaufend.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the whole ring; dry-lay before glue, measure, and true the last joint on both its pieces alike: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Bis zum ganzen Ring kleben; vor dem Leimen trocken auslegen, messen, und die letzte Fuge an ihren beiden Teilen gleich fügen: im Mittel {lost} am Rand, zur Spitze auf nichts auslaufend.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Taped face down: this plan is the mirror image of the top, seen from its back, and each piece shows the side that is glued. Tape on that side only holds for the moment; turn the whole over, gum-tape the show face, and take every strip off the glue side before glue.</source>
   <translation>Mit der Sichtseite nach unten geklebt: dieser Plan ist das Spiegelbild der Platte, von hinten gesehen, und jedes Teil zeigt die Leimseite. Band auf dieser Seite hält nur für den Augenblick; das Ganze wenden, die Sichtseite mit Fugenpapier kleben, und vor dem Leimen jeden Streifen von der Leimseite nehmen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Taped face up: the plan is seen from the show face.</source>
   <translation>Mit der Sichtseite nach oben geklebt: der Plan ist von der Sichtseite gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>Taping plan</source>
   <translation>Klebeplan</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>Taping plan, face down (mirrored)</source>
   <translation>Klebeplan, Sichtseite unten (gespiegelt)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of piece {numbers}</source>
   <translation>Schablone von Teil {numbers}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of pieces {numbers}</source>
   <translation>Schablone der Teile {numbers}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut</source>
   <translation>Schablone des Zuschnitts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut {number} of {count}</source>
   <translation>Schablone des Zuschnitts {number} von {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut {number} of {count}, stack {stack}</source>
   <translation>Schablone des Zuschnitts {number} von {count}, Stapel {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut {number} of {count}, stacks {stack}</source>
   <translation>Schablone des Zuschnitts {number} von {count}, Stapel {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut, stack {stack}</source>
   <translation>Schablone des Zuschnitts, Stapel {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut, stacks {stack}</source>
   <translation>Schablone des Zuschnitts, Stapel {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Test cut: {count} wedges made {sum}, so that the template cuts {angle}, sure to {sure}: {off} over, and {wanted} over are wanted.</source>
   <translation>Probeschnitt: {count} Keile ergaben {sum}, die Schablone schneidet also {angle}, sicher auf {sure}: {off} zu groß, und {wanted} zu groß sind gewollt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Test cut: {count} wedges made {sum}, so that the template cuts {angle}, sure to {sure}: {off} under, and {wanted} over are wanted.</source>
   <translation>Probeschnitt: {count} Keile ergaben {sum}, die Schablone schneidet also {angle}, sicher auf {sure}: {off} zu klein, und {wanted} zu groß sind gewollt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Test cut: {count} wedges of waste laid tip to tip should make {sum}. What they make, parted by {count}, is the template's angle, sure to {sure}: the template's error is then no larger than that. Enter it, and the advice goes by it.</source>
   <translation>Probeschnitt: {count} Keile aus Abfall, Spitze an Spitze gelegt, sollen {sum} ergeben. Was sie ergeben, durch {count} geteilt, ist der Winkel der Schablone, sicher auf {sure}: größer ist der Fehler der Schablone dann nicht. Tragen Sie es ein, und der Rat richtet sich danach.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/paper.py" />
   <source>Text cannot be drawn in this session; print the marks from the window.</source>
   <translation>In dieser Sitzung lässt sich kein Text zeichnen; drucken Sie die Marken aus dem Fenster.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/pdf.py" />
   <source>Text cannot be drawn in this session; write the pages from the window.</source>
   <translation>In dieser Sitzung lässt sich kein Text zeichnen; schreiben Sie die Seiten aus dem Fenster.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/drawn_picture.py" />
   <source>Text cannot be drawn in this session; write the picture from the window.</source>
   <translation>In dieser Sitzung lässt sich kein Text zeichnen; schreiben Sie das Bild aus dem Fenster.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>That is less sure than the {error} that were reckoned with: take a base of {base} or more, or let the test cut decide.</source>
   <translation>Das ist weniger sicher als die {error}, mit denen gerechnet wurde: nehmen Sie eine Anreißlänge von {base} oder mehr, oder lassen Sie den Probeschnitt entscheiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>That is not enough for this adhesive: take a press with plates, or an adhesive whose sheet allows less.</source>
   <translation>Das genügt für diesen Klebstoff nicht: nehmen Sie eine Presse mit Platten, oder einen Klebstoff, dessen Merkblatt weniger erlaubt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>That is not enough: the press gives {most} on this panel at most. Take another press, or an adhesive whose sheet allows less.</source>
   <translation>Das genügt nicht: die Presse gibt auf diese Platte höchstens {most}. Nehmen Sie eine andere Presse, oder einen Klebstoff, dessen Merkblatt weniger erlaubt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>That over costs: seams up to {shift} off their places at the rim (most at the end of piece {piece}), {lost} of figure at the rim on each side of a trued joint, {share} % of the top's area, and every wedge {wider} wider at the rim, which its leaf has room for.</source>
   <translation>Diese Zugabe kostet: Fugen am Rand bis zu {shift} neben ihrem Platz (am meisten am Ende von Teil {piece}), {lost} Textur am Rand auf jeder Seite einer gefügten Fuge, {share} % der Fläche der Platte, und jeden Keil am Rand {wider} breiter, wofür sein Blatt Platz hat.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>That over costs: seams up to {shift} off their places at the rim (most at the end of piece {piece}), {lost} of figure at the rim on each side of a trued joint, {share} % of the top's area, and every wedge {wider} wider at the rim, which its leaf must have.</source>
   <translation>Diese Zugabe kostet: Fugen am Rand bis zu {shift} neben ihrem Platz (am meisten am Ende von Teil {piece}), {lost} Textur am Rand auf jeder Seite einer gefügten Fuge, {share} % der Fläche der Platte, und jeden Keil am Rand {wider} breiter, was sein Blatt haben muss.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The air outside has {air} at {altitude:g} m (weather moves it a little): no bag presses with more, and no pump reaches all of it.</source>
   <translation>Die Außenluft hat {air} in {altitude:g} m Höhe (das Wetter ändert sie ein wenig): kein Sack presst mit mehr, und keine Pumpe erreicht alles davon.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/units.py" />
   <source>The altitude cannot be {value} m; give a number from -500 to {most}.</source>
   <translation>Die Höhe kann nicht {value} m sein; geben Sie eine Zahl von -500 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>The angle that a seam is cut over cannot be {value}; give a number from 0 to {most}. Cut over, never under.</source>
   <translation>Der Winkel, um den eine Fuge zu groß geschnitten wird, kann nicht {value} sein; geben Sie eine Zahl von 0 bis {most}. Zu groß schneiden, nie zu klein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>The arrow in a piece is its grain.</source>
   <translation>Der Pfeil in einem Teil ist seine Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The axis leans {turn} to the left of A-B.</source>
   <translation>Die Achse neigt sich um {turn} nach links von A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The axis leans {turn} to the right of A-B.</source>
   <translation>Die Achse neigt sich um {turn} nach rechts von A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The axis runs along A-B.</source>
   <translation>Die Achse läuft längs A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>The back of {count} turned leaf was not photographed: seams there may miss by {miss}.</source>
   <translation>Die Rückseite von {count} gewendetem Blatt wurde nicht fotografiert: Fugen dort können sich um {miss} verfehlen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>The backs of {count} turned leaves were not photographed: seams there may miss by {miss}.</source>
   <translation>Die Rückseiten von {count} gewendeten Blättern wurden nicht fotografiert: Fugen dort können sich um {miss} verfehlen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The bag presses with {most} at most: what its pump pulls here, or the air outside ({air} at {altitude:g} m) where that is less.</source>
   <translation>Der Sack presst höchstens mit {most}: was seine Pumpe hier zieht, oder die Außenluft ({air} in {altitude:g} m Höhe), wo das weniger ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/setout.py" />
   <source>The base of the set-out cannot be {value}; give a length up to {most}, or 0 to have it chosen.</source>
   <translation>Die Anreißlänge kann nicht {value} sein; geben Sie eine Länge bis {most}, oder 0, um sie wählen zu lassen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>The checks found nothing that speaks against cutting.</source>
   <translation>Die Prüfungen fanden nichts, was gegen das Schneiden spricht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>The coefficient of movement cannot be {shown}; give 0 to {most} for each % of moisture.</source>
   <translation>Der Beiwert des Arbeitens kann nicht {shown} sein; geben Sie 0 bis {most} je % Feuchte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>The coefficients of movement hold from 6 to 14 % of moisture only.</source>
   <translation>Die Beiwerte des Arbeitens gelten nur von 6 bis 14 % Feuchte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>The cross is the centre of the match: {cx} from the left end and {cy} from the lowest point of the top.</source>
   <translation>Das Kreuz ist die Mitte des Furnierbilds: {cx} vom linken Ende und {cy} vom untersten Punkt der Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>The cut</source>
   <translation>Der Zuschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The cut on the stack</source>
   <translation>Der Zuschnitt auf dem Stapel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The cut on the stack {number} of {count}</source>
   <translation>Der Zuschnitt auf dem Stapel {number} von {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The disc over the centre hides it.</source>
   <translation>Die Scheibe über der Mitte verdeckt es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>The edge, from the centre</source>
   <translation>Die Kante, von der Mitte aus</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The end marked TIP goes to the middle of the top.</source>
   <translation>Das mit SPITZE bezeichnete Ende geht zur Mitte der Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>The finished top</source>
   <translation>Die fertige Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>The folder {folder} holds {count} packets of this layout; choose another one.</source>
   <translation>Der Ordner {folder} enthält {count} Mappen dieses Legeplans; wählen Sie einen anderen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The grain runs along the arrow, which points to the leaf's upper end.</source>
   <translation>Die Faser läuft längs des Pfeils, der zum oberen Ende des Blatts zeigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The halves are {one} with {first} and {two} with {second}, each sure to {sure}. The chance that both reach 180 deg is {chance}.</source>
   <translation>Die Hälften sind {one} mit {first} und {two} mit {second}, jede sicher auf {sure}. Die Aussicht, dass beide 180 Grad erreichen, ist {chance}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The hydraulic gauge shows {gauge} for it, friction and springs of the rams left out.</source>
   <translation>Das Hydraulikmanometer zeigt dafür {gauge}, Reibung und Federn der Zylinder weggelassen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The joint is bent: fit it piece by piece from the middle outwards, then tape.</source>
   <translation>Die Fuge ist geknickt: Teil für Teil von der Mitte nach außen einpassen, dann kleben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>The kerf of {kerf} lies in the waste.</source>
   <translation>Die Schnittfuge von {kerf} liegt im Verschnitt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>The last joint cannot have the seam of positions {a} and {b}; it can have that of {could}.</source>
   <translation>Die letzte Fuge kann nicht die der Plätze {a} und {b} haben; möglich ist die von {could}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}, as it was asked for.</source>
   <translation>Die letzte Fuge ist die Fuge {seams}, wie verlangt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: no other parts the face evenly.</source>
   <translation>Die letzte Fuge ist die Fuge {seams}: keine andere teilt die Fläche gleichmäßig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: of {count} it hides best, for of those with as many surfaces between, the colours differ most there ({here} CIEDE2000; the others {least} to {most}).</source>
   <translation>Die letzte Fuge ist die Fuge {seams}: unter {count} fällt sie am wenigsten auf, denn von denen mit ebenso vielen Flächen dazwischen sind die Farben dort am verschiedensten ({here} CIEDE2000; die anderen {least} bis {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: of {count} it hides best, for there most surfaces lie between those that meet ({here} on the mean; the others {least} to {most}).</source>
   <translation>Die letzte Fuge ist die Fuge {seams}: unter {count} fällt sie am wenigsten auf, denn dort liegen die meisten Flächen zwischen denen, die sich treffen (im Mittel {here}; die anderen {least} bis {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: of {count} none hides it better.</source>
   <translation>Die letzte Fuge ist die Fuge {seams}: unter {count} fällt keine weniger auf.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}, as it was asked for.</source>
   <translation>Die letzte Fuge sind die Fugen {seams}, wie verlangt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: no other parts the face evenly.</source>
   <translation>Die letzte Fuge sind die Fugen {seams}: keine andere teilt die Fläche gleichmäßig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: of {count} it hides best, for of those with as many surfaces between, the colours differ most there ({here} CIEDE2000; the others {least} to {most}).</source>
   <translation>Die letzte Fuge sind die Fugen {seams}: unter {count} fallen sie am wenigsten auf, denn von denen mit ebenso vielen Flächen dazwischen sind die Farben dort am verschiedensten ({here} CIEDE2000; die anderen {least} bis {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: of {count} it hides best, for there most surfaces lie between those that meet ({here} on the mean; the others {least} to {most}).</source>
   <translation>Die letzte Fuge sind die Fugen {seams}: unter {count} fallen sie am wenigsten auf, denn dort liegen die meisten Flächen zwischen denen, die sich treffen (im Mittel {here}; die anderen {least} bis {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: of {count} none hides it better.</source>
   <translation>Die letzte Fuge sind die Fugen {seams}: unter {count} fällt keine weniger auf.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The leaf at each position has its number.</source>
   <translation>Das Blatt auf jedem Platz hat dessen Nummer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The line between the two corners leans {turn} to the left of A-B.</source>
   <translation>Die Linie zwischen den zwei Ecken neigt sich um {turn} nach links von A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The line between the two corners leans {turn} to the right of A-B.</source>
   <translation>Die Linie zwischen den zwei Ecken neigt sich um {turn} nach rechts von A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The line between the two corners runs along A-B.</source>
   <translation>Die Linie zwischen den zwei Ecken läuft längs A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The lowest corner is measured from the lower left corner of the leaf's own photograph, seen from its face: x across, y along the grain.</source>
   <translation>Die unterste Ecke ist von der Ecke links unten im eigenen Foto des Blatts gemessen, von vorn gesehen: x quer, y längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The lowest corner is measured from the lower left corner of the leaf, seen from its face: x across, y along the grain.</source>
   <translation>Die unterste Ecke ist von der Ecke links unten des Blatts gemessen, von vorn gesehen: x quer, y längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The maker's sheet of the adhesive wins over all that stands here: pressure, spread, open time, time in the press, temperature, moisture of the wood.</source>
   <translation>Das Merkblatt des Klebstoffherstellers geht allem vor, was hier steht: Druck, Auftrag, offene Zeit, Zeit in der Presse, Temperatur, Holzfeuchte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The most that the press may show was not entered: see its plate.</source>
   <translation>Der Höchstwert, den die Presse zeigen darf, wurde nicht eingegeben: siehe ihr Schild.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>The next lift takes two new boards, with pins in the same places: these are sawn up.</source>
   <translation>Der nächste Teilstapel braucht zwei neue Decklagen, Stifte an denselben Stellen: diese sind zersägt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>The packet could not be written into {folder} ({reason}); choose a folder that you may write to and that has room.</source>
   <translation>Die Mappe konnte nicht nach {folder} geschrieben werden ({reason}); wählen Sie einen Ordner, in den Sie schreiben dürfen und der Platz hat.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>The panel is {thick} thick in all.</source>
   <translation>Die Platte ist im Ganzen {thick} dick.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The photograph is paled, so that lines on it can be read.</source>
   <translation>Das Foto ist aufgehellt, damit Linien darauf lesbar sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/picture.py" />
   <source>The picture would have {megapixels} megapixels; take fewer pixels per mm (at most {most} megapixels).</source>
   <translation>Das Bild hätte {megapixels} Megapixel; nehmen Sie weniger Pixel je mm (höchstens {most} Megapixel).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>The pieces of stack {stacks} are less than {least} wide at their widest: stick board and leaves together with removable double-sided tape in the waste, and clamp on a bridge that bears on both sides of the blade's line.</source>
   <translation>Die Teile von Stapel {stacks} sind an der breitesten Stelle weniger als {least} breit: Decklage und Blätter im Verschnitt mit lösbarem doppelseitigem Band verkleben und eine Brücke aufspannen, die auf beiden Seiten der Schnittlinie aufliegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>The pieces of this top leave no choice of the last joint.</source>
   <translation>Die Teile dieser Platte lassen für die letzte Fuge keine Wahl.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips the ring closes, give or take {rim}.</source>
   <translation>Die Teile ergeben {sum} (sicher auf {sure}, eine Standardabweichung): {reach} von den Spitzen schließt sich der Ring, auf {rim} genau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips the ring overlaps by {gap}, give or take {rim}.</source>
   <translation>Die Teile ergeben {sum} (sicher auf {sure}, eine Standardabweichung): {reach} von den Spitzen überlappt der Ring um {gap}, auf {rim} genau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips the ring stays open by {gap}, give or take {rim}.</source>
   <translation>Die Teile ergeben {sum} (sicher auf {sure}, eine Standardabweichung): {reach} von den Spitzen bleibt der Ring um {gap} offen, auf {rim} genau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>The pins stand {apart} apart in the board under the leaves, {free} from the nearest cut, and {margin} inside every leaf and outside every fault at least.</source>
   <translation>Die Stifte stehen im Brett unter den Blättern {apart} auseinander, {free} vom nächsten Schnitt, und mindestens {margin} innerhalb jedes Blatts und außerhalb jedes Fehlers.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/units.py" />
   <source>The pressure cannot be {value}; give a number from 0 to {most}.</source>
   <translation>Der Druck kann nicht {value} sein; geben Sie eine Zahl von 0 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>The price cannot be {value}; give a number from 0 to {most}.</source>
   <translation>Der Preis kann nicht {value} sein; geben Sie eine Zahl von 0 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The rim is cut {lengths} over.</source>
   <translation>Der Rand ist um {lengths} größer geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The rim then ends {short} short of the finished edge.</source>
   <translation>Der Rand endet dann {short} vor der fertigen Kante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>The rims of positions {trimmed} are too long: cut them back to their own when the top is taped, before the press.</source>
   <translation>Die Ränder der Plätze {trimmed} sind zu lang: auf ihren eigenen zurückschneiden, wenn die Platte geklebt ist, vor der Presse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>The rims of {positions} are too long.</source>
   <translation>Die Ränder von {positions} sind zu lang.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut exactly.</source>
   <translation>Die Fugenkanten sind genau geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut over, counter-clockwise: {each}.</source>
   <translation>Die Fugenkanten sind größer geschnitten, gegen den Uhrzeiger: {each}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut {angle} over in all: the tip has {cut_angle} for {angle_2}. True the halves.</source>
   <translation>Die Fugenkanten sind im Ganzen um {angle} größer geschnitten: die Spitze hat {cut_angle} für {angle_2}. Die Hälften fügen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut {over} over, parallel.</source>
   <translation>Die Fugenkanten sind um {over} größer geschnitten, gleichlaufend.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut {over} over, parallel: the tip lies {shift} further out.</source>
   <translation>Die Fugenkanten sind um {over} größer geschnitten, gleichlaufend: die Spitze liegt {shift} weiter außen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>The stack</source>
   <translation>Der Stapel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The stack must be pinned and held between boards before it is cut; the papers on pinning and cutting say how.</source>
   <translation>Der Stapel muss gestiftet und zwischen Brettern gehalten sein, bevor er geschnitten wird; die Blätter zum Stiften und Schneiden sagen, wie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The tip is measured from the lower left corner of the leaf's own photograph, seen from its face: x across, y along the grain.</source>
   <translation>Die Spitze ist von der Ecke links unten im eigenen Foto des Blatts gemessen, von vorn gesehen: x quer, y längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The tip is measured from the lower left corner of the leaf, seen from its face: x across, y along the grain.</source>
   <translation>Die Spitze ist von der Ecke links unten des Blatts gemessen, von vorn gesehen: x quer, y längs der Faser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The tips must lie on it.</source>
   <translation>Die Spitzen müssen darauf liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>The tool stands square: nothing is said of lean.</source>
   <translation>Das Werkzeug steht senkrecht: von Neigung ist nichts gesagt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/piles.py" />
   <source>The tops come from several bundles, which do not lie in one stack; plan each bundle's cuts by itself.</source>
   <translation>Die Platten kommen aus mehreren Paketen, die nicht in einem Stapel liegen; planen Sie die Schnitte jedes Pakets für sich.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>The two holes of every leaf are {apart} apart: measure this before you prick. Measure and prick every leaf face up, those that will be turned over as well.</source>
   <translation>Die zwei Löcher jedes Blatts sind {apart} auseinander: messen Sie das nach, bevor Sie stechen. Jedes Blatt mit der Vorderseite oben messen und stechen, auch die, die gewendet werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>The usable areas of the leaves in stack {stack} do not lie over each other; see how they are registered.</source>
   <translation>Die nutzbaren Flächen der Blätter in Stapel {stack} liegen nicht übereinander; sehen Sie nach, wie sie ausgerichtet sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The vacuum gauge shows {gauge} below the air, or more, before the time in the press begins.</source>
   <translation>Das Vakuummeter zeigt {gauge} unter der Luft, oder mehr, bevor die Zeit in der Presse beginnt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>The width that a seam is cut over cannot be {value}; give a number from 0 to {most}. Cut over, never under.</source>
   <translation>Die Breite, um die eine Fuge zu groß geschnitten wird, kann nicht {value} sein; geben Sie eine Zahl von 0 bis {most}. Zu groß schneiden, nie zu klein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>There are {count} stacks: leaves of one are never laid in another.</source>
   <translation>Es sind {count} Stapel: Blätter des einen werden nie in einen anderen gelegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/piles.py" />
   <source>There is nothing to cut; lay a match first.</source>
   <translation>Es gibt nichts zu schneiden; legen Sie zuerst ein Furnierbild.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>There is nothing to write into the packet.</source>
   <translation>Es gibt nichts in die Mappe zu schreiben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>These edges run over several pieces: true each along a straightedge first.</source>
   <translation>Diese Kanten laufen über mehrere Teile: jede zuerst am Lineal fügen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Thick: the cut. Thin within it: position {shown} as finished. Dashed: the area that may be used.</source>
   <translation>Dick: der Zuschnitt. Dünn darin: Platz {shown}, wie er fertig ist. Gestrichelt: die nutzbare Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Thicknesses are exaggerated and not to scale; so are narrow strips. Wide parts are drawn shorter, with a break. Read the figures.</source>
   <translation>Dicken sind übertrieben und nicht maßstäblich; schmale Streifen ebenso. Breite Teile sind kürzer gezeichnet, mit Bruch. Die Zahlen lesen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>This packet is not whole: one part is left out. Why stands at the foot of the list.</source>
   <translation>Diese Mappe ist nicht vollständig: ein Teil fehlt. Warum, steht am Ende der Liste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>This packet is not whole: {count} parts are left out. Why stands at the foot of the list.</source>
   <translation>Diese Mappe ist nicht vollständig: {count} Teile fehlen. Warum, steht am Ende der Liste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on figures that were typed in, which no photograph bears out.</source>
   <translation>Dieses Blatt beruht auf eingetippten Zahlen, die kein Foto bestätigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on how the leaves lay under the camera: they are not registered, and a photograph that is shifted against the others shifts its piece.</source>
   <translation>Dieses Blatt beruht darauf, wie die Blätter unter der Kamera lagen: sie sind nicht ausgerichtet, und ein Foto, das gegen die anderen verschoben ist, verschiebt sein Teil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on marks.</source>
   <translation>Dieses Blatt beruht auf Marken.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on registers of which nobody said what they follow.</source>
   <translation>Dieses Blatt beruht auf Lagen, von denen niemand sagte, wonach sie sich richten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on the figure in the photographs.</source>
   <translation>Dieses Blatt beruht auf der Textur in den Fotos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on the generated log, not on photographs of wood.</source>
   <translation>Dieses Blatt beruht auf dem erzeugten Stamm, nicht auf Fotos von Holz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on the log's own shape, as the photographs show it.</source>
   <translation>Dieses Blatt beruht auf der Form des Stamms selbst, wie die Fotos sie zeigen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/planning.py" />
   <source>This top takes leaves {needed} mm wide, the margin of {margin} mm included, and those to be had are {width} mm: take wider leaves, more pieces, or a smaller top.</source>
   <translation>Diese Platte braucht {needed} mm breite Blätter, den Rand von {margin} mm mitgerechnet, und die erhältlichen haben {width} mm: nehmen Sie breitere Blätter, mehr Teile, oder eine kleinere Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Tip {angle}.</source>
   <translation>Spitze {angle}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim), each half by {half}; the two halves go {alike} % together.</source>
   <translation>Zu erwarten von {ways} Keilen, auf {angle} geschnitten: der Fehler der Schablone ({template} Standardabw.) ist einem Stapel gemeinsam und zählt {ways} mal, der eigene jedes Teils ({piece}) mit der Wurzel aus {ways}: die Summe des Rings streut um {spread} ({rim} am Rand), jede Hälfte um {half}; die beiden Hälften gehen zu {alike} % zusammen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim).</source>
   <translation>Zu erwarten von {ways} Keilen, auf {angle} geschnitten: der Fehler der Schablone ({template} Standardabw.) ist einem Stapel gemeinsam und zählt {ways} mal, der eigene jedes Teils ({piece}) mit der Wurzel aus {ways}: die Summe des Rings streut um {spread} ({rim} am Rand).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard, by the test cut) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim), each half by {half}; the two halves go {alike} % together.</source>
   <translation>Zu erwarten von {ways} Keilen, auf {angle} geschnitten: der Fehler der Schablone ({template} Standardabw., nach dem Probeschnitt) ist einem Stapel gemeinsam und zählt {ways} mal, der eigene jedes Teils ({piece}) mit der Wurzel aus {ways}: die Summe des Rings streut um {spread} ({rim} am Rand), jede Hälfte um {half}; die beiden Hälften gehen zu {alike} % zusammen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard, by the test cut) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim).</source>
   <translation>Zu erwarten von {ways} Keilen, auf {angle} geschnitten: der Fehler der Schablone ({template} Standardabw., nach dem Probeschnitt) ist einem Stapel gemeinsam und zählt {ways} mal, der eigene jedes Teils ({piece}) mit der Wurzel aus {ways}: die Summe des Rings streut um {spread} ({rim} am Rand).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/measured.py" />
   <source>To close a ring of {ways} pieces give the angle of each of the {ways}, or of its two halves; these are {count}.</source>
   <translation>Um einen Ring aus {ways} Teilen zu schließen, geben Sie den Winkel von jedem der {ways}, oder von seinen zwei Hälften; dies sind {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To keep the tips instead: {kept} stays as it is, and {other} is trued to {to} only, each edge by itself, from nothing at the tip to {offs} at the rim; the joint then bends by {bend} at the tips.</source>
   <translation>Um statt dessen die Spitzen zu behalten: {kept} bleibt, wie es ist, und {other} wird nur auf {to} gefügt, jede Kante für sich, von nichts an der Spitze bis {offs} am Rand; die Fuge knickt dann an den Spitzen um {bend}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To keep the tips instead: {kept} stays as it is, and {other} too: they fit into each other untrued; the joint then bends by {bend} at the tips.</source>
   <translation>Um statt dessen die Spitzen zu behalten: {kept} bleibt, wie es ist, und {other} ebenso: sie passen ungefügt ineinander; die Fuge knickt dann an den Spitzen um {bend}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>To scale {scale}: as trued; dashed: as planned; red: trued</source>
   <translation>Im Maßstab {scale}: wie gefügt; gestrichelt: wie geplant; rot: gefügt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To swap {one} and {other} would even the halves from {now} to {then}, and put {steps} instead of {instead} surfaces between the pieces about them.</source>
   <translation>{one} und {other} zu tauschen gliche die Hälften von {now} auf {then} aus und brächte {steps} statt {instead} Flächen zwischen die Teile daneben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To swap {one} and {other} would even the halves from {now} to {then}, and put {steps} instead of {instead} surfaces between the pieces about them; {broken} seams would be no book joints.</source>
   <translation>{one} und {other} zu tauschen gliche die Hälften von {now} auf {then} aus und brächte {steps} statt {instead} Flächen zwischen die Teile daneben; {broken} Fugen wären keine gestürzten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Too tall for a strip on this paper, by figures only: {names}.</source>
   <translation>Zu lang für einen Streifen auf diesem Papier, nur nach Zahlen: {names}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Top</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Trim the left and top, lay it on {sheets}.</source>
   <translation>Links und oben beschneiden, auf {sheets} legen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Trim the left, lay it on {sheet}.</source>
   <translation>Links beschneiden, auf {sheet} legen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Trim the top, lay it on {sheet}.</source>
   <translation>Oben beschneiden, auf {sheet} legen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Trim to the line in light passes, with the grain running off the edge; at each wedge it runs another way.</source>
   <translation>In leichten Zügen auf die Linie besäumen, die Faser zur Kante hin auslaufend; an jedem Keil läuft sie anders.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>True both edges of {step} along a straightedge and prove the corner with a square, a right angle at the tip.</source>
   <translation>Beide Kanten von {step} am Lineal fügen und die Ecke mit dem Winkel prüfen, ein rechter Winkel an der Spitze.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>True each half: at each end mark what comes off at tip and rim, square to the piece's edge, and cut along a straight from mark to mark.</source>
   <translation>Jede Hälfte fügen: an jedem Ende an Spitze und Rand anzeichnen, was wegkommt, rechtwinklig zur Kante des Teils, und gerade von Zeichen zu Zeichen schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Truing takes a knife along a straightedge: hold that down on its whole length, keep fingers behind it, cut away from the body in several light strokes. Follow local rules.</source>
   <translation>Zum Fügen geht ein Messer am Lineal: dieses auf ganzer Länge niederhalten, Finger dahinter, vom Körper weg in mehreren leichten Zügen schneiden. Örtliche Regeln befolgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Truing takes figure from both its sides: that shows least where the figure is broken already, most where two leaves mirror each other.</source>
   <translation>Fügen nimmt Textur von beiden Seiten: das fällt am wenigsten auf, wo die Textur schon unterbrochen ist, am meisten, wo zwei Blätter sich spiegeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/trued.py" />
   <source>Truing would take {trim} deg and the piece at position {at} has {angle}; true by quarters, or cut anew nearer to {true} deg.</source>
   <translation>Das Fügen nähme {trim} Grad, und das Teil auf Platz {at} hat {angle}; fügen Sie nach Vierteln, oder schneiden Sie neu, näher an {true} Grad.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Turned over when laid: {which}.</source>
   <translation>Beim Legen gewendet: {which}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Two cuts on the leaves of stack {stack} lie {gap} mm apart, and the blade takes {kerf} mm; move them further apart.</source>
   <translation>Zwei Zuschnitte auf den Blättern von Stapel {stack} liegen {gap} mm auseinander, und die Klinge nimmt {kerf} mm; rücken Sie sie weiter auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>Two files of the packet would be called {file}.</source>
   <translation>Zwei Dateien der Mappe hießen {file}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Two ways, seen from the face: two arcs, their radii the distances from a and from b; or along the line from a to b, then square off it, to the left or right with a behind and b ahead. The two must meet.</source>
   <translation>Zwei Wege, von vorn gesehen: zwei Bogen, ihre Radien die Abstände von a und von b; oder längs der Linie von a nach b, dann rechtwinklig, nach links oder rechts mit a hinten und b vorn. Beide müssen sich treffen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Underlined: the leaf is turned over, its back is shown.</source>
   <translation>Unterstrichen: das Blatt ist gewendet, seine Rückseite ist zu sehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>Underlined: the leaf lies with its back up.</source>
   <translation>Unterstrichen: das Blatt liegt mit der Rückseite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Use soft white chalk, no crayon, ink or wax. All chalk comes off before glue: brush and wipe it from the glue side when the taped top is checked, before glue is mixed; neither tape nor glue holds on chalk.</source>
   <translation>Weiche weiße Kreide nehmen, kein Wachs, keine Tinte. Alle Kreide kommt vor dem Leimen weg: von der Leimseite bürsten und wischen, wenn die geklebte Platte geprüft wird, bevor Leim angerührt wird; weder Fugenpapier noch Leim hält auf Kreide.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Use soft white chalk, no crayon, ink or wax. All chalk comes off before glue: brush and wipe it from the show side before tape goes over it, and see that none has come through to the glue side.</source>
   <translation>Weiche weiße Kreide nehmen, kein Wachs, keine Tinte. Alle Kreide kommt vor dem Leimen weg: von der Sichtseite bürsten und wischen, bevor Fugenpapier darüber kommt, und nachsehen, dass nichts auf die Leimseite durchkam.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Used / bought {used_of_bought:.3f}, bought / used {bought_to_used:.2f}, waste of the purchase {waste:.1f} %.</source>
   <translation>Gebraucht / gekauft {used_of_bought:.3f}, gekauft / gebraucht {bought_to_used:.2f}, Verlust vom Kauf {waste:.1f} %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Veneer alone: adhesive, backer, core, time and the risk of a spoilt cut are not in it.</source>
   <translation>Nur das Furnier: Klebstoff, Gegenfurnier, Träger, Zeit und die Gefahr eines verdorbenen Schnitts sind nicht darin.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Ways</source>
   <translation>Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Wedge</source>
   <translation>Keil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Wedge {letter}</source>
   <translation>Keil {letter}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Wedge {letter}, scale {scale}</source>
   <translation>Keil {letter}, Maßstab {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Wedge, scale {scale}</source>
   <translation>Keil, Maßstab {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/swaps.py" />
   <source>Wedges of several strips are not swapped: keep them in their places.</source>
   <translation>Keile aus mehreren Streifen werden nicht getauscht: lassen Sie sie auf ihren Plätzen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>What becomes of the leaves</source>
   <translation>Was aus den Blättern wird</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>What comes off when</source>
   <translation>Was wann wegkommt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>What is chalked</source>
   <translation>Was angeschrieben wird</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>What is cut from stack {stack} does not lie on its leaves; move the cut.</source>
   <translation>Der Zuschnitt aus Stapel {stack} liegt nicht auf seinen Blättern; verschieben Sie ihn.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>What is left</source>
   <translation>Was übrig bleibt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>What to buy</source>
   <translation>Was zu kaufen ist</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Where a piece is too small its number stands outside.</source>
   <translation>Wo ein Teil zu klein ist, steht seine Nummer außerhalb.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>Where holes are measured from a leaf's corners, they are the corners of its outline on the photograph: see that the real leaf still has them, uncut since it was photographed. Paper marks do better.</source>
   <translation>Wo Löcher von den Ecken eines Blatts gemessen werden, sind es die Ecken seines Umrisses auf dem Foto: nachsehen, dass das wirkliche Blatt sie noch hat, unbeschnitten seit dem Fotografieren. Papiermarken taugen besser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Where leaves reach more than {around} beyond the cuts and are in the way, cut them off there; keep what comes off, with its leaf's number.</source>
   <translation>Wo Blätter mehr als {around} über die Schnitte hinausreichen und im Weg sind, dort abschneiden; was abfällt, mit der Nummer seines Blatts aufheben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Where the edges overlap, cut through both along a straightedge from the tip to the rim; where they gape, nothing is left to true off: cut one of the two anew, wider by the gap. Tape it last.</source>
   <translation>Wo die Kanten überlappen, von der Spitze zum Rand am Lineal durch beide schneiden; wo sie klaffen, ist nichts mehr wegzufügen: eines der beiden neu schneiden, um den Spalt breiter. Zuletzt kleben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Where the pins stand</source>
   <translation>Wo die Stifte stehen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Whole top {size}, field {size_2}.</source>
   <translation>Ganze Platte {size}, Feld {size_2}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the bag has {there} (turned).</source>
   <translation>Mit einem Rand von {margin} ringsum braucht es {needs}; der Sack hat {there} (gedreht).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the bag has {there}.</source>
   <translation>Mit einem Rand von {margin} ringsum braucht es {needs}; der Sack hat {there}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the plates have {there} (turned).</source>
   <translation>Mit einem Rand von {margin} ringsum braucht es {needs}; die Platten haben {there} (gedreht).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the plates have {there}.</source>
   <translation>Mit einem Rand von {margin} ringsum braucht es {needs}; die Platten haben {there}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/over.py" />
   <source>With errors like these no over that can be cut is sure to true {ways} wedges; make a better template, or cut fewer ways.</source>
   <translation>Bei solchen Fehlern genügt keine schneidbare Zugabe sicher, um {ways} Keile zu fügen; machen Sie eine bessere Schablone, oder schneiden Sie weniger Keile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Write with a light hand: chalk scores soft wood, and what is pressed in shows.</source>
   <translation>Mit leichter Hand schreiben: Kreide ritzt weiches Holz, und Eingedrücktes zeichnet sich ab.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Yes: it goes in, {spare} to spare.</source>
   <translation>Ja: es geht hinein, {spare} bleiben übrig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Yield and cost</source>
   <translation>Ausbeute und Kosten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>a corner to {error}</source>
   <translation>eine Ecke auf {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>a leaf of the least size</source>
   <translation>ein Blatt kleinsten Maßes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>a m2 of top</source>
   <translation>je m2 Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>a paper mark to {error}</source>
   <translation>eine Papiermarke auf {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>a picked point to {error}</source>
   <translation>ein gewählter Punkt auf {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>a screw through both boards</source>
   <translation>eine Schraube durch beide Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>a sq ft of top</source>
   <translation>je Quadratfuß Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>across the edge</source>
   <translation>quer zur Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>across x</source>
   <translation>quer zu x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>across x along</source>
   <translation>quer x längs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>all</source>
   <translation>alle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>all four quarters reach 90 deg</source>
   <translation>alle vier Viertel erreichen 90 Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>along A-B</source>
   <translation>längs A-B</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>along a b</source>
   <translation>längs a b</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>along the axis</source>
   <translation>längs der Achse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>along the edge</source>
   <translation>längs der Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>along x</source>
   <translation>längs x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>altitude</source>
   <translation>Meereshöhe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>angle</source>
   <translation>Winkel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>angle over</source>
   <translation>Winkelzugabe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>area</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>arrow</source>
   <translation>Pfeil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>arrow to {b}</source>
   <translation>Pfeil zu {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>as it will look</source>
   <translation>wie es aussehen wird</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>as listed</source>
   <translation>wie aufgelistet</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/kit.py" />
   <source>as shown</source>
   <translation>wie gezeigt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>axes</source>
   <translation>Achsen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>axis at the rim</source>
   <translation>Achse am Rand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>bag length</source>
   <translation>Länge des Sacks</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>bag width</source>
   <translation>Breite des Sacks</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>band</source>
   <translation>Band</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/setout.py" />
   <source>base of the set-out</source>
   <translation>Anreißlänge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/figures.py" />
   <source>base {length}</source>
   <translation>Anreißlänge {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>beech</source>
   <translation>Buche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>between</source>
   <translation>zwischen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>birch</source>
   <translation>Birke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>blackwood</source>
   <translation>Blackwood (Australische Schwarzholzakazie)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>blank across the leaf mm</source>
   <translation>Rohteil quer zum Blatt mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>blank along the grain mm</source>
   <translation>Rohteil längs der Faser mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>blank size</source>
   <translation>Rohmaß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>blanks as taped, with oversize</source>
   <translation>Rohteile wie geklebt, mit Übermaß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>border strips</source>
   <translation>Friesstreifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>both halves reach 180 deg</source>
   <translation>beide Hälften erreichen 180 Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>both rings</source>
   <translation>beide Ringe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>both runs</source>
   <translation>beide Züge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>bought / used</source>
   <translation>gekauft / gebraucht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>bought: {count} leaves</source>
   <translation>gekauft: {count} Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>boxwood</source>
   <translation>Buchsbaum</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>broken line: finished edge</source>
   <translation>gestrichelt: fertige Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>broken line: finished edges of the pieces, each of which has a template of its own</source>
   <translation>gestrichelt: fertige Kanten der Teile, von denen jedes seine eigene Schablone hat</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>bundle</source>
   <translation>Paket</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>bundles</source>
   <translation>Pakete</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>can serve</source>
   <translation>taugt für</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>centre joint</source>
   <translation>Mittelfuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>chord</source>
   <translation>Sehne</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>chord {length}</source>
   <translation>Sehne {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>circles: holes for the pins</source>
   <translation>Kreise: Löcher für die Stifte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>cocobolo</source>
   <translation>Cocobolo</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/advice.py" />
   <source>confidence</source>
   <translation>Sicherheit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>core's oversize</source>
   <translation>Übermaß des Trägers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>corner</source>
   <translation>Ecke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>corners off</source>
   <translation>Ecken daneben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise</source>
   <translation>gegen den Uhrzeiger</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise from the upper field</source>
   <translation>gegen den Uhrzeiger vom oberen Feld an</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise from the upper right quarter</source>
   <translation>gegen den Uhrzeiger vom Viertel rechts oben an</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise, the inner field first</source>
   <translation>gegen den Uhrzeiger, das innere Feld zuerst</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>cross joint</source>
   <translation>Querfuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>cross on {a}</source>
   <translation>Kreuz auf {a}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>cross {far} from {a}</source>
   <translation>Kreuz {far} von {a}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>cross {far} from {a}, away from {b}</source>
   <translation>Kreuz {far} von {a}, weg von {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>curve</source>
   <translation>Kurve</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>cut as</source>
   <translation>geschnitten als</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>cut list, revision</source>
   <translation>Zuschnittliste, Stand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>cut: blanks with oversize</source>
   <translation>geschnitten: Rohteile mit Übermaß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>cypress, bald</source>
   <translation>Sumpfzypresse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>dash and dot: the axis</source>
   <translation>Strichpunkt: die Achse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>dash and dot: the axis and the tool's middle</source>
   <translation>Strichpunkt: die Achse und die Werkzeugmitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>dash and dot: the tool's middle</source>
   <translation>Strichpunkt: die Werkzeugmitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>diameter before</source>
   <translation>Durchmesser vor</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>diameter of a ram</source>
   <translation>Durchmesser eines Kolbens</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>direction, deg</source>
   <translation>Richtung, Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>distance from the tip</source>
   <translation>Abstand von der Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>distance of pins from a cut</source>
   <translation>Abstand der Stifte von einem Schnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>down</source>
   <translation>unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>down left</source>
   <translation>links unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>down right</source>
   <translation>rechts unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>each has</source>
   <translation>jedes hat</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>ebony</source>
   <translation>Ebenholz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>end</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>end of the lower seam</source>
   <translation>Ende der unteren Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>end of the upper seam</source>
   <translation>Ende der oberen Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>enlarged</source>
   <translation>vergrößert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>exactly</source>
   <translation>genau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>far corner</source>
   <translation>ferne Ecke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>file</source>
   <translation>Datei</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>finished edge</source>
   <translation>fertige Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>finished size</source>
   <translation>Fertigmaß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>finished tops</source>
   <translation>fertige Platten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>following, grain across the edge</source>
   <translation>der Kante nach, Faser quer zur Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>following, grain along the edge</source>
   <translation>der Kante nach, Faser längs der Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>found to</source>
   <translation>gefunden auf</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>from A</source>
   <translation>von A</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>from B</source>
   <translation>von B</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from a</source>
   <translation>von a</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from b</source>
   <translation>von b</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>from here on</source>
   <translation>ab hier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from its foot</source>
   <translation>von unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from its left</source>
   <translation>von links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>from the centre</source>
   <translation>von der Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>gap's distance uncertainty</source>
   <translation>Unsicherheit des Abstands</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>gap's size</source>
   <translation>Größe des Spalts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>gap's uncertainty</source>
   <translation>Unsicherheit des Spalts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>goncalo alves</source>
   <translation>Goncalo Alves</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>greenheart</source>
   <translation>Greenheart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>halves</source>
   <translation>Hälften</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>halves, both ends</source>
   <translation>Hälften, beide Enden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>halves, one end</source>
   <translation>Hälften, ein Ende</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>height of leaves cut at once</source>
   <translation>Höhe der auf einmal geschnittenen Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>hold</source>
   <translation>halten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>hole</source>
   <translation>Loch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>holes</source>
   <translation>Löcher</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>holes for pins</source>
   <translation>Löcher für Stifte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>in all</source>
   <translation>im Ganzen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>in one</source>
   <translation>in einem Stück</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>in pairs, right and left of the centre line, from the bottom up</source>
   <translation>paarweise, rechts und links der Mittellinie, von unten hinauf</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>in the press {minutes} min</source>
   <translation>in der Presse {minutes} min</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>in, to 1/{fraction}</source>
   <translation>Zoll, bis 1/{fraction}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>inlaid disc, diameter {diameter}</source>
   <translation>eingelassene Scheibe, Durchmesser {diameter}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/measured.py" />
   <source>instrument's standard error</source>
   <translation>Standardabweichung des Messgeräts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>iroko</source>
   <translation>Iroko</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>its edge to</source>
   <translation>seine Kante zu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>its rim</source>
   <translation>sein Rand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>knife, in lifts</source>
   <translation>Messer, in Teilstapeln</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>last joint</source>
   <translation>letzte Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>last seam</source>
   <translation>letzte Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>lay</source>
   <translation>legen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>layout</source>
   <translation>Legeplan</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>leaf thickness mm</source>
   <translation>Blattdicke mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting_pictures.py" />
   <source>leaf {leaf}</source>
   <translation>Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>leaf {leaf} (back), hole {hole}</source>
   <translation>Blatt {leaf} (Rückseite), Loch {hole}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>leaf {leaf}, hole {hole}</source>
   <translation>Blatt {leaf}, Loch {hole}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>leaf {leaf}, {side}</source>
   <translation>Blatt {leaf}, {side}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>lean of the blade</source>
   <translation>Neigung der Klinge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>leaves of a bundle</source>
   <translation>Blätter eines Pakets</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>leaves over</source>
   <translation>Blätter übrig</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>left</source>
   <translation>links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>left out: {name}</source>
   <translation>fehlt: {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>left to right with the grain upright</source>
   <translation>von links nach rechts bei aufrechter Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>left whole</source>
   <translation>ganz übrig</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>left: offcuts</source>
   <translation>übrig: Abschnitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>left: {count} whole leaves</source>
   <translation>übrig: {count} ganze Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>length that can be read</source>
   <translation>ablesbare Länge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>lost</source>
   <translation>verloren</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>lot {number}</source>
   <translation>Los {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>lots by shape</source>
   <translation>Lose nach Form</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>lower left</source>
   <translation>links unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>lower right</source>
   <translation>rechts unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>lowest corner</source>
   <translation>unterste Ecke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>lowest corner on leaf x mm</source>
   <translation>unterste Ecke auf dem Blatt x mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>lowest corner on leaf y mm</source>
   <translation>unterste Ecke auf dem Blatt y mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>lowest corner x</source>
   <translation>unterste Ecke x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>lowest corner y</source>
   <translation>unterste Ecke y</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>m2</source>
   <translation>m2</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>machine, leaf by leaf</source>
   <translation>Maschine, Blatt für Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>mahogany</source>
   <translation>Mahagoni</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>mansonia</source>
   <translation>Mansonia</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>maple, spalted</source>
   <translation>Ahorn, gestockt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>margin of the pins</source>
   <translation>Rand der Stifte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>measured</source>
   <translation>gemessen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>measured angle</source>
   <translation>gemessener Winkel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>mirrored: show face down</source>
   <translation>gespiegelt: Sichtseite unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>mitred, grain across the edge</source>
   <translation>auf Gehrung, Faser quer zur Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>mitred, grain along the edge</source>
   <translation>auf Gehrung, Faser längs der Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>moisture (cut)</source>
   <translation>Feuchte (Schnitt)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>moisture (photograph)</source>
   <translation>Feuchte (Foto)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>moisture (taping)</source>
   <translation>Feuchte (Kleben)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>myrtle</source>
   <translation>Myrte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>net across the leaf mm</source>
   <translation>fertig quer zum Blatt mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>net along the grain mm</source>
   <translation>fertig längs der Faser mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>net size</source>
   <translation>Fertigmaß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>not to scale</source>
   <translation>nicht maßstäblich</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>nothing large enough</source>
   <translation>nichts groß genug</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>number of rams</source>
   <translation>Zahl der Zylinder</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>number of tops</source>
   <translation>Zahl der Platten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>oak</source>
   <translation>Eiche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>obeche</source>
   <translation>Abachi (Obeche)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of each used</source>
   <translation>davon gebraucht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of the bundle</source>
   <translation>des Pakets</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of the bundle by {count} tops</source>
   <translation>des Pakets bei {count} Platten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of the leaves opened</source>
   <translation>der angebrochenen Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>off at rim</source>
   <translation>weg am Rand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>off at tip</source>
   <translation>weg an Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>off it</source>
   <translation>quer dazu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>offcut</source>
   <translation>Abschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>offcuts of opened leaves</source>
   <translation>Abschnitte angebrochener Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>olivewood</source>
   <translation>Olivenholz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>on its</source>
   <translation>auf der</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>on the curve</source>
   <translation>auf der Kurve</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>one stack</source>
   <translation>ein Stapel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>open time</source>
   <translation>offene Zeit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>open time {minutes} min</source>
   <translation>offene Zeit {minutes} min</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>opened: {count} leaves cut into</source>
   <translation>angebrochen: {count} Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle at the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte in der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} left of and {along} above the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {across} links und {along} über der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} left of and {along} below the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {across} links und {along} unter der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} left of the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {across} links der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} right of and {along} above the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {across} rechts und {along} über der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} right of and {along} below the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {across} rechts und {along} unter der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} right of the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {across} rechts der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {along} above the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {along} über der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {along} below the match's centre, cut after pressing</source>
   <translation>Öffnung {size}, ihre Mitte {along} unter der Mitte des Furnierbilds, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>openings, cut after pressing</source>
   <translation>Öffnungen, nach dem Pressen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>opepe</source>
   <translation>Bilinga (Opepe)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>over 99 %</source>
   <translation>über 99 %</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>over 99.9</source>
   <translation>über 99.9</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>over, deg</source>
   <translation>zu groß, Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/figures.py" />
   <source>oversize {length}</source>
   <translation>Übermaß {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>oversize, trimmed</source>
   <translation>Übermaß, abgeschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>own outlines</source>
   <translation>eigene Umrisse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>padauk</source>
   <translation>Padouk (Padauk)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>page {page} of {count}</source>
   <translation>Seite {page} von {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>pairs</source>
   <translation>Paare</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>pairs, the halves</source>
   <translation>Paare, die Hälften</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>pairs, the quarters</source>
   <translation>Paare, die Viertel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>part</source>
   <translation>trennen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>pau ferro</source>
   <translation>Pau Ferro</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>piece</source>
   <translation>Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/expected.py" />
   <source>piece's standard error</source>
   <translation>Standardabweichung des Teils</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>pieces</source>
   <translation>Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>pin</source>
   <translation>Stift</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>pin {number}</source>
   <translation>Stift {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>place of the gap</source>
   <translation>Ort des Spalts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>platen length</source>
   <translation>Länge der Pressplatte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>platen width</source>
   <translation>Breite der Pressplatte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>point</source>
   <translation>Punkt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>point {number}</source>
   <translation>Punkt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>pos.</source>
   <translation>Pl.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>position</source>
   <translation>Platz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>positions</source>
   <translation>Plätze</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>positions run</source>
   <translation>Plätze laufen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>pressure</source>
   <translation>Druck</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>quarters</source>
   <translation>Viertel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>reach of the boards beyond the cuts</source>
   <translation>Überstand der Decklagen über die Schnitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>reading of an offset</source>
   <translation>Ablesung eines Anreißmaßes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>redwood</source>
   <translation>Redwood (Sequoia)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>repair patches</source>
   <translation>Flicken</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>rests on</source>
   <translation>beruht auf</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>right</source>
   <translation>rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>rim {number}</source>
   <translation>Rand {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>rim, from the lower seam</source>
   <translation>Rand, ab der unteren Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/figures.py" />
   <source>rise {length}</source>
   <translation>Stich {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>rosewood</source>
   <translation>Palisander (Rosenholz)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>round the piece</source>
   <translation>um das Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>row by row from the lowest up, each left to right with the grain upright</source>
   <translation>Reihe um Reihe von der untersten hinauf, jede von links nach rechts bei aufrechter Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>row by row from the upper one down, each left to right with the grain upright</source>
   <translation>Reihe um Reihe von der obersten hinab, jede von links nach rechts bei aufrechter Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>rows</source>
   <translation>Reihen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>runs of {count}</source>
   <translation>Züge zu {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>sassafras</source>
   <translation>Sassafras</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>saw, in boards on a sled</source>
   <translation>Säge, in Decklagen auf einem Schlitten</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/picture.py" />
   <source>scale of the picture</source>
   <translation>Maßstab des Bilds</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>seam</source>
   <translation>Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>seam {number}</source>
   <translation>Fuge {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>seams off</source>
   <translation>Fugen daneben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>second cut</source>
   <translation>zweiter Schnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>see the plan</source>
   <translation>siehe Draufsicht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>show face: {part}</source>
   <translation>Sichtseite: {part}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>side that is chalked</source>
   <translation>Seite, die beschrieben wird</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>single pieces</source>
   <translation>Einzelteile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>size as cut</source>
   <translation>Maß wie geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>spare {leaf}</source>
   <translation>Reserve {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>spread</source>
   <translation>Auftrag</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>spruce</source>
   <translation>Fichte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>sq ft</source>
   <translation>Quadratfuß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>square off</source>
   <translation>rechtwinklig</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>square off it</source>
   <translation>rechtwinklig</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/advice.py" />
   <source>standard error of a measured wedge</source>
   <translation>Standardabweichung eines gemessenen Keils</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>straight</source>
   <translation>Gerade</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>straight, grain across the edge</source>
   <translation>gerade, Faser quer zur Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>straight, grain along the edge</source>
   <translation>gerade, Faser längs der Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>stringing and edge strips</source>
   <translation>Adern und Kantenstreifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>strips</source>
   <translation>Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>sure</source>
   <translation>sicher</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>sure to</source>
   <translation>sicher auf</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>take off</source>
   <translation>abnehmen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape across the cuts</source>
   <translation>Band quer über die Schnitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape over the line, down to the board</source>
   <translation>Band über die Linie, bis aufs Brett</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape round the boards</source>
   <translation>Band um die Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape, film or suction under the piece</source>
   <translation>Band, Folie oder Saugen unter dem Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>teak</source>
   <translation>Teak</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/expected.py" />
   <source>template's standard error</source>
   <translation>Standardabweichung der Schablone</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>test cuts and trials of press and finish</source>
   <translation>Probeschnitte und Proben für Presse und Oberfläche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the axis from the tip</source>
   <translation>die Achse von der Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>the bundle, shared by {count} tops</source>
   <translation>das Paket, geteilt durch {count} Platten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the direction of the grain</source>
   <translation>die Richtung der Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>the even ones</source>
   <translation>die geraden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the finished outline</source>
   <translation>der fertige Umriss</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>the leaves opened</source>
   <translation>die angebrochenen Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the line of the tool's middle</source>
   <translation>die Linie der Werkzeugmitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the lower left corner</source>
   <translation>die Ecke links unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the lower right corner</source>
   <translation>die Ecke rechts unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>the odd ones</source>
   <translation>die ungeraden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the outline to cut</source>
   <translation>der zu schneidende Umriss</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>the ring reaches 360 deg</source>
   <translation>der Ring erreicht 360 Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the seams of the finished outline</source>
   <translation>die Fugen des fertigen Umrisses</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>the sides not cut yet, by which it hangs in the waste</source>
   <translation>die noch nicht geschnittenen Seiten, an denen es im Verschnitt hängt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>the sled's clamps on the upper board over the piece</source>
   <translation>die Spanner des Schlittens auf der oberen Decklage über dem Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>the straightedge clamped over the piece at both ends</source>
   <translation>das Lineal, an beiden Enden über dem Teil gespannt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the upper left corner</source>
   <translation>die Ecke links oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the upper right corner</source>
   <translation>die Ecke rechts oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>the whole bundle</source>
   <translation>das ganze Paket</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>their blanks</source>
   <translation>ihre Rohteile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>thick</source>
   <translation>dick</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>thickness of the sandwich boards</source>
   <translation>Dicke der Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>time in the press</source>
   <translation>Zeit in der Presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>tip</source>
   <translation>Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>tip on leaf x mm</source>
   <translation>Spitze auf dem Blatt x mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>tip on leaf y mm</source>
   <translation>Spitze auf dem Blatt y mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>tip to rim</source>
   <translation>Spitze bis Rand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>tip x</source>
   <translation>Spitze x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>tip y</source>
   <translation>Spitze y</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>tips lost</source>
   <translation>Spitzen weg</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>to buy, of the least size</source>
   <translation>zu kaufen, kleinsten Maßes</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>to scale</source>
   <translation>maßstäblich</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>too few for one top</source>
   <translation>zu wenige für eine Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>top {top}: {text}</source>
   <translation>Platte {top}: {text}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/planning.py" />
   <source>tops from each leaf</source>
   <translation>Platten aus jedem Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>trial</source>
   <translation>Probe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>true by (* advised)</source>
   <translation>fügen nach (* empfohlen)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>true the halves</source>
   <translation>Hälften fügen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>true the quarters</source>
   <translation>Viertel fügen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>true the rows</source>
   <translation>Reihen fügen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>uncertainty of an angle</source>
   <translation>Unsicherheit eines Winkels</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>uncertainty of the change of moisture</source>
   <translation>Unsicherheit der Feuchteänderung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>under 0.1</source>
   <translation>unter 0.1</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>under 1 %</source>
   <translation>unter 1 %</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>uneven</source>
   <translation>ungleich</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/units.py" />
   <source>unit of pressure</source>
   <translation>Druckeinheit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/dxf.py" />
   <source>unit of the file</source>
   <translation>Einheit der Datei</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>up</source>
   <translation>oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>up left</source>
   <translation>links oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>up right</source>
   <translation>rechts oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>upper left</source>
   <translation>links oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>upper right</source>
   <translation>rechts oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>used (finished pieces)</source>
   <translation>gebraucht (fertige Teile)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>used / bought</source>
   <translation>gebraucht / gekauft</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>used: finished pieces</source>
   <translation>gebraucht: fertige Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>veneer of one top</source>
   <translation>Furnier einer Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>warning</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>waste of the purchase</source>
   <translation>Verlust vom Kauf</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/over.py" />
   <source>way of truing</source>
   <translation>Art zu fügen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>wedges from strips</source>
   <translation>Keile aus Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>wenge</source>
   <translation>Wenge (Wengé)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>western red cedar</source>
   <translation>Riesenlebensbaum (Western Red Cedar)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>what</source>
   <translation>was</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>what it is for</source>
   <translation>wozu sie dient</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>what registers follow</source>
   <translation>wonach Lagen sich richten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>what the price is for</source>
   <translation>wofür der Preis gilt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>whole leaves left</source>
   <translation>ganze Blätter übrig</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>width of the tool</source>
   <translation>Breite des Werkzeugs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>width over</source>
   <translation>Breitenzugabe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>words</source>
   <translation>Wörter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>x</source>
   <translation>x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>x cut</source>
   <translation>x geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>x from the left end and y from the lower end of the finished piece.</source>
   <translation>x vom linken und y vom unteren Ende des fertigen Teils.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>y</source>
   <translation>y</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>y cut</source>
   <translation>y geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>zebrawood</source>
   <translation>Zebrano (Zingana)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} along the line to {b}, then {square} square to the left</source>
   <translation>{along} von {a} längs der Linie nach {b}, dann {square} rechtwinklig nach links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} along the line to {b}, then {square} square to the right</source>
   <translation>{along} von {a} längs der Linie nach {b}, dann {square} rechtwinklig nach rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} away from {b}, then {square} square to the left</source>
   <translation>{along} von {a} weg von {b}, dann {square} rechtwinklig nach links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} away from {b}, then {square} square to the right</source>
   <translation>{along} von {a} weg von {b}, dann {square} rechtwinklig nach rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>{angle} deg</source>
   <translation>{angle} Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>{angle} less would do.</source>
   <translation>{angle} weniger täten es auch.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>{area} sq ft</source>
   <translation>{area} Quadratfuß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{count} alike, positions {positions}.</source>
   <translation>{count} gleiche, Plätze {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} boards</source>
   <translation>{count} Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} boards, two of them for the trial</source>
   <translation>{count} Decklagen, zwei davon für die Probe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>{count} kinds (lower seam, rim, upper seam): {some}.</source>
   <translation>{count} Arten (untere Fuge, Rand, obere Fuge): {some}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>{count} kinds (lower seam, rim, upper seam): {some}; {more} more, see the cut list.</source>
   <translation>{count} Arten (untere Fuge, Rand, obere Fuge): {some}; {more} weitere, siehe Zuschnittliste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} leaves are {high} high, with both boards {total}.</source>
   <translation>{count} Blätter sind {high} hoch, mit beiden Decklagen {total}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} leaves are {high} high.</source>
   <translation>{count} Blätter sind {high} hoch.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{count} parts</source>
   <translation>{count} Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>{count} pieces are an odd number: no diameter runs through the ring, only the last joint, between pieces {part}, is left to true.</source>
   <translation>{count} Teile sind eine ungerade Zahl: kein Durchmesser geht durch den Ring, nur die letzte Fuge, zwischen den Teilen {part}, ist zu fügen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>{count} pieces of {thickness}. Positions run {way}, seen from the show face.</source>
   <translation>{count} Teile von {thickness}. Plätze laufen {way}, von der Sichtseite gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>{count} pieces show a back that was not photographed: its neighbour's picture, or its own face, stands in for it.</source>
   <translation>{count} Teile zeigen eine Rückseite, die nicht fotografiert wurde: das Bild des Nachbarn oder die eigene Vorderseite steht dafür.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>{count} pieces, {size} over all.</source>
   <translation>{count} Teile, {size} über alles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{count} pieces.</source>
   <translation>{count} Teile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pin in the board</source>
   <translation>{count} Stift im Brett</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pin through boards and leaves</source>
   <translation>{count} Stift durch Decklagen und Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pins in the board</source>
   <translation>{count} Stifte im Brett</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pins through boards and leaves</source>
   <translation>{count} Stifte durch Decklagen und Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} screws through both boards</source>
   <translation>{count} Schrauben durch beide Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>{count} seams miss their corner of the top, by up to {most}.</source>
   <translation>{count} Fugen verfehlen ihre Ecke der Platte, um bis zu {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>{count} sheets, joined as the map shows; row A is the uppermost. Trim each at its left and upper broken lines, through the middle of the marks; lay it on its neighbours so that the halves of the marks meet the whole ones of the same number; tape. Cut out with knife and straightedge, away from the hand.</source>
   <translation>{count} Bogen, zusammengesetzt, wie die Übersicht zeigt; Reihe A ist die oberste. Jeden an der linken und oberen gestrichelten Linie beschneiden, durch die Mitte der Zeichen; auf die Nachbarn legen, so dass die Hälften der Zeichen die ganzen derselben Nummer treffen; kleben. Mit Messer und Lineal ausschneiden, von der Hand weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/piles.py" />
   <source>{count} spare leaves are to lie in the stack, and {free} are left over; take fewer spares.</source>
   <translation>{count} Reserveblätter sollen im Stapel liegen, und {free} bleiben übrig; nehmen Sie weniger Reserve.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>{count} ways</source>
   <translation>{count} Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/advice.py" />
   <source>{count} wedges that make {sum} deg have {each} deg each, and this ring wants {true}: mend the number of wedges of the test cut, or what they make.</source>
   <translation>{count} Keile, die {sum} Grad ergeben, haben je {each} Grad, und dieser Ring will {true}: berichtigen Sie die Zahl der Keile des Probeschnitts, oder was sie ergeben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{first} and {count} like it</source>
   <translation>{first} und {count} wie sie</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>{first} to {last}</source>
   <translation>{first} bis {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>{first}; {second}; and so on to {last}</source>
   <translation>{first}; {second}; und so weiter bis {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>{high} of leaves is more than the {most} that are cut at once, so they are cut in {lifts} lifts.</source>
   <translation>{high} Blätter sind mehr als die {most}, die auf einmal geschnitten werden, also in {lifts} Teilstapeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>{leaf} back</source>
   <translation>{leaf} Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>{leaf} spare</source>
   <translation>{leaf} Reserve</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>{length}, exactly {exact},</source>
   <translation>{length}, genau {exact},</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>{name} at {positions}: {lower}, {rim}, {upper}</source>
   <translation>{name} auf {positions}: {lower}, {rim}, {upper}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{name} from above</source>
   <translation>{name} von oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{name} from the side, not to scale</source>
   <translation>{name} von der Seite, nicht maßstäblich</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>{name}, revision {revision}</source>
   <translation>{name}, Stand {revision}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{name}, scale {scale}</source>
   <translation>{name}, Maßstab {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{near} from {a} and {far} from {b}, left of the line from {a} to {b}</source>
   <translation>{near} von {a} und {far} von {b}, links der Linie von {a} nach {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{near} from {a} and {far} from {b}, right of the line from {a} to {b}</source>
   <translation>{near} von {a} und {far} von {b}, rechts der Linie von {a} nach {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>{part}, over all layers</source>
   <translation>{part}, über alle Lagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>{per_leaf} tops are cut from each leaf, one behind the other along the grain, {ROOM} apart.</source>
   <translation>{per_leaf} Platten werden aus jedem Blatt geschnitten, hintereinander längs der Faser, {ROOM} auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>{place} (leaf {leaf})</source>
   <translation>{place} (Blatt {leaf})</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{positions} of top {top}</source>
   <translation>{positions} von Platte {top}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>{position} B</source>
   <translation>{position} R</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>{position} F</source>
   <translation>{position} V</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{side} ({nth} of {count})</source>
   <translation>{side} ({nth} von {count})</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{side} of cut {number}</source>
   <translation>{side} von Zuschnitt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{side}, arc, R {radius}, rise {rise}</source>
   <translation>{side}, Bogen, R {radius}, Stich {rise}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{side}, hollow arc, R {radius}, rise {rise}</source>
   <translation>{side}, hohler Bogen, R {radius}, Stich {rise}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>{size} mm across x along the grain; positions {positions}; leaves {leaves}</source>
   <translation>{size} mm quer x längs der Faser; Plätze {positions}; Blätter {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>{some} and {count} more</source>
   <translation>{some} und {count} weitere</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{strip}, under the veneer</source>
   <translation>{strip}, unter dem Furnier</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>{times} times</source>
   <translation>{times} mal</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{title}, continued</source>
   <translation>{title}, Fortsetzung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/captioned.py" />
   <source>{title}, revision {revision}. {top}, {size} over all.</source>
   <translation>{title}, Stand {revision}. {top}, {size} über alles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>{turn:.4g}° from x</source>
   <translation>{turn:.4g}° zu x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>{ways} pieces make no four quarters; true by halves, or take a number of ways that is divisible by 4.</source>
   <translation>{ways} Teile ergeben keine vier Viertel; fügen Sie nach Hälften, oder nehmen Sie eine durch 4 teilbare Zahl von Keilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>{ways} pieces make no two halves, for their number is odd: true the last joint alone.</source>
   <translation>{ways} Teile ergeben keine zwei Hälften, denn ihre Zahl ist ungerade: fügen Sie nur die letzte Fuge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>{way}, seen from the show face</source>
   <translation>{way}, von der Sichtseite gesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} cannot be cut so much over: its outline would cross itself; give less.</source>
   <translation>{what} lässt sich nicht so viel größer schneiden: der Umriss kreuzte sich selbst; geben Sie weniger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} does not run to the point where the pieces meet, so that no angle can be added there; give a width that its seams are cut over by.</source>
   <translation>{what} läuft nicht bis zu dem Punkt, in dem die Teile sich treffen, also lässt sich dort kein Winkel zugeben; geben Sie eine Breite, um die die Fugen größer geschnitten werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} has a curved seam that cannot be moved out by {width} mm; give less.</source>
   <translation>{what} hat eine gebogene Fuge, die sich nicht um {width} mm nach außen rücken lässt; geben Sie weniger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} has {count} seam edges and {given} overs are given; give one for all, or one for each seam edge, counter-clockwise.</source>
   <translation>{what} hat {count} Fugenkanten, und {given} Zugaben sind gegeben; geben Sie eine für alle, oder für jede Fugenkante eine, gegen den Uhrzeiger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{width} wide</source>
   <translation>{width} breit</translation>
  </message>
 </context>
</TS>
