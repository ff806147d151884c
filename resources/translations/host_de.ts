<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A box's joints: at 45 degrees, or from corner to corner</source>
   <translation>Die Fugen der vier Spiegel: unter 45 Grad, oder von Ecke zu Ecke</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A closed sketch, a wire or a planar face that is the top; holes are openings</source>
   <translation>Eine geschlossene Skizze, ein Kantenzug oder eine ebene Fläche als Platte; Löcher sind Öffnungen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A mark of each piece</source>
   <translation>Ein Zeichen für jedes Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>A mark that changes with all of this</source>
   <translation>Ein Zeichen, das sich mit all dem ändert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>A mark that changes with the layout</source>
   <translation>Ein Zeichen, das sich mit dem Legeplan ändert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>A mark that changes with the picture</source>
   <translation>Ein Zeichen, das sich mit dem Bild ändert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>A normal and a point each</source>
   <translation>Je eine Normale und ein Punkt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>A second bundle, used when the leaves of the first end</source>
   <translation>Ein zweites Paket, das gebraucht wird, wenn die Blätter des ersten enden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>A sketch, wire or flat face: no leaf is used outside it</source>
   <translation>Eine Skizze, ein Kantenzug oder eine ebene Fläche: kein Blatt wird außerhalb davon genutzt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>A slope of 0 is known, not unknown</source>
   <translation>Eine Neigung von 0 ist bekannt, nicht unbekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Across</source>
   <translation>Quer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Across Flats</source>
   <translation>Schlüsselweite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Adhesive</source>
   <translation>Klebstoff</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>After cutting</source>
   <translation>Nach dem Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Along</source>
   <translation>Längs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Altitude</source>
   <translation>Meereshöhe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Angle between figure and leaf; 0 if it is not known</source>
   <translation>Winkel zwischen Textur und Blatt; 0, wenn er nicht bekannt ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Angle of both halves, degrees</source>
   <translation>Winkel beider Hälften, Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Angle of each wedge, degrees</source>
   <translation>Winkel jedes Keils, Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Angle, x and y of the bundle on the back, where it was photographed</source>
   <translation>Winkel, x und y des Pakets auf der Rückseite, wo sie fotografiert wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Angle, x and y of the bundle on the photo of the back, where it is not the register</source>
   <translation>Winkel, x und y des Pakets auf dem Foto der Rückseite, wo das nicht die Lage ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Angle, x and y of the bundle on the photo of the face, where it is not the register</source>
   <translation>Winkel, x und y des Pakets auf dem Foto der Vorderseite, wo das nicht die Lage ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Approved By</source>
   <translation>Genehmigt von</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>As in a match</source>
   <translation>Wie bei einem Furnierbild</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>At Once</source>
   <translation>Auf einmal</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Auto Placement</source>
   <translation>Selbst platzieren</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Axis</source>
   <translation>Achse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Back</source>
   <translation>Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Gains</source>
   <translation>Verstärkungen der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Mm Per Px</source>
   <translation>mm je Pixel der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Original Mm Per Px</source>
   <translation>mm je Pixel des Originals der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Original Name</source>
   <translation>Name des Originals der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Original Sha256</source>
   <translation>SHA-256 des Originals der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Photo</source>
   <translation>Foto der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Tie</source>
   <translation>Bindung der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Tie Error</source>
   <translation>Fehler der Bindung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Back Tie Rms</source>
   <translation>rms der Bindung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer</source>
   <translation>Gegenfurnier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer From</source>
   <translation>Gegenfurnier aus</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer Grain</source>
   <translation>Gegenfurnierfaser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer Material</source>
   <translation>Gegenfurnierholz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Backer Thickness</source>
   <translation>Gegenfurnierdicke</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Base</source>
   <translation>Basis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Before cutting</source>
   <translation>Vor dem Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Before veneering it lies under the veneer; after, it is as high as the panel</source>
   <translation>Vor dem Furnieren liegt er unter dem Furnier; danach ist er so hoch wie die Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Bench</source>
   <translation>Werkbank</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Boards</source>
   <translation>Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Boards Beyond</source>
   <translation>Überstand der Decklagen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Book or slip</source>
   <translation>Gestürzt oder geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Book: every second leaf turned over; slip: none or all; side by side also end for end, or out of order</source>
   <translation>Gestürzt: jedes zweite Blatt gewendet; geschoben: keines oder alle; in Reihe auch Kopf gegen Fuß oder außer der Reihenfolge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border</source>
   <translation>Fries</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Grain</source>
   <translation>Friesfaser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Kind</source>
   <translation>Friesart</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Material</source>
   <translation>Friesholz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Segments</source>
   <translation>Friesteile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Border Width</source>
   <translation>Friesbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Build Up</source>
   <translation>Aufbau</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Bundle</source>
   <translation>Paket</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>By how much all edges are out alike, square to them; less than 0: in</source>
   <translation>Um wie viel alle Kanten gleich nach außen liegen, quer zu ihnen; unter 0: nach innen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>By what angle of the tip</source>
   <translation>Um welchen Winkel der Spitze</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>By what width on each seam</source>
   <translation>Um welche Breite an jeder Fuge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Centre X</source>
   <translation>Mitte X</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Centre Y</source>
   <translation>Mitte Y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Centres of the paper marks on it, mm; the third coordinate is 0 for mark A, 1 for B</source>
   <translation>Mitten der Papiermarken darauf, mm; die dritte Koordinate ist 0 für Marke A, 1 für B</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Changed Pieces</source>
   <translation>Geänderte Teile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Checks</source>
   <translation>Prüfungen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Claimed</source>
   <translation>Zugesagt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Climate</source>
   <translation>Klima</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Climate Known</source>
   <translation>Klima bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Close Between</source>
   <translation>Schließen zwischen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Closing</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Colour change, grain change, seams and closing seam as they were measured; empty if they were not</source>
   <translation>Farbwechsel, Faserwechsel, Fugen und Schlussfuge, wie sie gemessen wurden; leer, wenn nicht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Common</source>
   <translation>Gemeinsam</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Confidence</source>
   <translation>Sicherheit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core</source>
   <translation>Träger</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Grain</source>
   <translation>Trägerfaser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Kind</source>
   <translation>Trägerart</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Material</source>
   <translation>Trägerwerkstoff</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Moves</source>
   <translation>Arbeiten des Trägers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Sawn</source>
   <translation>Trägereinschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Core Thickness</source>
   <translation>Trägerdicke</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Corner Way</source>
   <translation>Eckfugen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Created By</source>
   <translation>Gezeichnet von</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Above</source>
   <translation>Absperrung oben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Below</source>
   <translation>Absperrung unten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Grain</source>
   <translation>Absperrfaser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossband Material</source>
   <translation>Absperrwerkstoff</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Crossbands</source>
   <translation>Absperrfurniere</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Cut</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Cut As</source>
   <translation>Schnitt als</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Cut By</source>
   <translation>Geschnitten mit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Cut To</source>
   <translation>Geschnitten auf</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Cut from the middle of the leaves</source>
   <translation>Aus der Mitte der Blätter schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Cutting</source>
   <translation>Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Degrees between the grain (in a herringbone the strips) and the level</source>
   <translation>Grad zwischen der Faser (bei Fischgrät den Streifen) und der Waagrechten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Degrees that the measured ring is over 360</source>
   <translation>Grad, um die der gemessene Ring über 360 ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Diameter</source>
   <translation>Durchmesser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of a disc that is let in about the centre: the wedges end at it; 0: none</source>
   <translation>Durchmesser einer um die Mitte eingelassenen Scheibe: die Keile enden daran; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Diameter of a ram</source>
   <translation>Durchmesser eines Kolbens</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of a round top</source>
   <translation>Durchmesser einer runden Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Diameter of the disc</source>
   <translation>Durchmesser der Scheibe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of the inner ring</source>
   <translation>Durchmesser des inneren Rings</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Diameter of what will lie on the centre and cover it, where no disc is let in: faults may lie under it; 0: none</source>
   <translation>Durchmesser dessen, was auf der Mitte liegen und sie verdecken wird, wo keine Scheibe eingelassen ist: Fehler dürfen darunter liegen; 0: nichts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the backer's grain on the top</source>
   <translation>Richtung der Faser des Gegenfurniers auf der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the core's grain on the top</source>
   <translation>Richtung der Faser der Trägerplatte auf der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the crossbands' grain on the top; across the core's</source>
   <translation>Richtung der Faser der Absperrfurniere auf der Platte; quer zu der des Trägers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Direction of the first wedge's axis on the top</source>
   <translation>Richtung der Achse des ersten Keils auf der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Direction of the grain, counter-clockwise from up; from global y on a level face</source>
   <translation>Richtung der Faser, gegen den Uhrzeiger von oben; auf waagrechter Fläche von der globalen y-Achse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the inlay's grain on the top</source>
   <translation>Richtung der Faser der Einlage auf der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Direction of the star's first tip</source>
   <translation>Richtung der ersten Spitze des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Direction of the strips on the top; 90 is upright</source>
   <translation>Richtung der Streifen auf der Platte; 90 ist aufrecht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Disc Diameter</source>
   <translation>Scheibendurchmesser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Drawing</source>
   <translation>Zeichnung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Drawn By</source>
   <translation>Gezeichnet von</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Each panel's face and leaves</source>
   <translation>Fläche und Blätter jeder Front</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Edition</source>
   <translation>Ausgabe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>End Kind</source>
   <translation>Kopfsturzart</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Ends</source>
   <translation>Enden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Error</source>
   <translation>Abweichung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Even Light</source>
   <translation>Licht ausgleichen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Explode</source>
   <translation>Auseinander</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Face</source>
   <translation>Sichtseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Face Down</source>
   <translation>Sichtseite unten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Faces</source>
   <translation>Flächen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Facing</source>
   <translation>Belag</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Fault Kinds</source>
   <translation>Fehlerarten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Fault Outlines</source>
   <translation>Fehlerumrisse</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Fault Shapes</source>
   <translation>Fehlerformen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Faults</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>File Unit</source>
   <translation>Dateieinheit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>First</source>
   <translation>Erstes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>First Piece</source>
   <translation>Erstes Teil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Flitch</source>
   <translation>Flitch</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Follows</source>
   <translation>Richtet sich nach</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Fraction</source>
   <translation>Bruch</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>From the centre to the star's hollows</source>
   <translation>Von der Mitte zu den Kehlen des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>From the centre to the star's tips</source>
   <translation>Von der Mitte zu den Spitzen des Sterns</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Full M2</source>
   <translation>Im Ganzen m2</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Full Sq Ft</source>
   <translation>Im Ganzen Quadratfuß</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Gains</source>
   <translation>Verstärkungen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gap in mm under a straightedge on each half: at the tip; less than 0: at an end</source>
   <translation>Spalt in mm unter einem Lineal an jeder Hälfte: an der Spitze; unter 0: an einem Ende</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gaps</source>
   <translation>Spalte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gaps At</source>
   <translation>Spalte bei</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Gaps Unsure</source>
   <translation>Spalte unsicher</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Gauge</source>
   <translation>Manometer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Grain</source>
   <translation>Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Grain along the edge or across it</source>
   <translation>Faser längs der Kante oder quer dazu</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Halves</source>
   <translation>Hälften</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Halves Unsure</source>
   <translation>Hälften unsicher</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Height of leaves cut at once; 0 for leaf by leaf</source>
   <translation>Höhe der auf einmal geschnittenen Blätter; 0 für Blatt um Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Hidden Disc</source>
   <translation>Verdeckte Scheibe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How</source>
   <translation>Wie</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>How a solid core was sawn</source>
   <translation>Wie ein massiver Träger eingeschnitten wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>How far apart the parts are drawn; 0: as built</source>
   <translation>Wie weit auseinander die Teile gezeichnet werden; 0: wie gebaut</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far boards reach beyond the cuts</source>
   <translation>Wie weit Decklagen über die Schnitte hinausreichen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How far from the tip it rests or gapes, mm</source>
   <translation>Wie weit von der Spitze es aufliegt oder klafft, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far pins keep from a leaf's edge and faults</source>
   <translation>Wie weit Stifte von Rand und Fehlern eines Blatts wegbleiben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far pins keep from every cut</source>
   <translation>Wie weit Stifte von jedem Schnitt wegbleiben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How far the blade may stand off square</source>
   <translation>Wie weit die Klinge vom rechten Winkel abweichen darf</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How far the blanks reach beyond the finished edge</source>
   <translation>Wie weit die Rohteile über die fertige Kante hinausreichen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>How far the figure is turned on this leaf</source>
   <translation>Wie weit die Textur auf diesem Blatt gedreht ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How far the figure wanders from face to back, measured on photographed backs: mm across, mm along, and mm that this may be off; empty while it is not known</source>
   <translation>Wie weit die Textur von der Vorderseite zur Rückseite wandert, gemessen an fotografierten Rückseiten: mm quer, mm längs, und mm, um die es falsch sein kann; leer, solange es nicht bekannt ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>How far the leaf is moved along its grain</source>
   <translation>Wie weit das Blatt längs seiner Faser gerückt ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>How far the leaf is moved to the right, seen with the grain upright</source>
   <translation>Wie weit das Blatt nach rechts gerückt ist, bei aufrechter Faser gesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How high the shop lies above the sea, m</source>
   <translation>Wie hoch die Werkstatt über dem Meer liegt, m</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How it was cut: sliced flat, on the quarter</source>
   <translation>Wie es geschnitten wurde: flach gemessert, rift gemessert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>How many faces there were</source>
   <translation>Wie viele Flächen es waren</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>How many leaves are thought lost between the bundles</source>
   <translation>Wie viele Blätter zwischen den Paketen verloren gelten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How many leaves there are</source>
   <translation>Wie viele Blätter es sind</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many leaves; 0: as many as the width needs</source>
   <translation>Wie viele Blätter; 0: so viele, wie die Breite braucht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How many rams; 0 for a press without a gauge</source>
   <translation>Wie viele Zylinder; 0 für eine Presse ohne Manometer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How many readings are missing</source>
   <translation>Wie viele Ablesungen fehlen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How many such tops are made of the bundle</source>
   <translation>Wie viele solche Platten aus dem Paket gemacht werden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many unused leaves should be left over</source>
   <translation>Wie viele unbenutzte Blätter übrig bleiben sollen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>How many wedges meet at the centre</source>
   <translation>Wie viele Keile sich in der Mitte treffen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many wedges meet at the centre: 3 to 64, even for book</source>
   <translation>Wie viele Keile sich in der Mitte treffen: 3 bis 64, gestürzt eine gerade Zahl</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How many wedges the inner ring has</source>
   <translation>Wie viele Keile der innere Ring hat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How much over the seams are cut: not at all, by an angle of the tip, or by a width</source>
   <translation>Wie viel größer die Fugen geschnitten werden: gar nicht, um einen Winkel der Spitze, oder um eine Breite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How often leaves were renumbered or turned: paper made before is stale</source>
   <translation>Wie oft Blätter umnummeriert oder gewendet wurden: Papier von vorher ist veraltet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How strips share the face: of one width, full ones and a rest, with a joint in the centre, or mirrored there</source>
   <translation>Wie Streifen die Sichtseite teilen: alle gleich breit, volle und ein Rest, mit einer Fuge in der Mitte, oder dort gespiegelt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How sure it is to be that truing suffices</source>
   <translation>Wie sicher es sein soll, dass das Fügen genügt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How the leaves are laid</source>
   <translation>Wie die Blätter gelegt werden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How the leaves lie on each other</source>
   <translation>Wie die Blätter aufeinander liegen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How the leaves were cut from the log</source>
   <translation>Wie die Blätter aus dem Stamm geschnitten wurden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>How the lipping was sawn</source>
   <translation>Wie der Anleimer eingeschnitten wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How the ring closes</source>
   <translation>Wie der Ring sich schließt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>How the ring is trued</source>
   <translation>Wie der Ring gefügt wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>How the stack is cut: by knife in lifts, by saw in boards, by machine leaf by leaf</source>
   <translation>Wie der Stapel geschnitten wird: mit dem Messer in Teilstapeln, mit der Säge zwischen Decklagen, mit der Maschine Blatt für Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>How turned leaves are pinned once the wander is known: as their faces are, or by the figure of their backs</source>
   <translation>Wie gewendete Blätter gestiftet werden, sobald das Wandern bekannt ist: wie ihre Vorderseiten liegen, oder nach der Textur ihrer Rückseiten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>How wide a strip may be from seam to seam; 0: as the leaves have room (herringbone: 100 mm)</source>
   <translation>Wie breit ein Streifen von Fuge zu Fuge sein darf; 0: wie die Blätter Platz haben (Fischgrät: 100 mm)</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Identification number of the drawing</source>
   <translation>Zeichnungsnummer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>In % when photographed; 0 if not known</source>
   <translation>In % beim Fotografieren; 0, wenn nicht bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>In which order the leaves of an end match lie</source>
   <translation>In welcher Folge die Blätter eines Kopfsturzes liegen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Diameter</source>
   <translation>Einlagendurchmesser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Grain</source>
   <translation>Einlagenfaser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Inner</source>
   <translation>Einlage innen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Material</source>
   <translation>Einlagenholz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Outer</source>
   <translation>Einlage außen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Points</source>
   <translation>Einlagenzacken</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Inlay Turn</source>
   <translation>Einlagendrehung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Inner Diameter</source>
   <translation>Innendurchmesser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Inner Ways</source>
   <translation>Innere Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Inventory</source>
   <translation>Bestand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaf Order</source>
   <translation>Blattfolge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Lean</source>
   <translation>Neigung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Least Length</source>
   <translation>Kleinste Länge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Least Width</source>
   <translation>Kleinste Breite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Leaves</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaves side by side in each wedge, slip matched</source>
   <translation>Blätter nebeneinander in jedem Keil, geschoben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Leaves that have no room for wedges of the advised angle</source>
   <translation>Blätter, die für Keile des empfohlenen Winkels keinen Platz haben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Length of platen or bag</source>
   <translation>Länge von Pressplatte oder Sack</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Length of the base that the template is set out over; 0: as the seams want</source>
   <translation>Länge, über die die Schablone angerissen wird; 0: wie die Fugen es wollen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Length of the top along x; side of a square</source>
   <translation>Länge der Platte längs x; Seite eines Quadrats</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Length over which the wedge's angle is set out; 0 to have it chosen</source>
   <translation>Länge, über die der Winkel des Keils angerissen wird; 0, um sie wählen zu lassen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Line Material</source>
   <translation>Aderholz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Line Segments</source>
   <translation>Aderteile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Line Width</source>
   <translation>Aderbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping</source>
   <translation>Anleimer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Material</source>
   <translation>Anleimerholz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Moves</source>
   <translation>Arbeiten des Anleimers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Sawn</source>
   <translation>Anleimereinschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Segments</source>
   <translation>Anleimerteile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping When</source>
   <translation>Anleimer wann</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Lipping Width</source>
   <translation>Anleimerbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Lot Mark</source>
   <translation>Loszeichen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Made Humidity</source>
   <translation>Feuchte Werkstatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Made Temperature</source>
   <translation>Temperatur Werkstatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Margin</source>
   <translation>Sicherheitsrand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Marks</source>
   <translation>Marken</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Match</source>
   <translation>Furnierbild</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Measures</source>
   <translation>Messwerte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Message</source>
   <translation>Meldung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Missing</source>
   <translation>Fehlend</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Mitred at corners, straight and butted, or following the edge</source>
   <translation>An Ecken auf Gehrung, gerade und stumpf, oder der Kante nach</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Mm Per Px</source>
   <translation>mm je Pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Mode</source>
   <translation>Weise</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Moisture</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture Known</source>
   <translation>Feuchte bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture Unsure</source>
   <translation>Feuchte unsicher</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture in % when cut</source>
   <translation>Feuchte in % beim Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture in % when photographed</source>
   <translation>Feuchte in % beim Fotografieren</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moisture in % when taped</source>
   <translation>Feuchte in % beim Kleben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Most Pressure</source>
   <translation>Höchstdruck</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Moves</source>
   <translation>Arbeitet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Name of the adhesive</source>
   <translation>Name des Klebstoffs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Name of the back's own file</source>
   <translation>Name der eigenen Datei der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Name of the photograph's own file</source>
   <translation>Name der eigenen Datei des Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Names</source>
   <translation>Namen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>No Room</source>
   <translation>Kein Platz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Notes</source>
   <translation>Bemerkungen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Number</source>
   <translation>Nummer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Of a blueprint. Closed: gaps take none of the figure; laid through: what lies in them is lost</source>
   <translation>Bei einem Plan. Geschlossen: Spalte nehmen nichts von der Textur; durchgelegt: was in ihnen liegt, ist verloren</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Of the narrowest leaf's outline</source>
   <translation>Vom Umriss des schmalsten Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Of the shortest leaf's outline</source>
   <translation>Vom Umriss des kürzesten Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Of the whole bundle; 0 if not known</source>
   <translation>Des ganzen Pakets; 0, wenn nicht bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Of the workshop, % relative humidity</source>
   <translation>Der Werkstatt, % relative Luftfeuchte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Of the workshop, degrees C</source>
   <translation>Der Werkstatt, Grad C</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Of which kind each solid is</source>
   <translation>Von welcher Art jeder Körper ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Old</source>
   <translation>Alt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>On Outline</source>
   <translation>Auf dem Umriss</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Open Time</source>
   <translation>Offene Zeit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Open time by its sheet, minutes; 0: not looked up</source>
   <translation>Offene Zeit nach seinem Merkblatt, Minuten; 0: nicht nachgesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Order</source>
   <translation>Reihenfolge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Origin</source>
   <translation>Herkunft</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original</source>
   <translation>Original</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original Mm Per Px</source>
   <translation>mm je Pixel des Originals</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original Name</source>
   <translation>Name des Originals</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Original Sha256</source>
   <translation>SHA-256 des Originals</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Other matches that are cut from the same stack</source>
   <translation>Andere Furnierbilder, die aus demselben Stapel geschnitten werden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Outline Centre</source>
   <translation>Mitte des Umrisses</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Outline Of</source>
   <translation>Umriss von</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Outline of what may be used, mm; empty for the whole leaf</source>
   <translation>Umriss des Nutzbaren, mm; leer für das ganze Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Outlines of faults through all leaves, mm</source>
   <translation>Umrisse von Fehlern durch alle Blätter, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Outlines of faults, mm</source>
   <translation>Umrisse von Fehlern, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Over</source>
   <translation>Über</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Oversize</source>
   <translation>Übermaß</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Owner</source>
   <translation>Eigentümer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Panel Numbers</source>
   <translation>Frontnummern</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Panels</source>
   <translation>Fronten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Parts between two corners, or all round where there are none</source>
   <translation>Teile zwischen zwei Ecken, oder ringsum, wo es keine gibt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Photo</source>
   <translation>Foto</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Photographed</source>
   <translation>Fotografiert</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Photographs are shown with the gains that even their light, where they have any</source>
   <translation>Fotos werden mit den Verstärkungen gezeigt, die ihr Licht ausgleichen, wo sie welche haben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Picked</source>
   <translation>Gewählt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Picture</source>
   <translation>Bild</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Piece Error</source>
   <translation>Keilfehler</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Pin Backs</source>
   <translation>Rückseiten stiften</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Pin Margin</source>
   <translation>Stift - Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Pins Clear</source>
   <translation>Stift - Schnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Placement on bundle</source>
   <translation>Lage auf dem Paket</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Points of the figure that were picked on it to lay the leaves by, mm</source>
   <translation>Punkte der Textur, die darauf gewählt wurden, um die Blätter danach zu legen, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Points of the star</source>
   <translation>Zacken des Sterns</translation>
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
   <translation>Presslänge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Margin</source>
   <translation>Pressrand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Thickness</source>
   <translation>Pressdicke</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Time</source>
   <translation>Presszeit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Press Width</source>
   <translation>Pressbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Pressure</source>
   <translation>Druck</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Price Per</source>
   <translation>Preis je</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Price of the veneer; 0: that of the bundle's particulars</source>
   <translation>Preis des Furniers; 0: der aus den Angaben des Pakets</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Ram Diameter</source>
   <translation>Kolbendurchmesser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Rams</source>
   <translation>Zylinder</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Reading</source>
   <translation>Ablesung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register</source>
   <translation>Lage</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register Angle</source>
   <translation>Lage Winkel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register X</source>
   <translation>Lage X</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Register Y</source>
   <translation>Lage Y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Registers</source>
   <translation>Lagen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Report</source>
   <translation>Bericht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Result</source>
   <translation>Ergebnis</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Revision</source>
   <translation>Stand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Rim</source>
   <translation>Rand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Room round the blank</source>
   <translation>Platz um das Rohteil</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Rows</source>
   <translation>Reihen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Rows of a continuous end match</source>
   <translation>Reihen eines durchlaufenden Kopfsturzes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Run</source>
   <translation>Folge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>SHA-256 of the back's own file</source>
   <translation>SHA-256 der eigenen Datei der Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>SHA-256 of the photograph's own file</source>
   <translation>SHA-256 der eigenen Datei des Fotos</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Sawn</source>
   <translation>Einschnitt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the back's original: mm per pixel</source>
   <translation>Maßstab des Originals der Rückseite: mm je Pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the back's working copy: mm per pixel</source>
   <translation>Maßstab der Arbeitskopie der Rückseite: mm je Pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the original: mm per pixel</source>
   <translation>Maßstab des Originals: mm je Pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Scale of the plan</source>
   <translation>Maßstab der Draufsicht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Scale of the wedge</source>
   <translation>Maßstab des Keils</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Scale of the working copy: mm per pixel</source>
   <translation>Maßstab der Arbeitskopie: mm je Pixel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Seam Angle</source>
   <translation>Fugenwinkel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Seam Width</source>
   <translation>Fugenbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Seams Cut</source>
   <translation>Fugen geschnitten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Second</source>
   <translation>Zweites</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Seed</source>
   <translation>Mischzahl</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Sequence: panels of one size, each from the next leaves; blueprint: one field on all</source>
   <translation>Folge: gleich große Fronten, jede aus den nächsten Blättern; Plan: ein Feld über alle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Set Out Base</source>
   <translation>Anreißlänge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Set Out Offset</source>
   <translation>Anreißmaß</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Sheet goods keep still, solid wood moves</source>
   <translation>Plattenwerkstoffe stehen still, Massivholz arbeitet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Sheets</source>
   <translation>Zeichnungsblätter</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Shifted</source>
   <translation>Versetzt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Sides</source>
   <translation>Seiten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Sides of a polygon</source>
   <translation>Seiten eines Vielecks</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Size across the leaf</source>
   <translation>Größe quer über das Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Size along the grain</source>
   <translation>Größe längs der Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Sketches, wires and flat faces drawn round faults through all leaves; what each is its name says: margin, split, knot, patch or stain</source>
   <translation>Um Fehler durch alle Blätter gezeichnete Skizzen, Kantenzüge und ebene Flächen; was jede ist, sagt ihr Name: margin, split, knot, patch oder stain</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Slant</source>
   <translation>Schräge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Slope</source>
   <translation>Faserneigung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Slope Known</source>
   <translation>Neigung bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Spares</source>
   <translation>Reserve</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Species</source>
   <translation>Holzart</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Spot</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Spread</source>
   <translation>Auftrag</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error in % of the change from cut to taping</source>
   <translation>Standardabweichung in % der Änderung vom Schneiden zum Kleben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of each wedge for itself: knife, lean, edge</source>
   <translation>Standardabweichung jedes Keils für sich: Messer, Neigung, Kante</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of that</source>
   <translation>Standardabweichung davon</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of the gaps, mm</source>
   <translation>Standardabweichung der Spalte, mm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of the measured wedges by which the diameter is chosen; 0: it is fixed beforehand</source>
   <translation>Standardabweichung der gemessenen Keile, nach denen der Durchmesser gewählt wird; 0: er ist vorher festgelegt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Standard error of the template's angle, the same in every wedge of one stack</source>
   <translation>Standardabweichung des Winkels der Schablone, für jeden Keil eines Stapels dieselbe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Stands Humidity</source>
   <translation>Feuchte Standort</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Stands Temperature</source>
   <translation>Temperatur Standort</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Start</source>
   <translation>Beginn</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>State</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/stock.py" />
   <source>Stock</source>
   <translation>Vorrat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Stringing line</source>
   <translation>Ader</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Strip Width</source>
   <translation>Streifenbreite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Strips</source>
   <translation>Streifen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Taping</source>
   <translation>Fugen kleben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Template Error</source>
   <translation>Schablonenfehler</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Template Stays</source>
   <translation>Schablone bleibt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Templates</source>
   <translation>Schablonen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The angle that the template gets, degrees</source>
   <translation>Der Winkel, den die Schablone erhält, Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The blank's rim: parallel to the edge, or one straight</source>
   <translation>Der Rand des Rohteils: gleichlaufend zur Kante, oder gerade</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The bundle or stock that the backer is taken from; none: give its thickness</source>
   <translation>Paket oder Vorrat, aus dem das Gegenfurnier kommt; keines: seine Dicke angeben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The bundle or stock that the run is cut from</source>
   <translation>Paket oder Vorrat, woraus die Folge geschnitten wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The bundle or stock that the top is cut from</source>
   <translation>Paket oder Vorrat, woraus die Platte geschnitten wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The core's radial and tangential movement for each % of moisture, such as 0.0019 0.00274; empty: by the material's name</source>
   <translation>Radiales und tangentiales Arbeiten der Trägerplatte je % Feuchte, etwa 0.0019 0.00274; leer: nach dem Namen des Werkstoffs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sheets.py" />
   <source>The drawing that the view is part of</source>
   <translation>Die Zeichnung, zu der die Ansicht gehört</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>The faces, as last seen</source>
   <translation>Die Flächen, wie zuletzt gesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The finest part of an inch that is written</source>
   <translation>Der feinste Teil eines Zolls, der geschrieben wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The first leaf that is used</source>
   <translation>Das erste gebrauchte Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The flat faces in one plane, one a panel</source>
   <translation>Die ebenen Flächen in einer Ebene, eine je Front</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>The flat faces that it is shown on</source>
   <translation>Die ebenen Flächen, auf denen es gezeigt wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The flitch that it came from</source>
   <translation>Der Flitch, aus dem es kommt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>The leaf is turned over and shows its back</source>
   <translation>Das Blatt ist gewendet und zeigt seine Rückseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The leaf of each position</source>
   <translation>Das Blatt jedes Platzes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>The leaf that is shown</source>
   <translation>Das Blatt, das gezeigt wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>The leaf's place in the bundle as it came off the log</source>
   <translation>Der Platz des Blatts im Paket, wie es vom Stamm kam</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The least over to cut every wedge, degrees</source>
   <translation>Das Wenigste, um das jeder Keil größer zu schneiden ist, Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>The leaves or the top have changed since the picture was made</source>
   <translation>Blätter oder Platte haben sich geändert, seit das Bild gemacht wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The leaves that it takes</source>
   <translation>Die Blätter, die sie braucht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves' numbers</source>
   <translation>Die Nummern der Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves, in any order: their numbers count</source>
   <translation>Die Blätter, in beliebiger Folge: ihre Nummern zählen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The lipping's radial and tangential movement for each % of moisture, such as 0.0019 0.00274; empty: by the material's name</source>
   <translation>Radiales und tangentiales Arbeiten des Anleimers je % Feuchte, etwa 0.0019 0.00274; leer: nach dem Namen des Werkstoffs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The mark of its lot</source>
   <translation>Das Zeichen seines Loses</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The mark of the layout drawn</source>
   <translation>Der Änderungsvermerk des gezeichneten Legeplans</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The mark of the layout on the sheets</source>
   <translation>Der Änderungsvermerk des Legeplans auf den Blättern</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The match that goes to the bench</source>
   <translation>Das Furnierbild, das an die Werkbank geht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The match that is drawn</source>
   <translation>Das gezeichnete Furnierbild</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>The match that shows on the panel</source>
   <translation>Das Furnierbild, das auf der Platte zu sehen ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>The match that would be cut here</source>
   <translation>Das Furnierbild, das hier geschnitten würde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The money that it is in</source>
   <translation>Das Geld, in dem er steht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The most that gauge or pump can show, in the unit of the gauge; 0: not known</source>
   <translation>Der Höchstwert, den Manometer oder Pumpe zeigen können, in der Einheit des Manometers; 0: nicht bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>The number of the panel on each face</source>
   <translation>Die Nummer der Front auf jeder Fläche</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The paper of the sheets</source>
   <translation>Das Papier der Zeichnungsblätter</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The paper that 1:1 templates are tiled on</source>
   <translation>Das Papier, auf das Schablonen 1:1 gekachelt werden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The piece before which the diameter to leave open begins; 0: none is known</source>
   <translation>Das Teil, vor dem der offen zu lassende Durchmesser beginnt; 0: keiner bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The piece that begins the first of two measured halves</source>
   <translation>Das Teil, mit dem die erste von zwei gemessenen Hälften beginnt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The pieces are taped with their show face down</source>
   <translation>Die Teile werden mit der Sichtseite nach unten geklebt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The positions that show their leaf's back</source>
   <translation>Die Plätze, die die Rückseite ihres Blatts zeigen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The positions that the last change altered</source>
   <translation>Die Plätze, die die letzte Änderung betraf</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The protractor's own standard error, alike in all readings</source>
   <translation>Standardabweichung des Winkelmessers selbst, in allen Ablesungen gleich</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The radial match whose ring is to close</source>
   <translation>Das Sternbild, dessen Ring sich schließen soll</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The same in square feet</source>
   <translation>Dasselbe in Quadratfuß</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The set-out's base</source>
   <translation>Die Anreißlänge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The set-out's offset to each side</source>
   <translation>Das Anreißmaß nach jeder Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The share of rings that truing then suffices for</source>
   <translation>Der Anteil der Ringe, für die das Fügen dann genügt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The template's angle; 0 if it is exact</source>
   <translation>Der Winkel der Schablone; 0, wenn er genau ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>The top as it looked when the spot was kept</source>
   <translation>Die Platte, wie sie aussah, als die Stelle gemerkt wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The top lies where its outline lies, as it is moved</source>
   <translation>Die Platte liegt, wo ihr Umriss liegt, und geht mit ihm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The top's outline</source>
   <translation>Der Umriss der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>The unit of the gauge</source>
   <translation>Die Einheit des Manometers</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The veneer's moisture is known when it is photographed, cut and taped</source>
   <translation>Die Feuchte des Furniers beim Fotografieren, Schneiden und Kleben ist bekannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The wood</source>
   <translation>Das Holz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>The wood by name, or its change of width for each % of moisture; empty: the wood of the bundle</source>
   <translation>Das Holz beim Namen, oder seine Änderung der Breite je % Feuchte; leer: das Holz des Pakets</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Their standard error</source>
   <translation>Ihre Standardabweichung</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Thickness of a leaf</source>
   <translation>Dicke eines Blatts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Thickness of all that lies in it: core, veneers, cauls</source>
   <translation>Dicke von allem, was darin liegt: Träger, Furniere, Zulagen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Thickness of each sandwich board; 0: none</source>
   <translation>Dicke jeder Decklage; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the core</source>
   <translation>Dicke der Trägerplatte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the layer between core and backer; 0: none</source>
   <translation>Dicke der Lage zwischen Träger und Gegenfurnier; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the layer between core and show veneer; 0: none</source>
   <translation>Dicke der Lage zwischen Träger und Deckfurnier; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the panel, veneers and all</source>
   <translation>Dicke der Platte mit allen Furnieren</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Thickness of the veneer on the under side; 0: none</source>
   <translation>Dicke des Furniers auf der Unterseite; 0: keines</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Tight Side</source>
   <translation>Geschlossene Seite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Tile Paper</source>
   <translation>Kachelpapier</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Time in the press, minutes; 0: not looked up</source>
   <translation>Zeit in der Presse, Minuten; 0: nicht nachgesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Tip X</source>
   <translation>Spitze X</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Tip Y</source>
   <translation>Spitze Y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Title block</source>
   <translation>Schriftfeld</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Title; empty for the match's name</source>
   <translation>Titel; leer für den Namen des Furnierbilds</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>To keep between a blank and the edge of what may be used</source>
   <translation>Was zwischen einem Rohteil und dem Rand des Nutzbaren frei bleiben soll</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Together</source>
   <translation>Zusammen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Tool</source>
   <translation>Werkzeug</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Top</source>
   <translation>Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Tops</source>
   <translation>Platten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Trial Count</source>
   <translation>Keile der Probe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Trial Sum</source>
   <translation>Summe der Probe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Trial Unsure</source>
   <translation>Probe unsicher</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Turn</source>
   <translation>Wenden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>Turned</source>
   <translation>Gewendet</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Turned Positions</source>
   <translation>Gewendete Plätze</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Twice the distance from the centre to a polygon's flat</source>
   <translation>Doppelter Abstand von der Mitte zur Seite eines Vielecks</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Two positions whose seam is closed last; empty to have it chosen</source>
   <translation>Zwei Plätze, deren Fuge zuletzt geschlossen wird; leer, um sie wählen zu lassen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Usable</source>
   <translation>Nutzbar</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Usable M2</source>
   <translation>Nutzbar m2</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Usable Shape</source>
   <translation>Nutzbare Form</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Usable Sq Ft</source>
   <translation>Nutzbar Quadratfuß</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Wander</source>
   <translation>Wandern</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Ways</source>
   <translation>Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Wedge Angle</source>
   <translation>Keilwinkel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Wedge Scale</source>
   <translation>Keilmaßstab</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges</source>
   <translation>Keile</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges To</source>
   <translation>Keile auf</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges Unsure</source>
   <translation>Keile unsicher</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Wedges of a test cut by the template as it is set; 0: none was made. The template's error then comes from it</source>
   <translation>Keile eines Probeschnitts mit der Schablone, wie sie eingestellt ist; 0: keiner gemacht. Der Fehler der Schablone kommt dann aus ihm</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What each fault is</source>
   <translation>Was jeder Fehler ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What each of those faults is</source>
   <translation>Was jeder dieser Fehler ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What each solid is, in their order</source>
   <translation>Was jeder Körper ist, der Reihe nach</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What evens the light of the back's photograph: red, green, blue; empty for nothing</source>
   <translation>Was das Licht des Fotos der Rückseite ausgleicht: Rot, Grün, Blau; leer für nichts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What evens the light of the photograph: red, green, blue; empty for nothing</source>
   <translation>Was das Licht des Fotos ausgleicht: Rot, Grün, Blau; leer für nichts</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What files for machines are in</source>
   <translation>Worin Dateien für Maschinen sind</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What is let in about the match's centre</source>
   <translation>Was um die Mitte des Furnierbilds eingelassen ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>What is to be said, the gravest first</source>
   <translation>Was zu sagen ist, das Schwerste zuerst</translation>
  </message>
  <message>
   <location filename="veneerwb/host/listed.py" />
   <source>What it is a list of</source>
   <translation>Wovon es eine Liste ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What lengths are written in</source>
   <translation>Worin Längen geschrieben werden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What presses the veneer</source>
   <translation>Was das Furnier presst</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the adhesive's sheet asks for, in the unit of the gauge; 0: not looked up</source>
   <translation>Was das Merkblatt des Klebstoffs verlangt, in der Einheit des Manometers; 0: nicht nachgesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the backer is of</source>
   <translation>Woraus das Gegenfurnier ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the blade takes, on the waste side</source>
   <translation>Was die Klinge nimmt, auf der Abfallseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the border is of</source>
   <translation>Woraus der Fries ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the checks found, the gravest first</source>
   <translation>Was die Prüfungen fanden, das Schwerste zuerst</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the core is of</source>
   <translation>Woraus die Trägerplatte ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What the cost is in</source>
   <translation>Worin die Kosten stehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the crossbands are of</source>
   <translation>Woraus die Absperrfurniere sind</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>What the faces lie in and where the back's picture comes from</source>
   <translation>Worin die Flächen liegen und woher das Bild der Rückseite kommt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the inlay is of</source>
   <translation>Woraus die Einlage ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>What the leaves were chosen by</source>
   <translation>Wonach die Blätter gewählt wurden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What the leaves' registers follow: nothing, the figure, the log, or picked marks</source>
   <translation>Wonach die Lagen der Blätter sich richten: nichts, die Textur, der Stamm, oder gewählte Marken</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the line is of</source>
   <translation>Woraus die Ader ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the lipping is of</source>
   <translation>Woraus der Anleimer ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/listed.py" />
   <source>What the list was made from</source>
   <translation>Woraus die Liste gemacht wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/shop_pages.py" />
   <source>What the page is made from</source>
   <translation>Woraus die Seite gemacht ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>What the panel is built up of; the match is laid within its border</source>
   <translation>Woraus die Platte aufgebaut ist; das Furnierbild wird innerhalb ihres Frieses gelegt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>What the picture was made from</source>
   <translation>Woraus das Bild gemacht wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the price is for</source>
   <translation>Wofür der Preis gilt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>What the shape was made from</source>
   <translation>Woraus die Form gemacht wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>What the sheets were made from</source>
   <translation>Woraus die Blätter gemacht wurden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sheets.py" />
   <source>What the view shows on its page</source>
   <translation>Was die Ansicht auf ihrer Seite zeigt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>What the wedges of the test cut make, laid tip to tip</source>
   <translation>Was die Keile des Probeschnitts ergeben, Spitze an Spitze gelegt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What ties the back to the face: outline or marks</source>
   <translation>Was die Rückseite an die Vorderseite bindet: Umriss oder Marken</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>What was measured</source>
   <translation>Was gemessen wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>What was said of the photographs brought in</source>
   <translation>Was zu den eingelesenen Fotos gesagt wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>What was said when it was brought in</source>
   <translation>Was beim Einlesen gesagt wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>When Cut</source>
   <translation>Beim Schneiden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>When Taped</source>
   <translation>Beim Kleben</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>When these sheets were made</source>
   <translation>Wann diese Blätter gemacht wurden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>When this layout was first drawn</source>
   <translation>Wann dieser Legeplan zuerst gezeichnet wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Where it comes from, and its papers</source>
   <translation>Woher es kommt, und seine Papiere</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the bundle the match is cut (a wedge's tip), across the leaf</source>
   <translation>Wo auf dem Paket das Furnierbild geschnitten wird (die Spitze eines Keils), quer über das Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the bundle the match is cut (a wedge's tip), along the grain</source>
   <translation>Wo auf dem Paket das Furnierbild geschnitten wird (die Spitze eines Keils), längs der Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the top the wedges meet, along x</source>
   <translation>Wo auf der Platte die Keile sich treffen, längs x</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where on the top the wedges meet, along y</source>
   <translation>Wo auf der Platte die Keile sich treffen, längs y</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where pieces differ: all cut as one stack by what they take together, in lots by shape, or each piece by itself</source>
   <translation>Wo Teile verschieden sind: alle als ein Stapel nach dem, was sie zusammen brauchen, in Losen nach Form, oder jedes für sich</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Where the bundle's origin lies on this leaf, across</source>
   <translation>Wo der Ursprung des Pakets auf diesem Blatt liegt, quer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Where the bundle's origin lies on this leaf, along</source>
   <translation>Wo der Ursprung des Pakets auf diesem Blatt liegt, längs</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Where the match's centre lies: the centroid of the outline without its openings, or the origin of the sketch</source>
   <translation>Wo die Mitte des Furnierbilds liegt: im Schwerpunkt des Umrisses ohne seine Öffnungen, oder im Ursprung der Skizze</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Where the panel will stand, % relative humidity: the worst of the year</source>
   <translation>Wo die Platte stehen wird, % relative Luftfeuchte: das Ärgste im Jahr</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Where the panel will stand, degrees C</source>
   <translation>Wo die Platte stehen wird, Grad C</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Where the wedges' tip lies, across the leaf</source>
   <translation>Wo die Spitze der Keile liegt, quer über das Blatt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Where the wedges' tip lies, along the grain</source>
   <translation>Wo die Spitze der Keile liegt, längs der Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Whether it is known in which air the panel is made and will stand</source>
   <translation>Ob bekannt ist, in welcher Luft die Platte gemacht wird und stehen wird</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>Whether the test cut says that the template will do as it is</source>
   <translation>Ob der Probeschnitt sagt, dass die Schablone bleiben kann, wie sie ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Which form of this object was saved</source>
   <translation>In welcher Form dieses Objekt gespeichert wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Which host laid the page out</source>
   <translation>Welche Version von FreeCAD die Seite angelegt hat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Which host laid the sheets out</source>
   <translation>Welche Version von FreeCAD die Blätter angelegt hat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Which of the random orders; the same number gives the same</source>
   <translation>Welche der gemischten Folgen; dieselbe Zahl gibt dieselbe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Which positions show their leaf's back</source>
   <translation>Welche Plätze die Rückseite ihres Blatts zeigen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/shop_pages.py" />
   <source>Which sheet the page shows</source>
   <translation>Welches Zeichnungsblatt die Seite zeigt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Which side is the tight one</source>
   <translation>Welche Seite die geschlossene ist</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>Which way the axis points; 90 is along the grain</source>
   <translation>Wohin die Achse zeigt; 90 ist längs der Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Which way the cut (a wedge's axis) points; 90 is along the grain</source>
   <translation>Wohin der Schnitt (die Achse eines Keils) zeigt; 90 ist längs der Faser</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/stock.py" />
   <source>Which way the stack lay in the log</source>
   <translation>Wie herum der Stapel im Stamm lag</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Who answers for the drawing</source>
   <translation>Wer für die Zeichnung einsteht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Who approved it</source>
   <translation>Wer sie genehmigt hat</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Whose drawing it is</source>
   <translation>Wem die Zeichnung gehört</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>Whose photograph shows a leaf's back: the next leaf's, the previous one's, or its own</source>
   <translation>Wessen Foto die Rückseite eines Blatts zeigt: das des nächsten, des vorigen, oder sein eigenes</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>Why the last change was refused; empty if it was not</source>
   <translation>Warum die letzte Änderung abgelehnt wurde; leer, wenn sie es nicht wurde</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Why the sheets are to be refreshed</source>
   <translation>Warum die Blätter zu erneuern sind</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Width of a boat shape at its ends</source>
   <translation>Breite einer Bootsform an ihren Enden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Width of platen or bag</source>
   <translation>Breite von Pressplatte oder Sack</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Width of the band of veneer round the field; 0: none</source>
   <translation>Breite des Furnierbands um das Feld; 0: keines</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Width of the line between border and field; 0: none</source>
   <translation>Breite der Ader zwischen Fries und Feld; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>Width of the strip of solid wood round the core; 0: none</source>
   <translation>Breite der Leiste aus Massivholz um den Träger; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>Width of the tool that follows the line; 0: none</source>
   <translation>Breite des Werkzeugs, das der Linie folgt; 0: keine</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Width of the top in its middle</source>
   <translation>Breite der Platte in ihrer Mitte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Working copy of the photograph of the back, as seen from the face</source>
   <translation>Arbeitskopie des Fotos der Rückseite, von vorn gesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>Working copy of the photograph of the face</source>
   <translation>Arbeitskopie des Fotos der Vorderseite</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>g/m2 of a glue line; 0: not looked up</source>
   <translation>g/m2 einer Leimfuge; 0: nicht nachgesehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>m2 of the leaves that may be used, no faults</source>
   <translation>m2 der Blätter, die nutzbar sind, ohne Fehler</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>m2 of the rectangles round all leaves' outlines</source>
   <translation>m2 der Rechtecke um die Umrisse aller Blätter</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>mm rms that the two then lie apart</source>
   <translation>mm rms, die die beiden dann auseinander liegen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/leaf.py" />
   <source>mm that the middle may be off by that</source>
   <translation>mm, um die die Mitte dadurch falsch liegen kann</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>sequence, spread, or the leaf of each position: 1, 3, 2, 4</source>
   <translation>sequence, spread, oder das Blatt jedes Platzes: 1, 3, 2, 4</translation>
  </message>
 </context>
 <context>
  <name>Veneer</name>
  <message>
   <location filename="veneerwb/host/photos.py" />
   <source>A leaf has no photograph; give it one again.</source>
   <translation>Ein Blatt hat kein Foto; geben Sie ihm wieder eines.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>A saw cuts a stack between boards; say how thick these are.</source>
   <translation>Eine Säge schneidet einen Stapel zwischen Decklagen; sagen Sie, wie dick diese sind.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Add backs</source>
   <translation>Rückseiten hinzufügen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>An outline on a leaf has a corner whose place cannot be; undo, or draw it again.</source>
   <translation>Ein Umriss auf einem Blatt hat eine Ecke, deren Ort nicht sein kann; machen Sie es rückgängig, oder zeichnen Sie ihn noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>An outline on a leaf has only {corners} corners; give at least 3.</source>
   <translation>Ein Umriss auf einem Blatt hat nur {corners} Ecken; geben Sie mindestens 3.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Back: its light stays as photographed.</source>
   <translation>Rückseite: ihr Licht bleibt, wie es fotografiert ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Back: {note}</source>
   <translation>Rückseite: {note}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>Both bundles of the run are the same; choose another second one, or none.</source>
   <translation>Beide Pakete der Folge sind dasselbe; wählen Sie ein anderes zweites, oder keines.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>Bring in leaves</source>
   <translation>Blätter einlesen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Centre and axes, press, adhesive, order of the day.</source>
   <translation>Mitte und Achsen, Presse, Klebstoff, Ablauf des Tages.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Closing the ring</source>
   <translation>Ring schließen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Contents</source>
   <translation>Inhalt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Delete spot</source>
   <translation>Stelle löschen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Even light</source>
   <translation>Licht ausgleichen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Even light of backs</source>
   <translation>Licht der Rückseiten ausgleichen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Every piece, for a spreadsheet.</source>
   <translation>Jedes Teil, für eine Tabelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>How exact template and knife are was not said, so there is no sheet on closing the ring: Close the Ring reckons how much over to cut, never under.</source>
   <translation>Wie genau Schablone und Messer sind, wurde nicht gesagt, also gibt es kein Blatt zum Schließen des Rings: Ring schließen rechnet aus, wie viel größer zu schneiden ist, nie kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>How far the figure wanders is not measured; photograph two or three backs.</source>
   <translation>Wie weit die Textur wandert, ist nicht gemessen; fotografieren Sie zwei oder drei Rückseiten.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>How much over to cut; where and how to true.</source>
   <translation>Wie viel größer zu schneiden ist; wo und wie zu fügen ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/closing.py" />
   <source>It belongs to no match; link it to a radial one, or delete it.</source>
   <translation>Es gehört zu keinem Furnierbild; verknüpfen Sie es mit einem Sternbild, oder löschen Sie es.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>It could not be recomputed ({why}); undo the last change.</source>
   <translation>Es konnte nicht neu berechnet werden ({why}); machen Sie die letzte Änderung rückgängig.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>It has no faces; choose flat faces.</source>
   <translation>Es hat keine Flächen; wählen Sie ebene Flächen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/facing.py" />
   <source>It has no leaf, or the leaf is gone; choose a leaf.</source>
   <translation>Es hat kein Blatt, oder das Blatt ist weg; wählen Sie ein Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>It is not said how the photograph of the back of leaf {leaf} is to be made ready.</source>
   <translation>Es ist nicht gesagt, wie das Foto der Rückseite von Blatt {leaf} vorzubereiten ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>It was made by a newer version of this addon; update the addon to change it.</source>
   <translation>Es wurde mit einer neueren Fassung dieser Erweiterung gemacht; aktualisieren Sie die Erweiterung, um es zu ändern.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>Its page is gone; undo, or delete this drawing and make a new one.</source>
   <translation>Ihre Seite ist weg; machen Sie es rückgängig, oder löschen Sie diese Zeichnung und machen Sie eine neue.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Keep spot</source>
   <translation>Stelle merken</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Keep the figure's wander</source>
   <translation>Wandern der Textur merken</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>Leaf {leaf}</source>
   <translation>Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Leaf {leaf} has no register; register all leaves of the bundle together.</source>
   <translation>Blatt {leaf} hat keine Lage; richten Sie alle Blätter des Pakets zusammen aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Leaf {leaf} is missing from the bundle; undo, add it again, or choose another first leaf.</source>
   <translation>Blatt {leaf} fehlt im Paket; machen Sie es rückgängig, fügen Sie es wieder hinzu, oder wählen Sie ein anderes erstes Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaf {leaf} is missing from the bundle; undo, add it again, or choose other leaves by First or Order.</source>
   <translation>Blatt {leaf} fehlt im Paket; machen Sie es rückgängig, fügen Sie es wieder hinzu, oder wählen Sie andere Blätter durch First oder Order.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Leaf {leaf} was turned over: its photograph shows its back. Its face was not photographed, and until it is the same picture stands for it, in which the figure lies as it does on the back.</source>
   <translation>Blatt {leaf} wurde gewendet: sein Foto zeigt seine Rückseite. Seine Vorderseite wurde nicht fotografiert, und bis dahin steht dasselbe Bild für sie, auf dem die Textur liegt wie auf der Rückseite.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Leaf {leaf} was turned over: the photographs of its face and its back have changed places.</source>
   <translation>Blatt {leaf} wurde gewendet: die Fotos seiner Vorder- und Rückseite haben die Plätze getauscht.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/run.py" />
   <source>Leaves {leaves} are missing from the bundle; undo, add them again, or choose another first leaf.</source>
   <translation>Die Blätter {leaves} fehlen im Paket; machen Sie es rückgängig, fügen Sie sie wieder hinzu, oder wählen Sie ein anderes erstes Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>Leaves {leaves} are missing from the bundle; undo, add them again, or choose other leaves by First or Order.</source>
   <translation>Die Blätter {leaves} fehlen im Paket; machen Sie es rückgängig, fügen Sie sie wieder hinzu, oder wählen Sie andere Blätter durch First oder Order.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/panels.py" />
   <source>Make it again before anything is bought or cut by it.</source>
   <translation>Machen Sie sie neu, bevor danach etwas gekauft oder geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Name spot</source>
   <translation>Stelle benennen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Notes, plan, pieces, stack, section, lists, taping.</source>
   <translation>Hinweise, Draufsicht, Teile, Stapel, Schnitt, Listen, Fugen kleben.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Pick marks</source>
   <translation>Marken wählen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Picture of the top</source>
   <translation>Bild der Platte</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>Picture spot anew</source>
   <translation>Bild der Stelle erneuern</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Pin backs</source>
   <translation>Rückseiten stiften</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Register leaves</source>
   <translation>Blätter ausrichten</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Renumber leaves</source>
   <translation>Blätter umnummerieren</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>STOP, do not cut by this packet: {why}</source>
   <translation>HALT, nach dieser Mappe nicht schneiden: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>Say how the leaves lay</source>
   <translation>Sagen, wie die Blätter lagen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/closing.py" />
   <source>Say which wood it is, or how it moves: a number such as 0.0027, the change of width for each % of moisture.</source>
   <translation>Sagen Sie, welches Holz es ist oder wie es arbeitet: eine Zahl wie 0.0027, die Änderung der Breite je % Feuchte.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set faults</source>
   <translation>Fehler setzen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set faults through the bundle</source>
   <translation>Fehler durch das Paket setzen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set marks</source>
   <translation>Marken setzen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>Set usable area</source>
   <translation>Nutzbare Fläche setzen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Sheets</source>
   <translation>Zeichnungsblätter</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>Spots are chosen for radial matches, and {match} is another ({kind}); say where it is cut by the numbers of its panel.</source>
   <translation>Stellen werden für Sternbilder gewählt, und {match} ist etwas anderes ({kind}); sagen Sie durch die Zahlen seines Bedienfelds, wo es geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>Spots are chosen for wedges of one leaf on a plain round or many-sided top, and {match} is more than that; say where it is cut by the numbers of its panel.</source>
   <translation>Stellen werden für Keile aus einem Blatt auf einer einfachen runden oder vieleckigen Platte gewählt, und {match} ist mehr als das; sagen Sie durch die Zahlen seines Bedienfelds, wo es geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>Take leaves out</source>
   <translation>Blätter herausnehmen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Templates as DXF</source>
   <translation>Schablonen als DXF</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Templates as SVG</source>
   <translation>Schablonen als SVG</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Templates at 1:1</source>
   <translation>Schablonen 1:1</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>That failed for a reason the addon does not know ({why}); try it another way, or cancel.</source>
   <translation>Das schlug aus einem Grund fehl, den die Erweiterung nicht kennt ({why}); versuchen Sie es anders, oder brechen Sie ab.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>The back of leaf {leaf}</source>
   <translation>Die Rückseite von Blatt {leaf}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>The back of leaf {leaf} is as photographed.</source>
   <translation>Die Rückseite von Blatt {leaf} ist, wie sie fotografiert ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>The bench has no match; link it to one, or delete it.</source>
   <translation>Die Werkbank hat kein Furnierbild; verknüpfen Sie sie mit einem, oder löschen Sie sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/panels.py" />
   <source>The bill of materials in the spreadsheet is older than this panel.</source>
   <translation>Die Stückliste in der Tabelle ist älter als diese Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>The drawing has no match; link it to one, or delete it.</source>
   <translation>Die Zeichnung hat kein Furnierbild; verknüpfen Sie sie mit einem, oder löschen Sie sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>The finished top.</source>
   <translation>Die fertige Platte.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/photos.py" />
   <source>The leaf was given another photograph; read the leaf again.</source>
   <translation>Das Blatt bekam ein anderes Foto; lesen Sie das Blatt neu ein.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves are registered and follow the figure.</source>
   <translation>Die Blätter sind ausgerichtet und folgen der Textur.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves are registered and follow the log.</source>
   <translation>Die Blätter sind ausgerichtet und folgen dem Stamm.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves are registered and follow the marks.</source>
   <translation>Die Blätter sind ausgerichtet und folgen den Marken.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves have registers; it is not said what they follow.</source>
   <translation>Die Blätter haben Lagen; es ist nicht gesagt, wonach sie sich richten.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bundle.py" />
   <source>The leaves lie as photographed: a photograph that is shifted against the others shifts its piece.</source>
   <translation>Die Blätter liegen, wie sie fotografiert sind: ein Foto, das gegen die anderen verschoben ist, verschiebt sein Teil.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/panels.py" />
   <source>The match has no build-up; select it and build up its panel first.</source>
   <translation>Das Furnierbild hat keinen Aufbau; wählen Sie es und bauen Sie zuerst seine Platte auf.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>The match has no bundle; link it to a bundle or a stock.</source>
   <translation>Das Furnierbild hat kein Paket; verknüpfen Sie es mit einem Paket oder einem Vorrat.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/buildups.py" />
   <source>The movement {text!r:.40} cannot be read; write two numbers, radial and tangential, such as 0.0019 0.00274, or nothing to go by the material's name.</source>
   <translation>Das Arbeiten {text!r:.40} ist nicht lesbar; schreiben Sie zwei Zahlen, radial und tangential, wie 0.0019 0.00274, oder nichts, um nach dem Namen des Werkstoffs zu gehen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>The order {text!r} cannot be read; write sequence, spread, or leaf numbers such as 1, 3, 4, 2.</source>
   <translation>Die Reihenfolge {text!r} ist nicht lesbar; schreiben Sie sequence, spread oder Blattnummern wie 1, 3, 4, 2.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>The outline does not lie in one plane; a top is flat, so draw it flat.</source>
   <translation>Der Umriss liegt nicht in einer Ebene; eine Platte ist eben, zeichnen Sie ihn also flach.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>The outline has an edge that is but a point; draw it without that.</source>
   <translation>Der Umriss hat eine Kante, die nur ein Punkt ist; zeichnen Sie ihn ohne sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>The outline of what may be used of a leaf encloses nothing; undo, or draw it again.</source>
   <translation>Der Umriss des Nutzbaren eines Blatts umschließt nichts; machen Sie es rückgängig, oder zeichnen Sie ihn noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>The photograph of leaf {leaf} shows its other side; turn the leaf over first.</source>
   <translation>Das Foto von Blatt {leaf} zeigt seine andere Seite; wenden Sie zuerst das Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>The picture {file} could not be copied into the document; make room on the disk that holds {folder}, then try again.</source>
   <translation>Das Bild {file} konnte nicht ins Dokument kopiert werden; schaffen Sie Platz auf dem Datenträger, auf dem {folder} liegt, und versuchen Sie es noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>The register given for leaf {leaf} is that of its face; the leaf need not be turned over.</source>
   <translation>Die für Blatt {leaf} gegebene Lage ist die seiner Vorderseite; das Blatt muss nicht gewendet werden.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>The run has no bundle; choose a bundle or a stock of leaves.</source>
   <translation>Die Folge hat kein Paket; wählen Sie ein Paket oder einen Vorrat von Blättern.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>The sheet on closing the ring advises to cut every wedge {advised:.2f} degrees over; the templates of this packet are cut {over:.2f} degrees over.</source>
   <translation>Das Blatt zum Schließen des Rings empfiehlt, jeden Keil {advised:.2f} Grad größer zu schneiden; die Schablonen dieser Mappe sind {over:.2f} Grad größer.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>The stack, its cuts in order, what is left over.</source>
   <translation>Der Stapel, seine Schnitte der Reihe nach, was übrig bleibt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/match.py" />
   <source>The top cannot follow itself or what lies on it; choose another outline.</source>
   <translation>Die Platte kann nicht sich selbst folgen oder dem, was auf ihr liegt; wählen Sie einen anderen Umriss.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>The top is an outline and none is chosen; choose a sketch, a wire or a planar face.</source>
   <translation>Die Platte ist ein Umriss, und keiner ist gewählt; wählen Sie eine Skizze, einen Kantenzug oder eine ebene Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>There are {count} outlines on a leaf, and at most {most} can be kept; leave some out, or draw one round several.</source>
   <translation>Auf einem Blatt sind {count} Umrisse, und höchstens {most} lassen sich behalten; lassen Sie einige weg, oder zeichnen Sie einen um mehrere.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>There are {photos} photographs and {numbers} numbers; give each its own.</source>
   <translation>Es sind {photos} Fotos und {numbers} Nummern; geben Sie jedem seine eigene.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>There is a photograph of the back of leaf {leaf}, but none of its face; leave it out or add that of the face.</source>
   <translation>Es gibt ein Foto der Rückseite von Blatt {leaf}, aber keines seiner Vorderseite; lassen Sie es weg, oder fügen Sie das der Vorderseite hinzu.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/buildup.py" />
   <source>These parts belong to no match with a build-up; delete them.</source>
   <translation>Diese Teile gehören zu keinem Furnierbild mit Aufbau; löschen Sie sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/spot.py" />
   <source>This kept spot belongs to no match; link it to one, or delete it.</source>
   <translation>Diese gemerkte Stelle gehört zu keinem Furnierbild; verknüpfen Sie sie mit einem, oder löschen Sie sie.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>This list.</source>
   <translation>Diese Liste.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/spots.py" />
   <source>This top has no spot that could be kept.</source>
   <translation>Diese Platte hat keine Stelle, die zu merken wäre.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Tie backs</source>
   <translation>Rückseiten binden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Turn leaf end for end</source>
   <translation>Blatt Kopf gegen Fuß drehen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>Turn leaf over</source>
   <translation>Blatt wenden</translation>
  </message>
  <message>
   <location filename="veneerwb/host/laying.py" />
   <source>Two rings of {inner} and {outer} leaves need a list of {leaves}, those of the inner ring first; this one has {count}.</source>
   <translation>Zwei Ringe aus {inner} und {outer} Blättern brauchen eine Liste von {leaves}, die des inneren Rings zuerst; diese hat {count}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>What is chalked on every leaf before it is cut.</source>
   <translation>Was auf jedes Blatt geschrieben wird, bevor geschnitten wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>What is used, bought and left; what it costs; what to buy.</source>
   <translation>Was gebraucht, gekauft und übrig ist; was es kostet; was zu kaufen ist.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>What the panel takes, for a spreadsheet.</source>
   <translation>Was die Platte braucht, für eine Tabelle.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>Where the pin holes go on every leaf.</source>
   <translation>Wohin die Stiftlöcher auf jedem Blatt kommen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>at {angle:g} degrees</source>
   <translation>unter {angle:g} Grad</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>box</source>
   <translation>vier Spiegel</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>centre and butt</source>
   <translation>Mitte und Kopf</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>choose the faces again</source>
   <translation>wählen Sie die Flächen noch einmal</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>choose the faces again (in its place there is {faces})</source>
   <translation>wählen Sie die Flächen noch einmal (an ihrer Stelle ist {faces})</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>diamond</source>
   <translation>Raute</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>end match</source>
   <translation>Kopfsturz</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sequence.py" />
   <source>follows</source>
   <translation>richtet sich nach</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>herringbone</source>
   <translation>Fischgrät</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>in sequence</source>
   <translation>Messerfolge</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>it failed for a reason that the addon does not know ({why})</source>
   <translation>es misslang aus einem Grund, den die Erweiterung nicht kennt ({why})</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>it was laid out by another version of FreeCAD; refresh the sheets.</source>
   <translation>es wurde von einer anderen Version von FreeCAD angelegt; erneuern Sie die Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/base.py" />
   <source>no reason given</source>
   <translation>kein Grund genannt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/areas.py" />
   <source>place of a mark</source>
   <translation>Ort einer Marke</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>reverse box</source>
   <translation>vier Spiegel, quer</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>reverse diamond</source>
   <translation>Gegenraute</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>several ways</source>
   <translation>in mehreren Richtungen</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>side by side</source>
   <translation>in Reihe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>something changed; refresh the sheets.</source>
   <translation>etwas hat sich geändert; erneuern Sie die Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>spread out</source>
   <translation>verteilt</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>the match is now {revision}; refresh the sheets.</source>
   <translation>das Furnierbild hat jetzt den Stand {revision}; erneuern Sie die Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/bench.py" />
   <source>there is no match.</source>
   <translation>es gibt kein Furnierbild.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>this is a copy of {page}.</source>
   <translation>dies ist eine Kopie von {page}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>two rings</source>
   <translation>zwei Ringe</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>upright</source>
   <translation>aufrecht</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bills.py" />
   <source>volume l</source>
   <translation>Rauminhalt l</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{count} parts of {name} are chosen; choose one face.</source>
   <translation>Von {name} sind {count} Teile gewählt; wählen Sie eine Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/known_faces.py" />
   <source>{faces} is gone with what it belonged to; undo, or choose the faces again.</source>
   <translation>{faces} ist mit dem weg, wozu es gehörte; machen Sie es rückgängig, oder wählen Sie die Flächen noch einmal.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} cannot be a panel: {error}</source>
   <translation>{face} kann keine Front sein: {error}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} has no size; choose a larger face.</source>
   <translation>{face} hat keine Größe; wählen Sie eine größere Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is another face now; {instead}.</source>
   <translation>{face} ist jetzt eine andere Fläche; {instead}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is gone; {instead}.</source>
   <translation>{face} ist weg; {instead}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is no face; choose flat faces.</source>
   <translation>{face} ist keine Fläche; wählen Sie ebene Flächen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} is not flat; choose flat faces.</source>
   <translation>{face} ist nicht eben; wählen Sie ebene Flächen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} is tilted by {turn} degrees against {first}; a run lies in one plane, so choose faces of one plane and one side.</source>
   <translation>{face} ist um {turn} Grad gegen {first} gekippt; eine Folge liegt in einer Ebene, wählen Sie also Flächen einer Ebene und einer Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} lies {off} off the plane of {first}; a run lies in one plane, so choose faces of one plane and one side.</source>
   <translation>{face} liegt {off} neben der Ebene von {first}; eine Folge liegt in einer Ebene, wählen Sie also Flächen einer Ebene und einer Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{face} looks the other way than {first}; a run lies in one plane, so choose faces of one plane and one side.</source>
   <translation>{face} schaut anders herum als {first}; eine Folge liegt in einer Ebene, wählen Sie also Flächen einer Ebene und einer Seite.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{face} of {owner}</source>
   <translation>{face} von {owner}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{file} could not be saved, there was no room for all of it. Make room, or save it elsewhere, before you close it.</source>
   <translation>{file} konnte nicht gespeichert werden, es war nicht Platz für alles. Schaffen Sie Platz, oder speichern Sie woanders, bevor Sie das Dokument schließen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{file} could not be saved, there was no room for all of it; it is as it was saved before. Make room, or save it elsewhere, before you close it.</source>
   <translation>{file} konnte nicht gespeichert werden, es war nicht Platz für alles; die Datei ist, wie sie zuletzt gespeichert wurde. Schaffen Sie Platz, oder speichern Sie woanders, bevor Sie das Dokument schließen.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/backs.py" />
   <source>{file} would be the back of leaf {leaf}, which the bundle does not have; name it by its leaf's number, or choose it for one leaf.</source>
   <translation>{file} wäre die Rückseite von Blatt {leaf}, das das Paket nicht hat; benennen Sie sie nach der Nummer ihres Blatts, oder wählen Sie sie für ein einzelnes Blatt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>{leaf} has a register of numbers that cannot be; undo, or register its bundle again.</source>
   <translation>{leaf} hat eine Lage aus Zahlen, die nicht sein können; machen Sie es rückgängig, oder richten Sie das Paket noch einmal aus.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/values.py" />
   <source>{leaf} has no photograph; choose one in its property {property}, or bring its leaves in again.</source>
   <translation>{leaf} hat kein Foto; wählen Sie eines in seiner Eigenschaft {property}, oder lesen Sie seine Blätter noch einmal ein.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>{match} was refused: {why}</source>
   <translation>{match} wurde abgelehnt: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{name} at 1:1 on {paper}; print at 100 %.</source>
   <translation>{name} 1:1 auf {paper}; mit 100 % drucken.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} crosses itself; draw it without crossing.</source>
   <translation>{name} kreuzt sich selbst; zeichnen Sie es ohne Kreuzung.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} does not lie in one plane; a top is flat, so draw its outline flat.</source>
   <translation>{name} liegt nicht in einer Ebene; eine Platte ist eben, zeichnen Sie den Umriss also flach.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} does not lie in one plane; draw it flat.</source>
   <translation>{name} liegt nicht in einer Ebene; zeichnen Sie es flach.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} encloses nothing, seen from above; draw it on the XY plane.</source>
   <translation>{name} umschließt von oben gesehen nichts; zeichnen Sie es auf der XY-Ebene.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{name} for a machine or a printer, in mm.</source>
   <translation>{name} für eine Maschine oder einen Drucker, in mm.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{name} for a machine, in {unit}.</source>
   <translation>{name} für eine Maschine, in {unit}.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{name} has lost its picture {file}; the document is saved without it.</source>
   <translation>{name} hat sein Bild {file} verloren; das Dokument wird ohne es gespeichert.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/faces.py" />
   <source>{name} has no end, or is larger than any piece of furniture; draw it smaller.</source>
   <translation>{name} hat kein Ende oder ist größer als jedes Möbel; zeichnen Sie es kleiner.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} has no lines; draw one closed outline in it.</source>
   <translation>{name} hat keine Linien; zeichnen Sie einen geschlossenen Umriss hinein.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} has no {part} any more; choose its outline anew.</source>
   <translation>{name} hat kein {part} mehr; wählen Sie den Umriss neu.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} has {count} faces; choose the one that is to be the top.</source>
   <translation>{name} hat {count} Flächen; wählen Sie die, die die Platte sein soll.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} holds two outlines beside each other; leave one, or choose the edges of one.</source>
   <translation>{name} enthält zwei Umrisse nebeneinander; lassen Sie einen, oder wählen Sie die Kanten von einem.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} is a solid; choose a sketch, a wire or a flat face.</source>
   <translation>{name} ist ein Körper; wählen Sie eine Skizze, einen Kantenzug oder eine ebene Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/sketches.py" />
   <source>{name} is a straight line; draw an outline that closes.</source>
   <translation>{name} ist eine gerade Linie; zeichnen Sie einen Umriss, der sich schließt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} is not closed; join the ends of its lines.</source>
   <translation>{name} ist nicht geschlossen; verbinden Sie die Enden der Linien.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>{name} is not laid from {bundle}, so it cannot be cut together with {match}; take it out of Together.</source>
   <translation>{name} ist nicht aus {bundle} gelegt und kann nicht mit {match} zusammen geschnitten werden; nehmen Sie es aus Together heraus.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/outlines.py" />
   <source>{name} shows no outline; choose a sketch, a wire or a flat face.</source>
   <translation>{name} zeigt keinen Umriss; wählen Sie eine Skizze, einen Kantenzug oder eine ebene Fläche.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bringing_in.py" />
   <source>{name} uses these leaves, so that they cannot be taken out; delete it first, or keep them.</source>
   <translation>{name} gebraucht diese Blätter, sie können also nicht herausgenommen werden; löschen Sie es zuerst, oder behalten Sie die Blätter.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>{name} was refused, and its last good layout is shown: {why}</source>
   <translation>{name} wurde abgelehnt, und der letzte gute Legeplan wird gezeigt: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/objects/drawing.py" />
   <source>{name} was refused, and no layout of it stands yet: {why}</source>
   <translation>{name} wurde abgelehnt, und es gibt noch keinen Legeplan davon: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/bench.py" />
   <source>{name} was refused, nothing can be cut by it: {why}</source>
   <translation>{name} wurde abgelehnt, danach kann nichts geschnitten werden: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/keeping.py" />
   <source>{name}: the picture {file} had gone and was taken out of the saved document.</source>
   <translation>{name}: das Bild {file} war fort und wurde aus dem gespeicherten Dokument geholt.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{number}: {face}, leaf {leaves}, grain {way}</source>
   <translation>{number}: {face}, Blatt {leaves}, Faser {way}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/runs.py" />
   <source>{number}: {face}, leaves {leaves}, grain {way}</source>
   <translation>{number}: {face}, Blätter {leaves}, Faser {way}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>{photo} shows no background round the leaf; bring the leaves in again and choose there how their light is evened.</source>
   <translation>{photo} zeigt keinen Grund um das Blatt; lesen Sie die Blätter noch einmal ein und wählen Sie dort, wie ihr Licht ausgeglichen wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>{photo} shows wood beside what is found as the leaf; bring the leaves in again and choose there how their light is evened.</source>
   <translation>{photo} zeigt Holz neben dem, was als Blatt gefunden ist; lesen Sie die Blätter noch einmal ein und wählen Sie dort, wie ihr Licht ausgeglichen wird.</translation>
  </message>
  <message>
   <location filename="veneerwb/host/light.py" />
   <source>{photo}: {why}</source>
   <translation>{photo}: {why}</translation>
  </message>
  <message>
   <location filename="veneerwb/host/packet.py" />
   <source>{title}, top {top}</source>
   <translation>{title}, Platte {top}</translation>
  </message>
 </context>
</TS>
