"""The codes of findings: what each says, and the numbers it carries.

``finding.plantings[0]`` suffers; the others cause. Numbers are metres, days, dates and shares of 1 unless
said otherwise; ``stations`` counts the stations that have the finding's own (worst) verdict, while
``finding.stations`` lists all it is about. ``first`` and ``last`` are the days it holds.

Kind crowding:

crowded (strains, clashes)
    Another crop of like height wants the same ground. ``share``: of the light and ground that the worst plant
    captures at its usual spacing over its growth, what they take; ``left``: what is left of it, where its own
    kind's crowding is counted too; ``days``: how long; ``distance_m``: to the worst plant's nearest neighbour
    of the other planting; ``usual_m``: half the sum of both crops' usual spacings (equal each way);
    ``stations``. Several neighbours that only together take so much stand in one finding, the one that takes
    most first.
too close (strains, clashes; one planting)
    Its own plants stand closer than the sources allow. ``distance_m``: in the row; ``minimum_m``: least that
    a source gives; ``usual_m``, ``usual_across_m``: usual spacing in the row and between rows; ``density``:
    plants for each one that the usual spacing gives room to; ``stations``.

smaller each (shares; one planting)
    Closer than usual and within what the sources allow: more plants, each smaller. Numbers as for too
    close. Both carry ``size_low``, ``size_high``: weight of a plant over that at the usual spacing, by the
    reciprocal yield law; ``yield_low``, ``yield_high``: the same of all plants on the same ground.

Kind shading:

shaded (strains, clashes)
    Taller plants over or beside it leave it less light than it needs. ``light_left``: share of open-sky light
    at the worst station, over its own time, all causes together; ``light_needed``: for a full crop;
    ``light_least``: to crop at all; ``taken``: what the light would gain without this neighbour;
    ``stations``.
layered (shares)
    Taller plants take some light and leave enough: two storeys on one ground. Numbers as for shaded, and
    ``caught``: share of open-sky light that both take together at the worst station over its own time;
    ``families``: to how many they belong.
fixtures (strains, clashes; one planting)
    Walls, fences, hedges, trees or sheds alone leave too little light. Numbers as for shaded, no ``taken``.

Kind roots:

same roots (strains)
    Another crop's roots want the same soil, water and food. ``share``: of the soil the worst plant would have
    at its usual spacing, what they take, over its growth; ``depth_overlap``: of both
    distributions of roots over depth; ``depth_m``, ``other_depth_m``: how deep each roots; ``draw``: how much
    both want the same water or food, 0–1; ``days``; ``families``: to how many they belong; ``stations``.
roots apart (shares)
    They root in the same ground to different depths. Numbers as for same roots.
roots not known (shares)
    They share ground, and no source says how deep one of them roots: nothing was reckoned. ``stations``;
    ``unknown``: crop id of the one, or the first of both.

Kind family:

trials (shares, strains)
    What trials report of two crops side by side. ``gain``, ``cost``, ``life``: ids of the interactions that
    say what both yield together, what the first loses, and what becomes of pests, their enemies and weeds;
    ``foes``: that of a pest or disease both share; of the chief one ``evidence``, ``observations``,
    ``papers`` and, of a total yield, the land equivalent ratio ``low``, ``mid``, ``high``; ``life_for``: the
    planting that has less trouble, where it is not both; ``disputed``: 1 where other trials found no loss.
    What is not known is absent. ``stations``.
same family (shares)
    Neighbours that share pests or diseases. ``family``; ``foes``: id of the interaction; or ``why``: the
    reason for which both are rotated; ``stations``.

Kind water:

unlike water (shares, strains)
    The first wants little water, its neighbour much. ``stations``.
thirsty together (shares)
    Both need much water, and most at the same time, ``first`` to ``last``. ``days``; ``stations``.

Kind timing:

out in time (shares)
    The catch crop is harvested before its neighbour closes over it. ``days``: to spare; ``closes``: date its
    neighbour would close over it; ``harvest_last``: its own last harvest; ``days_cold``, ``days_warm``: days
    to spare in the coldest and the warmest of ten years, absent where the neighbour then never closes;
    ``earlier``: days for which its leaves shade the ground before its neighbour's do; ``families``: to how
    many they belong; ``stations``.
too late (strains, clashes)
    It still stands when its neighbour closes over it. Numbers as for out in time; ``days`` is below 0.
in turns (shares)
    The same ground used again at another date. ``days_between``; ``out``: the first crop's last day;
    ``in_bed``: the second one's first; ``stations``; ``days``: days to spare until the second closes over the
    first one's ground, where it does.

dug beside (strains)
    The other is lifted with a fork while the first, of shallow roots, still grows within its reach, ``first``
    to ``last``. ``distance_m``: of the nearest; ``reach_m``: of the fork from the middle of the lifted plant;
    ``root_depth_m``: of the one that suffers; ``until``: its own last day of growth; ``stations``.
out of reach (strains)
    Picked often, from ``first`` on, and not within an arm's length of a path or bed's edge: ``distance_m``;
    ``arm_m``. Where other plantings are named, it lies near enough and they close every way to it.
    ``stations``; ``of``.

Kind frost:

frost to come (strains, clashes; one planting)
    Killing frost often still comes after the plants stand open to it. ``risk_after``: share of simulated
    years in which it does; ``exposed``: the day they show, or their cover comes off; ``last_frost``: the
    typical last frost that kills them; ``in_bed``; ``stations``.
killed in winter (strains, clashes; one planting)
    It must stand through the winter to be harvested, and frost seldom spares it. Numbers as for seldom ripe;
    ``hardier_c``: °C down to which the hardiest kinds live, where those come through: it only strains.

Kind timing, of one planting:

seldom ripe (strains, clashes)
    In too few years it ripens before frost ends it. ``ripens``: share of simulated years that bring a
    harvest; ``ready``: its first harvest in an average year without frost, where there is warmth enough;
    ``killing_frost``: the typical frost that ends it, where one does; ``in_bed``; ``stations``.
too early (strains)
    It lies or stands in ground too cold for it. ``least_c``: °C which its seed needs to germinate, or it to
    grow; ``warm_from``: the day from which an average year offers that; ``days``: until then; ``kind``: how
    it was started; ``in_bed``; ``stations``.

Kind support (one planting each):

no support (strains)
    A climber with nothing to climb. ``height_m``: that of the crop; ``support``: kind it wants; ``stations``;
    ``of``.
support full (strains)
    More stations on one support than it carries. ``on_it``; ``room``: at the crop's closest spacing, on both
    sides; ``support``: its kind; ``stations``: its own.
stands alone (strains)
    Tall legumes set so wide that they cannot lean on each other. ``usual_m``; ``height_m``; ``stations``.

open to wind (strains)
    Tall, held by nothing and sheltered by nothing. ``height_m``; ``support``: kind it wants, "none" where the
    sources name none; ``stations``; ``of``.

Kind cover (one planting each):

outgrows cover (strains)
    It is taller than what lies over it. ``cover``: its kind; ``cover_m``; ``height_m``: grown; ``on``: first
    day; ``stations``.
no bees (strains)
    A crop that insects must reach is covered while it flowers, ``first`` to ``last``. ``cover``; ``flowers``:
    first day; ``days``; ``stations``.

Kind outside:

on bare plan (strains; one planting)
    Stations that lie in no bed. ``stations``; ``of``: all stations.
shallow soil (strains; one planting)
    The bed has less soil than the roots need. ``soil_m``; ``needed_m``: least effective root depth in the
    books, or what it reaches before it is out; ``root_depth_m``: what it reaches; ``stations``; ``of``.
on path (strains; one planting)
    Stations that stand where one walks. ``stations``; ``of``.
"""

