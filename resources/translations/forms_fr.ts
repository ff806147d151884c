<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>VeneerBacksPanel</name>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Add...</source>
   <translation>&amp;Ajouter...</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Bundle</source>
   <translation>&amp;Liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Measure the Wander</source>
   <translation>&amp;Mesurer la dérive</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Prove How the Leaves Lay</source>
   <translation>Prouver la &amp;pose en grume</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Say So in the Bundle</source>
   <translation>L'écrire &amp;dans la liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Scale</source>
   <translation>Éch&amp;elle</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>As the faces have</source>
   <translation>Comme les faces</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Back</source>
   <translation>Dos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Backs</source>
   <translation>Dos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Both</source>
   <translation>Deux</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>By a pixel's size</source>
   <translation>Taille du pixel</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Choose photographs of backs; the last number in each name is the leaf's. They are flipped, for backs are kept as seen from the face</source>
   <translation>Choisir les photos des dos ; le dernier nombre de chaque nom est celui de la feuille. Elles sont retournées, car les dos sont conservés vus depuis la face</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Choose the photograph of the back of the leaf that is shown, whatever its name</source>
   <translation>Choisir la photo du dos de la feuille montrée, quel que soit son nom</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Compares the backs with their neighbours' faces: two photographs of one cut are as good as one</source>
   <translation>Compare les dos aux faces de leurs voisines : deux photos d'une même coupe n'en font qu'une</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Face</source>
   <translation>Face</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Face as it is</source>
   <translation>La face telle quelle</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Figure of the back</source>
   <translation>Le dessin du dos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>For T&amp;his Leaf...</source>
   <translation>&amp;Cette feuille...</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>How the scale of the photographs that are added is known: by the camera that took the faces and stood still, or by the size of a pixel</source>
   <translation>D'où l'échelle des photos ajoutées est connue : de l'appareil qui a pris les faces sans bouger, ou de la taille d'un pixel</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>How turned leaves are pinned: where their faces are, so that the figure of the back lies off by the wander, or by the wander further on, so that it meets its neighbour's at a book seam</source>
   <translation>Comment les feuilles retournées sont pionnées : là où sont leurs faces, si bien que le dessin du dos est décalé de la dérive, ou plus loin de la dérive, pour qu'il rejoigne celui de la voisine à un joint en livre ouvert</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Measures how far the figure lies elsewhere on the back than on the face, on all backs that are tied; two or three tell how steady it is</source>
   <translation>Mesure de combien le dessin est décalé au dos par rapport à la face, sur tous les dos liés ; deux ou trois disent si elle est régulière</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Opens the window with the photograph again, or brings it to the front</source>
   <translation>Rouvre la fenêtre de la photo, ou l'amène au premier plan</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Other &amp;End Up</source>
   <translation>A&amp;utre bout en haut</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>P&amp;in by</source>
   <translation>Pi&amp;ons selon</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Pi&amp;xel</source>
   <translation>Pi&amp;xel</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Show the Photo&amp;graph</source>
   <translation>Montrer la p&amp;hoto</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ta&amp;ke It</source>
   <translation>Acce&amp;pter</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Takes this tie in spite of the doubt</source>
   <translation>Accepte cette liaison malgré le doute</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The backs that are photographed, and how far face and back lie apart under what ties them (rms, from these photographs). A click shows the back; Delete takes one that was added here away again</source>
   <translation>Les dos photographiés, et l'écart entre face et dos sous ce qui les lie (rms, d'après ces photos). Un clic montre le dos ; Suppr retire un dos ajouté ici</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The bundle then says how the leaves lay as it was proved; it decides whose photograph shows a back</source>
   <translation>La liasse dit alors comment les feuilles étaient posées, tel que prouvé ; cela décide quelle photo montre un dos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The leaf that is shown beside the panel</source>
   <translation>La feuille montrée à côté du panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The side that is shown: the face, the back as seen from the face, or strips of both where the tie lays them on each other</source>
   <translation>Le côté montré : la face, le dos vu depuis la face, ou des bandes des deux là où la liaison les pose l'un sur l'autre</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Tie by &amp;Marks</source>
   <translation>Pa&amp;r repères</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Tie by &amp;Outline</source>
   <translation>Par con&amp;tour</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties</source>
   <translation>Liaisons</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties all backs by the leaf's outline, found on the plain background of both photographs</source>
   <translation>Lie tous les dos par le contour de la feuille, trouvé sur le fond uni des deux photos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties the back that is shown by its outline, turned end for end</source>
   <translation>Lie le dos montré par son contour, tourné tête-bêche</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties the backs by the marks that they share with their faces: paper marks, or points that you click on both photographs</source>
   <translation>Lie les dos par les repères communs avec leurs faces : repères en papier, ou points que vous cliquez sur les deux photos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>What They Tell</source>
   <translation>Ce qu'ils disent</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>What a pixel of the photographs of backs measures on the leaf</source>
   <translation>Ce que mesure sur la feuille un pixel des photos de dos</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Whose backs are shown</source>
   <translation>De quelle liasse les dos sont montrés</translation>
  </message>
 </context>
 <context>
  <name>VeneerBenchPanel</name>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source> g/m2</source>
   <translation> g/m2</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source> m</source>
   <translation> m</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source> min</source>
   <translation> min</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Adhesive</source>
   <translation>&amp;Colle</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Approved by</source>
   <translation>Appro&amp;uvé par</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Boards</source>
   <translation>Pla&amp;nches</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Created by</source>
   <translation>&amp;Créé par</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Currency</source>
   <translation>&amp;Devise</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Files in</source>
   <translation>Fic&amp;hiers en</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Gauge in</source>
   <translation>Ma&amp;nomètre en</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Kerf</source>
   <translation>&amp;Trait de coupe</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Length</source>
   <translation>Lon&amp;gueur</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Lengths in</source>
   <translation>&amp;Longueurs en</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Match</source>
   <translation>Fri&amp;sage</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Number</source>
   <translation>&amp;Numéro</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Open time</source>
   <translation>Temps &amp;ouvert</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Owner</source>
   <translation>P&amp;ropriétaire</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Paper</source>
   <translation>&amp;Papier</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Pressed by</source>
   <translation>&amp;Pressé par</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Price</source>
   <translation>Pri&amp;x</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Room round</source>
   <translation>&amp;Marge autour</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Seams cut</source>
   <translation>&amp;Joints coupés</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Spread</source>
   <translation>Grammag&amp;e</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Title</source>
   <translation>&amp;Titre</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Tool's width</source>
   <translation>Lar&amp;geur d'outil</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Tops</source>
   <translation>Plat&amp;eaux</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Write Packet...</source>
   <translation>Écr&amp;ire le dossier...</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>A&amp;t most</source>
   <translation>Au pl&amp;us</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>A4 upright</source>
   <translation>A4 debout</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>ANSI A upright</source>
   <translation>ANSI A debout</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Alt&amp;itude</source>
   <translation>Al&amp;titude</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>At on&amp;ce</source>
   <translation>&amp;En une fois</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Be&amp;yond</source>
   <translation>&amp;Débord</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Cost</source>
   <translation>Coût</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Cut by</source>
   <translation>Coupé par</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Cutting</source>
   <translation>Coupe</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Exact</source>
   <translation>Exacts</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Fills in what is common practice for that way of cutting</source>
   <translation>Inscrit ce qui est d'usage pour cette façon de couper</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Fraction</source>
   <translation>Fraction</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Its press&amp;ure</source>
   <translation>Sa p&amp;ression</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Knife</source>
   <translation>Couteau</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>L&amp;ean</source>
   <translation>Inclinai&amp;son</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Machine</source>
   <translation>Machine</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Make the sheets as the match and this panel are now</source>
   <translation>Faire les planches comme le frisage et ce volet sont à présent</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Not said</source>
   <translation>Non dit</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>O&amp;ver, in all</source>
   <translation>&amp;Plus, tout</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Over by a width</source>
   <translation>Plus, en largeur</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Over by an angle</source>
   <translation>Plus, en angle</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Over, &amp;each</source>
   <translation>Plus, &amp;chacun</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pe&amp;r</source>
   <translation>P&amp;ar</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pins to c&amp;ut</source>
   <translation>Pion - &amp;coupe</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pins to e&amp;dge</source>
   <translation>Pion - b&amp;ord</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Press</source>
   <translation>Presse</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pressed &amp;for</source>
   <translation>Pressé pen&amp;dant</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Ra&amp;ms</source>
   <translation>&amp;Vérins</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Ram &amp;bore</source>
   <translation>&amp;Alésage</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Refres&amp;h Sheets</source>
   <translation>Re&amp;faire les planches</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Saw</source>
   <translation>Scie</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Set-out &amp;base</source>
   <translation>&amp;Base de tracé</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Sheets</source>
   <translation>Planches</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Taped</source>
   <translation>Assemblé</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Templates</source>
   <translation>Gabarits</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Thic&amp;k in all</source>
   <translation>Épai&amp;sseur totale</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Tiled &amp;on</source>
   <translation>Répartis &amp;sur</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>To the Bench</source>
   <translation>À l'établi</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Usual for This Way</source>
   <translation>Usuel pour ce procédé</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Vacuum bag</source>
   <translation>Sac à vide</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Wi&amp;dth</source>
   <translation>&amp;Largeur</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Write all sheets, templates, plans and lists into a folder</source>
   <translation>Écrire toutes les planches, gabarits, plans et listes dans un dossier</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>both</source>
   <translation>les deux</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>bundle</source>
   <translation>liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>face &amp;down</source>
   <translation>p&amp;arement bas</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>inches</source>
   <translation>pouces</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>leaf</source>
   <translation>feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>m2</source>
   <translation>m2</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>mm</source>
   <translation>mm</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>sq ft</source>
   <translation>pied carré</translation>
  </message>
 </context>
 <context>
  <name>VeneerBuildUpPanel</name>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source> %</source>
   <translation> %</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Air</source>
   <translation>Ai&amp;r</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Below core</source>
   <translation>Sous &amp;l'âme</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Core</source>
   <translation>Â&amp;me</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Grain</source>
   <translation>&amp;Fil</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Lipping</source>
   <translation>&amp;Alaise</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Material</source>
   <translation>Matéria&amp;u</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Stringing</source>
   <translation>File&amp;t</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Ab&amp;ove core</source>
   <translation>Des&amp;sus l'âme</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Across edge</source>
   <translation>En travers du bord</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Along edge</source>
   <translation>Le long du bord</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Bac&amp;ker</source>
   <translation>C&amp;ontreface</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Bo&amp;rder</source>
   <translation>&amp;Bordure</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Build Up Panel</source>
   <translation>Composer le panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Butted</source>
   <translation>À plat joint</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>By material</source>
   <translation>Selon le matériau</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Crossbands</source>
   <translation>Plis croisés</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Diameter</source>
   <translation>Diamètre</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Disc</source>
   <translation>Disque</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>E&amp;xploded</source>
   <translation>É&amp;claté</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>First tip</source>
   <translation>Première pointe</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Following</source>
   <translation>Suivant le bord</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Full height</source>
   <translation>Toute hauteur</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Grain</source>
   <translation>Fil</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Humidity</source>
   <translation>Humidité</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>I&amp;nlay</source>
   <translation>&amp;Incrustation</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Is known</source>
   <translation>Est connu</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Joints</source>
   <translation>Coins</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Lies</source>
   <translation>Posée</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Made at</source>
   <translation>Fabriqué à</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Make B&amp;ill</source>
   <translation>&amp;Nomenclature</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Make or renew the spreadsheet of this panel's materials, areas and volumes</source>
   <translation>Faire ou refaire la feuille de calcul des matériaux, surfaces et volumes de ce panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Material</source>
   <translation>Matériau</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Mitred</source>
   <translation>À onglet</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Moves</source>
   <translation>Travaille</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>None</source>
   <translation>Sans</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Of</source>
   <translation>En</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Parts</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Plain sawn</source>
   <translation>Sur dosse</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Points</source>
   <translation>Pointes</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Quarter sawn</source>
   <translation>Sur quartier</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Save CS&amp;V...</source>
   <translation>CS&amp;V...</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Sawn</source>
   <translation>Débit</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Sheet goods</source>
   <translation>Panneau dérivé</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Solid wood</source>
   <translation>Bois massif</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Stands at</source>
   <translation>Se trouve à</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Star</source>
   <translation>Étoile</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Thickness</source>
   <translation>Épaisseur</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>To hollows</source>
   <translation>Aux creux</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>To tips</source>
   <translation>Aux pointes</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Under veneer</source>
   <translation>Sous le placage</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>What the checks find on this panel, the gravest first; a click selects the panel</source>
   <translation>Ce que les contrôles trouvent sur ce panneau, le plus grave d'abord ; un clic sélectionne le panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Wood dust harms: saw and sand with extraction and a mask. Follow the makers' sheets for adhesive and press, and keep hands clear of the press.</source>
   <translation>La poussière de bois est nocive : sciez et poncez avec aspiration et masque. Suivez les fiches des fabricants pour la colle et la presse, et gardez les mains loin de la presse.</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Write the bill of materials to a file</source>
   <translation>Écrire la nomenclature dans un fichier</translation>
  </message>
 </context>
 <context>
  <name>VeneerCheckPanel</name>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>&amp;Match</source>
   <translation>&amp;Frisage</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>Check Match</source>
   <translation>Contrôler le frisage</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>How far the figure of one leaf lies from that of the leaf it meets, from the photographs</source>
   <translation>De combien le dessin d'une feuille est décalé de celui de la feuille qu'elle rejoint, d'après les photos</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>Measure the &amp;seams</source>
   <translation>Mesurer les &amp;joints</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>What the checks find, the gravest first; a click selects what it speaks of</source>
   <translation>Ce que les contrôles trouvent, le plus grave d'abord ; un clic sélectionne ce dont il s'agit</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>Which match is checked</source>
   <translation>Quel frisage est contrôlé</translation>
  </message>
 </context>
 <context>
  <name>VeneerChoices</name>
  <message>
   <location filename="resources/ui/choices.ui" />
   <source>Choose this in the panel</source>
   <translation>Choisit ceci dans le panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/choices.ui" />
   <source>Follow this</source>
   <translation>Suivre ceci</translation>
  </message>
  <message>
   <location filename="resources/ui/choices.ui" />
   <source>What the stack follows</source>
   <translation>Ce que suit la pile</translation>
  </message>
 </context>
 <context>
  <name>VeneerClosingPanel</name>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source> wedges</source>
   <translation> secteurs</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Each piece off by</source>
   <translation>Par pièc&amp;e ±</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Protractor off by</source>
   <translation>&amp;Rapporteur ±</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Stage</source>
   <translation>É&amp;tat</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;True</source>
   <translation>&amp;Dresser</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Wood</source>
   <translation>B&amp;ois</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>95 in 100</source>
   <translation>95 sur 100</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>99 in 100</source>
   <translation>99 sur 100</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>As it will look</source>
   <translation>Tel qu'il sera</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Before the wedges are cut, or when they are: what is asked, and what is said</source>
   <translation>Avant que les secteurs soient coupés, ou après : ce qui est demandé et ce qui est dit</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Close the Ring</source>
   <translation>Fermer la couronne</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Cut</source>
   <translation>Coupé</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Cut, %</source>
   <translation>Coupé, %</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Each wedge</source>
   <translation>Par secteur</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Ed&amp;ges out by</source>
   <translation>Bords d&amp;écalés</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Enlarged</source>
   <translation>Agrandi</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Errors enlarged so that they can be seen, as they are, or the ring as it will look when it is closed</source>
   <translation>Les erreurs agrandies pour être vues, ou telles qu'elles sont, ou la couronne telle qu'elle sera une fois fermée</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>First half &amp;from</source>
   <translation>&amp;Première moitié dès</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Flat</source>
   <translation>À plat</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Gaps on halves</source>
   <translation>Jeux</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Halves, both ends</source>
   <translation>Deux bouts</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Halves, one end</source>
   <translation>Un bout</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>How su&amp;re</source>
   <translation>Certit&amp;ude</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Leaves cut</source>
   <translation>Feuilles tranchées</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Measure&amp;d</source>
   <translation>&amp;Mesuré</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Measured t&amp;o</source>
   <translation>Me&amp;suré à</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Moisture is &amp;known</source>
   <translation>&amp;Humidité connue</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>None yet</source>
   <translation>Aucune</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Not yet cut</source>
   <translation>Non coupé</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Nothing yet</source>
   <translation>Rien encore</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>On the quarter</source>
   <translation>Sur quartier</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Photographed, %</source>
   <translation>Photographié, %</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Pict&amp;ure</source>
   <translation>&amp;Image</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Quarters</source>
   <translation>Quarts</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Set-out &amp;base</source>
   <translation>&amp;Base de tracé</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Sure to</source>
   <translation>Sûr à</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Taped, %</source>
   <translation>Assemblé, %</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Te&amp;mplate off by</source>
   <translation>&amp;Gabarit ±</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Test &amp;cut of</source>
   <translation>&amp;Coupe d'essai</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>The&amp;y make</source>
   <translation>I&amp;ls font</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>To scale</source>
   <translation>À l'échelle</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Two halves</source>
   <translation>Deux moitiés</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Type what was measured. A gap is seen at the tip of a half that is over, at an end of one that is under (the straightedge lies along its other side); far: how far from the tip it is seen, or the straightedge rests. Lengths take a unit.</source>
   <translation>Tapez ce qui a été mesuré. Un jeu se voit à la pointe d'une moitié trop grande, à un bout d'une moitié trop petite (la règle repose le long de son autre côté) ; loin : à quelle distance de la pointe on le voit, ou la règle repose. Les longueurs prennent une unité.</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Unsure by, %</source>
   <translation>Incertain de, %</translation>
  </message>
 </context>
 <context>
  <name>VeneerCuts</name>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>A leaf for each lot, with the positions that are cut from it; thin lines are the pieces where the outline is larger</source>
   <translation>Une feuille par lot, avec les positions qui en sont coupées ; les traits fins sont les pièces là où le contour est plus grand</translation>
  </message>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>Choose this in the panel</source>
   <translation>Choisit ceci dans le panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>Cut so</source>
   <translation>Couper ainsi</translation>
  </message>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>How the leaves are cut</source>
   <translation>Comment les feuilles sont coupées</translation>
  </message>
 </context>
 <context>
  <name>VeneerDrawingPanel</name>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>&amp;Drawn by</source>
   <translation>&amp;Dessiné par</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>&amp;Match</source>
   <translation>&amp;Frisage</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>&amp;Title</source>
   <translation>&amp;Titre</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>Drawing</source>
   <translation>Plan</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>Set-out &amp;base</source>
   <translation>&amp;Base de tracé</translation>
  </message>
 </context>
 <context>
  <name>VeneerFacingPanel</name>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Across</source>
   <translation>En &amp;travers</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Grain</source>
   <translation>&amp;Fil</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Leaf</source>
   <translation>F&amp;euille</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Side up</source>
   <translation>Côté &amp;vu</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Take the selected faces</source>
   <translation>&amp;Prendre les faces choisies</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Al&amp;ong</source>
   <translation>En &amp;long</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Back</source>
   <translation>Dos</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Face</source>
   <translation>Face</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Leaf On Faces</source>
   <translation>Feuille sur faces</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Select plane faces in the 3-D view, then press this</source>
   <translation>Choisissez des faces planes dans la vue 3D, puis appuyez ici</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>The faces that carry the leaf</source>
   <translation>Les faces qui portent la feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Where the faces reach beyond the leaf, and what to do</source>
   <translation>Où les faces dépassent la feuille, et que faire</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Which side of the leaf is seen</source>
   <translation>Quel côté de la feuille est vu</translation>
  </message>
 </context>
 <context>
  <name>VeneerFaultsPanel</name>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Add Selected Sketches</source>
   <translation>Ajouter les es&amp;quisses</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Bundle</source>
   <translation>&amp;Liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Draw</source>
   <translation>&amp;Tracer</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Find</source>
   <translation>Tr&amp;ouver</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Kind</source>
   <translation>&amp;Genre</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Remove</source>
   <translation>&amp;Retirer</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Suggest Spots and Splits</source>
   <translation>&amp;Suggérer taches et fentes</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Take It</source>
   <translation>&amp;Accepter</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Usable</source>
   <translation>&amp;Utile</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Whole</source>
   <translation>&amp;Entière</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>All leaves</source>
   <translation>Toutes les feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Clicks on the photograph draw a fault; off, they choose what is there</source>
   <translation>Les clics sur la photo tracent un défaut ; sinon ils choisissent ce qui s'y trouve</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Faults</source>
   <translation>Défauts</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Finds this leaf on the plain background of its photograph: its outline becomes the usable area</source>
   <translation>Trouve cette feuille sur le fond uni de sa photo : son contour devient la surface utile</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>It is &amp;on</source>
   <translation>&amp;Il est sur</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Knot</source>
   <translation>Nœud</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Looks for dark spots and splits on this leaf and outlines them in dashes; nothing counts until you take it</source>
   <translation>Cherche les taches sombres et les fentes de cette feuille et les entoure de tirets ; rien ne compte avant que vous l'acceptiez</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Margin</source>
   <translation>Marge</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Opens the window with the leaf's photograph again, or brings it to the front</source>
   <translation>Rouvre la fenêtre de la photo de la feuille, ou l'amène au premier plan</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Patch</source>
   <translation>Pièce rapportée</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Show the Photo&amp;graph</source>
   <translation>Montrer la p&amp;hoto</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Split</source>
   <translation>Fente</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Stain</source>
   <translation>Tache</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Takes away what is chosen (Delete, over the photograph)</source>
   <translation>Retire ce qui est choisi (Suppr, sur la photo)</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The chosen suggestion becomes a fault of that kind</source>
   <translation>La suggestion choisie devient un défaut de ce genre</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The faults on the leaf that is shown; a click chooses one</source>
   <translation>Les défauts de la feuille montrée ; un clic en choisit un</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The leaf that is shown beside the panel</source>
   <translation>La feuille montrée à côté du panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The sketches, wires and flat faces selected in the document become faults through all leaves; a name that begins with split, knot, patch, stain or margin says what each is</source>
   <translation>Les esquisses, polylignes et faces planes choisies dans le document deviennent des défauts à travers toutes les feuilles ; un nom qui commence par split, knot, patch, stain ou margin dit ce que c'est</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The whole photograph of this leaf may be used</source>
   <translation>Toute la photo de cette feuille est utilisable</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>This leaf</source>
   <translation>Cette feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Through all leaves, where the leaves' registers put it, or on the leaf that is shown</source>
   <translation>À travers toutes les feuilles, là où leurs calages le mettent, ou sur la feuille montrée</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Usable area</source>
   <translation>Surface utile</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>What is drawn next; with Draw off, what the chosen fault is. A patch is a repair let into the leaf</source>
   <translation>Ce qui est tracé ensuite ; sans Tracer, ce qu'est le défaut choisi. Une pièce rapportée est une réparation dans la feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Whose faults are shown</source>
   <translation>De quelle liasse les défauts sont montrés</translation>
  </message>
 </context>
 <context>
  <name>VeneerHelp</name>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>&amp;Back</source>
   <translation>&amp;Retour</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>&amp;Contents</source>
   <translation>&amp;Sommaire</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>All pages: the first top, the commands, the trade's words</source>
   <translation>Toutes les pages : le premier plateau, les commandes, les mots du métier</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>The page that was shown before</source>
   <translation>La page montrée auparavant</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>Veneer Help</source>
   <translation>Aide de Veneer</translation>
  </message>
 </context>
 <context>
  <name>VeneerLeavesPanel</name>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Backs</source>
   <translation>D&amp;os</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Draw the Patch...</source>
   <translation>Tracer la pla&amp;ge...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Length</source>
   <translation>Lo&amp;ngueur</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Stack</source>
   <translation>Pil&amp;e</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Thickness</source>
   <translation>Épaisse&amp;ur</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Width</source>
   <translation>&amp;Largeur</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A folder with one photograph for each leaf</source>
   <translation>Un dossier avec une photo par feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A folder with photographs of backs, numbered as their leaves. Photographs in the first folder whose names say back are taken too</source>
   <translation>Un dossier avec les photos des dos, numérotées comme leurs feuilles. Les photos du premier dossier dont les noms disent back sont prises aussi</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A quarter left</source>
   <translation>Un quart à gauche</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A quarter right</source>
   <translation>Un quart à droite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A sheet beside it</source>
   <translation>Un cadre à côté</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A to B</source>
   <translation>A à B</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A to C</source>
   <translation>A à C</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>As it is</source>
   <translation>Telle quelle</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>As photographed</source>
   <translation>Telle quelle</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>B to C</source>
   <translation>B à C</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>B to D</source>
   <translation>B à D</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Bring In Leaves</source>
   <translation>Importer des feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>C to D</source>
   <translation>C à D</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Chang&amp;e Something</source>
   <translation>C&amp;hanger quelque chose</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Choose a folder: every picture in it is a leaf, or a leaf's back if its name says back</source>
   <translation>Choisir un dossier : chaque image y est une feuille, ou le dos d'une feuille si son nom dit back</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Choose the folder that holds the photographs of backs</source>
   <translation>Choisir le dossier qui contient les photos des dos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Choose the photographs one by one</source>
   <translation>Choisir les photos une à une</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Clic&amp;ks</source>
   <translation>Clic&amp;s</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Click on the Photo&amp;graph...</source>
   <translation>Cli&amp;quer sur la photo...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Clicks hold for all photographs if the camera stood still; else they are made on each</source>
   <translation>Les clics valent pour toutes les photos si l'appareil n'a pas bougé ; sinon ils sont faits sur chacune</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Corners o&amp;f</source>
   <translation>C&amp;oins de</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>D to A</source>
   <translation>D à A</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Even by a grey card</source>
   <translation>Par une carte grise</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Even by background</source>
   <translation>Par le fond</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Even by one patch</source>
   <translation>Par une plage</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Evens exposure and colour over the bundle, by what should look the same in every photograph; the photographs themselves stay as they are</source>
   <translation>Égalise exposition et couleur dans la liasse, par ce qui devrait être pareil sur chaque photo ; les photos elles-mêmes restent telles quelles</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>F&amp;iles...</source>
   <translation>F&amp;ichiers...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>F&amp;older...</source>
   <translation>&amp;Dossier...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Fills the photo</source>
   <translation>Remplit la photo</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Folder of Bac&amp;ks...</source>
   <translation>Dossier des &amp;dos...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Folder of photographs</source>
   <translation>Dossier des photos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Folder, if any</source>
   <translation>Dossier, s'il y en a</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Found, all kept</source>
   <translation>Trouvée, gardée</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Found, cut out</source>
   <translation>Trouvée, détourée</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Four corners</source>
   <translation>Quatre coins</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Four paper marks</source>
   <translation>Quatre repères</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>From cross to cross of these two marks: so far apart on every photograph</source>
   <translation>De croix à croix de ces deux repères : cette distance sur chaque photo</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>How it is known what a photograph measures. The first three take the photographs as they are: all from one distance, squarely. Of paper marks the printed size of the rings tells it, or a distance between two, or the six between four, which square up too</source>
   <translation>D'où l'on sait ce que mesure une photo. Les trois premiers prennent les photos telles quelles : toutes d'une même distance, bien d'aplomb. Pour les repères en papier, c'est la taille imprimée des anneaux, une distance entre deux, ou les six entre quatre, qui redressent aussi</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>How the leaves lay in the log: it tells which leaf's photograph shows the back of another. Where it is not known, and between sawn leaves, a leaf's own picture stands for its back</source>
   <translation>Comment les feuilles étaient posées dans la grume : cela dit la photo de quelle feuille montre le dos d'une autre. Si ce n'est pas connu, et entre feuilles sciées, l'image propre d'une feuille tient lieu de dos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>It &amp;measures</source>
   <translation>&amp;Mesure</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Leaf 2 over leaf 1</source>
   <translation>Feuille 2 sur 1</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Leaf 2 under leaf 1</source>
   <translation>Feuille 2 sous 1</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Li&amp;ght</source>
   <translation>&amp;Lumière</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Not known</source>
   <translation>Non connu</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>On each photo</source>
   <translation>Chaque photo</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Once for all</source>
   <translation>Une seule fois</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>One pi&amp;xel is</source>
   <translation>Un pi&amp;xel fait</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Opens the photograph, on which the patch or card is drawn round</source>
   <translation>Ouvre la photo, sur laquelle la plage ou la carte est entourée</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Opens the photograph, on which the points, corners or marks are clicked</source>
   <translation>Ouvre la photo, sur laquelle on clique points, coins ou repères</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Opens the photographs with the outlines that are found; their corners can be dragged</source>
   <translation>Ouvre les photos avec les contours trouvés ; leurs coins peuvent être tirés</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>P&amp;hotos</source>
   <translation>&amp;Photos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Paper mark rings</source>
   <translation>Anneaux</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Photo's length</source>
   <translation>Long. de photo</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Photo's width</source>
   <translation>Larg. de photo</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Photographs</source>
   <translation>Photographies</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Prepare</source>
   <translation>Préparer</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>S&amp;cale by</source>
   <translation>É&amp;chelle par</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Said once for all photographs: stick such marks to the table, not to the leaves.</source>
   <translation>Dit une fois pour toutes les photos : collez ces repères sur la table, pas sur les feuilles.</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Sawn, with a kerf</source>
   <translation>Sciées</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Show and Change &amp;Outlines...</source>
   <translation>Voir et changer les con&amp;tours...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Si&amp;de seen</source>
   <translation>Côté &amp;vu</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Size of a pixel</source>
   <translation>Taille d'un pixel</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Sto&amp;p</source>
   <translation>&amp;Arrêter</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Stops bringing in; nothing of it is left</source>
   <translation>Arrête l'importation ; il n'en reste rien</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>T&amp;urn</source>
   <translation>Tou&amp;rner</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Takes the leaves out again and goes back to the questions</source>
   <translation>Retire les feuilles et revient aux questions</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The last number in a name is the leaf's; names without are counted in their order.</source>
   <translation>Le dernier nombre d'un nom est celui de la feuille ; les noms sans nombre sont comptés dans leur ordre.</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The leaf</source>
   <translation>La feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The under side</source>
   <translation>Le côté du dessous</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The upper side</source>
   <translation>Le côté du dessus</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Thickness of a leaf</source>
   <translation>Épaisseur d'une feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Turns the photographs, so that the grain runs up</source>
   <translation>Tourne les photos pour que le fil monte</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Two paper marks</source>
   <translation>Deux repères</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Two points</source>
   <translation>Deux points</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Until that is known, a leaf's own face stands for its back.</source>
   <translation>Tant que ce n'est pas connu, la face d'une feuille tient lieu de son dos.</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Upside down</source>
   <translation>À l'envers</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What one pixel of a photograph measures on the leaf</source>
   <translation>Ce que mesure sur la feuille un pixel d'une photo</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What the rectangle between the corners measures across</source>
   <translation>Ce que mesure en travers le rectangle entre les coins</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What the rectangle between the corners measures along</source>
   <translation>Ce que mesure en long le rectangle entre les coins</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What the whole first photograph measures, cropped to its leaf; or how far the two points or marks are apart</source>
   <translation>Ce que mesure toute la première photo, cadrée sur sa feuille ; ou la distance des deux points ou repères</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What was done to the photographs, and what is to be looked at</source>
   <translation>Ce qui a été fait aux photos, et ce qui est à regarder</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Where the leaf is on its photograph. Found on a plain background, its outline becomes the usable area; keep all of the photograph if the leaves lay in one jig</source>
   <translation>Où la feuille se trouve sur sa photo. Trouvée sur un fond uni, son contour devient la surface utile ; gardez toute la photo si les feuilles étaient dans un même montage</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Which side of the leaves, as they lay in the log, was photographed; it becomes the face</source>
   <translation>Quel côté des feuilles, comme elles étaient dans la grume, a été photographié ; il devient la face</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Whose four corners are clicked: the leaf's own, or those of a sheet or frame that lies flat beside it</source>
   <translation>De quoi les quatre coins sont cliqués : de la feuille même, ou d'un carton ou d'un cadre posé à plat à côté</translation>
  </message>
 </context>
 <context>
  <name>VeneerMarksPanel</name>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source> a leaf</source>
   <translation> /feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Bundle</source>
   <translation>&amp;Liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Mark</source>
   <translation>R&amp;epère</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Print Marks...</source>
   <translation>&amp;Imprimer les repères...</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Remove</source>
   <translation>&amp;Retirer</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Show</source>
   <translation>&amp;Montrer</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Topmost</source>
   <translation>&amp;Du dessus</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>A</source>
   <translation>A</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>A4</source>
   <translation>A4</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>B</source>
   <translation>B</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>C</source>
   <translation>C</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Camera &amp;up</source>
   <translation>&amp;Appareil à</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Choose a photograph of the pinned leaf with its marks and both pins, or of the whole stack with marks of its leaves in sight, taken from straight above</source>
   <translation>Choisir une photo de la feuille pionnée avec ses repères et les deux pions, ou de toute la pile avec des repères visibles de ses feuilles, prise bien d'aplomb</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Confirm</source>
   <translation>Confirmer</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>D</source>
   <translation>D</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>E</source>
   <translation>E</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>F</source>
   <translation>F</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>How far the camera was above the topmost leaf: what lies deeper is seen nearer the middle of the photograph. Only needed for leaves below the topmost</source>
   <translation>À quelle hauteur l'appareil était au-dessus de la feuille du dessus : ce qui est plus bas se voit plus près du milieu de la photo. Nécessaire seulement pour les feuilles du dessous</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Le&amp;tter</source>
   <translation>Le&amp;ttre</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Letter</source>
   <translation>Letter</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Locate</source>
   <translation>Situer</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Marks for each leaf: two give a scale, three a frame with a check, four square up a photograph</source>
   <translation>Repères pour chaque feuille : deux donnent une échelle, trois un cadre avec contrôle, quatre redressent une photo</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Opens the window with that photograph again, or brings it to the front</source>
   <translation>Rouvre la fenêtre de cette photo, ou l'amène au premier plan</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Opens the window with the leaf's photograph again, or brings it to the front</source>
   <translation>Rouvre la fenêtre de la photo de la feuille, ou l'amène au premier plan</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Paper Marks</source>
   <translation>Repères en papier</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Photo&amp;graph...</source>
   <translation>P&amp;hoto...</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Pin a&amp;cross</source>
   <translation>Pion tra&amp;vers</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Pin a&amp;long</source>
   <translation>Pi&amp;on long</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>S&amp;heet</source>
   <translation>Pa&amp;pier</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Saves a PDF of marks for every leaf of the bundle: print it at 100 %, cut them out, stick them in the waste of each leaf and photograph the leaf with them</source>
   <translation>Enregistre un PDF de repères pour chaque feuille de la liasse : imprimez à 100 %, découpez, collez dans la chute de chaque feuille et photographiez la feuille avec eux</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Show the Photo&amp;graph</source>
   <translation>Montrer la p&amp;hoto</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Takes the chosen mark away (Delete, over the photograph)</source>
   <translation>Retire le repère choisi (Suppr, sur la photo)</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Takes the chosen one away (Delete, over the photograph)</source>
   <translation>Retire l'élément choisi (Suppr, sur la photo)</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The leaf that is shown beside the panel</source>
   <translation>La feuille montrée à côté du panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The leaf that lies topmost; four of its marks square the photograph up</source>
   <translation>La feuille du dessus ; quatre de ses repères redressent la photo</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The letter of the chosen mark: one that another mark has is exchanged. With none chosen, the letter of the next click</source>
   <translation>La lettre du repère choisi : si un autre l'a déjà, elles sont échangées. Sans choix, la lettre du prochain clic</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The marks of every leaf, and how far they miss those of an earlier leaf when laid on them as a whole: rms, from these photographs. Marks over the same pin holes agree; marks stuck by eye need not. A click shows the leaf</source>
   <translation>Les repères de chaque feuille, et de combien ils manquent ceux d'une feuille précédente, posés dessus d'un bloc : rms, d'après ces photos. Des repères sur les mêmes trous de pion s'accordent ; collés à l'œil, pas forcément. Un clic montre la feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The marks on the leaf that is shown; a click chooses one. ± is one standard deviation of the centre, from what the fit leaves over on this photograph</source>
   <translation>Les repères de la feuille montrée ; un clic en choisit un. ± est un écart type du centre, d'après ce que l'ajustement laisse sur cette photo</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The paper that the marks are printed on</source>
   <translation>Le papier sur lequel les repères sont imprimés</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>What the chosen one is: one that another mark is, is exchanged. With none chosen, what the next click is</source>
   <translation>Ce qu'est l'élément choisi : si un autre repère l'est déjà, ils sont échangés. Sans choix, ce que sera le prochain clic</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>What the photograph says of the registers, the gravest first</source>
   <translation>Ce que la photo dit des calages, le plus grave d'abord</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>What was clicked; a click chooses it. ± is one standard deviation of the centre, from what the fit leaves over on this photograph</source>
   <translation>Ce qui a été cliqué ; un clic le choisit. ± est un écart type du centre, d'après ce que l'ajustement laisse sur cette photo</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Where this pin stands in the bundle: across, from the lower left of the first leaf's photograph</source>
   <translation>Où ce pion se trouve dans la liasse : en travers, depuis le bas gauche de la photo de la première feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Where this pin stands in the bundle: along the grain, from the lower left of the first leaf's photograph</source>
   <translation>Où ce pion se trouve dans la liasse : le long du fil, depuis le bas gauche de la photo de la première feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Whose marks are shown</source>
   <translation>De quelle liasse les repères sont montrés</translation>
  </message>
 </context>
 <context>
  <name>VeneerMatchPanel</name>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Cut from</source>
   <translation>&amp;Coupé dans</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Diameter</source>
   <translation>Diamètr&amp;e</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Face</source>
   <translation>Face&amp;s vues</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;First axis</source>
   <translation>&amp;1er axe</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Grain</source>
   <translation>F&amp;il</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Joints</source>
   <translation>&amp;Joints</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Kind</source>
   <translation>Ge&amp;nre</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Length</source>
   <translation>&amp;Longueur</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Lie where the outline lies</source>
   <translation>Poser où est &amp;le contour</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Margin</source>
   <translation>Mar&amp;ge</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Number</source>
   <translation>No&amp;mbre</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Oversize</source>
   <translation>S&amp;urcote</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Shuffle</source>
   <translation>Mél&amp;ange</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Slant</source>
   <translation>Biai&amp;s</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Strips</source>
   <translation>&amp;Bandes</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Top</source>
   <translation>&amp;Plateau</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Ways</source>
   <translation>&amp;Secteurs</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>A&amp;xis</source>
   <translation>A&amp;xe</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Across f&amp;lats</source>
   <translation>Sur p&amp;lats</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Architectural</source>
   <translation>Architecte</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>At 45 degrees</source>
   <translation>À 45 degrés</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Balance</source>
   <translation>Équilibré</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Boat shape</source>
   <translation>Bateau</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Box</source>
   <translation>4 miroirs</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre and butt</source>
   <translation>Centre-bout</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre balance</source>
   <translation>Joint médian</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre right</source>
   <translation>Centre droit</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre up</source>
   <translation>Centre haut</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Compare</source>
   <translation>Comparer</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Continuous</source>
   <translation>Continu</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Corner to corner</source>
   <translation>De coin à coin</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Cut in</source>
   <translation>Coupé en</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Diamond</source>
   <translation>Losange</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Disc</source>
   <translation>Disque</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>En&amp;ds</source>
   <translation>Ex&amp;trémités</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>End match</source>
   <translation>En bout</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>First l&amp;eaf</source>
   <translation>1&amp;re feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Herringbone</source>
   <translation>Chevrons</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>How often an outline is set out on leaves, and how much the finished pieces have of what is cut out</source>
   <translation>Combien de fois un contour est tracé sur des feuilles, et quelle part de ce qui est coupé reste aux pièces finies</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>I&amp;nner ways</source>
   <translation>Sect. ded&amp;ans</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>In sequence</source>
   <translation>En suite</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Inner si&amp;ze</source>
   <translation>Cote &amp;interne</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Its centroid</source>
   <translation>Son centroïde</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Its origin</source>
   <translation>Son origine</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Lots by shape</source>
   <translation>Lots par forme</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Matc&amp;h</source>
   <translation>&amp;Frisage</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Match</source>
   <translation>Frisage</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Mi&amp;ddle at</source>
   <translation>Mili&amp;eu à</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Middle of the lea&amp;ves</source>
   <translation>Milieu &amp;des feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Numbers are those of the leaves, in the order in which they were sliced; a darker one is turned over. Names differ by region: go by the drawing.</source>
   <translation>Les nombres sont ceux des feuilles, dans l'ordre du tranchage ; une plus sombre est retournée. Les noms varient selon les régions : fiez-vous au dessin.</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>O&amp;rder</source>
   <translation>&amp;Ordre</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>One stack</source>
   <translation>Une seule pile</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Outl&amp;ine</source>
   <translation>Con&amp;tour</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Outline</source>
   <translation>Contour</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Oval</source>
   <translation>Ovale</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Panel</source>
   <translation>Panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Polygon</source>
   <translation>Polygone</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Racetrack</source>
   <translation>Hippodrome</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Radial</source>
   <translation>Rayonnant</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Rectangle</source>
   <translation>Rectangle</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Reverse box</source>
   <translation>4 inversés</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Reverse diamond</source>
   <translation>Losange V</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Ro&amp;ws</source>
   <translation>Rang&amp;s</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Round</source>
   <translation>Rond</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Running</source>
   <translation>Courant</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>S&amp;ides</source>
   <translation>Cô&amp;tés</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Select a closed sketch, a wire or a flat face in the tree or the view, then press this: it becomes the top, its holes become openings</source>
   <translation>Choisissez une esquisse fermée, une polyligne ou une face plane dans l'arbre ou la vue, puis appuyez ici : cela devient le plateau, ses trous deviennent des ouvertures</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Side by side</source>
   <translation>Côte à côte</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Single pieces</source>
   <translation>Pièces une à une</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Slip, centre book</source>
   <translation>Centre livre</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Sp&amp;ares</source>
   <translation>Réser&amp;ve</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Spot across</source>
   <translation>Place en travers</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Spot along</source>
   <translation>Place en long</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Spread</source>
   <translation>Réparti</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Square</source>
   <translation>Carré</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Stri&amp;p width</source>
   <translation>Larg. &amp;bande</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>T&amp;urn</source>
   <translation>Retour&amp;ner</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Take selected</source>
   <translation>Prendre le choix</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>The ways of cutting side by side on the leaves, with what each takes and costs</source>
   <translation>Les façons de couper côte à côte sur les feuilles, avec ce que chacune prend et coûte</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Two rings</source>
   <translation>2 couronnes</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>W&amp;idth</source>
   <translation>Larg&amp;eur</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>What the checks find, the gravest first; a click selects what it speaks of</source>
   <translation>Ce que les contrôles trouvent, le plus grave d'abord ; un clic sélectionne ce dont il s'agit</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>as needed</source>
   <translation>au besoin</translation>
  </message>
 </context>
 <context>
  <name>VeneerParticularsPanel</name>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Cut</source>
   <translation>&amp;Coupe</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Flitch, lot</source>
   <translation>&amp;Quartelle, lot</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Moisture, %</source>
   <translation>H&amp;umidité, %</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Name</source>
   <translation>&amp;Nom</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Save CSV...</source>
   <translation>Enre&amp;gistrer CSV...</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Thickness</source>
   <translation>É&amp;paisseur</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>C&amp;ost</source>
   <translation>C&amp;oût</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>C&amp;urrency</source>
   <translation>De&amp;vise</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Even by &amp;Background</source>
   <translation>Égaliser par le &amp;fond</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Evened</source>
   <translation>Égalisée</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Flitch</source>
   <translation>Quartelle</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Half round</source>
   <translation>Semi-déroulé</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Li&amp;ght</source>
   <translation>Lumiè&amp;re</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Lot</source>
   <translation>Lot</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Measure the light anew on the background that the photographs show round the leaves</source>
   <translation>Mesurer la lumière à nouveau sur le fond que les photos montrent autour des feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Not known</source>
   <translation>Non connu</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>O&amp;rigin</source>
   <translation>Or&amp;igine</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Of the whole bundle; 0 if it is not known</source>
   <translation>De toute la liasse ; 0 s'il n'est pas connu</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Particulars</source>
   <translation>Renseignements</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Peeled</source>
   <translation>Déroulé</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Rea&amp;d CSV...</source>
   <translation>&amp;Lire CSV...</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sawn</source>
   <translation>Scié</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sliced flat</source>
   <translation>Tranché à plat</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sliced on the quarter</source>
   <translation>Sur quartier</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sliced on the rift</source>
   <translation>Faux quartier</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sp&amp;ecies</source>
   <translation>&amp;Essence</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>T&amp;ight side</source>
   <translation>Côté fer&amp;mé</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Take the particulars from a file: the line that has this bundle's name</source>
   <translation>Prendre les renseignements dans un fichier : la ligne qui porte le nom de cette liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The back</source>
   <translation>Le dos</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The face</source>
   <translation>La face</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The merchant's mark of the lot</source>
   <translation>La marque du marchand pour le lot</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The wood</source>
   <translation>Le bois</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Thickness of a leaf</source>
   <translation>Épaisseur d'une feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>What evens the light of each photograph; the photographs themselves are unchanged</source>
   <translation>Ce qui égalise la lumière de chaque photo ; les photos elles-mêmes restent inchangées</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>When photographed; 0 if it is not known</source>
   <translation>Au moment de la photo ; 0 si elle n'est pas connue</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Where it comes from, papers, notes</source>
   <translation>D'où il vient, papiers, notes</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Write the particulars of all bundles of this document to a file</source>
   <translation>Écrire les renseignements de toutes les liasses de ce document dans un fichier</translation>
  </message>
 </context>
 <context>
  <name>VeneerPhoto</name>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>+</source>
   <translation>+</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>-</source>
   <translation>-</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>1:1</source>
   <translation>1:1</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>&lt;</source>
   <translation>&lt;</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>&gt;</source>
   <translation>&gt;</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>A pixel of the photograph on each of the screen (1)</source>
   <translation>Un pixel de la photo sur chacun de l'écran (1)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Closer (+ or the wheel)</source>
   <translation>Plus près (+ ou la molette)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Fit</source>
   <translation>Ajuster</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Further away (- or the wheel)</source>
   <translation>Plus loin (- ou la molette)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Grid</source>
   <translation>Grille</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Lines of whole millimetres (G)</source>
   <translation>Lignes de millimètres entiers (G)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Photograph</source>
   <translation>Photographie</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Show the whole photograph (F)</source>
   <translation>Montrer toute la photo (F)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>The next photograph (Page Down)</source>
   <translation>La photo suivante (Page suiv.)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>The photograph before (Page Up)</source>
   <translation>La photo précédente (Page préc.)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Which photograph is shown</source>
   <translation>Quelle photo est montrée</translation>
  </message>
 </context>
 <context>
  <name>VeneerPreferences</name>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;1:1 templates on</source>
   <translation>Gabarits &amp;1:1 sur</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Approved by</source>
   <translation>Appro&amp;uvé par</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Cut by</source>
   <translation>&amp;Coupé par</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Drawn by</source>
   <translation>&amp;Dessiné par</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Each piece off by</source>
   <translation>Par pièc&amp;e ±</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Leaf thickness</source>
   <translation>Ép&amp;aisseur de feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Margin</source>
   <translation>&amp;Marge</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Oversize of blanks</source>
   <translation>&amp;Surcote des ébauches</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Paper</source>
   <translation>&amp;Papier</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Spare leaves</source>
   <translation>&amp;Feuilles de réserve</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Tool's width</source>
   <translation>Lar&amp;geur d'outil</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>A4 upright</source>
   <translation>A4 debout</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>ANSI A upright</source>
   <translation>ANSI A debout</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>As FreeCAD shows them</source>
   <translation>Comme FreeCAD les montre</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>At the bench</source>
   <translation>À l'établi</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Both</source>
   <translation>Les deux</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Face do&amp;wn</source>
   <translation>Pareme&amp;nt dessous</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>How far blanks reach beyond the finished edge</source>
   <translation>De combien les ébauches dépassent le bord fini</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>How many unused leaves should be left over</source>
   <translation>Combien de feuilles inutilisées doivent rester</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>How the stack is cut; a new bench begins with the figures that are usual for it</source>
   <translation>Comment la pile est coupée ; un nouvel établi commence avec les valeurs usuelles pour cela</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Inch</source>
   <translation>Pouce</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Knife</source>
   <translation>Couteau</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Le&amp;ngths in</source>
   <translation>&amp;Longueurs en</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Machine</source>
   <translation>Machine</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>New bundles and matches</source>
   <translation>Nouvelles liasses et nouveaux frisages</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>New drawings and sheets</source>
   <translation>Nouveaux plans et nouvelles planches</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>New objects</source>
   <translation>Nouveaux objets</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Owne&amp;r</source>
   <translation>P&amp;ropriétaire</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Saw</source>
   <translation>Scie</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Standard error of each wedge for itself: knife, lean, edge</source>
   <translation>Écart type de chaque secteur pour lui-même : couteau, inclinaison, bord</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Standard error of the template's angle, the same in every wedge of one stack</source>
   <translation>Écart type de l'angle du gabarit, le même pour chaque secteur d'une pile</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Taped</source>
   <translation>Assemblé</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Template o&amp;ff by</source>
   <translation>Ga&amp;barit ±</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>The paper of the sheets</source>
   <translation>Le papier des planches</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>The paper that 1:1 templates are tiled on</source>
   <translation>Le papier sur lequel les gabarits 1:1 sont répartis</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>The pieces are taped with their show face down</source>
   <translation>Les pièces sont assemblées parement dessous</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>To keep between a blank and the edge of what may be used of a leaf</source>
   <translation>À garder entre une ébauche et le bord de ce qui est utile d'une feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>What a leaf is taken to be as long as nothing else is said</source>
   <translation>L'épaisseur prise pour une feuille tant que rien d'autre n'est dit</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>What lengths are written in on sheets; FreeCAD's own setting says it for everything on the screen</source>
   <translation>En quoi les longueurs sont écrites sur les planches ; le réglage de FreeCAD vaut pour tout ce qui est à l'écran</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Who answers for the drawings, for the title block</source>
   <translation>Qui répond des plans, pour le cartouche</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Who approves the drawings, for the title block</source>
   <translation>Qui approuve les plans, pour le cartouche</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Whose drawings they are, for the title block</source>
   <translation>À qui sont les plans, pour le cartouche</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Width of the tool that follows a template's line; 0: none</source>
   <translation>Largeur de l'outil qui suit le trait d'un gabarit ; 0 : aucune</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>mm</source>
   <translation>mm</translation>
  </message>
 </context>
 <context>
  <name>VeneerPreferencesColours</name>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Joints of two bundles</source>
   <translation>Joints de &amp;deux liasses</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Knot</source>
   <translation>&amp;Nœud</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Margin</source>
   <translation>&amp;Marge</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Numbers</source>
   <translation>Numér&amp;os</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Seams and edges</source>
   <translation>&amp;Joints et bords</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Usable area</source>
   <translation>Surface &amp;utile</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Wedge</source>
   <translation>&amp;Secteur</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A knot</source>
   <translation>Un nœud</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A margin drawn as a fault</source>
   <translation>Une marge tracée comme défaut</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A patch</source>
   <translation>Une pièce rapportée</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A split</source>
   <translation>Une fente</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A stain</source>
   <translation>Une tache</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Colours</source>
   <translation>Couleurs</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Faults</source>
   <translation>Défauts</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>In the 3-D view</source>
   <translation>Dans la vue 3D</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Leaf or point &amp;looked at</source>
   <translation>Feuille ou point &amp;regardé</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Lines between the pieces, and the edge of the top</source>
   <translation>Lignes entre les pièces, et bord du plateau</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>On leaves and charts</source>
   <translation>Sur les feuilles et graphiques</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Pat&amp;ch</source>
   <translation>P&amp;ièce rapportée</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Positions and leaves on their tags, which are dark where the colour is light</source>
   <translation>Positions et feuilles sur leurs étiquettes, sombres là où la couleur est claire</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>S&amp;tain</source>
   <translation>T&amp;ache</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Seams where leaves of two bundles meet</source>
   <translation>Joints où se rencontrent les feuilles de deux liasses</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Selected &amp;pieces</source>
   <translation>Pièces &amp;choisies</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Spl&amp;it</source>
   <translation>&amp;Fente</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Suspect lea&amp;ves</source>
   <translation>Feuilles suspec&amp;tes</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The leaf, the point, the pair or the spot that is looked at</source>
   <translation>La feuille, le point, la paire ou l'emplacement regardé</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The outline of pieces that are selected</source>
   <translation>Le contour des pièces choisies</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The outline of what may be used of a leaf</source>
   <translation>Le contour de ce qui est utile d'une feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The sign on leaves that the proof of the sequence suspects</source>
   <translation>Le signe sur les feuilles que la preuve de la suite suspecte</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The wedge on a leaf, and what forbids it to be cut there</source>
   <translation>Le secteur sur une feuille, et ce qui interdit de l'y couper</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The wedge on a leaf, where it can be cut</source>
   <translation>Le secteur sur une feuille, là où il peut être coupé</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Wedge that does not &amp;fit</source>
   <translation>Secteur qui ne tient &amp;pas</translation>
  </message>
 </context>
 <context>
  <name>VeneerRunPanel</name>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Gaps</source>
   <translation>&amp;Jeux</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Joints</source>
   <translation>Joi&amp;nts</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Margin</source>
   <translation>Mar&amp;ge</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Panels</source>
   <translation>&amp;Panneaux</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Spares</source>
   <translation>Réser&amp;ve</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Ways</source>
   <translation>&amp;Secteurs</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>A&amp;xis</source>
   <translation>A&amp;xe</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Architectural</source>
   <translation>Architecte</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>As one field</source>
   <translation>Un champ</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>At 45 degrees</source>
   <translation>À 45 degrés</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Balance</source>
   <translation>Équilibré</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Box</source>
   <translation>4 miroirs</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Centre and butt</source>
   <translation>Centre-bout</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Centre balance</source>
   <translation>Joint médian</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Closed</source>
   <translation>Fermés</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Continuous</source>
   <translation>Continu</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Corner to corner</source>
   <translation>De coin à coin</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Cut fr&amp;om</source>
   <translation>Coupé d&amp;ans</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Diamond</source>
   <translation>Losange</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Each panel from the next leaves, all of one size; or one field laid out over all panels</source>
   <translation>Chaque panneau dans les feuilles suivantes, tous d'une taille ; ou un seul champ posé sur tous les panneaux</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>End match</source>
   <translation>En bout</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>F&amp;ace</source>
   <translation>Face&amp;s vues</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>F&amp;irst leaf</source>
   <translation>1re feu&amp;ille</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>G&amp;rain</source>
   <translation>Fi&amp;l</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Herringbone</source>
   <translation>Chevrons</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>In sequence</source>
   <translation>En suite</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Kin&amp;d</source>
   <translation>G&amp;enre</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Laid through</source>
   <translation>Laissés passer</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Mat&amp;ch</source>
   <translation>&amp;Frisage</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Midd&amp;le of the leaves</source>
   <translation>&amp;Milieu des feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Missing</source>
   <translation>Manquent</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Nothing</source>
   <translation>Rien</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Numb&amp;er</source>
   <translation>&amp;Nombre</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Numbers are those of the leaves, in the order in which they were sliced; a darker one is turned over. Names differ by region: go by the drawing.</source>
   <translation>Les nombres sont ceux des feuilles, dans l'ordre du tranchage ; une plus sombre est retournée. Les noms varient selon les régions : fiez-vous au dessin.</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>O&amp;versize</source>
   <translation>Surco&amp;te</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Or&amp;der</source>
   <translation>&amp;Ordre</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Panel</source>
   <translation>Panneau</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Panels in Sequence</source>
   <translation>Panneaux en suite</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Radial</source>
   <translation>Rayonnant</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Reverse box</source>
   <translation>4 inversés</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Reverse diamond</source>
   <translation>Losange V</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Ro&amp;ws</source>
   <translation>&amp;Rangs</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Running</source>
   <translation>Courant</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Select flat faces in one plane in the 3-D view, then press this: they become the panels</source>
   <translation>Choisissez des faces planes d'un même plan dans la vue 3D, puis appuyez ici : elles deviennent les panneaux</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Shu&amp;ffle</source>
   <translation>Mélang&amp;e</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Side by side</source>
   <translation>Côte à côte</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Slan&amp;t</source>
   <translation>&amp;Biais</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Slip, centre book</source>
   <translation>Centre livre</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Spot across</source>
   <translation>Place en travers</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Spot along</source>
   <translation>Place en long</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Spread</source>
   <translation>Réparti</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Strip widt&amp;h</source>
   <translation>Larg. ban&amp;de</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>T&amp;urn</source>
   <translation>Retou&amp;rner</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Ta&amp;ke the selected faces</source>
   <translation>Prendre les faces &amp;choisies</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>The panels by elevation; click one to select it</source>
   <translation>Les panneaux en élévation ; un clic en sélectionne un</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>The&amp;n from</source>
   <translation>P&amp;uis dans</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>What is to be said of the run, the gravest first; a click selects the panels that it speaks of</source>
   <translation>Ce qu'il y a à dire de la série, le plus grave d'abord ; un clic sélectionne les panneaux dont il s'agit</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>as needed</source>
   <translation>au besoin</translation>
  </message>
 </context>
 <context>
  <name>VeneerSeams</name>
  <message>
   <location filename="resources/ui/seams.ui" />
   <source>Seams</source>
   <translation>Joints</translation>
  </message>
  <message>
   <location filename="resources/ui/seams.ui" />
   <source>Where the seams were measured: the larger a spot, the more the figure misses; full where it shows</source>
   <translation>Où les joints ont été mesurés : plus un point est grand, plus le dessin est décalé ; plein là où cela se voit</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequencePanel</name>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;By</source>
   <translation>S&amp;ur</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Compare...</source>
   <translation>&amp;Comparer...</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;End for end</source>
   <translation>Tête-&amp;bêche</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Follow</source>
   <translation>&amp;Suivre</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Prove the sequence</source>
   <translation>&amp;Prouver la suite</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Renumber as proposed</source>
   <translation>Re&amp;numéroter comme proposé</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Seams...</source>
   <translation>&amp;Joints...</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>As photographed</source>
   <translation>Tel que photographié</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Chal&amp;k list...</source>
   <translation>Liste à la crai&amp;e...</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Compare all photographs: the order that explains them best, and the leaves that do not fit it</source>
   <translation>Compare toutes les photos : l'ordre qui les explique le mieux, et les feuilles qui n'y entrent pas</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Give the leaves the numbers that the proof proposes</source>
   <translation>Donner aux feuilles les numéros que la preuve propose</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Lay the leaves on each other so</source>
   <translation>Poser ainsi les feuilles les unes sur les autres</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Measure how the figure meets along the seams of the match, as the leaves are registered</source>
   <translation>Mesurer comment le dessin se rejoint aux joints du frisage, telles que les feuilles sont calées</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Numbers and ends to chalk on the real stack, as a file to print</source>
   <translation>Numéros et bouts à marquer à la craie sur la vraie pile, en fichier à imprimer</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Pic&amp;tures</source>
   <translation>&amp;Images</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Prove Sequence</source>
   <translation>Prouver la suite</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Re&amp;gister</source>
   <translation>Ca&amp;ler</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Show the window with the pictures again</source>
   <translation>Remontrer la fenêtre des images</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>T&amp;ake off</source>
   <translation>Ô&amp;ter</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Take the registers off again: the leaves lie as they were photographed</source>
   <translation>Ôter les calages : les feuilles sont comme photographiées</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The figure</source>
   <translation>Le dessin</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The leaf that is shown lay the other end up: turn its photograph by 180 degrees</source>
   <translation>La feuille montrée avait l'autre bout en haut : tourner sa photo de 180 degrés</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The leaf that is shown lay the other side up: take its photograph for its back</source>
   <translation>La feuille montrée avait l'autre côté dessus : prendre sa photo pour celle de son dos</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The leaves that do not fit, and what to do; a click shows one</source>
   <translation>Les feuilles qui n'entrent pas, et que faire ; un clic en montre une</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The log</source>
   <translation>La grume</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The same top laid by each choice, side by side</source>
   <translation>Le même plateau posé selon chaque choix, côte à côte</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Turn &amp;over</source>
   <translation>Retou&amp;rner</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Two picked marks</source>
   <translation>Deux points choisis</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>What lies at the same place on all leaves when they are stacked and cut</source>
   <translation>Ce qui est au même endroit sur toutes les feuilles quand elles sont empilées et coupées</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Where the figure is compared: all over the leaf, or where the pieces of a match are cut from it</source>
   <translation>Où le dessin est comparé : sur toute la feuille, ou là où les pièces d'un frisage y sont coupées</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequenceWindow</name>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source> a second</source>
   <translation> par seconde</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>&amp;Laid</source>
   <translation>Po&amp;sées</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>&amp;Play</source>
   <translation>&amp;Défiler</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>+</source>
   <translation>+</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>-</source>
   <translation>-</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>&lt;</source>
   <translation>&lt;</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>&gt;</source>
   <translation>&gt;</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Closer (+ or the wheel)</source>
   <translation>Plus près (+ ou la molette)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Difference</source>
   <translation>Différence</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Fit</source>
   <translation>Ajuster</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Further away (- or the wheel)</source>
   <translation>Plus loin (- ou la molette)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Half and half</source>
   <translation>Moitié-moitié</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>How leaves are shown</source>
   <translation>Comment les feuilles sont montrées</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>How many leaves are shown in a second</source>
   <translation>Combien de feuilles sont montrées par seconde</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>One leaf</source>
   <translation>Une feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Page through by itself, there and back (space bar)</source>
   <translation>Parcourt tout seul, aller et retour (barre d'espace)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Page through the leaves (Ctrl and wheel over the picture, Page Up and Down)</source>
   <translation>Parcourir les feuilles (Ctrl et molette sur l'image, Page préc. et suiv.)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Sequence</source>
   <translation>Suite</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Sho&amp;w</source>
   <translation>M&amp;ontrer</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Show the whole leaf (F)</source>
   <translation>Montrer toute la feuille (F)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>The leaf after (right arrow)</source>
   <translation>La feuille suivante (flèche droite)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>The leaf before (left arrow)</source>
   <translation>La feuille précédente (flèche gauche)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>The second leaf</source>
   <translation>La seconde feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Two by turns</source>
   <translation>Deux tour à tour</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Wheel: zoom. Ctrl and wheel: page. Drag: move. Click: follow that point through the stack.</source>
   <translation>Molette : zoom. Ctrl et molette : parcourir. Glisser : déplacer. Clic : suivre ce point à travers la pile.</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Where the leaves are laid on each other</source>
   <translation>Là où les feuilles sont posées les unes sur les autres</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotCompare</name>
  <message>
   <location filename="resources/ui/spot_compare.ui" />
   <source>Click a top to go there.</source>
   <translation>Cliquez un plateau pour y aller.</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_compare.ui" />
   <source>Compare</source>
   <translation>Comparer</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotFound</name>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>&amp;Find spots</source>
   <translation>&amp;Chercher</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>&amp;Hidden disc</source>
   <translation>&amp;Disque dessus</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>&amp;Keep it</source>
   <translation>&amp;Garder</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>C&amp;losing seam</source>
   <translation>Joint de fer&amp;meture</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>C&amp;olour change</source>
   <translation>C&amp;ouleur</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Diameter of a disc in the centre that will be covered, so that faults may lie under it; 0 for none. The search, the verdict and the checks of the match know of it.</source>
   <translation>Diamètre d'un disque au centre qui sera couvert, de sorte que des défauts peuvent être dessous ; 0 pour aucun. La recherche, le verdict et les contrôles du frisage le savent.</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Found</source>
   <translation>Trouvés</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>G&amp;rain change</source>
   <translation>F&amp;il</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>How much broad changes of colour count</source>
   <translation>Combien comptent les grands changements de couleur</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>How much changes of the direction of grain count</source>
   <translation>Combien comptent les changements de direction du fil</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>How much it counts against a spot that colours differ across its seams</source>
   <translation>Combien compte, contre un emplacement, la différence de couleur à ses joints</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Keeps the spot that is chosen, with its measures</source>
   <translation>Garde l'emplacement choisi, avec ses mesures</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>S&amp;eams</source>
   <translation>&amp;Joints</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>The same for the seam where the most leaves lie between</source>
   <translation>De même pour le joint entre les côtés duquel il y a le plus de feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Tries every spot and direction on the leaves</source>
   <translation>Essaie chaque emplacement et direction sur les feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>What counts, and how much</source>
   <translation>Ce qui compte, et combien</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotKept</name>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Compare</source>
   <translation>&amp;Comparer</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Delete</source>
   <translation>&amp;Supprimer</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Go there</source>
   <translation>&amp;Y aller</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Keep this spot</source>
   <translation>&amp;Garder cet emplacement</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Name</source>
   <translation>&amp;Nom</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Keeps where the wedge lies now, with its picture, in the document</source>
   <translation>Garde dans le document où le secteur se trouve, avec son image</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Kept</source>
   <translation>Gardés</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Picture ane&amp;w</source>
   <translation>Refaire l'&amp;image</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Pictures it as its leaves are now</source>
   <translation>En fait l'image, comme ses feuilles sont à présent</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Shows the two to six that are ticked side by side</source>
   <translation>Montre côte à côte les deux à six qui sont cochés</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Takes the chosen spot out of the document; undo brings it back</source>
   <translation>Retire l'emplacement choisi du document ; annuler le ramène</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Takes up the kept spot that is chosen (or double click it)</source>
   <translation>Reprend l'emplacement gardé choisi (ou double clic)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>The name of the kept spot that is chosen</source>
   <translation>Le nom de l'emplacement gardé choisi</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotMakes</name>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>&amp;Largest tops</source>
   <translation>&amp;Plateaux max</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>A click on a row gives the top that size; else it keeps its own</source>
   <translation>Un clic sur une ligne donne au plateau cette taille ; sinon il garde la sienne</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Click a row to go there</source>
   <translation>Cliquez une ligne pour y aller</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>From leaf</source>
   <translation>Dès la feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Ho&amp;w many</source>
   <translation>&amp;Combien</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Largest top</source>
   <translation>Plateau max</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Take over the si&amp;ze too</source>
   <translation>Reprendre aussi la &amp;taille</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Ways</source>
   <translation>Nb</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>What This Bundle Makes</source>
   <translation>Ce que donne cette liasse</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Works out how many tops of this size and these ways the leaves give</source>
   <translation>Calcule combien de plateaux de cette taille et de ces secteurs les feuilles donnent</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Works out the largest top for every number of ways</source>
   <translation>Calcule le plus grand plateau pour chaque nombre de secteurs</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotNearby</name>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>&amp;Shift</source>
   <translation>&amp;Décalage</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>&amp;Turn</source>
   <translation>&amp;Rotation</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>How far it is turned</source>
   <translation>De combien il est tourné</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>How far the wedge is shifted from picture to picture</source>
   <translation>De combien le secteur est décalé d'une image à l'autre</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>Nearby</source>
   <translation>Alentour</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>What a small shift of the wedge does. Click a picture to go there.</source>
   <translation>Ce que fait un petit décalage du secteur. Cliquez une image pour y aller.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotPanel</name>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>&amp;Diameter</source>
   <translation>&amp;Diamètre</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>&amp;Show</source>
   <translation>&amp;Montrer</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>&amp;Ways</source>
   <translation>&amp;Secteurs</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>A&amp;xis</source>
   <translation>A&amp;xe</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Across &amp;flats</source>
   <translation>Sur &amp;plats</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Book</source>
   <translation>En livre</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Choose Spot</source>
   <translation>Choisir l'emplacement</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>First &amp;leaf</source>
   <translation>1r&amp;e feuille</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>In sequence</source>
   <translation>En suite</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>O&amp;rder</source>
   <translation>&amp;Ordre</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>One mirrored</source>
   <translation>Une en miroir</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Slip</source>
   <translation>Glissé</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Spread</source>
   <translation>Réparti</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>T&amp;urn</source>
   <translation>Retou&amp;rner</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>The top from the true leaves, or as two mirrors on the leaf looked at would show it (M)</source>
   <translation>Le plateau avec les vraies feuilles, ou comme deux miroirs sur la feuille regardée le montreraient (M)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Tip a&amp;cross</source>
   <translation>P&amp;te travers</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Tip al&amp;ong</source>
   <translation>Pte &amp;long</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>True leaves</source>
   <translation>Vraies feuilles</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>What stands against cutting here, the gravest first; a click selects what it speaks of</source>
   <translation>Ce qui s'oppose à une coupe ici, le plus grave d'abord ; un clic sélectionne ce dont il s'agit</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotWindow</name>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>+</source>
   <translation>+</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>-</source>
   <translation>-</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>&lt;</source>
   <translation>&lt;</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>&gt;</source>
   <translation>&gt;</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Closer to the leaf (+ or the wheel)</source>
   <translation>Plus près de la feuille (+ ou la molette)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Fit</source>
   <translation>Ajuster</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Further away from the leaf (- or the wheel)</source>
   <translation>Plus loin de la feuille (- ou la molette)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Grid</source>
   <translation>Grille</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Leaf and Top</source>
   <translation>Feuille et plateau</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Lines of whole millimetres (G)</source>
   <translation>Lignes de millimètres entiers (G)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Show the whole leaf (F)</source>
   <translation>Montrer toute la feuille (F)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Spot</source>
   <translation>Emplacement</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>The leaf before (Page Up)</source>
   <translation>La feuille précédente (Page préc.)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>The leaf that is looked at; the wedge is the same on all</source>
   <translation>La feuille regardée ; le secteur est le même sur toutes</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>The next leaf (Page Down)</source>
   <translation>La feuille suivante (Page suiv.)</translation>
  </message>
 </context>
</TS>
