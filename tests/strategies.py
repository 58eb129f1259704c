"""Hypothesis makers shared by all property tests: patterns, plantings, layouts, gardens and edits."""

from datetime import date, timedelta

from hypothesis import strategies as st

from gardencanvas.crops.model import Quantity, Variety
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, RingSupport
from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Climate, DayOfYear, Frost, Site

# Of every layer, habit and length of life.
CROPS = (
    "radish", "lettuce", "cabbage", "leek", "onion", "carrot", "tomato", "sweetcorn", "winter-squash",
    "climbing-bean", "white-clover", "garlic", "spinach", "courgette", "chives",
)  # fmt: skip
YEAR = 2027
MEANS = (3.2, 3.5, 6.3, 9.5, 13.2, 15.9, 18.1, 17.8, 14.8, 11.0, 6.9, 4.0)  # °C, models of a mild climate


def metres(low, high, step=0.01):
    """Lengths on a grid of a centimetre, as a grower would measure them."""
    return st.integers(round(low / step), round(high / step)).map(lambda n: round(n * step, 6))


def points(reach=2.5):
    return st.tuples(metres(0, reach), metres(0, reach))


def days(first=date(YEAR, 3, 1), last=date(YEAR, 7, 31)):
    return st.dates(first, last)


def spacings():
    return metres(0.05, 0.6)


@st.composite
def patterns(draw):
    """Any of the seven patterns, small."""
    frame = {"origin": draw(points()), "angle_deg": draw(st.sampled_from([0.0, 30.0, 90.0, 217.0]))}
    kind = draw(st.sampled_from([Rows, Rows, Block, Strip, RingPattern, Edging, Drift, Spots]))
    s = draw(spacings())
    if kind is Rows:
        return Rows(
            **frame, length_m=draw(metres(0.6, 3.0)), rows=draw(st.integers(1, 4)), spacing_m=s,
            row_spacing_m=draw(spacings()),
        )  # fmt: skip
    if kind is Block:
        size = {"length_m": draw(metres(0.6, 1.5)), "width_m": draw(metres(0.6, 1.5))}
        return Block(**frame, **size, spacing_m=max(s, 0.1), staggered=draw(st.booleans()))
    if kind is Strip:
        return Strip(**frame, length_m=1.5, width_m=0.6, spacing_m=s, across_m=0.2)
    if kind is RingPattern:
        return RingPattern(**frame, radius_m=draw(metres(0.3, 0.9)), spacing_m=s)
    if kind is Edging:
        return Edging(**frame, line=((0.0, 0.0), (1.2, 0.0), (1.2, 0.9)), spacing_m=s)
    if kind is Drift:
        outline = ((0.0, 0.0), (1.0, 0.0), (1.0, 0.8), (0.0, 0.8))
        return Drift(**frame, outline=outline, spacing_m=s, plants=8, seed=draw(st.integers(0, 9)))
    return Spots(**frame, points=tuple(draw(st.lists(points(1.5), min_size=1, max_size=5))))


def starts():
    on = days() | days() | days(date(YEAR - 1, 9, 1), date(YEAR, 10, 31))
    return st.builds(Start, kind=st.sampled_from(["sown", "raised", "set", "volunteer"]), on=on)


@st.composite
def plantings(draw, planting_id, pattern=None, crops=CROPS):
    start = draw(starts())
    length = draw(st.none() | st.none() | st.integers(20, 200))
    crop = draw(st.sampled_from(crops))
    return Planting(
        id=planting_id,
        crop=crop,
        varieties=draw(st.sampled_from([(), (), ("tall", "small"), ("small",)])) if crop == "cabbage" else (),
        pattern=draw(pattern or patterns()),
        start=start,
        end=None if length is None else start.on + timedelta(days=length),
        per_station=draw(st.sampled_from([1, 1, 1, 4])),
    )


def beds(bed_id):
    def made(at, length, width):
        (x, y) = at
        return Bed(
            id=bed_id, name=bed_id, outline=((x, y), (x + length, y), (x + length, y + width), (x, y + width))
        )

    return st.builds(made, points(1.5), metres(1.0, 5.0), metres(0.8, 4.0))


def fixtures(fixture_id):
    def made(at, length, height, clear):
        # off the centimetre, so that no station lies exactly on its rim, half in and half out
        x, y = at[0] + 0.0037, at[1] + 0.0041
        outline = ((x, y), (x + length, y), (x + length, y + 0.3), (x, y + 0.3))
        return Fixture(
            id=fixture_id, name="wall", kind="wall", outline=outline, height_m=height, clear_share=clear
        )

    return st.builds(made, points(8.0), metres(0.5, 6.0), metres(0.5, 4.0), st.sampled_from([0.0, 0.0, 0.4]))


def supports(support_id):
    line = st.builds(
        lambda at, length: LineSupport(
            id=support_id, kind="net", name="net", begin=at, end=(at[0] + length, at[1]), height_m=1.8
        ),
        points(),
        metres(0.5, 3.0),
    )
    ring = st.builds(
        lambda at: RingSupport(
            id=support_id, kind="cane ring", name="canes", centre=at, radius_m=0.4, height_m=2.0
        ),
        points(),
    )
    return line | ring


