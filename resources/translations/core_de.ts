<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>"sequence" or the leaf of each piece</source>
   <translation>"sequence" oder das Blatt jedes Teils</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>A back cannot be tied by {by}; choose the outline, or give the marks on the face and those on the back.</source>
   <translation>Eine Rückseite lässt sich nicht nach {by} binden; wählen Sie den Umriss, oder geben Sie die Marken auf der Vorder- und der Rückseite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>A boat shape {length} mm long cannot widen from {ends} to {width} mm: make it longer than {least} mm, or its ends wider than {most} mm.</source>
   <translation>Eine Bootsform von {length} mm Länge kann nicht so weit werden ({ends} bis {width} mm): machen Sie sie länger als {least} mm, oder ihre Enden breiter als {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>A book ring turns every second piece, so it needs an even number of ways; {ways} is odd: take {nearest}, or a slip ring.</source>
   <translation>Ein gestürzter Ring wendet jedes zweite Teil, braucht also eine gerade Zahl von Keilen; {ways} ist ungerade: nehmen Sie {nearest}, oder einen geschobenen Ring.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/offset.py" />
   <source>A border {width} mm wide leaves nothing of this top within it in one piece: the widest is {most} mm.</source>
   <translation>Ein Fries von {width} mm Breite lässt von dieser Platte nichts an einem Stück in sich: der breiteste hat {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>A camera that does not look straight down shows leaves off, too: with four marks on the topmost leaf the photograph is squared up.</source>
   <translation>Auch eine Kamera, die nicht gerade nach unten schaut, zeigt Blätter daneben: mit vier Marken auf dem obersten Blatt wird das Foto entzerrt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>A click one pixel off moves a corner by at most {worst} ({photo}).</source>
   <translation>Ein Klick, der um ein Pixel daneben liegt, versetzt eine Ecke um höchstens {worst} ({photo}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>A click one pixel off moves a corner by up to {length}; zoom in, or click points further apart.</source>
   <translation>Ein Klick, der um ein Pixel daneben liegt, versetzt eine Ecke um bis zu {length}; zoomen Sie heran, oder klicken Sie Punkte weiter auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>A corner of the outline is no number; draw it again.</source>
   <translation>Eine Ecke des Umrisses ist keine Zahl; zeichnen Sie ihn noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>A corner of the {kind} is no number.</source>
   <translation>{kind}: eine Ecke ist keine Zahl.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>A disc hides the tips of the inner field; give it there and not to the outer band.</source>
   <translation>Eine Scheibe verdeckt die Spitzen des inneren Feldes; geben Sie sie dort und nicht dem äußeren Band.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>A disc of {diameter} mm about the ring's centre does not lie within the top; the largest that does has {most} mm.</source>
   <translation>Eine Scheibe von {diameter} mm um die Mitte des Rings liegt nicht innerhalb der Platte; die größte, die hineinpasst, hat {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>A leaf is missing in its place.</source>
   <translation>An seinem Platz fehlt ein Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/spots.py" />
   <source>A line of {length} mm along the grain, some {width} mm wide, {darker} darker than the leaf on both sides of it.</source>
   <translation>Eine Linie von {length} mm längs der Faser, etwa {width} mm breit, um {darker} dunkler als das Blatt auf beiden Seiten davon.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/spots.py" />
   <source>A line of {length} mm along the grain, some {width} mm wide, {darker} lighter than the leaf on both sides of it.</source>
   <translation>Eine Linie von {length} mm längs der Faser, etwa {width} mm breit, um {darker} heller als das Blatt auf beiden Seiten davon.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>A photo's pixels must be whole numbers from 0 to 255 (uint8), rows x columns x 3; these are {dtype} {shape}.</source>
   <translation>Die Pixel eines Fotos müssen ganze Zahlen von 0 bis 255 sein (uint8), Zeilen x Spalten x 3; diese sind {dtype} {shape}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>A photograph can be turned by 90, 180 or 270 degrees, not by {turn}.</source>
   <translation>Ein Foto lässt sich um 90, 180 oder 270 Grad drehen, nicht um {turn}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>A racetrack cannot be {width} mm wide and only {length} mm long: swap the two ({width} mm long and {length} mm wide), or make it longer than {width} mm.</source>
   <translation>Eine Rennbahn kann nicht {width} mm breit und nur {length} mm lang sein: tauschen Sie die beiden ({width} mm lang und {length} mm breit), oder machen Sie sie länger als {width} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>A racetrack {length} mm long and as wide has no straights: make it longer, or take a round top of {length} mm.</source>
   <translation>Eine Rennbahn von {length} mm Länge und ebensolcher Breite hat keine Geraden: machen Sie sie länger, oder nehmen Sie eine runde Platte von {length} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>A run has 1 to {most} panels, and these are {count}; choose its faces again.</source>
   <translation>Eine Folge hat 1 bis {most} Fronten, und hier sind es {count}; wählen Sie ihre Flächen noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A running face takes as many leaves as it needs; give the width of a strip instead of their number, or take a balance face.</source>
   <translation>Eine laufende Sichtseite nimmt so viele Blätter, wie sie braucht; geben Sie statt deren Zahl die Breite eines Streifens, oder nehmen Sie eine ausgewogene Sichtseite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>A seam lies on one axis of this top and none on the other: with {ways} ways there cannot be one on each.</source>
   <translation>Auf einer Achse dieser Platte liegt eine Fuge und auf der anderen keine: mit {ways} Keilen kann nicht auf jeder eine sein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/search/find.py" />
   <source>A search needs a bundle of leaves, and {value!r:.40} is none.</source>
   <translation>Eine Suche braucht ein Paket von Blättern, und {value!r:.40} ist keines.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A slip-centre-book face is slipped and booked at its centre, so it cannot be {turn}: take book or slip, or another face.</source>
   <translation>Eine geschobene Sichtseite mit gestürzter Mitte ist schon beides, sie kann also nicht {turn} sein: nehmen Sie gestürzt oder geschoben, oder eine andere Sichtseite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/spots.py" />
   <source>A spot of {length} x {width} mm, {darker} darker than what lies round it.</source>
   <translation>Ein Fleck von {length} x {width} mm, um {darker} dunkler als das, was ihn umgibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>A star of {points} points with an outer radius of {outer} mm has no hollows with an inner radius of {inner} mm; give less than {most} mm.</source>
   <translation>Ein Stern mit {points} Zacken und einem Außenradius von {outer} mm hat mit einem Innenradius von {inner} mm keine Kehlen; geben Sie weniger als {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>A stock of plain sizes has no photographs; lay the top from a bundle.</source>
   <translation>Ein Vorrat bloßer Maße hat keine Fotos; legen Sie die Platte aus einem Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/search/find.py" />
   <source>A stock of plain sizes has no photographs; search in a bundle.</source>
   <translation>Ein Vorrat bloßer Maße hat keine Fotos; suchen Sie in einem Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>A straight rim needs wedges from the tip to the edge; in two rings keep the blank's rim parallel to the edge.</source>
   <translation>Ein gerader Rand braucht Keile von der Spitze bis zur Kante; lassen Sie bei zwei Ringen den Rand des Rohteils gleichlaufend zur Kante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>A straight rim needs wedges of one piece each; keep the blank's rim parallel to the edge.</source>
   <translation>Ein gerader Rand braucht Keile aus je einem Teil; lassen Sie den Rand des Rohteils gleichlaufend zur Kante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>A straight {what} cannot turn this edge's hollow corner; take a mitred one.</source>
   <translation>{what}, gerade: das kommt um die einspringende Ecke dieser Kante nicht herum; nehmen Sie Gehrungen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>A straight {what} needs a top with straight sides and corners; take a mitred one, or let it follow the edge.</source>
   <translation>{what}, gerade: das braucht eine Platte mit geraden Seiten und Ecken; nehmen Sie Gehrungen, oder lassen Sie es der Kante folgen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A {face} face has a joint on its centre, so it needs an even number of leaves, {least} or more, and {count} will not do: take {nearest}.</source>
   <translation>Eine Sichtseite ({face}) hat eine Fuge in der Mitte, braucht also eine gerade Zahl von Blättern, {least} oder mehr, und {count} geht nicht: nehmen Sie {nearest}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A {face} face mirrors at its centre, so it needs an even number of leaves, {least} or more, and {count} will not do: take {nearest}.</source>
   <translation>Eine Sichtseite ({face}) spiegelt in der Mitte, braucht also eine gerade Zahl von Blättern, {least} oder mehr, und {count} geht nicht: nehmen Sie {nearest}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/largest.py" />
   <source>A {turn} ring needs {least} leaves or more and there are {have}; take a larger bundle.</source>
   <translation>Ein Ring ({turn}) braucht {least} Blätter oder mehr, und es sind {have}; nehmen Sie ein größeres Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>Across the grain the top is {width} mm wide and the least strip is {least} mm; make it wider.</source>
   <translation>Quer zur Faser ist die Platte {width} mm breit, und der kleinste Streifen ist {least} mm; machen Sie sie breiter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>All photographs: {note}</source>
   <translation>Alle Fotos: {note}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>All pieces show the backs of their leaves.</source>
   <translation>Alle Teile zeigen die Rückseiten ihrer Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>All strips are of one width, with a joint on the centre line.</source>
   <translation>Alle Streifen sind gleich breit, mit einer Fuge auf der Mittellinie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>All strips are of one width; any number of them.</source>
   <translation>Alle Streifen sind gleich breit; ihre Zahl ist beliebig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>All weights are 0, so that all spots are alike; give one of them more.</source>
   <translation>Alle Gewichte sind 0, so dass alle Stellen gleich sind; geben Sie einem davon mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>All {leaves} photographs are one and the same, so there is no order to prove.</source>
   <translation>Alle {leaves} Fotos sind ein und dasselbe, es gibt also keine Reihenfolge nachzuweisen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>An end match in {rows} rows has as many leaves in each, and {count} do not go into {rows}: take {nearest}.</source>
   <translation>Ein Kopfsturz in {rows} Reihen hat in jeder gleich viele Blätter, und {count} gehen nicht in {rows} auf: nehmen Sie {nearest}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>An inlaid disc takes the place of the tips.</source>
   <translation>Eine eingelassene Scheibe nimmt den Platz der Spitzen ein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>An inner field and an outer band, each with ways of its own, meet along a line.</source>
   <translation>Ein inneres Feld und ein äußeres Band, jedes mit eigenen Keilen, treffen sich an einer Linie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/largest.py" />
   <source>An order that lists {count} leaves is for {count} ways; ask for those alone, or take the leaves in sequence.</source>
   <translation>Eine Reihenfolge, die {count} Blätter aufzählt, ist für {count} Keile; verlangen Sie nur diese, oder nehmen Sie die Blätter in Messerfolge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>An outline must be a polygon, and this is a {kind}.</source>
   <translation>Ein Umriss muss ein Polygon sein, und das ist ein {kind}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>An outline must be one closed run, and these are {count}: give one of them.</source>
   <translation>Ein Umriss muss ein geschlossener Zug sein, und hier sind es {count}: geben Sie einen davon.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Architectural end match</source>
   <translation>Kopfsturz, Architektur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>At the seams after positions {seams} the figure is too plain, or the leaves too unlike, to tell how it meets.</source>
   <translation>An den Fugen nach den Plätzen {seams} ist die Textur zu schlicht, oder die Blätter sind zu unähnlich, um zu sagen, wie sie sich trifft.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>At the upper left and the lower right mitre the figure is shifted by {shift} mm: on a top of unequal sides only two mitres of a box can mirror.</source>
   <translation>An der Gehrung links oben und der rechts unten ist die Textur um {shift} mm versetzt: auf einer Platte ungleicher Seiten können nur zwei Gehrungen der vier Spiegel spiegeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot no size of this top fits and no number of ways fits this top; or move the wedge.</source>
   <translation>An dieser Stelle passt keine Größe dieser Platte, und diese Platte passt in keiner Zahl von Keilen; oder verschieben Sie den Keil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot no size of this top fits and this top fits in {ways} ways; or move the wedge.</source>
   <translation>An dieser Stelle passt keine Größe dieser Platte, und diese Platte passt in {ways} Keilen; oder verschieben Sie den Keil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot the largest reach is {reach} mm and no number of ways fits this top; or move the wedge.</source>
   <translation>An dieser Stelle ist die größte Reichweite {reach} mm, und diese Platte passt in keiner Zahl von Keilen; oder verschieben Sie den Keil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot the largest reach is {reach} mm and this top fits in {ways} ways; or move the wedge.</source>
   <translation>An dieser Stelle ist die größte Reichweite {reach} mm, und diese Platte passt in {ways} Keilen; oder verschieben Sie den Keil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/wider.py" />
   <source>At this spot there is room for {room} deg. Move the wedge, take less oversize or wider leaves, or make a surer template that needs less over.</source>
   <translation>An dieser Stelle ist Platz für {room} Grad. Verschieben Sie den Keil, nehmen Sie weniger Übermaß oder breitere Blätter, oder machen Sie eine sicherere Schablone, die weniger Zugabe braucht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>At {scale} mm per pixel a leaf of {width} x {length} mm has {columns} x {rows} pixels; choose another scale.</source>
   <translation>Bei {scale} mm je Pixel hat ein Blatt von {width} x {length} mm {columns} x {rows} Pixel; wählen Sie einen anderen Maßstab.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Balance match</source>
   <translation>Ausgewogen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Begin at another leaf to have them meet between two panels.</source>
   <translation>Beginnen Sie bei einem anderen Blatt, damit sie sich zwischen zwei Fronten treffen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>Between the faults, the edges and the margin no top of this shape fits in any number of ways; look at the faults, or take another bundle.</source>
   <translation>Zwischen den Fehlern, den Kanten und dem Rand passt in keiner Zahl von Keilen eine Platte dieser Form; sehen Sie die Fehler an, oder nehmen Sie ein anderes Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Book match</source>
   <translation>Gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Book seams miss by {miss} mm where backs are pinned as their faces are.</source>
   <translation>Gestürzte Fugen verfehlen sich um {miss} mm, wo Rückseiten gestiftet werden, wie ihre Vorderseiten liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>Both sides of the seams after positions {seams} are pictured by one photograph, so they meet in the picture; where the figure of a back really lies was not measured.</source>
   <translation>Beide Seiten der Fugen nach den Plätzen {seams} zeigt ein und dasselbe Foto, also treffen sie sich im Bild; wo die Textur einer Rückseite wirklich liegt, wurde nicht gemessen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Box match</source>
   <translation>Vier Spiegel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>By its marks, leaf {leaves} lies the other way round.</source>
   <translation>Nach seinen Marken liegt Blatt {leaves} anders herum.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/grid.py" />
   <source>By its scale of {scale} mm per pixel leaf {leaf} would be {width} x {length} m large; set the scale of its photograph again.</source>
   <translation>Nach seinem Maßstab von {scale} mm je Pixel wäre Blatt {leaf} {width} x {length} m groß; setzen Sie den Maßstab seines Fotos neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>By leaf {last} that makes {end} mm, and where the figure wanders otherwise on one leaf than on the rest is not known from faces alone.</source>
   <translation>Bei Blatt {last} macht das {end} mm, und wo die Textur auf einem Blatt anders wandert als auf den übrigen, ist aus Vorderseiten allein nicht bekannt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>By these distances a ring is {size} mm across, and it was printed {printed} mm; measure again from cross to cross, see that each mark has its own letter, and that the sheet was printed at 100 %.</source>
   <translation>Nach diesen Abständen hat ein Ring {size} mm Durchmesser, und gedruckt wurde er mit {printed} mm; messen Sie noch einmal von Kreuz zu Kreuz, sehen Sie nach, dass jede Marke ihren eigenen Buchstaben hat, und dass der Bogen mit 100 % gedruckt wurde.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Centre balance match</source>
   <translation>Mitte ausgewogen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Check the thickness and the slope, or let the wander be told from the photographs.</source>
   <translation>Prüfen Sie Dicke und Neigung, oder lassen Sie das Wandern aus den Fotos ablesen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Click 2 points on the picture, each once.</source>
   <translation>Klicken Sie 2 Punkte auf dem Bild an, jeden einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/scaling.py" />
   <source>Click two paper marks to {most}, or two and give their distance, or four and give the six distances between them.</source>
   <translation>Klicken Sie zwei bis {most} Papiermarken an, oder zwei mit ihrem Abstand, oder vier mit den sechs Abständen zwischen ihnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Click {count} points on the picture, each once.</source>
   <translation>Klicken Sie {count} Punkte auf dem Bild an, jeden einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Close the gaps, or make a run of its own of what lies beyond.</source>
   <translation>Schließen Sie die Spalte, oder machen Sie aus dem, was dahinter liegt, eine eigene Folge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Continuous end match</source>
   <translation>Kopfsturz, durchlaufend</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Corners {one} and {other} lie in one place; click four corners that are at least {least} pixels apart.</source>
   <translation>Die Ecken {one} und {other} liegen an einer Stelle; klicken Sie vier Ecken an, die mindestens {least} Pixel auseinander sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Cut along the lines, away from your hand: a knife slips on paper and on thin wood.</source>
   <translation>Längs der Linien schneiden, von der Hand weg: ein Messer rutscht auf Papier und auf dünnem Holz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>Cut as one stack the common outline reaches up to {overhang} mm off the usable area of leaves {leaves}, though their own pieces lie on them (margin {margin} mm).</source>
   <translation>Als ein Stapel geschnitten reicht der gemeinsame Umriss bis zu {overhang} mm über die nutzbare Fläche der Blätter {leaves} hinaus, obwohl ihre eigenen Teile darauf liegen (Rand {margin} mm).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>Cut in lots by shape ({lots} of them), or take other leaves.</source>
   <translation>In Losen nach Form schneiden ({lots} davon), oder andere Blätter nehmen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>Cut over, never under: at {true_angle} deg or a little more.</source>
   <translation>Größer schneiden, nie kleiner: mit {true_angle} Grad oder etwas mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Cut them one after another along the leaf and number them round the edge.</source>
   <translation>Schneiden Sie sie eines nach dem anderen längs des Blatts, und nummerieren Sie sie um die Kante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/wider.py" />
   <source>Cut to {angle} deg the blanks at positions {pieces} reach up to {overhang} mm off the usable area of their leaves ({leaves}), with a margin of {margin} mm; cut to {true_angle} deg they fit.</source>
   <translation>Auf {angle} Grad geschnitten reichen die Rohteile auf den Plätzen {pieces} bis zu {overhang} mm über die nutzbare Fläche ihrer Blätter ({leaves}) hinaus, bei einem Rand von {margin} mm; auf {true_angle} Grad geschnitten passen sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Diamond match</source>
   <translation>Raute</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/scaling.py" />
   <source>Distances between marks are numbers, in mm.</source>
   <translation>Abstände zwischen Marken sind Zahlen, in mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. Click marks of a third leaf, or of one leaf with its pins.</source>
   <translation>Nicht schneiden. Klicken Sie Marken eines dritten Blatts an, oder eines Blatts mit seinen Stiften.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that each mark has its own leaf and letter; then click marks of more leaves, or of one leaf with its pins.</source>
   <translation>Nicht schneiden. Sehen Sie nach, dass jede Marke ihr eigenes Blatt und ihren Buchstaben hat; klicken Sie dann Marken von mehr Blättern an, oder von einem Blatt mit seinen Stiften.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that each mark has its own letter; then move the leaf back, or pin it again by its marks, and photograph it again.</source>
   <translation>Nicht schneiden. Sehen Sie nach, dass jede Marke ihren eigenen Buchstaben hat; rücken Sie dann das Blatt zurück, oder stiften Sie es nach seinen Marken neu, und fotografieren Sie es noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that each mark has its own letter; then move the leaf back: {back}, or pin it again by its marks, and photograph it again.</source>
   <translation>Nicht schneiden. Sehen Sie nach, dass jede Marke ihren eigenen Buchstaben hat; rücken Sie dann das Blatt zurück: {back}, oder stiften Sie es nach seinen Marken neu, und fotografieren Sie es noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that this is the leaf, that each mark has its own letter, and that the leaf lies face up.</source>
   <translation>Nicht schneiden. Sehen Sie nach, dass dies das Blatt ist, dass jede Marke ihren eigenen Buchstaben hat, und dass das Blatt mit der Vorderseite nach oben liegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Draw the patch on which the light is measured, and choose to measure it there.</source>
   <translation>Zeichnen Sie die Stelle, an der das Licht gemessen wird, und wählen Sie, es dort zu messen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Each half is slipped, and the halves mirror at the centre.</source>
   <translation>Jede Hälfte ist geschoben, und die Hälften spiegeln in der Mitte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Each wedge is laid from several leaves side by side, slip matched.</source>
   <translation>Jeder Keil wird aus mehreren Blättern nebeneinander gelegt, geschoben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Every second leaf is turned end for end, its face still up.</source>
   <translation>Jedes zweite Blatt ist Kopf gegen Fuß gedreht, die Vorderseite bleibt oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Every second leaf is turned over, so that each joint mirrors.</source>
   <translation>Jedes zweite Blatt ist gewendet, so dass jede Fuge spiegelt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Faults ({kinds}) at positions {pieces} (leaves {leaves}) lie where the top will be covered.</source>
   <translation>Fehler ({kinds}) auf den Plätzen {pieces} (Blätter {leaves}) liegen, wo die Platte verdeckt wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Faults ({kinds}) lie in the oversize at positions {pieces} (leaves {leaves}) and go with the trim.</source>
   <translation>Fehler ({kinds}) liegen im Übermaß der Plätze {pieces} (Blätter {leaves}) und gehen mit dem Verschnitt weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Faults ({kinds}) of leaf {leaf} will be seen on {faces}.</source>
   <translation>Fehler ({kinds}) von Blatt {leaf} werden auf {faces} zu sehen sein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Faults ({kinds}) will be seen at positions {pieces} (leaves {leaves}).</source>
   <translation>Fehler ({kinds}) werden auf den Plätzen {pieces} (Blätter {leaves}) zu sehen sein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>Finished sizes: add what is trimmed off and wasted.</source>
   <translation>Fertigmaße: rechnen Sie hinzu, was abgeschnitten wird und verloren geht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>Flatten the leaves first and photograph them under glass.</source>
   <translation>Machen Sie die Blätter zuerst eben und fotografieren Sie sie unter Glas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>For a seam on each axis take {would_do} ways: their number must be divisible by 4.</source>
   <translation>Für eine Fuge auf jeder Achse nehmen Sie {would_do} Keile: ihre Zahl muss durch 4 teilbar sein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>For less truing cut nearer to {true_angle} deg, never under, or cut single pieces, each fitted to its place.</source>
   <translation>Für weniger Fügen näher an {true_angle} Grad schneiden, nie darunter, oder einzelne Teile schneiden, jedes an seinem Platz eingepasst.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>For less truing cut nearer to {true_angle} deg, never under, or fit each piece to its place as it is cut.</source>
   <translation>Für weniger Fügen näher an {true_angle} Grad schneiden, nie darunter, oder jedes Teil an seinem Platz einpassen, wie es geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>For less truing cut nearer to {true_angle} deg, never under.</source>
   <translation>Für weniger Fügen näher an {true_angle} Grad schneiden, nie darunter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four leaves against the four sides, the grain along each side.</source>
   <translation>Vier Blätter an den vier Seiten, die Faser längs jeder Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four leaves against the four sides, the grain square to each side.</source>
   <translation>Vier Blätter an den vier Seiten, die Faser quer zu jeder Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four leaves meet at the centre, side by side and end to end, grain upright.</source>
   <translation>Vier Blätter treffen sich in der Mitte, nebeneinander und Kopf an Kopf, Faser aufrecht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four quarters with slanting grain, which runs round the centre in a diamond.</source>
   <translation>Vier Viertel mit schräger Faser, die in einer Raute um die Mitte läuft.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four quarters with slanting grain, whose V's meet at the centre.</source>
   <translation>Vier Viertel mit schräger Faser, deren V sich in der Mitte treffen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four-piece centre and butt match</source>
   <translation>Vier Blätter, Mitte und Kopf</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>From corner to corner no joint of this box mirrors: its sides differ by {shift} mm.</source>
   <translation>Von Ecke zu Ecke spiegelt keine der vier Fugen: die Seiten sind um {shift} mm verschieden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>From leaf {leaf} on the figure changes {times} times as much from leaf to leaf, and goes on so: a change of thickness.</source>
   <translation>Ab Blatt {leaf} ändert sich die Textur {times} mal so viel von Blatt zu Blatt, und so weiter: eine Änderung der Dicke.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>From leaf {leaf} on the figure changes {times} times less from leaf to leaf, and goes on so: a change of thickness.</source>
   <translation>Ab Blatt {leaf} ändert sich die Textur {times} mal weniger von Blatt zu Blatt, und so weiter: eine Änderung der Dicke.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>From leaf {leaf} to leaf {after} the figure changes {steps} times as much as from leaf to leaf elsewhere: a gap, or one thicker leaf.</source>
   <translation>Von Blatt {leaf} zu Blatt {after} ändert sich die Textur {steps} mal so viel wie sonst von Blatt zu Blatt: eine Lücke, oder ein dickeres Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>From the residuals of your photographs, one standard error at a leaf's corner is at most {step} mm from leaf to leaf (leaf {leaf}), and {total} mm from leaf {first} to leaf {last}.</source>
   <translation>Nach den Restabweichungen Ihrer Fotos ist eine Standardabweichung an einer Blattecke höchstens {step} mm von Blatt zu Blatt (Blatt {leaf}), und {total} mm von Blatt {first} bis Blatt {last}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>From the residuals of your photographs, the figure of one leaf lies {rms} mm (rms) from that of the leaf it meets, measured at {measured} of {tried} places along the seams; {worst} mm at worst, between positions {a} and {b}, where the surfaces that meet are {step} apart.</source>
   <translation>Nach den Restabweichungen Ihrer Fotos liegt die Textur eines Blatts {rms} mm (rms) von der des Blatts, das es trifft, gemessen an {measured} von {tried} Stellen längs der Fugen; schlimmstens {worst} mm, zwischen den Plätzen {a} und {b}, wo die Flächen, die sich treffen, {step} auseinander liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Full strips from the left, as many as it takes; the last is cut to what is left.</source>
   <translation>Volle Streifen von links, so viele es braucht; der letzte wird auf den Rest geschnitten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Gaps that do not run right through the run cannot be closed; the figure in them is lost.</source>
   <translation>Spalte, die nicht ganz durch die Folge gehen, lassen sich nicht schließen; die Textur in ihnen ist verloren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Give it a backer of the show veneer's thickness and wood, pressed at the same time.</source>
   <translation>Geben Sie ihr ein Gegenfurnier von Dicke und Holz des Deckfurniers, zugleich gepresst.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Give its coefficients, or name one of these: {known}.</source>
   <translation>Geben Sie seine Beiwerte an, oder nennen Sie eines von diesen: {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>Give the number of leaves or the width of a strip, not both: the other follows.</source>
   <translation>Geben Sie die Zahl der Blätter oder die Breite eines Streifens, nicht beides: das andere folgt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Give the other side the same, or leave both out.</source>
   <translation>Geben Sie der anderen Seite dasselbe, oder lassen Sie beide weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>Give the photographs as a list of at least one file.</source>
   <translation>Geben Sie die Fotos als Liste von mindestens einer Datei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>Give the photos as a list of files, one for each leaf, in order.</source>
   <translation>Geben Sie die Fotos als Liste von Dateien, eine je Blatt, der Reihe nach.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Give the wander of the figure as two numbers: mm across and mm along.</source>
   <translation>Geben Sie das Wandern der Textur als zwei Zahlen: mm quer und mm längs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>Glued veneer is held by its ground: this is the movement of free wood, not the gap of a joint.</source>
   <translation>Geleimtes Furnier wird von seinem Grund gehalten: dies ist das Arbeiten freien Holzes, nicht der Spalt einer Fuge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Herringbone match</source>
   <translation>Fischgrät</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>How each photograph lay hides a drift of up to {hidden} mm from leaf to leaf, {hidden_total} mm by leaf {last}.</source>
   <translation>Wie jedes Foto lag, verbirgt eine Drift von bis zu {hidden} mm von Blatt zu Blatt, {hidden_total} mm bei Blatt {last}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>How far the figure wanders from surface to surface is not measured yet; book seams may miss by {miss} mm {basis}.</source>
   <translation>Wie weit die Textur von Fläche zu Fläche wandert, ist noch nicht gemessen; gestürzte Fugen können sich um {miss} mm verfehlen {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>How far the figure wanders is not measured, so that backs cannot be set by it; photograph two or three backs.</source>
   <translation>Wie weit die Textur wandert, ist nicht gemessen, also lassen sich Rückseiten nicht danach setzen; fotografieren Sie zwei oder drei Rückseiten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>How much the {what} of {wood} moves is not known here.</source>
   <translation>{what} ({wood}): wie viel das arbeitet, ist hier nicht bekannt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>How much {species!r:.40} moves is not known here; give coefficients of your own or one of these: {known}.</source>
   <translation>Wie viel {species!r:.40} arbeitet, ist hier nicht bekannt; geben Sie eigene Beiwerte oder eines von diesen: {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>How the {what} moves cannot be {value!r:.40}; give Coefficients, or nothing.</source>
   <translation>Wie {what} arbeitet, kann nicht {value!r:.40} sein; geben Sie Coefficients, oder nichts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>If it does not, pick its marks in the order of the first leaf's.</source>
   <translation>Wenn nicht, setzen Sie seine Marken in der Folge derer des ersten Blatts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>In a {match} match the turned strips cannot be {turned!r:.40}; choose {allowed}.</source>
   <translation>Furnierbild {match}: gewendete Streifen können nicht {turned!r:.40} sein; wählen Sie {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>In a {turn} {what} the turned pieces cannot be {turned!r}; choose {allowed}.</source>
   <translation>{what} ({turn}): gewendete Teile können nicht {turned!r} sein; wählen Sie {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>In our tests, on generated leaves of 300 x 900 mm at 1 mm per pixel, the registers of 12 leaves came out the same to {least} to {most} mm (rms at the corners, by the figure) however they were photographed; with leaves that stood up 5 mm under a camera at 1.5 m to {least_buckled} to {most_buckled} mm, besides what the picture itself was bent by.</source>
   <translation>In unseren Versuchen, mit erzeugten Blättern von 300 x 900 mm bei 1 mm je Pixel, kamen die Lagen von 12 Blättern auf {least} bis {most} mm gleich heraus (rms an den Ecken, nach der Textur), wie sie auch fotografiert waren; mit Blättern, die unter einer Kamera in 1,5 m Höhe 5 mm hochstanden, auf {least_buckled} bis {most_buckled} mm, zu dem hinzu, was das Bild selbst verbogen war.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>In the file {file} a text that begins in line {line} has quotation marks that do not close at its end; close them, or write those inside a text twice.</source>
   <translation>In der Datei {file} hat ein Text, der in Zeile {line} beginnt, Anführungszeichen, die sich am Ende nicht schließen; schließen Sie sie, oder schreiben Sie die im Inneren eines Textes doppelt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>In the order "spread" the largest step is {spread}.</source>
   <translation>In der Reihenfolge "spread" ist der größte Schritt {spread}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>In this figure a leaf turned over looks like one that lies end for end: look at the leaf itself.</source>
   <translation>In dieser Textur sieht ein gewendetes Blatt aus wie eines, das Kopf gegen Fuß liegt: sehen Sie das Blatt selbst an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>It is in doubt how leaf {leaves} lies on the leaf before, and with it where all leaves after lie: their photographs are too unlike, or contradict each other.</source>
   <translation>Es ist zweifelhaft, wie Blatt {leaves} auf dem Blatt davor liegt, und damit, wo alle danach liegen: ihre Fotos sind zu unähnlich oder widersprechen einander.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>It lies the way round that was said.</source>
   <translation>Es liegt so herum, wie gesagt wurde.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>Its ends are as the figure has them, which is more alike so than end for end.</source>
   <translation>Seine Enden sind, wie die Textur sie hat, die so ähnlicher ist als Kopf gegen Fuß.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Its picture is left-right reversed: the photograph was mirrored already before it was read; bring in the original.</source>
   <translation>Ihr Bild ist links-rechts vertauscht: das Foto war schon gespiegelt, bevor es gelesen wurde; lesen Sie das Original ein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Its picture is mirrored, as a back's is on reading.</source>
   <translation>Ihr Bild ist gespiegelt, wie es das einer Rückseite beim Lesen ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Its picture lies end for end to the face's; tie the back to the face first.</source>
   <translation>Ihr Bild liegt Kopf gegen Fuß zu dem der Vorderseite; binden Sie zuerst die Rückseite an die Vorderseite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Keep the lipping narrow, or set it after veneering.</source>
   <translation>Halten Sie den Anleimer schmal, oder setzen Sie ihn nach dem Furnieren an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>Lay each leaf as its picture shows it, the side named below up. Chalk the number near the top end, with a line along that end, on the side that is up.</source>
   <translation>Legen Sie jedes Blatt, wie sein Bild es zeigt, mit der unten genannten Seite nach oben. Schreiben Sie mit Kreide die Nummer ans Kopfende, mit einem Strich längs dieses Endes, auf die obere Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}, and the bundle says the opposite: change it.</source>
   <translation>Blatt 2 lag über Blatt 1, und so weiter, von der fotografierten Seite gesehen: nachgewiesen durch {by}, und das Paket sagt das Gegenteil: ändern Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}, as the bundle says.</source>
   <translation>Blatt 2 lag über Blatt 1, und so weiter, von der fotografierten Seite gesehen: nachgewiesen durch {by}, wie das Paket sagt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}; the bundle does not say so yet.</source>
   <translation>Blatt 2 lag über Blatt 1, und so weiter, von der fotografierten Seite gesehen: nachgewiesen durch {by}; das Paket sagt es noch nicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}, and the bundle says the opposite: change it.</source>
   <translation>Blatt 2 lag unter Blatt 1, und so weiter, von der fotografierten Seite gesehen: nachgewiesen durch {by}, und das Paket sagt das Gegenteil: ändern Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}, as the bundle says.</source>
   <translation>Blatt 2 lag unter Blatt 1, und so weiter, von der fotografierten Seite gesehen: nachgewiesen durch {by}, wie das Paket sagt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}; the bundle does not say so yet.</source>
   <translation>Blatt 2 lag unter Blatt 1, und so weiter, von der fotografierten Seite gesehen: nachgewiesen durch {by}; das Paket sagt es noch nicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Leaf {leaf} has no frame of the log; give one for every leaf (targets or its outline) or for none.</source>
   <translation>Blatt {leaf} hat keinen Rahmen des Stamms; geben Sie für jedes Blatt einen (Marken oder sein Umriss) oder für keines.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Leaf {leaf} has {count} marks and leaf {first} has {wanted}; pick the same points of the figure on every leaf.</source>
   <translation>Blatt {leaf} hat {count} Marken und Blatt {first} hat {wanted}; setzen Sie auf jedem Blatt dieselben Punkte der Textur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Leaf {leaf} has {count} marks; pick at least two on every leaf.</source>
   <translation>Blatt {leaf} hat {count} Marken; setzen Sie auf jedem Blatt mindestens zwei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is out of place: it belongs after leaf {before}, at the end.</source>
   <translation>Blatt {leaf} ist am falschen Platz: es gehört nach Blatt {before}, ans Ende.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is out of place: it belongs before leaf {after}, at the end.</source>
   <translation>Blatt {leaf} ist am falschen Platz: es gehört vor Blatt {after}, ans Ende.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is out of place: it belongs between leaves {before} and {after}.</source>
   <translation>Blatt {leaf} ist am falschen Platz: es gehört zwischen die Blätter {before} und {after}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is turned over end over end: its figure is that of the others upside down.</source>
   <translation>Blatt {leaf} ist über Kopf gewendet: seine Textur ist die der anderen, oben-unten gespiegelt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is turned over or lies end for end, which look alike in this figure: look at the leaf itself.</source>
   <translation>Blatt {leaf} ist gewendet oder liegt Kopf gegen Fuß, was in dieser Textur gleich aussieht: sehen Sie das Blatt selbst an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is turned over: its figure is that of the others mirrored left-right.</source>
   <translation>Blatt {leaf} ist gewendet: seine Textur ist die der anderen, links-rechts gespiegelt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} lies end for end: turn its photograph by 180 degrees.</source>
   <translation>Blatt {leaf} liegt Kopf gegen Fuß: drehen Sie sein Foto um 180 Grad.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies where its register has it, to {off} mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm it.</source>
   <translation>Blatt {leaf} liegt, wo seine Lage es hat, auf {off} mm und {turn} Grad, was das Foto auf {unsure} mm sagt; bis {tolerance} mm und {most} Grad bestätigen es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/seen.py" />
   <source>Leaf {leaf} lies {below} mm below the topmost and is seen smaller; say how far above the topmost leaf the camera was.</source>
   <translation>Blatt {leaf} liegt {below} mm unter dem obersten und wird kleiner gesehen; sagen Sie, wie hoch über dem obersten Blatt die Kamera war.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off its register.</source>
   <translation>Blatt {leaf} liegt {off} mm neben seiner Lage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off its register: {way}.</source>
   <translation>Blatt {leaf} liegt {off} mm neben seiner Lage: {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where all marks together have it: {way}; too few leaves agree to tell which lie wrong.</source>
   <translation>Blatt {leaf} liegt {off} mm neben dem Platz, den alle Marken zusammen ergeben: {way}; zu wenige Blätter stimmen überein, um zu sagen, welche falsch liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where all marks together have it; too few leaves agree to tell which lie wrong.</source>
   <translation>Blatt {leaf} liegt {off} mm neben dem Platz, den alle Marken zusammen ergeben; zu wenige Blätter stimmen überein, um zu sagen, welche falsch liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where it belongs on leaf {other}: {way}; two leaves do not tell which of them lies wrong.</source>
   <translation>Blatt {leaf} liegt {off} mm neben dem Platz, an den es auf Blatt {other} gehört: {way}; zwei Blätter sagen nicht, welches von ihnen falsch liegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where it belongs on leaf {other}; two leaves do not tell which of them lies wrong.</source>
   <translation>Blatt {leaf} liegt {off} mm neben dem Platz, an den es auf Blatt {other} gehört; zwei Blätter sagen nicht, welches von ihnen falsch liegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/chain.py" />
   <source>Leaf {leaf} shows figure on too little of its usable area to be registered; check its scale and its usable area, or leave it out.</source>
   <translation>Blatt {leaf} zeigt auf zu wenig seiner nutzbaren Fläche Textur, um ausgerichtet zu werden; prüfen Sie Maßstab und nutzbare Fläche, oder lassen Sie es weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} shows nothing of the others' figure, whichever way it lies: it does not belong to this bundle.</source>
   <translation>Blatt {leaf} zeigt nichts von der Textur der anderen, wie herum es auch liegt: es gehört nicht zu diesem Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Leaf {leaf} was not registered with the others; register the bundle again.</source>
   <translation>Blatt {leaf} wurde nicht mit den anderen ausgerichtet; richten Sie das Paket noch einmal aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Leave the marks on until the leaf is pinned and cut.</source>
   <translation>Die Marken daran lassen, bis das Blatt gestiftet und geschnitten ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Leaves are joined out of their order on purpose.</source>
   <translation>Die Blätter sind mit Absicht außer der Reihe gefügt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Leaves go in order down a column, then to the column beside it.</source>
   <translation>Die Blätter gehen der Reihe nach eine Spalte hinab, dann zur Spalte daneben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Leaves lie side by side in order, none turned.</source>
   <translation>Die Blätter liegen der Reihe nach nebeneinander, keines gewendet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaves {leaf} and {other} are one leaf photographed twice.</source>
   <translation>Die Blätter {leaf} und {other} sind ein Blatt, zweimal fotografiert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaves {leaf} and {other} are the same photograph.</source>
   <translation>Die Blätter {leaf} und {other} sind dasselbe Foto.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaves {leaf} and {other} have changed places.</source>
   <translation>Die Blätter {leaf} und {other} haben die Plätze getauscht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaves {leaves} lie where their registers have them, to {off} mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm them.</source>
   <translation>Die Blätter {leaves} liegen, wo ihre Lagen sie haben, auf {off} mm und {turn} Grad, was das Foto auf {unsure} mm sagt; bis {tolerance} mm und {most} Grad bestätigen sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/renumbering.py" />
   <source>Leaves {one} and {other} would both get the number {number}; give each its own.</source>
   <translation>Die Blätter {one} und {other} bekämen beide die Nummer {number}; geben Sie jedem seine eigene.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaves {other} and {leaf} lie on each other as their registers have it, to {off} mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm them.</source>
   <translation>Die Blätter {other} und {leaf} liegen aufeinander, wie ihre Lagen es haben, auf {off} mm und {turn} Grad, was das Foto auf {unsure} mm sagt; bis {tolerance} mm und {most} Grad bestätigen sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Let the stack follow the figure, the log or marks, unless all were photographed in one jig.</source>
   <translation>Lassen Sie den Stapel der Textur, dem Stamm oder Marken folgen, wenn nicht alle in einer Lehre fotografiert wurden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>Light evened from the {light}, as measured on these photographs: gains from {least} to {most}; the photographs themselves are unchanged.</source>
   <translation>Licht ausgeglichen nach {light}, auf diesen Fotos gemessen: Verstärkungen von {least} bis {most}; die Fotos selbst sind unverändert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>Look at those leaves one over the other, prove the order, photograph them again, or pick marks by hand.</source>
   <translation>Sehen Sie diese Blätter übereinander an, weisen Sie die Reihenfolge nach, fotografieren Sie sie noch einmal, oder setzen Sie Marken von Hand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Make a run of its own of what lies apart.</source>
   <translation>Machen Sie aus dem, was abseits liegt, eine eigene Folge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Make both alike.</source>
   <translation>Machen Sie beide gleich.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>Mark {letter} lies {off} mm off the place that was given for it; measure the places of the marks again, and see that each has its own letter.</source>
   <translation>Marke {letter} liegt {off} mm neben dem Ort, der für sie gegeben wurde; messen Sie die Orte der Marken noch einmal, und sehen Sie nach, dass jede ihren eigenen Buchstaben hat.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Mark {mark} of leaf {leaf} lies off its photograph; pick it again.</source>
   <translation>Marke {mark} von Blatt {leaf} liegt neben seinem Foto; setzen Sie sie noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Marks for leaf {leaf}</source>
   <translation>Marken für Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Marks for leaves {leaves}</source>
   <translation>Marken für die Blätter {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Marks {a} and {b} lie {there} mm apart on leaf {first} and {here} mm on leaf {leaf}, {worst} mm more or less; up to {most} mm is a matter of picking, so pick the same points again.</source>
   <translation>Die Marken {a} und {b} liegen auf Blatt {first} {there} mm auseinander und auf Blatt {leaf} {here} mm, {worst} mm mehr oder weniger; bis {most} mm liegt am Setzen, setzen Sie also dieselben Punkte noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Marks {a} and {b} of leaf {leaf} lie {distance} mm apart; pick marks at least {least} mm from each other, better near both ends of the leaf.</source>
   <translation>Die Marken {a} und {b} von Blatt {leaf} liegen {distance} mm auseinander; setzen Sie Marken mindestens {least} mm voneinander, besser an beiden Enden des Blatts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/scaling.py" />
   <source>Marks {one} and {other} are the same mark; click each once.</source>
   <translation>Die Marken {one} und {other} sind dieselbe Marke; klicken Sie jede einmal an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Measure from cross to cross by a steel rule. One distance gives a photo its scale; four</source>
   <translation>Mit einem Stahllineal von Kreuz zu Kreuz messen. Ein Abstand gibt einem Foto seinen Maßstab; vier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm down the leaf and {aside} mm to the left.</source>
   <translation>Gemessen an {of}: von der Vorderseite zur Rückseite wandert die Textur {up} mm auf dem Blatt abwärts und {aside} mm nach links.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm down the leaf and {aside} mm to the right.</source>
   <translation>Gemessen an {of}: von der Vorderseite zur Rückseite wandert die Textur {up} mm auf dem Blatt abwärts und {aside} mm nach rechts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm up the leaf and {aside} mm to the left.</source>
   <translation>Gemessen an {of}: von der Vorderseite zur Rückseite wandert die Textur {up} mm auf dem Blatt aufwärts und {aside} mm nach links.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm up the leaf and {aside} mm to the right.</source>
   <translation>Gemessen an {of}: von der Vorderseite zur Rückseite wandert die Textur {up} mm auf dem Blatt aufwärts und {aside} mm nach rechts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Move one of the cuts, or take other leaves for it.</source>
   <translation>Verschieben Sie einen der Zuschnitte, oder nehmen Sie andere Blätter dafür.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Move the cut, or take other leaves.</source>
   <translation>Verschieben Sie den Zuschnitt, oder nehmen Sie andere Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Move the cuts, or take other leaves.</source>
   <translation>Verschieben Sie die Zuschnitte, oder nehmen Sie andere Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Move the leaf, or take another.</source>
   <translation>Verschieben Sie das Blatt, oder nehmen Sie ein anderes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Move the leaf, turn the grain, or take a larger leaf.</source>
   <translation>Verschieben Sie das Blatt, drehen Sie die Faser, oder nehmen Sie ein größeres Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>Move the seams or the centre a little, or take other numbers or widths.</source>
   <translation>Rücken Sie die Fugen oder die Mitte ein wenig, oder nehmen Sie andere Zahlen oder Breiten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Move the wedge, or take other leaves.</source>
   <translation>Verschieben Sie den Keil, oder nehmen Sie andere Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Moved by {across} mm across the leaves and {along} mm along them it fits.</source>
   <translation>Um {across} mm quer und {along} mm längs der Blätter verschoben passt es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>Neither outline nor figure shows which end is which: say so, or mark points on both sides.</source>
   <translation>Weder Umriss noch Textur zeigt, welches Ende welches ist: sagen Sie es, oder setzen Sie auf beiden Seiten Punkte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>No back was photographed, so that how far the figure wanders from surface to surface is unknown; book seams may miss by {miss} mm {basis}.</source>
   <translation>Keine Rückseite wurde fotografiert, also ist nicht bekannt, wie weit die Textur von Fläche zu Fläche wandert; gestürzte Fugen können sich um {miss} mm verfehlen {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>No back was photographed, so that the stack's sense is as it was said, not proved; photograph the back of one leaf to prove it.</source>
   <translation>Keine Rückseite wurde fotografiert, der Sinn des Stapels ist also, wie gesagt wurde, nicht nachgewiesen; fotografieren Sie die Rückseite eines Blatts, um ihn nachzuweisen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/maps.py" />
   <source>No leaf has a usable area; draw what may be used on the leaves.</source>
   <translation>Kein Blatt hat eine nutzbare Fläche; zeichnen Sie auf die Blätter, was nutzbar ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>No leaf stands out from the background; photograph it on a sheet or table of another colour, or draw its outline by hand.</source>
   <translation>Kein Blatt hebt sich vom Grund ab; fotografieren Sie es auf einem Bogen oder Tisch anderer Farbe, oder zeichnen Sie seinen Umriss von Hand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>No piece of this match lies on the top; make it larger.</source>
   <translation>Kein Teil dieses Furnierbilds liegt auf der Platte; machen Sie sie größer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>No two of these photographs show the same figure, so nothing can be proved; are they of one bundle, upright and at their true scale?</source>
   <translation>Keine zwei dieser Fotos zeigen dieselbe Textur, also lässt sich nichts nachweisen; sind sie aus einem Paket, aufrecht und in ihrem wahren Maßstab?</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Nothing of leaf {leaf} may be used; outline its usable area again.</source>
   <translation>Nichts von Blatt {leaf} ist nutzbar; umreißen Sie seine nutzbare Fläche noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Nothing of leaves {leaves} comes onto a panel: they would lie wholly beside the panels.</source>
   <translation>Nichts von den Blättern {leaves} kommt auf eine Front: sie lägen ganz neben den Fronten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Nothing of leaves {leaves} comes onto a panel: they would lie wholly in a gap (the widest is {gap} mm) or beside the panels.</source>
   <translation>Nichts von den Blättern {leaves} kommt auf eine Front: sie lägen ganz in einem Spalt (der breiteste hat {gap} mm) oder neben den Fronten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>Nothing of the leaves can be used for a top of this shape; look at the usable areas, the margin and the oversize.</source>
   <translation>Nichts von den Blättern ist für eine Platte dieser Form nutzbar; sehen Sie die nutzbaren Flächen, den Rand und das Übermaß an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>On panel {panel} the two bundles meet (leaf {before} is the first's last, leaf {after} the second's first), at the seam of positions {seams}, counted as {missing} missing leaf: a step of {step} surfaces.</source>
   <translation>Auf Front {panel} treffen sich die beiden Pakete (Blatt {before} ist das letzte des ersten, Blatt {after} das erste des zweiten), an der Fuge der Plätze {seams}, als {missing} fehlendes Blatt gezählt: ein Schritt von {step} Flächen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>On panel {panel} the two bundles meet (leaf {before} is the first's last, leaf {after} the second's first), at the seam of positions {seams}, counted as {missing} missing leaves: a step of {step} surfaces.</source>
   <translation>Auf Front {panel} treffen sich die beiden Pakete (Blatt {before} ist das letzte des ersten, Blatt {after} das erste des zweiten), an der Fuge der Plätze {seams}, als {missing} fehlende Blätter gezählt: ein Schritt von {step} Flächen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>One back tells nothing of how steady that is; photograph another.</source>
   <translation>Eine Rückseite sagt nicht, wie stetig das ist; fotografieren Sie eine weitere.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>One corner lies inside the other three, as no rectangle's does; click the four corners of the rectangle, each once.</source>
   <translation>Eine Ecke liegt zwischen den drei anderen, wie bei keinem Rechteck; klicken Sie die vier Ecken des Rechtecks an, jede einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>One field over several panels has no disc in its middle and no straight rim; leave them out, or lay the panels in sequence.</source>
   <translation>Ein Feld über mehrere Fronten hat keine Scheibe in der Mitte und keinen geraden Rand; lassen Sie sie weg, oder legen Sie die Fronten in Folge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>One leaf has no order to prove.</source>
   <translation>Ein Blatt hat keine Reihenfolge nachzuweisen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>One leaf's marks alone confirm nothing; click two pins too, or marks of other leaves of the stack.</source>
   <translation>Die Marken eines Blatts allein bestätigen nichts; klicken Sie auch zwei Stifte an, oder Marken anderer Blätter des Stapels.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>One mark of leaf {leaf} does not tell where the pins stand on it; click another one.</source>
   <translation>Eine Marke von Blatt {leaf} sagt nicht, wo die Stifte darauf stehen; klicken Sie eine weitere an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>One misses by {worst} mm, too much for one leaf: see whether the marks are paired rightly, and both scales.</source>
   <translation>Eine verfehlt sich um {worst} mm, zu viel für ein Blatt: sehen Sie nach, ob die Marken richtig gepaart sind, und beide Maßstäbe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>One pin does not tell how a leaf is turned; click the other one too.</source>
   <translation>Ein Stift sagt nicht, wie ein Blatt gedreht ist; klicken Sie auch den anderen an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Page {page} of {pages}</source>
   <translation>Seite {page} von {pages}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Panel end match</source>
   <translation>Kopfsturz, Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Panel {panels}:</source>
   <translation>Front {panels}:</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>Panels in sequence are of one size, and panel {panel} is {by} than panel 1 ({width} by {height} mm): make them alike, leave it out, or lay one field over all of them.</source>
   <translation>Fronten in Folge sind gleich groß, und Front {panel} ist {by} als Front 1 ({width} mal {height} mm): machen Sie sie gleich, lassen Sie sie weg, oder legen Sie ein Feld über alle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>Panels {a} and {b} lie over each other by {over} mm2; choose each place once.</source>
   <translation>Die Fronten {a} und {b} liegen um {over} mm2 übereinander; wählen Sie jede Stelle einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Panels {panels}:</source>
   <translation>Fronten {panels}:</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Part it in segments where the grain shall follow the edge.</source>
   <translation>Teilen Sie ihn, wo die Faser der Kante folgen soll.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Photograph the backs of those leaves, or give the bundle's slope.</source>
   <translation>Fotografieren Sie die Rückseiten dieser Blätter, oder geben Sie die Neigung des Pakets an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Photograph the backs of those leaves.</source>
   <translation>Fotografieren Sie die Rückseiten dieser Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Photograph two or three backs, or stick targets on, to know.</source>
   <translation>Fotografieren Sie zwei oder drei Rückseiten, oder kleben Sie Marken auf, um es zu wissen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Photograph two or three backs, stick targets on, or give the slope of the stem.</source>
   <translation>Fotografieren Sie zwei oder drei Rückseiten, kleben Sie Marken auf, oder geben Sie die Neigung des Stamms an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Photograph two or three backs.</source>
   <translation>Fotografieren Sie zwei oder drei Rückseiten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>Pieces at positions {pieces} are smaller than {limit} mm2, the one at {a} has only {area} mm2: such crumbs are lost or broken in cutting.</source>
   <translation>Die Teile auf den Plätzen {pieces} sind kleiner als {limit} mm2, das auf {a} hat nur {area} mm2: solche Krümel gehen beim Schneiden verloren oder brechen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Pieces at positions {pieces} overlap on their leaves ({leaves}).</source>
   <translation>Die Teile auf den Plätzen {pieces} überlappen auf ihren Blättern ({leaves}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Pieces of panels {panels} are slivers under {least} mm; the narrowest, position {a} of panel {b}, is {width} mm wide.</source>
   <translation>Teile der Fronten {panels} sind Splitter unter {least} mm; das schmalste, Platz {a} der Front {b}, ist {width} mm breit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Places on a photograph are pairs of numbers: column and row.</source>
   <translation>Orte auf einem Foto sind Zahlenpaare: Spalte und Zeile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Point {number} (column {column}, row {row}) lies outside the picture of {columns} x {rows} pixels; click it on the picture.</source>
   <translation>Punkt {number} (Spalte {column}, Zeile {row}) liegt außerhalb des Bilds von {columns} x {rows} Pixeln; klicken Sie ihn auf dem Bild an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Positions {pieces} show the other side of their leaves, so light and stain read otherwise on them: natural where leaves are turned over, not a defect.</source>
   <translation>Die Plätze {pieces} zeigen die andere Seite ihrer Blätter, also wirken Licht und Beize auf ihnen anders: natürlich, wo Blätter gewendet sind, kein Fehler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Positions {pieces} show the other side of their leaves, so tight and loose sides alternate and light and stain read in bars: natural to a book match, not a defect.</source>
   <translation>Die Plätze {pieces} zeigen die andere Seite ihrer Blätter, also wechseln geschlossene und offene Seiten, und Licht und Beize wirken streifig: natürlich bei gestürztem Furnier, kein Fehler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Print at 100 %, do not fit to page. Lay a rule on both bars: {bar} mm, or print again.</source>
   <translation>Mit 100 % drucken, nicht an die Seite anpassen. Ein Lineal an beide Balken legen: {bar} mm, sonst noch einmal drucken.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial book match</source>
   <translation>Sternbild, gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Radial match</source>
   <translation>Sternbild</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Radial match in strips</source>
   <translation>Sternbild in Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Radial match in two rings</source>
   <translation>Sternbild in zwei Ringen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial match off the middle</source>
   <translation>Sternbild außer der Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial match round a disc</source>
   <translation>Sternbild um eine Scheibe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial slip match</source>
   <translation>Sternbild, geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Random match</source>
   <translation>Gemischt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>Register by the pieces of the match, take an order whose largest step is less, or another place on the leaves.</source>
   <translation>Richten Sie nach den Teilen des Furnierbilds aus, nehmen Sie eine Reihenfolge mit kleinerem größten Schritt, oder eine andere Stelle auf den Blättern.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Reverse box match</source>
   <translation>Vier Spiegel, quer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Reverse diamond match</source>
   <translation>Gegenraute</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Reverse slip match</source>
   <translation>Geschoben, wechselnd</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Ring planes at {slope} deg to the leaf would wander as far.</source>
   <translation>Ringebenen unter {slope} Grad zum Blatt wanderten so weit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Row upon row, each in order, end to end up the wall.</source>
   <translation>Reihe auf Reihe, jede der Reihe nach, Kopf an Kopf die Wand hinauf.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>Row {row} has more cells than the first row names; put a text or number that holds the separator of cells into quotation marks.</source>
   <translation>Zeile {row} hat mehr Zellen, als die erste Zeile nennt; setzen Sie einen Text oder eine Zahl, die das Trennzeichen der Zellen enthält, in Anführungszeichen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>Row {row} has the number {cell} where the currency should be; put a number that holds the separator of cells into quotation marks.</source>
   <translation>Zeile {row} hat die Zahl {cell}, wo die Währung stehen sollte; setzen Sie eine Zahl, die das Trennzeichen der Zellen enthält, in Anführungszeichen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>Row {row}, column {column}: {said}</source>
   <translation>Zeile {row}, Spalte {column}: {said}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Running match</source>
   <translation>Laufend</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Say in which air the panel is made and in which it will stand.</source>
   <translation>Sagen Sie, in welcher Luft die Platte gemacht wird und in welcher sie stehen wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Say the scale of the photograph in one way: mm per pixel, two points and their distance, four corners and the rectangle's width and length, or paper marks.</source>
   <translation>Sagen Sie den Maßstab des Fotos auf eine Art: mm je Pixel, zwei Punkte und ihr Abstand, vier Ecken und Breite und Länge des Rechtecks, oder Papiermarken.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>See that each mark has its own letter, and click on pins closer up; else photograph again from straight above and from nearer, sharp and in even light.</source>
   <translation>Sehen Sie nach, dass jede Marke ihren eigenen Buchstaben hat, und klicken Sie Stifte näher herangezoomt an; sonst fotografieren Sie noch einmal gerade von oben und aus der Nähe, scharf und in gleichmäßigem Licht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Slip match</source>
   <translation>Geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Slip, centre book match</source>
   <translation>Geschoben, Mitte gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>So few leaves share no drift that could be told from how each photograph lay.</source>
   <translation>So wenige Blätter haben keine gemeinsame Drift, die sich davon unterscheiden ließe, wie jedes Foto lag.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Stacked so, the usable areas of the leaves have no place in common.</source>
   <translation>So gestapelt haben die nutzbaren Flächen der Blätter keine Stelle gemeinsam.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Stacked so, the {leaves} leaves have {across} x {along} mm in common, {lost_along} mm of length and {lost_across} mm of width less than the smallest leaf.</source>
   <translation>So gestapelt haben die {leaves} Blätter {across} x {along} mm gemeinsam, {lost_along} mm Länge und {lost_across} mm Breite weniger als das kleinste Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Stick {count} on each leaf before it is photographed: far apart, flat, arrow up along the</source>
   <translation>Auf jedes Blatt, bevor es fotografiert wird, kleben: {count}; weit auseinander, flach, Pfeil aufwärts längs der</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>Stopped: none of the photographs was brought in.</source>
   <translation>Angehalten: keines der Fotos wurde eingelesen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Strips slant away from both sides of an upright centre line.</source>
   <translation>Streifen laufen schräg von beiden Seiten einer aufrechten Mittellinie weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Strips {strip} mm wide are slivers; take {least} mm or more.</source>
   <translation>Streifen von {strip} mm Breite sind Splitter; nehmen Sie {least} mm oder mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Strips {strip} mm wide need {count} leaves and from leaf {first} on there are {have}; take strips of {wider} mm, an earlier first leaf, or a larger bundle.</source>
   <translation>Streifen von {strip} mm Breite brauchen {count} Blätter, und ab Blatt {first} sind es {have}; nehmen Sie Streifen von {wider} mm, ein früheres erstes Blatt, oder ein größeres Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Take a backer of the same thickness and a wood that moves alike.</source>
   <translation>Nehmen Sie ein Gegenfurnier gleicher Dicke und ein Holz, das gleich arbeitet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Take a core of sheet goods, or lip only the sides that run along its grain.</source>
   <translation>Nehmen Sie einen Träger aus Plattenwerkstoff, oder leimen Sie nur die Seiten an, die mit seiner Faser laufen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Take a core of sheet goods; else fix the top so that it can move, and veneer across the core's grain.</source>
   <translation>Nehmen Sie einen Träger aus Plattenwerkstoff; sonst befestigen Sie die Platte so, dass sie arbeiten kann, und furnieren Sie quer zur Faser des Trägers.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Take an even number of ways, with every second piece turned.</source>
   <translation>Nehmen Sie eine gerade Zahl von Keilen, und jedes zweite Teil gewendet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Take another number of leaves or width of strip.</source>
   <translation>Nehmen Sie eine andere Zahl von Blättern oder Streifenbreite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Take fewer panels, or a bundle with {missing} more.</source>
   <translation>Nehmen Sie weniger Fronten, oder ein Paket mit {missing} mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Take fewer pieces, or a bundle with {missing} more.</source>
   <translation>Nehmen Sie weniger Teile, oder ein Paket mit {missing} mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Take fewer ways, or a bundle with {missing} more.</source>
   <translation>Nehmen Sie weniger Keile, oder ein Paket mit {missing} mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Take fewer ways, or plan a disc at the centre that hides the tips.</source>
   <translation>Nehmen Sie weniger Keile, oder planen Sie in der Mitte eine Scheibe, die die Spitzen verdeckt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Take mitres of 45 degrees: two of them mirror.</source>
   <translation>Nehmen Sie Gehrungen von 45 Grad: zwei davon spiegeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Take other leaves, or less margin.</source>
   <translation>Nehmen Sie andere Blätter, oder weniger Rand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Tape its strips before they are cut, and join each from as few pieces as can be.</source>
   <translation>Überkleben Sie seine Streifen, bevor sie geschnitten werden, und setzen Sie jeden aus so wenigen Stücken wie möglich zusammen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>That leaves nothing of leaf {leaf}, whose usable area is {width} x {length} mm; take off less.</source>
   <translation>Das lässt nichts von Blatt {leaf}, dessen nutzbare Fläche {width} x {length} mm hat; nehmen Sie weniger weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>That match cannot be laid over a run of panels; take a side, end, four-piece or plain radial match.</source>
   <translation>Dieses Furnierbild lässt sich nicht über eine Folge von Fronten legen; nehmen Sie eines in Reihe, einen Kopfsturz, vier Teile oder ein einfaches Sternbild.</translation>
  </message>
  <message>
   <location filename="veneerwb/packages.py" />
   <source>The Python package {package} is there but cannot be loaded ({why}); remove it, run this in a terminal and start FreeCAD again: {command}</source>
   <translation>Das Python-Paket {package} ist da, lässt sich aber nicht laden ({why}); entfernen Sie es, führen Sie dies in einem Terminal aus und starten Sie FreeCAD neu: {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>The angle between figure and leaf cannot be {slope} degrees; give one from 0 to {most}.</source>
   <translation>Der Winkel zwischen Textur und Blatt kann nicht {slope} Grad sein; geben Sie einen von 0 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The back of leaf {leaf} and the face of leaf {other} are one surface ({likeness} alike, and a step of one leaf is {step}).</source>
   <translation>Die Rückseite von Blatt {leaf} und die Vorderseite von Blatt {other} sind eine Fläche ({likeness} ähnlich, und ein Schritt von einem Blatt ist {step}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} does not fit its face: the outlines agree on only {share} % of their length. See whether both photographs are of this leaf and whole, and whether the back's was mirrored already.</source>
   <translation>Die Rückseite von Blatt {leaf} passt nicht zu seiner Vorderseite: die Umrisse stimmen nur auf {share} % ihrer Länge überein. Sehen Sie nach, ob beide Fotos von diesem Blatt und ganz sind, und ob das der Rückseite schon gespiegelt war.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The back of leaf {leaf} is not clearly one surface with any face (at best {likeness} alike, and a step of one leaf is {step}).</source>
   <translation>Die Rückseite von Blatt {leaf} ist nicht deutlich eine Fläche mit irgendeiner Vorderseite (bestenfalls {likeness} ähnlich, und ein Schritt von einem Blatt ist {step}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} is tied by its outline, turned by {turn} deg; the two outlines agree on {share} % of their length, where they lie {rms} mm apart (rms).</source>
   <translation>Die Rückseite von Blatt {leaf} ist nach ihrem Umriss gebunden, um {turn} Grad gedreht; die beiden Umrisse stimmen auf {share} % ihrer Länge überein, wo sie {rms} mm auseinander liegen (rms).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} is tied by {marks} marks, which lie {rms} mm apart (rms).</source>
   <translation>Die Rückseite von Blatt {leaf} ist nach {marks} Marken gebunden, die {rms} mm auseinander liegen (rms).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} was not photographed; add its photograph first.</source>
   <translation>Die Rückseite von Blatt {leaf} wurde nicht fotografiert; fügen Sie zuerst ihr Foto hinzu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>The back of leaf {leaf} was not photographed; its face is shown, mirrored.</source>
   <translation>Die Rückseite von Blatt {leaf} wurde nicht fotografiert; seine Vorderseite wird gespiegelt gezeigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The backer ({wood}, {backer} mm) is unlike the show veneer ({show_wood}, {show} mm), so the two sides pull unlike and the panel may cup.</source>
   <translation>Das Gegenfurnier ({wood}, {backer} mm) ist anders als das Deckfurnier ({show_wood}, {show} mm), also ziehen die beiden Seiten verschieden, und die Platte kann sich verziehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>The backs agree to {spread} mm.</source>
   <translation>Die Rückseiten stimmen auf {spread} mm überein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The backs at positions {pieces} were not photographed: their pictures are taken from the neighbouring leaf or the face, and the seams may miss by {may_miss} mm {basis}.</source>
   <translation>Die Rückseiten auf den Plätzen {pieces} wurden nicht fotografiert: ihre Bilder stammen vom Nachbarblatt oder von der Vorderseite, und die Fugen können sich um {may_miss} mm verfehlen {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The backs contradict each other: part of the bundle is numbered the other way, or leaves are out of place.</source>
   <translation>Die Rückseiten widersprechen einander: ein Teil des Pakets ist anders herum nummeriert, oder Blätter sind am falschen Platz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>The backs differ by {spread} mm, so that this wander holds for no other leaf; photograph all that are turned.</source>
   <translation>Die Rückseiten sind um {spread} mm verschieden, dieses Wandern gilt also für kein anderes Blatt; fotografieren Sie alle, die gewendet werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>The blanks at positions {pieces} reach up to {overhang} mm off the usable area of their leaves ({leaves}), with a margin of {margin} mm.</source>
   <translation>Die Rohteile auf den Plätzen {pieces} reichen bis zu {overhang} mm über die nutzbare Fläche ihrer Blätter ({leaves}) hinaus, bei einem Rand von {margin} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The border is a ring in one, so its grain runs one way all round and not with the edge.</source>
   <translation>Der Fries ist ein Ring in einem Stück, also läuft seine Faser ringsum in eine Richtung und nicht mit der Kante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The border is of {count} parts, and its grain runs on from one to the next only if they come from one run of veneer in order.</source>
   <translation>Der Fries hat {count} Teile, und seine Faser läuft nur dann von einem zum nächsten weiter, wenn sie der Reihe nach aus einem Furnier kommen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/renumbering.py" />
   <source>The bundle has no leaf {leaf}, so that it cannot be given another number.</source>
   <translation>Das Paket hat kein Blatt {leaf}, es kann also keine andere Nummer bekommen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>The bundle has no leaf {leaf}; it has {numbers}.</source>
   <translation>Das Paket hat kein Blatt {leaf}; es hat {numbers}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>The bundle has no leaves; add at least one photograph.</source>
   <translation>Das Paket hat keine Blätter; fügen Sie mindestens ein Foto hinzu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The climates cannot be {value!r:.40}; give two: the air that the panel is made in, and the air that it will stand in.</source>
   <translation>Die Klimata können nicht {value!r:.40} sein; geben Sie zwei: die Luft, in der die Platte gemacht wird, und die, in der sie stehen wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The core is solid and moves across its grain, and the lipping across its ends does not move along with it: their joint will give, or the core split.</source>
   <translation>Der Träger ist massiv und arbeitet quer zur Faser, und der Anleimer an seinen Enden geht nicht mit: ihre Fuge wird nachgeben, oder der Träger reißt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The corners do not look like a rectangle of {width} x {length} mm; check both sizes, and that each corner is clicked once.</source>
   <translation>Die Ecken sehen nicht nach einem Rechteck von {width} x {length} mm aus; prüfen Sie beide Maße, und dass jede Ecke einmal angeklickt ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The crossbands differ in thickness, wood or grain, so the panel may cup.</source>
   <translation>Die Absperrfurniere sind in Dicke, Holz oder Faser verschieden, also kann die Platte sich verziehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The edge of the inner field is a seam, along which no oversize is cut; give the oversize to the outer band.</source>
   <translation>Die Kante des inneren Feldes ist eine Fuge, an der kein Übermaß geschnitten wird; geben Sie das Übermaß dem äußeren Band.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>The ends of a boat shape cannot be {ends} mm wide where its middle is {width} mm: give less than {width} mm.</source>
   <translation>Die Enden einer Bootsform können nicht {ends} mm breit sein, wo ihre Mitte {width} mm hat: geben Sie weniger als {width} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The figure behind the gaps ({gaps}, up to {gap} mm wide) is lost.</source>
   <translation>Die Textur hinter den Spalten ({gaps}, bis zu {gap} mm breit) ist verloren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The figure is more alike end for end than the way the outline fits: see whether both photographs are of this leaf.</source>
   <translation>Die Textur ist Kopf gegen Fuß ähnlicher als so herum, wie der Umriss passt: sehen Sie nach, ob beide Fotos von diesem Blatt sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The figure is too plain to tell: it runs so straight that it looks the same all along the leaf, and neither the order nor a gap can be proved from these photographs.</source>
   <translation>Die Textur ist zu schlicht, um es zu sagen: sie läuft so gerade, dass sie längs des ganzen Blatts gleich aussieht, und weder die Reihenfolge noch eine Lücke lässt sich aus diesen Fotos nachweisen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The figure's wander follows from the slope of {slope} deg given: {along} mm along from leaf to leaf (minus: towards the photographs' lower edge).</source>
   <translation>Das Wandern der Textur folgt aus der gegebenen Neigung von {slope} Grad: {along} mm längs von Blatt zu Blatt (minus: zur Unterkante der Fotos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The figure's wander was given: {across} mm across and {along} mm along from leaf to leaf (minus: to the left, and towards the photographs' lower edge).</source>
   <translation>Das Wandern der Textur wurde gegeben: {across} mm quer und {along} mm längs von Blatt zu Blatt (minus: nach links und zur Unterkante der Fotos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The file name {file} holds no number; put the number of the leaf in it.</source>
   <translation>Der Dateiname {file} enthält keine Zahl; setzen Sie die Nummer des Blatts hinein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} cannot be read ({reason}); check its name.</source>
   <translation>Die Datei {file} ist nicht lesbar ({reason}); prüfen Sie ihren Namen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/files.py" />
   <source>The file {file} could not be written ({reason}); choose a folder that you may write to and that has room.</source>
   <translation>Die Datei {file} konnte nicht geschrieben werden ({reason}); wählen Sie einen Ordner, in den Sie schreiben dürfen und der Platz hat.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} has more than {rows} rows or {columns} columns, which is no inventory; choose another file.</source>
   <translation>Die Datei {file} hat mehr als {rows} Zeilen oder {columns} Spalten, das ist kein Bestand; wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} has the column {column} twice; keep one.</source>
   <translation>Die Datei {file} hat die Spalte {column} zweimal; behalten Sie eine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The file {file} has {size} MB and at most {most} can be read; save it at a smaller size.</source>
   <translation>Die Datei {file} hat {size} MB, und höchstens {most} sind lesbar; speichern Sie sie kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} holds none of the columns of an inventory; its first line must name them, such as {columns}.</source>
   <translation>Die Datei {file} enthält keine der Spalten eines Bestands; ihre erste Zeile muss sie nennen, etwa {columns}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The file {file} is not a picture that can be read; give a PNG, JPEG, TIFF, BMP or WebP.</source>
   <translation>Die Datei {file} ist kein lesbares Bild; geben Sie PNG, JPEG, TIFF, BMP oder WebP.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} is not text in UTF-8; save it as CSV in UTF-8.</source>
   <translation>Die Datei {file} ist kein Text in UTF-8; speichern Sie sie als CSV in UTF-8.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The files {first} and {second} both carry the number {number}; rename one.</source>
   <translation>Die Dateien {first} und {second} tragen beide die Nummer {number}; benennen Sie eine um.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The folder {folder} cannot be read ({reason}); check its name.</source>
   <translation>Der Ordner {folder} ist nicht lesbar ({reason}); prüfen Sie seinen Namen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The folder {folder} holds no photos; it needs PNG, JPEG, TIFF, BMP or WebP files.</source>
   <translation>Der Ordner {folder} enthält keine Fotos; er braucht Dateien in PNG, JPEG, TIFF, BMP oder WebP.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The gains of a photo's light must be three numbers from {least} to {most}: for red, green and blue.</source>
   <translation>Die Verstärkungen des Lichts eines Fotos müssen drei Zahlen von {least} bis {most} sein: für Rot, Grün und Blau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The grain of a crossband lies at {angle} degrees to that of the core and does not cross it.</source>
   <translation>Die Faser eines Absperrfurniers liegt unter {angle} Grad zu der des Trägers und kreuzt sie nicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The grain of the border lies across it: over its {width} mm it is short and breaks in the hand.</source>
   <translation>Die Faser des Frieses liegt quer zu ihm: auf seinen {width} mm ist sie kurz und bricht in der Hand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The inlay reaches {reach} mm from the centre and the field only {room} mm; give it a diameter less than {most} mm.</source>
   <translation>Die Einlage reicht {reach} mm von der Mitte und das Feld nur {room} mm; geben Sie ihr einen Durchmesser unter {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The inlay reaches {reach} mm from the centre and the field only {room} mm; give it an outer radius less than {most} mm.</source>
   <translation>Die Einlage reicht {reach} mm von der Mitte und das Feld nur {room} mm; geben Sie ihr einen Außenradius unter {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The inner edge of a border {width} mm wide runs through the opening near ({x}, {y}): make the border narrower than {most} mm, or move the opening.</source>
   <translation>Die Innenkante eines Frieses von {width} mm Breite läuft bei ({x}, {y}) durch die Öffnung: machen Sie den Fries schmaler als {most} mm, oder verschieben Sie die Öffnung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The inner field does not lie within the top ({top}); make it smaller, or move its centre.</source>
   <translation>Das innere Feld liegt nicht innerhalb der Platte ({top}); machen Sie es kleiner, oder rücken Sie seine Mitte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The inner field does not lie within the top ({top}); make it {most} mm or less.</source>
   <translation>Das innere Feld liegt nicht innerhalb der Platte ({top}); machen Sie es {most} mm oder kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The inner field takes the leaves up to the last one, {last}, and none is left for the outer band; take fewer ways, or a larger bundle.</source>
   <translation>Das innere Feld braucht die Blätter bis zum letzten, {last}, und keines bleibt für das äußere Band; nehmen Sie weniger Keile, oder ein größeres Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>The joints of a {kind} {what} {width} mm wide cannot be made on this edge; make it at most {most} mm wide.</source>
   <translation>{what} ({kind}), {width} mm breit: die Fugen lassen sich auf dieser Kante nicht machen; nehmen Sie höchstens {most} mm Breite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The last number in the file name {file} is {number}, which no leaf has; give each file the number of its leaf, from 1 to {most}.</source>
   <translation>Die letzte Zahl im Dateinamen {file} ist {number}, die kein Blatt hat; geben Sie jeder Datei die Nummer ihres Blatts, von 1 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>The last of the strips would be {last} mm wide, a sliver under {least} mm: take strips of {narrower} mm or of {wider} mm.</source>
   <translation>Der letzte der Streifen wäre {last} mm breit, ein Splitter unter {least} mm: nehmen Sie Streifen von {narrower} mm oder von {wider} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The leaf fills the picture, so that no background is left to measure the light on; choose a patch instead.</source>
   <translation>Das Blatt füllt das Bild, es bleibt also kein Grund, um das Licht daran zu messen; wählen Sie statt dessen eine Stelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The leaf is {share} % larger than the others; check it.</source>
   <translation>Das Blatt ist {share} % größer als die anderen; prüfen Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The leaf is {share} % smaller than the others; check it.</source>
   <translation>Das Blatt ist {share} % kleiner als die anderen; prüfen Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The leaf runs out of the picture along {share} % of its outline; what lies beyond is not known.</source>
   <translation>Das Blatt läuft auf {share} % seines Umrisses aus dem Bild; was dahinter liegt, ist nicht bekannt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>The leaf's marks lie in one place, so nothing can be measured from them; locate them again.</source>
   <translation>Die Marken des Blatts liegen an einer Stelle, von ihnen aus lässt sich also nichts messen; orten Sie sie noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The leaf's outline is either found or drawn; choose one.</source>
   <translation>Der Umriss des Blatts wird entweder gefunden oder gezeichnet; wählen Sie eines.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/maps.py" />
   <source>The leaves are {width} x {length} mm together, which is too much to search; take fewer leaves or a larger top, or check the scale of the photographs.</source>
   <translation>Die Blätter sind zusammen {width} x {length} mm groß, das ist zum Suchen zu viel; nehmen Sie weniger Blätter oder eine größere Platte, oder prüfen Sie den Maßstab der Fotos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>The leaves have {room} mm in common, which with an oversize of {oversize} mm on both sides leaves no strip; take less oversize or wider leaves.</source>
   <translation>Die Blätter haben {room} mm gemeinsam, was bei einem Übermaß von {oversize} mm auf beiden Seiten keinen Streifen übrig lässt; nehmen Sie weniger Übermaß oder breitere Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The leaves of a run go on from panel to panel, so they cannot be listed for one; take them in sequence from a first leaf.</source>
   <translation>Die Blätter einer Folge gehen von Front zu Front weiter, sie lassen sich also nicht für eine aufzählen; nehmen Sie sie in Messerfolge von einem ersten Blatt an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/bundles.py" />
   <source>The leaves of the first bundle are {first} mm thick and those of the second {second} mm, which would not lie flush; take two bundles of one thickness.</source>
   <translation>Die Blätter des ersten Pakets sind {first} mm dick und die des zweiten {second} mm, das läge nicht bündig; nehmen Sie zwei Pakete gleicher Dicke.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>The leaves {numbers} are given twice; give each number once.</source>
   <translation>Die Blätter {numbers} sind zweimal gegeben; geben Sie jede Nummer einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>The light is as photographed.</source>
   <translation>Das Licht ist, wie es fotografiert ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The light must be measured in the same way on all photographs of a batch.</source>
   <translation>Das Licht muss auf allen Fotos einer Lieferung auf dieselbe Art gemessen werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>The light to even to must be red, green and blue, each above 0 and not above 1.</source>
   <translation>Das Licht, auf das auszugleichen ist, muss Rot, Grün und Blau sein, jedes über 0 und nicht über 1.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The line between the rings crosses an opening or the disc; make the inner field larger or smaller.</source>
   <translation>Die Linie zwischen den Ringen kreuzt eine Öffnung oder die Scheibe; machen Sie das innere Feld größer oder kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The line of the {kind} has one point; draw at least two.</source>
   <translation>Die Linie ({kind}) hat einen Punkt; zeichnen Sie mindestens zwei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) grows by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free, which may show through the veneer over it.</source>
   <translation>Der Anleimer ({wood}, {sawn}) wächst um {across} mm in seiner Breite von {width} mm und um {up} mm in seiner Höhe von {height} mm, wenn seine Feuchte von {before} auf {after} % geht, wäre er frei; das kann sich durch das Furnier darüber abzeichnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) grows by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>Der Anleimer ({wood}, {sawn}) wächst um {across} mm in seiner Breite von {width} mm und um {up} mm in seiner Höhe von {height} mm, wenn seine Feuchte von {before} auf {after} % geht, wäre er frei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) shrinks by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free, which may show through the veneer over it.</source>
   <translation>Der Anleimer ({wood}, {sawn}) schwindet um {across} mm in seiner Breite von {width} mm und um {up} mm in seiner Höhe von {height} mm, wenn seine Feuchte von {before} auf {after} % geht, wäre er frei; das kann sich durch das Furnier darüber abzeichnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) shrinks by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>Der Anleimer ({wood}, {sawn}) schwindet um {across} mm in seiner Breite von {width} mm und um {up} mm in seiner Höhe von {height} mm, wenn seine Feuchte von {before} auf {after} % geht, wäre er frei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The log's place on each leaf was given, by targets or outlines, so the figure's wander is measured: {across} mm across and {along} mm along from leaf to leaf in the mean (minus: to the left, and towards the photographs' lower edge).</source>
   <translation>Der Ort des Stamms auf jedem Blatt wurde gegeben, durch Marken oder Umrisse, also ist das Wandern der Textur gemessen: im Mittel {across} mm quer und {along} mm längs von Blatt zu Blatt (minus: nach links und zur Unterkante der Fotos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The log's place on each leaf was given, by targets or outlines. The figure could not be compared, so how it wanders is not known.</source>
   <translation>Der Ort des Stamms auf jedem Blatt wurde gegeben, durch Marken oder Umrisse. Die Textur ließ sich nicht vergleichen, also ist nicht bekannt, wie sie wandert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/__init__.py" />
   <source>The margin cannot be {value}; give 0 or more.</source>
   <translation>Der Sicherheitsrand kann nicht {value} sein; geben Sie 0 oder mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The mark at column {column}, row {row} of the photo {photo} is too blurred to be centred; photograph again with the leaf in focus and the camera at rest.</source>
   <translation>Die Marke bei Spalte {column}, Zeile {row} des Fotos {photo} ist zu unscharf, um zentriert zu werden; fotografieren Sie noch einmal, das Blatt scharf und die Kamera in Ruhe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The mark at column {column}, row {row} of the photo {photo} is {size} pixels across, and {least} are needed; photograph from nearer or with more pixels.</source>
   <translation>Die Marke bei Spalte {column}, Zeile {row} des Fotos {photo} hat {size} Pixel Durchmesser, und {least} sind nötig; fotografieren Sie aus der Nähe oder mit mehr Pixeln.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The mark at column {column}, row {row} of the photo {photo} runs out of the picture; use another mark, or photograph the leaf again with all marks in view.</source>
   <translation>Die Marke bei Spalte {column}, Zeile {row} des Fotos {photo} läuft aus dem Bild; nehmen Sie eine andere Marke, oder fotografieren Sie das Blatt noch einmal mit allen Marken im Bild.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>The marks do not lie as their places say; see that each has its own letter.</source>
   <translation>Die Marken liegen nicht, wie ihre Orte sagen; sehen Sie nach, dass jede ihren eigenen Buchstaben hat.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>The marks lie in one place and do not tell how the leaf is turned; take marks that lie further apart.</source>
   <translation>Die Marken liegen an einer Stelle und sagen nicht, wie das Blatt gedreht ist; nehmen Sie Marken, die weiter auseinander liegen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>The marks lie less than {least} mm apart, too near to tell a turn; use marks far apart.</source>
   <translation>Die Marken liegen weniger als {least} mm auseinander, zu nahe, um eine Drehung zu zeigen; nehmen Sie Marken weit auseinander.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>The marks of leaf {leaf} can be told to {unsure} mm only, and {tolerance} mm is asked: the photograph neither confirms nor contradicts its register.</source>
   <translation>Die Marken von Blatt {leaf} lassen sich nur auf {unsure} mm bestimmen, und {tolerance} mm sind verlangt: das Foto bestätigt seine Lage weder, noch widerspricht es ihr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>The marks of leaf {leaf} cannot be read; give each as x and y in mm.</source>
   <translation>Die Marken von Blatt {leaf} sind nicht lesbar; geben Sie jede als x und y in mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>The match's centre lies outside the field, so no inlay can be set there; move it or leave the inlay out.</source>
   <translation>Die Mitte des Furnierbilds liegt außerhalb des Feldes, dort kann also keine Einlage sitzen; verschieben Sie sie, oder lassen Sie die Einlage weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The middle may be off by {error} mm; mark points on both sides instead.</source>
   <translation>Die Mitte kann um {error} mm falsch liegen; setzen Sie statt dessen auf beiden Seiten Punkte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>The narrowest inner piece, at position {a}, is {width} mm wide. Compared with the least widths of face grade AA in the Architectural Woodwork Standards, 1st ed. (2009, superseded), p. 84, {plain} mm plain sliced and {quartered} mm quartered or rift, outer pieces exempt, that is {reads}.</source>
   <translation>Das schmalste innere Teil, auf Platz {a}, ist {width} mm breit. Verglichen mit den kleinsten Breiten der Güte AA in den Architectural Woodwork Standards, 1. Ausg. (2009, ersetzt), S. 84, {plain} mm flach gemessert und {quartered} mm rift, äußere Teile ausgenommen, liegt das {reads}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/openings.py" />
   <source>The opening about {x}, {y} mm does not lie within a single part of the {layer}; move it, or change the widths of the strips or the size of the inlay.</source>
   <translation>Die Öffnung bei {x}, {y} mm liegt nicht in einem einzigen Bauteil der Lage {layer}; verschieben Sie sie, oder ändern Sie die Breiten der Streifen oder die Größe der Einlage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The opening near ({x}, {y}) lies outside the outline or touches it or another opening; move it, or cut the outline there.</source>
   <translation>Die Öffnung bei ({x}, {y}) liegt außerhalb des Umrisses oder berührt ihn oder eine andere Öffnung; verschieben Sie sie, oder schneiden Sie den Umriss dort aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The order cannot be told: leaves further apart look as much like each other as neighbours do.</source>
   <translation>Die Reihenfolge ist nicht zu sagen: weiter entfernte Blätter sehen einander so ähnlich wie Nachbarn.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The outline drawn on the {side} of leaf {leaf} encloses nothing; draw it round the leaf.</source>
   <translation>Der Umriss auf dem Foto ({side}) von Blatt {leaf} umschließt nichts; zeichnen Sie ihn um das Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The outline drawn on the {side} of leaf {leaf} lies beside its photograph; draw it round the leaf.</source>
   <translation>Der Umriss auf dem Foto ({side}) von Blatt {leaf} liegt neben dem Foto; zeichnen Sie ihn um das Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The outline near ({x}, {y}) lies within an opening, and a top is of one piece; leave it out, or make it a top of its own.</source>
   <translation>Der Umriss bei ({x}, {y}) liegt in einer Öffnung, und eine Platte ist aus einem Stück; lassen Sie ihn weg, oder machen Sie ihn zu einer eigenen Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The outline of leaf {leaf} is no area on its photograph; draw it round the leaf, without crossing.</source>
   <translation>Der Umriss von Blatt {leaf} ist keine Fläche auf seinem Foto; zeichnen Sie ihn um das Blatt, ohne Kreuzung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The outline of the leaf encloses nothing of the photograph; draw it on the leaf.</source>
   <translation>Der Umriss des Blatts umschließt nichts vom Foto; zeichnen Sie ihn auf das Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The outline of the {kind} crosses or touches itself near x {x}, y {y} mm; draw it again without crossing.</source>
   <translation>Der Umriss ({kind}) kreuzt oder berührt sich selbst bei x {x}, y {y} mm; zeichnen Sie ihn noch einmal ohne Kreuzung.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The outline of the {kind} encloses nothing; draw it round the fault.</source>
   <translation>Der Umriss ({kind}) umschließt nichts; zeichnen Sie ihn um den Fehler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>The oversize cannot be {value} mm; give at most {most}.</source>
   <translation>Das Übermaß kann nicht {value} mm sein; geben Sie höchstens {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The panel has no backer: veneered on one side only, it will cup.</source>
   <translation>Die Platte hat kein Gegenfurnier: nur auf einer Seite furniert, verzieht sie sich.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The panel takes {used} leaves, which leaves {left} spare where {spares} are asked for.</source>
   <translation>Die Front braucht {used} Blätter, das lässt {left} als Reserve, wo {spares} verlangt sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The panel takes {used} leaves; {left} stay over.</source>
   <translation>Die Front braucht {used} Blätter; {left} bleiben übrig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>The photo</source>
   <translation>Das Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} cannot be opened ({reason}); copy it to a folder that you may read.</source>
   <translation>Das Foto {file} lässt sich nicht öffnen ({reason}); kopieren Sie es in einen Ordner, den Sie lesen dürfen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} has changed since it was read; read it again.</source>
   <translation>Das Foto {file} hat sich geändert, seit es gelesen wurde; lesen Sie es noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} has {megapixels} megapixels and at most {most} can be read; save it at a smaller size.</source>
   <translation>Das Foto {file} hat {megapixels} Megapixel, und höchstens {most} sind lesbar; speichern Sie es kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is a BMP packed by run lengths (RLE), which is not read; save it as a PNG.</source>
   <translation>Das Foto {file} ist ein BMP, das mit Lauflängen gepackt ist (RLE), was nicht gelesen wird; speichern Sie es als PNG.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is an empty file; copy it again.</source>
   <translation>Das Foto {file} ist eine leere Datei; kopieren Sie es noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is damaged or cut short; copy it again or save it anew.</source>
   <translation>Das Foto {file} ist beschädigt oder abgeschnitten; kopieren Sie es noch einmal, oder speichern Sie es neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is only {columns} x {rows} pixels; give one of the whole leaf.</source>
   <translation>Das Foto {file} hat nur {columns} x {rows} Pixel; geben Sie eines des ganzen Blatts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The photo {photo} is burnt out at column {column}, row {row}, so that no mark is seen; photograph again with less exposure or without glare.</source>
   <translation>Das Foto {photo} ist bei Spalte {column}, Zeile {row} ausgebrannt, also ist keine Marke zu sehen; fotografieren Sie noch einmal mit weniger Licht oder ohne Glanz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The photograph is {share} % larger in mm per pixel than the others; check it.</source>
   <translation>Das Foto ist in mm je Pixel {share} % größer als die anderen; prüfen Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The photograph is {share} % smaller in mm per pixel than the others; check it.</source>
   <translation>Das Foto ist in mm je Pixel {share} % kleiner als die anderen; prüfen Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photograph of leaf {leaf} lies across those of the other leaves; turn it by 90 degrees.</source>
   <translation>Das Foto von Blatt {leaf} liegt quer zu denen der anderen Blätter; drehen Sie es um 90 Grad.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/grid.py" />
   <source>The photograph of leaf {leaf} shows no figure within its usable area (it is black, white or even); photograph it again or leave it out.</source>
   <translation>Das Foto von Blatt {leaf} zeigt auf seiner nutzbaren Fläche keine Textur (es ist schwarz, weiß oder eintönig); fotografieren Sie es noch einmal, oder lassen Sie es weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The photograph of the back of leaf {leaf} shows its face again ({likeness} alike, and a step of one leaf is {step}); photograph the other side.</source>
   <translation>Das Foto der Rückseite von Blatt {leaf} zeigt noch einmal seine Vorderseite ({likeness} ähnlich, und ein Schritt von einem Blatt ist {step}); fotografieren Sie die andere Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The photograph of the {side} of leaf {leaf} does not show the leaf on a plain background, so that its outline cannot tie the two sides; draw the outline, or mark the same points on both sides.</source>
   <translation>Das Foto ({side}) von Blatt {leaf} zeigt das Blatt nicht auf einfarbigem Grund, also kann sein Umriss die beiden Seiten nicht binden; zeichnen Sie den Umriss, oder setzen Sie auf beiden Seiten dieselben Punkte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The photographs of leaf {leaf} are cut off at the leaf's edge, so that its outline cannot tie the two sides; mark the same points on both sides.</source>
   <translation>Die Fotos von Blatt {leaf} sind an der Blattkante abgeschnitten, also kann sein Umriss die beiden Seiten nicht binden; setzen Sie auf beiden Seiten dieselben Punkte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>The photographs of {backs} backs do not show how far the figure wanders from surface to surface; book seams may miss by {miss} mm {basis}.</source>
   <translation>Die Fotos von {backs} Rückseiten zeigen nicht, wie weit die Textur von Fläche zu Fläche wandert; gestürzte Fugen können sich um {miss} mm verfehlen {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photographs prove an order of the {leaves} leaves, and one suspect.</source>
   <translation>Die Fotos weisen eine Reihenfolge der {leaves} Blätter nach, und einen Verdacht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photographs prove an order of the {leaves} leaves, and {suspects} suspects.</source>
   <translation>Die Fotos weisen eine Reihenfolge der {leaves} Blätter nach, und {suspects} Verdachtsfälle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photographs prove the order of the {leaves} leaves as they are numbered.</source>
   <translation>Die Fotos weisen die Reihenfolge der {leaves} Blätter nach, wie sie nummeriert sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The picture is too slanted to be squared so far from the rectangle; keep less margin, or photograph from straight above.</source>
   <translation>Das Bild ist zu schräg, um so weit vom Rechteck entzerrt zu werden; lassen Sie weniger Rand, oder fotografieren Sie gerade von oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>The picture of {columns} x {rows} pixels is too small to find a leaf on it; give the photograph itself.</source>
   <translation>Das Bild von {columns} x {rows} Pixeln ist zu klein, um darauf ein Blatt zu finden; geben Sie das Foto selbst.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>The picture shows no plain background; photograph the leaf on a sheet or table of one colour that shows all round it, or draw its outline by hand.</source>
   <translation>Das Bild zeigt keinen einfarbigen Grund; fotografieren Sie das Blatt auf einem Bogen oder Tisch in einer Farbe, die ringsum zu sehen ist, oder zeichnen Sie seinen Umriss von Hand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>The pieces differ and are cut as single pieces, set out {single} times: they take {apart} m2 of the leaves; {lots} lots by shape take as much, one stack {together} m2.</source>
   <translation>Die Teile sind verschieden und werden als Einzelteile geschnitten, {single} mal angerissen: sie nehmen {apart} m2 der Blätter; {lots} Lose nach Form nehmen ebenso viel, ein Stapel {together} m2.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>The pieces differ and are cut in {lots} lots by shape, each set out by itself: they take {apart} m2 of the leaves; as one stack, set out once, {together} m2.</source>
   <translation>Die Teile sind verschieden und werden in {lots} Losen nach Form geschnitten, jedes für sich angerissen: sie nehmen {apart} m2 der Blätter; als ein Stapel, einmal angerissen, {together} m2.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>The pieces differ: cut as one stack they take {together} m2 of the leaves, parted into {lots} lots by shape {apart} m2, {saved} % less.</source>
   <translation>Die Teile sind verschieden: als ein Stapel geschnitten nehmen sie {together} m2 der Blätter, in {lots} Lose nach Form geteilt {apart} m2, {saved} % weniger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>The place of a mark is no number; mark it again.</source>
   <translation>Der Ort einer Marke ist keine Zahl; setzen Sie sie noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The place of the mark lies outside the photo {photo} of {columns} x {rows} pixels; click on the mark.</source>
   <translation>Der Ort der Marke liegt außerhalb des Fotos {photo} von {columns} x {rows} Pixeln; klicken Sie auf die Marke.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/chain.py" />
   <source>The region to register by lies off the usable area of leaf {leaf}; choose a region that every leaf shows.</source>
   <translation>Der Bereich, nach dem auszurichten ist, liegt neben der nutzbaren Fläche von Blatt {leaf}; wählen Sie einen Bereich, den jedes Blatt zeigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/chain.py" />
   <source>The region to register by must be an area on the bundle; give a polygon in mm.</source>
   <translation>Der Bereich, nach dem auszurichten ist, muss eine Fläche auf dem Paket sein; geben Sie ein Polygon in mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The rings differ by {share} %; photograph it square on, or use four marks.</source>
   <translation>Die Ringe sind um {share} % verschieden; fotografieren Sie gerade von oben, oder nehmen Sie vier Marken.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The run has no panels; choose at least one face.</source>
   <translation>Die Folge hat keine Fronten; wählen Sie mindestens eine Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>The scale cannot be {factor}; give more than 0 and at most {most}.</source>
   <translation>Der Maßstab kann nicht {factor} sein; geben Sie mehr als 0 und höchstens {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/maps.py" />
   <source>The search was stopped; nothing has changed.</source>
   <translation>Die Suche wurde angehalten; nichts hat sich geändert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The second bundle begins with panel {b} (leaf {after}), beside panel {a} of the first (up to leaf {before}), counted as {missing} missing leaf.</source>
   <translation>Das zweite Paket beginnt mit Front {b} (Blatt {after}), neben Front {a} des ersten (bis Blatt {before}), als {missing} fehlendes Blatt gezählt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The second bundle begins with panel {b} (leaf {after}), beside panel {a} of the first (up to leaf {before}), counted as {missing} missing leaves.</source>
   <translation>Das zweite Paket beginnt mit Front {b} (Blatt {after}), neben Front {a} des ersten (bis Blatt {before}), als {missing} fehlende Blätter gezählt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The six distances between the marks disagree by {off}, so one may be misread; measure them again.</source>
   <translation>Die sechs Abstände zwischen den Marken widersprechen sich um {off}, einer kann also falsch abgelesen sein; messen Sie sie noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>The six distances miss each other by {off} mm, so one is misread; measure them again from cross to cross.</source>
   <translation>Die sechs Abstände verfehlen einander um {off} mm, also ist einer falsch abgelesen; messen Sie sie noch einmal von Kreuz zu Kreuz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>The slope is {value} degrees; give an angle from -{most} to {most}.</source>
   <translation>Die Neigung ist {value} Grad; geben Sie einen Winkel von -{most} bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The solid core ({wood}, {sawn}), {width} mm across its grain, grows by {change} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>Der massive Träger ({wood}, {sawn}), quer zur Faser {width} mm, wächst um {change} mm, wenn seine Feuchte von {before} auf {after} % geht, wäre er frei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The solid core ({wood}, {sawn}), {width} mm across its grain, shrinks by {change} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>Der massive Träger ({wood}, {sawn}), quer zur Faser {width} mm, schwindet um {change} mm, wenn seine Feuchte von {before} auf {after} % geht, wäre er frei.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The squared picture would have {columns} x {rows} pixels, more than {most} megapixels; give more mm per pixel or a smaller margin.</source>
   <translation>Das entzerrte Bild hätte {columns} x {rows} Pixel, mehr als {most} Megapixel; geben Sie mehr mm je Pixel oder einen kleineren Rand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows the figure: crowns and rings meet all round, and knots and the leaves' edges march from piece to piece where the figure wanders.</source>
   <translation>Der Stapel folgt der Textur: Fladerspitzen und Ringe treffen sich ringsum, und Äste und Kanten der Blätter laufen von Teil zu Teil weiter, wo die Textur wandert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows the log: knots and edges stay put, and the figure marches from piece to piece, {total} mm from the first leaf to leaf {last}.</source>
   <translation>Der Stapel folgt dem Stamm: Äste und Kanten bleiben an ihrem Platz, und die Textur läuft von Teil zu Teil weiter, {total} mm vom ersten Blatt bis Blatt {last}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows the log: knots and edges stay put.</source>
   <translation>Der Stapel folgt dem Stamm: Äste und Kanten bleiben an ihrem Platz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows your marks: distances between them agree to {apart} mm (leaf {leaf}), and a mark picked {picked} mm off moves a leaf's corner by some {swing} mm. How the figure lies between them was not looked at.</source>
   <translation>Der Stapel folgt Ihren Marken: die Abstände zwischen ihnen stimmen auf {apart} mm überein (Blatt {leaf}), und eine um {picked} mm falsch gesetzte Marke bewegt eine Blattecke um etwa {swing} mm. Wie die Textur dazwischen liegt, wurde nicht angesehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The stack's sense is not proved.</source>
   <translation>Der Sinn des Stapels ist nicht nachgewiesen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The surfaces that meet lie {steps} steps apart, seam by seam; the largest step, {largest}, is between positions {a} and {b}.</source>
   <translation>Die Flächen, die sich treffen, liegen {steps} Schritte auseinander, Fuge für Fuge; der größte Schritt, {largest}, ist zwischen den Plätzen {a} und {b}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The surfaces that meet lie {steps} steps apart, seam by seam; the largest step, {largest}, is between positions {a} and {b}; the closing seam has {closing}.</source>
   <translation>Die Flächen, die sich treffen, liegen {steps} Schritte auseinander, Fuge für Fuge; der größte Schritt, {largest}, ist zwischen den Plätzen {a} und {b}; die Schlussfuge hat {closing}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>The tips are fine: {width} mm wide at {at} mm from the point.</source>
   <translation>Die Spitzen sind fein: {width} mm breit {at} mm von der Spitze.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>The top uses {used} leaves and leaves {left} spare where {spares} are asked for.</source>
   <translation>Die Platte braucht {used} Blätter und lässt {left} als Reserve, wo {spares} verlangt sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>The top uses {used} leaves; {left} stay over.</source>
   <translation>Die Platte braucht {used} Blätter; {left} bleiben übrig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/bundles.py" />
   <source>The two bundles do not lie in one sense (the surface behind a leaf is the {first} leaf's in the first and the {second} leaf's in the second); turn one of them over.</source>
   <translation>Die beiden Pakete liegen nicht in einem Sinn (die Fläche hinter einem Blatt gehört im ersten dem {first} Blatt und im zweiten dem {second} Blatt); wenden Sie eines von ihnen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The two points are only {apart} pixels apart; choose two at least {least} apart, the further the better.</source>
   <translation>Die zwei Punkte sind nur {apart} Pixel auseinander; wählen Sie zwei, die mindestens {least} auseinander sind, je weiter, desto besser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>The upper row goes in order to the right, the lower row comes back.</source>
   <translation>Die obere Reihe geht der Reihe nach nach rechts, die untere kommt zurück.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The wander is taken to be the same from leaf to leaf; where it is not, faces alone do not tell.</source>
   <translation>Das Wandern gilt von Blatt zu Blatt als gleich; wo es das nicht ist, sagen Vorderseiten allein es nicht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>The wedges meet at a point that is not the middle of the top.</source>
   <translation>Die Keile treffen sich in einem Punkt, der nicht die Mitte der Platte ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>The wedges there are then unlike the rest, and their joints mirror only where both sides lose the same.</source>
   <translation>Die Keile dort sind dann anders als die übrigen, und ihre Fugen spiegeln nur, wo beide Seiten gleich viel verlieren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>The weight of {name} cannot be {value}; give 0 to {most}.</source>
   <translation>Das Gewicht von {name} kann nicht {value} sein; geben Sie 0 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The {count} leaves are laid as they were photographed: nothing says that the figure, or a knot, lies at the same place on all of them, and a photograph that is shifted against the others shifts its piece.</source>
   <translation>Die {count} Blätter liegen, wie sie fotografiert wurden: nichts sagt, dass die Textur oder ein Ast auf allen an derselben Stelle liegt, und ein Foto, das gegen die anderen verschoben ist, verschiebt sein Teil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>The {kind} end match has two rows and not {rows}: take 2, or the continuous one.</source>
   <translation>Kopfsturz ({kind}) hat zwei Reihen und nicht {rows}: nehmen Sie 2, oder den durchlaufenden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The {kind} has no outline; draw a closed line round it.</source>
   <translation>{kind}: es gibt keinen Umriss; zeichnen Sie eine geschlossene Linie darum.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The {kind} lies off the photograph of leaf {leaf}; draw it on the leaf.</source>
   <translation>{kind}: es liegt neben dem Foto von Blatt {leaf}; zeichnen Sie es auf das Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>The {name} cannot be {shown}; give more than 0 and at most {most} for each % of moisture.</source>
   <translation>{name}: {shown} ist nicht möglich; geben Sie mehr als 0 und höchstens {most} je % Feuchte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/plane.py" />
   <source>The {name} cannot be {value!r:.40}; choose one of: {allowed}.</source>
   <translation>{name}: {value!r:.40} ist nicht möglich; wählen Sie eines von: {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/plane.py" />
   <source>The {name} cannot be {value!r:.40}; give a plain number.</source>
   <translation>{name}: {value!r:.40} ist nicht möglich; geben Sie eine gewöhnliche Zahl.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The {name} cannot be {value!r:.40}; give a text.</source>
   <translation>{name}: {value!r:.40} ist nicht möglich; geben Sie einen Text.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>The {name} cannot be {value!r:.40}; give {what}.</source>
   <translation>{name}: {value!r:.40} ist nicht möglich; geben Sie {what}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>The {name} cannot be {value} {unit}; give a number from {least} to {most}.</source>
   <translation>{name}: {value} {unit} ist nicht möglich; geben Sie eine Zahl von {least} bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>The {name} cannot be {value}; give a number from -{most} to {most}.</source>
   <translation>{name}: {value} ist nicht möglich; geben Sie eine Zahl von -{most} bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The {name} cannot be {value}; give a number from 0 to {most}.</source>
   <translation>{name}: {value} ist nicht möglich; geben Sie eine Zahl von 0 bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>The {name} cannot be {value}; give a number from {least} to {most}.</source>
   <translation>{name}: {value} ist nicht möglich; geben Sie eine Zahl von {least} bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/plane.py" />
   <source>The {name} cannot be {value}; give a whole number from {least} to {most}.</source>
   <translation>{name}: {value} ist nicht möglich; geben Sie eine ganze Zahl von {least} bis {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The {name} has only {count} corners; click at least 3.</source>
   <translation>{name}: nur {count} Ecken; klicken Sie mindestens 3 an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The {name} has {count} characters; give at most {most}.</source>
   <translation>{name}: {count} Zeichen sind zu viele; geben Sie höchstens {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>The {name} of a build-up cannot be {value!r:.40}; give a {kinds}, or leave it out.</source>
   <translation>{name} eines Aufbaus kann nicht {value!r:.40} sein; geben Sie {kinds}, oder lassen Sie es weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>The {name} of a build-up cannot be {value!r:.40}; give a {kinds}.</source>
   <translation>{name} eines Aufbaus kann nicht {value!r:.40} sein; geben Sie {kinds}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The {panels} panels take {count} leaves, and from leaf {first} on there are {have}, {missing} missing: enough for no panel; take fewer panels, wider strips, or a second bundle after this one.</source>
   <translation>Die {panels} Fronten brauchen {count} Blätter, und ab Blatt {first} sind es {have}, {missing} fehlen: genug für keine Front; nehmen Sie weniger Fronten, breitere Streifen, oder ein zweites Paket nach diesem.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The {panels} panels take {count} leaves, and from leaf {first} on there are {have}, {missing} missing: enough for {fits} of {panels}; take fewer panels, wider strips, or a second bundle after this one.</source>
   <translation>Die {panels} Fronten brauchen {count} Blätter, und ab Blatt {first} sind es {have}, {missing} fehlen: genug für {fits} von {panels}; nehmen Sie weniger Fronten, breitere Streifen, oder ein zweites Paket nach diesem.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves, which leaves {left} spare where {spares} are asked for.</source>
   <translation>Die {panels} Fronten brauchen {used} Blätter, das lässt {left} als Reserve, wo {spares} verlangt sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves, {each} each, which leaves {left} spare where {spares} are asked for.</source>
   <translation>Die {panels} Fronten brauchen {used} Blätter, je {each}, das lässt {left} als Reserve, wo {spares} verlangt sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves, {each} each; {left} stay over.</source>
   <translation>Die {panels} Fronten brauchen {used} Blätter, je {each}; {left} bleiben übrig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves; {left} stay over.</source>
   <translation>Die {panels} Fronten brauchen {used} Blätter; {left} bleiben übrig.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>The {what} cannot be parted in {segments} on this edge; take fewer segments.</source>
   <translation>{what}: auf dieser Kante lässt es sich nicht in {segments} teilen; nehmen Sie weniger Teile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The {what} cannot be {value} mm; give from {least} to {most} mm, or leave the {out} out.</source>
   <translation>{what}: {value} mm ist nicht möglich; geben Sie {least} bis {most} mm, oder lassen Sie {out} weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The {what} cannot be {value} mm; give from {least} to {most} mm.</source>
   <translation>{what}: {value} mm ist nicht möglich; geben Sie {least} bis {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} crosses or touches itself near ({x}, {y}); draw it without.</source>
   <translation>{what}: es kreuzt oder berührt sich bei ({x}, {y}); zeichnen Sie es ohne das.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} encloses {size} mm2; it must be at least {least} mm2.</source>
   <translation>{what}: es umschließt {size} mm2; mindestens {least} mm2 müssen es sein.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} has a place or a size that is no plain number.</source>
   <translation>{what}: ein Ort oder eine Größe ist keine gewöhnliche Zahl.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} has an arc of {sweep} degrees, which lies on itself; give at most 360.</source>
   <translation>{what}: ein Bogen von {sweep} Grad liegt auf sich selbst; geben Sie höchstens 360.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} has an arc with a radius of {radius} mm; draw it larger.</source>
   <translation>{what}: ein Bogen hat einen Radius von {radius} mm; zeichnen Sie ihn größer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>The {what} has no corner to mitre on this top; let it follow the edge, in a number of segments.</source>
   <translation>{what}: auf dieser Platte ist keine Ecke für eine Gehrung; lassen Sie es der Kante folgen, in einer Zahl von Teilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} is open by {gap} mm near ({x}, {y}); close it there.</source>
   <translation>{what}: bei ({x}, {y}) um {gap} mm offen; schließen Sie es dort.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} must be of segments, and this is a {kind}.</source>
   <translation>{what}: es muss aus Segmenten sein, und das ist ein {kind}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} reaches {reach} mm from the origin; the most is {most} mm.</source>
   <translation>{what}: es reicht {reach} mm vom Ursprung; höchstens {most} mm sind möglich.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>There are no angles to close; give one for each wedge.</source>
   <translation>Es gibt keine Winkel zu schließen; geben Sie für jeden Keil einen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>There are no leaves to print for; give their numbers.</source>
   <translation>Es gibt keine Blätter, für die zu drucken wäre; geben Sie ihre Nummern.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>There are no photos to even; add at least one.</source>
   <translation>Es gibt keine Fotos auszugleichen; fügen Sie mindestens eines hinzu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>There are {backs} photos of backs for {faces} leaves; give at most one for each.</source>
   <translation>Es sind {backs} Fotos von Rückseiten für {faces} Blätter; geben Sie höchstens eines für jedes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>There are {count} marks where {least} are needed, each with its place; locate them all.</source>
   <translation>Es sind {count} Marken, wo {least} nötig sind, jede mit ihrem Ort; orten Sie alle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>There are {here} marks on one side and {there} on the other; give the same marks, in the same order.</source>
   <translation>Auf einer Seite sind {here} Marken und auf der anderen {there}; geben Sie dieselben Marken in derselben Folge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>There are {photos} photographs and {ways} ways to prepare them; give one for all, or one for each.</source>
   <translation>Es sind {photos} Fotos und {ways} Arten, sie vorzubereiten; geben Sie eine für alle, oder für jedes eine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>There is a crossband on one side of the core only, so the panel may cup.</source>
   <translation>Nur auf einer Seite des Trägers ist ein Absperrfurnier, also kann die Platte sich verziehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>There is no measure called {name!r}; weights are for {known}.</source>
   <translation>Es gibt kein Maß namens {name!r}; Gewichte sind für {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>There is no photo {file}; check its name and its folder.</source>
   <translation>Es gibt kein Foto {file}; prüfen Sie Namen und Ordner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>There is no room for a disc: the ring's centre does not lie within the top.</source>
   <translation>Für eine Scheibe ist kein Platz: die Mitte des Rings liegt nicht innerhalb der Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>There is no whole mark near column {column}, row {row} of the photo {photo}; click within a ring's width of its centre.</source>
   <translation>Nahe Spalte {column}, Zeile {row} des Fotos {photo} ist keine ganze Marke; klicken Sie innerhalb einer Ringbreite von ihrer Mitte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>There is not enough memory for the photo {file}; save it at a smaller size.</source>
   <translation>Für das Foto {file} ist nicht genug Speicher da; speichern Sie es kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>There is one leaf, so there is nothing to register it against.</source>
   <translation>Es gibt ein Blatt, also nichts, wogegen es auszurichten wäre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>There is solid wood in the panel, and how much it moves depends on the air.</source>
   <translation>In der Platte ist Massivholz, und wie viel es arbeitet, hängt von der Luft ab.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>They fit turned over: see whether the photograph was mirrored already.</source>
   <translation>Sie passen gewendet: sehen Sie nach, ob das Foto schon gespiegelt war.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>They lie far apart for one leaf: see whether both scales are right.</source>
   <translation>Sie liegen für ein Blatt weit auseinander: sehen Sie nach, ob beide Maßstäbe stimmen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>This layout does not know how it was made, so it cannot be laid again.</source>
   <translation>Dieser Legeplan weiß nicht, wie er gemacht wurde, er lässt sich also nicht noch einmal legen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>This match would have {count} pieces; the most is {most}: take wider strips or fewer ways.</source>
   <translation>Dieses Furnierbild hätte {count} Teile; höchstens {most} sind möglich: nehmen Sie breitere Streifen oder weniger Keile.</translation>
  </message>
  <message>
   <location filename="veneerwb/packages.py" />
   <source>This needs {packages}, which FreeCAD's Python does not have; install the addon anew by the Addon Manager, or run this in a terminal, and start FreeCAD again: {command}</source>
   <translation>Dazu fehlt dem Python von FreeCAD: {packages}; installieren Sie die Erweiterung mit dem Addon-Manager neu oder führen Sie dies in einem Terminal aus, und starten Sie FreeCAD neu: {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/packages.py" />
   <source>This needs {packages}, which FreeCAD's Python does not have; run this in a terminal and start FreeCAD again: {command}</source>
   <translation>Dazu fehlt dem Python von FreeCAD: {packages}; führen Sie dies in einem Terminal aus und starten Sie FreeCAD neu: {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; no size of it does, and in no number of ways would this one fit.</source>
   <translation>Diese Platte ({top}) passt in {ways} Keilen nirgends auf die Blätter; keine Größe davon passt, und diese passte in keiner Zahl von Keilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; no size of it does, and this one would fit in {others} ways.</source>
   <translation>Diese Platte ({top}) passt in {ways} Keilen nirgends auf die Blätter; keine Größe davon passt, und diese passte in {others} Keilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; the largest that would is {largest} (reach {reach} mm), and in no number of ways would this one fit.</source>
   <translation>Diese Platte ({top}) passt in {ways} Keilen nirgends auf die Blätter; die größte, die passte, ist {largest} (Reichweite {reach} mm), und diese passte in keiner Zahl von Keilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; the largest that would is {largest} (reach {reach} mm), and this one would fit in {others} ways.</source>
   <translation>Diese Platte ({top}) passt in {ways} Keilen nirgends auf die Blätter; die größte, die passte, ist {largest} (Reichweite {reach} mm), und diese passte in {others} Keilen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>This way round the outline fits more than twice as well as end for end.</source>
   <translation>So herum passt der Umriss mehr als doppelt so gut wie Kopf gegen Fuß.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Three of the corners lie almost on a line; click the four corners of the rectangle, each once.</source>
   <translation>Drei der Ecken liegen fast auf einer Linie; klicken Sie die vier Ecken des Rechtecks an, jede einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>Three of the marks lie almost on a line, which squares nothing; use marks that stand near the corners of the leaf.</source>
   <translation>Drei der Marken liegen fast auf einer Linie, das entzerrt nichts; nehmen Sie Marken, die nahe den Ecken des Blatts stehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>To measure the light on the background the tool must know where the leaf is: let it be found, draw its outline, or click its corners.</source>
   <translation>Um das Licht am Grund zu messen, muss bekannt sein, wo das Blatt ist: lassen Sie es finden, zeichnen Sie seinen Umriss, oder klicken Sie seine Ecken an.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>To save leaf cut in lots by shape: each is then set out by itself.</source>
   <translation>Um Furnier zu sparen, in Losen nach Form schneiden: jedes wird dann für sich angerissen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>Too bright when photographed, and lost: {lost}.</source>
   <translation>Beim Fotografieren zu hell und verloren: {lost}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Try the finish on two leaves, one turned, before cutting.</source>
   <translation>Probieren Sie die Oberfläche an zwei Blättern, eines gewendet, bevor Sie schneiden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Turn it to 90 degrees.</source>
   <translation>Drehen Sie sie auf 90 Grad.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Turn over every second piece.</source>
   <translation>Wenden Sie jedes zweite Teil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Turn the top's best corner to the upper right or the lower left, or make it square.</source>
   <translation>Drehen Sie die beste Ecke der Platte nach rechts oben oder links unten, oder machen Sie sie quadratisch.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>Two leaves carry the number {leaf}; give each its own.</source>
   <translation>Zwei Blätter tragen die Nummer {leaf}; geben Sie jedem seine eigene.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>Two marks check nothing but their distance.</source>
   <translation>Zwei Marken prüfen nichts als ihren Abstand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Use fewer leaves of the bundle, or let the stack follow something else.</source>
   <translation>Nehmen Sie weniger Blätter des Pakets, oder lassen Sie den Stapel sich nach etwas anderem richten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Use low-tack tape and try it on an offcut: paste and strong tape leave residue, lift fibre.</source>
   <translation>Schwach haftendes Band nehmen und an einem Abschnitt probieren: Kleister und starkes Band lassen Reste, heben Fasern.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Wedges meet at a point, all with the same side up.</source>
   <translation>Keile treffen sich in einem Punkt, alle mit derselben Seite oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Wedges meet at a point, every second one turned over.</source>
   <translation>Keile treffen sich in einem Punkt, jeder zweite gewendet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Wedges meet at a point; every second one may be turned over, and they are even then.</source>
   <translation>Keile treffen sich in einem Punkt; jeder zweite kann gewendet sein, und dann ist ihre Zahl gerade.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>Weights cannot be {value!r:.40}; give one by name for any of {known}.</source>
   <translation>Gewichte können nicht {value!r:.40} sein; geben Sie eines beim Namen für beliebige von {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take more pieces, or wider leaves, and lay them end to end, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {narrower} mm zu breit und {shorter} mm zu lang für diese Blätter: nehmen Sie mehr Teile oder breitere Blätter, und legen Sie sie Kopf an Kopf, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take more pieces, or wider leaves, and take longer leaves, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {narrower} mm zu breit und {shorter} mm zu lang für diese Blätter: nehmen Sie mehr Teile oder breitere Blätter, und nehmen Sie längere, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take wider leaves, and lay them end to end, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {narrower} mm zu breit und {shorter} mm zu lang für diese Blätter: nehmen Sie breitere Blätter, und legen Sie sie Kopf an Kopf, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take wider leaves, and take longer leaves, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {narrower} mm zu breit und {shorter} mm zu lang für diese Blätter: nehmen Sie breitere und längere Blätter, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide for these leaves: take more pieces, or wider leaves, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {narrower} mm zu breit für diese Blätter: nehmen Sie mehr Teile oder breitere Blätter, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide for these leaves: take wider leaves, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {narrower} mm zu breit für diese Blätter: nehmen Sie breitere Blätter, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {shorter} mm too long for these leaves: lay them end to end, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {shorter} mm zu lang für diese Blätter: legen Sie sie Kopf an Kopf, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {shorter} mm too long for these leaves: take longer leaves, or make the top smaller.</source>
   <translation>Der Zuschnitt ist {shorter} mm zu lang für diese Blätter: nehmen Sie längere Blätter, oder machen Sie die Platte kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>What is said of leaf {named} holds without it.</source>
   <translation>Was von Blatt {named} gesagt wird, gilt auch ohne sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>What is said of leaves {named} holds without it.</source>
   <translation>Was von den Blättern {named} gesagt wird, gilt auch ohne sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Where the log lies was told from the drift that your photographs share, {across} mm across and {along} mm along from leaf to leaf in the mean (minus: to the left, and towards the photographs' lower edge), give or take {error} mm.</source>
   <translation>Wo der Stamm liegt, wurde aus der gemeinsamen Drift Ihrer Fotos abgelesen, im Mittel {across} mm quer und {along} mm längs von Blatt zu Blatt (minus: nach links und zur Unterkante der Fotos), auf {error} mm genau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>Whether a leaf is turned over cannot be told: the figure equals its mirror image.</source>
   <translation>Ob ein Blatt gewendet ist, ist nicht zu sagen: die Textur gleicht ihrem Spiegelbild.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>Whether a leaf is turned over or end for end cannot be told: it looks the same so.</source>
   <translation>Ob ein Blatt gewendet ist oder Kopf gegen Fuß liegt, ist nicht zu sagen: es sieht so gleich aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>Whether a leaf lies end for end cannot be told: the figure looks the same so.</source>
   <translation>Ob ein Blatt Kopf gegen Fuß liegt, ist nicht zu sagen: die Textur sieht so gleich aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>With {strips} strips in each wedge a strip is only {width} mm wide; take at most {most}.</source>
   <translation>Mit {strips} Streifen in jedem Keil ist ein Streifen nur {width} mm breit; nehmen Sie höchstens {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>With {ways} ways the top is not a sunburst, which has six leaves or more (Architectural Woodwork Standards, 2009).</source>
   <translation>Mit {ways} Keilen ist die Platte kein "sunburst", der sechs Blätter oder mehr hat (Architectural Woodwork Standards, 2009).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Wood in this air settles at {before} and {after} % moisture; the figures of movement hold from {driest} to {wettest} % only.</source>
   <translation>Holz in dieser Luft stellt sich auf {before} und {after} % Feuchte ein; die Zahlen des Arbeitens gelten nur von {driest} bis {wettest} %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Your photographs drift {drift} mm along from leaf to leaf together, give or take {drift_error} mm, and not {along} mm.</source>
   <translation>Ihre Fotos driften zusammen {drift} mm längs von Blatt zu Blatt, auf {drift_error} mm genau, und nicht {along} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Your photographs share no clear drift and no slope, backs or targets are known, so the log cannot be told from the figure: here it is taken to lie where the figure does.</source>
   <translation>Ihre Fotos haben keine deutliche gemeinsame Drift, und weder Neigung noch Rückseiten oder Marken sind bekannt, also ist der Stamm aus der Textur nicht abzulesen: hier wird er angenommen, wo die Textur liegt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>across</source>
   <translation>quer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>alder, red</source>
   <translation>Erle, rot</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>all layers</source>
   <translation>alle Lagen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>along</source>
   <translation>längs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>architectural</source>
   <translation>Architektur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>area in m2</source>
   <translation>Fläche in m2</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>area m2</source>
   <translation>Fläche m2</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>area sq ft</source>
   <translation>Fläche Quadratfuß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>as photographed</source>
   <translation>wie fotografiert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>ash, white</source>
   <translation>Esche, weiß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>back</source>
   <translation>Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>back, loose side</source>
   <translation>Rückseite, offene Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>back, tight side</source>
   <translation>Rückseite, geschlossene Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>backer</source>
   <translation>Gegenfurnier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>background</source>
   <translation>Grund</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>balance</source>
   <translation>ausgewogen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>beech, American</source>
   <translation>Buche, amerikanisch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>bent round; its length on the outer side</source>
   <translation>rundum gebogen; Länge an der Außenseite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>bill of materials</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>birch, yellow</source>
   <translation>Birke, gelb</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>boat shape, {size} by {width} mm, {ends} mm at the ends</source>
   <translation>Bootsform, {size} mal {width} mm, {ends} mm an den Enden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>book</source>
   <translation>gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>border</source>
   <translation>Fries</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>border's width</source>
   <translation>Friesbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>by the slope of {slope} deg that was given</source>
   <translation>nach der gegebenen Neigung von {slope} Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>by the wander measured on photographed backs</source>
   <translation>nach dem an fotografierten Rückseiten gemessenen Wandern</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>caution</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>centre</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>centre balance</source>
   <translation>Mitte ausgewogen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>centre's x</source>
   <translation>x der Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>centre's y</source>
   <translation>y der Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>chalk</source>
   <translation>Kreide</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>cherry, black</source>
   <translation>Kirsche, schwarz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>clear colour change</source>
   <translation>deutlicher Farbwechsel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>clear grain change</source>
   <translation>deutlicher Faserwechsel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>closing</source>
   <translation>Schlussfuge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>closing seam shows</source>
   <translation>Schlussfuge sichtbar</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>closing seam shows clearly</source>
   <translation>Schlussfuge deutlich sichtbar</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>coefficient</source>
   <translation>Beiwert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>continuous</source>
   <translation>durchlaufend</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>contrast</source>
   <translation>Kontrast</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>core</source>
   <translation>Träger</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>corners</source>
   <translation>Ecken</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>crossband</source>
   <translation>Absperrfurnier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>crossband above</source>
   <translation>Absperrfurnier oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>crossband below</source>
   <translation>Absperrfurnier unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>cut</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>degrees C</source>
   <translation>Grad C</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>diameter</source>
   <translation>Durchmesser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>diameter of the disc</source>
   <translation>Durchmesser der Scheibe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>diameter of the inlay</source>
   <translation>Durchmesser der Einlage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>diameter of the inner field</source>
   <translation>Durchmesser des inneren Feldes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>direction of the grain</source>
   <translation>Faserrichtung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>distance</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>distance between the two points</source>
   <translation>Abstand zwischen den zwei Punkten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>distance between two marks</source>
   <translation>Abstand zwischen zwei Marken</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/seen.py" />
   <source>distance of the camera</source>
   <translation>Abstand der Kamera</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/disturb.py" />
   <source>disturbance</source>
   <translation>Störung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>duplicate</source>
   <translation>doppelt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>elm, American</source>
   <translation>Ulme, amerikanisch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>end for end</source>
   <translation>Kopf gegen Fuß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>even grain</source>
   <translation>gleichmäßige Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>face</source>
   <translation>Vorderseite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>face, loose side</source>
   <translation>Vorderseite, offene Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>face, tight side</source>
   <translation>Vorderseite, geschlossene Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>field</source>
   <translation>Feld</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>figure</source>
   <translation>Textur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>first leaf</source>
   <translation>erstes Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>flitch</source>
   <translation>Flitch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>foreign</source>
   <translation>fremd</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>gain of a photo's light</source>
   <translation>Verstärkung des Lichts eines Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>grain</source>
   <translation>Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>grain direction</source>
   <translation>Faserrichtung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>grain of the border</source>
   <translation>Faser des Frieses</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>grain, in the waste only. What a mark covers must not become a part of the show face.</source>
   <translation>Faser, nur in den Verschnitt. Was eine Marke bedeckt, darf kein Teil der Sichtseite werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>grey patch</source>
   <translation>graue Stelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>if it slopes {slope} deg to the leaf, which is assumed and not measured</source>
   <translation>bei einer Neigung von {slope} Grad zum Blatt, die angenommen und nicht gemessen ist</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>if the figure slopes {slope} deg to the leaf, which nobody measured</source>
   <translation>bei einer Neigung der Textur von {slope} Grad zum Blatt, die niemand gemessen hat</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>in memory</source>
   <translation>im Speicher</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>inlay</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>inner radius of the star</source>
   <translation>Innenradius des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/core/files.py" />
   <source>it is larger than {size} MB</source>
   <translation>es ist größer als {size} MB</translation>
  </message>
  <message>
   <location filename="veneerwb/core/files.py" />
   <source>it is no file</source>
   <translation>es ist keine Datei</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>item</source>
   <translation>Bauteil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>its x and y on the top</source>
   <translation>ihr x und y auf der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>kind of border</source>
   <translation>Art des Frieses</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>kind of core</source>
   <translation>Art des Trägers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>kind of fault</source>
   <translation>Art des Fehlers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>knot</source>
   <translation>Ast</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>knots</source>
   <translation>Äste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>layer</source>
   <translation>Lage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>leaf length</source>
   <translation>Blattlänge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>leaf thickness</source>
   <translation>Blattdicke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>leaf whose back is photographed</source>
   <translation>Blatt, dessen Rückseite fotografiert ist</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>leaf width</source>
   <translation>Blattbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>leaves</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>length mm</source>
   <translation>Länge mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/finding.py" />
   <source>level</source>
   <translation>Stufe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>lipping</source>
   <translation>Anleimer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>listed leaf</source>
   <translation>aufgezähltes Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>little colour change</source>
   <translation>wenig Farbwechsel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>lively grain</source>
   <translation>lebhafte Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>lot</source>
   <translation>Los</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>maple, sugar</source>
   <translation>Zuckerahorn</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/__init__.py" />
   <source>margin</source>
   <translation>Sicherheitsrand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>marking list</source>
   <translation>Anschreibliste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>match</source>
   <translation>Furnierbild</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>material</source>
   <translation>Werkstoff</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>mode of a run</source>
   <translation>Weise einer Folge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>moisture</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>moisture in %</source>
   <translation>Feuchte in %</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>most megapixels of a working copy</source>
   <translation>höchste Megapixelzahl einer Arbeitskopie</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>not said</source>
   <translation>nicht gesagt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>not under either</source>
   <translation>unter keinem von beiden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>note</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/renumbering.py" />
   <source>number of a leaf</source>
   <translation>Nummer eines Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>number of leaves</source>
   <translation>Zahl der Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>number of marks on a leaf</source>
   <translation>Zahl der Marken auf einem Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/bundles.py" />
   <source>number of missing leaves</source>
   <translation>Zahl der fehlenden Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>number of points of the star</source>
   <translation>Zahl der Zacken des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/core/search/find.py" />
   <source>number of results</source>
   <translation>Zahl der Ergebnisse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>number of rows</source>
   <translation>Zahl der Reihen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>number of segments of the {what}</source>
   <translation>Zahl der Teile: {what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>number of sides</source>
   <translation>Zahl der Seiten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/__init__.py" />
   <source>number of spare leaves</source>
   <translation>Zahl der Reserveblätter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>number of strips in a wedge</source>
   <translation>Zahl der Streifen in einem Keil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/mark.py" />
   <source>number of the mark on its leaf</source>
   <translation>Nummer der Marke auf ihrem Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>number of ways</source>
   <translation>Zahl der Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>oak, red</source>
   <translation>Eiche, rot</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>oak, white</source>
   <translation>Eiche, weiß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>one mark</source>
   <translation>eine Marke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>opening</source>
   <translation>Öffnung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>order</source>
   <translation>Reihenfolge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>origin</source>
   <translation>Herkunft</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>out of place</source>
   <translation>am falschen Platz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>outer radius of the star</source>
   <translation>Außenradius des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>outline</source>
   <translation>Umriss</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>outline, {size} by {width} mm</source>
   <translation>Umriss, {size} mal {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>oval, {size} by {width} mm</source>
   <translation>oval, {size} mal {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>oversize</source>
   <translation>Übermaß</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>own coefficients</source>
   <translation>eigene Beiwerte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>patch</source>
   <translation>Flick</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>photograph</source>
   <translation>Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>placement</source>
   <translation>Lage auf dem Paket</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>placement's angle</source>
   <translation>Winkel der Lage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>placement's x</source>
   <translation>x der Lage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>placement's y</source>
   <translation>y der Lage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>plain sawn</source>
   <translation>Fladerschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>quarter sawn</source>
   <translation>Riftschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>quiet seams</source>
   <translation>ruhige Fugen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>racetrack, {size} by {width} mm</source>
   <translation>Rennbahn, {size} mal {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>radial coefficient</source>
   <translation>radialer Beiwert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>random</source>
   <translation>gemischt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>reach</source>
   <translation>Reichweite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>rectangle, {size} by {width} mm</source>
   <translation>Rechteck, {size} mal {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>relative humidity</source>
   <translation>relative Luftfeuchte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>reverse slip</source>
   <translation>geschoben, wechselnd</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>rim</source>
   <translation>Rand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>ring</source>
   <translation>Ring</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/packing.py" />
   <source>room</source>
   <translation>Platz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>round, {size} mm</source>
   <translation>rund, {size} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>running</source>
   <translation>laufend</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>sawing</source>
   <translation>Einschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>scale (mm per pixel)</source>
   <translation>Maßstab (mm je Pixel)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>scale of the photo in mm per pixel</source>
   <translation>Maßstab des Fotos in mm je Pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>seams</source>
   <translation>Fugen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>seams show</source>
   <translation>Fugen sichtbar</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>seed</source>
   <translation>Startzahl</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>sheet goods</source>
   <translation>Plattenwerkstoff</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>show face</source>
   <translation>Sichtseite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>show veneer</source>
   <translation>Deckfurnier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>side up</source>
   <translation>Seite oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>sides and two diagonals between four marks square it up. Photograph without glare.</source>
   <translation>Seiten und zwei Diagonalen zwischen vier Marken entzerren es. Ohne Glanz fotografieren.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>size</source>
   <translation>Größe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>slant</source>
   <translation>Schräge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>slip</source>
   <translation>geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>slip-centre-book</source>
   <translation>geschoben, Mitte gestürzt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>slope</source>
   <translation>Neigung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>soft seams</source>
   <translation>weiche Fugen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>solid wood</source>
   <translation>Massivholz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>some colour change</source>
   <translation>etwas Farbwechsel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>some grain change</source>
   <translation>etwas Faserwechsel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>source of the backer</source>
   <translation>Herkunft des Gegenfurniers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>species</source>
   <translation>Holzart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>split</source>
   <translation>Riss</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>square, {size} mm</source>
   <translation>quadratisch, {size} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>stain</source>
   <translation>Fleck</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>start direction</source>
   <translation>Anfangsrichtung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/finding.py" />
   <source>stop</source>
   <translation>Halt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>stringing line</source>
   <translation>Ader</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>strip</source>
   <translation>Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>strip width</source>
   <translation>Streifenbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>strong colour change</source>
   <translation>starker Farbwechsel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>surface</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>sweetgum</source>
   <translation>Amberbaum</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>sycamore</source>
   <translation>Platane, amerikanisch</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>tangential coefficient</source>
   <translation>tangentialer Beiwert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>the back of leaf {leaves}</source>
   <translation>die Rückseite von Blatt {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>the back of one leaf</source>
   <translation>der Rückseite eines Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>the backs of leaves {leaves}</source>
   <translation>die Rückseiten der Blätter {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>the backs of {count} leaves</source>
   <translation>den Rückseiten von {count} Blättern</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>the leaf of each position</source>
   <translation>das Blatt jedes Platzes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>the list</source>
   <translation>die Liste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>the lower end of the picture</source>
   <translation>das untere Ende des Bilds</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>the upper end of the picture</source>
   <translation>das obere Ende des Bilds</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/insets.py" />
   <source>the {what}</source>
   <translation>{what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>thickness mm</source>
   <translation>Dicke mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>thickness of the {what}</source>
   <translation>Dicke: {what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>tight side</source>
   <translation>geschlossene Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>time of the lipping</source>
   <translation>Zeitpunkt des Anleimers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>to do</source>
   <translation>zu tun</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>tolerance</source>
   <translation>Toleranz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>tolerance of the outline in pixels</source>
   <translation>Toleranz des Umrisses in Pixeln</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>top</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>top end</source>
   <translation>Kopfende</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>turn</source>
   <translation>Wenden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>turn of the back</source>
   <translation>Drehung der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>turn of the star</source>
   <translation>Drehung des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>turned</source>
   <translation>gewendet</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>turned pieces</source>
   <translation>gewendete Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>turned {turn} deg clockwise about the middle</source>
   <translation>um {turn} Grad im Uhrzeigersinn um die Mitte gedreht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>turned {turn} deg counter-clockwise about the middle</source>
   <translation>um {turn} Grad gegen den Uhrzeigersinn um die Mitte gedreht</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>under both</source>
   <translation>unter beiden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>under the first, not under the second</source>
   <translation>unter dem ersten, nicht unter dem zweiten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>unnamed wood</source>
   <translation>unbenanntes Holz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>variety</source>
   <translation>Vielfalt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>volume m3</source>
   <translation>Rauminhalt m3</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>walnut, black</source>
   <translation>Nussbaum, schwarz</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>wander across</source>
   <translation>Wandern quer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>wander along</source>
   <translation>Wandern längs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/finding.py" />
   <source>warn</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <location filename="veneerwb/core/layout.py" />
   <source>way of cutting</source>
   <translation>Schnittart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>way to pin backs</source>
   <translation>Art, Rückseiten zu stiften</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>way with gaps</source>
   <translation>Umgang mit Spalten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>wedge angle</source>
   <translation>Keilwinkel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>weight of {name}</source>
   <translation>Gewicht von {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>what to follow</source>
   <translation>wonach zu richten ist</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>whole field; its pieces are in the cut list</source>
   <translation>ganzes Feld; seine Teile stehen in der Zuschnittliste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>width across flats</source>
   <translation>Schlüsselweite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>width at the ends</source>
   <translation>Breite an den Enden</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>width mm</source>
   <translation>Breite mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>width of the fault</source>
   <translation>Breite des Fehlers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>width of the {what}</source>
   <translation>Breite: {what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>with the slope of {slope} deg given</source>
   <translation>mit der gegebenen Neigung von {slope} Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>without rows</source>
   <translation>ohne Zeilen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>x, y and the axis's angle</source>
   <translation>x, y und den Winkel der Achse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{above} mm above</source>
   <translation>{above} mm oben</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{across} mm narrower</source>
   <translation>{across} mm schmaler</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{across} mm to the left</source>
   <translation>{across} mm nach links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{across} mm to the right</source>
   <translation>{across} mm nach rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{across} mm wider</source>
   <translation>{across} mm breiter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{along} mm down the grain</source>
   <translation>{along} mm faserabwärts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{along} mm from {a} along the line to {b}, then {square} mm square to the left</source>
   <translation>{along} mm von {a} längs der Linie nach {b}, dann {square} mm rechtwinklig nach links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{along} mm from {a} along the line to {b}, then {square} mm square to the right</source>
   <translation>{along} mm von {a} längs der Linie nach {b}, dann {square} mm rechtwinklig nach rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{along} mm up the grain</source>
   <translation>{along} mm faseraufwärts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>{a} and {b}</source>
   <translation>{a} und {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>{bar} mm across</source>
   <translation>{bar} mm quer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>{bar} mm upwards</source>
   <translation>{bar} mm aufwärts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>{belong} leaves are too few to prove an order.</source>
   <translation>{belong} Blätter sind zu wenige, um eine Reihenfolge nachzuweisen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{below} mm below</source>
   <translation>{below} mm unten</translation>
  </message>
  <message>
   <location filename="veneerwb/core/numerals.py" />
   <source>{cell!r:.40} is not a number that can be read; write it plainly, such as 1250.5.</source>
   <translation>{cell!r:.40} ist keine lesbare Zahl; schreiben Sie sie schlicht, etwa 1250.5.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/numerals.py" />
   <source>{cell} may mean {large} or {small}; write {large} for the first and {longer} for the second.</source>
   <translation>{cell} kann {large} oder {small} heißen; schreiben Sie {large} für das erste und {longer} für das zweite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>{chalk}  {photograph}: top is {top_end}; {side_up} up.</source>
   <translation>{chalk}  {photograph}: Kopf ist {top_end}; {side_up} oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>{chalk} (now {now})  {photograph}: top is {top_end}; {side_up} up.</source>
   <translation>{chalk} (jetzt {now})  {photograph}: Kopf ist {top_end}; {side_up} oben.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>{count} fields</source>
   <translation>{count} Felder</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>{count} marks do not tell how the leaf is turned; give two or more.</source>
   <translation>{count} Marken sagen nicht, wie das Blatt gedreht ist; geben Sie zwei oder mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>{count} marks fit any photograph, so that they confirm nothing; click at least {least}, on two leaves or more.</source>
   <translation>{count} Marken passen zu jedem Foto, sie bestätigen also nichts; klicken Sie mindestens {least} an, auf zwei Blättern oder mehr.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>{count} marks, A to {last},</source>
   <translation>{count} Marken, A bis {last},</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>{count} of the seams join two pieces of the same side up (the first between positions {a} and {b}), so they are no book joints.</source>
   <translation>{count} der Fugen verbinden zwei Teile mit derselben Seite oben (die erste zwischen den Plätzen {a} und {b}), also sind sie keine gestürzten Fugen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{count} of {total} photographs will not do ({names}): {said}</source>
   <translation>{count} von {total} Fotos taugen nicht ({names}): {said}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{count} of {total} photographs will not do ({names}); the first: {said}</source>
   <translation>{count} von {total} Fotos taugen nicht ({names}); das erste: {said}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>{count} photograph at {original} mm per pixel; working copies at {copies} mm per pixel.</source>
   <translation>{count} Foto mit {original} mm je Pixel; Arbeitskopien mit {copies} mm je Pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>{count} photographs at {original} mm per pixel; working copies at {copies} mm per pixel.</source>
   <translation>{count} Fotos mit {original} mm je Pixel; Arbeitskopien mit {copies} mm je Pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>{count} pieces</source>
   <translation>{count} Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>{count} strips</source>
   <translation>{count} Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>{count} strips side by side would be {strip} mm wide each, slivers under {least} mm: take {most} or fewer.</source>
   <translation>{count} Streifen nebeneinander wären je {strip} mm breit, Splitter unter {least} mm: nehmen Sie {most} oder weniger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} of {owner}</source>
   <translation>{faces} von {owner}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf} ({where}).</source>
   <translation>{faces} reichen bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus ({where}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf} ({where}); off the photograph its edge is repeated.</source>
   <translation>{faces} reichen bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus ({where}); neben dem Foto wird dessen Rand wiederholt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf}.</source>
   <translation>{faces} reichen bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf}; off the photograph its edge is repeated.</source>
   <translation>{faces} reichen bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus; neben dem Foto wird dessen Rand wiederholt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf} ({where}).</source>
   <translation>{faces} reicht bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus ({where}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf} ({where}); off the photograph its edge is repeated.</source>
   <translation>{faces} reicht bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus ({where}); neben dem Foto wird dessen Rand wiederholt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf}.</source>
   <translation>{faces} reicht bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf}; off the photograph its edge is repeated.</source>
   <translation>{faces} reicht bis zu {overhang} mm über die nutzbare Fläche von Blatt {leaf} hinaus; neben dem Foto wird dessen Rand wiederholt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} take {width} mm across and {length} mm along the grain of leaf {leaf}.</source>
   <translation>{faces} nehmen {width} mm quer und {length} mm längs der Faser von Blatt {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} takes {width} mm across and {length} mm along the grain of leaf {leaf}.</source>
   <translation>{faces} nimmt {width} mm quer und {length} mm längs der Faser von Blatt {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>{file} is a folder; give the photo file itself.</source>
   <translation>{file} ist ein Ordner; geben Sie die Fotodatei selbst.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>{least} to {most}</source>
   <translation>{least} bis {most}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>{leaves} leaves of {thickness} mm make {depth} mm, and a generated log gives {most} mm; ask for fewer or thinner leaves.</source>
   <translation>{leaves} Blätter von {thickness} mm ergeben {depth} mm, und ein erzeugter Stamm gibt {most} mm; verlangen Sie weniger oder dünnere Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{left} mm left</source>
   <translation>{left} mm links</translation>
  </message>
  <message>
   <location filename="veneerwb/core/listing.py" />
   <source>{names} and {more} more</source>
   <translation>{names} und {more} weitere</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/insets.py" />
   <source>{names} would take {taken} mm from every side and leave nothing of this top in one piece; give at most {most} mm in all.</source>
   <translation>{names} nähmen von jeder Seite {taken} mm und ließen von dieser Platte nichts an einem Stück; geben Sie im Ganzen höchstens {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{name} is left as it is.</source>
   <translation>{name} bleibt, wie es ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{name} was made {what}.</source>
   <translation>{name} wurde {what} gemacht.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{near} mm from {a} and {far} mm from {b}, left of the line from {a} to {b}</source>
   <translation>{near} mm von {a} und {far} mm von {b}, links der Linie von {a} nach {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{near} mm from {a} and {far} mm from {b}, right of the line from {a} to {b}</source>
   <translation>{near} mm von {a} und {far} mm von {b}, rechts der Linie von {a} nach {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/listing.py" />
   <source>{others} and {last}</source>
   <translation>{others} und {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/listing.py" />
   <source>{others} or {last}</source>
   <translation>{others} oder {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>{photos} photographs of {columns} x {rows} pixels take {size} GB; give fewer leaves or more mm per pixel.</source>
   <translation>{photos} Fotos von {columns} x {rows} Pixeln nehmen {size} GB; geben Sie weniger Blätter oder mehr mm je Pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} has more than {most} times more or less light than the others; photograph the leaf again, or leave the photo out.</source>
   <translation>{photo} hat mehr als {most} mal mehr oder weniger Licht als die anderen; fotografieren Sie das Blatt noch einmal, oder lassen Sie das Foto weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} is black all over; photograph the leaf again.</source>
   <translation>{photo} ist ganz schwarz; fotografieren Sie das Blatt noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} is black where its light is measured; photograph the leaf again with more light, or choose another patch.</source>
   <translation>{photo} ist schwarz, wo sein Licht gemessen wird; fotografieren Sie das Blatt noch einmal mit mehr Licht, oder wählen Sie eine andere Stelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} is burnt out where its light is measured; photograph the leaf again with less light, or choose a darker patch.</source>
   <translation>{photo} ist ausgebrannt, wo sein Licht gemessen wird; fotografieren Sie das Blatt noch einmal mit weniger Licht, oder wählen Sie eine dunklere Stelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} is not plain where its light is measured; choose a patch of one colour, without figure, edges or deep shadow.</source>
   <translation>{photo} ist nicht einfarbig, wo sein Licht gemessen wird; wählen Sie eine Stelle in einer Farbe, ohne Textur, Kanten oder tiefen Schatten.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{photo} is the same photograph as {other}; leave one of them out.</source>
   <translation>{photo} ist dasselbe Foto wie {other}; lassen Sie eines weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} is white all over; photograph the leaf again.</source>
   <translation>{photo} ist ganz weiß; fotografieren Sie das Blatt noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{photo} shows its leaf turned by 90 degrees against the others; turn that photograph and save it so.</source>
   <translation>{photo} zeigt sein Blatt um 90 Grad gegen die anderen gedreht; drehen Sie dieses Foto und speichern Sie es so.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{photo} was given twice; leave one of them out.</source>
   <translation>{photo} wurde zweimal gegeben; lassen Sie eines weg.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} would show a leaf {width} m across and {length} m along, larger than any; check the scale.</source>
   <translation>{photo} zeigte ein Blatt von {width} m quer und {length} m längs, größer als irgendeines; prüfen Sie den Maßstab.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} would show {width} m by {length} m, more than a leaf; let the leaf be found, draw its outline, or check what the photograph is squared up by.</source>
   <translation>{photo} zeigte {width} m mal {length} m, mehr als ein Blatt; lassen Sie das Blatt finden, zeichnen Sie seinen Umriss, oder prüfen Sie, wonach das Foto entzerrt wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo}: the patch for the light covers only {count} pixels; draw it larger, at least {least} pixels.</source>
   <translation>{photo}: die Stelle für das Licht deckt nur {count} Pixel; zeichnen Sie sie größer, mindestens {least} Pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo}: the patch for the light lies outside the picture of {columns} x {rows} pixels; draw it on the picture.</source>
   <translation>{photo}: die Stelle für das Licht liegt außerhalb des Bilds von {columns} x {rows} Pixeln; zeichnen Sie sie auf das Bild.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{right} mm right</source>
   <translation>{right} mm rechts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>{rows} rows end to end would be {row} mm long each, slivers under {least} mm: make the top longer.</source>
   <translation>{rows} Reihen Kopf an Kopf wären je {row} mm lang, Splitter unter {least} mm: machen Sie die Platte länger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>{rows} rows end to end would be {row} mm long each, slivers under {least} mm: take {most} or fewer.</source>
   <translation>{rows} Reihen Kopf an Kopf wären je {row} mm lang, Splitter unter {least} mm: nehmen Sie {most} oder weniger.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} cooler</source>
   <translation>{share} kühler</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} darker</source>
   <translation>{share} dunkler</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} lighter</source>
   <translation>{share} heller</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} of it is now brighter than a picture can show.</source>
   <translation>{share} davon ist jetzt heller, als ein Bild zeigen kann.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} of it was too bright when it was photographed.</source>
   <translation>{share} davon war schon beim Fotografieren zu hell.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} warmer</source>
   <translation>{share} wärmer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>{sides}-sided, {size} mm across flats</source>
   <translation>{sides}-seitig, Schlüsselweite {size} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>{top}, less {border} mm all round</source>
   <translation>{top}, ringsum {border} mm weniger</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{up} mm higher</source>
   <translation>{up} mm höher</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{up} mm lower</source>
   <translation>{up} mm niedriger</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>{ways} ways</source>
   <translation>{ways} Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>{ways} ways of {strips} strips</source>
   <translation>{ways} Keile zu {strips} Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg close to 360.</source>
   <translation>{ways} Keile von {angle} Grad schließen sich zu 360.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring overlaps by {overlap} mm at the rim; the excess must be trued off before the last joint.</source>
   <translation>{ways} Keile von {angle} Grad ergeben {total} Grad: der Ring überlappt am Rand um {overlap} mm; das Zuviel ist vor der letzten Fuge wegzufügen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring overlaps by {overlap} mm at the rim; trued along the diameter, each half loses {trim} deg at both ends ({rim_lost} mm at the rim) and the seams between lie up to {seam_shift} mm off their places.</source>
   <translation>{ways} Keile von {angle} Grad ergeben {total} Grad: der Ring überlappt am Rand um {overlap} mm; längs des Durchmessers gefügt verliert jede Hälfte an beiden Enden {trim} Grad ({rim_lost} mm am Rand), und die Fugen dazwischen liegen bis zu {seam_shift} mm neben ihrem Platz.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring stays open by {rim_gap} mm at the rim, and truing the halves takes {tip_lost} mm off every tip.</source>
   <translation>{ways} Keile von {angle} Grad ergeben {total} Grad: der Ring bleibt am Rand um {rim_gap} mm offen, und das Fügen der Hälften nimmt jeder Spitze {tip_lost} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring stays open by {rim_gap} mm at the rim.</source>
   <translation>{ways} Keile von {angle} Grad ergeben {total} Grad: der Ring bleibt am Rand um {rim_gap} mm offen.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/order.py" />
   <source>{what} need a list of {count} different leaves; this one has {listed}, {different} of them different.</source>
   <translation>{what} brauchen eine Liste von {count} verschiedenen Blättern; diese hat {listed}, davon {different} verschieden.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>{what} need {count} leaves and from leaf {first} on there are {have}: {missing} missing; take an earlier first leaf, or a larger bundle.</source>
   <translation>{what} brauchen {count} Blätter, und ab Blatt {first} sind es {have}: {missing} fehlen; nehmen Sie ein früheres erstes Blatt, oder ein größeres Paket.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>{what} need {count} leaves and from leaf {first} on there are {have}: {missing} missing; take {most} leaves or fewer, an earlier first leaf, or a larger bundle.</source>
   <translation>{what} brauchen {count} Blätter, und ab Blatt {first} sind es {have}: {missing} fehlen; nehmen Sie {most} Blätter oder weniger, ein früheres erstes Blatt, oder ein größeres Paket.</translation>
  </message>
 </context>
</TS>
