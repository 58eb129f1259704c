<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <location filename="resources/crops"/>
        <source>leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>High oxalate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Blanch and pour off the water; moderation with a history of kidney stones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>high in oxalate; nitrate is high in plants grown in low light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat in moderation with a history of kidney stones; ask a doctor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A seed cluster brings two to four seedlings; thin, or let a clump grow together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cercospora leaf spot, beet cyst nematode (brassicas are hosts too)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seedlings of thorn apple or nightshade among the leaves have poisoned people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Weed before cutting and look through the leaves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt, downy mildew; beet nematode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>general; downy mildew, leaf miners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed coat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bitter saponins upset the stomach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Rinse until the water no longer foams.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>all parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>garlic and onion are poisonous to dogs, cats and other animals in quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep peelings and plants from pets; ask a vet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulb enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>white rot, eelworm, pink root</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leek covers the ground slowly; mixed with celery it shaded out far more weeds, at some cost in leek quality.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>garlic kept in oil at room temperature can grow the botulism germ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep garlic in oil cold and for a few days only, or follow tested recipes of a food safety body.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cloves need some weeks below about 10 °C to divide into bulbs: plant in autumn or very early spring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulbing; dry off before lifting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>lily of the valley, autumn crocus and lords-and-ladies are mistaken for it; the first two have killed people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not grow these plants near it; check every single leaf by smell and form. If unsure, leave it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>as the onion family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Much visited by bees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bulb and leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>lycorine and oxalates: vomiting, sore mouth; bulbs mistaken for onions, leaves for chives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never store or plant beside onions, chives or leeks; label it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>sap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>skin rash from handling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stem eelworm, basal rot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf and stem sap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Furanocoumarins: sap on the skin followed by sun can redden or blister it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and sleeves when cutting much of it in sun; wash the sap off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>plants of the same family growing wild</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poison hemlock and water-dropwort are deadly and look like this crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat only what you sowed; weed out strange umbellifers; if in doubt ask a qualified botanist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carrot fly finds it by smell: fleece or mesh from sowing, thin in the evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carrots among young onions were less attacked by carrot fly; the effect went once the onions bulbed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>French marigold between rows did not keep carrot fly off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lifting opens the soil beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaf blights, cavity spot and canker live on in the soil; carrot fly stays near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Furanocoumarins: burns, blisters and long-lasting marks where sap meets sun, worse on wet skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and long sleeves, no strimming, work in dull weather, wash at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Slow to show (two to four weeks): radish or lettuce sown in the row marks it and is out before it closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf and stalk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Celery allergy, sometimes severe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not serve to people who are allergic; seek medical advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A week below 10 degrees when young sends it to seed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leek with celery between: celery closes the canopy and keeps weeds down; leek quality suffers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole season, last month above all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>swelling of the root, late summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sow after midsummer or take a slow-bolting kind: long days and cold nights send it to seed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>swelling of the bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Its flowers feed hoverflies and parasitic wasps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Land equivalent ratio of carrot with parsley in one trial: median 2.37 (1.49-2.38), higher than most mixtures reach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Slow to show: two to four weeks in cool soil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>establishment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bolts in heat and long days: sow little and often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bolts in summer sun: sow in spring and autumn or in shade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One plant is enough for a household.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Seeds itself freely: pull volunteers while small.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Said to hinder its neighbours: no sound trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ripens seed only in a warm dry summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut flower: picking the first stems brings more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>berries; raw shoots on the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>saponins: upset stomach; skin rash in some people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat the red berries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The bed stays ten to twenty years; the fern feeds the roots and must stand until it yellows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fern growth after harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt and root rot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bolts and turns bitter in long hot days: some shade in summer helps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce below cucumber: land equivalent ratio above 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head enlargement or leaf growth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bottom rot, drop and white mould live on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown before midsummer it bolts after cold nights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head formation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf and flower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Contact allergy in people sensitive to the daisy family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves when handling much of it; stop if the skin itches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut the flowers off: it seeds itself everywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Feeds bees and hoverflies while it flowers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Heads left to flower are covered with bees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The room between young plants carries lettuce or radish in the first spring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bud formation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Throws deep shade from July: plant it on the north side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Inulin gives some people wind: try a little first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Moved with the roots of other families</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Rules on selling the leaf as food differ between countries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bees and bumblebees work the heads; birds take the seed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carries climbing beans only if sown three weeks before them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bud to full flower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sclerotinia white mould lives on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Petals are eaten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A dense stand for a whole season before the crop lowers root-knot and lesion nematodes; between rows it does little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Between carrot rows it did not keep carrot fly off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A dense stand for a whole season before the crop lowers root-knot and lesion nematodes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Single kinds feed bees; double kinds give them nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut in bud and dry hanging.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flat heads feed hoverflies and parasitic wasps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Spreads by runners: keep it in bounds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thujone: poisonous in quantity to people and stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat it or drink it as tea; not in pregnancy; keep it from grazing animals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Said to keep ants and beetles away: no sound trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One of the last feeds of the year for bees and butterflies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Low amounts of pyrrolizidine alkaloids, harmful to the liver over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Use flowers as an occasional garnish; avoid regular use of the leaves, in pregnancy and with liver disease. Ask a qualified adviser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf hairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bristles irritate the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves when pulling plants.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One of the richest bee flowers of the garden, open from early summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves and stems</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Hairs can cause a skin rash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves and long sleeves when cutting a stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Broadcast 1-1.5 g per m2, rake in; dig in or cut before seed ripens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Draws bees and hoverflies while it flowers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Between onions it competed too strongly and drew onion thrips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>all parts, root most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pyrrolizidine alkaloids: liver damage, possibly cancer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat, do not drink as tea, do not put on broken skin. Compost and liquid feed only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Mistaken for foxglove leaves, which are deadly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not grow foxglove beside comfrey or borage; label both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut leaves for mulch, compost and liquid feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Plant the sterile kind; keep roots out of beds that are dug.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pyrrolizidine alkaloids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not for eating or tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bristles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Irritate the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Plants kept below about 10 °C for weeks when young may run to seed instead of swelling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head development</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>clubroot, blackleg, black rot; cabbage root fly and aphids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grown with a background of clover or other green plants, cabbage root fly lays fewer eggs in choice trials; without a choice no reduction was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>head formation to harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Needs a winter's cold before it shoots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Runs to seed when sown early and chilled, or in long days; safest sown from midsummer on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Attracts diamondback moth to lay on it, where its caterpillars do not survive; tried as a dead-end trap crop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves from streams and ditches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>water fed by grazing land can carry liver fluke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grow it in clean mains or well water; never eat plants from streams raw. Follow local food-safety advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>monkshood root has been eaten in mistake for horseradish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never grow the two near each other; know the leaf before you dig.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root, grating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mustard oil stings eyes and airways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grate in moving air, wash hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Every piece of root left behind grows again; give it a place of its own or a barrier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Carries clubroot: not on ground where brassicas follow soon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>In flower it draws bees and hoverflies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Between lettuce it raised hoverfly larvae against aphids; 2-8 % of the area was enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>clubroot: counts with the cabbage family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>all parts, seeds most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>contains cardiac glycosides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not for eating; keep apart from edible flowers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stems, leaves, cones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Hooked hairs and resin: rash on skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and long sleeves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>spent or fresh cones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Overheating and death in dogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep dogs from cones and brewing waste; ask a veterinary surgeon at once if one has eaten some.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Shoots in spring, cones in late summer and early autumn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown in late summer as a catch crop after the main crop; keep the bed cool and damp until it shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>germination in late summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stems</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Small thorns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A relative of the cabbages: flea beetles and cabbage whites may visit it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>With maize: land equivalent ratio 1.15-2.13, median 1.40.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>enlargement of storage organ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seeds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ergoline alkaloids (related to LSD): confusion, sickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not edible, and not the sweet potato or water spinach. Keep seed from children.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bitter fruit, above all from saved or stressed plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cucurbitacins: cramps, vomiting, diarrhoea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Taste a little raw; spit out and discard any bitter fruit. Do not save seed near ornamental gourds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Male and female flowers on one plant, carried by bees: few bees or fleece left on at flowering means few fruits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce below cucumber: cucumber yield not affected, land equivalent ratio above 1 (2.35 cucumbers per m2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A border of blue hubbard squash draws cucumber beetles away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt, scab, leaf spots and Phytophthora blight live on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bud development, flowering and fruiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pumpkin under maize: land equivalent ratio 0.69-1.53, median 0.90; both yield most alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit set and early fruit development</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Needs sour soil, pH 4.0-5.5, and soft water: does not share a bed with lime-loving vegetables.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit from July to September in north-west Europe by kind; two kinds set better than one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit swelling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in late summer and early autumn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in autumn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>The earliest kinds need 694 degree days above 4.4 degrees from sowing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flower bud formation to pod enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Foot and root rots and Aphanomyces live on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>One netted row shades the ground north of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed raw or cooked, pollen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Favism: haemolytic anaemia in people with G6PD deficiency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>People with G6PD deficiency must not eat them; seek medical advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectin, a tenth or less of that of red kidney bean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Long-tongued bumblebees set the pods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pinch out the tips at first pods: black bean aphids settle there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Strawberry with broad bean: land equivalent ratio 1.74-2.08.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pod set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Root rots, anthracnose and white mould live on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw or undercooked seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Phytohaemagglutinin: severe vomiting 1-3 hours after as few as four or five raw beans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Soak at least 5 hours, pour off, boil hard at least 10 minutes (FDA advises 30); slow cookers are not hot enough. Cook the pods too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce with dwarf bean: land equivalent ratio 1.46, the bean at 0.97 of its sole yield.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Mixed with onion or garlic: antagonism is claimed; land equivalent ratio 1.43 with onion was measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>canes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eye injuries when bending over cane tips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cap every cane.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Climbing bean with tomato: land equivalent ratio 1.13-1.24.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Climbing bean on maize or sweetcorn: land equivalent ratio 1.41 in the median of 22 treatments, the maize at 0.87 of its sole yield.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw pods, seeds and roots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectins: vomiting and cramps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cook pods and dry seeds; never eat them raw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bumblebees set the pods; dry hot days drop the flowers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>raw seed, above all coloured landraces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cyanogenic glycoside (linamarin)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Boil and pour off the water; grow kinds bred for the garden.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wants a warm summer: in cool places under glass or not at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Aphanomyces root rot, shared with pea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Acid droplets (malic, oxalic) may sting hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves when handling many plants.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pod fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ascochyta blight and root rots live on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectins and trypsin inhibitors; soya allergy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Boil green pods at least five minutes, dry seed well. Not for people with soya allergy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Maize with soya: land equivalent ratio 1.33 in the median of three treatments.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>White mould lives on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lectins and trypsin inhibitors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cook seeds well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Peanut allergy: can kill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never serve to people who are allergic; seek medical advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mouldy pods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Aflatoxin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dry quickly; throw mouldy or shrivelled nuts away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pegging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaf spots and pod rots live on in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seeds and pods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous (beta-aminopropionitrile, a lathyrogen): not the edible pea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Never eat any part. Keep it apart from garden peas, label both, and save no seed where children take pods for peas.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ripe dry seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cyanogenic glycosides: poisonous raw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grown here as a flower. Do not eat the seed unless boiled in changes of water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Quinolizidine alkaloids: poisonous; lupin allergy too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not food. Keep children and stock from the pods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bumblebees work the spikes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Escapes into meadows in some countries: check local rules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leeks and onions undersown with clover had far fewer thrips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Onion with white clover as living mulch: highest yield and least thrips of four mulches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A green background lowers cabbage root fly eggs, often by 30-60 %, at a cost in yield from competition.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut or dig in at first flower and give it two to three weeks before sowing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown under sweetcorn or brassicas when they are knee high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seed and forage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous to stock and poultry (canavanine)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not food; keep seed from poultry and horses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sown with rye it climbs and covers better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous in quantity (cyano-alanine)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not food: do not mix with lentils.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grazing rye with vetch is the usual winter mixture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>sprouts and seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Sprouted seed carries bacteria; canavanine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not for eating raw in quantity; ask advice with lupus.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fixes nitrogen only where its root bacteria live in the soil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>For light acid soils; roots break pans.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer, July in north-west Europe; cut out old wood after picking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer, July in north-west Europe; hangs well. Also as cordons 0.4 m apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thorns scratch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and eye protection when picking and pruning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>First picking green in early summer, ripe in July in north-west Europe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>corm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Upsets the stomach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ornamental only: keep corms apart from food bulbs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lift corms before hard frost, dry and keep frost-free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Basil between tomato or Brussels sprout: land equivalent ratio 0.90-1.45; pests a little fewer in some trials.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt of basil lives in the soil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut from late spring to early autumn; leave a third of the leaf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers feed bees and hoverflies: leave some uncut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>essential oil, leaf in large amounts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thujone can cause fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Kitchen amounts are usual; no oil by mouth and no large amounts in pregnancy or with epilepsy. Ask a qualified adviser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Runners travel half a metre and more a year: hold them in with a sunk pot or board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Onion thrips fewer beside mint.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mint rust and Verticillium wilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>By tradition sown beside beans; the effect on bean aphid is not shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>essential oil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pinocamphone in the oil can cause fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaves as seasoning only; no oil by mouth, none for people with epilepsy, in pregnancy or for children. Ask a qualified adviser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut back every year into leafy wood, never into bare wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers and leaves for tea and salad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>whole plant in quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Perilla ketone harms the lungs of grazing animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Food use of leaves is usual; keep livestock away from stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Mildews in dry soil: divide every third year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers early for hoverflies, whose larvae eat aphids.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>unripe seed, green plant; raw seed in quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cyanogenic glycosides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat ripe seed in spoonfuls only; do not feed green plants to stock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fusarium wilt of flax</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves and pods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Hairs make skin itch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves and sleeves to pick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering and pod development</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root-knot nematode and wilts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Rust: take off spotted leaves, renew plants.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tubers, leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Oxalic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Moderation with a history of kidney stones; sunned tubers hold less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>latex, unripe capsule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Opiates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Growing is limited or forbidden in some countries: check national law. Only ripe seed is food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Alkaloids with a calming effect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ornamental only; not for tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Alkaloids; poisonous to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Ornamental only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Heavy bumblebees open the flower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cardiac glycosides: a few leaves can kill; mistaken for comfrey and borage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep out of food beds and from children; gloves; label. In case of eating call a poison centre at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Bumblebee flower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dries well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Pollen falls with the wind: a square block of at least four rows sets full ears, a single row does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>With bean: land equivalent ratio 1.18-2.68, median 1.41; with pumpkin 0.69-1.53, median 0.90.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Three crops together (maize, bean, squash) gave more energy and protein per hectare than each alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tasselling, silking and ear filling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf blight and smut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Dig in or cut four weeks before the next sowing: fresh residues hold back small seeds and take up nitrogen for a time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Residues hold back small-seeded weeds and small-seeded crops (allelopathy).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>shared rusts, take-all and wireworm in old grass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Often sown with vetch or peas, which it carries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Broadcast 2-3 g per m2; can be sown under a tall crop in summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering to grain filling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cut the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves to harvest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lift and pot before the first frost; winter it indoors.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaf blades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>oxalic acid: vomiting, kidney damage; deaths rare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat the stalks only; do not feed leaves to animals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Take no stalks in the planting year; stop pulling at midsummer so that the crown gathers strength.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>crown rot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>none of weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>a known food allergen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Take care with people who react to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>green plant eaten in quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fagopyrin makes pale-skinned animals sensitive to sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not feed the green crop to pets or stock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers five weeks after sowing and feeds bees and hoverflies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>As a neighbour of onions it was too competitive and drew onion thrips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Moderation with a history of kidney stones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Damascenine; not the black cumin of the kitchen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat the seed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>seeds, young plants, all parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Diterpenoid alkaloids: can stop breath and heart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Not near edible flowers or leaf crops; gloves; keep seed from children and stock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in early summer, about June in north-west Europe, from plants set the summer before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Broad bean between strawberries: land equivalent ratio 1.74-2.08.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Garlic between strawberries lowered spider mites.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>establishment, fruit enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt and red core; do not follow potato or tomato</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Edging for beds and paths; sows itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in early and high summer on last year's canes; cut those out after picking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt, root rot and viruses; not after potato or tomato</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit from late summer to frost on this year's canes; cut all down in late winter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Thorns tear skin and clothes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and eye protection when tying in; keep clear of paths, or choose a thornless kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit from high summer on last year's canes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in high summer on last year's canes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves and sap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Furanocoumarins: blisters and long-lasting marks where sap and sun meet on skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Gloves and long sleeves, never in sun; wash at once. Keep from paths and children's play.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Poisonous in quantity; can end a pregnancy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Do not eat, above all not in pregnancy. Ask a qualified adviser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves, stems, unripe fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Glycoalkaloids (tomatine, solanine); sickness if eaten in quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat ripe fruit only; keep leaves and stems from children and stock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Late blight comes with warm wet weather and passes from potatoes: keep the two apart and water the soil, not the leaves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Lettuce between tomatoes: land equivalent ratio 1.12-1.93.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Set the lettuce before or with the tomatoes: it yields less the later it comes in; the tomatoes did not suffer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Basil beside tomato lowered some pests in some trials; land equivalent ratio 0.90-1.24.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering, fruit set and enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt passes between tomato, potato, aubergine, pepper and strawberry; potato cyst nematode and late blight between potato and tomato</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Late blight comes with warm wet weather and passes from potatoes: keep the two apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Onion between peppers: land equivalent ratio 1.03-1.37.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit, seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Capsaicin burns eyes and skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Wear gloves to pick and cut; wash hands before touching the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Cross-pollinates with sweet pepper; the fruit of the year is not affected, saved seed is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>green or sprouted tubers, haulm, berries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Glycoalkaloids solanine and chaconine; cooking does not destroy them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep tubers dark, cut away green and eyes, discard bitter tubers; never eat leaves or berries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Earth up or plant deep: light on a tuber turns it green and poisonous.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Maize between potatoes: land equivalent ratio 0.87-1.92, median near 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>tuber enlargement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>potato cyst nematode, scab, Verticillium wilt, late blight of volunteers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leaves, husk, unripe fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Glycoalkaloids; sickness if eaten in quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat filled fruit only, without the husk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Does not set with its own pollen: grow at least two plants.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Eat fully ripe orange fruit only, without the husk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>A short-lived perennial grown as an annual where winters freeze.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Grown as a trap for aphids and cabbage whites; the evidence is mixed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Leaves, flowers and green seeds are eaten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Winter it indoors in a pot, or under deep mulch in mild places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Flowers are eaten; take them from plants that were not sprayed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>fruit, fresh or dried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Kidney failure in dogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Keep dogs from fallen fruit; ask a veterinary surgeon at once if one has eaten some.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Fruit in early autumn in warm places or on a warm wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flowering to fruit swelling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Where summers are cool it needs glass: started indoors in late winter and kept above 15 degrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ice plant family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>beet family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>asparagus family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>daisy family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Malabar spinach family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>borage family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>hemp family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>honeysuckle family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>pink family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>spider flower family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bindweed family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>gourd family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>heath family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>pea family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>currant family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>iris family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mint family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>meadowfoam family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flax family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>mallow family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>miner's lettuce family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>willowherb family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>wood sorrel family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>poppy family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>plantain family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>leadwort family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>grass family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>phlox family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>dock family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>purslane family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>buttercup family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>rose family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>citrus family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>nightshade family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>nasturtium family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>verbena family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>violet family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>vine family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ginger family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>total yield of both on the same ground, of that of each alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>ground covered by weeds at the end of the critical period, against leek alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>total yield of both, of that of each alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>diameter and grade of leeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of cabbage, against cabbage alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth and yield of cabbage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>marketable yield of cabbage, against cabbage alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>marketable yield of cabbage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield and size of the heads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>success of the second crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>land use efficiency of both crops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of lettuce the later it is planted after tomato</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>weight of lettuce as cucumbers stand closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of cucumber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion thrips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot-willow aphid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion thrips, of four living mulches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion yield under a living mulch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>onion yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>thrips damage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of maize per area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of squash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>energy and protein per area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage root fly and aphids: landings and eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield of brassicas over living clover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage root fly: finding the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>root-knot and lesion nematodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>hoverfly larvae on lettuce aphid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>heads beside alyssum that stands too close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cucumber beetles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>diamondback moth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>thrips, and armyworm laying eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>parasitoids and hoverflies while it flowers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>two-spotted spider mite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of seedlings in extracts and old stubble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>germination of small seeds in fresh residue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of neighbours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>late blight (Phytophthora infestans)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Verticillium wilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>clubroot (Plasmodiophora brassicae)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>white rot (Stromatinia cepivora)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>white mould (Sclerotinia sclerotiorum)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>carrot fly (Chamaepsila rosae)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>flea beetles, cabbage root fly, cabbage whites</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>stems to climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>soil broken deep and wide when it is lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of beans and peas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>radish marks the row and is out before it matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>aphids and cabbage whites: as a trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>Colorado beetle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth of beetroot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>yield: both sprawl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>growth and flavour of tomatoes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>black bean aphid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="resources/crops"/>
        <source>cabbage whites: by smell</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
