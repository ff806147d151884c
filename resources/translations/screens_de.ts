<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <location filename="veneerwb/gui/pictured.py" />
   <source>Leaf pictures</source>
   <translation>Bilder der Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Numbers</source>
   <translation>Nummern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Seams</source>
   <translation>Fugen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Whether positions and leaves are written on the pictures, underlined for a turned leaf</source>
   <translation>Ob Plätze und Blätter auf die Bilder geschrieben werden, unterstrichen bei gewendetem Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Whether the seams are drawn on the pictures</source>
   <translation>Ob die Fugen auf die Bilder gezeichnet werden</translation>
  </message>
 </context>
 <context>
  <name>QObject</name>
  <message>
   <location filename="veneerwb/gui/preferences.py" />
   <source>Veneer Layup</source>
   <translation>Veneer Layup</translation>
  </message>
 </context>
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/gui/spot/state.py" />
   <source>A stock of plain sizes has no photographs to choose a spot on; cut the match from a bundle of leaves.</source>
   <translation>Ein Vorrat bloßer Maße hat keine Fotos, auf denen eine Stelle zu wählen wäre; schneiden Sie das Furnierbild aus einem Paket von Blättern.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>Choose the folder that holds the photographs of the leaves.</source>
   <translation>Wählen Sie den Ordner, der die Fotos der Blätter enthält.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>Click what is still missing {where}.</source>
   <translation>Klicken Sie an, was {where} noch fehlt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/drawing.py" />
   <source>FreeCAD wrote no whole PDF of the page {page}; make room on the disk, recompute the document and try again.</source>
   <translation>FreeCAD hat von der Seite {page} kein ganzes PDF geschrieben; schaffen Sie Platz auf dem Datenträger, berechnen Sie das Dokument neu und versuchen Sie es noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>No back shares two marks with its face; click the same marks or points on both.</source>
   <translation>Keine Rückseite teilt zwei Marken mit ihrer Vorderseite; klicken Sie auf beiden dieselben Marken oder Punkte an.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>That is mark {letter} already; drag {moved} to another mark.</source>
   <translation>Das ist schon Marke {letter}; ziehen Sie {moved} zu einer anderen Marke.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>That is mark {there} already; drag {moved} to another mark.</source>
   <translation>Das ist schon Marke {there}; ziehen Sie {moved} zu einer anderen Marke.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>That is {letter} already; click another place.</source>
   <translation>Das ist schon {letter}; klicken Sie eine andere Stelle an.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>The back of leaf {leaf} is in the document already; add another photograph of it, which takes its place, or undo the step that added it.</source>
   <translation>Die Rückseite von Blatt {leaf} ist schon im Dokument; fügen Sie ein anderes Foto davon hinzu, das an ihre Stelle tritt, oder machen Sie den Schritt rückgängig, der sie hinzufügte.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>The file {file} has {count} lines for a bundle called {name}; give one line that name.</source>
   <translation>Die Datei {file} hat {count} Zeilen für ein Paket namens {name}; geben Sie einer Zeile diesen Namen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>The first photograph</source>
   <translation>Das erste Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/state.py" />
   <source>The match is gone; close this panel.</source>
   <translation>Das Furnierbild ist weg; schließen Sie dieses Bedienfeld.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>The names of all photographs say back; those of the faces are missing.</source>
   <translation>Die Namen aller Fotos sagen back; die der Vorderseiten fehlen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>The names of the {backs} photographs of backs do not tell whose they are; put the number of its leaf last in each name.</source>
   <translation>Die Namen der {backs} Fotos von Rückseiten sagen nicht, wessen sie sind; setzen Sie in jedem Namen die Nummer des Blatts ans Ende.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>The usable outline of leaf {leaf} crosses itself or encloses nothing; draw it round the leaf, without crossing.</source>
   <translation>Der nutzbare Umriss von Blatt {leaf} kreuzt sich selbst oder umschließt nichts; zeichnen Sie ihn um das Blatt, ohne Kreuzung.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>Tie the backs to their faces first: until then the shift of the photographs would pass for wander.</source>
   <translation>Binden Sie zuerst die Rückseiten an ihre Vorderseiten: bis dahin würde die Verschiebung der Fotos für Wandern gehalten.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>length of the first photograph</source>
   <translation>Länge des ersten Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on each photograph</source>
   <translation>auf jedem Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on the photograph</source>
   <translation>auf dem Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on {names}</source>
   <translation>auf {names}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on {names} and {more} more</source>
   <translation>auf {names} und {more} weiteren</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>size of a pixel</source>
   <translation>Größe eines Pixels</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>width of the first photograph</source>
   <translation>Breite des ersten Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/pictured.py" />
   <source>{name} is shown without pictures: {why}</source>
   <translation>{name} wird ohne Bilder gezeigt: {why}</translation>
  </message>
 </context>
 <context>
  <name>VeneerAtWork</name>
  <message>
   <location filename="veneerwb/gui/panels/at_work.py" />
   <source>Still at work. When it is through, press OK again.</source>
   <translation>Die Arbeit läuft noch. Wenn sie fertig ist, drücken Sie noch einmal OK.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/at_work.py" />
   <source>Stop ({percent} %)</source>
   <translation>Anhalten ({percent} %)</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/at_work.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Angehalten; nichts wurde geändert.</translation>
  </message>
 </context>
 <context>
  <name>VeneerBacksPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>All letters are used.</source>
   <translation>Alle Buchstaben sind vergeben.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Leaf {number} is gone; close this panel.</source>
   <translation>Blatt {number} ist weg; schließen Sie dieses Bedienfeld.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Left as tied by marks or by hand: {leaves}.</source>
   <translation>Nach Marken oder von Hand gebunden, so belassen: {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Measured before: from face to back the figure wanders {along} {up} the leaf and {across} to the {right}, known to {left}.</source>
   <translation>Früher gemessen: von der Vorderseite zur Rückseite wandert die Textur {along} {up} auf dem Blatt und {across} nach {right}, bekannt auf {left}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>OK does not keep it, unless you take it.</source>
   <translation>OK behält sie nicht, es sei denn, Sie lassen sie gelten.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>One back can prove it.</source>
   <translation>Eine Rückseite kann es nachweisen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Photograph of the back of leaf {leaf}</source>
   <translation>Foto der Rückseite von Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Photographs</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Photographs of backs</source>
   <translation>Fotos von Rückseiten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Strips of face and back in turn: their edges should meet.</source>
   <translation>Streifen von Vorder- und Rückseite im Wechsel: ihre Kanten sollen sich treffen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>The back of leaf {leaf} is not photographed.</source>
   <translation>Die Rückseite von Blatt {leaf} ist nicht fotografiert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The back of leaf {leaf} is tied by its outline: the two lie {off} apart.</source>
   <translation>Die Rückseite von Blatt {leaf} ist nach ihrem Umriss gebunden: die beiden liegen {off} auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The back of leaf {leaf} is tied by marks, which lie {off} apart.</source>
   <translation>Die Rückseite von Blatt {leaf} ist nach Marken gebunden, die {off} auseinander liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The back of leaf {leaf} was laid on its face by a script, which says not how.</source>
   <translation>Die Rückseite von Blatt {leaf} wurde von einem Skript auf ihre Vorderseite gelegt, das nicht sagt, wie.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>The back of this leaf is not photographed.</source>
   <translation>Die Rückseite dieses Blatts ist nicht fotografiert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The bundle does not say how the leaves lay.</source>
   <translation>Das Paket sagt nicht, wie die Blätter lagen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The bundle says that leaf 2 lay over leaf 1.</source>
   <translation>Das Paket sagt, dass Blatt 2 über Blatt 1 lag.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The bundle says that leaf 2 lay under leaf 1.</source>
   <translation>Das Paket sagt, dass Blatt 2 unter Blatt 1 lag.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The leaves are not registered: it counts once they follow the figure.</source>
   <translation>Die Blätter sind nicht ausgerichtet: es zählt, sobald sie der Textur folgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The stack follows the log, in which surfaces lie as they are.</source>
   <translation>Der Stapel richtet sich nach dem Stamm, in dem die Flächen liegen, wie sie sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Tie backs</source>
   <translation>Rückseiten binden</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>To tie by marks, click {letter}: a paper mark, or a hole or tear that shows on both sides.</source>
   <translation>Um nach Marken zu binden, {letter} anklicken: eine Papiermarke, ein Loch oder einen Einriss, die auf beiden Seiten zu sehen sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Turned leaves are pinned by their backs' figure, which may miss by {left}.</source>
   <translation>Gewendete Blätter werden nach der Textur ihrer Rückseiten gestiftet, die um {left} daneben liegen kann.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Turned leaves are shown as their backs will come out, to {left}.</source>
   <translation>Gewendete Blätter werden gezeigt, wie ihre Rückseiten herauskommen, auf {left} genau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>Where the back of leaf {leaf} lies on its face is not known yet: tie it.</source>
   <translation>Wo die Rückseite von Blatt {leaf} auf ihrer Vorderseite liegt, ist noch nicht bekannt: binden Sie sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>down</source>
   <translation>abwärts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>left</source>
   <translation>links</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>marks</source>
   <translation>Marken</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>outline</source>
   <translation>Umriss</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>right</source>
   <translation>rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>up</source>
   <translation>aufwärts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>{backs} of {leaves} backs are photographed.</source>
   <translation>{backs} von {leaves} Rückseiten sind fotografiert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: by {by}, {off}</source>
   <translation>{leaf}: nach {by}, {off}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: in doubt, {off}</source>
   <translation>{leaf}: zweifelhaft, {off}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: laid by a script</source>
   <translation>{leaf}: von einem Skript gelegt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: not tied</source>
   <translation>{leaf}: nicht gebunden</translation>
  </message>
 </context>
 <context>
  <name>VeneerBenchPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>No sheets yet: OK makes them.</source>
   <translation>Noch keine Zeichnungsblätter: OK macht sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>The sheets are not up to date: {why}</source>
   <translation>Die Zeichnungsblätter sind nicht auf dem Stand: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>The sheets show revision {mark}.</source>
   <translation>Die Zeichnungsblätter zeigen den Stand {mark}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>Used: {used} m2 of {bought} m2 bought, {share} %.

Still to buy? {leaves} leaves in sequence, {spares} of them spare, each at least {width} x {length}.</source>
   <translation>Genutzt: {used} m2 von gekauften {bought} m2, {share} %.

Noch zu kaufen? {leaves} Blätter in Messerfolge, davon {spares} Reserve, jedes mindestens {width} x {length}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>{name} to the bench</source>
   <translation>{name} an die Werkbank</translation>
  </message>
 </context>
 <context>
  <name>VeneerBuildUpPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>Build up {name}</source>
   <translation>{name} aufbauen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>No match is built up so, and there is nothing to buy.</source>
   <translation>Kein Furnierbild ist so aufgebaut, und es ist nichts zu kaufen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>No match is built up so.</source>
   <translation>Kein Furnierbild ist so aufgebaut.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>Other veneer</source>
   <translation>Anderes</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>Save the bill of materials as CSV</source>
   <translation>Stückliste als CSV speichern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>The bill is in the sheet {name}.</source>
   <translation>Die Stückliste steht in der Tabelle {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>{thick} thick in all; {count} parts beside the match's pieces.</source>
   <translation>Im Ganzen {thick} dick; {count} Bauteile neben den Teilen des Furnierbilds.</translation>
  </message>
 </context>
 <context>
  <name>VeneerCheckPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>Do not cut yet: {count} against it.</source>
   <translation>Noch nicht schneiden: {count} dagegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>It can be cut, knowing this.</source>
   <translation>Es kann geschnitten werden, wenn man dies weiß.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>Nothing stands against cutting.</source>
   <translation>Nichts spricht gegen das Schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>The match is gone.</source>
   <translation>Das Furnierbild ist weg.</translation>
  </message>
 </context>
 <context>
  <name>VeneerChoices</name>
  <message>
   <location filename="veneerwb/gui/ring.py" />
   <source>Too few leaves for a ring.</source>
   <translation>Zu wenige Blätter für einen Ring.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/choices_window.py" />
   <source>{name}: costs {along} of length, {across} of width</source>
   <translation>{name}: kostet {along} an Länge, {across} an Breite</translation>
  </message>
 </context>
 <context>
  <name>VeneerClosingPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>A gap cannot be less than nothing; a half that is over gapes at its tip, one that is under at an end.</source>
   <translation>Ein Spalt kann nicht kleiner als nichts sein; eine zu große Hälfte klafft an der Spitze, eine zu kleine an einem Ende.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Angle</source>
   <translation>Winkel</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>As it will look when it is trued.</source>
   <translation>Wie es aussieht, wenn es gefügt ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>As taped, apart; what is off {large} as large. Grey: off. Red: true here.</source>
   <translation>Wie geklebt, auseinander; was abweicht, {large} so groß. Grau: Abweichung. Rot: hier fügen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Close the ring of {name}</source>
   <translation>Den Ring von {name} schließen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>End</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Far</source>
   <translation>Weit</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Measure the pieces, the halves, or the gaps under a straightedge laid across them, and enter them here.</source>
   <translation>Messen Sie die Teile, die Hälften oder die Spalte unter einem darüber gelegten Lineal, und tragen Sie sie hier ein.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Only a radial match is a ring that closes; select one of those.</source>
   <translation>Nur ein Sternbild ist ein Ring, der sich schließt; wählen Sie eines.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Readings still missing: {count}.</source>
   <translation>Noch fehlende Ablesungen: {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Sure</source>
   <translation>Sicher</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>The bundle's</source>
   <translation>Das des Pakets</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>There are more readings than pieces; measure the ring anew.</source>
   <translation>Es gibt mehr Ablesungen als Teile; messen Sie den Ring neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Tip</source>
   <translation>Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Ways of truing, the advised one with a star:</source>
   <translation>Arten zu fügen, die empfohlene mit Stern:</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>{end}: piece {piece}, its edge to {other}: {tip} at the tip, {rim} at the rim, {far} from it</source>
   <translation>{end}: Teil {piece}, seine Kante zu {other}: {tip} an der Spitze, {rim} am Rand, {far} davon</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>{how}, {sure}: {over} deg over, seams {off} off, {lost} lost</source>
   <translation>{how}, {sure}: {over} Grad über, Fugen {off} daneben, {lost} verloren</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>{large}; red: trued, dashed: as planned.</source>
   <translation>{large}; rot: gefügt, gestrichelt: wie geplant.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>{text} cannot be read; write a length such as 0.4 mm.</source>
   <translation>{text} ist nicht lesbar; schreiben Sie eine Länge wie 0.4 mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>{text} cannot be read; write degrees such as 30.15.</source>
   <translation>{text} ist nicht lesbar; schreiben Sie Grad wie 30.15.</translation>
  </message>
 </context>
 <context>
  <name>VeneerCuts</name>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>1 leaf</source>
   <translation>1 Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>1 lot of {each}, {once}; cuts along seams: {strokes}.</source>
   <translation>1 Los, {each}, {once}; Schnitte längs der Fugen: {strokes}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>1 set-out</source>
   <translation>1 Anriss</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>All pieces are alike: one stack serves them.</source>
   <translation>Alle Teile sind gleich: ein Stapel dient ihnen allen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>As little leaf as by shape, and the most work. Leaves need not lie on each other, and each piece can be fitted.</source>
   <translation>So wenig Furnier wie nach Form, und die meiste Arbeit. Die Blätter müssen nicht aufeinander liegen, und jedes Teil kann eingepasst werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>By shape: {lots}, {share} % used</source>
   <translation>Nach Form: {lots}, {share} % genutzt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Every outline lies on its leaves.</source>
   <translation>Jeder Umriss liegt auf seinen Blättern.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Least leaf, but set out anew for each lot. Mirror images share a lot where one of them is turned over.</source>
   <translation>Am wenigsten Furnier, aber für jedes Los neu angerissen. Spiegelbilder teilen ein Los, wo eines davon gewendet ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Lots by shape</source>
   <translation>Lose nach Form</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>One stack</source>
   <translation>Ein Stapel</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>One stack: {lots}, {share} % used</source>
   <translation>Ein Stapel: {lots}, {share} % genutzt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Quickest: one template, one cut through all. What a piece needs less is trimmed off and lost.</source>
   <translation>Am schnellsten: eine Schablone, ein Schnitt durch alle. Was ein Teil weniger braucht, wird abgeschnitten und ist verloren.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Reaches up to {over} off the usable area of leaves {numbers}.</source>
   <translation>Reicht bis zu {over} über die nutzbare Fläche der Blätter {numbers} hinaus.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Single pieces</source>
   <translation>Einzelteile</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>and {count} more</source>
   <translation>und {count} weitere</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>set out once</source>
   <translation>einmal angerissen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{area} m2 are cut out, {taken} % of these leaves; the pieces need {net} m2, {used} % of that.</source>
   <translation>{area} m2 werden ausgeschnitten, {taken} % dieser Blätter; die Teile brauchen {net} m2, {used} % davon.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} leaves</source>
   <translation>{count} Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} lots of {each}, each {once}; cuts along seams: {strokes}.</source>
   <translation>{count} Lose, je {each}, jedes {once}; Schnitte längs der Fugen: {strokes}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} seams lie within the outline and are cut piece by piece.</source>
   <translation>{count} Fugen liegen im Inneren des Umrisses und werden Teil für Teil geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} set-outs</source>
   <translation>{count} Anrisse</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{fewest} to {most} leaves</source>
   <translation>{fewest} bis {most} Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_window.py" />
   <source>{name} (chosen)</source>
   <translation>{name} (gewählt)</translation>
  </message>
 </context>
 <context>
  <name>VeneerDrawingPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/drawing.py" />
   <source>New drawing</source>
   <translation>Neue Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>VeneerFacingPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/facing.py" />
   <source>Lay a leaf on faces</source>
   <translation>Blatt auf Flächen legen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/facing.py" />
   <source>Select one or more flat faces in the 3-D view, then press this again.</source>
   <translation>Wählen Sie eine oder mehrere ebene Flächen in der 3D-Ansicht, dann drücken Sie noch einmal hier.</translation>
  </message>
 </context>
 <context>
  <name>VeneerFaultsPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Click a fault to change it; Draw starts a new one.</source>
   <translation>Einen Fehler anklicken, um ihn zu ändern; Zeichnen beginnt einen neuen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Click along the split, then Enter; or all round it.</source>
   <translation>Längs des Risses klicken, dann Eingabe; oder rund um ihn.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Click round it, back to the first corner or Enter.</source>
   <translation>Rundum klicken, zurück zur ersten Ecke oder Eingabe.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Draw faults</source>
   <translation>Fehler zeichnen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/fault_writing.py" />
   <source>Leaf {number} is gone; close this panel.</source>
   <translation>Blatt {number} ist weg; schließen Sie dieses Bedienfeld.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Not registered: register first, or draw it on leaf {number}.</source>
   <translation>Nicht ausgerichtet: zuerst ausrichten, oder auf Blatt {number} zeichnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Nothing stands out on this leaf.</source>
   <translation>Auf diesem Blatt fällt nichts auf.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Select sketches, wires or flat faces in the tree first.</source>
   <translation>Wählen Sie zuerst Skizzen, Kantenzüge oder ebene Flächen im Baum.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Suggest spots and splits</source>
   <translation>Flecken und Risse vorschlagen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Take it, or leave it.</source>
   <translation>Gelten lassen, oder liegen lassen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>all leaves</source>
   <translation>alle Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>knot</source>
   <translation>Ast</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>leaf {number}</source>
   <translation>Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>margin</source>
   <translation>Sicherheitsrand</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>patch</source>
   <translation>Flick</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>split</source>
   <translation>Riss</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>stain</source>
   <translation>Fleck</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>usable</source>
   <translation>nutzbar</translation>
  </message>
 </context>
 <context>
  <name>VeneerHelp</name>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>Example</source>
   <translation>Beispiel</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>Open Example</source>
   <translation>Beispiel öffnen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>The example is damaged ({file}); install the workbench again.</source>
   <translation>Das Beispiel ist beschädigt ({file}); installieren Sie den Arbeitsbereich neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>The example is missing ({file}); install the workbench again.</source>
   <translation>Das Beispiel fehlt ({file}); installieren Sie den Arbeitsbereich neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>The pages of help are missing ({folder}); install the workbench again.</source>
   <translation>Die Hilfeseiten fehlen ({folder}); installieren Sie den Arbeitsbereich neu.</translation>
  </message>
 </context>
 <context>
  <name>VeneerLeafByLeafPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>Leaf {number}</source>
   <translation>Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>Something was undone or redone. What you pointed out is kept here; see that it still fits, then OK.</source>
   <translation>Etwas wurde rückgängig gemacht oder wiederholt. Was Sie gezeigt haben, ist hier noch da; prüfen Sie, ob es noch passt, dann OK.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>The bundle is gone; close this panel.</source>
   <translation>Das Paket ist weg; schließen Sie dieses Bedienfeld.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>The photographs that were those of leaves {leaves} are no longer there, and what you pointed out on them went with them.</source>
   <translation>Die Fotos, die zu den Blättern {leaves} gehörten, sind nicht mehr da, und was Sie darauf gezeigt haben, ging mit ihnen.</translation>
  </message>
 </context>
 <context>
  <name>VeneerLeavesPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>&amp;Apart</source>
   <translation>&amp;Abstand</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>All are clicked on.</source>
   <translation>Auf allen ist geklickt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>As the leaves come in. OK keeps them.</source>
   <translation>Wie die Blätter hereinkommen. OK behält sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Background shows round the leaf: choose Found on the page Prepare.</source>
   <translation>Um das Blatt ist Hintergrund zu sehen: Wählen Sie auf der Seite Vorbereiten „Gefunden“.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Backs: {count}.</source>
   <translation>Rückseiten: {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>Bring in leaves</source>
   <translation>Blätter einlesen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click round the leaf.</source>
   <translation>Klicken Sie rund um das Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click round the patch, back to the first corner or Enter.</source>
   <translation>Klicken Sie rund um die Stelle, zurück zur ersten Ecke oder Eingabe.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the four corners of the leaf, in any order.</source>
   <translation>Klicken Sie die vier Ecken des Blatts an, in beliebiger Reihenfolge.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the four corners of the sheet, in any order.</source>
   <translation>Klicken Sie die vier Ecken des Bogens an, in beliebiger Reihenfolge.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the paper marks A, B, C, D, one after the other round.</source>
   <translation>Klicken Sie die Papiermarken A, B, C, D an, eine nach der anderen rundum.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the two paper marks whose distance you know.</source>
   <translation>Klicken Sie die zwei Papiermarken an, deren Abstand Sie kennen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click two paper marks or more, far apart.</source>
   <translation>Klicken Sie zwei oder mehr Papiermarken an, weit auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click two points whose distance you know.</source>
   <translation>Klicken Sie zwei Punkte an, deren Abstand Sie kennen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Counted in the order of their names, which hold no leaf numbers.</source>
   <translation>Gezählt nach ihren Namen, die keine Blattnummern enthalten.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag a cross to another mark.</source>
   <translation>Ein Kreuz zu einer anderen Marke ziehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag corners; a double click on an edge adds one; Delete finds it anew.</source>
   <translation>Ecken ziehen; ein Doppelklick auf eine Kante fügt eine hinzu; Entf sucht neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag its corners; Delete, to draw it anew.</source>
   <translation>Ecken ziehen; Entf, um neu zu zeichnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag the crosses, or move them with the arrow keys.</source>
   <translation>Die Kreuze ziehen oder mit den Pfeiltasten bewegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>Folder of photographs of backs</source>
   <translation>Ordner mit Fotos von Rückseiten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Leaf {number}</source>
   <translation>Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Leaf {number}, back</source>
   <translation>Blatt {number}, Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Leaves</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>One is still to be clicked on.</source>
   <translation>Auf einem ist noch zu klicken.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>One photograph, leaf {first}.</source>
   <translation>Ein Foto, Blatt {first}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Page Down: the next photograph.</source>
   <translation>Bild ab: das nächste Foto.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>Photographs of leaves</source>
   <translation>Fotos der Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Still to be clicked on: {count}.</source>
   <translation>Noch zu klicken auf: {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>The bundle was deleted; OK brings the photographs in again.</source>
   <translation>Das Paket wurde gelöscht; OK liest die Fotos wieder ein.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>The first is {width} across, {length} along.</source>
   <translation>Das erste ist {width} breit, {length} lang.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>grey card</source>
   <translation>Graukarte</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>patch</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>{count} in between are missing.</source>
   <translation>Dazwischen fehlen {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>{count} photographs, leaves {first} to {last}.</source>
   <translation>{count} Fotos, Blätter {first} bis {last}.</translation>
  </message>
 </context>
 <context>
  <name>VeneerMarksPanel</name>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>; its arrow does not point up</source>
   <translation>; ihr Pfeil zeigt nicht nach oben</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>; its ring seems {seen} across, not {printed}: see scale and print</source>
   <translation>; ihr Ring scheint {seen} groß, nicht {printed}: Maßstab und Druck prüfen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>All are clicked on.</source>
   <translation>Alle sind angeklickt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>All letters are used; drag a mark, or remove one.</source>
   <translation>Alle Buchstaben sind vergeben; ziehen Sie eine Marke, oder entfernen Sie eine.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Centred: {mark}.</source>
   <translation>Zentriert: {mark}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Choose a photograph of the pinned leaf, its marks and both pins in sight, or of the stack, marks of its leaves in sight.</source>
   <translation>Wählen Sie ein Foto des gestifteten Blatts, auf dem seine Marken und beide Stifte zu sehen sind, oder des Stapels mit den Marken seiner Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Click on mark {letter}, roughly; it is centred by itself.</source>
   <translation>Marke {letter} ungefähr anklicken; sie wird von selbst zentriert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Click on mark {name}, roughly; it is centred by itself.</source>
   <translation>Marke {name} ungefähr anklicken; sie wird von selbst zentriert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>From this photograph, {count} marks centred to {error} or better.</source>
   <translation>Aus diesem Foto, {count} Marken auf {error} oder besser zentriert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>It is squared up by the marks of leaf {leaf}.</source>
   <translation>Es ist nach den Marken von Blatt {leaf} entzerrt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>It is taken to be square on.</source>
   <translation>Es gilt als gerade von oben aufgenommen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>Leaf {leaf} lies {depth} down: a parallax of {shift} is set right.</source>
   <translation>Blatt {leaf} liegt {depth} tief: eine Parallaxe von {shift} ist berichtigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Leaf {number}</source>
   <translation>Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Leaf {number} is gone; close this panel.</source>
   <translation>Blatt {number} ist weg; schließen Sie dieses Bedienfeld.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Locate marks</source>
   <translation>Marken orten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>No leaf has marks yet: locate them on the page before.</source>
   <translation>Noch kein Blatt hat Marken: orten Sie sie auf der Seite davor.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Not in sight? Choose another one in the panel.</source>
   <translation>Nicht zu sehen? Im Bedienfeld etwas anderes wählen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Photograph of what is pinned</source>
   <translation>Foto dessen, was gestiftet ist</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/mark_printing.py" />
   <source>Save the paper marks as PDF</source>
   <translation>Papiermarken als PDF speichern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>The limits are our choice. Up the grain is where the arrows point, seen from the face.</source>
   <translation>Die Grenzen haben wir gewählt. Faser aufwärts ist, wohin die Pfeile zeigen, von der Vorderseite gesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>The middle of the leaf</source>
   <translation>Die Mitte des Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>The tip of {match}, as photographed, with no registers</source>
   <translation>Die Spitze von {match}, wie fotografiert, ohne Lagen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>The tip of {match}, by the leaf's register</source>
   <translation>Die Spitze von {match}, nach der Lage des Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>What Is Pinned</source>
   <translation>Was gestiftet ist</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/mark_printing.py" />
   <source>Written: {file}, one page. Print it at 100 %.</source>
   <translation>Geschrieben: {file}, eine Seite. Mit 100 % drucken.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/mark_printing.py" />
   <source>Written: {file}, {pages} pages. Print it at 100 %.</source>
   <translation>Geschrieben: {file}, {pages} Seiten. Mit 100 % drucken.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Zoom in and click on the middle of {name}.</source>
   <translation>Heranzoomen und die Mitte von {name} anklicken.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>locate two marks of this leaf to measure it from them</source>
   <translation>zwei Marken dieses Blatts orten, um von ihnen aus zu messen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>middle</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>of leaf {number}</source>
   <translation>von Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>pin {number}</source>
   <translation>Stift {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>tip</source>
   <translation>Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>too near each other to compare</source>
   <translation>zu nahe beieinander, um zu vergleichen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{letter}, as kept</source>
   <translation>{letter}, wie gemerkt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>{name}, as clicked</source>
   <translation>{name}, wie angeklickt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{number}: none</source>
   <translation>{number}: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{number}: {letters}</source>
   <translation>{number}: {letters}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{rms} off leaf {other}</source>
   <translation>{rms} neben Blatt {other}</translation>
  </message>
 </context>
 <context>
  <name>VeneerMatchPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Book</source>
   <translation>Gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>New match</source>
   <translation>Neues Furnierbild</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>New radial match</source>
   <translation>Neues Sternbild</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>No outline is selected; select a closed sketch, a wire or a flat face, then take it.</source>
   <translation>Kein Umriss ist gewählt; wählen Sie eine geschlossene Skizze, einen Kantenzug oder eine ebene Fläche, dann nehmen Sie ihn.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Random</source>
   <translation>Gemischt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Reverse slip</source>
   <translation>Wechselnd</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>S&amp;ide</source>
   <translation>S&amp;eite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Slip</source>
   <translation>Geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Slip, all turned over</source>
   <translation>Alle gewendet</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>{name} is made from this match; choose an outline that is not.</source>
   <translation>{name} ist aus diesem Furnierbild gemacht; wählen Sie einen Umriss, der es nicht ist.</translation>
  </message>
 </context>
 <context>
  <name>VeneerPacket</name>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Folder for the packet</source>
   <translation>Ordner für die Mappe</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Left out, as its contents page says:</source>
   <translation>Weggelassen, wie ihre Inhaltsseite sagt:</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Refresh sheets</source>
   <translation>Blätter erneuern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Stopped; nothing was written.</source>
   <translation>Angehalten; nichts wurde geschrieben.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>The packet was written:
{folder}</source>
   <translation>Die Mappe wurde geschrieben:
{folder}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Write packet</source>
   <translation>Mappe schreiben</translation>
  </message>
 </context>
 <context>
  <name>VeneerPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/live.py" />
   <source>An expression sets this value</source>
   <translation>Ein Ausdruck setzt diesen Wert</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/live.py" />
   <source>Edit {name}</source>
   <translation>{name} bearbeiten</translation>
  </message>
 </context>
 <context>
  <name>VeneerParticularsPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>In full {full_m2} m² ({full_ft} sq ft), usable {m2} m² ({ft} sq ft).</source>
   <translation>Im Ganzen {full_m2} m² ({full_ft} Quadratfuß), nutzbar {m2} m² ({ft} Quadratfuß).</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>Read particulars from a CSV file</source>
   <translation>Angaben aus einer CSV-Datei lesen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>Save the particulars as CSV</source>
   <translation>Angaben als CSV speichern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>{count} leaves, at least {width} by {length}.</source>
   <translation>{count} Blätter, mindestens {width} mal {length}.</translation>
  </message>
 </context>
 <context>
  <name>VeneerPhoto</name>
  <message>
   <location filename="veneerwb/gui/photos/window.py" />
   <source>Column {column}, row {row}</source>
   <translation>Spalte {column}, Zeile {row}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/photos/window.py" />
   <source>lines every {step}</source>
   <translation>Linien alle {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/photos/window.py" />
   <source>{across} across, {along} along</source>
   <translation>{across} quer, {along} längs</translation>
  </message>
 </context>
 <context>
  <name>VeneerProgress</name>
  <message>
   <location filename="veneerwb/gui/progress.py" />
   <source>Stop</source>
   <translation>Anhalten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/progress.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Angehalten; nichts wurde geändert.</translation>
  </message>
 </context>
 <context>
  <name>VeneerRunPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Book</source>
   <translation>Gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Lay panels in sequence</source>
   <translation>Fronten in Folge legen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Random</source>
   <translation>Gemischt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Reverse slip</source>
   <translation>Wechselnd</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Select the flat faces of one plane in the 3-D view, then press this again.</source>
   <translation>Wählen Sie die ebenen Flächen einer Ebene in der 3D-Ansicht, dann drücken Sie noch einmal hier.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Slip</source>
   <translation>Geschoben</translation>
  </message>
 </context>
 <context>
  <name>VeneerSaving</name>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>Save document</source>
   <translation>Dokument speichern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>Save drawing as PDF</source>
   <translation>Zeichnung als PDF speichern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/chalk.py" />
   <source>Save the list to chalk the stack by</source>
   <translation>Liste zum Anschreiben des Stapels speichern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/chalk.py" />
   <source>Text (*.txt)</source>
   <translation>Text (*.txt)</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>The drawing was saved:
{file}</source>
   <translation>Die Zeichnung wurde gespeichert:
{file}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{file} could not be saved, there was no room for all of it, and FreeCAD has closed it. All that was in it was saved as {copy}; open that, make room, and save it under its own name.</source>
   <translation>{file} konnte nicht gespeichert werden, es war nicht Platz für alles, und FreeCAD hat das Dokument geschlossen. Alles, was darin war, wurde als {copy} gespeichert; öffnen Sie diese Datei, schaffen Sie Platz, und speichern Sie sie unter ihrem eigenen Namen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{file} could not be saved, there was no room for all of it, and FreeCAD has closed it. What was new in it is lost.</source>
   <translation>{file} konnte nicht gespeichert werden, es war nicht Platz für alles, und FreeCAD hat das Dokument geschlossen. Was darin neu war, ist verloren.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{file} is there already; give its whole name to replace it.</source>
   <translation>{file} gibt es schon; geben Sie den ganzen Namen an, um es zu ersetzen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{name} is not up to date, and was not saved: {why}</source>
   <translation>{name} ist nicht auf dem Stand und wurde nicht gespeichert: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{name} is there already. Replace it?</source>
   <translation>{name} gibt es schon. Ersetzen?</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/chalk.py" />
   <source>{name}: what to chalk on the leaves</source>
   <translation>{name}: was auf die Blätter zu schreiben ist</translation>
  </message>
 </context>
 <context>
  <name>VeneerScene</name>
  <message>
   <location filename="veneerwb/gui/run_scene.py" />
   <source>leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/scene.py" />
   <source>leaf {number}</source>
   <translation>Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/run_scene.py" />
   <source>panel</source>
   <translation>Front</translation>
  </message>
 </context>
 <context>
  <name>VeneerSeams</name>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>Measured before the last change. {title}</source>
   <translation>Vor der letzten Änderung gemessen. {title}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>Seams of {name}</source>
   <translation>Fugen von {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>The top was changed while its seams were measured; measure them again.</source>
   <translation>Die Platte wurde geändert, während ihre Fugen gemessen wurden; messen Sie sie noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>Too few leaves for a ring, so there is no seam.</source>
   <translation>Zu wenige Blätter für einen Ring, also gibt es keine Fuge.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>cannot be told</source>
   <translation>nicht zu sagen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>from here on it shows</source>
   <translation>ab hier sieht man es</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>more: it shows</source>
   <translation>mehr: man sieht es</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>pictured by one photograph</source>
   <translation>von einem Foto abgebildet</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>rms</source>
   <translation>rms</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>up to {most}</source>
   <translation>bis {most}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>worst place</source>
   <translation>schlechteste Stelle</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>{name}: nothing could be measured along its seams</source>
   <translation>{name}: längs der Fugen war nichts zu messen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>{name}: the figure meets to {rms} rms, {worst} at worst, by {measured} of {tried} places on your photographs</source>
   <translation>{name}: die Textur trifft sich auf {rms} rms, schlimmstens auf {worst}, nach {measured} von {tried} Stellen Ihrer Fotos</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequencePanel</name>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>A usual ring</source>
   <translation>Ein üblicher Ring</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Click the same two points of the figure on every leaf. Without: {leaves}.</source>
   <translation>Dieselben zwei Punkte der Textur auf jedem Blatt anklicken. Ohne: {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Crowns meet all round; costs length if figure wanders.</source>
   <translation>Fladerspitzen treffen sich ringsum; kostet Länge, wenn die Textur wandert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Every leaf has its two marks; a click moves the nearer one.</source>
   <translation>Jedes Blatt hat seine zwei Marken; ein Klick bewegt die nähere.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Knots and edges stay put; the figure marches round.</source>
   <translation>Äste und Kanten bleiben an ihrem Platz; die Textur läuft ringsum weiter.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Order and register leaves</source>
   <translation>Blätter ordnen und ausrichten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Proposed: {changes}.</source>
   <translation>Vorgeschlagen: {changes}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Registered so: costs {along} of length, {across} of width.</source>
   <translation>So ausgerichtet: kostet {along} an Länge, {across} an Breite.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Sequence</source>
   <translation>Messerfolge</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Sequence of {name}</source>
   <translation>Messerfolge von {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Simply laid on each other; nothing is compared.</source>
   <translation>Einfach aufeinander gelegt; nichts wird verglichen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Something was undone or redone. The marks that you picked are kept here; see that they still fit, then OK.</source>
   <translation>Etwas wurde rückgängig gemacht oder wiederholt. Die von Ihnen gewählten Marken sind hier noch da; prüfen Sie, ob sie noch passen, dann OK.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>The leaves were changed since the proof; prove the sequence again.</source>
   <translation>Die Blätter wurden seit dem Nachweis geändert; weisen Sie die Messerfolge noch einmal nach.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>The leaves were changed while they were compared, so the result is of no use; compare them again.</source>
   <translation>Die Blätter wurden geändert, während sie verglichen wurden, das Ergebnis nützt also nichts; vergleichen Sie sie noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>The pieces of {name}</source>
   <translation>Teile von {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>The whole leaf</source>
   <translation>Das ganze Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Turn leaf {leaf} &amp;end for end</source>
   <translation>Blatt {leaf} &amp;Kopf gegen Fuß drehen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Turn leaf {leaf} &amp;over</source>
   <translation>Blatt {leaf} &amp;wenden</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>{count} leaves, {numbers}. Their order is not proved yet.</source>
   <translation>{count} Blätter, {numbers}. Ihre Reihenfolge ist noch nicht nachgewiesen.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequenceWindow</name>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>&amp;Stop</source>
   <translation>&amp;Anhalten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>As photographed</source>
   <translation>Wie fotografiert</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>As registered</source>
   <translation>Wie ausgerichtet</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Click the picture to follow a point through the stack.</source>
   <translation>Das Bild anklicken, um einem Punkt durch den Stapel zu folgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>Click the picture to see how a point drifts.</source>
   <translation>Das Bild anklicken, um zu sehen, wie ein Punkt wandert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Click: follow that point through the stack.</source>
   <translation>Klick: diesem Punkt durch den Stapel folgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Click: mark A, then mark B, the same points on every leaf.</source>
   <translation>Klick: Marke A, dann Marke B, auf jedem Blatt dieselben Punkte.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Go to it, then press Turn leaf end for end.</source>
   <translation>Dorthin gehen, dann Blatt Kopf gegen Fuß drehen drücken.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Go to it, then press Turn leaf over.</source>
   <translation>Dorthin gehen, dann Blatt wenden drücken.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>How the figure goes on {pairs} is in doubt: look at those leaves one over the other before you cut.</source>
   <translation>Wie die Textur {pairs} weitergeht, ist zweifelhaft: sehen Sie diese Blätter übereinander an, bevor Sie schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>It goes with what the leaves are registered on; prove to follow the figure.</source>
   <translation>Er geht mit dem, worauf die Blätter ausgerichtet sind; nachweisen, um der Textur zu folgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Its register could not be made exact and may be some millimetres off. {why}</source>
   <translation>Seine Lage ließ sich nicht genau bestimmen und kann um einige Millimeter falsch sein. {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaf {leaf}</source>
   <translation>Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaf {leaf} ({place} of {count})</source>
   <translation>Blatt {leaf} ({place} von {count})</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaf {leaf}: {across} across, {along} along.</source>
   <translation>Blatt {leaf}: {across} quer, {along} längs.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaves {a} and {b}: likeness {value}</source>
   <translation>Blätter {a} und {b}: Ähnlichkeit {value}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Likeness of all pairs. Click one to see the two by turns.</source>
   <translation>Ähnlichkeit aller Paare. Ein Klick zeigt die zwei im Wechsel.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Look for a leaf that was not photographed, or measure there.</source>
   <translation>Nach einem nicht fotografierten Blatt suchen, oder dort messen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Measure the thickness of leaves on both sides of it.</source>
   <translation>Die Dicke der Blätter auf beiden Seiten davon messen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>On the figure</source>
   <translation>Auf der Textur</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>Prove the sequence: how alike all pairs are.</source>
   <translation>Messerfolge nachweisen: wie ähnlich alle Paare sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Renumber as proposed.</source>
   <translation>Wie vorgeschlagen nummerieren.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Space: play. Arrows: page. F: fit.</source>
   <translation>Leertaste: abspielen. Pfeile: blättern. F: einpassen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Take it out of the bundle (in the tree).</source>
   <translation>Aus dem Paket nehmen (im Baum).</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Take one of the two out of the bundle (in the tree).</source>
   <translation>Eines der beiden aus dem Paket nehmen (im Baum).</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>The figure</source>
   <translation>Die Textur</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>The figure alone: {across}, {along}.</source>
   <translation>Die Textur allein: {across}, {along}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>The leaves are not registered, so it stays where it is: prove or register.</source>
   <translation>Die Blätter sind nicht ausgerichtet, also bleibt er, wo er ist: nachweisen oder ausrichten.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>The log</source>
   <translation>Der Stamm</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Two picked marks</source>
   <translation>Zwei gewählte Punkte</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Wheel: zoom. Ctrl and wheel: page. Drag: move.</source>
   <translation>Rad: Zoom. Strg und Rad: blättern. Ziehen: verschieben.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>across, {unit}</source>
   <translation>quer, {unit}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>alike</source>
   <translation>ähnlich</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>along, {unit}</source>
   <translation>längs, {unit}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>drift of the log on the photographs</source>
   <translation>Drift des Stamms auf den Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>drift of the picked marks on the photographs</source>
   <translation>Drift der gewählten Marken auf den Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>drift: figure and photograph together</source>
   <translation>Drift: Textur und Foto zusammen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>end for end</source>
   <translation>Kopf gegen Fuß</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf</source>
   <translation>Textur auf dem Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf, by its marks</source>
   <translation>Textur auf dem Blatt, nach seinen Marken</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf, by its outline</source>
   <translation>Textur auf dem Blatt, nach seinem Umriss</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf, by the backs</source>
   <translation>Textur auf dem Blatt, nach den Rückseiten</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>foreign</source>
   <translation>fremd</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>from leaf {a} to {b}</source>
   <translation>von Blatt {a} zu {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>one missing?</source>
   <translation>eines fehlt?</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>out of place</source>
   <translation>am falschen Platz</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>photograph</source>
   <translation>Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>turned over</source>
   <translation>gewendet</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>twice</source>
   <translation>zweimal</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>unlike</source>
   <translation>unähnlich</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>{now} becomes {new}</source>
   <translation>{now} wird {new}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpot</name>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Drag the wedge, or the handles at its rim. Wheel over the top: ways.</source>
   <translation>Den Keil ziehen, oder die Griffe an seinem Rand. Rad über der Platte: Keile.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>It lies well on all leaves that it needs.</source>
   <translation>Er liegt gut auf allen Blättern, die er braucht.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf and Top</source>
   <translation>Blatt und Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf {number}</source>
   <translation>Blatt {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf {number}, not used</source>
   <translation>Blatt {number}, unbenutzt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf {number}: {where}</source>
   <translation>Blatt {number}: {where}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Not here: {reasons}.</source>
   <translation>Nicht hier: {reasons}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Position {position}: leaf {leaf}</source>
   <translation>Platz {position}: Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>mirrored</source>
   <translation>gespiegelt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>off leaf {leaves}</source>
   <translation>neben Blatt {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>off leaves {leaves}</source>
   <translation>neben den Blättern {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>turned over</source>
   <translation>gewendet</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>{fault} on leaf {leaves}</source>
   <translation>{fault} auf Blatt {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>{fault} on leaves {leaves}</source>
   <translation>{fault} auf den Blättern {leaves}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotCompare</name>
  <message>
   <location filename="veneerwb/gui/spot/compare.py" />
   <source>Kept spots</source>
   <translation>Gemerkte Stellen</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotFound</name>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>No wedge of this top fits with its tip there.</source>
   <translation>Kein Keil dieser Platte passt mit seiner Spitze dorthin.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Nothing counts; let one of the measures count.</source>
   <translation>Nichts zählt; lassen Sie eines der Maße zählen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Nothing has been looked for yet. Find spots tries every spot and direction on the leaves, with the ways, the turn and the size that the top has now.</source>
   <translation>Noch wurde nichts gesucht. Stellen suchen versucht jede Stelle und Richtung auf den Blättern, mit den Keilen, dem Wenden und der Größe, die die Platte jetzt hat.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Angehalten; nichts wurde geändert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>The leaves or the top have changed since. Find spots again.</source>
   <translation>Die Blätter oder die Platte haben sich seither geändert. Stellen noch einmal suchen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Where good spots lie is drawn here.</source>
   <translation>Wo gute Stellen liegen, wird hier gezeichnet.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>strong</source>
   <translation>stark</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>weak</source>
   <translation>schwach</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>with the tip here; pale: none fits</source>
   <translation>mit der Spitze hier; blass: keiner passt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>{k}: from leaf {first}</source>
   <translation>{k}: ab Blatt {first}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotKept</name>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>No spot is kept yet. Keep the one that is seen, go on, and come back to it.</source>
   <translation>Noch ist keine Stelle gemerkt. Merken Sie die, die zu sehen ist, gehen Sie weiter und kommen Sie zu ihr zurück.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>Old picture: the leaves or the top have changed since</source>
   <translation>Altes Bild: Blätter oder Platte haben sich seither geändert</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>Spot {n}</source>
   <translation>Stelle {n}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>Tick two to six kept spots to compare them; {count} are ticked.</source>
   <translation>Kreuzen Sie zwei bis sechs gemerkte Stellen an, um sie zu vergleichen; angekreuzt: {count}.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotMakes</name>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>At least {count} tops of {size} in {ways} ways</source>
   <translation>Mindestens {count} Platten von {size} in {ways} Keilen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>At least {count} tops of {size} in {ways} ways, a colour for each stack</source>
   <translation>Mindestens {count} Platten von {size} in {ways} Keilen, eine Farbe je Stapel</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>How many works out how many tops of this size the leaves give, with room between the cuts, and draws the cuts here.</source>
   <translation>Wie viele rechnet aus, wie viele Platten dieser Größe die Blätter geben, mit Platz zwischen den Schnitten, und zeichnet die Schnitte hier.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>No top of this shape fits in {ways} ways.</source>
   <translation>Keine Platte dieser Form passt in {ways} Keilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>No top of this size fits.</source>
   <translation>Keine Platte dieser Größe passt.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Angehalten; nichts wurde geändert.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>The table was made before the last change; make it again.</source>
   <translation>Die Tafel wurde vor der letzten Änderung gemacht; machen Sie sie neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>counted before the last change</source>
   <translation>vor der letzten Änderung gezählt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>none fits</source>
   <translation>keine passt</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotNearby</name>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>back and left</source>
   <translation>zurück und links</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>back and right</source>
   <translation>zurück und rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>back {by}</source>
   <translation>{by} zurück</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>does not fit</source>
   <translation>passt nicht</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>here</source>
   <translation>hier</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>left {by}</source>
   <translation>{by} links</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>on and left</source>
   <translation>vor und links</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>on and right</source>
   <translation>vor und rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>on {by}</source>
   <translation>{by} vor</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>right {by}</source>
   <translation>{by} rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>turned left {by}</source>
   <translation>um {by} nach links gedreht</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>turned right {by}</source>
   <translation>um {by} nach rechts gedreht</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>Choose spot</source>
   <translation>Stelle wählen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>Not registered: the leaves lie on each other as they were photographed.</source>
   <translation>Nicht ausgerichtet: die Blätter liegen aufeinander, wie sie fotografiert wurden.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>Spot of {match}</source>
   <translation>Stelle von {match}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>There are several matches; select the one that you choose a spot for.</source>
   <translation>Es gibt mehrere Furnierbilder; wählen Sie das, für das Sie eine Stelle wählen.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotTab</name>
  <message>
   <location filename="veneerwb/gui/spot/tab.py" />
   <source>Something else is being worked out; stop that first.</source>
   <translation>Etwas anderes wird gerade ausgerechnet; halten Sie das zuerst an.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tab.py" />
   <source>Stop ({percent} %)</source>
   <translation>Anhalten ({percent} %)</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotTabs</name>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>Found</source>
   <translation>Gefunden</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>Kept</source>
   <translation>Gemerkt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>Nearby</source>
   <translation>In der Nähe</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>What This Bundle Makes</source>
   <translation>Was dieses Paket hergibt</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotWords</name>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>book</source>
   <translation>gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>slip</source>
   <translation>geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>{ways} ways, {turn}, from leaf {first}</source>
   <translation>{ways} Keile, {turn}, ab Blatt {first}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>{ways} ways, {turn}, leaves listed</source>
   <translation>{ways} Keile, {turn}, Blätter aufgezählt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>{ways} ways, {turn}, spread from leaf {first}</source>
   <translation>{ways} Keile, {turn}, verteilt ab Blatt {first}</translation>
  </message>
 </context>
 <context>
  <name>VeneerWorkbench</name>
  <message>
   <location filename="InitGui.py" />
   <source>Lay up table tops from consecutive veneer leaves</source>
   <translation>Tischplatten aus fortlaufenden Furnierblättern legen</translation>
  </message>
  <message>
   <location filename="InitGui.py" />
   <source>Veneer Layup</source>
   <translation>Veneer Layup</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Backs</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Add photographs of backs, tie them to their faces, prove by them how the leaves lay</source>
   <translation>Fotos von Rückseiten hinzufügen, sie an ihre Vorderseiten binden, mit ihnen nachweisen, wie die Blätter lagen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Bac&amp;ks</source>
   <translation>&amp;Rückseiten</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Bench</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;To the Bench</source>
   <translation>An die &amp;Werkbank</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Make the sheets of the selected match for the shop; say how it cuts, tapes, presses</source>
   <translation>Die Zeichnungsblätter des gewählten Furnierbilds für die Werkstatt machen; sagen, wie sie schneidet, klebt und presst</translation>
  </message>
 </context>
 <context>
  <name>Veneer_BringInLeaves</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Bring In Leaves</source>
   <translation>Bl&amp;ätter einlesen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Make a bundle of leaves from their photographs</source>
   <translation>Aus Fotos der Blätter ein Paket machen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_BuildUp</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Build &amp;Up Panel</source>
   <translation>&amp;Platte aufbauen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Build the selected match up into a panel: core, backer, lipping, border, line, inlay</source>
   <translation>Aus dem gewählten Furnierbild eine Platte aufbauen: Trägerplatte, Gegenfurnier, Anleimer, Fries, Ader, Einlage</translation>
  </message>
 </context>
 <context>
  <name>Veneer_CheckMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Check Match</source>
   <translation>Furnierbild pr&amp;üfen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>List what stands against cutting the selected match, and what would do</source>
   <translation>Auflisten, was gegen das Schneiden des gewählten Furnierbilds spricht, und was hilft</translation>
  </message>
 </context>
 <context>
  <name>Veneer_ChooseSpot</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Choos&amp;e Spot</source>
   <translation>&amp;Stelle wählen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Move the wedge of the selected match on its leaves and see the top follow</source>
   <translation>Den Keil des gewählten Furnierbilds auf seinen Blättern bewegen und die Platte folgen sehen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_CloseRing</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Close the Rin&amp;g</source>
   <translation>Ring s&amp;chließen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>How much over to cut the wedges of the selected match; as cut, what to true and where</source>
   <translation>Wie viel größer die Keile des gewählten Furnierbilds zu schneiden sind; nach dem Schnitt, was wo zu fügen ist</translation>
  </message>
 </context>
 <context>
  <name>Veneer_DrawMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Draw the selected match on a page: plan, wedge, set-out and cut list</source>
   <translation>Das gewählte Furnierbild auf eine Seite zeichnen: Draufsicht, Keil, Anriss und Zuschnittliste</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>New &amp;Drawing</source>
   <translation>&amp;Neue Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Faults</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Faults</source>
   <translation>&amp;Fehler</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Draw knots, splits and other faults, and what may be used, on the leaves' photographs</source>
   <translation>Äste, Risse und andere Fehler, und was nutzbar ist, auf die Fotos der Blätter zeichnen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Help</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Veneer Help</source>
   <translation>&amp;Hilfe zu Veneer</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>A first top step by step, a page for each command, the trade's words, what to beware of</source>
   <translation>Eine erste Platte Schritt für Schritt, eine Seite je Befehl, die Fachwörter, und wovor man sich hütet</translation>
  </message>
 </context>
 <context>
  <name>Veneer_LeafOnFaces</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Leaf On Faces</source>
   <translation>&amp;Blatt auf Flächen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay a leaf's picture, to scale, on the selected flat faces</source>
   <translation>Das Bild eines Blatts maßstäblich auf die gewählten ebenen Flächen legen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Marks</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Paper &amp;Marks</source>
   <translation>Papiermar&amp;ken</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Print marks to stick on the leaves, find them on the photographs, measure from them</source>
   <translation>Marken zum Aufkleben auf die Blätter drucken, sie auf den Fotos finden, von ihnen aus messen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_NewMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;New Match</source>
   <translation>Neues Furnierbil&amp;d</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay up a top of any shape from the selected bundle or stock: book, slip, end match, box, diamond, herringbone, radial; a selected outline becomes the top</source>
   <translation>Aus dem gewählten Paket oder Vorrat eine Platte beliebiger Form legen: gestürzt, geschoben, Kopfsturz, vier Spiegel, Raute, Fischgrät, Stern; ein gewählter Umriss wird die Platte</translation>
  </message>
 </context>
 <context>
  <name>Veneer_NewRadialMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay up a top of wedges from the selected bundle or stock of leaves</source>
   <translation>Aus dem gewählten Paket oder Vorrat eine Platte aus Keilen legen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>New Radial Matc&amp;h</source>
   <translation>Neues S&amp;ternbild</translation>
  </message>
 </context>
 <context>
  <name>Veneer_OpenExample</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Open E&amp;xample</source>
   <translation>Beispiel &amp;öffnen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Open a copy of the example: a round top in 12 ways, built up, with its bench</source>
   <translation>Eine Kopie des Beispiels öffnen: eine runde Platte in 12 Keilen, aufgebaut, mit ihrer Werkbank</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Particulars</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Particulars</source>
   <translation>&amp;Angaben</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Say what the selected bundle is: species, cut, flitch, cost; how much there is of it</source>
   <translation>Sagen, was das gewählte Paket ist: Holzart, Schnitt, Flitch, Kosten; und wie viel davon da ist</translation>
  </message>
 </context>
 <context>
  <name>Veneer_RefreshSheets</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Refresh Sheets</source>
   <translation>Blätter erne&amp;uern</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Make the sheets as the match is now</source>
   <translation>Die Zeichnungsblätter machen, wie das Furnierbild jetzt ist</translation>
  </message>
 </context>
 <context>
  <name>Veneer_RunOnFaces</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay doors, drawer fronts or wall panels, the selected flat faces, from one sequence of leaves</source>
   <translation>Türen, Schubkastenfronten oder Wandtafeln, die gewählten ebenen Flächen, aus einer Messerfolge legen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Panels &amp;in Sequence</source>
   <translation>Fronten &amp;in Folge</translation>
  </message>
 </context>
 <context>
  <name>Veneer_SaveDrawing</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Save Drawing &amp;as PDF...</source>
   <translation>&amp;Zeichnung als PDF speichern...</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Save the selected drawing as a PDF file</source>
   <translation>Die gewählte Zeichnung als PDF-Datei speichern</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Sequence</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Page through the leaves of the selected bundle, prove their order, lay them on each other</source>
   <translation>Durch die Blätter des gewählten Pakets gehen, ihre Reihenfolge nachweisen, sie aufeinander legen</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Prove Se&amp;quence</source>
   <translation>Messerfol&amp;ge nachweisen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_ShowNumbers</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Numbers &amp;On or Off</source>
   <translation>Nummern ein &amp;oder aus</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Show or hide the positions and leaves, underlined where a leaf is turned over, on the selected matches</source>
   <translation>Plätze und Blätter der gewählten Furnierbilder zeigen oder verbergen, unterstrichen, wo ein Blatt gewendet ist</translation>
  </message>
 </context>
 <context>
  <name>Veneer_ShowSeams</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Seams On or Off</source>
   <translation>Fugen &amp;ein oder aus</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Show or hide the seams of the selected matches</source>
   <translation>Die Fugen der gewählten Furnierbilder zeigen oder verbergen</translation>
  </message>
 </context>
 <context>
  <name>Veneer_WritePacket</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Write Packet...</source>
   <translation>&amp;Mappe schreiben...</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Write all sheets, templates, plans and lists for the shop into a folder</source>
   <translation>Alle Zeichnungsblätter, Schablonen, Pläne und Listen für die Werkstatt in einen Ordner schreiben</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Veneer &amp;Layup</source>
   <translation>Veneer &amp;Layup</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Veneer Layup</source>
   <translation>Veneer Layup</translation>
  </message>
 </context>
</TS>
