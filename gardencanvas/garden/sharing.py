"""Several crops on the places of one pattern in a repeating order: A, B, A, B … round a ring, along a row."""

from gardencanvas.garden.edits import add, rebuilt, replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.pattern import Pattern
from gardencanvas.garden.planting import Planting


def sharers(layout: Layout, planting: Planting) -> tuple[Planting, ...]:
    """The plantings that share a planting's places, itself among them, in the order of their first place."""
    places = _whole(planting.pattern)
    every = planting.pattern.every
    found = (p for p in layout.plantings if p.pattern.every == every and _whole(p.pattern) == places)
    return tuple(sorted(found, key=lambda p: p.pattern.first))


def share(garden: Garden, layout_id: str, planting_id: str, newcomer: Planting) -> Garden:
    """The garden with a newcomer on some places of a planting, in turns with all that stand on them.

    It takes the first turn that is free; where none is, one more is made, and all others keep their order.

    Parameters
    ----------
    newcomer
        Its own pattern does not count.

    Raises
    ------
    Refusal
        If one of those that would have to move over is locked, or a turn would hold no plant.
    """
    layout = garden.layout(layout_id)
    planting = layout.by_id.get(planting_id)
    if not isinstance(planting, Planting):
        raise Refusal("There is no planting with the id {id!r} in this layout.", id=planting_id)
    group = sharers(layout, planting)
    every, taken = planting.pattern.every, {p.pattern.first for p in group}
    whole = _whole(planting.pattern)
    free = [turn for turn in range(every) if turn not in taken]
    if free:
        turned = rebuilt(whole, every=every, first=free[0])
        return add(garden, layout_id, [rebuilt(newcomer, pattern=turned)])
    if any(p.locked for p in group):
        raise Refusal("It is locked; unlock it first.")
    every += 1
    moved = [rebuilt(p, pattern=rebuilt(p.pattern, every=every)) for p in group]
    after = replace(garden, layout_id, moved)
    return add(after, layout_id, [rebuilt(newcomer, pattern=rebuilt(whole, every=every, first=every - 1))])


def _whole(pattern: Pattern) -> Pattern:
    """The pattern with all its places."""
    return rebuilt(pattern, every=1, first=0, left_out=(), moved=())
