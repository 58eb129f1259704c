<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Canvas</name>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>shares</source>
        <translation>teilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>strains</source>
        <translation>belastet</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>clashes</source>
        <translation>unverträglich</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>Draw your first bed</source>
        <translation>Das erste Beet zeichnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>Press B and drag, or type its measures, such as 3.6 x 1.2, and Enter.
Then drag a crop from the seed tin into it.</source>
        <translation>B drücken und ziehen oder die Maße tippen, etwa 3,6 x 1,2, dann Eingabe.
Dann eine Kultur aus der Saatgutkiste hineinziehen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Nothing is selected.</source>
        <translation>Nichts ausgewählt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Nothing changed: what is locked stays as it is.</source>
        <translation>Nichts geändert: Gesperrtes bleibt, wie es ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <location filename="gardencanvas/canvas/tools/move.py"/>
        <source>Move {0}</source>
        <translation>{0} verschieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <location filename="gardencanvas/canvas/tools/turn.py"/>
        <source>Turn {0}</source>
        <translation>{0} drehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Delete {0}</source>
        <translation>{0} löschen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Duplicate {0}</source>
        <translation>{0} duplizieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>{0} plantings</source>
        <translation>{0} Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>{0} beds</source>
        <translation>{0} Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>{0} things</source>
        <translation>{0} Dinge</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>round bed</source>
        <translation>Rundbeet</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>keyhole bed</source>
        <translation>Schlüssellochbeet</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>bed with curved edges</source>
        <translation>Beet mit runden Kanten</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>hole in a bed</source>
        <translation>Aussparung im Beet</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>ring of canes</source>
        <translation>Stabring</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>stake</source>
        <translation>Einzelstab</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>row of canes</source>
        <translation>Stabreihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>net</source>
        <translation>Ranknetz</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>trellis</source>
        <translation>Spalier</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>fleece</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>mesh</source>
        <translation>Schutznetz</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>cloche</source>
        <translation>Haube</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>frame</source>
        <translation>Frühbeet</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>wall</source>
        <translation>Mauer</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>fence</source>
        <translation>Zaun</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>hedge</source>
        <translation>Hecke</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>shed</source>
        <translation>Schuppen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>Bed {0}</source>
        <translation>Beet {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/pane.py"/>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/pane.py"/>
        <source>The drawn plan. The outline lists the same beds and plantings in words.</source>
        <translation>Der gezeichnete Plan. Die Übersicht nennt dieselben Beete und Pflanzungen in Worten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/ask_place.py"/>
        <source>Click on open ground, or drag a box over it, to see what fits there.</source>
        <translation>Auf freien Boden klicken oder einen Rahmen darüber ziehen, um zu sehen, was dort passt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop.py"/>
        <source>Drag the background picture, or a corner to turn it. Arrows move it by 1 cm, R turns it by 1°; Shift: by more, or back. Esc ends.</source>
        <translation>Hintergrundbild ziehen, an einer Ecke drehen. Pfeile bewegen um 1 cm, R dreht um 1°; Umschalt: weiter oder zurück. Esc beendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop.py"/>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>There is no background picture yet.</source>
        <translation>Es gibt noch kein Hintergrundbild.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop.py"/>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>The background picture is locked; unlock it first.</source>
        <translation>Das Hintergrundbild ist gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop.py"/>
        <location filename="gardencanvas/canvas/tools/turn.py"/>
        <source>Turned by {0}°</source>
        <translation>Um {0}° gedreht</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop.py"/>
        <source>Turn the background picture</source>
        <translation>Hintergrundbild drehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop.py"/>
        <source>Move the background picture</source>
        <translation>Hintergrundbild verschieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>Click a point of the picture whose distance to another you know.</source>
        <translation>Einen Punkt des Bilds anklicken, dessen Abstand zu einem anderen bekannt ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>Click the second point. Backspace takes the first one back.</source>
        <translation>Den zweiten Punkt anklicken. Rücktaste nimmt den ersten zurück.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>Type how far the two points lie apart, such as 4.20 m or 13′ 9″, and press Enter.</source>
        <translation>Tippen, wie weit die Punkte auseinanderliegen, etwa 4,20 m, dann Eingabe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>= ? (type it)</source>
        <translation>= ? (tippen)</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>“{0}” is no length. Write 4.20 m, 420 cm or 13′ 9″.</source>
        <translation>„{0}“ ist keine Länge. 4,20 m oder 420 cm schreiben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>Scale the background picture</source>
        <translation>Maßstab des Hintergrundbilds setzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/backdrop_scale.py"/>
        <source>The two points lie {0} apart now, {1} before. The picture is locked so that it stays there.</source>
        <translation>Die Punkte liegen jetzt {0} auseinander, vorher {1}. Das Bild ist gesperrt, damit es dort bleibt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/carry_over.py"/>
        <source>Copy {0} into {1}</source>
        <translation>{0} in {1} kopieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/carry_over.py"/>
        <source>It is there already, just so.</source>
        <translation>Es ist dort schon genau so.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Draw {0}</source>
        <translation>{0} zeichnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <source>Drag a bed, or type its measures, such as 3.6 x 1.2, and Enter. Shift: square.</source>
        <translation>Ein Beet aufziehen oder die Maße tippen, etwa 3,6 x 1,2, dann Eingabe. Umschalt: Quadrat.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <source>Click corner after corner, or type the length of a side and Enter; Enter or a double click closes the bed, Backspace takes one back.</source>
        <translation>Ecke für Ecke klicken oder die Länge einer Seite tippen, dann Eingabe; Eingabe oder Doppelklick schließt das Beet, Rücktaste nimmt eine zurück.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <source>A bed needs three corners or more.</source>
        <translation>Ein Beet braucht drei oder mehr Ecken.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Drag from corner to corner: {0}. Esc ends.</source>
        <translation>Von Ecke zu Ecke ziehen: {0}. Esc beendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Drag from end to end: {0}; type its length. Shift: level. Esc ends.</source>
        <translation>Von Ende zu Ende ziehen: {0}; Länge tippen. Umschalt: gerade. Esc beendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Drag from the middle to the rim: {0}; type its radius. Esc ends.</source>
        <translation>Von der Mitte zum Rand ziehen: {0}; Radius tippen. Esc beendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Click where it stands: {0}. Esc ends.</source>
        <translation>Klicken, wo es steht: {0}. Esc beendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Click point after point: {0}, or type a length and Enter. Enter or a double click ends it, Backspace takes one back.</source>
        <translation>Punkt für Punkt klicken: {0}, oder eine Länge tippen, dann Eingabe. Eingabe oder Doppelklick beendet, Rücktaste nimmt einen zurück.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>A hole is cut into a bed: begin inside one.</source>
        <translation>Eine Aussparung wird aus einem Beet geschnitten: in einem Beet beginnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/fill_place.py"/>
        <source>Click into the bed to fill, or drag a box over a part of it.</source>
        <translation>In das Beet klicken, das zu füllen ist, oder einen Rahmen über einen Teil ziehen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/measure.py"/>
        <source>Drag to measure a distance. Shift keeps the line level or upright.</source>
        <translation>Ziehen misst eine Strecke. Umschalt hält die Linie waagerecht oder senkrecht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/move.py"/>
        <source>Copy {0}</source>
        <translation>{0} kopieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/pan.py"/>
        <source>Drag to move the plan. Space or the middle button do so with any tool.</source>
        <translation>Ziehen verschiebt den Plan. Leertaste oder mittlere Maustaste tun es mit jedem Werkzeug.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>1 row, 2 block, 3 single, 4 strip, 5 staggered, 6 ring, 7 edging, 8 drift, 9 between the rows. 0: it came up by itself. + and − space it, arrows move it, Enter puts it down, Esc gives up.</source>
        <translation>1 Reihe, 2 Block, 3 einzeln, 4 Streifen, 5 versetzt, 6 Ring, 7 Einfassung, 8 Drift, 9 zwischen den Reihen. 0: von selbst aufgegangen. + und − ändern den Abstand, Pfeile bewegen, Eingabe legt ab, Esc bricht ab.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add row of {0}</source>
        <translation>Reihe hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add block of {0}</source>
        <translation>Block hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add one {0}</source>
        <translation>Einzeln hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add strip of {0}</source>
        <translation>Streifen hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add staggered block of {0}</source>
        <translation>Versetzten Block hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add ring of {0}</source>
        <translation>Ring hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add edging of {0}</source>
        <translation>Einfassung hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add drift of {0}</source>
        <translation>Drift hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add {0} between the rows</source>
        <translation>Zwischen den Reihen hinzufügen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Mark {0} that came up by itself</source>
        <translation>Von selbst aufgegangen: {0} markieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>{0} stands outside any bed.</source>
        <translation>{0} steht außerhalb der Beete.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/reshape.py"/>
        <source>typed: {0}</source>
        <translation>getippt: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/reshape.py"/>
        <source>type a measure to make it exact</source>
        <translation>Maß tippen, um es genau zu machen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/reshape.py"/>
        <source>Reshape {0}</source>
        <translation>{0} umformen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/select.py"/>
        <source>Click to select, drag to move, Alt+drag to copy, double click for single plants. A bed moves once it is selected.</source>
        <translation>Klicken wählt aus, Ziehen verschiebt, Alt+Ziehen kopiert, Doppelklick für einzelne Pflanzen. Ein Beet bewegt sich erst, wenn es ausgewählt ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/select.py"/>
        <source>{0} is locked. Select it in the outline, or right-click to unlock.</source>
        <translation>{0} ist gesperrt. In der Übersicht auswählen oder mit Rechtsklick entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Click a plant to leave it out, an empty place to put it back, drag one to move it. Tab walks, Space leaves out, arrows move, Esc ends.</source>
        <translation>Klick auf eine Pflanze lässt sie aus, auf einen leeren Platz setzt sie zurück, Ziehen verschiebt. Tab geht weiter, Leertaste lässt aus, Pfeile bewegen, Esc beendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Select one planting that is not locked first.</source>
        <translation>Zuerst eine Pflanzung auswählen, die nicht gesperrt ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Move one plant</source>
        <translation>Eine Pflanze verschieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Put one plant back</source>
        <translation>Eine Pflanze zurücksetzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Leave one plant out</source>
        <translation>Eine Pflanze auslassen</translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Plant {0} of {1}</source>
        <translation>Pflanze {0} von {1}</translation>
    </message>
</context>
</TS>
