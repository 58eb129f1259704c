"""A file of bed outlines, by its name and content: a map or a drawing."""

from pathlib import Path

from gardencanvas.files.outlines.geojson import Polygons, polygons_of
from gardencanvas.files.outlines.refusing import MAX_FILE_BYTES, OutlinesRefused, Why
from gardencanvas.files.outlines.svg import Drawing, drawing_of

SUFFIXES = (".geojson", ".json", ".svg")


def read_outlines(path: Path) -> Polygons | Drawing:
    """What a GeoJSON or SVG file holds.

    Raises
    ------
    OutlinesRefused
        If nothing of it can be used.
    """
    try:
        if not path.is_file():
            raise OutlinesRefused(Why.UNREADABLE, reason="")
        with path.open("rb") as file:
            data = file.read(MAX_FILE_BYTES + 1)
    except OSError as error:
        raise OutlinesRefused(Why.UNREADABLE, reason=error.strerror or "") from error
    if len(data) > MAX_FILE_BYTES:
        raise OutlinesRefused(Why.TOO_LONG, most_mb=MAX_FILE_BYTES // 1_000_000)
    if path.suffix.lower() == ".svg":
        return drawing_of(data)
    return polygons_of(data)
