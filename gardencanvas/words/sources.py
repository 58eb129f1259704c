"""Where a number comes from, in words."""

from collections.abc import Callable

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Basis, Fact, Quantity
from gardencanvas.words.language import figure, mark, say
from gardencanvas.words.named import shipped

_BASIS = {
    Basis.SEEN: mark("Read in the source."),
    Basis.MEMORY: mark("From memory of the source."),
    Basis.PRACTICE: mark("Common practice."),
    Basis.DERIVED: mark("Computed from sourced values."),
    Basis.FALLBACK: mark("Estimated: no book at hand gives it for this crop."),
    Basis.USER: mark("Your own figure."),
}


def cited(catalogue: Catalogue, source_id: str) -> str:
    """A citation in one line; the bare id where it is not known."""
    source = catalogue.sources.get(source_id)
    if source is None:
        return source_id
    if not source.author:  # a general figure, said in a sentence of ours
        return shipped(source.title)
    year = f" ({source.year})" if source.year else ""
    return f"{source.author}: {source.title}{year}"


def origin(
    catalogue: Catalogue, value: Quantity | Fact | None, shown: Callable[[float], str] | None = None
) -> str:
    """Source, basis and note of a value, a line each.

    Parameters
    ----------
    shown
        Turns a number into words with its unit.
    """
    if value is None:
        return say("Not known.")
    lines = []
    if isinstance(value, Quantity):
        low, mid, high = ((shown or figure)(n) for n in (value.low, value.mid, value.high))
        if low != high:
            lines.append(say("Range {low} – {high}, reckoned with {mid}.", low=low, high=high, mid=mid))
        else:
            lines.append(say("Reckoned with {mid}.", mid=mid))
    lines.append(say("Source: {source}.", source=cited(catalogue, value.source)))
    lines.append(say(_BASIS[value.basis]))
    if value.note:
        lines.append(shipped(value.note))
    return "\n".join(lines)
