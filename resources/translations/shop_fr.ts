<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>"Found to": how far the hole may be off (root mean square) where lengths are read to {read} and marks are known: {known}. These are common practice, no published source: set your own.</source>
   <translation>"Trouvé à" : de combien le trou peut être décalé (moyenne quadratique) si les longueurs se lisent à {read} et les repères sont connus : {known}. C'est de pratique courante, sans source publiée : mettez les vôtres.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>1 to 2: {apart}</source>
   <translation>1 à 2 : {apart}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>100 mm in both directions</source>
   <translation>100 mm dans les deux sens</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>A and B are the paper marks {a} and {b} of leaf {leaf}.</source>
   <translation>A et B sont les repères en papier {a} et {b} de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>A disc over the centre hides it; a new wedge cut wider makes it good.</source>
   <translation>Un disque au centre le cache ; un nouveau secteur coupé plus large y remédie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>A knife along a straightedge slips: the other hand stays behind the blade's way, the straightedge is clamped, the offcut is cleared with the knife laid down.</source>
   <translation>Un couteau le long d'une règle glisse : l'autre main reste derrière le chemin de la lame, la règle est serrée, la chute est ôtée le couteau posé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>A lean of {lean} deg puts the lowest leaf of a lift {lowest} off its line. Alike all along both seams it moves that piece's tip by {slide} along its axis, and the ring still closes. Coming up along every seam it would open or overlap the ring by {turn} deg, {gap} at the rim, at the most.</source>
   <translation>Une inclinaison de {lean} degrés met la feuille du bas d'un paquet à {lowest} de son trait. Pareille tout le long des deux joints, elle déplace la pointe de cette pièce de {slide} le long de son axe, et la couronne se ferme encore. Montant le long de chaque joint, elle ouvrirait ou ferait recouvrir la couronne de {turn} degrés, {gap} au pourtour, au plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>A lean of {lean} deg puts the lowest leaf of a lift {lowest} off its line. Joints of two such pieces open by up to twice that.</source>
   <translation>Une inclinaison de {lean} degrés met la feuille du bas d'un paquet à {lowest} de son trait. Les joints de deux telles pièces s'ouvrent jusqu'au double.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>A part that is under is trued {lost} beyond its tip, which goes with the waste: the tips no longer meet, their figure comes to lie {moved} apart.</source>
   <translation>Une partie trop petite est dressée de {lost} au-delà de sa pointe, qui part avec la chute : les pointes ne se rejoignent plus, leur dessin se trouve écarté de {moved}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>A press, its hydraulics and a vacuum vessel hold energy: work only with what is rated for it and tested, never beyond its plate or its gauge's red mark, hands clear while it closes. A rigid vacuum vessel can collapse, a hose can burst. Follow local rules for pressure equipment, and leave repair to those who hold the licence.</source>
   <translation>Presse, hydraulique et réservoir à vide retiennent de l'énergie : ne travailler qu'avec ce qui est prévu pour cela et éprouvé, jamais au-delà de la plaque ou du trait rouge du manomètre, mains hors de portée à la fermeture. Un réservoir à vide rigide peut s'écraser, un tuyau éclater. Suivre les règles locales des appareils à pression, et laisser les réparations à ceux qui sont habilités.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/trued.py" />
   <source>A ring of {ways} pieces needs {ways} angles; these are {count}.</source>
   <translation>Une couronne de {ways} pièces demande {ways} angles ; ceux-ci sont {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>A seam is cut over by an angle or by a width, not by both; give 0 for one of them.</source>
   <translation>Un joint est coupé plus large d'un angle ou d'une largeur, pas des deux ; donnez 0 pour l'un.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>A test cut cannot have {count} wedges; cut 1 to 64, best half a ring of them.</source>
   <translation>Une coupe d'essai ne peut pas avoir {count} secteurs ; coupez-en 1 à 64, au mieux une demi-couronne.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>A top takes {count} leaves that follow each other in the log, and of each {size}; a margin of {margin} all round is in the least size.</source>
   <translation>Un plateau prend {count} feuilles qui se suivent dans la grume, et de chacune {size} ; une marge de {margin} tout autour est dans la taille minimale.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/paper.py" />
   <source>A4 upright</source>
   <translation>A4 debout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>A: {a}, B: {b} of leaf {leaf}, as it was outlined; mark them before anything is trimmed off.</source>
   <translation>A : {a}, B : {b} de la feuille {leaf}, telle que tracée ; les marquer avant de rogner quoi que ce soit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/paper.py" />
   <source>ANSI A upright</source>
   <translation>ANSI A debout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Adhesive</source>
   <translation>Colle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Adhesive: {name}.</source>
   <translation>Colle : {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Adhesives and finishes: the maker's sheet says what hands, skin, eyes and lungs must be kept from, at what temperature and for how long; it wins over any paper of ours.</source>
   <translation>Colles et finitions : la fiche du fabricant dit de quoi protéger mains, peau, yeux et poumons, à quelle température et combien de temps ; elle passe avant tout papier de notre part.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Adhesives: read label and safety sheet, ventilate, wear gloves and glasses. Urea, phenol and melamine resins give off formaldehyde, more so in heat; limits in air are 0.75 ppm over 8 h and 2 ppm over 15 min (29 CFR 1910.1048; check the current text). Isocyanates sensitise.</source>
   <translation>Colles : lire étiquette et fiche de sécurité, ventiler, porter gants et lunettes. Les résines urée, phénol et mélamine dégagent du formaldéhyde, plus à chaud ; les limites dans l'air sont 0.75 ppm sur 8 h et 2 ppm sur 15 min (29 CFR 1910.1048 ; vérifier le texte actuel). Les isocyanates sensibilisent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>All edges lie {shifted} in alike: the ring closes all the same, each piece {moved} further in along its axis, and its figure with it.</source>
   <translation>Tous les bords sont pareillement {shifted} en dedans : la couronne se ferme quand même, chaque pièce {moved} plus au dedans le long de son axe, et son dessin avec elle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>All edges lie {shifted} out alike: the ring closes all the same, each piece {moved} further out along its axis, and its figure with it.</source>
   <translation>Tous les bords sont pareillement {shifted} en dehors : la couronne se ferme quand même, chaque pièce {moved} plus au dehors le long de son axe, et son dessin avec elle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>All files are made from one layout and carry its revision mark. Do not mix them with those of another mark: an older packet is kept beside this one, and nothing in it is changed.</source>
   <translation>Tous les fichiers sont faits d'une disposition et portent son indice. Ne pas les mêler à ceux d'un autre indice : un dossier plus ancien est gardé à côté de celui-ci, et rien n'y est changé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>All leaves lie face up.</source>
   <translation>Toutes les feuilles sont face dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>All sheets are seen from the show face, and positions run {counted}, unless a sheet says that it shows a leaf.</source>
   <translation>Toutes les planches sont vues du parement, et les positions vont {counted}, à moins qu'une planche dise qu'elle montre une feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>All tips still meet in one point.</source>
   <translation>Toutes les pointes se rejoignent encore en un point.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>An inch cannot be parted into {value!r:.40} here; choose one of: {allowed}.</source>
   <translation>Un pouce ne peut pas être partagé ici en {value!r:.40} ; choisissez parmi : {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>An odd number of pieces has no straight diameter: only the last joint can be trued, from both its pieces alike.</source>
   <translation>Un nombre impair de pièces n'a pas de diamètre droit : seul le dernier joint peut être dressé, de ses deux pièces pareillement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Approved by</source>
   <translation>Approuvé par</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Area</source>
   <translation>Surface</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As cut</source>
   <translation>Telle que coupée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As cut the rim is {over} over and the axis {axis} long.</source>
   <translation>Coupé, le pourtour est {over} plus loin et l'axe long de {axis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>As cut, seen from the face of the leaf.</source>
   <translation>Telle que coupée, vue de la face de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>As entered from the maker's sheet: {said}.</source>
   <translation>Comme entré de la fiche du fabricant : {said}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As it lies on its leaf, face up. Dashed: as cut.</source>
   <translation>Comme elle est sur sa feuille, face dessus. Tirets : telle que coupée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>As it lies on its leaf, face up; cut as drawn.</source>
   <translation>Comme elle est sur sa feuille, face dessus ; coupée comme dessinée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>As taped, apart, what is off {factor} times as large; grey: off</source>
   <translation>Tel qu'assemblé, écarté, l'écart grossi {factor} fois ; gris : l'écart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>As trimmed, seen from the face of the leaf.</source>
   <translation>Telle que rognée, vue de la face de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/tiles.py" />
   <source>At 1:1 this template takes {count} sheets of {paper}; the most is {most}: take larger paper.</source>
   <translation>À 1:1 ce gabarit prend {count} planches de {paper} ; le plus est {most} : prenez un papier plus grand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>At the rim the figure beside a wedge's edge lies {moved} further inside than on the photograph.</source>
   <translation>Au pourtour, le dessin près du bord d'un secteur est {moved} plus au dedans que sur la photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>At the rim the figure beside a wedge's edge lies {moved} further outside than on the photograph.</source>
   <translation>Au pourtour, le dessin près du bord d'un secteur est {moved} plus au dehors que sur la photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>At the trued joints the mirror is off by {mirror_off} at the rim.</source>
   <translation>Aux joints dressés le miroir est décalé de {mirror_off} au pourtour.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>At {spread:g} g/m2, as entered, that is {grams:.0f} g of adhesive, without what stays on roller and pot.</source>
   <translation>À {spread:g} g/m2, comme entré, cela fait {grams:.0f} g de colle, sans ce qui reste au rouleau et au pot.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Axes that run along a seam: {along}.</source>
   <translation>Axes qui suivent un joint : {along}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>BACK UP</source>
   <translation>DOS DESSUS</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Before a leaf is pinned, chalk on it, inside the outline near the rim: position, F or B for the side that will show, and an arrow towards the tip. The number at the leaf's end goes with the waste.</source>
   <translation>Avant de pionner une feuille, y marquer à la craie, dans le contour près du pourtour : position, F (face) ou D (dos) pour le côté qui se verra, et une flèche vers la pointe. Le numéro au bout de la feuille part avec la chute.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Before a leaf is pinned, chalk on it, inside the outline near the rim: position, F or B for the side that will show, and an arrow up the grain, to the leaf's upper end. The number at the leaf's end goes with the waste.</source>
   <translation>Avant de pionner une feuille, y marquer à la craie, dans le contour près du pourtour : position, F (face) ou D (dos) pour le côté qui se verra, et une flèche dans le sens du fil, vers le bout haut de la feuille. Le numéro au bout de la feuille part avec la chute.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Before each piece of tape look at the side up and at the tip, and at the figure across the seam.</source>
   <translation>Avant chaque morceau de papier, regarder le côté dessus et la pointe, et le dessin à travers le joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Before you cut</source>
   <translation>Avant de couper</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Before you cut, compare the revision mark in the title block with the model's: paper with another mark is stale.</source>
   <translation>Avant de couper, comparez l'indice du cartouche à celui du modèle : un papier d'un autre indice est périmé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Before you cut, compare the revision mark with the model's: paper with another mark is stale.</source>
   <translation>Avant de couper, comparez l'indice à celui du modèle : un papier d'un autre indice est périmé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Between finished edge and blank a pin needs {BAND}: with less, hold the face with tape over the edge instead.</source>
   <translation>Entre bord fini et ébauche un pion demande {BAND} : avec moins, tenir plutôt le parement par un adhésif sur le bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Bill of materials</source>
   <translation>Nomenclature</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Bring the trued edges together tip to tip, tape the middle first, then outwards.</source>
   <translation>Joindre les bords dressés pointe à pointe, mettre le papier au milieu d'abord, puis vers l'extérieur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Bring the trued edges together, tape the middle first, then outwards.</source>
   <translation>Joindre les bords dressés, mettre le papier au milieu d'abord, puis vers l'extérieur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Bundle</source>
   <translation>Liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Bundles</source>
   <translation>Liasses</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>By the errors of its holes alone the cut is off by up to {at_cut} (root mean square, leaf {leaf}).</source>
   <translation>Par les seules erreurs de ses trous la coupe est décalée jusqu'à {at_cut} (moyenne quadratique, feuille {leaf}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Carry the pieces on a board, flat: tips are thin and break.</source>
   <translation>Porter les pièces à plat sur une planche : les pointes sont minces et cassent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Caution: prick with an awl away from the hand that holds the leaf, on a soft board. Drive the pins square: a pin that leans moves every leaf by its height in the stack.</source>
   <translation>Prudence : piquer au poinçon loin de la main qui tient la feuille, sur une planche tendre. Enfoncer les pions d'aplomb : un pion penché déplace chaque feuille selon sa hauteur dans la pile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Caution: {caution}</source>
   <translation>Prudence : {caution}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Cautions</source>
   <translation>Prudence</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Centre, axes and pins</source>
   <translation>Centre, axes et pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Chalk and pencil, on the glue side and the show face: come off before glue; they stain, and weaken the bond.</source>
   <translation>Craie et crayon, sur la face de collage et le parement : s'enlèvent avant la colle ; ils tachent, et affaiblissent le collage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Chalk marks guide the taping; they come off before glue.</source>
   <translation>Les marques à la craie guident l'assemblage ; elles s'enlèvent avant la colle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Chalk number, side and arrow on each leaf inside the outline, as the marking sheet shows.</source>
   <translation>Marquer à la craie numéro, côté et flèche sur chaque feuille dans le contour, comme la planche de marquage le montre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Chalk number, side and tip into every piece before it is cut: the end of the leaf goes with the waste. Chalk comes off before glue.</source>
   <translation>Marquer à la craie numéro, côté et pointe dans chaque pièce avant de la couper : le bout de la feuille part avec la chute. La craie s'enlève avant la colle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the back of leaves {backs}: the side that will be glued, so that the show side stays clean.</source>
   <translation>Marquer sur le dos des feuilles {backs} : le côté qui sera collé, pour que le parement reste propre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the back of leaves {backs}: the side that will show, so that the marks are read while the top is laid out.</source>
   <translation>Marquer sur le dos des feuilles {backs} : le côté qui se verra, pour que les marques se lisent pendant que le plateau est posé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces} and on the back of leaves {backs}: the side that will be glued, so that the show side stays clean.</source>
   <translation>Marquer sur la face des feuilles {faces} et sur le dos des feuilles {backs} : le côté qui sera collé, pour que le parement reste propre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces} and on the back of leaves {backs}: the side that will show, so that the marks are read while the top is laid out.</source>
   <translation>Marquer sur la face des feuilles {faces} et sur le dos des feuilles {backs} : le côté qui se verra, pour que les marques se lisent pendant que le plateau est posé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces}: the side that will be glued, so that the show side stays clean.</source>
   <translation>Marquer sur la face des feuilles {faces} : le côté qui sera collé, pour que le parement reste propre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Chalk on the face of leaves {faces}: the side that will show, so that the marks are read while the top is laid out.</source>
   <translation>Marquer sur la face des feuilles {faces} : le côté qui se verra, pour que les marques se lisent pendant que le plateau est posé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Check the scale before use: both bars measure 100 mm (3.937 in). Fit to page shrinks a sheet.</source>
   <translation>Vérifier l'échelle avant usage : les deux barres mesurent 100 mm (3.937 pouces). Ajuster à la page rétrécit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Clamp the straightedge, then take the hands away from the line before the knife.</source>
   <translation>Serrer la règle, puis ôter les mains du trait avant le couteau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Clamp the work, cut away from the hand and keep out of the blade's line; dust is caught where it is made. Local codes and the makers' sheets come first.</source>
   <translation>Serrer l'ouvrage, couper loin de la main et rester hors de la ligne de la lame ; la poussière est prise là où elle se fait. Les codes locaux et les fiches des fabricants passent d'abord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Close from the centre outwards to the pressure; look at the gauge again as glue flows.</source>
   <translation>Fermer du centre vers l'extérieur jusqu'à la pression ; regarder encore le manomètre quand la colle flue.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Close the bag, pump, listen for leaks, and watch that the face stays on its marks.</source>
   <translation>Fermer le sac, pomper, écouter les fuites, et veiller à ce que le parement reste sur ses marques.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>Closing the ring: as cut</source>
   <translation>Fermer la couronne : telle que coupée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>Closing the ring: before cutting</source>
   <translation>Fermer la couronne : avant la coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>Contents of the packet</source>
   <translation>Sommaire du dossier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Cost</source>
   <translation>Coût</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Created by</source>
   <translation>Créé par</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/dxf.py" />
   <source>Curves that are neither straight nor round are arcs within {tolerance:.4f} mm of them.</source>
   <translation>Les courbes ni droites ni rondes sont des arcs à {tolerance:.4f} mm près.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Cut a test piece of the template and lay it together as often as there are ways before the stack is cut.</source>
   <translation>Couper une pièce d'essai au gabarit et la reporter autant de fois qu'il y a de secteurs avant de couper la pile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut a trial leaf of plain veneer by the steps below and measure it: what it is smaller all round than the template, the tool has taken inside the line.</source>
   <translation>Couper une feuille d'essai de placage uni selon les étapes ci-dessous et la mesurer : ce dont elle est plus petite tout autour que le gabarit, l'outil l'a pris en dedans du trait.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut a trial stack of plain veneer, as high as a lift, by the steps below, in boards of its own. Lay its top and bottom pieces on each other: they show kerf and lean.</source>
   <translation>Couper une pile d'essai de placage uni, haute d'un paquet, selon les étapes ci-dessous, dans ses propres planches. Poser ses pièces du haut et du bas l'une sur l'autre : elles montrent trait et inclinaison.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut a trial stack of plain veneer, as high as a lift, by the steps below. Lay its top and bottom pieces on each other: they show kerf and lean.</source>
   <translation>Couper une pile d'essai de placage uni, haute d'un paquet, selon les étapes ci-dessous. Poser ses pièces du haut et du bas l'une sur l'autre : elles montrent trait et inclinaison.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Cut all wedges of the stack by this one template, number and side marked.</source>
   <translation>Couper tous les secteurs de la pile avec ce seul gabarit, numéro et côté marqués.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as one stack to an outline of {outlines}, across x along the grain; each piece is then cut to its own seams.</source>
   <translation>Coupé en une pile à un contour de {outlines}, en travers x le long du fil ; chaque pièce est ensuite coupée à ses propres joints.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as one stack to an outline of {outlines}, across x along the grain; longer rims are cut back when the top is taped.</source>
   <translation>Coupé en une pile à un contour de {outlines}, en travers x le long du fil ; les pourtours plus longs sont recoupés quand le plateau est assemblé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as single pieces, set out {count} times.</source>
   <translation>Coupé pièce à pièce, tracé {count} fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as {count} stacks to outlines of {outlines}, across x along the grain; each piece is then cut to its own seams.</source>
   <translation>Coupé en {count} piles à des contours de {outlines}, en travers x le long du fil ; chaque pièce est ensuite coupée à ses propres joints.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut as {count} stacks to outlines of {outlines}, across x along the grain; longer rims are cut back when the top is taped.</source>
   <translation>Coupé en {count} piles à des contours de {outlines}, en travers x le long du fil ; les pourtours plus longs sont recoupés quand le plateau est assemblé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Cut in {count} lifts of {high} at most: {lifts}.</source>
   <translation>Coupé en {count} paquets de {high} au plus : {lifts}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut in {count} lots by shape, each set out by itself: {named} and others, see the cut list.</source>
   <translation>Coupé en {count} lots par forme, chacun tracé à part : {named} et d'autres, voir la liste de débit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>Cut in {count} lots by shape, each set out by itself: {named}.</source>
   <translation>Coupé en {count} lots par forme, chacun tracé à part : {named}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Cut list</source>
   <translation>Liste de débit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>Cut list, sizes of the pieces in mm</source>
   <translation>Liste de débit, cotes des pièces en mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Cut on leaf {leaf}</source>
   <translation>Coupe sur la feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Cut outside the line: going round counter-clockwise as seen here, the tool is on its right, its middle {half} off, on the line for the tool.</source>
   <translation>Couper en dehors du trait : en sens inverse des aiguilles comme vu ici, l'outil est à sa droite, son milieu à {half}, sur la ligne pour l'outil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Cut outside the line: going round counter-clockwise as seen here, the tool is on its right.</source>
   <translation>Couper en dehors du trait : en sens inverse des aiguilles comme vu ici, l'outil est à sa droite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut positions {again} along their own outlines, which are marked on them: one piece at a time, by knife, on a board under its own template.</source>
   <translation>Couper les positions {again} à leurs propres contours, qui y sont marqués : une pièce à la fois, au couteau, sur une planche sous son propre gabarit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side} along the template.</source>
   <translation>Couper ({side}) le long du gabarit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side} by a straight outside its curve, to which it is trimmed later.</source>
   <translation>Couper ({side}) droit en dehors de la courbe, à laquelle on rogne plus tard.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side} no further than its ends, for the piece reaches beyond it: on a band saw, or by knife in lifts.</source>
   <translation>Couper ({side}) pas plus loin que ses bouts, car la pièce va au-delà : à la scie à ruban, ou au couteau par paquets.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut the {side}.</source>
   <translation>Couper : {side}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Cut {number} of {count} on leaf {leaf}</source>
   <translation>Coupe {number} sur {count} sur la feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Cut {number}: positions {positions}.</source>
   <translation>Coupe {number} : positions {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} across the grain: tape over the line first, or the veneer breaks out.</source>
   <translation>Couper {side} en travers du fil : adhésif sur le trait d'abord, sinon le placage éclate.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} along the grain, which leads the knife: hold it against the straightedge.</source>
   <translation>Couper {side} le long du fil, qui mène le couteau : le tenir contre la règle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} in the arrow's direction, in which a knife that follows the grain runs off into the waste and not into the piece.</source>
   <translation>Couper {side} dans le sens de la flèche, où un couteau qui suit le fil part dans la chute et non dans la pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side} no further than its ends, for the piece reaches beyond it: on a band saw, or by knife in lifts.</source>
   <translation>Couper {side} pas plus loin que ses bouts, car la pièce va au-delà : à la scie à ruban, ou au couteau par paquets.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Cut {side}.</source>
   <translation>Couper {side}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Cuts on one leaf lie {gap} apart at least; the kerf takes {both} of it where both run there.</source>
   <translation>Les coupes sur une feuille sont à {gap} au moins l'une de l'autre ; le trait en prend {both} là où les deux passent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Cutting plan</source>
   <translation>Plan de coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/dxf.py" />
   <source>DXF files need the Python package ezdxf, which is missing; take the SVG files, or run this in a terminal and start FreeCAD again: {command}</source>
   <translation>Les fichiers DXF demandent le paquet Python ezdxf, qui manque ; prenez les fichiers SVG, ou exécutez ceci dans un terminal et redémarrez FreeCAD : {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Date</source>
   <translation>Date</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Date of this layout</source>
   <translation>Date</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Dimensions in</source>
   <translation>Cotes en</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Directions run counter-clockwise from right. Pins go through the oversize of face and core, off the seams; they keep the face from swimming on wet adhesive.</source>
   <translation>Les directions vont en sens inverse des aiguilles depuis la droite. Les pions traversent la surcote du parement et de l'âme, hors des joints ; ils empêchent le parement de nager sur la colle fraîche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Do not cut with it yet: {reach} in {count} of 100 rings only. Open it by {turn}: {base} from the tip each mark goes {moves} mm out. Then make another test cut.</source>
   <translation>Ne coupez pas encore avec : {reach} dans {count} couronnes sur 100 seulement. Ouvrez-le de {turn} : à {base} de la pointe chaque marque va {moves} mm en dehors. Puis faites une autre coupe d'essai.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Document type</source>
   <translation>Type de document</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Dots: the two pins, {apart} apart, {free} from the nearest cut. On the pictures of the steps grey is what is kept, dashed what falls, red the cut with its direction, a crossed ring a screw, a square a clamp.</source>
   <translation>Points : les deux pions, à {apart} l'un de l'autre, à {free} de la coupe la plus proche. Sur les images des étapes, gris ce qui reste, en tirets ce qui tombe, rouge la coupe avec son sens, un anneau barré une vis, un carré un serre-joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Dots: the two pins, {apart} apart, {free} from the nearest cut. On the pictures of the steps grey is what is kept, dashed what falls, red the cut with its direction.</source>
   <translation>Points : les deux pions, à {apart} l'un de l'autre, à {free} de la coupe la plus proche. Sur les images des étapes, gris ce qui reste, en tirets ce qui tombe, rouge la coupe avec son sens.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Drawn by</source>
   <translation>Dessiné par</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Drive screws in the places shown and nowhere else, and count them: metal in the blade's way throws pieces.</source>
   <translation>Mettre les vis aux endroits montrés et nulle part ailleurs, et les compter : du métal sur le chemin de la lame projette des pièces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Dry run: lay all in the press without adhesive, find the centre, close, look, open.</source>
   <translation>Essai à sec : tout mettre dans la presse sans colle, trouver le centre, fermer, regarder, ouvrir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Dry-lay before glue.</source>
   <translation>Poser à sec avant la colle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>Dry-lay before glue. Cut away from the hand, with the stack held; follow local rules and the makers' sheets for dust, blades and adhesives.</source>
   <translation>Poser à sec avant la colle. Couper loin de la main, la pile tenue ; suivre les règles locales et les fiches des fabricants pour poussière, lames et colles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Dry-lay before glue: all pieces in order, show face up, every seam in raking light.</source>
   <translation>Poser à sec avant la colle : toutes les pièces dans l'ordre, parement dessus, chaque joint en lumière rasante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Dust: that of many woods irritates or sensitises; draw it off at its source and wear a mask that fits. Local limits count.</source>
   <translation>Poussière : celle de bien des bois irrite ou sensibilise ; l'aspirer à sa source et porter un masque ajusté. Les limites locales comptent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Dust: this wood ({species}) is named among the sensitising ones ({name}): once sensitised, a body answers to the least trace of it with skin, nose or asthma. Wood dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a fitted mask, do not blow or sweep it.</source>
   <translation>Poussière : ce bois ({species}) est nommé parmi les sensibilisants ({name}) : une fois sensibilisé, un corps répond à la moindre trace par la peau, le nez ou l'asthme. La poussière de tout bois peut donner l'asthme, celle des feuillus le cancer du nez. L'aspirer là où elle se fait, porter un masque ajusté, ne pas souffler ni balayer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Dust: which wood this is was not entered: take it as a sensitising one. Wood dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a fitted mask, do not blow or sweep it.</source>
   <translation>Poussière : le bois n'a pas été entré : tenez-le pour sensibilisant. La poussière de tout bois peut donner l'asthme, celle des feuillus le cancer du nez. L'aspirer là où elle se fait, porter un masque ajusté, ne pas souffler ni balayer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Dust: {species} is not named in the list of sensitising woods used here, which is not complete: take it as one until you know better. Wood dust of any kind can bring asthma, that of hardwoods cancer of the nose. Draw it off where it is made, wear a fitted mask, do not blow or sweep it.</source>
   <translation>Poussière : {species} n'est pas nommé dans la liste de bois sensibilisants utilisée ici, qui n'est pas complète : tenez-le pour tel jusqu'à mieux savoir. La poussière de tout bois peut donner l'asthme, celle des feuillus le cancer du nez. L'aspirer là où elle se fait, porter un masque ajusté, ne pas souffler ni balayer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Each piece is cut to its own outline; those shown here are of all pieces of a stack together, and pins stand outside all of them.</source>
   <translation>Chaque pièce est coupée à son propre contour ; ceux montrés ici sont de toutes les pièces d'une pile ensemble, et les pions sont en dehors de tous.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Electric, gas and pressure work that asks for a licence is for those who hold it. Local rules come before this sheet.</source>
   <translation>Les travaux d'électricité, de gaz et de pression soumis à habilitation sont pour ceux qui l'ont. Les règles locales passent avant cette planche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>Every piece shows the photograph of the side that is up, in its own colours and without finish. A screen or a printer may show them otherwise than daylight.</source>
   <translation>Chaque pièce montre la photo du côté qui est dessus, dans ses propres couleurs et sans finition. Un écran ou une imprimante peut les montrer autrement que la lumière du jour.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>FACE UP</source>
   <translation>FACE DESSUS</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Find the centre again: stretch two threads between opposite marks of the axes.</source>
   <translation>Retrouver le centre : tendre deux fils entre les marques opposées des axes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Finished {size}, across x along the grain.</source>
   <translation>Fini {size}, en travers x le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Finished {size}, as cut {blank}, across x along the grain.</source>
   <translation>Fini {size}, coupé {blank}, en travers x le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>For all positions.</source>
   <translation>Pour toutes les positions.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>For one top: {count} leaves and {spares} spares, {all} in all, each at least {size} (across the leaf, along the grain).</source>
   <translation>Pour un plateau : {count} feuilles et {spares} de réserve, {all} en tout, chacune d'au moins {size} (en travers de la feuille, le long du fil).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>For position {positions}.</source>
   <translation>Pour la position {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>For positions {positions}.</source>
   <translation>Pour les positions {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>For {tops} tops: {count} leaves and {spares} spares, {all} in all, each at least {size} (across the leaf, along the grain).</source>
   <translation>Pour {tops} plateaux : {count} feuilles et {spares} de réserve, {all} en tout, chacune d'au moins {size} (en travers de la feuille, le long du fil).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Force on the panel: {force:.1f} kN.</source>
   <translation>Force sur le panneau : {force:.1f} kN.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Fresh blade, hand behind the blade and off the line, many light strokes.</source>
   <translation>Lame neuve, main derrière la lame et hors du trait, beaucoup de passes légères.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Fresh blade, hand behind the blade and off the line, many light strokes; the straightedge clamped at both ends and never held by hand alone.</source>
   <translation>Lame neuve, main derrière la lame et hors du trait, beaucoup de passes légères ; la règle serrée aux deux bouts et jamais tenue à la main seule.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>From it lay the template of the edge on centre and axes and draw round it; measure from the centre to the edge on all four axes.</source>
   <translation>De là poser le gabarit du bord sur centre et axes et le contourner ; mesurer du centre au bord sur les quatre axes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>From it strike the edge with a trammel of {radius} from the centre; measure from the centre to the edge on all four axes.</source>
   <translation>De là tracer le bord au compas à verge de {radius} depuis le centre ; mesurer du centre au bord sur les quatre axes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>From the top down, all faces up: leaves {leaves}.</source>
   <translation>De haut en bas, toutes faces dessus : feuilles {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>Full line: cut</source>
   <translation>Trait plein : couper</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>GRAIN</source>
   <translation>FIL</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Glue area: {area} a glue line, {count} of them (with backer): {all}.</source>
   <translation>Surface à coller : {area} par joint de colle, {count} (avec contre-parement) : {all}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Glue area: {area} a glue line, {count} of them (without backer): {all}.</source>
   <translation>Surface à coller : {area} par joint de colle, {count} (sans contre-parement) : {all}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Guards and riving knife as the saw's maker has them; both hands behind the sled's fence; nothing is taken from the table before the blade stands still; dust drawn off, eyes and lungs protected.</source>
   <translation>Protecteurs et couteau diviseur comme le fabricant de la scie les prévoit ; les deux mains derrière le guide du chariot ; rien n'est pris de la table avant l'arrêt de la lame ; poussière aspirée, yeux et poumons protégés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Gum tape goes on the show face: short pieces across the seam first, drawn tight, then one along it. It shrinks as it dries and pulls the seam shut. Wet it sparingly; let it dry under a board before the next step.</source>
   <translation>Le papier gommé va sur le parement : d'abord de courts morceaux en travers du joint, bien tendus, puis un le long. En séchant il rétrécit et ferme le joint. Le mouiller peu ; le laisser sécher sous une planche avant l'étape suivante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Gum tape, on the show face: comes off after pressing; it holds the seams in the press. Damp it, wait, scrape or sand it off along the grain.</source>
   <translation>Papier gommé, sur le parement : s'enlève après la presse ; il tient les joints dans la presse. L'humecter, attendre, le racler ou poncer le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Have the backer ready: both faces are glued in one go, or the panel cups.</source>
   <translation>Avoir le contre-parement prêt : les deux faces se collent d'un coup, ou le panneau se voile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Hold the leaf down round the outline and under the piece. Take the file of its position and side; set the tool so that the file's two pins lie on the bed's.</source>
   <translation>Tenir la feuille autour du contour et sous la pièce. Prendre le fichier de sa position et de son côté ; régler l'outil pour que les deux pions du fichier soient sur ceux du lit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Hold the leaf flat under a board along its whole width; a free end splits.</source>
   <translation>Tenir la feuille à plat sous une planche sur toute sa largeur ; un bout libre se fend.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Hold-downs lie outside the tool's way; try the way once with the tool lifted.</source>
   <translation>Les brides sont hors du chemin de l'outil ; essayer le chemin une fois l'outil levé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Holds the piece: {held}.</source>
   <translation>Tient la pièce : {held}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Holds what falls: {waste_held}.</source>
   <translation>Tient ce qui tombe : {waste_held}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>How holes are found</source>
   <translation>Comment trouver les trous</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>How it is taped</source>
   <translation>Comment assembler</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/planning.py" />
   <source>How many leaves this match takes follows from their width: give the width of the leaves to be had, or the number of strips.</source>
   <translation>Combien de feuilles prend ce frisage découle de leur largeur : donnez la largeur des feuilles disponibles, ou le nombre de bandes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>How well was not kept.</source>
   <translation>L'exactitude n'a pas été gardée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Identification number</source>
   <translation>Numéro d'identification</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>In plain tints, without a photograph: {items}.</source>
   <translation>En teintes unies, sans photo : {items}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>In stack {stack} no two pins {apart} mm apart find room {margin} mm inside all leaves and {clear} mm from the cuts; move the cut, or glue tabs of veneer or card to the ends of every leaf and pin through them.</source>
   <translation>Dans la pile {stack}, pas deux pions à {apart} mm l'un de l'autre n'ont place à {margin} mm en dedans de toutes les feuilles et à {clear} mm des coupes ; déplacez la coupe, ou collez aux bouts de chaque feuille des languettes de placage ou de carton et pionnez à travers elles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>In stack {stack} no two pins {apart} mm apart find room {margin} mm inside all leaves and {clear} mm from the cuts; with {less} mm for both there is room: ask for that, move the cut, or glue tabs of veneer or card to the ends of every leaf and pin through them.</source>
   <translation>Dans la pile {stack}, pas deux pions à {apart} mm l'un de l'autre n'ont place à {margin} mm en dedans de toutes les feuilles et à {clear} mm des coupes ; avec {less} mm pour les deux il y a place : demandez cela, déplacez la coupe, ou collez aux bouts de chaque feuille des languettes de placage ou de carton et pionnez à travers elles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>In the press</source>
   <translation>Dans la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>Inner field: {step}</source>
   <translation>Champ intérieur : {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>It is drawn lying, its lower end to the left.</source>
   <translation>Elle est dessinée couchée, son bout bas à gauche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>It is in doubt how leaf {leaf} and those after lie.</source>
   <translation>La pose de la feuille {leaf} et des suivantes est douteuse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>It is in doubt how leaves {leaves} and those after lie.</source>
   <translation>La pose des feuilles {leaves} et des suivantes est douteuse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>It may stay as it is.</source>
   <translation>Il peut rester tel quel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>It stays {open} open at the rim: nothing is left to true off. Cut one piece anew from a spare leaf, wider by that.</source>
   <translation>Elle reste ouverte de {open} au pourtour : il n'y a plus rien à dresser. Couper une pièce à neuf dans une feuille de réserve, plus large d'autant.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Its pin holes are the leaf's: set it, or the tool, by them.</source>
   <translation>Ses trous de pion sont ceux de la feuille : le régler, lui ou l'outil, d'après eux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Its steps are those of stack {name}.</source>
   <translation>Ses étapes sont celles de la pile {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Kerf {kerf}, lean {lean} deg, at most {most} of leaves at once, boards {around} beyond the cuts, pins {clear} from them: common practice, no published source: set your own.</source>
   <translation>Trait {kerf}, inclinaison {lean} degrés, au plus {most} de feuilles en une fois, planches débordant les coupes de {around}, pions à {clear} d'elles : pratique courante, sans source publiée : mettez les vôtres.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Knives and saws: cut away from the hand, with the stack held between boards and never loose at a blade; guards on, eyes covered.</source>
   <translation>Couteaux et scies : couper loin de la main, la pile tenue entre planches et jamais libre devant une lame ; protecteurs en place, yeux couverts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>L: the leaf it is cut from.</source>
   <translation>L : la feuille où elle est coupée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Large: the position. Positions run {way}.</source>
   <translation>En grand : la position. Les positions vont {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Largest of face and core: {size}; in the press {thickness} thick.</source>
   <translation>Plus grand du parement et de l'âme : {size} ; dans la presse {thickness} d'épaisseur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Lay all pieces in their places, the side up as marked, and prove the order by one mark of the figure that goes through all of them.</source>
   <translation>Poser toutes les pièces à leurs places, dessus le côté marqué, et prouver l'ordre par une marque du dessin qui les traverse toutes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Lay all positions out dry, in order, show face up, and judge every seam in raking light before glue is mixed.</source>
   <translation>Poser à sec toutes les positions, dans l'ordre, parement dessus, et juger chaque joint en lumière rasante avant de préparer la colle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Lay it on the FACE of the leaf, this side up.</source>
   <translation>Le poser sur la FACE de la feuille, ce côté dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Lay it on the stack with the leaves' FACES up, this side up.</source>
   <translation>Le poser sur la pile, les FACES des feuilles dessus, ce côté dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>Lay out</source>
   <translation>Poser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Lay the field into the band dry; fit its line until no light shows, then tape.</source>
   <translation>Poser le champ à sec dans la bande ; ajuster sa ligne jusqu'à ne plus voir de jour, puis mettre le papier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lay the next lift on the same pins, under the same template.</source>
   <translation>Poser le paquet suivant sur les mêmes pions, sous le même gabarit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Lay the open edges of {parts} along one straightedge and take off as little as makes them straight.</source>
   <translation>Poser les bords ouverts de {parts} le long d'une règle et enlever le moins qui les rende droits.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Leaf</source>
   <translation>Feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Leaf by leaf</source>
   <translation>Feuille par feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Leaf thickness</source>
   <translation>Épaisseur de feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Leaf {leaf} as it is left, seen from its face; letters are those of the table.</source>
   <translation>La feuille {leaf} telle qu'elle reste, vue de sa face ; les lettres sont celles du tableau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Leaf {leaf} lies on top, face up, grain upright. The cut serves positions {positions}.</source>
   <translation>La feuille {leaf} est en haut, face dessus, fil debout. La coupe sert aux positions {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Leaf {leaves} has no room for it: at this spot a wedge can be cut to {angle} at most. Move the wedge on the bundle, take less oversize or wider leaves, or prove the template by a test cut, so that less over will do.</source>
   <translation>La feuille {leaves} n'en a pas la place : à cet emplacement un secteur peut être coupé à {angle} au plus. Déplacez le secteur sur la liasse, prenez moins de surcote ou des feuilles plus larges, ou éprouvez le gabarit par une coupe d'essai, pour que moins d'excédent suffise.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Leave it in for the maker's time; then stand it on edge with air on both faces until the moisture is even.</source>
   <translation>Le laisser le temps du fabricant ; puis le dresser sur chant, l'air sur les deux faces, jusqu'à ce que l'humidité soit égale.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Leave the diameter open between {one} on one side and {two} on the other, as measured.</source>
   <translation>Laissez ouvert le diamètre entre {one} d'un côté et {two} de l'autre, comme mesuré.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Leave the diameter open between {one} on one side and {two} on the other: of {count} it does best.</source>
   <translation>Laissez ouvert le diamètre entre {one} d'un côté et {two} de l'autre : c'est le meilleur des {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Leaves</source>
   <translation>Feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>Leaves marked "back" are pinned where the figure of their backs lies, up to {moved} from where their faces would be; they are pricked face up like the others.</source>
   <translation>Les feuilles marquées "dos" sont pionnées là où est le dessin de leur dos, jusqu'à {moved} de là où serait leur face ; elles sont piquées face dessus comme les autres.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Leaves that will be turned over are turned after the cut.</source>
   <translation>Les feuilles à retourner le sont après la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Leaves {leaves} have no room for it: at this spot a wedge can be cut to {angle} at most. Move the wedge on the bundle, take less oversize or wider leaves, or prove the template by a test cut, so that less over will do.</source>
   <translation>Les feuilles {leaves} n'en ont pas la place : à cet emplacement un secteur peut être coupé à {angle} au plus. Déplacez le secteur sur la liasse, prenez moins de surcote ou des feuilles plus larges, ou éprouvez le gabarit par une coupe d'essai, pour que moins d'excédent suffise.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Leaves: see the cut list.</source>
   <translation>Feuilles : voir la liste de débit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Left whole: {whole_leaves}.</source>
   <translation>Laissées entières : {whole_leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Length is along the grain. The area is that of all parts of a row.</source>
   <translation>La longueur est le long du fil. La surface est celle de toutes les pièces d'une ligne.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lift by lift, leaves {first} first: put them on the two pins, all faces up, in their order, leaf {top} uppermost.</source>
   <translation>Paquet par paquet, les feuilles {first} d'abord : les mettre sur les deux pions, toutes faces dessus, dans leur ordre, la feuille {top} en haut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lift the piece off and lay it aside in its order; put the next leaf on the pins.</source>
   <translation>Ôter la pièce et la poser dans son ordre ; mettre la feuille suivante sur les pions.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Lift the pieces off in their order; the edge of the lowest shows the lean.</source>
   <translation>Ôter les pièces dans leur ordre ; le bord de la plus basse montre l'inclinaison.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>Limits in air (check the current text): wood dust, NIOSH 1 mg/m3; OSHA 29 CFR 1910.1000 as particulates 15 mg/m3 total, 5 respirable.</source>
   <translation>Limites dans l'air (vérifier le texte actuel) : poussière de bois, NIOSH 1 mg/m3 ; OSHA 29 CFR 1910.1000 comme particules 15 mg/m3 au total, 5 alvéolaires.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Local rules for the workshop, the makers' sheets for machine, blade and dust, and licensed practice come before this sheet.</source>
   <translation>Les règles locales d'atelier, les fiches des fabricants pour machine, lame et poussière, et les gens habilités passent avant cette planche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>L{leaf}</source>
   <translation>L{leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>Map of the sheets, {scale}</source>
   <translation>Carte des planches, {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Mark centre and axes on the tape of the face and over the edges of the core; lay mark on mark.</source>
   <translation>Marquer centre et axes sur le papier du parement et par-dessus les bords de l'âme ; poser marque sur marque.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Mark the centre and the two axes on the back of the core's edge and on the tape of the face, by the distances given.</source>
   <translation>Marquer le centre et les deux axes au dos sur le bord de l'âme et sur le papier du parement, par les distances données.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Mark with a hard, sharp pencil, not with a knife, on the side that is up.</source>
   <translation>Marquer au crayon dur et pointu, pas au couteau, sur le côté du dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Marking</source>
   <translation>Marquage</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/paper.py" />
   <source>Marks for leaves</source>
   <translation>Repères pour les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Masking or plastic tape, on the show face: comes off before pressing, once gum tape is on; it prints, and its gum stays in the pores.</source>
   <translation>Adhésif de masquage ou plastique, sur le parement : s'enlève avant la presse, une fois le papier gommé posé ; il marque, et sa gomme reste dans les pores.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Match, order</source>
   <translation>Frisage, ordre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Measure along A-B from A, then square to the side.</source>
   <translation>Mesurer le long de A-B depuis A, puis d'équerre de côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Mirror image. Seen from the show face positions run {way}.</source>
   <translation>Image en miroir. Vu du parement les positions vont {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Mirror image: lay it on the BACK of the leaf, this side up (a turned piece shows its back).</source>
   <translation>Image en miroir : la poser sur le DOS de la feuille, ce côté dessus (une pièce retournée montre son dos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} % unsure): without any over the ring would close on the mean; the over allows for it.</source>
   <translation>Humidité {photograph} % à la photo, {cut} % à la coupe, {taping} % à l'assemblage ({unsure} % d'incertitude) : sans excédent la couronne se fermerait en moyenne ; l'excédent en tient compte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} % unsure): without any over the ring would open by {gap} at the rim; the over allows for it.</source>
   <translation>Humidité {photograph} % à la photo, {cut} % à la coupe, {taping} % à l'assemblage ({unsure} % d'incertitude) : sans excédent la couronne s'ouvrirait de {gap} au pourtour ; l'excédent en tient compte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Moisture {photograph} % when photographed, {cut} % when cut, {taping} % when taped ({unsure} % unsure): without any over the ring would overlap by {gap} at the rim; the over allows for it.</source>
   <translation>Humidité {photograph} % à la photo, {cut} % à la coupe, {taping} % à l'assemblage ({unsure} % d'incertitude) : sans excédent la couronne se recouvrirait de {gap} au pourtour ; l'excédent en tient compte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>More in the model.</source>
   <translation>La suite dans le modèle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>NOT UP TO DATE: {reason}</source>
   <translation>PAS À JOUR : {reason}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Net {net}, blank {blank}, across x along the grain.</source>
   <translation>Fini {net}, ébauche {blank}, en travers x le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>No leaf is left whole: there is no spare.</source>
   <translation>Aucune feuille ne reste entière : il n'y a pas de réserve.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>No leaf is turned over.</source>
   <translation>Aucune feuille n'est retournée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>No price was entered: give one for the bundle, a leaf, a m2 or a sq ft.</source>
   <translation>Aucun prix n'a été entré : donnez-en un pour la liasse, une feuille, un m2 ou un pied carré.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/parts.py" />
   <source>No straight cut from edge to edge parts the {count} cuts on these leaves with {room} mm to spare, as a saw would need; move them further apart, or cut by knife or on a machine.</source>
   <translation>Aucune coupe droite de bord à bord ne sépare les {count} coupes sur ces feuilles avec {room} mm de place, comme une scie le demande ; écartez-les, ou coupez au couteau ou à la machine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>No tip is lost if that can be, then as little trued off as can be, then the most even halves.</source>
   <translation>Aucune pointe perdue si possible, puis le moins de dressage possible, puis les moitiés les plus égales.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>No tip is lost if that can be, then as little trued off as can be; of those that are sure, truing shows least there, where most surfaces lie between the leaves that meet ({broken:.1f} on the mean); else the most even halves.</source>
   <translation>Aucune pointe perdue si possible, puis le moins de dressage possible ; parmi ceux qui sont sûrs, le dressage se voit le moins là où il y a le plus de surfaces entre les feuilles qui se rejoignent ({broken:.1f} en moyenne) ; sinon les moitiés les plus égales.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>No: it does not go in; {missing} are missing.</source>
   <translation>Non : cela n'y entre pas ; il manque {missing}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Nobody reaches in while the tool turns or burns; it never runs alone; dust or fumes drawn off; the piece held before the tool starts.</source>
   <translation>Personne n'y met la main pendant que l'outil tourne ou brûle ; il ne marche jamais seul ; poussière ou fumées aspirées ; la pièce tenue avant le départ de l'outil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Notes, findings, cautions</source>
   <translation>Notes, constats, prudence</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Nothing falls yet: the piece still hangs in the waste.</source>
   <translation>Rien ne tombe encore : la pièce tient encore à la chute.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Number every offcut as its leaf: a patch or a strip from the same leaf, or the next, matches in colour and figure.</source>
   <translation>Numéroter chaque chute comme sa feuille : une pièce ou une bande de la même feuille, ou de la suivante, va en couleur et en dessin.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/picture.py" />
   <source>Numbers cannot be drawn in this session; ask for the picture without them.</source>
   <translation>Aucun nombre ne peut être dessiné dans cette session ; demandez l'image sans eux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}, the diameter chosen by wedges measured to {measured}.</source>
   <translation>Sur 100 couronnes coupées ainsi, {reach} dans {count}, le diamètre choisi d'après des secteurs mesurés à {measured}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}, the diameter fixed beforehand.</source>
   <translation>Sur 100 couronnes coupées ainsi, {reach} dans {count}, le diamètre fixé d'avance.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}, the quarters fixed beforehand.</source>
   <translation>Sur 100 couronnes coupées ainsi, {reach} dans {count}, les quarts fixés d'avance.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Of 100 rings cut so, {reach} in {count}.</source>
   <translation>Sur 100 couronnes coupées ainsi, {reach} dans {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>Of the layers of this file only {cut} is cut along, or {tool} by a machine that does not reckon the width of its tool.</source>
   <translation>Des calques de ce fichier on ne coupe que le long de {cut}, ou de {tool} par une machine qui ne compte pas la largeur de son outil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>Of the layers of this file only {cut} is cut along.</source>
   <translation>Des calques de ce fichier on ne coupe que le long de {cut}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Of the oversize {left} are left at the rim.</source>
   <translation>De la surcote il reste {left} au pourtour.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Of these {positions} need a second cut.</source>
   <translation>Parmi elles {positions} demandent une seconde coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Of {usable} of usable area in {count} leaves, {used} lie in the cuts, {kerf} go with the kerf and {left} are left.</source>
   <translation>De {usable} de surface utile en {count} feuilles, {used} sont dans les coupes, {kerf} partent avec le trait et {left} restent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Offcuts</source>
   <translation>Chutes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>On a straight line mark {base} from the tip. There square off {offset} to both sides. The seams run from the tip through the two marks.</source>
   <translation>Sur une droite marquer {base} depuis la pointe. Là, d'équerre, {offset} des deux côtés. Les joints vont de la pointe par les deux marques.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>On a straight line mark {base} from the tip. There square off {offset} to both sides. The seams run from the tip through the two marks. Make a test cut and lay it together before the stack is cut.</source>
   <translation>Sur une droite marquer {base} depuis la pointe. Là, d'équerre, {offset} des deux côtés. Les joints vont de la pointe par les deux marques. Faire une coupe d'essai et la reporter avant de couper la pile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>On the least leaf the match lies with its point at {size} from the lower left corner; a longer leaf leaves room to choose where the figure is best. Faults and crooked edges come off what is bought.</source>
   <translation>Sur la plus petite feuille le frisage a sa pointe à {size} du coin bas gauche ; une feuille plus longue laisse choisir où le dessin est le meilleur. Défauts et bords tordus se déduisent de l'achat.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>On the leaves of positions {again} mark their own outline too, fine, each with its own template by the two holes.</source>
   <translation>Sur les feuilles des positions {again}, marquer aussi finement leur propre contour, chacun avec son gabarit par les deux trous.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>One finished top has {top:.3f} m2 ({top_2:.2f} sq ft).</source>
   <translation>Un plateau fini a {top:.3f} m2 ({top_2:.2f} pieds carrés).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>One leaf after another, leaf {top} first: put it on the two pins, the side up that the file of its position names, its face.</source>
   <translation>Une feuille après l'autre, la feuille {top} d'abord : la mettre sur les deux pions, dessus le côté que nomme le fichier de sa position, sa face.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>One leaf after another, leaf {top} first: put it on the two pins, the side up that the file of its position names; the backs of positions {turned} are up.</source>
   <translation>Une feuille après l'autre, la feuille {top} d'abord : la mettre sur les deux pions, dessus le côté que nomme le fichier de sa position ; aux positions {turned} le dos est dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>One leaf at a time on the two pins: leaves {order}.</source>
   <translation>Une feuille à la fois sur les deux pions : feuilles {order}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>One leaf of {thickness} mm is thicker than the {most} mm that you cut at once; set a higher limit, or cut leaf by leaf on a machine.</source>
   <translation>Une feuille de {thickness} mm est plus épaisse que les {most} mm que vous coupez en une fois ; mettez une limite plus haute, ou coupez feuille à feuille à la machine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>One outline serves pieces of several shapes. Cut by shape they would be {count} stacks with a template each, and take {share} % less of the leaves.</source>
   <translation>Un contour sert à des pièces de plusieurs formes. Coupées par forme, elles seraient {count} piles avec un gabarit chacune, et prendraient {share} % de moins des feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>One piece shows a back that was not photographed: its neighbour's picture, or its own face, stands in for it.</source>
   <translation>Une pièce montre un dos qui n'a pas été photographié : l'image de la voisine, ou sa propre face, en tient lieu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>One sheet, {name}.</source>
   <translation>Une planche, {name}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>One wrong cut through the stack spoils every leaf of it at once: cut a trial from a spare or an end first, and keep the spares from the same bundle, next to those used.</source>
   <translation>Une mauvaise coupe à travers la pile gâche toutes ses feuilles à la fois : coupez d'abord un essai dans une réserve ou un bout, et gardez les réserves de la même liasse, voisines des utilisées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>Only a radial match is a ring that closes; choose one, or see its joints in the checks.</source>
   <translation>Seul un frisage rayonnant est une couronne qui se ferme ; choisissez-en un, ou voyez ses joints dans les contrôles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Only dust falls.</source>
   <translation>Seule la poussière tombe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Opening, cut after pressing</source>
   <translation>Ouverture, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Or lay the strip on the leaf, its cross where the strip says and its line along a straightedge through both marks, the arrow towards the second, and prick the hole through the ring. Print at 100 %: the bars must measure 100 mm.</source>
   <translation>Ou poser la bande sur la feuille, sa croix où la bande le dit et sa ligne le long d'une règle par les deux repères, la flèche vers le second, et piquer le trou à travers l'anneau. Imprimer à 100 % : les barres doivent mesurer 100 mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Order of the day</source>
   <translation>Ordre du jour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Other leaves lie under it by their registers, not by their edges: what is measured here holds for this leaf alone.</source>
   <translation>Les autres feuilles sont dessous par leurs calages, non par leurs bords : ce qui est mesuré ici ne vaut que pour cette feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>Outer band: {step}</source>
   <translation>Bande extérieure : {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Owner</source>
   <translation>Propriétaire</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Part the stack between the cuts; tape the fresh edges at once.</source>
   <translation>Séparer la pile entre les coupes ; mettre aussitôt de l'adhésif sur les bords frais.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Piece</source>
   <translation>Pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Piece {letter}</source>
   <translation>Pièce {letter}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/wedge.py" />
   <source>Piece {position} does not run to a tip between two straight seams; there is no drawing of such a piece yet.</source>
   <translation>La pièce {position} ne va pas à une pointe entre deux joints droits ; il n'y a pas encore de dessin d'une telle pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Pieces</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Pieces keep their places: a matched face is not reshuffled to make it close.</source>
   <translation>Les pièces gardent leurs places : une face assortie ne se redistribue pas pour la fermer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Pieces keep their places: a matched ring is not reshuffled.</source>
   <translation>Les pièces gardent leurs places : une couronne assortie ne se redistribue pas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>Pieces of both sides come from leaf {leaves}, and its sides lie otherwise: cut the upright pieces on the first pair of holes, pin again on the second for the turned ones.</source>
   <translation>Des pièces des deux côtés viennent de la feuille {leaves}, et ses côtés sont posés autrement : couper les pièces à l'endroit sur la première paire de trous, pionner à nouveau sur la seconde pour les retournées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>Pin holes at 1:1</source>
   <translation>Trous de pion à 1:1</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Pinning</source>
   <translation>Pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Pins are sharp: press leaves down with a block beside the pin, not with a finger.</source>
   <translation>Les pions sont pointus : presser les feuilles avec une cale à côté du pion, pas avec un doigt.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Pins, on the oversize: come off after pressing; they mark the plates: sink them, or draw them once the face is held.</source>
   <translation>Pions, dans la surcote : s'enlèvent après la presse ; ils marquent les plateaux : les noyer, ou les tirer une fois le parement tenu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Places are those of the mark's middle, from the left edge as seen on the side that is chalked and from the lower end; a finger's breadth either way does no harm.</source>
   <translation>Les places sont celles du milieu de la marque, depuis le bord gauche du côté marqué et depuis le bout bas ; un doigt de plus ou de moins ne nuit pas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan.py" />
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_parts.py" />
   <source>Plan in parts {number} of {count}</source>
   <translation>Plan en parties {number} sur {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_parts.py" />
   <source>Plan, part {number} of {count}: column {column} of {columns} from the left, row {row} of {rows} from the top</source>
   <translation>Plan, partie {number} sur {count} : colonne {column} sur {columns} depuis la gauche, rang {row} sur {rows} depuis le haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Plan, scale {scale}.</source>
   <translation>Plan, échelle {scale}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Position and leaf: {listed}.</source>
   <translation>Position et feuille : {listed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Position {pairs}.</source>
   <translation>Position {pairs}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Position {places}, from the leaf of the same number.</source>
   <translation>Position {places}, de la feuille du même numéro.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Position {positions}.</source>
   <translation>Position {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Positions run {way}, seen from the show face.</source>
   <translation>Les positions vont {way}, vu du parement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Positions run {way}.</source>
   <translation>Les positions vont {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Positions run {way}; the parts of the plan that follow have them.</source>
   <translation>Les positions vont {way} ; les parties du plan qui suivent les ont.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Positions {pairs}.</source>
   <translation>Positions {pairs}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Positions {places}, from the leaves of the same numbers.</source>
   <translation>Positions {places}, des feuilles des mêmes numéros.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Positions {places}, leaves {leaves}; the cut list has which is which.</source>
   <translation>Positions {places}, feuilles {leaves} ; la liste de débit dit laquelle est laquelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Positions {turned} show their backs: their leaves lie back up, and their files are mirror images with the pins in their places. All others lie face up.</source>
   <translation>Les positions {turned} montrent leur dos : leurs feuilles sont dos dessus, et leurs fichiers sont en miroir avec les pions à leurs places. Toutes les autres sont face dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Press day</source>
   <translation>Jour de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Press or bag: not entered, so that nothing is said of its size.</source>
   <translation>Presse ou sac : non entré, rien n'est donc dit de sa taille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Presses and bags: keep within the rating of press, bag, hoses and pump. A pressure vessel is for those who are licensed for it.</source>
   <translation>Presses et sacs : rester dans ce que presse, sac, tuyaux et pompe supportent. Un réservoir sous pression est pour ceux qui y sont habilités.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Pressure on the face, as entered from the maker's sheet: {wanted}.</source>
   <translation>Pression sur la face, comme entrée de la fiche du fabricant : {wanted}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Pressure: look it up in the maker's sheet of the adhesive.</source>
   <translation>Pression : la chercher dans la fiche de la colle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Price as entered: {amount} for each {per}.</source>
   <translation>Prix tel qu'entré : {amount} par {per}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Prick away from the hand that holds the leaf, into a soft board; prick square.</source>
   <translation>Piquer loin de la main qui tient la feuille, dans une planche tendre ; piquer d'aplomb.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Prick the two holes of each leaf as the pinning sheet gives them.</source>
   <translation>Piquer les deux trous de chaque feuille comme la planche des pions les donne.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>Print at 100 %: both bars measure 100 mm. Seen from the face of the leaf.</source>
   <translation>Imprimer à 100 % : les deux barres mesurent 100 mm. Vu de la face de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Print at 100 %: fit to page shrinks a sheet. Both bars measure 100 mm (3.937 in).</source>
   <translation>Imprimer à 100 % : ajuster à la page rétrécit. Les deux barres mesurent 100 mm (3.937 pouces).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>Prove the order of the leaves by following one mark of the figure through the stack, number every leaf on the face near its lower end, and register the leaves on the figure and not on their edges.</source>
   <translation>Prouver l'ordre des feuilles en suivant une marque du dessin à travers la pile, numéroter chaque feuille sur la face près de son bout bas, et caler les feuilles d'après le dessin et non leurs bords.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Put leaves {first} on the two pins, all faces up, in their order, leaf {top} uppermost.</source>
   <translation>Mettre les feuilles {first} sur les deux pions, toutes faces dessus, dans leur ordre, la feuille {top} en haut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Put the template on the two pins over the leaves, tape the lift to the board in the waste, clamp the straightedge over the piece.</source>
   <translation>Mettre le gabarit sur les deux pions par-dessus les feuilles, fixer le paquet à la planche par adhésif dans la chute, serrer la règle sur la pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Put the upper board, {board} thick, on the pins and the template over it; score the template's outline into the board, which is the line. Take the template off, drive the screws in the places shown, wrap tape round the sandwich, clamp it on the sled.</source>
   <translation>Mettre la planche du dessus, épaisse de {board}, sur les pions et le gabarit dessus ; tracer à la pointe son contour dans la planche, c'est le trait. Ôter le gabarit, mettre les vis aux endroits montrés, entourer le sandwich d'adhésif, le serrer sur le chariot.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Red: faults of this leaf ({told}); others have their own.</source>
   <translation>Rouge : défauts de cette feuille ({told}) ; les autres ont les leurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Revision mark</source>
   <translation>Indice de révision</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Rim from the lower seam: {lengths}.</source>
   <translation>Pourtour depuis le joint du bas : {lengths}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Rim: arc of radius {radius}, chord {chord}, rise {rise}.</source>
   <translation>Pourtour : arc de rayon {radius}, corde {chord}, flèche {rise}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Rim: one straight of {length}.</source>
   <translation>Pourtour : une droite de {length}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Run the tool round the outline of cut {number}, as the file of its position has it, outside the line: counter-clockwise as seen, the tool on the right; begin and end in the arrow's place.</source>
   <translation>Mener l'outil autour du contour de la coupe {number}, comme le fichier de sa position l'a, en dehors du trait : en sens inverse des aiguilles, l'outil à droite ; commencer et finir à la flèche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Run the tool round the outline, as the file of its position has it, outside the line: counter-clockwise as seen, the tool on the right; begin and end in the arrow's place.</source>
   <translation>Mener l'outil autour du contour, comme le fichier de sa position l'a, en dehors du trait : en sens inverse des aiguilles, l'outil à droite ; commencer et finir à la flèche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>STOP: do not cut</source>
   <translation>ARRÊT : ne pas couper</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Saw off the oversize clear of the line, show face up for a hand saw or router bit that cuts down, face down for a saw that cuts up.</source>
   <translation>Scier la surcote à distance du trait, parement dessus pour une scie à main ou une fraise qui coupe vers le bas, dessous pour une scie qui coupe vers le haut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Saws and routers at the edge: support the panel, cut with the feed against the cutter, guards on, eyes and ears covered.</source>
   <translation>Scies et défonceuses au bord : soutenir le panneau, avancer contre le sens de l'outil, protecteurs en place, yeux et oreilles couverts.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Scale</source>
   <translation>Échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Scale of plan</source>
   <translation>Échelle du plan</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Scale of wedge</source>
   <translation>Échelle du secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Score the show face on the line before the saw, so that nothing lifts.</source>
   <translation>Entailler le parement sur le trait avant la scie, pour que rien ne s'arrache.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>Seam {seam} of this ring never meets the top's edge, so that its closing cannot be told; move the ring's centre into the top.</source>
   <translation>Le joint {seam} de cette couronne ne rencontre jamais le bord du plateau, sa fermeture ne peut donc pas être dite ; déplacez le centre de la couronne dans le plateau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Seams are cut over, {angle} deg in all, as the templates have them; pins, lines and offcuts here reckon with it.</source>
   <translation>Les joints sont coupés plus larges, {angle} degrés en tout, comme les gabarits ; pions, traits et chutes ici en tiennent compte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Seams are cut over, {width} on each, as the templates have them; pins, lines and offcuts here reckon with it.</source>
   <translation>Les joints sont coupés plus larges, {width} chacun, comme les gabarits ; pions, traits et chutes ici en tiennent compte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section</source>
   <translation>Coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section along x through the centre of the match, from the left end of the top to the centre, seen from the lower end. The show face is on top.</source>
   <translation>Coupe selon x par le centre du frisage, du bout gauche du plateau au centre, vue du bout bas. Le parement est en haut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section through the build-up</source>
   <translation>Coupe de la composition</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Section, continued</source>
   <translation>Coupe, suite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Seen from the faces of the leaves, grain upright.</source>
   <translation>Vu depuis les faces des feuilles, le fil debout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>Seen from the show face, positions counter-clockwise.</source>
   <translation>Vu du parement, positions en sens inverse des aiguilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Seen from the show face.</source>
   <translation>Vu du parement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Set out {angle} by hand: along its middle {base} from the tip as cut, then {offset} square to each side. Make a test cut.</source>
   <translation>Tracer {angle} à la main : le long de son milieu {base} depuis la pointe coupée, puis {offset} d'équerre de chaque côté. Faire une coupe d'essai.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Set out {angle} by hand: along its middle {base} from the tip, then {offset} square to each side. Make a test cut.</source>
   <translation>Tracer {angle} à la main : le long de son milieu {base} depuis la pointe, puis {offset} d'équerre de chaque côté. Faire une coupe d'essai.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Set the template to {angle}, {over} over, never under: from the tip mark {base} on the axis and square off {offset} to both sides. Read to {reading} mm that is sure to {sure}.</source>
   <translation>Régler le gabarit à {angle}, {over} de plus, jamais de moins : depuis la pointe marquer {base} sur l'axe et d'équerre {offset} des deux côtés. Lu à {reading} mm c'est sûr à {sure}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Set-out of {angle}, not to scale</source>
   <translation>Tracé de {angle}, sans échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Set-out of {angle}, not to scale.</source>
   <translation>Tracé de {angle}, sans échelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Sharp edges: cut away from the hand, with work and rule held down, and keep the guard on the saw. What local rules and the machine's own sheet ask comes first.</source>
   <translation>Bords vifs : couper loin de la main, pièce et règle tenues, et garder le protecteur sur la scie. Ce que demandent les règles locales et la fiche de la machine passe d'abord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Sheet</source>
   <translation>Planche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Sheet {sheet}: row {row} of {rows}, column {column} of {columns}, {page}.</source>
   <translation>Planche {sheet} : rang {row} sur {rows}, colonne {column} sur {columns}, {page}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>Sizes are across the leaf x along the grain. Side up: what is seen of the leaf on the finished top.</source>
   <translation>Les cotes sont en travers de la feuille x le long du fil. Côté dessus : ce qui se voit de la feuille sur le plateau fini.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>Sizes are of rectangles along the grain that fit; larger ones may be found by hand. What an offcut is kept for, and from which size on, is common practice: set your own.</source>
   <translation>Les cotes sont celles de rectangles le long du fil qui y tiennent ; de plus grands peuvent se trouver à la main. À quoi sert une chute, et dès quelle taille, est de pratique courante : mettez la vôtre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Some parts of stack {stacks} have room for neither a pin nor a screw: before it is closed, stick boards and leaves together there with removable double-sided tape in the waste, so that no leaf can slip.</source>
   <translation>Certaines parties de la pile {stacks} n'ont place ni pour un pion ni pour une vis : avant de la fermer, coller là planches et feuilles ensemble avec un adhésif double face enlevable dans la chute, pour qu'aucune feuille ne glisse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Spare leaves are cut like the others and kept: a piece that breaks at the press or the trimming has its neighbour in the sequence.</source>
   <translation>Les feuilles de réserve sont coupées comme les autres et gardées : une pièce qui casse à la presse ou au rognage a sa voisine dans la suite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Spare leaves are cut with the others and kept: a piece that breaks at the press or the trimming has its neighbour in the sequence.</source>
   <translation>Les feuilles de réserve sont coupées avec les autres et gardées : une pièce qui casse à la presse ou au rognage a sa voisine dans la suite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Spares among them: {leaves}.</source>
   <translation>Réserves parmi elles : {leaves}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Spares among them: {spares}, face up.</source>
   <translation>Réserves parmi elles : {spares}, face dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Spread, lay the face on its marks, caul and film on it.</source>
   <translation>Encoller, poser le parement sur ses marques, film et cale dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Spread, lay the face on its marks, set the pins in the oversize, caul and film on it.</source>
   <translation>Encoller, poser le parement sur ses marques, mettre les pions dans la surcote, film et cale dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stack</source>
   <translation>Pile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stack {stacks}, step {number}: {step}</source>
   <translation>Pile {stacks}, étape {number} : {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stack {stack}</source>
   <translation>Pile {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Stack {stack}: where the pins stand</source>
   <translation>Pile {stack} : où sont les pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Stacks {stacks}, step {number}: {step}</source>
   <translation>Piles {stacks}, étape {number} : {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>Standard error at a leaf's corner up to {error}.</source>
   <translation>Écart type au coin d'une feuille jusqu'à {error}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>Step {number}: {step}</source>
   <translation>Étape {number} : {step}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Still to be looked up there: {missing}.</source>
   <translation>Reste à y chercher : {missing}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>TIP</source>
   <translation>POINTE</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Take tape and chalk off the glue side; vacuum both.</source>
   <translation>Ôter adhésif et craie de la face de collage ; aspirer les deux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>Take {offsets} at the rim, nothing at the tip, off both its pieces.</source>
   <translation>Enlever {offsets} au pourtour, rien à la pointe, à ses deux pièces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Tape of any kind, on the glue side: comes off before glue; no adhesive bonds through it: a strip left there lets go and shows as a ridge.</source>
   <translation>Adhésif de toute sorte, sur la face de collage : s'enlève avant la colle ; aucune colle ne traverse : une bande oubliée là lâche et se voit en bourrelet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Tape the middle of the seam first, then outwards.</source>
   <translation>Mettre le papier au milieu du joint d'abord, puis vers l'extérieur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the four quarters; dry-lay before glue, measure, and true each quarter at both ends alike: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Assembler jusqu'aux quatre quarts ; poser à sec avant la colle, mesurer, et dresser chaque quart pareillement aux deux bouts : en moyenne {lost} au pourtour allant à rien à la pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the two halves; dry-lay before glue, measure, and true each half at both ends alike: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Assembler jusqu'aux deux moitiés ; poser à sec avant la colle, mesurer, et dresser chaque moitié pareillement aux deux bouts : en moyenne {lost} au pourtour allant à rien à la pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the two halves; dry-lay before glue, measure, and true each half at its last end: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Assembler jusqu'aux deux moitiés ; poser à sec avant la colle, mesurer, et dresser chaque moitié à son dernier bout : en moyenne {lost} au pourtour allant à rien à la pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>Tape up to the whole ring; dry-lay before glue, measure, and true the last joint on both its pieces alike: on the mean {lost} at the rim running out to nothing at the tip.</source>
   <translation>Assembler jusqu'à toute la couronne ; poser à sec avant la colle, mesurer, et dresser le dernier joint pareillement sur ses deux pièces : en moyenne {lost} au pourtour allant à rien à la pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Taped face down: this plan is the mirror image of the top, seen from its back, and each piece shows the side that is glued. Tape on that side only holds for the moment; turn the whole over, gum-tape the show face, and take every strip off the glue side before glue.</source>
   <translation>Assemblé parement dessous : ce plan est l'image en miroir du plateau, vu du dos, et chaque pièce montre le côté collé. L'adhésif de ce côté ne tient que pour le moment ; retourner le tout, mettre le papier gommé sur le parement, et ôter chaque bande de la face de collage avant la colle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Taped face up: the plan is seen from the show face.</source>
   <translation>Assemblé parement dessus : le plan est vu du parement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>Taping plan</source>
   <translation>Plan d'assemblage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>Taping plan, face down (mirrored)</source>
   <translation>Plan d'assemblage, parement dessous (en miroir)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of piece {numbers}</source>
   <translation>Gabarit de la pièce {numbers}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of pieces {numbers}</source>
   <translation>Gabarit des pièces {numbers}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut</source>
   <translation>Gabarit de la coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut {number} of {count}</source>
   <translation>Gabarit de la coupe {number} sur {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut {number} of {count}, stack {stack}</source>
   <translation>Gabarit de la coupe {number} sur {count}, pile {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut {number} of {count}, stacks {stack}</source>
   <translation>Gabarit de la coupe {number} sur {count}, piles {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut, stack {stack}</source>
   <translation>Gabarit de la coupe, pile {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>Template of the cut, stacks {stack}</source>
   <translation>Gabarit de la coupe, piles {stack}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Test cut: {count} wedges made {sum}, so that the template cuts {angle}, sure to {sure}: {off} over, and {wanted} over are wanted.</source>
   <translation>Coupe d'essai : {count} secteurs ont fait {sum}, le gabarit coupe donc {angle}, sûr à {sure} : {off} de plus, et {wanted} de plus sont voulus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Test cut: {count} wedges made {sum}, so that the template cuts {angle}, sure to {sure}: {off} under, and {wanted} over are wanted.</source>
   <translation>Coupe d'essai : {count} secteurs ont fait {sum}, le gabarit coupe donc {angle}, sûr à {sure} : {off} de moins, et {wanted} de plus sont voulus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>Test cut: {count} wedges of waste laid tip to tip should make {sum}. What they make, parted by {count}, is the template's angle, sure to {sure}: the template's error is then no larger than that. Enter it, and the advice goes by it.</source>
   <translation>Coupe d'essai : {count} secteurs de chute posés pointe à pointe doivent faire {sum}. Ce qu'ils font, divisé par {count}, est l'angle du gabarit, sûr à {sure} : l'erreur du gabarit n'est alors pas plus grande. Entrez-le, et le conseil s'y règle.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/paper.py" />
   <source>Text cannot be drawn in this session; print the marks from the window.</source>
   <translation>Aucun texte ne peut être dessiné dans cette session ; imprimez les repères depuis la fenêtre.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/pdf.py" />
   <source>Text cannot be drawn in this session; write the pages from the window.</source>
   <translation>Aucun texte ne peut être dessiné dans cette session ; écrivez les pages depuis la fenêtre.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/drawn_picture.py" />
   <source>Text cannot be drawn in this session; write the picture from the window.</source>
   <translation>Aucun texte ne peut être dessiné dans cette session ; écrivez l'image depuis la fenêtre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>That is less sure than the {error} that were reckoned with: take a base of {base} or more, or let the test cut decide.</source>
   <translation>C'est moins sûr que les {error} comptés : prenez une base de {base} ou plus, ou laissez décider la coupe d'essai.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>That is not enough for this adhesive: take a press with plates, or an adhesive whose sheet allows less.</source>
   <translation>Cela ne suffit pas pour cette colle : prenez une presse à plateaux, ou une colle dont la fiche permet moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>That is not enough: the press gives {most} on this panel at most. Take another press, or an adhesive whose sheet allows less.</source>
   <translation>Cela ne suffit pas : la presse donne au plus {most} sur ce panneau. Prenez une autre presse, ou une colle dont la fiche permet moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>That over costs: seams up to {shift} off their places at the rim (most at the end of piece {piece}), {lost} of figure at the rim on each side of a trued joint, {share} % of the top's area, and every wedge {wider} wider at the rim, which its leaf has room for.</source>
   <translation>Cet excédent coûte : des joints jusqu'à {shift} hors de leur place au pourtour (le plus à la fin de la pièce {piece}), {lost} de dessin au pourtour de chaque côté d'un joint dressé, {share} % de la surface du plateau, et chaque secteur {wider} plus large au pourtour, ce dont sa feuille a la place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>That over costs: seams up to {shift} off their places at the rim (most at the end of piece {piece}), {lost} of figure at the rim on each side of a trued joint, {share} % of the top's area, and every wedge {wider} wider at the rim, which its leaf must have.</source>
   <translation>Cet excédent coûte : des joints jusqu'à {shift} hors de leur place au pourtour (le plus à la fin de la pièce {piece}), {lost} de dessin au pourtour de chaque côté d'un joint dressé, {share} % de la surface du plateau, et chaque secteur {wider} plus large au pourtour, que sa feuille doit avoir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The air outside has {air} at {altitude:g} m (weather moves it a little): no bag presses with more, and no pump reaches all of it.</source>
   <translation>L'air du dehors a {air} à {altitude:g} m (le temps le change un peu) : aucun sac ne presse avec plus, et aucune pompe n'atteint tout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/units.py" />
   <source>The altitude cannot be {value} m; give a number from -500 to {most}.</source>
   <translation>L'altitude ne peut pas être {value} m ; donnez un nombre de -500 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>The angle that a seam is cut over cannot be {value}; give a number from 0 to {most}. Cut over, never under.</source>
   <translation>L'angle dont un joint est coupé plus large ne peut pas être {value} ; donnez un nombre de 0 à {most}. Coupez plus large, jamais plus étroit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>The arrow in a piece is its grain.</source>
   <translation>La flèche dans une pièce est son fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The axis leans {turn} to the left of A-B.</source>
   <translation>L'axe penche de {turn} à gauche de A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The axis leans {turn} to the right of A-B.</source>
   <translation>L'axe penche de {turn} à droite de A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The axis runs along A-B.</source>
   <translation>L'axe suit A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>The back of {count} turned leaf was not photographed: seams there may miss by {miss}.</source>
   <translation>Le dos de {count} feuille retournée n'a pas été photographié : les joints là peuvent être décalés de {miss}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>The backs of {count} turned leaves were not photographed: seams there may miss by {miss}.</source>
   <translation>Les dos de {count} feuilles retournées n'ont pas été photographiés : les joints là peuvent être décalés de {miss}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The bag presses with {most} at most: what its pump pulls here, or the air outside ({air} at {altitude:g} m) where that is less.</source>
   <translation>Le sac presse avec {most} au plus : ce que sa pompe tire ici, ou l'air du dehors ({air} à {altitude:g} m) s'il est moindre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/setout.py" />
   <source>The base of the set-out cannot be {value}; give a length up to {most}, or 0 to have it chosen.</source>
   <translation>La base du tracé ne peut pas être {value} ; donnez une longueur jusqu'à {most}, ou 0 pour la laisser choisir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>The checks found nothing that speaks against cutting.</source>
   <translation>Les contrôles n'ont rien trouvé qui s'oppose à la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>The coefficient of movement cannot be {shown}; give 0 to {most} for each % of moisture.</source>
   <translation>Le coefficient de travail ne peut pas être {shown} ; donnez 0 à {most} par % d'humidité.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>The coefficients of movement hold from 6 to 14 % of moisture only.</source>
   <translation>Les coefficients de travail ne valent que de 6 à 14 % d'humidité.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>The cross is the centre of the match: {cx} from the left end and {cy} from the lowest point of the top.</source>
   <translation>La croix est le centre du frisage : à {cx} du bout gauche et {cy} du point le plus bas du plateau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>The cut</source>
   <translation>La coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The cut on the stack</source>
   <translation>La coupe sur la pile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The cut on the stack {number} of {count}</source>
   <translation>La coupe sur la pile {number} sur {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The disc over the centre hides it.</source>
   <translation>Le disque au centre le cache.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>The edge, from the centre</source>
   <translation>Le bord, depuis le centre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The end marked TIP goes to the middle of the top.</source>
   <translation>Le bout marqué POINTE va au milieu du plateau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>The finished top</source>
   <translation>Le plateau fini</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>The folder {folder} holds {count} packets of this layout; choose another one.</source>
   <translation>Le dossier {folder} contient {count} dossiers de cette disposition ; choisissez-en un autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The grain runs along the arrow, which points to the leaf's upper end.</source>
   <translation>Le fil suit la flèche, qui pointe vers le bout haut de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The halves are {one} with {first} and {two} with {second}, each sure to {sure}. The chance that both reach 180 deg is {chance}.</source>
   <translation>Les moitiés sont {one} avec {first} et {two} avec {second}, chacune sûre à {sure}. La chance que les deux atteignent 180 degrés est {chance}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The hydraulic gauge shows {gauge} for it, friction and springs of the rams left out.</source>
   <translation>Le manomètre hydraulique montre {gauge} pour cela, frottement et ressorts des vérins non comptés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The joint is bent: fit it piece by piece from the middle outwards, then tape.</source>
   <translation>Le joint est plié : l'ajuster pièce à pièce du milieu vers l'extérieur, puis mettre le papier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>The kerf of {kerf} lies in the waste.</source>
   <translation>Le trait de {kerf} est dans la chute.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>The last joint cannot have the seam of positions {a} and {b}; it can have that of {could}.</source>
   <translation>Le dernier joint ne peut pas être celui des positions {a} et {b} ; il peut être celui de {could}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}, as it was asked for.</source>
   <translation>Le dernier joint est le joint {seams}, comme demandé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: no other parts the face evenly.</source>
   <translation>Le dernier joint est le joint {seams} : aucun autre ne partage la face également.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: of {count} it hides best, for of those with as many surfaces between, the colours differ most there ({here} CIEDE2000; the others {least} to {most}).</source>
   <translation>Le dernier joint est le joint {seams} : sur {count} c'est celui qui se voit le moins, car parmi ceux avec autant de surfaces entre, les couleurs y diffèrent le plus ({here} CIEDE2000 ; les autres {least} à {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: of {count} it hides best, for there most surfaces lie between those that meet ({here} on the mean; the others {least} to {most}).</source>
   <translation>Le dernier joint est le joint {seams} : sur {count} c'est celui qui se voit le moins, car c'est là qu'il y a le plus de surfaces entre celles qui se rejoignent ({here} en moyenne ; les autres {least} à {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seam {seams}: of {count} none hides it better.</source>
   <translation>Le dernier joint est le joint {seams} : sur {count} aucun ne se voit moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}, as it was asked for.</source>
   <translation>Le dernier joint est celui des joints {seams}, comme demandé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: no other parts the face evenly.</source>
   <translation>Le dernier joint est celui des joints {seams} : aucun autre ne partage la face également.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: of {count} it hides best, for of those with as many surfaces between, the colours differ most there ({here} CIEDE2000; the others {least} to {most}).</source>
   <translation>Le dernier joint est celui des joints {seams} : sur {count} c'est celui qui se voit le moins, car parmi ceux avec autant de surfaces entre, les couleurs y diffèrent le plus ({here} CIEDE2000 ; les autres {least} à {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: of {count} it hides best, for there most surfaces lie between those that meet ({here} on the mean; the others {least} to {most}).</source>
   <translation>Le dernier joint est celui des joints {seams} : sur {count} c'est celui qui se voit le moins, car c'est là qu'il y a le plus de surfaces entre celles qui se rejoignent ({here} en moyenne ; les autres {least} à {most}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The last joint is that of seams {seams}: of {count} none hides it better.</source>
   <translation>Le dernier joint est celui des joints {seams} : sur {count} aucun ne se voit moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The leaf at each position has its number.</source>
   <translation>La feuille de chaque position a son numéro.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The line between the two corners leans {turn} to the left of A-B.</source>
   <translation>La ligne entre les deux coins penche de {turn} à gauche de A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The line between the two corners leans {turn} to the right of A-B.</source>
   <translation>La ligne entre les deux coins penche de {turn} à droite de A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The line between the two corners runs along A-B.</source>
   <translation>La ligne entre les deux coins suit A-B.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The lowest corner is measured from the lower left corner of the leaf's own photograph, seen from its face: x across, y along the grain.</source>
   <translation>Le coin le plus bas est mesuré depuis le coin bas gauche de la photo propre de la feuille, vue de sa face : x en travers, y le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The lowest corner is measured from the lower left corner of the leaf, seen from its face: x across, y along the grain.</source>
   <translation>Le coin le plus bas est mesuré depuis le coin bas gauche de la feuille, vue de sa face : x en travers, y le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The maker's sheet of the adhesive wins over all that stands here: pressure, spread, open time, time in the press, temperature, moisture of the wood.</source>
   <translation>La fiche du fabricant de la colle passe avant tout ce qui est ici : pression, grammage, temps ouvert, temps sous presse, température, humidité du bois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The most that the press may show was not entered: see its plate.</source>
   <translation>Le maximum que la presse peut montrer n'a pas été entré : voir sa plaque.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>The next lift takes two new boards, with pins in the same places: these are sawn up.</source>
   <translation>Le paquet suivant prend deux planches neuves, pions aux mêmes places : celles-ci sont sciées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>The packet could not be written into {folder} ({reason}); choose a folder that you may write to and that has room.</source>
   <translation>Le dossier n'a pas pu être écrit dans {folder} ({reason}) ; choisissez un dossier où vous pouvez écrire et où il y a de la place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>The panel is {thick} thick in all.</source>
   <translation>Le panneau a {thick} d'épaisseur en tout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The photograph is paled, so that lines on it can be read.</source>
   <translation>La photo est pâlie, pour que les lignes s'y lisent.</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/picture.py" />
   <source>The picture would have {megapixels} megapixels; take fewer pixels per mm (at most {most} megapixels).</source>
   <translation>L'image aurait {megapixels} mégapixels ; prenez moins de pixels par mm (au plus {most} mégapixels).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>The pieces of stack {stacks} are less than {least} wide at their widest: stick board and leaves together with removable double-sided tape in the waste, and clamp on a bridge that bears on both sides of the blade's line.</source>
   <translation>Les pièces de la pile {stacks} ont moins de {least} à leur plus large : coller planche et feuilles ensemble avec un adhésif double face enlevable dans la chute, et serrer un pont qui porte des deux côtés du trait de lame.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>The pieces of this top leave no choice of the last joint.</source>
   <translation>Les pièces de ce plateau ne laissent pas choisir le dernier joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips the ring closes, give or take {rim}.</source>
   <translation>Les pièces font {sum} (sûr à {sure}, un écart type) : à {reach} des pointes la couronne se ferme, à {rim} près.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips the ring overlaps by {gap}, give or take {rim}.</source>
   <translation>Les pièces font {sum} (sûr à {sure}, un écart type) : à {reach} des pointes la couronne se recouvre de {gap}, à {rim} près.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The pieces sum to {sum} (sure to {sure}, one standard deviation): {reach} from the tips the ring stays open by {gap}, give or take {rim}.</source>
   <translation>Les pièces font {sum} (sûr à {sure}, un écart type) : à {reach} des pointes la couronne reste ouverte de {gap}, à {rim} près.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>The pins stand {apart} apart in the board under the leaves, {free} from the nearest cut, and {margin} inside every leaf and outside every fault at least.</source>
   <translation>Les pions sont à {apart} l'un de l'autre dans la planche sous les feuilles, à {free} de la coupe la plus proche, et à {margin} au moins en dedans de chaque feuille et en dehors de chaque défaut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/units.py" />
   <source>The pressure cannot be {value}; give a number from 0 to {most}.</source>
   <translation>La pression ne peut pas être {value} ; donnez un nombre de 0 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>The price cannot be {value}; give a number from 0 to {most}.</source>
   <translation>Le prix ne peut pas être {value} ; donnez un nombre de 0 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The rim is cut {lengths} over.</source>
   <translation>Le pourtour est coupé {lengths} plus large.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>The rim then ends {short} short of the finished edge.</source>
   <translation>Le pourtour finit alors {short} avant le bord fini.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>The rims of positions {trimmed} are too long: cut them back to their own when the top is taped, before the press.</source>
   <translation>Les pourtours des positions {trimmed} sont trop longs : les recouper au leur quand le plateau est assemblé, avant la presse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>The rims of {positions} are too long.</source>
   <translation>Les pourtours de {positions} sont trop longs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut exactly.</source>
   <translation>Les bords de joint sont coupés exactement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut over, counter-clockwise: {each}.</source>
   <translation>Les bords de joint sont coupés plus larges, en sens inverse des aiguilles : {each}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut {angle} over in all: the tip has {cut_angle} for {angle_2}. True the halves.</source>
   <translation>Les bords de joint sont coupés plus larges de {angle} en tout : la pointe a {cut_angle} pour {angle_2}. Dresser les moitiés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut {over} over, parallel.</source>
   <translation>Les bords de joint sont coupés plus larges de {over}, parallèles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>The seam edges are cut {over} over, parallel: the tip lies {shift} further out.</source>
   <translation>Les bords de joint sont coupés plus larges de {over}, parallèles : la pointe est {shift} plus au dehors.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>The stack</source>
   <translation>La pile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>The stack must be pinned and held between boards before it is cut; the papers on pinning and cutting say how.</source>
   <translation>La pile doit être pionnée et tenue entre planches avant d'être coupée ; les planches sur les pions et la coupe disent comment.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The tip is measured from the lower left corner of the leaf's own photograph, seen from its face: x across, y along the grain.</source>
   <translation>La pointe est mesurée depuis le coin bas gauche de la photo propre de la feuille, vue de sa face : x en travers, y le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>The tip is measured from the lower left corner of the leaf, seen from its face: x across, y along the grain.</source>
   <translation>La pointe est mesurée depuis le coin bas gauche de la feuille, vue de sa face : x en travers, y le long du fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>The tips must lie on it.</source>
   <translation>Les pointes doivent y être.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>The tool stands square: nothing is said of lean.</source>
   <translation>L'outil est d'aplomb : rien n'est dit de l'inclinaison.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/piles.py" />
   <source>The tops come from several bundles, which do not lie in one stack; plan each bundle's cuts by itself.</source>
   <translation>Les plateaux viennent de plusieurs liasses, qui ne sont pas dans une pile ; planifiez les coupes de chaque liasse à part.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>The two holes of every leaf are {apart} apart: measure this before you prick. Measure and prick every leaf face up, those that will be turned over as well.</source>
   <translation>Les deux trous de chaque feuille sont à {apart} l'un de l'autre : mesurez-le avant de piquer. Mesurer et piquer chaque feuille face dessus, celles qui seront retournées aussi.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>The usable areas of the leaves in stack {stack} do not lie over each other; see how they are registered.</source>
   <translation>Les surfaces utiles des feuilles de la pile {stack} ne sont pas l'une sur l'autre ; voyez comment elles sont calées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>The vacuum gauge shows {gauge} below the air, or more, before the time in the press begins.</source>
   <translation>Le vacuomètre montre {gauge} sous l'air, ou plus, avant que le temps sous presse commence.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>The width that a seam is cut over cannot be {value}; give a number from 0 to {most}. Cut over, never under.</source>
   <translation>La largeur dont un joint est coupé plus large ne peut pas être {value} ; donnez un nombre de 0 à {most}. Coupez plus large, jamais plus étroit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>There are {count} stacks: leaves of one are never laid in another.</source>
   <translation>Il y a {count} piles : les feuilles de l'une ne vont jamais dans une autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/piles.py" />
   <source>There is nothing to cut; lay a match first.</source>
   <translation>Il n'y a rien à couper ; posez d'abord un frisage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>There is nothing to write into the packet.</source>
   <translation>Il n'y a rien à écrire dans le dossier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>These edges run over several pieces: true each along a straightedge first.</source>
   <translation>Ces bords vont sur plusieurs pièces : dresser d'abord chacun à la règle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>Thick: the cut. Thin within it: position {shown} as finished. Dashed: the area that may be used.</source>
   <translation>Épais : la coupe. Fin, dedans : la position {shown} finie. Tirets : la surface utile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>Thicknesses are exaggerated and not to scale; so are narrow strips. Wide parts are drawn shorter, with a break. Read the figures.</source>
   <translation>Les épaisseurs sont exagérées et sans échelle ; les bandes étroites aussi. Les parties larges sont dessinées plus courtes, avec une brisure. Lisez les chiffres.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>This packet is not whole: one part is left out. Why stands at the foot of the list.</source>
   <translation>Ce dossier n'est pas complet : une partie manque. Le pourquoi est au pied de la liste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>This packet is not whole: {count} parts are left out. Why stands at the foot of the list.</source>
   <translation>Ce dossier n'est pas complet : {count} parties manquent. Le pourquoi est au pied de la liste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on figures that were typed in, which no photograph bears out.</source>
   <translation>Cette planche repose sur des nombres tapés, qu'aucune photo n'appuie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on how the leaves lay under the camera: they are not registered, and a photograph that is shifted against the others shifts its piece.</source>
   <translation>Cette planche repose sur la pose des feuilles sous l'appareil : elles ne sont pas calées, et une photo décalée par rapport aux autres décale sa pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on marks.</source>
   <translation>Cette planche repose sur des repères.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on registers of which nobody said what they follow.</source>
   <translation>Cette planche repose sur des calages dont personne n'a dit ce qu'ils suivent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on the figure in the photographs.</source>
   <translation>Cette planche repose sur le dessin des photos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on the generated log, not on photographs of wood.</source>
   <translation>Cette planche repose sur la grume générée, non sur des photos de bois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>This sheet rests on the log's own shape, as the photographs show it.</source>
   <translation>Cette planche repose sur la forme propre de la grume, comme les photos la montrent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/planning.py" />
   <source>This top takes leaves {needed} mm wide, the margin of {margin} mm included, and those to be had are {width} mm: take wider leaves, more pieces, or a smaller top.</source>
   <translation>Ce plateau prend des feuilles larges de {needed} mm, marge de {margin} mm comprise, et celles disponibles ont {width} mm : prenez des feuilles plus larges, plus de pièces, ou un plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Tip {angle}.</source>
   <translation>Pointe {angle}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Title</source>
   <translation>Titre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim), each half by {half}; the two halves go {alike} % together.</source>
   <translation>À attendre de {ways} secteurs coupés à {angle} : l'erreur du gabarit ({template} d'écart type) est commune à une pile et compte {ways} fois, celle propre à chaque pièce ({piece}) par la racine de {ways} : la somme de la couronne varie de {spread} ({rim} au pourtour), chaque moitié de {half} ; les deux moitiés vont ensemble à {alike} %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim).</source>
   <translation>À attendre de {ways} secteurs coupés à {angle} : l'erreur du gabarit ({template} d'écart type) est commune à une pile et compte {ways} fois, celle propre à chaque pièce ({piece}) par la racine de {ways} : la somme de la couronne varie de {spread} ({rim} au pourtour).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard, by the test cut) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim), each half by {half}; the two halves go {alike} % together.</source>
   <translation>À attendre de {ways} secteurs coupés à {angle} : l'erreur du gabarit ({template} d'écart type, par la coupe d'essai) est commune à une pile et compte {ways} fois, celle propre à chaque pièce ({piece}) par la racine de {ways} : la somme de la couronne varie de {spread} ({rim} au pourtour), chaque moitié de {half} ; les deux moitiés vont ensemble à {alike} %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>To be expected of {ways} wedges cut to {angle}: the template's error ({template} standard, by the test cut) is common to one stack and counts {ways} times, each piece's own ({piece}) by the root of {ways}: the ring's sum spreads by {spread} ({rim} at the rim).</source>
   <translation>À attendre de {ways} secteurs coupés à {angle} : l'erreur du gabarit ({template} d'écart type, par la coupe d'essai) est commune à une pile et compte {ways} fois, celle propre à chaque pièce ({piece}) par la racine de {ways} : la somme de la couronne varie de {spread} ({rim} au pourtour).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/measured.py" />
   <source>To close a ring of {ways} pieces give the angle of each of the {ways}, or of its two halves; these are {count}.</source>
   <translation>Pour fermer une couronne de {ways} pièces, donnez l'angle de chacune des {ways}, ou de ses deux moitiés ; ceux-ci sont {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To keep the tips instead: {kept} stays as it is, and {other} is trued to {to} only, each edge by itself, from nothing at the tip to {offs} at the rim; the joint then bends by {bend} at the tips.</source>
   <translation>Pour garder plutôt les pointes : {kept} reste tel quel, et {other} n'est dressé qu'à {to}, chaque bord pour lui-même, de rien à la pointe à {offs} au pourtour ; le joint plie alors de {bend} aux pointes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To keep the tips instead: {kept} stays as it is, and {other} too: they fit into each other untrued; the joint then bends by {bend} at the tips.</source>
   <translation>Pour garder plutôt les pointes : {kept} reste tel quel, et {other} aussi : ils s'emboîtent sans dressage ; le joint plie alors de {bend} aux pointes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/closing.py" />
   <source>To scale {scale}: as trued; dashed: as planned; red: trued</source>
   <translation>À l'échelle {scale} : tel que dressé ; tirets : comme prévu ; rouge : dressé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To swap {one} and {other} would even the halves from {now} to {then}, and put {steps} instead of {instead} surfaces between the pieces about them.</source>
   <translation>Échanger {one} et {other} égaliserait les moitiés de {now} à {then}, et mettrait {steps} surfaces au lieu de {instead} entre les pièces voisines.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>To swap {one} and {other} would even the halves from {now} to {then}, and put {steps} instead of {instead} surfaces between the pieces about them; {broken} seams would be no book joints.</source>
   <translation>Échanger {one} et {other} égaliserait les moitiés de {now} à {then}, et mettrait {steps} surfaces au lieu de {instead} entre les pièces voisines ; {broken} joints ne seraient plus en livre ouvert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Too tall for a strip on this paper, by figures only: {names}.</source>
   <translation>Trop haut pour une bande sur ce papier, par les chiffres seulement : {names}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/page.py" />
   <source>Top</source>
   <translation>Plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Trim the left and top, lay it on {sheets}.</source>
   <translation>Rogner à gauche et en haut, la poser sur {sheets}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Trim the left, lay it on {sheet}.</source>
   <translation>Rogner à gauche, la poser sur {sheet}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>Trim the top, lay it on {sheet}.</source>
   <translation>Rogner en haut, la poser sur {sheet}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/said.py" />
   <source>Trim to the line in light passes, with the grain running off the edge; at each wedge it runs another way.</source>
   <translation>Rogner au trait en passes légères, le fil sortant vers le bord ; à chaque secteur il va autrement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>True both edges of {step} along a straightedge and prove the corner with a square, a right angle at the tip.</source>
   <translation>Dresser les deux bords de {step} à la règle et vérifier le coin à l'équerre, un angle droit à la pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>True each half: at each end mark what comes off at tip and rim, square to the piece's edge, and cut along a straight from mark to mark.</source>
   <translation>Dresser chaque moitié : à chaque bout, marquer à la pointe et au pourtour ce qui part, d'équerre au bord de la pièce, et couper droit de marque à marque.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Truing takes a knife along a straightedge: hold that down on its whole length, keep fingers behind it, cut away from the body in several light strokes. Follow local rules.</source>
   <translation>Dresser demande un couteau le long d'une règle : la tenir sur toute sa longueur, doigts derrière, couper loin du corps en plusieurs passes légères. Suivre les règles locales.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Truing takes figure from both its sides: that shows least where the figure is broken already, most where two leaves mirror each other.</source>
   <translation>Le dressage prend du dessin de ses deux côtés : cela se voit le moins là où le dessin est déjà rompu, le plus là où deux feuilles sont en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/trued.py" />
   <source>Truing would take {trim} deg and the piece at position {at} has {angle}; true by quarters, or cut anew nearer to {true} deg.</source>
   <translation>Le dressage prendrait {trim} degrés et la pièce à la position {at} en a {angle} ; dressez par quarts, ou recoupez plus près de {true} degrés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>Turned over when laid: {which}.</source>
   <translation>Retournées à la pose : {which}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>Two cuts on the leaves of stack {stack} lie {gap} mm apart, and the blade takes {kerf} mm; move them further apart.</source>
   <translation>Deux coupes sur les feuilles de la pile {stack} sont à {gap} mm l'une de l'autre, et la lame prend {kerf} mm ; écartez-les.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/packet.py" />
   <source>Two files of the packet would be called {file}.</source>
   <translation>Deux fichiers du dossier s'appelleraient {file}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Two ways, seen from the face: two arcs, their radii the distances from a and from b; or along the line from a to b, then square off it, to the left or right with a behind and b ahead. The two must meet.</source>
   <translation>Deux façons, vu de la face : deux arcs, leurs rayons étant les distances de a et de b ; ou le long de la ligne de a à b, puis d'équerre, à gauche ou à droite avec a derrière et b devant. Les deux doivent se rejoindre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Underlined: the leaf is turned over, its back is shown.</source>
   <translation>Souligné : la feuille est retournée, son dos est montré.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>Underlined: the leaf lies with its back up.</source>
   <translation>Souligné : la feuille est dos dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Use soft white chalk, no crayon, ink or wax. All chalk comes off before glue: brush and wipe it from the glue side when the taped top is checked, before glue is mixed; neither tape nor glue holds on chalk.</source>
   <translation>Prendre une craie blanche tendre, ni cire ni encre. Toute craie s'enlève avant la colle : la brosser et l'essuyer de la face de collage quand le plateau assemblé est contrôlé, avant de préparer la colle ; ni papier ni colle ne tient sur la craie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>Use soft white chalk, no crayon, ink or wax. All chalk comes off before glue: brush and wipe it from the show side before tape goes over it, and see that none has come through to the glue side.</source>
   <translation>Prendre une craie blanche tendre, ni cire ni encre. Toute craie s'enlève avant la colle : la brosser et l'essuyer du parement avant d'y poser du papier, et voir que rien n'a traversé jusqu'à la face de collage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Used / bought {used_of_bought:.3f}, bought / used {bought_to_used:.2f}, waste of the purchase {waste:.1f} %.</source>
   <translation>Utilisé / acheté {used_of_bought:.3f}, acheté / utilisé {bought_to_used:.2f}, perte de l'achat {waste:.1f} %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Veneer alone: adhesive, backer, core, time and the risk of a spoilt cut are not in it.</source>
   <translation>Le placage seul : colle, contre-parement, âme, temps et risque d'une coupe gâchée n'y sont pas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/frame.py" />
   <source>Ways</source>
   <translation>Secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Wedge</source>
   <translation>Secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>Wedge {letter}</source>
   <translation>Secteur {letter}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Wedge {letter}, scale {scale}</source>
   <translation>Secteur {letter}, échelle {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>Wedge, scale {scale}</source>
   <translation>Secteur, échelle {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/swaps.py" />
   <source>Wedges of several strips are not swapped: keep them in their places.</source>
   <translation>Des secteurs de plusieurs bandes ne s'échangent pas : laissez-les à leurs places.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>What becomes of the leaves</source>
   <translation>Ce que deviennent les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>What comes off when</source>
   <translation>Ce qui s'enlève et quand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>What is chalked</source>
   <translation>Ce qui est marqué</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/places.py" />
   <source>What is cut from stack {stack} does not lie on its leaves; move the cut.</source>
   <translation>Ce qui est coupé de la pile {stack} n'est pas sur ses feuilles ; déplacez la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>What is left</source>
   <translation>Ce qui reste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>What to buy</source>
   <translation>Que acheter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Where a piece is too small its number stands outside.</source>
   <translation>Là où une pièce est trop petite, son numéro est en dehors.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>Where holes are measured from a leaf's corners, they are the corners of its outline on the photograph: see that the real leaf still has them, uncut since it was photographed. Paper marks do better.</source>
   <translation>Là où des trous sont mesurés depuis les coins d'une feuille, ce sont ceux de son contour sur la photo : voyez que la vraie feuille les a encore, non rognée depuis la photo. Des repères en papier font mieux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>Where leaves reach more than {around} beyond the cuts and are in the way, cut them off there; keep what comes off, with its leaf's number.</source>
   <translation>Là où des feuilles débordent les coupes de plus de {around} et gênent, les couper là ; garder ce qui tombe, avec le numéro de sa feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>Where the edges overlap, cut through both along a straightedge from the tip to the rim; where they gape, nothing is left to true off: cut one of the two anew, wider by the gap. Tape it last.</source>
   <translation>Là où les bords se recouvrent, couper les deux à la règle de la pointe au pourtour ; là où ils bâillent, il n'y a plus rien à dresser : recouper l'un des deux, plus large du jeu. Le coller en dernier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>Where the pins stand</source>
   <translation>Où sont les pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>Whole top {size}, field {size_2}.</source>
   <translation>Plateau entier {size}, champ {size_2}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the bag has {there} (turned).</source>
   <translation>Avec une marge de {margin} tout autour il faut {needs} ; le sac a {there} (tourné).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the bag has {there}.</source>
   <translation>Avec une marge de {margin} tout autour il faut {needs} ; le sac a {there}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the plates have {there} (turned).</source>
   <translation>Avec une marge de {margin} tout autour il faut {needs} ; les plateaux ont {there} (tourné).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>With a margin of {margin} all round it needs {needs}; the plates have {there}.</source>
   <translation>Avec une marge de {margin} tout autour il faut {needs} ; les plateaux ont {there}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/over.py" />
   <source>With errors like these no over that can be cut is sure to true {ways} wedges; make a better template, or cut fewer ways.</source>
   <translation>Avec de telles erreurs, aucun excédent qu'on puisse couper n'est sûr de dresser {ways} secteurs ; faites un meilleur gabarit, ou coupez moins de secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/cautions.py" />
   <source>Write with a light hand: chalk scores soft wood, and what is pressed in shows.</source>
   <translation>Écrire d'une main légère : la craie raye le bois tendre, et ce qui est enfoncé se voit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>Yes: it goes in, {spare} to spare.</source>
   <translation>Oui : cela y entre, {spare} de reste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>Yield and cost</source>
   <translation>Rendement et coût</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>a corner to {error}</source>
   <translation>un coin à {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>a leaf of the least size</source>
   <translation>une feuille de taille minimale</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>a m2 of top</source>
   <translation>par m2 de plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>a paper mark to {error}</source>
   <translation>un repère en papier à {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>a picked point to {error}</source>
   <translation>un point choisi à {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>a screw through both boards</source>
   <translation>une vis à travers les deux planches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>a sq ft of top</source>
   <translation>par pied carré de plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>across the edge</source>
   <translation>en travers du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>across x</source>
   <translation>en travers de x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>across x along</source>
   <translation>trav. x fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>all</source>
   <translation>toutes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>all four quarters reach 90 deg</source>
   <translation>les quatre quarts atteignent 90 degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>along A-B</source>
   <translation>le long A-B</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>along a b</source>
   <translation>le long a b</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>along the axis</source>
   <translation>le long de l'axe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>along the edge</source>
   <translation>le long du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>along x</source>
   <translation>selon x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>altitude</source>
   <translation>altitude</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>angle</source>
   <translation>angle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>angle over</source>
   <translation>angle en plus</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>area</source>
   <translation>surface</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>arrow</source>
   <translation>flèche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>arrow to {b}</source>
   <translation>flèche vers {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>as it will look</source>
   <translation>tel qu'il sera</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>as listed</source>
   <translation>comme listé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/kit.py" />
   <source>as shown</source>
   <translation>comme montré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>axes</source>
   <translation>axes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>axis at the rim</source>
   <translation>axe au pourtour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>bag length</source>
   <translation>longueur du sac</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>bag width</source>
   <translation>largeur du sac</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>band</source>
   <translation>bande</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/setout.py" />
   <source>base of the set-out</source>
   <translation>base du tracé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/figures.py" />
   <source>base {length}</source>
   <translation>base {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>beech</source>
   <translation>hêtre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>between</source>
   <translation>entre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>birch</source>
   <translation>bouleau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>blackwood</source>
   <translation>blackwood (acacia à bois noir)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>blank across the leaf mm</source>
   <translation>ébauche en travers de la feuille mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>blank along the grain mm</source>
   <translation>ébauche le long du fil mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>blank size</source>
   <translation>cote d'ébauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>blanks as taped, with oversize</source>
   <translation>ébauches telles qu'assemblées, avec surcote</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>border strips</source>
   <translation>bandes de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>both halves reach 180 deg</source>
   <translation>les deux moitiés atteignent 180 degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>both rings</source>
   <translation>les deux couronnes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>both runs</source>
   <translation>les deux suites</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>bought / used</source>
   <translation>acheté / utilisé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>bought: {count} leaves</source>
   <translation>acheté : {count} feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>boxwood</source>
   <translation>buis</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>broken line: finished edge</source>
   <translation>ligne brisée : bord fini</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>broken line: finished edges of the pieces, each of which has a template of its own</source>
   <translation>ligne brisée : bords finis des pièces, dont chacune a son propre gabarit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>bundle</source>
   <translation>liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>bundles</source>
   <translation>liasses</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>can serve</source>
   <translation>peut servir</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>centre joint</source>
   <translation>joint médian</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>chord</source>
   <translation>corde</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>chord {length}</source>
   <translation>corde {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>circles: holes for the pins</source>
   <translation>cercles : trous pour les pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>cocobolo</source>
   <translation>cocobolo</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/advice.py" />
   <source>confidence</source>
   <translation>certitude</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>core's oversize</source>
   <translation>surcote de l'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>corner</source>
   <translation>coin</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>corners off</source>
   <translation>coins manqués</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise</source>
   <translation>en sens inverse des aiguilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise from the upper field</source>
   <translation>en sens inverse des aiguilles depuis le champ du haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise from the upper right quarter</source>
   <translation>en sens inverse des aiguilles depuis le quart en haut à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>counter-clockwise, the inner field first</source>
   <translation>en sens inverse des aiguilles, le champ intérieur d'abord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>cross joint</source>
   <translation>joint transversal</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>cross on {a}</source>
   <translation>croix sur {a}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>cross {far} from {a}</source>
   <translation>croix à {far} de {a}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>cross {far} from {a}, away from {b}</source>
   <translation>croix à {far} de {a}, à l'opposé de {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>curve</source>
   <translation>courbe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>cut as</source>
   <translation>coupé en</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>cut list, revision</source>
   <translation>liste de débit, indice</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>cut: blanks with oversize</source>
   <translation>coupé : ébauches avec surcote</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>cypress, bald</source>
   <translation>cyprès chauve</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>dash and dot: the axis</source>
   <translation>trait mixte : l'axe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>dash and dot: the axis and the tool's middle</source>
   <translation>trait mixte : l'axe et le milieu de l'outil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>dash and dot: the tool's middle</source>
   <translation>trait mixte : le milieu de l'outil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>diameter before</source>
   <translation>diamètre avant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>diameter of a ram</source>
   <translation>diamètre d'un vérin</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>direction, deg</source>
   <translation>direction, degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>distance from the tip</source>
   <translation>distance de la pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>distance of pins from a cut</source>
   <translation>distance des pions à une coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>down</source>
   <translation>bas</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>down left</source>
   <translation>bas gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>down right</source>
   <translation>bas droit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>each has</source>
   <translation>chacun a</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>ebony</source>
   <translation>ébène (ébénier)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>end</source>
   <translation>bout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>end of the lower seam</source>
   <translation>bout du joint du bas</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>end of the upper seam</source>
   <translation>bout du joint du haut</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>enlarged</source>
   <translation>agrandi</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>exactly</source>
   <translation>exactement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>far corner</source>
   <translation>coin opposé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>file</source>
   <translation>fichier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>finished edge</source>
   <translation>bord fini</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>finished size</source>
   <translation>cote finie</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>finished tops</source>
   <translation>plateaux finis</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>following, grain across the edge</source>
   <translation>suivant le bord, fil en travers du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>following, grain along the edge</source>
   <translation>suivant le bord, fil le long du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>found to</source>
   <translation>trouvé à</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>from A</source>
   <translation>de A</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>from B</source>
   <translation>de B</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from a</source>
   <translation>de a</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from b</source>
   <translation>de b</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>from here on</source>
   <translation>à partir d'ici</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from its foot</source>
   <translation>du pied</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>from its left</source>
   <translation>de gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>from the centre</source>
   <translation>depuis le centre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>gap's distance uncertainty</source>
   <translation>incertitude de la distance</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>gap's size</source>
   <translation>taille du jeu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>gap's uncertainty</source>
   <translation>incertitude du jeu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>goncalo alves</source>
   <translation>gonçalo alves</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>greenheart</source>
   <translation>greenheart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>halves</source>
   <translation>moitiés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>halves, both ends</source>
   <translation>moitiés, deux bouts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>halves, one end</source>
   <translation>moitiés, un bout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>height of leaves cut at once</source>
   <translation>hauteur des feuilles coupées en une fois</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>hold</source>
   <translation>tenir</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>hole</source>
   <translation>trou</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>holes</source>
   <translation>trous</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>holes for pins</source>
   <translation>trous pour pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>in all</source>
   <translation>en tout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>in one</source>
   <translation>d'une pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>in pairs, right and left of the centre line, from the bottom up</source>
   <translation>par paires, à droite et à gauche de la ligne médiane, de bas en haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>in the press {minutes} min</source>
   <translation>sous presse {minutes} min</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>in, to 1/{fraction}</source>
   <translation>pouces, au 1/{fraction}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>inlaid disc, diameter {diameter}</source>
   <translation>disque incrusté, diamètre {diameter}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/measured.py" />
   <source>instrument's standard error</source>
   <translation>écart type de l'instrument</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>iroko</source>
   <translation>iroko</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>its edge to</source>
   <translation>son bord vers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>its rim</source>
   <translation>son pourtour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>kerf</source>
   <translation>trait de coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>knife, in lifts</source>
   <translation>couteau, par paquets</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>last joint</source>
   <translation>dernier joint</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>last seam</source>
   <translation>dernier joint</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>lay</source>
   <translation>poser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>layout</source>
   <translation>disposition</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>leaf</source>
   <translation>feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>leaf thickness mm</source>
   <translation>épaisseur de feuille mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting_pictures.py" />
   <source>leaf {leaf}</source>
   <translation>feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>leaf {leaf} (back), hole {hole}</source>
   <translation>feuille {leaf} (dos), trou {hole}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning_strips.py" />
   <source>leaf {leaf}, hole {hole}</source>
   <translation>feuille {leaf}, trou {hole}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>leaf {leaf}, {side}</source>
   <translation>feuille {leaf}, {side}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>lean of the blade</source>
   <translation>inclinaison de la lame</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>leaves of a bundle</source>
   <translation>feuilles d'une liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>leaves over</source>
   <translation>feuilles restantes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>left</source>
   <translation>gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>left out: {name}</source>
   <translation>omis : {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>left to right with the grain upright</source>
   <translation>de gauche à droite, le fil debout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>left whole</source>
   <translation>laissé entier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>left: offcuts</source>
   <translation>reste : chutes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>left: {count} whole leaves</source>
   <translation>reste : {count} feuilles entières</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>length that can be read</source>
   <translation>longueur lisible</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>lost</source>
   <translation>perdu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>lot {number}</source>
   <translation>lot {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>lots by shape</source>
   <translation>lots par forme</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>lower left</source>
   <translation>bas gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>lower right</source>
   <translation>bas droit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>lowest corner</source>
   <translation>coin le plus bas</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>lowest corner on leaf x mm</source>
   <translation>coin le plus bas sur la feuille x mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>lowest corner on leaf y mm</source>
   <translation>coin le plus bas sur la feuille y mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>lowest corner x</source>
   <translation>coin bas x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>lowest corner y</source>
   <translation>coin bas y</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>m2</source>
   <translation>m2</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>machine, leaf by leaf</source>
   <translation>machine, feuille à feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>mahogany</source>
   <translation>acajou</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>mansonia</source>
   <translation>mansonia (bété)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>maple, spalted</source>
   <translation>érable échauffé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/plan.py" />
   <source>margin of the pins</source>
   <translation>marge des pions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>measured</source>
   <translation>mesuré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>measured angle</source>
   <translation>angle mesuré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/taping.py" />
   <source>mirrored: show face down</source>
   <translation>en miroir : parement dessous</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>mitred, grain across the edge</source>
   <translation>à onglet, fil en travers du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>mitred, grain along the edge</source>
   <translation>à onglet, fil le long du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>moisture (cut)</source>
   <translation>humidité (coupe)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>moisture (photograph)</source>
   <translation>humidité (photo)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>moisture (taping)</source>
   <translation>humidité (assemblage)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>myrtle</source>
   <translation>myrte</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>net across the leaf mm</source>
   <translation>fini en travers de la feuille mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>net along the grain mm</source>
   <translation>fini le long du fil mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>net size</source>
   <translation>cote finie</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/section.py" />
   <source>not to scale</source>
   <translation>sans échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>nothing large enough</source>
   <translation>rien d'assez grand</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>number of rams</source>
   <translation>nombre de vérins</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>number of tops</source>
   <translation>nombre de plateaux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>oak</source>
   <translation>chêne</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>obeche</source>
   <translation>ayous (samba)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of each used</source>
   <translation>dont utilisé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of the bundle</source>
   <translation>de la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of the bundle by {count} tops</source>
   <translation>de la liasse par {count} plateaux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>of the leaves opened</source>
   <translation>des feuilles entamées</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>off at rim</source>
   <translation>ôté, pourtour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>off at tip</source>
   <translation>ôté, pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>off it</source>
   <translation>d'équerre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/offcuts.py" />
   <source>offcut</source>
   <translation>chute</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>offcuts of opened leaves</source>
   <translation>chutes des feuilles entamées</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>olivewood</source>
   <translation>olivier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>on its</source>
   <translation>sur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>on the curve</source>
   <translation>sur la courbe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>one stack</source>
   <translation>une pile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>open time</source>
   <translation>temps ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>open time {minutes} min</source>
   <translation>temps ouvert {minutes} min</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>opened: {count} leaves cut into</source>
   <translation>entamé : {count} feuilles coupées</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle at the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu au centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} left of and {along} above the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {across} à gauche et {along} au-dessus du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} left of and {along} below the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {across} à gauche et {along} au-dessous du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} left of the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {across} à gauche du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} right of and {along} above the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {across} à droite et {along} au-dessus du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} right of and {along} below the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {across} à droite et {along} au-dessous du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {across} right of the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {across} à droite du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {along} above the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {along} au-dessus du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>opening {size}, its middle {along} below the match's centre, cut after pressing</source>
   <translation>ouverture {size}, son milieu à {along} au-dessous du centre du frisage, coupée après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>openings, cut after pressing</source>
   <translation>ouvertures, coupées après la presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>opepe</source>
   <translation>bilinga (opepe)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>over 99 %</source>
   <translation>plus de 99 %</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>over 99.9</source>
   <translation>plus de 99.9</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>over, deg</source>
   <translation>plus, degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/figures.py" />
   <source>oversize {length}</source>
   <translation>surcote {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>oversize, trimmed</source>
   <translation>surcote, rognée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>own outlines</source>
   <translation>propres contours</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>padauk</source>
   <translation>padouk (padauk)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template.py" />
   <source>page {page} of {count}</source>
   <translation>page {page} sur {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>pairs</source>
   <translation>paires</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>pairs, the halves</source>
   <translation>paires, les moitiés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>pairs, the quarters</source>
   <translation>paires, les quarts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>part</source>
   <translation>séparer</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>pau ferro</source>
   <translation>pau ferro</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>piece</source>
   <translation>pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/expected.py" />
   <source>piece's standard error</source>
   <translation>écart type de la pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>pieces</source>
   <translation>pièces</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/press.py" />
   <source>pin</source>
   <translation>pion</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>pin {number}</source>
   <translation>pion {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>place</source>
   <translation>place</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>place of the gap</source>
   <translation>place du jeu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>platen length</source>
   <translation>longueur du plateau de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>platen width</source>
   <translation>largeur du plateau de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>point</source>
   <translation>point</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>point {number}</source>
   <translation>point {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>pos.</source>
   <translation>pos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>position</source>
   <translation>position</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>positions</source>
   <translation>positions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>positions run</source>
   <translation>positions</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>pressure</source>
   <translation>pression</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>price</source>
   <translation>prix</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>quarters</source>
   <translation>quarts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>reach of the boards beyond the cuts</source>
   <translation>débord des planches sur les coupes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>reading of an offset</source>
   <translation>lecture d'un écart</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>redwood</source>
   <translation>redwood (séquoia)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>repair patches</source>
   <translation>pièces de réparation</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>rests on</source>
   <translation>repose sur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>right</source>
   <translation>droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>rim {number}</source>
   <translation>pourtour {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>rim, from the lower seam</source>
   <translation>pourtour, depuis le joint du bas</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/figures.py" />
   <source>rise {length}</source>
   <translation>flèche {length}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>rosewood</source>
   <translation>palissandre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>round the piece</source>
   <translation>autour de la pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>row by row from the lowest up, each left to right with the grain upright</source>
   <translation>rang par rang depuis le plus bas, chacun de gauche à droite, le fil debout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/counted.py" />
   <source>row by row from the upper one down, each left to right with the grain upright</source>
   <translation>rang par rang depuis le plus haut, chacun de gauche à droite, le fil debout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>rows</source>
   <translation>rangs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>runs of {count}</source>
   <translation>suites de {count}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>sassafras</source>
   <translation>sassafras</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>saw, in boards on a sled</source>
   <translation>scie, entre planches sur un chariot</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/picture.py" />
   <source>scale of the picture</source>
   <translation>échelle de l'image</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>seam</source>
   <translation>joint</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>seam {number}</source>
   <translation>joint {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>seams off</source>
   <translation>joints décalés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>second cut</source>
   <translation>seconde coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>see the plan</source>
   <translation>voir le plan</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>show face: {part}</source>
   <translation>parement : {part}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>side that is chalked</source>
   <translation>côté marqué à la craie</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>single pieces</source>
   <translation>pièces une à une</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>size as cut</source>
   <translation>cote coupée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>spare {leaf}</source>
   <translation>réserve {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>spread</source>
   <translation>grammage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>spruce</source>
   <translation>épicéa</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>sq ft</source>
   <translation>pied carré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/stack.py" />
   <source>square off</source>
   <translation>d'équerre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>square off it</source>
   <translation>d'équerre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/advice.py" />
   <source>standard error of a measured wedge</source>
   <translation>écart type d'un secteur mesuré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>straight</source>
   <translation>droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>straight, grain across the edge</source>
   <translation>droit, fil en travers du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>straight, grain along the edge</source>
   <translation>droit, fil le long du bord</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>stringing and edge strips</source>
   <translation>filets et bandes de chant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>strips</source>
   <translation>bandes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>sure</source>
   <translation>sûr</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>sure to</source>
   <translation>sûr à</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>take off</source>
   <translation>ôter</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape across the cuts</source>
   <translation>adhésif en travers des coupes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape over the line, down to the board</source>
   <translation>adhésif sur le trait, jusqu'à la planche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape round the boards</source>
   <translation>adhésif autour des planches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>tape, film or suction under the piece</source>
   <translation>adhésif, film ou aspiration sous la pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>teak</source>
   <translation>teck (teak)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/expected.py" />
   <source>template's standard error</source>
   <translation>écart type du gabarit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/offcuts.py" />
   <source>test cuts and trials of press and finish</source>
   <translation>coupes d'essai et essais de presse et de finition</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the axis from the tip</source>
   <translation>l'axe depuis la pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>the bundle, shared by {count} tops</source>
   <translation>la liasse, partagée entre {count} plateaux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the direction of the grain</source>
   <translation>la direction du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>the even ones</source>
   <translation>les paires</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the finished outline</source>
   <translation>le contour fini</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>the leaves opened</source>
   <translation>les feuilles entamées</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the line of the tool's middle</source>
   <translation>la ligne du milieu de l'outil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the lower left corner</source>
   <translation>le coin bas gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the lower right corner</source>
   <translation>le coin bas droit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>the odd ones</source>
   <translation>les impaires</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the outline to cut</source>
   <translation>le contour à couper</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>the ring reaches 360 deg</source>
   <translation>la couronne atteint 360 degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>the seams of the finished outline</source>
   <translation>les joints du contour fini</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>the sides not cut yet, by which it hangs in the waste</source>
   <translation>les côtés pas encore coupés, par lesquels elle tient à la chute</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>the sled's clamps on the upper board over the piece</source>
   <translation>les serre-joints du chariot sur la planche du dessus, sur la pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>the straightedge clamped over the piece at both ends</source>
   <translation>la règle serrée sur la pièce aux deux bouts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the upper left corner</source>
   <translation>le coin haut gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>the upper right corner</source>
   <translation>le coin haut droit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>the whole bundle</source>
   <translation>toute la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>their blanks</source>
   <translation>leurs ébauches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>thick</source>
   <translation>épais</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/methods.py" />
   <source>thickness of the sandwich boards</source>
   <translation>épaisseur des planches du sandwich</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/day.py" />
   <source>time in the press</source>
   <translation>temps sous presse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>tip</source>
   <translation>pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>tip on leaf x mm</source>
   <translation>pointe sur la feuille x mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>tip on leaf y mm</source>
   <translation>pointe sur la feuille y mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>tip to rim</source>
   <translation>pointe-pourtour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>tip x</source>
   <translation>pointe x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>tip y</source>
   <translation>pointe y</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>tips lost</source>
   <translation>pointes perdues</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>to buy, of the least size</source>
   <translation>à acheter, de taille minimale</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>to scale</source>
   <translation>à l'échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>too few for one top</source>
   <translation>trop peu pour un plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>top {top}: {text}</source>
   <translation>plateau {top} : {text}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/planning.py" />
   <source>tops from each leaf</source>
   <translation>plateaux par feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>trial</source>
   <translation>essai</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>true by (* advised)</source>
   <translation>dresser par (* conseillé)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>true the halves</source>
   <translation>dresser les moitiés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>true the quarters</source>
   <translation>dresser les quarts</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>true the rows</source>
   <translation>dresser les rangs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/readings.py" />
   <source>uncertainty of an angle</source>
   <translation>incertitude d'un angle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/moisture.py" />
   <source>uncertainty of the change of moisture</source>
   <translation>incertitude du changement d'humidité</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>under 0.1</source>
   <translation>moins de 0.1</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>under 1 %</source>
   <translation>moins de 1 %</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>uneven</source>
   <translation>inégal</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>unit</source>
   <translation>unité</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/units.py" />
   <source>unit of pressure</source>
   <translation>unité de pression</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/dxf.py" />
   <source>unit of the file</source>
   <translation>unité du fichier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>up</source>
   <translation>haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>up left</source>
   <translation>haut gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/shown.py" />
   <source>up right</source>
   <translation>haut droit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>upper left</source>
   <translation>haut gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>upper right</source>
   <translation>haut droit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>used (finished pieces)</source>
   <translation>utilisé (pièces finies)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>used / bought</source>
   <translation>utilisé / acheté</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>used: finished pieces</source>
   <translation>utilisé : pièces finies</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>veneer of one top</source>
   <translation>placage d'un plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/notes.py" />
   <source>warning</source>
   <translation>avertissement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>waste of the purchase</source>
   <translation>perte de l'achat</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/over.py" />
   <source>way of truing</source>
   <translation>façon de dresser</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/plan.py" />
   <source>wedges from strips</source>
   <translation>secteurs de bandes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>wenge</source>
   <translation>wengé (wenge)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>western red cedar</source>
   <translation>thuya géant (western red cedar)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>what</source>
   <translation>quoi</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/contents.py" />
   <source>what it is for</source>
   <translation>à quoi il sert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/rests.py" />
   <source>what registers follow</source>
   <translation>ce que suivent les calages</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cost.py" />
   <source>what the price is for</source>
   <translation>pour quoi est le prix</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>whole leaves left</source>
   <translation>feuilles entières restantes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/make.py" />
   <source>width of the tool</source>
   <translation>largeur de l'outil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>width over</source>
   <translation>largeur en plus</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/marks.py" />
   <source>words</source>
   <translation>mots</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>x</source>
   <translation>x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>x cut</source>
   <translation>x coupé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>x from the left end and y from the lower end of the finished piece.</source>
   <translation>x depuis le bout gauche et y depuis le bout bas de la pièce finie.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>y</source>
   <translation>y</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>y cut</source>
   <translation>y coupé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/press/dust.py" />
   <source>zebrawood</source>
   <translation>zingana (zebrano)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} along the line to {b}, then {square} square to the left</source>
   <translation>{along} de {a} le long de la ligne vers {b}, puis {square} d'équerre à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} along the line to {b}, then {square} square to the right</source>
   <translation>{along} de {a} le long de la ligne vers {b}, puis {square} d'équerre à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} away from {b}, then {square} square to the left</source>
   <translation>{along} de {a} à l'opposé de {b}, puis {square} d'équerre à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{along} from {a} away from {b}, then {square} square to the right</source>
   <translation>{along} de {a} à l'opposé de {b}, puis {square} d'équerre à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_words.py" />
   <source>{angle} deg</source>
   <translation>{angle} degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>{angle} less would do.</source>
   <translation>{angle} de moins suffiraient.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/drawing/lengths.py" />
   <source>{area} sq ft</source>
   <translation>{area} pieds carrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{count} alike, positions {positions}.</source>
   <translation>{count} pareilles, positions {positions}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} boards</source>
   <translation>{count} planches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} boards, two of them for the trial</source>
   <translation>{count} planches, dont deux pour l'essai</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>{count} kinds (lower seam, rim, upper seam): {some}.</source>
   <translation>{count} genres (joint du bas, pourtour, joint du haut) : {some}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>{count} kinds (lower seam, rim, upper seam): {some}; {more} more, see the cut list.</source>
   <translation>{count} genres (joint du bas, pourtour, joint du haut) : {some} ; {more} de plus, voir la liste de débit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} leaves are {high} high, with both boards {total}.</source>
   <translation>{count} feuilles font {high} de haut, avec les deux planches {total}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{count} leaves are {high} high.</source>
   <translation>{count} feuilles font {high} de haut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{count} parts</source>
   <translation>{count} pièces</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>{count} pieces are an odd number: no diameter runs through the ring, only the last joint, between pieces {part}, is left to true.</source>
   <translation>{count} pièces sont un nombre impair : aucun diamètre ne traverse la couronne, seul le dernier joint, entre les pièces {part}, reste à dresser.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/lists.py" />
   <source>{count} pieces of {thickness}. Positions run {way}, seen from the show face.</source>
   <translation>{count} pièces de {thickness}. Les positions vont {way}, vu du parement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>{count} pieces show a back that was not photographed: its neighbour's picture, or its own face, stands in for it.</source>
   <translation>{count} pièces montrent un dos qui n'a pas été photographié : l'image de la voisine, ou leur propre face, en tient lieu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/finished.py" />
   <source>{count} pieces, {size} over all.</source>
   <translation>{count} pièces, {size} hors tout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{count} pieces.</source>
   <translation>{count} pièces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pin in the board</source>
   <translation>{count} pion dans la planche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pin through boards and leaves</source>
   <translation>{count} pion à travers planches et feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pins in the board</source>
   <translation>{count} pions dans la planche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} pins through boards and leaves</source>
   <translation>{count} pions à travers planches et feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{count} screws through both boards</source>
   <translation>{count} vis à travers les deux planches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>{count} seams miss their corner of the top, by up to {most}.</source>
   <translation>{count} joints manquent leur coin du plateau, de jusqu'à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/template_map.py" />
   <source>{count} sheets, joined as the map shows; row A is the uppermost. Trim each at its left and upper broken lines, through the middle of the marks; lay it on its neighbours so that the halves of the marks meet the whole ones of the same number; tape. Cut out with knife and straightedge, away from the hand.</source>
   <translation>{count} planches, jointes comme la carte le montre ; le rang A est le plus haut. Rogner chacune à ses lignes brisées de gauche et du haut, par le milieu des marques ; la poser sur ses voisines pour que les moitiés des marques rejoignent les entières du même numéro ; coller. Découper au couteau et à la règle, loin de la main.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/piles.py" />
   <source>{count} spare leaves are to lie in the stack, and {free} are left over; take fewer spares.</source>
   <translation>{count} feuilles de réserve doivent être dans la pile, et il en reste {free} ; prenez moins de réserve.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/sheet.py" />
   <source>{count} ways</source>
   <translation>{count} secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/advice.py" />
   <source>{count} wedges that make {sum} deg have {each} deg each, and this ring wants {true}: mend the number of wedges of the test cut, or what they make.</source>
   <translation>{count} secteurs qui font {sum} degrés ont {each} degrés chacun, et cette couronne veut {true} : corrigez le nombre de secteurs de la coupe d'essai, ou ce qu'ils font.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{first} and {count} like it</source>
   <translation>{first} et {count} comme elle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said.py" />
   <source>{first} to {last}</source>
   <translation>{first} à {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/taping/said.py" />
   <source>{first}; {second}; and so on to {last}</source>
   <translation>{first} ; {second} ; et ainsi de suite jusqu'à {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/plan.py" />
   <source>{high} of leaves is more than the {most} that are cut at once, so they are cut in {lifts} lifts.</source>
   <translation>{high} de feuilles dépassent les {most} coupés en une fois, elles sont donc coupées en {lifts} paquets.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>{leaf} back</source>
   <translation>{leaf} dos</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>{leaf} spare</source>
   <translation>{leaf} réserve</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/said_before.py" />
   <source>{length}, exactly {exact},</source>
   <translation>{length}, exactement {exact},</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/one_sheet/words.py" />
   <source>{name} at {positions}: {lower}, {rim}, {upper}</source>
   <translation>{name} aux {positions} : {lower}, {rim}, {upper}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{name} from above</source>
   <translation>{name} vue de dessus</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cutting.py" />
   <source>{name} from the side, not to scale</source>
   <translation>{name} vue de côté, sans échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>{name}, revision {revision}</source>
   <translation>{name}, indice {revision}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{name}, scale {scale}</source>
   <translation>{name}, échelle {scale}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{near} from {a} and {far} from {b}, left of the line from {a} to {b}</source>
   <translation>{near} de {a} et {far} de {b}, à gauche de la ligne de {a} à {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/marks.py" />
   <source>{near} from {a} and {far} from {b}, right of the line from {a} to {b}</source>
   <translation>{near} de {a} et {far} de {b}, à droite de la ligne de {a} à {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>{part}, over all layers</source>
   <translation>{part}, sur toutes les couches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/cost.py" />
   <source>{per_leaf} tops are cut from each leaf, one behind the other along the grain, {ROOM} apart.</source>
   <translation>{per_leaf} plateaux sont coupés dans chaque feuille, l'un derrière l'autre le long du fil, à {ROOM} l'un de l'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/words.py" />
   <source>{place} (leaf {leaf})</source>
   <translation>{place} (feuille {leaf})</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{positions} of top {top}</source>
   <translation>{positions} du plateau {top}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>{position} B</source>
   <translation>{position} D</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pinning/chalking.py" />
   <source>{position} F</source>
   <translation>{position} F</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{side} ({nth} of {count})</source>
   <translation>{side} ({nth} sur {count})</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutting/steps.py" />
   <source>{side} of cut {number}</source>
   <translation>{side} de la coupe {number}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{side}, arc, R {radius}, rise {rise}</source>
   <translation>{side}, arc, R {radius}, flèche {rise}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{side}, hollow arc, R {radius}, rise {rise}</source>
   <translation>{side}, arc creux, R {radius}, flèche {rise}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/lot_lines.py" />
   <source>{size} mm across x along the grain; positions {positions}; leaves {leaves}</source>
   <translation>{size} mm en travers x le long du fil ; positions {positions} ; feuilles {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pinning.py" />
   <source>{some} and {count} more</source>
   <translation>{some} et {count} autres</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{strip}, under the veneer</source>
   <translation>{strip}, sous le placage</translation>
  </message>
  <message>
   <location filename="veneerwb/paint/closing.py" />
   <source>{times} times</source>
   <translation>{times} fois</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/pieces.py" />
   <source>{title}, continued</source>
   <translation>{title}, suite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/captioned.py" />
   <source>{title}, revision {revision}. {top}, {size} over all.</source>
   <translation>{title}, indice {revision}. {top}, {size} hors tout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/section.py" />
   <source>{turn:.4g}° from x</source>
   <translation>{turn:.4g}° de x</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>{ways} pieces make no four quarters; true by halves, or take a number of ways that is divisible by 4.</source>
   <translation>{ways} pièces ne font pas quatre quarts ; dressez par moitiés, ou prenez un nombre de secteurs divisible par 4.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/closing/ring.py" />
   <source>{ways} pieces make no two halves, for their number is odd: true the last joint alone.</source>
   <translation>{ways} pièces ne font pas deux moitiés, car leur nombre est impair : dressez seulement le dernier joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/cutlist.py" />
   <source>{way}, seen from the show face</source>
   <translation>{way}, vu du parement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} cannot be cut so much over: its outline would cross itself; give less.</source>
   <translation>{what} ne peut pas être coupé d'autant plus large : son contour se croiserait ; donnez moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} does not run to the point where the pieces meet, so that no angle can be added there; give a width that its seams are cut over by.</source>
   <translation>{what} ne va pas jusqu'au point où les pièces se rejoignent, aucun angle ne peut donc y être ajouté ; donnez une largeur dont ses joints sont coupés plus larges.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} has a curved seam that cannot be moved out by {width} mm; give less.</source>
   <translation>{what} a un joint courbe qui ne peut pas être porté en dehors de {width} mm ; donnez moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/templates/over.py" />
   <source>{what} has {count} seam edges and {given} overs are given; give one for all, or one for each seam edge, counter-clockwise.</source>
   <translation>{what} a {count} bords de joint et {given} excédents sont donnés ; donnez-en un pour tous, ou un par bord de joint, en sens inverse des aiguilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/shop/pages/plan_words.py" />
   <source>{width} wide</source>
   <translation>large de {width}</translation>
  </message>
 </context>
</TS>
