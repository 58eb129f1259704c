"""Where a number comes from, in words."""

from collections.abc import Callable

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Basis, Fact, Quantity

_BASIS = {
    Basis.SEEN: "read in the source",
    Basis.MEMORY: "from memory of the source",
    Basis.PRACTICE: "common practice",
    Basis.DERIVED: "computed from sourced values",
    Basis.FALLBACK: "estimated: no book at hand gives it for this crop",
    Basis.USER: "your own figure",
}


def cited(catalogue: Catalogue, source_id: str) -> str:
    """A citation in one line; the bare id where it is not known."""
    source = catalogue.sources.get(source_id)
    if source is None:
        return source_id
    author = f"{source.author}: " if source.author else ""
    year = f" ({source.year})" if source.year else ""
    return f"{author}{source.title}{year}"


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
        return "Not known."
    lines = []
    if isinstance(value, Quantity):
        low, mid, high = ((shown or "{:g}".format)(n) for n in (value.low, value.mid, value.high))
        lines.append(
            f"Range {low} – {high}, reckoned with {mid}." if low != high else f"Reckoned with {mid}."
        )
    lines.append(f"Source: {cited(catalogue, value.source)}.")
    lines.append(_BASIS[value.basis][0].upper() + _BASIS[value.basis][1:] + ".")
    if value.note:
        lines.append(value.note)
    return "\n".join(lines)
