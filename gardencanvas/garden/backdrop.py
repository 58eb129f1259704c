"""The background picture: a photo, sketch or survey that lies under the plan."""

from math import cos, hypot, radians, sin
from typing import Annotated

from pydantic import Field

from gardencanvas.garden.picture import Picture
from gardencanvas.garden.value import Angle, Name, Point, Value

FINEST_M, COARSEST_M = 1e-5, 0.5  # of the plan in one pixel: a scan at 2,540 dpi, an aerial photo
DIMMED = 0.35  # share of paper over a new picture: our own choice, beds drawn over it must stand out
MOST_DIMMED = 0.95


class Backdrop(Value):
    """A picture and how it lies on the plan.

    ``centre`` is where its middle lies; ``angle_deg`` turns it clockwise about that; ``metres_per_pixel`` is
    its scale; ``dimmed`` is the share of paper that is laid over it, from 0 (as it is) to 0.95.
    """

    name: Name
    picture: Picture
    centre: Point
    metres_per_pixel: Annotated[float, Field(ge=FINEST_M, le=COARSEST_M)]
    angle_deg: Angle = 0.0
    dimmed: Annotated[float, Field(ge=0.0, le=MOST_DIMMED)] = DIMMED
    locked: bool = False
    shown: bool = True

    @property
    def size_m(self) -> tuple[float, float]:
        """Width and height on the plan before it is turned, metres."""
        scale = self.metres_per_pixel
        return self.picture.width_px * scale, self.picture.height_px * scale

    @property
    def corners(self) -> tuple[Point, ...]:
        """The four corners on the plan, from the picture's upper left one clockwise, metres."""
        w, h = self.picture.width_px, self.picture.height_px
        return tuple(self.on_plan(p) for p in ((0.0, 0.0), (w, 0.0), (w, h), (0.0, h)))

    def on_plan(self, pixel: Point) -> Point:
        """Where a point of the picture (pixels from its upper left corner) lies on the plan, metres."""
        dx = (pixel[0] - self.picture.width_px / 2) * self.metres_per_pixel
        dy = (pixel[1] - self.picture.height_px / 2) * self.metres_per_pixel
        c, s = cos(radians(self.angle_deg)), sin(radians(self.angle_deg))
        return self.centre[0] + dx * c - dy * s, self.centre[1] + dx * s + dy * c

    def covers(self, at: Point) -> bool:
        """Whether a plan point lies on the picture."""
        dx, dy = at[0] - self.centre[0], at[1] - self.centre[1]
        c, s = cos(radians(self.angle_deg)), sin(radians(self.angle_deg))
        w, h = self.size_m
        return abs(dx * c + dy * s) <= w / 2 and abs(dy * c - dx * s) <= h / 2


def apart(a: Point, b: Point) -> float:
    """Distance of two plan points, metres."""
    return hypot(b[0] - a[0], b[1] - a[1])
