"""Why a file, or one outline in it, cannot be used: codes with numbers; sentences are made in ``words``."""

from enum import StrEnum

from gardencanvas.garden.value import MAX_CORNERS

MAX_FILE_BYTES = 20_000_000  # our own choice: the map of a whole village has less
MAX_OUTLINES = 500  # at once; a layout holds 2,000 beds
MAX_POINTS = 200_000  # of all outlines of a file together
MAX_ELEMENTS = 100_000  # of an XML document, or features of a map
MAX_DEPTH = 100  # of elements within elements
MAX_RINGS = 60  # of one path
MAX_SPAN_M = 1000.0  # the plan reaches a kilometre each way
MAX_HOLES = 50  # as of a bed
LEAST_M2 = 1e-4  # as of a bed

MOST_CORNERS = MAX_CORNERS


class Why(StrEnum):
    """What is the matter."""

    # with a whole file
    UNREADABLE = "unreadable"
    TOO_LONG = "too long"
    NOT_THAT_KIND = "not that kind"
    DAMAGED = "damaged"
    ENTITIES = "entities"
    TOO_DEEP = "too deep"
    TOO_MANY = "too many"
    NO_OUTLINE = "no outline"
    TOO_WIDE = "too wide"
    # with one outline
    CROSSES = "crosses"
    TOO_MANY_CORNERS = "too many corners"
    TOO_FEW_CORNERS = "too few corners"
    TOO_SMALL = "too small"
    HOLE_OUTSIDE = "hole outside"
    TOO_MANY_HOLES = "too many holes"
    BAD_PATH = "bad path"
    # what is passed over
    OPEN = "open"
    NO_AREA = "no area"
    NOT_READ = "not read"


class OutlinesRefused(ValueError):  # noqa: N818 - as the project's Refusal
    """A file of which nothing can be used; ``values`` are the numbers and names of the sentence."""

    def __init__(self, why: Why, **values: object) -> None:
        super().__init__(why.value)
        self.why = why
        self.values = values
