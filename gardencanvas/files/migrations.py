"""Steps from one file format to the next, on plain dictionaries, before validation.

To change the format: raise ``garden.FORMAT``, add a step here and a stored sample of the old format to
tests/files/samples/.
"""

from collections.abc import Callable
from typing import Any

from gardencanvas.garden.garden import FORMAT

Document = dict[str, Any]


def _kept_as_it_is(document: Document) -> Document:
    """Format 2 only adds fields that may be left out."""
    return document


# STEPS[n] turns format n into format n + 1.
STEPS: dict[int, Callable[[Document], Document]] = {1: _kept_as_it_is}


def migrated(document: Document, number: int) -> Document:
    """The document brought from format ``number`` to the present one."""
    for step in range(number, FORMAT):
        document = {**STEPS[step](document), "format": step + 1}
    return document
