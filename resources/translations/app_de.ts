<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ArrangeMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Arrange</source>
        <translation>&amp;Anordnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Repeat in a grid…</source>
        <translation>Im Raster &amp;wiederholen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Split a planting…</source>
        <translation>Pflanzung &amp;teilen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Join plantings</source>
        <translation>Pflanzungen &amp;vereinen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Plant all places again</source>
        <translation>Alle &amp;Pflanzstellen wieder besetzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>S&amp;hare its places with the seed tin’s crop</source>
        <translation>Stellen mit der Kultur der Saatgutkiste &amp;teilen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Mirror left and ri&amp;ght</source>
        <translation>&amp;Links und rechts spiegeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Mirror top and &amp;bottom</source>
        <translation>&amp;Oben und unten spiegeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Align</source>
        <translation>&amp;Ausrichten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Left edges</source>
        <translation>&amp;Linke Kanten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Middles a&amp;cross</source>
        <translation>&amp;Mitten waagerecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Right edges</source>
        <translation>&amp;Rechte Kanten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Top edges</source>
        <translation>&amp;Obere Kanten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Middles &amp;down</source>
        <translation>Mitten &amp;senkrecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Bottom edges</source>
        <translation>&amp;Untere Kanten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Equal gaps across</source>
        <translation>Gleiche Abstände &amp;waagerecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Equal gaps do&amp;wn</source>
        <translation>Gleiche A&amp;bstände senkrecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select something first.</source>
        <translation>Zuerst etwas auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select at least {0} things first.</source>
        <translation>Zuerst mindestens {0} Dinge auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select one planting first.</source>
        <translation>Zuerst eine einzelne Pflanzung auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>It is locked; unlock it first.</source>
        <translation>Gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>It is a single plant.</source>
        <translation>Es ist eine einzelne Pflanze.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select two or more plantings first.</source>
        <translation>Zuerst zwei oder mehr Pflanzungen auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select a planting of which single plants were left out or moved first.</source>
        <translation>Zuerst eine Pflanzung auswählen, in der einzelne Pflanzen ausgelassen oder verschoben sind.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Nothing changed: what is locked stays as it is.</source>
        <translation>Nichts geändert: Gesperrtes bleibt, wie es ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Mirror {0}</source>
        <translation>{0} spiegeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Align {0}</source>
        <translation>{0} ausrichten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Equal gaps between {0}</source>
        <translation>Gleiche Abstände: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Join {0}</source>
        <translation>{0} vereinen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Choose a crop in the seed tin first.</source>
        <translation>Zuerst eine Kultur in der Saatgutkiste wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Share the places of {0}</source>
        <translation>Stellen teilen mit {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Plant all places of {0}</source>
        <translation>Alle Stellen besetzen: {0}</translation>
    </message>
</context>
<context>
    <name>BackdropFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Background picture</source>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>How much the background picture is dimmed, per cent</source>
        <translation>Wie weit das Hintergrundbild abgeblendet ist, in Prozent</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Dimmed</source>
        <translation>Abgeblendet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Turn of the background picture</source>
        <translation>Drehung des Hintergrundbilds</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Turned</source>
        <translation>Gedreht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Locked</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Scale by two points</source>
        <translation>Maßstab aus zwei Punkten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Move and turn</source>
        <translation>Schieben und drehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Another picture…</source>
        <translation>Anderes Bild …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>{0} · {1} × {2} pixels</source>
        <translation>{0} · {1} × {2} Pixel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>The whole picture: {0}</source>
        <translation>Das ganze Bild: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Width of the background picture on the ground</source>
        <translation>Breite des Hintergrundbilds am Boden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Scale the background picture</source>
        <translation>Maßstab des Hintergrundbilds setzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Turn the background picture</source>
        <translation>Hintergrundbild drehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/backdrop_fields.py"/>
        <source>Dim the background picture</source>
        <translation>Hintergrundbild abblenden</translation>
    </message>
</context>
<context>
    <name>Background</name>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Choose a background picture</source>
        <translation>Hintergrundbild wählen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Pictures ({0})</source>
        <translation>Bilder ({0})</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>A picture for the background</source>
        <translation>Ein Bild für den Hintergrund</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Lay “{0}” under the plan, to draw over it?</source>
        <translation>„{0}“ unter den Plan legen, um darüber zu zeichnen?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>It takes the place of the present background picture.</source>
        <translation>Es ersetzt das jetzige Hintergrundbild.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>It is kept inside the garden's file and can be scaled, moved, dimmed and removed.</source>
        <translation>Es liegt in der Gartendatei und lässt sich skalieren, verschieben, abblenden und entfernen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Lay it under the plan</source>
        <translation>Unter den Plan legen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Reading the picture…</source>
        <translation>Bild wird gelesen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Lay a picture under the plan</source>
        <translation>Bild unter den Plan legen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Show the background picture</source>
        <translation>Hintergrundbild zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Hide the background picture</source>
        <translation>Hintergrundbild verbergen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Lock the background picture</source>
        <translation>Hintergrundbild sperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Unlock the background picture</source>
        <translation>Hintergrundbild entsperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>Remove the background picture</source>
        <translation>Hintergrundbild entfernen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>There is no background picture yet.</source>
        <translation>Es gibt noch kein Hintergrundbild.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/laying.py"/>
        <source>It is locked; unlock it first.</source>
        <translation>Gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} is no picture that can be read: PNG, JPEG, WebP and BMP are.</source>
        <translation>{0} ist kein lesbares Bild: PNG, JPEG, WebP und BMP sind es.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} cannot be decoded: it is damaged, or far too large.</source>
        <translation>{0} lässt sich nicht entschlüsseln: beschädigt oder viel zu groß.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} is not a file.</source>
        <translation>{0} ist keine Datei.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} cannot be read: {1}.</source>
        <translation>{0} ist nicht lesbar: {1}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} is larger than {1} MB. Save a smaller copy of it first.</source>
        <translation>{0} ist größer als {1} MB. Zuerst eine kleinere Kopie speichern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} does not say how large it is, and is not read.</source>
        <translation>{0} nennt seine Größe nicht und wird nicht gelesen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>{0} has {1} × {2} pixels; at most {3} million are read. Save a smaller copy of it first.</source>
        <translation>{0} hat {1} × {2} Pixel; höchstens {3} Millionen werden gelesen. Zuerst eine kleinere Kopie speichern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/background/reading.py"/>
        <source>The picture could not be made smaller.</source>
        <translation>Das Bild ließ sich nicht verkleinern.</translation>
    </message>
</context>
<context>
    <name>BackgroundMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>Background pict&amp;ure</source>
        <translation>&amp;Hintergrundbild</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>&amp;Choose a background picture…</source>
        <translation>Hintergrundbild &amp;wählen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>&amp;Scale the background picture by two points</source>
        <translation>&amp;Maßstab aus zwei Punkten setzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>&amp;Move and turn the background picture</source>
        <translation>Hintergrundbild &amp;schieben und drehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>Show or &amp;hide the background picture</source>
        <translation>Hintergrundbild &amp;zeigen oder verbergen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>&amp;Lock or unlock the background picture</source>
        <translation>Hintergrundbild s&amp;perren oder entsperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/background.py"/>
        <source>&amp;Remove the background picture</source>
        <translation>Hintergrundbild &amp;entfernen</translation>
    </message>
</context>
<context>
    <name>BedFacts</name>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>The bed as a whole</source>
        <translation>Das Beet als Ganzes</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Families</source>
        <translation>Pflanzenfamilien</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Under leaves</source>
        <translation>Unter Laub</translation>
    </message>
</context>
<context>
    <name>BedFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>It has none; Plan, More beds and paths cuts one</source>
        <translation>Es hat keine; Plan, Weitere Beete und Wege schneidet eine</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Name of the bed</source>
        <translation>Name des Beets</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Of the smallest box round it; the bed is stretched with it</source>
        <translation>Des kleinsten Rechtecks darum; das Beet streckt sich mit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Soil depth</source>
        <translation>Bodentiefe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>All the soil that roots find, the raised part included</source>
        <translation>Aller Boden, den Wurzeln finden, samt dem erhöhten Teil</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Change soil depth</source>
        <translation>Bodentiefe ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Raised by</source>
        <translation>Erhöht um</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>not raised</source>
        <translation>nicht erhöht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Change height of the bed</source>
        <translation>Höhe des Beets ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Where one walks and reaches from</source>
        <translation>Wo man geht und von wo man hinreicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Edge</source>
        <translation>Einfassung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Boards, stones, grass</source>
        <translation>Bretter, Steine, Gras</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Fill in its holes</source>
        <translation>Aussparungen füllen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Fill in the holes</source>
        <translation>Aussparungen füllen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Rename bed</source>
        <translation>Beet umbenennen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Change note</source>
        <translation>Notiz ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_fields.py"/>
        <source>Resize {0}</source>
        <translation>Größe ändern: {0}</translation>
    </message>
</context>
<context>
    <name>BedMapDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>a page for each bed</source>
        <translation>eine Seite je Beet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>the whole garden in one</source>
        <translation>der ganze Garten auf einmal</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>largest that fits</source>
        <translation>größter, der passt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Begin with the whole &amp;garden</source>
        <translation>Mit dem ganzen &amp;Garten beginnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Beds</source>
        <translation>Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Stages</source>
        <translation>Zeitpunkte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Tick days to see each bed as it is then; none: all of the year.</source>
        <translation>Angekreuzte Tage zeigen jedes Beet, wie es dann ist; keiner: das ganze Jahr.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>&amp;Drawn</source>
        <translation>&amp;Gezeichnet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>S&amp;cale</source>
        <translation>&amp;Maßstab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>&amp;Beds</source>
        <translation>&amp;Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>S&amp;tages</source>
        <translation>&amp;Zeitpunkte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>{0}, the date cursor</source>
        <translation>{0}, Datumszeiger</translation>
    </message>
