<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <location filename="gardencanvas/paper/bedmap/sheets.py"/>
        <source>{what}, sheet {sheet}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
