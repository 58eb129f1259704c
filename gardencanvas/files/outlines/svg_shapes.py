"""The basic shapes of SVG (SVG 1.1, chapter 9) as subpaths, and the lengths and matrices beside them."""

from __future__ import annotations

import re
from collections.abc import Mapping
from itertools import pairwise
from math import cos, isfinite, pi, radians, sin, tan, tau

from gardencanvas.files.outlines.curves import Affine, Arc, Line, Loop, Piece
from gardencanvas.files.outlines.svg_path import BadPath, subpaths

_NUMBERS = re.compile(r"[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?")
_LENGTH = re.compile(r"\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*([a-zA-Z%]*)\s*")
_STEP = re.compile(r"[\s,]*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]*)\)")
PX_MM = 25.4 / 96  # CSS 2.1, 4.3.2: an inch is 96 px and 2.54 cm
_MM = {
    "mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "pt": 25.4 / 72, "pc": 25.4 / 6, "q": 0.25, "Q": 0.25,
}  # fmt: skip


def length(text: str | None) -> tuple[float, bool] | None:
    """A length in px and whether it was given in millimetres or the like; None where it is none."""
    found = _LENGTH.fullmatch(text) if text is not None else None
    if found is None:
        return None
    number, unit = float(found[1]), found[2]
    if not isfinite(number):
        return None
    if unit in _MM:
        return number * _MM[unit] / PX_MM, True
    return (number, False) if unit in {"", "px"} else None


def numbers(text: str) -> list[float]:
    """All numbers of a list."""
    found = [float(n) for n in _NUMBERS.findall(text)]
    if not all(abs(n) <= 1e9 for n in found):
        raise BadPath(text[:20])
    return found


def transform(text: str | None) -> Affine:
    """The matrix of a transform attribute (SVG 1.1, 7.6); raises ``BadPath``."""
    whole, at = Affine(), 0
    text = text or ""
    while (step := _STEP.match(text, at)) is not None:
        whole = whole @ _step(step[1], numbers(step[2]))
        at = step.end()
    if text[at:].strip(" \t\r\n,"):
        raise BadPath(text[at : at + 20])
    return whole


def _step(kind: str, n: list[float]) -> Affine:
    if kind == "matrix" and len(n) == 6:
        return Affine(*n)
    if kind == "translate" and len(n) in (1, 2):
        return Affine(e=n[0], f=n[1] if len(n) == 2 else 0.0)
    if kind == "scale" and len(n) in (1, 2):
        return Affine(a=n[0], d=n[-1])
    if kind == "rotate" and len(n) in (1, 3):
        c, s = cos(radians(n[0])), sin(radians(n[0]))
        x, y = (n[1], n[2]) if len(n) == 3 else (0.0, 0.0)
        return Affine(e=x, f=y) @ Affine(c, s, -s, c) @ Affine(e=-x, f=-y)
    if kind in {"skewX", "skewY"} and len(n) == 1:
        slope = tan(radians(n[0]))
        return Affine(c=slope) if kind == "skewX" else Affine(b=slope)
    raise BadPath(kind)


def viewport(attributes: Mapping[str, str]) -> tuple[Affine, bool]:
    """From a viewBox to its viewport, and whether that has a width in millimetres or the like."""
    width, height = length(attributes.get("width")), length(attributes.get("height"))
    physical = width is not None and width[1]
    box = numbers(attributes.get("viewBox", ""))
    if len(box) != 4 or box[2] <= 0 or box[3] <= 0:
        return Affine(), physical
    x, y, wide, high = box
    across = width[0] / wide if width is not None and width[0] > 0 else None
    down = height[0] / high if height is not None and height[0] > 0 else None
    across, down = across or down or 1.0, down or across or 1.0
    how = attributes.get("preserveAspectRatio", "xMidYMid").strip()
    if not how.startswith("none"):
        across = down = max(across, down) if "slice" in how else min(across, down)
    # what is left over lies where the attribute says (SVG 1.1, 7.8): before, on both sides, behind
    left = (width[0] - wide * across if width is not None else 0.0) * _share(how, "x")
    above = (height[0] - high * down if height is not None else 0.0) * _share(how, "Y")
    return Affine(a=across, d=down, e=left - x * across, f=above - y * down), physical


def _share(how: str, axis: str) -> float:
    return 0.0 if f"{axis}Min" in how else 1.0 if f"{axis}Max" in how else 0.5


def shape(kind: str, attributes: Mapping[str, str]) -> list[Loop]:
    """The subpaths of an element; empty where it is drawn as nothing. Raises ``BadPath``."""
    if kind == "path":
        return subpaths(attributes.get("d", ""))
    if kind in {"polygon", "polyline"}:
        return _polygon(numbers(attributes.get("points", "")), closed=kind == "polygon")

    def size(name: str) -> float:
        found = length(attributes.get(name))
        return found[0] if found is not None else 0.0

    if kind == "rect":
        return _rectangle(
            size("x"),
            size("y"),
            size("width"),
            size("height"),
            *_rounding(attributes, size("rx"), size("ry")),
        )
    rx, ry = (size("r"), size("r")) if kind == "circle" else (size("rx"), size("ry"))
    if rx <= 0 or ry <= 0:
        return []
    return [Loop((Arc(complex(size("cx"), size("cy")), complex(rx), complex(0, ry), 0.0, tau),), True)]


def _polygon(n: list[float], *, closed: bool) -> list[Loop]:
    if len(n) % 2:
        raise BadPath("points")
    corners = [complex(n[i], n[i + 1]) for i in range(0, len(n), 2)]
    if len(corners) < 2:
        return []
    closed = closed or corners[0] == corners[-1]
    if closed and corners[0] != corners[-1]:
        corners.append(corners[0])
    return [Loop(tuple(Line(a, b) for a, b in pairwise(corners)), closed)]


def _rounding(attributes: Mapping[str, str], rx: float, ry: float) -> tuple[float, float]:
    """Radii of the corners: one that is not given is as the other (SVG 1.1, 9.2)."""
    if "rx" not in attributes:
        rx = ry
    if "ry" not in attributes:
        ry = rx
    return max(rx, 0.0), max(ry, 0.0)


def _rectangle(x: float, y: float, w: float, h: float, rx: float, ry: float) -> list[Loop]:
    if w <= 0 or h <= 0:
        return []
    rx, ry = min(rx, w / 2), min(ry, h / 2)
    if rx <= 0 or ry <= 0:
        return _polygon([x, y, x + w, y, x + w, y + h, x, y + h], closed=True)
    pieces: list[Piece] = []
    # clockwise on the screen from the upper side: a side, then the corner after it
    for a, b, cx, cy, first in (
        (complex(x + rx, y), complex(x + w - rx, y), x + w - rx, y + ry, -pi / 2),
        (complex(x + w, y + ry), complex(x + w, y + h - ry), x + w - rx, y + h - ry, 0.0),
        (complex(x + w - rx, y + h), complex(x + rx, y + h), x + rx, y + h - ry, pi / 2),
        (complex(x, y + h - ry), complex(x, y + ry), x + rx, y + ry, pi),
    ):
        pieces += [Line(a, b), Arc(complex(cx, cy), complex(rx), complex(0, ry), first, pi / 2)]
    return [Loop(tuple(pieces), True)]