</context>
<context>
    <name>BedPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Exact numbers</source>
        <translation>Genaue Zahlen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Canopy area of its plants as a share of the bed, mean and highest of the year's weeks.</source>
        <translation>Fläche des Blätterdachs als Anteil am Beet: Mittel und Höchstwert der Wochen des Jahres.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>In use</source>
        <translation>Genutzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>{0} of the year, at most {1}</source>
        <translation>{0} des Jahres, höchstens {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Verdicts</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
</context>
<context>
    <name>BedsDialog</name>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Outlines that can become beds</source>
        <translation>Umrisse, die Beete werden können</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Width of all outlines together on the ground</source>
        <translation>Breite aller Umrisse zusammen am Boden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>All together are wide</source>
        <translation>Alle zusammen sind breit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Type the width that was measured: the drawing does not give it.</source>
        <translation>Die gemessene Breite tippen: Die Zeichnung nennt sie nicht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>As drawn, at its true size.</source>
        <translation>Wie gezeichnet, in wahrer Größe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>On its sheet the drawing is {0} wide. Type the width on the ground.</source>
        <translation>Auf dem Blatt ist die Zeichnung {0} breit. Die Breite am Boden tippen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>longitude and latitude</source>
        <translation>Länge und Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>metres to the east and north</source>
        <translation>Meter nach Osten und Norden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>What the numbers of the map mean</source>
        <translation>Was die Zahlen der Karte bedeuten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Its numbers are</source>
        <translation>Ihre Zahlen sind</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>“{0}” is no length. Write 12.4 m, 1240 cm or 40′ 8″.</source>
        <translation>„{0}“ ist keine Länge. 12,4 m oder 1240 cm schreiben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Nothing is ticked that could become a bed.</source>
        <translation>Nichts angekreuzt, was ein Beet werden könnte.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Draw the beds</source>
        <translation>Beete zeichnen</translation>
    </message>
</context>
<context>
    <name>BedsFromFile</name>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Beds from a file</source>
        <translation>Beete aus einer Datei</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Maps and drawings ({0})</source>
        <translation>Karten und Zeichnungen ({0})</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Reading the outlines…</source>
        <translation>Umrisse werden gelesen …</translation>
    </message>
</context>
<context>
    <name>ClimatePane</name>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>Where these numbers come from</source>
        <translation>Woher diese Zahlen stammen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>, changed by hand</source>
        <translation>, von Hand geändert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>{0} more.</source>
        <translation>{0} weitere.</translation>
    </message>
</context>
<context>
    <name>ComparisonDialog</name>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Two layouts side by side in numbers</source>
        <translation>Zwei Anbaupläne in Zahlen nebeneinander</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Compare</source>
        <translation>Vergleiche</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>with</source>
        <translation>mit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>of</source>
        <translation>für</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>The comparison</source>
        <translation>Der Vergleich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Hover over a row to read what it means. “Matters” only puts the rows in order; 0 hides one.</source>
        <translation>Zeiger auf eine Zeile halten, um zu lesen, was sie bedeutet. „Gewicht“ ordnet nur die Zeilen; 0 blendet eine aus.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>&amp;Table…</source>
        <translation>&amp;Tabelle …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Reckoning…</source>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>the whole garden</source>
        <translation>der ganze Garten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Grown apart</source>
        <translation>Getrennt angebaut</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Better</source>
        <translation>Besser</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Matters</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>A layout against itself differs in nothing: choose another to compare it with.</source>
        <translation>Ein Anbauplan unterscheidet sich nicht von sich selbst: einen anderen zum Vergleich wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Estimates are rounded and shown with the range that holds 8 times in 10.</source>
        <translation>Schätzungen sind gerundet; die Spanne gilt in 8 von 10 Fällen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>How much it matters: {0}</source>
        <translation>Wie viel es zählt: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Save the comparison</source>
        <translation>Vergleich speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>{0} and {1}</source>
        <translation>{0} und {1}</translation>
    </message>
</context>
<context>
    <name>Compass</name>
    <message>
        <location filename="gardencanvas/app/site/compass.py"/>
        <source>Drag to turn</source>
        <translation>Zum Drehen ziehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/compass.py"/>
        <source>The top of the plan looks {0}</source>
        <translation>Der obere Rand des Plans zeigt nach {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/compass.py"/>
        <source>N</source>
        <translation>N</translation>
    </message>
</context>
<context>
    <name>CoverStrip</name>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Soil under leaves, week by week</source>
        <translation>Boden unter Laub, Woche für Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Soil under leaves, week by week; the line marks half</source>
        <translation>Boden unter Laub, Woche für Woche; die Linie zeigt die Hälfte</translation>
    </message>
</context>
<context>
    <name>CropDesk</name>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Keep crop {0}</source>
        <translation>Kultur behalten: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Keep variety {0}</source>
        <translation>Sorte behalten: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Take out {0}</source>
        <translation>{0} herausnehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Nothing was taken in</source>
        <translation>Nichts übernommen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Your library holds {0} crops, {1} varieties and {2} seed lots now.</source>
        <translation>Die eigene Sammlung enthält jetzt – Kulturen: {0}, Sorten: {1}, Saatgutpartien: {2}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Replaced: {0}.</source>
        <translation>Ersetzt: {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Nothing was written</source>
        <translation>Nichts geschrieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Written to {0}.</source>
        <translation>Geschrieben nach {0}.</translation>
    </message>
</context>
<context>
    <name>CropForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>New crop</source>
        <translation>Neue Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Change the crop</source>
        <translation>Kultur ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Like {0}: change what differs.</source>
        <translation>Wie {0}: ändern, was abweicht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Size and spacing</source>
        <translation>Größe und Abstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Seed and yield</source>
        <translation>Saatgut und Ertrag</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Other names</source>
        <translation>Andere Namen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>with commas between</source>
        <translation>durch Kommas getrennt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Botanical name</source>
        <translation>Botanischer Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Family</source>
        <translation>Pflanzenfamilie</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Growth</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Drawn as</source>
        <translation>Gezeichnet als</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Lives</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Usually</source>
        <translation>Meist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Also</source>
        <translation>Auch</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Needs</source>
        <translation>Ansprüche</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>give it a name</source>
        <translation>einen Namen angeben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>give its botanical name: it says what it is kin to</source>
        <translation>den botanischen Namen angeben: er sagt, womit sie verwandt ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>give its family</source>
        <translation>die Pflanzenfamilie angeben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>there is a crop of that name</source>
        <translation>eine Kultur dieses Namens gibt es schon</translation>
    </message>
</context>
<context>
    <name>CropList</name>
    <message>
        <location filename="gardencanvas/app/tin/crop_list.py"/>
        <source>Crops in the seed tin</source>
        <translation>Kulturen in der Saatgutkiste</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/crop_list.py"/>
        <source>Enter picks a crop up, F3 shows all that is known of it, Right shows its varieties.</source>
        <translation>Eingabe nimmt eine Kultur auf, F3 zeigt alles über sie, Pfeil rechts zeigt ihre Sorten.</translation>
    </message>
</context>
<context>
    <name>CropPage</name>
    <message>
        <location filename="gardencanvas/app/crop_page.py"/>
        <source>What is known of the crop</source>
        <translation>Was über die Kultur bekannt ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_page.py"/>
        <source>Carry to the plan</source>
        <translation>Zum Plan tragen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_page.py"/>
        <source>New variety…</source>
        <translation>Neue Sorte …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>From the side, grown, to one scale</source>
        <translation>Ausgewachsen von der Seite, in einem Maßstab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>The year at {0}</source>
        <translation>Das Jahr in {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>{0} hazard: {1}</source>
        <translation>Gefahr ({0}): {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>the crop</source>
        <translation>die Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>“{0}”</source>
        <translation>„{0}“</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>In your tin</source>
        <translation>In der eigenen Kiste</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Beside other crops</source>
        <translation>Neben anderen Kulturen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>{0}, source {1}</source>
        <translation>{0}, Quelle {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>≈ estimated: no source gives it for this crop.</source>
        <translation>≈ geschätzt: keine Quelle nennt es für diese Kultur.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <location filename="gardencanvas/app/inspector/fields.py"/>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>DayOfYearField</name>
    <message>
        <location filename="gardencanvas/app/site/day_field.py"/>
        <source>{0}, day</source>
        <translation>{0}, Tag</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/day_field.py"/>
        <source>{0}, month</source>
        <translation>{0}, Monat</translation>
    </message>
</context>
<context>
    <name>EditMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Steps…</source>
        <translation>&amp;Schritte …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Duplicate</source>
        <translation>&amp;Duplizieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>De&amp;lete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Turn right 15°</source>
        <translation>Nach rechts drehen, &amp;15°</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Turn &amp;left 15°</source>
        <translation>Nach l&amp;inks drehen, 15°</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Loc&amp;k</source>
        <translation>&amp;Sperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>U&amp;nlock</source>
        <translation>E&amp;ntsperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Hide</source>
        <translation>&amp;Verbergen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select &amp;all</source>
        <translation>Alles aus&amp;wählen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select the &amp;whole succession</source>
        <translation>Alle &amp;Folgesätze auswählen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>D&amp;eselect</source>
        <translation>Auswahl auf&amp;heben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select something first.</source>
        <translation>Zuerst etwas auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>The clipboard holds nothing that was copied from a garden.</source>
        <translation>Die Zwischenablage enthält nichts, was aus einem Garten kopiert wurde.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select a planting that comes again first.</source>
        <translation>Zuerst eine Pflanzung mit Folgesätzen auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Nothing to take back.</source>
        <translation>Nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Nothing to do again.</source>
        <translation>Nichts zu wiederholen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Nothing has been changed yet.</source>
        <translation>Noch nichts geändert.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Undo {0}</source>
        <translation>&amp;Rückgängig: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Redo {0}</source>
        <translation>&amp;Wiederholen: {0}</translation>
    </message>
</context>
<context>
    <name>Faults</name>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>What you saved is safe.</source>
        <translation>Gespeichertes ist sicher.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Your unsaved work could not be written: {0}</source>
        <translation>Ungespeicherte Arbeit konnte nicht geschrieben werden: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Your work is safe: it was just written to this computer, also what is not saved yet.</source>
        <translation>Die Arbeit ist sicher: Sie wurde soeben auf diesen Computer geschrieben, auch was noch nicht gespeichert ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Something went wrong</source>
        <translation>Etwas ist schiefgegangen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>The last action did not work; the garden is as it was before it.</source>
        <translation>Der letzte Schritt gelang nicht; der Garten ist wie zuvor.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>You can go on. If it happens again, save under another name, close the program and open it anew.</source>
        <translation>Es kann weitergehen. Geschieht es wieder: unter anderem Namen speichern, das Programm schließen und neu öffnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Copy the details</source>
        <translation>Einzelheiten kopieren</translation>
    </message>
</context>
<context>
    <name>FileMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;New garden</source>
        <translation>&amp;Neuer Garten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Open the &amp;demo garden</source>
        <translation>Bei&amp;spielgarten öffnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Earlier &amp;versions…</source>
        <translation>Frühere &amp;Versionen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Unsaved &amp;work of before…</source>
        <translation>Ungespeicherte &amp;Arbeit von früher …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Beds &amp;from a file…</source>
        <translation>Beete aus &amp;Datei …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Print or save the &amp;bed map…</source>
        <translation>&amp;Beetplan drucken oder speichern …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>P&amp;lanting strip…</source>
        <translation>&amp;Pflanzstreifen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Save a &amp;picture…</source>
        <translation>B&amp;ild speichern …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>No garden was opened or saved before.</source>
        <translation>Noch wurde kein Garten geöffnet oder gespeichert.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Empty this list</source>
        <translation>Diese Liste &amp;leeren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Save the garden first: each save keeps a version.</source>
        <translation>Den Garten zuerst speichern: Jedes Speichern behält eine Version.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>There is no bed in this layout yet: draw one first.</source>
        <translation>In diesem Anbauplan gibt es noch kein Beet: zuerst eines zeichnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Select one planting first.</source>
        <translation>Zuerst eine einzelne Pflanzung auswählen.</translation>
    </message>
</context>
<context>
    <name>Filing</name>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>This file cannot be opened</source>
        <translation>Diese Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>It stays read-only</source>
        <translation>Sie bleibt schreibgeschützt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>mine</source>
        <translation>eigene</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Yours could not be kept</source>
        <translation>Die eigene Fassung konnte nicht behalten werden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>The garden is not saved</source>
        <translation>Der Garten ist nicht gespeichert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>{0} Your changes are still here; save under another name or in another folder.</source>
        <translation>{0} Die Änderungen sind noch da; unter anderem Namen oder in einem anderen Ordner speichern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Saved, but without an earlier version: {0}</source>
        <translation>Gespeichert, aber ohne frühere Version: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
</context>
<context>
    <name>FillDialog</name>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Fill with {0}</source>
        <translation>Füllen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>What fits</source>
        <translation>Was passt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>&amp;Plant</source>
        <translation>&amp;Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>all of {0}</source>
        <translation>ganz: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>the box that was drawn</source>
        <translation>der gezogene Rahmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>whichever holds most</source>
        <translation>was am meisten fasst</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>square block</source>
        <translation>Block im Quadratverband</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>staggered block</source>
        <translation>versetzter Block</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>In the row</source>
        <translation>In der Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Between rows</source>
        <translation>Reihenabstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>In the bed from</source>
        <translation>Im Beet ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>nothing clashes</source>
        <translation>nichts unverträglich ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>nothing even strains</source>
        <translation>auch nichts belastet ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Fi&amp;ll</source>
        <translation>&amp;Fülle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>&amp;As</source>
        <translation>&amp;Als</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>&amp;In the row</source>
        <translation>&amp;In der Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>&amp;Between rows</source>
        <translation>&amp;Reihenabstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>In bed &amp;from</source>
        <translation>Im &amp;Beet ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>&amp;So that</source>
        <translation>&amp;So dass</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>In a block, plants stand evenly apart with the same ground: √(in the row × between rows)</source>
        <translation>Im Block stehen die Pflanzen gleichmäßig, mit derselben Fläche: √(in der Reihe × Reihenabstand)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Trying patterns…</source>
        <translation>Muster werden geprüft …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Stopped. Change something to look again.</source>
        <translation>Angehalten. Etwas ändern, um neu zu suchen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Still looking</source>
        <translation>Sucht noch</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/dialog.py"/>
        <source>Fill {0} with {1} × {2}</source>
        <translation>{0} füllen mit {1} × {2}</translation>
    </message>
</context>
<context>
    <name>FilterBar</name>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Favourites</source>
        <translation>Favoriten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>In my tin: seed lots of my own</source>
        <translation>In meiner Kiste: eigene Saatgutpartien</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Can start on the day of the date cursor</source>
        <translation>Kann am Tag des Datumszeigers beginnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Fits the selected bed, or beside the selected planting</source>
        <translation>Passt ins ausgewählte Beet oder neben die ausgewählte Pflanzung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>More filters</source>
        <translation>Weitere Filter</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Roots</source>
        <translation>Wurzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Family</source>
        <translation>Pflanzenfamilie</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Mine</source>
        <translation>Eigenes</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>my own crops</source>
        <translation>eigene Kulturen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Clear all filters</source>
        <translation>Alle Filter aufheben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>{0} roots</source>
        <translation>Wurzeln: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>{0} water</source>
        <translation>Wasser: {0}</translation>
    </message>
</context>
<context>
    <name>FindingDetail</name>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Choose a finding to read why, and what would mend it.</source>
        <translation>Einen Befund wählen, um zu lesen, warum und was Abhilfe schafft.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>{0}, {1}</source>
        <translation>{0}, {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>What would mend it</source>
        <translation>Was Abhilfe schafft</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>You live with it since {0}: {1}</source>
        <translation>Hingenommen seit {0}: {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>You live with it since {0}.</source>
        <translation>Hingenommen seit {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Mind it again</source>
        <translation>Wieder beachten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>I know, because…</source>
        <translation>Ich weiß, weil …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Why you live with this finding</source>
        <translation>Warum dieser Befund hingenommen wird</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Live with it</source>
        <translation>Hinnehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>It stays in the list, greyed, and is marked quietly on the plan</source>
        <translation>Er bleibt grau in der Liste und ist auf dem Plan unauffällig markiert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Live with a finding</source>
        <translation>Befund hinnehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Mind a finding again</source>
        <translation>Befund wieder beachten</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Nothing to worry about: no planting strains or clashes.</source>
        <translation>Alles in Ordnung: keine Pflanzung ist belastet oder unverträglich.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Kind of finding</source>
        <translation>Art des Befunds</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>all kinds</source>
        <translation>alle Arten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Least verdict shown</source>
        <translation>Mildestes gezeigtes Urteil</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>strains and clashes</source>
        <translation>belastet und unverträglich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>clashes only</source>
        <translation>nur unverträglich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>everything, gains too</source>
        <translation>alles, auch Gewinne</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>crop or word</source>
        <translation>Kultur oder Wort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Words a finding must hold</source>
        <translation>Wörter, die ein Befund enthalten muss</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Findings by bed, worst first</source>
        <translation>Befunde nach Beet, schwerste zuerst</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>On bare plan</source>
        <translation>Außerhalb der Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>{0}, lived with</source>
        <translation>{0}, hingenommen</translation>
    </message>
</context>
<context>
    <name>FrostPane</name>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Last frost</source>
        <translation>Letzter Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>First frost</source>
        <translation>Erster Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Guess from the climate</source>
        <translation>Aus dem Klima schätzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Dates I know</source>
        <translation>Bekannte Tage</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Days of past years</source>
        <translation>Tage vergangener Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Frost never comes</source>
        <translation>Nie Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Last frost of spring</source>
        <translation>Letzter Frost im Frühjahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>First frost of autumn</source>
        <translation>Erster Frost im Herbst</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Typical days: frost comes after the one, or before the other, in half the years.</source>
        <translation>Übliche Tage: In der Hälfte der Jahre kommt Frost nach dem einen oder vor dem anderen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>The season has no frost on either side, and none is warned of.</source>
        <translation>Die Saison hat auf keiner Seite Frost, und vor keinem wird gewarnt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Frosts of past years: give at least one last and one first frost, or choose another way.</source>
        <translation>Fröste vergangener Jahre: mindestens einen letzten und einen ersten Frost angeben oder einen anderen Weg wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>The time from the last frost to the first is the colder part of the year. Are they swapped?</source>
        <translation>Die Zeit vom letzten zum ersten Frost ist der kältere Teil des Jahres. Sind sie vertauscht?</translation>
    </message>
</context>
<context>
    <name>GapsPanel</name>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Click on open ground of the plan, or ask with a button.</source>
        <translation>Auf freien Boden im Plan klicken oder mit einem Knopf fragen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What fits, best first</source>
        <translation>Was passt, Bestes zuerst</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>&amp;Plant it</source>
        <translation>&amp;Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Choose a proposal first</source>
        <translation>Zuerst einen Vorschlag wählen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Place…</source>
        <translation>Ort …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What fits at a place? Click or drag on the plan</source>
        <translation>Was passt an einen Ort? Auf dem Plan klicken oder ziehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Crop</source>
        <translation>Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Where does the crop chosen in the seed tin fit?</source>
        <translation>Wohin passt die in der Saatgutkiste gewählte Kultur?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What can be started in the date cursor's week?</source>
        <translation>Was kann in der Woche des Datumszeigers beginnen?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>in my tin</source>
        <translation>in meiner Kiste</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>new family here</source>
        <translation>hier neue Familie</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>quick</source>
        <translation>schnell</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>no raising</source>
        <translation>ohne Anzucht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Ranked by</source>
        <translation>Geordnet nach</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What counts in the ranking</source>
        <translation>Was für die Reihenfolge zählt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>harvest for ground and time</source>
        <translation>Ernte je Fläche und Zeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>harvest in all</source>
        <translation>Ernte insgesamt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>soon harvested</source>
        <translation>bald geerntet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>days to spare</source>
        <translation>Tage Spielraum</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Open on {0}; choose one to see what fits.</source>
        <translation>Frei am {0}; eine wählen, um zu sehen, was passt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Looking for what fits there…</source>
        <translation>Suche, was dort passt …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Choose a crop in the seed tin first.</source>
        <translation>Zuerst eine Kultur in der Saatgutkiste wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Looking for places for {0}…</source>
        <translation>Suche Plätze: {0} …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Looking for what can be started now…</source>
        <translation>Suche, was jetzt beginnen kann …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Best first. Hover to try one out, Enter plants it.</source>
        <translation>Bestes zuerst. Zeiger darauf probiert es aus, Eingabe pflanzt es.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Nothing fits.</source>
        <translation>Nichts passt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Plant {0}</source>
        <translation>{0} pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Planted: {0}.</source>
        <translation>Gepflanzt: {0}.</translation>
    </message>
</context>
<context>
    <name>GardenPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Select a planting or a bed to see what is known of it. Drag a crop from the seed tin into a bed.</source>
        <translation>Eine Pflanzung oder ein Beet auswählen, um zu sehen, was bekannt ist. Eine Kultur aus der Saatgutkiste in ein Beet ziehen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Beds</source>
        <translation>Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Crops</source>
        <translation>Kulturen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Verdicts</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Frost-free</source>
        <translation>Frostfrei</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Typical last and first frost: {0}.</source>
        <translation>Üblicher letzter und erster Frost: {0}.</translation>
    </message>
</context>
<context>
    <name>Going</name>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>Go to a &amp;panel</source>
        <translation>Zu einem &amp;Bereich gehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>Seed &amp;tin</source>
        <translation>&amp;Saatgutkiste</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>&amp;Outline</source>
        <translation>&amp;Übersicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>&amp;Inspector</source>
        <translation>&amp;Eigenschaften</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>&amp;Season</source>
        <translation>Sa&amp;ison</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/going.py"/>
        <source>&amp;Findings</source>
        <translation>&amp;Befunde</translation>
    </message>
</context>
<context>
    <name>HarvestBars</name>
    <message>
        <location filename="gardencanvas/app/harvest_bars.py"/>
        <source>Harvest by week</source>
        <translation>Ernte nach Wochen</translation>
    </message>
</context>
<context>
    <name>HelpMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>&amp;Find a command…</source>
        <translation>&amp;Befehl suchen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>The four &amp;verdicts</source>
        <translation>Die vier &amp;Urteile</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>Show &amp;hints again</source>
        <translation>&amp;Hinweise wieder zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>&amp;About Garden Canvas</source>
        <translation>&amp;Über Garden Canvas</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>No hint was used or sent away yet.</source>
        <translation>Noch kein Hinweis wurde benutzt oder weggeschickt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>The four verdicts</source>
        <translation>Die vier Urteile</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>clear – thin outline: nothing else uses this space while the plant stands.

shares – double outline: it overlaps a neighbour and that works, since they differ in height, roots or time.

strains – dashed outline: it works at a cost that is named: less light, a late harvest, thirst.

clashes – thick, hatched outline: one of them fails.</source>
        <translation>frei – dünner Umriss: Nichts anderes nutzt diesen Raum, solange die Pflanze steht.

teilt – doppelter Umriss: Sie überschneidet sich mit einem Nachbarn, und das geht gut, weil Höhe, Wurzeln oder Zeit verschieden sind.

belastet – gestrichelter Umriss: Es geht um einen Preis, der genannt wird: weniger Licht, späte Ernte, Durst.

unverträglich – dicker, schraffierter Umriss: Eine von beiden misslingt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>About Garden Canvas</source>
        <translation>Über Garden Canvas</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>Garden Canvas {0}</source>
        <translation>Garden Canvas {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>Plans several crops in the same ground. Its figures are handbook values with their ranges and sources; your soil and weather are your own. Follow local rules and qualified advice where a plant can hurt someone.</source>
        <translation>Plant mehrere Kulturen auf demselben Boden. Die Zahlen sind Handbuchwerte mit Spanne und Quelle; Boden und Wetter sind überall eigene. Wo eine Pflanze jemandem schaden kann, gelten die örtlichen Vorschriften und fachkundiger Rat.</translation>
    </message>
</context>
<context>
    <name>HiddenLabel</name>
    <message>
        <location filename="gardencanvas/app/hidden_label.py"/>
        <source>Something is hidden · show it</source>
        <translation>Etwas ist verborgen · zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/hidden_label.py"/>
        <source>Show everything (Ctrl+Shift+H)</source>
        <translation>Alles zeigen (Strg+Umschalt+H)</translation>
    </message>
</context>
<context>
    <name>HintLine</name>
    <message>
        <location filename="gardencanvas/app/hints.py"/>
        <source>Do not show this hint again</source>
        <translation>Diesen Hinweis nicht mehr zeigen</translation>
    </message>
</context>
<context>
    <name>Hints</name>
    <message>
        <location filename="gardencanvas/app/hints.py"/>
        <source>Drag a crop from the seed tin into a bed: its verdict goes with the mouse.</source>
        <translation>Eine Kultur aus der Saatgutkiste in ein Beet ziehen: Das Urteil folgt der Maus.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/hints.py"/>
        <source>Drag the date: plants grow, meet, and are taken out. Ctrl+→ goes on by a week.</source>
        <translation>Das Datum ziehen: Pflanzen wachsen, treffen sich und werden geräumt. Strg+→ geht eine Woche weiter.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/hints.py"/>
        <source>F8 goes to the next finding. The changes that mend it are buttons beside it.</source>
        <translation>F8 geht zum nächsten Befund. Daneben stehen die Änderungen, die abhelfen, als Knöpfe.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/hints.py"/>
        <source>Press 9 while a crop is on the mouse: it takes a free place between the rows.</source>
        <translation>9 drücken, während eine Kultur an der Maus hängt: Sie nimmt einen freien Platz zwischen den Reihen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/hints.py"/>
        <source>Ctrl+K finds any command by its name.</source>
        <translation>Strg+K findet jeden Befehl nach Namen.</translation>
    </message>
</context>
<context>
    <name>Inspector</name>
    <message>
        <location filename="gardencanvas/app/inspector/panel.py"/>
        <source>Inspector</source>
        <translation>Eigenschaften</translation>
    </message>
</context>
<context>
    <name>JobsPanel</name>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Job</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Jobs, week by week</source>
        <translation>Arbeiten, Woche für Woche</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Kind of job</source>
        <translation>Art der Arbeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>all jobs</source>
        <translation>alle Arbeiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Done or to do</source>
        <translation>Erledigt oder offen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>to do and done</source>
        <translation>offen und erledigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>to do</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>crop, bed or word</source>
        <translation>Kultur, Beet oder Wort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Words a job must hold</source>
        <translation>Wörter, die eine Arbeit enthalten muss</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Calendar…</source>
        <translation>Kalender …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save as a calendar file (.ics)</source>
        <translation>Als Kalenderdatei speichern (.ics)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Table…</source>
        <translation>Tabelle …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save as a table (.csv)</source>
        <translation>Als Tabelle speichern (.csv)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>See, save or print the list</source>
        <translation>Liste ansehen, speichern oder drucken</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>job</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>jobs</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>No job is called so.</source>
        <translation>Keine Arbeit heißt so.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Nothing is planted yet: no work to do.</source>
        <translation>Noch nichts gepflanzt: nichts zu tun.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Week {0}, {1}</source>
        <translation>Woche {0}, {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Done: {0}</source>
        <translation>Erledigt: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Not done: {0}</source>
        <translation>Nicht erledigt: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save the jobs as a calendar</source>
        <translation>Arbeiten als Kalender speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save the jobs as a table</source>
        <translation>Arbeiten als Tabelle speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Jobs</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Jobs of {0}</source>
        <translation>Arbeiten {0}</translation>
    </message>
</context>
<context>
    <name>Layouts</name>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Show &amp;layout</source>
        <translation>Anbauplan &amp;zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>&amp;Duplicate this layout…</source>
        <translation>Diesen Anbauplan &amp;duplizieren …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>A&amp;ll layouts…</source>
        <translation>&amp;Alle Anbaupläne …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>&amp;Compare layouts…</source>
        <translation>Anbaupläne &amp;vergleichen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Two &amp;plans side by side…</source>
        <translation>Zwei &amp;Pläne nebeneinander …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>There is one layout only: duplicate it to try something else.</source>
        <translation>Es gibt nur einen Anbauplan: duplizieren, um etwas anderes zu versuchen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>{0}, second try</source>
        <translation>{0}, zweiter Versuch</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Duplicate the layout</source>
        <translation>Anbauplan duplizieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Name of the copy</source>
        <translation>Name der Kopie</translation>
    </message>
</context>
<context>
    <name>LayoutsDialog</name>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Layouts</source>
        <translation>Anbaupläne</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Layout</source>
        <translation>Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Kept</source>
        <translation>Gültig</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Why it is there</source>
        <translation>&amp;Wozu es ihn gibt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Year of a copy</source>
        <translation>&amp;Jahr einer Kopie</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Show it on the plan</source>
        <translation>Auf dem Plan zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Rename</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Take over name and note</source>
        <translation>Name und Notiz übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Duplicate</source>
        <translation>&amp;Duplizieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A copy to try things in, named as above</source>
        <translation>Eine Kopie zum Ausprobieren, mit dem Namen oben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Copy for the y&amp;ear</source>
        <translation>Kopie für das &amp;Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A copy with all dates in that year</source>
        <translation>Eine Kopie mit allen Daten in diesem Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Beds &amp;only</source>
        <translation>Nur &amp;Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A new one for that year without plantings</source>
        <translation>Ein neuer für dieses Jahr ohne Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Keep</source>
        <translation>&amp;Gültig</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Mark as the one kept of its year, or no longer</source>
        <translation>Als den gültigen seines Jahres markieren oder nicht mehr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>De&amp;lete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Take it away; undo brings it back</source>
        <translation>Entfernen; Rückgängig holt ihn zurück</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>{0} (shown)</source>
        <translation>{0} (gezeigt)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>kept</source>
        <translation>gültig</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Keep no &amp;longer</source>
        <translation>Nicht mehr &amp;gültig</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A garden has at least one layout</source>
        <translation>Ein Garten hat mindestens einen Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>{0}. Undo takes it back.</source>
        <translation>{0}. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Rename layout</source>
        <translation>Anbauplan umbenennen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Duplicate layout</source>
        <translation>Anbauplan duplizieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Copy layout for {0}</source>
        <translation>Anbauplan für {0} kopieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>New layout for {0}</source>
        <translation>Neuer Anbauplan für {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Keep layout</source>
        <translation>Anbauplan gilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Keep layout no longer</source>
        <translation>Anbauplan gilt nicht mehr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Delete layout {0} ({1})</source>
        <translation>Anbauplan {0} ({1}) löschen</translation>
    </message>
</context>
<context>
    <name>LotForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seed lot: {0}</source>
        <translation>Saatgutpartie: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Variety</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>none named</source>
        <translation>keine genannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Year of harvest, or as on the packet</source>
        <translation>Erntejahr oder wie auf der Packung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Test</source>
        <translation>Keimprobe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Day of the test</source>
        <translation>Tag der Keimprobe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Tested on</source>
        <translation>Geprüft am</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seeds or grams</source>
        <translation>Körner oder Gramm</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seeds that sprouted</source>
        <translation>Gekeimte Körner</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seeds laid out; 0 for no test</source>
        <translation>Ausgelegte Körner; 0 für keine Probe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>sprouted of</source>
        <translation>gekeimt von</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>give an amount</source>
        <translation>eine Menge angeben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>more seeds sprouted than were laid out</source>
        <translation>mehr Körner gekeimt als ausgelegt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>That is about {0} seeds.</source>
        <translation>Das sind etwa {0} Körner.</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <location filename="gardencanvas/app/beds_from_file.py"/>
        <source>Beds from a file</source>
        <translation>Beete aus einer Datei</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/clipboard.py"/>
        <source>Copied.</source>
        <translation>Kopiert.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/clipboard.py"/>
        <source>Cut {0}</source>
        <translation>{0} ausschneiden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/clipboard.py"/>
        <source>Paste {0}</source>
        <translation>{0} einfügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>&amp;What is known of the crop</source>
        <translation>&amp;Was über die Kultur bekannt ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>New &amp;variety…</source>
        <translation>Neue &amp;Sorte …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>New &amp;crop…</source>
        <translation>Neue &amp;Kultur …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>&amp;Take in own crops…</source>
        <translation>&amp;Eigene Kulturen übernehmen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>Write own crops to a &amp;file…</source>
        <translation>Eigene Kulturen in &amp;Datei schreiben …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/asking.py"/>
        <source>Choose a crop in the seed tin first.</source>
        <translation>Zuerst eine Kultur in der Saatgutkiste wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/fill/asking.py"/>
        <source>There is no bed there.</source>
        <translation>Dort ist kein Beet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Find a command</source>
        <translation>Befehl suchen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>What do you want to do?</source>
        <translation>Was soll geschehen?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>outside any bed</source>
        <translation>außerhalb der Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Find on the plan</source>
        <translation>Auf dem Plan suchen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Crop, variety, bed or support</source>
        <translation>Kultur, Sorte, Beet oder Stütze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>As it was at first</source>
        <translation>Wie es anfangs war</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Back or on to…</source>
        <translation>Zurück oder vor zu …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>fixture</source>
        <translation>festes Objekt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>support</source>
        <translation>Stütze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Bed map</source>
        <translation>Beetplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/strip_dialog.py"/>
        <source>Planting strip</source>
        <translation>Pflanzstreifen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Nothing to recover</source>
        <translation>Nichts wiederherzustellen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>No window ended with unsaved work.</source>
        <translation>Kein Fenster endete mit ungespeicherter Arbeit.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Repeat in a grid</source>
        <translation>Im Raster wiederholen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>Split a planting</source>
        <translation>Pflanzung teilen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tabs.py"/>
        <source>Gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tabs.py"/>
        <source>Jobs</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tabs.py"/>
        <source>Seeds</source>
        <translation>Saatgut</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Seed tin</source>
        <translation>Saatgutkiste</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Outline</source>
        <translation>Übersicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Crops and outline</source>
        <translation>Kulturen und Übersicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Season and findings</source>
        <translation>Saison und Befunde</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>The file is not where it was; save it again, or under another name.</source>
        <translation>Die Datei ist nicht mehr, wo sie war; erneut oder unter anderem Namen speichern.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>{0}, read-only</source>
        <translation>{0}, schreibgeschützt</translation>
    </message>
</context>
<context>
    <name>ManyPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>{0} selected</source>
        <translation>{0} ausgewählt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Verdicts</source>
        <translation>Urteile</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Root depth</source>
        <translation>Wurzeltiefe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Beds</source>
        <translation>Beete</translation>
    </message>
</context>
<context>
    <name>MaybeDay</name>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Ticked, the day is yours; else it is reckoned</source>
        <translation>Angekreuzt gilt der eigene Tag; sonst wird er berechnet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Reckoned; tick to set it</source>
        <translation>Berechnet; ankreuzen, um ihn zu setzen</translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <location filename="gardencanvas/app/menus/volunteers.py"/>
        <source>Choose a crop in the seed tin first.</source>
        <translation>Zuerst eine Kultur in der Saatgutkiste wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/volunteers.py"/>
        <source>What came &amp;up by itself</source>
        <translation>Was von selbst a&amp;ufging</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/volunteers.py"/>
        <source>&amp;Mark a place where it came up</source>
        <translation>Stelle &amp;markieren, an der es aufging</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/volunteers.py"/>
        <source>&amp;Keep it</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/volunteers.py"/>
        <source>&amp;Thin it to its spacing</source>
        <translation>Auf den Abstand &amp;vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/volunteers.py"/>
        <source>&amp;Remove it</source>
        <translation>&amp;Entfernen</translation>
    </message>
</context>
<context>
    <name>MixtureFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Varieties in the order in which they repeat</source>
        <translation>Sorten in der Folge, in der sie sich wiederholen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Add a variety to the sequence</source>
        <translation>Sorte zur Folge hinzufügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Varieties</source>
        <translation>Sorten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Shares of the varieties</source>
        <translation>Anteile der Sorten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>in turns</source>
        <translation>im Wechsel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Shares</source>
        <translation>Anteile</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Seedlings to a station</source>
        <translation>Sämlinge je Pflanzstelle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Change clump</source>
        <translation>Büschel ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Seedlings raised together make a clump, spaced and drawn as one</source>
        <translation>Gemeinsam angezogene Sämlinge bilden ein Büschel, das wie eine Pflanze Abstand hat und gezeichnet wird</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Per station</source>
        <translation>Je Stelle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>none in particular</source>
        <translation>keine bestimmte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>No variety of this crop is known; the seed tin's menu adds one</source>
        <translation>Keine Sorte dieser Kultur bekannt; das Menü der Saatgutkiste fügt eine hinzu</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Names with commas between; they repeat along the stations: A, B, A, B …</source>
        <translation>Namen mit Kommas dazwischen; sie wiederholen sich über die Pflanzstellen: A, B, A, B …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>How many stations each has, such as 2 : 1, evenly mixed; empty: in turns</source>
        <translation>Wie viele Pflanzstellen jede hat, etwa 2 : 1, gleichmäßig gemischt; leer: im Wechsel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Only where there are two varieties or more</source>
        <translation>Nur bei zwei oder mehr Sorten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>No variety of this crop is called “{0}”.</source>
        <translation>Keine Sorte dieser Kultur heißt „{0}“.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Change varieties</source>
        <translation>Sorten ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Give one whole number above 0 to each of the {0} varieties.</source>
        <translation>Jeder der {0} Sorten eine ganze Zahl über 0 geben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/mixture_fields.py"/>
        <source>Change shares</source>
        <translation>Anteile ändern</translation>
    </message>
</context>
<context>
    <name>MonthStrip</name>
    <message>
        <location filename="gardencanvas/app/month_strip.py"/>
        <source>The year at this site</source>
        <translation>Das Jahr an diesem Standort</translation>
    </message>
</context>
<context>
    <name>MonthsTable</name>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Monthly climate</source>
        <translation>Klima nach Monaten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Enter or a digit edits a cell; rows can be pasted</source>
        <translation>Eingabe oder eine Ziffer ändert ein Feld; Zeilen lassen sich einfügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Rain</source>
        <translation>Regen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean temperature of the month</source>
        <translation>Mitteltemperatur des Monats</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean of the days' lowest temperatures; leave the row empty if it is not known</source>
        <translation>Mittel der Tagestiefstwerte; Zeile leer lassen, wenn unbekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean of the days' highest temperatures; leave the row empty if it is not known</source>
        <translation>Mittel der Tageshöchstwerte; Zeile leer lassen, wenn unbekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Rain of the month; leave the row empty if it is not known</source>
        <translation>Regen des Monats; Zeile leer lassen, wenn unbekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}, {1}: “{2}” is not a number from {3} to {4} {5}.</source>
        <translation>{0}, {1}: „{2}“ ist keine Zahl von {3} bis {4} {5}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: {1} is missing; all twelve are needed.</source>
        <translation>{0}: {1} fehlt; alle zwölf werden gebraucht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: {1} is missing; give all twelve or leave the row empty.</source>
        <translation>{0}: {1} fehlt; alle zwölf angeben oder die Zeile leer lassen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: the minimum lies above the mean.</source>
        <translation>{0}: Das Minimum liegt über dem Mittel.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: the maximum lies below the mean.</source>
        <translation>{0}: Das Maximum liegt unter dem Mittel.</translation>
    </message>
</context>
<context>
    <name>NoteFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/note_fields.py"/>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/note_fields.py"/>
        <source>Change note</source>
        <translation>Notiz ändern</translation>
    </message>
</context>
<context>
    <name>Outline</name>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>name or verdict…</source>
        <translation>Name oder Urteil …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Filter the outline</source>
        <translation>Übersicht filtern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Bed, planting</source>
        <translation>Beet, Pflanzung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Outline of beds and plantings</source>
        <translation>Übersicht der Beete und Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>On bare plan</source>
        <translation>Außerhalb der Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Structures</source>
        <translation>Bauten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>{0}, locked</source>
        <translation>{0}, gesperrt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>{0}, hidden</source>
        <translation>{0}, verborgen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>{0}, {1}, harvest {2}</source>
        <translation>{0}, {1}, Ernte {2}</translation>
    </message>
</context>
<context>
    <name>OwnForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>What is missing or wrong</source>
        <translation>Was fehlt oder falsch ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>in this garden</source>
        <translation>diesen Garten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>in my library, for all gardens</source>
        <translation>alle Gärten (Sammlung)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>Keep it</source>
        <translation>Für</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>PageView</name>
    <message>
        <location filename="gardencanvas/app/printing/page_view.py"/>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
</context>
<context>
    <name>PastTable</name>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Last frost</source>
        <translation>Letzter Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>First frost</source>
        <translation>Erster Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Frosts of past years</source>
        <translation>Fröste vergangener Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Write days as in 12 May; write none for a year without frost</source>
        <translation>Tage wie 12. Mai schreiben; „kein Frost“ für ein Jahr ohne Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>“{0}” is no day: write it as in 12 May, or none.</source>
        <translation>„{0}“ ist kein Tag: wie 12. Mai schreiben oder „kein Frost“.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>“{0}”: which one is the month? Write it as a word, as in 12 May.</source>
        <translation>„{0}“: Welches ist der Monat? Als Wort schreiben, wie 12. Mai.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>“{0}”: there is no such day.</source>
        <translation>„{0}“: Diesen Tag gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>PatternFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>staggered</source>
        <translation>versetzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>back to its begin</source>
        <translation>zurück zum Anfang</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Of its middle on the plan</source>
        <translation>Seiner Mitte auf dem Plan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Of its first corner on the plan</source>
        <translation>Seiner ersten Ecke auf dem Plan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>From the plan’s left</source>
        <translation>Vom linken Rand des Plans</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>From the plan’s top</source>
        <translation>Vom oberen Rand des Plans</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>From left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>From top</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Spacing</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Between rows</source>
        <translation>Reihenabstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Across</source>
        <translation>Querabstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>As many as find room at its spacing</source>
        <translation>So viele, wie bei diesem Abstand Platz finden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Arrangement</source>
        <translation>Anordnung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Each number scatters them in another way, always the same for the same number</source>
        <translation>Jede Zahl streut sie anders; dieselbe Zahl immer gleich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>One place in</source>
        <translation>Eine Stelle von</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Of so many places it takes one; others may stand on those between</source>
        <translation>Von so vielen Stellen nimmt sie eine; dazwischen können andere stehen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>From place</source>
        <translation>Ab Stelle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>The first place that it takes</source>
        <translation>Die erste Stelle, die sie nimmt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>It takes every place</source>
        <translation>Sie nimmt jede Stelle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/pattern_fields.py"/>
        <source>Change spacing</source>
        <translation>Abstände ändern</translation>
    </message>
</context>
<context>
    <name>PictureDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>Save a picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>the plan</source>
        <translation>der Plan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>the season ribbon</source>
        <translation>das Jahresband</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>the plan and the season ribbon</source>
        <translation>Plan und Jahresband</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source> dpi</source>
        <translation> dpi</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Fineness of a PNG</source>
        <translation>&amp;Feinheit eines PNG</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Background picture</source>
        <translation>&amp;Hintergrundbild</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>As on {0}, the date cursor's day.</source>
        <translation>Wie am {0}, dem Tag des Datumszeigers.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>Picture (*.png);;Drawing (*.svg)</source>
        <translation>Bild (*.png);;Zeichnung (*.svg)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>The picture is not saved</source>
        <translation>Das Bild ist nicht gespeichert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
</context>
<context>
    <name>PlaceSearch</name>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Find a town near the garden</source>
        <translation>Ort in der Nähe des Gartens suchen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Arrow keys choose from the list below, Enter takes the chosen place</source>
        <translation>Pfeiltasten wählen aus der Liste darunter, Eingabe nimmt den gewählten Ort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Places found</source>
        <translation>Gefundene Orte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>{0}, {1}</source>
        <translation>{0}, {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>No town of this name is in the list of {0}. Try a larger one nearby, or give latitude and longitude below.</source>
        <translation>Kein Ort dieses Namens steht unter den {0} der Liste. Einen größeren in der Nähe versuchen oder unten Breite und Länge angeben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Type the first letters of a town nearby: it brings its position, its climate and a rough guess of its frosts. All of it can be changed below.</source>
        <translation>Die ersten Buchstaben eines nahen Ortes tippen: Er bringt Lage, Klima und eine grobe Schätzung der Fröste mit. Alles lässt sich unten ändern.</translation>
    </message>
</context>
<context>
    <name>PlanMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Select and move</source>
        <translation>&amp;Auswählen und verschieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Draw a &amp;bed</source>
        <translation>&amp;Beet zeichnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Draw a bed by &amp;corners</source>
        <translation>Beet nach &amp;Ecken zeichnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Measure</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Pan</source>
        <translation>Plan &amp;schieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Single &amp;plants of the planting</source>
        <translation>Einzelne &amp;Pflanzen der Pflanzung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Fi&amp;ll with the crop in hand…</source>
        <translation>Mit der Kultur in der Hand &amp;füllen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Again…</source>
        <translation>&amp;Folgesätze …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Find on the plan…</source>
        <translation>Auf dem Plan su&amp;chen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Find a crop in the seed &amp;tin</source>
        <translation>&amp;Kultur in der Saatgutkiste suchen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>S&amp;ite, frost and climate…</source>
        <translation>S&amp;tandort, Frost und Klima …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>More be&amp;ds and paths</source>
        <translation>&amp;Weitere Beete und Wege</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>S&amp;upports</source>
        <translation>Stüt&amp;zen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Co&amp;vers</source>
        <translation>Ab&amp;deckungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Fi&amp;xtures</source>
        <translation>Feste &amp;Objekte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>It is locked; unlock it first.</source>
        <translation>Gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Select one planting first.</source>
        <translation>Zuerst eine einzelne Pflanzung auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Draw a bed first.</source>
        <translation>Zuerst ein Beet zeichnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Select one planting, or one succession, first.</source>
        <translation>Zuerst eine Pflanzung oder eine Folge von Sätzen auswählen.</translation>
    </message>
</context>
<context>
    <name>PlansDialog</name>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Two layouts side by side</source>
        <translation>Zwei Anbaupläne nebeneinander</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>&amp;Swipe</source>
        <translation>&amp;Wischen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Lay the second layout over the first and uncover it with the slider</source>
        <translation>Den zweiten Anbauplan über den ersten legen und mit dem Schieber aufdecken</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Take over to the &amp;right</source>
        <translation>Nach &amp;rechts übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Take over to the &amp;left</source>
        <translation>Nach &amp;links übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Left layout</source>
        <translation>Linker Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Right layout</source>
        <translation>Rechter Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Puts what is selected into the other layout; a bed with all that lies in it</source>
        <translation>Legt Ausgewähltes in den anderen Anbauplan; ein Beet mit allem, was darin liegt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Take over into {0}</source>
        <translation>In {0} übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>It is there already, just so.</source>
        <translation>Es ist dort schon genau so.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Both sides show the same layout: choose another for one of them.</source>
        <translation>Beide Seiten zeigen denselben Anbauplan: auf einer einen anderen wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Left: {0}. Right: {1}. Another verdict: {2}. To copy plantings or a selected bed, drag them across.</source>
        <translation>Links: {0}. Rechts: {1}. Anderes Urteil: {2}. Pflanzungen oder ein ausgewähltes Beet zum Kopieren hinüberziehen.</translation>
    </message>
</context>
<context>
    <name>PlantingPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Exact numbers</source>
        <translation>Genaue Zahlen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>on bare plan</source>
        <translation>außerhalb der Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>block</source>
        <translation>Block</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>edging</source>
        <translation>Einfassung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>spots</source>
        <translation>Einzelplätze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>single plant</source>
        <translation>Einzelpflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Root depth</source>
        <translation>Wurzeltiefe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Came up</source>
        <translation>Aufgegangen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>{0}, wants {1}</source>
        <translation>{0}, braucht {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Days between its last harvest and the date its neighbour would smother it.</source>
        <translation>Tage zwischen der letzten Ernte und dem Tag, an dem der Nachbar sie überwachsen würde.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Days to spare</source>
        <translation>Tage Spielraum</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Estimated</source>
        <translation>Geschätzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>No book at hand gives these for this crop.</source>
        <translation>Kein vorliegendes Buch nennt diese Werte für diese Kultur.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>{0} at best; ripens in {1} of years</source>
        <translation>{0} bestenfalls; reift in {1} der Jahre</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>{0}, 8 years in 10</source>
        <translation>{0}, in 8 von 10 Jahren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>In an average year {0}.
</source>
        <translation>In einem mittleren Jahr {0}.
</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Eight of ten simulated years round your monthly means lie between these dates.
</source>
        <translation>Acht von zehn simulierten Jahren um die Monatsmittel liegen zwischen diesen Tagen.
</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Days to harvest, reckoned in warmth: </source>
        <translation>Tage bis zur Ernte, nach Wärme gerechnet: </translation>
    </message>
</context>
<context>
    <name>Position</name>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Name of the place</source>
        <translation>Name des Ortes</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Decimal degrees, as in 51.5 N or -33.87, or degrees and minutes</source>
        <translation>Dezimalgrad wie 51,5 N oder -33,87, oder Grad und Minuten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source> ft</source>
        <translation> ft</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source> m</source>
        <translation> m</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Elevation above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Compass bearing that the top of the plan looks to</source>
        <translation>Himmelsrichtung, in die der obere Rand des Plans zeigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>0 is north, 90 east, 180 south, 270 west</source>
        <translation>0 ist Nord, 90 Ost, 180 Süd, 270 West</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>La&amp;titude</source>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Lon&amp;gitude</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>&amp;Elevation</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>The top of the plan &amp;looks to</source>
        <translation>Oberer &amp;Rand des Plans zeigt nach</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Give the place a name.</source>
        <translation>Dem Ort einen Namen geben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>N or S</source>
        <translation>N oder S</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>E or W</source>
        <translation>E (Ost) oder W</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0}: give decimal degrees, as in {1}.</source>
        <translation>{0}: Dezimalgrad angeben, wie {1}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} cannot be read: write decimal degrees, as in {1}.</source>
        <translation>{0} ist nicht lesbar: Dezimalgrad schreiben, wie {1}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} goes to {2} degrees on either side, no further.</source>
        <translation>{0} reicht auf jeder Seite bis {2} Grad, nicht weiter.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} has both a sign and a letter: leave one of them out.</source>
        <translation>{0} hat Vorzeichen und Buchstaben: eines davon weglassen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} takes {3}, not that letter.</source>
        <translation>{0} nimmt {3}, nicht diesen Buchstaben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Longitude</source>
        <translation>Länge</translation>
    </message>
</context>
<context>
    <name>PrintDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Landscape</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Portrait</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Lies</source>
        <translation>&amp;Lage</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>P&amp;rint…</source>
        <translation>D&amp;rucken …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Page before (Page Up)</source>
        <translation>Vorige Seite (Bild auf)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Next page (Page Down)</source>
        <translation>Nächste Seite (Bild ab)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Smaller (-)</source>
        <translation>Kleiner (-)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Larger (+)</source>
        <translation>Größer (+)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Whole page (0)</source>
        <translation>Ganze Seite (0)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>These are {0} pages. A smaller scale or a larger paper takes fewer.</source>
        <translation>Das sind {0} Seiten. Ein kleinerer Maßstab oder größeres Papier braucht weniger.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>{0} of {1}</source>
        <translation>{0} von {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>{0} %</source>
        <translation>{0} %</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>These are {0} pages. Go on?</source>
        <translation>Das sind {0} Seiten. Fortfahren?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Sent to the printer.</source>
        <translation>An den Drucker gesendet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Given up; nothing was written.</source>
        <translation>Abgebrochen; nichts geschrieben.</translation>
    </message>
</context>
<context>
    <name>QApplication</name>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>This file cannot be opened. {0}</source>
        <translation>Diese Datei lässt sich nicht öffnen. {0}</translation>
    </message>
</context>
<context>
    <name>QWidget</name>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source> since {0}</source>
        <translation> seit {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>This garden is open already</source>
        <translation>Dieser Garten ist schon geöffnet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“{0}” is open in another window{1}.</source>
        <translation>„{0}“ ist{1} in einem anderen Fenster geöffnet.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>You can look at it here, and save what you change under another name. Or let this window write the file from now on: the other one then becomes read-only and keeps its unsaved work.</source>
        <translation>Er lässt sich hier ansehen und unter anderem Namen speichern. Oder dieses Fenster schreibt die Datei von nun an: Das andere wird dann schreibgeschützt und behält seine ungespeicherte Arbeit.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Open read-only</source>
        <translation>Schreibgeschützt öffnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Take over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>The file is not there any more</source>
        <translation>Die Datei ist nicht mehr da</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“{0}” was moved, renamed or deleted, or its disk is not connected.</source>
        <translation>„{0}“ wurde verschoben, umbenannt oder gelöscht, oder das Laufwerk ist nicht verbunden.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>The garden is still here in this window.</source>
        <translation>Der Garten ist in diesem Fenster noch da.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Save it there again</source>
        <translation>Dort wieder speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Save as…</source>
        <translation>Speichern unter …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>You have changes here that are not saved.</source>
        <translation>Hier gibt es ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Keep both</source>
        <translation>Beide behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Take the file's</source>
        <translation>Die der Datei nehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Keep mine</source>
        <translation>Meine behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>The file was changed</source>
        <translation>Die Datei wurde geändert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Another program changed “{0}” since it was opened or saved here. {1}</source>
        <translation>Ein anderes Programm hat „{0}“ geändert, seit die Datei hier geöffnet oder gespeichert wurde. {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“Keep both” saves yours beside it under a name of its own. Whatever you choose, the other one stays among the earlier versions in the File menu.</source>
        <translation>„Beide behalten“ speichert die eigene Fassung unter eigenem Namen daneben. In jedem Fall bleibt die andere unter den früheren Versionen im Menü Datei.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Read-only here</source>
        <translation>Hier schreibgeschützt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“{0}” is open in another window, which may be changing it.</source>
        <translation>„{0}“ ist in einem anderen Fenster geöffnet, das die Datei ändern kann.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Your changes are kept. Save them under another name, or let this window write the file.</source>
        <translation>Die Änderungen bleiben erhalten. Unter anderem Namen speichern oder dieses Fenster die Datei schreiben lassen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Take over and save</source>
        <translation>Übernehmen und speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Crops (*.toml)</source>
        <translation>Kulturen (*.toml)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Take in crops of your own</source>
        <translation>Eigene Kulturen übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Write your own crops to a file</source>
        <translation>Eigene Kulturen in eine Datei schreiben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Take it out?</source>
        <translation>Herausnehmen?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>“{0}” is taken out of your library for good.</source>
        <translation>„{0}“ wird endgültig aus der eigenen Sammlung genommen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Save the garden?</source>
        <translation>Garten speichern?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>“{0}” has changes that are not saved.</source>
        <translation>„{0}“ hat ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>If you do not save, they are lost.</source>
        <translation>Ohne Speichern gehen sie verloren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Open a garden</source>
        <translation>Garten öffnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Save the garden</source>
        <translation>Garten speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>No printer is set up on this computer: save the pages as PDF and print them elsewhere.</source>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet: die Seiten als PDF speichern und anderswo drucken.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>This printer does not take {0} with margins of 12 mm: choose another paper.</source>
        <translation>Dieser Drucker nimmt {0} mit 12 mm Rand nicht an: anderes Papier wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>Pages…</source>
        <translation>Seiten …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/saving.py"/>
        <source>Saving “{0}”. Your work is kept on this computer meanwhile.</source>
        <translation>„{0}“ wird gespeichert. Die Arbeit bleibt inzwischen auf diesem Computer erhalten.</translation>
    </message>
</context>
<context>
    <name>Range</name>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>most</source>
        <translation>höchstens</translation>
    </message>
</context>
<context>
    <name>RangeGrid</name>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>most</source>
        <translation>höchstens</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <location filename="gardencanvas/app/inspector/reasons.py"/>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/reasons.py"/>
        <source>Nothing else uses this space while it stands.</source>
        <translation>Nichts anderes nutzt diesen Platz, solange sie steht.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/reasons.py"/>
        <source>and {0} more in the findings list</source>
        <translation>und {0} weitere in der Liste der Befunde</translation>
    </message>
</context>
<context>
    <name>RecoveryDialog</name>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Work that was not saved</source>
        <translation>Nicht gespeicherte Arbeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>The program ended before this was saved. Nothing is thrown away until you say so.</source>
        <translation>Das Programm endete, bevor dies gespeichert war. Nichts wird ohne Zustimmung verworfen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Unsaved work</source>
        <translation>Ungespeicherte Arbeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Open it</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Keep &amp;both</source>
        <translation>&amp;Beide behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Keep the &amp;file's</source>
        <translation>Die der &amp;Datei behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Later</source>
        <translation>&amp;Später</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>never saved to a file</source>
        <translation>nie in eine Datei gespeichert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>A garden</source>
        <translation>Ein Garten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It cannot be read: {0}</source>
        <translation>Nicht lesbar: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Save as…</source>
        <translation>Speichern &amp;unter …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Throw away</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Saves it beside the file, under a name of its own</source>
        <translation>Speichert sie neben der Datei unter eigenem Namen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>The file stays as it is; this work stays among its earlier versions</source>
        <translation>Die Datei bleibt, wie sie ist; diese Arbeit bleibt unter den früheren Versionen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Its file is not there, or cannot be opened.</source>
        <translation>Die Datei ist nicht da oder lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>{0} plantings in {1} layouts. {2}</source>
        <translation>Pflanzungen: {0}, Anbaupläne: {1}. {2}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Against the file: {0}</source>
        <translation>Gegenüber der Datei: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It cannot be opened</source>
        <translation>Lässt sich nicht öffnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>recovered</source>
        <translation>wiederhergestellt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It could not be saved</source>
        <translation>Konnte nicht gespeichert werden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It stays for now</source>
        <translation>Es bleibt vorerst</translation>
    </message>
</context>
<context>
    <name>RemedyList</name>
    <message>
        <location filename="gardencanvas/app/inspector/remedy_list.py"/>
        <source>Looking for a small change that mends this …</source>
        <translation>Suche eine kleine Änderung, die Abhilfe schafft …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/remedy_list.py"/>
        <source>No small change mends this.</source>
        <translation>Keine kleine Änderung schafft Abhilfe.</translation>
    </message>
</context>
<context>
    <name>RepeatDialog</name>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Step across</source>
        <translation>Schritt waagerecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Step down</source>
        <translation>Schritt senkrecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Times &amp;across</source>
        <translation>Anzahl &amp;waagerecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>&amp;Step across</source>
        <translation>&amp;Schritt waagerecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Times &amp;down</source>
        <translation>Anzahl s&amp;enkrecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Step do&amp;wn</source>
        <translation>S&amp;chritt senkrecht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>copy</source>
        <translation>Kopie</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>copies</source>
        <translation>Kopien</translation>
    </message>
</context>
<context>
    <name>RibbonView</name>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>Season ribbon</source>
        <translation>Jahresband</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>Left and right move the date cursor by a day, Page keys by a month.</source>
        <translation>Pfeil links und rechts bewegen den Datumszeiger um einen Tag, Bild auf und ab um einen Monat.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>On bare plan</source>
        <translation>Außerhalb der Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>The season shows here once something is planted.</source>
        <translation>Hier zeigt sich die Saison, sobald etwas gepflanzt ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>Move in time</source>
        <translation>Zeitlich verschieben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>{0}{1} days</source>
        <translation>{0}{1} Tage</translation>
    </message>
</context>
<context>
    <name>Safekeeping</name>
    <message>
        <location filename="gardencanvas/app/safekeeping.py"/>
        <source>The disk does not answer.</source>
        <translation>Das Laufwerk antwortet nicht.</translation>
    </message>
</context>
<context>
    <name>SearchList</name>
    <message>
        <location filename="gardencanvas/app/search_list.py"/>
        <source>Nothing is called so.</source>
        <translation>Nichts heißt so.</translation>
    </message>
</context>
<context>
    <name>SearchProgress</name>
    <message>
        <location filename="gardencanvas/app/search_progress.py"/>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
</context>
<context>
    <name>SeasonMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Season</source>
        <translation>&amp;Saison</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>A week &amp;earlier</source>
        <translation>Eine Woche &amp;früher</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>A week &amp;later</source>
        <translation>Eine Woche &amp;später</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Play the season</source>
        <translation>Saison &amp;abspielen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Today</source>
        <translation>&amp;Heute</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>What &amp;fits at a place…</source>
        <translation>Was &amp;passt an einen Ort …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>Where does the &amp;crop fit?</source>
        <translation>Wohin passt die &amp;Kultur?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>What can be &amp;started now?</source>
        <translation>Was kann &amp;jetzt beginnen?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Next finding</source>
        <translation>&amp;Nächster Befund</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Previous finding</source>
        <translation>&amp;Voriger Befund</translation>
    </message>
</context>
<context>
    <name>SeasonPanel</name>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>▶ Play</source>
        <translation>▶ Abspielen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Show the garden growing (P)</source>
        <translation>Den Garten wachsen sehen (P)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Date shown on the plan</source>
        <translation>Datum, das der Plan zeigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Zoom from years to weeks</source>
        <translation>Maßstab von Jahren bis Wochen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Zoom from years to weeks (Ctrl and wheel)</source>
        <translation>Maßstab von Jahren bis Wochen (Strg und Rad)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>❚❚ Pause</source>
        <translation>❚❚ Pause</translation>
    </message>
</context>
<context>
    <name>SeedTin</name>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>name, family…</source>
        <translation>Name, Familie …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Search the seed tin</source>
        <translation>Saatgutkiste durchsuchen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Add a variety, a crop or a seed lot of your own</source>
        <translation>Eigene Sorte, Kultur oder Saatgutpartie hinzufügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>as</source>
        <translation>als</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Drop crops as</source>
        <translation>Kulturen ablegen als</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>What a crop is dropped as; the digits 1–9 change it on the way</source>
        <translation>Als was eine Kultur abgelegt wird; die Ziffern 1–9 ändern es unterwegs</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>block</source>
        <translation>Block</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>single plant</source>
        <translation>Einzelpflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>staggered block</source>
        <translation>versetzter Block</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>edging</source>
        <translation>Einfassung</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>between the rows</source>
        <translation>zwischen den Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Select one bed or one planting on the plan: what fits there is listed here.</source>
        <translation>Ein Beet oder eine Pflanzung auf dem Plan auswählen: Hier steht, was dort passt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Nothing found yet.</source>
        <translation>Noch nichts gefunden.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>No favourites yet. A star at a crop makes it one.</source>
        <translation>Noch keine Favoriten. Ein Stern an einer Kultur macht sie dazu.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>No seed lots yet. Add one with + or from a crop's menu.</source>
        <translation>Noch keine Saatgutpartien. Mit + oder im Menü einer Kultur hinzufügen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>No such crop. Try another spelling or fewer filters.</source>
        <translation>Keine solche Kultur. Andere Schreibweise oder weniger Filter versuchen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>your own</source>
        <translation>eigene</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>variety</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>old seed {0}</source>
        <translation>altes Saatgut {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>seed {0}</source>
        <translation>Saatgut {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>lower</source>
        <translation>niedriger</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>taller</source>
        <translation>höher</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>narrower</source>
        <translation>schmaler</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>wider</source>
        <translation>breiter</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>earlier</source>
        <translation>früher</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>shorter harvest</source>
        <translation>kürzere Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>longer harvest</source>
        <translation>längere Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>New variety…</source>
        <translation>Neue Sorte …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>New crop…</source>
        <translation>Neue Kultur …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Add a seed lot…</source>
        <translation>Saatgutpartie hinzufügen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Take in a file…</source>
        <translation>Datei übernehmen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Write to a file…</source>
        <translation>In Datei schreiben …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Pick up</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>What is known of it… (F3)</source>
        <translation>Was über sie bekannt ist … (F3)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Where would it fit?</source>
        <translation>Wohin passt sie?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Fill the bed with it…</source>
        <translation>Das Beet damit füllen …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Favourite</source>
        <translation>Favorit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Wanted for the next order</source>
        <translation>Für die nächste Bestellung gewünscht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Change lot: {0}</source>
        <translation>Partie ändern: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>New crop like this…</source>
        <translation>Neue Kultur wie diese …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Change…</source>
        <translation>Ändern …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Take it out…</source>
        <translation>Herausnehmen …</translation>
    </message>
</context>
<context>
    <name>SeedsPanel</name>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Table…</source>
        <translation>Tabelle …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Save as a table (.csv)</source>
        <translation>Als Tabelle speichern (.csv)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>See, save or print the order</source>
        <translation>Bestellung ansehen, speichern oder drucken</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>What to order and raise</source>
        <translation>Was zu bestellen und vorzuziehen ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Nothing is planted yet: nothing to order.</source>
        <translation>Noch nichts gepflanzt: nichts zu bestellen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>crop or variety</source>
        <translation>Kultur oder Sorte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>crops and varieties</source>
        <translation>Kulturen und Sorten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>, {0} not known</source>
        <translation>, {0} nicht bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>seed for {0}{1}</source>
        <translation>Saatgut für {0}{1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Save the order as a table</source>
        <translation>Bestellung als Tabelle speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Seeds and plants</source>
        <translation>Saatgut und Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Seeds and plants for {0}</source>
        <translation>Saatgut und Pflanzen für {0}</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <location filename="gardencanvas/app/commands.py"/>
        <source>Lock</source>
        <translation>Sperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/commands.py"/>
        <source>Unlock</source>
        <translation>Entsperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/commands.py"/>
        <source>Duplicate layout</source>
        <translation>Anbauplan duplizieren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/session.py"/>
        <source>Work before the program ended</source>
        <translation>Arbeit vor dem Ende des Programms</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/volunteers.py"/>
        <source>Select one planting that came up by itself first.</source>
        <translation>Zuerst eine Pflanzung auswählen, die von selbst aufging.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/volunteers.py"/>
        <source>It is locked; unlock it first.</source>
        <translation>Gesperrt; zuerst entsperren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/volunteers.py"/>
        <source>It is kept already.</source>
        <translation>Sie wird schon behalten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/volunteers.py"/>
        <source>Keep {0}</source>
        <translation>{0} behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/volunteers.py"/>
        <source>Thin {0}</source>
        <translation>{0} vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/volunteers.py"/>
        <source>Remove {0}</source>
        <translation>{0} entfernen</translation>
    </message>
</context>
<context>
    <name>ShownAndLocked</name>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Shown and locked</source>
        <translation>Gezeigt und gesperrt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>What is shown and what is locked on the plan</source>
        <translation>Was auf dem Plan gezeigt und was gesperrt ist</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Covers</source>
        <translation>Abdeckungen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Supports</source>
        <translation>Stützen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Fixtures</source>
        <translation>Feste Objekte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Beds</source>
        <translation>Beete</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Paths</source>
        <translation>Wege</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>{0} ({1})</source>
        <translation>{0} ({1})</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Background picture</source>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Background</source>
        <translation>Hintergrund</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Locked</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>{0}: shown</source>
        <translation>{0}: gezeigt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>{0}: locked</source>
        <translation>{0}: gesperrt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Lock all: {0}</source>
        <translation>Alle sperren: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Unlock all: {0}</source>
        <translation>Alle entsperren: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Lock the background picture</source>
        <translation>Hintergrundbild sperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Unlock the background picture</source>
        <translation>Hintergrundbild entsperren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Show the background picture</source>
        <translation>Hintergrundbild zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shown_and_locked.py"/>
        <source>Hide the background picture</source>
        <translation>Hintergrundbild verbergen</translation>
    </message>
</context>
<context>
    <name>Sifting</name>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>Trying {0} of {1} {2}</source>
        <translation>Prüfe {0} von {1} {2}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>{0} of {1} {2}</source>
        <translation>{0} von {1} {2}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>fit in {0}</source>
        <translation>passen in {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>fit beside {0}</source>
        <translation>passen neben {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>can start {0}</source>
        <translation>können beginnen: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source> and </source>
        <translation> und </translation>
    </message>
</context>
<context>
    <name>SiteDialog</name>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Where is the garden?</source>
        <translation>Wo liegt der Garten?</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Take its climate</source>
        <translation>Sein Klima übernehmen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Put the old ones back</source>
        <translation>Die alten zurückholen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>The year there</source>
        <translation>Das Jahr dort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>line: mean temperature, band: minimum to maximum, bars: rain</source>
        <translation>Linie: Mitteltemperatur, Band: Minimum bis Maximum, Balken: Regen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Places: GeoNames, CC BY 4.0. Climate: contains modified Copernicus Climate Change Service information (ERA5); neither the European Commission nor ECMWF is responsible for any use of it. Elevations: open terrain models.</source>
        <translation>Orte: GeoNames, CC BY 4.0. Klima: enthält veränderte Informationen des Copernicus Climate Change Service (ERA5); weder die Europäische Kommission noch das EZMW haften für deren Verwendung. Höhen: offene Geländemodelle.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>All credits…</source>
        <translation>Alle Nachweise …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Months and frost are now those of {0}.</source>
        <translation>Monate und Frost sind jetzt die von {0}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>In the list: {0}</source>
        <translation>In der Liste: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Nearest in the list: {0}, {1} km</source>
        <translation>Nächster in der Liste: {0}, {1} km</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Credits of the list of places</source>
        <translation>Nachweise der Ortsliste</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Change the site</source>
        <translation>Standort ändern</translation>
    </message>
</context>
<context>
    <name>SplitDialog</name>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>between rows</source>
        <translation>zwischen Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>across the rows</source>
        <translation>quer zu den Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>Cut &amp;where</source>
        <translation>&amp;Wo schneiden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>After &amp;how many</source>
        <translation>&amp;Nach wie vielen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>plants of each row</source>
        <translation>Pflanzen jeder Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>{0} {1} and {2}</source>
        <translation>{0} {1} und {2}</translation>
    </message>
</context>
<context>
    <name>StandingLabel</name>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Read-only · {0}</source>
        <translation>Schreibgeschützt · {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Read-only</source>
        <translation>Schreibgeschützt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Edits are not kept</source>
        <translation>Änderungen werden nicht gesichert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Keeping edits…</source>
        <translation>Änderungen werden gesichert …</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Edits kept {0}</source>
        <translation>Änderungen gesichert {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Not saved to the file yet; a copy on this computer is offered if the program ends.</source>
        <translation>Noch nicht in der Datei gespeichert; endet das Programm, wird eine Kopie auf diesem Computer angeboten.</translation>
    </message>
</context>
<context>
    <name>StartFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Started</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>sown in place</source>
        <translation>Direktsaat</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>raised, planted out</source>
        <translation>vorgezogen, ausgepflanzt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>set</source>
        <translation>gesteckt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>volunteer</source>
        <translation>Selbstaussaat</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>In the bed from</source>
        <translation>Im Beet ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>In bed from</source>
        <translation>Im Beet ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Sown under glass on</source>
        <translation>Unter Glas gesät am</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Days that the date may be off</source>
        <translation>Tage, um die das Datum danebenliegen kann</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>known</source>
        <translation>bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>How many days earlier or later it may have come up; 0: it is known</source>
        <translation>Wie viele Tage früher oder später es aufgegangen sein kann; 0: bekannt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Sown on</source>
        <translation>Gesät am</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Give or take</source>
        <translation>Plus/minus</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Its date is not moved</source>
        <translation>Das Datum bleibt fest</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>The program never proposes another date for it</source>
        <translation>Das Programm schlägt nie ein anderes Datum vor</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Out of the bed on</source>
        <translation>Aus dem Beet am</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Change end</source>
        <translation>Ende ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Out on</source>
        <translation>Geräumt am</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/start_fields.py"/>
        <source>Change start</source>
        <translation>Beginn ändern</translation>
    </message>
</context>
<context>
    <name>StripDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/strip_dialog.py"/>
        <source>Planting strip: {0}</source>
        <translation>Pflanzstreifen: {0}</translation>
    </message>
</context>
<context>
    <name>SuccessionDialog</name>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Change the succession</source>
        <translation>Folgesätze ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Again</source>
        <translation>Folgesätze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Days between</source>
        <translation>Tage dazwischen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>What the days lie between</source>
        <translation>Wozwischen die Tage liegen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>days from harvest to harvest</source>
        <translation>Tage von Ernte zu Ernte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>days from start to start</source>
        <translation>Tage von Beginn zu Beginn</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Again &amp;every</source>
        <translation>Wieder &amp;alle</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>&amp;First start</source>
        <translation>&amp;Erster Beginn</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>First start</source>
        <translation>Erster Beginn</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>The first part is pinned or locked.</source>
        <translation>Der erste Satz ist festgelegt oder gesperrt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>row by row</source>
        <translation>Reihe für Reihe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>part by part along its length</source>
        <translation>Satz für Satz der Länge nach</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>as new plantings beside it</source>
        <translation>als neue Pflanzungen daneben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Where the parts lie</source>
        <translation>Wo die Sätze liegen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>&amp;Laid out</source>
        <translation>&amp;Verteilt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Number of parts</source>
        <translation>Anzahl der Sätze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>as &amp;many as ripen</source>
        <translation>so viele wie &amp;reifen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>&amp;Parts</source>
        <translation>&amp;Sätze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Harvest, 8 years in 10</source>
        <translation>Ernte, in 8 von 10 Jahren</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Parts of the succession</source>
        <translation>Sätze der Folge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Succession of {0}</source>
        <translation>Folgesätze: {0}</translation>
    </message>
</context>
<context>
    <name>ThingFields</name>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Canes or posts</source>
        <translation>Stäbe oder Pfosten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>0: as many as usual for its length</source>
        <translation>0: so viele wie üblich für die Länge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>On from</source>
        <translation>Auf ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Off on</source>
        <translation>Ab am</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Crown from</source>
        <translation>Krone ab</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Light it lets through</source>
        <translation>Licht, das durchkommt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/thing_fields.py"/>
        <source>Change {0}</source>
        <translation>{0} ändern</translation>
    </message>
</context>
<context>
    <name>ThingPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Exact numbers</source>
        <translation>Genaue Zahlen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Cane tips stand at eye height: cap them, and anchor what can fall.</source>
        <translation>Stabspitzen auf Augenhöhe: Kappen aufsetzen und verankern, was umfallen kann.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Light it lets through</source>
        <translation>Licht, das durchkommt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>start of the season</source>
        <translation>Beginn der Saison</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>end of the season</source>
        <translation>Ende der Saison</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>On</source>
        <translation>Aufgelegt</translation>
    </message>
</context>
<context>
    <name>ToolRow</name>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Select</source>
        <translation>Auswahl</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Layout shown</source>
        <translation>Gezeigter Anbauplan</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Fit</source>
        <translation>Alles</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Fit the plan (Ctrl+9)</source>
        <translation>Plan einpassen (Strg+9)</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Layout shown: {0}</source>
        <translation>Gezeigter Anbauplan: {0}</translation>
    </message>
</context>
<context>
    <name>TwoPlans</name>
    <message>
        <location filename="gardencanvas/app/comparing/two_plans.py"/>
        <source>How much of the second layout is uncovered</source>
        <translation>Wie viel vom zweiten Anbauplan aufgedeckt ist</translation>
    </message>
</context>
<context>
    <name>VarietyForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>New variety</source>
        <translation>Neue Sorte</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Change the variety</source>
        <translation>Sorte ändern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Crop</source>
        <translation>Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Leave empty what is as with the crop.</source>
        <translation>Leer lassen, was wie bei der Kultur ist.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Size and spacing</source>
        <translation>Größe und Abstand</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Growth</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>as the crop</source>
        <translation>wie die Kultur</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Drawn as</source>
        <translation>Gezeichnet als</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Support</source>
        <translation>Stütze</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>there is no crop “{0}”</source>
        <translation>eine Kultur „{0}“ gibt es nicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>give it a name</source>
        <translation>einen Namen angeben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>{0} has a variety of that name</source>
        <translation>{0} hat schon eine Sorte dieses Namens</translation>
    </message>
</context>
<context>
    <name>VersionsDialog</name>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Earlier versions</source>
        <translation>Frühere Versionen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Versions, newest first</source>
        <translation>Versionen, neueste zuerst</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Add as a new &amp;layout</source>
        <translation>Als neuen &amp;Anbauplan hinzufügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>It comes beside yours; Edit, Undo takes it away again</source>
        <translation>Er kommt zu den eigenen dazu; Bearbeiten, Rückgängig nimmt ihn wieder weg</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Save as a new &amp;file</source>
        <translation>Als neue &amp;Datei speichern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>No earlier versions are kept yet: each save keeps one.</source>
        <translation>Noch keine früheren Versionen: Jedes Speichern behält eine.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>From then until now: {0}</source>
        <translation>Von damals bis jetzt: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Plan of {0}</source>
        <translation>Plan vom {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>It cannot be added</source>
        <translation>Lässt sich nicht hinzufügen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Restore a layout</source>
        <translation>Anbauplan wiederherstellen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>of</source>
        <translation>vom</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>It could not be saved</source>
        <translation>Konnte nicht gespeichert werden</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Saved as {0}.</source>
        <translation>Gespeichert als {0}.</translation>
    </message>
</context>
<context>
    <name>ViewMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;View</source>
        <translation>A&amp;nsicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Zoom &amp;in</source>
        <translation>&amp;Vergrößern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Fit the plan</source>
        <translation>Plan &amp;einpassen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Fit the &amp;selection</source>
        <translation>&amp;Auswahl einpassen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Show &amp;everything</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>What is shown and &amp;locked</source>
        <translation>Gezeigtes und &amp;Gesperrtes</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>S&amp;nap</source>
        <translation>Ein&amp;rasten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Seed &amp;tin and outline</source>
        <translation>&amp;Saatgutkiste und Übersicht</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Inspector</source>
        <translation>E&amp;igenschaften</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Season and &amp;findings</source>
        <translation>Saison und &amp;Befunde</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Centimetres and metres</source>
        <translation>&amp;Zentimeter und Meter</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Inches and feet</source>
        <translation>Z&amp;oll und Fuß</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Select something first.</source>
        <translation>Zuerst etwas auswählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Nothing is hidden.</source>
        <translation>Nichts ist verborgen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>The language changes when the program is opened the next time.</source>
        <translation>Die Sprache wechselt beim nächsten Öffnen des Programms.</translation>
    </message>
</context>
<context>
    <name>VolunteerBox</name>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Thin</source>
        <translation>Vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Keep what came up</source>
        <translation>Aufgegangenes behalten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Thin it to its spacing</source>
        <translation>Auf den Abstand vereinzeln</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Remove what came up</source>
        <translation>Aufgegangenes entfernen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>It stays, and its date is not moved</source>
        <translation>Es bleibt, und sein Datum wird nicht verschoben</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Those too near are left out</source>
        <translation>Zu nahe stehende werden ausgelassen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/volunteer.py"/>
        <source>Take it out of the plan</source>
        <translation>Aus dem Plan nehmen</translation>
    </message>
</context>
<context>
    <name>YearPicture</name>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>mean {0} to {1}</source>
        <translation>Mittel {0} bis {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>{0} mm of rain</source>
        <translation>{0} mm Regen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>last frost {0}, first frost {1}</source>
        <translation>letzter Frost {0}, erster Frost {1}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>The year: {0}</source>
        <translation>Das Jahr: {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>no climate yet</source>
        <translation>noch kein Klima</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>last frost {0}</source>
        <translation>letzter Frost {0}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>first frost {0}</source>
        <translation>erster Frost {0}</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <location filename="gardencanvas/app/comparing/plot.py"/>
        <source>{line}: {most} {unit} at most</source>
        <translation>{line}: höchstens {most} {unit}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/side_view.py"/>
        <source>{name}: {height} high, roots {depth} deep</source>
        <translation>{name}: {height} hoch, Wurzeln {depth} tief</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/reading_numbers.py"/>
        <source>the usual figure is missing</source>
        <translation>die übliche Zahl fehlt</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/reading_numbers.py"/>
        <source>“{text}” is no number</source>
        <translation>„{text}“ ist keine Zahl</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/reading_numbers.py"/>
        <source>least, usual and most must rise in that order</source>
        <translation>mindestens, üblich und höchstens müssen in dieser Folge steigen</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/reading_numbers.py"/>
        <source>it must lie between {least} and {most}: {why}</source>
        <translation>muss zwischen {least} und {most} liegen: {why}</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture.py"/>
        <source>At {dpi} dpi the picture would be too large; choose fewer.</source>
        <translation>Mit {dpi} dpi würde das Bild zu groß; weniger wählen.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shelf.py"/>
        <source>{file}: {crop} is a shipped crop; give your own another id.</source>
        <translation>{file}: {crop} ist eine mitgelieferte Kultur; der eigenen eine andere Kennung geben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shelf.py"/>
        <source>Your own crops are not shown: {why}.</source>
        <translation>Die eigenen Kulturen werden nicht gezeigt: {why}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/shelf.py"/>
        <source>{trouble} Mend or move that file first.</source>
        <translation>{trouble} Diese Datei zuerst in Ordnung bringen oder verschieben.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Frost is not expected in most years.</source>
        <translation>In den meisten Jahren ist kein Frost zu erwarten.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Last frost about {last} ({last_days}), first frost about {first} ({first_days}), each in 8 years of 10.</source>
        <translation>Letzter Frost um den {last} ({last_days}), erster Frost um den {first} ({first_days}), je in 8 von 10 Jahren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Last frost about {last}, first frost about {first}.</source>
        <translation>Letzter Frost um den {last}, erster Frost um den {first}.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>A rough guess: simulated years of daily minima about the months’ minima.</source>
        <translation>Eine grobe Schätzung: simulierte Jahre mit Tagesminima um die Minima der Monate.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>A rough guess: simulated years of daily minima about minima guessed as 5 °C below the months’ means, which are all that is known.</source>
        <translation>Eine grobe Schätzung: simulierte Jahre mit Tagesminima; die Minima sind 5 °C unter den Monatsmitteln angenommen, denn nur diese sind bekannt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>A hollow, a slope or a town’s heart can shift it by weeks; your own dates are better.</source>
        <translation>Eine Senke, ein Hang oder eine Stadtmitte kann alles um Wochen verschieben; eigene Daten sind besser.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Write the days of some years. With fewer than 5 only their mean and range are told.</source>
        <translation>Die Tage einiger Jahre eintragen. Bei weniger als 5 werden nur Mittel und Spanne genannt.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Last frost: none so far.</source>
        <translation>Letzter Frost: noch keiner.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>First frost: none so far.</source>
        <translation>Erster Frost: noch keiner.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Last frost: mean {mean}, from {earliest} to {latest} ({years}).</source>
        <translation>Letzter Frost: im Mittel {mean}, von {earliest} bis {latest} ({years}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>First frost: mean {mean}, from {earliest} to {latest} ({years}).</source>
        <translation>Erster Frost: im Mittel {mean}, von {earliest} bis {latest} ({years}).</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Frost after {day} in 1 year of 10.</source>
        <translation>Frost nach dem {day} in 1 von 10 Jahren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>Frost before {day} in 1 year of 10.</source>
        <translation>Frost vor dem {day} in 1 von 10 Jahren.</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>That limit is widened because the years are few.</source>
        <translation>Diese Grenze ist erweitert, weil es wenige Jahre sind.</translation>
    </message>
    <message numerus="yes">
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>{n} years</source>
        <translation>
            <numerusform>{n} Jahr</numerusform>
            <numerusform>{n} Jahre</numerusform>
        </translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_words.py"/>
        <source>{years}, {n} without frost</source>
        <translation>{years}, davon {n} ohne Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/typed.py"/>
        <source>no frost</source>
        <translation>kein Frost</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>The demo garden</source>
        <translation>Der Beispielgarten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>a mild maritime climate, for a start</source>
        <translation>ein mildes Seeklima, für den Anfang</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>My place</source>
        <translation>Mein Ort</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>My garden</source>
        <translation>Mein Garten</translation>
    </message>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>First sketch</source>
        <translation>Erster Entwurf</translation>
    </message>
</context>
</TS>
