"""The codes of remedies: what each changes, and the numbers it carries.

Every remedy carries ``planting``: the id of the planting it changes. Lengths are metres, times days. Where a
remedy shortens the harvest by a week or more, ``harvest_lost_d`` says by how many days and ``harvest_d`` of
how many. ``plants`` is how many stood there before, ``fewer`` how many are gone.

shift
    The planting moves by ``dx_m``, ``dy_m`` on the plan; ``distance_m``. ``toward`` says how: "away" (then
    ``other`` is the id of the planting it leaves), "along" or "across" the bed, "poleward" (to the side of
    the bed from which its shade falls outside; ``other`` is the id of the bed), or "into" (``other`` is the
    id of the bed). ``carried``: ids of supports that go with it, separated by spaces; may be empty.
shift stations
    As shift, for some of its stations: ``stations``, their indices separated by spaces; ``count``.
start
    It starts ``days`` later (below 0: earlier), ``on`` that date.
end
    It is cleared by ``on``. Where that is ``early_d`` days before its first harvest, ``size`` is the share of
    its canopy then that it has.
widen
    ``field`` of its pattern becomes ``spacing_m``; ``plants``, ``fewer``.
thin
    ``per_station`` seedlings are left in each clump; ``plants``, ``fewer``.
leave out
    ``lines`` rows or columns go at ``side`` of the pattern: "first" or "last" (rows), "begin" or "end"
    (plants of each row); ``plants``, ``fewer``. ``other``: id of the planting on that side, empty where there
    is none.
leave out stations
    Some stations go, the pattern stays: ``stations`` as above; ``plants``, ``fewer``.
variety
    Its variety becomes ``variety``.
support
    ``supports`` supports of ``kind``, ``height_m`` high, are put to it.
"""

from datetime import date
from enum import StrEnum

Numbers = dict[str, float | int | str | date]


class Change(StrEnum):
    """What a remedy changes; its numbers are in the table above."""

    SHIFT = "shift"
    SHIFT_STATIONS = "shift stations"
    START = "start"
    END = "end"
    WIDEN = "widen"
    THIN = "thin"
    LEAVE_OUT = "leave out"
    LEAVE_OUT_STATIONS = "leave out stations"
    VARIETY = "variety"
    SUPPORT = "support"
