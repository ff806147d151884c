<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>"sequence" or the leaf of each piece</source>
   <translation>"sequence" ou la feuille de chaque pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>A back cannot be tied by {by}; choose the outline, or give the marks on the face and those on the back.</source>
   <translation>Un dos ne peut pas être lié par {by} ; choisissez le contour, ou donnez les repères de la face et ceux du dos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>A boat shape {length} mm long cannot widen from {ends} to {width} mm: make it longer than {least} mm, or its ends wider than {most} mm.</source>
   <translation>Une forme bateau longue de {length} mm ne peut pas s'élargir autant ({ends} à {width} mm) : faites-la plus longue que {least} mm, ou ses extrémités plus larges que {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>A book ring turns every second piece, so it needs an even number of ways; {ways} is odd: take {nearest}, or a slip ring.</source>
   <translation>Une couronne en livre ouvert retourne une pièce sur deux, il lui faut donc un nombre pair de secteurs ; {ways} est impair : prenez {nearest}, ou une couronne glissée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/offset.py" />
   <source>A border {width} mm wide leaves nothing of this top within it in one piece: the widest is {most} mm.</source>
   <translation>Une bordure large de {width} mm ne laisse en elle rien de ce plateau d'un seul tenant : la plus large est de {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>A camera that does not look straight down shows leaves off, too: with four marks on the topmost leaf the photograph is squared up.</source>
   <translation>Un appareil qui ne regarde pas d'aplomb montre aussi les feuilles décalées : avec quatre repères sur la feuille du dessus la photo est redressée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>A click one pixel off moves a corner by at most {worst} ({photo}).</source>
   <translation>Un clic décalé d'un pixel déplace un coin d'au plus {worst} ({photo}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>A click one pixel off moves a corner by up to {length}; zoom in, or click points further apart.</source>
   <translation>Un clic décalé d'un pixel déplace un coin de jusqu'à {length} ; agrandissez, ou cliquez des points plus éloignés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>A corner of the outline is no number; draw it again.</source>
   <translation>Un coin du contour n'est pas un nombre ; retracez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>A corner of the {kind} is no number.</source>
   <translation>{kind} : un coin n'est pas un nombre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>A disc hides the tips of the inner field; give it there and not to the outer band.</source>
   <translation>Un disque cache les pointes du champ intérieur ; donnez-le là et non à la bande extérieure.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>A disc of {diameter} mm about the ring's centre does not lie within the top; the largest that does has {most} mm.</source>
   <translation>Un disque de {diameter} mm autour du centre de la couronne n'est pas à l'intérieur du plateau ; le plus grand qui l'est a {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>A leaf is missing in its place.</source>
   <translation>Une feuille manque à sa place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/spots.py" />
   <source>A line of {length} mm along the grain, some {width} mm wide, {darker} darker than the leaf on both sides of it.</source>
   <translation>Une ligne de {length} mm le long du fil, large d'environ {width} mm, plus sombre de {darker} que la feuille de part et d'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/spots.py" />
   <source>A line of {length} mm along the grain, some {width} mm wide, {darker} lighter than the leaf on both sides of it.</source>
   <translation>Une ligne de {length} mm le long du fil, large d'environ {width} mm, plus claire de {darker} que la feuille de part et d'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>A photo's pixels must be whole numbers from 0 to 255 (uint8), rows x columns x 3; these are {dtype} {shape}.</source>
   <translation>Les pixels d'une photo doivent être des nombres entiers de 0 à 255 (uint8), lignes x colonnes x 3 ; ceux-ci sont {dtype} {shape}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>A photograph can be turned by 90, 180 or 270 degrees, not by {turn}.</source>
   <translation>Une photo peut être tournée de 90, 180 ou 270 degrés, pas de {turn}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>A racetrack cannot be {width} mm wide and only {length} mm long: swap the two ({width} mm long and {length} mm wide), or make it longer than {width} mm.</source>
   <translation>Un hippodrome ne peut pas être large de {width} mm et long seulement de {length} mm : échangez les deux (long de {width} mm et large de {length} mm), ou faites-le plus long que {width} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>A racetrack {length} mm long and as wide has no straights: make it longer, or take a round top of {length} mm.</source>
   <translation>Un hippodrome long de {length} mm et large d'autant n'a pas de droites : faites-le plus long, ou prenez un plateau rond de {length} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>A run has 1 to {most} panels, and these are {count}; choose its faces again.</source>
   <translation>Une série a 1 à {most} panneaux, et ceux-ci sont {count} ; choisissez ses faces à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A running face takes as many leaves as it needs; give the width of a strip instead of their number, or take a balance face.</source>
   <translation>Une face courante prend autant de feuilles qu'il lui faut ; donnez la largeur d'une bande au lieu de leur nombre, ou prenez une face équilibrée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>A seam lies on one axis of this top and none on the other: with {ways} ways there cannot be one on each.</source>
   <translation>Un joint est sur un axe de ce plateau et aucun sur l'autre : avec {ways} secteurs il ne peut y en avoir un sur chacun.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/search/find.py" />
   <source>A search needs a bundle of leaves, and {value!r:.40} is none.</source>
   <translation>Une recherche demande une liasse de feuilles, et {value!r:.40} n'en est pas une.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A slip-centre-book face is slipped and booked at its centre, so it cannot be {turn}: take book or slip, or another face.</source>
   <translation>Une face glissée à centre en livre ouvert est déjà les deux, elle ne peut donc pas être {turn} : prenez livre ouvert ou glissé, ou une autre face.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/spots.py" />
   <source>A spot of {length} x {width} mm, {darker} darker than what lies round it.</source>
   <translation>Une tache de {length} x {width} mm, plus sombre de {darker} que ce qui l'entoure.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>A star of {points} points with an outer radius of {outer} mm has no hollows with an inner radius of {inner} mm; give less than {most} mm.</source>
   <translation>Une étoile à {points} pointes d'un rayon extérieur de {outer} mm n'a pas de creux avec un rayon intérieur de {inner} mm ; donnez moins de {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>A stock of plain sizes has no photographs; lay the top from a bundle.</source>
   <translation>Un stock de simples dimensions n'a pas de photos ; posez le plateau dans une liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/search/find.py" />
   <source>A stock of plain sizes has no photographs; search in a bundle.</source>
   <translation>Un stock de simples dimensions n'a pas de photos ; cherchez dans une liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>A straight rim needs wedges from the tip to the edge; in two rings keep the blank's rim parallel to the edge.</source>
   <translation>Un pourtour droit demande des secteurs de la pointe au bord ; avec deux couronnes gardez le pourtour de l'ébauche parallèle au bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>A straight rim needs wedges of one piece each; keep the blank's rim parallel to the edge.</source>
   <translation>Un pourtour droit demande des secteurs d'une pièce chacun ; gardez le pourtour de l'ébauche parallèle au bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>A straight {what} cannot turn this edge's hollow corner; take a mitred one.</source>
   <translation>{what}, droit : il ne peut pas tourner le coin rentrant de ce bord ; prenez des onglets.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>A straight {what} needs a top with straight sides and corners; take a mitred one, or let it follow the edge.</source>
   <translation>{what}, droit : il y faut un plateau à côtés droits et à coins ; prenez des onglets, ou laissez-le suivre le bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A {face} face has a joint on its centre, so it needs an even number of leaves, {least} or more, and {count} will not do: take {nearest}.</source>
   <translation>Une face ({face}) a un joint en son centre, il lui faut donc un nombre pair de feuilles, {least} ou plus, et {count} ne va pas : prenez {nearest}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>A {face} face mirrors at its centre, so it needs an even number of leaves, {least} or more, and {count} will not do: take {nearest}.</source>
   <translation>Une face ({face}) est en miroir en son centre, il lui faut donc un nombre pair de feuilles, {least} ou plus, et {count} ne va pas : prenez {nearest}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/largest.py" />
   <source>A {turn} ring needs {least} leaves or more and there are {have}; take a larger bundle.</source>
   <translation>Une couronne ({turn}) demande {least} feuilles ou plus et il y en a {have} ; prenez une plus grande liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>Across the grain the top is {width} mm wide and the least strip is {least} mm; make it wider.</source>
   <translation>En travers du fil le plateau est large de {width} mm et la plus petite bande est de {least} mm ; faites-le plus large.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>All photographs: {note}</source>
   <translation>Toutes les photos : {note}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>All pieces show the backs of their leaves.</source>
   <translation>Toutes les pièces montrent le dos de leurs feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>All strips are of one width, with a joint on the centre line.</source>
   <translation>Toutes les bandes sont d'une largeur, avec un joint sur la ligne médiane.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>All strips are of one width; any number of them.</source>
   <translation>Toutes les bandes sont d'une largeur ; en nombre quelconque.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>All weights are 0, so that all spots are alike; give one of them more.</source>
   <translation>Tous les poids sont 0, si bien que tous les emplacements se valent ; donnez plus à l'un d'eux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>All {leaves} photographs are one and the same, so there is no order to prove.</source>
   <translation>Les {leaves} photos sont toutes une seule et même, il n'y a donc pas d'ordre à prouver.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>An end match in {rows} rows has as many leaves in each, and {count} do not go into {rows}: take {nearest}.</source>
   <translation>Un joint en bout en {rows} rangs a autant de feuilles dans chacun, et {count} ne se partage pas en {rows} : prenez {nearest}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>An inlaid disc takes the place of the tips.</source>
   <translation>Un disque incrusté prend la place des pointes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>An inner field and an outer band, each with ways of its own, meet along a line.</source>
   <translation>Un champ intérieur et une bande extérieure, chacun avec ses secteurs, se rejoignent le long d'une ligne.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/largest.py" />
   <source>An order that lists {count} leaves is for {count} ways; ask for those alone, or take the leaves in sequence.</source>
   <translation>Un ordre qui énumère {count} feuilles est pour {count} secteurs ; demandez seulement ceux-là, ou prenez les feuilles en suite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>An outline must be a polygon, and this is a {kind}.</source>
   <translation>Un contour doit être un polygone, et ceci est un {kind}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>An outline must be one closed run, and these are {count}: give one of them.</source>
   <translation>Un contour doit être un seul tracé fermé, et ceux-ci sont {count} : donnez-en un.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Architectural end match</source>
   <translation>Joint en bout architectural</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>At the seams after positions {seams} the figure is too plain, or the leaves too unlike, to tell how it meets.</source>
   <translation>Aux joints après les positions {seams} le dessin est trop uni, ou les feuilles trop différentes, pour dire comment il se rejoint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>At the upper left and the lower right mitre the figure is shifted by {shift} mm: on a top of unequal sides only two mitres of a box can mirror.</source>
   <translation>À l'onglet en haut à gauche et à celui en bas à droite le dessin est décalé de {shift} mm : sur un plateau de côtés inégaux, seuls deux onglets des quatre miroirs peuvent être en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot no size of this top fits and no number of ways fits this top; or move the wedge.</source>
   <translation>À cet emplacement aucune taille de ce plateau ne tient, ni aucun nombre de secteurs ; ou déplacez le secteur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot no size of this top fits and this top fits in {ways} ways; or move the wedge.</source>
   <translation>À cet emplacement aucune taille de ce plateau ne tient et ce plateau tient en {ways} secteurs ; ou déplacez le secteur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot the largest reach is {reach} mm and no number of ways fits this top; or move the wedge.</source>
   <translation>À cet emplacement la plus grande portée est {reach} mm et ce plateau ne tient en aucun nombre de secteurs ; ou déplacez le secteur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>At this spot the largest reach is {reach} mm and this top fits in {ways} ways; or move the wedge.</source>
   <translation>À cet emplacement la plus grande portée est {reach} mm et ce plateau tient en {ways} secteurs ; ou déplacez le secteur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/wider.py" />
   <source>At this spot there is room for {room} deg. Move the wedge, take less oversize or wider leaves, or make a surer template that needs less over.</source>
   <translation>À cet emplacement il y a place pour {room} degrés. Déplacez le secteur, prenez moins de surcote ou des feuilles plus larges, ou faites un gabarit plus sûr qui demande moins en plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>At {scale} mm per pixel a leaf of {width} x {length} mm has {columns} x {rows} pixels; choose another scale.</source>
   <translation>À {scale} mm par pixel, une feuille de {width} x {length} mm a {columns} x {rows} pixels ; choisissez une autre échelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Balance match</source>
   <translation>Équilibré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Begin at another leaf to have them meet between two panels.</source>
   <translation>Commencez à une autre feuille pour qu'elles se rejoignent entre deux panneaux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>Between the faults, the edges and the margin no top of this shape fits in any number of ways; look at the faults, or take another bundle.</source>
   <translation>Entre les défauts, les bords et la marge aucun plateau de cette forme ne tient en aucun nombre de secteurs ; regardez les défauts, ou prenez une autre liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Book match</source>
   <translation>Livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Book seams miss by {miss} mm where backs are pinned as their faces are.</source>
   <translation>Les joints en livre ouvert sont décalés de {miss} mm là où les dos sont pionnés comme leurs faces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>Both sides of the seams after positions {seams} are pictured by one photograph, so they meet in the picture; where the figure of a back really lies was not measured.</source>
   <translation>Les deux côtés des joints après les positions {seams} sont montrés par une seule photo, ils se rejoignent donc dans l'image ; où est vraiment le dessin d'un dos n'a pas été mesuré.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Box match</source>
   <translation>Quatre miroirs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>By its marks, leaf {leaves} lies the other way round.</source>
   <translation>D'après ses repères, la feuille {leaves} est dans l'autre sens.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/grid.py" />
   <source>By its scale of {scale} mm per pixel leaf {leaf} would be {width} x {length} m large; set the scale of its photograph again.</source>
   <translation>D'après son échelle de {scale} mm par pixel, la feuille {leaf} ferait {width} x {length} m ; réglez à nouveau l'échelle de sa photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>By leaf {last} that makes {end} mm, and where the figure wanders otherwise on one leaf than on the rest is not known from faces alone.</source>
   <translation>À la feuille {last} cela fait {end} mm, et là où le dessin dérive autrement sur une feuille que sur les autres, les faces seules ne le disent pas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>By these distances a ring is {size} mm across, and it was printed {printed} mm; measure again from cross to cross, see that each mark has its own letter, and that the sheet was printed at 100 %.</source>
   <translation>D'après ces distances un anneau fait {size} mm, et il a été imprimé à {printed} mm ; mesurez à nouveau de croix à croix, voyez que chaque repère a sa propre lettre, et que la planche a été imprimée à 100 %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Centre balance match</source>
   <translation>Centre équilibré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Check the thickness and the slope, or let the wander be told from the photographs.</source>
   <translation>Vérifiez l'épaisseur et la pente, ou laissez lire la dérive des photos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Click 2 points on the picture, each once.</source>
   <translation>Cliquez 2 points sur l'image, chacun une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/scaling.py" />
   <source>Click two paper marks to {most}, or two and give their distance, or four and give the six distances between them.</source>
   <translation>Cliquez de deux à {most} repères en papier, ou deux avec leur distance, ou quatre avec les six distances entre eux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Click {count} points on the picture, each once.</source>
   <translation>Cliquez {count} points sur l'image, chacun une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Close the gaps, or make a run of its own of what lies beyond.</source>
   <translation>Fermez les jeux, ou faites de ce qui est au-delà une série propre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Continuous end match</source>
   <translation>Joint en bout continu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Corners {one} and {other} lie in one place; click four corners that are at least {least} pixels apart.</source>
   <translation>Les coins {one} et {other} sont au même endroit ; cliquez quatre coins à {least} pixels au moins l'un de l'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Cut along the lines, away from your hand: a knife slips on paper and on thin wood.</source>
   <translation>Coupez le long des lignes, loin de votre main : un couteau glisse sur le papier et le bois mince.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>Cut as one stack the common outline reaches up to {overhang} mm off the usable area of leaves {leaves}, though their own pieces lie on them (margin {margin} mm).</source>
   <translation>Coupé en une pile, le contour commun dépasse jusqu'à {overhang} mm de la surface utile des feuilles {leaves}, bien que leurs propres pièces y tiennent (marge {margin} mm).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>Cut in lots by shape ({lots} of them), or take other leaves.</source>
   <translation>Coupez en lots par forme (il y en a {lots}), ou prenez d'autres feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>Cut over, never under: at {true_angle} deg or a little more.</source>
   <translation>Coupez plus large, jamais plus étroit : à {true_angle} degrés ou un peu plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Cut them one after another along the leaf and number them round the edge.</source>
   <translation>Coupez-les l'une après l'autre le long de la feuille et numérotez-les autour du bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/wider.py" />
   <source>Cut to {angle} deg the blanks at positions {pieces} reach up to {overhang} mm off the usable area of their leaves ({leaves}), with a margin of {margin} mm; cut to {true_angle} deg they fit.</source>
   <translation>Coupées à {angle} degrés, les ébauches aux positions {pieces} dépassent jusqu'à {overhang} mm de la surface utile de leurs feuilles ({leaves}), avec une marge de {margin} mm ; coupées à {true_angle} degrés elles tiennent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Diamond match</source>
   <translation>Losange</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/scaling.py" />
   <source>Distances between marks are numbers, in mm.</source>
   <translation>Les distances entre repères sont des nombres, en mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. Click marks of a third leaf, or of one leaf with its pins.</source>
   <translation>Ne coupez pas. Cliquez des repères d'une troisième feuille, ou d'une feuille avec ses pions.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that each mark has its own leaf and letter; then click marks of more leaves, or of one leaf with its pins.</source>
   <translation>Ne coupez pas. Voyez que chaque repère a sa feuille et sa lettre ; cliquez ensuite des repères de plus de feuilles, ou d'une feuille avec ses pions.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that each mark has its own letter; then move the leaf back, or pin it again by its marks, and photograph it again.</source>
   <translation>Ne coupez pas. Voyez que chaque repère a sa propre lettre ; puis remettez la feuille, ou pionnez-la à nouveau par ses repères, et photographiez-la à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that each mark has its own letter; then move the leaf back: {back}, or pin it again by its marks, and photograph it again.</source>
   <translation>Ne coupez pas. Voyez que chaque repère a sa propre lettre ; puis remettez la feuille : {back}, ou pionnez-la à nouveau par ses repères, et photographiez-la à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Do not cut. See that this is the leaf, that each mark has its own letter, and that the leaf lies face up.</source>
   <translation>Ne coupez pas. Voyez que c'est bien la feuille, que chaque repère a sa propre lettre, et que la feuille est face dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Draw the patch on which the light is measured, and choose to measure it there.</source>
   <translation>Tracez la plage où la lumière est mesurée, et choisissez de l'y mesurer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Each half is slipped, and the halves mirror at the centre.</source>
   <translation>Chaque moitié est glissée, et les moitiés sont en miroir au centre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Each wedge is laid from several leaves side by side, slip matched.</source>
   <translation>Chaque secteur est posé de plusieurs feuilles côte à côte, glissées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Every second leaf is turned end for end, its face still up.</source>
   <translation>Une feuille sur deux est tournée tête-bêche, sa face toujours dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Every second leaf is turned over, so that each joint mirrors.</source>
   <translation>Une feuille sur deux est retournée, si bien que chaque joint est en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Faults ({kinds}) at positions {pieces} (leaves {leaves}) lie where the top will be covered.</source>
   <translation>Des défauts ({kinds}) aux positions {pieces} (feuilles {leaves}) sont là où le plateau sera couvert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Faults ({kinds}) lie in the oversize at positions {pieces} (leaves {leaves}) and go with the trim.</source>
   <translation>Des défauts ({kinds}) sont dans la surcote aux positions {pieces} (feuilles {leaves}) et partent à la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Faults ({kinds}) of leaf {leaf} will be seen on {faces}.</source>
   <translation>Des défauts ({kinds}) de la feuille {leaf} se verront sur {faces}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Faults ({kinds}) will be seen at positions {pieces} (leaves {leaves}).</source>
   <translation>Des défauts ({kinds}) se verront aux positions {pieces} (feuilles {leaves}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>Finished sizes: add what is trimmed off and wasted.</source>
   <translation>Cotes finies : ajoutez ce qui est rogné et perdu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>Flatten the leaves first and photograph them under glass.</source>
   <translation>Aplanissez d'abord les feuilles et photographiez-les sous verre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>For a seam on each axis take {would_do} ways: their number must be divisible by 4.</source>
   <translation>Pour un joint sur chaque axe prenez {would_do} secteurs : leur nombre doit être divisible par 4.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>For less truing cut nearer to {true_angle} deg, never under, or cut single pieces, each fitted to its place.</source>
   <translation>Pour moins de dressage, coupez plus près de {true_angle} degrés, jamais en dessous, ou coupez des pièces une à une, chacune ajustée à sa place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>For less truing cut nearer to {true_angle} deg, never under, or fit each piece to its place as it is cut.</source>
   <translation>Pour moins de dressage, coupez plus près de {true_angle} degrés, jamais en dessous, ou ajustez chaque pièce à sa place à mesure qu'elle est coupée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>For less truing cut nearer to {true_angle} deg, never under.</source>
   <translation>Pour moins de dressage, coupez plus près de {true_angle} degrés, jamais en dessous.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four leaves against the four sides, the grain along each side.</source>
   <translation>Quatre feuilles contre les quatre côtés, le fil le long de chaque côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four leaves against the four sides, the grain square to each side.</source>
   <translation>Quatre feuilles contre les quatre côtés, le fil d'équerre à chaque côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four leaves meet at the centre, side by side and end to end, grain upright.</source>
   <translation>Quatre feuilles se rejoignent au centre, côte à côte et bout à bout, fil debout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four quarters with slanting grain, which runs round the centre in a diamond.</source>
   <translation>Quatre quartiers au fil en biais, qui tourne autour du centre en losange.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four quarters with slanting grain, whose V's meet at the centre.</source>
   <translation>Quatre quartiers au fil en biais, dont les V se rejoignent au centre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Four-piece centre and butt match</source>
   <translation>Quatre pièces, centre et bout</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>From corner to corner no joint of this box mirrors: its sides differ by {shift} mm.</source>
   <translation>De coin à coin, aucun joint des quatre n'est en miroir : ses côtés diffèrent de {shift} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>From leaf {leaf} on the figure changes {times} times as much from leaf to leaf, and goes on so: a change of thickness.</source>
   <translation>Dès la feuille {leaf} le dessin change {times} fois autant de feuille à feuille, et continue ainsi : un changement d'épaisseur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>From leaf {leaf} on the figure changes {times} times less from leaf to leaf, and goes on so: a change of thickness.</source>
   <translation>Dès la feuille {leaf} le dessin change {times} fois moins de feuille à feuille, et continue ainsi : un changement d'épaisseur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>From leaf {leaf} to leaf {after} the figure changes {steps} times as much as from leaf to leaf elsewhere: a gap, or one thicker leaf.</source>
   <translation>De la feuille {leaf} à la feuille {after} le dessin change {steps} fois autant que de feuille à feuille ailleurs : une lacune, ou une feuille plus épaisse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>From the residuals of your photographs, one standard error at a leaf's corner is at most {step} mm from leaf to leaf (leaf {leaf}), and {total} mm from leaf {first} to leaf {last}.</source>
   <translation>D'après les résidus de vos photos, un écart type au coin d'une feuille est d'au plus {step} mm de feuille à feuille (feuille {leaf}), et {total} mm de la feuille {first} à la feuille {last}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>From the residuals of your photographs, the figure of one leaf lies {rms} mm (rms) from that of the leaf it meets, measured at {measured} of {tried} places along the seams; {worst} mm at worst, between positions {a} and {b}, where the surfaces that meet are {step} apart.</source>
   <translation>D'après les résidus de vos photos, le dessin d'une feuille est à {rms} mm (rms) de celui de la feuille qu'elle rejoint, mesuré à {measured} endroits sur {tried} le long des joints ; {worst} mm au pire, entre les positions {a} et {b}, où les surfaces qui se rejoignent sont à {step}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Full strips from the left, as many as it takes; the last is cut to what is left.</source>
   <translation>Bandes pleines depuis la gauche, autant qu'il en faut ; la dernière est coupée à ce qui reste.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Gaps that do not run right through the run cannot be closed; the figure in them is lost.</source>
   <translation>Les jeux qui ne traversent pas toute la série ne peuvent pas être fermés ; le dessin y est perdu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Give it a backer of the show veneer's thickness and wood, pressed at the same time.</source>
   <translation>Donnez-lui un contre-parement de l'épaisseur et du bois du parement, pressé en même temps.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Give its coefficients, or name one of these: {known}.</source>
   <translation>Donnez ses coefficients, ou nommez l'un de ceux-ci : {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>Give the number of leaves or the width of a strip, not both: the other follows.</source>
   <translation>Donnez le nombre de feuilles ou la largeur d'une bande, pas les deux : l'autre en découle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Give the other side the same, or leave both out.</source>
   <translation>Donnez le même à l'autre côté, ou omettez les deux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>Give the photographs as a list of at least one file.</source>
   <translation>Donnez les photos comme une liste d'au moins un fichier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>Give the photos as a list of files, one for each leaf, in order.</source>
   <translation>Donnez les photos comme une liste de fichiers, un par feuille, dans l'ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Give the wander of the figure as two numbers: mm across and mm along.</source>
   <translation>Donnez la dérive du dessin par deux nombres : mm en travers et mm en long.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>Glued veneer is held by its ground: this is the movement of free wood, not the gap of a joint.</source>
   <translation>Un placage collé est tenu par son support : ceci est le travail du bois libre, non le jeu d'un joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Herringbone match</source>
   <translation>Chevrons</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>How each photograph lay hides a drift of up to {hidden} mm from leaf to leaf, {hidden_total} mm by leaf {last}.</source>
   <translation>La pose de chaque photo cache une dérive de jusqu'à {hidden} mm de feuille à feuille, {hidden_total} mm à la feuille {last}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>How far the figure wanders from surface to surface is not measured yet; book seams may miss by {miss} mm {basis}.</source>
   <translation>De combien le dessin dérive de surface à surface n'est pas encore mesuré ; les joints en livre ouvert peuvent être décalés de {miss} mm {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>How far the figure wanders is not measured, so that backs cannot be set by it; photograph two or three backs.</source>
   <translation>De combien le dessin dérive n'est pas mesuré, les dos ne peuvent donc pas être posés d'après cela ; photographiez deux ou trois dos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>How much the {what} of {wood} moves is not known here.</source>
   <translation>Le travail du bois ({what}, {wood}) n'est pas connu ici.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>How much {species!r:.40} moves is not known here; give coefficients of your own or one of these: {known}.</source>
   <translation>Le travail de {species!r:.40} n'est pas connu ici ; donnez vos propres coefficients ou l'un de ceux-ci : {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>How the {what} moves cannot be {value!r:.40}; give Coefficients, or nothing.</source>
   <translation>{what} : le travail ne peut pas être {value!r:.40} ; donnez Coefficients, ou rien.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>If it does not, pick its marks in the order of the first leaf's.</source>
   <translation>Sinon, marquez ses repères dans l'ordre de ceux de la première feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>In a {match} match the turned strips cannot be {turned!r:.40}; choose {allowed}.</source>
   <translation>Frisage {match} : les bandes retournées ne peuvent pas être {turned!r:.40} ; choisissez {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>In a {turn} {what} the turned pieces cannot be {turned!r}; choose {allowed}.</source>
   <translation>{what} ({turn}) : les pièces retournées ne peuvent pas être {turned!r} ; choisissez {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>In our tests, on generated leaves of 300 x 900 mm at 1 mm per pixel, the registers of 12 leaves came out the same to {least} to {most} mm (rms at the corners, by the figure) however they were photographed; with leaves that stood up 5 mm under a camera at 1.5 m to {least_buckled} to {most_buckled} mm, besides what the picture itself was bent by.</source>
   <translation>Dans nos essais, sur des feuilles générées de 300 x 900 mm à 1 mm par pixel, les calages de 12 feuilles sont sortis les mêmes à {least} à {most} mm (rms aux coins, d'après le dessin) de quelque façon qu'elles aient été photographiées ; avec des feuilles soulevées de 5 mm sous un appareil à 1,5 m, à {least_buckled} à {most_buckled} mm, outre ce dont l'image même était courbée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>In the file {file} a text that begins in line {line} has quotation marks that do not close at its end; close them, or write those inside a text twice.</source>
   <translation>Dans le fichier {file}, un texte qui commence à la ligne {line} a des guillemets qui ne se ferment pas à sa fin ; fermez-les, ou doublez ceux à l'intérieur d'un texte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>In the order "spread" the largest step is {spread}.</source>
   <translation>Dans l'ordre "spread" le plus grand pas est {spread}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>In this figure a leaf turned over looks like one that lies end for end: look at the leaf itself.</source>
   <translation>Dans ce dessin une feuille retournée ressemble à une feuille tête-bêche : regardez la feuille même.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>It is in doubt how leaf {leaves} lies on the leaf before, and with it where all leaves after lie: their photographs are too unlike, or contradict each other.</source>
   <translation>La pose de la feuille {leaves} sur la précédente est douteuse, et avec elle celle de toutes les suivantes : leurs photos sont trop différentes, ou se contredisent.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>It lies the way round that was said.</source>
   <translation>Il est dans le sens qui a été dit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>Its ends are as the figure has them, which is more alike so than end for end.</source>
   <translation>Ses bouts sont comme le dessin les a, plus ressemblant ainsi que tête-bêche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Its picture is left-right reversed: the photograph was mirrored already before it was read; bring in the original.</source>
   <translation>Son image est inversée gauche-droite : la photo était déjà en miroir avant d'être lue ; importez l'original.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Its picture is mirrored, as a back's is on reading.</source>
   <translation>Son image est en miroir, comme celle d'un dos l'est à la lecture.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Its picture lies end for end to the face's; tie the back to the face first.</source>
   <translation>Son image est tête-bêche par rapport à la face ; liez d'abord le dos à la face.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Keep the lipping narrow, or set it after veneering.</source>
   <translation>Gardez l'alaise étroite, ou posez-la après le placage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>Lay each leaf as its picture shows it, the side named below up. Chalk the number near the top end, with a line along that end, on the side that is up.</source>
   <translation>Posez chaque feuille comme son image la montre, le côté nommé ci-dessous dessus. Marquez à la craie le numéro près du bout du haut, avec un trait le long de ce bout, sur le côté du dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}, and the bundle says the opposite: change it.</source>
   <translation>La feuille 2 était sur la feuille 1, et ainsi de suite, vu du côté photographié : prouvé par {by}, et la liasse dit le contraire : changez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}, as the bundle says.</source>
   <translation>La feuille 2 était sur la feuille 1, et ainsi de suite, vu du côté photographié : prouvé par {by}, comme le dit la liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay over leaf 1, and so on, seen from the photographed side: proved by {by}; the bundle does not say so yet.</source>
   <translation>La feuille 2 était sur la feuille 1, et ainsi de suite, vu du côté photographié : prouvé par {by} ; la liasse ne le dit pas encore.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}, and the bundle says the opposite: change it.</source>
   <translation>La feuille 2 était sous la feuille 1, et ainsi de suite, vu du côté photographié : prouvé par {by}, et la liasse dit le contraire : changez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}, as the bundle says.</source>
   <translation>La feuille 2 était sous la feuille 1, et ainsi de suite, vu du côté photographié : prouvé par {by}, comme le dit la liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>Leaf 2 lay under leaf 1, and so on, seen from the photographed side: proved by {by}; the bundle does not say so yet.</source>
   <translation>La feuille 2 était sous la feuille 1, et ainsi de suite, vu du côté photographié : prouvé par {by} ; la liasse ne le dit pas encore.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Leaf {leaf} has no frame of the log; give one for every leaf (targets or its outline) or for none.</source>
   <translation>La feuille {leaf} n'a pas de cadre de la grume ; donnez-en un pour chaque feuille (repères ou son contour) ou pour aucune.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Leaf {leaf} has {count} marks and leaf {first} has {wanted}; pick the same points of the figure on every leaf.</source>
   <translation>La feuille {leaf} a {count} repères et la feuille {first} en a {wanted} ; marquez les mêmes points du dessin sur chaque feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Leaf {leaf} has {count} marks; pick at least two on every leaf.</source>
   <translation>La feuille {leaf} a {count} repères ; marquez-en au moins deux sur chaque feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is out of place: it belongs after leaf {before}, at the end.</source>
   <translation>La feuille {leaf} est hors de sa place : elle va après la feuille {before}, au bout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is out of place: it belongs before leaf {after}, at the end.</source>
   <translation>La feuille {leaf} est hors de sa place : elle va avant la feuille {after}, au bout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is out of place: it belongs between leaves {before} and {after}.</source>
   <translation>La feuille {leaf} est hors de sa place : elle va entre les feuilles {before} et {after}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is turned over end over end: its figure is that of the others upside down.</source>
   <translation>La feuille {leaf} est retournée bout sur bout : son dessin est celui des autres en miroir haut-bas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is turned over or lies end for end, which look alike in this figure: look at the leaf itself.</source>
   <translation>La feuille {leaf} est retournée ou tête-bêche, ce qui est pareil dans ce dessin : regardez la feuille même.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} is turned over: its figure is that of the others mirrored left-right.</source>
   <translation>La feuille {leaf} est retournée : son dessin est celui des autres en miroir gauche-droite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} lies end for end: turn its photograph by 180 degrees.</source>
   <translation>La feuille {leaf} est tête-bêche : tournez sa photo de 180 degrés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies where its register has it, to {off} mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm it.</source>
   <translation>La feuille {leaf} est là où son calage la met, à {off} mm et {turn} degrés, ce que la photo dit à {unsure} mm ; jusqu'à {tolerance} mm et {most} degrés le confirment.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/seen.py" />
   <source>Leaf {leaf} lies {below} mm below the topmost and is seen smaller; say how far above the topmost leaf the camera was.</source>
   <translation>La feuille {leaf} est à {below} mm sous celle du dessus et se voit plus petite ; dites à quelle hauteur au-dessus de la feuille du dessus était l'appareil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off its register.</source>
   <translation>La feuille {leaf} est à {off} mm de son calage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off its register: {way}.</source>
   <translation>La feuille {leaf} est à {off} mm de son calage : {way}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where all marks together have it: {way}; too few leaves agree to tell which lie wrong.</source>
   <translation>La feuille {leaf} est à {off} mm de là où tous les repères ensemble la mettent : {way} ; trop peu de feuilles s'accordent pour dire lesquelles sont fausses.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where all marks together have it; too few leaves agree to tell which lie wrong.</source>
   <translation>La feuille {leaf} est à {off} mm de là où tous les repères ensemble la mettent ; trop peu de feuilles s'accordent pour dire lesquelles sont fausses.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where it belongs on leaf {other}: {way}; two leaves do not tell which of them lies wrong.</source>
   <translation>La feuille {leaf} est à {off} mm de sa place sur la feuille {other} : {way} ; deux feuilles ne disent pas laquelle est fausse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaf {leaf} lies {off} mm off where it belongs on leaf {other}; two leaves do not tell which of them lies wrong.</source>
   <translation>La feuille {leaf} est à {off} mm de sa place sur la feuille {other} ; deux feuilles ne disent pas laquelle est fausse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/chain.py" />
   <source>Leaf {leaf} shows figure on too little of its usable area to be registered; check its scale and its usable area, or leave it out.</source>
   <translation>La feuille {leaf} montre du dessin sur trop peu de sa surface utile pour être calée ; vérifiez son échelle et sa surface utile, ou omettez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaf {leaf} shows nothing of the others' figure, whichever way it lies: it does not belong to this bundle.</source>
   <translation>La feuille {leaf} ne montre rien du dessin des autres, dans quelque sens qu'elle soit : elle n'est pas de cette liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Leaf {leaf} was not registered with the others; register the bundle again.</source>
   <translation>La feuille {leaf} n'a pas été calée avec les autres ; calez la liasse à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Leave the marks on until the leaf is pinned and cut.</source>
   <translation>Laissez les repères jusqu'à ce que la feuille soit pionnée et coupée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Leaves are joined out of their order on purpose.</source>
   <translation>Les feuilles sont jointes exprès hors de leur ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Leaves go in order down a column, then to the column beside it.</source>
   <translation>Les feuilles descendent une colonne dans l'ordre, puis passent à la colonne voisine.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Leaves lie side by side in order, none turned.</source>
   <translation>Les feuilles sont côte à côte dans l'ordre, aucune retournée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaves {leaf} and {other} are one leaf photographed twice.</source>
   <translation>Les feuilles {leaf} et {other} sont une seule feuille photographiée deux fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaves {leaf} and {other} are the same photograph.</source>
   <translation>Les feuilles {leaf} et {other} sont la même photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>Leaves {leaf} and {other} have changed places.</source>
   <translation>Les feuilles {leaf} et {other} ont échangé leurs places.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaves {leaves} lie where their registers have them, to {off} mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm them.</source>
   <translation>Les feuilles {leaves} sont là où leurs calages les mettent, à {off} mm et {turn} degrés, ce que la photo dit à {unsure} mm ; jusqu'à {tolerance} mm et {most} degrés les confirment.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/renumbering.py" />
   <source>Leaves {one} and {other} would both get the number {number}; give each its own.</source>
   <translation>Les feuilles {one} et {other} recevraient toutes deux le numéro {number} ; donnez à chacune le sien.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>Leaves {other} and {leaf} lie on each other as their registers have it, to {off} mm and {turn} deg, which the photograph tells to {unsure} mm; up to {tolerance} mm and {most} deg confirm them.</source>
   <translation>Les feuilles {other} et {leaf} sont l'une sur l'autre comme leurs calages les mettent, à {off} mm et {turn} degrés, ce que la photo dit à {unsure} mm ; jusqu'à {tolerance} mm et {most} degrés les confirment.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Let the stack follow the figure, the log or marks, unless all were photographed in one jig.</source>
   <translation>Laissez la pile suivre le dessin, la grume ou des repères, à moins que toutes aient été photographiées dans un même montage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>Light evened from the {light}, as measured on these photographs: gains from {least} to {most}; the photographs themselves are unchanged.</source>
   <translation>Lumière égalisée d'après {light}, mesurée sur ces photos : gains de {least} à {most} ; les photos elles-mêmes sont inchangées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>Look at those leaves one over the other, prove the order, photograph them again, or pick marks by hand.</source>
   <translation>Regardez ces feuilles l'une sur l'autre, prouvez l'ordre, photographiez-les à nouveau, ou marquez des repères à la main.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Make a run of its own of what lies apart.</source>
   <translation>Faites de ce qui est à part une série propre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Make both alike.</source>
   <translation>Faites-les pareils.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>Mark {letter} lies {off} mm off the place that was given for it; measure the places of the marks again, and see that each has its own letter.</source>
   <translation>Le repère {letter} est à {off} mm de la place qui lui a été donnée ; mesurez à nouveau les places des repères, et voyez que chacun a sa propre lettre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Mark {mark} of leaf {leaf} lies off its photograph; pick it again.</source>
   <translation>Le repère {mark} de la feuille {leaf} est hors de sa photo ; marquez-le à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Marks for leaf {leaf}</source>
   <translation>Repères pour la feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Marks for leaves {leaves}</source>
   <translation>Repères pour les feuilles {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Marks {a} and {b} lie {there} mm apart on leaf {first} and {here} mm on leaf {leaf}, {worst} mm more or less; up to {most} mm is a matter of picking, so pick the same points again.</source>
   <translation>Les repères {a} et {b} sont à {there} mm l'un de l'autre sur la feuille {first} et à {here} mm sur la feuille {leaf}, {worst} mm de plus ou de moins ; jusqu'à {most} mm tient au marquage, marquez donc les mêmes points à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>Marks {a} and {b} of leaf {leaf} lie {distance} mm apart; pick marks at least {least} mm from each other, better near both ends of the leaf.</source>
   <translation>Les repères {a} et {b} de la feuille {leaf} sont à {distance} mm l'un de l'autre ; marquez des repères à {least} mm au moins, mieux près des deux bouts de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/scaling.py" />
   <source>Marks {one} and {other} are the same mark; click each once.</source>
   <translation>Les repères {one} et {other} sont le même repère ; cliquez chacun une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Measure from cross to cross by a steel rule. One distance gives a photo its scale; four</source>
   <translation>Mesurez de croix à croix avec une règle d'acier. Une distance donne son échelle à une photo ; quatre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm down the leaf and {aside} mm to the left.</source>
   <translation>Mesuré sur {of} : de la face au dos le dessin dérive de {up} mm vers le bas de la feuille et de {aside} mm vers la gauche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm down the leaf and {aside} mm to the right.</source>
   <translation>Mesuré sur {of} : de la face au dos le dessin dérive de {up} mm vers le bas de la feuille et de {aside} mm vers la droite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm up the leaf and {aside} mm to the left.</source>
   <translation>Mesuré sur {of} : de la face au dos le dessin dérive de {up} mm vers le haut de la feuille et de {aside} mm vers la gauche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Measured on {of}: from face to back the figure wanders {up} mm up the leaf and {aside} mm to the right.</source>
   <translation>Mesuré sur {of} : de la face au dos le dessin dérive de {up} mm vers le haut de la feuille et de {aside} mm vers la droite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Move one of the cuts, or take other leaves for it.</source>
   <translation>Déplacez une des coupes, ou prenez d'autres feuilles pour elle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Move the cut, or take other leaves.</source>
   <translation>Déplacez la coupe, ou prenez d'autres feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Move the cuts, or take other leaves.</source>
   <translation>Déplacez les coupes, ou prenez d'autres feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Move the leaf, or take another.</source>
   <translation>Déplacez la feuille, ou prenez-en une autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Move the leaf, turn the grain, or take a larger leaf.</source>
   <translation>Déplacez la feuille, tournez le fil, ou prenez une feuille plus grande.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>Move the seams or the centre a little, or take other numbers or widths.</source>
   <translation>Déplacez un peu les joints ou le centre, ou prenez d'autres nombres ou largeurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Move the wedge, or take other leaves.</source>
   <translation>Déplacez le secteur, ou prenez d'autres feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Moved by {across} mm across the leaves and {along} mm along them it fits.</source>
   <translation>Déplacé de {across} mm en travers des feuilles et de {along} mm en long, cela tient.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>Neither outline nor figure shows which end is which: say so, or mark points on both sides.</source>
   <translation>Ni contour ni dessin ne montrent quel bout est lequel : dites-le, ou marquez des points des deux côtés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>No back was photographed, so that how far the figure wanders from surface to surface is unknown; book seams may miss by {miss} mm {basis}.</source>
   <translation>Aucun dos n'a été photographié, la dérive du dessin de surface à surface est donc inconnue ; les joints en livre ouvert peuvent être décalés de {miss} mm {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>No back was photographed, so that the stack's sense is as it was said, not proved; photograph the back of one leaf to prove it.</source>
   <translation>Aucun dos n'a été photographié, le sens de la pile est donc celui qui a été dit, non prouvé ; photographiez le dos d'une feuille pour le prouver.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/maps.py" />
   <source>No leaf has a usable area; draw what may be used on the leaves.</source>
   <translation>Aucune feuille n'a de surface utile ; tracez sur les feuilles ce qui est utilisable.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>No leaf stands out from the background; photograph it on a sheet or table of another colour, or draw its outline by hand.</source>
   <translation>Aucune feuille ne se détache du fond ; photographiez-la sur une table ou une planche d'une autre couleur, ou tracez son contour à la main.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>No piece of this match lies on the top; make it larger.</source>
   <translation>Aucune pièce de ce frisage n'est sur le plateau ; faites-le plus grand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>No two of these photographs show the same figure, so nothing can be proved; are they of one bundle, upright and at their true scale?</source>
   <translation>Il n'y a pas deux de ces photos qui montrent le même dessin, rien ne peut donc être prouvé ; sont-elles d'une liasse, debout et à leur vraie échelle ?</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>Nothing of leaf {leaf} may be used; outline its usable area again.</source>
   <translation>Rien de la feuille {leaf} n'est utilisable ; tracez à nouveau sa surface utile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Nothing of leaves {leaves} comes onto a panel: they would lie wholly beside the panels.</source>
   <translation>Rien des feuilles {leaves} ne vient sur un panneau : elles seraient entièrement à côté des panneaux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Nothing of leaves {leaves} comes onto a panel: they would lie wholly in a gap (the widest is {gap} mm) or beside the panels.</source>
   <translation>Rien des feuilles {leaves} ne vient sur un panneau : elles seraient entièrement dans un jeu (le plus large a {gap} mm) ou à côté des panneaux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>Nothing of the leaves can be used for a top of this shape; look at the usable areas, the margin and the oversize.</source>
   <translation>Rien des feuilles ne peut servir à un plateau de cette forme ; regardez les surfaces utiles, la marge et la surcote.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>On panel {panel} the two bundles meet (leaf {before} is the first's last, leaf {after} the second's first), at the seam of positions {seams}, counted as {missing} missing leaf: a step of {step} surfaces.</source>
   <translation>Sur le panneau {panel} les deux liasses se rejoignent (la feuille {before} est la dernière de la première, la feuille {after} la première de la seconde), au joint des positions {seams}, compté pour {missing} feuille manquante : un pas de {step} surfaces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>On panel {panel} the two bundles meet (leaf {before} is the first's last, leaf {after} the second's first), at the seam of positions {seams}, counted as {missing} missing leaves: a step of {step} surfaces.</source>
   <translation>Sur le panneau {panel} les deux liasses se rejoignent (la feuille {before} est la dernière de la première, la feuille {after} la première de la seconde), au joint des positions {seams}, compté pour {missing} feuilles manquantes : un pas de {step} surfaces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>One back tells nothing of how steady that is; photograph another.</source>
   <translation>Un seul dos ne dit rien de sa régularité ; photographiez-en un autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>One corner lies inside the other three, as no rectangle's does; click the four corners of the rectangle, each once.</source>
   <translation>Un coin est à l'intérieur des trois autres, comme dans aucun rectangle ; cliquez les quatre coins du rectangle, chacun une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>One field over several panels has no disc in its middle and no straight rim; leave them out, or lay the panels in sequence.</source>
   <translation>Un champ sur plusieurs panneaux n'a ni disque au milieu ni pourtour droit ; omettez-les, ou posez les panneaux en suite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>One leaf has no order to prove.</source>
   <translation>Une feuille n'a pas d'ordre à prouver.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>One leaf's marks alone confirm nothing; click two pins too, or marks of other leaves of the stack.</source>
   <translation>Les repères d'une seule feuille ne confirment rien ; cliquez aussi deux pions, ou des repères d'autres feuilles de la pile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>One mark of leaf {leaf} does not tell where the pins stand on it; click another one.</source>
   <translation>Un repère de la feuille {leaf} ne dit pas où y sont les pions ; cliquez-en un autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>One misses by {worst} mm, too much for one leaf: see whether the marks are paired rightly, and both scales.</source>
   <translation>L'un manque de {worst} mm, trop pour une feuille : voyez si les repères sont bien appariés, et les deux échelles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>One pin does not tell how a leaf is turned; click the other one too.</source>
   <translation>Un pion ne dit pas comment une feuille est tournée ; cliquez aussi l'autre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Page {page} of {pages}</source>
   <translation>Page {page} sur {pages}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Panel end match</source>
   <translation>Joint en bout en panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Panel {panels}:</source>
   <translation>Panneau {panels} :</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>Panels in sequence are of one size, and panel {panel} is {by} than panel 1 ({width} by {height} mm): make them alike, leave it out, or lay one field over all of them.</source>
   <translation>Des panneaux en suite sont d'une taille, et le panneau {panel} est {by} que le panneau 1 ({width} sur {height} mm) : faites-les pareils, omettez-le, ou posez un champ sur tous.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>Panels {a} and {b} lie over each other by {over} mm2; choose each place once.</source>
   <translation>Les panneaux {a} et {b} se recouvrent de {over} mm2 ; choisissez chaque endroit une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Panels {panels}:</source>
   <translation>Panneaux {panels} :</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Part it in segments where the grain shall follow the edge.</source>
   <translation>Partagez-la en pièces là où le fil doit suivre le bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Photograph the backs of those leaves, or give the bundle's slope.</source>
   <translation>Photographiez les dos de ces feuilles, ou donnez la pente de la liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Photograph the backs of those leaves.</source>
   <translation>Photographiez les dos de ces feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Photograph two or three backs, or stick targets on, to know.</source>
   <translation>Photographiez deux ou trois dos, ou collez des repères, pour le savoir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Photograph two or three backs, stick targets on, or give the slope of the stem.</source>
   <translation>Photographiez deux ou trois dos, collez des repères, ou donnez la pente du tronc.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Photograph two or three backs.</source>
   <translation>Photographiez deux ou trois dos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>Pieces at positions {pieces} are smaller than {limit} mm2, the one at {a} has only {area} mm2: such crumbs are lost or broken in cutting.</source>
   <translation>Les pièces aux positions {pieces} sont plus petites que {limit} mm2, celle en {a} n'a que {area} mm2 : de telles miettes se perdent ou cassent à la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Pieces at positions {pieces} overlap on their leaves ({leaves}).</source>
   <translation>Les pièces aux positions {pieces} se recouvrent sur leurs feuilles ({leaves}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Pieces of panels {panels} are slivers under {least} mm; the narrowest, position {a} of panel {b}, is {width} mm wide.</source>
   <translation>Des pièces des panneaux {panels} sont des éclats de moins de {least} mm ; la plus étroite, position {a} du panneau {b}, est large de {width} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Places on a photograph are pairs of numbers: column and row.</source>
   <translation>Les places sur une photo sont des paires de nombres : colonne et ligne.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Point {number} (column {column}, row {row}) lies outside the picture of {columns} x {rows} pixels; click it on the picture.</source>
   <translation>Le point {number} (colonne {column}, ligne {row}) est hors de l'image de {columns} x {rows} pixels ; cliquez-le sur l'image.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Positions {pieces} show the other side of their leaves, so light and stain read otherwise on them: natural where leaves are turned over, not a defect.</source>
   <translation>Les positions {pieces} montrent l'autre côté de leurs feuilles, lumière et teinte s'y lisent donc autrement : naturel là où des feuilles sont retournées, pas un défaut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Positions {pieces} show the other side of their leaves, so tight and loose sides alternate and light and stain read in bars: natural to a book match, not a defect.</source>
   <translation>Les positions {pieces} montrent l'autre côté de leurs feuilles, côtés fermés et ouverts alternent donc et lumière et teinte se lisent en barres : naturel au livre ouvert, pas un défaut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Print at 100 %, do not fit to page. Lay a rule on both bars: {bar} mm, or print again.</source>
   <translation>Imprimez à 100 %, sans ajuster à la page. Posez une règle sur les deux barres : {bar} mm, sinon réimprimez.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial book match</source>
   <translation>Frisage rayonnant en livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Radial match</source>
   <translation>Frisage rayonnant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Radial match in strips</source>
   <translation>Frisage rayonnant en bandes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Radial match in two rings</source>
   <translation>Frisage rayonnant en deux couronnes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial match off the middle</source>
   <translation>Frisage rayonnant hors du milieu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial match round a disc</source>
   <translation>Frisage rayonnant autour d'un disque</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Radial slip match</source>
   <translation>Frisage rayonnant glissé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Random match</source>
   <translation>Mélangé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/residual.py" />
   <source>Register by the pieces of the match, take an order whose largest step is less, or another place on the leaves.</source>
   <translation>Calez d'après les pièces du frisage, prenez un ordre dont le plus grand pas est moindre, ou un autre endroit des feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Reverse box match</source>
   <translation>Quatre miroirs inversé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Reverse diamond match</source>
   <translation>Losange inversé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Reverse slip match</source>
   <translation>Glissé alterné</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>Ring planes at {slope} deg to the leaf would wander as far.</source>
   <translation>Des plans de cernes à {slope} degrés de la feuille dériveraient autant.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>Row upon row, each in order, end to end up the wall.</source>
   <translation>Rang sur rang, chacun dans l'ordre, bout à bout jusqu'en haut du mur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>Row {row} has more cells than the first row names; put a text or number that holds the separator of cells into quotation marks.</source>
   <translation>La ligne {row} a plus de cellules que la première ligne n'en nomme ; mettez entre guillemets un texte ou nombre qui contient le séparateur de cellules.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>Row {row} has the number {cell} where the currency should be; put a number that holds the separator of cells into quotation marks.</source>
   <translation>La ligne {row} a le nombre {cell} là où devrait être la devise ; mettez entre guillemets un nombre qui contient le séparateur de cellules.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>Row {row}, column {column}: {said}</source>
   <translation>Ligne {row}, colonne {column} : {said}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Running match</source>
   <translation>Courant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Say in which air the panel is made and in which it will stand.</source>
   <translation>Dites dans quel air le panneau est fait et dans lequel il sera.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>Say the scale of the photograph in one way: mm per pixel, two points and their distance, four corners and the rectangle's width and length, or paper marks.</source>
   <translation>Dites l'échelle de la photo d'une seule façon : mm par pixel, deux points et leur distance, quatre coins et largeur et longueur du rectangle, ou repères en papier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>See that each mark has its own letter, and click on pins closer up; else photograph again from straight above and from nearer, sharp and in even light.</source>
   <translation>Voyez que chaque repère a sa propre lettre, et cliquez les pions de plus près ; sinon photographiez à nouveau bien d'aplomb et de plus près, net et en lumière égale.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Slip match</source>
   <translation>Glissé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>Slip, centre book match</source>
   <translation>Glissé, centre en livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>So few leaves share no drift that could be told from how each photograph lay.</source>
   <translation>Si peu de feuilles n'ont pas de dérive commune qui se distingue de la pose de chaque photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Stacked so, the usable areas of the leaves have no place in common.</source>
   <translation>Empilées ainsi, les surfaces utiles des feuilles n'ont aucun endroit en commun.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Stacked so, the {leaves} leaves have {across} x {along} mm in common, {lost_along} mm of length and {lost_across} mm of width less than the smallest leaf.</source>
   <translation>Empilées ainsi, les {leaves} feuilles ont {across} x {along} mm en commun, {lost_along} mm de longueur et {lost_across} mm de largeur de moins que la plus petite feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Stick {count} on each leaf before it is photographed: far apart, flat, arrow up along the</source>
   <translation>Sur chaque feuille, avant de la photographier, collez : {count} ; écartés, à plat, flèche vers le haut le long du</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>Stopped: none of the photographs was brought in.</source>
   <translation>Arrêté : aucune des photos n'a été importée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Strips slant away from both sides of an upright centre line.</source>
   <translation>Des bandes partent en biais des deux côtés d'une ligne médiane debout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Strips {strip} mm wide are slivers; take {least} mm or more.</source>
   <translation>Des bandes larges de {strip} mm sont des éclats ; prenez {least} mm ou plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>Strips {strip} mm wide need {count} leaves and from leaf {first} on there are {have}; take strips of {wider} mm, an earlier first leaf, or a larger bundle.</source>
   <translation>Des bandes larges de {strip} mm demandent {count} feuilles et depuis la feuille {first} il y en a {have} ; prenez des bandes de {wider} mm, une première feuille plus tôt, ou une plus grande liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Take a backer of the same thickness and a wood that moves alike.</source>
   <translation>Prenez un contre-parement de même épaisseur et d'un bois qui travaille pareil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Take a core of sheet goods, or lip only the sides that run along its grain.</source>
   <translation>Prenez une âme en panneau dérivé, ou n'alaisez que les côtés qui suivent son fil.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Take a core of sheet goods; else fix the top so that it can move, and veneer across the core's grain.</source>
   <translation>Prenez une âme en panneau dérivé ; sinon fixez le plateau de façon qu'il puisse travailler, et plaquez en travers du fil de l'âme.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Take an even number of ways, with every second piece turned.</source>
   <translation>Prenez un nombre pair de secteurs, une pièce sur deux retournée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Take another number of leaves or width of strip.</source>
   <translation>Prenez un autre nombre de feuilles ou une autre largeur de bande.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>Take fewer panels, or a bundle with {missing} more.</source>
   <translation>Prenez moins de panneaux, ou une liasse avec {missing} de plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Take fewer pieces, or a bundle with {missing} more.</source>
   <translation>Prenez moins de pièces, ou une liasse avec {missing} de plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Take fewer ways, or a bundle with {missing} more.</source>
   <translation>Prenez moins de secteurs, ou une liasse avec {missing} de plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Take fewer ways, or plan a disc at the centre that hides the tips.</source>
   <translation>Prenez moins de secteurs, ou prévoyez au centre un disque qui cache les pointes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Take mitres of 45 degrees: two of them mirror.</source>
   <translation>Prenez des onglets de 45 degrés : deux d'entre eux sont en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>Take other leaves, or less margin.</source>
   <translation>Prenez d'autres feuilles, ou moins de marge.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Tape its strips before they are cut, and join each from as few pieces as can be.</source>
   <translation>Collez du papier sur ses bandes avant de les couper, et faites chacune d'aussi peu de morceaux que possible.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>That leaves nothing of leaf {leaf}, whose usable area is {width} x {length} mm; take off less.</source>
   <translation>Cela ne laisse rien de la feuille {leaf}, dont la surface utile est de {width} x {length} mm ; enlevez moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>That match cannot be laid over a run of panels; take a side, end, four-piece or plain radial match.</source>
   <translation>Ce frisage ne peut pas être posé sur une série de panneaux ; prenez côte à côte, joint en bout, quatre pièces ou rayonnant simple.</translation>
  </message>
  <message>
   <location filename="veneerwb/packages.py" />
   <source>The Python package {package} is there but cannot be loaded ({why}); remove it, run this in a terminal and start FreeCAD again: {command}</source>
   <translation>Le paquet Python {package} est là mais ne peut pas être chargé ({why}) ; retirez-le, exécutez ceci dans un terminal et redémarrez FreeCAD : {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>The angle between figure and leaf cannot be {slope} degrees; give one from 0 to {most}.</source>
   <translation>L'angle entre dessin et feuille ne peut pas être {slope} degrés ; donnez-en un de 0 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The back of leaf {leaf} and the face of leaf {other} are one surface ({likeness} alike, and a step of one leaf is {step}).</source>
   <translation>Le dos de la feuille {leaf} et la face de la feuille {other} sont une seule surface ({likeness} de ressemblance, et un pas d'une feuille est {step}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} does not fit its face: the outlines agree on only {share} % of their length. See whether both photographs are of this leaf and whole, and whether the back's was mirrored already.</source>
   <translation>Le dos de la feuille {leaf} ne va pas à sa face : les contours ne s'accordent que sur {share} % de leur longueur. Voyez si les deux photos sont de cette feuille et entières, et si celle du dos était déjà en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The back of leaf {leaf} is not clearly one surface with any face (at best {likeness} alike, and a step of one leaf is {step}).</source>
   <translation>Le dos de la feuille {leaf} n'est pas clairement une même surface avec une face (au mieux {likeness} de ressemblance, et un pas d'une feuille est {step}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} is tied by its outline, turned by {turn} deg; the two outlines agree on {share} % of their length, where they lie {rms} mm apart (rms).</source>
   <translation>Le dos de la feuille {leaf} est lié par son contour, tourné de {turn} degrés ; les deux contours s'accordent sur {share} % de leur longueur, où ils sont à {rms} mm (rms).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} is tied by {marks} marks, which lie {rms} mm apart (rms).</source>
   <translation>Le dos de la feuille {leaf} est lié par {marks} repères, à {rms} mm l'un de l'autre (rms).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The back of leaf {leaf} was not photographed; add its photograph first.</source>
   <translation>Le dos de la feuille {leaf} n'a pas été photographié ; ajoutez d'abord sa photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>The back of leaf {leaf} was not photographed; its face is shown, mirrored.</source>
   <translation>Le dos de la feuille {leaf} n'a pas été photographié ; sa face est montrée, en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The backer ({wood}, {backer} mm) is unlike the show veneer ({show_wood}, {show} mm), so the two sides pull unlike and the panel may cup.</source>
   <translation>Le contre-parement ({wood}, {backer} mm) diffère du parement ({show_wood}, {show} mm), les deux côtés tirent donc autrement et le panneau peut se voiler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>The backs agree to {spread} mm.</source>
   <translation>Les dos s'accordent à {spread} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The backs at positions {pieces} were not photographed: their pictures are taken from the neighbouring leaf or the face, and the seams may miss by {may_miss} mm {basis}.</source>
   <translation>Les dos aux positions {pieces} n'ont pas été photographiés : leurs images sont prises de la feuille voisine ou de la face, et les joints peuvent être décalés de {may_miss} mm {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The backs contradict each other: part of the bundle is numbered the other way, or leaves are out of place.</source>
   <translation>Les dos se contredisent : une partie de la liasse est numérotée dans l'autre sens, ou des feuilles sont hors de leur place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>The backs differ by {spread} mm, so that this wander holds for no other leaf; photograph all that are turned.</source>
   <translation>Les dos diffèrent de {spread} mm, cette dérive ne vaut donc pour aucune autre feuille ; photographiez tous ceux qui sont retournés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>The blanks at positions {pieces} reach up to {overhang} mm off the usable area of their leaves ({leaves}), with a margin of {margin} mm.</source>
   <translation>Les ébauches aux positions {pieces} dépassent jusqu'à {overhang} mm de la surface utile de leurs feuilles ({leaves}), avec une marge de {margin} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The border is a ring in one, so its grain runs one way all round and not with the edge.</source>
   <translation>La bordure est un anneau d'une pièce, son fil va donc dans un seul sens tout autour et non avec le bord.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The border is of {count} parts, and its grain runs on from one to the next only if they come from one run of veneer in order.</source>
   <translation>La bordure est de {count} pièces, et son fil ne passe de l'une à l'autre que si elles viennent d'une suite de placage dans l'ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/renumbering.py" />
   <source>The bundle has no leaf {leaf}, so that it cannot be given another number.</source>
   <translation>La liasse n'a pas de feuille {leaf}, elle ne peut donc pas recevoir un autre numéro.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>The bundle has no leaf {leaf}; it has {numbers}.</source>
   <translation>La liasse n'a pas de feuille {leaf} ; elle a {numbers}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>The bundle has no leaves; add at least one photograph.</source>
   <translation>La liasse n'a pas de feuilles ; ajoutez au moins une photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The climates cannot be {value!r:.40}; give two: the air that the panel is made in, and the air that it will stand in.</source>
   <translation>Les climats ne peuvent pas être {value!r:.40} ; donnez-en deux : l'air où le panneau est fait, et l'air où il sera.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The core is solid and moves across its grain, and the lipping across its ends does not move along with it: their joint will give, or the core split.</source>
   <translation>L'âme est massive et travaille en travers du fil, et l'alaise de ses bouts ne travaille pas avec elle : leur joint cédera, ou l'âme se fendra.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The corners do not look like a rectangle of {width} x {length} mm; check both sizes, and that each corner is clicked once.</source>
   <translation>Les coins ne ressemblent pas à un rectangle de {width} x {length} mm ; vérifiez les deux tailles, et que chaque coin est cliqué une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The crossbands differ in thickness, wood or grain, so the panel may cup.</source>
   <translation>Les plis croisés diffèrent en épaisseur, bois ou fil, le panneau peut donc se voiler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The edge of the inner field is a seam, along which no oversize is cut; give the oversize to the outer band.</source>
   <translation>Le bord du champ intérieur est un joint, le long duquel aucune surcote n'est coupée ; donnez la surcote à la bande extérieure.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>The ends of a boat shape cannot be {ends} mm wide where its middle is {width} mm: give less than {width} mm.</source>
   <translation>Les extrémités d'une forme bateau ne peuvent pas être larges de {ends} mm là où son milieu a {width} mm : donnez moins de {width} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The figure behind the gaps ({gaps}, up to {gap} mm wide) is lost.</source>
   <translation>Le dessin derrière les jeux ({gaps}, larges de jusqu'à {gap} mm) est perdu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The figure is more alike end for end than the way the outline fits: see whether both photographs are of this leaf.</source>
   <translation>Le dessin ressemble plus tête-bêche que dans le sens où va le contour : voyez si les deux photos sont de cette feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The figure is too plain to tell: it runs so straight that it looks the same all along the leaf, and neither the order nor a gap can be proved from these photographs.</source>
   <translation>Le dessin est trop uni pour le dire : il est si droit qu'il est pareil tout le long de la feuille, et ni l'ordre ni une lacune ne peuvent être prouvés de ces photos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The figure's wander follows from the slope of {slope} deg given: {along} mm along from leaf to leaf (minus: towards the photographs' lower edge).</source>
   <translation>La dérive du dessin découle de la pente donnée de {slope} degrés : {along} mm en long de feuille à feuille (moins : vers le bord bas des photos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The figure's wander was given: {across} mm across and {along} mm along from leaf to leaf (minus: to the left, and towards the photographs' lower edge).</source>
   <translation>La dérive du dessin a été donnée : {across} mm en travers et {along} mm en long de feuille à feuille (moins : vers la gauche, et vers le bord bas des photos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The file name {file} holds no number; put the number of the leaf in it.</source>
   <translation>Le nom de fichier {file} ne contient pas de nombre ; mettez-y le numéro de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} cannot be read ({reason}); check its name.</source>
   <translation>Le fichier {file} ne peut pas être lu ({reason}) ; vérifiez son nom.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/files.py" />
   <source>The file {file} could not be written ({reason}); choose a folder that you may write to and that has room.</source>
   <translation>Le fichier {file} n'a pas pu être écrit ({reason}) ; choisissez un dossier où vous pouvez écrire et où il y a de la place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} has more than {rows} rows or {columns} columns, which is no inventory; choose another file.</source>
   <translation>Le fichier {file} a plus de {rows} lignes ou de {columns} colonnes, ce n'est pas un inventaire ; choisissez un autre fichier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} has the column {column} twice; keep one.</source>
   <translation>Le fichier {file} a deux fois la colonne {column} ; gardez-en une.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The file {file} has {size} MB and at most {most} can be read; save it at a smaller size.</source>
   <translation>Le fichier {file} a {size} Mo et au plus {most} sont lisibles ; enregistrez-le en plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} holds none of the columns of an inventory; its first line must name them, such as {columns}.</source>
   <translation>Le fichier {file} ne contient aucune des colonnes d'un inventaire ; sa première ligne doit les nommer, comme {columns}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The file {file} is not a picture that can be read; give a PNG, JPEG, TIFF, BMP or WebP.</source>
   <translation>Le fichier {file} n'est pas une image lisible ; donnez PNG, JPEG, TIFF, BMP ou WebP.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The file {file} is not text in UTF-8; save it as CSV in UTF-8.</source>
   <translation>Le fichier {file} n'est pas du texte en UTF-8 ; enregistrez-le en CSV en UTF-8.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The files {first} and {second} both carry the number {number}; rename one.</source>
   <translation>Les fichiers {first} et {second} portent tous deux le numéro {number} ; renommez-en un.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The folder {folder} cannot be read ({reason}); check its name.</source>
   <translation>Le dossier {folder} ne peut pas être lu ({reason}) ; vérifiez son nom.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The folder {folder} holds no photos; it needs PNG, JPEG, TIFF, BMP or WebP files.</source>
   <translation>Le dossier {folder} ne contient pas de photos ; il lui faut des fichiers PNG, JPEG, TIFF, BMP ou WebP.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The gains of a photo's light must be three numbers from {least} to {most}: for red, green and blue.</source>
   <translation>Les gains de la lumière d'une photo doivent être trois nombres de {least} à {most} : pour rouge, vert et bleu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The grain of a crossband lies at {angle} degrees to that of the core and does not cross it.</source>
   <translation>Le fil d'un pli croisé est à {angle} degrés de celui de l'âme et ne le croise pas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The grain of the border lies across it: over its {width} mm it is short and breaks in the hand.</source>
   <translation>Le fil de la bordure est en travers : sur ses {width} mm il est court et casse dans la main.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The inlay reaches {reach} mm from the centre and the field only {room} mm; give it a diameter less than {most} mm.</source>
   <translation>L'incrustation va à {reach} mm du centre et le champ seulement à {room} mm ; donnez-lui un diamètre de moins de {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The inlay reaches {reach} mm from the centre and the field only {room} mm; give it an outer radius less than {most} mm.</source>
   <translation>L'incrustation va à {reach} mm du centre et le champ seulement à {room} mm ; donnez-lui un rayon extérieur de moins de {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The inner edge of a border {width} mm wide runs through the opening near ({x}, {y}): make the border narrower than {most} mm, or move the opening.</source>
   <translation>Le bord intérieur d'une bordure large de {width} mm traverse l'ouverture près de ({x}, {y}) : faites la bordure plus étroite que {most} mm, ou déplacez l'ouverture.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The inner field does not lie within the top ({top}); make it smaller, or move its centre.</source>
   <translation>Le champ intérieur n'est pas à l'intérieur du plateau ({top}) ; faites-le plus petit, ou déplacez son centre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The inner field does not lie within the top ({top}); make it {most} mm or less.</source>
   <translation>Le champ intérieur n'est pas à l'intérieur du plateau ({top}) ; faites-le de {most} mm ou moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The inner field takes the leaves up to the last one, {last}, and none is left for the outer band; take fewer ways, or a larger bundle.</source>
   <translation>Le champ intérieur prend les feuilles jusqu'à la dernière, {last}, et aucune ne reste pour la bande extérieure ; prenez moins de secteurs, ou une plus grande liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>The joints of a {kind} {what} {width} mm wide cannot be made on this edge; make it at most {most} mm wide.</source>
   <translation>{what} ({kind}), large de {width} mm : les joints ne peuvent pas être faits sur ce bord ; faites-le large de {most} mm au plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>The last number in the file name {file} is {number}, which no leaf has; give each file the number of its leaf, from 1 to {most}.</source>
   <translation>Le dernier nombre du nom de fichier {file} est {number}, qu'aucune feuille n'a ; donnez à chaque fichier le numéro de sa feuille, de 1 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>The last of the strips would be {last} mm wide, a sliver under {least} mm: take strips of {narrower} mm or of {wider} mm.</source>
   <translation>La dernière des bandes serait large de {last} mm, un éclat de moins de {least} mm : prenez des bandes de {narrower} mm ou de {wider} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The leaf fills the picture, so that no background is left to measure the light on; choose a patch instead.</source>
   <translation>La feuille remplit l'image, il ne reste donc pas de fond où mesurer la lumière ; choisissez plutôt une plage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The leaf is {share} % larger than the others; check it.</source>
   <translation>La feuille est plus grande que les autres de {share} % ; vérifiez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The leaf is {share} % smaller than the others; check it.</source>
   <translation>La feuille est plus petite que les autres de {share} % ; vérifiez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The leaf runs out of the picture along {share} % of its outline; what lies beyond is not known.</source>
   <translation>La feuille sort de l'image sur {share} % de son contour ; ce qu'il y a au-delà n'est pas connu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>The leaf's marks lie in one place, so nothing can be measured from them; locate them again.</source>
   <translation>Les repères de la feuille sont au même endroit, rien ne peut donc être mesuré d'eux ; situez-les à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The leaf's outline is either found or drawn; choose one.</source>
   <translation>Le contour de la feuille est soit trouvé soit tracé ; choisissez.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/maps.py" />
   <source>The leaves are {width} x {length} mm together, which is too much to search; take fewer leaves or a larger top, or check the scale of the photographs.</source>
   <translation>Les feuilles font ensemble {width} x {length} mm, ce qui est trop à chercher ; prenez moins de feuilles ou un plus grand plateau, ou vérifiez l'échelle des photos.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>The leaves have {room} mm in common, which with an oversize of {oversize} mm on both sides leaves no strip; take less oversize or wider leaves.</source>
   <translation>Les feuilles ont {room} mm en commun, ce qui avec une surcote de {oversize} mm des deux côtés ne laisse pas de bande ; prenez moins de surcote ou des feuilles plus larges.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The leaves of a run go on from panel to panel, so they cannot be listed for one; take them in sequence from a first leaf.</source>
   <translation>Les feuilles d'une série passent de panneau en panneau, elles ne peuvent donc pas être énumérées pour un seul ; prenez-les en suite depuis une première feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/bundles.py" />
   <source>The leaves of the first bundle are {first} mm thick and those of the second {second} mm, which would not lie flush; take two bundles of one thickness.</source>
   <translation>Les feuilles de la première liasse ont {first} mm d'épaisseur et celles de la seconde {second} mm, elles n'affleureraient pas ; prenez deux liasses d'une même épaisseur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>The leaves {numbers} are given twice; give each number once.</source>
   <translation>Les feuilles {numbers} sont données deux fois ; donnez chaque numéro une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>The light is as photographed.</source>
   <translation>La lumière est telle que photographiée.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The light must be measured in the same way on all photographs of a batch.</source>
   <translation>La lumière doit être mesurée de la même façon sur toutes les photos d'un lot.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>The light to even to must be red, green and blue, each above 0 and not above 1.</source>
   <translation>La lumière à laquelle égaliser doit être rouge, vert et bleu, chacun au-dessus de 0 et pas au-dessus de 1.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>The line between the rings crosses an opening or the disc; make the inner field larger or smaller.</source>
   <translation>La ligne entre les couronnes croise une ouverture ou le disque ; faites le champ intérieur plus grand ou plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The line of the {kind} has one point; draw at least two.</source>
   <translation>La ligne ({kind}) a un point ; tracez-en au moins deux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) grows by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free, which may show through the veneer over it.</source>
   <translation>L'alaise ({wood}, {sawn}) gonfle de {across} mm dans sa largeur de {width} mm et de {up} mm dans sa hauteur de {height} mm quand son humidité va de {before} à {after} %, si elle était libre, ce qui peut se voir à travers le placage dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) grows by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>L'alaise ({wood}, {sawn}) gonfle de {across} mm dans sa largeur de {width} mm et de {up} mm dans sa hauteur de {height} mm quand son humidité va de {before} à {after} %, si elle était libre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) shrinks by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free, which may show through the veneer over it.</source>
   <translation>L'alaise ({wood}, {sawn}) se rétracte de {across} mm dans sa largeur de {width} mm et de {up} mm dans sa hauteur de {height} mm quand son humidité va de {before} à {after} %, si elle était libre, ce qui peut se voir à travers le placage dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The lipping ({wood}, {sawn}) shrinks by {across} mm in its width of {width} mm and by {up} mm in its height of {height} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>L'alaise ({wood}, {sawn}) se rétracte de {across} mm dans sa largeur de {width} mm et de {up} mm dans sa hauteur de {height} mm quand son humidité va de {before} à {after} %, si elle était libre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The log's place on each leaf was given, by targets or outlines, so the figure's wander is measured: {across} mm across and {along} mm along from leaf to leaf in the mean (minus: to the left, and towards the photographs' lower edge).</source>
   <translation>La place de la grume sur chaque feuille a été donnée, par repères ou contours, la dérive du dessin est donc mesurée : {across} mm en travers et {along} mm en long de feuille à feuille en moyenne (moins : vers la gauche, et vers le bord bas des photos).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The log's place on each leaf was given, by targets or outlines. The figure could not be compared, so how it wanders is not known.</source>
   <translation>La place de la grume sur chaque feuille a été donnée, par repères ou contours. Le dessin n'a pas pu être comparé, sa dérive n'est donc pas connue.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/__init__.py" />
   <source>The margin cannot be {value}; give 0 or more.</source>
   <translation>La marge ne peut pas être {value} ; donnez 0 ou plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The mark at column {column}, row {row} of the photo {photo} is too blurred to be centred; photograph again with the leaf in focus and the camera at rest.</source>
   <translation>Le repère à la colonne {column}, ligne {row} de la photo {photo} est trop flou pour être centré ; photographiez à nouveau, la feuille nette et l'appareil immobile.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The mark at column {column}, row {row} of the photo {photo} is {size} pixels across, and {least} are needed; photograph from nearer or with more pixels.</source>
   <translation>Le repère à la colonne {column}, ligne {row} de la photo {photo} fait {size} pixels, et il en faut {least} ; photographiez de plus près ou avec plus de pixels.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The mark at column {column}, row {row} of the photo {photo} runs out of the picture; use another mark, or photograph the leaf again with all marks in view.</source>
   <translation>Le repère à la colonne {column}, ligne {row} de la photo {photo} sort de l'image ; utilisez un autre repère, ou photographiez la feuille à nouveau avec tous les repères visibles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>The marks do not lie as their places say; see that each has its own letter.</source>
   <translation>Les repères ne sont pas comme leurs places le disent ; voyez que chacun a sa propre lettre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>The marks lie in one place and do not tell how the leaf is turned; take marks that lie further apart.</source>
   <translation>Les repères sont au même endroit et ne disent pas comment la feuille est tournée ; prenez des repères plus éloignés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>The marks lie less than {least} mm apart, too near to tell a turn; use marks far apart.</source>
   <translation>Les repères sont à moins de {least} mm l'un de l'autre, trop près pour dire une rotation ; utilisez des repères bien écartés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>The marks of leaf {leaf} can be told to {unsure} mm only, and {tolerance} mm is asked: the photograph neither confirms nor contradicts its register.</source>
   <translation>Les repères de la feuille {leaf} ne se lisent qu'à {unsure} mm, et {tolerance} mm sont demandés : la photo ne confirme ni ne contredit son calage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/marks.py" />
   <source>The marks of leaf {leaf} cannot be read; give each as x and y in mm.</source>
   <translation>Les repères de la feuille {leaf} sont illisibles ; donnez chacun en x et y en mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>The match's centre lies outside the field, so no inlay can be set there; move it or leave the inlay out.</source>
   <translation>Le centre du frisage est hors du champ, aucune incrustation ne peut donc y être posée ; déplacez-le ou omettez l'incrustation.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The middle may be off by {error} mm; mark points on both sides instead.</source>
   <translation>Le milieu peut être faux de {error} mm ; marquez plutôt des points des deux côtés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>The narrowest inner piece, at position {a}, is {width} mm wide. Compared with the least widths of face grade AA in the Architectural Woodwork Standards, 1st ed. (2009, superseded), p. 84, {plain} mm plain sliced and {quartered} mm quartered or rift, outer pieces exempt, that is {reads}.</source>
   <translation>La pièce intérieure la plus étroite, à la position {a}, est large de {width} mm. Comparé aux largeurs minimales de la qualité de parement AA des Architectural Woodwork Standards, 1re éd. (2009, remplacée), p. 84, {plain} mm tranché à plat et {quartered} mm sur quartier ou faux quartier, pièces extérieures exemptées, c'est {reads}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/openings.py" />
   <source>The opening about {x}, {y} mm does not lie within a single part of the {layer}; move it, or change the widths of the strips or the size of the inlay.</source>
   <translation>L'ouverture près de {x}, {y} mm n'est pas dans un seul élément de la couche {layer} ; déplacez-la, ou changez les largeurs des bandes ou la taille de l'incrustation.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The opening near ({x}, {y}) lies outside the outline or touches it or another opening; move it, or cut the outline there.</source>
   <translation>L'ouverture près de ({x}, {y}) est hors du contour ou le touche, lui ou une autre ouverture ; déplacez-la, ou coupez le contour là.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The order cannot be told: leaves further apart look as much like each other as neighbours do.</source>
   <translation>L'ordre ne peut pas être dit : des feuilles plus éloignées se ressemblent autant que des voisines.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The outline drawn on the {side} of leaf {leaf} encloses nothing; draw it round the leaf.</source>
   <translation>Le contour tracé ({side}) de la feuille {leaf} n'enferme rien ; tracez-le autour de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The outline drawn on the {side} of leaf {leaf} lies beside its photograph; draw it round the leaf.</source>
   <translation>Le contour tracé ({side}) de la feuille {leaf} est à côté de sa photo ; tracez-le autour de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The outline near ({x}, {y}) lies within an opening, and a top is of one piece; leave it out, or make it a top of its own.</source>
   <translation>Le contour près de ({x}, {y}) est dans une ouverture, et un plateau est d'une pièce ; omettez-le, ou faites-en un plateau à part.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The outline of leaf {leaf} is no area on its photograph; draw it round the leaf, without crossing.</source>
   <translation>Le contour de la feuille {leaf} n'est pas une surface sur sa photo ; tracez-le autour de la feuille, sans croisement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The outline of the leaf encloses nothing of the photograph; draw it on the leaf.</source>
   <translation>Le contour de la feuille n'enferme rien de la photo ; tracez-le sur la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The outline of the {kind} crosses or touches itself near x {x}, y {y} mm; draw it again without crossing.</source>
   <translation>Le contour ({kind}) se croise ou se touche près de x {x}, y {y} mm ; retracez-le sans croisement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The outline of the {kind} encloses nothing; draw it round the fault.</source>
   <translation>Le contour ({kind}) n'enferme rien ; tracez-le autour du défaut.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>The oversize cannot be {value} mm; give at most {most}.</source>
   <translation>La surcote ne peut pas être de {value} mm ; donnez au plus {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The panel has no backer: veneered on one side only, it will cup.</source>
   <translation>Le panneau n'a pas de contre-parement : plaqué d'un seul côté, il se voilera.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The panel takes {used} leaves, which leaves {left} spare where {spares} are asked for.</source>
   <translation>Le panneau prend {used} feuilles, ce qui en laisse {left} de réserve là où {spares} sont demandées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The panel takes {used} leaves; {left} stay over.</source>
   <translation>Le panneau prend {used} feuilles ; il en reste {left}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>The photo</source>
   <translation>La photo</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} cannot be opened ({reason}); copy it to a folder that you may read.</source>
   <translation>La photo {file} ne peut pas être ouverte ({reason}) ; copiez-la dans un dossier que vous pouvez lire.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} has changed since it was read; read it again.</source>
   <translation>La photo {file} a changé depuis sa lecture ; relisez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} has {megapixels} megapixels and at most {most} can be read; save it at a smaller size.</source>
   <translation>La photo {file} a {megapixels} mégapixels et au plus {most} sont lisibles ; enregistrez-la en plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is a BMP packed by run lengths (RLE), which is not read; save it as a PNG.</source>
   <translation>La photo {file} est un BMP compressé par plages (RLE), ce qui n'est pas lu ; enregistrez-la en PNG.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is an empty file; copy it again.</source>
   <translation>La photo {file} est un fichier vide ; copiez-la à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is damaged or cut short; copy it again or save it anew.</source>
   <translation>La photo {file} est abîmée ou tronquée ; copiez-la à nouveau ou réenregistrez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>The photo {file} is only {columns} x {rows} pixels; give one of the whole leaf.</source>
   <translation>La photo {file} n'a que {columns} x {rows} pixels ; donnez-en une de toute la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The photo {photo} is burnt out at column {column}, row {row}, so that no mark is seen; photograph again with less exposure or without glare.</source>
   <translation>La photo {photo} est brûlée à la colonne {column}, ligne {row}, aucun repère n'y est donc visible ; photographiez à nouveau avec moins d'exposition ou sans reflet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The photograph is {share} % larger in mm per pixel than the others; check it.</source>
   <translation>La photo est plus grande que les autres de {share} % en mm par pixel ; vérifiez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>The photograph is {share} % smaller in mm per pixel than the others; check it.</source>
   <translation>La photo est plus petite que les autres de {share} % en mm par pixel ; vérifiez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photograph of leaf {leaf} lies across those of the other leaves; turn it by 90 degrees.</source>
   <translation>La photo de la feuille {leaf} est en travers de celles des autres feuilles ; tournez-la de 90 degrés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/grid.py" />
   <source>The photograph of leaf {leaf} shows no figure within its usable area (it is black, white or even); photograph it again or leave it out.</source>
   <translation>La photo de la feuille {leaf} ne montre pas de dessin dans sa surface utile (elle est noire, blanche ou unie) ; photographiez-la à nouveau ou omettez-la.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The photograph of the back of leaf {leaf} shows its face again ({likeness} alike, and a step of one leaf is {step}); photograph the other side.</source>
   <translation>La photo du dos de la feuille {leaf} montre encore sa face ({likeness} de ressemblance, et un pas d'une feuille est {step}) ; photographiez l'autre côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The photograph of the {side} of leaf {leaf} does not show the leaf on a plain background, so that its outline cannot tie the two sides; draw the outline, or mark the same points on both sides.</source>
   <translation>La photo ({side}) de la feuille {leaf} ne montre pas la feuille sur un fond uni, son contour ne peut donc pas lier les deux côtés ; tracez le contour, ou marquez les mêmes points des deux côtés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>The photographs of leaf {leaf} are cut off at the leaf's edge, so that its outline cannot tie the two sides; mark the same points on both sides.</source>
   <translation>Les photos de la feuille {leaf} sont coupées au bord de la feuille, son contour ne peut donc pas lier les deux côtés ; marquez les mêmes points des deux côtés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>The photographs of {backs} backs do not show how far the figure wanders from surface to surface; book seams may miss by {miss} mm {basis}.</source>
   <translation>Les photos de {backs} dos ne montrent pas de combien le dessin dérive de surface à surface ; les joints en livre ouvert peuvent être décalés de {miss} mm {basis}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photographs prove an order of the {leaves} leaves, and one suspect.</source>
   <translation>Les photos prouvent un ordre des {leaves} feuilles, et un suspect.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photographs prove an order of the {leaves} leaves, and {suspects} suspects.</source>
   <translation>Les photos prouvent un ordre des {leaves} feuilles, et {suspects} suspects.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>The photographs prove the order of the {leaves} leaves as they are numbered.</source>
   <translation>Les photos prouvent l'ordre des {leaves} feuilles telles qu'elles sont numérotées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The picture is too slanted to be squared so far from the rectangle; keep less margin, or photograph from straight above.</source>
   <translation>L'image est trop oblique pour être redressée si loin du rectangle ; gardez moins de marge, ou photographiez bien d'aplomb.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>The picture of {columns} x {rows} pixels is too small to find a leaf on it; give the photograph itself.</source>
   <translation>L'image de {columns} x {rows} pixels est trop petite pour y trouver une feuille ; donnez la photo même.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>The picture shows no plain background; photograph the leaf on a sheet or table of one colour that shows all round it, or draw its outline by hand.</source>
   <translation>L'image ne montre pas de fond uni ; photographiez la feuille sur une table ou une planche d'une seule couleur visible tout autour, ou tracez son contour à la main.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>The pieces differ and are cut as single pieces, set out {single} times: they take {apart} m2 of the leaves; {lots} lots by shape take as much, one stack {together} m2.</source>
   <translation>Les pièces diffèrent et sont coupées une à une, tracées {single} fois : elles prennent {apart} m2 des feuilles ; {lots} lots par forme prennent autant, une pile {together} m2.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>The pieces differ and are cut in {lots} lots by shape, each set out by itself: they take {apart} m2 of the leaves; as one stack, set out once, {together} m2.</source>
   <translation>Les pièces diffèrent et sont coupées en {lots} lots par forme, chacun tracé à part : elles prennent {apart} m2 des feuilles ; en une pile, tracée une fois, {together} m2.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>The pieces differ: cut as one stack they take {together} m2 of the leaves, parted into {lots} lots by shape {apart} m2, {saved} % less.</source>
   <translation>Les pièces diffèrent : coupées en une pile elles prennent {together} m2 des feuilles, partagées en {lots} lots par forme {apart} m2, {saved} % de moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>The place of a mark is no number; mark it again.</source>
   <translation>La place d'un repère n'est pas un nombre ; marquez-le à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>The place of the mark lies outside the photo {photo} of {columns} x {rows} pixels; click on the mark.</source>
   <translation>La place du repère est hors de la photo {photo} de {columns} x {rows} pixels ; cliquez sur le repère.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/chain.py" />
   <source>The region to register by lies off the usable area of leaf {leaf}; choose a region that every leaf shows.</source>
   <translation>La région d'après laquelle caler est hors de la surface utile de la feuille {leaf} ; choisissez une région que chaque feuille montre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/chain.py" />
   <source>The region to register by must be an area on the bundle; give a polygon in mm.</source>
   <translation>La région d'après laquelle caler doit être une surface sur la liasse ; donnez un polygone en mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The rings differ by {share} %; photograph it square on, or use four marks.</source>
   <translation>Les anneaux diffèrent de {share} % ; photographiez bien d'aplomb, ou utilisez quatre repères.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The run has no panels; choose at least one face.</source>
   <translation>La série n'a pas de panneaux ; choisissez au moins une face.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>The scale cannot be {factor}; give more than 0 and at most {most}.</source>
   <translation>L'échelle ne peut pas être {factor} ; donnez plus de 0 et au plus {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/maps.py" />
   <source>The search was stopped; nothing has changed.</source>
   <translation>La recherche a été arrêtée ; rien n'a changé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The second bundle begins with panel {b} (leaf {after}), beside panel {a} of the first (up to leaf {before}), counted as {missing} missing leaf.</source>
   <translation>La seconde liasse commence au panneau {b} (feuille {after}), à côté du panneau {a} de la première (jusqu'à la feuille {before}), compté pour {missing} feuille manquante.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The second bundle begins with panel {b} (leaf {after}), beside panel {a} of the first (up to leaf {before}), counted as {missing} missing leaves.</source>
   <translation>La seconde liasse commence au panneau {b} (feuille {after}), à côté du panneau {a} de la première (jusqu'à la feuille {before}), compté pour {missing} feuilles manquantes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The six distances between the marks disagree by {off}, so one may be misread; measure them again.</source>
   <translation>Les six distances entre les repères se contredisent de {off}, l'une peut donc être mal lue ; mesurez-les à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>The six distances miss each other by {off} mm, so one is misread; measure them again from cross to cross.</source>
   <translation>Les six distances se manquent de {off} mm, l'une est donc mal lue ; mesurez-les à nouveau de croix à croix.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>The slope is {value} degrees; give an angle from -{most} to {most}.</source>
   <translation>La pente est de {value} degrés ; donnez un angle de -{most} à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The solid core ({wood}, {sawn}), {width} mm across its grain, grows by {change} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>L'âme massive ({wood}, {sawn}), {width} mm en travers du fil, gonfle de {change} mm quand son humidité va de {before} à {after} %, si elle était libre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>The solid core ({wood}, {sawn}), {width} mm across its grain, shrinks by {change} mm as its moisture goes from {before} to {after} %, were it free.</source>
   <translation>L'âme massive ({wood}, {sawn}), {width} mm en travers du fil, se rétracte de {change} mm quand son humidité va de {before} à {after} %, si elle était libre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The squared picture would have {columns} x {rows} pixels, more than {most} megapixels; give more mm per pixel or a smaller margin.</source>
   <translation>L'image redressée aurait {columns} x {rows} pixels, plus de {most} mégapixels ; donnez plus de mm par pixel ou une marge plus petite.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows the figure: crowns and rings meet all round, and knots and the leaves' edges march from piece to piece where the figure wanders.</source>
   <translation>La pile suit le dessin : ramages et cernes se rejoignent tout autour, et nœuds et bords des feuilles avancent de pièce en pièce là où le dessin dérive.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows the log: knots and edges stay put, and the figure marches from piece to piece, {total} mm from the first leaf to leaf {last}.</source>
   <translation>La pile suit la grume : nœuds et bords restent en place, et le dessin avance de pièce en pièce, {total} mm de la première feuille à la feuille {last}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows the log: knots and edges stay put.</source>
   <translation>La pile suit la grume : nœuds et bords restent en place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The stack follows your marks: distances between them agree to {apart} mm (leaf {leaf}), and a mark picked {picked} mm off moves a leaf's corner by some {swing} mm. How the figure lies between them was not looked at.</source>
   <translation>La pile suit vos repères : les distances entre eux s'accordent à {apart} mm (feuille {leaf}), et un repère marqué à {picked} mm près déplace un coin de feuille de quelque {swing} mm. Comment est le dessin entre eux n'a pas été regardé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>The stack's sense is not proved.</source>
   <translation>Le sens de la pile n'est pas prouvé.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The surfaces that meet lie {steps} steps apart, seam by seam; the largest step, {largest}, is between positions {a} and {b}.</source>
   <translation>Les surfaces qui se rejoignent sont à {steps} pas, joint par joint ; le plus grand pas, {largest}, est entre les positions {a} et {b}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The surfaces that meet lie {steps} steps apart, seam by seam; the largest step, {largest}, is between positions {a} and {b}; the closing seam has {closing}.</source>
   <translation>Les surfaces qui se rejoignent sont à {steps} pas, joint par joint ; le plus grand pas, {largest}, est entre les positions {a} et {b} ; le joint de fermeture en a {closing}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>The tips are fine: {width} mm wide at {at} mm from the point.</source>
   <translation>Les pointes sont fines : larges de {width} mm à {at} mm de la pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>The top uses {used} leaves and leaves {left} spare where {spares} are asked for.</source>
   <translation>Le plateau utilise {used} feuilles et en laisse {left} de réserve là où {spares} sont demandées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>The top uses {used} leaves; {left} stay over.</source>
   <translation>Le plateau utilise {used} feuilles ; il en reste {left}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/bundles.py" />
   <source>The two bundles do not lie in one sense (the surface behind a leaf is the {first} leaf's in the first and the {second} leaf's in the second); turn one of them over.</source>
   <translation>Les deux liasses ne sont pas dans le même sens (la surface derrière une feuille est celle de la feuille {first} dans la première et de la feuille {second} dans la seconde) ; retournez l'une d'elles.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>The two points are only {apart} pixels apart; choose two at least {least} apart, the further the better.</source>
   <translation>Les deux points ne sont qu'à {apart} pixels l'un de l'autre ; choisissez-en deux à {least} au moins, le plus loin le mieux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>The upper row goes in order to the right, the lower row comes back.</source>
   <translation>Le rang du haut va dans l'ordre vers la droite, celui du bas revient.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>The wander is taken to be the same from leaf to leaf; where it is not, faces alone do not tell.</source>
   <translation>La dérive est prise pour égale de feuille à feuille ; là où elle ne l'est pas, les faces seules ne le disent pas.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>The wedges meet at a point that is not the middle of the top.</source>
   <translation>Les secteurs se rejoignent en un point qui n'est pas le milieu du plateau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>The wedges there are then unlike the rest, and their joints mirror only where both sides lose the same.</source>
   <translation>Les secteurs y sont alors différents des autres, et leurs joints ne sont en miroir que si les deux côtés perdent autant.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>The weight of {name} cannot be {value}; give 0 to {most}.</source>
   <translation>Le poids de {name} ne peut pas être {value} ; donnez 0 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>The {count} leaves are laid as they were photographed: nothing says that the figure, or a knot, lies at the same place on all of them, and a photograph that is shifted against the others shifts its piece.</source>
   <translation>Les {count} feuilles sont posées comme elles ont été photographiées : rien ne dit que le dessin, ou un nœud, est au même endroit sur toutes, et une photo décalée par rapport aux autres décale sa pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>The {kind} end match has two rows and not {rows}: take 2, or the continuous one.</source>
   <translation>Le joint en bout ({kind}) a deux rangs et non {rows} : prenez 2, ou le continu.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The {kind} has no outline; draw a closed line round it.</source>
   <translation>{kind} : il n'y a pas de contour ; tracez une ligne fermée autour.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>The {kind} lies off the photograph of leaf {leaf}; draw it on the leaf.</source>
   <translation>{kind} : c'est hors de la photo de la feuille {leaf} ; tracez-le sur la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>The {name} cannot be {shown}; give more than 0 and at most {most} for each % of moisture.</source>
   <translation>{name} : {shown} n'est pas possible ; donnez plus de 0 et au plus {most} par % d'humidité.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/plane.py" />
   <source>The {name} cannot be {value!r:.40}; choose one of: {allowed}.</source>
   <translation>{name} : {value!r:.40} n'est pas possible ; choisissez parmi : {allowed}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/plane.py" />
   <source>The {name} cannot be {value!r:.40}; give a plain number.</source>
   <translation>{name} : {value!r:.40} n'est pas possible ; donnez un nombre ordinaire.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The {name} cannot be {value!r:.40}; give a text.</source>
   <translation>{name} : {value!r:.40} n'est pas possible ; donnez un texte.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>The {name} cannot be {value!r:.40}; give {what}.</source>
   <translation>{name} : {value!r:.40} n'est pas possible ; donnez {what}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>The {name} cannot be {value} {unit}; give a number from {least} to {most}.</source>
   <translation>{name} : {value} {unit} n'est pas possible ; donnez un nombre de {least} à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>The {name} cannot be {value}; give a number from -{most} to {most}.</source>
   <translation>{name} : {value} n'est pas possible ; donnez un nombre de -{most} à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The {name} cannot be {value}; give a number from 0 to {most}.</source>
   <translation>{name} : {value} n'est pas possible ; donnez un nombre de 0 à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>The {name} cannot be {value}; give a number from {least} to {most}.</source>
   <translation>{name} : {value} n'est pas possible ; donnez un nombre de {least} à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/plane.py" />
   <source>The {name} cannot be {value}; give a whole number from {least} to {most}.</source>
   <translation>{name} : {value} n'est pas possible ; donnez un nombre entier de {least} à {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>The {name} has only {count} corners; click at least 3.</source>
   <translation>{name} : seulement {count} coins ; cliquez-en au moins 3.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>The {name} has {count} characters; give at most {most}.</source>
   <translation>{name} : {count} caractères sont trop ; donnez-en au plus {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>The {name} of a build-up cannot be {value!r:.40}; give a {kinds}, or leave it out.</source>
   <translation>{name} d'une composition ne peut pas être {value!r:.40} ; donnez {kinds}, ou omettez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>The {name} of a build-up cannot be {value!r:.40}; give a {kinds}.</source>
   <translation>{name} d'une composition ne peut pas être {value!r:.40} ; donnez {kinds}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The {panels} panels take {count} leaves, and from leaf {first} on there are {have}, {missing} missing: enough for no panel; take fewer panels, wider strips, or a second bundle after this one.</source>
   <translation>Les {panels} panneaux prennent {count} feuilles, et depuis la feuille {first} il y en a {have}, il en manque {missing} : assez pour aucun panneau ; prenez moins de panneaux, des bandes plus larges, ou une seconde liasse après celle-ci.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>The {panels} panels take {count} leaves, and from leaf {first} on there are {have}, {missing} missing: enough for {fits} of {panels}; take fewer panels, wider strips, or a second bundle after this one.</source>
   <translation>Les {panels} panneaux prennent {count} feuilles, et depuis la feuille {first} il y en a {have}, il en manque {missing} : assez pour {fits} sur {panels} ; prenez moins de panneaux, des bandes plus larges, ou une seconde liasse après celle-ci.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves, which leaves {left} spare where {spares} are asked for.</source>
   <translation>Les {panels} panneaux prennent {used} feuilles, ce qui en laisse {left} de réserve là où {spares} sont demandées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves, {each} each, which leaves {left} spare where {spares} are asked for.</source>
   <translation>Les {panels} panneaux prennent {used} feuilles, {each} chacun, ce qui en laisse {left} de réserve là où {spares} sont demandées.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves, {each} each; {left} stay over.</source>
   <translation>Les {panels} panneaux prennent {used} feuilles, {each} chacun ; il en reste {left}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>The {panels} panels take {used} leaves; {left} stay over.</source>
   <translation>Les {panels} panneaux prennent {used} feuilles ; il en reste {left}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>The {what} cannot be parted in {segments} on this edge; take fewer segments.</source>
   <translation>{what} : il ne peut pas être partagé en {segments} sur ce bord ; prenez moins de pièces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The {what} cannot be {value} mm; give from {least} to {most} mm, or leave the {out} out.</source>
   <translation>{what} : {value} mm n'est pas possible ; donnez de {least} à {most} mm, ou omettez : {out}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>The {what} cannot be {value} mm; give from {least} to {most} mm.</source>
   <translation>{what} : {value} mm n'est pas possible ; donnez de {least} à {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} crosses or touches itself near ({x}, {y}); draw it without.</source>
   <translation>{what} : il se croise ou se touche près de ({x}, {y}) ; dessinez-le sans cela.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} encloses {size} mm2; it must be at least {least} mm2.</source>
   <translation>{what} : il enferme {size} mm2 ; il en faut au moins {least} mm2.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} has a place or a size that is no plain number.</source>
   <translation>{what} : une place ou une taille n'est pas un nombre ordinaire.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} has an arc of {sweep} degrees, which lies on itself; give at most 360.</source>
   <translation>{what} : un arc de {sweep} degrés se recouvre ; donnez au plus 360.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} has an arc with a radius of {radius} mm; draw it larger.</source>
   <translation>{what} : un arc a un rayon de {radius} mm ; dessinez-le plus grand.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/ring.py" />
   <source>The {what} has no corner to mitre on this top; let it follow the edge, in a number of segments.</source>
   <translation>{what} : ce plateau n'a pas de coin pour un onglet ; laissez-le suivre le bord, en un nombre de pièces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} is open by {gap} mm near ({x}, {y}); close it there.</source>
   <translation>{what} : ouvert de {gap} mm près de ({x}, {y}) ; fermez-le là.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} must be of segments, and this is a {kind}.</source>
   <translation>{what} : il doit être fait de segments, et ceci est un {kind}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>The {what} reaches {reach} mm from the origin; the most is {most} mm.</source>
   <translation>{what} : il va à {reach} mm de l'origine ; le plus est {most} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>There are no angles to close; give one for each wedge.</source>
   <translation>Il n'y a pas d'angles à fermer ; donnez-en un par secteur.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>There are no leaves to print for; give their numbers.</source>
   <translation>Il n'y a pas de feuilles pour lesquelles imprimer ; donnez leurs numéros.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>There are no photos to even; add at least one.</source>
   <translation>Il n'y a pas de photos à égaliser ; ajoutez-en au moins une.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>There are {backs} photos of backs for {faces} leaves; give at most one for each.</source>
   <translation>Il y a {backs} photos de dos pour {faces} feuilles ; donnez-en au plus une pour chacune.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>There are {count} marks where {least} are needed, each with its place; locate them all.</source>
   <translation>Il y a {count} repères là où il en faut {least}, chacun avec sa place ; situez-les tous.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>There are {here} marks on one side and {there} on the other; give the same marks, in the same order.</source>
   <translation>Il y a {here} repères d'un côté et {there} de l'autre ; donnez les mêmes repères, dans le même ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>There are {photos} photographs and {ways} ways to prepare them; give one for all, or one for each.</source>
   <translation>Il y a {photos} photos et {ways} façons de les préparer ; donnez-en une pour toutes, ou une pour chacune.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>There is a crossband on one side of the core only, so the panel may cup.</source>
   <translation>Il n'y a de pli croisé que d'un côté de l'âme, le panneau peut donc se voiler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>There is no measure called {name!r}; weights are for {known}.</source>
   <translation>Il n'y a pas de mesure appelée {name!r} ; les poids sont pour {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>There is no photo {file}; check its name and its folder.</source>
   <translation>Il n'y a pas de photo {file} ; vérifiez son nom et son dossier.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>There is no room for a disc: the ring's centre does not lie within the top.</source>
   <translation>Il n'y a pas de place pour un disque : le centre de la couronne n'est pas à l'intérieur du plateau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/locating.py" />
   <source>There is no whole mark near column {column}, row {row} of the photo {photo}; click within a ring's width of its centre.</source>
   <translation>Il n'y a pas de repère entier près de la colonne {column}, ligne {row} de la photo {photo} ; cliquez à moins d'une largeur d'anneau de son centre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>There is not enough memory for the photo {file}; save it at a smaller size.</source>
   <translation>Il n'y a pas assez de mémoire pour la photo {file} ; enregistrez-la en plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/trust.py" />
   <source>There is one leaf, so there is nothing to register it against.</source>
   <translation>Il y a une feuille, il n'y a donc rien contre quoi la caler.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>There is solid wood in the panel, and how much it moves depends on the air.</source>
   <translation>Il y a du bois massif dans le panneau, et son travail dépend de l'air.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>They fit turned over: see whether the photograph was mirrored already.</source>
   <translation>Ils vont retournés : voyez si la photo était déjà en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>They lie far apart for one leaf: see whether both scales are right.</source>
   <translation>Ils sont trop écartés pour une feuille : voyez si les deux échelles sont justes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>This layout does not know how it was made, so it cannot be laid again.</source>
   <translation>Cette disposition ne sait pas comment elle a été faite, elle ne peut donc pas être posée à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>This match would have {count} pieces; the most is {most}: take wider strips or fewer ways.</source>
   <translation>Ce frisage aurait {count} pièces ; le plus est {most} : prenez des bandes plus larges ou moins de secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/packages.py" />
   <source>This needs {packages}, which FreeCAD's Python does not have; install the addon anew by the Addon Manager, or run this in a terminal, and start FreeCAD again: {command}</source>
   <translation>Il manque pour cela au Python de FreeCAD : {packages} ; réinstallez l'extension par le gestionnaire d'extensions, ou exécutez ceci dans un terminal, et redémarrez FreeCAD : {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/packages.py" />
   <source>This needs {packages}, which FreeCAD's Python does not have; run this in a terminal and start FreeCAD again: {command}</source>
   <translation>Il manque pour cela au Python de FreeCAD : {packages} ; exécutez ceci dans un terminal et redémarrez FreeCAD : {command}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; no size of it does, and in no number of ways would this one fit.</source>
   <translation>Ce plateau ({top}) ne tient nulle part sur les feuilles en {ways} secteurs ; aucune taille n'y tient, et celui-ci ne tiendrait en aucun nombre de secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; no size of it does, and this one would fit in {others} ways.</source>
   <translation>Ce plateau ({top}) ne tient nulle part sur les feuilles en {ways} secteurs ; aucune taille n'y tient, et celui-ci tiendrait en {others} secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; the largest that would is {largest} (reach {reach} mm), and in no number of ways would this one fit.</source>
   <translation>Ce plateau ({top}) ne tient nulle part sur les feuilles en {ways} secteurs ; le plus grand qui tiendrait est {largest} (portée {reach} mm), et celui-ci ne tiendrait en aucun nombre de secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/nowhere.py" />
   <source>This top ({top}) fits nowhere on the leaves in {ways} ways; the largest that would is {largest} (reach {reach} mm), and this one would fit in {others} ways.</source>
   <translation>Ce plateau ({top}) ne tient nulle part sur les feuilles en {ways} secteurs ; le plus grand qui tiendrait est {largest} (portée {reach} mm), et celui-ci tiendrait en {others} secteurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>This way round the outline fits more than twice as well as end for end.</source>
   <translation>Dans ce sens le contour va plus de deux fois mieux que tête-bêche.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>Three of the corners lie almost on a line; click the four corners of the rectangle, each once.</source>
   <translation>Trois des coins sont presque en ligne ; cliquez les quatre coins du rectangle, chacun une fois.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>Three of the marks lie almost on a line, which squares nothing; use marks that stand near the corners of the leaf.</source>
   <translation>Trois des repères sont presque en ligne, ce qui ne redresse rien ; utilisez des repères près des coins de la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>To measure the light on the background the tool must know where the leaf is: let it be found, draw its outline, or click its corners.</source>
   <translation>Pour mesurer la lumière sur le fond, il faut savoir où est la feuille : laissez-la trouver, tracez son contour, ou cliquez ses coins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/cuts.py" />
   <source>To save leaf cut in lots by shape: each is then set out by itself.</source>
   <translation>Pour épargner du placage, coupez en lots par forme : chacun est alors tracé à part.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>Too bright when photographed, and lost: {lost}.</source>
   <translation>Trop clair à la prise de vue, et perdu : {lost}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>Try the finish on two leaves, one turned, before cutting.</source>
   <translation>Essayez la finition sur deux feuilles, dont une retournée, avant de couper.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Turn it to 90 degrees.</source>
   <translation>Tournez-le à 90 degrés.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Turn over every second piece.</source>
   <translation>Retournez une pièce sur deux.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>Turn the top's best corner to the upper right or the lower left, or make it square.</source>
   <translation>Tournez le meilleur coin du plateau en haut à droite ou en bas à gauche, ou faites-le carré.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/leaf.py" />
   <source>Two leaves carry the number {leaf}; give each its own.</source>
   <translation>Deux feuilles portent le numéro {leaf} ; donnez à chacune le sien.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>Two marks check nothing but their distance.</source>
   <translation>Deux repères ne contrôlent que leur distance.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>Use fewer leaves of the bundle, or let the stack follow something else.</source>
   <translation>Utilisez moins de feuilles de la liasse, ou laissez la pile suivre autre chose.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>Use low-tack tape and try it on an offcut: paste and strong tape leave residue, lift fibre.</source>
   <translation>Prenez un adhésif faible et essayez-le sur une chute : colle et adhésif fort laissent des traces, lèvent des fibres.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Wedges meet at a point, all with the same side up.</source>
   <translation>Les secteurs se rejoignent en un point, tous du même côté dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/kinds.py" />
   <source>Wedges meet at a point, every second one turned over.</source>
   <translation>Les secteurs se rejoignent en un point, un sur deux retourné.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>Wedges meet at a point; every second one may be turned over, and they are even then.</source>
   <translation>Les secteurs se rejoignent en un point ; un sur deux peut être retourné, et ils sont alors en nombre pair.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>Weights cannot be {value!r:.40}; give one by name for any of {known}.</source>
   <translation>Les poids ne peuvent pas être {value!r:.40} ; donnez-en un par son nom pour n'importe lesquels de {known}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take more pieces, or wider leaves, and lay them end to end, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop large de {narrower} mm et trop long de {shorter} mm pour ces feuilles : prenez plus de pièces ou des feuilles plus larges, et posez-les bout à bout, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take more pieces, or wider leaves, and take longer leaves, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop large de {narrower} mm et trop long de {shorter} mm pour ces feuilles : prenez plus de pièces ou des feuilles plus larges, et de plus longues, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take wider leaves, and lay them end to end, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop large de {narrower} mm et trop long de {shorter} mm pour ces feuilles : prenez des feuilles plus larges, et posez-les bout à bout, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide and {shorter} mm too long for these leaves: take wider leaves, and take longer leaves, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop large de {narrower} mm et trop long de {shorter} mm pour ces feuilles : prenez des feuilles plus larges et plus longues, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide for these leaves: take more pieces, or wider leaves, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop large de {narrower} mm pour ces feuilles : prenez plus de pièces ou des feuilles plus larges, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {narrower} mm too wide for these leaves: take wider leaves, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop large de {narrower} mm pour ces feuilles : prenez des feuilles plus larges, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {shorter} mm too long for these leaves: lay them end to end, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop long de {shorter} mm pour ces feuilles : posez-les bout à bout, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/sufficiency.py" />
   <source>What is cut is {shorter} mm too long for these leaves: take longer leaves, or make the top smaller.</source>
   <translation>Ce qui est coupé est trop long de {shorter} mm pour ces feuilles : prenez des feuilles plus longues, ou faites le plateau plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>What is said of leaf {named} holds without it.</source>
   <translation>Ce qui est dit de la feuille {named} vaut même sans l'ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>What is said of leaves {named} holds without it.</source>
   <translation>Ce qui est dit des feuilles {named} vaut même sans l'ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Where the log lies was told from the drift that your photographs share, {across} mm across and {along} mm along from leaf to leaf in the mean (minus: to the left, and towards the photographs' lower edge), give or take {error} mm.</source>
   <translation>Où est la grume a été lu de la dérive commune de vos photos, {across} mm en travers et {along} mm en long de feuille à feuille en moyenne (moins : vers la gauche, et vers le bord bas des photos), à {error} mm près.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>Whether a leaf is turned over cannot be told: the figure equals its mirror image.</source>
   <translation>Si une feuille est retournée ne peut pas être dit : le dessin est égal à son image en miroir.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>Whether a leaf is turned over or end for end cannot be told: it looks the same so.</source>
   <translation>Si une feuille est retournée ou tête-bêche ne peut pas être dit : elle est pareille ainsi.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>Whether a leaf lies end for end cannot be told: the figure looks the same so.</source>
   <translation>Si une feuille est tête-bêche ne peut pas être dit : le dessin est pareil ainsi.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/wedges.py" />
   <source>With {strips} strips in each wedge a strip is only {width} mm wide; take at most {most}.</source>
   <translation>Avec {strips} bandes par secteur une bande n'est large que de {width} mm ; prenez-en au plus {most}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>With {ways} ways the top is not a sunburst, which has six leaves or more (Architectural Woodwork Standards, 2009).</source>
   <translation>Avec {ways} secteurs le plateau n'est pas un "sunburst", qui a six feuilles ou plus (Architectural Woodwork Standards, 2009).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>Wood in this air settles at {before} and {after} % moisture; the figures of movement hold from {driest} to {wettest} % only.</source>
   <translation>Le bois dans cet air se met à {before} et {after} % d'humidité ; les chiffres du travail ne valent que de {driest} à {wettest} %.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Your photographs drift {drift} mm along from leaf to leaf together, give or take {drift_error} mm, and not {along} mm.</source>
   <translation>Vos photos dérivent ensemble de {drift} mm en long de feuille à feuille, à {drift_error} mm près, et non de {along} mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow_text.py" />
   <source>Your photographs share no clear drift and no slope, backs or targets are known, so the log cannot be told from the figure: here it is taken to lie where the figure does.</source>
   <translation>Vos photos n'ont pas de nette dérive commune et ni pente, ni dos, ni repères ne sont connus, la grume ne peut donc pas être lue du dessin : elle est prise ici là où est le dessin.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>across</source>
   <translation>en travers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>alder, red</source>
   <translation>aulne rouge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>all layers</source>
   <translation>toutes les couches</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>along</source>
   <translation>en long</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>architectural</source>
   <translation>architectural</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>area in m2</source>
   <translation>surface en m2</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>area m2</source>
   <translation>surface m2</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>area sq ft</source>
   <translation>surface pieds carrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>as photographed</source>
   <translation>tel que photographié</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>ash, white</source>
   <translation>frêne blanc</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>back</source>
   <translation>dos</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>back, loose side</source>
   <translation>dos, côté ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>back, tight side</source>
   <translation>dos, côté fermé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>backer</source>
   <translation>contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>background</source>
   <translation>fond</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>balance</source>
   <translation>équilibré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>beech, American</source>
   <translation>hêtre américain</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>bent round; its length on the outer side</source>
   <translation>courbé tout autour ; sa longueur au dehors</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>bill of materials</source>
   <translation>nomenclature</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>birch, yellow</source>
   <translation>bouleau jaune</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>boat shape, {size} by {width} mm, {ends} mm at the ends</source>
   <translation>forme bateau, {size} sur {width} mm, {ends} mm aux extrémités</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>book</source>
   <translation>livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>border</source>
   <translation>bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>border's width</source>
   <translation>largeur de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>by the slope of {slope} deg that was given</source>
   <translation>d'après la pente donnée de {slope} degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>by the wander measured on photographed backs</source>
   <translation>d'après la dérive mesurée sur des dos photographiés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>caution</source>
   <translation>prudence</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>centre</source>
   <translation>centre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>centre balance</source>
   <translation>centre équilibré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>centre's x</source>
   <translation>x du centre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>centre's y</source>
   <translation>y du centre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>chalk</source>
   <translation>craie</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>cherry, black</source>
   <translation>cerisier noir</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>clear colour change</source>
   <translation>couleur nettement changeante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>clear grain change</source>
   <translation>fil nettement changeant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>closing</source>
   <translation>fermeture</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>closing seam shows</source>
   <translation>joint de fermeture visible</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>closing seam shows clearly</source>
   <translation>joint de fermeture très visible</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>coefficient</source>
   <translation>coefficient</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>continuous</source>
   <translation>continu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>contrast</source>
   <translation>contraste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>core</source>
   <translation>âme</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>corners</source>
   <translation>coins</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>cost</source>
   <translation>coût</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>count</source>
   <translation>nombre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>crossband</source>
   <translation>pli croisé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>crossband above</source>
   <translation>pli croisé dessus</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>crossband below</source>
   <translation>pli croisé dessous</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>currency</source>
   <translation>devise</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>cut</source>
   <translation>coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>degrees C</source>
   <translation>degrés C</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>diameter</source>
   <translation>diamètre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>diameter of the disc</source>
   <translation>diamètre du disque</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>diameter of the inlay</source>
   <translation>diamètre de l'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rings.py" />
   <source>diameter of the inner field</source>
   <translation>diamètre du champ intérieur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>direction of the grain</source>
   <translation>direction du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>distance</source>
   <translation>distance</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/squaring.py" />
   <source>distance between the two points</source>
   <translation>distance entre les deux points</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/measuring.py" />
   <source>distance between two marks</source>
   <translation>distance entre deux repères</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/seen.py" />
   <source>distance of the camera</source>
   <translation>distance de l'appareil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/disturb.py" />
   <source>disturbance</source>
   <translation>perturbation</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>duplicate</source>
   <translation>en double</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>elm, American</source>
   <translation>orme américain</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>end for end</source>
   <translation>tête-bêche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>even grain</source>
   <translation>fil régulier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>face</source>
   <translation>face</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>face, loose side</source>
   <translation>face, côté ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>face, tight side</source>
   <translation>face, côté fermé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>field</source>
   <translation>champ</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>figure</source>
   <translation>dessin</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>first leaf</source>
   <translation>première feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>flitch</source>
   <translation>quartelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>foreign</source>
   <translation>étrangère</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>gain of a photo's light</source>
   <translation>gain de la lumière d'une photo</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>grain</source>
   <translation>fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>grain direction</source>
   <translation>direction du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>grain of the border</source>
   <translation>fil de la bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>grain, in the waste only. What a mark covers must not become a part of the show face.</source>
   <translation>fil, dans la chute seulement. Ce qu'un repère couvre ne doit pas faire partie du parement.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>grey patch</source>
   <translation>plage grise</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>if it slopes {slope} deg to the leaf, which is assumed and not measured</source>
   <translation>s'il est incliné de {slope} degrés sur la feuille, ce qui est supposé et non mesuré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>if the figure slopes {slope} deg to the leaf, which nobody measured</source>
   <translation>si le dessin est incliné de {slope} degrés sur la feuille, ce que personne n'a mesuré</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>in memory</source>
   <translation>en mémoire</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>inlay</source>
   <translation>incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>inner radius of the star</source>
   <translation>rayon intérieur de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/files.py" />
   <source>it is larger than {size} MB</source>
   <translation>il est plus grand que {size} Mo</translation>
  </message>
  <message>
   <location filename="veneerwb/core/files.py" />
   <source>it is no file</source>
   <translation>ce n'est pas un fichier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>item</source>
   <translation>élément</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>its x and y on the top</source>
   <translation>son x et son y sur le plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>kind</source>
   <translation>genre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>kind of border</source>
   <translation>genre de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>kind of core</source>
   <translation>genre d'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>kind of fault</source>
   <translation>genre de défaut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>knot</source>
   <translation>nœud</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>knots</source>
   <translation>nœuds</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>layer</source>
   <translation>couche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>leaf length</source>
   <translation>longueur de feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>leaf thickness</source>
   <translation>épaisseur de feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>leaf whose back is photographed</source>
   <translation>feuille dont le dos est photographié</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>leaf width</source>
   <translation>largeur de feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>leaves</source>
   <translation>feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>length</source>
   <translation>longueur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>length mm</source>
   <translation>longueur mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/finding.py" />
   <source>level</source>
   <translation>niveau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>light</source>
   <translation>lumière</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>lipping</source>
   <translation>alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>listed leaf</source>
   <translation>feuille énumérée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>little colour change</source>
   <translation>couleur presque égale</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>lively grain</source>
   <translation>fil vif</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>lot</source>
   <translation>lot</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>maple, sugar</source>
   <translation>érable à sucre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/__init__.py" />
   <source>margin</source>
   <translation>marge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>marking list</source>
   <translation>liste de marquage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>match</source>
   <translation>frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>material</source>
   <translation>matériau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>missing</source>
   <translation>manquante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>mode of a run</source>
   <translation>mode d'une série</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>moisture</source>
   <translation>humidité</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>moisture in %</source>
   <translation>humidité en %</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>most megapixels of a working copy</source>
   <translation>mégapixels au plus d'une copie de travail</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>name</source>
   <translation>nom</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>not known</source>
   <translation>non connu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>not said</source>
   <translation>non dit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>not under either</source>
   <translation>en dessous d'aucune des deux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>note</source>
   <translation>note</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>now</source>
   <translation>maintenant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/renumbering.py" />
   <source>number of a leaf</source>
   <translation>numéro d'une feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>number of leaves</source>
   <translation>nombre de feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>number of marks on a leaf</source>
   <translation>nombre de repères sur une feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/bundles.py" />
   <source>number of missing leaves</source>
   <translation>nombre de feuilles manquantes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>number of points of the star</source>
   <translation>nombre de pointes de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/search/find.py" />
   <source>number of results</source>
   <translation>nombre de résultats</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>number of rows</source>
   <translation>nombre de rangs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>number of segments of the {what}</source>
   <translation>nombre de pièces : {what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>number of sides</source>
   <translation>nombre de côtés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/__init__.py" />
   <source>number of spare leaves</source>
   <translation>nombre de feuilles de réserve</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>number of strips in a wedge</source>
   <translation>nombre de bandes par secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/mark.py" />
   <source>number of the mark on its leaf</source>
   <translation>numéro du repère sur sa feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>number of ways</source>
   <translation>nombre de secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>oak, red</source>
   <translation>chêne rouge</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>oak, white</source>
   <translation>chêne blanc</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>one mark</source>
   <translation>un repère</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>opening</source>
   <translation>ouverture</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>order</source>
   <translation>ordre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>origin</source>
   <translation>origine</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>out of place</source>
   <translation>hors de sa place</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>outer radius of the star</source>
   <translation>rayon extérieur de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/outlines/given.py" />
   <source>outline</source>
   <translation>contour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>outline, {size} by {width} mm</source>
   <translation>contour, {size} sur {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>oval, {size} by {width} mm</source>
   <translation>ovale, {size} sur {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>oversize</source>
   <translation>surcote</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>own coefficients</source>
   <translation>coefficients propres</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>panel</source>
   <translation>panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>paper</source>
   <translation>papier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>patch</source>
   <translation>pièce rapportée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>photograph</source>
   <translation>photo</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>placement</source>
   <translation>placement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>placement's angle</source>
   <translation>angle du placement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>placement's x</source>
   <translation>x du placement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/placement.py" />
   <source>placement's y</source>
   <translation>y du placement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>plain sawn</source>
   <translation>débit sur dosse</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>quarter sawn</source>
   <translation>débit sur quartier</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>quiet seams</source>
   <translation>joints calmes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>racetrack, {size} by {width} mm</source>
   <translation>hippodrome, {size} sur {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>radial coefficient</source>
   <translation>coefficient radial</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>random</source>
   <translation>mélangé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>reach</source>
   <translation>portée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>rectangle, {size} by {width} mm</source>
   <translation>rectangle, {size} sur {width} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>relative humidity</source>
   <translation>humidité relative</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>reverse slip</source>
   <translation>glissé alterné</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>rim</source>
   <translation>pourtour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>ring</source>
   <translation>couronne</translation>
  </message>
  <message>
   <location filename="veneerwb/core/yields/packing.py" />
   <source>room</source>
   <translation>place</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>round, {size} mm</source>
   <translation>rond, {size} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>running</source>
   <translation>courant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>sawing</source>
   <translation>débit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>scale</source>
   <translation>échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>scale (mm per pixel)</source>
   <translation>échelle (mm par pixel)</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>scale of the photo in mm per pixel</source>
   <translation>échelle de la photo en mm par pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>seams</source>
   <translation>joints</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>seams show</source>
   <translation>joints visibles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>seed</source>
   <translation>graine</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>sheet goods</source>
   <translation>panneau dérivé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/panel.py" />
   <source>show face</source>
   <translation>parement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>show veneer</source>
   <translation>placage de parement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>side</source>
   <translation>côté</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>side up</source>
   <translation>côté dessus</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>sides and two diagonals between four marks square it up. Photograph without glare.</source>
   <translation>côtés et deux diagonales entre quatre repères la redressent. Photographiez sans reflet.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>size</source>
   <translation>taille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>slant</source>
   <translation>biais</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>slip</source>
   <translation>glissé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/side.py" />
   <source>slip-centre-book</source>
   <translation>glissé, centre en livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>slope</source>
   <translation>pente</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>soft seams</source>
   <translation>joints doux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>solid wood</source>
   <translation>bois massif</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>some colour change</source>
   <translation>couleur un peu changeante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>some grain change</source>
   <translation>fil un peu changeant</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>source of the backer</source>
   <translation>origine du contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>species</source>
   <translation>essence</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>split</source>
   <translation>fente</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>square, {size} mm</source>
   <translation>carré, {size} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>stain</source>
   <translation>tache</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>start direction</source>
   <translation>direction de départ</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/finding.py" />
   <source>stop</source>
   <translation>arrêt</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>stringing line</source>
   <translation>filet</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>strip</source>
   <translation>bande</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>strip width</source>
   <translation>largeur de bande</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/words.py" />
   <source>strong colour change</source>
   <translation>couleur très changeante</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>surface</source>
   <translation>surface</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>sweetgum</source>
   <translation>copalme</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>sycamore</source>
   <translation>platane américain</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>tangential coefficient</source>
   <translation>coefficient tangentiel</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>temperature</source>
   <translation>température</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>the back of leaf {leaves}</source>
   <translation>le dos de la feuille {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>the back of one leaf</source>
   <translation>le dos d'une feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/sense.py" />
   <source>the backs of leaves {leaves}</source>
   <translation>les dos des feuilles {leaves}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>the backs of {count} leaves</source>
   <translation>les dos de {count} feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>the leaf of each position</source>
   <translation>la feuille de chaque position</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>the list</source>
   <translation>la liste</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>the lower end of the picture</source>
   <translation>le bout bas de l'image</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>the upper end of the picture</source>
   <translation>le bout haut de l'image</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/insets.py" />
   <source>the {what}</source>
   <translation>{what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>thickness</source>
   <translation>épaisseur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>thickness mm</source>
   <translation>épaisseur mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>thickness of the {what}</source>
   <translation>épaisseur : {what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>tight side</source>
   <translation>côté fermé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>time of the lipping</source>
   <translation>moment de l'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>to do</source>
   <translation>à faire</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>tolerance</source>
   <translation>tolérance</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/background.py" />
   <source>tolerance of the outline in pixels</source>
   <translation>tolérance du contour en pixels</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>top</source>
   <translation>plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>top end</source>
   <translation>bout du haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>turn</source>
   <translation>retournement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/tie.py" />
   <source>turn of the back</source>
   <translation>rotation du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>turn of the star</source>
   <translation>rotation de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/suspects.py" />
   <source>turned</source>
   <translation>retournée</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>turned pieces</source>
   <translation>pièces retournées</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>turned {turn} deg clockwise about the middle</source>
   <translation>tournée de {turn} degrés dans le sens des aiguilles autour du milieu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>turned {turn} deg counter-clockwise about the middle</source>
   <translation>tournée de {turn} degrés en sens inverse des aiguilles autour du milieu</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>under both</source>
   <translation>en dessous des deux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/panel.py" />
   <source>under the first, not under the second</source>
   <translation>en dessous de la première, pas de la seconde</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/buildup.py" />
   <source>unnamed wood</source>
   <translation>bois non nommé</translation>
  </message>
  <message>
   <location filename="veneerwb/core/inventory.py" />
   <source>value</source>
   <translation>valeur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>variety</source>
   <translation>variété</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>volume m3</source>
   <translation>volume m3</translation>
  </message>
  <message>
   <location filename="veneerwb/core/wood.py" />
   <source>walnut, black</source>
   <translation>noyer noir</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>wander across</source>
   <translation>dérive en travers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>wander along</source>
   <translation>dérive en long</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/finding.py" />
   <source>warn</source>
   <translation>avertissement</translation>
  </message>
  <message>
   <location filename="veneerwb/core/layout.py" />
   <source>way of cutting</source>
   <translation>façon de couper</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sides/wander.py" />
   <source>way to pin backs</source>
   <translation>façon de pionner les dos</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/run.py" />
   <source>way with gaps</source>
   <translation>traitement des jeux</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>wedge angle</source>
   <translation>angle de secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/appeal/measures.py" />
   <source>weight of {name}</source>
   <translation>poids de {name}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/follow.py" />
   <source>what to follow</source>
   <translation>que suivre</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>whole field; its pieces are in the cut list</source>
   <translation>champ entier ; ses pièces sont dans la liste de débit</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>width</source>
   <translation>largeur</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>width across flats</source>
   <translation>largeur sur plats</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>width at the ends</source>
   <translation>largeur aux extrémités</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/bill.py" />
   <source>width mm</source>
   <translation>largeur mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/faults.py" />
   <source>width of the fault</source>
   <translation>largeur du défaut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/kinds.py" />
   <source>width of the {what}</source>
   <translation>largeur : {what}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/faces.py" />
   <source>with the slope of {slope} deg given</source>
   <translation>avec la pente donnée de {slope} degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/reading.py" />
   <source>without rows</source>
   <translation>sans lignes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/asked.py" />
   <source>x, y and the axis's angle</source>
   <translation>x, y et l'angle de l'axe</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{above} mm above</source>
   <translation>{above} mm en haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{across} mm narrower</source>
   <translation>plus étroit de {across} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{across} mm to the left</source>
   <translation>{across} mm vers la gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{across} mm to the right</source>
   <translation>{across} mm vers la droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{across} mm wider</source>
   <translation>plus large de {across} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{along} mm down the grain</source>
   <translation>{along} mm à contresens du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{along} mm from {a} along the line to {b}, then {square} mm square to the left</source>
   <translation>{along} mm de {a} le long de la ligne vers {b}, puis {square} mm d'équerre à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{along} mm from {a} along the line to {b}, then {square} mm square to the right</source>
   <translation>{along} mm de {a} le long de la ligne vers {b}, puis {square} mm d'équerre à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/verdict.py" />
   <source>{along} mm up the grain</source>
   <translation>{along} mm dans le sens du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/findings.py" />
   <source>{a} and {b}</source>
   <translation>{a} et {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>{bar} mm across</source>
   <translation>{bar} mm en travers</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>{bar} mm upwards</source>
   <translation>{bar} mm vers le haut</translation>
  </message>
  <message>
   <location filename="veneerwb/core/sequence/proof.py" />
   <source>{belong} leaves are too few to prove an order.</source>
   <translation>{belong} feuilles sont trop peu pour prouver un ordre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{below} mm below</source>
   <translation>{below} mm en bas</translation>
  </message>
  <message>
   <location filename="veneerwb/core/numerals.py" />
   <source>{cell!r:.40} is not a number that can be read; write it plainly, such as 1250.5.</source>
   <translation>{cell!r:.40} n'est pas un nombre lisible ; écrivez-le simplement, comme 1250.5.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/numerals.py" />
   <source>{cell} may mean {large} or {small}; write {large} for the first and {longer} for the second.</source>
   <translation>{cell} peut vouloir dire {large} ou {small} ; écrivez {large} pour le premier et {longer} pour le second.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>{chalk}  {photograph}: top is {top_end}; {side_up} up.</source>
   <translation>{chalk}  {photograph} : le haut est {top_end} ; {side_up} dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/chalk.py" />
   <source>{chalk} (now {now})  {photograph}: top is {top_end}; {side_up} up.</source>
   <translation>{chalk} (maintenant {now})  {photograph} : le haut est {top_end} ; {side_up} dessus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/quarters.py" />
   <source>{count} fields</source>
   <translation>{count} champs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/fitting.py" />
   <source>{count} marks do not tell how the leaf is turned; give two or more.</source>
   <translation>{count} repères ne disent pas comment la feuille est tournée ; donnez-en deux ou plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/confirming.py" />
   <source>{count} marks fit any photograph, so that they confirm nothing; click at least {least}, on two leaves or more.</source>
   <translation>{count} repères vont à n'importe quelle photo, ils ne confirment donc rien ; cliquez-en au moins {least}, sur deux feuilles ou plus.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/sheet.py" />
   <source>{count} marks, A to {last},</source>
   <translation>{count} repères, A à {last},</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/ring.py" />
   <source>{count} of the seams join two pieces of the same side up (the first between positions {a} and {b}), so they are no book joints.</source>
   <translation>{count} des joints réunissent deux pièces du même côté dessus (le premier entre les positions {a} et {b}), ce ne sont donc pas des joints en livre ouvert.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{count} of {total} photographs will not do ({names}): {said}</source>
   <translation>{count} photos sur {total} ne vont pas ({names}) : {said}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{count} of {total} photographs will not do ({names}); the first: {said}</source>
   <translation>{count} photos sur {total} ne vont pas ({names}) ; la première : {said}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>{count} photograph at {original} mm per pixel; working copies at {copies} mm per pixel.</source>
   <translation>{count} photo à {original} mm par pixel ; copies de travail à {copies} mm par pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>{count} photographs at {original} mm per pixel; working copies at {copies} mm per pixel.</source>
   <translation>{count} photos à {original} mm par pixel ; copies de travail à {copies} mm par pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>{count} pieces</source>
   <translation>{count} pièces</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>{count} strips</source>
   <translation>{count} bandes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/rows.py" />
   <source>{count} strips side by side would be {strip} mm wide each, slivers under {least} mm: take {most} or fewer.</source>
   <translation>{count} bandes côte à côte seraient larges de {strip} mm chacune, des éclats de moins de {least} mm : prenez-en {most} ou moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} of {owner}</source>
   <translation>{faces} de {owner}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf} ({where}).</source>
   <translation>{faces} dépassent jusqu'à {overhang} mm de la surface utile de la feuille {leaf} ({where}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf} ({where}); off the photograph its edge is repeated.</source>
   <translation>{faces} dépassent jusqu'à {overhang} mm de la surface utile de la feuille {leaf} ({where}) ; hors de la photo, son bord est répété.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf}.</source>
   <translation>{faces} dépassent jusqu'à {overhang} mm de la surface utile de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reach up to {overhang} mm beyond the usable area of leaf {leaf}; off the photograph its edge is repeated.</source>
   <translation>{faces} dépassent jusqu'à {overhang} mm de la surface utile de la feuille {leaf} ; hors de la photo, son bord est répété.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf} ({where}).</source>
   <translation>{faces} dépasse jusqu'à {overhang} mm de la surface utile de la feuille {leaf} ({where}).</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf} ({where}); off the photograph its edge is repeated.</source>
   <translation>{faces} dépasse jusqu'à {overhang} mm de la surface utile de la feuille {leaf} ({where}) ; hors de la photo, son bord est répété.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf}.</source>
   <translation>{faces} dépasse jusqu'à {overhang} mm de la surface utile de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} reaches up to {overhang} mm beyond the usable area of leaf {leaf}; off the photograph its edge is repeated.</source>
   <translation>{faces} dépasse jusqu'à {overhang} mm de la surface utile de la feuille {leaf} ; hors de la photo, son bord est répété.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} take {width} mm across and {length} mm along the grain of leaf {leaf}.</source>
   <translation>{faces} prennent {width} mm en travers et {length} mm le long du fil de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{faces} takes {width} mm across and {length} mm along the grain of leaf {leaf}.</source>
   <translation>{faces} prend {width} mm en travers et {length} mm le long du fil de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/decode.py" />
   <source>{file} is a folder; give the photo file itself.</source>
   <translation>{file} est un dossier ; donnez le fichier de la photo même.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/report.py" />
   <source>{least} to {most}</source>
   <translation>{least} à {most}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>{leaves} leaves of {thickness} mm make {depth} mm, and a generated log gives {most} mm; ask for fewer or thinner leaves.</source>
   <translation>{leaves} feuilles de {thickness} mm font {depth} mm, et une grume générée donne {most} mm ; demandez des feuilles moins nombreuses ou plus minces.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{left} mm left</source>
   <translation>{left} mm à gauche</translation>
  </message>
  <message>
   <location filename="veneerwb/core/listing.py" />
   <source>{names} and {more} more</source>
   <translation>{names} et {more} autres</translation>
  </message>
  <message>
   <location filename="veneerwb/core/buildup/insets.py" />
   <source>{names} would take {taken} mm from every side and leave nothing of this top in one piece; give at most {most} mm in all.</source>
   <translation>{names} prendraient {taken} mm de chaque côté et ne laisseraient rien de ce plateau d'un seul tenant ; donnez au plus {most} mm en tout.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{name} is left as it is.</source>
   <translation>{name} reste tel quel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{name} was made {what}.</source>
   <translation>{name} a été rendu {what}.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{near} mm from {a} and {far} mm from {b}, left of the line from {a} to {b}</source>
   <translation>{near} mm de {a} et {far} mm de {b}, à gauche de la ligne de {a} à {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/targets/bench.py" />
   <source>{near} mm from {a} and {far} mm from {b}, right of the line from {a} to {b}</source>
   <translation>{near} mm de {a} et {far} mm de {b}, à droite de la ligne de {a} à {b}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/listing.py" />
   <source>{others} and {last}</source>
   <translation>{others} et {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/listing.py" />
   <source>{others} or {last}</source>
   <translation>{others} ou {last}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/log/sawn.py" />
   <source>{photos} photographs of {columns} x {rows} pixels take {size} GB; give fewer leaves or more mm per pixel.</source>
   <translation>{photos} photos de {columns} x {rows} pixels prennent {size} Go ; donnez moins de feuilles ou plus de mm par pixel.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} has more than {most} times more or less light than the others; photograph the leaf again, or leave the photo out.</source>
   <translation>{photo} a plus de {most} fois plus ou moins de lumière que les autres ; photographiez la feuille à nouveau, ou omettez la photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} is black all over; photograph the leaf again.</source>
   <translation>{photo} est toute noire ; photographiez la feuille à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} is black where its light is measured; photograph the leaf again with more light, or choose another patch.</source>
   <translation>{photo} est noire là où sa lumière est mesurée ; photographiez à nouveau la feuille avec plus de lumière, ou choisissez une autre plage.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} is burnt out where its light is measured; photograph the leaf again with less light, or choose a darker patch.</source>
   <translation>{photo} est brûlée là où sa lumière est mesurée ; photographiez à nouveau la feuille avec moins de lumière, ou choisissez une plage plus sombre.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo} is not plain where its light is measured; choose a patch of one colour, without figure, edges or deep shadow.</source>
   <translation>{photo} n'est pas unie là où sa lumière est mesurée ; choisissez une plage d'une couleur, sans dessin, bords ni ombre profonde.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{photo} is the same photograph as {other}; leave one of them out.</source>
   <translation>{photo} est la même photo que {other} ; omettez-en une.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} is white all over; photograph the leaf again.</source>
   <translation>{photo} est toute blanche ; photographiez la feuille à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{photo} shows its leaf turned by 90 degrees against the others; turn that photograph and save it so.</source>
   <translation>{photo} montre sa feuille tournée de 90 degrés par rapport aux autres ; tournez cette photo et enregistrez-la ainsi.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparing.py" />
   <source>{photo} was given twice; leave one of them out.</source>
   <translation>{photo} a été donnée deux fois ; omettez-en une.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} would show a leaf {width} m across and {length} m along, larger than any; check the scale.</source>
   <translation>{photo} montrerait une feuille de {width} m en travers et {length} m en long, plus grande qu'aucune ; vérifiez l'échelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/preparation.py" />
   <source>{photo} would show {width} m by {length} m, more than a leaf; let the leaf be found, draw its outline, or check what the photograph is squared up by.</source>
   <translation>{photo} montrerait {width} m sur {length} m, plus qu'une feuille ; laissez trouver la feuille, tracez son contour, ou vérifiez ce qui redresse la photo.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo}: the patch for the light covers only {count} pixels; draw it larger, at least {least} pixels.</source>
   <translation>{photo} : la plage pour la lumière ne couvre que {count} pixels ; tracez-la plus grande, au moins {least} pixels.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{photo}: the patch for the light lies outside the picture of {columns} x {rows} pixels; draw it on the picture.</source>
   <translation>{photo} : la plage pour la lumière est hors de l'image de {columns} x {rows} pixels ; tracez-la sur l'image.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/facing.py" />
   <source>{right} mm right</source>
   <translation>{right} mm à droite</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>{rows} rows end to end would be {row} mm long each, slivers under {least} mm: make the top longer.</source>
   <translation>{rows} rangs bout à bout seraient longs de {row} mm chacun, des éclats de moins de {least} mm : faites le plateau plus long.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/end.py" />
   <source>{rows} rows end to end would be {row} mm long each, slivers under {least} mm: take {most} or fewer.</source>
   <translation>{rows} rangs bout à bout seraient longs de {row} mm chacun, des éclats de moins de {least} mm : prenez-en {most} ou moins.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} cooler</source>
   <translation>plus froid de {share}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} darker</source>
   <translation>plus sombre de {share}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} lighter</source>
   <translation>plus clair de {share}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} of it is now brighter than a picture can show.</source>
   <translation>{share} est maintenant plus clair qu'une image ne peut montrer.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} of it was too bright when it was photographed.</source>
   <translation>{share} était trop clair à la prise de vue.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/photos/evening.py" />
   <source>{share} warmer</source>
   <translation>plus chaud de {share}</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>{sides}-sided, {size} mm across flats</source>
   <translation>à {sides} côtés, {size} mm sur plats</translation>
  </message>
  <message>
   <location filename="veneerwb/core/top.py" />
   <source>{top}, less {border} mm all round</source>
   <translation>{top}, moins {border} mm tout autour</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{up} mm higher</source>
   <translation>plus haut de {up} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/runs/panels.py" />
   <source>{up} mm lower</source>
   <translation>plus bas de {up} mm</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>{ways} ways</source>
   <translation>{ways} secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/radial.py" />
   <source>{ways} ways of {strips} strips</source>
   <translation>{ways} secteurs de {strips} bandes</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg close to 360.</source>
   <translation>{ways} secteurs de {angle} degrés ferment à 360.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring overlaps by {overlap} mm at the rim; the excess must be trued off before the last joint.</source>
   <translation>{ways} secteurs de {angle} degrés font {total} degrés : la couronne se recouvre de {overlap} mm au pourtour ; l'excès doit être dressé avant le dernier joint.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring overlaps by {overlap} mm at the rim; trued along the diameter, each half loses {trim} deg at both ends ({rim_lost} mm at the rim) and the seams between lie up to {seam_shift} mm off their places.</source>
   <translation>{ways} secteurs de {angle} degrés font {total} degrés : la couronne se recouvre de {overlap} mm au pourtour ; dressée le long du diamètre, chaque moitié perd {trim} degrés aux deux bouts ({rim_lost} mm au pourtour) et les joints entre eux sont jusqu'à {seam_shift} mm hors de leur place.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring stays open by {rim_gap} mm at the rim, and truing the halves takes {tip_lost} mm off every tip.</source>
   <translation>{ways} secteurs de {angle} degrés font {total} degrés : la couronne reste ouverte de {rim_gap} mm au pourtour, et dresser les moitiés enlève {tip_lost} mm à chaque pointe.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/checks/closure.py" />
   <source>{ways} wedges of {angle} deg make {total} deg: the ring stays open by {rim_gap} mm at the rim.</source>
   <translation>{ways} secteurs de {angle} degrés font {total} degrés : la couronne reste ouverte de {rim_gap} mm au pourtour.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/order.py" />
   <source>{what} need a list of {count} different leaves; this one has {listed}, {different} of them different.</source>
   <translation>{what} demandent une liste de {count} feuilles différentes ; celle-ci en a {listed}, dont {different} différentes.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>{what} need {count} leaves and from leaf {first} on there are {have}: {missing} missing; take an earlier first leaf, or a larger bundle.</source>
   <translation>{what} demandent {count} feuilles et depuis la feuille {first} il y en a {have} : il en manque {missing} ; prenez une première feuille plus tôt, ou une plus grande liasse.</translation>
  </message>
  <message>
   <location filename="veneerwb/core/matches/cells.py" />
   <source>{what} need {count} leaves and from leaf {first} on there are {have}: {missing} missing; take {most} leaves or fewer, an earlier first leaf, or a larger bundle.</source>
   <translation>{what} demandent {count} feuilles et depuis la feuille {first} il y en a {have} : il en manque {missing} ; prenez {most} feuilles ou moins, une première feuille plus tôt, ou une plus grande liasse.</translation>
  </message>
 </context>
</TS>
