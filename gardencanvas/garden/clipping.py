"""Things cut out of a garden as text, to be put into another place, garden or window."""

import json
from collections import Counter
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from typing import Annotated, Literal

from pydantic import Field, ValidationError

from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.crops.model import Crop, Variety
from gardencanvas.garden.copies import fresh
from gardencanvas.garden.edits import rebuilt, with_contents
from gardencanvas.garden.errors import Refusal, refusal
from gardencanvas.garden.garden import FORMAT, Garden, Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, Path, Support
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Value, new_id

MOST_CHARACTERS = 4_000_000
_WORD: Literal["garden canvas clipping"] = "garden canvas clipping"


class Clipping(Value):
    """What was cut out, with the grower's own crops that it needs."""

    what: Literal["garden canvas clipping"] = _WORD
    format: Annotated[int, Field(ge=1)] = FORMAT
    beds: Annotated[tuple[Bed, ...], Field(max_length=2000)] = ()
    paths: Annotated[tuple[Path, ...], Field(max_length=2000)] = ()
    supports: Annotated[tuple[Support, ...], Field(max_length=5000)] = ()
    covers: Annotated[tuple[Cover, ...], Field(max_length=5000)] = ()
    plantings: Annotated[tuple[Planting, ...], Field(max_length=20_000)] = ()
    fixtures: Annotated[tuple[Fixture, ...], Field(max_length=2000)] = ()
    crops: Annotated[tuple[Crop, ...], Field(max_length=1000)] = ()
    varieties: Annotated[tuple[Variety, ...], Field(max_length=2000)] = ()

    def items(self) -> list[Item]:
        """Everything in it, ground first."""
        return [
            *self.beds, *self.paths, *self.supports, *self.covers, *self.plantings, *self.fixtures,
        ]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Pasted:
    """A garden with a clipping put in, before its things are moved; their fresh ids."""

    items: list[Item]
    garden: Garden


def clipping_of(garden: Garden, layout_id: str, ids: Collection[str]) -> str:
    """The items, and what lies in beds among them, as text.

    Raises
    ------
    Refusal
        If there is nothing to cut out.
    """
    layout = garden.layout(layout_id)
    wanted = set(with_contents(layout, ids))
    folders = {
        name: tuple(i for i in getattr(layout, name) if i.id in wanted)
        for name in ("beds", "paths", "supports", "covers", "plantings")
    }
    fixtures = tuple(f for f in garden.fixtures if f.id in wanted)
    if not any(folders.values()) and not fixtures:
        raise Refusal("Select something first.")
    grown = {(p.crop, v) for p in folders["plantings"] for v in (p.varieties or (None,))}
    crops = tuple(c for c in garden.crops if c.id in {crop for crop, _ in grown})
    varieties = tuple(v for v in garden.varieties if (v.crop, v.id) in grown)
    clipping = Clipping(**folders, fixtures=fixtures, crops=crops, varieties=varieties)
    return clipping.model_dump_json(indent=1, exclude_defaults=False)


def is_clipping(text: str) -> bool:
    """Whether a text looks like a clipping; whether it is a sound one is another matter."""
    return len(text) <= MOST_CHARACTERS and text.lstrip().startswith("{") and _WORD in text[:400]


def clipping_from(text: str) -> Clipping:
    """The clipping a text holds.

    Raises
    ------
    Refusal
        In one sentence, if it holds none, or one of a newer program.
    """
    if not is_clipping(text):
        raise Refusal("The clipboard holds nothing that was copied from a garden.")
    try:
        document = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise Refusal("What the clipboard holds was cut short.") from error
    number = document.get("format") if isinstance(document, dict) else None
    if isinstance(number, int) and number > FORMAT:
        raise Refusal("What the clipboard holds was copied from a newer Garden Canvas; update this one.")
    try:
        return Clipping.model_validate_json(text, strict=True)
    except ValidationError as error:
        raise Refusal("What the clipboard holds is not sound: {why}", why=refusal(error)) from error


def prepared(garden: Garden, clipping: Clipping, known: Catalogue) -> Pasted:
    """The things of a clipping under fresh ids, and the garden with the crops they need, not yet with them.

    Raises
    ------
    Refusal
        If it names a crop that neither it nor the garden knows.
    """
    mine, own = {c.id for c in garden.crops}, {(v.crop, v.id) for v in garden.varieties}
    crops = tuple(c for c in clipping.crops if c.id not in mine and not _knows(known, c.id, None))
    varieties = tuple(
        v for v in clipping.varieties if (v.crop, v.id) not in own and not _knows(known, v.crop, v.id)
    )
    if crops or varieties:
        garden = rebuilt(garden, crops=(*garden.crops, *crops), varieties=(*garden.varieties, *varieties))
        known = known.with_own(garden.crops, garden.varieties)
    for planting in clipping.plantings:
        for variety in planting.varieties or (None,):
            if not _knows(known, planting.crop, variety):
                raise Refusal(
                    "The crop {crop!r} of the clipping is not known in this garden.", crop=planting.crop
                )
    return Pasted([fresh(i, _groups(clipping)) for i in clipping.items()], garden)


def _groups(clipping: Clipping) -> Mapping[str, str | None]:
    """Fresh names for successions of which several parts are pasted together."""
    parts = Counter(p.succession for p in clipping.plantings if p.succession is not None)
    return {name: new_id("succession") if number > 1 else None for name, number in parts.items()}


def _knows(known: Catalogue, crop: str, variety: str | None) -> bool:
    try:
        known.resolve(crop, variety)
    except UnknownCrop:
        return False
    return True
