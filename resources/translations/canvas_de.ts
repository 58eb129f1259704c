<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Canvas</name>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>shares</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>strains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>clashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>Draw your first bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/furniture.py"/>
        <source>Press B and drag; type its measures while you drag, such as 3.6 x 1.2.
Then drag a crop from the seed tin into it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Nothing is selected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Nothing changed: what is locked stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <location filename="gardencanvas/canvas/tools/move.py"/>
        <source>Move {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <location filename="gardencanvas/canvas/tools/turn.py"/>
        <source>Turn {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Delete {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/keys.py"/>
        <source>Duplicate {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>{0} plantings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>{0} beds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>{0} things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>round bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>keyhole bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>bed with curved edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>hole in a bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>ring of canes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>stake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>row of canes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>trellis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>fleece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>cloche</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>fence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>hedge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>shed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/naming.py"/>
        <source>Bed {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/pane.py"/>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/pane.py"/>
        <source>The drawn plan. The outline lists the same beds and plantings in words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/ask_place.py"/>
        <source>Click on open ground, or drag a box over it, to see what fits there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/carry_over.py"/>
        <source>Copy {0} into {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/carry_over.py"/>
        <source>It is there already, just so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Draw {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <source>Drag a bed; type its measures while you drag, such as 3.6 x 1.2. Shift: square.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <source>Click corner after corner; Enter or a double click closes the bed, Backspace takes one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_bed.py"/>
        <source>A bed needs three corners or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Drag from corner to corner: {0}. Esc ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Drag from end to end: {0}; type its length. Shift: level. Esc ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Drag from the middle to the rim: {0}; type its radius. Esc ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Click where it stands: {0}. Esc ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>Click point after point: {0}. Enter or a double click ends it, Backspace takes one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/draw_structure.py"/>
        <source>A hole is cut into a bed: begin inside one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/measure.py"/>
        <source>Drag to measure a distance. Shift keeps the line level or upright.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/move.py"/>
        <source>Copy {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/pan.py"/>
        <source>Drag to move the plan. Space or the middle button do so with any tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>1 row, 2 block, 3 single, 4 strip, 5 staggered, 6 ring, 7 edging, 8 drift, 9 between the rows. + and − space it, arrows move it, Enter puts it down, Esc gives up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add row of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add block of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add one {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add strip of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add staggered block of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add ring of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add edging of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add drift of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>Add {0} between the rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/place.py"/>
        <source>{0} stands outside any bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/reshape.py"/>
        <source>typed: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/reshape.py"/>
        <source>type a measure to make it exact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/reshape.py"/>
        <source>Reshape {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/select.py"/>
        <source>Click to select, drag to move, Alt+drag to copy, double click for single plants. A bed moves once it is selected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Click a plant to leave it out, an empty place to put it back, drag one to move it. Tab walks, Space leaves out, arrows move, Esc ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Select one planting that is not locked first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Move one plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Put one plant back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Leave one plant out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/stations.py"/>
        <source>Plant {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="gardencanvas/canvas/tools/turn.py"/>
        <source>Turned by {0}°</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
