"""How a succession goes on: its interval, and the ways to lay out its parts."""

from dataclasses import dataclass
from enum import StrEnum

from gardencanvas.garden.errors import Refusal

# What a plan can still be worked by; common practice has 1 to 8 weeks and 2 to 12 parts.
LONGEST_D = 180
MOST_PARTS = 52


class Between(StrEnum):
    """What the interval lies between."""

    STARTS = "starts"
    HARVESTS = "harvests"


class Way(StrEnum):
    """Where the parts lie."""

    ROWS = "rows"  # each takes some of the pattern's rows
    PARTS = "parts"  # each takes a stretch of the pattern's length
    COPIES = "copies"  # each is a planting more, as large as the first


@dataclass(frozen=True, slots=True)
class Rhythm:
    """A start, or a first harvest, every so many ``days``."""

    days: int
    between: Between = Between.STARTS

    def check(self) -> None:
        """Raise ``Refusal`` where the interval is none that can be kept."""
        if not 1 <= self.days <= LONGEST_D:
            raise Refusal(
                "The interval is {days} days: allowed is 1 to {most}.", days=self.days, most=LONGEST_D
            )


def check_parts(parts: int | None) -> None:
    """Raise ``Refusal`` for a number of parts that makes no succession; None stands for as many as ripen."""
    if parts is not None and not 2 <= parts <= MOST_PARTS:
        raise Refusal("The number of parts is {parts}: allowed is 2 to {most}.", parts=parts, most=MOST_PARTS)
