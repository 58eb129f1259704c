"""Pages read back with pdfminer.six, which shares no code with what wrote them: glyphs and where they lie."""

from dataclasses import dataclass

import numpy as np
from pdfminer.high_level import extract_pages
from pdfminer.layout import LAParams, LTChar, LTComponent
from shapely import STRtree, area, box, intersection

MM = 72 / 25.4


@dataclass(frozen=True)
class Glyph:
    """A letter with its box in millimetres from the page's lower left corner."""

    text: str
    box: tuple[float, float, float, float]
    points: float  # its size; 0 where it is turned
    slanted: bool  # neither along the page nor up it: its box is wider than it is


def pages(path):
    """Width and height in millimetres, and the glyphs, of each page."""
    found = []
    for page in extract_pages(path, laparams=None):
        glyphs = []
        _gather(page, glyphs)
        found.append((page.width / MM, page.height / MM, glyphs))
    return found


def _gather(item: LTComponent, glyphs: list[Glyph]) -> None:
    if isinstance(item, LTChar):
        if item.get_text().strip():
            bbox = tuple(v / MM for v in item.bbox)
            a, b = (abs(v) for v in item.matrix[:2])
            level = b < 1e-6 * a
            glyphs.append(
                Glyph(item.get_text(), bbox, item.size if level else 0.0, not level and a > 1e-6 * b)
            )
    elif hasattr(item, "__iter__"):
        for part in item:
            _gather(part, glyphs)


def overlapping(glyphs, share=0.45):
    """Pairs of glyphs of which one hides a share of the other's box; more than kerning makes them."""
    glyphs = [g for g in glyphs if not g.slanted]
    boxes = np.array([box(*g.box) for g in glyphs])
    a, b = STRtree(boxes).query(boxes, predicate="intersects")
    first = a < b
    a, b = a[first], b[first]
    common = area(intersection(boxes[a], boxes[b]))
    bad = common > share * np.minimum(area(boxes[a]), area(boxes[b]))
    return [(glyphs[i], glyphs[j]) for i, j in zip(a[bad], b[bad], strict=True)]


def lines(path):
    """The lines of text of all pages."""
    found = []
    for page in extract_pages(path, laparams=LAParams()):
        for item in page:
            if hasattr(item, "get_text"):
                text = item.get_text().replace("\t", " ")  # one glyph draws both; readers take either
                found += text.splitlines()
    return found
