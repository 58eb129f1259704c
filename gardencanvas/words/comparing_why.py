"""What each measure of a layout means, its equation and its source, one paragraph each."""

from gardencanvas.measures.codes import Code, Through

_RANGE = (
    "The range holds eight cases of ten: yields differ between books and gardens, weather between years, and "
    "the model of neighbours misses published trials by as much as the range is wide."
)
_ALONE = (
    "Grown alone is the crop on all of the bed at its usual spacing, in the same weeks, with all the light."
)

WHY: dict[str, str] = {
    Code.GROUND_DAYS: (
        "The ground that plants stand on, week by week: each planting takes the ground its stations need at "
        "the usual spacing, never more in sum than the bed has, times the days."
    ),
    Code.GROUND_SHARE: "Ground in use as a share of all beds through the whole year.",
    Code.HARVEST: (
        "Of each crop: its usual yield per m² (from the sources of the crop) × the bed's area × its relative "
        "yield beside its neighbours × the light that walls and trees leave. Crops whose yield no source "
        f"gives are left out and named, and so is what stands in no bed. {_RANGE}"
    ),
    Code.HARVEST_PIECES: (
        "Plants that are cut or lifted once are counted too, in years that bring them to harvest; crops "
        "picked over are weighed only."
    ),
    Code.ALONE: f"{_ALONE} {_RANGE}",
    Code.RELATIVE_YIELD: (
        "Yield of the crop here over its yield grown alone on the same ground: the light its leaves catch, "
        "in layers by height (Beer–Lambert; Spitters and Aerts 1983), week by week, over what it catches "
        "alone at its usual spacing (constant light-use efficiency, Monteith 1977), with plants that have "
        f"more room growing larger (1/w = a + bN, Shinozaki and Kira 1956). {_ALONE} {_RANGE}"
    ),
    Code.HARVEST_WEEKS: "Weeks of the season in which at least one crop is being harvested.",
    Code.GAP_WEEKS: "Weeks without any harvest between the first and the last of the season.",
    Code.GLUT_WEEKS: (
        "Weeks that bring more than twice the mean of all weeks with a harvest (common practice, not a "
        "measurement)."
    ),
    Code.LER: (
        "Land equivalent ratio: the ground that the same harvest would need with each crop grown alone, over "
        "the ground it has here; the sum of all relative yields (Mead and Willey 1980). Above 1 the mixture "
        "saves ground. Crops that follow each other add up too: see the area-time equivalency ratio beside "
        "it. Field trials report 1.2 to 1.3 on average (Yu et al. 2015; Martin-Guay et al. 2018), mostly of "
        "cereals with legumes: above 1.4 take it as doubtful. "
        f"{_RANGE}"
    ),
    Code.ATER: (
        "Area-time equivalency ratio: the sum of relative yield × the crop's own days in the bed, over the "
        "days from the first to the last crop (Hiebsch and McCollum 1987): ground and time together. It "
        "tends to underrate, as the land equivalent ratio overrates, crops of unlike length (Balasubramanian "
        f"and Sekayange 1990). {_RANGE}"
    ),
    Code.OVERLAP: (
        "Days two crops share the bed, over the days from the first to the last of both (the complement of "
        "temporal niche differentiation, Yu et al. 2015); the mean of all pairs."
    ),
    Code.LIGHT: (
        "Sunlight of the season on the beds that leaves take: 1 − exp(−Σ k × leaf area) where leaves overlap "
        "(Beer–Lambert), each week by its sunlight above the air at this latitude (FAO-56, equation 21)."
    ),
    Code.MIXING: (
        "How often neighbouring plants are of different families, against chance: 1 no plant beside its "
        "family, 0 as by chance, below 0 in clumps (join counts). Fewer plant eaters settle in mixed stands "
        "on average of many trials (Letourneau et al. 2011); no number of it can be promised to one garden."
    ),
    Code.KINDS: "1 / Σ p², with p each family's share of the ground (Simpson): so many of equal share.",
    Code.SHADED: (
        "Share of the light that leaves keep from the soil, mean of the weeks in which anything grows. "
        "Shaded soil grows fewer weeds and loses less water; how much fewer is not promised."
    ),
    Code.WATER: (
        "Reference evapotranspiration (Hargreaves and Samani 1985; FAO-56, equation 52) × the crops' "
        "coefficients, weighted by ground cover and height where several stand together (FAO-56, equation "
        "104, from memory), less effective rain (USDA-SCS, by the month), in litres: 1 mm on 1 m² is 1 l. "
        "Only what grows is watered; soil and watering habits change it much."
    ),
    Code.WATER_PEAK: "The most water any week of an average season asks for.",
    Code.HUNGRY: (
        "Ground-days under crops of high need of nutrients, as a share of all ground-days in use; classes "
        "are those of each crop's sources."
    ),
    Code.FIXING: (
        "Ground-days under crops that fix their own nitrogen, as a share of all ground-days in use. What is "
        "left to neighbours in the same season is little."
    ),
    Code.SEED_COST: (
        "Seed to buy at the prices of the seed tin; not known where a price is missing. Sets, tubers and "
        "plants are not counted."
    ),
    Code.HOURS: (
        "Number of jobs × the minutes of each, which you can change; the minutes given are common practice, "
        "not measured."
    ),
    Code.CLEAR: "Plantings that nothing else touches.",
    Code.SHARES: "Plantings that overlap a neighbour, and it works.",
    Code.STRAINS: "Plantings for which it works at a cost that is named.",
    Code.CLASHES: "Plantings that fail, or make one fail.",
    Code.SPARE: (
        "Least days between the last harvest of a catch crop and the day its neighbour closes over it, in "
        "the worse of a cold and a warm year, one in ten each."
    ),
    Code.HAZARDS: (
        "Cautions that come with the crops planted, each counted once. Follow local rules and qualified "
        "advice."
    ),
    Through.HARVEST: (
        "The harvest of each crop spread evenly over its harvest window; the range holds cold and warm years."
    ),
    Through.COVER: "Share of the soil of all beds under leaves, seen from above.",
    Through.WATER: "Water to give in each week of an average season, less effective rain.",
}
