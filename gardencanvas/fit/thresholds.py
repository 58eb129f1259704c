"""Where one verdict ends and the next begins: every limit of the room, with its source.

All are common practice of close planting put into numbers, not measurements; each finding carries the figure
that was compared, so that a grower can judge for themselves. Light needs come from the crops themselves
(``light_good``, ``light_least``).
"""

# crowding: what is left of the light and soil a plant captures at its usual spacing. A loss of a seventh is
# about what a careful trial can tell from chance; with less than half, one grows a lesser plant.
KEPT_STRAINS = 0.85
KEPT_CLASHES = 0.50
BLAMED = 0.10  # so much of it a neighbour must take to make it clash, where a plant's own like take more
# where free ground is sought: the part of a plant's footprint that neighbours of its own height take, beyond
# what plants at handbook spacing take from each other. Four plants for one (both spacings halved) take far
# more than half.
CROWDED = 0.30
CHOKED = 0.50
CROWDED_DAYS = 14  # a touch in the last days before harvest does no harm …
CROWDED_TIME = 1 / 5  # … nor one in a small part of the time a plant grows
CHOKED_TIME = 1 / 4
PRESSES = 0.05  # less, lost to a neighbour, is not worth a word
MOSTLY = 0.5  # of a plant's growth: so long two plants of one crop stand in one place before one must go
# heights: crops one of which is a quarter as high as the other stand in different storeys, from three
# quarters on they fill the same
UNLIKE = 0.25
ALIKE = 0.75

# shading
TAKEN_SHOWN = 0.02  # less than 2 % of the light is not worth a word
TAKEN_BLAMED = 0.05  # a neighbour that takes less is named only if it takes most

RISE_M = 0.3  # crops of like height shade each other at any spacing, and handbook distances allow for it
SHADE_REACH = 2.0  # times the height difference: beyond, what is hidden lies below 27°

# roots: the part of the soil a plant would have at handbook spacing that another crop's roots take
ROOTS_STRAINED = 0.30  # times the weight of what both want
ROOTS_SHOWN = 0.10
DEPTHS_APART = 0.80  # overlap in depth; 0.4 beside 1.1 m have 0.64, 0.4 beside 0.7 m 0.79

# neighbours: leaves within a hand's breadth. The odd tenth keeps distances measured in centimetres and sizes
# in millimetres off the limit.
ADJOIN_M = 0.1503
ADJOIN_DAYS = 14
GROWN_IN = 21  # days after planting in which a crop takes hold

# timing
CATCH_TIME = 0.75  # a catch crop is in the bed for three quarters of its neighbour's time at most
LATE_SHARE = 1 / 3  # of its time in the bed spent closed over: nothing is left to harvest
TURNS = 0.10  # of a footprint used again by a crop of another date

# lifting: the fork goes in a hand's breadth outside what is lifted
FORK_M = 0.10
SHALLOW_ROOTED_M = 0.5  # FAO-56 table 22 ends its shallow-rooted vegetables (lettuce, onion, spinach) here
LIFTED_EARLY_D = 7  # a neighbour out within a week loses nothing by it

# reach: beds are made 1.2 m wide, 1.5 m at most, so that their middle is reached from both sides
ARM_M = 0.75
WALKED_M = 2.0  # what is wider is no bed but ground, and is walked on between rows
LEAN_OVER_M = 0.6  # one leans over what is lower
PICKED_SHARE = 0.5  # of a neighbour's footprint radius: its outer leaves are pushed aside
WAY_M = 0.3  # so much ground one needs to stand on, between a bed and a wall
EDGE_STEP_M = 0.197  # between the places on an edge from which a hand is put in (odd, as ADJOIN_M)

# spacing inside a planting, in plants for each plant the handbooks give room to
DENSE = 4.0  # both spacings halved, though no single source is undercut
DENSE_AND_CLOSE = 3.0  # and closer than the closest source
CLUMP_CLOSE = 0.8  # least over usual spacing of clumps with none on record
CLOSE_ENOUGH = 0.98  # of the least distance: rounding of a tape measure
CLOSE_TOLD = 4 / 3  # a third more plants than usual is closer on purpose, and costs size
# How far plants hold each other back at the usual spacing: c of w = w_usual / (1 − c + c D), the reciprocal
# yield law 1/w = a + bN (Shinozaki & Kira 1956) with c = bN/(a + bN) there. Usual spacings lie where the
# yield per m² has all but levelled off (1: final yield constant), and at least a third of the way to it, as
# footprints and light make out by themselves (tests/fit/test_capture.py). Of onion and maize c is known from
# published densities (``Crop.half_weight_per_m2``), of no other.
HELD_BACK_LOW = 1 / 3
HELD_BACK_HIGH = 1.0

# aids
SUPPORT_REACH_M = 0.3  # a climber finds a support this near
AIDED_SHARE = 0.5  # of its stations must be reached for a planting to count as supported or covered
OUTSIDE_M = 0.001
PATH_EDGE_M = 0.05  # plants on the very edge of a path are not trodden on
SHALLOW_M = 0.005  # of soil missing: less is not worth a word

# support
ROUND_STAKE_M = 0.1  # climbers are set a hand's breadth round a stake or ring
LEANING_M = 0.7  # beans that do not climb lean on each other from this height
LOOSE = 1.5  # times the usual distance in the row: out of each other's reach
WIND_M = 1.5  # tall as a shoulder and free: blown over where nothing shelters it …
STAKED_M = 1.0  # … and lower where the sources would tie it to something
LEE = 10.0  # times its height: how far a hedge or fence breaks the wind
SHELTER_M = 1.0  # lower than so nothing shelters a tall crop
AMONG_M = 1.2  # so near, three and more of its own planting break the wind for each other
AMONG = 3
HOLDER_M = 0.3  # knee-high or nearly: a stem that young beans do not pull down …
HOLDER_LEAD_D = 14  # … as maize started two weeks before them is when they climb

# cover
COVER_TIGHT = 1.05  # times its height: a plant may lift fleece a little
FRUIT_SET_D = 28  # days from an open flower to the first pick
LAST_SET_D = 14  # flowers that open later than so before the last pick are not missed
SHUT_IN_D = 7

SOURCE = "common-practice"

# weather, shares of simulated years: half of them have frost after the typical last one, by definition, and
# common practice waits a week or more, which leaves a third
FROST_STRAINS = 0.4
FROST_CLASHES = 0.75
RIPENS_STRAINS = 0.8  # eight years in ten
RIPENS_CLASHES = 0.5
# days in ground colder than it germinates or grows in: seed of tender crops rots, hardy seed lies well
COLD_GROUND_D = 7
COLD_GROUND_HARDY_D = 28
SUMMER_D = 120  # in the bed before killing frost: it was not started to stand over winter
DORMANT_D = 120  # so long before spring it is meant to lie through the winter
