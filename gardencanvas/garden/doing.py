"""Marks of jobs that were done."""

from datetime import date

from gardencanvas.garden.edits import made, rebuilt, with_layout
from gardencanvas.garden.garden import Done, Garden


def mark_done(garden: Garden, layout_id: str, job: str, on: date) -> Garden:
    """The garden with a job marked as done on a day, whatever was marked before."""
    layout = garden.layout(layout_id)
    others = tuple(d for d in layout.done if d.job != job)
    return with_layout(garden, rebuilt(layout, done=(*others, made(Done, job=job, on=on))))


def unmark(garden: Garden, layout_id: str, job: str) -> Garden:
    """The garden with a job not done; the same garden where it was not marked."""
    layout = garden.layout(layout_id)
    left = tuple(d for d in layout.done if d.job != job)
    if len(left) == len(layout.done):
        return garden
    return with_layout(garden, rebuilt(layout, done=left))
