"""A garden as compact JSON made planting by planting, so that the window's thread gets its turn in between.

One call for a whole garden of 20,000 single plantings would hold Python for a tenth of a second. What did
not change since the last time is not made again: a planting is an immutable value.
"""

from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting


class Slices:
    """Makes the bytes of one garden after another, keeping those of the plantings they share."""

    def __init__(self) -> None:
        self._made: dict[int, tuple[Planting, str]] = {}  # by identity; the value keeps it from being reused

    def bytes_of(self, garden: Garden) -> bytes:
        """The garden in the file format, without indents."""
        kept: dict[int, tuple[Planting, str]] = {}
        layouts = [self._layout(layout, kept) for layout in garden.layouts]
        self._made = kept
        return _with(garden.model_dump_json(exclude={"layouts"}), "layouts", layouts).encode()

    def _layout(self, layout: Layout, kept: dict[int, tuple[Planting, str]]) -> str:
        parts = []
        for planting in layout.plantings:
            known = self._made.get(id(planting)) or (planting, planting.model_dump_json())
            kept[id(planting)] = known
            parts.append(known[1])
        return _with(layout.model_dump_json(exclude={"plantings"}), "plantings", parts)


def _with(text: str, field: str, items: list[str]) -> str:
    """A JSON object with one more field: a list of what is already JSON."""
    return f'{text[:-1]},"{field}":[{",".join(items)}]}}'
