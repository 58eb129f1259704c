<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <location filename="resources/crops"/>
        <source>leaf</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>High oxalate</source>
        <translation>viel Oxalsäure</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Blanch and pour off the water; moderation with a history of kidney stones.</source>
        <translation>Blanchieren und das Wasser weggießen; Maß halten, wenn schon Nierensteine auftraten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>high in oxalate; nitrate is high in plants grown in low light</source>
        <translation>viel Oxalsäure; viel Nitrat in Pflanzen, die mit wenig Licht wachsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat in moderation with a history of kidney stones; ask a doctor.</source>
        <translation>Maß halten, wenn schon Nierensteine auftraten; ärztlichen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A seed cluster brings two to four seedlings; thin, or let a clump grow together.</source>
        <translation>Ein Samenknäuel bringt zwei bis vier Keimlinge: vereinzeln oder als Büschel gemeinsam wachsen lassen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root enlargement</source>
        <translation>Verdickung der Wurzel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cercospora leaf spot, beet cyst nematode (brassicas are hosts too)</source>
        <translation>Cercospora-Blattflecken, Rübenzystenälchen (auch Kohlgewächse sind Wirte)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early bunching</source>
        <translation>früh zum Bündeln</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pulled as golf balls.</source>
        <translation>Golfballgroß geerntet.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>long keeper</source>
        <translation>lang haltbar</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole season</source>
        <translation>ganze Saison</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>small leaf</source>
        <translation>kleinblättrig</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown thick, cut young.</source>
        <translation>Dicht gesät, jung geschnitten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf harvest</source>
        <translation>Blatternte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seedlings of thorn apple or nightshade among the leaves have poisoned people</source>
        <translation>Sämlinge von Stechapfel oder Nachtschatten zwischen den Blättern haben Menschen vergiftet</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Weed before cutting and look through the leaves.</source>
        <translation>Vor dem Schneiden jäten und die Blätter durchsehen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt, downy mildew; beet nematode</source>
        <translation>Fusarium-Welke, Falscher Mehltau; Rübenälchen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>winter hardy</source>
        <translation>winterhart</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown at summer's end; days count growing weather only.</source>
        <translation>Am Ende des Sommers gesät; Tage zählen nur Wachstumswetter.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>general; downy mildew, leaf miners</source>
        <translation>allgemein; Falscher Mehltau, Minierfliegen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed coat</source>
        <translation>Samenschale</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bitter saponins upset the stomach</source>
        <translation>bittere Saponine reizen den Magen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Rinse until the water no longer foams.</source>
        <translation>Spülen, bis das Wasser nicht mehr schäumt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>all parts</source>
        <translation>alle Teile</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>garlic and onion are poisonous to dogs, cats and other animals in quantity</source>
        <translation>Knoblauch und Zwiebel sind in größerer Menge giftig für Hunde, Katzen und andere Tiere</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep peelings and plants from pets; ask a vet.</source>
        <translation>Schalen und Pflanzen von Haustieren fernhalten; tierärztlichen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulb enlargement</source>
        <translation>Verdickung der Zwiebel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>white rot, eelworm, pink root</source>
        <translation>Mehlkrankheit, Älchen, Rosa Wurzelfäule</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leek covers the ground slowly; mixed with celery it shaded out far more weeds, at some cost in leek quality.</source>
        <translation>Lauch bedeckt den Boden langsam; gemischt mit Sellerie unterdrückte er weit mehr Unkraut, auf Kosten der Lauchqualität.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early slim</source>
        <translation>früh schlank</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Long thin shanks for autumn.</source>
        <translation>Lange schlanke Schäfte für den Herbst.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Stands through winter.</source>
        <translation>Steht über Winter.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulb</source>
        <translation>Zwiebel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>garlic kept in oil at room temperature can grow the botulism germ</source>
        <translation>in Knoblauch, der bei Zimmertemperatur in Öl liegt, kann der Erreger des Botulismus wachsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep garlic in oil cold and for a few days only, or follow tested recipes of a food safety body.</source>
        <translation>Knoblauch in Öl kühl und nur wenige Tage aufbewahren, oder geprüften Rezepten einer Behörde für Lebensmittelsicherheit folgen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cloves need some weeks below about 10 °C to divide into bulbs: plant in autumn or very early spring.</source>
        <translation>Zehen brauchen einige Wochen unter etwa 10 °C, um Zwiebeln zu teilen: im Herbst oder sehr zeitig im Frühjahr stecken.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulbing; dry off before lifting</source>
        <translation>Zwiebelbildung; vor dem Roden abtrocknen lassen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>lily of the valley, autumn crocus and lords-and-ladies are mistaken for it; the first two have killed people</source>
        <translation>wird mit Maiglöckchen, Herbstzeitlose und Aronstab verwechselt; an den ersten beiden sind Menschen gestorben</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not grow these plants near it; check every single leaf by smell and form. If unsure, leave it.</source>
        <translation>Diese Pflanzen nicht in der Nähe ziehen; jedes einzelne Blatt nach Geruch und Form prüfen. Im Zweifel stehen lassen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>as the onion family</source>
        <translation>wie die Zwiebelgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Much visited by bees.</source>
        <translation>Wird viel von Bienen besucht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulb and leaves</source>
        <translation>Zwiebel und Blätter</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>lycorine and oxalates: vomiting, sore mouth; bulbs mistaken for onions, leaves for chives</source>
        <translation>Lycorin und Oxalate: Erbrechen, wunder Mund; Zwiebeln werden mit Küchenzwiebeln verwechselt, Blätter mit Schnittlauch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never store or plant beside onions, chives or leeks; label it.</source>
        <translation>Nie neben Zwiebeln, Schnittlauch oder Lauch lagern oder pflanzen; beschriften.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>sap</source>
        <translation>Pflanzensaft</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>skin rash from handling</source>
        <translation>Hautausschlag beim Anfassen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves.</source>
        <translation>Handschuhe tragen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stem eelworm, basal rot</source>
        <translation>Stängelälchen, Basalfäule</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf and stem sap</source>
        <translation>Saft von Blatt und Stängel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Furanocoumarins: sap on the skin followed by sun can redden or blister it</source>
        <translation>Furocumarine: Saft auf der Haut und danach Sonne können sie röten oder Blasen ziehen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and sleeves when cutting much of it in sun; wash the sap off.</source>
        <translation>Handschuhe und lange Ärmel, wenn viel davon bei Sonne geschnitten wird; den Saft abwaschen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>plants of the same family growing wild</source>
        <translation>wild wachsende Pflanzen derselben Familie</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poison hemlock and water-dropwort are deadly and look like this crop</source>
        <translation>Schierling und Rebendolde sind tödlich und sehen dieser Kultur ähnlich</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat only what you sowed; weed out strange umbellifers; if in doubt ask a qualified botanist.</source>
        <translation>Nur essen, was selbst gesät wurde; fremde Doldenblütler ausjäten; im Zweifel fachkundigen botanischen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carrot fly finds it by smell: fleece or mesh from sowing, thin in the evening.</source>
        <translation>Die Möhrenfliege findet sie am Geruch: ab der Saat Vlies oder Netz, abends vereinzeln.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carrots among young onions were less attacked by carrot fly; the effect went once the onions bulbed.</source>
        <translation>Möhren zwischen jungen Zwiebeln wurden weniger von der Möhrenfliege befallen; die Wirkung endete, sobald die Zwiebeln dick wurden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>French marigold between rows did not keep carrot fly off.</source>
        <translation>Studentenblumen zwischen den Reihen hielten die Möhrenfliege nicht ab.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lifting opens the soil beside it.</source>
        <translation>Das Ernten lockert den Boden daneben auf.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaf blights, cavity spot and canker live on in the soil; carrot fly stays near</source>
        <translation>Blattbrand, Cavity Spot und Krebs überdauern im Boden; die Möhrenfliege bleibt in der Nähe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early round</source>
        <translation>früh rund</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Short or round roots, pulled small.</source>
        <translation>Kurze oder runde Wurzeln, klein gezogen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>winter store</source>
        <translation>Winterlager</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Long roots, lifted late for keeping.</source>
        <translation>Lange Wurzeln, spät geerntet und gelagert.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Furanocoumarins: burns, blisters and long-lasting marks where sap meets sun, worse on wet skin</source>
        <translation>Furocumarine: Verbrennungen, Blasen und lange bleibende Flecken, wo Saft und Sonne zusammenkommen, schlimmer auf nasser Haut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and long sleeves, no strimming, work in dull weather, wash at once.</source>
        <translation>Handschuhe und lange Ärmel, kein Freischneider, bei trübem Wetter arbeiten, sofort waschen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Slow to show (two to four weeks): radish or lettuce sown in the row marks it and is out before it closes.</source>
        <translation>Keimt langsam (zwei bis vier Wochen): Radieschen oder Salat in derselben Reihe zeigen sie an und sind weg, bevor sie sich schließt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>short root</source>
        <translation>kurze Wurzel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>For shallow or stony ground.</source>
        <translation>Für flachen oder steinigen Boden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf and stalk</source>
        <translation>Blatt und Stiel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Celery allergy, sometimes severe</source>
        <translation>Sellerieallergie, manchmal schwer</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not serve to people who are allergic; seek medical advice.</source>
        <translation>Nicht für Menschen mit Allergie; ärztlichen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A week below 10 degrees when young sends it to seed.</source>
        <translation>Eine Woche unter 10 Grad in der Jugend lässt ihn schießen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leek with celery between: celery closes the canopy and keeps weeds down; leek quality suffers.</source>
        <translation>Lauch mit Sellerie dazwischen: Der Sellerie schließt den Bestand und hält Unkraut nieder; die Qualität des Lauchs leidet.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole season, last month above all</source>
        <translation>ganze Saison, vor allem der letzte Monat</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>swelling of the root, late summer</source>
        <translation>Schwellen der Wurzel, Spätsommer</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sow after midsummer or take a slow-bolting kind: long days and cold nights send it to seed.</source>
        <translation>Nach der Sommersonnenwende säen oder eine schossfeste Art nehmen: Lange Tage und kalte Nächte lassen ihn schießen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>swelling of the bulb</source>
        <translation>Schwellen der Knolle</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Its flowers feed hoverflies and parasitic wasps.</source>
        <translation>Die Blüten ernähren Schwebfliegen und Schlupfwespen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Land equivalent ratio of carrot with parsley in one trial: median 2.37 (1.49-2.38), higher than most mixtures reach.</source>
        <translation>Flächenvergleichswert von Möhre mit Petersilie in einem Versuch: Median 2,37 (1,49–2,38), höher als die meisten Mischungen erreichen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Slow to show: two to four weeks in cool soil.</source>
        <translation>Keimt langsam: zwei bis vier Wochen in kühlem Boden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>establishment</source>
        <translation>Anwachsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flat-leaved tall</source>
        <translation>glattblättrig hoch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bolts in heat and long days: sow little and often.</source>
        <translation>Schießt bei Hitze und langen Tagen: wenig und oft säen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bolts in summer sun: sow in spring and autumn or in shade.</source>
        <translation>Schießt in der Sommersonne: im Frühjahr und Herbst oder in den Schatten säen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One plant is enough for a household.</source>
        <translation>Eine Pflanze reicht für einen Haushalt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Seeds itself freely: pull volunteers while small.</source>
        <translation>Sät sich reichlich selbst aus: Sämlinge klein ziehen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Said to hinder its neighbours: no sound trial.</source>
        <translation>Soll Nachbarn hemmen: kein sauberer Versuch.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ripens seed only in a warm dry summer.</source>
        <translation>Reift Samen nur in einem warmen, trockenen Sommer.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut flower: picking the first stems brings more.</source>
        <translation>Schnittblume: Wer die ersten Stiele pflückt, bekommt mehr.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>berries; raw shoots on the skin</source>
        <translation>Beeren; rohe Sprosse auf der Haut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>saponins: upset stomach; skin rash in some people</source>
        <translation>Saponine: Magenbeschwerden; bei manchen Menschen Hautausschlag</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat the red berries.</source>
        <translation>Die roten Beeren nicht essen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The bed stays ten to twenty years; the fern feeds the roots and must stand until it yellows.</source>
        <translation>Das Beet bleibt zehn bis zwanzig Jahre; das Laub ernährt die Wurzeln und muss stehen, bis es gelb wird.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fern growth after harvest</source>
        <translation>Wachstum des Krauts nach der Ernte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt and root rot</source>
        <translation>Fusarium-Welke und Wurzelfäule</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bolts and turns bitter in long hot days: some shade in summer helps.</source>
        <translation>Schießt und wird bitter in langen heißen Tagen: Etwas Schatten im Sommer hilft.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce below cucumber: land equivalent ratio above 1.</source>
        <translation>Salat unter Gurke: Flächenvergleichswert über 1.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head enlargement or leaf growth</source>
        <translation>Wachstum von Kopf oder Blättern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bottom rot, drop and white mould live on in the soil</source>
        <translation>Schwarzfäule, Salatfäule und Sclerotinia-Fäule überdauern im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>small heart</source>
        <translation>kleines Herz</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One head a person, closer together.</source>
        <translation>Ein Kopf für eine Person, enger gesetzt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown in autumn; days count growing weather only.</source>
        <translation>Im Herbst gesät; Tage zählen nur Wachstumswetter.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>red lobed leaf</source>
        <translation>rot gelappt</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown before midsummer it bolts after cold nights.</source>
        <translation>Vor der Sommersonnenwende gesät, schießt sie nach kalten Nächten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head enlargement</source>
        <translation>Wachstum des Kopfes</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head formation</source>
        <translation>Kopfbildung</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf and flower</source>
        <translation>Blatt und Blüte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Contact allergy in people sensitive to the daisy family</source>
        <translation>Kontaktallergie bei Menschen, die auf Korbblütler empfindlich sind</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves when handling much of it; stop if the skin itches.</source>
        <translation>Handschuhe, wenn viel davon angefasst wird; aufhören, wenn die Haut juckt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut the flowers off: it seeds itself everywhere.</source>
        <translation>Blüten abschneiden: Sie sät sich überall aus.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Feeds bees and hoverflies while it flowers.</source>
        <translation>Ernährt Bienen und Schwebfliegen, solange sie blüht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Heads left to flower are covered with bees.</source>
        <translation>Blütenköpfe, die stehen bleiben, sind voller Bienen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The room between young plants carries lettuce or radish in the first spring.</source>
        <translation>Der Platz zwischen jungen Pflanzen trägt im ersten Frühjahr Salat oder Radieschen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bud formation</source>
        <translation>Knospenbildung</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Throws deep shade from July: plant it on the north side.</source>
        <translation>Wirft ab Juli tiefen Schatten: an die Nordseite pflanzen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Inulin gives some people wind: try a little first.</source>
        <translation>Inulin bläht manche: zuerst wenig probieren.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Moved with the roots of other families</source>
        <translation>mit den Wurzelgemüsen anderer Familien im Wechsel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Rules on selling the leaf as food differ between countries.</source>
        <translation>Regeln für den Verkauf des Blattes als Lebensmittel sind von Land zu Land verschieden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bees and bumblebees work the heads; birds take the seed.</source>
        <translation>Bienen und Hummeln besuchen die Köpfe; Vögel holen die Samen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carries climbing beans only if sown three weeks before them.</source>
        <translation>Trägt Stangenbohnen nur, wenn sie drei Wochen vor ihnen gesät wird.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bud to full flower</source>
        <translation>Knospe bis Vollblüte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sclerotinia white mould lives on in the soil</source>
        <translation>Sclerotinia-Fäule überdauert im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dwarf</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>giant</source>
        <translation>riesig</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Petals are eaten.</source>
        <translation>Die Blütenblätter sind essbar.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A dense stand for a whole season before the crop lowers root-knot and lesion nematodes; between rows it does little.</source>
        <translation>Ein dichter Bestand über eine ganze Saison vor der Kultur vermindert Wurzelgallen- und Läsionsälchen; zwischen Reihen bewirkt er wenig.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Between carrot rows it did not keep carrot fly off.</source>
        <translation>Zwischen Möhrenreihen hielt sie die Möhrenfliege nicht ab.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dwarf edging</source>
        <translation>niedrig zum Einfassen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A dense stand for a whole season before the crop lowers root-knot and lesion nematodes.</source>
        <translation>Ein dichter Bestand über eine ganze Saison vor der Kultur vermindert Wurzelgallen- und Läsionsälchen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Single kinds feed bees; double kinds give them nothing.</source>
        <translation>Einfache Blüten ernähren Bienen; gefüllte geben ihnen nichts.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut in bud and dry hanging.</source>
        <translation>Als Knospe schneiden und hängend trocknen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flat heads feed hoverflies and parasitic wasps.</source>
        <translation>Flache Blütenstände ernähren Schwebfliegen und Schlupfwespen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Spreads by runners: keep it in bounds.</source>
        <translation>Breitet sich durch Ausläufer aus: in Grenzen halten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole plant</source>
        <translation>ganze Pflanze</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thujone: poisonous in quantity to people and stock</source>
        <translation>Thujon: in größerer Menge giftig für Menschen und Vieh</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat it or drink it as tea; not in pregnancy; keep it from grazing animals.</source>
        <translation>Nicht essen und nicht als Tee trinken; nicht in der Schwangerschaft; von Weidetieren fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Said to keep ants and beetles away: no sound trial.</source>
        <translation>Soll Ameisen und Käfer fernhalten: kein sauberer Versuch.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One of the last feeds of the year for bees and butterflies.</source>
        <translation>Eine der letzten Nahrungsquellen des Jahres für Bienen und Schmetterlinge.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Low amounts of pyrrolizidine alkaloids, harmful to the liver over time</source>
        <translation>geringe Mengen Pyrrolizidinalkaloide, auf Dauer schädlich für die Leber</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Use flowers as an occasional garnish; avoid regular use of the leaves, in pregnancy and with liver disease. Ask a qualified adviser.</source>
        <translation>Blüten gelegentlich als Verzierung; Blätter nicht regelmäßig, nicht in der Schwangerschaft und nicht bei Leberleiden. Fachkundigen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf hairs</source>
        <translation>Blatthaare</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bristles irritate the skin</source>
        <translation>Borsten reizen die Haut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves when pulling plants.</source>
        <translation>Beim Ziehen der Pflanzen Handschuhe tragen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One of the richest bee flowers of the garden, open from early summer.</source>
        <translation>Eine der reichsten Bienenweiden des Gartens, ab Frühsommer in Blüte.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves and stems</source>
        <translation>Blätter und Stängel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Hairs can cause a skin rash</source>
        <translation>Haare können Hautausschlag auslösen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves and long sleeves when cutting a stand.</source>
        <translation>Beim Schneiden eines Bestands Handschuhe und lange Ärmel tragen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Broadcast 1-1.5 g per m2, rake in; dig in or cut before seed ripens.</source>
        <translation>1–1,5 g je m² breitwürfig säen, einharken; eingraben oder schneiden, bevor Samen reifen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Draws bees and hoverflies while it flowers.</source>
        <translation>Zieht Bienen und Schwebfliegen an, solange sie blüht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Between onions it competed too strongly and drew onion thrips.</source>
        <translation>Zwischen Zwiebeln war sie zu starke Konkurrenz und zog Zwiebelthripse an.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>all parts, root most</source>
        <translation>alle Teile, am meisten die Wurzel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pyrrolizidine alkaloids: liver damage, possibly cancer</source>
        <translation>Pyrrolizidinalkaloide: Leberschäden, möglicherweise Krebs</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat, do not drink as tea, do not put on broken skin. Compost and liquid feed only.</source>
        <translation>Nicht essen, nicht als Tee trinken, nicht auf verletzte Haut geben. Nur für Kompost und Jauche.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Mistaken for foxglove leaves, which are deadly</source>
        <translation>Verwechslung mit Blättern des Fingerhuts, die tödlich sind</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not grow foxglove beside comfrey or borage; label both.</source>
        <translation>Fingerhut nicht neben Beinwell oder Borretsch ziehen; beide beschriften.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut leaves for mulch, compost and liquid feed.</source>
        <translation>Blätter für Mulch, Kompost und Jauche schneiden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Plant the sterile kind; keep roots out of beds that are dug.</source>
        <translation>Die sterile Art pflanzen; Wurzeln aus Beeten fernhalten, die gegraben werden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pyrrolizidine alkaloids</source>
        <translation>Pyrrolizidinalkaloide</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not for eating or tea.</source>
        <translation>Nicht zum Essen und nicht für Tee.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bristles</source>
        <translation>Borsten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Irritate the skin</source>
        <translation>reizen die Haut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Plants kept below about 10 °C for weeks when young may run to seed instead of swelling.</source>
        <translation>Pflanzen, die jung wochenlang unter etwa 10 °C stehen, können schießen statt dick zu werden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head development</source>
        <translation>Entwicklung des Kopfes</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>clubroot, blackleg, black rot; cabbage root fly and aphids</source>
        <translation>Kohlhernie, Umfallkrankheit, Adernschwärze; Kleine Kohlfliege und Blattläuse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>giant late</source>
        <translation>riesig spät</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Stands without turning woody.</source>
        <translation>Steht, ohne holzig zu werden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grown with a background of clover or other green plants, cabbage root fly lays fewer eggs in choice trials; without a choice no reduction was found.</source>
        <translation>Vor einem Hintergrund aus Klee oder anderem Grün legt die Kohlfliege in Wahlversuchen weniger Eier; ohne Wahl fand sich keine Minderung.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head formation to harvest</source>
        <translation>Kopfbildung bis Ernte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>small early</source>
        <translation>klein früh</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Small heads, closer together.</source>
        <translation>Kleine Köpfe, enger gesetzt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dense heads for keeping.</source>
        <translation>Feste Köpfe zum Lagern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Needs a winter's cold before it shoots.</source>
        <translation>Braucht die Kälte eines Winters, bevor er austreibt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mini heads</source>
        <translation>kleine Köpfe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Set close for small heads.</source>
        <translation>Für kleine Köpfe eng gesetzt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dwarf curled</source>
        <translation>niedrig kraus</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tall dark</source>
        <translation>hoch dunkel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early half-tall</source>
        <translation>früh halbhoch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Runs to seed when sown early and chilled, or in long days; safest sown from midsummer on.</source>
        <translation>Schießt, wenn er früh gesät wird und friert, oder bei langen Tagen; am sichersten ab Mittsommer säen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>long white</source>
        <translation>lang weiß</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Attracts diamondback moth to lay on it, where its caterpillars do not survive; tried as a dead-end trap crop.</source>
        <translation>Lockt die Kohlmotte zur Eiablage an, deren Raupen darauf nicht überleben; als Fangpflanze erprobt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves from streams and ditches</source>
        <translation>Blätter aus Bächen und Gräben</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>water fed by grazing land can carry liver fluke</source>
        <translation>Wasser aus Weideland kann Leberegel enthalten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grow it in clean mains or well water; never eat plants from streams raw. Follow local food-safety advice.</source>
        <translation>In sauberem Leitungs- oder Brunnenwasser ziehen; Pflanzen aus Bächen nie roh essen. Örtliche Hinweise zur Lebensmittelsicherheit beachten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root</source>
        <translation>Wurzel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>monkshood root has been eaten in mistake for horseradish</source>
        <translation>Wurzeln des Eisenhuts wurden mit Meerrettich verwechselt und gegessen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never grow the two near each other; know the leaf before you dig.</source>
        <translation>Beide nie nahe beieinander ziehen; vor dem Graben das Blatt kennen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root, grating</source>
        <translation>Wurzel, beim Reiben</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mustard oil stings eyes and airways</source>
        <translation>Senföl brennt in Augen und Atemwegen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grate in moving air, wash hands.</source>
        <translation>An bewegter Luft reiben, Hände waschen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Every piece of root left behind grows again; give it a place of its own or a barrier.</source>
        <translation>Jedes zurückgelassene Wurzelstück wächst wieder: einen eigenen Platz oder eine Sperre geben.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carries clubroot: not on ground where brassicas follow soon.</source>
        <translation>Trägt Kohlhernie: nicht auf Boden, auf dem bald Kohlgewächse folgen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>In flower it draws bees and hoverflies.</source>
        <translation>In Blüte zieht er Bienen und Schwebfliegen an.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Between lettuce it raised hoverfly larvae against aphids; 2-8 % of the area was enough.</source>
        <translation>Zwischen Salat vermehrte es Schwebfliegenlarven gegen Blattläuse; 2–8 % der Fläche reichten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>clubroot: counts with the cabbage family</source>
        <translation>Kohlhernie: zählt zu den Kreuzblütlern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>all parts, seeds most</source>
        <translation>alle Teile, am meisten die Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>contains cardiac glycosides</source>
        <translation>enthält Herzglykoside</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not for eating; keep apart from edible flowers.</source>
        <translation>Nicht zum Essen; von essbaren Blüten getrennt halten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stems, leaves, cones</source>
        <translation>Stängel, Blätter, Dolden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Hooked hairs and resin: rash on skin</source>
        <translation>Hakenhaare und Harz: Hautausschlag</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and long sleeves.</source>
        <translation>Handschuhe und lange Ärmel.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>spent or fresh cones</source>
        <translation>ausgekochte oder frische Dolden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Overheating and death in dogs</source>
        <translation>Überhitzung und Tod bei Hunden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep dogs from cones and brewing waste; ask a veterinary surgeon at once if one has eaten some.</source>
        <translation>Hunde von Dolden und Brauresten fernhalten; sofort zum Tierarzt, wenn ein Hund davon gefressen hat.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Shoots in spring, cones in late summer and early autumn.</source>
        <translation>Treibt im Frühjahr aus, Zapfen im Spätsommer und Frühherbst.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown in late summer as a catch crop after the main crop; keep the bed cool and damp until it shows.</source>
        <translation>Im Spätsommer als Zwischenkultur nach der Hauptkultur gesät; das Beet kühl und feucht halten, bis er aufläuft.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>germination in late summer</source>
        <translation>Keimung im Spätsommer</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stems</source>
        <translation>Stängel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Small thorns</source>
        <translation>kleine Dornen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves.</source>
        <translation>Handschuhe.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A relative of the cabbages: flea beetles and cabbage whites may visit it.</source>
        <translation>Verwandt mit den Kohlgewächsen: Erdflöhe und Kohlweißlinge können sie aufsuchen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>With maize: land equivalent ratio 1.15-2.13, median 1.40.</source>
        <translation>Mit Mais: Flächenvergleichswert 1,15–2,13, Median 1,40.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>enlargement of storage organ</source>
        <translation>Verdickung des Speicherorgans</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ergoline alkaloids (related to LSD): confusion, sickness</source>
        <translation>Ergolinalkaloide (mit LSD verwandt): Verwirrtheit, Übelkeit</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not edible, and not the sweet potato or water spinach. Keep seed from children.</source>
        <translation>Nicht essbar, und nicht Süßkartoffel oder Wasserspinat. Samen von Kindern fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bitter fruit, above all from saved or stressed plants</source>
        <translation>bittere Früchte, vor allem von eigenem Saatgut oder gestressten Pflanzen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cucurbitacins: cramps, vomiting, diarrhoea</source>
        <translation>Cucurbitacine: Krämpfe, Erbrechen, Durchfall</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Taste a little raw; spit out and discard any bitter fruit. Do not save seed near ornamental gourds.</source>
        <translation>Ein wenig roh kosten; bittere Früchte ausspucken und wegwerfen. Kein Saatgut in der Nähe von Zierkürbissen gewinnen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Male and female flowers on one plant, carried by bees: few bees or fleece left on at flowering means few fruits.</source>
        <translation>Männliche und weibliche Blüten auf einer Pflanze, von Bienen bestäubt: Wenige Bienen oder Vlies zur Blüte bedeuten wenige Früchte.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce below cucumber: cucumber yield not affected, land equivalent ratio above 1 (2.35 cucumbers per m2).</source>
        <translation>Salat unter Gurke: Gurkenertrag unverändert, Flächenvergleichswert über 1 (2,35 Gurken je m²).</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A border of blue hubbard squash draws cucumber beetles away.</source>
        <translation>Ein Rand aus Riesenkürbis zieht Gurkenkäfer ab.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit enlargement</source>
        <translation>Wachstum der Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt, scab, leaf spots and Phytophthora blight live on in the soil</source>
        <translation>Fusarium-Welke, Krätze, Blattflecken und Phytophthora-Fäule überdauern im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>short bush</source>
        <translation>kurzer Busch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Runs little; needs no net.</source>
        <translation>Rankt wenig; braucht kein Netz.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bud development, flowering and fruiting</source>
        <translation>Knospen, Blüte und Fruchten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>compact</source>
        <translation>kompakt</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pumpkin under maize: land equivalent ratio 0.69-1.53, median 0.90; both yield most alone.</source>
        <translation>Kürbis unter Mais: Flächenvergleichswert 0,69–1,53, Median 0,90; beide bringen allein am meisten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>small bush</source>
        <translation>kleiner Busch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Does not run; small fruit.</source>
        <translation>Rankt nicht; kleine Früchte.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit set and early fruit development</source>
        <translation>Fruchtansatz und frühe Fruchtentwicklung</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Needs sour soil, pH 4.0-5.5, and soft water: does not share a bed with lime-loving vegetables.</source>
        <translation>Braucht sauren Boden, pH 4,0–5,5, und weiches Wasser: teilt kein Beet mit kalkliebendem Gemüse.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit from July to September in north-west Europe by kind; two kinds set better than one.</source>
        <translation>Früchte in Nordwesteuropa je nach Art von Juli bis September; zwei Arten setzen besser an als eine.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit swelling</source>
        <translation>Schwellen der Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in late summer and early autumn.</source>
        <translation>Früchte im Spätsommer und Frühherbst.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in autumn.</source>
        <translation>Früchte im Herbst.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The earliest kinds need 694 degree days above 4.4 degrees from sowing.</source>
        <translation>Die frühesten Arten brauchen 694 Gradtage über 4,4 Grad ab der Saat.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flower bud formation to pod enlargement</source>
        <translation>Blütenknospen bis Wachstum der Hülsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Foot and root rots and Aphanomyces live on in the soil</source>
        <translation>Fuß- und Wurzelfäulen und Aphanomyces überdauern im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early dwarf</source>
        <translation>früh niedrig</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown first; little support needed.</source>
        <translation>Zuerst gesät; braucht wenig Stütze.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>main crop tall</source>
        <translation>Haupternte hoch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One netted row shades the ground north of it.</source>
        <translation>Eine Reihe am Netz beschattet den Boden nördlich davon.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed raw or cooked, pollen</source>
        <translation>Samen roh oder gekocht, Blütenstaub</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Favism: haemolytic anaemia in people with G6PD deficiency</source>
        <translation>Favismus: Blutarmut durch Zerfall roter Blutkörperchen bei Menschen mit G6PD-Mangel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>People with G6PD deficiency must not eat them; seek medical advice.</source>
        <translation>Menschen mit G6PD-Mangel dürfen sie nicht essen; ärztlichen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw seed</source>
        <translation>rohe Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectin, a tenth or less of that of red kidney bean</source>
        <translation>Lektin, ein Zehntel oder weniger von dem der roten Kidneybohne</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cook.</source>
        <translation>Kochen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Long-tongued bumblebees set the pods.</source>
        <translation>Langrüsselige Hummeln bestäuben sie.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pinch out the tips at first pods: black bean aphids settle there.</source>
        <translation>Bei den ersten Hülsen die Spitzen auskneifen: Dort sitzt die Schwarze Bohnenlaus.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Strawberry with broad bean: land equivalent ratio 1.74-2.08.</source>
        <translation>Erdbeere mit Dicker Bohne: Flächenvergleichswert 1,74–2,08.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pod set</source>
        <translation>Blüte und Hülsenansatz</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Root rots, anthracnose and white mould live on in the soil</source>
        <translation>Wurzelfäulen, Brennfleckenkrankheit und Sclerotinia-Fäule überdauern im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>For windy places.</source>
        <translation>Für windige Lagen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>autumn sown</source>
        <translation>Herbstsaat</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Stands over winter.</source>
        <translation>Steht über Winter.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw or undercooked seed</source>
        <translation>rohe oder nicht durchgekochte Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Phytohaemagglutinin: severe vomiting 1-3 hours after as few as four or five raw beans</source>
        <translation>Phytohämagglutinin: schweres Erbrechen 1–3 Stunden nach nur vier oder fünf rohen Bohnen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Soak at least 5 hours, pour off, boil hard at least 10 minutes (FDA advises 30); slow cookers are not hot enough. Cook the pods too.</source>
        <translation>Mindestens 5 Stunden einweichen, abgießen, mindestens 10 Minuten sprudelnd kochen (die FDA rät zu 30); Schongarer werden nicht heiß genug. Auch die Hülsen kochen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce with dwarf bean: land equivalent ratio 1.46, the bean at 0.97 of its sole yield.</source>
        <translation>Salat mit Buschbohne: Flächenvergleichswert 1,46, die Bohne bei 0,97 ihres Ertrags in Reinkultur.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Mixed with onion or garlic: antagonism is claimed; land equivalent ratio 1.43 with onion was measured.</source>
        <translation>Gemischt mit Zwiebel oder Knoblauch: Unverträglichkeit wird behauptet; mit Zwiebel wurde ein Flächenvergleichswert von 1,43 gemessen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early dwarf bush</source>
        <translation>früher Busch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>canes</source>
        <translation>Stäbe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eye injuries when bending over cane tips</source>
        <translation>Augenverletzungen beim Bücken über Stabspitzen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cap every cane.</source>
        <translation>Jeden Stab mit einer Kappe versehen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Climbing bean with tomato: land equivalent ratio 1.13-1.24.</source>
        <translation>Stangenbohne mit Tomate: Flächenvergleichswert 1,13–1,24.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Climbing bean on maize or sweetcorn: land equivalent ratio 1.41 in the median of 22 treatments, the maize at 0.87 of its sole yield.</source>
        <translation>Stangenbohne an Mais oder Zuckermais: Flächenvergleichswert 1,41 im Median von 22 Versuchsgliedern, der Mais bei 0,87 seines Ertrags in Reinkultur.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw pods, seeds and roots</source>
        <translation>rohe Hülsen, Samen und Wurzeln</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectins: vomiting and cramps</source>
        <translation>Lektine: Erbrechen und Krämpfe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cook pods and dry seeds; never eat them raw.</source>
        <translation>Hülsen und trockene Samen kochen; nie roh essen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bumblebees set the pods; dry hot days drop the flowers.</source>
        <translation>Hummeln bestäuben sie; trockene heiße Tage lassen die Blüten fallen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dwarf bush</source>
        <translation>Busch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Needs no poles.</source>
        <translation>Braucht keine Stangen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw seed, above all coloured landraces</source>
        <translation>rohe Samen, vor allem farbige Landsorten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cyanogenic glycoside (linamarin)</source>
        <translation>Blausäure-Glykosid (Linamarin)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Boil and pour off the water; grow kinds bred for the garden.</source>
        <translation>Kochen und das Wasser weggießen; für den Garten gezüchtete Sorten wählen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wants a warm summer: in cool places under glass or not at all.</source>
        <translation>Braucht einen warmen Sommer: in kühlen Lagen unter Glas oder gar nicht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Aphanomyces root rot, shared with pea</source>
        <translation>Aphanomyces-Wurzelfäule, gemeinsam mit der Erbse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Acid droplets (malic, oxalic) may sting hands</source>
        <translation>Säuretröpfchen (Apfel- und Oxalsäure) können auf den Händen brennen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves when handling many plants.</source>
        <translation>Handschuhe, wenn viele Pflanzen angefasst werden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pod fill</source>
        <translation>Blüte und Füllen der Hülsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ascochyta blight and root rots live on in the soil</source>
        <translation>Ascochyta-Brennflecken und Wurzelfäulen überdauern im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectins and trypsin inhibitors; soya allergy</source>
        <translation>Lektine und Trypsinhemmer; Sojaallergie</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Boil green pods at least five minutes, dry seed well. Not for people with soya allergy.</source>
        <translation>Grüne Hülsen mindestens fünf Minuten kochen, trockene Samen gut durchkochen. Nicht für Menschen mit Sojaallergie.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Maize with soya: land equivalent ratio 1.33 in the median of three treatments.</source>
        <translation>Mais mit Soja: Flächenvergleichswert 1,33 im Median von drei Versuchsgliedern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>White mould lives on in the soil</source>
        <translation>Sclerotinia-Fäule überdauert im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectins and trypsin inhibitors</source>
        <translation>Lektine und Trypsinhemmer</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cook seeds well.</source>
        <translation>Samen gut durchkochen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed</source>
        <translation>Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Peanut allergy: can kill</source>
        <translation>Erdnussallergie: kann tödlich sein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never serve to people who are allergic; seek medical advice.</source>
        <translation>Nie für Menschen mit Allergie; ärztlichen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mouldy pods</source>
        <translation>schimmelige Hülsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Aflatoxin</source>
        <translation>Aflatoxin</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dry quickly; throw mouldy or shrivelled nuts away.</source>
        <translation>Rasch trocknen; schimmelige oder geschrumpfte Nüsse wegwerfen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pegging</source>
        <translation>Blüte und Eindringen der Fruchtstiele in den Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaf spots and pod rots live on in the soil</source>
        <translation>Blattflecken und Hülsenfäulen überdauern im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seeds and pods</source>
        <translation>Samen und Hülsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous (beta-aminopropionitrile, a lathyrogen): not the edible pea</source>
        <translation>giftig (Beta-Aminopropionitril, ein Lathyrogen): nicht die essbare Erbse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never eat any part. Keep it apart from garden peas, label both, and save no seed where children take pods for peas.</source>
        <translation>Keinen Teil essen. Von Gartenerbsen getrennt halten, beide beschriften und kein Saatgut gewinnen, wo Kinder die Hülsen für Erbsen halten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Needs no support.</source>
        <translation>Braucht keine Stütze.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ripe dry seed</source>
        <translation>reife trockene Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cyanogenic glycosides: poisonous raw</source>
        <translation>Blausäure-Glykoside: roh giftig</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grown here as a flower. Do not eat the seed unless boiled in changes of water.</source>
        <translation>Hier als Blume gezogen. Samen nicht essen, außer in mehrfach gewechseltem Wasser gekocht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Quinolizidine alkaloids: poisonous; lupin allergy too</source>
        <translation>Chinolizidinalkaloide: giftig; auch Lupinenallergie</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not food. Keep children and stock from the pods.</source>
        <translation>Kein Lebensmittel. Kinder und Vieh von den Hülsen fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bumblebees work the spikes.</source>
        <translation>Hummeln besuchen die Kerzen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Escapes into meadows in some countries: check local rules.</source>
        <translation>Wandert in manchen Ländern in Wiesen aus: örtliche Regeln prüfen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leeks and onions undersown with clover had far fewer thrips.</source>
        <translation>Lauch und Zwiebeln mit Klee-Untersaat hatten weit weniger Thripse.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Onion with white clover as living mulch: highest yield and least thrips of four mulches.</source>
        <translation>Zwiebel mit Weißklee als lebendem Mulch: höchster Ertrag und wenigste Thripse von vier Mulcharten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A green background lowers cabbage root fly eggs, often by 30-60 %, at a cost in yield from competition.</source>
        <translation>Ein grüner Hintergrund vermindert Eier der Kohlfliege, oft um 30–60 %, auf Kosten des Ertrags durch Konkurrenz.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut or dig in at first flower and give it two to three weeks before sowing.</source>
        <translation>Zur ersten Blüte schneiden oder eingraben und zwei bis drei Wochen bis zur Saat warten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown under sweetcorn or brassicas when they are knee high.</source>
        <translation>Unter Zuckermais oder Kohl gesät, wenn diese kniehoch sind.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed and forage</source>
        <translation>Samen und Grünfutter</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous to stock and poultry (canavanine)</source>
        <translation>giftig für Vieh und Geflügel (Canavanin)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not food; keep seed from poultry and horses.</source>
        <translation>Kein Lebensmittel; Samen von Geflügel und Pferden fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown with rye it climbs and covers better.</source>
        <translation>Mit Roggen gesät klettert sie und deckt besser.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous in quantity (cyano-alanine)</source>
        <translation>in größerer Menge giftig (Cyanoalanin)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not food: do not mix with lentils.</source>
        <translation>Kein Lebensmittel: nicht mit Linsen vermischen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grazing rye with vetch is the usual winter mixture.</source>
        <translation>Futterroggen mit Wicke ist die übliche Wintermischung.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>sprouts and seed</source>
        <translation>Sprossen und Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sprouted seed carries bacteria; canavanine</source>
        <translation>Sprossen tragen Bakterien; Canavanin</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not for eating raw in quantity; ask advice with lupus.</source>
        <translation>Roh nicht in größerer Menge essen; bei Lupus Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fixes nitrogen only where its root bacteria live in the soil.</source>
        <translation>Bindet Stickstoff nur, wo seine Wurzelbakterien im Boden leben.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>For light acid soils; roots break pans.</source>
        <translation>Für leichte saure Böden; die Wurzeln brechen Verdichtungen auf.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer, July in north-west Europe; cut out old wood after picking.</source>
        <translation>Früchte im Hochsommer, in Nordwesteuropa im Juli; altes Holz nach der Ernte ausschneiden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer, July in north-west Europe; hangs well. Also as cordons 0.4 m apart.</source>
        <translation>Früchte im Hochsommer, in Nordwesteuropa im Juli; bleiben gut hängen. Auch als Schnurbäume mit 0,4 m Abstand.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thorns scratch</source>
        <translation>Dornen kratzen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and eye protection when picking and pruning.</source>
        <translation>Handschuhe und Augenschutz beim Pflücken und Schneiden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>First picking green in early summer, ripe in July in north-west Europe.</source>
        <translation>Erste grüne Ernte im Frühsommer, reif in Nordwesteuropa im Juli.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer.</source>
        <translation>Früchte im Hochsommer.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>corm</source>
        <translation>Knolle</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Upsets the stomach</source>
        <translation>reizt den Magen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ornamental only: keep corms apart from food bulbs.</source>
        <translation>Nur Zierpflanze: Knollen von Speisezwiebeln getrennt halten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lift corms before hard frost, dry and keep frost-free.</source>
        <translation>Knollen vor starkem Frost ausgraben, trocknen und frostfrei aufbewahren.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Basil between tomato or Brussels sprout: land equivalent ratio 0.90-1.45; pests a little fewer in some trials.</source>
        <translation>Basilikum zwischen Tomate oder Rosenkohl: Flächenvergleichswert 0,90–1,45; in einigen Versuchen etwas weniger Schädlinge.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt of basil lives in the soil</source>
        <translation>Fusarium-Welke des Basilikums lebt im Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>small-leaved bush</source>
        <translation>kleinblättriger Busch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut from late spring to early autumn; leave a third of the leaf.</source>
        <translation>Vom späten Frühjahr bis Frühherbst schneiden; ein Drittel der Blätter stehen lassen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers feed bees and hoverflies: leave some uncut.</source>
        <translation>Blüten ernähren Bienen und Schwebfliegen: einen Teil nicht schneiden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>essential oil, leaf in large amounts</source>
        <translation>ätherisches Öl, Blätter in großen Mengen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thujone can cause fits</source>
        <translation>Thujon kann Krampfanfälle auslösen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Kitchen amounts are usual; no oil by mouth and no large amounts in pregnancy or with epilepsy. Ask a qualified adviser.</source>
        <translation>Küchenmengen sind üblich; kein Öl einnehmen und keine großen Mengen in der Schwangerschaft oder bei Epilepsie. Fachkundigen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Runners travel half a metre and more a year: hold them in with a sunk pot or board.</source>
        <translation>Ausläufer wandern einen halben Meter und mehr im Jahr: mit eingesenktem Topf oder Brett begrenzen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Onion thrips fewer beside mint.</source>
        <translation>Neben Minze weniger Zwiebelthripse.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mint rust and Verticillium wilt</source>
        <translation>Minzrost und Verticillium-Welke</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>By tradition sown beside beans; the effect on bean aphid is not shown.</source>
        <translation>Nach alter Sitte neben Bohnen gesät; eine Wirkung auf die Bohnenlaus ist nicht belegt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>essential oil</source>
        <translation>ätherisches Öl</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pinocamphone in the oil can cause fits</source>
        <translation>Pinocamphon im Öl kann Krampfanfälle auslösen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaves as seasoning only; no oil by mouth, none for people with epilepsy, in pregnancy or for children. Ask a qualified adviser.</source>
        <translation>Blätter nur als Gewürz; kein Öl einnehmen, gar nicht bei Epilepsie, in der Schwangerschaft oder für Kinder. Fachkundigen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut back every year into leafy wood, never into bare wood.</source>
        <translation>Jedes Jahr bis ins beblätterte Holz zurückschneiden, nie ins kahle Holz.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers and leaves for tea and salad.</source>
        <translation>Blüten und Blätter für Tee und Salat.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole plant in quantity</source>
        <translation>ganze Pflanze in größerer Menge</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Perilla ketone harms the lungs of grazing animals</source>
        <translation>Perillaketon schädigt die Lunge von Weidetieren</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Food use of leaves is usual; keep livestock away from stands.</source>
        <translation>Blätter als Speise sind üblich; Vieh von Beständen fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Mildews in dry soil: divide every third year.</source>
        <translation>Mehltau in trockenem Boden: jedes dritte Jahr teilen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers early for hoverflies, whose larvae eat aphids.</source>
        <translation>Blüht früh für Schwebfliegen, deren Larven Blattläuse fressen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>unripe seed, green plant; raw seed in quantity</source>
        <translation>unreife Samen, grüne Pflanze; rohe Samen in größerer Menge</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cyanogenic glycosides</source>
        <translation>Blausäure-Glykoside</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat ripe seed in spoonfuls only; do not feed green plants to stock.</source>
        <translation>Reife Samen nur löffelweise essen; grüne Pflanzen nicht an Vieh verfüttern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt of flax</source>
        <translation>Fusarium-Welke des Leins</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves and pods</source>
        <translation>Blätter und Hülsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Hairs make skin itch</source>
        <translation>Haare lassen die Haut jucken</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves and sleeves to pick.</source>
        <translation>Zum Pflücken Handschuhe und lange Ärmel tragen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pod development</source>
        <translation>Blüte und Entwicklung der Hülsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root-knot nematode and wilts</source>
        <translation>Wurzelgallenälchen und Welken</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Rust: take off spotted leaves, renew plants.</source>
        <translation>Rost: fleckige Blätter abnehmen, Pflanzen erneuern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tubers, leaves</source>
        <translation>Knollen, Blätter</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Oxalic acid</source>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Moderation with a history of kidney stones; sunned tubers hold less.</source>
        <translation>Maß halten, wenn schon Nierensteine auftraten; gesonnte Knollen enthalten weniger.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>latex, unripe capsule</source>
        <translation>Milchsaft, unreife Kapsel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Opiates</source>
        <translation>Opiate</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Growing is limited or forbidden in some countries: check national law. Only ripe seed is food.</source>
        <translation>Der Anbau ist in manchen Ländern beschränkt oder verboten: nationales Recht prüfen. Nur reife Samen sind Lebensmittel.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Alkaloids with a calming effect</source>
        <translation>Alkaloide mit beruhigender Wirkung</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ornamental only; not for tea.</source>
        <translation>Nur Zierpflanze; nicht für Tee.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Alkaloids; poisonous to stock</source>
        <translation>Alkaloide; giftig für Vieh</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ornamental only.</source>
        <translation>Nur Zierpflanze.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Heavy bumblebees open the flower.</source>
        <translation>Schwere Hummeln öffnen die Blüte.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cardiac glycosides: a few leaves can kill; mistaken for comfrey and borage</source>
        <translation>Herzglykoside: wenige Blätter können tödlich sein; Verwechslung mit Beinwell und Borretsch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep out of food beds and from children; gloves; label. In case of eating call a poison centre at once.</source>
        <translation>Nicht in Gemüsebeete, von Kindern fernhalten; Handschuhe; beschriften. Nach Verzehr sofort den Giftnotruf anrufen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bumblebee flower.</source>
        <translation>Hummelblume.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dries well.</source>
        <translation>Trocknet gut.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pollen falls with the wind: a square block of at least four rows sets full ears, a single row does not.</source>
        <translation>Der Pollen fällt mit dem Wind: Ein quadratischer Block aus mindestens vier Reihen füllt die Kolben, eine einzelne Reihe nicht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>With bean: land equivalent ratio 1.18-2.68, median 1.41; with pumpkin 0.69-1.53, median 0.90.</source>
        <translation>Mit Bohne: Flächenvergleichswert 1,18–2,68, Median 1,41; mit Kürbis 0,69–1,53, Median 0,90.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Three crops together (maize, bean, squash) gave more energy and protein per hectare than each alone.</source>
        <translation>Drei Kulturen zusammen (Mais, Bohne, Kürbis) gaben mehr Energie und Eiweiß je Hektar als jede allein.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tasselling, silking and ear filling</source>
        <translation>Fahnenschieben, Fadenbildung und Füllen der Kolben</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf blight and smut</source>
        <translation>Blattdürre und Brand</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early short</source>
        <translation>früh kurz</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>For cooler places.</source>
        <translation>Für kühlere Lagen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dig in or cut four weeks before the next sowing: fresh residues hold back small seeds and take up nitrogen for a time.</source>
        <translation>Vier Wochen vor der nächsten Saat eingraben oder schneiden: Frische Reste hemmen kleine Samen und binden zeitweise Stickstoff.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Residues hold back small-seeded weeds and small-seeded crops (allelopathy).</source>
        <translation>Reste hemmen kleinsamige Unkräuter und kleinsamige Kulturen (Allelopathie).</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>shared rusts, take-all and wireworm in old grass</source>
        <translation>gemeinsame Roste, Schwarzbeinigkeit und Drahtwürmer in altem Gras</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Often sown with vetch or peas, which it carries.</source>
        <translation>Oft mit Wicke oder Erbsen gesät, die er trägt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Broadcast 2-3 g per m2; can be sown under a tall crop in summer.</source>
        <translation>2–3 g je m² breitwürfig säen; im Sommer auch unter eine hohe Kultur.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering to grain filling</source>
        <translation>Blüte bis Kornfüllung</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf edges</source>
        <translation>Blattränder</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut the skin</source>
        <translation>schneiden in die Haut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves to harvest.</source>
        <translation>Zur Ernte Handschuhe tragen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lift and pot before the first frost; winter it indoors.</source>
        <translation>Vor dem ersten Frost ausgraben und eintopfen; im Haus überwintern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf blades</source>
        <translation>Blattspreiten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>oxalic acid: vomiting, kidney damage; deaths rare</source>
        <translation>Oxalsäure: Erbrechen, Nierenschäden; selten Todesfälle</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat the stalks only; do not feed leaves to animals.</source>
        <translation>Nur die Stiele essen; Blätter nicht an Tiere verfüttern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Take no stalks in the planting year; stop pulling at midsummer so that the crown gathers strength.</source>
        <translation>Im Pflanzjahr keine Stiele nehmen; zur Sommersonnenwende aufhören, damit der Stock Kraft sammelt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>crown rot</source>
        <translation>Kronenfäule</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>none of weight</source>
        <translation>nichts von Gewicht</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>a known food allergen</source>
        <translation>ein bekanntes Nahrungsmittelallergen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Take care with people who react to it.</source>
        <translation>Vorsicht bei Menschen, die darauf reagieren.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>green plant eaten in quantity</source>
        <translation>grüne Pflanze, in größerer Menge gegessen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fagopyrin makes pale-skinned animals sensitive to sun</source>
        <translation>Fagopyrin macht hellhäutige Tiere lichtempfindlich</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not feed the green crop to pets or stock.</source>
        <translation>Die grüne Pflanze nicht an Haustiere oder Vieh verfüttern.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers five weeks after sowing and feeds bees and hoverflies.</source>
        <translation>Blüht fünf Wochen nach der Saat und ernährt Bienen und Schwebfliegen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>As a neighbour of onions it was too competitive and drew onion thrips.</source>
        <translation>Als Nachbar von Zwiebeln war er zu starke Konkurrenz und zog Zwiebelthripse an.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Moderation with a history of kidney stones.</source>
        <translation>Maß halten, wenn schon Nierensteine auftraten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Damascenine; not the black cumin of the kitchen</source>
        <translation>Damascenin; nicht der Schwarzkümmel der Küche</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat the seed.</source>
        <translation>Die Samen nicht essen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seeds, young plants, all parts</source>
        <translation>Samen, junge Pflanzen, alle Teile</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Diterpenoid alkaloids: can stop breath and heart</source>
        <translation>Diterpenalkaloide: können Atem und Herz stillstehen lassen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not near edible flowers or leaf crops; gloves; keep seed from children and stock.</source>
        <translation>Nicht in der Nähe essbarer Blüten oder Blattgemüse; Handschuhe; Samen von Kindern und Vieh fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in early summer, about June in north-west Europe, from plants set the summer before.</source>
        <translation>Früchte im Frühsommer, in Nordwesteuropa etwa im Juni, von im Vorsommer gesetzten Pflanzen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Broad bean between strawberries: land equivalent ratio 1.74-2.08.</source>
        <translation>Dicke Bohne zwischen Erdbeeren: Flächenvergleichswert 1,74–2,08.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Garlic between strawberries lowered spider mites.</source>
        <translation>Knoblauch zwischen Erdbeeren verminderte Spinnmilben.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>establishment, fruit enlargement</source>
        <translation>Anwachsen, Wachstum der Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt and red core; do not follow potato or tomato</source>
        <translation>Verticillium-Welke und Rote Wurzelfäule; nicht nach Kartoffel oder Tomate</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ever-bearing</source>
        <translation>immertragend</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Small pickings from summer to autumn.</source>
        <translation>Kleine Ernten vom Sommer bis Herbst.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Edging for beds and paths; sows itself.</source>
        <translation>Einfassung für Beete und Wege; sät sich selbst aus.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in early and high summer on last year's canes; cut those out after picking.</source>
        <translation>Früchte im Früh- und Hochsommer an den Ruten des Vorjahrs; diese nach der Ernte ausschneiden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt, root rot and viruses; not after potato or tomato</source>
        <translation>Verticillium-Welke, Wurzelfäule und Viren; nicht nach Kartoffel oder Tomate</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit from late summer to frost on this year's canes; cut all down in late winter.</source>
        <translation>Früchte vom Spätsommer bis zum Frost an diesjährigen Ruten; im Spätwinter alles abschneiden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thorns tear skin and clothes</source>
        <translation>Dornen reißen Haut und Kleidung auf</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and eye protection when tying in; keep clear of paths, or choose a thornless kind.</source>
        <translation>Handschuhe und Augenschutz beim Anbinden; von Wegen fernhalten oder eine dornenlose Sorte wählen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit from high summer on last year's canes.</source>
        <translation>Früchte ab Hochsommer an den Ruten des Vorjahrs.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer on last year's canes.</source>
        <translation>Früchte im Hochsommer an den Ruten des Vorjahrs.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves and sap</source>
        <translation>Blätter und Saft</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Furanocoumarins: blisters and long-lasting marks where sap and sun meet on skin</source>
        <translation>Furocumarine: Blasen und lange bleibende Flecken, wo Saft und Sonne auf der Haut zusammenkommen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and long sleeves, never in sun; wash at once. Keep from paths and children's play.</source>
        <translation>Handschuhe und lange Ärmel, nie bei Sonne; sofort waschen. Von Wegen und Spielplätzen fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous in quantity; can end a pregnancy</source>
        <translation>in größerer Menge giftig; kann eine Schwangerschaft beenden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat, above all not in pregnancy. Ask a qualified adviser.</source>
        <translation>Nicht essen, vor allem nicht in der Schwangerschaft. Fachkundigen Rat einholen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves, stems, unripe fruit</source>
        <translation>Blätter, Stängel, unreife Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Glycoalkaloids (tomatine, solanine); sickness if eaten in quantity</source>
        <translation>Glykoalkaloide (Tomatin, Solanin); Übelkeit, wenn größere Mengen gegessen werden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat ripe fruit only; keep leaves and stems from children and stock.</source>
        <translation>Nur reife Früchte essen; Blätter und Stängel von Kindern und Vieh fernhalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Late blight comes with warm wet weather and passes from potatoes: keep the two apart and water the soil, not the leaves.</source>
        <translation>Kraut- und Braunfäule kommt bei warmem, nassem Wetter und geht von Kartoffeln über: beide getrennt halten und den Boden gießen, nicht die Blätter.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce between tomatoes: land equivalent ratio 1.12-1.93.</source>
        <translation>Salat zwischen Tomaten: Flächenvergleichswert 1,12–1,93.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Set the lettuce before or with the tomatoes: it yields less the later it comes in; the tomatoes did not suffer.</source>
        <translation>Salat vor oder mit den Tomaten setzen: Je später er kommt, desto weniger bringt er; die Tomaten litten nicht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Basil beside tomato lowered some pests in some trials; land equivalent ratio 0.90-1.24.</source>
        <translation>Basilikum neben Tomate verminderte in einigen Versuchen einige Schädlinge; Flächenvergleichswert 0,90–1,24.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering, fruit set and enlargement</source>
        <translation>Blüte, Fruchtansatz und Wachstum der Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt passes between tomato, potato, aubergine, pepper and strawberry; potato cyst nematode and late blight between potato and tomato</source>
        <translation>Verticillium-Welke geht zwischen Tomate, Kartoffel, Aubergine, Paprika und Erdbeere über; Kartoffelzystenälchen sowie Kraut- und Braunfäule zwischen Kartoffel und Tomate</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early cherry</source>
        <translation>frühe Kirsche</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Small fruit on long trusses.</source>
        <translation>Kleine Früchte an langen Trauben.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>large late</source>
        <translation>groß spät</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Large ribbed fruit.</source>
        <translation>Große gerippte Früchte.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Late blight comes with warm wet weather and passes from potatoes: keep the two apart.</source>
        <translation>Kraut- und Braunfäule kommt bei warmem, nassem Wetter und geht von Kartoffeln über: beide getrennt halten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dwarf pot</source>
        <translation>Zwerg für Töpfe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>For edges and pots.</source>
        <translation>Für Ränder und Töpfe.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Onion between peppers: land equivalent ratio 1.03-1.37.</source>
        <translation>Zwiebel zwischen Paprika: Flächenvergleichswert 1,03–1,37.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>early small</source>
        <translation>früh klein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit, seed</source>
        <translation>Frucht, Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Capsaicin burns eyes and skin</source>
        <translation>Capsaicin brennt in Augen und auf der Haut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves to pick and cut; wash hands before touching the face.</source>
        <translation>Zum Pflücken und Schneiden Handschuhe tragen; Hände waschen, bevor sie ins Gesicht kommen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cross-pollinates with sweet pepper; the fruit of the year is not affected, saved seed is.</source>
        <translation>Kreuzt sich mit Paprika; die Frucht des Jahres bleibt wie sie ist, eigenes Saatgut nicht.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>green or sprouted tubers, haulm, berries</source>
        <translation>grüne oder gekeimte Knollen, Kraut, Beeren</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Glycoalkaloids solanine and chaconine; cooking does not destroy them</source>
        <translation>die Glykoalkaloide Solanin und Chaconin; Kochen zerstört sie nicht</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep tubers dark, cut away green and eyes, discard bitter tubers; never eat leaves or berries.</source>
        <translation>Knollen dunkel lagern, Grünes und Augen wegschneiden, bittere Knollen wegwerfen; Blätter und Beeren nie essen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Earth up or plant deep: light on a tuber turns it green and poisonous.</source>
        <translation>Anhäufeln oder tief legen: Licht macht Knollen grün und giftig.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Maize between potatoes: land equivalent ratio 0.87-1.92, median near 1.</source>
        <translation>Mais zwischen Kartoffeln: Flächenvergleichswert 0,87–1,92, Median nahe 1.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tuber enlargement</source>
        <translation>Wachstum der Knollen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>potato cyst nematode, scab, Verticillium wilt, late blight of volunteers</source>
        <translation>Kartoffelzystenälchen, Schorf, Verticillium-Welke, Kraut- und Braunfäule aus Selbstaussaat</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>late keeper</source>
        <translation>spät haltbar</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>first early</source>
        <translation>sehr früh</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lifted small.</source>
        <translation>Klein geerntet.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves, husk, unripe fruit</source>
        <translation>Blätter, Hülle, unreife Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Glycoalkaloids; sickness if eaten in quantity</source>
        <translation>Glykoalkaloide; Übelkeit, wenn größere Mengen gegessen werden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat filled fruit only, without the husk.</source>
        <translation>Nur ausgefüllte Früchte essen, ohne die Hülle.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Does not set with its own pollen: grow at least two plants.</source>
        <translation>Setzt mit eigenem Pollen nicht an: mindestens zwei Pflanzen ziehen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat fully ripe orange fruit only, without the husk.</source>
        <translation>Nur ganz reife orange Früchte essen, ohne die Hülle.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A short-lived perennial grown as an annual where winters freeze.</source>
        <translation>Kurzlebige Staude, wo der Winter Frost bringt einjährig gezogen.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grown as a trap for aphids and cabbage whites; the evidence is mixed.</source>
        <translation>Als Fangpflanze für Blattläuse und Kohlweißlinge gezogen; die Belege sind gemischt.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaves, flowers and green seeds are eaten.</source>
        <translation>Blätter, Blüten und grüne Samen sind essbar.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Winter it indoors in a pot, or under deep mulch in mild places.</source>
        <translation>Im Topf im Haus überwintern oder in milden Lagen unter dickem Mulch.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers are eaten; take them from plants that were not sprayed.</source>
        <translation>Die Blüten sind essbar; von Pflanzen nehmen, die nicht gespritzt wurden.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit, fresh or dried</source>
        <translation>Frucht, frisch oder getrocknet</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Kidney failure in dogs</source>
        <translation>Nierenversagen bei Hunden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep dogs from fallen fruit; ask a veterinary surgeon at once if one has eaten some.</source>
        <translation>Hunde von Fallobst fernhalten; sofort zum Tierarzt, wenn ein Hund davon gefressen hat.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in early autumn in warm places or on a warm wall.</source>
        <translation>Früchte im Frühherbst in warmen Lagen oder an einer warmen Wand.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering to fruit swelling</source>
        <translation>Blüte bis Schwellen der Früchte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Where summers are cool it needs glass: started indoors in late winter and kept above 15 degrees.</source>
        <translation>Wo der Sommer kühl ist, braucht er Glas: im Spätwinter im Haus gezogen und über 15 Grad gehalten.</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ice plant family</source>
        <translation>Mittagsblumengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>beet family</source>
        <translation>Fuchsschwanzgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion family</source>
        <translation>Amaryllisgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot family</source>
        <translation>Doldenblütler</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>asparagus family</source>
        <translation>Spargelgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>daisy family</source>
        <translation>Korbblütler</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Malabar spinach family</source>
        <translation>Basellgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>borage family</source>
        <translation>Raublattgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage family</source>
        <translation>Kreuzblütler</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>hemp family</source>
        <translation>Hanfgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>honeysuckle family</source>
        <translation>Geißblattgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>pink family</source>
        <translation>Nelkengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>spider flower family</source>
        <translation>Spinnenblumengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bindweed family</source>
        <translation>Windengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>gourd family</source>
        <translation>Kürbisgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>heath family</source>
        <translation>Heidekrautgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>pea family</source>
        <translation>Hülsenfrüchtler</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>currant family</source>
        <translation>Stachelbeergewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>iris family</source>
        <translation>Schwertliliengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mint family</source>
        <translation>Lippenblütler</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>meadowfoam family</source>
        <translation>Sumpfblumengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flax family</source>
        <translation>Leingewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mallow family</source>
        <translation>Malvengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>miner's lettuce family</source>
        <translation>Quellkrautgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>willowherb family</source>
        <translation>Nachtkerzengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>wood sorrel family</source>
        <translation>Sauerkleegewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>poppy family</source>
        <translation>Mohngewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>plantain family</source>
        <translation>Wegerichgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leadwort family</source>
        <translation>Bleiwurzgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>grass family</source>
        <translation>Süßgräser</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>phlox family</source>
        <translation>Sperrkrautgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dock family</source>
        <translation>Knöterichgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>purslane family</source>
        <translation>Portulakgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>buttercup family</source>
        <translation>Hahnenfußgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>rose family</source>
        <translation>Rosengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>citrus family</source>
        <translation>Rautengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>nightshade family</source>
        <translation>Nachtschattengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>nasturtium family</source>
        <translation>Kapuzinerkressengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>verbena family</source>
        <translation>Eisenkrautgewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>violet family</source>
        <translation>Veilchengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>vine family</source>
        <translation>Weinrebengewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ginger family</source>
        <translation>Ingwergewächse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>total yield of both on the same ground, of that of each alone</source>
        <translation>Gesamtertrag beider auf derselben Fläche, verglichen mit jeweils allein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>LER</source>
        <translation>LER</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ground covered by weeds at the end of the critical period, against leek alone</source>
        <translation>von Unkraut bedeckter Boden am Ende der kritischen Zeit, verglichen mit Lauch allein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>total yield of both, of that of each alone</source>
        <translation>Gesamtertrag beider, verglichen mit jeweils allein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>diameter and grade of leeks</source>
        <translation>Durchmesser und Güte des Lauchs</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of cabbage, against cabbage alone</source>
        <translation>Ertrag des Kohls, verglichen mit Kohl allein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth and yield of cabbage</source>
        <translation>Wachstum und Ertrag des Kohls</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>marketable yield of cabbage, against cabbage alone</source>
        <translation>marktfähiger Ertrag des Kohls, verglichen mit Kohl allein</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>marketable yield of cabbage</source>
        <translation>marktfähiger Ertrag des Kohls</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield and size of the heads</source>
        <translation>Ertrag und Größe der Köpfe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>success of the second crop</source>
        <translation>Erfolg der zweiten Kultur</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>land use efficiency of both crops</source>
        <translation>Flächennutzung beider Kulturen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of lettuce the later it is planted after tomato</source>
        <translation>Ertrag des Salats, je später er nach der Tomate gepflanzt wird</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>weight of lettuce as cucumbers stand closer</source>
        <translation>Gewicht des Salats, je enger die Gurken stehen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of cucumber</source>
        <translation>Ertrag der Gurken</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot fly</source>
        <translation>Möhrenfliege</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion thrips</source>
        <translation>Zwiebelthrips</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot-willow aphid</source>
        <translation>Möhrenblattlaus</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion thrips, of four living mulches</source>
        <translation>Zwiebelthrips, bei vier lebenden Mulchen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion yield under a living mulch</source>
        <translation>Zwiebelertrag unter lebendem Mulch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion yield</source>
        <translation>Zwiebelertrag</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>thrips damage</source>
        <translation>Thripsschäden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of maize per area</source>
        <translation>Maisertrag je Fläche</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of squash</source>
        <translation>Kürbisertrag</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>energy and protein per area</source>
        <translation>Energie und Eiweiß je Fläche</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage root fly and aphids: landings and eggs</source>
        <translation>Kleine Kohlfliege und Blattläuse: Anflüge und Eier</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of brassicas over living clover</source>
        <translation>Ertrag von Kohlgewächsen über lebendem Klee</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage root fly: finding the crop</source>
        <translation>Kleine Kohlfliege: Finden der Kultur</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root-knot and lesion nematodes</source>
        <translation>Wurzelgallen- und Wurzelläsionsälchen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>hoverfly larvae on lettuce aphid</source>
        <translation>Schwebfliegenlarven an Salatblattläusen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>heads beside alyssum that stands too close</source>
        <translation>Köpfe neben zu dicht stehendem Duftsteinrich</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cucumber beetles</source>
        <translation>Gurkenkäfer</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>diamondback moth</source>
        <translation>Kohlmotte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>thrips, and armyworm laying eggs</source>
        <translation>Thripse und die Eiablage von Heerwürmern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>parasitoids and hoverflies while it flowers</source>
        <translation>Schlupfwespen und Schwebfliegen während der Blüte</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>two-spotted spider mite</source>
        <translation>Gemeine Spinnmilbe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of seedlings in extracts and old stubble</source>
        <translation>Wachstum von Sämlingen in Auszügen und alten Stoppeln</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>germination of small seeds in fresh residue</source>
        <translation>Keimung kleiner Samen in frischen Pflanzenresten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of neighbours</source>
        <translation>Wachstum der Nachbarn</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>late blight (Phytophthora infestans)</source>
        <translation>Kraut- und Braunfäule (Phytophthora infestans)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt</source>
        <translation>Verticillium-Welke</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>clubroot (Plasmodiophora brassicae)</source>
        <translation>Kohlhernie (Plasmodiophora brassicae)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>white rot (Stromatinia cepivora)</source>
        <translation>Mehlkrankheit (Stromatinia cepivora)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>white mould (Sclerotinia sclerotiorum)</source>
        <translation>Sclerotinia-Fäule (Sclerotinia sclerotiorum)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot fly (Chamaepsila rosae)</source>
        <translation>Möhrenfliege (Chamaepsila rosae)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flea beetles, cabbage root fly, cabbage whites</source>
        <translation>Erdflöhe, Kleine Kohlfliege, Kohlweißlinge</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stems to climb</source>
        <translation>Stängel zum Klettern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>soil broken deep and wide when it is lifted</source>
        <translation>tief und breit aufgebrochener Boden beim Roden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of beans and peas</source>
        <translation>Wachstum von Bohnen und Erbsen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>radish marks the row and is out before it matters</source>
        <translation>Radieschen markieren die Reihe und sind geräumt, bevor es darauf ankommt</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>aphids and cabbage whites: as a trap</source>
        <translation>Blattläuse und Kohlweißlinge: als Fangpflanze</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Colorado beetle</source>
        <translation>Kartoffelkäfer</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of beetroot</source>
        <translation>Wachstum der Roten Bete</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield: both sprawl</source>
        <translation>Ertrag: beide breiten sich aus</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth and flavour of tomatoes</source>
        <translation>Wachstum und Geschmack von Tomaten</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>black bean aphid</source>
        <translation>Schwarze Bohnenlaus</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage whites: by smell</source>
        <translation>Kohlweißlinge: durch den Geruch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Common practice among growers; no single source</source>
        <translation>Übliche Praxis unter Gärtnern; keine einzelne Quelle</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The grower's own figure</source>
        <translation>Eigene Angabe</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>General figure across United States extension bulletins on vegetables, herbs and annual flowers</source>
        <translation>Allgemeine Angabe aus Beratungsblättern der USA zu Gemüse, Kräutern und Sommerblumen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lists of shade tolerant vegetables in extension bulletins</source>
        <translation>Listen schattenverträglicher Gemüse in Beratungsblättern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>General rotation advice: three to four years between members of one family</source>
        <translation>Allgemeiner Rat zur Fruchtfolge: drei bis vier Jahre zwischen Gliedern einer Pflanzenfamilie</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>General figure across seed technology handbooks</source>
        <translation>Allgemeine Angabe aus Handbüchern der Saatguttechnik</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Oxalate and nitrate in leaf vegetables: general statement of nutrition texts</source>
        <translation>Oxalat und Nitrat in Blattgemüse: allgemeine Aussage der Ernährungsliteratur</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Crop mixtures and Thrips tabaci on onion (abstract)</source>
        <translation>Crop mixtures and Thrips tabaci on onion (Zusammenfassung)</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Contact allergy to the daisy family (sesquiterpene lactones): general statement of dermatology texts</source>
        <translation>Kontaktallergie gegen Korbblütler (Sesquiterpenlactone): allgemeine Aussage der Hautheilkunde</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Median of related crops in this catalogue</source>
        <translation>Median verwandter Kulturen in diesem Katalog</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Reckoned from other values of the same crop</source>
        <translation>Aus anderen Werten derselben Kultur berechnet</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Trial of maize, bean and squash grown alone and together, with the Catawba</source>
        <translation>Versuch mit Mais, Bohne und Kürbis, allein und zusammen angebaut, mit den Catawba</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Garden tradition, as handed on in handbooks</source>
        <translation>Gartenüberlieferung, wie sie Handbücher weitergeben</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mosses and mats to hops on a pole and small trees</source>
        <translation>von Moosen und Matten bis zu Hopfen an der Stange und kleinen Bäumen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>single onion leaves to rambling pumpkins</source>
        <translation>von einzelnen Zwiebelblättern bis zu rankenden Kürbissen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves on the ground to a trained crown</source>
        <translation>von Blättern am Boden bis zur erzogenen Krone</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cress to lucerne and asparagus</source>
        <translation>von Kresse bis Luzerne und Spargel</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cress to old lucerne</source>
        <translation>von Kresse bis zu alter Luzerne</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>radish to rambling gourds</source>
        <translation>von Radieschen bis zu rankenden Kürbissen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>a thin stand to the densest canopy measured</source>
        <translation>vom lichten Bestand bis zum dichtesten gemessenen Blätterdach</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>upright blades to flat leaves</source>
        <translation>von aufrechten Halmen bis zu flachen Blättern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>broadcast cress to small trees</source>
        <translation>von breitwürfiger Kresse bis zu kleinen Bäumen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>broadcast salads to small trees</source>
        <translation>von breitwürfigen Salaten bis zu kleinen Bäumen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cress to squash hills</source>
        <translation>von Kresse bis zu Kürbishügeln</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>one plant to a pinch of chives</source>
        <translation>von einer Pflanze bis zu einer Prise Schnittlauch</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>rambling squash to cress</source>
        <translation>von rankendem Kürbis bis Kresse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed that needs light to deep bulbs</source>
        <translation>von Lichtkeimern bis zu tiefen Zwiebeln</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed sprouts in thawing soil at the lowest</source>
        <translation>Samen keimt frühestens in tauendem Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>between thawing and scorched soil</source>
        <translation>zwischen tauendem und verbranntem Boden</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed dies in hotter soil</source>
        <translation>in heißerem Boden stirbt der Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>a share, not per cent</source>
        <translation>ein Anteil, keine Prozent</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>the largest beans to dust-fine seed</source>
        <translation>von den größten Bohnen bis zu staubfeinem Samen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>a week to a long-lived weed</source>
        <translation>von einer Woche bis zu langlebigem Unkraut</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>crops grow between frost and scorching heat</source>
        <translation>Kulturen wachsen zwischen Frost und sengender Hitze</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>winter cereals to tropical crops</source>
        <translation>von Wintergetreide bis zu tropischen Kulturen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cool-season to desert crops</source>
        <translation>von Kulturen der kühlen Zeit bis zu denen der Wüste</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>nothing is raised longer than two years</source>
        <translation>nichts wird länger als zwei Jahre vorgezogen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>no stage of a crop lasts longer than about a year</source>
        <translation>kein Stadium dauert länger als etwa ein Jahr</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>sprouting cress to asparagus crowns</source>
        <translation>von keimender Kresse bis zu Spargelkronen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>grown plants to asparagus crowns</source>
        <translation>von fertigen Pflanzen bis zu Spargelkronen</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>a day to all the year</source>
        <translation>von einem Tag bis zum ganzen Jahr</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>boreal shrubs to tropical herbs</source>
        <translation>von nordischen Sträuchern bis zu tropischen Kräutern</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>FAO-56 Table 22 gives 0.15 to 0.7</source>
        <translation>FAO-56, Tabelle 22, nennt 0,15 bis 0,7</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>FAO-56 Table 12 gives 0.15 to 1.25</source>
        <translation>FAO-56, Tabelle 12, nennt 0,15 bis 1,25</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>FAO-56 Table 12 gives up to 1.25</source>
        <translation>FAO-56, Tabelle 12, nennt bis 1,25</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>heated glasshouse tomatoes bear the most</source>
        <translation>am meisten tragen Tomaten im geheizten Gewächshaus</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>show pumpkins bear the most</source>
        <translation>am meisten tragen Schaukürbisse</translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>none to the longest-lived resting spores</source>
        <translation>von nichts bis zu den langlebigsten Dauersporen</translation>
    </message>
</context>
</TS>
