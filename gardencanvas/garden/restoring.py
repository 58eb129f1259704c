"""Bring a layout of an earlier state of the garden back, beside those of the present one."""

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.value import new_id

_LONGEST = 200  # of a name


def with_restored_layout(garden: Garden, earlier: Garden, layout_id: str, said: str) -> tuple[Garden, str]:
    """The garden with a layout of an earlier state of it as a further one, and that one's new id.

    Parameters
    ----------
    said
        When it was, in words; it comes after the layout's name.

    Returns
    -------
    tuple
        The crops and varieties of the grower's own that it needs come along where they are missing; those
        that are there stay as they are. Fixtures and the site stay those of the present garden.
    """
    layout = earlier.layout(layout_id)
    ending = f" ({said})"
    name = layout.name[: _LONGEST - len(ending)] + ending
    restored = rebuilt(layout, id=new_id("layout"), name=name, kept=False)
    crops = {c.id for c in garden.crops}
    varieties = {(v.crop, v.id) for v in garden.varieties}
    planted = {p.crop for p in layout.plantings}
    after = rebuilt(
        garden,
        layouts=(*garden.layouts, restored),
        crops=(*garden.crops, *(c for c in earlier.crops if c.id in planted - crops)),
        varieties=(
            *garden.varieties,
            *(v for v in earlier.varieties if v.crop in planted and (v.crop, v.id) not in varieties),
        ),
    )
    return after, restored.id
