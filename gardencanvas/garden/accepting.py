"""Findings the grower knows of and lives with: accepted with a note, kept in the layout."""

from collections.abc import Iterable

from gardencanvas.garden.edits import rebuilt, with_layout
from gardencanvas.garden.garden import Accepted, Garden, Layout


def accept(garden: Garden, layout_id: str, accepted: Accepted) -> Garden:
    """The garden with a finding accepted, in the place of what was said of the same one before."""
    layout = garden.layout(layout_id)
    others = tuple(a for a in layout.accepted if not a.names(accepted.code, accepted.plantings))
    return with_layout(garden, rebuilt(layout, accepted=(*others, accepted)))


def no_longer(garden: Garden, layout_id: str, accepted: Accepted) -> Garden:
    """The garden with a finding not accepted any more."""
    layout = garden.layout(layout_id)
    left = tuple(a for a in layout.accepted if a != accepted)
    return (
        garden if len(left) == len(layout.accepted) else with_layout(garden, rebuilt(layout, accepted=left))
    )


def accepted_as(layout: Layout, code: str, plantings: Iterable[str], verdict: str) -> Accepted | None:
    """What was said of a finding when it was accepted; None where it was not, or has become worse since."""
    return next(
        (a for a in layout.accepted if a.names(code, plantings) and (a.verdict, verdict) != _WORSE), None
    )


_WORSE = ("strains", "clashes")
