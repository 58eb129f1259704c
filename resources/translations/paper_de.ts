<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <source>all of the year, {days}</source>
        <translation>das ganze Jahr, {days}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <location filename="gardencanvas/paper/bedmap/making.py"/>
        <source>all that is planted in it</source>
        <translation>alles, was darin gepflanzt ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <location filename="gardencanvas/paper/bedmap/making.py"/>
        <source>as on {days}</source>
        <translation>wie am {days}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <source>What is planted stands on the next page.</source>
        <translation>Was gepflanzt ist, steht auf der nächsten Seite.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <source>Nothing is planted here.</source>
        <translation>Hier ist nichts gepflanzt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <location filename="gardencanvas/paper/bedmap/overview.py"/>
        <source>what is planted</source>
        <translation>was gepflanzt ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <location filename="gardencanvas/paper/bedmap/strip.py"/>
        <source>{page} of {pages}</source>
        <translation>{page} von {pages}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <source>canes, posts</source>
        <translation>Stäbe, Pfosten</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/making.py"/>
        <source>There is no bed in this layout yet: draw one first.</source>
        <translation>In diesem Anbauplan gibt es noch kein Beet: zuerst eines zeichnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/making.py"/>
        <source>No bed is chosen: choose one at least.</source>
        <translation>Kein Beet gewählt: mindestens eines wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/overview.py"/>
        <source>nothing planted</source>
        <translation>nichts gepflanzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>the {wind} edge</source>
        <translation>Rand im {wind}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>the {wind} side</source>
        <translation>äußersten Punkt im {wind}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>the {wind} end</source>
        <translation>Ende im {wind}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Rows turned by {angle}°; the first plant {point}.</source>
        <translation>Reihen um {angle}° gedreht; die erste Pflanze {point}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>{at} from {edge}, {first} from {end}.</source>
        <translation>{at} vom {edge}, {first} vom {end}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>{rows}; {plants}.</source>
        <translation>{rows}; {plants}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>first plant {first} from {end}, then every {every}</source>
        <translation>erste Pflanze {first} vom {end}, dann alle {every}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>first plant {first} from {end}, then every {every}; every second row half a spacing on</source>
        <translation>erste Pflanze {first} vom {end}, dann alle {every}; jede zweite Reihe um einen halben Abstand versetzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>first plant {first} from {end}, then every {every}; rows begin as drawn</source>
        <translation>erste Pflanze {first} vom {end}, dann alle {every}; Reihen beginnen wie gezeichnet</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Row across the bed {at} from {edge}</source>
        <translation>Reihe quer zum Beet {at} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Row {at} from {edge}</source>
        <translation>Reihe {at} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Rows across the bed {at} from {edge}</source>
        <translation>Reihen quer zum Beet {at} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Rows {at} from {edge}</source>
        <translation>Reihen {at} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>{n} rows, {every} apart, the first {at} from {edge}</source>
        <translation>{n} Reihen im Abstand von {every}, die erste {at} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>{n} rows across the bed, {every} apart, the first {at} from {edge}</source>
        <translation>{n} Reihen quer zum Beet im Abstand von {every}, die erste {at} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>A ring {across} across round a point {point}; every {every} round it.</source>
        <translation>Ein Ring von {across} Durchmesser um einen Punkt {point}; ringsum alle {every}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>All round, every {every}; the first plant {point}.</source>
        <translation>Ringsum, alle {every}; die erste Pflanze {point}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Along a line of {length}, every {every}; the first plant {point}.</source>
        <translation>Entlang einer Linie von {length}, alle {every}; die erste Pflanze {point}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Single plants, see the drawing: {low} to {high} from {end}, {near} to {far} from {edge}.</source>
        <translation>Einzelne Pflanzen, siehe Zeichnung: {low} bis {high} vom {end}, {near} bis {far} vom {edge}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>Scattered, see the drawing: {low} to {high} from {end}, {near} to {far} from {edge}.</source>
        <translation>Verstreut, siehe Zeichnung: {low} bis {high} vom {end}, {near} bis {far} vom {edge}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/placing.py"/>
        <source>{along} from {end}, {across} from {edge}</source>
        <translation>{along} vom {end}, {across} vom {edge}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>came up</source>
        <translation>aufgegangen</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>Watch: {watch}</source>
        <translation>Achten auf: {watch}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>Note: {note}</source>
        <translation>Notiz: {note}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>Varieties, evenly mixed: {varieties}.</source>
        <translation>Sorten, gleichmäßig gemischt: {varieties}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>Varieties, one after the other: {varieties}.</source>
        <translation>Sorten im Wechsel: {varieties}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>And {n} more.</source>
        <translation>Und {n} weitere.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <source>Caution. {hazards} Follow local rules and qualified advice.</source>
        <translation>Vorsicht. {hazards} Es gelten die örtlichen Vorschriften und fachkundiger Rat.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/sheets.py"/>
        <source>{what}, sheet {sheet}</source>
        <translation>{what}, Blatt {sheet}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/sheets.py"/>
        <source>sheet {sheet}</source>
        <translation>Blatt {sheet}</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/paper/bedmap/sheets.py"/>
        <source>{scale} on {n} sheets</source>
        <translation>
            <numerusform>{scale} auf {n} Blatt</numerusform>
            <numerusform>{scale} auf {n} Blättern</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/sheets.py"/>
        <source>neighbouring sheets overlap by {mm} mm: lay dashed line on frame</source>
        <translation>Nachbarblätter überlappen um {mm} mm: gestrichelte Linie auf den Rahmen legen</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/sheets.py"/>
        <source>{what}: how the sheets lie</source>
        <translation>{what}: Lage der Blätter</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/paper/bedmap/strip.py"/>
        <source>every {every}, {n} plants. Print at 100 %, not “fit to page”.</source>
        <translation>
            <numerusform>alle {every}, {n} Pflanze. Mit 100 % drucken, nicht „an Seite anpassen“.</numerusform>
            <numerusform>alle {every}, {n} Pflanzen. Mit 100 % drucken, nicht „an Seite anpassen“.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/strip.py"/>
        <source>Cut the strips out and lay each one’s left end on the dashed line of the one before.</source>
        <translation>Die Streifen ausschneiden und jeweils mit dem linken Ende auf die gestrichelte Linie des vorigen legen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/strip.py"/>
        <source>{what}, strip {number} of {count}</source>
        <translation>{what}, Streifen {number} von {count}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/strip.py"/>
        <source>Check: this line is 100 mm long</source>
        <translation>Prüfen: Diese Linie ist 100 mm lang</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/strip.py"/>
        <source>the next strip begins here</source>
        <translation>hier beginnt der nächste Streifen</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <source>crop, variety</source>
        <translation>Kultur, Sorte</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <source>plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <source>every</source>
        <translation>alle</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <source>harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <source>fit</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <source>shares with</source>
        <translation>teilt mit</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/document.py"/>
        <source>{file} could not be written: no PDF can be made here.</source>
        <translation>{file} konnte nicht geschrieben werden: Hier lässt sich kein PDF erzeugen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/document.py"/>
        <source>The printer takes nothing now: is it connected and switched on?</source>
        <translation>Der Drucker nimmt jetzt nichts an: angeschlossen und eingeschaltet?</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/document.py"/>
        <source>The printer took some pages and then no more.</source>
        <translation>Der Drucker nahm einige Seiten und dann keine mehr.</translation>
    </message>
</context>
</TS>