from enum import StrEnum


class Code(StrEnum):
    """What a finding says; its numbers are in the table above."""

    CROWDED = "crowded"
    TOO_CLOSE = "too close"
    SMALLER_EACH = "smaller each"
    SHADED = "shaded"
    LAYERED = "layered"
    FIXTURES = "fixtures"
    SAME_ROOTS = "same roots"
    ROOTS_APART = "roots apart"
    ROOTS_UNKNOWN = "roots not known"
    TRIALS = "trials"
    SAME_FAMILY = "same family"
    UNLIKE_WATER = "unlike water"
    THIRSTY_TOGETHER = "thirsty together"
    OUT_IN_TIME = "out in time"
    TOO_LATE = "too late"
    IN_TURNS = "in turns"
    DUG_BESIDE = "dug beside"
    OUT_OF_REACH = "out of reach"
    FROST_TO_COME = "frost to come"
    KILLED_IN_WINTER = "killed in winter"
    SELDOM_RIPE = "seldom ripe"
    TOO_EARLY = "too early"
    NO_SUPPORT = "no support"
    SUPPORT_FULL = "support full"
    STANDS_ALONE = "stands alone"
    OPEN_TO_WIND = "open to wind"
    OUTGROWS_COVER = "outgrows cover"
    NO_BEES = "no bees"
    SHALLOW_SOIL = "shallow soil"
    ON_PATH = "on path"
    ON_BARE_PLAN = "on bare plan"
