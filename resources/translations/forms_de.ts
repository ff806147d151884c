<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>VeneerBacksPanel</name>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Add...</source>
   <translation>&amp;Hinzufügen...</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Bundle</source>
   <translation>&amp;Paket</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Measure the Wander</source>
   <translation>Wan&amp;dern messen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Prove How the Leaves Lay</source>
   <translation>Lage im Stamm &amp;nachweisen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Say So in the Bundle</source>
   <translation>Ins Paket &amp;schreiben</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>&amp;Scale</source>
   <translation>&amp;Maßstab</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>As the faces have</source>
   <translation>Wie Vorderseiten</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Back</source>
   <translation>Hinten</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Backs</source>
   <translation>Rückseiten</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Both</source>
   <translation>Beide</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>By a pixel's size</source>
   <translation>Pixelgröße</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Choose photographs of backs; the last number in each name is the leaf's. They are flipped, for backs are kept as seen from the face</source>
   <translation>Fotos von Rückseiten wählen; die letzte Zahl im Namen ist die des Blatts. Sie werden gespiegelt, denn Rückseiten werden von vorn gesehen aufbewahrt</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Choose the photograph of the back of the leaf that is shown, whatever its name</source>
   <translation>Das Foto der Rückseite des gezeigten Blatts wählen, wie immer es heißt</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Compares the backs with their neighbours' faces: two photographs of one cut are as good as one</source>
   <translation>Vergleicht die Rückseiten mit den Vorderseiten ihrer Nachbarn: zwei Fotos eines Schnitts sind so gut wie eines</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Face</source>
   <translation>Vorn</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Face as it is</source>
   <translation>Vorderseite, wie sie ist</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Figure of the back</source>
   <translation>Textur der Rückseite</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>For T&amp;his Leaf...</source>
   <translation>&amp;Für dieses Blatt...</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>How the scale of the photographs that are added is known: by the camera that took the faces and stood still, or by the size of a pixel</source>
   <translation>Woher der Maßstab der neuen Fotos bekannt ist: von der Kamera, die die Vorderseiten aufnahm und stehen blieb, oder von der Größe eines Pixels</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>How turned leaves are pinned: where their faces are, so that the figure of the back lies off by the wander, or by the wander further on, so that it meets its neighbour's at a book seam</source>
   <translation>Wie gewendete Blätter gestiftet werden: wo ihre Vorderseiten liegen, so dass die Textur der Rückseite um das Wandern daneben liegt, oder um das Wandern versetzt, so dass sie an einer gestürzten Fuge die des Nachbarn trifft</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Measures how far the figure lies elsewhere on the back than on the face, on all backs that are tied; two or three tell how steady it is</source>
   <translation>Misst, wie weit die Textur auf der Rückseite woanders liegt als auf der Vorderseite, an allen gebundenen Rückseiten; zwei oder drei zeigen, wie stetig es ist</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Opens the window with the photograph again, or brings it to the front</source>
   <translation>Öffnet das Fenster mit dem Foto wieder oder holt es nach vorn</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Other &amp;End Up</source>
   <translation>&amp;Kopf unten</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>P&amp;in by</source>
   <translation>St&amp;ifte nach</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Pi&amp;xel</source>
   <translation>Pi&amp;xel</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Show the Photo&amp;graph</source>
   <translation>F&amp;oto zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ta&amp;ke It</source>
   <translation>Gelten &amp;lassen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Takes this tie in spite of the doubt</source>
   <translation>Lässt diese Bindung trotz des Zweifels gelten</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The backs that are photographed, and how far face and back lie apart under what ties them (rms, from these photographs). A click shows the back; Delete takes one that was added here away again</source>
   <translation>Die fotografierten Rückseiten, und wie weit Vorder- und Rückseite unter dem, was sie bindet, auseinander liegen (rms, aus diesen Fotos). Ein Klick zeigt die Rückseite; Entf nimmt eine hier hinzugefügte wieder weg</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The bundle then says how the leaves lay as it was proved; it decides whose photograph shows a back</source>
   <translation>Das Paket sagt dann, wie die Blätter nachweislich lagen; danach richtet sich, wessen Foto eine Rückseite zeigt</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The leaf that is shown beside the panel</source>
   <translation>Das Blatt, das neben dem Bedienfeld gezeigt wird</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>The side that is shown: the face, the back as seen from the face, or strips of both where the tie lays them on each other</source>
   <translation>Die Seite, die gezeigt wird: die Vorderseite, die Rückseite von vorn gesehen, oder Streifen von beiden, wo sie aufeinander liegen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Tie by &amp;Marks</source>
   <translation>Nach Ma&amp;rken</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Tie by &amp;Outline</source>
   <translation>Nach &amp;Umriss</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties</source>
   <translation>Bindungen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties all backs by the leaf's outline, found on the plain background of both photographs</source>
   <translation>Bindet alle Rückseiten nach dem Umriss des Blatts, der auf dem einfarbigen Grund beider Fotos gefunden wird</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties the back that is shown by its outline, turned end for end</source>
   <translation>Bindet die gezeigte Rückseite nach ihrem Umriss, Kopf gegen Fuß gedreht</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Ties the backs by the marks that they share with their faces: paper marks, or points that you click on both photographs</source>
   <translation>Bindet die Rückseiten nach den Marken, die sie mit ihren Vorderseiten teilen: Papiermarken oder Punkte, die Sie auf beiden Fotos anklicken</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>What They Tell</source>
   <translation>Was sie sagen</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>What a pixel of the photographs of backs measures on the leaf</source>
   <translation>Was ein Pixel der Fotos von Rückseiten auf dem Blatt misst</translation>
  </message>
  <message>
   <location filename="resources/ui/backs.ui" />
   <source>Whose backs are shown</source>
   <translation>Wessen Rückseiten gezeigt werden</translation>
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
   <translation>Klebst&amp;off</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Approved by</source>
   <translation>&amp;Genehmigt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Boards</source>
   <translation>&amp;Decklagen</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Created by</source>
   <translation>Er&amp;stellt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Currency</source>
   <translation>&amp;Währung</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Files in</source>
   <translation>Date&amp;ien in</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Gauge in</source>
   <translation>Manometer &amp;in</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Kerf</source>
   <translation>S&amp;chnittfuge</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Length</source>
   <translation>&amp;Länge</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Lengths in</source>
   <translation>&amp;Längen in</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Match</source>
   <translation>Furnier&amp;bild</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Number</source>
   <translation>&amp;Nummer</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Open time</source>
   <translation>O&amp;ffene Zeit</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Owner</source>
   <translation>&amp;Eigentümer</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Paper</source>
   <translation>&amp;Papier</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Pressed by</source>
   <translation>&amp;Gepresst mit</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Price</source>
   <translation>&amp;Preis</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Room round</source>
   <translation>&amp;Rundum frei</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Seams cut</source>
   <translation>&amp;Fugenschnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Spread</source>
   <translation>Auf&amp;trag</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Title</source>
   <translation>&amp;Titel</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Tool's width</source>
   <translation>&amp;Werkzeug</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Tops</source>
   <translation>Pla&amp;tten</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>&amp;Write Packet...</source>
   <translation>&amp;Mappe schreiben...</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>A&amp;t most</source>
   <translation>&amp;Höchstens</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>A4 upright</source>
   <translation>A4 hoch</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>ANSI A upright</source>
   <translation>ANSI A hoch</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Alt&amp;itude</source>
   <translation>M&amp;eereshöhe</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>At on&amp;ce</source>
   <translation>&amp;Auf einmal</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Be&amp;yond</source>
   <translation>&amp;Überstand</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Cut by</source>
   <translation>Geschnitten mit</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Cutting</source>
   <translation>Schneiden</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Exact</source>
   <translation>Genau</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Fills in what is common practice for that way of cutting</source>
   <translation>Trägt ein, was bei dieser Art zu schneiden üblich ist</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Fraction</source>
   <translation>Bruch</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Its press&amp;ure</source>
   <translation>&amp;Sein Druck</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Knife</source>
   <translation>Messer</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>L&amp;ean</source>
   <translation>Nei&amp;gung</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Machine</source>
   <translation>Maschine</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Make the sheets as the match and this panel are now</source>
   <translation>Die Zeichnungsblätter machen, wie Furnierbild und dieses Fenster jetzt sind</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Not said</source>
   <translation>Nicht gesagt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>O&amp;ver, in all</source>
   <translation>&amp;Über, gesamt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Over by a width</source>
   <translation>Über, als Breite</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Over by an angle</source>
   <translation>Über, als Winkel</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Over, &amp;each</source>
   <translation>Über, &amp;je Keil</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pe&amp;r</source>
   <translation>&amp;Je</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pins to c&amp;ut</source>
   <translation>&amp;Stift - Schnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pins to e&amp;dge</source>
   <translation>Sti&amp;ft - Kante</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Press</source>
   <translation>Presse</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Pressed &amp;for</source>
   <translation>&amp;Presszeit</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Ra&amp;ms</source>
   <translation>&amp;Zylinder</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Ram &amp;bore</source>
   <translation>&amp;Kolben-Ø</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Refres&amp;h Sheets</source>
   <translation>Blätter erne&amp;uern</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Saw</source>
   <translation>Säge</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Set-out &amp;base</source>
   <translation>An&amp;reißlänge</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Sheets</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Taped</source>
   <translation>Geklebt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Templates</source>
   <translation>Schablonen</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Thic&amp;k in all</source>
   <translation>&amp;Dicke gesamt</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Tiled &amp;on</source>
   <translation>K&amp;acheln auf</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>To the Bench</source>
   <translation>An die Werkbank</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Usual for This Way</source>
   <translation>Üblich für diese Art</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Vacuum bag</source>
   <translation>Vakuumsack</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Wi&amp;dth</source>
   <translation>&amp;Breite</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>Write all sheets, templates, plans and lists into a folder</source>
   <translation>Alle Zeichnungsblätter, Schablonen, Pläne und Listen in einen Ordner schreiben</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>both</source>
   <translation>beidem</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>bundle</source>
   <translation>Paket</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>face &amp;down</source>
   <translation>&amp;Sichtseite unten</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <location filename="resources/ui/bench.ui" />
   <source>leaf</source>
   <translation>Blatt</translation>
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
   <translation>Quadratfuß</translation>
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
   <translation>&amp;Klima</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Below core</source>
   <translation>&amp;Unter Träger</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Core</source>
   <translation>&amp;Träger</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Grain</source>
   <translation>&amp;Faser</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Lipping</source>
   <translation>An&amp;leimer</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Material</source>
   <translation>&amp;Werkstoff</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>&amp;Stringing</source>
   <translation>&amp;Ader</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Ab&amp;ove core</source>
   <translation>&amp;Über Träger</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Across edge</source>
   <translation>Quer zur Kante</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Along edge</source>
   <translation>Längs der Kante</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Bac&amp;ker</source>
   <translation>&amp;Gegenfurnier</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Bo&amp;rder</source>
   <translation>F&amp;ries</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Build Up Panel</source>
   <translation>Platte aufbauen</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Butted</source>
   <translation>Stumpf</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>By material</source>
   <translation>Nach Werkstoff</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Crossbands</source>
   <translation>Absperrfurniere</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Diameter</source>
   <translation>Durchmesser</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Disc</source>
   <translation>Scheibe</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>E&amp;xploded</source>
   <translation>Au&amp;seinander</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>First tip</source>
   <translation>Erste Spitze</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Following</source>
   <translation>Der Kante nach</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Full height</source>
   <translation>In voller Höhe</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Grain</source>
   <translation>Faser</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Humidity</source>
   <translation>Luftfeuchte</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>I&amp;nlay</source>
   <translation>E&amp;inlage</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Is known</source>
   <translation>Ist bekannt</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Joints</source>
   <translation>Ecken</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Lies</source>
   <translation>Liegt</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Made at</source>
   <translation>Gefertigt bei</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Make B&amp;ill</source>
   <translation>Stü&amp;ckliste</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Make or renew the spreadsheet of this panel's materials, areas and volumes</source>
   <translation>Die Tabelle mit Werkstoffen, Flächen und Rauminhalten dieser Platte machen oder erneuern</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Material</source>
   <translation>Werkstoff</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Mitred</source>
   <translation>Auf Gehrung</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Moves</source>
   <translation>Arbeitet</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>None</source>
   <translation>Ohne</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Of</source>
   <translation>Aus</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Plain sawn</source>
   <translation>Fladerschnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Points</source>
   <translation>Zacken</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Quarter sawn</source>
   <translation>Riftschnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Save CS&amp;V...</source>
   <translation>CSV s&amp;peichern...</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Sawn</source>
   <translation>Einschnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Sheet goods</source>
   <translation>Holzwerkstoff</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Solid wood</source>
   <translation>Massivholz</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Stands at</source>
   <translation>Steht bei</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Star</source>
   <translation>Stern</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>To hollows</source>
   <translation>Bis zu den Kehlen</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>To tips</source>
   <translation>Bis zu den Spitzen</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Under veneer</source>
   <translation>Unter Furnier</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>What the checks find on this panel, the gravest first; a click selects the panel</source>
   <translation>Was die Prüfungen an dieser Platte finden, das Schwerste zuerst; ein Klick wählt die Platte aus</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Wood dust harms: saw and sand with extraction and a mask. Follow the makers' sheets for adhesive and press, and keep hands clear of the press.</source>
   <translation>Holzstaub schadet: mit Absaugung und Maske sägen und schleifen. Die Merkblätter der Hersteller von Klebstoff und Presse befolgen und die Hände von der Presse fernhalten.</translation>
  </message>
  <message>
   <location filename="resources/ui/buildup.ui" />
   <source>Write the bill of materials to a file</source>
   <translation>Die Stückliste in eine Datei schreiben</translation>
  </message>
 </context>
 <context>
  <name>VeneerCheckPanel</name>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>&amp;Match</source>
   <translation>Furnier&amp;bild</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>Check Match</source>
   <translation>Furnierbild prüfen</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>How far the figure of one leaf lies from that of the leaf it meets, from the photographs</source>
   <translation>Wie weit die Textur eines Blatts von der des Blatts liegt, das es trifft, aus den Fotos</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>Measure the &amp;seams</source>
   <translation>&amp;Fugen messen</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>What the checks find, the gravest first; a click selects what it speaks of</source>
   <translation>Was die Prüfungen finden, das Schwerste zuerst; ein Klick wählt aus, wovon es handelt</translation>
  </message>
  <message>
   <location filename="resources/ui/check.ui" />
   <source>Which match is checked</source>
   <translation>Welches Furnierbild geprüft wird</translation>
  </message>
 </context>
 <context>
  <name>VeneerChoices</name>
  <message>
   <location filename="resources/ui/choices.ui" />
   <source>Choose this in the panel</source>
   <translation>Wählt dies im Bedienfeld</translation>
  </message>
  <message>
   <location filename="resources/ui/choices.ui" />
   <source>Follow this</source>
   <translation>Hiernach richten</translation>
  </message>
  <message>
   <location filename="resources/ui/choices.ui" />
   <source>What the stack follows</source>
   <translation>Wonach der Stapel sich richtet</translation>
  </message>
 </context>
 <context>
  <name>VeneerClosingPanel</name>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source> wedges</source>
   <translation> Keile</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Each piece off by</source>
   <translation>&amp;Je Keil ±</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Protractor off by</source>
   <translation>Winke&amp;lmesser ±</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Stage</source>
   <translation>&amp;Stand</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;True</source>
   <translation>&amp;Fügen</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>&amp;Wood</source>
   <translation>&amp;Holz</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>95 in 100</source>
   <translation>95 von 100</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>99 in 100</source>
   <translation>99 von 100</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>As it will look</source>
   <translation>Wie es wird</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Before the wedges are cut, or when they are: what is asked, and what is said</source>
   <translation>Bevor die Keile geschnitten sind, oder danach: was gefragt und was gesagt wird</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Close the Ring</source>
   <translation>Ring schließen</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Cut</source>
   <translation>Geschnitten</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Cut, %</source>
   <translation>Geschnitten, %</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Each wedge</source>
   <translation>Jeder Keil</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Ed&amp;ges out by</source>
   <translation>Versatz Ka&amp;nten</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Enlarged</source>
   <translation>Vergrößert</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Errors enlarged so that they can be seen, as they are, or the ring as it will look when it is closed</source>
   <translation>Fehler vergrößert, damit man sie sieht, oder wie sie sind, oder der Ring, wie er geschlossen aussehen wird</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>First half &amp;from</source>
   <translation>Erste Hälfte &amp;ab</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Flat</source>
   <translation>Flach gemessert</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Gaps on halves</source>
   <translation>Spalte</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Halves, both ends</source>
   <translation>Beide Enden</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Halves, one end</source>
   <translation>Ein Ende</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>How su&amp;re</source>
   <translation>Wie sich&amp;er</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Leaves cut</source>
   <translation>Blätter sind</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Measure&amp;d</source>
   <translation>&amp;Gemessen</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Measured t&amp;o</source>
   <translation>Gemessen a&amp;uf</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Moisture is &amp;known</source>
   <translation>Feuchte be&amp;kannt</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>None yet</source>
   <translation>Keiner</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Not yet cut</source>
   <translation>Ungeschnitten</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Nothing yet</source>
   <translation>Noch nichts</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>On the quarter</source>
   <translation>Rift gemessert</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Photographed, %</source>
   <translation>Fotografiert, %</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Pict&amp;ure</source>
   <translation>Bil&amp;d</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Quarters</source>
   <translation>Viertel</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Set-out &amp;base</source>
   <translation>An&amp;reißlänge</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Sure to</source>
   <translation>Sicher auf</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Taped, %</source>
   <translation>Geklebt, %</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Te&amp;mplate off by</source>
   <translation>Scha&amp;blone ±</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Test &amp;cut of</source>
   <translation>&amp;Probeschnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>The&amp;y make</source>
   <translation>S&amp;ie ergeben</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>To scale</source>
   <translation>Maßstäblich</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Two halves</source>
   <translation>Zwei Hälften</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Type what was measured. A gap is seen at the tip of a half that is over, at an end of one that is under (the straightedge lies along its other side); far: how far from the tip it is seen, or the straightedge rests. Lengths take a unit.</source>
   <translation>Geben Sie ein, was gemessen wurde. Einen Spalt sieht man an der Spitze einer Hälfte, die zu groß ist, an einem Ende einer zu kleinen (das Lineal liegt längs der anderen Seite an); weit: wie weit von der Spitze er gesehen wird oder das Lineal aufliegt. Längen nehmen eine Einheit.</translation>
  </message>
  <message>
   <location filename="resources/ui/closing.ui" />
   <source>Unsure by, %</source>
   <translation>Unsicher um, %</translation>
  </message>
 </context>
 <context>
  <name>VeneerCuts</name>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>A leaf for each lot, with the positions that are cut from it; thin lines are the pieces where the outline is larger</source>
   <translation>Für jedes Los ein Blatt mit den Plätzen, die daraus geschnitten werden; dünne Linien sind die Teile, wo der Umriss größer ist</translation>
  </message>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>Choose this in the panel</source>
   <translation>Wählt dies im Bedienfeld</translation>
  </message>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>Cut so</source>
   <translation>So schneiden</translation>
  </message>
  <message>
   <location filename="resources/ui/cuts.ui" />
   <source>How the leaves are cut</source>
   <translation>Wie die Blätter geschnitten werden</translation>
  </message>
 </context>
 <context>
  <name>VeneerDrawingPanel</name>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>&amp;Drawn by</source>
   <translation>Ge&amp;zeichnet</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>&amp;Match</source>
   <translation>Furnier&amp;bild</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>&amp;Title</source>
   <translation>&amp;Titel</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>Drawing</source>
   <translation>Zeichnung</translation>
  </message>
  <message>
   <location filename="resources/ui/drawing.ui" />
   <source>Set-out &amp;base</source>
   <translation>An&amp;reißlänge</translation>
  </message>
 </context>
 <context>
  <name>VeneerFacingPanel</name>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Across</source>
   <translation>&amp;Quer</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Grain</source>
   <translation>&amp;Faser</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Side up</source>
   <translation>&amp;Seite oben</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>&amp;Take the selected faces</source>
   <translation>&amp;Gewählte Flächen nehmen</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Al&amp;ong</source>
   <translation>&amp;Längs</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Back</source>
   <translation>Rückseite</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Face</source>
   <translation>Vorderseite</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Leaf On Faces</source>
   <translation>Blatt auf Flächen</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Select plane faces in the 3-D view, then press this</source>
   <translation>Ebene Flächen in der 3D-Ansicht wählen, dann hier drücken</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>The faces that carry the leaf</source>
   <translation>Die Flächen, die das Blatt tragen</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Where the faces reach beyond the leaf, and what to do</source>
   <translation>Wo die Flächen über das Blatt hinausreichen, und was hilft</translation>
  </message>
  <message>
   <location filename="resources/ui/facing.ui" />
   <source>Which side of the leaf is seen</source>
   <translation>Welche Seite des Blatts zu sehen ist</translation>
  </message>
 </context>
 <context>
  <name>VeneerFaultsPanel</name>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Add Selected Sketches</source>
   <translation>Gewählte S&amp;kizzen dazu</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Bundle</source>
   <translation>&amp;Paket</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Draw</source>
   <translation>&amp;Zeichnen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Find</source>
   <translation>F&amp;inden</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Kind</source>
   <translation>&amp;Art</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Remove</source>
   <translation>&amp;Entfernen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Suggest Spots and Splits</source>
   <translation>Flecken, Risse &amp;vorschlagen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Take It</source>
   <translation>Gelten &amp;lassen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Usable</source>
   <translation>&amp;Nutzbar</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>&amp;Whole</source>
   <translation>&amp;Ganz</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>All leaves</source>
   <translation>Allen Blättern</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Clicks on the photograph draw a fault; off, they choose what is there</source>
   <translation>Klicks auf das Foto zeichnen einen Fehler; ausgeschaltet wählen sie, was da ist</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Faults</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Finds this leaf on the plain background of its photograph: its outline becomes the usable area</source>
   <translation>Findet dieses Blatt auf dem einfarbigen Grund seines Fotos: sein Umriss wird die nutzbare Fläche</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>It is &amp;on</source>
   <translation>Liegt au&amp;f</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Knot</source>
   <translation>Ast</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Looks for dark spots and splits on this leaf and outlines them in dashes; nothing counts until you take it</source>
   <translation>Sucht dunkle Flecken und Risse auf diesem Blatt und umreißt sie gestrichelt; nichts gilt, bevor Sie es gelten lassen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Margin</source>
   <translation>Sicherheitsrand</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Opens the window with the leaf's photograph again, or brings it to the front</source>
   <translation>Öffnet das Fenster mit dem Foto des Blatts wieder oder holt es nach vorn</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Patch</source>
   <translation>Flick</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Show the Photo&amp;graph</source>
   <translation>F&amp;oto zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Split</source>
   <translation>Riss</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Stain</source>
   <translation>Fleck</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Takes away what is chosen (Delete, over the photograph)</source>
   <translation>Nimmt weg, was gewählt ist (Entf, über dem Foto)</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The chosen suggestion becomes a fault of that kind</source>
   <translation>Der gewählte Vorschlag wird ein Fehler dieser Art</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The faults on the leaf that is shown; a click chooses one</source>
   <translation>Die Fehler auf dem gezeigten Blatt; ein Klick wählt einen</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The leaf that is shown beside the panel</source>
   <translation>Das Blatt, das neben dem Bedienfeld gezeigt wird</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The sketches, wires and flat faces selected in the document become faults through all leaves; a name that begins with split, knot, patch, stain or margin says what each is</source>
   <translation>Die im Dokument gewählten Skizzen, Kantenzüge und ebenen Flächen werden Fehler durch alle Blätter; ein Name, der mit split, knot, patch, stain oder margin beginnt, sagt, was jeder ist</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>The whole photograph of this leaf may be used</source>
   <translation>Das ganze Foto dieses Blatts ist nutzbar</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>This leaf</source>
   <translation>Diesem Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Through all leaves, where the leaves' registers put it, or on the leaf that is shown</source>
   <translation>Durch alle Blätter, wohin ihre Lagen ihn bringen, oder auf dem gezeigten Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Usable area</source>
   <translation>Nutzbare Fläche</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>What is drawn next; with Draw off, what the chosen fault is. A patch is a repair let into the leaf</source>
   <translation>Was als Nächstes gezeichnet wird; ist Zeichnen aus, was der gewählte Fehler ist. Ein Flick ist eine ins Blatt eingesetzte Ausbesserung</translation>
  </message>
  <message>
   <location filename="resources/ui/faults.ui" />
   <source>Whose faults are shown</source>
   <translation>Wessen Fehler gezeigt werden</translation>
  </message>
 </context>
 <context>
  <name>VeneerHelp</name>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>&amp;Back</source>
   <translation>&amp;Zurück</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>&amp;Contents</source>
   <translation>&amp;Inhalt</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>All pages: the first top, the commands, the trade's words</source>
   <translation>Alle Seiten: die erste Platte, die Befehle, die Fachwörter</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>The page that was shown before</source>
   <translation>Die Seite, die vorher gezeigt wurde</translation>
  </message>
  <message>
   <location filename="resources/ui/help.ui" />
   <source>Veneer Help</source>
   <translation>Hilfe zu Veneer</translation>
  </message>
 </context>
 <context>
  <name>VeneerLeavesPanel</name>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Backs</source>
   <translation>&amp;Rückseiten</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Draw the Patch...</source>
   <translation>Ste&amp;lle zeichnen...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Leaf</source>
   <translation>Bla&amp;tt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Length</source>
   <translation>&amp;Länge</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Stack</source>
   <translation>&amp;Stapel</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Thickness</source>
   <translation>&amp;Dicke</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>&amp;Width</source>
   <translation>&amp;Breite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A folder with one photograph for each leaf</source>
   <translation>Ein Ordner mit einem Foto für jedes Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A folder with photographs of backs, numbered as their leaves. Photographs in the first folder whose names say back are taken too</source>
   <translation>Ein Ordner mit Fotos von Rückseiten, nummeriert wie ihre Blätter. Fotos im ersten Ordner, deren Namen back sagen, werden auch genommen</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A quarter left</source>
   <translation>Viertel links</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A quarter right</source>
   <translation>Viertel rechts</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A sheet beside it</source>
   <translation>Bogen daneben</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A to B</source>
   <translation>A bis B</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>A to C</source>
   <translation>A bis C</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>As it is</source>
   <translation>Wie es ist</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>As photographed</source>
   <translation>Wie fotografiert</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>B to C</source>
   <translation>B bis C</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>B to D</source>
   <translation>B bis D</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Bring In Leaves</source>
   <translation>Blätter einlesen</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>C to D</source>
   <translation>C bis D</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Chang&amp;e Something</source>
   <translation>Etwas &amp;ändern</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Choose a folder: every picture in it is a leaf, or a leaf's back if its name says back</source>
   <translation>Einen Ordner wählen: jedes Bild darin ist ein Blatt, oder die Rückseite eines Blatts, wenn sein Name back sagt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Choose the folder that holds the photographs of backs</source>
   <translation>Den Ordner wählen, der die Fotos der Rückseiten enthält</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Choose the photographs one by one</source>
   <translation>Die Fotos einzeln wählen</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Clic&amp;ks</source>
   <translation>Klic&amp;ks</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Click on the Photo&amp;graph...</source>
   <translation>&amp;Im Foto klicken...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Clicks hold for all photographs if the camera stood still; else they are made on each</source>
   <translation>Klicks gelten für alle Fotos, wenn die Kamera still stand; sonst werden sie auf jedem gemacht</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Corners o&amp;f</source>
   <translation>E&amp;cken von</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>D to A</source>
   <translation>D bis A</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Even by a grey card</source>
   <translation>Graukarte</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Even by background</source>
   <translation>Hintergrund</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Even by one patch</source>
   <translation>Eine Stelle</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Evens exposure and colour over the bundle, by what should look the same in every photograph; the photographs themselves stay as they are</source>
   <translation>Gleicht Belichtung und Farbe im ganzen Paket aus, nach etwas, das in jedem Foto gleich aussehen soll; die Fotos selbst bleiben, wie sie sind</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>F&amp;iles...</source>
   <translation>Da&amp;teien...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>F&amp;older...</source>
   <translation>&amp;Ordner...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Fills the photo</source>
   <translation>Füllt das Foto</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Folder of Bac&amp;ks...</source>
   <translation>Ordner der Rück&amp;seiten...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Folder of photographs</source>
   <translation>Ordner mit Fotos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Folder, if any</source>
   <translation>Ordner, falls vorhanden</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Found, all kept</source>
   <translation>Gefunden, ganz</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Found, cut out</source>
   <translation>Gefunden, frei</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Four corners</source>
   <translation>Vier Ecken</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Four paper marks</source>
   <translation>Vier Marken</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>From cross to cross of these two marks: so far apart on every photograph</source>
   <translation>Von Kreuz zu Kreuz dieser zwei Marken: auf jedem Foto so weit</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>How it is known what a photograph measures. The first three take the photographs as they are: all from one distance, squarely. Of paper marks the printed size of the rings tells it, or a distance between two, or the six between four, which square up too</source>
   <translation>Woher bekannt ist, was ein Foto misst. Die ersten drei nehmen die Fotos, wie sie sind: alle aus einem Abstand, gerade von oben. Bei Papiermarken sagt es die gedruckte Größe der Ringe, ein Abstand zwischen zweien oder die sechs zwischen vieren, die auch entzerren</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>How the leaves lay in the log: it tells which leaf's photograph shows the back of another. Where it is not known, and between sawn leaves, a leaf's own picture stands for its back</source>
   <translation>Wie die Blätter im Stamm lagen: danach zeigt das Foto eines Blatts die Rückseite eines anderen. Wo es nicht bekannt ist, und zwischen gesägten Blättern, steht das eigene Bild eines Blatts für seine Rückseite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>It &amp;measures</source>
   <translation>&amp;Es misst</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Leaf 2 over leaf 1</source>
   <translation>Blatt 2 über 1</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Leaf 2 under leaf 1</source>
   <translation>Blatt 2 unter 1</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Li&amp;ght</source>
   <translation>Lic&amp;ht</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Not known</source>
   <translation>Nicht bekannt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>On each photo</source>
   <translation>Je Foto</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Once for all</source>
   <translation>Einmal für alle</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>One pi&amp;xel is</source>
   <translation>Ein Pi&amp;xel ist</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Opens the photograph, on which the patch or card is drawn round</source>
   <translation>Öffnet das Foto, auf dem die Stelle oder Karte umrissen wird</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Opens the photograph, on which the points, corners or marks are clicked</source>
   <translation>Öffnet das Foto, auf dem Punkte, Ecken oder Marken angeklickt werden</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Opens the photographs with the outlines that are found; their corners can be dragged</source>
   <translation>Öffnet die Fotos mit den gefundenen Umrissen; ihre Ecken lassen sich ziehen</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>P&amp;hotos</source>
   <translation>&amp;Fotos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Paper mark rings</source>
   <translation>Markenringe</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Photo's length</source>
   <translation>Fotolänge</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Photo's width</source>
   <translation>Fotobreite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Photographs</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Prepare</source>
   <translation>Vorbereiten</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>S&amp;cale by</source>
   <translation>&amp;Maßstab aus</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Said once for all photographs: stick such marks to the table, not to the leaves.</source>
   <translation>Einmal für alle Fotos gesagt: kleben Sie solche Marken auf den Tisch, nicht auf die Blätter.</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Sawn, with a kerf</source>
   <translation>Gesägt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Show and Change &amp;Outlines...</source>
   <translation>&amp;Umrisse zeigen, ändern...</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Si&amp;de seen</source>
   <translation>&amp;Zu sehen ist</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Size of a pixel</source>
   <translation>Pixelgröße</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Sto&amp;p</source>
   <translation>A&amp;nhalten</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Stops bringing in; nothing of it is left</source>
   <translation>Hält das Einlesen an; nichts davon bleibt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>T&amp;urn</source>
   <translation>&amp;Drehen</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Takes the leaves out again and goes back to the questions</source>
   <translation>Nimmt die Blätter wieder heraus und geht zu den Fragen zurück</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The last number in a name is the leaf's; names without are counted in their order.</source>
   <translation>Die letzte Zahl in einem Namen ist die des Blatts; Namen ohne Zahl werden der Reihe nach gezählt.</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The under side</source>
   <translation>Die untere Seite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>The upper side</source>
   <translation>Die obere Seite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Thickness of a leaf</source>
   <translation>Dicke eines Blatts</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Turns the photographs, so that the grain runs up</source>
   <translation>Dreht die Fotos so, dass die Faser nach oben läuft</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Two paper marks</source>
   <translation>Zwei Marken</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Two points</source>
   <translation>Zwei Punkte</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Until that is known, a leaf's own face stands for its back.</source>
   <translation>Bis das bekannt ist, steht die eigene Vorderseite eines Blatts für seine Rückseite.</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Upside down</source>
   <translation>Auf den Kopf</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What one pixel of a photograph measures on the leaf</source>
   <translation>Was ein Pixel eines Fotos auf dem Blatt misst</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What the rectangle between the corners measures across</source>
   <translation>Was das Rechteck zwischen den Ecken quer misst</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What the rectangle between the corners measures along</source>
   <translation>Was das Rechteck zwischen den Ecken längs misst</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What the whole first photograph measures, cropped to its leaf; or how far the two points or marks are apart</source>
   <translation>Was das ganze erste Foto misst, auf sein Blatt beschnitten; oder wie weit die zwei Punkte oder Marken auseinander sind</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>What was done to the photographs, and what is to be looked at</source>
   <translation>Was mit den Fotos geschah, und was anzusehen ist</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Where the leaf is on its photograph. Found on a plain background, its outline becomes the usable area; keep all of the photograph if the leaves lay in one jig</source>
   <translation>Wo das Blatt auf seinem Foto liegt. Auf einfarbigem Grund gefunden wird sein Umriss zur nutzbaren Fläche; behalten Sie das ganze Foto, wenn die Blätter in einer Lehre lagen</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Which side of the leaves, as they lay in the log, was photographed; it becomes the face</source>
   <translation>Welche Seite der Blätter, wie sie im Stamm lagen, fotografiert wurde; sie wird die Vorderseite</translation>
  </message>
  <message>
   <location filename="resources/ui/leaves.ui" />
   <source>Whose four corners are clicked: the leaf's own, or those of a sheet or frame that lies flat beside it</source>
   <translation>Wessen vier Ecken angeklickt werden: die des Blatts selbst oder die eines Bogens oder Rahmens, der flach daneben liegt</translation>
  </message>
 </context>
 <context>
  <name>VeneerMarksPanel</name>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source> a leaf</source>
   <translation> /Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Bundle</source>
   <translation>&amp;Paket</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Leaf</source>
   <translation>&amp;Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Mark</source>
   <translation>&amp;Marke</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Print Marks...</source>
   <translation>Marken &amp;drucken...</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Remove</source>
   <translation>&amp;Entfernen</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Show</source>
   <translation>&amp;Zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>&amp;Topmost</source>
   <translation>Z&amp;uoberst</translation>
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
   <translation>Kamera&amp;höhe</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Choose a photograph of the pinned leaf with its marks and both pins, or of the whole stack with marks of its leaves in sight, taken from straight above</source>
   <translation>Ein Foto des gestifteten Blatts mit seinen Marken und beiden Stiften wählen, oder des ganzen Stapels mit sichtbaren Marken seiner Blätter, gerade von oben aufgenommen</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Confirm</source>
   <translation>Bestätigen</translation>
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
   <translation>Wie hoch die Kamera über dem obersten Blatt war: was tiefer liegt, ist näher an der Bildmitte zu sehen. Nur für Blätter unter dem obersten nötig</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Le&amp;tter</source>
   <translation>Mar&amp;ke</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Letter</source>
   <translation>Letter</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Locate</source>
   <translation>Orten</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Marks for each leaf: two give a scale, three a frame with a check, four square up a photograph</source>
   <translation>Marken für jedes Blatt: zwei geben einen Maßstab, drei einen Rahmen mit Gegenprobe, vier entzerren ein Foto</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Opens the window with that photograph again, or brings it to the front</source>
   <translation>Öffnet das Fenster mit diesem Foto wieder oder holt es nach vorn</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Opens the window with the leaf's photograph again, or brings it to the front</source>
   <translation>Öffnet das Fenster mit dem Foto des Blatts wieder oder holt es nach vorn</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Paper Marks</source>
   <translation>Papiermarken</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Photo&amp;graph...</source>
   <translation>Fot&amp;o...</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Pin a&amp;cross</source>
   <translation>Stift &amp;quer</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Pin a&amp;long</source>
   <translation>Stift &amp;längs</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>S&amp;heet</source>
   <translation>B&amp;ogen</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Saves a PDF of marks for every leaf of the bundle: print it at 100 %, cut them out, stick them in the waste of each leaf and photograph the leaf with them</source>
   <translation>Speichert ein PDF mit Marken für jedes Blatt des Pakets: mit 100 % drucken, ausschneiden, in den Verschnitt jedes Blatts kleben und das Blatt damit fotografieren</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Show the Photo&amp;graph</source>
   <translation>&amp;Foto zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Takes the chosen mark away (Delete, over the photograph)</source>
   <translation>Nimmt die gewählte Marke weg (Entf, über dem Foto)</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Takes the chosen one away (Delete, over the photograph)</source>
   <translation>Nimmt das Gewählte weg (Entf, über dem Foto)</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The leaf that is shown beside the panel</source>
   <translation>Das Blatt, das neben dem Bedienfeld gezeigt wird</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The leaf that lies topmost; four of its marks square the photograph up</source>
   <translation>Das Blatt, das zuoberst liegt; vier seiner Marken entzerren das Foto</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The letter of the chosen mark: one that another mark has is exchanged. With none chosen, the letter of the next click</source>
   <translation>Der Buchstabe der gewählten Marke: hat ihn schon eine andere, wird getauscht. Ist keine gewählt, der Buchstabe des nächsten Klicks</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The marks of every leaf, and how far they miss those of an earlier leaf when laid on them as a whole: rms, from these photographs. Marks over the same pin holes agree; marks stuck by eye need not. A click shows the leaf</source>
   <translation>Die Marken jedes Blatts, und wie weit sie die eines früheren Blatts verfehlen, im Ganzen darauf gelegt: rms, aus diesen Fotos. Marken über denselben Stiftlöchern stimmen überein; nach Augenmaß geklebte müssen es nicht. Ein Klick zeigt das Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The marks on the leaf that is shown; a click chooses one. ± is one standard deviation of the centre, from what the fit leaves over on this photograph</source>
   <translation>Die Marken auf dem gezeigten Blatt; ein Klick wählt eine. ± ist eine Standardabweichung der Mitte, aus dem, was die Ausgleichung auf diesem Foto übrig lässt</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>The paper that the marks are printed on</source>
   <translation>Das Papier, auf das die Marken gedruckt werden</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>What the chosen one is: one that another mark is, is exchanged. With none chosen, what the next click is</source>
   <translation>Was das Gewählte ist: ist eine andere Marke das schon, wird getauscht. Ist nichts gewählt, was der nächste Klick ist</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>What the photograph says of the registers, the gravest first</source>
   <translation>Was das Foto zu den Lagen sagt, das Schwerste zuerst</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>What was clicked; a click chooses it. ± is one standard deviation of the centre, from what the fit leaves over on this photograph</source>
   <translation>Was angeklickt wurde; ein Klick wählt es. ± ist eine Standardabweichung der Mitte, aus dem, was die Ausgleichung auf diesem Foto übrig lässt</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Where this pin stands in the bundle: across, from the lower left of the first leaf's photograph</source>
   <translation>Wo dieser Stift im Paket steht: quer, von links unten im Foto des ersten Blatts</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Where this pin stands in the bundle: along the grain, from the lower left of the first leaf's photograph</source>
   <translation>Wo dieser Stift im Paket steht: längs der Faser, von links unten im Foto des ersten Blatts</translation>
  </message>
  <message>
   <location filename="resources/ui/marks.ui" />
   <source>Whose marks are shown</source>
   <translation>Wessen Marken gezeigt werden</translation>
  </message>
 </context>
 <context>
  <name>VeneerMatchPanel</name>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Cut from</source>
   <translation>Aus &amp;Paket</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Diameter</source>
   <translation>&amp;Durchmesser</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Face</source>
   <translation>S&amp;ichtseiten</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;First axis</source>
   <translation>Erste &amp;Achse</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Grain</source>
   <translation>&amp;Faser</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Joints</source>
   <translation>Fu&amp;gen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Kind</source>
   <translation>&amp;Art</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Length</source>
   <translation>&amp;Länge</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Lie where the outline lies</source>
   <translation>&amp;Liegen, wo der Umriss liegt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Margin</source>
   <translation>Ra&amp;nd</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Number</source>
   <translation>An&amp;zahl</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Oversize</source>
   <translation>&amp;Übermaß</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Shuffle</source>
   <translation>&amp;Mischen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Slant</source>
   <translation>Schrä&amp;ge</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Strips</source>
   <translation>&amp;Streifen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Top</source>
   <translation>Pla&amp;tte</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>&amp;Ways</source>
   <translation>&amp;Keile</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>A&amp;xis</source>
   <translation>A&amp;chse</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Across f&amp;lats</source>
   <translation>Sch&amp;lüsselweite</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Architectural</source>
   <translation>Architektur</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>At 45 degrees</source>
   <translation>Unter 45 Grad</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Balance</source>
   <translation>Ausgewogen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Boat shape</source>
   <translation>Bootsform</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Box</source>
   <translation>Vier Spiegel</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre and butt</source>
   <translation>Mitte und Kopf</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre balance</source>
   <translation>Mittelfuge</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre right</source>
   <translation>Mitte rechts</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Centre up</source>
   <translation>Mitte oben</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Compare</source>
   <translation>Vergleich</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Continuous</source>
   <translation>Durchlaufend</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Corner to corner</source>
   <translation>Von Ecke zu Ecke</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Cut in</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Diamond</source>
   <translation>Raute</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Disc</source>
   <translation>Scheibe</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>En&amp;ds</source>
   <translation>En&amp;den</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>End match</source>
   <translation>Kopfsturz</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>First l&amp;eaf</source>
   <translation>E&amp;rstes Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Herringbone</source>
   <translation>Fischgrät</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>How often an outline is set out on leaves, and how much the finished pieces have of what is cut out</source>
   <translation>Wie oft auf Blättern angerissen wird, und wie viel vom Ausgeschnittenen die fertigen Teile haben</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>I&amp;nner ways</source>
   <translation>Keile &amp;innen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>In sequence</source>
   <translation>Messerfolge</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Inner si&amp;ze</source>
   <translation>&amp;Größe innen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Its centroid</source>
   <translation>Schwerpunkt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Its origin</source>
   <translation>Ursprung</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Lots by shape</source>
   <translation>Lose nach Form</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Matc&amp;h</source>
   <translation>Furnier&amp;bild</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Match</source>
   <translation>Furnierbild</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Mi&amp;ddle at</source>
   <translation>Mitt&amp;e in</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Middle of the lea&amp;ves</source>
   <translation>Mitte der Bl&amp;ätter</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Numbers are those of the leaves, in the order in which they were sliced; a darker one is turned over. Names differ by region: go by the drawing.</source>
   <translation>Die Zahlen sind die der Blätter in Messerfolge; ein dunkleres ist gewendet. Namen sind je nach Gegend verschieden: richten Sie sich nach der Zeichnung.</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>O&amp;rder</source>
   <translation>Rei&amp;henfolge</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>One stack</source>
   <translation>Ein Stapel</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Outl&amp;ine</source>
   <translation>&amp;Umriss</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Outline</source>
   <translation>Umriss</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Oval</source>
   <translation>Oval</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Polygon</source>
   <translation>Vieleck</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Racetrack</source>
   <translation>Rennbahn</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Radial</source>
   <translation>Stern</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Rectangle</source>
   <translation>Rechteck</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Reverse box</source>
   <translation>Spiegel, quer</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Reverse diamond</source>
   <translation>Gegenraute</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Ro&amp;ws</source>
   <translation>Re&amp;ihen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Round</source>
   <translation>Rund</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Running</source>
   <translation>Laufend</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>S&amp;ides</source>
   <translation>S&amp;eiten</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Select a closed sketch, a wire or a flat face in the tree or the view, then press this: it becomes the top, its holes become openings</source>
   <translation>Eine geschlossene Skizze, einen Kantenzug oder eine ebene Fläche im Baum oder in der Ansicht wählen, dann hier drücken: daraus wird die Platte, Löcher werden Öffnungen</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Side by side</source>
   <translation>In Reihe</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Single pieces</source>
   <translation>Einzelteile</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Slip, centre book</source>
   <translation>Mitte gestürzt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Sp&amp;ares</source>
   <translation>Reser&amp;ve</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Spot across</source>
   <translation>Stelle quer</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Spot along</source>
   <translation>Stelle längs</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Spread</source>
   <translation>Verteilt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Square</source>
   <translation>Quadrat</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Stri&amp;p width</source>
   <translation>&amp;Str.-Breite</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>T&amp;urn</source>
   <translation>&amp;Wenden</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Take selected</source>
   <translation>Gewähltes</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>The ways of cutting side by side on the leaves, with what each takes and costs</source>
   <translation>Die Arten zu schneiden nebeneinander auf den Blättern, mit dem, was jede braucht und kostet</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>Two rings</source>
   <translation>Zwei Ringe</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>W&amp;idth</source>
   <translation>Br&amp;eite</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>What the checks find, the gravest first; a click selects what it speaks of</source>
   <translation>Was die Prüfungen finden, das Schwerste zuerst; ein Klick wählt aus, wovon es handelt</translation>
  </message>
  <message>
   <location filename="resources/ui/match.ui" />
   <source>as needed</source>
   <translation>nach Bedarf</translation>
  </message>
 </context>
 <context>
  <name>VeneerParticularsPanel</name>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Cut</source>
   <translation>&amp;Schnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Flitch, lot</source>
   <translation>&amp;Flitch, Los</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Moisture, %</source>
   <translation>Feuch&amp;te, %</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Save CSV...</source>
   <translation>CSV s&amp;peichern...</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>&amp;Thickness</source>
   <translation>&amp;Dicke</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>C&amp;ost</source>
   <translation>&amp;Kosten</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>C&amp;urrency</source>
   <translation>&amp;Währung</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Even by &amp;Background</source>
   <translation>Na&amp;ch dem Grund ausgleichen</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Evened</source>
   <translation>Ausgeglichen</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Flitch</source>
   <translation>Flitch</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Half round</source>
   <translation>Exzenterschnitt</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Li&amp;ght</source>
   <translation>&amp;Licht</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Lot</source>
   <translation>Los</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Measure the light anew on the background that the photographs show round the leaves</source>
   <translation>Das Licht neu messen, am Grund, den die Fotos um die Blätter zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Not known</source>
   <translation>Nicht bekannt</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>O&amp;rigin</source>
   <translation>&amp;Herkunft</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Of the whole bundle; 0 if it is not known</source>
   <translation>Des ganzen Pakets; 0, wenn sie nicht bekannt sind</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Particulars</source>
   <translation>Angaben</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Peeled</source>
   <translation>Geschält</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Rea&amp;d CSV...</source>
   <translation>CSV l&amp;esen...</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sawn</source>
   <translation>Gesägt</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sliced flat</source>
   <translation>Flach gemessert</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sliced on the quarter</source>
   <translation>Rift gemessert</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sliced on the rift</source>
   <translation>Im Halbrift</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Sp&amp;ecies</source>
   <translation>Holz&amp;art</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>T&amp;ight side</source>
   <translation>&amp;Geschlossen</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Take the particulars from a file: the line that has this bundle's name</source>
   <translation>Die Angaben aus einer Datei nehmen: die Zeile mit dem Namen dieses Pakets</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The back</source>
   <translation>Die Rückseite</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The face</source>
   <translation>Die Vorderseite</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The merchant's mark of the lot</source>
   <translation>Das Zeichen des Händlers für das Los</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>The wood</source>
   <translation>Das Holz</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Thickness of a leaf</source>
   <translation>Dicke eines Blatts</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>What evens the light of each photograph; the photographs themselves are unchanged</source>
   <translation>Was das Licht jedes Fotos ausgleicht; die Fotos selbst bleiben unverändert</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>When photographed; 0 if it is not known</source>
   <translation>Beim Fotografieren; 0, wenn sie nicht bekannt ist</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Where it comes from, papers, notes</source>
   <translation>Woher es kommt, Papiere, Bemerkungen</translation>
  </message>
  <message>
   <location filename="resources/ui/particulars.ui" />
   <source>Write the particulars of all bundles of this document to a file</source>
   <translation>Die Angaben aller Pakete dieses Dokuments in eine Datei schreiben</translation>
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
   <translation>Ein Pixel des Fotos auf jedem des Bildschirms (1)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Closer (+ or the wheel)</source>
   <translation>Näher (+ oder Mausrad)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Fit</source>
   <translation>Einpassen</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Further away (- or the wheel)</source>
   <translation>Weiter weg (- oder Mausrad)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Grid</source>
   <translation>Gitter</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Lines of whole millimetres (G)</source>
   <translation>Linien in ganzen Millimetern (G)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Photograph</source>
   <translation>Foto</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Show the whole photograph (F)</source>
   <translation>Das ganze Foto zeigen (F)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>The next photograph (Page Down)</source>
   <translation>Das nächste Foto (Bild ab)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>The photograph before (Page Up)</source>
   <translation>Das Foto davor (Bild auf)</translation>
  </message>
  <message>
   <location filename="resources/ui/photo.ui" />
   <source>Which photograph is shown</source>
   <translation>Welches Foto gezeigt wird</translation>
  </message>
 </context>
 <context>
  <name>VeneerPreferences</name>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;1:1 templates on</source>
   <translation>Schablonen &amp;1:1 auf</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Approved by</source>
   <translation>Gene&amp;hmigt von</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Cut by</source>
   <translation>Geschnitten &amp;mit</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Drawn by</source>
   <translation>&amp;Gezeichnet von</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Each piece off by</source>
   <translation>&amp;Je Keil ±</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Leaf thickness</source>
   <translation>&amp;Blattdicke</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Margin</source>
   <translation>Siche&amp;rheitsrand</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Oversize of blanks</source>
   <translation>&amp;Übermaß der Rohteile</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Paper</source>
   <translation>&amp;Papier</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Spare leaves</source>
   <translation>Re&amp;serveblätter</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>&amp;Tool's width</source>
   <translation>&amp;Werkzeugbreite</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>A4 upright</source>
   <translation>A4 hoch</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>ANSI A upright</source>
   <translation>ANSI A hoch</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>As FreeCAD shows them</source>
   <translation>Wie FreeCAD sie zeigt</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>At the bench</source>
   <translation>An der Werkbank</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Both</source>
   <translation>Beidem</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Face do&amp;wn</source>
   <translation>Sichtseite u&amp;nten</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>How far blanks reach beyond the finished edge</source>
   <translation>Wie weit Rohteile über die fertige Kante hinausreichen</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>How many unused leaves should be left over</source>
   <translation>Wie viele unbenutzte Blätter übrig bleiben sollen</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>How the stack is cut; a new bench begins with the figures that are usual for it</source>
   <translation>Wie der Stapel geschnitten wird; eine neue Werkbank beginnt mit den Werten, die dafür üblich sind</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Inch</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Knife</source>
   <translation>Messer</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Le&amp;ngths in</source>
   <translation>&amp;Längen in</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Machine</source>
   <translation>Maschine</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>New bundles and matches</source>
   <translation>Neue Pakete und Furnierbilder</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>New drawings and sheets</source>
   <translation>Neue Zeichnungen und Zeichnungsblätter</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>New objects</source>
   <translation>Neue Objekte</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Owne&amp;r</source>
   <translation>&amp;Eigentümer</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Saw</source>
   <translation>Säge</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Standard error of each wedge for itself: knife, lean, edge</source>
   <translation>Standardabweichung jedes Keils für sich: Messer, Neigung, Kante</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Standard error of the template's angle, the same in every wedge of one stack</source>
   <translation>Standardabweichung des Winkels der Schablone, für jeden Keil eines Stapels dieselbe</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Taped</source>
   <translation>Geklebt</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Template o&amp;ff by</source>
   <translation>S&amp;chablone ±</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>The paper of the sheets</source>
   <translation>Das Papier der Zeichnungsblätter</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>The paper that 1:1 templates are tiled on</source>
   <translation>Das Papier, auf das Schablonen 1:1 gekachelt werden</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>The pieces are taped with their show face down</source>
   <translation>Die Teile werden mit der Sichtseite nach unten geklebt</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>To keep between a blank and the edge of what may be used of a leaf</source>
   <translation>Was zwischen einem Rohteil und dem Rand des Nutzbaren eines Blatts frei bleiben soll</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>What a leaf is taken to be as long as nothing else is said</source>
   <translation>Wie dick ein Blatt angenommen wird, solange nichts anderes gesagt ist</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>What lengths are written in on sheets; FreeCAD's own setting says it for everything on the screen</source>
   <translation>Worin Längen auf Zeichnungsblättern geschrieben werden; für alles auf dem Bildschirm gilt die Einstellung von FreeCAD</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Who answers for the drawings, for the title block</source>
   <translation>Wer für die Zeichnungen einsteht, für das Schriftfeld</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Who approves the drawings, for the title block</source>
   <translation>Wer die Zeichnungen genehmigt, für das Schriftfeld</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Whose drawings they are, for the title block</source>
   <translation>Wem die Zeichnungen gehören, für das Schriftfeld</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences.ui" />
   <source>Width of the tool that follows a template's line; 0: none</source>
   <translation>Breite des Werkzeugs, das der Linie einer Schablone folgt; 0: keine</translation>
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
   <translation>Fugen &amp;zweier Pakete</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Knot</source>
   <translation>As&amp;t</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Margin</source>
   <translation>&amp;Sicherheitsrand</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Numbers</source>
   <translation>&amp;Nummern</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Seams and edges</source>
   <translation>&amp;Fugen und Kanten</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Usable area</source>
   <translation>N&amp;utzbare Fläche</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>&amp;Wedge</source>
   <translation>&amp;Keil</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A knot</source>
   <translation>Ein Ast</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A margin drawn as a fault</source>
   <translation>Ein Rand, als Fehler gezeichnet</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A patch</source>
   <translation>Ein Flick</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A split</source>
   <translation>Ein Riss</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>A stain</source>
   <translation>Ein Fleck</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Colours</source>
   <translation>Farben</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Faults</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>In the 3-D view</source>
   <translation>In der 3D-Ansicht</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Leaf or point &amp;looked at</source>
   <translation>Angesehenes &amp;Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Lines between the pieces, and the edge of the top</source>
   <translation>Linien zwischen den Teilen und die Kante der Platte</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>On leaves and charts</source>
   <translation>Auf Blättern und Tafeln</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Pat&amp;ch</source>
   <translation>Fl&amp;ick</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Positions and leaves on their tags, which are dark where the colour is light</source>
   <translation>Plätze und Blätter auf ihren Schildern, die dunkel sind, wo die Farbe hell ist</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>S&amp;tain</source>
   <translation>Fl&amp;eck</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Seams where leaves of two bundles meet</source>
   <translation>Fugen, wo Blätter zweier Pakete sich treffen</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Selected &amp;pieces</source>
   <translation>&amp;Gewählte Teile</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Spl&amp;it</source>
   <translation>&amp;Riss</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Suspect lea&amp;ves</source>
   <translation>&amp;Verdächtige Blätter</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The leaf, the point, the pair or the spot that is looked at</source>
   <translation>Das Blatt, der Punkt, das Paar oder die Stelle, die angesehen wird</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The outline of pieces that are selected</source>
   <translation>Der Umriss gewählter Teile</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The outline of what may be used of a leaf</source>
   <translation>Der Umriss dessen, was von einem Blatt nutzbar ist</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The sign on leaves that the proof of the sequence suspects</source>
   <translation>Das Zeichen auf Blättern, die der Nachweis der Messerfolge verdächtigt</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The wedge on a leaf, and what forbids it to be cut there</source>
   <translation>Der Keil auf einem Blatt, und was verbietet, ihn dort zu schneiden</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>The wedge on a leaf, where it can be cut</source>
   <translation>Der Keil auf einem Blatt, wo er geschnitten werden kann</translation>
  </message>
  <message>
   <location filename="resources/ui/preferences_colours.ui" />
   <source>Wedge that does not &amp;fit</source>
   <translation>Keil, der nicht p&amp;asst</translation>
  </message>
 </context>
 <context>
  <name>VeneerRunPanel</name>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Gaps</source>
   <translation>&amp;Spalte</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Joints</source>
   <translation>Fu&amp;gen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Margin</source>
   <translation>Ra&amp;nd</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Panels</source>
   <translation>Fr&amp;onten</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Spares</source>
   <translation>Reser&amp;ve</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>&amp;Ways</source>
   <translation>&amp;Keile</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>A&amp;xis</source>
   <translation>A&amp;chse</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Architectural</source>
   <translation>Architektur</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>As one field</source>
   <translation>Als ein Feld</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>At 45 degrees</source>
   <translation>Unter 45 Grad</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Balance</source>
   <translation>Ausgewogen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Box</source>
   <translation>Vier Spiegel</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Centre and butt</source>
   <translation>Mitte und Kopf</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Centre balance</source>
   <translation>Mittelfuge</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Closed</source>
   <translation>Geschlossen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Continuous</source>
   <translation>Durchlaufend</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Corner to corner</source>
   <translation>Von Ecke zu Ecke</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Cut fr&amp;om</source>
   <translation>Aus &amp;Paket</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Diamond</source>
   <translation>Raute</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Each panel from the next leaves, all of one size; or one field laid out over all panels</source>
   <translation>Jede Front aus den nächsten Blättern, alle gleich groß; oder ein Feld über alle Fronten gelegt</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>End match</source>
   <translation>Kopfsturz</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>F&amp;ace</source>
   <translation>Sichts&amp;eiten</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>F&amp;irst leaf</source>
   <translation>E&amp;rstes Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>G&amp;rain</source>
   <translation>&amp;Faser</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Herringbone</source>
   <translation>Fischgrät</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>In sequence</source>
   <translation>In Folge</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Kin&amp;d</source>
   <translation>&amp;Art</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Laid through</source>
   <translation>Durchgelegt</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Mat&amp;ch</source>
   <translation>F&amp;urnierbild</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Midd&amp;le of the leaves</source>
   <translation>&amp;Mitte der Blätter</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Missing</source>
   <translation>Es fehlen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Nothing</source>
   <translation>Keinem</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Numb&amp;er</source>
   <translation>An&amp;zahl</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Numbers are those of the leaves, in the order in which they were sliced; a darker one is turned over. Names differ by region: go by the drawing.</source>
   <translation>Die Zahlen sind die der Blätter in Messerfolge; ein dunkleres ist gewendet. Namen sind je nach Gegend verschieden: richten Sie sich nach der Zeichnung.</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>O&amp;versize</source>
   <translation>&amp;Übermaß</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Or&amp;der</source>
   <translation>Reihen&amp;folge</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Panels in Sequence</source>
   <translation>Fronten in Folge</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Radial</source>
   <translation>Stern</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Reverse box</source>
   <translation>Spiegel, quer</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Reverse diamond</source>
   <translation>Gegenraute</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Ro&amp;ws</source>
   <translation>R&amp;eihen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Running</source>
   <translation>Laufend</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Select flat faces in one plane in the 3-D view, then press this: they become the panels</source>
   <translation>Ebene Flächen in einer Ebene in der 3D-Ansicht wählen, dann hier drücken: sie werden die Fronten</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Shu&amp;ffle</source>
   <translation>M&amp;ischen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Side by side</source>
   <translation>In Reihe</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Slan&amp;t</source>
   <translation>Schrä&amp;ge</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Slip, centre book</source>
   <translation>Mitte gestürzt</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Spot across</source>
   <translation>Stelle quer</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Spot along</source>
   <translation>Stelle längs</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Spread</source>
   <translation>Verteilt</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Strip widt&amp;h</source>
   <translation>Str.-&amp;Breite</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>T&amp;urn</source>
   <translation>&amp;Wenden</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>Ta&amp;ke the selected faces</source>
   <translation>Gew&amp;ählte Flächen nehmen</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>The panels by elevation; click one to select it</source>
   <translation>Die Fronten der Ansicht nach; ein Klick wählt eine</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>The&amp;n from</source>
   <translation>&amp;Dann aus</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>What is to be said of the run, the gravest first; a click selects the panels that it speaks of</source>
   <translation>Was zur Folge zu sagen ist, das Schwerste zuerst; ein Klick wählt die Fronten, von denen es handelt</translation>
  </message>
  <message>
   <location filename="resources/ui/run.ui" />
   <source>as needed</source>
   <translation>nach Bedarf</translation>
  </message>
 </context>
 <context>
  <name>VeneerSeams</name>
  <message>
   <location filename="resources/ui/seams.ui" />
   <source>Seams</source>
   <translation>Fugen</translation>
  </message>
  <message>
   <location filename="resources/ui/seams.ui" />
   <source>Where the seams were measured: the larger a spot, the more the figure misses; full where it shows</source>
   <translation>Wo die Fugen gemessen wurden: je größer ein Punkt, desto mehr verfehlt sich die Textur; voll, wo man es sieht</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequencePanel</name>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;By</source>
   <translation>W&amp;o</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Compare...</source>
   <translation>&amp;Vergleichen...</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;End for end</source>
   <translation>&amp;Kopf gegen Fuß</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Follow</source>
   <translation>&amp;Richten nach</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Prove the sequence</source>
   <translation>&amp;Messerfolge nachweisen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Renumber as proposed</source>
   <translation>Wie vorgeschlagen &amp;nummerieren</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>&amp;Seams...</source>
   <translation>&amp;Fugen...</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>As photographed</source>
   <translation>Wie fotografiert</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Chal&amp;k list...</source>
   <translation>Kre&amp;ideliste...</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Compare all photographs: the order that explains them best, and the leaves that do not fit it</source>
   <translation>Alle Fotos vergleichen: die Reihenfolge, die sie am besten erklärt, und die Blätter, die nicht hineinpassen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Give the leaves the numbers that the proof proposes</source>
   <translation>Den Blättern die Nummern geben, die der Nachweis vorschlägt</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Lay the leaves on each other so</source>
   <translation>Die Blätter so aufeinander legen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Measure how the figure meets along the seams of the match, as the leaves are registered</source>
   <translation>Messen, wie sich die Textur längs der Fugen des Furnierbilds trifft, so wie die Blätter ausgerichtet sind</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Numbers and ends to chalk on the real stack, as a file to print</source>
   <translation>Nummern und Enden zum Anschreiben auf den wirklichen Stapel, als Datei zum Drucken</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Pic&amp;tures</source>
   <translation>Bil&amp;der</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Prove Sequence</source>
   <translation>Messerfolge nachweisen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Re&amp;gister</source>
   <translation>&amp;Ausrichten</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Show the window with the pictures again</source>
   <translation>Das Fenster mit den Bildern wieder zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>T&amp;ake off</source>
   <translation>&amp;Lösen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Take the registers off again: the leaves lie as they were photographed</source>
   <translation>Die Lagen wieder wegnehmen: die Blätter liegen, wie sie fotografiert wurden</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The figure</source>
   <translation>Der Textur</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The leaf that is shown lay the other end up: turn its photograph by 180 degrees</source>
   <translation>Das gezeigte Blatt lag mit dem anderen Ende oben: sein Foto um 180 Grad drehen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The leaf that is shown lay the other side up: take its photograph for its back</source>
   <translation>Das gezeigte Blatt lag mit der anderen Seite oben: sein Foto als das seiner Rückseite nehmen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The leaves that do not fit, and what to do; a click shows one</source>
   <translation>Die Blätter, die nicht passen, und was zu tun ist; ein Klick zeigt eines</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The log</source>
   <translation>Dem Stamm</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>The same top laid by each choice, side by side</source>
   <translation>Dieselbe Platte nach jeder Wahl gelegt, nebeneinander</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Turn &amp;over</source>
   <translation>&amp;Wenden</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Two picked marks</source>
   <translation>Zwei Punkten</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>What lies at the same place on all leaves when they are stacked and cut</source>
   <translation>Was auf allen Blättern an derselben Stelle liegt, wenn sie gestapelt und geschnitten werden</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence.ui" />
   <source>Where the figure is compared: all over the leaf, or where the pieces of a match are cut from it</source>
   <translation>Wo die Textur verglichen wird: auf dem ganzen Blatt, oder wo die Teile eines Furnierbilds daraus geschnitten werden</translation>
  </message>
 </context>
 <context>
  <name>VeneerSequenceWindow</name>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source> a second</source>
   <translation> je Sekunde</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>&amp;Laid</source>
   <translation>Auf&amp;gelegt</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>&amp;Play</source>
   <translation>&amp;Abspielen</translation>
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
   <translation>Näher (+ oder Mausrad)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Difference</source>
   <translation>Unterschied</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Fit</source>
   <translation>Einpassen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Further away (- or the wheel)</source>
   <translation>Weiter weg (- oder Mausrad)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Half and half</source>
   <translation>Halb und halb</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>How leaves are shown</source>
   <translation>Wie Blätter gezeigt werden</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>How many leaves are shown in a second</source>
   <translation>Wie viele Blätter in einer Sekunde gezeigt werden</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>One leaf</source>
   <translation>Ein Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Page through by itself, there and back (space bar)</source>
   <translation>Von selbst hin und zurück durchgehen (Leertaste)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Page through the leaves (Ctrl and wheel over the picture, Page Up and Down)</source>
   <translation>Durch die Blätter gehen (Strg und Mausrad über dem Bild, Bild auf und ab)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Sequence</source>
   <translation>Messerfolge</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Sho&amp;w</source>
   <translation>&amp;Zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Show the whole leaf (F)</source>
   <translation>Das ganze Blatt zeigen (F)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>The leaf after (right arrow)</source>
   <translation>Das Blatt danach (Pfeil rechts)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>The leaf before (left arrow)</source>
   <translation>Das Blatt davor (Pfeil links)</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>The second leaf</source>
   <translation>Das zweite Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Two by turns</source>
   <translation>Zwei im Wechsel</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Wheel: zoom. Ctrl and wheel: page. Drag: move. Click: follow that point through the stack.</source>
   <translation>Rad: Zoom. Strg und Rad: blättern. Ziehen: verschieben. Klick: diesem Punkt durch den Stapel folgen.</translation>
  </message>
  <message>
   <location filename="resources/ui/sequence_window.ui" />
   <source>Where the leaves are laid on each other</source>
   <translation>Wo die Blätter aufeinander gelegt werden</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotCompare</name>
  <message>
   <location filename="resources/ui/spot_compare.ui" />
   <source>Click a top to go there.</source>
   <translation>Ein Klick auf eine Platte führt dorthin.</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_compare.ui" />
   <source>Compare</source>
   <translation>Vergleich</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotFound</name>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>&amp;Find spots</source>
   <translation>Stellen &amp;suchen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>&amp;Hidden disc</source>
   <translation>&amp;Deckscheibe</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>&amp;Keep it</source>
   <translation>&amp;Merken</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>C&amp;losing seam</source>
   <translation>S&amp;chlussfuge</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>C&amp;olour change</source>
   <translation>F&amp;arbwechsel</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Diameter of a disc in the centre that will be covered, so that faults may lie under it; 0 for none. The search, the verdict and the checks of the match know of it.</source>
   <translation>Durchmesser einer Scheibe in der Mitte, die verdeckt wird, so dass Fehler darunter liegen dürfen; 0 für keine. Suche, Urteil und Prüfungen des Furnierbilds wissen davon.</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Found</source>
   <translation>Gefunden</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>G&amp;rain change</source>
   <translation>Faser&amp;wechsel</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>How much broad changes of colour count</source>
   <translation>Wie viel breite Farbwechsel zählen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>How much changes of the direction of grain count</source>
   <translation>Wie viel Wechsel der Faserrichtung zählen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>How much it counts against a spot that colours differ across its seams</source>
   <translation>Wie viel es gegen eine Stelle zählt, dass die Farben über ihre Fugen verschieden sind</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Keeps the spot that is chosen, with its measures</source>
   <translation>Merkt die gewählte Stelle mit ihren Messwerten</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>S&amp;eams</source>
   <translation>F&amp;ugen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>The same for the seam where the most leaves lie between</source>
   <translation>Dasselbe für die Fuge, zwischen deren Seiten die meisten Blätter liegen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>Tries every spot and direction on the leaves</source>
   <translation>Versucht jede Stelle und Richtung auf den Blättern</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_found.ui" />
   <source>What counts, and how much</source>
   <translation>Was zählt, und wie viel</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotKept</name>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Compare</source>
   <translation>&amp;Vergleichen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Delete</source>
   <translation>&amp;Löschen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Go there</source>
   <translation>&amp;Dorthin</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Keep this spot</source>
   <translation>Diese Stelle &amp;merken</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Keeps where the wedge lies now, with its picture, in the document</source>
   <translation>Merkt im Dokument, wo der Keil jetzt liegt, mit seinem Bild</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Kept</source>
   <translation>Gemerkt</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Picture ane&amp;w</source>
   <translation>&amp;Bild erneuern</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Pictures it as its leaves are now</source>
   <translation>Macht ihr Bild, wie ihre Blätter jetzt sind</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Shows the two to six that are ticked side by side</source>
   <translation>Zeigt die zwei bis sechs angekreuzten nebeneinander</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Takes the chosen spot out of the document; undo brings it back</source>
   <translation>Nimmt die gewählte Stelle aus dem Dokument; Rückgängig bringt sie zurück</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>Takes up the kept spot that is chosen (or double click it)</source>
   <translation>Nimmt die gewählte gemerkte Stelle auf (oder Doppelklick darauf)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_kept.ui" />
   <source>The name of the kept spot that is chosen</source>
   <translation>Der Name der gewählten gemerkten Stelle</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotMakes</name>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>&amp;Largest tops</source>
   <translation>&amp;Größte Platten</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>A click on a row gives the top that size; else it keeps its own</source>
   <translation>Ein Klick auf eine Zeile gibt der Platte diese Größe; sonst behält sie ihre eigene</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Click a row to go there</source>
   <translation>Ein Klick auf eine Zeile führt dorthin</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>From leaf</source>
   <translation>Ab Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Ho&amp;w many</source>
   <translation>&amp;Wie viele</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Largest top</source>
   <translation>Größte Platte</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Take over the si&amp;ze too</source>
   <translation>Größe mit &amp;übernehmen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Ways</source>
   <translation>Keile</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>What This Bundle Makes</source>
   <translation>Was dieses Paket hergibt</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Works out how many tops of this size and these ways the leaves give</source>
   <translation>Rechnet aus, wie viele Platten dieser Größe und dieser Keile die Blätter geben</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_makes.ui" />
   <source>Works out the largest top for every number of ways</source>
   <translation>Rechnet die größte Platte für jede Zahl von Keilen aus</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotNearby</name>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>&amp;Shift</source>
   <translation>&amp;Versatz</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>&amp;Turn</source>
   <translation>&amp;Drehung</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>How far it is turned</source>
   <translation>Wie weit er gedreht wird</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>How far the wedge is shifted from picture to picture</source>
   <translation>Wie weit der Keil von Bild zu Bild versetzt wird</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>Nearby</source>
   <translation>In der Nähe</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_nearby.ui" />
   <source>What a small shift of the wedge does. Click a picture to go there.</source>
   <translation>Was ein kleiner Versatz des Keils bewirkt. Ein Klick auf ein Bild führt dorthin.</translation>
  </message>
 </context>
 <context>
  <name>VeneerSpotPanel</name>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>&amp;Diameter</source>
   <translation>&amp;Ø Platte</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>&amp;Show</source>
   <translation>&amp;Zeigen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>&amp;Ways</source>
   <translation>&amp;Keile</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>A&amp;xis</source>
   <translation>A&amp;chse</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Across &amp;flats</source>
   <translation>Schlüssel&amp;weite</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Book</source>
   <translation>Gestürzt</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Choose Spot</source>
   <translation>Stelle wählen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>First &amp;leaf</source>
   <translation>Erstes &amp;Blatt</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>In sequence</source>
   <translation>Messerfolge</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>O&amp;rder</source>
   <translation>&amp;Reihenfolge</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>One mirrored</source>
   <translation>Zwei Spiegel</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Slip</source>
   <translation>Geschoben</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Spread</source>
   <translation>Verteilt</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>T&amp;urn</source>
   <translation>W&amp;enden</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>The top from the true leaves, or as two mirrors on the leaf looked at would show it (M)</source>
   <translation>Die Platte aus den wahren Blättern, oder wie zwei Spiegel auf dem angesehenen Blatt sie zeigen würden (M)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Tip a&amp;cross</source>
   <translation>Spitze &amp;quer</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>Tip al&amp;ong</source>
   <translation>Spitze &amp;längs</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>True leaves</source>
   <translation>Wahre Blätter</translation>
  </message>
  <message>
   <location filename="resources/ui/spot.ui" />
   <source>What stands against cutting here, the gravest first; a click selects what it speaks of</source>
   <translation>Was gegen das Schneiden an dieser Stelle spricht, das Schwerste zuerst; ein Klick wählt aus, wovon es handelt</translation>
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
   <translation>Näher ans Blatt (+ oder Mausrad)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Fit</source>
   <translation>Einpassen</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Further away from the leaf (- or the wheel)</source>
   <translation>Weiter vom Blatt weg (- oder Mausrad)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Grid</source>
   <translation>Gitter</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Leaf and Top</source>
   <translation>Blatt und Platte</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Lines of whole millimetres (G)</source>
   <translation>Linien in ganzen Millimetern (G)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Show the whole leaf (F)</source>
   <translation>Das ganze Blatt zeigen (F)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>Spot</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>The leaf before (Page Up)</source>
   <translation>Das Blatt davor (Bild auf)</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>The leaf that is looked at; the wedge is the same on all</source>
   <translation>Das angesehene Blatt; der Keil ist auf allen derselbe</translation>
  </message>
  <message>
   <location filename="resources/ui/spot_window.ui" />
   <source>The next leaf (Page Down)</source>
   <translation>Das nächste Blatt (Bild ab)</translation>
  </message>
 </context>
</TS>
