<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A box's joints: at 45 degrees, or from corner to corner</source>
   <translation>Les joints des quatre miroirs : à 45 degrés, ou de coin à coin</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A closed sketch, a wire or a planar face that is the top; holes are openings</source>
   <translation>Une esquisse fermée, une polyligne ou une face plane qui est le plateau ; les trous sont des ouvertures</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A mark of each piece</source>
   <translation>Une marque de chaque pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>A mark that changes with all of this</source>
   <translation>Une marque qui change avec tout cela</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A mark that changes with the layout</source>
   <translation>Une marque qui change avec la disposition</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>A mark that changes with the picture</source>
   <translation>Une marque qui change avec l'image</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>A normal and a point each</source>
   <translation>Une normale et un point chacune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>A second bundle, used when the leaves of the first end</source>
   <translation>Une seconde liasse, utilisée quand finissent les feuilles de la première</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>A sketch, wire or flat face: no leaf is used outside it</source>
   <translation>Une esquisse, une polyligne ou une face plane : aucune feuille n'est utilisée au dehors</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>A slope of 0 is known, not unknown</source>
   <translation>Une pente de 0 est connue, non inconnue</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Across</source>
   <translation>En travers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Across Flats</source>
   <translation>Sur plats</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Adhesive</source>
   <translation>Colle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>After cutting</source>
   <translation>Après la coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Along</source>
   <translation>En long</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Altitude</source>
   <translation>Altitude</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Angle between figure and leaf; 0 if it is not known</source>
   <translation>Angle entre dessin et feuille ; 0 s'il n'est pas connu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Angle of both halves, degrees</source>
   <translation>Angle des deux moitiés, degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Angle of each wedge, degrees</source>
   <translation>Angle de chaque secteur, degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Angle, x and y of the bundle on the back, where it was photographed</source>
   <translation>Angle, x et y de la liasse sur le dos, là où il a été photographié</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Angle, x and y of the bundle on the photo of the back, where it is not the register</source>
   <translation>Angle, x et y de la liasse sur la photo du dos, là où ce n'est pas le calage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Angle, x and y of the bundle on the photo of the face, where it is not the register</source>
   <translation>Angle, x et y de la liasse sur la photo de la face, là où ce n'est pas le calage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Approved By</source>
   <translation>Approuvé par</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>As in a match</source>
   <translation>Comme dans un frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>At Once</source>
   <translation>En une fois</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Auto Placement</source>
   <translation>Placement automatique</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Axis</source>
   <translation>Axe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Back</source>
   <translation>Dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Gains</source>
   <translation>Gains du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Mm Per Px</source>
   <translation>mm par pixel du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Original Mm Per Px</source>
   <translation>mm par pixel de l'original du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Original Name</source>
   <translation>Nom de l'original du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Original Sha256</source>
   <translation>SHA-256 de l'original du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Photo</source>
   <translation>Photo du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Tie</source>
   <translation>Liaison du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Tie Error</source>
   <translation>Erreur de la liaison</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Tie Rms</source>
   <translation>rms de la liaison</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer</source>
   <translation>Contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer From</source>
   <translation>Contre-parement de</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer Grain</source>
   <translation>Fil contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer Material</source>
   <translation>Matériau contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer Thickness</source>
   <translation>Épaisseur contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Base</source>
   <translation>Base</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Before cutting</source>
   <translation>Avant la coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Before veneering it lies under the veneer; after, it is as high as the panel</source>
   <translation>Avant placage, elle est sous le placage ; après, elle est aussi haute que le panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Bench</source>
   <translation>Établi</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Boards</source>
   <translation>Planches</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Boards Beyond</source>
   <translation>Débord des planches</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Book or slip</source>
   <translation>En livre ouvert ou glissé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Book: every second leaf turned over; slip: none or all; side by side also end for end, or out of order</source>
   <translation>Livre ouvert : une feuille sur deux retournée ; glissé : aucune ou toutes ; côte à côte aussi tête-bêche, ou hors suite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border</source>
   <translation>Bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Grain</source>
   <translation>Fil de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Kind</source>
   <translation>Genre de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Material</source>
   <translation>Matériau de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Segments</source>
   <translation>Pièces de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Width</source>
   <translation>Largeur de bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Build Up</source>
   <translation>Composition</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Bundle</source>
   <translation>Liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>By how much all edges are out alike, square to them; less than 0: in</source>
   <translation>De combien tous les bords sont décalés vers le dehors, d'équerre ; moins de 0 : vers le dedans</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>By what angle of the tip</source>
   <translation>De quel angle à la pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>By what width on each seam</source>
   <translation>De quelle largeur sur chaque joint</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Centre X</source>
   <translation>Centre X</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Centre Y</source>
   <translation>Centre Y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Centres of the paper marks on it, mm; the third coordinate is 0 for mark A, 1 for B</source>
   <translation>Centres des repères en papier dessus, mm ; la troisième coordonnée est 0 pour le repère A, 1 pour B</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Changed Pieces</source>
   <translation>Pièces changées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Checks</source>
   <translation>Contrôles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Claimed</source>
   <translation>Promis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Climate</source>
   <translation>Climat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Climate Known</source>
   <translation>Climat connu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Close Between</source>
   <translation>Fermer entre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Closing</source>
   <translation>Fermeture</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Colour change, grain change, seams and closing seam as they were measured; empty if they were not</source>
   <translation>Couleur, fil, joints et joint de fermeture tels que mesurés ; vide s'ils ne l'ont pas été</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Common</source>
   <translation>Commun</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Confidence</source>
   <translation>Certitude</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core</source>
   <translation>Âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Grain</source>
   <translation>Fil d'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Kind</source>
   <translation>Genre d'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Material</source>
   <translation>Matériau d'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Moves</source>
   <translation>Travail de l'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Sawn</source>
   <translation>Débit d'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Thickness</source>
   <translation>Épaisseur d'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Corner Way</source>
   <translation>Voie des coins</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Cost</source>
   <translation>Coût</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Count</source>
   <translation>Nombre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Created By</source>
   <translation>Créé par</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Above</source>
   <translation>Pli croisé dessus</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Below</source>
   <translation>Pli croisé dessous</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Grain</source>
   <translation>Fil des plis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Material</source>
   <translation>Matériau des plis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossbands</source>
   <translation>Plis croisés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Currency</source>
   <translation>Devise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Cut</source>
   <translation>Coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Cut As</source>
   <translation>Coupé en</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Cut By</source>
   <translation>Coupé par</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Cut To</source>
   <translation>Coupé à</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Cut from the middle of the leaves</source>
   <translation>Couper au milieu des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Cutting</source>
   <translation>Coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Date</source>
   <translation>Date</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Degrees between the grain (in a herringbone the strips) and the level</source>
   <translation>Degrés entre le fil (dans des chevrons les bandes) et l'horizontale</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Degrees that the measured ring is over 360</source>
   <translation>Degrés dont la couronne mesurée dépasse 360</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Diameter</source>
   <translation>Diamètre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of a disc that is let in about the centre: the wedges end at it; 0: none</source>
   <translation>Diamètre d'un disque incrusté autour du centre : les secteurs s'y arrêtent ; 0 : aucun</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Diameter of a ram</source>
   <translation>Diamètre d'un vérin</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of a round top</source>
   <translation>Diamètre d'un plateau rond</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Diameter of the disc</source>
   <translation>Diamètre du disque</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of the inner ring</source>
   <translation>Diamètre de la couronne intérieure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of what will lie on the centre and cover it, where no disc is let in: faults may lie under it; 0: none</source>
   <translation>Diamètre de ce qui reposera sur le centre et le couvrira, là où aucun disque n'est incrusté : des défauts peuvent être dessous ; 0 : rien</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the backer's grain on the top</source>
   <translation>Direction du fil du contre-parement sur le plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the core's grain on the top</source>
   <translation>Direction du fil de l'âme sur le plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the crossbands' grain on the top; across the core's</source>
   <translation>Direction du fil des plis croisés sur le plateau ; en travers de celui de l'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Direction of the first wedge's axis on the top</source>
   <translation>Direction de l'axe du premier secteur sur le plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Direction of the grain, counter-clockwise from up; from global y on a level face</source>
   <translation>Direction du fil, en sens inverse des aiguilles depuis le haut ; depuis l'axe y global sur une face horizontale</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the inlay's grain on the top</source>
   <translation>Direction du fil de l'incrustation sur le plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the star's first tip</source>
   <translation>Direction de la première pointe de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Direction of the strips on the top; 90 is upright</source>
   <translation>Direction des bandes sur le plateau ; 90 est debout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Disc Diameter</source>
   <translation>Diamètre du disque</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Drawing</source>
   <translation>Plan</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Drawn By</source>
   <translation>Dessiné par</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Each panel's face and leaves</source>
   <translation>La face et les feuilles de chaque panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Edition</source>
   <translation>Édition</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>End Kind</source>
   <translation>Genre de bout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Ends</source>
   <translation>Extrémités</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Error</source>
   <translation>Erreur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Even Light</source>
   <translation>Égaliser la lumière</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Explode</source>
   <translation>Éclaté</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Face</source>
   <translation>Face</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Face Down</source>
   <translation>Parement dessous</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Faces</source>
   <translation>Faces</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Facing</source>
   <translation>Revêtement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Fault Kinds</source>
   <translation>Genres de défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Fault Outlines</source>
   <translation>Contours des défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Fault Shapes</source>
   <translation>Formes des défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Faults</source>
   <translation>Défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>File Unit</source>
   <translation>Unité des fichiers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Findings</source>
   <translation>Constats</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>First</source>
   <translation>Première</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>First Piece</source>
   <translation>Première pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Flitch</source>
   <translation>Quartelle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Follows</source>
   <translation>Suit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Fraction</source>
   <translation>Fraction</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>From the centre to the star's hollows</source>
   <translation>Du centre aux creux de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>From the centre to the star's tips</source>
   <translation>Du centre aux pointes de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Full M2</source>
   <translation>Total m2</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Full Sq Ft</source>
   <translation>Total pieds carrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Gains</source>
   <translation>Gains</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gap in mm under a straightedge on each half: at the tip; less than 0: at an end</source>
   <translation>Jeu en mm sous une règle sur chaque moitié : à la pointe ; moins de 0 : à un bout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gaps</source>
   <translation>Jeux</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gaps At</source>
   <translation>Jeux à</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gaps Unsure</source>
   <translation>Jeux incertains</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Gauge</source>
   <translation>Manomètre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Grain</source>
   <translation>Fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Grain along the edge or across it</source>
   <translation>Fil le long du bord ou en travers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Halves</source>
   <translation>Moitiés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Halves Unsure</source>
   <translation>Moitiés incertaines</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Height of leaves cut at once; 0 for leaf by leaf</source>
   <translation>Hauteur des feuilles coupées en une fois ; 0 pour feuille à feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Hidden Disc</source>
   <translation>Disque cachant</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How</source>
   <translation>Comment</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>How a solid core was sawn</source>
   <translation>Comment une âme massive a été débitée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>How far apart the parts are drawn; 0: as built</source>
   <translation>De combien les éléments sont écartés au dessin ; 0 : tel que construit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far boards reach beyond the cuts</source>
   <translation>De combien les planches dépassent les coupes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How far from the tip it rests or gapes, mm</source>
   <translation>À quelle distance de la pointe elle repose ou bâille, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far pins keep from a leaf's edge and faults</source>
   <translation>À quelle distance du bord d'une feuille et de ses défauts restent les pions</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far pins keep from every cut</source>
   <translation>À quelle distance de chaque coupe restent les pions</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far the blade may stand off square</source>
   <translation>De combien la lame peut s'écarter de l'équerre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How far the blanks reach beyond the finished edge</source>
   <translation>De combien les ébauches dépassent le bord fini</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>How far the figure is turned on this leaf</source>
   <translation>De combien le dessin est tourné sur cette feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How far the figure wanders from face to back, measured on photographed backs: mm across, mm along, and mm that this may be off; empty while it is not known</source>
   <translation>De combien le dessin dérive de la face au dos, mesuré sur des dos photographiés : mm en travers, mm en long, et mm d'erreur possible ; vide tant que ce n'est pas connu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>How far the leaf is moved along its grain</source>
   <translation>De combien la feuille est déplacée le long de son fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>How far the leaf is moved to the right, seen with the grain upright</source>
   <translation>De combien la feuille est déplacée vers la droite, vue le fil debout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How high the shop lies above the sea, m</source>
   <translation>À quelle altitude est l'atelier, m</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How it was cut: sliced flat, on the quarter</source>
   <translation>Comment il a été coupé : tranché à plat, sur quartier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>How many faces there were</source>
   <translation>Combien de faces il y avait</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>How many leaves are thought lost between the bundles</source>
   <translation>Combien de feuilles sont supposées perdues entre les liasses</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How many leaves there are</source>
   <translation>Combien de feuilles il y a</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many leaves; 0: as many as the width needs</source>
   <translation>Combien de feuilles ; 0 : autant que la largeur en demande</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How many rams; 0 for a press without a gauge</source>
   <translation>Combien de vérins ; 0 pour une presse sans manomètre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How many readings are missing</source>
   <translation>Combien de lectures manquent</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How many such tops are made of the bundle</source>
   <translation>Combien de tels plateaux sont faits dans la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many unused leaves should be left over</source>
   <translation>Combien de feuilles inutilisées doivent rester</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>How many wedges meet at the centre</source>
   <translation>Combien de secteurs se rejoignent au centre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many wedges meet at the centre: 3 to 64, even for book</source>
   <translation>Combien de secteurs se rejoignent au centre : 3 à 64, pair en livre ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many wedges the inner ring has</source>
   <translation>Combien de secteurs a la couronne intérieure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How much over the seams are cut: not at all, by an angle of the tip, or by a width</source>
   <translation>De combien les joints sont coupés plus larges : pas du tout, d'un angle à la pointe, ou d'une largeur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How often leaves were renumbered or turned: paper made before is stale</source>
   <translation>Combien de fois des feuilles ont été renumérotées ou retournées : le papier d'avant est périmé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How strips share the face: of one width, full ones and a rest, with a joint in the centre, or mirrored there</source>
   <translation>Comment les bandes se partagent la face : d'une largeur, pleines avec un reste, avec un joint au centre, ou en miroir là</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How sure it is to be that truing suffices</source>
   <translation>Avec quelle certitude le dressage doit suffire</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How the leaves are laid</source>
   <translation>Comment les feuilles sont posées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How the leaves lie on each other</source>
   <translation>Comment les feuilles sont posées les unes sur les autres</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How the leaves were cut from the log</source>
   <translation>Comment les feuilles ont été coupées de la grume</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>How the lipping was sawn</source>
   <translation>Comment l'alaise a été débitée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How the ring closes</source>
   <translation>Comment la couronne se ferme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How the ring is trued</source>
   <translation>Comment la couronne est dressée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How the stack is cut: by knife in lifts, by saw in boards, by machine leaf by leaf</source>
   <translation>Comment la pile est coupée : au couteau par paquets, à la scie entre planches, à la machine feuille à feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How turned leaves are pinned once the wander is known: as their faces are, or by the figure of their backs</source>
   <translation>Comment les feuilles retournées sont pionnées une fois la dérive connue : comme leurs faces, ou par le dessin de leurs dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How wide a strip may be from seam to seam; 0: as the leaves have room (herringbone: 100 mm)</source>
   <translation>Largeur permise d'une bande de joint à joint ; 0 : selon la place des feuilles (chevrons : 100 mm)</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Identification number of the drawing</source>
   <translation>Numéro d'identification du plan</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>In % when photographed; 0 if not known</source>
   <translation>En % au moment de la photo ; 0 si non connue</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>In which order the leaves of an end match lie</source>
   <translation>Dans quel ordre sont les feuilles d'un joint en bout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay</source>
   <translation>Incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Diameter</source>
   <translation>Diamètre d'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Grain</source>
   <translation>Fil d'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Inner</source>
   <translation>Incrustation dedans</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Material</source>
   <translation>Matériau d'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Outer</source>
   <translation>Incrustation dehors</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Points</source>
   <translation>Pointes d'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Turn</source>
   <translation>Rotation d'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Inner Diameter</source>
   <translation>Diamètre intérieur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Inner Ways</source>
   <translation>Secteurs intérieurs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Inventory</source>
   <translation>Inventaire</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Kerf</source>
   <translation>Trait de coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Kind</source>
   <translation>Genre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Leaf</source>
   <translation>Feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaf Order</source>
   <translation>Ordre des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Lean</source>
   <translation>Inclinaison</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Least Length</source>
   <translation>Longueur minimale</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Least Width</source>
   <translation>Largeur minimale</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Leaves</source>
   <translation>Feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaves side by side in each wedge, slip matched</source>
   <translation>Feuilles côte à côte dans chaque secteur, glissées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Leaves that have no room for wedges of the advised angle</source>
   <translation>Feuilles sans place pour des secteurs de l'angle conseillé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Length</source>
   <translation>Longueur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Length of platen or bag</source>
   <translation>Longueur du plateau de presse ou du sac</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Length of the base that the template is set out over; 0: as the seams want</source>
   <translation>Longueur de la base sur laquelle le gabarit est tracé ; 0 : comme les joints le veulent</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Length of the top along x; side of a square</source>
   <translation>Longueur du plateau selon x ; côté d'un carré</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Length over which the wedge's angle is set out; 0 to have it chosen</source>
   <translation>Longueur sur laquelle l'angle du secteur est tracé ; 0 pour la laisser choisir</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Light</source>
   <translation>Lumière</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Line Material</source>
   <translation>Matériau de filet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Line Segments</source>
   <translation>Pièces de filet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Line Width</source>
   <translation>Largeur de filet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping</source>
   <translation>Alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Material</source>
   <translation>Matériau d'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Moves</source>
   <translation>Travail de l'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Sawn</source>
   <translation>Débit d'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Segments</source>
   <translation>Pièces d'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping When</source>
   <translation>Alaise quand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Width</source>
   <translation>Largeur d'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Lot Mark</source>
   <translation>Marque du lot</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Made Humidity</source>
   <translation>Humidité d'atelier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Made Temperature</source>
   <translation>Température d'atelier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Margin</source>
   <translation>Marge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Marks</source>
   <translation>Repères</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Match</source>
   <translation>Frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Measures</source>
   <translation>Mesures</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Message</source>
   <translation>Message</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Missing</source>
   <translation>Manquantes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Mitred at corners, straight and butted, or following the edge</source>
   <translation>À onglet aux coins, droite à plat joint, ou suivant le bord</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Mm Per Px</source>
   <translation>mm par pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Mode</source>
   <translation>Mode</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Moisture</source>
   <translation>Humidité</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture Known</source>
   <translation>Humidité connue</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture Unsure</source>
   <translation>Humidité incertaine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture in % when cut</source>
   <translation>Humidité en % à la coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture in % when photographed</source>
   <translation>Humidité en % à la photo</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture in % when taped</source>
   <translation>Humidité en % à l'assemblage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Most Pressure</source>
   <translation>Pression maximale</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moves</source>
   <translation>Travaille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Name of the adhesive</source>
   <translation>Nom de la colle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Name of the back's own file</source>
   <translation>Nom du fichier propre du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Name of the photograph's own file</source>
   <translation>Nom du fichier propre de la photo</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Names</source>
   <translation>Noms</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>No Room</source>
   <translation>Sans place</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Notes</source>
   <translation>Notes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Number</source>
   <translation>Numéro</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Of a blueprint. Closed: gaps take none of the figure; laid through: what lies in them is lost</source>
   <translation>D'un plan d'ensemble. Fermés : les jeux ne prennent rien du dessin ; laissés passer : ce qui s'y trouve est perdu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Of the narrowest leaf's outline</source>
   <translation>Du contour de la feuille la plus étroite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Of the shortest leaf's outline</source>
   <translation>Du contour de la feuille la plus courte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Of the whole bundle; 0 if not known</source>
   <translation>De toute la liasse ; 0 si non connu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Of the workshop, % relative humidity</source>
   <translation>De l'atelier, % d'humidité relative</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Of the workshop, degrees C</source>
   <translation>De l'atelier, degrés C</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Of which kind each solid is</source>
   <translation>De quel genre est chaque solide</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Old</source>
   <translation>Ancien</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>On Outline</source>
   <translation>Sur le contour</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Open Time</source>
   <translation>Temps ouvert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Open time by its sheet, minutes; 0: not looked up</source>
   <translation>Temps ouvert selon sa fiche, minutes ; 0 : non consultée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Order</source>
   <translation>Ordre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Origin</source>
   <translation>Origine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original</source>
   <translation>Original</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original Mm Per Px</source>
   <translation>mm par pixel de l'original</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original Name</source>
   <translation>Nom de l'original</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original Sha256</source>
   <translation>SHA-256 de l'original</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Other matches that are cut from the same stack</source>
   <translation>Autres frisages coupés dans la même pile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Outline Centre</source>
   <translation>Centre du contour</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Outline Of</source>
   <translation>Contour de</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Outline of what may be used, mm; empty for the whole leaf</source>
   <translation>Contour de ce qui est utile, mm ; vide pour toute la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Outlines of faults through all leaves, mm</source>
   <translation>Contours des défauts à travers toutes les feuilles, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Outlines of faults, mm</source>
   <translation>Contours des défauts, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Over</source>
   <translation>En plus</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Oversize</source>
   <translation>Surcote</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Owner</source>
   <translation>Propriétaire</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Panel</source>
   <translation>Panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Panel Numbers</source>
   <translation>Numéros des panneaux</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Panels</source>
   <translation>Panneaux</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Parts between two corners, or all round where there are none</source>
   <translation>Pièces entre deux coins, ou tout autour s'il n'y en a pas</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Photo</source>
   <translation>Photo</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Photographed</source>
   <translation>Photographié</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Photographs are shown with the gains that even their light, where they have any</source>
   <translation>Les photos sont montrées avec les gains qui égalisent leur lumière, si elles en ont</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Picked</source>
   <translation>Choisis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Picture</source>
   <translation>Image</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Piece Error</source>
   <translation>Erreur par pièce</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Pin Backs</source>
   <translation>Pionner les dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Pin Margin</source>
   <translation>Pion - bord</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Pins Clear</source>
   <translation>Pion - coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Placement on bundle</source>
   <translation>Placement sur la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Points of the figure that were picked on it to lay the leaves by, mm</source>
   <translation>Points du dessin choisis dessus pour poser les feuilles d'après eux, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Points of the star</source>
   <translation>Pointes de l'étoile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Position</source>
   <translation>Position</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press</source>
   <translation>Presse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Length</source>
   <translation>Longueur de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Margin</source>
   <translation>Marge de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Thickness</source>
   <translation>Épaisseur de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Time</source>
   <translation>Temps de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Width</source>
   <translation>Largeur de presse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Pressure</source>
   <translation>Pression</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Price</source>
   <translation>Prix</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Price Per</source>
   <translation>Prix par</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Price of the veneer; 0: that of the bundle's particulars</source>
   <translation>Prix du placage ; 0 : celui des renseignements de la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Ram Diameter</source>
   <translation>Diamètre de vérin</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Rams</source>
   <translation>Vérins</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Reading</source>
   <translation>Lecture</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register</source>
   <translation>Calage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register Angle</source>
   <translation>Calage, angle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register X</source>
   <translation>Calage X</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register Y</source>
   <translation>Calage Y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Registers</source>
   <translation>Calages</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Report</source>
   <translation>Rapport</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Result</source>
   <translation>Résultat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Revision</source>
   <translation>Indice</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Rim</source>
   <translation>Pourtour</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Room round the blank</source>
   <translation>Place autour de l'ébauche</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Rows</source>
   <translation>Rangs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Rows of a continuous end match</source>
   <translation>Rangs d'un joint en bout continu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Run</source>
   <translation>Série</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>SHA-256 of the back's own file</source>
   <translation>SHA-256 du fichier propre du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>SHA-256 of the photograph's own file</source>
   <translation>SHA-256 du fichier propre de la photo</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Sawn</source>
   <translation>Débit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Scale</source>
   <translation>Échelle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the back's original: mm per pixel</source>
   <translation>Échelle de l'original du dos : mm par pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the back's working copy: mm per pixel</source>
   <translation>Échelle de la copie de travail du dos : mm par pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the original: mm per pixel</source>
   <translation>Échelle de l'original : mm par pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Scale of the plan</source>
   <translation>Échelle du plan</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Scale of the wedge</source>
   <translation>Échelle du secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the working copy: mm per pixel</source>
   <translation>Échelle de la copie de travail : mm par pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Seam Angle</source>
   <translation>Angle de joint</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Seam Width</source>
   <translation>Largeur de joint</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Seams Cut</source>
   <translation>Joints coupés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Second</source>
   <translation>Seconde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Seed</source>
   <translation>Mélange</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Sequence: panels of one size, each from the next leaves; blueprint: one field on all</source>
   <translation>Suite : panneaux d'une taille, chacun dans les feuilles suivantes ; plan d'ensemble : un champ sur tous</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Set Out Base</source>
   <translation>Base de tracé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Set Out Offset</source>
   <translation>Écart de tracé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Sheet goods keep still, solid wood moves</source>
   <translation>Les panneaux dérivés ne bougent pas, le bois massif travaille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Sheets</source>
   <translation>Planches</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Shifted</source>
   <translation>Décalé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Sides</source>
   <translation>Côtés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Sides of a polygon</source>
   <translation>Côtés d'un polygone</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Size across the leaf</source>
   <translation>Taille en travers de la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Size along the grain</source>
   <translation>Taille le long du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Sketches, wires and flat faces drawn round faults through all leaves; what each is its name says: margin, split, knot, patch or stain</source>
   <translation>Esquisses, polylignes et faces planes tracées autour de défauts à travers toutes les feuilles ; leur nom dit ce que c'est : margin, split, knot, patch ou stain</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Slant</source>
   <translation>Biais</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Slope</source>
   <translation>Pente</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Slope Known</source>
   <translation>Pente connue</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Spares</source>
   <translation>Réserve</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Species</source>
   <translation>Essence</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Spot</source>
   <translation>Emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Spread</source>
   <translation>Grammage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error in % of the change from cut to taping</source>
   <translation>Écart type en % du changement entre coupe et assemblage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of each wedge for itself: knife, lean, edge</source>
   <translation>Écart type de chaque secteur pour lui-même : couteau, inclinaison, bord</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of that</source>
   <translation>Écart type de cela</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of the gaps, mm</source>
   <translation>Écart type des jeux, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of the measured wedges by which the diameter is chosen; 0: it is fixed beforehand</source>
   <translation>Écart type des secteurs mesurés d'après lesquels le diamètre est choisi ; 0 : il est fixé d'avance</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of the template's angle, the same in every wedge of one stack</source>
   <translation>Écart type de l'angle du gabarit, le même pour chaque secteur d'une pile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Stands Humidity</source>
   <translation>Humidité du lieu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Stands Temperature</source>
   <translation>Température du lieu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Start</source>
   <translation>Départ</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>State</source>
   <translation>État</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/stock.py" />
   <source>Stock</source>
   <translation>Stock</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Stringing line</source>
   <translation>Filet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Strip Width</source>
   <translation>Largeur de bande</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Strips</source>
   <translation>Bandes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Taping</source>
   <translation>Assemblage au papier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Template Error</source>
   <translation>Erreur de gabarit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Template Stays</source>
   <translation>Le gabarit reste</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Templates</source>
   <translation>Gabarits</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The angle that the template gets, degrees</source>
   <translation>L'angle que reçoit le gabarit, degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The blank's rim: parallel to the edge, or one straight</source>
   <translation>Le pourtour de l'ébauche : parallèle au bord, ou un seul droit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The bundle or stock that the backer is taken from; none: give its thickness</source>
   <translation>La liasse ou le stock d'où vient le contre-parement ; aucun : donnez son épaisseur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The bundle or stock that the run is cut from</source>
   <translation>La liasse ou le stock dans lequel la série est coupée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The bundle or stock that the top is cut from</source>
   <translation>La liasse ou le stock dans lequel le plateau est coupé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The core's radial and tangential movement for each % of moisture, such as 0.0019 0.00274; empty: by the material's name</source>
   <translation>Mouvement radial et tangentiel de l'âme pour chaque % d'humidité, par exemple 0.0019 0.00274 ; vide : d'après le nom du matériau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sheets.py" />
   <source>The drawing that the view is part of</source>
   <translation>Le plan dont la vue fait partie</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>The faces, as last seen</source>
   <translation>Les faces, telles que vues la dernière fois</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The finest part of an inch that is written</source>
   <translation>La plus fine part de pouce qui est écrite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The first leaf that is used</source>
   <translation>La première feuille utilisée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The flat faces in one plane, one a panel</source>
   <translation>Les faces planes d'un même plan, une par panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>The flat faces that it is shown on</source>
   <translation>Les faces planes sur lesquelles elle est montrée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The flitch that it came from</source>
   <translation>La quartelle d'où elle vient</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>The leaf is turned over and shows its back</source>
   <translation>La feuille est retournée et montre son dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The leaf of each position</source>
   <translation>La feuille de chaque position</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>The leaf that is shown</source>
   <translation>La feuille qui est montrée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>The leaf's place in the bundle as it came off the log</source>
   <translation>La place de la feuille dans la liasse, telle qu'elle vient de la grume</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The least over to cut every wedge, degrees</source>
   <translation>Le moins dont couper chaque secteur plus large, degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>The leaves or the top have changed since the picture was made</source>
   <translation>Les feuilles ou le plateau ont changé depuis que l'image a été faite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The leaves that it takes</source>
   <translation>Les feuilles qu'elle prend</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves' numbers</source>
   <translation>Les numéros des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves, in any order: their numbers count</source>
   <translation>Les feuilles, dans n'importe quel ordre : leurs numéros comptent</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The lipping's radial and tangential movement for each % of moisture, such as 0.0019 0.00274; empty: by the material's name</source>
   <translation>Mouvement radial et tangentiel de l'alaise pour chaque % d'humidité, par exemple 0.0019 0.00274 ; vide : d'après le nom du matériau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The mark of its lot</source>
   <translation>La marque de son lot</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The mark of the layout drawn</source>
   <translation>L'indice de la disposition dessinée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The mark of the layout on the sheets</source>
   <translation>L'indice de la disposition sur les planches</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The match that goes to the bench</source>
   <translation>Le frisage qui va à l'établi</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The match that is drawn</source>
   <translation>Le frisage qui est dessiné</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The match that shows on the panel</source>
   <translation>Le frisage qui se voit sur le panneau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>The match that would be cut here</source>
   <translation>Le frisage qui serait coupé ici</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The money that it is in</source>
   <translation>La monnaie dans laquelle il est</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The most that gauge or pump can show, in the unit of the gauge; 0: not known</source>
   <translation>Le maximum que le manomètre ou la pompe peut montrer, dans l'unité du manomètre ; 0 : non connu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The number of the panel on each face</source>
   <translation>Le numéro du panneau sur chaque face</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The paper of the sheets</source>
   <translation>Le papier des planches</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The paper that 1:1 templates are tiled on</source>
   <translation>Le papier sur lequel les gabarits 1:1 sont répartis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The piece before which the diameter to leave open begins; 0: none is known</source>
   <translation>La pièce avant laquelle commence le diamètre à laisser ouvert ; 0 : aucun n'est connu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The piece that begins the first of two measured halves</source>
   <translation>La pièce qui commence la première des deux moitiés mesurées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The pieces are taped with their show face down</source>
   <translation>Les pièces sont assemblées parement dessous</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The positions that show their leaf's back</source>
   <translation>Les positions qui montrent le dos de leur feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The positions that the last change altered</source>
   <translation>Les positions que le dernier changement a touchées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The protractor's own standard error, alike in all readings</source>
   <translation>Écart type propre du rapporteur, le même dans toutes les lectures</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The radial match whose ring is to close</source>
   <translation>Le frisage rayonnant dont la couronne doit se fermer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The same in square feet</source>
   <translation>De même en pieds carrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The set-out's base</source>
   <translation>La base du tracé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The set-out's offset to each side</source>
   <translation>L'écart du tracé de chaque côté</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The share of rings that truing then suffices for</source>
   <translation>La part des couronnes pour lesquelles le dressage suffit alors</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The template's angle; 0 if it is exact</source>
   <translation>L'angle du gabarit ; 0 s'il est exact</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>The top as it looked when the spot was kept</source>
   <translation>Le plateau tel qu'il était quand l'emplacement a été gardé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The top lies where its outline lies, as it is moved</source>
   <translation>Le plateau est là où est son contour, et le suit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The top's outline</source>
   <translation>Le contour du plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The unit of the gauge</source>
   <translation>L'unité du manomètre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The veneer's moisture is known when it is photographed, cut and taped</source>
   <translation>L'humidité du placage est connue à la photo, à la coupe et à l'assemblage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The wood</source>
   <translation>Le bois</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The wood by name, or its change of width for each % of moisture; empty: the wood of the bundle</source>
   <translation>Le bois par son nom, ou son changement de largeur par % d'humidité ; vide : le bois de la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Their standard error</source>
   <translation>Leur écart type</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness</source>
   <translation>Épaisseur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Thickness of a leaf</source>
   <translation>Épaisseur d'une feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Thickness of all that lies in it: core, veneers, cauls</source>
   <translation>Épaisseur de tout ce qui y est : âme, placages, cales</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Thickness of each sandwich board; 0: none</source>
   <translation>Épaisseur de chaque planche du sandwich ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the core</source>
   <translation>Épaisseur de l'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the layer between core and backer; 0: none</source>
   <translation>Épaisseur de la couche entre âme et contre-parement ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the layer between core and show veneer; 0: none</source>
   <translation>Épaisseur de la couche entre âme et placage de parement ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the panel, veneers and all</source>
   <translation>Épaisseur du panneau, placages compris</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the veneer on the under side; 0: none</source>
   <translation>Épaisseur du placage du dessous ; 0 : aucun</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Tight Side</source>
   <translation>Côté fermé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Tile Paper</source>
   <translation>Papier réparti</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Time in the press, minutes; 0: not looked up</source>
   <translation>Temps sous presse, minutes ; 0 : non consulté</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Tip X</source>
   <translation>Pointe X</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Tip Y</source>
   <translation>Pointe Y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Title</source>
   <translation>Titre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Title block</source>
   <translation>Cartouche</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Title; empty for the match's name</source>
   <translation>Titre ; vide pour le nom du frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>To keep between a blank and the edge of what may be used</source>
   <translation>À garder entre une ébauche et le bord de ce qui est utile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Together</source>
   <translation>Ensemble</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Tool</source>
   <translation>Outil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Top</source>
   <translation>Plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Tops</source>
   <translation>Plateaux</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Trial Count</source>
   <translation>Secteurs d'essai</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Trial Sum</source>
   <translation>Somme d'essai</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Trial Unsure</source>
   <translation>Essai incertain</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Turn</source>
   <translation>Retourner</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Turned</source>
   <translation>Retournée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Turned Positions</source>
   <translation>Positions retournées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Twice the distance from the centre to a polygon's flat</source>
   <translation>Deux fois la distance du centre au plat d'un polygone</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Two positions whose seam is closed last; empty to have it chosen</source>
   <translation>Deux positions dont le joint est fermé en dernier ; vide pour le laisser choisir</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Unit</source>
   <translation>Unité</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Usable</source>
   <translation>Utile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Usable M2</source>
   <translation>Utile m2</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Usable Shape</source>
   <translation>Forme utile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Usable Sq Ft</source>
   <translation>Utile pieds carrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Wander</source>
   <translation>Dérive</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Ways</source>
   <translation>Secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Wedge Angle</source>
   <translation>Angle de secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Wedge Scale</source>
   <translation>Échelle de secteur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges</source>
   <translation>Secteurs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges To</source>
   <translation>Secteurs à</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges Unsure</source>
   <translation>Secteurs incertains</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges of a test cut by the template as it is set; 0: none was made. The template's error then comes from it</source>
   <translation>Secteurs d'une coupe d'essai au gabarit tel qu'il est réglé ; 0 : aucune. L'erreur du gabarit en vient alors</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What each fault is</source>
   <translation>Ce qu'est chaque défaut</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What each of those faults is</source>
   <translation>Ce qu'est chacun de ces défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What each solid is, in their order</source>
   <translation>Ce qu'est chaque solide, dans leur ordre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What evens the light of the back's photograph: red, green, blue; empty for nothing</source>
   <translation>Ce qui égalise la lumière de la photo du dos : rouge, vert, bleu ; vide pour rien</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What evens the light of the photograph: red, green, blue; empty for nothing</source>
   <translation>Ce qui égalise la lumière de la photo : rouge, vert, bleu ; vide pour rien</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What files for machines are in</source>
   <translation>En quoi sont les fichiers pour machines</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What is let in about the match's centre</source>
   <translation>Ce qui est incrusté autour du centre du frisage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>What is to be said, the gravest first</source>
   <translation>Ce qu'il y a à dire, le plus grave d'abord</translation>
  </message>
  <message>
   <location filename="veneerwb/host/listed.py" />
   <source>What it is a list of</source>
   <translation>De quoi c'est la liste</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What lengths are written in</source>
   <translation>En quoi les longueurs sont écrites</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What presses the veneer</source>
   <translation>Ce qui presse le placage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the adhesive's sheet asks for, in the unit of the gauge; 0: not looked up</source>
   <translation>Ce que demande la fiche de la colle, dans l'unité du manomètre ; 0 : non consultée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the backer is of</source>
   <translation>En quoi est le contre-parement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the blade takes, on the waste side</source>
   <translation>Ce que la lame enlève, du côté de la chute</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the border is of</source>
   <translation>En quoi est la bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the checks found, the gravest first</source>
   <translation>Ce que les contrôles ont trouvé, le plus grave d'abord</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the core is of</source>
   <translation>En quoi est l'âme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What the cost is in</source>
   <translation>En quoi est le coût</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the crossbands are of</source>
   <translation>En quoi sont les plis croisés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>What the faces lie in and where the back's picture comes from</source>
   <translation>Dans quoi sont les faces et d'où vient l'image du dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the inlay is of</source>
   <translation>En quoi est l'incrustation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>What the leaves were chosen by</source>
   <translation>D'après quoi les feuilles ont été choisies</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What the leaves' registers follow: nothing, the figure, the log, or picked marks</source>
   <translation>Ce que suivent les calages des feuilles : rien, le dessin, la grume, ou des repères choisis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the line is of</source>
   <translation>En quoi est le filet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the lipping is of</source>
   <translation>En quoi est l'alaise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/listed.py" />
   <source>What the list was made from</source>
   <translation>De quoi la liste a été faite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/shop_pages.py" />
   <source>What the page is made from</source>
   <translation>De quoi la page est faite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>What the panel is built up of; the match is laid within its border</source>
   <translation>De quoi le panneau est composé ; le frisage est posé à l'intérieur de sa bordure</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>What the picture was made from</source>
   <translation>De quoi l'image a été faite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the price is for</source>
   <translation>Pour quoi est le prix</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the shape was made from</source>
   <translation>De quoi la forme a été faite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the sheets were made from</source>
   <translation>De quoi les planches ont été faites</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sheets.py" />
   <source>What the view shows on its page</source>
   <translation>Ce que la vue montre sur sa page</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>What the wedges of the test cut make, laid tip to tip</source>
   <translation>Ce que font les secteurs de la coupe d'essai, posés pointe à pointe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What ties the back to the face: outline or marks</source>
   <translation>Ce qui lie le dos à la face : contour ou repères</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>What was measured</source>
   <translation>Ce qui a été mesuré</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What was said of the photographs brought in</source>
   <translation>Ce qui a été dit des photos importées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What was said when it was brought in</source>
   <translation>Ce qui a été dit à l'importation</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>When Cut</source>
   <translation>À la coupe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>When Taped</source>
   <translation>À l'assemblage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>When these sheets were made</source>
   <translation>Quand ces planches ont été faites</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>When this layout was first drawn</source>
   <translation>Quand cette disposition a été dessinée pour la première fois</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Where it comes from, and its papers</source>
   <translation>D'où il vient, et ses papiers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the bundle the match is cut (a wedge's tip), across the leaf</source>
   <translation>Où le frisage est coupé dans la liasse (la pointe d'un secteur), en travers de la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the bundle the match is cut (a wedge's tip), along the grain</source>
   <translation>Où le frisage est coupé dans la liasse (la pointe d'un secteur), le long du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the top the wedges meet, along x</source>
   <translation>Où les secteurs se rejoignent sur le plateau, selon x</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the top the wedges meet, along y</source>
   <translation>Où les secteurs se rejoignent sur le plateau, selon y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where pieces differ: all cut as one stack by what they take together, in lots by shape, or each piece by itself</source>
   <translation>Là où les pièces diffèrent : toutes en une pile selon ce qu'elles prennent ensemble, en lots par forme, ou chaque pièce à part</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Where the bundle's origin lies on this leaf, across</source>
   <translation>Où l'origine de la liasse se trouve sur cette feuille, en travers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Where the bundle's origin lies on this leaf, along</source>
   <translation>Où l'origine de la liasse se trouve sur cette feuille, en long</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where the match's centre lies: the centroid of the outline without its openings, or the origin of the sketch</source>
   <translation>Où est le centre du frisage : au centroïde du contour sans ses ouvertures, ou à l'origine de l'esquisse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Where the panel will stand, % relative humidity: the worst of the year</source>
   <translation>Où le panneau sera, % d'humidité relative : le pire de l'année</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Where the panel will stand, degrees C</source>
   <translation>Où le panneau sera, degrés C</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Where the wedges' tip lies, across the leaf</source>
   <translation>Où est la pointe des secteurs, en travers de la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Where the wedges' tip lies, along the grain</source>
   <translation>Où est la pointe des secteurs, le long du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Whether it is known in which air the panel is made and will stand</source>
   <translation>Si l'on sait dans quel air le panneau est fait et où il sera</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Whether the test cut says that the template will do as it is</source>
   <translation>Si la coupe d'essai dit que le gabarit peut rester tel quel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Which form of this object was saved</source>
   <translation>Sous quelle forme cet objet a été enregistré</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Which host laid the page out</source>
   <translation>Quelle version de FreeCAD a mis la page en forme</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Which host laid the sheets out</source>
   <translation>Quelle version de FreeCAD a mis les planches en page</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Which of the random orders; the same number gives the same</source>
   <translation>Lequel des ordres mélangés ; le même nombre donne le même</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Which positions show their leaf's back</source>
   <translation>Quelles positions montrent le dos de leur feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/shop_pages.py" />
   <source>Which sheet the page shows</source>
   <translation>Quelle planche la page montre</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Which side is the tight one</source>
   <translation>Quel côté est le côté fermé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Which way the axis points; 90 is along the grain</source>
   <translation>Vers où pointe l'axe ; 90 est le long du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Which way the cut (a wedge's axis) points; 90 is along the grain</source>
   <translation>Vers où pointe la coupe (l'axe d'un secteur) ; 90 est le long du fil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/stock.py" />
   <source>Which way the stack lay in the log</source>
   <translation>Dans quel sens la pile était dans la grume</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Who answers for the drawing</source>
   <translation>Qui répond du plan</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Who approved it</source>
   <translation>Qui l'a approuvé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Whose drawing it is</source>
   <translation>À qui est le plan</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Whose photograph shows a leaf's back: the next leaf's, the previous one's, or its own</source>
   <translation>La photo de qui montre le dos d'une feuille : de la suivante, de la précédente, ou la sienne</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Why the last change was refused; empty if it was not</source>
   <translation>Pourquoi le dernier changement a été refusé ; vide s'il ne l'a pas été</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Why the sheets are to be refreshed</source>
   <translation>Pourquoi les planches sont à refaire</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Width</source>
   <translation>Largeur</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Width of a boat shape at its ends</source>
   <translation>Largeur d'une forme bateau à ses extrémités</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Width of platen or bag</source>
   <translation>Largeur du plateau de presse ou du sac</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Width of the band of veneer round the field; 0: none</source>
   <translation>Largeur de la bande de placage autour du champ ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Width of the line between border and field; 0: none</source>
   <translation>Largeur du filet entre bordure et champ ; 0 : aucun</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Width of the strip of solid wood round the core; 0: none</source>
   <translation>Largeur de la bande de bois massif autour de l'âme ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Width of the tool that follows the line; 0: none</source>
   <translation>Largeur de l'outil qui suit le trait ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Width of the top in its middle</source>
   <translation>Largeur du plateau en son milieu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Working copy of the photograph of the back, as seen from the face</source>
   <translation>Copie de travail de la photo du dos, vue depuis la face</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Working copy of the photograph of the face</source>
   <translation>Copie de travail de la photo de la face</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>g/m2 of a glue line; 0: not looked up</source>
   <translation>g/m2 par joint de colle ; 0 : non consulté</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>m2 of the leaves that may be used, no faults</source>
   <translation>m2 des feuilles utilisables, sans défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>m2 of the rectangles round all leaves' outlines</source>
   <translation>m2 des rectangles autour des contours de toutes les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>mm rms that the two then lie apart</source>
   <translation>mm rms dont les deux sont alors écartés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>mm that the middle may be off by that</source>
   <translation>mm dont le milieu peut être faux par là</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>sequence, spread, or the leaf of each position: 1, 3, 2, 4</source>
   <translation>sequence, spread, ou la feuille de chaque position : 1, 3, 2, 4</translation>
  </message>
 </context>
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/host/photos.py" />
   <source>A leaf has no photograph; give it one again.</source>
   <translation>Une feuille n'a pas de photo ; donnez-lui-en une à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>A saw cuts a stack between boards; say how thick these are.</source>
   <translation>Une scie coupe une pile entre des planches ; dites leur épaisseur.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Add backs</source>
   <translation>Ajouter des dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>An outline on a leaf has a corner whose place cannot be; undo, or draw it again.</source>
   <translation>Un contour sur une feuille a un coin dont la place ne peut pas être ; annulez, ou tracez-le à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>An outline on a leaf has only {corners} corners; give at least 3.</source>
   <translation>Un contour sur une feuille n'a que {corners} coins ; donnez-en au moins 3.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Back: its light stays as photographed.</source>
   <translation>Dos : sa lumière reste telle que photographiée.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Back: {note}</source>
   <translation>Dos : {note}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>Both bundles of the run are the same; choose another second one, or none.</source>
   <translation>Les deux liasses de la série sont la même ; choisissez-en une autre seconde, ou aucune.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>Bring in leaves</source>
   <translation>Importer des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Centre and axes, press, adhesive, order of the day.</source>
   <translation>Centre et axes, presse, colle, ordre du jour.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Closing the ring</source>
   <translation>Fermer la couronne</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Contents</source>
   <translation>Sommaire</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Delete spot</source>
   <translation>Supprimer l'emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Even light</source>
   <translation>Égaliser la lumière</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Even light of backs</source>
   <translation>Égaliser la lumière des dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Every piece, for a spreadsheet.</source>
   <translation>Chaque pièce, pour un tableur.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>How exact template and knife are was not said, so there is no sheet on closing the ring: Close the Ring reckons how much over to cut, never under.</source>
   <translation>L'exactitude du gabarit et du couteau n'a pas été dite, il n'y a donc pas de planche sur la fermeture de la couronne : Fermer la couronne calcule de combien couper plus large, jamais plus étroit.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>How far the figure wanders is not measured; photograph two or three backs.</source>
   <translation>De combien le dessin dérive n'est pas mesuré ; photographiez deux ou trois dos.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>How much over to cut; where and how to true.</source>
   <translation>De combien couper plus large ; où et comment dresser.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>It belongs to no match; link it to a radial one, or delete it.</source>
   <translation>Il n'appartient à aucun frisage ; liez-le à un frisage rayonnant, ou supprimez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>It could not be recomputed ({why}); undo the last change.</source>
   <translation>Le recalcul a échoué ({why}) ; annulez la dernière modification.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>It has no faces; choose flat faces.</source>
   <translation>Il n'a pas de faces ; choisissez des faces planes.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>It has no leaf, or the leaf is gone; choose a leaf.</source>
   <translation>Il n'a pas de feuille, ou elle n'est plus là ; choisissez une feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>It is not said how the photograph of the back of leaf {leaf} is to be made ready.</source>
   <translation>Il n'est pas dit comment préparer la photo du dos de la feuille {leaf}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>It was made by a newer version of this addon; update the addon to change it.</source>
   <translation>Ceci a été fait par une version plus récente de cette extension ; mettez l'extension à jour pour le modifier.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Its page is gone; undo, or delete this drawing and make a new one.</source>
   <translation>Sa page n'est plus là ; annulez, ou supprimez ce plan et faites-en un nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Keep spot</source>
   <translation>Garder l'emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Keep the figure's wander</source>
   <translation>Garder la dérive du dessin</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Leaf {leaf}</source>
   <translation>Feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Leaf {leaf} has no register; register all leaves of the bundle together.</source>
   <translation>La feuille {leaf} n'a pas de calage ; calez toutes les feuilles de la liasse ensemble.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Leaf {leaf} is missing from the bundle; undo, add it again, or choose another first leaf.</source>
   <translation>La feuille {leaf} manque dans la liasse ; annulez, ajoutez-la à nouveau, ou choisissez une autre première feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaf {leaf} is missing from the bundle; undo, add it again, or choose other leaves by First or Order.</source>
   <translation>La feuille {leaf} manque dans la liasse ; annulez, ajoutez-la à nouveau, ou choisissez d'autres feuilles par First ou Order.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Leaf {leaf} was turned over: its photograph shows its back. Its face was not photographed, and until it is the same picture stands for it, in which the figure lies as it does on the back.</source>
   <translation>La feuille {leaf} a été retournée : sa photo montre son dos. Sa face n'a pas été photographiée, et jusque-là la même image en tient lieu, où le dessin est comme au dos.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Leaf {leaf} was turned over: the photographs of its face and its back have changed places.</source>
   <translation>La feuille {leaf} a été retournée : les photos de sa face et de son dos ont échangé leurs places.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Leaves {leaves} are missing from the bundle; undo, add them again, or choose another first leaf.</source>
   <translation>Les feuilles {leaves} manquent dans la liasse ; annulez, ajoutez-les à nouveau, ou choisissez une autre première feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaves {leaves} are missing from the bundle; undo, add them again, or choose other leaves by First or Order.</source>
   <translation>Les feuilles {leaves} manquent dans la liasse ; annulez, ajoutez-les à nouveau, ou choisissez d'autres feuilles par First ou Order.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/panels.py" />
   <source>Make it again before anything is bought or cut by it.</source>
   <translation>Refaites-la avant d'acheter ou de couper quoi que ce soit d'après elle.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Name spot</source>
   <translation>Nommer l'emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Notes, plan, pieces, stack, section, lists, taping.</source>
   <translation>Notes, plan, pièces, pile, coupe, listes, assemblage.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Pick marks</source>
   <translation>Choisir des repères</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Picture of the top</source>
   <translation>Image du plateau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Picture spot anew</source>
   <translation>Refaire l'image de l'emplacement</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Pin backs</source>
   <translation>Pionner les dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Register leaves</source>
   <translation>Caler les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Renumber leaves</source>
   <translation>Renuméroter les feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>STOP, do not cut by this packet: {why}</source>
   <translation>ARRÊT, ne coupez pas d'après ce dossier : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Say how the leaves lay</source>
   <translation>Dire comment les feuilles étaient posées</translation>
  </message>
  <message>
   <location filename="veneerwb/host/closing.py" />
   <source>Say which wood it is, or how it moves: a number such as 0.0027, the change of width for each % of moisture.</source>
   <translation>Dites quel bois c'est, ou comment il travaille : un nombre comme 0.0027, le changement de largeur par % d'humidité.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set faults</source>
   <translation>Fixer les défauts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set faults through the bundle</source>
   <translation>Fixer les défauts à travers la liasse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set marks</source>
   <translation>Fixer les repères</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set usable area</source>
   <translation>Fixer la surface utile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Sheets</source>
   <translation>Planches</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>Spots are chosen for radial matches, and {match} is another ({kind}); say where it is cut by the numbers of its panel.</source>
   <translation>Les emplacements se choisissent pour des frisages rayonnants, et {match} en est un autre ({kind}) ; dites où il est coupé par les nombres de son panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>Spots are chosen for wedges of one leaf on a plain round or many-sided top, and {match} is more than that; say where it is cut by the numbers of its panel.</source>
   <translation>Les emplacements se choisissent pour des secteurs d'une feuille sur un plateau simple, rond ou polygonal, et {match} est plus que cela ; dites où il est coupé par les nombres de son panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>Take leaves out</source>
   <translation>Retirer des feuilles</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Templates as DXF</source>
   <translation>Gabarits en DXF</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Templates as SVG</source>
   <translation>Gabarits en SVG</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Templates at 1:1</source>
   <translation>Gabarits à 1:1</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>That failed for a reason the addon does not know ({why}); try it another way, or cancel.</source>
   <translation>Cela a échoué pour une raison que l'extension ne connaît pas ({why}) ; essayez autrement, ou annulez.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>The back of leaf {leaf}</source>
   <translation>Le dos de la feuille {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>The back of leaf {leaf} is as photographed.</source>
   <translation>Le dos de la feuille {leaf} est tel que photographié.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>The bench has no match; link it to one, or delete it.</source>
   <translation>L'établi n'a pas de frisage ; liez-le à un frisage, ou supprimez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/panels.py" />
   <source>The bill of materials in the spreadsheet is older than this panel.</source>
   <translation>La nomenclature dans la feuille de calcul est plus ancienne que ce panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The drawing has no match; link it to one, or delete it.</source>
   <translation>Le plan n'a pas de frisage ; liez-le à un frisage, ou supprimez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>The finished top.</source>
   <translation>Le plateau fini.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/photos.py" />
   <source>The leaf was given another photograph; read the leaf again.</source>
   <translation>La feuille a reçu une autre photo ; relisez la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves are registered and follow the figure.</source>
   <translation>Les feuilles sont calées et suivent le dessin.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves are registered and follow the log.</source>
   <translation>Les feuilles sont calées et suivent la grume.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves are registered and follow the marks.</source>
   <translation>Les feuilles sont calées et suivent les repères.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves have registers; it is not said what they follow.</source>
   <translation>Les feuilles ont des calages ; il n'est pas dit ce qu'ils suivent.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves lie as photographed: a photograph that is shifted against the others shifts its piece.</source>
   <translation>Les feuilles sont comme photographiées : une photo décalée par rapport aux autres décale sa pièce.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/panels.py" />
   <source>The match has no build-up; select it and build up its panel first.</source>
   <translation>Le frisage n'est pas composé en panneau ; choisissez-le et composez d'abord son panneau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>The match has no bundle; link it to a bundle or a stock.</source>
   <translation>Le frisage n'a pas de liasse ; liez-le à une liasse ou à un stock.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/buildups.py" />
   <source>The movement {text!r:.40} cannot be read; write two numbers, radial and tangential, such as 0.0019 0.00274, or nothing to go by the material's name.</source>
   <translation>Le travail {text!r:.40} est illisible ; écrivez deux nombres, radial et tangentiel, comme 0.0019 0.00274, ou rien pour suivre le nom du matériau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>The order {text!r} cannot be read; write sequence, spread, or leaf numbers such as 1, 3, 4, 2.</source>
   <translation>L'ordre {text!r} est illisible ; écrivez sequence, spread, ou des numéros de feuille comme 1, 3, 4, 2.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>The outline does not lie in one plane; a top is flat, so draw it flat.</source>
   <translation>Le contour n'est pas dans un plan ; un plateau est plat, dessinez-le donc à plat.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>The outline has an edge that is but a point; draw it without that.</source>
   <translation>Le contour a une arête qui n'est qu'un point ; dessinez-le sans elle.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>The outline of what may be used of a leaf encloses nothing; undo, or draw it again.</source>
   <translation>Le contour de ce qui est utile d'une feuille n'enferme rien ; annulez, ou tracez-le à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>The photograph of leaf {leaf} shows its other side; turn the leaf over first.</source>
   <translation>La photo de la feuille {leaf} montre son autre côté ; retournez d'abord la feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>The picture {file} could not be copied into the document; make room on the disk that holds {folder}, then try again.</source>
   <translation>L'image {file} n'a pas pu être copiée dans le document ; faites de la place sur le disque qui contient {folder}, puis réessayez.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>The register given for leaf {leaf} is that of its face; the leaf need not be turned over.</source>
   <translation>Le calage donné pour la feuille {leaf} est celui de sa face ; la feuille n'a pas à être retournée.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>The run has no bundle; choose a bundle or a stock of leaves.</source>
   <translation>La série n'a pas de liasse ; choisissez une liasse ou un stock de feuilles.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>The sheet on closing the ring advises to cut every wedge {advised:.2f} degrees over; the templates of this packet are cut {over:.2f} degrees over.</source>
   <translation>La planche sur la fermeture de la couronne conseille de couper chaque secteur plus large de {advised:.2f} degrés ; les gabarits de ce dossier le sont de {over:.2f} degrés.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>The stack, its cuts in order, what is left over.</source>
   <translation>La pile, ses coupes dans l'ordre, ce qui reste.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The top cannot follow itself or what lies on it; choose another outline.</source>
   <translation>Le plateau ne peut pas se suivre lui-même ni ce qui repose dessus ; choisissez un autre contour.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>The top is an outline and none is chosen; choose a sketch, a wire or a planar face.</source>
   <translation>Le plateau est un contour et aucun n'est choisi ; choisissez une esquisse, une polyligne ou une face plane.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>There are {count} outlines on a leaf, and at most {most} can be kept; leave some out, or draw one round several.</source>
   <translation>Il y a {count} contours sur une feuille, et au plus {most} peuvent être gardés ; omettez-en, ou tracez-en un autour de plusieurs.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>There are {photos} photographs and {numbers} numbers; give each its own.</source>
   <translation>Il y a {photos} photos et {numbers} numéros ; donnez à chacune le sien.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>There is a photograph of the back of leaf {leaf}, but none of its face; leave it out or add that of the face.</source>
   <translation>Il y a une photo du dos de la feuille {leaf}, mais aucune de sa face ; laissez-la, ou ajoutez celle de la face.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>These parts belong to no match with a build-up; delete them.</source>
   <translation>Ces éléments n'appartiennent à aucun frisage composé ; supprimez-les.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>This kept spot belongs to no match; link it to one, or delete it.</source>
   <translation>Cet emplacement gardé n'appartient à aucun frisage ; liez-le à un frisage, ou supprimez-le.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>This list.</source>
   <translation>Cette liste.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>This top has no spot that could be kept.</source>
   <translation>Ce plateau n'a pas d'emplacement qui puisse être gardé.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Tie backs</source>
   <translation>Lier les dos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Turn leaf end for end</source>
   <translation>Tourner la feuille tête-bêche</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Turn leaf over</source>
   <translation>Retourner la feuille</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>Two rings of {inner} and {outer} leaves need a list of {leaves}, those of the inner ring first; this one has {count}.</source>
   <translation>Deux couronnes de {inner} et {outer} feuilles demandent une liste de {leaves}, celles de la couronne intérieure d'abord ; celle-ci en a {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>What is chalked on every leaf before it is cut.</source>
   <translation>Ce qui est marqué à la craie sur chaque feuille avant la coupe.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>What is used, bought and left; what it costs; what to buy.</source>
   <translation>Ce qui est utilisé, acheté et restant ; ce que cela coûte ; que acheter.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>What the panel takes, for a spreadsheet.</source>
   <translation>Ce que prend le panneau, pour un tableur.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Where the pin holes go on every leaf.</source>
   <translation>Où vont les trous de pion sur chaque feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>at {angle:g} degrees</source>
   <translation>à {angle:g} degrés</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>box</source>
   <translation>quatre miroirs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>centre and butt</source>
   <translation>centre et bout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>choose the faces again</source>
   <translation>choisissez les faces à nouveau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>choose the faces again (in its place there is {faces})</source>
   <translation>choisissez les faces à nouveau (à sa place il y a {faces})</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>diamond</source>
   <translation>losange</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>end match</source>
   <translation>joint en bout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>follows</source>
   <translation>suit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>herringbone</source>
   <translation>chevrons</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>in sequence</source>
   <translation>en suite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>it failed for a reason that the addon does not know ({why})</source>
   <translation>cela a échoué pour une raison que l'extension ne connaît pas ({why})</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>it was laid out by another version of FreeCAD; refresh the sheets.</source>
   <translation>elle a été mise en page par une autre version de FreeCAD ; refaites les planches.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>no reason given</source>
   <translation>aucune raison donnée</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>place of a mark</source>
   <translation>place d'un repère</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>reverse box</source>
   <translation>quatre miroirs inversé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>reverse diamond</source>
   <translation>losange inversé</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>several ways</source>
   <translation>en plusieurs sens</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>side by side</source>
   <translation>côte à côte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>something changed; refresh the sheets.</source>
   <translation>quelque chose a changé ; refaites les planches.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>spread out</source>
   <translation>réparti</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>the match is now {revision}; refresh the sheets.</source>
   <translation>le frisage est maintenant à l'indice {revision} ; refaites les planches.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>there is no match.</source>
   <translation>il n'y a pas de frisage.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>this is a copy of {page}.</source>
   <translation>ceci est une copie de {page}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>two rings</source>
   <translation>deux couronnes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>upright</source>
   <translation>debout</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bills.py" />
   <source>volume l</source>
   <translation>volume l</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{count} parts of {name} are chosen; choose one face.</source>
   <translation>{count} parties de {name} sont choisies ; choisissez une seule face.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>{faces} is gone with what it belonged to; undo, or choose the faces again.</source>
   <translation>{faces} a disparu avec ce à quoi elle appartenait ; annulez, ou choisissez les faces à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} cannot be a panel: {error}</source>
   <translation>{face} ne peut pas être un panneau : {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} has no size; choose a larger face.</source>
   <translation>{face} n'a pas de taille ; choisissez une face plus grande.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is another face now; {instead}.</source>
   <translation>{face} est maintenant une autre face ; {instead}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is gone; {instead}.</source>
   <translation>{face} n'est plus là ; {instead}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is no face; choose flat faces.</source>
   <translation>{face} n'est pas une face ; choisissez des faces planes.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is not flat; choose flat faces.</source>
   <translation>{face} n'est pas plane ; choisissez des faces planes.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} is tilted by {turn} degrees against {first}; a run lies in one plane, so choose faces of one plane and one side.</source>
   <translation>{face} est inclinée de {turn} degrés par rapport à {first} ; une série est dans un plan, choisissez donc des faces d'un plan et d'un côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} lies {off} off the plane of {first}; a run lies in one plane, so choose faces of one plane and one side.</source>
   <translation>{face} est à {off} du plan de {first} ; une série est dans un plan, choisissez donc des faces d'un plan et d'un côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} looks the other way than {first}; a run lies in one plane, so choose faces of one plane and one side.</source>
   <translation>{face} regarde à l'opposé de {first} ; une série est dans un plan, choisissez donc des faces d'un plan et d'un côté.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} of {owner}</source>
   <translation>{face} de {owner}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{file} could not be saved, there was no room for all of it. Make room, or save it elsewhere, before you close it.</source>
   <translation>{file} n'a pas pu être enregistré, il n'y avait pas de place pour tout. Faites de la place, ou enregistrez ailleurs, avant de le fermer.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{file} could not be saved, there was no room for all of it; it is as it was saved before. Make room, or save it elsewhere, before you close it.</source>
   <translation>{file} n'a pas pu être enregistré, il n'y avait pas de place pour tout ; il est tel qu'enregistré auparavant. Faites de la place, ou enregistrez ailleurs, avant de le fermer.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>{file} would be the back of leaf {leaf}, which the bundle does not have; name it by its leaf's number, or choose it for one leaf.</source>
   <translation>{file} serait le dos de la feuille {leaf}, que la liasse n'a pas ; nommez-le par le numéro de sa feuille, ou choisissez-le pour une seule feuille.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>{leaf} has a register of numbers that cannot be; undo, or register its bundle again.</source>
   <translation>{leaf} a un calage de nombres qui ne peuvent pas être ; annulez, ou calez sa liasse à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>{leaf} has no photograph; choose one in its property {property}, or bring its leaves in again.</source>
   <translation>{leaf} n'a pas de photo ; choisissez-en une dans sa propriété {property}, ou importez ses feuilles à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>{match} was refused: {why}</source>
   <translation>{match} a été refusé : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{name} at 1:1 on {paper}; print at 100 %.</source>
   <translation>{name} à 1:1 sur {paper} ; imprimez à 100 %.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} crosses itself; draw it without crossing.</source>
   <translation>{name} se croise ; dessinez-le sans croisement.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} does not lie in one plane; a top is flat, so draw its outline flat.</source>
   <translation>{name} n'est pas dans un plan ; un plateau est plat, dessinez donc son contour à plat.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} does not lie in one plane; draw it flat.</source>
   <translation>{name} n'est pas dans un plan ; dessinez-le à plat.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} encloses nothing, seen from above; draw it on the XY plane.</source>
   <translation>{name} n'enferme rien, vu d'en haut ; dessinez-le sur le plan XY.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{name} for a machine or a printer, in mm.</source>
   <translation>{name} pour une machine ou une imprimante, en mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{name} for a machine, in {unit}.</source>
   <translation>{name} pour une machine, en {unit}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{name} has lost its picture {file}; the document is saved without it.</source>
   <translation>{name} a perdu son image {file} ; le document est enregistré sans elle.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{name} has no end, or is larger than any piece of furniture; draw it smaller.</source>
   <translation>{name} n'a pas de fin ou est plus grand que tout meuble ; dessinez-le plus petit.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} has no lines; draw one closed outline in it.</source>
   <translation>{name} n'a pas de lignes ; dessinez-y un contour fermé.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} has no {part} any more; choose its outline anew.</source>
   <translation>{name} n'a plus de {part} ; choisissez son contour à nouveau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} has {count} faces; choose the one that is to be the top.</source>
   <translation>{name} a {count} faces ; choisissez celle qui doit être le plateau.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} holds two outlines beside each other; leave one, or choose the edges of one.</source>
   <translation>{name} contient deux contours l'un à côté de l'autre ; laissez-en un, ou choisissez les bords d'un seul.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} is a solid; choose a sketch, a wire or a flat face.</source>
   <translation>{name} est un solide ; choisissez une esquisse, une polyligne ou une face plane.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} is a straight line; draw an outline that closes.</source>
   <translation>{name} est une ligne droite ; dessinez un contour qui se ferme.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} is not closed; join the ends of its lines.</source>
   <translation>{name} n'est pas fermé ; joignez les bouts de ses lignes.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>{name} is not laid from {bundle}, so it cannot be cut together with {match}; take it out of Together.</source>
   <translation>{name} n'est pas posé dans {bundle}, il ne peut donc pas être coupé avec {match} ; retirez-le de Together.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} shows no outline; choose a sketch, a wire or a flat face.</source>
   <translation>{name} ne montre pas de contour ; choisissez une esquisse, une polyligne ou une face plane.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>{name} uses these leaves, so that they cannot be taken out; delete it first, or keep them.</source>
   <translation>{name} utilise ces feuilles, elles ne peuvent donc pas être retirées ; supprimez-le d'abord, ou gardez-les.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>{name} was refused, and its last good layout is shown: {why}</source>
   <translation>{name} a été refusé, et sa dernière bonne disposition est montrée : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>{name} was refused, and no layout of it stands yet: {why}</source>
   <translation>{name} a été refusé, et il n'en existe encore aucune disposition : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>{name} was refused, nothing can be cut by it: {why}</source>
   <translation>{name} a été refusé, rien ne peut être coupé d'après lui : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{name}: the picture {file} had gone and was taken out of the saved document.</source>
   <translation>{name} : l'image {file} avait disparu et a été reprise du document enregistré.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{number}: {face}, leaf {leaves}, grain {way}</source>
   <translation>{number} : {face}, feuille {leaves}, fil {way}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{number}: {face}, leaves {leaves}, grain {way}</source>
   <translation>{number} : {face}, feuilles {leaves}, fil {way}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>{photo} shows no background round the leaf; bring the leaves in again and choose there how their light is evened.</source>
   <translation>{photo} ne montre pas de fond autour de la feuille ; importez les feuilles à nouveau et choisissez-y comment égaliser leur lumière.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>{photo} shows wood beside what is found as the leaf; bring the leaves in again and choose there how their light is evened.</source>
   <translation>{photo} montre du bois à côté de ce qui est trouvé comme feuille ; importez les feuilles à nouveau et choisissez-y comment égaliser leur lumière.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>{photo}: {why}</source>
   <translation>{photo} : {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{title}, top {top}</source>
   <translation>{title}, plateau {top}</translation>
  </message>
 </context>
</TS>
