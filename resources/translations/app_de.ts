<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ArrangeMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Arrange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Repeat in a grid…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Split a planting…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Join plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Plant all places again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Mirror left and ri&amp;ght</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Mirror top and &amp;bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Align</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Left edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Middles a&amp;cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Right edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Top edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Middles &amp;down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Bottom edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>&amp;Equal gaps across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Equal gaps do&amp;wn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select something first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select at least {0} things first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select one planting first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>It is locked; unlock it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>It is a single plant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select two or more plantings first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Select a planting of which single plants were left out or moved first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Nothing changed: what is locked stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Mirror {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Align {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Equal gaps between {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Join {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/arrange.py"/>
        <source>Plant all places of {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BedFacts</name>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>The bed as a whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Families</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Under leaves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BedMapDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>a page for each bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>the whole garden in one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>largest that fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Begin with the whole &amp;garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Tick days to see each bed as it is then; none: all of the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>&amp;Drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>S&amp;cale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>&amp;Beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>S&amp;tages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>{0}, the date cursor</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BedPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Exact numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Name of the bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Canopy area of its plants as a share of the bed, mean and highest of the year's weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>{0} of the year, at most {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Verdicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Soil depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>This bed is not a rectangle: its corners are moved on the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Rename bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Resize {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Change soil depth</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClimatePane</name>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>Where these numbers come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>, changed by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/climate_pane.py"/>
        <source>{0} more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ComparisonDialog</name>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Two layouts side by side in numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Compare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>The comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Hover over a row to read what it means. “Matters” only puts the rows in order; 0 hides one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>&amp;Table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Reckoning…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>the whole garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Grown apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>A layout against itself differs in nothing: choose another to compare it with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Estimates are rounded and shown with the range that holds 8 times in 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>How much it matters: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Save the comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Table (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/dialog.py"/>
        <source>{0} and {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Compass</name>
    <message>
        <location filename="gardencanvas/app/site/compass.py"/>
        <source>Drag to turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/compass.py"/>
        <source>The top of the plan looks {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/compass.py"/>
        <source>N</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CoverStrip</name>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Soil under leaves, week by week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/bed_facts.py"/>
        <source>Soil under leaves, week by week; the line marks half</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CropDesk</name>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Keep crop {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Keep variety {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Take out {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Nothing was taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Your library holds {0} crops, {1} varieties and {2} seed lots now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Replaced: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Written to {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CropForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>New crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Change the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Like {0}: change what differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Size and spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Seed and yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Other names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>with commas between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Botanical name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Growth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Drawn as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Lives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Usually</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Also</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>Needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>give it a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>give its botanical name: it says what it is kin to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>give its family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/crop_form.py"/>
        <source>there is a crop of that name</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CropList</name>
    <message>
        <location filename="gardencanvas/app/tin/crop_list.py"/>
        <source>Crops in the seed tin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/crop_list.py"/>
        <source>Enter picks a crop up, F3 shows all that is known of it, Right shows its varieties.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CropPage</name>
    <message>
        <location filename="gardencanvas/app/crop_page.py"/>
        <source>What is known of the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_page.py"/>
        <source>Carry to the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_page.py"/>
        <source>New variety…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>From the side, grown, to one scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>The year at {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Take care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>{0} hazard: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>In your tin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Beside other crops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>{0}, source {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>≈ estimated: no source gives it for this crop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_sheet.py"/>
        <source>Sources</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayOfYearField</name>
    <message>
        <location filename="gardencanvas/app/site/day_field.py"/>
        <source>{0}, day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/day_field.py"/>
        <source>{0}, month</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EditMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Steps…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Cu&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>De&amp;lete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Turn right 15°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Turn &amp;left 15°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Loc&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>U&amp;nlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select &amp;all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select the &amp;whole succession</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>D&amp;eselect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select something first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>The clipboard holds nothing that was copied from a garden.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Select a planting that comes again first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Nothing to take back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Nothing to do again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>Nothing has been changed yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Undo {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/edit.py"/>
        <source>&amp;Redo {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExactNumbers</name>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>sown in place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>raised, planted out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>volunteer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>In the bed from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>In bed from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Seedlings to a station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Per station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Between rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Change spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Change start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/exact.py"/>
        <source>Change clump</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Faults</name>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>What you saved is safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Your unsaved work could not be written: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Your work is safe: it was just written to this computer, also what is not saved yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Something went wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>The last action did not work; the garden is as it was before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>You can go on. If it happens again, save under another name, close the program and open it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/faults.py"/>
        <source>Copy the details</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FileMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;New garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Open the &amp;demo garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Earlier &amp;versions…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Unsaved &amp;work of before…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Print or save the &amp;bed map…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>P&amp;lanting strip…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Save a &amp;picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Empty this list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Save the garden first: each save keeps a version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>There is no bed in this layout yet: draw one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/file.py"/>
        <source>Select one planting first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Filing</name>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>This file cannot be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>It stays read-only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Yours could not be kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>The garden is not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>{0} Your changes are still here; save under another name or in another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Saved, but without an earlier version: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Saved.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FilterBar</name>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Favourites</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>In my tin: seed lots of my own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Can start on the day of the date cursor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Fits the selected bed, or beside the selected planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>More filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Roots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>my own crops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>Clear all filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>{0} roots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/filter_bar.py"/>
        <source>{0} water</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingDetail</name>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Choose a finding to read why, and what would mend it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>{0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>What would mend it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>You live with it since {0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>You live with it since {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Mind it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>I know, because…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Why you live with this finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Live with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>It stays in the list, greyed, and is marked quietly on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Live with a finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/detail.py"/>
        <source>Mind a finding again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Nothing to worry about: no planting strains or clashes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Kind of finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>all kinds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Least verdict shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>strains and clashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>clashes only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>everything, gains too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>crop or word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Words a finding must hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>Findings by bed, worst first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>On bare plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/findings/panel.py"/>
        <source>{0}, lived with</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FrostPane</name>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Last frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>First frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Guess from the climate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Dates I know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Days of past years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Frost never comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Last frost of spring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>First frost of autumn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Typical days: frost comes after the one, or before the other, in half the years.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>The season has no frost on either side, and none is warned of.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>Frosts of past years: give at least one last and one first frost, or choose another way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/frost_pane.py"/>
        <source>The time from the last frost to the first is the colder part of the year. Are they swapped?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GapsPanel</name>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Click on open ground of the plan, or ask with a button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What fits, best first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>&amp;Plant it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Choose a proposal first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Place…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What fits at a place? Click or drag on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Where does the crop chosen in the seed tin fit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What can be started in the date cursor's week?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>in my tin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>new family here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>quick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>no raising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Ranked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>What counts in the ranking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>harvest for ground and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>harvest in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>soon harvested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>days to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Open on {0}; choose one to see what fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Looking for what fits there…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Choose a crop in the seed tin first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Looking for places for {0}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Looking for what can be started now…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Best first. Hover to try one out, Enter plants it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Nothing fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Plant {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/gaps/panel.py"/>
        <source>Planted: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GardenPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Select a planting or a bed to see what is known of it. Drag a crop from the seed tin into a bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Crops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Verdicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Frost-free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Typical last and first frost: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HarvestBars</name>
    <message>
        <location filename="gardencanvas/app/harvest_bars.py"/>
        <source>Harvest by week</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HelpMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>&amp;Find a command…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>The four &amp;verdicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>&amp;About Garden Canvas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>The four verdicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>clear – thin outline: nothing else uses this space while the plant stands.

shares – double outline: it overlaps a neighbour and that works, since they differ in height, roots or time.

strains – dashed outline: it works at a cost that is named: less light, a late harvest, thirst.

clashes – thick, hatched outline: one of them fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>About Garden Canvas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>Garden Canvas {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/help.py"/>
        <source>Plans several crops in the same ground. Its figures are handbook values with their ranges and sources; your soil and weather are your own. Follow local rules and qualified advice where a plant can hurt someone.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Inspector</name>
    <message>
        <location filename="gardencanvas/app/inspector/panel.py"/>
        <source>Inspector</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JobsPanel</name>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Jobs, week by week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Kind of job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>all jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Done or to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>to do and done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>crop, bed or word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Words a job must hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Calendar…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save as a calendar file (.ics)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save as a table (.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>See, save or print the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>No job is called so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Nothing is planted yet: no work to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Week {0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Done: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Not done: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save the jobs as a calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Calendar (*.ics)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Save the jobs as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Table (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/jobs_panel.py"/>
        <source>Jobs of {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Layouts</name>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Show &amp;layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>&amp;Duplicate this layout…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>A&amp;ll layouts…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>&amp;Compare layouts…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Two &amp;plans side by side…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>There is one layout only: duplicate it to try something else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>{0}, second try</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Duplicate the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/layouts.py"/>
        <source>Name of the copy</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LayoutsDialog</name>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Layouts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Why it is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Year of a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Show it on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Rename</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Take over name and note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A copy to try things in, named as above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Copy for the y&amp;ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A copy with all dates in that year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Beds &amp;only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A new one for that year without plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Mark as the one kept of its year, or no longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>De&amp;lete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Take it away; undo brings it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>{0} (shown)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Keep no &amp;longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>A garden has at least one layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>{0}. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Rename layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Duplicate layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Copy layout for {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>New layout for {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Keep layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Keep layout no longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/layouts_dialog.py"/>
        <source>Delete layout {0} ({1})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seed lot: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Variety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>none named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Year of harvest, or as on the packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Day of the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Tested on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seeds or grams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>seeds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>grams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seeds that sprouted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>Seeds laid out; 0 for no test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>sprouted of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>give an amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>more seeds sprouted than were laid out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/lot_form.py"/>
        <source>That is about {0} seeds.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <location filename="gardencanvas/app/clipboard.py"/>
        <source>Copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/clipboard.py"/>
        <source>Cut {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/clipboard.py"/>
        <source>Paste {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>&amp;What is known of the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>New &amp;variety…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>New &amp;crop…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>&amp;Take in own crops…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_commands.py"/>
        <source>Write own crops to a &amp;file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Find a command</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>What do you want to do?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>outside any bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Find on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Crop, variety, bed or support</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>As it was at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>Back or on to…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>fixture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/finding.py"/>
        <source>support</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/bedmap_dialog.py"/>
        <source>Bed map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/strip_dialog.py"/>
        <source>Planting strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Nothing to recover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>No window ended with unsaved work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Repeat in a grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>Split a planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tabs.py"/>
        <source>Gaps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tabs.py"/>
        <source>Jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tabs.py"/>
        <source>Seeds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Seed tin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Crops and outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>Season and findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>The file is not where it was; save it again, or under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/window.py"/>
        <source>{0}, read-only</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ManyPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>{0} selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Verdicts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Root depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Beds</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MonthStrip</name>
    <message>
        <location filename="gardencanvas/app/month_strip.py"/>
        <source>The year at this site</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MonthsTable</name>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Monthly climate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Enter or a digit edits a cell; rows can be pasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean temperature of the month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean of the days' lowest temperatures; leave the row empty if it is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Mean of the days' highest temperatures; leave the row empty if it is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>Rain of the month; leave the row empty if it is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}, {1}: “{2}” is not a number from {3} to {4} {5}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: {1} is missing; all twelve are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: {1} is missing; give all twelve or leave the row empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: the minimum lies above the mean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/months_table.py"/>
        <source>{0}: the maximum lies below the mean.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Outline</name>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>name or verdict…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Filter the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Bed, planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Outline of beds and plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>On bare plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>Structures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/outline.py"/>
        <source>{0}, {1}, harvest {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OwnForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>What is missing or wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>in this garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>in my library, for all gardens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/form.py"/>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PageView</name>
    <message>
        <location filename="gardencanvas/app/printing/page_view.py"/>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastTable</name>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Last frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>First frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Frosts of past years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>Write days as in 12 May; write none for a year without frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>“{0}” is no day: write it as in 12 May, or none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>“{0}”: which one is the month? Write it as a word, as in 12 May.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/past_table.py"/>
        <source>“{0}”: there is no such day.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>Save a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>the season ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>the plan and the season ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source> dpi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>&amp;Fineness of a PNG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>As on {0}, the date cursor's day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>Picture (*.png);;Drawing (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>The picture is not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/picture_dialog.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceSearch</name>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Find a town near the garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Arrow keys choose from the list below, Enter takes the chosen place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Places found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>{0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>No town of this name is in the list of {0:,}. Try a larger one nearby, or give latitude and longitude below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/place_search.py"/>
        <source>Type the first letters of a town nearby: it brings its position, its climate and a rough guess of its frosts. All of it can be changed below.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Select and move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Draw a &amp;bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Draw a bed by &amp;corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Single &amp;plants of the planting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Again…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>&amp;Find on the plan…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Find a crop in the seed &amp;tin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>S&amp;ite, frost and climate…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>More be&amp;ds and paths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>S&amp;upports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Co&amp;vers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Fi&amp;xtures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>It is locked; unlock it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Select one planting first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/plan.py"/>
        <source>Select one planting, or one succession, first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlansDialog</name>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Two layouts side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>&amp;Swipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Lay the second layout over the first and uncover it with the slider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Take over to the &amp;right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Take over to the &amp;left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Left layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Right layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Puts what is selected into the other layout; a bed with all that lies in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Take over into {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>It is there already, just so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Both sides show the same layout: choose another for one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/comparing/plans_dialog.py"/>
        <source>Left: {0}. Right: {1}. Another verdict: {2}. To copy plantings or a selected bed, drag them across.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlantingPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Exact numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>on bare plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>ring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>edging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>drift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>single plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Root depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>{0}, wants {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Days between its last harvest and the date its neighbour would smother it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Days to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>No book at hand gives these for this crop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>{0} at best; ripens in {1} of years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>{0}, 8 years in 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>In an average year {0}.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Eight of ten simulated years round your monthly means lie between these dates.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/planting_page.py"/>
        <source>Days to harvest, reckoned in warmth: </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Position</name>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Name of the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Decimal degrees, as in 51.5 N or -33.87, or degrees and minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source> ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source> m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Elevation above the sea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Compass bearing that the top of the plan looks to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>0 is north, 90 east, 180 south, 270 west</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>La&amp;titude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Lon&amp;gitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>&amp;Elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>The top of the plan &amp;looks to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Give the place a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>N or S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>E or W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0}: give decimal degrees, as in {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} cannot be read: write decimal degrees, as in {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} goes to {2} degrees on either side, no further.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} has both a sign and a letter: leave one of them out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>{0} takes {3}, not that letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/position.py"/>
        <source>Longitude</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PrintDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Landscape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Portrait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>P&amp;rint…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Page before (Page Up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Next page (Page Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Smaller (-)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Larger (+)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Whole page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Whole page (0)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>These are {0} pages. A smaller scale or a larger paper takes fewer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>{0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>{0} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>These are {0} pages. Go on?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Sent to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/dialog.py"/>
        <source>Given up; nothing was written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QApplication</name>
    <message>
        <location filename="gardencanvas/app/start.py"/>
        <source>This file cannot be opened. {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QWidget</name>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source> since {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>This garden is open already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“{0}” is open in another window{1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>You can look at it here, and save what you change under another name. Or let this window write the file from now on: the other one then becomes read-only and keeps its unsaved work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Open read-only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>The file is not there any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“{0}” was moved, renamed or deleted, or its disk is not connected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>The garden is still here in this window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Save it there again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>You have changes here that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Keep both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Take the file's</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Keep mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>The file was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Another program changed “{0}” since it was opened or saved here. {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“Keep both” saves yours beside it under a name of its own. Whatever you choose, the other one stays among the earlier versions in the File menu.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Read-only here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>“{0}” is open in another window, which may be changing it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Your changes are kept. Save them under another name, or let this window write the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/asking.py"/>
        <source>Take over and save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Crops (*.toml)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Take in crops of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Write your own crops to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>Take it out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/crop_desk.py"/>
        <source>“{0}” is taken out of your library for good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Save the garden?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>“{0}” has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>If you do not save, they are lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Open a garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/filing.py"/>
        <source>Save the garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>No printer is set up on this computer: save the pages as PDF and print them elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>This printer does not take {0} with margins of 12 mm: choose another paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>Pages…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/printing/sending.py"/>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/saving.py"/>
        <source>Saving “{0}”. Your work is kept on this computer meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Range</name>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>most</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RangeGrid</name>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/ranges.py"/>
        <source>most</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <location filename="gardencanvas/app/inspector/reasons.py"/>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/reasons.py"/>
        <source>Nothing else uses this space while it stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/reasons.py"/>
        <source>and {0} more in the findings list</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecoveryDialog</name>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Work that was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>The program ended before this was saved. Nothing is thrown away until you say so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Unsaved work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Keep &amp;both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Keep the &amp;file's</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>never saved to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>A garden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It cannot be read: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>&amp;Throw away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Saves it beside the file, under a name of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>The file stays as it is; this work stays among its earlier versions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Its file is not there, or cannot be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>{0} plantings in {1} layouts. {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Against the file: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It cannot be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>recovered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It could not be saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/recovery_dialog.py"/>
        <source>It stays for now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RemedyList</name>
    <message>
        <location filename="gardencanvas/app/inspector/remedy_list.py"/>
        <source>Looking for a small change that mends this …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/remedy_list.py"/>
        <source>No small change mends this.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RepeatDialog</name>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Step across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Step down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Times &amp;across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>&amp;Step across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Times &amp;down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/repeat_dialog.py"/>
        <source>Step do&amp;wn</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RibbonView</name>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>Season ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>Left and right move the date cursor by a day, Page keys by a month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>On bare plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>The season shows here once something is planted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>Move in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/view.py"/>
        <source>{0}{1} days</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Safekeeping</name>
    <message>
        <location filename="gardencanvas/app/safekeeping.py"/>
        <source>The disk does not answer.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SearchList</name>
    <message>
        <location filename="gardencanvas/app/search_list.py"/>
        <source>Nothing is called so.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>A week &amp;earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>A week &amp;later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Play the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>What &amp;fits at a place…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>Where does the &amp;crop fit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>What can be &amp;started now?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Next finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/season.py"/>
        <source>&amp;Previous finding</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonPanel</name>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>▶ Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Show the garden growing (P)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Date shown on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Zoom from years to weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>Zoom from years to weeks (Ctrl and wheel)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/ribbon/panel.py"/>
        <source>❚❚ Pause</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeedTin</name>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>name, family…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Search the seed tin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Add a variety, a crop or a seed lot of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Drop crops as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>What a crop is dropped as; the digits 1–9 change it on the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>single plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>staggered block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>ring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>edging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>drift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>between the rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Select one bed or one planting on the plan: what fits there is listed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>Nothing found yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>No favourites yet. A star at a crop makes it one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>No seed lots yet. Add one with + or from a crop's menu.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/seed_tin.py"/>
        <source>No such crop. Try another spelling or fewer filters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>variety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>old seed {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>seed {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>{0} roots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>taller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>narrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>shorter harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/looks.py"/>
        <source>longer harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>New variety…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>New crop…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Add a seed lot…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Take in a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Write to a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Pick up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>What is known of it… (F3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Where would it fit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Favourite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Wanted for the next order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Change lot: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>New crop like this…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/menus.py"/>
        <source>Take it out…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeedsPanel</name>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Save as a table (.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>See, save or print the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>What to order and raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Nothing is planted yet: nothing to order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>crop or variety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>crops and varieties</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>, {0} not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>seed for {0}{1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Save the order as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Table (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Seeds and plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/work/seeds_panel.py"/>
        <source>Seeds and plants for {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <location filename="gardencanvas/app/commands.py"/>
        <source>Lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/commands.py"/>
        <source>Unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/commands.py"/>
        <source>Duplicate layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/session.py"/>
        <source>Work before the program ended</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sifting</name>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>Trying {0} of {1} {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>{0} of {1} {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>fit in {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>fit beside {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source>can start {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tin/sifting.py"/>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SiteDialog</name>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Where is the garden?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Take its climate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Put the old ones back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>The year there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>line: mean temperature, band: minimum to maximum, bars: rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Frost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Places: GeoNames, CC BY 4.0. Climate: contains modified Copernicus Climate Change Service information (ERA5); neither the European Commission nor ECMWF is responsible for any use of it. Elevations: open terrain models.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>All credits…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Months and frost are now those of {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>In the list: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Nearest in the list: {0}, {1:.0f} km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Credits of the list of places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site_dialog.py"/>
        <source>Change the site</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SplitDialog</name>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>between rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>across the rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>Cut &amp;where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>After &amp;how many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>plants of each row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/split_dialog.py"/>
        <source>{0} {1} and {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StandingLabel</name>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Read-only · {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Read-only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Edits are not kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Keeping edits…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Edits kept {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/standing.py"/>
        <source>Not saved to the file yet; a copy on this computer is offered if the program ends.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StripDialog</name>
    <message>
        <location filename="gardencanvas/app/printing/strip_dialog.py"/>
        <source>Planting strip: {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SuccessionDialog</name>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Change the succession</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Days between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>What the days lie between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>days from harvest to harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>days from start to start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Again &amp;every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>&amp;First start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>First start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>The first part is pinned or locked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>row by row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>part by part along its length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>as new plantings beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Where the parts lie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>&amp;Laid out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Number of parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>as &amp;many as ripen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>&amp;Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Harvest, 8 years in 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Plants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Parts of the succession</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/succession_dialog.py"/>
        <source>Succession of {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThingPage</name>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Cane tips stand at eye height: cap them, and anchor what can fall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>Light it lets through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>start of the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>end of the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/inspector/other_pages.py"/>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ToolRow</name>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Select</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Layout shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/tool_row.py"/>
        <source>Fit the plan (Ctrl+9)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TwoPlans</name>
    <message>
        <location filename="gardencanvas/app/comparing/two_plans.py"/>
        <source>How much of the second layout is uncovered</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VarietyForm</name>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>New variety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Change the variety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Leave empty what is as with the crop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Size and spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Growth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>as the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Drawn as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>Support</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>there is no crop “{0}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>give it a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/own_form/variety_form.py"/>
        <source>{0} has a variety of that name</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VersionsDialog</name>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Earlier versions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Versions, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Add as a new &amp;layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>It comes beside yours; Edit, Undo takes it away again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Save as a new &amp;file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>No earlier versions are kept yet: each save keeps one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>From then until now: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Plan of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>It cannot be added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Restore a layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>It could not be saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/versions_dialog.py"/>
        <source>Saved as {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ViewMenu</name>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Fit the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Fit the &amp;selection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>S&amp;nap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Seed &amp;tin and outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Season and &amp;findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Centimetres and metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>&amp;Inches and feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/menus/view.py"/>
        <source>Select something first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YearPicture</name>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>mean {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>{0:.0f} mm of rain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>last frost {0}, first frost {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>The year: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>no climate yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>last frost {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/app/site/year_picture.py"/>
        <source>first frost {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
