"""A garden as compact JSON made planting by planting, so that the window's thread gets its turn in between.

One call for a whole garden of 20,000 single plantings would hold Python for a tenth of a second. What did
not change since the last time is not made again: a planting is an immutable value.
"""

from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.picture import Picture
from gardencanvas.garden.planting import Planting


class Slices:
    """Makes the bytes of one garden after another, keeping those of the plantings they share.

    Texts are found by the identity of their planting, which is held so that no other one can take it. Both
    lie in plain dictionaries: 20,000 pairs would call the garbage collector, which stalls every thread.
    """

    def __init__(self) -> None:
        self._texts: dict[int, str] = {}
        self._held: dict[int, Planting] = {}
        self._picture: tuple[Picture, str] | None = None

    def bytes_of(self, garden: Garden) -> bytes:
        """The garden in the file format, without indents."""
        texts: dict[int, str] = {}
        held: dict[int, Planting] = {}
        layouts = []
        for layout in garden.layouts:
            for planting in layout.plantings:
                key = id(planting)
                held[key] = planting
                texts[key] = self._texts.get(key) or planting.model_dump_json()
            layouts.append(_layout(layout, texts))
        self._texts, self._held = texts, held
        whole = _with(garden.model_dump_json(exclude={"layouts", "backdrop"}), "layouts", layouts)
        return _with_value(whole, "backdrop", self._backdrop(garden)).encode()

    def _backdrop(self, garden: Garden) -> str:
        """The background picture, of which the bytes, some megabytes of text, are made once."""
        backdrop = garden.backdrop
        if backdrop is None:
            self._picture = None
            return "null"
        if self._picture is None or self._picture[0] is not backdrop.picture:
            picture = backdrop.picture  # base64 stands in JSON as it is
            text = _with_value(picture.model_dump_json(exclude={"data"}), "data", f'"{picture.data}"')
            self._picture = picture, text
        return _with_value(backdrop.model_dump_json(exclude={"picture"}), "picture", self._picture[1])


def _layout(layout: Layout, texts: dict[int, str]) -> str:
    plantings = [texts[id(planting)] for planting in layout.plantings]
    return _with(layout.model_dump_json(exclude={"plantings"}), "plantings", plantings)


def _with(text: str, field: str, items: list[str]) -> str:
    """A JSON object with one more field: a list of what is already JSON."""
    return _with_value(text, field, f"[{','.join(items)}]")


def _with_value(text: str, field: str, value: str) -> str:
    """A JSON object with one more field, whose value is JSON already."""
    return f'{text[:-1]},"{field}":{value}}}'
