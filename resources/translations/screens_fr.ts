<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <location filename="veneerwb/gui/pictured.py" />
   <source>Leaf pictures</source>
   <translation>Images des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Numbers</source>
   <translation>Numéros</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Seams</source>
   <translation>Joints</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Whether positions and leaves are written on the pictures, underlined for a turned leaf</source>
   <translation>Si les positions et les feuilles sont écrites sur les images, soulignées pour une feuille retournée</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/view.py" />
   <source>Whether the seams are drawn on the pictures</source>
   <translation>Si les joints sont tracés sur les images</translation>
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
   <translation>Un stock de simples dimensions n'a pas de photos où choisir un emplacement ; coupez le frisage dans une liasse de feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>Choose the folder that holds the photographs of the leaves.</source>
   <translation>Choisissez le dossier qui contient les photos des feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>Click what is still missing {where}.</source>
   <translation>Cliquez ce qui manque encore {where}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/drawing.py" />
   <source>FreeCAD wrote no whole PDF of the page {page}; make room on the disk, recompute the document and try again.</source>
   <translation>FreeCAD n'a pas écrit de PDF entier de la page {page} ; faites de la place sur le disque, recalculez le document et réessayez.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>No back shares two marks with its face; click the same marks or points on both.</source>
   <translation>Aucun dos ne partage deux repères avec sa face ; cliquez les mêmes repères ou points sur les deux.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>That is mark {letter} already; drag {moved} to another mark.</source>
   <translation>C'est déjà le repère {letter} ; tirez {moved} vers un autre repère.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>That is mark {there} already; drag {moved} to another mark.</source>
   <translation>C'est déjà le repère {there} ; tirez {moved} vers un autre repère.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>That is {letter} already; click another place.</source>
   <translation>C'est déjà {letter} ; cliquez un autre endroit.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>The back of leaf {leaf} is in the document already; add another photograph of it, which takes its place, or undo the step that added it.</source>
   <translation>Le dos de la feuille {leaf} est déjà dans le document ; ajoutez-en une autre photo, qui prendra sa place, ou annulez l'étape qui l'a ajouté.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>The file {file} has {count} lines for a bundle called {name}; give one line that name.</source>
   <translation>Le fichier {file} a {count} lignes pour une liasse appelée {name} ; donnez ce nom à une seule ligne.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>The first photograph</source>
   <translation>La première photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/state.py" />
   <source>The match is gone; close this panel.</source>
   <translation>Le frisage n'est plus là ; fermez ce panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>The names of all photographs say back; those of the faces are missing.</source>
   <translation>Les noms de toutes les photos disent back ; celles des faces manquent.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>The names of the {backs} photographs of backs do not tell whose they are; put the number of its leaf last in each name.</source>
   <translation>Les noms des {backs} photos de dos ne disent pas de quelles feuilles elles sont ; mettez le numéro de sa feuille en dernier dans chaque nom.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>The usable outline of leaf {leaf} crosses itself or encloses nothing; draw it round the leaf, without crossing.</source>
   <translation>Le contour utile de la feuille {leaf} se croise ou n'enferme rien ; tracez-le autour de la feuille, sans croisement.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>Tie the backs to their faces first: until then the shift of the photographs would pass for wander.</source>
   <translation>Liez d'abord les dos à leurs faces : jusque-là, le décalage des photos passerait pour de la dérive.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>length of the first photograph</source>
   <translation>longueur de la première photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on each photograph</source>
   <translation>sur chaque photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on the photograph</source>
   <translation>sur la photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on {names}</source>
   <translation>sur {names}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>on {names} and {more} more</source>
   <translation>sur {names} et {more} autres</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>size of a pixel</source>
   <translation>taille d'un pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/plan.py" />
   <source>width of the first photograph</source>
   <translation>largeur de la première photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/pictured.py" />
   <source>{name} is shown without pictures: {why}</source>
   <translation>{name} est montré sans images : {why}</translation>
  </message>
 </context>
 <context>
  <name>VeneerAtWork</name>
  <message>
   <location filename="veneerwb/gui/panels/at_work.py" />
   <source>Still at work. When it is through, press OK again.</source>
   <translation>Le travail est en cours. Quand il est fini, appuyez de nouveau sur OK.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/at_work.py" />
   <source>Stop ({percent} %)</source>
   <translation>Arrêter ({percent} %)</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/at_work.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Arrêté ; rien n'a été changé.</translation>
  </message>
 </context>
 <context>
  <name>VeneerBacksPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>All letters are used.</source>
   <translation>Toutes les lettres sont prises.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Leaf {number} is gone; close this panel.</source>
   <translation>La feuille {number} n'est plus là ; fermez ce panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Left as tied by marks or by hand: {leaves}.</source>
   <translation>Laissés comme liés par repères ou à la main : {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Measured before: from face to back the figure wanders {along} {up} the leaf and {across} to the {right}, known to {left}.</source>
   <translation>Mesuré auparavant : de la face au dos, le dessin dérive de {along} {up} de la feuille et de {across} vers {right}, connu à {left} près.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>OK does not keep it, unless you take it.</source>
   <translation>OK ne le garde pas, à moins que vous l'acceptiez.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>One back can prove it.</source>
   <translation>Un seul dos peut le prouver.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Photograph of the back of leaf {leaf}</source>
   <translation>Photographie du dos de la feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Photographs</source>
   <translation>Photographies</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Photographs of backs</source>
   <translation>Photographies de dos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Strips of face and back in turn: their edges should meet.</source>
   <translation>Bandes de face et de dos tour à tour : leurs bords doivent se rejoindre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>The back of leaf {leaf} is not photographed.</source>
   <translation>Le dos de la feuille {leaf} n'est pas photographié.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The back of leaf {leaf} is tied by its outline: the two lie {off} apart.</source>
   <translation>Le dos de la feuille {leaf} est lié par son contour : les deux sont à {off} l'un de l'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The back of leaf {leaf} is tied by marks, which lie {off} apart.</source>
   <translation>Le dos de la feuille {leaf} est lié par des repères, à {off} l'un de l'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The back of leaf {leaf} was laid on its face by a script, which says not how.</source>
   <translation>Le dos de la feuille {leaf} a été posé sur sa face par un script, qui ne dit pas comment.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>The back of this leaf is not photographed.</source>
   <translation>Le dos de cette feuille n'est pas photographié.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The bundle does not say how the leaves lay.</source>
   <translation>La liasse ne dit pas comment les feuilles étaient posées.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The bundle says that leaf 2 lay over leaf 1.</source>
   <translation>La liasse dit que la feuille 2 était sur la feuille 1.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The bundle says that leaf 2 lay under leaf 1.</source>
   <translation>La liasse dit que la feuille 2 était sous la feuille 1.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The leaves are not registered: it counts once they follow the figure.</source>
   <translation>Les feuilles ne sont pas calées : cela compte dès qu'elles suivent le dessin.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>The stack follows the log, in which surfaces lie as they are.</source>
   <translation>La pile suit la grume, où les surfaces sont comme elles sont.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>Tie backs</source>
   <translation>Lier les dos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>To tie by marks, click {letter}: a paper mark, or a hole or tear that shows on both sides.</source>
   <translation>Pour lier par repères, cliquez {letter} : un repère en papier, un trou ou une déchirure visible des deux côtés.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Turned leaves are pinned by their backs' figure, which may miss by {left}.</source>
   <translation>Les feuilles retournées sont pionnées par le dessin de leur dos, qui peut être à {left} près.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>Turned leaves are shown as their backs will come out, to {left}.</source>
   <translation>Les feuilles retournées sont montrées comme leurs dos viendront, à {left} près.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>Where the back of leaf {leaf} lies on its face is not known yet: tie it.</source>
   <translation>Où le dos de la feuille {leaf} se trouve sur sa face n'est pas encore connu : liez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>down</source>
   <translation>vers le bas</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>left</source>
   <translation>la gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>marks</source>
   <translation>repères</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>outline</source>
   <translation>contour</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>right</source>
   <translation>la droite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/back_words.py" />
   <source>up</source>
   <translation>vers le haut</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/backs.py" />
   <source>{backs} of {leaves} backs are photographed.</source>
   <translation>{backs} dos sur {leaves} sont photographiés.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: by {by}, {off}</source>
   <translation>{leaf} : par {by}, {off}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: in doubt, {off}</source>
   <translation>{leaf} : douteux, {off}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: laid by a script</source>
   <translation>{leaf} : posé par un script</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/backs.py" />
   <source>{leaf}: not tied</source>
   <translation>{leaf} : non lié</translation>
  </message>
 </context>
 <context>
  <name>VeneerBenchPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>No sheets yet: OK makes them.</source>
   <translation>Pas encore de planches : OK les fait.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>The sheets are not up to date: {why}</source>
   <translation>Les planches ne sont pas à jour : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>The sheets show revision {mark}.</source>
   <translation>Les planches montrent l'indice {mark}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>Used: {used} m2 of {bought} m2 bought, {share} %.

Still to buy? {leaves} leaves in sequence, {spares} of them spare, each at least {width} x {length}.</source>
   <translation>Utilisé : {used} m2 sur {bought} m2 achetés, {share} %.

Reste à acheter ? {leaves} feuilles en suite, dont {spares} de réserve, chacune d'au moins {width} x {length}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/bench.py" />
   <source>{name} to the bench</source>
   <translation>{name} à l'établi</translation>
  </message>
 </context>
 <context>
  <name>VeneerBuildUpPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>Build up {name}</source>
   <translation>Composer {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>No match is built up so, and there is nothing to buy.</source>
   <translation>Aucun frisage n'est composé ainsi, et il n'y a rien à acheter.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>No match is built up so.</source>
   <translation>Aucun frisage n'est composé ainsi.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>Other veneer</source>
   <translation>Autre</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>Save the bill of materials as CSV</source>
   <translation>Enregistrer la nomenclature en CSV</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>The bill is in the sheet {name}.</source>
   <translation>La nomenclature est dans la feuille {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/buildup.py" />
   <source>{thick} thick in all; {count} parts beside the match's pieces.</source>
   <translation>{thick} d'épaisseur en tout ; {count} éléments outre les pièces du frisage.</translation>
  </message>
 </context>
 <context>
  <name>VeneerCheckPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>Do not cut yet: {count} against it.</source>
   <translation>Ne coupez pas encore ; obstacles : {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>It can be cut, knowing this.</source>
   <translation>On peut couper, en sachant ceci.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>Nothing stands against cutting.</source>
   <translation>Rien ne s'oppose à la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/check.py" />
   <source>The match is gone.</source>
   <translation>Le frisage n'est plus là.</translation>
  </message>
 </context>
 <context>
  <name>VeneerChoices</name>
  <message>
   <location filename="veneerwb/gui/ring.py" />
   <source>Too few leaves for a ring.</source>
   <translation>Trop peu de feuilles pour une couronne.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/choices_window.py" />
   <source>{name}: costs {along} of length, {across} of width</source>
   <translation>{name} : coûte {along} de longueur, {across} de largeur</translation>
  </message>
 </context>
 <context>
  <name>VeneerClosingPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>A gap cannot be less than nothing; a half that is over gapes at its tip, one that is under at an end.</source>
   <translation>Un jeu ne peut pas être moins que rien ; une moitié trop grande bâille à la pointe, une trop petite à un bout.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Angle</source>
   <translation>Angle</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>As it will look when it is trued.</source>
   <translation>Tel qu'il sera une fois dressé.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>As taped, apart; what is off {large} as large. Grey: off. Red: true here.</source>
   <translation>Tel qu'assemblé, écarté ; l'écart grossi : {large}. Gris : l'écart. Rouge : dresser ici.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Close the ring of {name}</source>
   <translation>Fermer la couronne de {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>End</source>
   <translation>Bout</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Far</source>
   <translation>Loin</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Measure the pieces, the halves, or the gaps under a straightedge laid across them, and enter them here.</source>
   <translation>Mesurez les pièces, les moitiés, ou les jeux sous une règle posée en travers, et entrez-les ici.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Only a radial match is a ring that closes; select one of those.</source>
   <translation>Seul un frisage rayonnant est une couronne qui se ferme ; choisissez-en un.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Readings still missing: {count}.</source>
   <translation>Lectures encore manquantes : {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Sure</source>
   <translation>Sûr</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>The bundle's</source>
   <translation>Celui de la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>There are more readings than pieces; measure the ring anew.</source>
   <translation>Il y a plus de lectures que de pièces ; mesurez la couronne à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>Tip</source>
   <translation>Pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>Ways of truing, the advised one with a star:</source>
   <translation>Façons de dresser, la conseillée avec une étoile :</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>{end}: piece {piece}, its edge to {other}: {tip} at the tip, {rim} at the rim, {far} from it</source>
   <translation>{end} : pièce {piece}, son bord vers {other} : {tip} à la pointe, {rim} au pourtour, {far} de là</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>{how}, {sure}: {over} deg over, seams {off} off, {lost} lost</source>
   <translation>{how}, {sure} : {over} deg de plus, joints à {off} près, {lost} perdus</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing.py" />
   <source>{large}; red: trued, dashed: as planned.</source>
   <translation>{large} ; rouge : dressé, tirets : comme prévu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>{text} cannot be read; write a length such as 0.4 mm.</source>
   <translation>{text} est illisible ; écrivez une longueur comme 0.4 mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/closing_readings.py" />
   <source>{text} cannot be read; write degrees such as 30.15.</source>
   <translation>{text} est illisible ; écrivez des degrés comme 30.15.</translation>
  </message>
 </context>
 <context>
  <name>VeneerCuts</name>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>1 leaf</source>
   <translation>1 feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>1 lot of {each}, {once}; cuts along seams: {strokes}.</source>
   <translation>1 lot de {each}, {once} ; coupes le long des joints : {strokes}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>1 set-out</source>
   <translation>1 tracé</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>All pieces are alike: one stack serves them.</source>
   <translation>Toutes les pièces sont pareilles : une seule pile leur suffit.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>As little leaf as by shape, and the most work. Leaves need not lie on each other, and each piece can be fitted.</source>
   <translation>Aussi peu de placage que par forme, et le plus de travail. Les feuilles n'ont pas à être posées les unes sur les autres, et chaque pièce peut être ajustée.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>By shape: {lots}, {share} % used</source>
   <translation>Par forme : {lots}, {share} % utilisés</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Every outline lies on its leaves.</source>
   <translation>Chaque contour tient sur ses feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Least leaf, but set out anew for each lot. Mirror images share a lot where one of them is turned over.</source>
   <translation>Le moins de placage, mais tracé de nouveau pour chaque lot. Des images en miroir partagent un lot si l'une d'elles est retournée.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Lots by shape</source>
   <translation>Lots par forme</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>One stack</source>
   <translation>Une seule pile</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>One stack: {lots}, {share} % used</source>
   <translation>Une seule pile : {lots}, {share} % utilisés</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Quickest: one template, one cut through all. What a piece needs less is trimmed off and lost.</source>
   <translation>Le plus rapide : un gabarit, une coupe à travers toutes. Ce qu'une pièce demande de moins est rogné et perdu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Reaches up to {over} off the usable area of leaves {numbers}.</source>
   <translation>Dépasse la surface utile des feuilles {numbers}, jusqu'à {over}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>Single pieces</source>
   <translation>Pièces une à une</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>and {count} more</source>
   <translation>et {count} de plus</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>set out once</source>
   <translation>tracé une fois</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{area} m2 are cut out, {taken} % of these leaves; the pieces need {net} m2, {used} % of that.</source>
   <translation>{area} m2 sont coupés, {taken} % de ces feuilles ; les pièces demandent {net} m2, soit {used} % de cela.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} leaves</source>
   <translation>{count} feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} lots of {each}, each {once}; cuts along seams: {strokes}.</source>
   <translation>{count} lots de {each}, chacun {once} ; coupes le long des joints : {strokes}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} seams lie within the outline and are cut piece by piece.</source>
   <translation>{count} joints sont à l'intérieur du contour et sont coupés pièce par pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{count} set-outs</source>
   <translation>{count} tracés</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_words.py" />
   <source>{fewest} to {most} leaves</source>
   <translation>{fewest} à {most} feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/cuts_window.py" />
   <source>{name} (chosen)</source>
   <translation>{name} (choix actuel)</translation>
  </message>
 </context>
 <context>
  <name>VeneerDrawingPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/drawing.py" />
   <source>New drawing</source>
   <translation>Nouveau plan</translation>
  </message>
 </context>
 <context>
  <name>VeneerFacingPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/facing.py" />
   <source>Lay a leaf on faces</source>
   <translation>Poser une feuille sur des faces</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/facing.py" />
   <source>Select one or more flat faces in the 3-D view, then press this again.</source>
   <translation>Choisissez une ou plusieurs faces planes dans la vue 3D, puis appuyez à nouveau ici.</translation>
  </message>
 </context>
 <context>
  <name>VeneerFaultsPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Click a fault to change it; Draw starts a new one.</source>
   <translation>Cliquez un défaut pour le changer ; Tracer en commence un nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Click along the split, then Enter; or all round it.</source>
   <translation>Cliquez le long de la fente, puis Entrée ; ou tout autour.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Click round it, back to the first corner or Enter.</source>
   <translation>Cliquez autour, retour au premier coin ou Entrée.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Draw faults</source>
   <translation>Tracer les défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/fault_writing.py" />
   <source>Leaf {number} is gone; close this panel.</source>
   <translation>La feuille {number} n'est plus là ; fermez ce panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Not registered: register first, or draw it on leaf {number}.</source>
   <translation>Non calée : calez d'abord, ou tracez-le sur la feuille {number}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Nothing stands out on this leaf.</source>
   <translation>Rien ne ressort sur cette feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Select sketches, wires or flat faces in the tree first.</source>
   <translation>Choisissez d'abord des esquisses, polylignes ou faces planes dans l'arbre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Suggest spots and splits</source>
   <translation>Suggérer taches et fentes</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/faults.py" />
   <source>Take it, or leave it.</source>
   <translation>Acceptez-le, ou laissez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>all leaves</source>
   <translation>toutes les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>knot</source>
   <translation>nœud</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>leaf {number}</source>
   <translation>feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>margin</source>
   <translation>marge</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>patch</source>
   <translation>pièce rapportée</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>split</source>
   <translation>fente</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>stain</source>
   <translation>tache</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/faults.py" />
   <source>usable</source>
   <translation>utile</translation>
  </message>
 </context>
 <context>
  <name>VeneerHelp</name>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>Example</source>
   <translation>Exemple</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>Open Example</source>
   <translation>Ouvrir l'exemple</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>The example is damaged ({file}); install the workbench again.</source>
   <translation>L'exemple est abîmé ({file}) ; installez de nouveau l'atelier.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>The example is missing ({file}); install the workbench again.</source>
   <translation>L'exemple manque ({file}) ; installez de nouveau l'atelier.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/help.py" />
   <source>The pages of help are missing ({folder}); install the workbench again.</source>
   <translation>Les pages d'aide manquent ({folder}) ; installez de nouveau l'atelier.</translation>
  </message>
 </context>
 <context>
  <name>VeneerLeafByLeafPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>Leaf {number}</source>
   <translation>Feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>Something was undone or redone. What you pointed out is kept here; see that it still fits, then OK.</source>
   <translation>Quelque chose a été annulé ou rétabli. Ce que vous avez montré est gardé ici ; voyez s'il convient encore, puis OK.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>The bundle is gone; close this panel.</source>
   <translation>La liasse n'est plus là ; fermez ce panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaf_by_leaf.py" />
   <source>The photographs that were those of leaves {leaves} are no longer there, and what you pointed out on them went with them.</source>
   <translation>Les photos qui étaient celles des feuilles {leaves} ne sont plus là, et ce que vous y avez montré est parti avec elles.</translation>
  </message>
 </context>
 <context>
  <name>VeneerLeavesPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>&amp;Apart</source>
   <translation>Éca&amp;rt</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>All are clicked on.</source>
   <translation>Toutes sont cliquées.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>As the leaves come in. OK keeps them.</source>
   <translation>Telles qu'elles arrivent. OK les garde.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Background shows round the leaf: choose Found on the page Prepare.</source>
   <translation>Le fond se voit autour de la feuille : choisissez « Trouvée » à la page Préparer.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Backs: {count}.</source>
   <translation>Dos : {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>Bring in leaves</source>
   <translation>Importer des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click round the leaf.</source>
   <translation>Cliquez autour de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click round the patch, back to the first corner or Enter.</source>
   <translation>Cliquez autour de la plage, retour au premier coin ou Entrée.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the four corners of the leaf, in any order.</source>
   <translation>Cliquez les quatre coins de la feuille, dans n'importe quel ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the four corners of the sheet, in any order.</source>
   <translation>Cliquez les quatre coins du cadre, dans n'importe quel ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the paper marks A, B, C, D, one after the other round.</source>
   <translation>Cliquez les repères en papier A, B, C, D, l'un après l'autre en tournant.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click the two paper marks whose distance you know.</source>
   <translation>Cliquez les deux repères en papier dont vous connaissez la distance.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click two paper marks or more, far apart.</source>
   <translation>Cliquez deux repères en papier ou plus, bien écartés.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Click two points whose distance you know.</source>
   <translation>Cliquez deux points dont vous connaissez la distance.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Counted in the order of their names, which hold no leaf numbers.</source>
   <translation>Comptées dans l'ordre de leurs noms, qui ne portent pas de numéros de feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag a cross to another mark.</source>
   <translation>Tirez une croix vers un autre repère.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag corners; a double click on an edge adds one; Delete finds it anew.</source>
   <translation>Tirez les coins ; un double clic sur un bord en ajoute un ; Suppr cherche à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag its corners; Delete, to draw it anew.</source>
   <translation>Tirez ses coins ; Suppr, pour la retracer.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Drag the crosses, or move them with the arrow keys.</source>
   <translation>Tirez les croix, ou déplacez-les avec les flèches.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>Folder of photographs of backs</source>
   <translation>Dossier de photos de dos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Leaf {number}</source>
   <translation>Feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Leaf {number}, back</source>
   <translation>Feuille {number}, dos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Leaves</source>
   <translation>Feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>One is still to be clicked on.</source>
   <translation>Il reste à cliquer sur une.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>One photograph, leaf {first}.</source>
   <translation>Une photo, feuille {first}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>Page Down: the next photograph.</source>
   <translation>Page suiv. : la photo suivante.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>Photographs of leaves</source>
   <translation>Photographies des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>Still to be clicked on: {count}.</source>
   <translation>Il reste à cliquer sur : {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/leaves.py" />
   <source>The bundle was deleted; OK brings the photographs in again.</source>
   <translation>La liasse a été supprimée ; OK importe à nouveau les photos.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>The first is {width} across, {length} along.</source>
   <translation>La première fait {width} en travers, {length} en long.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>grey card</source>
   <translation>carte grise</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>leaf</source>
   <translation>feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/photos.py" />
   <source>patch</source>
   <translation>plage</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>{count} in between are missing.</source>
   <translation>Il en manque {count} entre elles.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/leaves/words.py" />
   <source>{count} photographs, leaves {first} to {last}.</source>
   <translation>{count} photos, feuilles {first} à {last}.</translation>
  </message>
 </context>
 <context>
  <name>VeneerMarksPanel</name>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>; its arrow does not point up</source>
   <translation>; sa flèche ne pointe pas vers le haut</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>; its ring seems {seen} across, not {printed}: see scale and print</source>
   <translation>; son anneau semble faire {seen}, non {printed} : voir échelle et impression</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>All are clicked on.</source>
   <translation>Tous sont cliqués.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>All letters are used; drag a mark, or remove one.</source>
   <translation>Toutes les lettres sont prises ; tirez un repère, ou retirez-en un.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Centred: {mark}.</source>
   <translation>Centré : {mark}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Choose a photograph of the pinned leaf, its marks and both pins in sight, or of the stack, marks of its leaves in sight.</source>
   <translation>Choisissez une photo de la feuille pionnée, ses repères et les deux pions visibles, ou de la pile, avec des repères visibles de ses feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Click on mark {letter}, roughly; it is centred by itself.</source>
   <translation>Cliquez le repère {letter}, à peu près ; il est centré tout seul.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Click on mark {name}, roughly; it is centred by itself.</source>
   <translation>Cliquez le repère {name}, à peu près ; il est centré tout seul.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>From this photograph, {count} marks centred to {error} or better.</source>
   <translation>De cette photo, {count} repères centrés à {error} près ou mieux.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>It is squared up by the marks of leaf {leaf}.</source>
   <translation>Elle est redressée par les repères de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>It is taken to be square on.</source>
   <translation>Elle est tenue pour prise d'aplomb.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>Leaf {leaf} lies {depth} down: a parallax of {shift} is set right.</source>
   <translation>La feuille {leaf} est à {depth} de profondeur : une parallaxe de {shift} est corrigée.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Leaf {number}</source>
   <translation>Feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Leaf {number} is gone; close this panel.</source>
   <translation>La feuille {number} n'est plus là ; fermez ce panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>Locate marks</source>
   <translation>Situer les repères</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>No leaf has marks yet: locate them on the page before.</source>
   <translation>Aucune feuille n'a encore de repères : situez-les à la page précédente.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Not in sight? Choose another one in the panel.</source>
   <translation>Pas visible ? Choisissez-en un autre dans le panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Photograph of what is pinned</source>
   <translation>Photographie de ce qui est pionné</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/mark_printing.py" />
   <source>Save the paper marks as PDF</source>
   <translation>Enregistrer les repères en papier en PDF</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>The limits are our choice. Up the grain is where the arrows point, seen from the face.</source>
   <translation>Les limites sont notre choix. Le fil monte vers où pointent les flèches, vu depuis la face.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>The middle of the leaf</source>
   <translation>Le milieu de la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>The tip of {match}, as photographed, with no registers</source>
   <translation>La pointe de {match}, telle que photographiée, sans calages</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>The tip of {match}, by the leaf's register</source>
   <translation>La pointe de {match}, par le calage de la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>What Is Pinned</source>
   <translation>Ce qui est pionné</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/mark_printing.py" />
   <source>Written: {file}, one page. Print it at 100 %.</source>
   <translation>Écrit : {file}, une page. Imprimez à 100 %.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/mark_printing.py" />
   <source>Written: {file}, {pages} pages. Print it at 100 %.</source>
   <translation>Écrit : {file}, {pages} pages. Imprimez à 100 %.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/confirming.py" />
   <source>Zoom in and click on the middle of {name}.</source>
   <translation>Agrandissez et cliquez le milieu de {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>locate two marks of this leaf to measure it from them</source>
   <translation>situer deux repères de cette feuille pour la mesurer à partir d'eux</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>middle</source>
   <translation>milieu</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>of leaf {number}</source>
   <translation>de la feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>pin {number}</source>
   <translation>pion {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/marks.py" />
   <source>tip</source>
   <translation>pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>too near each other to compare</source>
   <translation>trop proches pour être comparés</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{letter}, as kept</source>
   <translation>{letter}, tel que gardé</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/stack.py" />
   <source>{name}, as clicked</source>
   <translation>{name}, tel que cliqué</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{number}: none</source>
   <translation>{number} : aucun</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{number}: {letters}</source>
   <translation>{number} : {letters}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/marks.py" />
   <source>{rms} off leaf {other}</source>
   <translation>{rms} de la feuille {other}</translation>
  </message>
 </context>
 <context>
  <name>VeneerMatchPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Book</source>
   <translation>En livre</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>New match</source>
   <translation>Nouveau frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>New radial match</source>
   <translation>Nouveau frisage rayonnant</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>No outline is selected; select a closed sketch, a wire or a flat face, then take it.</source>
   <translation>Aucun contour n'est choisi ; choisissez une esquisse fermée, une polyligne ou une face plane, puis prenez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Random</source>
   <translation>Mélangé</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Reverse slip</source>
   <translation>Alterné</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>S&amp;ide</source>
   <translation>Cô&amp;té</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Slip</source>
   <translation>Glissé</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>Slip, all turned over</source>
   <translation>Retournées</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/match.py" />
   <source>{name} is made from this match; choose an outline that is not.</source>
   <translation>{name} est fait de ce frisage ; choisissez un contour qui ne l'est pas.</translation>
  </message>
 </context>
 <context>
  <name>VeneerPacket</name>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Folder for the packet</source>
   <translation>Dossier pour le dossier d'atelier</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Left out, as its contents page says:</source>
   <translation>Laissé de côté, comme le dit sa page de sommaire :</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Refresh sheets</source>
   <translation>Refaire les planches</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Stopped; nothing was written.</source>
   <translation>Arrêté ; rien n'a été écrit.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>The packet was written:
{folder}</source>
   <translation>Le dossier a été écrit :
{folder}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/packet.py" />
   <source>Write packet</source>
   <translation>Écrire le dossier</translation>
  </message>
 </context>
 <context>
  <name>VeneerPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/live.py" />
   <source>An expression sets this value</source>
   <translation>Une expression fixe cette valeur</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/live.py" />
   <source>Edit {name}</source>
   <translation>Modifier {name}</translation>
  </message>
 </context>
 <context>
  <name>VeneerParticularsPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>In full {full_m2} m² ({full_ft} sq ft), usable {m2} m² ({ft} sq ft).</source>
   <translation>En tout {full_m2} m² ({full_ft} pieds carrés), utiles {m2} m² ({ft} pieds carrés).</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>Read particulars from a CSV file</source>
   <translation>Lire les renseignements d'un fichier CSV</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>Save the particulars as CSV</source>
   <translation>Enregistrer les renseignements en CSV</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/particulars.py" />
   <source>{count} leaves, at least {width} by {length}.</source>
   <translation>{count} feuilles, d'au moins {width} sur {length}.</translation>
  </message>
 </context>
 <context>
  <name>VeneerPhoto</name>
  <message>
   <location filename="veneerwb/gui/photos/window.py" />
   <source>Column {column}, row {row}</source>
   <translation>Colonne {column}, ligne {row}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/photos/window.py" />
   <source>lines every {step}</source>
   <translation>lignes tous les {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/photos/window.py" />
   <source>{across} across, {along} along</source>
   <translation>{across} en travers, {along} en long</translation>
  </message>
 </context>
 <context>
  <name>VeneerProgress</name>
  <message>
   <location filename="veneerwb/gui/progress.py" />
   <source>Stop</source>
   <translation>Arrêter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/progress.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Arrêté ; rien n'a été changé.</translation>
  </message>
 </context>
 <context>
  <name>VeneerRunPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Book</source>
   <translation>En livre</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Lay panels in sequence</source>
   <translation>Poser des panneaux en suite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Random</source>
   <translation>Mélangé</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Reverse slip</source>
   <translation>Alterné</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Select the flat faces of one plane in the 3-D view, then press this again.</source>
   <translation>Choisissez les faces planes d'un même plan dans la vue 3D, puis appuyez à nouveau ici.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/run.py" />
   <source>Slip</source>
   <translation>Glissé</translation>
  </message>
 </context>
 <context>
  <name>VeneerSaving</name>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>Save document</source>
   <translation>Enregistrer le document</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>Save drawing as PDF</source>
   <translation>Enregistrer le plan en PDF</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/chalk.py" />
   <source>Save the list to chalk the stack by</source>
   <translation>Enregistrer la liste pour marquer la pile à la craie</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/chalk.py" />
   <source>Text (*.txt)</source>
   <translation>Texte (*.txt)</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>The drawing was saved:
{file}</source>
   <translation>Le plan a été enregistré :
{file}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{file} could not be saved, there was no room for all of it, and FreeCAD has closed it. All that was in it was saved as {copy}; open that, make room, and save it under its own name.</source>
   <translation>{file} n'a pas pu être enregistré, il n'y avait pas de place pour tout, et FreeCAD l'a fermé. Tout ce qui y était a été enregistré sous {copy} ; ouvrez ce fichier, faites de la place, et enregistrez-le sous son propre nom.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{file} could not be saved, there was no room for all of it, and FreeCAD has closed it. What was new in it is lost.</source>
   <translation>{file} n'a pas pu être enregistré, il n'y avait pas de place pour tout, et FreeCAD l'a fermé. Ce qui y était nouveau est perdu.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{file} is there already; give its whole name to replace it.</source>
   <translation>{file} existe déjà ; donnez son nom entier pour le remplacer.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{name} is not up to date, and was not saved: {why}</source>
   <translation>{name} n'est pas à jour, et n'a pas été enregistré : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/saving.py" />
   <source>{name} is there already. Replace it?</source>
   <translation>{name} existe déjà. Le remplacer ?</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/books/chalk.py" />
   <source>{name}: what to chalk on the leaves</source>
   <translation>{name} : que marquer à la craie sur les feuilles</translation>
  </message>
 </context>
 <context>
  <name>VeneerScene</name>
  <message>
   <location filename="veneerwb/gui/run_scene.py" />
   <source>leaf</source>
   <translation>feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/scene.py" />
   <source>leaf {number}</source>
   <translation>feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/run_scene.py" />
   <source>panel</source>
   <translation>panneau</translation>
  </message>
 </context>
 <context>
  <name>VeneerSeams</name>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>Measured before the last change. {title}</source>
   <translation>Mesuré avant le dernier changement. {title}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>Seams of {name}</source>
   <translation>Joints de {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>The top was changed while its seams were measured; measure them again.</source>
   <translation>Le plateau a été changé pendant la mesure de ses joints ; mesurez-les à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>Too few leaves for a ring, so there is no seam.</source>
   <translation>Trop peu de feuilles pour une couronne, il n'y a donc pas de joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>cannot be told</source>
   <translation>ne peut être dit</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>from here on it shows</source>
   <translation>à partir d'ici cela se voit</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>more: it shows</source>
   <translation>plus : cela se voit</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>pictured by one photograph</source>
   <translation>montré par une seule photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>rms</source>
   <translation>rms</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>up to {most}</source>
   <translation>jusqu'à {most}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>worst place</source>
   <translation>pire endroit</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>{name}: nothing could be measured along its seams</source>
   <translation>{name} : rien n'a pu être mesuré le long de ses joints</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/seams.py" />
   <source>{name}: the figure meets to {rms} rms, {worst} at worst, by {measured} of {tried} places on your photographs</source>
   <translation>{name} : le dessin se rejoint à {rms} rms, {worst} au pire, d'après {measured} endroits sur {tried} de vos photos</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequencePanel</name>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>A usual ring</source>
   <translation>Une couronne usuelle</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Click the same two points of the figure on every leaf. Without: {leaves}.</source>
   <translation>Cliquez les deux mêmes points du dessin sur chaque feuille. Sans : {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Crowns meet all round; costs length if figure wanders.</source>
   <translation>Les ramages se rejoignent tout autour ; coûte de la longueur si le dessin dérive.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Every leaf has its two marks; a click moves the nearer one.</source>
   <translation>Chaque feuille a ses deux repères ; un clic déplace le plus proche.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Knots and edges stay put; the figure marches round.</source>
   <translation>Nœuds et bords restent en place ; le dessin avance en tournant.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Order and register leaves</source>
   <translation>Ordonner et caler les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Proposed: {changes}.</source>
   <translation>Proposé : {changes}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Registered so: costs {along} of length, {across} of width.</source>
   <translation>Calées ainsi : coûte {along} de longueur, {across} de largeur.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Sequence</source>
   <translation>Suite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Sequence of {name}</source>
   <translation>Suite de {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>Simply laid on each other; nothing is compared.</source>
   <translation>Simplement posées l'une sur l'autre ; rien n'est comparé.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Something was undone or redone. The marks that you picked are kept here; see that they still fit, then OK.</source>
   <translation>Quelque chose a été annulé ou rétabli. Les repères que vous avez choisis sont gardés ici ; voyez s'ils conviennent encore, puis OK.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>The leaves were changed since the proof; prove the sequence again.</source>
   <translation>Les feuilles ont été changées depuis la preuve ; prouvez la suite à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>The leaves were changed while they were compared, so the result is of no use; compare them again.</source>
   <translation>Les feuilles ont été changées pendant leur comparaison, le résultat ne sert donc à rien ; comparez-les à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>The pieces of {name}</source>
   <translation>Pièces de {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>The whole leaf</source>
   <translation>Toute la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Turn leaf {leaf} &amp;end for end</source>
   <translation>Tourner la &amp;feuille {leaf} tête-bêche</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/sequence.py" />
   <source>Turn leaf {leaf} &amp;over</source>
   <translation>Retou&amp;rner la feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/work.py" />
   <source>{count} leaves, {numbers}. Their order is not proved yet.</source>
   <translation>{count} feuilles, {numbers}. Leur ordre n'est pas encore prouvé.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequenceWindow</name>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>&amp;Stop</source>
   <translation>&amp;Arrêter</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>As photographed</source>
   <translation>Comme photographiées</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>As registered</source>
   <translation>Comme calées</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Click the picture to follow a point through the stack.</source>
   <translation>Cliquez l'image pour suivre un point à travers la pile.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>Click the picture to see how a point drifts.</source>
   <translation>Cliquez l'image pour voir comment un point dérive.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Click: follow that point through the stack.</source>
   <translation>Clic : suivre ce point à travers la pile.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Click: mark A, then mark B, the same points on every leaf.</source>
   <translation>Clic : repère A, puis repère B, les mêmes points sur chaque feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Go to it, then press Turn leaf end for end.</source>
   <translation>Y aller, puis appuyer sur Tourner la feuille tête-bêche.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Go to it, then press Turn leaf over.</source>
   <translation>Y aller, puis appuyer sur Retourner la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>How the figure goes on {pairs} is in doubt: look at those leaves one over the other before you cut.</source>
   <translation>La suite du dessin {pairs} est douteuse : regardez ces feuilles l'une sur l'autre avant de couper.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>It goes with what the leaves are registered on; prove to follow the figure.</source>
   <translation>Il va avec ce sur quoi les feuilles sont calées ; prouvez pour suivre le dessin.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Its register could not be made exact and may be some millimetres off. {why}</source>
   <translation>Son calage n'a pas pu être rendu exact et peut être faux de quelques millimètres. {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaf {leaf}</source>
   <translation>Feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaf {leaf} ({place} of {count})</source>
   <translation>Feuille {leaf} ({place} sur {count})</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaf {leaf}: {across} across, {along} along.</source>
   <translation>Feuille {leaf} : {across} en travers, {along} en long.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Leaves {a} and {b}: likeness {value}</source>
   <translation>Feuilles {a} et {b} : ressemblance {value}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Likeness of all pairs. Click one to see the two by turns.</source>
   <translation>Ressemblance de toutes les paires. Cliquez-en une pour voir les deux tour à tour.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Look for a leaf that was not photographed, or measure there.</source>
   <translation>Chercher une feuille non photographiée, ou mesurer là.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Measure the thickness of leaves on both sides of it.</source>
   <translation>Mesurer l'épaisseur des feuilles de part et d'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>On the figure</source>
   <translation>Sur le dessin</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>Prove the sequence: how alike all pairs are.</source>
   <translation>Prouvez la suite : ressemblance de toutes les paires.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Renumber as proposed.</source>
   <translation>Renuméroter comme proposé.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Space: play. Arrows: page. F: fit.</source>
   <translation>Espace : défiler. Flèches : parcourir. F : ajuster.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Take it out of the bundle (in the tree).</source>
   <translation>La retirer de la liasse (dans l'arbre).</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Take one of the two out of the bundle (in the tree).</source>
   <translation>Retirer l'une des deux de la liasse (dans l'arbre).</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>The figure</source>
   <translation>Le dessin</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>The figure alone: {across}, {along}.</source>
   <translation>Le dessin seul : {across}, {along}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>The leaves are not registered, so it stays where it is: prove or register.</source>
   <translation>Les feuilles ne sont pas calées, il reste donc où il est : prouvez ou calez.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>The log</source>
   <translation>La grume</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>Two picked marks</source>
   <translation>Deux points choisis</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/window.py" />
   <source>Wheel: zoom. Ctrl and wheel: page. Drag: move.</source>
   <translation>Molette : zoom. Ctrl et molette : parcourir. Glisser : déplacer.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>across, {unit}</source>
   <translation>en travers, {unit}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>alike</source>
   <translation>semblables</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>along, {unit}</source>
   <translation>en long, {unit}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>drift of the log on the photographs</source>
   <translation>dérive de la grume sur les photos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>drift of the picked marks on the photographs</source>
   <translation>dérive des repères choisis sur les photos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>drift: figure and photograph together</source>
   <translation>dérive : dessin et photo ensemble</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>end for end</source>
   <translation>tête-bêche</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf</source>
   <translation>dessin sur la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf, by its marks</source>
   <translation>dessin sur la feuille, par ses repères</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf, by its outline</source>
   <translation>dessin sur la feuille, par son contour</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>figure on the leaf, by the backs</source>
   <translation>dessin sur la feuille, par les dos</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>foreign</source>
   <translation>étrangère</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>from leaf {a} to {b}</source>
   <translation>de la feuille {a} à la {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>leaf</source>
   <translation>feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>one missing?</source>
   <translation>une manque ?</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>out of place</source>
   <translation>hors de sa place</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>photograph</source>
   <translation>photo</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>thickness</source>
   <translation>épaisseur</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>turned over</source>
   <translation>retournée</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>twice</source>
   <translation>deux fois</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/hands.py" />
   <source>unlike</source>
   <translation>différentes</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/sequence/words.py" />
   <source>{now} becomes {new}</source>
   <translation>{now} devient {new}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpot</name>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Drag the wedge, or the handles at its rim. Wheel over the top: ways.</source>
   <translation>Tirez le secteur, ou les poignées à son pourtour. Molette sur le plateau : secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>It lies well on all leaves that it needs.</source>
   <translation>Il tient bien sur toutes les feuilles dont il a besoin.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf and Top</source>
   <translation>Feuille et plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf {number}</source>
   <translation>Feuille {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf {number}, not used</source>
   <translation>Feuille {number}, inutile</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Leaf {number}: {where}</source>
   <translation>Feuille {number} : {where}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Not here: {reasons}.</source>
   <translation>Pas ici : {reasons}.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>Position {position}: leaf {leaf}</source>
   <translation>Position {position} : feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>mirrored</source>
   <translation>en miroir</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>off leaf {leaves}</source>
   <translation>hors de la feuille {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>off leaves {leaves}</source>
   <translation>hors des feuilles {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/window.py" />
   <source>turned over</source>
   <translation>retournée</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>{fault} on leaf {leaves}</source>
   <translation>{fault} sur la feuille {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/looks.py" />
   <source>{fault} on leaves {leaves}</source>
   <translation>{fault} sur les feuilles {leaves}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotCompare</name>
  <message>
   <location filename="veneerwb/gui/spot/compare.py" />
   <source>Kept spots</source>
   <translation>Emplacements gardés</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotFound</name>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>No wedge of this top fits with its tip there.</source>
   <translation>Aucun secteur de ce plateau ne tient avec sa pointe là.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Nothing counts; let one of the measures count.</source>
   <translation>Rien ne compte ; laissez compter une des mesures.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Nothing has been looked for yet. Find spots tries every spot and direction on the leaves, with the ways, the turn and the size that the top has now.</source>
   <translation>Rien n'a encore été cherché. Chercher essaie chaque emplacement et direction sur les feuilles, avec les secteurs, le retournement et la taille que le plateau a maintenant.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Arrêté ; rien n'a été changé.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>The leaves or the top have changed since. Find spots again.</source>
   <translation>Les feuilles ou le plateau ont changé depuis. Cherchez à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>Where good spots lie is drawn here.</source>
   <translation>Où sont les bons emplacements est dessiné ici.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>strong</source>
   <translation>fort</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>weak</source>
   <translation>faible</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>with the tip here; pale: none fits</source>
   <translation>avec la pointe ici ; pâle : aucun ne tient</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/found.py" />
   <source>{k}: from leaf {first}</source>
   <translation>{k} : dès la feuille {first}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotKept</name>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>No spot is kept yet. Keep the one that is seen, go on, and come back to it.</source>
   <translation>Aucun emplacement n'est encore gardé. Gardez celui qui est vu, continuez, et revenez-y.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>Old picture: the leaves or the top have changed since</source>
   <translation>Image ancienne : les feuilles ou le plateau ont changé depuis</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>Spot {n}</source>
   <translation>Emplacement {n}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/kept.py" />
   <source>Tick two to six kept spots to compare them; {count} are ticked.</source>
   <translation>Cochez deux à six emplacements gardés pour les comparer ; cochés : {count}.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotMakes</name>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>At least {count} tops of {size} in {ways} ways</source>
   <translation>Au moins {count} plateaux de {size} en {ways} secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>At least {count} tops of {size} in {ways} ways, a colour for each stack</source>
   <translation>Au moins {count} plateaux de {size} en {ways} secteurs, une couleur par pile</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>How many works out how many tops of this size the leaves give, with room between the cuts, and draws the cuts here.</source>
   <translation>Combien calcule combien de plateaux de cette taille les feuilles donnent, avec la place entre les coupes, et dessine les coupes ici.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>No top of this shape fits in {ways} ways.</source>
   <translation>Aucun plateau de cette forme ne tient en {ways} secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>No top of this size fits.</source>
   <translation>Aucun plateau de cette taille ne tient.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>Stopped; nothing was changed.</source>
   <translation>Arrêté ; rien n'a été changé.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>The table was made before the last change; make it again.</source>
   <translation>Le tableau a été fait avant le dernier changement ; refaites-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>counted before the last change</source>
   <translation>compté avant le dernier changement</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/makes.py" />
   <source>none fits</source>
   <translation>aucun ne tient</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotNearby</name>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>back and left</source>
   <translation>en arrière, à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>back and right</source>
   <translation>en arrière, à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>back {by}</source>
   <translation>{by} en arrière</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>does not fit</source>
   <translation>ne tient pas</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>here</source>
   <translation>ici</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>left {by}</source>
   <translation>{by} à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>on and left</source>
   <translation>plus loin, à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>on and right</source>
   <translation>plus loin, à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>on {by}</source>
   <translation>{by} plus loin</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>right {by}</source>
   <translation>{by} à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>turned left {by}</source>
   <translation>tourné à gauche de {by}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/nearby.py" />
   <source>turned right {by}</source>
   <translation>tourné à droite de {by}</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotPanel</name>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>Choose spot</source>
   <translation>Choisir l'emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>Not registered: the leaves lie on each other as they were photographed.</source>
   <translation>Non calées : les feuilles sont l'une sur l'autre comme elles ont été photographiées.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>Spot of {match}</source>
   <translation>Emplacement de {match}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/panels/spot.py" />
   <source>There are several matches; select the one that you choose a spot for.</source>
   <translation>Il y a plusieurs frisages ; choisissez celui dont vous cherchez l'emplacement.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotTab</name>
  <message>
   <location filename="veneerwb/gui/spot/tab.py" />
   <source>Something else is being worked out; stop that first.</source>
   <translation>Autre chose est en cours de calcul ; arrêtez-le d'abord.</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tab.py" />
   <source>Stop ({percent} %)</source>
   <translation>Arrêter ({percent} %)</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotTabs</name>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>Found</source>
   <translation>Trouvés</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>Kept</source>
   <translation>Gardés</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>Nearby</source>
   <translation>Alentour</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/tabs.py" />
   <source>What This Bundle Makes</source>
   <translation>Ce que donne cette liasse</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotWords</name>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>book</source>
   <translation>en livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>slip</source>
   <translation>glissé</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>{ways} ways, {turn}, from leaf {first}</source>
   <translation>{ways} secteurs, {turn}, dès la feuille {first}</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>{ways} ways, {turn}, leaves listed</source>
   <translation>{ways} secteurs, {turn}, feuilles énumérées</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/spot/words.py" />
   <source>{ways} ways, {turn}, spread from leaf {first}</source>
   <translation>{ways} secteurs, {turn}, réparti dès la feuille {first}</translation>
  </message>
 </context>
 <context>
  <name>VeneerWorkbench</name>
  <message>
   <location filename="InitGui.py" />
   <source>Lay up table tops from consecutive veneer leaves</source>
   <translation>Composer des plateaux en feuilles de placage consécutives</translation>
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
   <translation>Ajouter des photos de dos, les lier à leurs faces, prouver par elles comment les feuilles étaient posées</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Bac&amp;ks</source>
   <translation>&amp;Dos</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Bench</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;To the Bench</source>
   <translation>À l'éta&amp;bli</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Make the sheets of the selected match for the shop; say how it cuts, tapes, presses</source>
   <translation>Faire les planches du frisage choisi pour l'atelier ; dire comment il coupe, assemble et presse</translation>
  </message>
 </context>
 <context>
  <name>Veneer_BringInLeaves</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Bring In Leaves</source>
   <translation>&amp;Importer des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Make a bundle of leaves from their photographs</source>
   <translation>Faire une liasse de feuilles à partir de leurs photos</translation>
  </message>
 </context>
 <context>
  <name>Veneer_BuildUp</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Build &amp;Up Panel</source>
   <translation>Composer &amp;le panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Build the selected match up into a panel: core, backer, lipping, border, line, inlay</source>
   <translation>Faire du frisage choisi un panneau : âme, contre-parement, alaise, bordure, filet, incrustation</translation>
  </message>
 </context>
 <context>
  <name>Veneer_CheckMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Check Match</source>
   <translation>&amp;Contrôler le frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>List what stands against cutting the selected match, and what would do</source>
   <translation>Lister ce qui s'oppose à la coupe du frisage choisi, et que faire</translation>
  </message>
 </context>
 <context>
  <name>Veneer_ChooseSpot</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Choos&amp;e Spot</source>
   <translation>C&amp;hoisir l'emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Move the wedge of the selected match on its leaves and see the top follow</source>
   <translation>Déplacer le secteur du frisage choisi sur ses feuilles et voir le plateau suivre</translation>
  </message>
 </context>
 <context>
  <name>Veneer_CloseRing</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Close the Rin&amp;g</source>
   <translation>&amp;Fermer la couronne</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>How much over to cut the wedges of the selected match; as cut, what to true and where</source>
   <translation>De combien couper plus large les secteurs du frisage choisi ; après la coupe, quoi dresser et où</translation>
  </message>
 </context>
 <context>
  <name>Veneer_DrawMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Draw the selected match on a page: plan, wedge, set-out and cut list</source>
   <translation>Dessiner le frisage choisi sur une page : plan, secteur, tracé et liste de débit</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>New &amp;Drawing</source>
   <translation>Nou&amp;veau plan</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Faults</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Faults</source>
   <translation>Défa&amp;uts</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Draw knots, splits and other faults, and what may be used, on the leaves' photographs</source>
   <translation>Tracer nœuds, fentes et autres défauts, et ce qui est utile, sur les photos des feuilles</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Help</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Veneer Help</source>
   <translation>&amp;Aide de Veneer</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>A first top step by step, a page for each command, the trade's words, what to beware of</source>
   <translation>Un premier plateau pas à pas, une page par commande, les mots du métier, et ce dont il faut se méfier</translation>
  </message>
 </context>
 <context>
  <name>Veneer_LeafOnFaces</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Leaf On Faces</source>
   <translation>Feuille &amp;sur faces</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay a leaf's picture, to scale, on the selected flat faces</source>
   <translation>Poser l'image d'une feuille, à l'échelle, sur les faces planes choisies</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Marks</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Paper &amp;Marks</source>
   <translation>Rep&amp;ères en papier</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Print marks to stick on the leaves, find them on the photographs, measure from them</source>
   <translation>Imprimer des repères à coller sur les feuilles, les trouver sur les photos, mesurer à partir d'eux</translation>
  </message>
 </context>
 <context>
  <name>Veneer_NewMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;New Match</source>
   <translation>Nouveau frisa&amp;ge</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay up a top of any shape from the selected bundle or stock: book, slip, end match, box, diamond, herringbone, radial; a selected outline becomes the top</source>
   <translation>Composer un plateau de toute forme dans la liasse ou le stock choisi : livre ouvert, glissé, joint en bout, quatre miroirs, losange, chevrons, rayonnant ; un contour choisi devient le plateau</translation>
  </message>
 </context>
 <context>
  <name>Veneer_NewRadialMatch</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay up a top of wedges from the selected bundle or stock of leaves</source>
   <translation>Composer un plateau de secteurs dans la liasse ou le stock de feuilles choisi</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>New Radial Matc&amp;h</source>
   <translation>Nouveau frisage ra&amp;yonnant</translation>
  </message>
 </context>
 <context>
  <name>Veneer_OpenExample</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Open E&amp;xample</source>
   <translation>&amp;Ouvrir l'exemple</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Open a copy of the example: a round top in 12 ways, built up, with its bench</source>
   <translation>Ouvrir une copie de l'exemple : un plateau rond en 12 secteurs, composé, avec son établi</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Particulars</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Particulars</source>
   <translation>Renseigne&amp;ments</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Say what the selected bundle is: species, cut, flitch, cost; how much there is of it</source>
   <translation>Dire ce qu'est la liasse choisie : essence, coupe, quartelle, coût ; et combien il y en a</translation>
  </message>
 </context>
 <context>
  <name>Veneer_RefreshSheets</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Refresh Sheets</source>
   <translation>&amp;Refaire les planches</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Make the sheets as the match is now</source>
   <translation>Faire les planches comme le frisage est à présent</translation>
  </message>
 </context>
 <context>
  <name>Veneer_RunOnFaces</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Lay doors, drawer fronts or wall panels, the selected flat faces, from one sequence of leaves</source>
   <translation>Poser portes, façades de tiroirs ou lambris, les faces planes choisies, dans une même suite de feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Panels &amp;in Sequence</source>
   <translation>Panneau&amp;x en suite</translation>
  </message>
 </context>
 <context>
  <name>Veneer_SaveDrawing</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Save Drawing &amp;as PDF...</source>
   <translation>&amp;Enregistrer le plan en PDF...</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Save the selected drawing as a PDF file</source>
   <translation>Enregistrer le plan choisi en fichier PDF</translation>
  </message>
 </context>
 <context>
  <name>Veneer_Sequence</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Page through the leaves of the selected bundle, prove their order, lay them on each other</source>
   <translation>Parcourir les feuilles de la liasse choisie, prouver leur ordre, les poser les unes sur les autres</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Prove Se&amp;quence</source>
   <translation>&amp;Prouver la suite</translation>
  </message>
 </context>
 <context>
  <name>Veneer_ShowNumbers</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Numbers &amp;On or Off</source>
   <translation>&amp;Numéros oui ou non</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Show or hide the positions and leaves, underlined where a leaf is turned over, on the selected matches</source>
   <translation>Montrer ou cacher les positions et les feuilles, soulignées si la feuille est retournée, sur les frisages choisis</translation>
  </message>
 </context>
 <context>
  <name>Veneer_ShowSeams</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Seams On or Off</source>
   <translation>&amp;Joints oui ou non</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Show or hide the seams of the selected matches</source>
   <translation>Montrer ou cacher les joints des frisages choisis</translation>
  </message>
 </context>
 <context>
  <name>Veneer_WritePacket</name>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>&amp;Write Packet...</source>
   <translation>&amp;Écrire le dossier...</translation>
  </message>
  <message>
   <location filename="veneerwb/gui/commands.py" />
   <source>Write all sheets, templates, plans and lists for the shop into a folder</source>
   <translation>Écrire toutes les planches, gabarits, plans et listes pour l'atelier dans un dossier</translation>
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
