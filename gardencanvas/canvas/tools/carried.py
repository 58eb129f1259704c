"""The crop on the mouse: what it is, how far apart it stands, and what it becomes when it is put down."""

from dataclasses import dataclass, replace

from gardencanvas.crops.model import Crop
from gardencanvas.garden.edits import made
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.pattern import Pattern
from gardencanvas.garden.planting import Planting, Start

_UNKNOWN_SPACING_M = 0.3  # common practice: a middling garden spacing, where the crop's is not known
_LEAST_M = 0.01


@dataclass(frozen=True, slots=True)
class Carried:
    """What is on the mouse; ``wider`` is what the grower made of the crop's own spacing."""

    crop: Crop
    crop_id: str
    variety: str | None
    start: Start
    planting_id: str
    wider: float = 1.0

    @property
    def room(self) -> Spacings:
        """How far apart it stands.

        Evenly spaced, a plant has the same ground as in its rows: √(in the row × between).
        """
        in_row = self.crop.in_row_m.mid if self.crop.in_row_m else _UNKNOWN_SPACING_M
        between = max(self.crop.between_rows_m.mid if self.crop.between_rows_m else in_row, in_row)
        return Spacings(
            round(max(in_row * self.wider, _LEAST_M), 3),
            round(max(between * self.wider, _LEAST_M), 3),
            round(max((in_row * between) ** 0.5 * self.wider, _LEAST_M), 3),
        )

    def spaced(self, step_m: float) -> "Carried":
        """The same with so much more between plants in the row; never less than a centimetre."""
        base = self.crop.in_row_m.mid if self.crop.in_row_m else _UNKNOWN_SPACING_M
        wanted = max(round(base * self.wider + step_m, 3), _LEAST_M)
        return replace(self, wider=wanted / base)

    def planting(self, pattern: Pattern) -> Planting:
        """The planting it becomes in a pattern; raises ``Refusal``."""
        return made(
            Planting,
            id=self.planting_id,
            crop=self.crop_id,
            varieties=(self.variety,) if self.variety else (),
            pattern=pattern,
            start=self.start,
        )
