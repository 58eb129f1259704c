"""Edits of the grower's own crops and varieties that a garden holds."""

from collections.abc import Iterator

from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.crops.model import Crop, Variety
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout


def put_crop(garden: Garden, crop: Crop) -> Garden:
    """The garden with a crop of the grower's own, in the place of the one with the same id."""
    others = tuple(c for c in garden.crops if c.id != crop.id)
    return rebuilt(garden, crops=(*others, crop))


def put_variety(garden: Garden, variety: Variety) -> Garden:
    """The garden with a variety of the grower's own, in the place of the one with the same id."""
    others = tuple(v for v in garden.varieties if (v.crop, v.id) != (variety.crop, variety.id))
    return rebuilt(garden, varieties=(*others, variety))


def without_crop(garden: Garden, crop_id: str) -> Garden:
    """The garden without an own crop and its own varieties.

    Raises
    ------
    Refusal
        If something planted in it is that crop.
    """
    _refuse_grown(garden, sum(crop == crop_id for crop, _ in _named(garden)))
    return rebuilt(
        garden,
        crops=tuple(c for c in garden.crops if c.id != crop_id),
        varieties=tuple(v for v in garden.varieties if v.crop != crop_id),
    )


def without_variety(garden: Garden, crop_id: str, variety_id: str) -> Garden:
    """The garden without an own variety; raises ``Refusal`` if it is planted."""
    _refuse_grown(garden, sum(named == (crop_id, variety_id) for named in _named(garden)))
    kept = tuple(v for v in garden.varieties if (v.crop, v.id) != (crop_id, variety_id))
    return rebuilt(garden, varieties=kept)


def adopted(before: Garden, after: Garden, known: Catalogue, shipped: Catalogue) -> Garden:
    """The garden with everything of the grower's library that its plantings name taken into it.

    A garden's file must be readable where the library is not. Only layouts that differ from those of
    ``before`` are looked at.

    Parameters
    ----------
    known
        The shipped crops with the library's and the garden's own.
    shipped
        The shipped crops alone.
    """
    layouts = {id(x) for x in before.layouts}
    named = {n for x in after.layouts if id(x) not in layouts for n in _named_in(x)}
    crops = dict.fromkeys(sorted({crop for crop, _ in named} | {v.crop for v in after.varieties}))
    mine, own = {c.id for c in after.crops}, {(v.crop, v.id) for v in after.varieties}
    more_crops = [c for i in crops if i not in mine and (c := _own_crop(i, known, shipped)) is not None]
    more = [
        v
        for crop, variety in sorted(n for n in named if n not in own and n[1])
        if (v := _own_variety(crop, variety, known, shipped)) is not None
    ]
    if not more_crops and not more:
        return after
    return rebuilt(after, crops=(*after.crops, *more_crops), varieties=(*after.varieties, *more))


def _named(garden: Garden) -> Iterator[tuple[str, str]]:
    for layout in garden.layouts:
        yield from _named_in(layout)


def _named_in(layout: Layout) -> Iterator[tuple[str, str]]:
    """Crop and variety of all that is planted; the variety is empty where none is named."""
    for planting in layout.plantings:
        for variety in planting.varieties or ("",):
            yield planting.crop, variety


def _own_crop(crop_id: str, known: Catalogue, shipped: Catalogue) -> Crop | None:
    """The crop, if it is known and not as it is shipped."""
    crop = _crop(crop_id, known)
    return None if crop is _crop(crop_id, shipped) else crop


def _crop(crop_id: str, among: Catalogue) -> Crop | None:
    try:
        return among.crop(crop_id)
    except UnknownCrop:
        return None


def _own_variety(crop_id: str, variety_id: str, known: Catalogue, shipped: Catalogue) -> Variety | None:
    """The variety, if it is known and not as it is shipped."""
    variety = _variety(crop_id, variety_id, known)
    return None if variety is _variety(crop_id, variety_id, shipped) else variety


def _variety(crop_id: str, variety_id: str, among: Catalogue) -> Variety | None:
    try:
        return among.variety(crop_id, variety_id)
    except UnknownCrop:
        return None


def _refuse_grown(garden: Garden, plantings: int) -> None:
    if plantings:
        if plantings == 1:
            raise Refusal("1 planting grows it in {garden}; change or remove it first.", garden=garden.name)
        raise Refusal(
            "{n} plantings grow it in {garden}; change or remove them first.", n=plantings, garden=garden.name
        )
