<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <location filename="gardencanvas/app/shelf.py"/>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <location filename="gardencanvas/files/reading.py"/>
        <location filename="gardencanvas/files/stamps.py"/>
        <source>{file} cannot be read: {why}.</source>
        <translation>{file} ist nicht lesbar: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shelf.py"/>
        <location filename="gardencanvas/crops/marked.py"/>
        <location filename="gardencanvas/crops/own.py"/>
        <location filename="gardencanvas/files/writing.py"/>
        <source>{file} could not be written: {why}.</source>
        <translation>{file} konnte nicht geschrieben werden: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/rows.py"/>
        <location filename="gardencanvas/words/plain.py"/>
        <source>{crop} “{variety}”</source>
        <translation>{crop} „{variety}“</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/homes.py"/>
        <location filename="gardencanvas/files/keeping/sittings.py"/>
        <location filename="gardencanvas/files/keeping/versions.py"/>
        <source>{folder} cannot be used: {why}.</source>
        <translation>{folder} lässt sich nicht benutzen: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <source>{file} is too large for a garden.</source>
        <translation>{file} ist zu groß für einen Garten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <source>{file} is damaged: it does not hold what was written to it.</source>
        <translation>{file} ist beschädigt: Sie enthält nicht, was hineingeschrieben wurde.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <source>{name} is not a journal.</source>
        <translation>{name} ist keine Sicherung.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <source>{name} is not a journal that this version can read.</source>
        <translation>{name} ist keine Sicherung, die diese Version lesen kann.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <source>{name} is damaged: {written!r} is no time.</source>
        <translation>{name} ist beschädigt: {written!r} ist keine Zeit.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/journals.py"/>
        <source>{name} is damaged: it does not say when it was written.</source>
        <translation>{name} ist beschädigt: Es fehlt, wann sie geschrieben wurde.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/keeping/sittings.py"/>
        <source>{file} cannot be removed: {why}.</source>
        <translation>{file} lässt sich nicht entfernen: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{file} is a folder, not a garden file.</source>
        <translation>{file} ist ein Ordner, keine Gartendatei.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{file} is not a file.</source>
        <translation>{file} ist keine Datei.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>There is no file {path}.</source>
        <translation>Die Datei {path} gibt es nicht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{file} is {size:.0f} MB; a garden file has at most {most:.0f} MB.</source>
        <translation>{file} hat {size:.0f} MB; eine Gartendatei hat höchstens {most:.0f} MB.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} holds more than {most:,} parts, which no garden does.</source>
        <translation>{name} enthält mehr als {most:,} Teile; das hat kein Garten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is not a garden file: it has no format number.</source>
        <translation>{name} ist keine Gartendatei: Die Formatnummer fehlt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} was written by a newer Garden Canvas (format {number}; this one reads up to {known}). Update the program to open it.</source>
        <translation>{name} wurde von einem neueren Garden Canvas geschrieben (Format {number}; dieses liest bis {known}). Zum Öffnen das Programm aktualisieren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} asks for more than {most:,} plants in drifts.</source>
        <translation>{name} verlangt mehr als {most:,} Pflanzen in Drifts.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is nested too deeply to be a garden file.</source>
        <translation>{name} ist für eine Gartendatei zu tief verschachtelt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is not a sound garden file: {why}</source>
        <translation>{name} ist keine einwandfreie Gartendatei: {why}</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is empty.</source>
        <translation>{name} ist leer.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is not a garden file: it is not text in UTF-8.</source>
        <translation>{name} ist keine Gartendatei: kein Text in UTF-8.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is not a garden file, or was cut short: line {line}, column {column}: {why}.</source>
        <translation>{name} ist keine Gartendatei oder wurde abgeschnitten: Zeile {line}, Spalte {column}: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is not a garden file: {why}.</source>
        <translation>{name} ist keine Gartendatei: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} is not a garden file.</source>
        <translation>{name} ist keine Gartendatei.</translation>
    </message>
    <message>
        <location filename="gardencanvas/files/reading.py"/>
        <source>{name} names a crop or variety that is not known here: {unknown}.</source>
        <translation>{name} nennt eine Kultur oder Sorte, die hier nicht bekannt ist: {unknown}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/arranging.py"/>
        <source>Select at least three things to give them equal gaps.</source>
        <translation>Für gleiche Abstände mindestens drei Dinge auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/arranging.py"/>
        <source>{columns} by {rows} is not allowed: at least 1 by 1, and at most {most} copies.</source>
        <translation>{columns} mal {rows} geht nicht: mindestens 1 mal 1 und höchstens {most} Kopien.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/arranging.py"/>
        <location filename="gardencanvas/garden/clipping.py"/>
        <source>Select something first.</source>
        <translation>Zuerst etwas auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/clipping.py"/>
        <source>The clipboard holds nothing that was copied from a garden.</source>
        <translation>Die Zwischenablage enthält nichts, was aus einem Garten kopiert wurde.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/clipping.py"/>
        <source>What the clipboard holds was cut short.</source>
        <translation>Der Inhalt der Zwischenablage ist abgeschnitten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/clipping.py"/>
        <source>What the clipboard holds was copied from a newer Garden Canvas; update this one.</source>
        <translation>Der Inhalt der Zwischenablage stammt aus einem neueren Garden Canvas; dieses aktualisieren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/clipping.py"/>
        <source>What the clipboard holds is not sound: {why}</source>
        <translation>Der Inhalt der Zwischenablage ist fehlerhaft: {why}</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/clipping.py"/>
        <source>The crop {crop!r} of the clipping is not known in this garden.</source>
        <translation>Die Kultur {crop!r} aus der Zwischenablage ist in diesem Garten nicht bekannt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/differing.py"/>
        <source>Select a bed or a planting to take over first.</source>
        <translation>Zuerst ein Beet oder eine Pflanzung zum Übernehmen auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/differing.py"/>
        <source>“{name}” is locked in “{layout}”. Unlock it there first.</source>
        <translation>„{name}“ ist in „{layout}“ gesperrt. Zuerst dort entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/edits.py"/>
        <source>There is nothing with the id {id!r} in this layout.</source>
        <translation>In diesem Anbauplan gibt es nichts mit der Kennung {id!r}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/edits.py"/>
        <source>It is locked and stays where it is; unlock it first.</source>
        <translation>Gesperrt, bleibt an seinem Platz; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/laying.py"/>
        <source>{bed} is too small for an edging at this spacing.</source>
        <translation>{bed} ist zu klein für eine Einfassung in diesem Abstand.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/laying.py"/>
        <source>An edging goes along a bed's rim or a path; there is none near here.</source>
        <translation>Eine Einfassung läuft an einem Beetrand oder Weg entlang; hier ist keiner in der Nähe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/laying_under.py"/>
        <source>There is no background picture yet.</source>
        <translation>Es gibt noch kein Hintergrundbild.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/laying_under.py"/>
        <source>The background picture is locked; unlock it first.</source>
        <translation>Das Hintergrundbild ist gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/laying_under.py"/>
        <source>The two points lie on top of each other; choose two that are farther apart.</source>
        <translation>Die beiden Punkte liegen aufeinander; zwei weiter entfernte wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/laying_under.py"/>
        <source>That would make one pixel of the picture {scale:.3g} m; it can be from {finest:g} to {coarsest:g} m.</source>
        <translation>Damit wäre ein Pixel des Bilds {scale:.3g} m groß; möglich sind {finest:g} bis {coarsest:g} m.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/layouts.py"/>
        <source>A garden has at least one layout: make another one first.</source>
        <translation>Ein Garten hat mindestens einen Anbauplan: zuerst einen weiteren anlegen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/outlines.py"/>
        <source>A keyhole's path must be no wider than the place to stand at its end, and that place smaller than the bed.</source>
        <translation>Der Weg eines Schlüssellochbeets darf nicht breiter sein als der Standplatz an seinem Ende, und dieser muss kleiner sein als das Beet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/outlines.py"/>
        <source>A curved edge needs three points or more.</source>
        <translation>Eine runde Kante braucht drei oder mehr Punkte.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/outlines.py"/>
        <source>That are too many points; at most {most} make a curved edge.</source>
        <translation>Das sind zu viele Punkte; eine runde Kante hat höchstens {most}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/own.py"/>
        <source>1 planting grows it in {garden}; change or remove it first.</source>
        <translation>1 Pflanzung in {garden} verwendet sie; diese zuerst ändern oder entfernen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/own.py"/>
        <source>{n} plantings grow it in {garden}; change or remove them first.</source>
        <translation>{n} Pflanzungen in {garden} verwenden sie; diese zuerst ändern oder entfernen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/sharing.py"/>
        <location filename="gardencanvas/planner/applying.py"/>
        <location filename="gardencanvas/planner/succession/making.py"/>
        <source>There is no planting with the id {id!r} in this layout.</source>
        <translation>In diesem Anbauplan gibt es keine Pflanzung mit der Kennung {id!r}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/sharing.py"/>
        <location filename="gardencanvas/garden/volunteers.py"/>
        <source>It is locked; unlock it first.</source>
        <translation>Gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/splitting.py"/>
        <source>Select two or more plantings to join them.</source>
        <translation>Zum Vereinen zwei oder mehr Pflanzungen auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/splitting.py"/>
        <source>These plantings cannot be joined: they differ in {field}.</source>
        <translation>Diese Pflanzungen lassen sich nicht vereinen, verschieden ist: {field}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/splitting.py"/>
        <source>Only plantings can be split or joined.</source>
        <translation>Nur Pflanzungen lassen sich teilen oder vereinen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/splitting.py"/>
        <source>A locked planting stays as it is; unlock it first.</source>
        <translation>Eine gesperrte Pflanzung bleibt, wie sie ist; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/splitting.py"/>
        <source>A cut after {at} leaves one part empty; allowed is 1 to {most}.</source>
        <translation>Ein Schnitt nach {at} lässt einen Teil leer; erlaubt ist 1 bis {most}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/structures.py"/>
        <source>Drag farther from the middle: that is less than 2 cm.</source>
        <translation>Weiter von der Mitte weg ziehen: Das sind weniger als 2 cm.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/volunteers.py"/>
        <source>It stands that far apart already.</source>
        <translation>Es steht schon so weit auseinander.</translation>
    </message>
    <message>
        <location filename="gardencanvas/garden/volunteers.py"/>
        <source>It did not come up by itself.</source>
        <translation>Es ging nicht von selbst auf.</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/bed_page.py"/>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/furniture.py"/>
        <location filename="gardencanvas/words/named.py"/>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/lengths.py"/>
        <location filename="gardencanvas/words/told.py"/>
        <source>{some} and {last}</source>
        <translation>{some} und {last}</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/rows.py"/>
        <location filename="gardencanvas/words/comparing.py"/>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <location filename="gardencanvas/words/named.py"/>
        <source>deep</source>
        <translation>tief</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <location filename="gardencanvas/words/crop_year.py"/>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>sow</source>
        <translation>säen</translation>
    </message>
    <message>
        <location filename="gardencanvas/paper/bedmap/table.py"/>
        <location filename="gardencanvas/words/crop_year.py"/>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>plant out</source>
        <translation>auspflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/applying.py"/>
        <source>This planting is locked.</source>
        <translation>Diese Pflanzung ist gesperrt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/applying.py"/>
        <source>The start of this planting is pinned.</source>
        <translation>Der Beginn dieser Pflanzung ist festgelegt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/changes/leaving_out.py"/>
        <source>A pattern of kind {kind} has no rows to leave out.</source>
        <translation>Ein Muster der Art {kind} hat keine Reihen zum Auslassen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/filling/lattices.py"/>
        <source>This ground would hold about {about:,.0f} plants; a planting holds {most:,}.</source>
        <translation>Auf diese Fläche passten etwa {about:,.0f} Pflanzen; eine Pflanzung fasst {most:,}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/ahead.py"/>
        <source>A perennial is started once and bears for years: it needs no succession.</source>
        <translation>Eine mehrjährige Art wird einmal begonnen und trägt Jahre: Sie braucht keine Folgesätze.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/ahead.py"/>
        <source>Nobody starts a volunteer: it cannot come again by plan.</source>
        <translation>Eine Selbstaussaat beginnt niemand: Sie kann nicht nach Plan wiederkommen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/ahead.py"/>
        <source>This crop is not harvested: give the days between its starts.</source>
        <translation>Diese Kultur wird nicht geerntet: die Tage von Beginn zu Beginn angeben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/ahead.py"/>
        <source>In an average year this planting is not ripe before frost or winter: move it first.</source>
        <translation>In einem mittleren Jahr reift diese Pflanzung nicht vor Frost oder Winter: zuerst verschieben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/ahead.py"/>
        <source>This planting is cleared before it is ripe: it has no harvest to repeat.</source>
        <translation>Diese Pflanzung wird geräumt, bevor sie reif ist: Es gibt keine Ernte, die sich wiederholen ließe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/cutting.py"/>
        <source>A pattern of kind {what} has no rows that could be started one by one.</source>
        <translation>Ein Muster der Art {what} hat keine Reihen, die sich einzeln beginnen ließen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/cutting.py"/>
        <source>The pattern has one row only: it cannot be cut so.</source>
        <translation>Das Muster hat nur eine Reihe: So lässt es sich nicht teilen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/cutting.py"/>
        <source>The pattern has one plant along it only: it cannot be cut so.</source>
        <translation>Das Muster hat der Länge nach nur eine Pflanze: So lässt es sich nicht teilen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/cutting.py"/>
        <source>The pattern has {n} rows: too few for {parts} parts.</source>
        <translation>Das Muster hat {n} Reihen: zu wenige für {parts} Sätze.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/cutting.py"/>
        <source>The pattern has {n} plants along it: too few for {parts} parts.</source>
        <translation>Das Muster hat der Länge nach {n} Pflanzen: zu wenige für {parts} Sätze.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/group.py"/>
        <location filename="gardencanvas/planner/succession/respacing.py"/>
        <source>There is no succession {group!r} in this layout.</source>
        <translation>In diesem Anbauplan gibt es keine Folgesätze {group!r}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/group.py"/>
        <source>The move is {days} days: allowed is at most {most}.</source>
        <translation>Das sind {days} Tage: erlaubt sind höchstens {most}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/making.py"/>
        <source>This planting is part of a succession already: change its interval instead.</source>
        <translation>Diese Pflanzung gehört schon zu Folgesätzen: stattdessen deren Abstand ändern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/making.py"/>
        <source>This planting is locked: it is not cut into parts.</source>
        <translation>Diese Pflanzung ist gesperrt: Sie wird nicht in Sätze geteilt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/respacing.py"/>
        <source>This succession has one part left: there is no interval to change.</source>
        <translation>Von diesen Folgesätzen ist einer übrig: Es gibt keinen Abstand zu ändern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/rhythm.py"/>
        <source>The interval is {days} days: allowed is 1 to {most}.</source>
        <translation>Der Abstand ist {days} Tage: erlaubt ist 1 bis {most}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/planner/succession/rhythm.py"/>
        <source>The number of parts is {parts}: allowed is 2 to {most}.</source>
        <translation>Die Anzahl der Sätze ist {parts}: erlaubt ist 2 bis {most}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <source>per g</source>
        <translation>je g</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <source>per m²</source>
        <translation>je m²</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <source>kg/m²</source>
        <translation>kg/m²</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <location filename="gardencanvas/words/comparing.py"/>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/amounts.py"/>
        <source>{number} years</source>
        <translation>
            <numerusform>{number} Jahr</numerusform>
            <numerusform>{number} Jahre</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/amounts.py"/>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>{number} days</source>
        <translation>
            <numerusform>{number} Tag</numerusform>
            <numerusform>{number} Tage</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/amounts.py"/>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>Of all pairs of plants that come within a hand's breadth, the share of unlike families, u, is set against the share expected by chance, E: (u − E)/(1 − E). 1: every neighbour is of another family; 0: as by chance; below 0: families stand in clumps. Pests are often fewer where kinds are mixed (Letourneau and others 2011, over 500 experiments), but how much differs from pest to pest: no number is promised. Kinds: the reciprocal of Simpson's index over the ground that each family needs.</source>
        <translation>Von allen Paaren von Pflanzen, die sich auf eine Handbreit nahe kommen, wird der Anteil ungleicher Familien, u, mit dem Anteil verglichen, der bei zufälliger Verteilung zu erwarten wäre, E: (u − E)/(1 − E). 1: Jeder Nachbar ist aus einer anderen Familie; 0: wie zufällig; unter 0: Familien stehen in Gruppen beisammen. Schädlinge sind oft seltener, wo Arten gemischt stehen (Letourneau und andere 2011, über 500 Versuche), doch wie viel, ist von Schädling zu Schädling verschieden: Eine Zahl wird nicht versprochen. Arten: der Kehrwert des Simpson-Index über die Standfläche, die jede Familie braucht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>Share of the bed's soil under leaves, seen from above, week by week; ground that several plants cover counts once. Covered soil grows fewer weeds and loses less water; how much less depends on more than cover, so that nothing further is promised.</source>
        <translation>Anteil des Beetbodens unter Blättern, von oben gesehen, Woche für Woche; Boden, den mehrere Pflanzen bedecken, zählt einmal. Auf bedecktem Boden wächst weniger Unkraut, und er verliert weniger Wasser; wie viel weniger, hängt nicht nur von der Bedeckung ab, darum wird nicht mehr versprochen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>as of {kinds} families, mixed {index}: most neighbours differ</source>
        <translation>wie von {kinds} Familien, Mischung {index}: die meisten Nachbarn sind verschieden</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>as of {kinds} families, mixed {index}: more neighbours differ than by chance</source>
        <translation>wie von {kinds} Familien, Mischung {index}: mehr Nachbarn sind verschieden als bei zufälliger Verteilung</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>as of {kinds} families, mixed {index}: about as by chance</source>
        <translation>wie von {kinds} Familien, Mischung {index}: etwa wie zufällig verteilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>as of {kinds} families, mixed {index}: families stand in clumps</source>
        <translation>wie von {kinds} Familien, Mischung {index}: Familien stehen in Gruppen beisammen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>nothing grows in it</source>
        <translation>nichts wächst darin</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>one family only</source>
        <translation>nur eine Familie</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>as of {kinds} families</source>
        <translation>wie von {kinds} Familien</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>no leaves this season</source>
        <translation>keine Blätter in dieser Saison</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>{mean} of the year, most {most} in the week of {week}</source>
        <translation>{mean} im Jahresmittel, am meisten in der Woche vom {week}: {most}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/bed_facts.py"/>
        <source>{mean} of the year, most {most} in the week of {week}; more than half from {first} to {last}</source>
        <translation>{mean} im Jahresmittel, am meisten in der Woche vom {week}: {most}; mehr als die Hälfte vom {first} bis {last}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/below.py"/>
        <source>The roots of {others} take {share} of the soil of {who}, {when}: {depth} and {other_depth} deep, they overlap by {overlap} and want the same water and food.</source>
        <translation>Die Wurzeln von {others} nehmen {who} {share} des Bodens, {when}: {depth} und {other_depth} tief, überschneiden sie sich zu {overlap} und brauchen dasselbe Wasser und dieselben Nährstoffe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/below.py"/>
        <source>{who} and {others} share ground; roots: not known, since no source says how deep they reach. Whether they compete below ground was not checked.</source>
        <translation>{who} und {others} teilen sich Boden; Wurzeln: nicht bekannt, da keine Quelle sagt, wie tief sie reichen. Ob sie sich unter der Erde Konkurrenz machen, wurde nicht geprüft.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/below.py"/>
        <source>{who} and {others} root in the same ground to different depths, {depth} and {other_depth}: {apart} of their roots keep out of each other's way.</source>
        <translation>{who} und {others} wurzeln im selben Boden verschieden tief, {depth} und {other_depth}: {apart} ihrer Wurzeln kommen sich nicht in die Quere.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <source>others of its kind</source>
        <translation>andere ihrer Art</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <source>any crop</source>
        <translation>jede Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{effect}: {what}</source>
        <translation>{effect}: {what}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <source>{effect} for it: {what}</source>
        <translation>{effect} bei dieser Kultur: {what}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <source>{effect} for them: {what}</source>
        <translation>{effect} bei der anderen: {what}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <source>yield of both on the same ground {ratio} times that of each alone</source>
        <translation>Ertrag beider auf derselben Fläche {ratio}-mal so hoch wie jeweils allein</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company.py"/>
        <source>yield of both on the same ground {ratio} times ({low}–{high}) that of each alone</source>
        <translation>Ertrag beider auf derselben Fläche {ratio}-mal ({low}–{high}) so hoch wie jeweils allein</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} beside {others} in trials: {said}.</source>
        <translation>{who} neben {others} in Versuchen: {said}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} beside {others} in a trial: {said}.</source>
        <translation>{who} neben {others} in einem Versuch: {said}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} beside {others} in common practice: {said}.</source>
        <translation>{who} neben {others} in üblicher Praxis: {said}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} beside {others} in trials: {said} ({comparisons}, {papers}).</source>
        <translation>{who} neben {others} in Versuchen: {said} ({comparisons}, {papers}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} beside {others} in a trial: {said} ({comparisons}, {papers}).</source>
        <translation>{who} neben {others} in einem Versuch: {said} ({comparisons}, {papers}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} beside {others} in common practice: {said} ({comparisons}, {papers}).</source>
        <translation>{who} neben {others} in üblicher Praxis: {said} ({comparisons}, {papers}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>both are hosts of {foes}</source>
        <translation>beide sind Wirte: {foes}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} and {others} are both of the {family} and share its troubles: {troubles}.</source>
        <translation>{who} und {others} gehören zur selben Familie ({family}) und teilen deren Plagen: {troubles}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>a gain, {what}</source>
        <translation>ein Gewinn: {what}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>together they yield as much as {ratio} times the ground with each alone</source>
        <translation>zusammen bringen sie so viel wie jede allein auf {ratio}-mal so viel Fläche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>together they yield as much as {ratio} times ({low}–{high}) the ground with each alone</source>
        <translation>zusammen bringen sie so viel wie jede allein auf {ratio}-mal ({low}–{high}) so viel Fläche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} loses by it: {what}, though not in other trials</source>
        <translation>{who} hat Nachteile: {what}, in anderen Versuchen jedoch nicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{who} loses by it: {what}</source>
        <translation>{who} hat Nachteile: {what}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{effect} for {who}: {what}</source>
        <translation>{effect} bei {who}: {what}</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{n} comparisons</source>
        <translation>
            <numerusform>{n} Vergleich</numerusform>
            <numerusform>{n} Vergleiche</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/company_kept.py"/>
        <source>{n} papers</source>
        <translation>
            <numerusform>{n} Veröffentlichung</numerusform>
            <numerusform>{n} Veröffentlichungen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Ground in use</source>
        <translation>Genutzte Fläche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Ground in use, share of the year</source>
        <translation>Genutzte Fläche, Anteil am Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Plants harvested</source>
        <translation>Geerntete Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Grown alone on the same ground</source>
        <translation>Allein auf derselben Fläche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Share of what it gives alone</source>
        <translation>Anteil an dem, was sie allein gibt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Weeks with a harvest</source>
        <translation>Wochen mit Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Weeks without, between harvests</source>
        <translation>Wochen ohne, zwischen Ernten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Weeks of glut</source>
        <translation>Wochen mit Überfluss</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Land equivalent ratio (LER)</source>
        <translation>Flächenvergleichswert (LER)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Area-time equivalency ratio (ATER)</source>
        <translation>Flächen-Zeit-Wert (ATER)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Time the crops stand together</source>
        <translation>Zeit, die die Kulturen zusammen stehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Light used</source>
        <translation>Genutztes Licht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Mixing of kinds</source>
        <translation>Mischung der Arten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Families, as if of equal share</source>
        <translation>Familien, wie bei gleichen Anteilen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Ground shaded</source>
        <translation>Beschatteter Boden</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Water to give, whole season</source>
        <translation>Gießwasser, ganze Saison</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Water in the driest week</source>
        <translation>Wasser in der trockensten Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Ground under hungry crops</source>
        <translation>Fläche unter Starkzehrern</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Ground under crops that fix nitrogen</source>
        <translation>Fläche unter Stickstoffsammlern</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Cost of seed</source>
        <translation>Kosten des Saatguts</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Hours of work</source>
        <translation>Arbeitsstunden</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Plantings clear</source>
        <translation>Pflanzungen: frei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Plantings that share</source>
        <translation>Pflanzungen: teilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Plantings that strain</source>
        <translation>Pflanzungen: belastet</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Plantings that clash</source>
        <translation>Pflanzungen: unverträglich</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Days to spare in nine years of ten</source>
        <translation>Tage Spielraum in 9 von 10 Jahren</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Harvest by week</source>
        <translation>Ernte nach Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Ground under leaves by week</source>
        <translation>Boden unter Blättern nach Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>Water to give by week</source>
        <translation>Gießwasser nach Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>m² × days</source>
        <translation>m² × Tage</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>l</source>
        <translation>l</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>l a week</source>
        <translation>l pro Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>h</source>
        <translation>Std.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>sq ft × days</source>
        <translation>sq ft × Tage</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>gal</source>
        <translation>gal</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>gal a week</source>
        <translation>gal pro Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>≈ {number} ({range}, doubtful)</source>
        <translation>≈ {number} ({range}, zweifelhaft)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>alike</source>
        <translation>gleich</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>more in {layout}</source>
        <translation>mehr in {layout}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>better in {layout}</source>
        <translation>besser in {layout}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing.py"/>
        <source>may be better in {layout}: within uncertainty</source>
        <translation>vielleicht besser in {layout}: innerhalb der Unsicherheit</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/comparing.py"/>
        <source>{number} plants</source>
        <translation>
            <numerusform>{number} Pflanze</numerusform>
            <numerusform>{number} Pflanzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/comparing.py"/>
        <source>{number} weeks</source>
        <translation>
            <numerusform>{number} Woche</numerusform>
            <numerusform>{number} Wochen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first</source>
        <translation>erster</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first, low</source>
        <translation>erster, niedrig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first, high</source>
        <translation>erster, hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second</source>
        <translation>zweiter</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second, low</source>
        <translation>zweiter, niedrig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second, high</source>
        <translation>zweiter, hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first if grown apart</source>
        <translation>erster bei getrenntem Anbau</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first if grown apart, low</source>
        <translation>erster bei getrenntem Anbau, niedrig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first if grown apart, high</source>
        <translation>erster bei getrenntem Anbau, hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second if grown apart</source>
        <translation>zweiter bei getrenntem Anbau</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second if grown apart, low</source>
        <translation>zweiter bei getrenntem Anbau, niedrig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second if grown apart, high</source>
        <translation>zweiter bei getrenntem Anbau, hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>difference, low</source>
        <translation>Unterschied, niedrig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>difference, high</source>
        <translation>Unterschied, hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>m2 days</source>
        <translation>m2 × Tage</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>litres a week</source>
        <translation>Liter pro Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>index</source>
        <translation>Index</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>kinds</source>
        <translation>Arten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>first layout</source>
        <translation>erster Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>second layout</source>
        <translation>zweiter Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>more than uncertainty</source>
        <translation>mehr als die Unsicherheit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>whole</source>
        <translation>Ganzes</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>bed: {bed}</source>
        <translation>Beet: {bed}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>crop: {crop}</source>
        <translation>Kultur: {crop}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>layout</source>
        <translation>Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>by week</source>
        <translation>nach Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <location filename="gardencanvas/words/refusals.py"/>
        <source>crop</source>
        <translation>Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>week from</source>
        <translation>Woche ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <location filename="gardencanvas/words/named.py"/>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_csv.py"/>
        <location filename="gardencanvas/words/named.py"/>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>The range holds eight cases of ten: yields differ between books and gardens, weather between years, and the model of neighbours misses published trials by as much as the range is wide.</source>
        <translation>Die Spanne gilt in acht von zehn Fällen: Erträge sind je nach Buch und Garten verschieden, das Wetter je nach Jahr, und das Modell der Nachbarn verfehlt veröffentlichte Versuche um so viel, wie die Spanne breit ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Grown alone is the crop on all of the bed at its usual spacing, in the same weeks, with all the light.</source>
        <translation>„Allein“ heißt: die Kultur auf dem ganzen Beet im üblichen Abstand, in denselben Wochen, mit allem Licht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>The ground that plants stand on, week by week: each planting takes the ground its stations need at the usual spacing, never more in sum than the bed has, times the days.</source>
        <translation>Die Fläche, auf der Pflanzen stehen, Woche für Woche: Jede Pflanzung nimmt die Fläche, die ihre Pflanzstellen im üblichen Abstand brauchen, zusammen nie mehr, als das Beet hat, mal die Tage.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Ground in use as a share of all beds through the whole year.</source>
        <translation>Genutzte Fläche als Anteil aller Beete über das ganze Jahr.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Of each crop: its usual yield per m² (from the sources of the crop) × the bed's area × its relative yield beside its neighbours × the light that walls and trees leave. Crops whose yield no source gives are left out and named, and so is what stands in no bed.</source>
        <translation>Für jede Kultur: üblicher Ertrag je m² (aus den Quellen der Kultur) × Fläche des Beets × relativer Ertrag neben den Nachbarn × das Licht, das Mauern und Bäume lassen. Kulturen, deren Ertrag keine Quelle nennt, werden ausgelassen und genannt, ebenso, was in keinem Beet steht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Plants that are cut or lifted once are counted too, in years that bring them to harvest; crops picked over are weighed only.</source>
        <translation>Pflanzen, die einmal geschnitten oder gerodet werden, werden auch gezählt, in Jahren, in denen sie zur Ernte kommen; Kulturen, die durchgepflückt werden, werden nur gewogen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Yield of the crop here over its yield grown alone on the same ground. Plants that have more room grow larger (1/w = a + bN, Shinozaki and Kira 1956), and other crops hold them back as so many more plants of their own would (Spitters 1983): half by the light these take, week by week, in layers by height (Beer–Lambert; Spitters and Aerts 1983; constant light-use efficiency, Monteith 1977), half by roots at the same depth that want the same food, of which legumes take little from others.</source>
        <translation>Ertrag der Kultur hier, geteilt durch ihren Ertrag allein auf derselben Fläche. Pflanzen mit mehr Platz werden größer (1/w = a + bN, Shinozaki und Kira 1956), und andere Kulturen halten sie zurück, wie es entsprechend viele weitere Pflanzen der eigenen Art täten (Spitters 1983): zur Hälfte durch das Licht, das diese nehmen, Woche für Woche, in Schichten nach der Höhe (Beer–Lambert; Spitters und Aerts 1983; gleichbleibende Lichtausnutzung, Monteith 1977), zur Hälfte durch Wurzeln in derselben Tiefe, die dieselben Nährstoffe brauchen; davon nehmen Hülsenfrüchtler anderen wenig.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Weeks of the season in which at least one crop is being harvested.</source>
        <translation>Wochen der Saison, in denen mindestens eine Kultur geerntet wird.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Weeks without any harvest between the first and the last of the season.</source>
        <translation>Wochen ohne Ernte zwischen der ersten und der letzten der Saison.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Weeks that bring more than twice the mean of all weeks with a harvest (common practice, not a measurement).</source>
        <translation>Wochen, die mehr als das Doppelte des Mittels aller Wochen mit Ernte bringen (übliche Praxis, keine Messung).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Land equivalent ratio: the ground that the same harvest would need with each crop grown alone, over the ground it has here; the sum of all relative yields (Mead and Willey 1980). Above 1 the mixture saves ground. Crops that follow each other add up too: see the area-time equivalency ratio beside it. Field trials report 1.2 to 1.3 on average (Yu et al. 2015; Martin-Guay et al. 2018), mostly of cereals with legumes: above 1.4 take it as doubtful.</source>
        <translation>Flächenvergleichswert: die Fläche, die dieselbe Ernte bräuchte, wenn jede Kultur allein stünde, geteilt durch die Fläche hier; die Summe aller relativen Erträge (Mead und Willey 1980). Über 1 spart die Mischung Fläche. Auch Kulturen, die einander folgen, werden addiert: siehe den Flächen-Zeit-Wert daneben. Feldversuche nennen im Mittel 1,2 bis 1,3 (Yu u. a. 2015; Martin-Guay u. a. 2018), meist mit Getreide und Hülsenfrüchten: Über 1,4 ist der Wert zweifelhaft.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Area-time equivalency ratio: the sum of relative yield × the crop's own days in the bed, over the days from the first to the last crop (Hiebsch and McCollum 1987): ground and time together. It tends to underrate, as the land equivalent ratio overrates, crops of unlike length (Balasubramanian and Sekayange 1990).</source>
        <translation>Flächen-Zeit-Wert: die Summe aus relativem Ertrag × Tagen der Kultur im Beet, geteilt durch die Tage von der ersten bis zur letzten Kultur (Hiebsch und McCollum 1987): Fläche und Zeit zusammen. Kulturen von ungleicher Dauer unterschätzt er eher, wie der Flächenvergleichswert sie überschätzt (Balasubramanian und Sekayange 1990).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Days two crops share the bed, over the days from the first to the last of both (the complement of temporal niche differentiation, Yu et al. 2015); the mean of all pairs.</source>
        <translation>Tage, die zwei Kulturen das Beet teilen, geteilt durch die Tage vom ersten bis zum letzten Tag beider (das Gegenstück zur zeitlichen Nischentrennung, Yu u. a. 2015); das Mittel aller Paare.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Sunlight of the season on the beds that leaves take: 1 − exp(−Σ k × leaf area) where leaves overlap (Beer–Lambert), each week by its sunlight above the air at this latitude (FAO-56, equation 21).</source>
        <translation>Sonnenlicht der Saison auf den Beeten, das Blätter aufnehmen: 1 − exp(−Σ k × Blattfläche), wo Blätter sich überdecken (Beer–Lambert), jede Woche nach ihrem Sonnenlicht oberhalb der Luft auf dieser Breite (FAO-56, Gleichung 21).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>How often neighbouring plants are of different families, against chance: 1 no plant beside its family, 0 as by chance, below 0 in clumps (join counts). Fewer plant eaters settle in mixed stands on average of many trials (Letourneau et al. 2011); no number of it can be promised to one garden.</source>
        <translation>Wie oft benachbarte Pflanzen aus verschiedenen Familien sind, verglichen mit dem Zufall: 1 keine Pflanze neben ihrer Familie, 0 wie zufällig, unter 0 in Gruppen (Join-Count-Statistik). In gemischten Beständen siedeln sich im Mittel vieler Versuche weniger Pflanzenfresser an (Letourneau u. a. 2011); eine Zahl dafür lässt sich einem einzelnen Garten nicht versprechen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>1 / Σ p², with p each family's share of the ground (Simpson): so many of equal share.</source>
        <translation>1 / Σ p², mit p als Anteil jeder Familie an der Fläche (Simpson): so viele bei gleichen Anteilen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Share of the light that leaves keep from the soil, mean of the weeks in which anything grows. Shaded soil grows fewer weeds and loses less water; how much fewer is not promised.</source>
        <translation>Anteil des Lichts, den Blätter vom Boden fernhalten, Mittel der Wochen, in denen etwas wächst. Auf beschattetem Boden wächst weniger Unkraut, und er verliert weniger Wasser; wie viel weniger, wird nicht versprochen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Reference evapotranspiration (Hargreaves and Samani 1985; FAO-56, equation 52) × the crops' coefficients, weighted by ground cover and height where several stand together (FAO-56, equation 104, from memory), less effective rain (USDA-SCS, by the month), in litres: 1 mm on 1 m² is 1 l. Only what grows is watered; soil and watering habits change it much.</source>
        <translation>Referenzverdunstung (Hargreaves und Samani 1985; FAO-56, Gleichung 52) × Koeffizienten der Kulturen, gewichtet nach Bodenbedeckung und Höhe, wo mehrere zusammen stehen (FAO-56, Gleichung 104, aus dem Gedächtnis), abzüglich des wirksamen Regens (USDA-SCS, nach Monaten), in Litern: 1 mm auf 1 m² ist 1 l. Nur was wächst, wird gegossen; Boden und Gießgewohnheiten ändern viel daran.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>The most water any week of an average season asks for.</source>
        <translation>Das meiste Wasser, das eine Woche einer durchschnittlichen Saison verlangt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Ground-days under crops of high need of nutrients, as a share of all ground-days in use; classes are those of each crop's sources.</source>
        <translation>Flächentage unter Kulturen mit hohem Nährstoffbedarf, als Anteil aller genutzten Flächentage; die Klassen sind die aus den Quellen der Kultur.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Ground-days under crops that fix their own nitrogen, as a share of all ground-days in use. What is left to neighbours in the same season is little.</source>
        <translation>Flächentage unter Kulturen, die ihren Stickstoff selbst sammeln, als Anteil aller genutzten Flächentage. Was davon in derselben Saison den Nachbarn bleibt, ist wenig.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Seed to buy at the prices of the seed tin; not known where a price is missing. Sets, tubers and plants are not counted.</source>
        <translation>Zu kaufendes Saatgut zu den Preisen der Saatgutkiste; nicht bekannt, wo ein Preis fehlt. Steckzwiebeln, Knollen und Pflanzen werden nicht gezählt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Number of jobs × the minutes of each, which you can change; the minutes given are common practice, not measured.</source>
        <translation>Zahl der Arbeiten × Minuten für jede, die sich ändern lassen; die vorgegebenen Minuten sind übliche Praxis, nicht gemessen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Plantings that nothing else touches.</source>
        <translation>Pflanzungen, die nichts anderes berührt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Plantings that overlap a neighbour, and it works.</source>
        <translation>Pflanzungen, die sich mit einem Nachbarn überschneiden, und es geht gut.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Plantings for which it works at a cost that is named.</source>
        <translation>Pflanzungen, für die es geht, zu einem Preis, der genannt wird.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Plantings that fail, or make one fail.</source>
        <translation>Pflanzungen, die misslingen oder eine andere misslingen lassen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Least days between the last harvest of a catch crop and the day its neighbour closes over it, in the worse of a cold and a warm year, one in ten each.</source>
        <translation>Wenigste Tage zwischen der letzten Ernte einer Zwischenkultur und dem Tag, an dem sich der Nachbar über ihr schließt, im schlechteren von einem kalten und einem warmen Jahr, jeweils eines von zehn.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Cautions that come with the crops planted, each counted once. Follow local rules and qualified advice.</source>
        <translation>Warnhinweise zu den gepflanzten Kulturen, jeder einmal gezählt. Örtliche Vorschriften und fachkundigen Rat beachten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>The harvest of each crop spread evenly over its harvest window; the range holds cold and warm years.</source>
        <translation>Die Ernte jeder Kultur, gleichmäßig über ihr Erntefenster verteilt; die Spanne umfasst kalte und warme Jahre.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Share of the soil of all beds under leaves, seen from above.</source>
        <translation>Anteil des Bodens aller Beete unter Blättern, von oben gesehen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/comparing_why.py"/>
        <source>Water to give in each week of an average season, less effective rain.</source>
        <translation>Gießwasser in jeder Woche einer durchschnittlichen Saison, abzüglich des wirksamen Regens.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Follow local rules and qualified advice.</source>
        <translation>Örtliche Vorschriften und fachkundigen Rat beachten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Size when grown</source>
        <translation>Größe ausgewachsen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Spread</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Lowest leaves</source>
        <translation>Unterste Blätter</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Roots</source>
        <translation>Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Root depth</source>
        <translation>Wurzeltiefe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Deepest roots</source>
        <translation>Tiefste Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Root spread</source>
        <translation>Wurzelbreite</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Spacing</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>In the row</source>
        <translation>In der Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Between rows</source>
        <translation>Reihenabstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Between clumps</source>
        <translation>Zwischen Büscheln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Plants to a clump</source>
        <translation>Pflanzen je Büschel</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Half as heavy as alone at</source>
        <translation>Halb so schwer wie allein bei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Sowing depth</source>
        <translation>Saattiefe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Seed</source>
        <translation>Saatgut</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Sprouts from</source>
        <translation>Keimt ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Sprouts best at</source>
        <translation>Keimt am besten bei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Sprouts up to</source>
        <translation>Keimt bis</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Usually sprouts</source>
        <translation>Übliche Keimfähigkeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Seeds</source>
        <translation>Saatgut</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Seed keeps</source>
        <translation>Saatgut hält</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Under glass</source>
        <translation>Unter Glas</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Sown to harvest</source>
        <translation>Saat bis Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Planted to harvest</source>
        <translation>Pflanzung bis Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Harvest lasts</source>
        <translation>Ernte dauert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Killed at</source>
        <translation>Erfriert bei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Needs</source>
        <translation>Ansprüche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Light, full crop</source>
        <translation>Licht, volle Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Light, at least</source>
        <translation>Licht, mindestens</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Thirsty time</source>
        <translation>Durstige Zeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Nutrients</source>
        <translation>Nährstoffe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Support</source>
        <translation>Stütze</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Yield and rotation</source>
        <translation>Ertrag und Fruchtfolge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Yield</source>
        <translation>Ertrag</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Yield of a plant</source>
        <translation>Ertrag einer Pflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Back in the bed after</source>
        <translation>Wieder ins Beet nach</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>What the season is reckoned with</source>
        <translation>Womit die Saison berechnet wird</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Days hold at</source>
        <translation>Tage gelten bei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Grows from</source>
        <translation>Wächst ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Grows faster up to</source>
        <translation>Wächst schneller bis</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Initial stage</source>
        <translation>Anfangsphase</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Development stage</source>
        <translation>Entwicklungsphase</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Middle stage</source>
        <translation>Mittlere Phase</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Late stage</source>
        <translation>Spätphase</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Leaf area index</source>
        <translation>Blattflächenindex</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Light extinction k</source>
        <translation>Lichtauslöschung k</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Soil water it can draw</source>
        <translation>Nutzbares Bodenwasser</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Crop coefficient, initial</source>
        <translation>Kulturkoeffizient, Anfang</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Crop coefficient, middle</source>
        <translation>Kulturkoeffizient, Mitte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Crop coefficient, end</source>
        <translation>Kulturkoeffizient, Ende</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Lives</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>breaks the soil beside it</source>
        <translation>bricht den Boden daneben auf</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>leaves the soil</source>
        <translation>lässt den Boden in Ruhe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_facts.py"/>
        <source>Lifting it</source>
        <translation>Ausgraben</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>Sow in place</source>
        <translation>Direktsaat</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>Plant out</source>
        <translation>Auspflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>Set</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>sow under glass</source>
        <translation>unter Glas säen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>set</source>
        <translation>gesteckt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>Sow under glass</source>
        <translation>Aussaat unter Glas</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>Harvest, grown</source>
        <translation>Ernte, ausgewachsen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>not at this site</source>
        <translation>nicht an diesem Standort</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>all year</source>
        <translation>ganzes Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>{task} {when}</source>
        <translation>{task} {when}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/crop_year.py"/>
        <source>{one}, or {other}</source>
        <translation>{one} oder {other}</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} layouts</source>
        <translation>
            <numerusform>{n} Anbauplan</numerusform>
            <numerusform>{n} Anbaupläne</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} fixtures</source>
        <translation>
            <numerusform>{n} festes Objekt</numerusform>
            <numerusform>{n} feste Objekte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <location filename="gardencanvas/words/plain.py"/>
        <source>{n} beds</source>
        <translation>
            <numerusform>{n} Beet</numerusform>
            <numerusform>{n} Beete</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} paths</source>
        <translation>
            <numerusform>{n} Weg</numerusform>
            <numerusform>{n} Wege</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} supports</source>
        <translation>
            <numerusform>{n} Stütze</numerusform>
            <numerusform>{n} Stützen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} covers</source>
        <translation>
            <numerusform>{n} Abdeckung</numerusform>
            <numerusform>{n} Abdeckungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} plantings</source>
        <translation>
            <numerusform>{n} Pflanzung</numerusform>
            <numerusform>{n} Pflanzungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} crops of your own</source>
        <translation>
            <numerusform>{n} eigene Kultur</numerusform>
            <numerusform>{n} eigene Kulturen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{n} varieties of your own</source>
        <translation>
            <numerusform>{n} eigene Sorte</numerusform>
            <numerusform>{n} eigene Sorten</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>{things} added</source>
        <translation>{things} hinzugefügt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>{things} removed</source>
        <translation>{things} entfernt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>{things} changed</source>
        <translation>{things} geändert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>{things} added in {layout}</source>
        <translation>{things} in {layout} hinzugefügt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>{things} removed in {layout}</source>
        <translation>{things} in {layout} entfernt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>{things} changed in {layout}</source>
        <translation>{things} in {layout} geändert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the background picture</source>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the first month</source>
        <translation>erster Monat</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>whether it is kept</source>
        <translation>Gültigkeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>what you live with</source>
        <translation>Hingenommenes</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>jobs done</source>
        <translation>erledigte Arbeiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>the file format</source>
        <translation>Dateiformat</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differences.py"/>
        <source>Nothing differs.</source>
        <translation>Kein Unterschied.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/differences.py"/>
        <source>{listed}; and {n} more differences</source>
        <translation>
            <numerusform>{listed}; und {n} weiterer Unterschied</numerusform>
            <numerusform>{listed}; und {n} weitere Unterschiede</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differing.py"/>
        <source>{count} only here</source>
        <translation>{count} nur hier</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differing.py"/>
        <source>{count} moved</source>
        <translation>{count} verschoben</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differing.py"/>
        <source>{count} re-timed</source>
        <translation>{count} zeitlich verschoben</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differing.py"/>
        <source>{count} changed</source>
        <translation>{count} geändert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differing.py"/>
        <source>here {verdict}</source>
        <translation>hier {verdict}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/differing.py"/>
        <source>nothing differs</source>
        <translation>kein Unterschied</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>Nothing else uses this space while they stand.</source>
        <translation>Nichts anderes nutzt diesen Raum, solange sie stehen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>They share the space with what grows there, and it works.</source>
        <translation>Sie teilen den Raum mit dem, was dort wächst, und es geht gut.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>It works at a cost:</source>
        <translation>Es geht um einen Preis:</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>free strip {begin} – {end} from its edge</source>
        <translation>freier Streifen {begin} – {end} vom Rand</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/filling.py"/>
        <source>{n} plants fit: {pattern}.</source>
        <translation>
            <numerusform>{n} Pflanze passt: {pattern}.</numerusform>
            <numerusform>{n} Pflanzen passen: {pattern}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/filling.py"/>
        <source>{n} more things strain.</source>
        <translation>
            <numerusform>{n} weiteres belastet.</numerusform>
            <numerusform>{n} weitere Dinge belasten.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>Nothing there can be planted.</source>
        <translation>Dort lässt sich nichts pflanzen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>That would be more plants than one planting may hold: choose a part of the bed.</source>
        <translation>Das wären mehr Pflanzen, als eine Pflanzung enthalten darf: einen Teil des Beets wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>No {crop} fits there. {why}</source>
        <translation>Dort passt nichts ({crop}). {why}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/filling.py"/>
        <source>No {crop} fits there: no place keeps its distance from the edge and from what grows there.</source>
        <translation>Dort passt nichts ({crop}): Kein Platz hält Abstand zum Rand und zu dem, was dort wächst.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{others}, of the same height, takes {share} of the light and ground of {who}, {when}.</source>
        <translation>{others}, gleich hoch, nimmt {who} {share} von Licht und Boden, {when}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{others}, of the same height, take {share} of the light and ground of {who}, {when}.</source>
        <translation>{others}, gleich hoch, nehmen {who} {share} von Licht und Boden, {when}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{others}, of the same height, takes {share} of the light and ground of {who} and leaves {left}, {when}.</source>
        <translation>{others}, gleich hoch, nimmt {who} {share} von Licht und Boden und lässt {left}, {when}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{others}, of the same height, take {share} of the light and ground of {who} and leave {left}, {when}.</source>
        <translation>{others}, gleich hoch, nehmen {who} {share} von Licht und Boden und lassen {left}, {when}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>They stand {distance} apart; usual is {usual}.</source>
        <translation>Sie stehen {distance} auseinander; üblich sind {usual}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{who} stands every {distance}; the closest spacing in the books is {minimum}, usual is {usual} by {usual_across}.</source>
        <translation>{who} steht alle {distance}; der engste Abstand in den Büchern ist {minimum}, üblich sind {usual} mal {usual_across}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>There are {plants} plants where one has room.</source>
        <translation>Wo eine Pflanze Platz hat, stehen {plants}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>There are {plants} plants where one has room, each about {size} of its usual size.</source>
        <translation>Wo eine Pflanze Platz hat, stehen {plants}, jede mit etwa {size} ihrer üblichen Größe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{who} stands closer than usual, {plants} plants where one has room: each reaches about {size} of its usual size, all together {crop} of the usual crop.</source>
        <translation>{who} steht enger als üblich, {plants} Pflanzen, wo eine Platz hat: Jede erreicht etwa {size} ihrer üblichen Größe, alle zusammen {crop} der üblichen Ernte.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{left} of open-sky light is left; it crops from {least}, fully from {good}.</source>
        <translation>{left} des Lichts bei freiem Himmel bleiben; Ernte gibt es ab {least}, volle Ernte ab {good}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{left} of open-sky light is left; a full crop wants {good}.</source>
        <translation>{left} des Lichts bei freiem Himmel bleiben; eine volle Ernte braucht {good}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{who} stands in the shade of what is built or grown there: {light}</source>
        <translation>{who} steht im Schatten dessen, was dort gebaut oder gewachsen ist: {light}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{others} take {taken} of the light of {who} from {first}: {light}</source>
        <translation>{others} nehmen {who} ab {first} {taken} des Lichts: {light}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{others} takes {taken} of the light of {who} from {first}: {light}</source>
        <translation>{others} nimmt {who} ab {first} {taken} des Lichts: {light}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{who} grows in the light shade of {others} and keeps {left} of open-sky light; it wants {good}.</source>
        <translation>{who} wächst im lichten Schatten von {others} und behält {left} des Lichts bei freiem Himmel; gebraucht werden {good}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>The light is used twice.</source>
        <translation>Das Licht wird zweimal genutzt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>The light is used twice: together they catch {caught} of it, {others} alone {taken}.</source>
        <translation>Das Licht wird zweimal genutzt: Zusammen fangen sie {caught} davon auf, {others} allein {taken}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: clear</source>
        <translation>{name}: frei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>Nothing else uses this space while it stands.</source>
        <translation>Nichts anderes nutzt diesen Platz, solange sie steht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: shares</source>
        <translation>{name}: teilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: strains from {first}</source>
        <translation>{name}: belastet ab {first}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: clashes from {first}</source>
        <translation>{name}: unverträglich ab {first}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: clear with {partner}</source>
        <translation>{name}: frei neben {partner}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: shares with {partner}</source>
        <translation>{name}: teilt mit {partner}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: strains with {partner} from {first}</source>
        <translation>{name}: belastet neben {partner} ab {first}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: clashes with {partner} from {first}</source>
        <translation>{name}: unverträglich mit {partner} ab {first}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: {sufferer} strains from {first}</source>
        <translation>{name}: {sufferer} belastet ab {first}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: {sufferer} clashes from {first}</source>
        <translation>{name}: {sufferer} unverträglich ab {first}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/findings.py"/>
        <source>{name}: outside every bed</source>
        <translation>{name}: außerhalb aller Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>harvest for its ground and days</source>
        <translation>Ernte je Fläche und Tag</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>harvest in all</source>
        <translation>Ernte insgesamt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>soon harvested</source>
        <translation>bald geerntet</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>days to spare</source>
        <translation>Tage Spielraum</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>nothing strains</source>
        <translation>nichts belastet</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>There is no bed in this layout.</source>
        <translation>In diesem Anbauplan gibt es kein Beet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{share} of the beds’ ground, over the whole year, is covered by no plant.</source>
        <translation>{share} der Beetfläche sind, übers ganze Jahr gerechnet, von keiner Pflanze bedeckt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{area} beside {plantings}</source>
        <translation>{area} neben {plantings}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>free {days}</source>
        <translation>frei {days}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{share} light</source>
        <translation>{share} Licht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{height} high at most</source>
        <translation>höchstens {height} hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{depth} of soil</source>
        <translation>{depth} Bodentiefe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>sow on {day}</source>
        <translation>säen am {day}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>set on {day}</source>
        <translation>setzen am {day}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>sow under glass on {sow}, plant out on {day}</source>
        <translation>unter Glas säen am {sow}, auspflanzen am {day}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>plant out on {day}, from plants sown by {sow}</source>
        <translation>auspflanzen am {day}, mit Jungpflanzen aus Aussaat bis {sow}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>plant out on {day}</source>
        <translation>auspflanzen am {day}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>staggered block, {spacing} apart each way</source>
        <translation>versetzter Block, {spacing} Abstand nach allen Seiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>block, {spacing} apart each way</source>
        <translation>Block, {spacing} Abstand nach allen Seiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>a single plant</source>
        <translation>eine einzelne Pflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>loose plants, {spacing} apart</source>
        <translation>einzelne Pflanzen, {spacing} Abstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>1 row, every {spacing}</source>
        <translation>1 Reihe, alle {spacing}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{rows} rows, every {spacing}, rows {across} apart</source>
        <translation>{rows} Reihen, alle {spacing}, Reihenabstand {across}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>harvest {days}, about {weight}</source>
        <translation>Ernte {days}, etwa {weight}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>stands until {day}; no harvest is counted this season</source>
        <translation>steht bis {day}; in dieser Saison zählt keine Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>harvest {days}; no weight is on record</source>
        <translation>Ernte {days}; zum Gewicht ist nichts verzeichnet</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>nothing waits for its ground</source>
        <translation>nichts wartet auf den Platz</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>ripens in {years} of 10 years</source>
        <translation>reift in {years} von 10 Jahren</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>over by {day} in nine years of ten</source>
        <translation>in neun von zehn Jahren bis {day} vorbei</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{n} days late</source>
        <translation>
            <numerusform>{n} Tag zu spät</numerusform>
            <numerusform>{n} Tage zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{n} days to spare</source>
        <translation>
            <numerusform>{n} Tag Spielraum</numerusform>
            <numerusform>{n} Tage Spielraum</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{n} days late in a late year (one in ten)</source>
        <translation>
            <numerusform>in einem späten Jahr (eins von zehn) {n} Tag zu spät</numerusform>
            <numerusform>in einem späten Jahr (eins von zehn) {n} Tage zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{n} days to spare in a late year (one in ten)</source>
        <translation>
            <numerusform>in einem späten Jahr (eins von zehn) {n} Tag Spielraum</numerusform>
            <numerusform>in einem späten Jahr (eins von zehn) {n} Tage Spielraum</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{grams} a m² and day</source>
        <translation>{grams} je m² und Tag</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{n} days on {area}</source>
        <translation>
            <numerusform>{n} Tag auf {area}</numerusform>
            <numerusform>{n} Tage auf {area}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>full marks for {parts}</source>
        <translation>volle Punktzahl für {parts}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>Ranks by {parts}.</source>
        <translation>Rang nach: {parts}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>Its family last grew here in {year}.</source>
        <translation>Die Pflanzenfamilie stand hier zuletzt {year}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{planting}: light {before} → {after}.</source>
        <translation>{planting}: Licht {before} → {after}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{plants} in {bed}</source>
        <translation>{plants} in {bed}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>There is no bed. Choose a place in a bed, or draw one there first.</source>
        <translation>Dort ist kein Beet. Einen Platz in einem Beet wählen oder dort erst eines zeichnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>No crop satisfies all that is asked for. Ask for less.</source>
        <translation>Keine Kultur erfüllt alle Wünsche. Weniger verlangen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: there is no day in the year to start it here.</source>
        <translation>{crop}: lässt sich hier an keinem Tag des Jahres beginnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: cannot be started now; the next good day is about {day}.</source>
        <translation>{crop}: lässt sich jetzt nicht beginnen; der nächste gute Tag ist etwa der {day}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: {share} of open-sky light reaches the place; it needs {least} at least.</source>
        <translation>{crop}: den Platz erreichen {share} vom Licht bei freiem Himmel; mindestens {least} sind nötig.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: clashes ({kind}).</source>
        <translation>{crop}: unverträglich ({kind}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: clashes with {other} ({kind}).</source>
        <translation>{crop}: unverträglich mit {other} ({kind}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>Possible after {day}, or elsewhere.</source>
        <translation>Möglich nach dem {day} oder anderswo.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: {room} of room are missing beside {other}. Possible once that is out, {day}.</source>
        <translation>{crop}: neben {other} fehlen {room} Platz. Möglich, sobald dort geräumt ist, am {day}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/gaps.py"/>
        <source>{crop}: {room} of room are missing; a plant wants {wants} each way. Choose a larger place.</source>
        <translation>{crop}: es fehlen {room} Platz; eine Pflanze braucht {wants} nach allen Seiten. Einen größeren Platz wählen.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>{who} is out by {day}, {n} days before {others} closes over it.</source>
        <translation>
            <numerusform>{who}: Ernte bis {day} vorbei, {n} Tag bevor {others} den Platz überwächst.</numerusform>
            <numerusform>{who}: Ernte bis {day} vorbei, {n} Tage bevor {others} den Platz überwächst.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>{others} closes over {who} on {day}, {n} days before its last harvest, {last}.</source>
        <translation>
            <numerusform>{who}: wird am {day} von {others} überwachsen, {n} Tag vor der letzten Ernte am {last}.</numerusform>
            <numerusform>{who}: wird am {day} von {others} überwachsen, {n} Tage vor der letzten Ernte am {last}.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/in_time.py"/>
        <source>{who} is out by {out} and {others} goes in on {in_bed}: the same ground is used twice.</source>
        <translation>{who}: bis {out} geräumt; {others}: ab {in_bed} im Beet. Derselbe Boden wird zweimal genutzt.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>In one year of ten, as cold as few are, only {n} days to spare are left.</source>
        <translation>
            <numerusform>In einem von zehn Jahren, das besonders kalt ist, bleibt nur {n} Tag Spielraum.</numerusform>
            <numerusform>In einem von zehn Jahren, das besonders kalt ist, bleiben nur {n} Tage Spielraum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>In one year of ten, as cold as few are, {n} days late.</source>
        <translation>
            <numerusform>In einem von zehn Jahren, das besonders kalt ist, {n} Tag zu spät.</numerusform>
            <numerusform>In einem von zehn Jahren, das besonders kalt ist, {n} Tage zu spät.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>In one year of ten, as warm as few are, only {n} days to spare are left.</source>
        <translation>
            <numerusform>In einem von zehn Jahren, das besonders warm ist, bleibt nur {n} Tag Spielraum.</numerusform>
            <numerusform>In einem von zehn Jahren, das besonders warm ist, bleiben nur {n} Tage Spielraum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>In one year of ten, as warm as few are, {n} days late.</source>
        <translation>
            <numerusform>In einem von zehn Jahren, das besonders warm ist, {n} Tag zu spät.</numerusform>
            <numerusform>In einem von zehn Jahren, das besonders warm ist, {n} Tage zu spät.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/in_time.py"/>
        <source>The ground lies under leaves {n} days sooner.</source>
        <translation>
            <numerusform>Der Boden liegt {n} Tag früher unter Blättern.</numerusform>
            <numerusform>Der Boden liegt {n} Tage früher unter Blättern.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>raise</source>
        <translation>vorziehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>prick out</source>
        <translation>pikieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>harden off</source>
        <translation>abhärten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>put up support</source>
        <translation>Stütze aufstellen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>thin</source>
        <translation>vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>begin watering</source>
        <translation>Gießen beginnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>put on cover</source>
        <translation>Abdeckung auflegen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>take off cover</source>
        <translation>Abdeckung abnehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>put on net</source>
        <translation>Netz auflegen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>pick</source>
        <translation>ernten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>last picking</source>
        <translation>letzte Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>lift</source>
        <translation>aus dem Boden nehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>clear away</source>
        <translation>räumen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Put up a row of canes ({what})</source>
        <translation>Stabreihe aufstellen ({what})</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Put up a ring of canes ({what})</source>
        <translation>Stabring aufstellen ({what})</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Put up a net ({what})</source>
        <translation>Ranknetz aufstellen ({what})</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Put up a trellis ({what})</source>
        <translation>Spalier aufstellen ({what})</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Put up a stake ({what})</source>
        <translation>Einzelstab aufstellen ({what})</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/jobs.py"/>
        <source>{n} clumps of {each} × {crop}</source>
        <translation>
            <numerusform>{n} Büschel zu je {each} × {crop}</numerusform>
            <numerusform>{n} Büschel zu je {each} × {crop}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Every {spacing}.</source>
        <translation>Alle {spacing}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>{depth} deep.</source>
        <translation>{depth} tief.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Part {part} of {parts} of a succession.</source>
        <translation>Satz {part} von {parts} der Folgesätze.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>{height} high.</source>
        <translation>{height} hoch.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/jobs.py"/>
        <source>{seeds} seeds.</source>
        <translation>
            <numerusform>{seeds} Samen.</numerusform>
            <numerusform>{seeds} Samen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>{neighbour} closes over it from {day}.</source>
        <translation>{neighbour} überwächst den Platz ab {day}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Cap the ends of canes: they stand at eye height.</source>
        <translation>Stabenden mit Kappen versehen: sie stehen in Augenhöhe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Anchor it well: wind takes hold of what is tall.</source>
        <translation>Gut verankern: Hohes wird vom Wind erfasst.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Caution: {caution}</source>
        <translation>Vorsicht: {caution}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Raise {plants} under glass</source>
        <translation>{plants} unter Glas vorziehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Prick out {plants}</source>
        <translation>{plants} pikieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Harden off {plants}</source>
        <translation>{plants} abhärten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Sow {plants}</source>
        <translation>{plants} säen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Plant out {plants}</source>
        <translation>{plants} auspflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Set {plants}</source>
        <translation>{plants} setzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Thin {crop}</source>
        <translation>{crop} vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Begin watering</source>
        <translation>Gießen beginnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Put on {cover}</source>
        <translation>{cover} auflegen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Take off {cover}</source>
        <translation>{cover} abnehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Pick {crop}</source>
        <translation>{crop} ernten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Last picking of {crop}</source>
        <translation>{crop} zum letzten Mal ernten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Lift {crop}</source>
        <translation>{crop} aus dem Boden nehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Clear {crop}</source>
        <translation>{crop} räumen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Rain falls short from here in an average year, most in the week of {day}: {litres} l/m². Go by your own soil and sky.</source>
        <translation>Ab hier reicht in einem mittleren Jahr der Regen nicht, am wenigsten in der Woche vom {day}: es fehlen {litres} l/m². Nach dem eigenen Boden und Wetter richten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Job</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Crop</source>
        <translation>Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Variety</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/jobs.py"/>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shares</source>
        <translation>teilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>strains</source>
        <translation>belastet</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>clashes</source>
        <translation>unverträglich</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>ground cover</source>
        <translation>Bodendecker</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>middle</source>
        <translation>mittel</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>tall</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>climbing</source>
        <translation>kletternd</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>rosette</source>
        <translation>Rosette</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>upright</source>
        <translation>aufrecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>bush</source>
        <translation>buschig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>feathery</source>
        <translation>gefiedert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>climber</source>
        <translation>Kletterpflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>sprawler</source>
        <translation>kriechend</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>tuft</source>
        <translation>Horst</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>carpet</source>
        <translation>Teppich</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>spire</source>
        <translation>hoher Stängel</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shrub</source>
        <translation>Strauch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>blade</source>
        <translation>große Blätter</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>fruiting vegetable</source>
        <translation>Fruchtgemüse</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>leaf vegetable</source>
        <translation>Blattgemüse</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>brassica</source>
        <translation>Kohlgewächse</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>root and tuber</source>
        <translation>Wurzeln und Knollen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>allium</source>
        <translation>Zwiebelgewächse</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>legume</source>
        <translation>Hülsenfrüchte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>perennial vegetable</source>
        <translation>Dauergemüse</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>grain</source>
        <translation>Getreide</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>herb</source>
        <translation>Kräuter</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>flower</source>
        <translation>Blumen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>soft fruit</source>
        <translation>Beerenobst</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>green manure</source>
        <translation>Gründüngung</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>sown in place</source>
        <translation>Direktsaat</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>raised, planted out</source>
        <translation>vorgezogen, ausgepflanzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>set in place</source>
        <translation>gesetzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>once, the plant goes</source>
        <translation>einmal, die Pflanze geht mit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>picked over</source>
        <translation>wird durchgepflückt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>cut and come again</source>
        <translation>Schnitt mit Nachwuchs</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>crowding</source>
        <translation>Enge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shading</source>
        <translation>Schatten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>roots</source>
        <translation>Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>timing</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>rotation</source>
        <translation>Fruchtfolge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>support</source>
        <translation>Stütze</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shallow roots</source>
        <translation>flache Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>medium roots</source>
        <translation>mittlere Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>deep roots</source>
        <translation>tiefe Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>fewer pests</source>
        <translation>weniger Schädlinge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>more pests</source>
        <translation>mehr Schädlinge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>fewer weeds</source>
        <translation>weniger Unkraut</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>more helpers</source>
        <translation>mehr Nützlinge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>competition</source>
        <translation>Konkurrenz</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>allelopathy</source>
        <translation>Allelopathie</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shared disease</source>
        <translation>gemeinsame Krankheit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shared pest</source>
        <translation>gemeinsamer Schädling</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>harvest disturbs</source>
        <translation>Ernte stört</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>yield gain</source>
        <translation>Mehrertrag</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>yield loss</source>
        <translation>Minderertrag</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>no effect</source>
        <translation>keine Wirkung</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>only here</source>
        <translation>nur hier</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>moved</source>
        <translation>verschoben</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>re-timed</source>
        <translation>zeitlich verschoben</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>several trials</source>
        <translation>mehrere Versuche</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>one trial</source>
        <translation>ein Versuch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>tradition only</source>
        <translation>nur Überlieferung</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>pests</source>
        <translation>Schädlinge</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>disease</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>use</source>
        <translation>Verwendung</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>growing</source>
        <translation>Anbau</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>known</source>
        <translation>bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>past years</source>
        <translation>vergangene Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>estimated</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>annual</source>
        <translation>einjährig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>biennial</source>
        <translation>zweijährig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>perennial</source>
        <translation>mehrjährig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shallow</source>
        <translation>flach</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>tender</source>
        <translation>frostempfindlich</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>half-hardy</source>
        <translation>bedingt frosthart</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>hardy</source>
        <translation>frosthart</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>very hardy</source>
        <translation>sehr frosthart</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>full sun</source>
        <translation>volle Sonne</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>partial sun</source>
        <translation>teilsonnig</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>partial shade</source>
        <translation>Halbschatten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>shade</source>
        <translation>Schatten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <source>fixing</source>
        <translation>sammelt Stickstoff</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <location filename="gardencanvas/words/structures.py"/>
        <source>stake</source>
        <translation>Einzelstab</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <location filename="gardencanvas/words/structures.py"/>
        <source>cane</source>
        <translation>Stab</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <location filename="gardencanvas/words/structures.py"/>
        <source>net</source>
        <translation>Ranknetz</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/named.py"/>
        <location filename="gardencanvas/words/structures.py"/>
        <source>trellis</source>
        <translation>Spalier</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} cannot be read: {reason}.</source>
        <translation>{name} ist nicht lesbar: {reason}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} is larger than {most} MB.</source>
        <translation>{name} ist größer als {most} MB.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} holds too much to draw beds from: {count} parts, and at most {most} are taken.</source>
        <translation>{name} enthält zu viel, um Beete daraus zu zeichnen: {count} Teile; höchstens {most} werden genommen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>The outlines in {name} reach {span} across; a plan reaches {most}. Its numbers may mean something else.</source>
        <translation>Die Umrisse in {name} reichen über {span}; ein Plan reicht {most} weit. Die Zahlen bedeuten vielleicht etwas anderes.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} declares entities of its own, which can be used to do harm; save it as plain SVG first.</source>
        <translation>{name} erklärt eigene Entitäten, die Schaden anrichten können; zuerst als einfaches SVG speichern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} is nested too deeply to be a drawing or a map.</source>
        <translation>{name} ist für eine Zeichnung oder Karte zu tief verschachtelt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} is neither a GeoJSON map nor an SVG drawing.</source>
        <translation>{name} ist weder eine GeoJSON-Karte noch eine SVG-Zeichnung.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} holds no closed outline that could be a bed.</source>
        <translation>{name} enthält keinen geschlossenen Umriss, der ein Beet sein könnte.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} is not a file.</source>
        <translation>{name} ist keine Datei.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{name} is damaged, or is neither a GeoJSON map nor an SVG drawing.</source>
        <translation>{name} ist beschädigt oder weder eine GeoJSON-Karte noch eine SVG-Zeichnung.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>crosses itself</source>
        <translation>kreuzt sich selbst</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>more than 2,000 corners</source>
        <translation>mehr als 2.000 Ecken</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>fewer than three corners</source>
        <translation>weniger als drei Ecken</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>smaller than 1 cm²</source>
        <translation>kleiner als 1 cm²</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>a hole lies outside it</source>
        <translation>eine Aussparung liegt außerhalb</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>more than 50 holes</source>
        <translation>mehr als 50 Aussparungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/outlines.py"/>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{n} beds, {area} together, to the right of what is drawn. They can be moved from there.</source>
        <translation>
            <numerusform>{n} Beet, {area}, rechts vom Gezeichneten. Es lässt sich von dort verschieben.</numerusform>
            <numerusform>{n} Beete, zusammen {area}, rechts vom Gezeichneten. Sie lassen sich von dort verschieben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{n} open lines were left out.</source>
        <translation>
            <numerusform>{n} offene Linie wurde ausgelassen.</numerusform>
            <numerusform>{n} offene Linien wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{n} points or lines were left out.</source>
        <translation>
            <numerusform>{n} Punkt oder Linie wurde ausgelassen.</numerusform>
            <numerusform>{n} Punkte oder Linien wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{n} shapes cannot be read.</source>
        <translation>
            <numerusform>{n} Form ist nicht lesbar.</numerusform>
            <numerusform>{n} Formen sind nicht lesbar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/outlines.py"/>
        <source>{n} parts of other kinds were left out.</source>
        <translation>
            <numerusform>{n} Teil anderer Art wurde ausgelassen.</numerusform>
            <numerusform>{n} Teile anderer Art wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{who} stands on bare plan, outside every bed.</source>
        <translation>{who}: steht auf bloßem Plan, außerhalb aller Beete.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{n} of {of} stations of {who} lie outside every bed.</source>
        <translation>
            <numerusform>{who}: {n} von {of} Pflanzstellen liegt außerhalb aller Beete.</numerusform>
            <numerusform>{who}: {n} von {of} Pflanzstellen liegen außerhalb aller Beete.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>The bed holds {soil} of soil; {who} wants at least {needed}: it dries out sooner and stays smaller.</source>
        <translation>{who}: das Beet hat {soil} Boden, nötig sind mindestens {needed}. Die Pflanzen trocknen eher aus und bleiben kleiner.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/place_found.py"/>
        <source>The bed holds {soil} of soil; {n} of {of} stations of {who} want at least {needed}: they dry out sooner and stay smaller.</source>
        <translation>
            <numerusform>{who}: an {n} von {of} Pflanzstellen hat das Beet {soil} Boden, nötig sind mindestens {needed}. Die Pflanzen dort trocknen eher aus und bleiben kleiner.</numerusform>
            <numerusform>{who}: an {n} von {of} Pflanzstellen hat das Beet {soil} Boden, nötig sind mindestens {needed}. Die Pflanzen dort trocknen eher aus und bleiben kleiner.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{who} stands on a path, where the soil is trodden.</source>
        <translation>{who}: steht auf einem Weg, wo der Boden festgetreten ist.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{n} of {of} stations of {who} stand on a path, where the soil is trodden.</source>
        <translation>
            <numerusform>{who}: {n} von {of} Pflanzstellen liegt auf einem Weg, wo der Boden festgetreten ist.</numerusform>
            <numerusform>{who}: {n} von {of} Pflanzstellen liegen auf einem Weg, wo der Boden festgetreten ist.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{who} climbs to {height} and has no {support} within reach: along the ground it bears less, rots more and covers what grows beside it.</source>
        <translation>{who}: klettert {height} hoch und findet keine Stütze in Reichweite ({support}). Am Boden trägt die Kultur weniger, fault eher und überdeckt, was daneben wächst.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{n} stations climb on one {support}; at its closest spacing there is room for {room} of {who}.</source>
        <translation>
            <numerusform>{who}: {n} Pflanzstelle klettert an einer Stütze ({support}); beim engsten Abstand ist Platz für {room}.</numerusform>
            <numerusform>{who}: {n} Pflanzstellen klettern an einer Stütze ({support}); beim engsten Abstand ist Platz für {room}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{n} stations of {who} stand too far from the next to lean on it; {usual} is usual. At {height} they want stakes and string.</source>
        <translation>
            <numerusform>{who}: {n} Pflanzstelle liegt zu weit von der nächsten entfernt, um sich anzulehnen; üblich sind {usual}. Bei {height} Höhe sind Stäbe und Schnur nötig.</numerusform>
            <numerusform>{who}: {n} Pflanzstellen liegen zu weit von der nächsten entfernt, um sich anzulehnen; üblich sind {usual}. Bei {height} Höhe sind Stäbe und Schnur nötig.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{who} grows {height} tall with nothing to hold it and no shelter from wind: give it {support}, or set it in a block or in the lee of a hedge.</source>
        <translation>{who}: wird {height} hoch, ohne Halt und ohne Windschutz. Stützen ({support}), im Block pflanzen oder in den Windschatten einer Hecke setzen.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{n} of {of} stations of {who} grow {height} tall with nothing to hold them and no shelter from wind: give them {support}, or set them in a block or in the lee of a hedge.</source>
        <translation>
            <numerusform>{who}: {n} von {of} Pflanzstellen wird {height} hoch, ohne Halt und ohne Windschutz. Stützen ({support}), im Block pflanzen oder in den Windschatten einer Hecke setzen.</numerusform>
            <numerusform>{who}: {n} von {of} Pflanzstellen werden {height} hoch, ohne Halt und ohne Windschutz. Stützen ({support}), im Block pflanzen oder in den Windschatten einer Hecke setzen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{who} grows to {height} and touches the {cover}, {high} high, from {since}: take it off by then or raise it.</source>
        <translation>{who}: wird {height} hoch und stößt ab {since} an die Abdeckung ({cover}, {high} hoch). Bis dahin abnehmen oder höher stellen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/place_found.py"/>
        <source>{who} needs bees at its flowers and lies under {cover} {days}: open it by day, or few fruits set.</source>
        <translation>{who}: braucht Bienen an den Blüten und liegt unter einer Abdeckung ({cover}), {days}. Tagsüber öffnen, sonst gibt es wenige Früchte.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Jan</source>
        <translation>Jan.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Feb</source>
        <translation>Feb.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Mar</source>
        <translation>März</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Apr</source>
        <translation>Apr.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Jun</source>
        <translation>Juni</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Jul</source>
        <translation>Juli</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Aug</source>
        <translation>Aug.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Sep</source>
        <translation>Sept.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Oct</source>
        <translation>Okt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Nov</source>
        <translation>Nov.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>Dec</source>
        <translation>Dez.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>{first} – {last} {month}</source>
        <translation>{first}.–{last}. {month}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/plain.py"/>
        <source>{crop}, {n} varieties</source>
        <translation>{crop}, {n} Sorten</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/plain.py"/>
        <source>{number} plants</source>
        <translation>
            <numerusform>{number} Pflanze</numerusform>
            <numerusform>{number} Pflanzen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/refusals.py"/>
        <source>varieties</source>
        <translation>Sorten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/refusals.py"/>
        <source>shares of the varieties</source>
        <translation>Anteile der Sorten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/refusals.py"/>
        <source>start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/refusals.py"/>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/refusals.py"/>
        <source>clump size</source>
        <translation>Größe der Büschel</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>north</source>
        <translation>Norden</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>north-east</source>
        <translation>Nordosten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>east</source>
        <translation>Osten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>south-east</source>
        <translation>Südosten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>south</source>
        <translation>Süden</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>south-west</source>
        <translation>Südwesten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>west</source>
        <translation>Westen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>north-west</source>
        <translation>Nordwesten</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{change} ({n} plants fewer)</source>
        <translation>
            <numerusform>{change} ({n} Pflanze weniger)</numerusform>
            <numerusform>{change} ({n} Pflanzen weniger)</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{change}, {lost} of {of} harvest days fewer</source>
        <translation>{change}, {lost} von {of} Erntetagen weniger</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{distance} away from {other}</source>
        <translation>{distance} von {other} weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{distance} into {other}</source>
        <translation>{distance} ins Beet hinein ({other})</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>to the {wind} side of {other} ({distance})</source>
        <translation>an die Seite im {wind} von {other} ({distance})</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{distance} {wind} along the bed</source>
        <translation>{distance} längs im Beet nach {wind}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{distance} {wind} across the bed</source>
        <translation>{distance} quer im Beet nach {wind}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Move {whither}</source>
        <translation>Verschieben: {whither}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Move {planting} {whither}</source>
        <translation>{planting} verschieben: {whither}</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Move {n} plants {whither}</source>
        <translation>
            <numerusform>{n} Pflanze verschieben: {whither}</numerusform>
            <numerusform>{n} Pflanzen verschieben: {whither}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Move {n} plants of {planting} {whither}</source>
        <translation>
            <numerusform>{planting}: {n} Pflanze verschieben, {whither}</numerusform>
            <numerusform>{planting}: {n} Pflanzen verschieben, {whither}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Start {n} days later ({day})</source>
        <translation>
            <numerusform>{n} Tag später beginnen ({day})</numerusform>
            <numerusform>{n} Tage später beginnen ({day})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Start {planting} {n} days later ({day})</source>
        <translation>
            <numerusform>{planting}: {n} Tag später beginnen ({day})</numerusform>
            <numerusform>{planting}: {n} Tage später beginnen ({day})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Start {n} days earlier ({day})</source>
        <translation>
            <numerusform>{n} Tag früher beginnen ({day})</numerusform>
            <numerusform>{n} Tage früher beginnen ({day})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Start {planting} {n} days earlier ({day})</source>
        <translation>
            <numerusform>{planting}: {n} Tag früher beginnen ({day})</numerusform>
            <numerusform>{planting}: {n} Tage früher beginnen ({day})</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Clear it by {day}</source>
        <translation>Bis {day} räumen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Clear {planting} by {day}</source>
        <translation>{planting} bis {day} räumen</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{change}, young ({n} days early)</source>
        <translation>
            <numerusform>{change}, jung ({n} Tag vor der Reife)</numerusform>
            <numerusform>{change}, jung ({n} Tage vor der Reife)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{change}, young ({n} days early, {size} of its size)</source>
        <translation>
            <numerusform>{change}, jung ({n} Tag vor der Reife, {size} der Größe)</numerusform>
            <numerusform>{change}, jung ({n} Tage vor der Reife, {size} der Größe)</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Widen to {spacing}</source>
        <translation>Abstand auf {spacing} vergrößern</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Widen {planting} to {spacing}</source>
        <translation>{planting}: Abstand auf {spacing} vergrößern</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Widen to {spacing} between rows</source>
        <translation>Reihenabstand auf {spacing} vergrößern</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Widen {planting} to {spacing} between rows</source>
        <translation>{planting}: Reihenabstand auf {spacing} vergrößern</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Thin to {left} in each clump</source>
        <translation>Auf {left} je Büschel vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Thin {planting} to {left} in each clump</source>
        <translation>{planting} auf {left} je Büschel vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{change} next to {other}</source>
        <translation>{change}, neben {other}</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Leave out {n} rows</source>
        <translation>
            <numerusform>{n} Reihe weglassen</numerusform>
            <numerusform>{n} Reihen weglassen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Leave out {n} rows of {planting}</source>
        <translation>
            <numerusform>{planting}: {n} Reihe weglassen</numerusform>
            <numerusform>{planting}: {n} Reihen weglassen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Make the rows {n} plants shorter</source>
        <translation>
            <numerusform>Die Reihen um {n} Pflanze kürzen</numerusform>
            <numerusform>Die Reihen um {n} Pflanzen kürzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Make the rows of {planting} {n} plants shorter</source>
        <translation>
            <numerusform>{planting}: die Reihen um {n} Pflanze kürzen</numerusform>
            <numerusform>{planting}: die Reihen um {n} Pflanzen kürzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Leave out {n} plants</source>
        <translation>
            <numerusform>{n} Pflanze weglassen</numerusform>
            <numerusform>{n} Pflanzen weglassen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Leave out {n} plants of {planting}</source>
        <translation>
            <numerusform>{planting}: {n} Pflanze weglassen</numerusform>
            <numerusform>{planting}: {n} Pflanzen weglassen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Grow {variety}</source>
        <translation>{variety} anbauen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Grow {variety} instead of {planting}</source>
        <translation>{variety} statt {planting} anbauen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Give it {supports}, {height} high</source>
        <translation>Stütze geben: {supports}, {height} hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>Give {planting} {supports}, {height} high</source>
        <translation>{planting}: Stütze geben, {supports}, {height} hoch</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/remedies.py"/>
        <source>{first}. Also: {second}</source>
        <translation>{first}. Dazu: {second}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Clumps</source>
        <translation>Büschel</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Bought as plants or sets</source>
        <translation>Gekauft (Jungpflanzen, Steckgut)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Germination</source>
        <translation>Keimfähigkeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Sow (seeds)</source>
        <translation>Aussaat (Samen)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Sow (g)</source>
        <translation>Aussaat (g)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>In the tin (seeds)</source>
        <translation>In der Kiste (Samen)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Order (seeds)</source>
        <translation>Bestellen (Samen)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Order (g)</source>
        <translation>Bestellen (g)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>First needed</source>
        <translation>Zuerst gebraucht</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Trays</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Cells</source>
        <translation>Töpfe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Sowings to prick out</source>
        <translation>Aussaaten zum Pikieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>As many seeds as give the plants wanted 95 times in 100: the binomial distribution, with the share that germinates (the lot's own test of the last year, else the usual one) times the share of those that come up: 0.95 under glass, 0.7 in the open (common practice).</source>
        <translation>So viele Samen, dass sie in 95 von 100 Fällen die gewünschten Pflanzen ergeben: Binomialverteilung mit dem Anteil, der keimt (eigene Keimprobe der Partie aus dem letzten Jahr, sonst der übliche), mal dem Anteil, der davon aufläuft: 0,95 unter Glas, 0,7 im Freien (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Nursery: in use from {first} to the week of {last}, fullest in that of {full}: trays {trays}, cells {cells}.</source>
        <translation>Anzucht: in Gebrauch vom {first} bis zur Woche vom {last}, am vollsten in der Woche vom {full}: Schalen {trays}, Töpfe {cells}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>{day}: trays {trays}, cells {cells}, sowings to prick out {sowings}</source>
        <translation>{day}: Schalen {trays}, Töpfe {cells}, Aussaaten zum Pikieren {sowings}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>Seedlings wait in one tray for each sowing; from pricking out to planting out each station has a cell. What is not pricked out is sown one seed, or one clump, to a cell. A tray is reckoned at {cells} cells (sold with 24 to 84: common practice).</source>
        <translation>Sämlinge warten je Aussaat in einer Schale; vom Pikieren bis zum Auspflanzen hat jede Pflanzstelle einen Topf der Topfplatte. Was nicht pikiert wird, kommt als ein Samen oder ein Büschel je Topf in die Erde. Eine Topfplatte ist mit {cells} Töpfen gerechnet (im Handel 24 bis 84: übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/seeds.py"/>
        <source>{share} (tested)</source>
        <translation>{share} (geprüft)</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Read in the source.</source>
        <translation>In der Quelle gelesen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>From memory of the source.</source>
        <translation>Aus der Erinnerung an die Quelle.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Common practice.</source>
        <translation>Übliche Praxis.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Computed from sourced values.</source>
        <translation>Aus belegten Werten berechnet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Estimated: no book at hand gives it for this crop.</source>
        <translation>Geschätzt: kein vorliegendes Buch nennt es für diese Kultur.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Your own figure.</source>
        <translation>Eigene Angabe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Not known.</source>
        <translation>Nicht bekannt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Range {low} – {high}, reckoned with {mid}.</source>
        <translation>Spanne {low} – {high}, gerechnet mit {mid}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <source>Reckoned with {mid}.</source>
        <translation>Gerechnet mit {mid}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/sources.py"/>
        <location filename="gardencanvas/words/why.py"/>
        <source>Source: {source}.</source>
        <translation>Quelle: {source}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/structures.py"/>
        <source>row of canes</source>
        <translation>Stabreihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/structures.py"/>
        <source>ring of canes</source>
        <translation>Stabring</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/structures.py"/>
        <source>fleece</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/structures.py"/>
        <source>mesh</source>
        <translation>Schutznetz</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/structures.py"/>
        <source>cloche</source>
        <translation>Haube</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/structures.py"/>
        <source>frame</source>
        <translation>Frühbeet</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/structures.py"/>
        <source>{n} rows of canes</source>
        <translation>
            <numerusform>eine Stabreihe</numerusform>
            <numerusform>{n} Stabreihen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/structures.py"/>
        <source>{n} rings of canes</source>
        <translation>
            <numerusform>ein Stabring</numerusform>
            <numerusform>{n} Stabringe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/structures.py"/>
        <source>{n} nets</source>
        <translation>
            <numerusform>ein Ranknetz</numerusform>
            <numerusform>{n} Ranknetze</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/structures.py"/>
        <source>{n} trellises</source>
        <translation>
            <numerusform>ein Spalier</numerusform>
            <numerusform>{n} Spaliere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/structures.py"/>
        <source>{n} stakes</source>
        <translation>
            <numerusform>ein Einzelstab</numerusform>
            <numerusform>{n} Einzelstäbe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/structures.py"/>
        <source>{n} canes</source>
        <translation>
            <numerusform>ein Stab</numerusform>
            <numerusform>{n} Stäbe</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/succession.py"/>
        <source>Coefficient of variation: the standard deviation of the weekly harvests divided by their mean, from the first harvest to the last. Every plant's harvest is spread evenly over its own harvest time in an average year (common practice where no picking dates are known).</source>
        <translation>Variationskoeffizient: die Standardabweichung der wöchentlichen Ernten geteilt durch ihren Mittelwert, von der ersten bis zur letzten Ernte. Die Ernte jeder Pflanze verteilt sich gleichmäßig über ihre eigene Erntezeit in einem mittleren Jahr (übliche Praxis, wo keine Erntetage bekannt sind).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/succession.py"/>
        <source>no harvest</source>
        <translation>keine Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/succession.py"/>
        <source>{days} at best; ripens in {share} of years</source>
        <translation>bestenfalls {days}; reift in {share} der Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/succession.py"/>
        <source>The weekly harvest varies by {share} of its mean; 0 would be wholly even.</source>
        <translation>Die wöchentliche Ernte schwankt um {share} ihres Mittelwerts; 0 wäre ganz gleichmäßig.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/succession.py"/>
        <source>nothing is harvested</source>
        <translation>nichts wird geerntet</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/succession.py"/>
        <source>{n} weeks, in plants: {amounts}</source>
        <translation>
            <numerusform>{n} Woche, in Pflanzen: {amounts}</numerusform>
            <numerusform>{n} Wochen, in Pflanzen: {amounts}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/succession.py"/>
        <source>{n} parts stay on their days: they are pinned or locked.</source>
        <translation>
            <numerusform>{n} Satz bleibt an seinem Tag: er ist festgesteckt oder gesperrt.</numerusform>
            <numerusform>{n} Sätze bleiben an ihren Tagen: sie sind festgesteckt oder gesperrt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/succession.py"/>
        <source>{n} parts find no free ground in the bed.</source>
        <translation>
            <numerusform>{n} Satz findet keinen freien Boden im Beet.</numerusform>
            <numerusform>{n} Sätze finden keinen freien Boden im Beet.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tending.py"/>
        <source>{others} is dug up {days}, {distance} from {who}, which roots only {depth} deep and grows on until {until}: the fork tears its roots. It reaches {reach}.</source>
        <translation>{others}: wird {days} ausgegraben, {distance} neben {who}. {who} wurzelt nur {depth} tief und wächst bis {until} weiter: die Grabegabel zerreißt die Wurzeln. Sie reicht {reach} weit.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tending.py"/>
        <source>{who} is picked often from {since}, and {others} fill every way to it: leave a gap, or change them over.</source>
        <translation>{who}: ab {since} wird oft geerntet, und {others} versperren jeden Zugang. Eine Lücke lassen oder die Plätze tauschen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tending.py"/>
        <source>{who} is picked often from {since}, and {others} fills every way to it: leave a gap, or change the two over.</source>
        <translation>{who}: ab {since} wird oft geerntet, und {others} versperrt jeden Zugang. Eine Lücke lassen oder die beiden tauschen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tending.py"/>
        <source>{who} is picked often from {since} and stands {distance} from the nearest path or edge of the bed; an arm reaches {arm}.</source>
        <translation>{who}: ab {since} wird oft geerntet, {distance} vom nächsten Weg oder Beetrand entfernt; ein Arm reicht {arm} weit.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/tin.py"/>
        <source>{n} seeds</source>
        <translation>
            <numerusform>{n} Samen</numerusform>
            <numerusform>{n} Samen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>{amounts} of {year}</source>
        <translation>{amounts} von {year}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>{lot}, {share} sprouted on {day}</source>
        <translation>{lot}, {share} gekeimt am {day}</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>{lot}, {share} sprouted</source>
        <translation>{lot}, {share} gekeimt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>Sow thicker, or order anew.</source>
        <translation>Dichter säen oder neu bestellen.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/tin.py"/>
        <source>This seed is {n} years old.</source>
        <translation>
            <numerusform>Dieses Saatgut ist {n} Jahr alt.</numerusform>
            <numerusform>Dieses Saatgut ist {n} Jahre alt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/tin.py"/>
        <source>This seed is {n} years old; it keeps {years}.</source>
        <translation>
            <numerusform>Dieses Saatgut ist {n} Jahr alt; haltbar: {years}.</numerusform>
            <numerusform>Dieses Saatgut ist {n} Jahre alt; haltbar: {years}.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>Test it on damp paper, or order anew.</source>
        <translation>Auf feuchtem Papier prüfen oder neu bestellen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>Test some on damp paper before you rely on it.</source>
        <translation>Vor der Aussaat einige auf feuchtem Papier prüfen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>Only {share} sprouted.</source>
        <translation>Nur {share} keimten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>Only {share} sprouted; {usual} is usual.</source>
        <translation>Nur {share} keimten; üblich sind {usual}.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/tin.py"/>
        <source>about {years} years</source>
        <translation>
            <numerusform>etwa {years} Jahr</numerusform>
            <numerusform>etwa {years} Jahre</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/tin.py"/>
        <source>{low} to {high} years</source>
        <translation>{low} bis {high} Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/told.py"/>
        <source>Of two families, they have few pests in common.</source>
        <translation>Zwei Pflanzenfamilien haben wenige Schädlinge gemeinsam.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/volunteers.py"/>
        <source>{n} days</source>
        <translation>
            <numerusform>{n} Tag</numerusform>
            <numerusform>{n} Tage</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/volunteers.py"/>
        <source>{day} ± {days}, estimated</source>
        <translation>{day} ± {days}, geschätzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/volunteers.py"/>
        <source>Nobody sowed it; it was decided to keep it. No seed is ordered and no sowing is listed.</source>
        <translation>Niemand hat es gesät; es soll bleiben. Es wird kein Saatgut bestellt und keine Aussaat aufgeführt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/volunteers.py"/>
        <source>Nobody sowed it. Its dates are reckoned from the day it is thought to have come up; no seed is ordered and no sowing is listed. Keep it, thin it or remove it.</source>
        <translation>Niemand hat es gesät. Die Daten rechnen ab dem Tag, an dem es wohl aufging; es wird kein Saatgut bestellt und keine Aussaat aufgeführt. Behalten, vereinzeln oder entfernen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/watering.py"/>
        <source>{who} wants dry ground and {others} much water: watered together, {who} suffers.</source>
        <translation>{who} mag trockenen Boden, {others} viel Wasser: gemeinsam gegossen leidet {who}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/watering.py"/>
        <source>{who} needs little water and {others} much: water {others} at its foot.</source>
        <translation>{who} braucht wenig Wasser, {others} viel: {others} gezielt am Fuß gießen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/watering.py"/>
        <source>{who} and {others} share their ground and both need water most at the same time, {days}: water here first in a dry spell.</source>
        <translation>{who} und {others} teilen sich den Boden und brauchen zur selben Zeit am meisten Wasser, {days}: bei Trockenheit hier zuerst gießen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>In {share} of simulated years killing frost still comes after {who} stands open to it on {exposed}; the typical last one is on {last_frost}.</source>
        <translation>{who}: steht ab {exposed} ungeschützt; in {share} der simulierten Jahre kommt danach noch tödlicher Frost, der letzte üblicherweise am {last_frost}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>{who} has to stand over winter to be ready on {ready}, and lives to it in only {share} of simulated years: killing frost is usual from {frost}.</source>
        <translation>{who}: muss überwintern, um am {ready} erntereif zu sein, und erlebt das nur in {share} der simulierten Jahre: tödlicher Frost ist ab {frost} üblich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>{who} has to stand over winter to be ready on {ready}, and lives to it in no simulated year: killing frost is usual from {frost}.</source>
        <translation>{who}: muss überwintern, um am {ready} erntereif zu sein, und erlebt das in keinem simulierten Jahr: tödlicher Frost ist ab {frost} üblich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>Its hardiest kinds, which live down to {least}, come through.</source>
        <translation>Die härtesten Sorten, die bis {least} überleben, kommen durch.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>{who} ripens in only {share} of simulated years.</source>
        <translation>{who}: reift nur in {share} der simulierten Jahre.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>{who} ripens in no simulated year.</source>
        <translation>{who}: reift in keinem simulierten Jahr.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>It never finds warmth enough here.</source>
        <translation>Hier ist es dafür nie warm genug.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>It would be ready on {ready}, if no colder year keeps it.</source>
        <translation>Erntereif am {ready}, wenn nicht ein kälteres Jahr es verhindert.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>Without frost it would be ready on {ready}, and killing frost is usual from {frost}.</source>
        <translation>Ohne Frost wäre die Ernte am {ready}; tödlicher Frost ist ab {frost} üblich.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/words/weather.py"/>
        <source>{who} waits {n} days in cold ground.</source>
        <translation>
            <numerusform>{who}: wartet {n} Tag in kaltem Boden.</numerusform>
            <numerusform>{who}: wartet {n} Tage in kaltem Boden.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>Its seed wants {least}, and a seed bed is as warm by day from {since}.</source>
        <translation>Zum Keimen sind {least} nötig; so warm ist ein Saatbeet tagsüber ab {since}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/weather.py"/>
        <source>It wants {least} to grow, and a day's mean is as warm from {since}.</source>
        <translation>Zum Wachsen sind {least} nötig; so warm ist das Tagesmittel ab {since}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>The limits are common practice put into numbers, not measurements.</source>
        <translation>Die Grenzen sind übliche Praxis in Zahlen, keine Messungen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Leaves mixed at one height share the light by their area times extinction, k L (Spitters and Aerts 1983): with others' leaves x times its own on its ground a plant captures (1 − exp(−k L (1 + x))) / (1 + x), set against what it captures among its like at the usual spacing. Footprints are discs of the ground the leaves cover, overlap is exact, all neighbours add up as far as they are alike in height (from 0, one {unlike} as high as the other, to 1 from {alike} on), and each week counts by the size of the plant. With less than {strains} left it strains, with less than {clashes} it clashes.</source>
        <translation>Blätter, die sich in einer Höhe mischen, teilen das Licht nach Blattfläche mal Extinktion, k L (Spitters und Aerts 1983): Mit x-mal so viel fremden wie eigenen Blättern über ihrer Standfläche fängt eine Pflanze (1 − exp(−k L (1 + x))) / (1 + x), verglichen mit dem, was sie unter ihresgleichen beim üblichen Abstand fängt. Standflächen sind Kreise des von Blättern bedeckten Bodens, die Überlappung ist genau gerechnet, alle Nachbarn zählen zusammen, soweit sie ähnlich hoch sind (von 0, wenn einer {unlike} so hoch ist wie der andere, bis 1 ab {alike}), und jede Woche zählt nach der Größe der Pflanze. Bleiben weniger als {strains}, belastet es, bei weniger als {clashes} ist es unverträglich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>The distance in the row, and the ground each station has, are set against the usual spacing and the closest one in any source; a clump is one station, at the spacing times the root of its seedlings. Closer than the closest source strains; where there are {plants} plants for each one the usual spacing has room for, it clashes.</source>
        <translation>Der Abstand in der Reihe und der Boden je Pflanzstelle werden mit dem üblichen Abstand und dem engsten in irgendeiner Quelle verglichen; ein Büschel ist eine Pflanzstelle, sein Abstand mal der Wurzel aus der Zahl seiner Sämlinge. Enger als die engste Quelle belastet; wo {plants} Pflanzen stehen, wo beim üblichen Abstand eine Platz hat, ist es unverträglich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>The spacing lies within what the sources allow, and closer than usual: more plants, each smaller. It is told from {plants} plants for each one of the usual spacing.</source>
        <translation>Der Abstand ist enger als üblich, aber noch so, wie die Quellen ihn erlauben: mehr Pflanzen, jede kleiner. Gemeldet wird es ab {plants} Pflanzen je einer beim üblichen Abstand.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Size follows the yield–density relation 1/w = a + bN (w: weight of a plant, N: plants per m²; Shinozaki and Kira 1956): with D times the usual number a plant weighs 1/(1 − c + cD) of the usual, where c, how far plants hold each other back at the usual spacing, follows from published densities of onion and maize, and is taken as {low} to {high} of all others (common practice).</source>
        <translation>Die Größe folgt der Ertrags-Dichte-Beziehung 1/w = a + bN (w: Gewicht einer Pflanze, N: Pflanzen je m²; Shinozaki und Kira 1956): bei der D-fachen üblichen Zahl wiegt eine Pflanze 1/(1 − c + cD) des Üblichen, wobei c, wie sehr Pflanzen sich beim üblichen Abstand gegenseitig hemmen, bei Zwiebel und Mais aus veröffentlichten Versuchen folgt und bei allen anderen mit {low} bis {high} angenommen ist (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Light that reaches a plant is that of the open sky, less what fixtures hide, less what taller leaves over it take (Beer–Lambert: 1 − exp(−k × leaf area), on the part of its footprint they cover, and less the slenderer they are, because light comes in from the side), less what taller plants beside it hide of the sky and of the sun's path at this latitude, month by month. Each week counts by its sunlight and by how large the plant is. Below what a full crop needs it strains, below what it needs to crop at all it clashes.</source>
        <translation>Das Licht, das eine Pflanze erreicht, ist das des freien Himmels, weniger das, was feste Objekte verdecken, weniger das, was höheres Laub darüber nimmt (Beer–Lambert: 1 − exp(−k × Blattfläche), auf dem überdeckten Teil der Standfläche, und umso weniger, je schlanker die Pflanzen sind, weil Licht von der Seite kommt), weniger das, was höhere Pflanzen daneben vom Himmel und vom Sonnenlauf dieser Breite verdecken, Monat für Monat. Jede Woche zählt nach ihrem Sonnenlicht und nach der Größe der Pflanze. Unter dem Bedarf für eine volle Ernte ist sie belastet, unter dem Bedarf für überhaupt eine Ernte unverträglich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Taller leaves take 1 − exp(−k × leaf area) of the light over the part of the plant they cover (Beer–Lambert, Monsi and Saeki 1953), and the lower plant catches its own share of what is left. It is told from {taken} taken, and stays in order while the lower plant keeps the light a full crop needs.</source>
        <translation>Höhere Blätter nehmen 1 − exp(−k × Blattfläche) vom Licht über dem Teil der Pflanze, den sie bedecken (Beer–Lambert, Monsi und Saeki 1953), und die niedrigere Pflanze fängt ihren Anteil vom Rest. Gemeldet wird es ab {taken}; es bleibt in Ordnung, solange der niedrigeren Pflanze das Licht für eine volle Ernte bleibt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Walls, fences, hedges, trees and sheds hide part of the sky and of the sun's path at this latitude; what is left is averaged over the plant's own time, by sunlight and by its size. Below what a full crop needs it strains, below what it needs to crop at all it clashes.</source>
        <translation>Mauern, Zäune, Hecken, Bäume und Schuppen verdecken einen Teil des Himmels und der Sonnenbahn auf dieser Breite; was bleibt, wird über die Zeit der Pflanze gemittelt, nach Sonnenlicht und Größe. Reicht es nicht für eine volle Ernte, belastet es; reicht es für gar keine, ist es unverträglich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Roots thin out with depth as 1 − exp(−3 x / depth) (Gerwitz and Page 1974); two crops' roots overlap by the lesser share in each band of depth, added up (Schoener 1970). Times the ground in which both root zones lie and the time both grow, that gives how much of a plant's soil the other takes, shared evenly among all roots in it. Times how much both want the same water or food, from {strains} on it strains; roots alone never make a clash. The limit is common practice put into a number.</source>
        <translation>Wurzeln werden mit der Tiefe weniger, nach 1 − exp(−3 x / Tiefe) (Gerwitz und Page 1974); die Wurzeln zweier Kulturen überlappen um den kleineren Anteil in jeder Tiefenschicht, zusammengezählt (Schoener 1970). Mal dem Boden, in dem beide Wurzelräume liegen, und der Zeit, in der beide wachsen, ergibt das, wie viel vom Boden einer Pflanze die andere nimmt, gleichmäßig geteilt unter alle Wurzeln darin. Mal dem Maß, in dem beide dasselbe Wasser oder dieselben Nährstoffe brauchen: ab {strains} belastet es; Wurzeln allein machen nie unverträglich. Die Grenze ist übliche Praxis in einer Zahl.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Roots thin out with depth as 1 − exp(−3 x / depth) (Gerwitz and Page 1974); the lesser share in each band of depth, added up, is their overlap (Schoener 1970). At {apart} or less they are told as apart. It is a matter of degree: most roots of all vegetables lie near the surface, and deep beside shallow ones still overlap by more than half.</source>
        <translation>Wurzeln werden mit der Tiefe weniger, nach 1 − exp(−3 x / Tiefe) (Gerwitz und Page 1974); der kleinere Anteil in jeder Tiefenschicht, zusammengezählt, ist ihre Überlappung (Schoener 1970). Bei {apart} oder weniger gelten sie als getrennt. Es ist eine Frage des Maßes: die meisten Wurzeln aller Gemüse liegen nahe der Oberfläche, und tiefe neben flachen überlappen immer noch mehr als zur Hälfte.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Competition of roots is reckoned from how deep each crop roots. No source gives that for one of these, so nothing was reckoned: that nothing is said of their roots does not mean that all is well.</source>
        <translation>Wurzelkonkurrenz wird daraus berechnet, wie tief jede Kultur wurzelt. Für eine der beiden nennt das keine Quelle, also wurde nichts berechnet: dass von den Wurzeln nichts gesagt wird, heißt nicht, dass alles gut ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>What trials of these two crops side by side report, with how many there are. Yield of both together is told as a land equivalent ratio: the ground that the crops alone would need for the same harvest. A reported loss strains only where leaves overlap for {days} days and no other trial found a gain or no loss. Pests and their enemies carry no number: what was counted in one place does not hold in another.</source>
        <translation>Was Versuche mit diesen beiden Kulturen nebeneinander berichten, und wie viele es sind. Der Ertrag beider zusammen steht als Flächenvergleichswert: der Boden, den die Kulturen allein für dieselbe Ernte brauchten. Ein berichteter Verlust belastet nur, wo Blätter {days} Tage lang überlappen und kein anderer Versuch einen Gewinn oder keinen Verlust fand. Schädlinge und ihre Gegenspieler tragen keine Zahl: was an einem Ort gezählt wurde, gilt nicht am anderen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Plants of one botanical family share many pests and diseases. Neighbours are plants whose leaves come within a hand's breadth for {days} days. It is told and changes nothing by itself: the evidence does not carry a number for one garden.</source>
        <translation>Pflanzen einer botanischen Familie teilen viele Schädlinge und Krankheiten. Nachbarn sind Pflanzen, deren Blätter {days} Tage lang auf Handbreite beieinander sind. Es wird gemeldet und ändert allein nichts: die Belege tragen keine Zahl für einen einzelnen Garten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>The sources put each crop's need of water as low, medium or high. Low beside high is told; a perennial of dry ground strains, since kept moist it grows soft and rots (common practice).</source>
        <translation>Die Quellen nennen den Wasserbedarf jeder Kultur gering, mittel oder hoch. Gering neben hoch wird gemeldet; eine Staude trockener Böden wird belastet, denn feucht gehalten wächst sie weich und fault (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>Both need much water, their leaves overlap, and the stages in which the sources say lack of water costs most fall together for {days} days or more.</source>
        <translation>Beide brauchen viel Wasser, ihre Blätter überlappen, und die Zeiten, in denen Wassermangel nach den Quellen am meisten kostet, fallen {days} Tage oder länger zusammen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>The neighbour closes over a plant in the first week from which on it leaves it less than a full crop needs: of the light from above (Beer–Lambert), times what it keeps among leaves of its own height. Days to spare are counted from the last harvest to that day, in an average year and in the coldest and warmest of ten. Below 0 it strains; where less than it needs to crop at all is left for a third of its time, it clashes. The limits are common practice put into numbers.</source>
        <translation>Der Nachbar überwächst eine Pflanze in der ersten Woche, ab der er ihr weniger lässt, als eine volle Ernte braucht: vom Licht von oben (Beer–Lambert), mal dem, was ihr unter Blättern der eigenen Höhe bleibt. Tage Spielraum zählen von der letzten Ernte bis zu diesem Tag, in einem mittleren Jahr und im kältesten und wärmsten von zehn. Unter 0 belastet es; wo ein Drittel ihrer Zeit weniger bleibt, als sie für irgendeine Ernte braucht, ist es unverträglich. Die Grenzen sind übliche Praxis in Zahlen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why.py"/>
        <source>The one is out before the other goes in, and their footprints cover the same ground: {share} or more of a plant's (common practice). Growing times are those of the sources at this place's warmth.</source>
        <translation>Die eine ist geräumt, bevor die andere gesetzt wird, und ihre Standflächen bedecken denselben Boden: {share} oder mehr von dem einer Pflanze (übliche Praxis). Die Wachstumszeiten sind die der Quellen bei der Wärme dieses Orts.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>A climber finds a support within {reach}, or the stems of a crop that holds it and is up in time. A planting counts as held when {share} of its stations are (common practice).</source>
        <translation>Eine Kletterpflanze findet eine Stütze innerhalb von {reach}, oder die Stängel einer Kultur, die sie hält und rechtzeitig hoch genug ist. Eine Pflanzung gilt als gestützt, wenn {share} ihrer Pflanzstellen es sind (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>A support carries as many stations as fit along it at the closest spacing the sources give, on both sides of a row, or round a stake (common practice).</source>
        <translation>Eine Stütze trägt so viele Pflanzstellen, wie beim engsten Abstand der Quellen an ihr Platz haben, auf beiden Seiten einer Reihe oder rund um einen Stab (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>Beans that do not climb and grow {height} tall or more hold each other up; from {times} times the usual distance they cannot reach each other (common practice).</source>
        <translation>Bohnen, die nicht klettern und {height} oder höher werden, halten sich gegenseitig; ab dem {times}-Fachen des üblichen Abstands erreichen sie einander nicht mehr (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>A crop that the sources say wants a stake or net, or one that stands {height} tall and free, is blown over where nothing holds or shelters it. It counts as held by a support within {reach}, and as sheltered near what is built or grown on the plot, out to {lee} times its height, or with {among} or more of its own planting within {near} (common practice).</source>
        <translation>Eine Kultur, die nach den Quellen Stab oder Netz braucht, oder eine, die {height} hoch und frei steht, wird umgeweht, wo nichts sie hält oder schützt. Als gehalten gilt sie mit einer Stütze innerhalb von {reach}, als geschützt nahe bei dem, was auf dem Grundstück gebaut oder gewachsen ist, bis zum {lee}-Fachen seiner Höhe, oder mit {among} oder mehr der eigenen Pflanzung innerhalb von {near} (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>Grown to more than {times} times the cover's height, a plant bends under it, and frost and pests reach the leaves that touch it (common practice).</source>
        <translation>Wird sie höher als das {times}-Fache der Abdeckung, biegt sich die Pflanze darunter, und Frost und Schädlinge erreichen die Blätter, die anstoßen (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>Its fruits set only where insects reach the flowers, and a closed cover lies over it while it flowers: from {set_days} days before the first harvest to {last_days} before the last. It is told from {days} days on (common practice).</source>
        <translation>Früchte setzen nur an, wo Insekten die Blüten erreichen, und eine geschlossene Abdeckung liegt darüber, während die Kultur blüht: von {set_days} Tagen vor der ersten Ernte bis {last_days} vor der letzten. Gemeldet wird es ab {days} Tagen (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>The bed's depth of soil is set against the least effective root depth that the sources give, or what the roots reach before the crop is out, where that is less.</source>
        <translation>Die Bodentiefe des Beets wird mit der geringsten wirksamen Wurzeltiefe der Quellen verglichen, oder mit der Tiefe, die die Wurzeln bis zum Räumen erreichen, wo das weniger ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>Stations on a path, more than {edge} from its edge, stand in trodden soil (common practice).</source>
        <translation>Pflanzstellen auf einem Weg, mehr als {edge} von seinem Rand, stehen in festgetretenem Boden (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>Beds are drawn where the soil is prepared; stations outside all of them are counted.</source>
        <translation>Beete sind gezeichnet, wo der Boden vorbereitet ist; gezählt werden Pflanzstellen außerhalb von allen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>Lifting it with a fork breaks the soil as wide as its roots or tubers spread and {fork} beyond. A neighbour there that still grows and roots no deeper than {depth} loses roots (common practice).</source>
        <translation>Das Ausgraben mit der Gabel bricht den Boden so weit auf, wie Wurzeln oder Knollen reichen, und {fork} darüber hinaus. Ein Nachbar dort, der noch wächst und nicht tiefer als {depth} wurzelt, verliert Wurzeln (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_place.py"/>
        <source>From a path or a bed's edge one reaches {arm} into a bed without stepping on it, which is why beds are made twice as wide at most. What is picked again and again must lie within reach on some side, and no dense crop taller than {height} may close every way to it (common practice).</source>
        <translation>Von einem Weg oder Beetrand reicht man {arm} weit ins Beet, ohne es zu betreten; darum werden Beete höchstens doppelt so breit. Was immer wieder geerntet wird, muss von einer Seite erreichbar sein, und keine dichte Kultur höher als {height} darf jeden Zugang versperren (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_weather.py"/>
        <source>Two hundred years are simulated day by day from this place's monthly climate: the warmth of the year, weather that lasts some days, and the dates of frost.</source>
        <translation>Zweihundert Jahre werden Tag für Tag nach dem Monatsklima dieses Orts simuliert: die Wärme des Jahres, Wetter, das einige Tage anhält, und die Tage mit Frost.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_weather.py"/>
        <source>Counted are the years in which frost that kills the crop comes after the day its plants stand open to it. From {strains} it strains, from {clashes} it clashes: after the typical last frost half of all years still have one, and growers wait a week or more.</source>
        <translation>Gezählt werden die Jahre, in denen tödlicher Frost nach dem Tag kommt, ab dem die Pflanzen ungeschützt stehen. Ab {strains} belastet es, ab {clashes} ist es unverträglich: nach dem üblichen letzten Frost haben noch die Hälfte aller Jahre einen, und man wartet eine Woche oder länger.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_weather.py"/>
        <source>Growth goes by warmth gathered above the crop's base temperature. Fewer than {strains} of years with a harvest strain, fewer than {clashes} clash (common practice).</source>
        <translation>Das Wachstum folgt der Wärme über der Basistemperatur der Kultur. Weniger als {strains} der Jahre mit einer Ernte belasten, weniger als {clashes} sind unverträglich (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_weather.py"/>
        <source>The crop must stand through the winter to be harvested, and frost colder than it lives through ends it.</source>
        <translation>Die Kultur muss bis zur Ernte über den Winter stehen, und stärkerer Frost, als sie überlebt, beendet sie.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_weather.py"/>
        <source>Counted are the years in which it ripens before killing frost.</source>
        <translation>Gezählt werden die Jahre, in denen sie vor tödlichem Frost reift.</translation>
    </message>
    <message>
        <location filename="gardencanvas/words/why_weather.py"/>
        <source>Seed does not germinate, and plants do not grow, below a temperature that the sources give. Days from the start until an average year offers it are counted: {days} days do no harm to tender and half-hardy crops, {hardy_days} to hardy ones (common practice).</source>
        <translation>Unter einer Temperatur, die die Quellen nennen, keimt Samen nicht und wachsen Pflanzen nicht. Gezählt werden Tage vom Beginn, bis ein mittleres Jahr sie bietet: {days} Tage schaden frostempfindlichen und halbharten Kulturen nicht, {hardy_days} den harten nicht (übliche Praxis).</translation>
    </message>
</context>
</TS>
