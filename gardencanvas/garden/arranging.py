"""Edits that put several things in order: aligned, at equal gaps, again and again in a grid."""

from collections.abc import Collection
from typing import Literal

from gardencanvas.garden.copies import add_shifted, copies_of
from gardencanvas.garden.edits import shift, with_contents
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.places import bounds

Edge = Literal["left", "right", "top", "bottom", "middle across", "middle down"]
Along = Literal["across", "down"]
MOST_COPIES = 400


def align(garden: Garden, layout_id: str, ids: Collection[str], edge: Edge) -> Garden:
    """Bring one edge, or the middle, of all items to that of the box round them; locked ones stay."""
    boxes = _boxes(garden, layout_id, ids)
    x0, y0, x1, y1 = _around(boxes)
    for item_id, (a, b, c, d) in boxes.items():
        dx, dy = {
            "left": (x0 - a, 0.0),
            "right": (x1 - c, 0.0),
            "top": (0.0, y0 - b),
            "bottom": (0.0, y1 - d),
            "middle across": ((x0 + x1 - a - c) / 2, 0.0),
            "middle down": (0.0, (y0 + y1 - b - d) / 2),
        }[edge]
        garden = shift(garden, layout_id, [item_id], round(dx, 6), round(dy, 6))
    return garden


def distribute(garden: Garden, layout_id: str, ids: Collection[str], along: Along) -> Garden:
    """Equal gaps between items in one direction; the first and the last stay where they are.

    Raises
    ------
    Refusal
        With fewer than three items, since two have but one gap.
    """
    boxes = _boxes(garden, layout_id, ids)
    if len(boxes) < 3:
        raise Refusal("Select at least three things to give them equal gaps.")
    low, high = (0, 2) if along == "across" else (1, 3)
    order = sorted(boxes, key=lambda i: (boxes[i][low] + boxes[i][high], i))
    taken = sum(boxes[i][high] - boxes[i][low] for i in order)
    gap = (boxes[order[-1]][high] - boxes[order[0]][low] - taken) / (len(order) - 1)
    at = boxes[order[0]][low]
    for item_id in order:
        step = round(at - boxes[item_id][low], 6)
        dx, dy = (step, 0.0) if along == "across" else (0.0, step)
        garden = shift(garden, layout_id, [item_id], dx, dy)
        at += boxes[item_id][high] - boxes[item_id][low] + gap
    return garden


def array(
    garden: Garden, layout_id: str, ids: Collection[str], columns: int, rows: int, dx_m: float, dy_m: float
) -> Garden:
    """Copies of items in a grid of ``columns`` × ``rows``, the originals its first field.

    Raises
    ------
    Refusal
        If that would be more than ``MOST_COPIES`` copies, or none.
    """
    if columns < 1 or rows < 1 or columns * rows - 1 > MOST_COPIES:
        raise Refusal(
            "{columns} by {rows} is not allowed: at least 1 by 1, and at most {most} copies.",
            columns=columns,
            rows=rows,
            most=MOST_COPIES,
        )
    source = garden
    for row in range(rows):
        for column in range(columns):
            if row or column:
                copies = copies_of(source, layout_id, ids)
                garden = add_shifted(garden, layout_id, copies, column * dx_m, row * dy_m)
    return garden


def _boxes(
    garden: Garden, layout_id: str, ids: Collection[str]
) -> dict[str, tuple[float, float, float, float]]:
    """The box round each item; what a bed among them carries along is not counted by itself."""
    layout = garden.layout(layout_id)
    carried = {x for i in ids for x in with_contents(layout, [i]) if x != i}
    items: list[Item] = [x for i in ids if i not in carried and (x := garden.find(layout_id, i)) is not None]
    if not items:
        raise Refusal("Select something first.")
    return {item.id: bounds([item]) for item in items}


def _around(boxes: dict[str, tuple[float, float, float, float]]) -> tuple[float, float, float, float]:
    columns = list(zip(*boxes.values(), strict=True))
    return min(columns[0]), min(columns[1]), max(columns[2]), max(columns[3])
