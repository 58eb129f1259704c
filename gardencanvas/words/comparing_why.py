"""What each measure of a layout means, its equation and its source, one paragraph each."""

from gardencanvas.measures.codes import Code, Through
from gardencanvas.words.language import mark

_RANGE = mark(
    "The range holds eight cases of ten: yields differ between books and gardens, weather between years, and "
    "the model of neighbours misses published trials by as much as the range is wide."
)
_ALONE = mark(
    "Grown alone is the crop on all of the bed at its usual spacing, in the same weeks, with all the light."
)

WHY: dict[str, tuple[str, ...]] = {
    Code.GROUND_DAYS: (
        mark(
            "The ground that plants stand on, week by week: each planting takes the ground its stations "
            "need at the usual spacing, never more in sum than the bed has, times the days."
        ),
    ),
    Code.GROUND_SHARE: (mark("Ground in use as a share of all beds through the whole year."),),
    Code.HARVEST: (
        mark(
            "Of each crop: its usual yield per m² (from the sources of the crop) × the bed's area × its "
            "relative yield beside its neighbours × the light that walls and trees leave. Crops whose yield "
            "no source gives are left out and named, and so is what stands in no bed."
        ),
        _RANGE,
    ),
    Code.HARVEST_PIECES: (
        mark(
            "Plants that are cut or lifted once are counted too, in years that bring them to harvest; crops "
            "picked over are weighed only."
        ),
    ),
    Code.ALONE: (
        _ALONE,
        _RANGE,
    ),
    Code.RELATIVE_YIELD: (
        mark(
            "Yield of the crop here over its yield grown alone on the same ground. Plants that have more "
            "room grow larger (1/w = a + bN, Shinozaki and Kira 1956), and other crops hold them back as so "
            "many more plants of their own would (Spitters 1983): half by the light these take, week by "
            "week, in layers by height (Beer–Lambert; Spitters and Aerts 1983; constant light-use "
            "efficiency, Monteith 1977), half by roots at the same depth that want the same food, of which "
            "legumes take little from others."
        ),
        _ALONE,
        _RANGE,
    ),
    Code.HARVEST_WEEKS: (mark("Weeks of the season in which at least one crop is being harvested."),),
    Code.GAP_WEEKS: (mark("Weeks without any harvest between the first and the last of the season."),),
    Code.GLUT_WEEKS: (
        mark(
            "Weeks that bring more than twice the mean of all weeks with a harvest (common practice, not a "
            "measurement)."
        ),
    ),
    Code.LER: (
        mark(
            "Land equivalent ratio: the ground that the same harvest would need with each crop grown alone, "
            "over the ground it has here; the sum of all relative yields (Mead and Willey 1980). Above 1 "
            "the mixture saves ground. Crops that follow each other add up too: see the area-time "
            "equivalency ratio beside it. Field trials report 1.2 to 1.3 on average (Yu et al. 2015; "
            "Martin-Guay et al. 2018), mostly of cereals with legumes: above 1.4 take it as doubtful."
        ),
        _RANGE,
    ),
    Code.ATER: (
        mark(
            "Area-time equivalency ratio: the sum of relative yield × the crop's own days in the bed, over "
            "the days from the first to the last crop (Hiebsch and McCollum 1987): ground and time "
            "together. It tends to underrate, as the land equivalent ratio overrates, crops of unlike "
            "length (Balasubramanian and Sekayange 1990)."
        ),
        _RANGE,
    ),
    Code.OVERLAP: (
        mark(
            "Days two crops share the bed, over the days from the first to the last of both (the complement "
            "of temporal niche differentiation, Yu et al. 2015); the mean of all pairs."
        ),
    ),
    Code.LIGHT: (
        mark(
            "Sunlight of the season on the beds that leaves take: 1 − exp(−Σ k × leaf area) where leaves "
            "overlap (Beer–Lambert), each week by its sunlight above the air at this latitude (FAO-56, "
            "equation 21)."
        ),
    ),
    Code.MIXING: (
        mark(
            "How often neighbouring plants are of different families, against chance: 1 no plant beside its "
            "family, 0 as by chance, below 0 in clumps (join counts). Fewer plant eaters settle in mixed "
            "stands on average of many trials (Letourneau et al. 2011); no number of it can be promised to "
            "one garden."
        ),
    ),
    Code.KINDS: (
        mark("1 / Σ p², with p each family's share of the ground (Simpson): so many of equal share."),
    ),
    Code.SHADED: (
        mark(
            "Share of the light that leaves keep from the soil, mean of the weeks in which anything grows. "
            "Shaded soil grows fewer weeds and loses less water; how much fewer is not promised."
        ),
    ),
    Code.WATER: (
        mark(
            "Reference evapotranspiration (Hargreaves and Samani 1985; FAO-56, equation 52) × the crops' "
            "coefficients, weighted by ground cover and height where several stand together (FAO-56, "
            "equation 104, from memory), less effective rain (USDA-SCS, by the month), in litres: 1 mm on 1 "
            "m² is 1 l. Only what grows is watered; soil and watering habits change it much."
        ),
    ),
    Code.WATER_PEAK: (mark("The most water any week of an average season asks for."),),
    Code.HUNGRY: (
        mark(
            "Ground-days under crops of high need of nutrients, as a share of all ground-days in use; "
            "classes are those of each crop's sources."
        ),
    ),
    Code.FIXING: (
        mark(
            "Ground-days under crops that fix their own nitrogen, as a share of all ground-days in use. "
            "What is left to neighbours in the same season is little."
        ),
    ),
    Code.SEED_COST: (
        mark(
            "Seed to buy at the prices of the seed tin; not known where a price is missing. Sets, tubers "
            "and plants are not counted."
        ),
    ),
    Code.HOURS: (
        mark(
            "Number of jobs × the minutes of each, which you can change; the minutes given are common "
            "practice, not measured."
        ),
    ),
    Code.CLEAR: (mark("Plantings that nothing else touches."),),
    Code.SHARES: (mark("Plantings that overlap a neighbour, and it works."),),
    Code.STRAINS: (mark("Plantings for which it works at a cost that is named."),),
    Code.CLASHES: (mark("Plantings that fail, or make one fail."),),
    Code.SPARE: (
        mark(
            "Least days between the last harvest of a catch crop and the day its neighbour closes over it, "
            "in the worse of a cold and a warm year, one in ten each."
        ),
    ),
    Code.HAZARDS: (
        mark(
            "Cautions that come with the crops planted, each counted once. Follow local rules and qualified "
            "advice."
        ),
    ),
    Through.HARVEST: (
        mark(
            "The harvest of each crop spread evenly over its harvest window; the range holds cold and warm "
            "years."
        ),
    ),
    Through.COVER: (mark("Share of the soil of all beds under leaves, seen from above."),),
    Through.WATER: (mark("Water to give in each week of an average season, less effective rain."),),
}
"""Sentences to say, one after the other, by the code of a measure."""
