"""What a crop does to others and they to it, in words: direction, size, evidence."""

from collections.abc import Iterable
from typing import NamedTuple

from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.crops.interactions import ANY, Effect, Interaction, Size
from gardencanvas.crops.model import Crop
from gardencanvas.words.language import figure, say
from gardencanvas.words.named import effect, evidence, shipped
from gardencanvas.words.plain import THIN, name_of

_STRENGTH = ("several trials", "one trial", "common practice", "tradition only")


class Company(NamedTuple):
    """One thing known of a crop and others."""

    others: str  # their names
    said: str  # what, where, how much
    evidence: str
    source: str  # citation id


def company(crop: Crop, known: Catalogue, interactions: Iterable[Interaction]) -> tuple[Company, ...]:
    """All that is known of a crop beside others, the strongest evidence first."""
    found = [(i, side) for i in interactions for side in _sides(crop, i)]
    found.sort(key=lambda each: _STRENGTH.index(each[0].evidence))
    return tuple(
        Company(
            _names(i.b if side == "a" else i.a, crop, known), _said(i, side), evidence(i.evidence), i.source
        )
        for i, side in found
    )


def _sides(crop: Crop, interaction: Interaction) -> tuple[str, ...]:
    """On which sides of an interaction a crop stands; once where the two sides are alike or mutual."""
    at_a, at_b = _stands(crop, interaction.a), _stands(crop, interaction.b)
    if at_a and at_b and (interaction.mutual or interaction.a == interaction.b):
        return ("a",)
    return (*(["a"] if at_a else []), *(["b"] if at_b else []))


def _stands(crop: Crop, side: tuple[str, ...]) -> bool:
    return crop.id in side or crop.family in side


def _names(side: tuple[str, ...], crop: Crop, known: Catalogue) -> str:
    names = [_name(i, known) for i in side if i not in (crop.id, crop.family)]
    if not names or ANY in side:
        return say("others of its kind") if not names else say("any crop")
    return ", ".join(names)


def _name(crop_or_family: str, known: Catalogue) -> str:
    if crop_or_family in known.families:
        return shipped(known.families[crop_or_family] or crop_or_family)
    try:
        return name_of(known.crop(crop_or_family))
    except UnknownCrop:
        return crop_or_family


def _said(interaction: Interaction, side: str) -> str:
    size, name, what = interaction.size, effect(interaction.effect), shipped(interaction.what)
    if size is not None and size.unit == "LER":
        return _together(size)
    if interaction.mutual or interaction.effect is Effect.NO_EFFECT:
        said = say("{effect}: {what}", effect=name, what=what)
    elif side == "b":
        said = say("{effect} for it: {what}", effect=name, what=what)
    else:
        said = say("{effect} for them: {what}", effect=name, what=what)
    return said if size is None else f"{said}, {_change(size)}"


def _together(size: Size) -> str:
    """A land equivalent ratio: the ground that the crops alone would need for the same yields."""
    low, mid, high = (figure(n, ".2f") for n in (size.low, size.mid, size.high))
    if low == high:
        return say("yield of both on the same ground {ratio} times that of each alone", ratio=mid)
    return say(
        "yield of both on the same ground {ratio} times ({low}–{high}) that of each alone",
        ratio=mid,
        low=low,
        high=high,
    )


def _change(size: Size) -> str:
    if size.unit != "change":
        return f"{figure(size.mid)} {shipped(size.unit)}"
    return f"{100 * size.mid:+.0f}{THIN}%".replace("-", "−")