def covers(cover_id):
    def made(at, kind, first):
        (x, y) = at
        outline = ((x, y), (x + 2, y), (x + 2, y + 1), (x, y + 1))
        return Cover(id=cover_id, kind=kind, name=kind, outline=outline, height_m=0.5, first=first)

    return st.builds(made, points(), st.sampled_from(["fleece", "mesh", "cloche"]), st.none() | days())


def sites():
    def made(latitude, bearing, warmer):
        return Site(
            place="Millbrook", latitude_deg=latitude, longitude_deg=5.0, bearing_deg=bearing,
            frost=Frost(last=DayOfYear(month=4, day=28), first=DayOfYear(month=10, day=20)),
            climate=Climate(mean_c=tuple(m + warmer for m in MEANS)),
        )  # fmt: skip

    return st.builds(
        made, st.sampled_from([52.0, 40.0]), st.sampled_from([0.0, 45.0, 300.0]), st.sampled_from([0.0, 3.0])
    )


def _spread(metres_):
    return Quantity(low=metres_, mid=metres_, high=metres_, source="user", basis="user")


VARIETIES = (
    Variety(id="tall", crop="cabbage", name="tall", height_m=_spread(0.9)),
    Variety(id="small", crop="cabbage", name="small", spread_m=_spread(0.25)),
)


@st.composite
def layouts(draw, layout_id="l1", most=6):
    count = draw(st.integers(most // 2, most))
    return Layout(
        id=layout_id,
        name=layout_id,
        year=YEAR,
        beds=tuple(draw(beds(f"bed-{k}")) for k in range(draw(st.integers(0, 3)))),
        supports=tuple(draw(supports(f"sup-{k}")) for k in range(draw(st.integers(0, 1)))),
        covers=tuple(draw(covers(f"cov-{k}")) for k in range(draw(st.integers(0, 1)))),
        plantings=tuple(draw(plantings(f"p-{k}")) for k in range(count)),
    )


@st.composite
def gardens(draw, most=8):
    """Gardens with two layouts, near enough together that plantings meet."""
    return Garden(
        name="Test",
        site=draw(sites()),
        fixtures=tuple(draw(fixtures(f"fix-{k}")) for k in range(draw(st.integers(0, 1)))),
        layouts=(draw(layouts("l1", most)), draw(layouts("l2", 3))),
        varieties=VARIETIES,
    )


def _some_id(draw, garden, layout_id, *folders):
    layout = garden.layout(layout_id)
    ids = [x.id for folder in folders for x in getattr(layout, folder)]
    return draw(st.sampled_from(ids)) if ids else None


def _move(draw, garden, layout_id):
    item = _some_id(draw, garden, layout_id, "plantings", "beds", "supports", "covers")
    steps = st.integers(-20, 20).map(lambda n: n / 20)
    return garden if item is None else edits.shift(garden, layout_id, [item], draw(steps), draw(steps))


def _turn(draw, garden, layout_id):
    item = _some_id(draw, garden, layout_id, "plantings", "beds")
    return garden if item is None else edits.turn(garden, layout_id, [item], 15.0, (2.0, 2.0))


def _date(draw, garden, layout_id):
    item = _some_id(draw, garden, layout_id, "plantings")
    return garden if item is None else edits.change(garden, layout_id, item, start=draw(starts()), end=None)


def _crop(draw, garden, layout_id):
    item = _some_id(draw, garden, layout_id, "plantings")
    if item is None:
        return garden
    return edits.change(garden, layout_id, item, crop=draw(st.sampled_from(CROPS)), varieties=())


def _pattern(draw, garden, layout_id):
    item = _some_id(draw, garden, layout_id, "plantings")
    return garden if item is None else edits.change(garden, layout_id, item, pattern=draw(patterns()))


def _remove(draw, garden, layout_id):
    item = _some_id(draw, garden, layout_id, "plantings", "beds", "supports", "covers")
    return garden if item is None else edits.remove(garden, layout_id, [item])


def _add(draw, garden, layout_id):
    makers = {"p": plantings, "bed": beds, "sup": supports, "cov": covers, "fix": fixtures}
    kind = draw(st.sampled_from(["p", "p", "p", *makers]))
    fresh = next(f"{kind}-{n}" for n in range(1000) if garden.find(layout_id, f"{kind}-{n}") is None)
    return edits.add(garden, layout_id, [draw(makers[kind](fresh))])


def _fixture(draw, garden, layout_id):
    if not garden.fixtures:
        return edits.add(garden, layout_id, [draw(fixtures("fix-0"))])
    item = garden.fixtures[0].id
    if draw(st.booleans()):
        return edits.remove(garden, layout_id, [item])
    return edits.shift(garden, layout_id, [item], 0.5, -0.5)


def _site(draw, garden, layout_id):
    return edits.rebuilt(garden, site=draw(sites()))


def _order(draw, garden, layout_id):
    layout = garden.layout(layout_id)
    shuffled = tuple(draw(st.permutations(layout.plantings)))
    return edits.with_layout(garden, edits.rebuilt(layout, plantings=shuffled))


EDITS = (_move, _move, _turn, _date, _crop, _pattern, _remove, _add, _add, _fixture, _site, _order)


def edited(draw, garden, layout_id):
    """The garden after one edit drawn at random; the same garden where the edit is refused."""
    try:
        return draw(st.sampled_from(EDITS))(draw, garden, layout_id)
    except Refusal:
        return garden
