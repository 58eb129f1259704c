"""For PyInstaller: keep the program's modules as files; the catalogue's cache is keyed by their text."""

module_collection_mode = {"gardencanvas": "py"}
