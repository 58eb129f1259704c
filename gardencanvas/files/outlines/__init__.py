"""Outlines of beds from the files of other programs: maps (GeoJSON) and drawings (SVG)."""
